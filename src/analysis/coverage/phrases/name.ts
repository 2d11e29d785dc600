/** What a name says: its head, its kind, and the phrases a shopper would type for it. */
import { itemAt, lastOf } from '../../../text/item-at.ts';
import type { Language, Word } from '../../language/language.ts';
import { ARTICLES } from '../../language/lexicon/function-words.ts';
import { titledGoods } from '../../language/lexicon/goods.ts';
import {
  type NamePhrase,
  phrasesOfThing,
  phrasesWithFlavours,
  phrasesWithPurpose,
  textOf,
  wordsOf,
} from './name-phrases.ts';
import { describes, isEaten, isFlavour, isFlavoured, isGoods } from './name-words.ts';
import { MOST_WORDS, type ParsedName, parseName, segmentsOf } from './parse-name.ts';
import { onlyDescribes, type Thing } from './thing.ts';

export type { NameOrigin } from './name-phrases.ts';

/** A name taken apart. */
export interface ReadName {
  /** The word that says what it is, lower case, as it stands in the name; empty where the name has no word. */
  readonly head: string;
  /** The head with the nouns before it, in the singular: "watering can". */
  readonly kind: string;
  /** The fullest first; at least one for any name with a letter. */
  readonly phrases: readonly NamePhrase[];
}

/** Most scents and flavours that are told apart. */
const MOST_FLAVOURS = 3;

/** Scents and flavours that a card adds behind the thing, one by one: "Soap, lavender and oat". */
const flavoursBehind = (name: string, language: Language): readonly (readonly Word[])[] =>
  segmentsOf(name, language)
    .slice(1)
    .flatMap((segment) => {
      const groups: Word[][] = [];
      for (const { word, and } of segment)
        if (and || groups.length === 0) groups.push([word]);
        else groups.at(-1)?.push(word);
      return groups;
    })
    .filter((group) => group.length <= 2 && group.every(isFlavour))
    .slice(0, MOST_FLAVOURS);

/** Where some words stand among others, by their keys: the index after the last; -1 where they do not. */
const endOf = (sought: readonly Word[], words: readonly Word[]): number => {
  for (let end = sought.length; end <= words.length; end++)
    if (sought.every(({ key }, i) => key === words[end - sought.length + i]?.key)) return end;
  return -1;
};

/**
 * The same where the record says what the thing is: its kind's head is the name's, wherever it stands in it. "Candle tin"
 * of kind candle is no tin; "rug galveston" of kind rug no galveston.
 */
const parseAs = (name: string, kind: readonly Word[], language: Language): ParsedName => {
  const parsed = parseName(name, language);
  const head = kind.at(-1);
  if (!head) return parsed;
  const isIt = ({ head: own }: Thing): boolean => own.key === head.key;
  if (parsed.things.some(isIt))
    return {
      ...parsed,
      things: [
        ...parsed.things.filter(isIt),
        ...parsed.things.filter((one) => !isIt(one) && isGoods(one.head) && !isEaten(one.head)),
      ],
    };
  for (const segment of segmentsOf(name, language)) {
    const words = segment.map(({ word }) => word);
    const end = Math.max(endOf(kind, words), endOf([head], words));
    if (end < 1) continue;
    const cut = parseName(name.slice(itemAt(words, 0).start, itemAt(words, end - 1).end), language);
    if (cut.things.some(isIt)) return cut;
  }
  return parsed;
};

/** The thing with the record's kind as its own, where its words end so. */
const asKind = (thing: Thing, kind: readonly Word[]): Thing => {
  const { modifiers, head } = thing;
  if (kind.at(-1)?.key !== head.key) return thing;
  const ending = [...wordsOf(modifiers), head].slice(-kind.length);
  if (endOf(kind, ending) === kind.length) return { ...thing, kind: ending, isStated: true };
  // "Quiet Evening tea" is tea: what stands before it is its title.
  return titledGoods.has(head.key) ? { ...thing, kind: [head] } : thing;
};

/** The name without the maker, where it begins so: "Safe Mill window lock" by Safe Mill. */
const withoutMaker = (name: string, maker: readonly Word[], words: readonly Word[]): string => {
  let at = 0;
  while (at < maker.length && maker[at]?.key === words[at]?.key) at++;
  const next = words[at];
  const [first] = words;
  if (at === 0 || !first || !next) return name;
  // One word of several may be chance: "Linen apron" by Linen & Daughters.
  const isWhole = at === maker.length || !(isGoods(first) || describes(first));
  return isWhole ? name.slice(next.start) : name;
};

const singularText = (kind: readonly Word[]): string => {
  const last = lastOf(kind);
  // The key has lost its accents: it is wanted only where the word is a plural.
  if (last.key === last.folded) return textOf(kind);
  return `${textOf(kind.slice(0, -1))} ${last.key}`.trim();
};

const withoutRepeats = (phrases: readonly NamePhrase[]): readonly NamePhrase[] =>
  phrases.filter(({ text }, i) => phrases.findIndex((other) => other.text === text) === i);

/** A name or a search as people type it: in small letters, with single spaces. Its signs stay as they are. */
export const asTyped = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** A name that is a title, without what the card adds behind it and without an article in front. */
export const titleOf = (name: string, language: Language): string => {
  const [words = []] = segmentsOf(name, language).map((segment) => segment.map(({ word }) => word));
  const [first, last] = [words.find(({ folded }) => !ARTICLES.has(folded)), words.at(-1)];
  return first && last ? asTyped(name.slice(first.start, last.end)) : asTyped(name);
};

/** A row of single words, the last followed by the head that they share: "bun, muffin and pudding tin". */
const ROW =
  /^((?:[\p{L}\p{M}'’-]+,\s)+)(?:and |& )?(?:([\p{L}\p{M}'’-]+),? (?:and|&) )?([\p{L}\p{M}'’-]+) (?!(?:and|or)\s)(\p{L}[\p{L}\p{M}'’ -]*)$/u;

/**
 * The names of a row that shares a head, the last first, which has it beside it: "pudding tin", "bun tin", "muffin tin".
 * Undefined for any other name, and where the row only describes ("black, white and red blanket").
 */
const namesOfRow = (name: string, language: Language): readonly string[] | undefined => {
  const [, before, middle, last, head] = ROW.exec(name.replace(/(?:,\s*\d|\s[([]).*$/, '')) ?? [];
  if (before === undefined || last === undefined || head === undefined || !/ (?:and|&) /.test(name))
    return undefined;
  const others = [...before.split(/,\s/).filter(Boolean), ...(middle === undefined ? [] : [middle])];
  if (others.some((other) => onlyDescribes(language.words(other)))) return undefined;
  return [`${last} ${head}`, ...others.map((other) => `${other} ${head}`)];
};

/** What the record says beside the name. */
interface KnownOfName {
  /** What the thing is: its last word is the name's head, wherever that stands in it. */
  readonly kind?: string;
  /** Who made it: what people type of it is not the thing's own name. */
  readonly maker?: string;
}

/** The name as it is, where it cannot be taken apart. */
const whole = (name: string, words: readonly Word[]): ReadName => {
  const text = /\p{L}/u.test(name) ? asTyped(name) : '';
  const head = text !== '' && words.length > 0 ? textOf(words.slice(-1)) : text;
  return {
    head,
    kind: text,
    phrases: text === '' ? [] : [{ text, origin: 'name', head: Math.max(0, words.length - 1) }],
  };
};

/**
 * Takes a name apart in English: measures, counts, determiners and sizes fall away; what holds it ("set of",
 * "tin of") is seen through; the head is the last word before the first preposition or clause once qualities
 * that trail behind it are trimmed. Of two things joined by "and" both give phrases, and the first gives head
 * and kind. Where the record says the kind (`about`), its head is the name's wherever the name has it. In another language the name is one phrase and its last word the head, by convention and no more.
 * Common practice, no source; measured against shoppers' phrases in `tests/analysis/name.test.ts`.
 */
export const readName = (given: string, language: Language, about: KnownOfName = {}): ReadName => {
  // Where words end depends on the normal form in some scripts (the runtime's breaks of decomposed Hangul).
  const name = given.normalize('NFC');
  const words = language.words(name).slice(0, MOST_WORDS);
  // Scripts without spaces have no words that could be taken out of a name.
  if (!language.english || !/\p{Script=Latin}/u.test(name)) return whole(name, words);
  const [nearest, ...others] = namesOfRow(name, language) ?? [];
  if (nearest !== undefined) {
    const read = readName(nearest, language, about);
    return {
      ...read,
      phrases: withoutRepeats([
        ...read.phrases,
        ...others.flatMap((other) =>
          readName(other, language).phrases.map((one) => ({
            ...one,
            origin: 'name without its other qualities' as const,
          })),
        ),
      ]),
    };
  }
  const kind = language.words(about.kind ?? '');
  const parsed = parseAs(withoutMaker(name, language.words(about.maker ?? ''), words), kind, language);
  const things = parsed.things.map((thing) => asKind(thing, kind));
  const [first] = things;
  if (!first || !/\p{L}/u.test(first.head.text)) return whole(name, words);
  return {
    head: textOf([first.head]),
    kind: singularText(first.kind),
    phrases: withoutRepeats([
      ...things.flatMap(phrasesOfThing),
      ...phrasesWithPurpose(lastOf(things), parsed.tail),
      ...(isFlavoured(first.head) ? phrasesWithFlavours(first, flavoursBehind(name, language)) : []),
    ]),
  };
};
