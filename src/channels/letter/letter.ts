/**
 * A cycle's reveal as a letter tells it, before any markup: both forms of the letter are made of this, so that neither
 * says what the other does not. Its words are the article's own.
 */

import type { BoxSettings, Cycle, Item } from '../../model/box.ts';
import { monthName } from '../../model/calendar.ts';
import type { Call } from '../../model/calls.ts';
import { type CautionText, type CautionWords, cautionsOf } from '../../model/cautions.ts';
import { paragraphsOf } from '../../model/paragraphs.ts';
import { tellingOf } from '../../model/telling.ts';
import { absoluteAddress, articlePath, itemAnchor } from '../../render/addresses.ts';
import { countryName } from '../../render/article-parts.ts';
import { priceText } from '../../render/money.ts';
import { pageLang } from '../../render/page-lang.ts';
import { typeset } from '../../render/typeset.ts';
import { defined } from '../../text/defined.ts';
import { sentencesOf } from '../../text/sentences.ts';
import {
  inSite,
  itemPicture,
  type LetterLogo,
  type LetterPicture,
  letterLogo,
  type PictureAddress,
  peekPicture,
  topPicture,
} from './pictures.ts';

/** What a letter is made of. */
export interface LetterInput {
  readonly cycle: Cycle;
  readonly settings: BoxSettings;
  /** The call that holds. */
  readonly call: Call | undefined;
}

/** An item as a letter tells it, its words dressed. */
export interface LetterItem {
  readonly number: number;
  readonly name: string;
  readonly kind: string;
  readonly lead: boolean;
  readonly href: string;
  /** What the lead item is; of another, how it goes with it. */
  readonly line: string;
  readonly picture?: LetterPicture;
  readonly cautions: readonly CautionText[];
}

/** A letter before any markup, its words dressed. */
export interface Letter {
  readonly lang: string;
  readonly boxName: string;
  readonly logo?: LetterLogo;
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

const letterItem = (
  { cycle, settings }: LetterInput,
  item: Item,
  cautionText: CautionWords,
  addressOf: PictureAddress,
): LetterItem => {
  const { lang } = settings;
  const picture = itemPicture(addressOf, cycle, item);
  const line = item.lead ? item.description : (item.goesWith ?? sentencesOf(item.description, lang)[0] ?? '');
  return defined({
    number: item.number,
    name: typeset(item.name, lang),
    kind: typeset(item.kind, lang),
    lead: item.lead,
    href: `${absoluteAddress(settings, articlePath(cycle))}#${itemAnchor(item)}`,
    line: typeset(line, lang),
    picture,
    cautions: cautionsOf(item)
      .map(cautionText)
      .map(({ label, lines }) => ({ label, lines: lines.map((one) => typeset(one, lang)) })),
  });
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

/** The letter of a cycle, its pictures in the site, or where `addressOf` says. */
export const letterOf = (
  input: LetterInput,
  cautionText: CautionWords,
  addressOf: PictureAddress = inSite(input.settings),
): Letter => {
  const { cycle, settings, call } = input;
  const { lang, postalAddress, subscription } = settings;
  const { replay, peek } = cycle;
  const article = absoluteAddress(settings, articlePath(cycle));
  const top = topPicture(addressOf, cycle);
  const shownPeek = peekPicture(addressOf, cycle);
  const hook = hookOf(cycle, lang);
  const country = postalAddress?.addressCountry;
  const postal = Object.values({
    ...postalAddress,
    // A letter goes abroad, where the code says little.
    addressCountry: country === undefined ? undefined : countryName(country, lang),
  })
    .filter(Boolean)
    .join(', ');
  return defined({
    lang,
    boxName: typeset(settings.name, lang),
    logo: letterLogo(addressOf, settings),
    month: monthName(cycle, pageLang(lang)),
    theme: typeset(cycle.theme, lang),
    title: typeset(cycle.title, lang),
    article,
    top: top ? { ...top, href: replay?.address ?? article } : undefined,
    replay,
    hook,
    items: itemsOf(cycle).map((item) => letterItem(input, item, cautionText, addressOf)),
    wholeBox: cycle.wholeBox?.caption ? typeset(cycle.wholeBox.caption, lang) : undefined,
    voices: cycle.voices.map(({ text, name, given }) => ({
      text: typeset(text, lang),
      name: typeset(name, lang),
      given,
    })),
    peek: peek && defined({ text: typeset(peek.text, lang), picture: shownPeek }),
    call,
    description: typeset(settings.description, lang),
    price: subscription && call?.kind !== 'spare' ? priceText(subscription.price, pageLang(lang)) : undefined,
    author: cycle.author,
    postal: postal ? typeset(postal, lang) : undefined,
    email: settings.email,
    unsubscribe: settings.unsubscribe,
  });
};
