/** What is asked → which documents answer it, best first. */
import type { Language, Word } from '../language/language.ts';
import { HEAD_FIELDS, HEAD_SHARE } from './options.ts';
import { type Guess, nearestForms } from './spelling.ts';
import { isPassedOver } from './text.ts';
import { scoreStem, stemsBeginning, type WholeIndex } from './whole-index.ts';

/** How a word that was asked for is met: as such (in any inflection), as a beginning, by a like spelling. */
export type Level = 'whole' | 'beginning' | 'slip';

/** How a document meets one word that was asked for. */
export interface Met {
  readonly level: Level;
  readonly score: number;
  /** Where it is met. */
  readonly fields: readonly string[];
}

/** A word of what was asked. */
export interface AskedWord {
  readonly text: string;
  readonly folded: string;
  /** Words of these stems meet it, by level. */
  readonly stems: Readonly<Record<Level, ReadonlySet<string>>>;
  /** The known words that it was taken for, where it is unknown itself. */
  readonly guesses: readonly Guess[];
  readonly known: boolean;
}

/** A document that answers. */
interface FoundItem {
  readonly id: number;
  readonly score: number;
  /** Every word is met. */
  readonly all: boolean;
}

/** What is found for a query. */
export interface Answer {
  readonly asked: readonly AskedWord[];
  /** Best first. */
  readonly found: readonly FoundItem[];
  /** How a document meets each word, in the order of `asked`. */
  readonly metBy: (id: number) => readonly (Met | undefined)[];
}

/** How near to a word counts as meeting it; all of it unless said otherwise. */
export interface FindOptions {
  /** Beginnings of words count. */
  readonly beginnings?: boolean;
  readonly slips?: boolean;
}

/** A word of so few letters begins too many others: only names are looked at, then what records say. */
const NAMES_ALONE_UP_TO = 2;
const RECORDS_ALONE_UP_TO = 3;
/** Words that a beginning stands for, the shortest first: more say nothing and take longer than a key is held. */
const MOST_BEGUN = 48;
/** A word before the last is finished, but people shorten: "wat can". */
const SHORTEST_BEGINNING_INSIDE = 3;
/** The best beginning stands so far below the least of the whole words, and slips below both. */
const BELOW = 0.9;
const SLIP_WEIGHT = 0.4;

/** Documents by number, each with its score and the fields that gave it. */
type Scores = Map<number, { score: number; readonly fields: string[] }>;

/** What a field's score counts for. */
const BOOST: Readonly<Record<string, number>> = Object.fromEntries(
  HEAD_FIELDS.map((field) => [field, HEAD_SHARE]),
);

const addScores = (
  into: Scores,
  index: WholeIndex,
  stems: Iterable<string>,
  fields: readonly string[] = index.fields,
): void => {
  for (const stem of stems)
    scoreStem(index, stem, fields, (id, score, field) => {
      const boosted = score * (BOOST[field] ?? 1);
      const held = into.get(id);
      if (!held) into.set(id, { score: boosted, fields: [field] });
      else {
        held.score += boosted;
        if (!held.fields.includes(field)) held.fields.push(field);
      }
    });
};

const extremes = (scores: Scores): { least: number; most: number } => {
  let least = Number.POSITIVE_INFINITY;
  let most = 0;
  for (const { score } of scores.values()) {
    if (score < least) least = score;
    if (score > most) most = score;
  }
  return { least, most };
};

/** Stems of words that begin as was typed: what the stem has lost may be what was typed of it. */
const begunStems = (index: WholeIndex, { folded, stem }: Word): readonly string[] =>
  stemsBeginning(index, folded)
    .filter((one) => one !== stem)
    .slice(0, MOST_BEGUN);

/** Answers to single words, kept by who asks often: at most keys only the last word is another. */
export type KnownWords = Map<string, WordAnswer>;

interface WordAnswer {
  readonly asked: AskedWord;
  readonly met: ReadonlyMap<number, Met>;
}

const findWord = (
  indexes: readonly WholeIndex[],
  word: Word,
  place: { readonly last: boolean; readonly passedOver: boolean },
  options: FindOptions,
): WordAnswer => {
  const { beginnings = true, slips = true } = options;
  const met = new Map<number, Met>();
  const put = (scores: Scores, level: Level, weight: number): void => {
    for (const [id, { score, fields }] of scores)
      if (!met.has(id)) met.set(id, { level, score: score * weight, fields });
  };

  const whole: Scores = new Map();
  if (!place.passedOver) for (const index of indexes) addScores(whole, index, [word.stem]);
  put(whole, 'whole', 1);

  const stemsBegun = new Set<string>();
  if (beginnings && (place.last || word.folded.length >= SHORTEST_BEGINNING_INSIDE)) {
    const letters = word.folded.length;
    const begun: Scores = new Map();
    for (const index of letters <= RECORDS_ALONE_UP_TO ? indexes.slice(0, 1) : indexes) {
      const fields = letters <= NAMES_ALONE_UP_TO ? index.fields.slice(0, 1) : index.fields;
      const stems = begunStems(index, word);
      addScores(begun, index, stems, fields);
      for (const stem of stems) stemsBegun.add(stem);
    }
    const ceiling = whole.size > 0 ? extremes(whole).least / extremes(begun).most : 1;
    put(begun, 'beginning', BELOW * ceiling);
  }

  const guesses =
    slips && met.size === 0 && !place.passedOver
      ? nearestForms(indexes, word.folded, beginnings && place.last)
      : [];
  const meant = new Set(guesses.map(({ stem }) => stem));
  if (meant.size > 0) {
    const alike: Scores = new Map();
    for (const index of indexes) addScores(alike, index, meant);
    put(alike, 'slip', SLIP_WEIGHT);
  }
  const stems = { whole: new Set([word.stem]), beginning: stemsBegun, slip: meant };
  const { text, folded } = word;
  return { asked: { text, folded, stems, guesses, known: whole.size > 0 || stemsBegun.size > 0 }, met };
};

/** The words of a query that are looked for, and whether each may be still typed. */
const wordsAsked = (query: string, language: Language) => {
  const words = language.words(query).filter(({ stem }) => stem !== '');
  const kept = words.filter(({ folded }) => !isPassedOver(folded, language));
  // Somebody who has typed "the" and nothing else may be on the way to "thermometer".
  const asked = kept.length > 0 ? kept : words.slice(-1);
  const unfinished = words.at(-1)?.end === query.length;
  const times = new Map<string, number>();
  for (const { stem } of asked) times.set(stem, (times.get(stem) ?? 0) + 1);
  const unique = new Map(asked.map((word) => [word.stem, word]));
  return [...unique.values()].map((word) => ({
    word,
    times: times.get(word.stem) as number,
    last: unfinished && word.end === query.length,
    passedOver: isPassedOver(word.folded, language),
  }));
};

/**
 * The answer of the indexes, that of names first, to a query.
 *
 * Order of the answers: first those that meet every word, among them those that meet more words as such; then
 * the score, a sum of BM25 over words and fields; then the number. So a beginning or a slip never outranks a
 * whole word: where a word is met as such anywhere, beginnings score below the least of that, and slips are
 * looked for only where neither is met. Without beginnings and slips the score alone decides among the rest.
 */
export const find = (
  indexes: readonly WholeIndex[],
  language: Language,
  query: string,
  options: FindOptions = {},
  known: KnownWords = new Map(),
): Answer => {
  const asked = wordsAsked(query, language);
  // Each part that comes is new documents, and another count of those that have a word.
  const come = indexes.map(({ parts }) => parts.length).join();
  const answers = asked.map(({ word, last, passedOver }) => {
    const key = `${come} ${last} ${word.folded}`;
    const answer = known.get(key) ?? findWord(indexes, word, { last, passedOver }, options);
    known.set(key, answer);
    return answer;
  });
  const sums = new Map<number, { id: number; score: number; words: number; whole: number }>();
  answers.forEach(({ met }, i) => {
    // A word that is said twice counts twice (Robertson & Zaragoza 2009, 3.2, k3 without a bound).
    const times = asked[i]?.times ?? 1;
    for (const [id, { score, level }] of met) {
      const sum = sums.get(id) ?? { id, score: 0, words: 0, whole: 0 };
      sum.score += score * times;
      sum.words += 1;
      if (level === 'whole') sum.whole += 1;
      sums.set(id, sum);
    }
  });
  const sorted = [...sums.values()].map((sum) => ({ ...sum, all: sum.words === answers.length }));
  sorted.sort(
    (a, b) =>
      Number(b.all) - Number(a.all) || (a.all ? b.whole - a.whole : 0) || b.score - a.score || a.id - b.id,
  );
  return {
    asked: answers.map((answer) => answer.asked),
    found: sorted,
    metBy: (id) => answers.map(({ met }) => met.get(id)),
  };
};
