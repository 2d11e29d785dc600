/** What a list of mail shows of a letter before it is opened: its subject, and the line after it. */

import type { BoxSettings, Cycle } from '../model/box.ts';
import { monthName } from '../model/calendar.ts';
import { namesInLine } from '../model/title.ts';
import { capital } from '../text/counting-words.ts';
import { graphemeCount } from '../text/segments.ts';
import { sentencesOf } from '../text/sentences.ts';
import type { Letter } from './letter-parts.ts';
import { typeset } from './typeset.ts';

/** One wording, with its length as a reader counts it. */
export interface Wording {
  readonly text: string;
  readonly length: number;
}

/** Longest that a list of mail on a desk shows whole; a phone shows about two thirds. Common practice, no source. */
export const SUBJECT_LENGTH = 60;
/** The same of the line after the subject. Common practice, no source. */
export const PREHEADER_LENGTH = 110;

const VERSIONS = 3;

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** "Bee hotel, and four things that go with it" */
const leadSubject = ({ items }: Cycle, lang: string): string => {
  const lead = namesInLine([items[0]?.name ?? ''], lang);
  const others = items.length - 1;
  if (others < 1) return lead;
  const count = NUMBERS[others] ?? String(others);
  return `${lead}, and ${count} ${others === 1 ? 'thing that goes' : 'things that go'} with it`;
};

/** Wordings without doubles: the owner's own, then those that are shown whole, then the longer ones. */
const ranked = (
  own: string | undefined,
  proposed: readonly string[],
  most: number,
  lang: string,
): readonly Wording[] => {
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
export const subjectsOf = (cycle: Cycle, { lang }: BoxSettings): readonly Wording[] =>
  ranked(
    cycle.letter?.subject,
    [cycle.title, leadSubject(cycle, lang), `${cycle.theme}: what was in the ${monthName(cycle, lang)} box`],
    SUBJECT_LENGTH,
    lang,
  );

/** "Five things, how they go together, and a look at the next box." */
const promise = ({ items, peek }: Cycle): string => {
  const count = NUMBERS[items.length] ?? String(items.length);
  const things = items.length === 1 ? 'One thing' : `${capital(count)} things`;
  const parts = [
    things,
    ...(items.length > 1 ? ['how they go together'] : []),
    ...(peek ? ['and a look at the next box'] : []),
  ];
  return `${parts.join(', ')}.`;
};

/** Preheaders of a cycle's letter, the chosen one first. */
export const preheadersOf = (cycle: Cycle, { hook = '', lang }: Letter): readonly Wording[] =>
  ranked(
    cycle.letter?.preheader,
    [sentencesOf(hook, lang)[0] ?? '', promise(cycle), cycle.summary],
    PREHEADER_LENGTH,
    lang,
  );
