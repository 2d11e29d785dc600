/** A name taken apart: the things that it speaks of, and what follows them. English alone. */
import { itemAt } from '../../../text/item-at.ts';
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
import { fixedAt } from './modifiers.ts';
import { isNumber, type NameWord } from './name-words.ts';
import { onlyDescribes, readThing, startsWithGoods, type Thing } from './thing.ts';

/** Names longer than this are texts: what matters for a shopper stands in front. */
export const MOST_WORDS = 40;

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

export interface NamePiece {
  readonly word: NameWord;
  /** The sign or word before it joins it to the piece before as "and" does. */
  readonly and: boolean;
}

const isAnd = ({ folded }: Word): boolean => folded === 'and' || folded === 'or' || folded === 'n';

/** The name cut where punctuation cuts it, "and" in any spelling taken out and noted. */
export const segmentsOf = (name: string, language: Language): readonly (readonly NamePiece[])[] => {
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
const cutOf = (words: readonly NameWord[]): number => {
  for (let i = 0; i < words.length; i++) {
    const fixed = fixedAt(words, i)?.length ?? 0;
    if (fixed > 0) {
      i += fixed - 1;
      continue;
    }
    const word = itemAt(words, i);
    const { folded } = word;
    // "pull-along", "hand-in-hand", "to-do": what hyphens hold together says one thing.
    if (word.hyphened || words[i + 1]?.hyphened) continue;
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
  // "Fig and cedar soy candle": what is no thing itself is said of the one behind it.
  if (bare.length === 1 && before.length === 1 && after.length > 1 && !startsWithGoods(bare)) return true;
  if (bare.length !== 1 || after.filter((word) => !onlyDescribes([word])).length < 2) return false;
  return !startsWithGoods(bare) || startsWithGoods(after);
};

/** A name taken apart. */
export interface ParsedName {
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
