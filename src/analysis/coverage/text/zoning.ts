/** Words of a text, each with its sentence and its place. */
import type { Language, Span } from '../../language/language.ts';
import type { ZonedWord } from './passage.ts';
import type { LineColumn } from './source-text.ts';
import { OPENING_WORDS, type Zone } from './zones.ts';

/** How a text stands on the page. */
export interface Setting {
  /** Where its words stand unless they are a link or the opening. */
  readonly zone: Zone;
  readonly links?: readonly Span[];
  /** For running text: words of it that come before. */
  readonly runningBefore?: number;
}

/** Text of Latin letters and common signs in which no sentence can end but the last: there is nothing to look for. */
const ONE_SENTENCE = /^[A-Za-z\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u00ff0-9 '’"“”‘,;()–—-]+[.!?]?$/;

/** The sentences of a text as the language has them; names, captions and headings are known to be one at a glance. */
export const sentencesIn = (text: string, language: Pick<Language, 'sentences'>): readonly Span[] =>
  ONE_SENTENCE.test(text) ? [{ start: 0, end: text.length }] : language.sentences(text);

/** `find` says where the author wrote each word, asked in order. */
export const zonedWords = (
  language: Language,
  text: string,
  { zone, links = [], runningBefore }: Setting,
  find: (word: string) => LineColumn,
): readonly ZonedWord[] => {
  const sentences = sentencesIn(text, language);
  let sentence = 0;
  return language.words(text).map((word, i) => {
    while (word.start >= (sentences[sentence + 1]?.start ?? Number.POSITIVE_INFINITY)) sentence += 1;
    const inLink = links.some(({ start, end }) => word.start >= start && word.end <= end);
    const opening = runningBefore !== undefined && runningBefore + i < OPENING_WORDS;
    const { line, column } = find(word.text);
    // Written out, for this is done for every word of the archive and copying them costs as much again.
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
