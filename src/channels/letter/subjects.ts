/** What a list of mail shows of a letter before it is opened: its subject, and the line after it. */
import type { BoxSettings, Cycle } from '../../model/box.ts';
import { monthName } from '../../model/calendar.ts';
import { typeset } from '../../render/typeset.ts';
import { graphemeCount } from '../../text/segments.ts';
import { sentencesOf } from '../../text/sentences.ts';
import type { Wording } from '../../wording/wording.ts';
import type { Letter } from './letter.ts';

type LineWords = Wording['letter']['lines'];

/** One line as it could be written, with its length as a reader counts it, in graphemes. */
export interface Line {
  readonly text: string;
  readonly length: number;
}

/** Longest that a list of mail on a desk shows whole; a phone shows about two thirds. Common practice, no source. */
export const SUBJECT_LENGTH = 60;
/** The same of the line after the subject. Common practice, no source. */
export const PREHEADER_LENGTH = 110;

const VERSIONS = 3;

/** "Bee hotel, and four things that go with it" */
const leadSubject = ({ items }: Cycle, words: LineWords): string =>
  words.leadSubject(items[0]?.inText.short ?? '', items.length - 1);

/** Lines without doubles: the owner's own, then those that are shown whole, then the longer ones. */
const ranked = (
  own: string | undefined,
  proposed: readonly string[],
  most: number,
  lang: string,
): readonly Line[] => {
  const worded = [...new Set(proposed.filter(Boolean))].map((text) => typeset(text, lang));
  const counted = worded.map((text) => ({ text, length: graphemeCount(text, lang) }));
  const first = own === undefined ? [] : [typeset(own, lang)];
  return [
    ...first.map((text) => ({ text, length: graphemeCount(text, lang) })),
    ...counted.filter(({ text, length }) => length <= most && !first.includes(text)),
    ...counted.filter(({ text, length }) => length > most && !first.includes(text)),
  ].slice(0, VERSIONS);
};

/** Subjects of a cycle's letter, the chosen one first. */
export const subjectsOf = (cycle: Cycle, { lang }: BoxSettings, words: LineWords): readonly Line[] =>
  ranked(
    cycle.letter?.subject,
    [cycle.title, leadSubject(cycle, words), words.themeSubject(cycle.theme, monthName(cycle, lang))],
    SUBJECT_LENGTH,
    lang,
  );

/** Preheaders of a cycle's letter, the chosen one first. */
export const preheadersOf = (
  cycle: Cycle,
  { hook = '', lang }: Pick<Letter, 'hook' | 'lang'>,
  words: LineWords,
): readonly Line[] =>
  ranked(
    cycle.letter?.preheader,
    [
      sentencesOf(hook, lang)[0] ?? '',
      words.promise(cycle.items.length, cycle.peek !== undefined),
      cycle.summary,
    ],
    PREHEADER_LENGTH,
    lang,
  );
