/**
 * The parts of an article as what their templates are given, in the order of the telling: the article's page and the
 * feeds are both made of them, so that neither can say what the other does not.
 */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Item, Moment, Picture, Story } from '../model/box.ts';
import { longDate, monthName } from '../model/calendar.ts';
import { callFor, spareOnSale } from '../model/calls.ts';
import { cautionsOf } from '../model/cautions.ts';
import { chaptersOf, momentAddress } from '../model/chapters.ts';
import { cycleOf, earlierOfKind } from '../model/relations.ts';
import { clockText } from '../model/speaking.ts';
import type { Target } from '../model/story.ts';
import { type TellingPart, tellingOf } from '../model/telling.ts';
import { shortName } from '../model/title.ts';
import { wordingFor } from '../wording/wording.ts';
import {
  absoluteAddress,
  absoluteRecordAddress,
  itemAnchor,
  kindPagePath,
  recordAddress,
  relativeAddress,
} from './addresses.ts';
import type { Html } from './html.ts';
import { itemPlate, widePlate } from './layouts.ts';
import { renderStory } from './markdown.ts';
import { priceText } from './money.ts';
import type { Output } from './output.ts';
import { type PictureLayout, pictureMarkup } from './pictures.ts';
import { capitalised, typeset } from './typeset.ts';

export interface Drawing {
  readonly box: Box;
  readonly asOf: Moment;
  readonly cycle: Cycle;
  /** Site path of the cycle's article. */
  readonly page: string;
  /** Whether it is read away from the site, as in a feed: full addresses, plain pictures, no jumps within the text. */
  readonly away: boolean;
  /** Files to be made and findings, gathered while the parts are drawn. */
  readonly outputs: Output[];
  readonly diagnostics: Diagnostic[];
}

/** What one template is given. */
export interface DrawnPart {
  readonly template: 'prose' | 'item' | 'whole-box' | 'voices' | 'peek' | 'call';
  readonly data: object;
}

/** Address of a site path as the drawing's reader follows it. */
const addressFor = ({ box, page, away }: Drawing, path: string): string =>
  away ? absoluteAddress(box.settings, path) : relativeAddress(page, path);

const targetAddress = ({ box, page, away }: Drawing, target: Target): string | undefined =>
  away ? absoluteRecordAddress(box, target) : recordAddress(box, target, page);

const itemHref = (drawing: Drawing, { cycle, slug }: Item): string => {
  const address = targetAddress(drawing, { cycle, item: slug });
  if (address === undefined) throw new Error(`Expected the item ${slug} of ${cycle} in the box`);
  return address;
};

const awayOption = (drawing: Drawing) =>
  drawing.away ? { away: (path: string) => absoluteAddress(drawing.box.settings, path) } : {};

/** A picture of the article; its files are gathered. */
export const plate = (drawing: Drawing, picture: Picture, layout: PictureLayout, eager = false): Html => {
  const { html, outputs } = pictureMarkup(picture, layout, drawing.page, { eager, ...awayOption(drawing) });
  drawing.outputs.push(...outputs);
  return html;
};

const story = (drawing: Drawing, told: Story, idPrefix: string, topHeading: 2 | 3): Html => {
  const { html, outputs, diagnostics } = renderStory(told.tree, {
    file: told.file,
    page: drawing.page,
    idPrefix,
    topHeading,
    addressOf: (target) => targetAddress(drawing, target),
    layout: itemPlate,
    lang: drawing.box.settings.lang,
    ...awayOption(drawing),
  });
  drawing.outputs.push(...outputs);
  drawing.diagnostics.push(...diagnostics);
  return html;
};

export const countryName = (code: string, lang: string): string =>
  new Intl.DisplayNames([lang], { type: 'region' }).of(code) ?? code;

/** An item's facts as label and value, those the record gives. */
export const factsOf = (item: Item, lang: string): readonly { label: string; value: string }[] =>
  (
    [
      ['Maker', item.brand],
      ['Material', item.material.join(', ')],
      ['Colour', item.color],
      ['Size', item.size],
      ['Weight', item.weight],
      ['Made in', item.countryOfOrigin && countryName(item.countryOfOrigin, lang)],
      ['Care', item.care],
    ] as const
  )
    .filter((fact): fact is readonly [(typeof fact)[0], string] => Boolean(fact[1]))
    .map(([label, value]) => ({ label, value: typeset(value, lang) }));

const spareData = (item: Item, box: Box, asOf: Moment) => {
  const { spare } = item;
  if (!spare) return undefined;
  const { lang, timeZone } = box.settings;
  if (!spareOnSale(item, asOf, timeZone)) return { onSale: false, sold: spare.count === 0 };
  return {
    onSale: true,
    count: spare.count,
    price: priceText(spare.price, lang),
    address: spare.address,
    until: spare.until && longDate(spare.until, lang),
  };
};

/** The page of an item's kind, where there is one. */
const kindLink = (drawing: Drawing, { kind }: Item) => {
  const { lang } = drawing.box.settings;
  const path = kindPagePath(drawing.box, kind);
  return path === undefined
    ? undefined
    : { href: addressFor(drawing, path), kind: typeset(capitalised(kind, lang), lang) };
};

const itemData = (drawing: Drawing, item: Item) => {
  const { box, asOf, cycle } = drawing;
  const { lang } = box.settings;
  const shownAtHead = cycle.hero?.file;
  const pictures = item.pictures.filter((picture) => picture.file !== shownAtHead);
  return {
    id: itemAnchor(item),
    href: itemHref(drawing, item),
    // Who lands here from a search sees which box it was, and how to get the next one.
    month: monthName(cycle, lang),
    call: callFor(box, cycle, asOf),
    number: item.number,
    name: typeset(item.name, lang),
    kind: typeset(item.kind, lang),
    lead: item.lead,
    description: typeset(item.description, lang),
    plates: pictures.map((picture) => ({
      picture: plate(drawing, picture, itemPlate),
      caption: picture.caption && typeset(picture.caption, lang),
    })),
    story: story(drawing, item.story, `${itemAnchor(item)}-`, 3),
    goesWith: item.goesWith && typeset(item.goesWith, lang),
    leadName: typeset(cycle.items[0]?.name ?? '', lang),
    facts: factsOf(item, lang),
    cautions: cautionsOf(item)
      .map(wordingFor(lang).cautions.text)
      .map(({ label, lines }) => ({ label, lines: lines.map((line) => typeset(line, lang)) })),
    spare: spareData(item, box, asOf),
    earlier: earlierOfKind(box, item).map((other) => ({
      name: typeset(other.name, lang),
      href: itemHref(drawing, other),
      month: monthName(cycleOf(box, other), lang),
    })),
    ofKind: kindLink(drawing, item),
  };
};

/** The cycle's items as links to their sections. */
export const contentsOf = (drawing: Drawing) =>
  drawing.cycle.items.map((item) => ({
    name: typeset(item.name, drawing.box.settings.lang),
    href: itemHref(drawing, item),
  }));

/** What can be done now, and what it costs. */
export const callData = ({ box, asOf, cycle }: Pick<Drawing, 'box' | 'asOf'> & { cycle?: Cycle }) => {
  const { settings } = box;
  return {
    call: callFor(box, cycle, asOf),
    boxName: typeset(settings.name, settings.lang),
    description: typeset(settings.description, settings.lang),
    subscription: settings.subscription && {
      name: typeset(settings.subscription.name, settings.lang),
      price: priceText(settings.subscription.price, settings.lang),
    },
  };
};

/** The recording, with the moments that a reader of the article would look for. */
const replayData = (cycle: Cycle, lang: string) =>
  cycle.replay && {
    ...cycle.replay,
    marks: chaptersOf(cycle)
      .filter(({ sought }) => sought)
      .map((chapter) => ({
        clock: clockText(chapter.start),
        title: typeset(shortName(wordingFor(lang).live.chapterTitle(chapter)), lang),
        href: momentAddress(cycle.replay?.address as string, chapter.start),
      })),
  };

const drawnPart = (drawing: Drawing, part: TellingPart, place: number): DrawnPart => {
  const { cycle, box } = drawing;
  const { lang } = box.settings;
  switch (part.part) {
    case 'prose':
      return {
        template: 'prose',
        data: {
          story: story(drawing, { file: cycle.story.file, tree: part.tree }, `part-${place + 1}-`, 2),
          opening: part.opening,
        },
      };
    case 'item':
      return { template: 'item', data: itemData(drawing, part.item) };
    case 'box':
      return {
        template: 'whole-box',
        data: {
          picture:
            cycle.wholeBox &&
            cycle.wholeBox.file !== cycle.hero?.file &&
            plate(drawing, cycle.wholeBox, widePlate),
          caption: cycle.wholeBox?.caption && typeset(cycle.wholeBox.caption, lang),
          items: contentsOf(drawing),
          value: cycle.value && {
            total: priceText(cycle.value.total, lang),
            on: { iso: cycle.value.on, words: longDate(cycle.value.on, lang) },
          },
        },
      };
    case 'voices':
      return {
        template: 'voices',
        data: {
          voices: cycle.voices.map((voice) => ({ ...voice, text: typeset(voice.text, lang) })),
          replay: replayData(cycle, lang),
        },
      };
    case 'peek':
      return {
        template: 'peek',
        data: {
          text: cycle.peek && typeset(cycle.peek.text, lang),
          picture: cycle.peek?.picture && plate(drawing, cycle.peek.picture, itemPlate),
        },
      };
    case 'call':
      return { template: 'call', data: callData(drawing) };
  }
};

/** Every part of the cycle's article, in order. */
export const drawnParts = (drawing: Drawing): readonly DrawnPart[] =>
  tellingOf(drawing.cycle).parts.map((part, place) => drawnPart(drawing, part, place));
