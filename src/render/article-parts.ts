/**
 * The parts of an article as what their templates are given, in the order of the telling: the article's page and the
 * feeds are both made of them, so that neither can say what the other does not.
 */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Item, Picture, Story } from '../model/box.ts';
import { monthName } from '../model/calendar.ts';
import { cautionsOf } from '../model/cautions.ts';
import { type Chapter, chaptersOf, momentAddress } from '../model/chapters.ts';
import { clockText } from '../model/speaking.ts';
import { itemAtHead, type TellingPart, tellingOf } from '../model/telling.ts';
import { capitalised } from '../text/capitalised.ts';
import { longDate } from '../text/long-date.ts';
import type { Wording } from '../wording/wording.ts';
import {
  absoluteAddress,
  addressFrom,
  type Destination,
  fullAddress,
  itemAnchor,
  itemDestination,
} from './addresses.ts';
import { type ArticleFacts, type ItemFacts, targetKey } from './article-facts.ts';
import type { Html } from './html.ts';
import { itemPlate, widePlate } from './layouts.ts';
import { renderStory } from './markdown.ts';
import { priceText } from './money.ts';
import type { PictureOutput } from './output.ts';
import { pageLang } from './page-lang.ts';
import { type PictureLayout, type PictureOptions, pictureMarkup } from './pictures.ts';
import type { CallFacts, SiteFacts } from './site-facts.ts';
import { typeset } from './typeset.ts';

type Words = Wording['site'];

/** One drawing of an article's parts. */
export interface Drawing {
  readonly facts: ArticleFacts;
  readonly words: Words;
  /** What cautions and chapters are called. */
  readonly wording: Pick<Wording, 'cautions' | 'live'>;
  /** Site path of the cycle's article. */
  readonly page: string;
  /** Whether it is read away from the site, as in a feed: full addresses, plain pictures, no jumps within the text. */
  readonly away: boolean;
  /** Files to be made and findings, gathered while the parts are drawn. */
  readonly pictures: PictureOutput[];
  readonly diagnostics: Diagnostic[];
}

/** Address of a destination as the drawing's reader follows it. */
const addressOf = ({ facts, page, away }: Drawing, to: Destination): string =>
  away ? fullAddress(facts.site, to) : addressFrom(page, to);

const itemHref = (drawing: Drawing, item: Item): string =>
  addressOf(drawing, itemDestination(drawing.facts.cycle, item));

const awayOption = ({ facts, away }: Drawing) =>
  away ? { away: (path: string) => absoluteAddress(facts.site, path) } : {};

/** A picture of the article; its files are gathered. */
export const plate = (
  drawing: Drawing,
  picture: Picture,
  layout: PictureLayout,
  options: Pick<PictureOptions, 'alt' | 'eager'> = {},
): Html => {
  const { html, outputs } = pictureMarkup(picture, layout, drawing.page, {
    ...options,
    ...awayOption(drawing),
  });
  drawing.pictures.push(...outputs);
  return html;
};

const storyHtml = (
  drawing: Drawing,
  told: Pick<Story, 'file' | 'tree'>,
  idPrefix: string,
  topHeading: 2 | 3,
): Html => {
  const { facts, words } = drawing;
  const { html, outputs, diagnostics } = renderStory(told.tree, {
    file: told.file,
    page: drawing.page,
    idPrefix,
    topHeading,
    addressOf: (target) => {
      const to = facts.stories.destinations.get(targetKey(target));
      return to && addressOf(drawing, to);
    },
    layout: itemPlate,
    lang: facts.site.lang,
    words: words.story,
    ...awayOption(drawing),
  });
  drawing.pictures.push(...outputs);
  drawing.diagnostics.push(...diagnostics);
  return html;
};

/** A country's name in a language; `code` is ISO 3166-1 alpha-2. */
export const countryName = (code: string, lang: string): string =>
  new Intl.DisplayNames([lang], { type: 'region' }).of(code) ?? code;

/** What an item's record may state of it. */
export type StatedFact = keyof Words['item']['facts'];

/** As pages show them. */
const FACT_ORDER: readonly StatedFact[] = [
  'brand',
  'material',
  'color',
  'size',
  'weight',
  'countryOfOrigin',
  'care',
];

/** An item's facts with their labels, those that the record gives. */
export const statedFacts = (
  item: Pick<Item, 'material'> & Partial<Pick<Item, Exclude<StatedFact, 'material'>>>,
  lang: string,
  labels: Words['item']['facts'],
): readonly { readonly fact: StatedFact; readonly label: string; readonly value: string }[] => {
  const values: Readonly<Record<StatedFact, string | undefined>> = {
    brand: item.brand,
    material: item.material.join(', '),
    color: item.color,
    size: item.size,
    weight: item.weight,
    countryOfOrigin: item.countryOfOrigin && countryName(item.countryOfOrigin, pageLang(lang)),
    care: item.care,
  };
  return FACT_ORDER.flatMap((fact) => {
    const value = values[fact];
    return value ? [{ fact, label: labels[fact], value: typeset(value, lang) }] : [];
  });
};

const spareView = ({ spare }: Item, { onSale }: ItemFacts, lang: string) => {
  if (!spare) return undefined;
  if (!onSale) return { onSale: false as const, sold: spare.count === 0 };
  return {
    onSale: true as const,
    count: spare.count,
    price: priceText(spare.price, pageLang(lang)),
    address: spare.address,
    until: spare.until && longDate(spare.until, pageLang(lang)),
  };
};

const itemView = (drawing: Drawing, item: Item) => {
  const { facts, words } = drawing;
  const { cycle, site } = facts;
  const { lang } = site;
  const own = facts.items.get(item.slug);
  if (!own) throw new Error(`Expected the facts of the item ${item.slug} of ${cycle.id}`);
  const { kindPage, earlier } = own;
  const shownAtHead = itemAtHead(cycle)?.slug === item.slug ? cycle.hero?.file : undefined;
  // Read away from the site the head is near; here the section is where a search leads, and has to show the thing.
  const pictures = item.pictures.filter((picture) => !drawing.away || picture.file !== shownAtHead);
  return {
    words: words.item,
    id: itemAnchor(item),
    /** Ids that links from elsewhere still name. */
    formerIds: item.formerly ?? [],
    href: itemHref(drawing, item),
    // Who lands here from a search sees which box it was, and how to get the next one.
    month: monthName(cycle, pageLang(lang)),
    call: facts.call.call,
    number: item.number,
    name: typeset(item.name, lang),
    kind: typeset(item.kind, lang),
    lead: item.lead,
    description: typeset(item.description, lang),
    plates: pictures.map((picture) => {
      const again = picture.file === shownAtHead;
      return {
        picture: plate(drawing, picture, itemPlate, again ? { alt: '' } : {}),
        caption: again ? undefined : picture.caption && typeset(picture.caption, lang),
        again,
      };
    }),
    story: storyHtml(drawing, item.story, `${itemAnchor(item)}-`, 3),
    goesWith: item.goesWith && typeset(item.goesWith, lang),
    leadName: typeset(cycle.items[0]?.inText.name ?? '', lang),
    facts: statedFacts(item, lang, words.item.facts),
    cautions: cautionsOf(item)
      .map(drawing.wording.cautions.text)
      .map(({ label, lines }) => ({ label, lines: lines.map((line) => typeset(line, lang)) })),
    spare: spareView(item, own, lang),
    earlier: earlier.map((other) => ({
      name: typeset(other.name, lang),
      href: addressOf(drawing, other.to),
      month: monthName(other, pageLang(lang)),
    })),
    ofKind:
      kindPage === undefined
        ? undefined
        : {
            href: addressOf(drawing, { path: kindPage }),
            kind: typeset(capitalised(item.kind, lang), lang),
          },
  };
};

/** The cycle's items as links to their sections. */
export const contentsOf = (drawing: Drawing) =>
  drawing.facts.cycle.items.map((item) => ({
    name: typeset(item.name, drawing.facts.site.lang),
    href: itemHref(drawing, item),
  }));

/** What can be done now, and what it costs. */
export const callView = (site: SiteFacts, { call, subscription }: CallFacts, words: Words['call']) => ({
  words,
  call,
  description: typeset(site.description, site.lang),
  subscription: subscription && {
    name: typeset(subscription.name, site.lang),
    price: priceText(subscription.price, pageLang(site.lang)),
  },
});

/** The recording, with the moments that a reader of the article would look for. */
const replayView = ({ facts: { cycle, site }, wording }: Drawing) => {
  const { lang } = site;
  const { replay } = cycle;
  const shortNames = new Map(cycle.items.map(({ slug, inText }) => [slug, inText.short]));
  const shortened = (chapter: Chapter): Chapter =>
    chapter.item === undefined ? chapter : { ...chapter, item: shortNames.get(chapter.name) ?? chapter.item };
  return (
    replay && {
      ...replay,
      marks: chaptersOf(cycle)
        .filter(({ sought }) => sought)
        .map((chapter) => ({
          clock: clockText(chapter.start),
          title: typeset(wording.live.chapterTitle(shortened(chapter)), lang),
          href: momentAddress(replay.address, chapter.start),
        })),
    }
  );
};

const proseView = (drawing: Drawing, part: TellingPart & { part: 'prose' }, position: number) => ({
  story: storyHtml(
    drawing,
    { file: drawing.facts.cycle.story.file, tree: part.tree },
    `part-${position + 1}-`,
    2,
  ),
  opening: part.opening,
});

const wholeBoxView = (drawing: Drawing) => {
  const { facts, words } = drawing;
  const { wholeBox, hero, value } = facts.cycle;
  const { lang } = facts.site;
  return {
    words: words.wholeBox,
    picture: wholeBox && wholeBox.file !== hero?.file && plate(drawing, wholeBox, widePlate),
    caption: wholeBox?.caption && typeset(wholeBox.caption, lang),
    items: contentsOf(drawing),
    value: value && {
      said: words.wholeBox.value(priceText(value.total, pageLang(lang))),
      on: { iso: value.on, words: longDate(value.on, pageLang(lang)) },
    },
  };
};

const voicesView = (drawing: Drawing) => ({
  words: drawing.words.voices,
  voices: drawing.facts.cycle.voices.map((voice) => ({
    ...voice,
    text: typeset(voice.text, drawing.facts.site.lang),
  })),
  replay: replayView(drawing),
});

const peekView = (drawing: Drawing) => {
  const { peek } = drawing.facts.cycle;
  return {
    words: drawing.words.peek,
    text: peek && typeset(peek.text, drawing.facts.site.lang),
    picture: peek?.picture && plate(drawing, peek.picture, itemPlate),
  };
};

declare module './templates.ts' {
  interface TemplateData {
    prose: ReturnType<typeof proseView>;
    item: ReturnType<typeof itemView>;
    'whole-box': ReturnType<typeof wholeBoxView>;
    voices: ReturnType<typeof voicesView>;
    peek: ReturnType<typeof peekView>;
    call: ReturnType<typeof callView>;
  }
}

/** What one template is given. */
export type DrawnPart =
  | { readonly template: 'prose'; readonly data: ReturnType<typeof proseView> }
  | { readonly template: 'item'; readonly data: ReturnType<typeof itemView> }
  | { readonly template: 'whole-box'; readonly data: ReturnType<typeof wholeBoxView> }
  | { readonly template: 'voices'; readonly data: ReturnType<typeof voicesView> }
  | { readonly template: 'peek'; readonly data: ReturnType<typeof peekView> }
  | { readonly template: 'call'; readonly data: ReturnType<typeof callView> };

const drawnPart = (drawing: Drawing, part: TellingPart, position: number): DrawnPart => {
  switch (part.part) {
    case 'prose':
      return { template: 'prose', data: proseView(drawing, part, position) };
    case 'item':
      return { template: 'item', data: itemView(drawing, part.item) };
    case 'box':
      return { template: 'whole-box', data: wholeBoxView(drawing) };
    case 'voices':
      return { template: 'voices', data: voicesView(drawing) };
    case 'peek':
      return { template: 'peek', data: peekView(drawing) };
    case 'call':
      return {
        template: 'call',
        data: callView(drawing.facts.site, drawing.facts.call, drawing.words.call),
      };
  }
};

/** Every part of the cycle's article, in order. */
export const drawnParts = (drawing: Drawing): readonly DrawnPart[] =>
  tellingOf(drawing.facts.cycle).parts.map((part, position) => drawnPart(drawing, part, position));
