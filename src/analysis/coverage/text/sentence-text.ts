/** The sentences of a passage as they are written. */
import type { Span } from '../../../text/sentences.ts';
import type { Passage } from './passage.ts';

/** Where a sentence of a passage stands in its text, with its stop and quotation marks and without spaces around. */
export const sentenceSpan = ({ text, words }: Passage, sentence: number): Span => {
  const first = words.findIndex((word) => word.sentence === sentence);
  const last = words.findLastIndex((word) => word.sentence === sentence);
  // Between two sentences the first space parts what closes the one from what opens the other.
  const cut = (from: number, to: number): number => {
    const space = text.slice(from, to).search(/\s/);
    return space < 0 ? to : from + space;
  };
  const start = first > 0 ? cut(words[first - 1]?.end ?? 0, words[first]?.start ?? 0) : 0;
  const end = last + 1 < words.length ? cut(words[last]?.end ?? 0, words[last + 1]?.start ?? 0) : text.length;
  const raw = text.slice(start, end);
  const space = raw.length - raw.trimStart().length;
  return { start: start + space, end: start + raw.trimEnd().length };
};

/** A sentence of a passage as it is written, with its stop and quotation marks. */
export const sentenceText = (passage: Passage, sentence: number): string => {
  const { start, end } = sentenceSpan(passage, sentence);
  return passage.text.slice(start, end);
};
