/** Articles for tests, written as a line a passage; words, sentences and keys come from the language itself. */

import type { Mention } from '../../src/analysis/coverage/coverage.ts';
import type { Phrase } from '../../src/analysis/coverage/phrases/phrase.ts';
import type { Article } from '../../src/analysis/coverage/rivals/article.ts';
import { type Passage, type PassageForm, whereIs } from '../../src/analysis/coverage/text/passage.ts';
import type { Zone } from '../../src/analysis/coverage/text/zones.ts';
import type { Language } from '../../src/analysis/language/language.ts';
import { sentenceSpans } from '../../src/text/sentences.ts';

export interface Run {
  readonly text: string;
  readonly form?: PassageForm;
  readonly zone?: Zone;
  readonly item?: string;
  readonly file?: string;
  readonly field?: string;
  readonly written?: boolean;
  /** Words of the text, as they stand there, that are a link. */
  readonly link?: string;
}

/** Each run on a line of its own, from line 10 on. */
export const passagesFrom = (language: Language, runs: readonly (Run | string)[]): readonly Passage[] =>
  runs
    .map((run): Run => (typeof run === 'string' ? { text: run } : run))
    .map((run, i) => {
      const { text, form = 'paragraph', zone = 'body', file = 'cycle.md', written = true } = run;
      const { item, field, link } = run;
      const sentences = sentenceSpans(text, language.tag);
      const linkStart = link === undefined ? -1 : text.indexOf(link);
      const isLinked = (start: number): boolean =>
        linkStart >= 0 && start >= linkStart && start < linkStart + (link?.length ?? 0);
      return {
        form,
        text,
        file,
        written,
        ...(item === undefined ? {} : { item }),
        ...(field === undefined ? {} : { field }),
        words: language.words(text).map((word) => ({
          ...word,
          zone: isLinked(word.start) ? 'link text' : zone,
          sentence: sentences.findIndex(({ start, end }) => word.start >= start && word.start < end),
          line: 10 + i,
          column: word.start + 1,
        })),
      };
    });

export const articleFrom = (
  language: Language,
  cycle: string,
  runs: readonly (Run | string)[],
  linksTo: readonly string[] = [],
): Article => ({
  cycle,
  title: `The article of ${cycle}`,
  passages: passagesFrom(
    language,
    runs.map((run) => ({ file: `${cycle}.md`, ...(typeof run === 'string' ? { text: run } : run) })),
  ),
  linksTo,
});

/** A phrase whose last word is its head. */
export const phraseFrom = (language: Language, text: string): Phrase => {
  const words = language.words(text);
  return { text, words, head: Math.max(0, words.length - 1), origins: [], weight: 1 };
};

/** Every run of words with the phrase's keys, as exact mentions. */
export const mentionsIn = (passages: readonly Passage[], { words }: Phrase): readonly Mention[] =>
  passages.flatMap((passage, number) =>
    passage.words.flatMap((word, from): readonly Mention[] =>
      words.every(({ key }, i) => passage.words[from + i]?.key === key)
        ? [
            {
              passage: number,
              from,
              to: from + words.length - 1,
              zone: word.zone,
              grade: 'exact',
              at: whereIs(passage, word),
            },
          ]
        : [],
    ),
  );
