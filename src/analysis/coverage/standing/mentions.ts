/** Where an article says a phrase, and how nearly. */
import { mayConflate } from '../../language/conflation.ts';
import type { Word } from '../../language/language.ts';
import { emptyWords } from '../../language/lexicon/grammar.ts';
import type { Mention } from '../coverage.ts';
import type { Phrase } from '../phrases/phrase.ts';
import { whereIs, zoneFor } from '../text/passage.ts';
import { adjacent, type Position, type TextIndex, wordAt } from '../text/text-index.ts';
import { standsAsNoun } from './noun.ts';

/**
 * A phrase is scattered where its words stand in one sentence, in any order, with at most this many others
 * between them. Common practice, no source: further apart they no longer speak of one thing.
 */
export const SCATTER = 6;

type Found = Pick<Mention, 'passage' | 'from' | 'to' | 'grade'> & { readonly head: number };

/** A phrase with its forms written as one word, so that spaces and hyphens need not be looked at. */
interface Sought {
  readonly phrase: Phrase;
  readonly folded: string;
  readonly key: string;
}

const soughtOf = (phrase: Phrase): Sought => ({
  phrase,
  folded: phrase.words.map(({ folded }) => folded).join(''),
  key: phrase.words.map(({ key }) => key).join(''),
});

/** Whether any of some words can have to do with a phrase: what does not concern it leaves its mentions as they are. */
export const concerns = (phrase: Phrase, words: readonly Word[]): boolean => {
  const sought = soughtOf(phrase);
  return words.some(
    ({ key, stem, folded }) =>
      phrase.words.some((word) => word.stem === stem || word.key === key) ||
      sought.key.startsWith(key) ||
      sought.folded.startsWith(folded),
  );
};

const isOne = (a: Word, b: Word): boolean => a.key === b.key || (a.stem === b.stem && mayConflate(a, b));

/** Every position whose word begins a spelling of `joined`, written as one word, with spaces or with hyphens. */
const startsOf = (forms: ReadonlyMap<string, readonly Position[]>, joined: string): readonly Position[] => {
  const starts: Position[] = [];
  for (let length = 1; length <= joined.length; length++) {
    const at = forms.get(joined.slice(0, length));
    if (at) starts.push(...at);
  }
  return starts;
};

/** The phrase as a run of words from a position on, or undefined. */
const runAt = (index: TextIndex, { phrase, ...wanted }: Sought, start: Position): Found | undefined => {
  const passage = index.passages[start.passage];
  if (!passage) return undefined;
  let [folded, key] = ['', ''];
  const found = (to: number, grade: Found['grade']): Found => ({
    passage: start.passage,
    from: start.word,
    to,
    grade,
    head: Math.min(start.word + phrase.head, to),
  });
  let inflected: Found | undefined;
  for (let at = start.word; at < passage.words.length; at++) {
    const word = passage.words[at] as Word;
    folded += word.folded;
    key += word.key;
    if (folded === wanted.folded) return found(at, 'exact');
    if (key === wanted.key) inflected ??= found(at, 'inflected');
    // One letter more than wanted may still be a plural's end: longer than both, nothing can match.
    const tooLong = folded.length > wanted.folded.length && key.length > wanted.key.length;
    if (tooLong || !adjacent(passage, at)) break;
  }
  if (inflected) return inflected;
  const stems = phrase.words.every((word, i) => {
    const at = passage.words[start.word + i];
    return at !== undefined && isOne(word, at) && (i === 0 || adjacent(passage, start.word + i - 1));
  });
  return stems ? found(start.word + phrase.words.length - 1, 'same stem') : undefined;
};

const scatteredAt = (index: TextIndex, phrase: Phrase, head: Position): Found | undefined => {
  const words = index.passages[head.passage]?.words ?? [];
  const others = phrase.words.filter((word, i) => i !== phrase.head && !emptyWords.has(word.folded));
  if (others.length === 0) return undefined;
  const { sentence } = wordAt(index, head);
  const reach = SCATTER + others.length;
  let [from, to] = [head.word, head.word];
  for (const other of others) {
    let nearest: number | undefined;
    for (let away = 1; away <= reach && nearest === undefined; away++)
      for (const at of [head.word - away, head.word + away]) {
        const word = words[at];
        if (word?.sentence === sentence && isOne(other, word)) nearest ??= at;
      }
    if (nearest === undefined) return undefined;
    from = Math.min(from, nearest);
    to = Math.max(to, nearest);
  }
  if (to - from + 1 - (others.length + 1) > SCATTER) return undefined;
  return { passage: head.passage, from, to, grade: 'scattered', head: head.word };
};

const inOrder = (a: Found, b: Found): number => a.passage - b.passage || a.from - b.from;

/** More words than a passage ever has: passage and word become one number. */
const PASSAGE = 2 ** 20;

const spotOf = (passage: number, word: number): number => passage * PASSAGE + word;

/** What a phrase has found, each word serving it once. */
interface MentionSearch {
  readonly found: Found[];
  readonly taken: Set<number>;
}

const take = ({ found, taken }: MentionSearch, mention: Found | undefined): void => {
  if (!mention) return;
  const { passage, head } = mention;
  // A scattered mention takes its head alone: the words between may serve others.
  const [from, to] = mention.grade === 'scattered' ? [head, head] : [mention.from, mention.to];
  for (let at = from; at <= to; at++) if (taken.has(spotOf(passage, at))) return;
  for (let at = from; at <= to; at++) taken.add(spotOf(passage, at));
  found.push(mention);
};

const RUNS: readonly Found['grade'][] = ['exact', 'inflected', 'same stem'];

/** Everywhere a phrase stands as a run of words, by the best grade each run can have. */
const runsOf = (index: TextIndex, sought: Sought, isNoun: (at: Position) => boolean): MentionSearch => {
  const finding: MentionSearch = { found: [], taken: new Set() };
  const [first] = sought.phrase.words;
  if (!first) return finding;
  const starts = [
    ...startsOf(index.byFolded, sought.folded),
    ...startsOf(index.byKey, sought.key),
    ...(index.byStem.get(first.stem) ?? []),
  ];
  const runs = starts.flatMap((start) => runAt(index, sought, start) ?? []);
  const alone = sought.phrase.words.length === 1;
  for (const grade of RUNS)
    for (const run of runs.filter((one) => one.grade === grade).sort(inOrder))
      if (!alone || run.to > run.from || isNoun({ passage: run.passage, word: run.from })) take(finding, run);
  return finding;
};

/** Adds what is less than a run: the phrase's words scattered over a sentence, and its head alone. */
const addLooser = (
  index: TextIndex,
  phrase: Phrase,
  finding: MentionSearch,
  isNoun: (at: Position) => boolean,
  modifiers: ReadonlySet<number>,
): void => {
  const head = phrase.words[phrase.head];
  if (!head || phrase.words.length < 2) return;
  const heads = (index.byKey.get(head.key) ?? []).filter(isNoun);
  for (const at of heads) take(finding, scatteredAt(index, phrase, at));
  for (const { passage, word } of heads)
    if (!modifiers.has(spotOf(passage, word)))
      take(finding, { passage, from: word, to: word, grade: 'head only', head: word });
};

const mentionAt = (
  index: TextIndex,
  { passage, from, to, grade, head }: Found,
  item: string,
): Mention | undefined => {
  const where = index.passages[passage];
  const [word, start] = [where?.words[head], where?.words[from]];
  if (!where || !word || !start) return undefined;
  return { passage, from, to, zone: zoneFor(word, where, item), grade, at: whereIs(where, start) };
};

/** An item and its phrases. */
export interface Named {
  readonly slug: string;
  readonly phrases: readonly Phrase[];
}

/**
 * Mentions of the phrases of some items, by item and phrase, each phrase's in reading order. A word serves a phrase
 * once, by the best grade it can; the head alone counts where it is a noun and does not itself stand before the
 * head of another phrase ("seed" in "seed tray" is no seed).
 */
export const mentionsOf = (
  index: TextIndex,
  items: readonly Named[],
  english: boolean,
): readonly (readonly (readonly Mention[])[])[] => {
  const isNoun = ({ passage, word }: Position): boolean =>
    !english || standsAsNoun(index.passages[passage]?.words ?? [], word);
  const findings = items.map(({ phrases }) =>
    phrases.map((phrase) => runsOf(index, soughtOf(phrase), isNoun)),
  );
  const modifiers = new Set<number>();
  for (const { found } of findings.flat())
    for (const { passage, from, to, head } of found)
      for (let at = from; at <= to; at++) if (at !== head) modifiers.add(spotOf(passage, at));

  return items.map(({ slug, phrases }, number) =>
    phrases.map((phrase, i) => {
      const finding = findings[number]?.[i] as MentionSearch;
      addLooser(index, phrase, finding, isNoun, modifiers);
      return finding.found.sort(inOrder).flatMap((found) => mentionAt(index, found, slug) ?? []);
    }),
  );
};

const covers = (longer: Mention, shorter: Mention): boolean =>
  longer.passage === shorter.passage &&
  longer.from <= shorter.from &&
  longer.to >= shorter.to &&
  longer.to - longer.from > shorter.to - shorter.from;

/** The mentions of an item's phrases, each saying which longer phrase of the item it is a part of, if any. */
export const withinLonger = (
  all: readonly { readonly phrase: Phrase; readonly mentions: readonly Mention[] }[],
): readonly (readonly Mention[])[] => {
  const runs = all.flatMap(({ phrase, mentions }) =>
    mentions
      .filter(({ grade }) => grade !== 'scattered' && grade !== 'head only')
      .map((mention) => ({ text: phrase.text, mention })),
  );
  return all.map(({ mentions }) =>
    mentions.map((mention) => {
      if (mention.grade === 'scattered') return mention;
      const longest = runs
        .filter((run) => covers(run.mention, mention))
        .sort((a, b) => b.mention.to - b.mention.from - (a.mention.to - a.mention.from))[0];
      return longest ? { ...mention, within: longest.text } : mention;
    }),
  );
};
