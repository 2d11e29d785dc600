/** What a name says: its head, its kind, and the phrases a shopper would type for it. */
import { itemAt, lastOf } from '../../../text/item-at.ts';
import type { Language, Word } from '../../language/language.ts';
import { ARTICLES } from '../../language/lexicon/function-words.ts';
import { titledGoods } from '../../language/lexicon/goods.ts';
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
import {
  type NamePhrase,
  phrasesOfThing,
  phrasesWithFlavours,
  phrasesWithPurpose,
  textOf,
  wordsOf,
} from './name-phrases.ts';
import {
  describes,
  isEaten,
  isFlavour,
  isFlavoured,
  isGoods,
  isNumber,
  type NameWord,
} from './name-words.ts';
import { onlyDescribes, readThing, startsWithGoods, type Thing } from './thing.ts';

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

/** Names longer than this are texts: what matters for a shopper stands in front. */
const MOST_WORDS = 40;

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
 * and kind. In another language the name is one phrase and its last word the head, by convention and no more.
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
