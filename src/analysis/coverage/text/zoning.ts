/** Words of a text, each with its sentence and its place. */
import type { Span } from '../../../text/sentences.ts';
import type { Language } from '../../language/language.ts';
import type { ZonedWord } from './passage.ts';
import type { LineColumn } from './source-text.ts';
import { OPENING_WORDS, type Zone } from './zones.ts';

/** How a text stands on the page. */
interface Setting {
  /** Where its words stand unless they are a link or the opening. */
  readonly zone: Zone;
  readonly links?: readonly Span[];
  /** For running text: words of it that come before. */
  readonly runningBefore?: number;
}

/** `sentences` are those of the text; `find` says where the author wrote each word, asked in order. */
export const zonedWords = (
  language: Language,
  text: string,
  sentences: readonly Span[],
  { zone, links = [], runningBefore }: Setting,
  find: (word: string) => LineColumn,
): readonly ZonedWord[] => {
  let sentence = 0;
  return language.words(text).map((word, i) => {
    while (word.start >= (sentences[sentence + 1]?.start ?? Number.POSITIVE_INFINITY)) sentence += 1;
    const inLink = links.some(({ start, end }) => word.start >= start && word.end <= end);
    const opening = runningBefore !== undefined && runningBefore + i < OPENING_WORDS;
    const { line, column } = find(word.text);
    // Written out, because every word of the archive comes by here and copying it would cost as much again.
    return {
      text: word.text,
      folded: word.folded,
      key: word.key,
      stem: word.stem,
      start: word.start,
      end: word.end,
      zone: inLink ? 'link text' : opening ? 'opening' : zone,
      sentence,
      line,
      column,
    };
  });
};
