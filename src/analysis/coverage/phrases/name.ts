/** What a name says: its head, its kind, and the phrases a shopper would type for it. */
import { itemAt, lastOf } from '../../../text/item-at.ts';
import type { Language, Word } from '../../language/language.ts';
import {
  determiners,
  particles,
  prepositions,
  relatives,
  verbsWithParticles,
} from '../../language/lexicon/grammar.ts';
import { containers, sizes, units } from '../../language/lexicon/measures.ts';
import { audiences } from '../../language/lexicon/settings.ts';
import { fixedAt, type Modifier } from './modifiers.ts';
import { isNumber, type NameWord } from './name-words.ts';
import { onlyDescribes, readThing, startsWithGoods, type Thing } from './thing.ts';

/** What a phrase keeps of the name it was taken from. */
export type NameOrigin =
  | 'name without its measure'
  | 'name with what follows it'
  | 'name without its other qualities'
  | 'both things of the name'
  | 'what it is for, before the thing'
  | 'kind in the name'
  | 'name';

/** A phrase that a name gives. */
interface NamePhrase {
  /** Lower case, accents kept, one space between words. */
  readonly text: string;
  readonly origin: NameOrigin;
  /** The word of `text` that says what the thing is, counted from 0. */
  readonly head: number;
}

/** A name taken apart. */
interface ReadName {
  /** The word that says what it is, lower case, as it stands in the name; empty where the name has no word. */
  readonly head: string;
  /** The head with the nouns before it, in the singular: "watering can". */
  readonly kind: string;
  /** The fullest first; at least one for any name with a letter. */
  readonly phrases: readonly NamePhrase[];
}

/** Names longer than this are texts: what matters for a shopper stands in front. */
const MOST_WORDS = 40;

/** Modifiers of one thing that are tried one by one with its kind. */
const MOST_MODIFIERS = 4;

/** Signs between words after which a card adds something to the name. */
const BREAK = /[,;:|()[\]{}•·]|\s[-/]\s|[–—]/;
/** Signs that stand for "and". */
const AND = /[&+＆]/;

const HYPHEN = /^[-\u2010\u2011]$/;

/** What stands between quotes behind a thing is its title, where anything is left without it: mug “Plant Lady”. */
const withoutTitles = (name: string): string => {
  const rest = name.replace(/(?:[“„«]|(?<!\d)"(?=\S))[^”“»"]*(?:[”“»]|(?<!\d)")/g, ' | ');
  return /\p{L}/u.test(rest) ? rest : name;
};

interface NamePiece {
  readonly word: NameWord;
  /** The sign or word before it joins it to the piece before as "and" does. */
  readonly and: boolean;
}

/** Words as a shopper would type them. */
export const textOf = (words: readonly Word[]): string =>
  words
    .map(({ text, start }, i) => {
      // Scripts without spaces: two words with nothing between them are written so.
      const space = i === 0 || words[i - 1]?.end === start ? '' : ' ';
      return space + text.toLowerCase().replace(/[\u2018\u02bc]/g, '’');
    })
    .join('');

const isAnd = ({ folded }: Word): boolean => folded === 'and' || folded === 'or' || folded === 'n';

/** The name cut where punctuation cuts it, "and" in any spelling taken out and noted. */
const segmentsOf = (name: string, language: Language): readonly (readonly NamePiece[])[] => {
  const segments: NamePiece[][] = [[]];
  let end = 0;
  let and = false;
  const text = withoutTitles(name);
  for (const plain of language.words(text).slice(0, MOST_WORDS)) {
    const gap = text.slice(end, plain.start);
    const word: NameWord = HYPHEN.test(gap) ? { ...plain, hyphened: true } : plain;
    end = word.end;
    if (BREAK.test(gap) && segments.at(-1)?.length !== 0) {
      segments.push([]);
      and = false;
    }
    if (AND.test(gap)) and = true;
    if (isAnd(word)) {
      and = true;
      continue;
    }
    // Nothing stands before the first word that it could be joined to.
    segments.at(-1)?.push({ word, and: and && segments.at(-1)?.length !== 0 });
    and = false;
  }
  return segments.filter((segment) => segment.length > 0);
};

/** The first segment that names a thing, with those before it that only describe: "Copper, engraved plant labels". */
const mainSegment = (segments: readonly (readonly NamePiece[])[]): readonly NamePiece[] => {
  const before: NamePiece[] = [];
  for (const segment of segments) {
    const words = segment.map(({ word }) => word);
    // "Handmade paper, 10 sheets": a measure ends what was named.
    if (before.some(({ word }) => !isNumber(word)) && words[0] && isNumber(words[0])) return before;
    const [only] = words;
    const held =
      words.length > 1 && contentsAt(words) !== undefined && onlyDescribes(words.slice(contentsAt(words)));
    if (
      !held &&
      !onlyDescribes(words) &&
      !(words.length === 1 && only && /^(?:set|pair|pack)s?$/.test(only.folded))
    )
      return [...before, ...segment];
    if (!held) before.push(...segment);
  }
  return segments[0] ?? [];
};

/** Where the contents begin in "large tin of plant ties": the index after `of`; undefined where nothing is held. */
const contentsAt = (words: readonly Word[]): number | undefined => {
  const of = words.findIndex(({ folded }) => folded === 'of');
  const container = words[of - 1];
  if (of < 1 || of === words.length - 1 || !container) return undefined;
  const measured = of > 1 && units.has(container.folded) && isNumber(itemAt(words, of - 2));
  if (!measured && !containers.has(container.folded)) return undefined;
  return onlyDescribes(words.slice(0, of - 1)) ? of + 1 : undefined;
};

/** Where what follows the thing begins: "for pruning roses", "that have lids", "with saucer". */
const cutOf = (words: readonly Word[]): number => {
  for (let i = 0; i < words.length; i++) {
    const fixed = fixedAt(words, i)?.length ?? 0;
    if (fixed > 0) {
      i += fixed - 1;
      continue;
    }
    const { folded } = itemAt(words, i);
    if (!(prepositions.has(folded) || relatives.has(folded) || folded === 'no' || folded === 'not')) continue;
    // "over the door hook", "above toilet cabinet": what stands in front is said of the thing after it.
    if (i === 0) continue;
    const before = itemAt(words, i - 1);
    const after = words[i + 1];
    if (particles.has(folded) && verbsWithParticles.has(before.folded)) {
      // "glow in the dark", "fold out": at the end, the verb too is said of what is before it.
      if (after) continue;
      return i > 1 ? i - 1 : i + 1;
    }
    if (folded === 'in' && isNumber(before) && after) continue;
    if (sizes.has(before.folded) && after && sizes.has(after.folded)) continue;
    // "bar stools set of 2": what counts them follows them.
    if (folded === 'of' && i > 1 && containers.has(before.folded) && after && isNumber(after)) return i - 1;
    return i;
  }
  return words.length;
};

/** "chair and a half" is one chair, and a wide one. */
const HALVES = new Set(['half', 'third', 'quarter']);

/** An "and" that stands nowhere: in whatever way the name has it, a shopper types the word. */
const andWord = (language: Language): Word => ({ ...language.word('and'), start: -1, end: -1 });

/** The things of a run of words that "and" joins, each with the words it shares. */
const partsOf = (pieces: readonly NamePiece[], and: Word): readonly (readonly NameWord[])[] => {
  const parts: NameWord[][] = [[]];
  for (const { word, and: joins } of pieces) {
    if (joins) parts.push([]);
    parts.at(-1)?.push(word);
  }
  const joined: NameWord[][] = [];
  for (const part of parts) {
    const before = joined.at(-1);
    const [first, second] = part;
    if (before && first && second && determiners.has(first.folded) && HALVES.has(second.folded)) {
      before.push(...part.slice(2));
      continue;
    }
    if (before && sharesHead(before, part)) before.push(and, ...part);
    else joined.push([...part]);
  }
  return joined;
};

/** Whether what stands before an "and" is said of the thing after it: "salt and pepper mill", "black and white rug". */
const sharesHead = (before: readonly Word[], after: readonly Word[]): boolean => {
  if (onlyDescribes(before)) return true;
  const bare = before.filter((word) => !onlyDescribes([word]) && !audiences.has(word.folded));
  if (bare.length !== 1 || after.filter((word) => !onlyDescribes([word])).length < 2) return false;
  return !startsWithGoods(bare) || startsWithGoods(after);
};

/** A name taken apart. */
interface ParsedName {
  readonly things: readonly Thing[];
  /** From the preposition or the opening of a clause on: "for pruning roses". */
  readonly tail: readonly Word[];
}

/** The things a name speaks of, and what follows them. English alone. */
export const parseName = (name: string, language: Language): ParsedName => {
  const pieces = mainSegment(segmentsOf(name, language));
  const all = pieces.map(({ word }) => word);
  const held = contentsAt(all) ?? 0;
  const words = all.slice(held);
  const cut = cutOf(words);
  const things = partsOf(pieces.slice(held, held + cut), andWord(language)).flatMap(
    (part) => readThing(part) ?? [],
  );
  return { things, tail: words.slice(cut) };
};

/** One phrase of a thing's words. */
const phrase = (words: readonly Word[], head: Word, origin: NameOrigin): NamePhrase => ({
  text: textOf(words),
  origin,
  head: words.indexOf(head),
});

/** All words of some modifiers, in order. */
export const wordsOf = (modifiers: readonly Modifier[]): readonly Word[] =>
  modifiers.flatMap(({ words }) => words);

const phrasesOfThing = (thing: Thing): readonly NamePhrase[] => {
  const { modifiers, head, kind } = thing;
  const others = modifiers.filter(({ words }) => !words.some((word) => kind.includes(word)));
  return [
    phrase([...wordsOf(modifiers), head], head, 'name without its measure'),
    ...(others.length > 1 ? others.slice(-MOST_MODIFIERS).reverse() : []).map(({ words }) =>
      phrase([...words, ...kind], head, 'name without its other qualities'),
    ),
    phrase(kind, head, 'kind in the name'),
  ];
};

/** Words after the thing that a shopper might still type. */
const MOST_TAIL = 3;

const phrasesWithTail = (thing: Thing, tail: readonly Word[]): readonly NamePhrase[] => {
  const [preposition, ...rest] = tail;
  if (!preposition || rest.length === 0 || rest.length > MOST_TAIL || rest.some(isNumber)) return [];
  const { modifiers, head, kind } = thing;
  const [purpose] = rest;
  return [
    phrase([...wordsOf(modifiers), head, ...tail], head, 'name with what follows it'),
    ...(preposition.folded === 'for' && purpose && /.{3}ing$/.test(purpose.folded)
      ? [phrase([purpose, ...kind], head, 'what it is for, before the thing')]
      : []),
  ];
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

/** A row of single words, the last followed by the head that they share: "bun, muffin and pudding tin". */
const ROW =
  /^((?:[\p{L}\p{M}'’-]+,\s)+)(?:and |& )?(?:([\p{L}\p{M}'’-]+),? (?:and|&) )?([\p{L}\p{M}'’-]+) (\p{L}[\p{L}\p{M}'’ -]*)$/u;

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
 * and kind. In another language the name is one phrase and its last word the head, by convention and no more.
 * Common practice, no source; measured against shoppers' phrases in `tests/analysis/name.test.ts`.
 */
export const readName = (given: string, language: Language): ReadName => {
  // Where words end depends on the normal form in some scripts (the runtime's breaks of decomposed Hangul).
  const name = given.normalize('NFC');
  const words = language.words(name).slice(0, MOST_WORDS);
  if (!language.english) return whole(name, words);
  const [nearest, ...others] = namesOfRow(name, language) ?? [];
  if (nearest !== undefined) {
    const read = readName(nearest, language);
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
  const { things, tail } = parseName(name, language);
  const [first] = things;
  if (!first || !/\p{L}/u.test(first.head.text)) return whole(name, words);
  const both = things.flatMap(({ modifiers, head }, i) => [
    ...(i > 0 ? [andWord(language)] : []),
    ...wordsOf(modifiers),
    head,
  ]);
  const last = lastOf(things);
  return {
    head: textOf([first.head]),
    kind: singularText(first.kind),
    phrases: withoutRepeats([
      ...(things.length > 1 ? [phrase(both, first.head, 'both things of the name')] : []),
      ...things.flatMap(phrasesOfThing),
      ...phrasesWithTail(last, tail),
    ]),
  };
};
