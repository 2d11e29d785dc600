/** What a passage says otherwise after a change, counted in the sentences that changed alone. */
import type { Mention } from '../coverage.ts';
import { adjacent } from '../text/adjacent.ts';
import type { Passage, ZonedWord } from '../text/passage.ts';
import { mentionsWithin, type WordRange } from './mentions.ts';
import type { PhraseIndex } from './phrase-index.ts';

/**
 * Whether no mention can lie on both sides of a word and the one before it: they are of two sentences, and something
 * stands between them that no phrase reaches over. Either side then has the same mentions whatever the other says.
 */
const isParted = (passage: Passage, word: number): boolean =>
  passage.words[word - 1]?.sentence !== passage.words[word]?.sentence && !adjacent(passage, word - 1);

/** A range made so wide that what is outside has no part in its mentions. */
const widened = (passage: Passage, { from, to }: WordRange): WordRange => {
  let [first, end] = [Math.max(0, from), Math.min(passage.words.length, to)];
  while (first > 0 && !isParted(passage, first)) first -= 1;
  while (end < passage.words.length && !isParted(passage, end)) end += 1;
  return { from: first, to: end };
};

const isSameWord = (a: ZonedWord | undefined, b: ZonedWord | undefined): boolean =>
  a === b ||
  (a !== undefined && b !== undefined && a.text === b.text && a.zone === b.zone && a.sentence === b.sentence);

/** What differs between two readings of a passage, so wide that the mentions outside are the same in both. */
const changedRange = (
  before: Passage | undefined,
  after: Passage,
): { readonly old: WordRange; readonly fresh: WordRange } => {
  const [old, fresh] = [before?.words ?? [], after.words];
  const [oldText, text] = [before?.text ?? '', after.text];
  // The texts are looked at as well as the words, because signs between words part them or do not.
  let start = 0;
  while (start < text.length && text[start] === oldText[start]) start += 1;
  let end = 0;
  while (end < text.length && text.at(-1 - end) === oldText.at(-1 - end)) end += 1;
  const isBefore = (word: ZonedWord | undefined): boolean => word !== undefined && word.end <= start;
  const isAfter = (word: ZonedWord | undefined): boolean =>
    word !== undefined && word.start >= text.length - end;
  const shorter = Math.min(old.length, fresh.length);
  let first = 0;
  while (first < shorter && isBefore(fresh[first]) && isSameWord(old[first], fresh[first])) first += 1;
  let last = 0;
  while (last < shorter - first) {
    const word = fresh[fresh.length - 1 - last];
    if (!isAfter(word) || !isSameWord(old[old.length - 1 - last], word)) break;
    last += 1;
  }
  // A neighbour may be told by what comes beside it.
  const wide = widened(after, { from: first - 1, to: fresh.length - last + 1 });
  const longer = fresh.length - old.length;
  return { old: { from: wide.from, to: wide.to - longer }, fresh: wide };
};

/**
 * What a changed passage says otherwise: the words of it as it was that are to be forgotten, and the mentions in the
 * words that stand there now, by the phrase's number. Linear in the sentences that change.
 */
export const changedMentions = (
  before: Passage | undefined,
  after: Passage,
  index: PhraseIndex,
): { readonly old: WordRange; readonly found: ReadonlyMap<number, readonly Mention[]> } => {
  const { old, fresh } = changedRange(before, after);
  return { old, found: mentionsWithin(after, fresh, index) };
};
