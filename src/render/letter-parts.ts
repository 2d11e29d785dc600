/**
 * A cycle's reveal as a letter tells it, before any markup: both forms of the letter are made of this, so that neither
 * says what the other does not. Its words are the article's own.
 */
import type { Box, Cycle, Item, Moment, Picture } from '../model/box.ts';
import { monthName } from '../model/calendar.ts';
import { type Call, callFor } from '../model/calls.ts';
import { cautionsOf } from '../model/cautions.ts';
import { paragraphsOf } from '../model/paragraphs.ts';
import { tellingOf } from '../model/telling.ts';
import { sentencesOf } from '../text/sentences.ts';
import { absoluteAddress, absoluteItemAddress, articlePath } from './addresses.ts';
import { countryName } from './article-parts.ts';
import { itemPlate, widePlate } from './layouts.ts';
import { priceText } from './money.ts';
import type { PictureOutput } from './output.ts';
import { awayPicture, type PictureLayout } from './pictures.ts';
import { typeset } from './typeset.ts';

/** A picture in the site, by its full address. */
export interface LetterPicture {
  readonly src: string;
  readonly alt: string;
  readonly output: PictureOutput;
}

export interface LetterItem {
  readonly number: number;
  readonly name: string;
  readonly kind: string;
  readonly lead: boolean;
  readonly href: string;
  /** What the lead item is; of another, how it goes with it. */
  readonly line: string;
  readonly picture?: LetterPicture;
  readonly cautions: readonly { readonly label: string; readonly lines: readonly string[] }[];
}

export interface Letter {
  readonly lang: string;
  readonly boxName: string;
  readonly month: string;
  readonly theme: string;
  readonly title: string;
  readonly article: string;
  /** What stands at the top, and where it leads: to the film where there is one. */
  readonly top?: LetterPicture & { readonly href: string };
  readonly replay?: { readonly address: string; readonly minutes?: number };
  /** The article's first paragraph. */
  readonly hook?: string;
  /** Lead item first. */
  readonly items: readonly LetterItem[];
  /** What its picture at the top is captioned. */
  readonly wholeBox?: string;
  readonly voices: readonly { readonly text: string; readonly name: string; readonly given: boolean }[];
  readonly peek?: { readonly text: string; readonly picture?: LetterPicture };
  readonly call?: Call;
  readonly description: string;
  /** Of one box, for a call that sells boxes. */
  readonly price?: string;
  readonly author: string;
  readonly postal?: string;
  readonly email?: string;
  readonly unsubscribe?: string;
}

/**
 * Pixels of a picture across the column and of one beside its words, which a phone shows across its own: about three
 * for two CSS pixels of a column of 600, two on a phone.
 */
const ACROSS = 960;
const BESIDE = 640;

const pictureFor = (
  { settings }: Box,
  picture: Picture,
  layout: PictureLayout,
  most: number,
  mark?: 'play',
): LetterPicture => {
  const output = awayPicture(picture, layout, { most, ...(mark ? { mark } : {}) });
  return { src: absoluteAddress(settings, output.path), alt: picture.alt, output };
};

const letterItem = (box: Box, item: Item, shown: ReadonlySet<string>): LetterItem => {
  const { lang } = box.settings;
  const picture = item.pictures.find(({ file }) => !shown.has(file)) ?? item.pictures[0];
  const line = item.lead ? item.description : (item.goesWith ?? sentencesOf(item.description, lang)[0] ?? '');
  return {
    number: item.number,
    name: typeset(item.name, lang),
    kind: typeset(item.kind, lang),
    lead: item.lead,
    href: absoluteItemAddress(box, item),
    line: typeset(line, lang),
    ...(picture ? { picture: pictureFor(box, picture, itemPlate, item.lead ? ACROSS : BESIDE) } : {}),
    cautions: cautionsOf(item).map(({ label, lines }) => ({
      label,
      lines: lines.map((one) => typeset(one, lang)),
    })),
  };
};

/** The items in the order of the telling, but the lead item first wherever the article places it. */
const itemsOf = (cycle: Cycle): readonly Item[] => {
  const told = tellingOf(cycle).parts.flatMap((part) => (part.part === 'item' ? [part.item] : []));
  return [...told.filter(({ lead }) => lead), ...told.filter(({ lead }) => !lead)];
};

/** The first paragraph of the opening, as plain words. */
const hookOf = (cycle: Cycle, lang: string): string | undefined => {
  const opening = tellingOf(cycle).parts.find((part) => part.part === 'prose');
  const first = opening?.part === 'prose' && paragraphsOf(opening.tree, cycle.story.file)[0];
  return first ? typeset(first.text, lang) : undefined;
};

/** The letter of a cycle as of a moment: only its call depends on the moment. */
export const letterOf = (box: Box, cycle: Cycle, asOf: Moment): Letter => {
  const { settings } = box;
  const { lang, postalAddress, subscription } = settings;
  const { replay, peek } = cycle;
  const article = absoluteAddress(settings, articlePath(cycle));
  // The live is the box being opened, so its picture is the open box, and then need not be shown again below.
  const atTop = cycle.wholeBox ?? cycle.hero;
  const hook = hookOf(cycle, lang);
  const call = callFor(box, cycle, asOf);
  const country = postalAddress?.addressCountry;
  const postal = Object.values({
    ...postalAddress,
    // A letter goes abroad, where the code says little.
    ...(country === undefined ? {} : { addressCountry: countryName(country, lang) }),
  })
    .filter(Boolean)
    .join(', ');
  return {
    lang,
    boxName: typeset(settings.name, lang),
    month: monthName(cycle, lang),
    theme: typeset(cycle.theme, lang),
    title: typeset(cycle.title, lang),
    article,
    ...(atTop
      ? {
          top: {
            ...pictureFor(box, atTop, widePlate, ACROSS, replay && 'play'),
            href: replay?.address ?? article,
          },
        }
      : {}),
    ...(replay ? { replay } : {}),
    ...(hook === undefined ? {} : { hook }),
    items: itemsOf(cycle).map((item) => letterItem(box, item, new Set(atTop ? [atTop.file] : []))),
    ...(cycle.wholeBox?.caption ? { wholeBox: typeset(cycle.wholeBox.caption, lang) } : {}),
    voices: cycle.voices.map(({ text, name, given }) => ({
      text: typeset(text, lang),
      name: typeset(name, lang),
      given,
    })),
    ...(peek
      ? {
          peek: {
            text: typeset(peek.text, lang),
            ...(peek.picture ? { picture: pictureFor(box, peek.picture, itemPlate, ACROSS) } : {}),
          },
        }
      : {}),
    ...(call ? { call } : {}),
    description: typeset(settings.description, lang),
    ...(subscription && call?.kind !== 'spare' ? { price: priceText(subscription.price, lang) } : {}),
    author: cycle.author,
    ...(postal ? { postal: typeset(postal, lang) } : {}),
    ...(settings.email === undefined ? {} : { email: settings.email }),
    ...(settings.unsubscribe === undefined ? {} : { unsubscribe: settings.unsubscribe }),
  };
};

/** Every picture that a letter names. */
export const picturesOf = ({ top, items, peek }: Letter): readonly PictureOutput[] =>
  [top, ...items.map(({ picture }) => picture), peek?.picture].flatMap((one) => (one ? [one.output] : []));
