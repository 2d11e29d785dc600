/** The article: a cycle's long page. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Item, Picture, Story } from '../model/box.ts';
import { dateInZone, isoInstant, longDate, monthName } from '../model/calendar.ts';
import { callFor, spareOnSale } from '../model/calls.ts';
import { cautionsOf } from '../model/cautions.ts';
import { cycleOf, earlierOfKind, nextCycle, previousCycle } from '../model/relations.ts';
import { type Part, tellingOf } from '../model/telling.ts';
import { absoluteAddress, articlePath, itemAddress, itemAnchor, recordAddress } from '../render/addresses.ts';
import { type Html, joinHtml } from '../render/html.ts';
import { itemPlate, leadPlate, smallPlate, widePlate } from '../render/layouts.ts';
import { renderStory } from '../render/markdown.ts';
import { priceText } from '../render/money.ts';
import type { Output, PictureOutput } from '../render/output.ts';
import { linker, pageOutput } from '../render/page.ts';
import { type PictureLayout, pictureMarkup, pictureParts, socialPicture } from '../render/pictures.ts';
import { articleGraph } from '../render/structured-data.ts';
import { typeset } from '../render/typeset.ts';
import type { Channel, ChannelInput } from './channel.ts';

/** What the parts of one page gather on the way: files to be made and findings. */
interface Gathered {
  readonly outputs: Output[];
  readonly diagnostics: Diagnostic[];
}

interface Drawing extends Gathered {
  readonly input: ChannelInput;
  readonly cycle: Cycle;
  readonly page: string;
}

const plate = (drawing: Drawing, picture: Picture, layout: PictureLayout, eager = false): Html => {
  const { html, outputs } = pictureMarkup(picture, layout, drawing.page, { eager });
  drawing.outputs.push(...outputs);
  return html;
};

const story = (drawing: Drawing, told: Story, idPrefix: string, topHeading: 2 | 3): Html => {
  const { html, outputs, diagnostics } = renderStory(told.tree, {
    file: told.file,
    page: drawing.page,
    idPrefix,
    topHeading,
    addressOf: (target) => recordAddress(drawing.input.box, target, drawing.page),
    layout: itemPlate,
    lang: drawing.input.box.settings.lang,
  });
  drawing.outputs.push(...outputs);
  drawing.diagnostics.push(...diagnostics);
  return html;
};

const countryName = (code: string, lang: string): string =>
  new Intl.DisplayNames([lang], { type: 'region' }).of(code) ?? code;

/** An item's facts as label and value, those the record gives. */
const factsOf = (item: Item, lang: string): readonly { label: string; value: string }[] =>
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

const spareData = (item: Item, box: Box, asOf: number) => {
  const { spare } = item;
  if (!spare) return undefined;
  const { lang, timeZone } = box.settings;
  if (!spareOnSale(item, asOf, timeZone)) return { onSale: false };
  return {
    onSale: true,
    count: spare.count,
    price: priceText(spare.price, lang),
    address: spare.address,
    until: spare.until && longDate(spare.until, lang),
  };
};

const itemSection = (drawing: Drawing, item: Item): Html => {
  const { box, asOf, templates } = drawing.input;
  const { lang } = box.settings;
  const shownAtHead = drawing.cycle.hero?.file;
  const pictures = item.pictures.filter((picture) => picture.file !== shownAtHead);
  const earlier = earlierOfKind(box, item);
  return templates.render('item', {
    id: itemAnchor(item),
    // Who lands here from a search sees which box it was, and how to get the next one.
    month: monthName(drawing.cycle, lang),
    call: callFor(box, drawing.cycle, asOf),
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
    leadName: typeset(drawing.cycle.items[0]?.name ?? '', lang),
    facts: factsOf(item, lang),
    cautions: cautionsOf(item).map(({ label, lines }) => ({
      label,
      lines: lines.map((line) => typeset(line, lang)),
    })),
    spare: spareData(item, box, asOf),
    earlier: earlier.map((other) => ({
      name: typeset(other.name, lang),
      href: itemAddress(box, other, drawing.page),
      month: monthName(cycleOf(box, other), lang),
    })),
  });
};

const partHtml = (drawing: Drawing, part: Part, place: number): Html => {
  const { cycle, input } = drawing;
  const { lang } = input.box.settings;
  const { templates } = input;
  switch (part.part) {
    case 'prose':
      return templates.render('prose', {
        story: story(drawing, { file: cycle.story.file, tree: part.tree }, `part-${place + 1}-`, 2),
        opening: part.opening,
      });
    case 'item':
      return itemSection(drawing, part.item);
    case 'box':
      return templates.render('whole-box', {
        picture:
          cycle.wholeBox &&
          cycle.wholeBox.file !== cycle.hero?.file &&
          plate(drawing, cycle.wholeBox, widePlate),
        caption: cycle.wholeBox?.caption && typeset(cycle.wholeBox.caption, lang),
        items: cycle.items.map((item) => ({ name: typeset(item.name, lang), href: `#${itemAnchor(item)}` })),
      });
    case 'voices':
      return templates.render('voices', {
        voices: cycle.voices.map((voice) => ({ ...voice, text: typeset(voice.text, lang) })),
        replay: cycle.replay,
      });
    case 'peek':
      return templates.render('peek', {
        text: cycle.peek && typeset(cycle.peek.text, lang),
        picture: cycle.peek?.picture && plate(drawing, cycle.peek.picture, itemPlate),
      });
    case 'call':
      return templates.render('call', callData(drawing));
  }
};

const callData = ({ input, cycle }: Drawing) => {
  const { settings } = input.box;
  return {
    call: callFor(input.box, cycle, input.asOf),
    boxName: typeset(settings.name, settings.lang),
    description: typeset(settings.description, settings.lang),
    subscription: settings.subscription && {
      name: typeset(settings.subscription.name, settings.lang),
      price: priceText(settings.subscription.price, settings.lang),
    },
  };
};

const neighbour = (drawing: Drawing, cycle: Cycle | undefined) =>
  cycle && {
    href: linker(drawing.page)(articlePath(cycle)),
    theme: typeset(cycle.theme, drawing.input.box.settings.lang),
    month: monthName(cycle, drawing.input.box.settings.lang),
    picture: cycle.hero && plate(drawing, cycle.hero, smallPlate),
  };

/** Addresses of the pictures that structured data names: the widest JPEG of each, which the plates make. */
const imageAddresses = ({ input, page }: Drawing, pictures: readonly Picture[]): readonly string[] =>
  pictures.map((picture) => {
    const widest = pictureParts(picture, itemPlate, page).outputs.at(-1) as PictureOutput;
    return absoluteAddress(input.box.settings, widest.path);
  });

const articlePage = (input: ChannelInput, cycle: Cycle): Gathered => {
  const { box, asOf, templates } = input;
  const { lang, timeZone } = box.settings;
  const drawing: Drawing = { input, cycle, page: articlePath(cycle), outputs: [], diagnostics: [] };
  const revealed = dateInZone(cycle.reveal, timeZone);
  const social = cycle.wholeBox ?? cycle.hero;
  const socialOutput = social && socialPicture(social);
  const body = templates.render('article', {
    title: typeset(cycle.title, lang),
    theme: typeset(cycle.theme, lang),
    month: monthName(cycle, lang),
    summary: typeset(cycle.summary, lang),
    author: cycle.author,
    date: { iso: revealed, words: longDate(revealed, lang) },
    updated: cycle.updated && { iso: cycle.updated, words: longDate(cycle.updated, lang) },
    hero: cycle.hero && {
      picture: plate(drawing, cycle.hero, leadPlate, true),
      caption: typeset(cycle.hero.caption ?? '', lang),
      number: cycle.items.find((item) => item.pictures[0]?.file === cycle.hero?.file)?.number,
    },
    items: cycle.items.map((item) => ({ name: typeset(item.name, lang), href: `#${itemAnchor(item)}` })),
    replay: cycle.replay,
    ...callData(drawing),
    parts: joinHtml(
      tellingOf(cycle).parts.map((part, place) => partHtml(drawing, part, place)),
      '\n',
    ),
    previous: neighbour(drawing, previousCycle(box, cycle)),
    next: neighbour(drawing, nextCycle(box, cycle)),
  });
  const page = pageOutput({
    box,
    asOf,
    templates,
    path: drawing.page,
    title: cycle.title,
    description: cycle.summary,
    type: 'article',
    palette: cycle.palette,
    cycle,
    body,
    published: isoInstant(cycle.reveal),
    ...(cycle.updated === undefined ? {} : { modified: cycle.updated }),
    ...(social && socialOutput ? { social: { path: socialOutput.path, alt: social.alt } } : {}),
    graph: articleGraph({
      box,
      cycle,
      asOf,
      ...(socialOutput ? { image: absoluteAddress(box.settings, socialOutput.path) } : {}),
      itemImages: new Map(cycle.items.map((item) => [item.slug, imageAddresses(drawing, item.pictures)])),
    }),
  });
  return {
    outputs: [page, ...drawing.outputs, ...(socialOutput ? [socialOutput] : [])],
    diagnostics: drawing.diagnostics,
  };
};

export const article: Channel = {
  name: 'article',
  where: 'site',
  make: (input) => {
    const pages = input.box.cycles.map((cycle) => articlePage(input, cycle));
    return {
      outputs: pages.flatMap((page) => page.outputs),
      diagnostics: pages.flatMap((page) => page.diagnostics),
    };
  },
};
