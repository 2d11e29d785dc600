/**
 * A collection that nobody wrote, in which what is told of changes with time, as in a box's catalogue: a subject is
 * common in one part of the index and rare in the others. It shows what it costs when parts do not know of each other;
 * of how good a ranking is, words drawn by lot say nothing. The same on every run.
 */
import { randomFrom } from '../bench/words.ts';
import type { Collection } from './trec.ts';

const DOCUMENTS = 720;
const SUBJECTS = 24;
/** Words that belong to a subject, and words that are used in telling of anything. */
const WORDS_A_SUBJECT = 8;
const COMMON_WORDS = 1500;
const LEAST_WORDS = 40;
const MOST_WORDS = 240;
/** Shares of a text's words: of its subject, and of any other that is mentioned by the way. */
const OF_SUBJECT = 0.04;
const BY_THE_WAY = 0.06;
/** The share of documents whose subject is the one of its time; the others' is any. */
const OF_ITS_TIME = 0.6;

/** Words that no rule of a stemmer touches: consonants and an o, and another number in each. */
const wordOf = (group: string, number: number): string =>
  `${group}${[...String(number)].map((digit) => `${'bdfgklmnpr'[Number(digit)]}o`).join('')}k`;

export const driftingCollection = (): Collection => {
  const random = randomFrom(720);
  const below = (end: number): number => Math.floor(random() * end);
  // The n-th word is used as often as 1/n says, as in real texts (Zipf 1935).
  const common = (): string => wordOf('z', Math.floor(COMMON_WORDS ** random()));
  const wordOn = (subject: number): string => wordOf('v', subject * WORDS_A_SUBJECT + below(WORDS_A_SUBJECT));
  const wordIn = (subject: number): string => {
    const chance = random();
    if (chance < OF_SUBJECT) return wordOn(subject);
    return chance < OF_SUBJECT + BY_THE_WAY ? wordOn(below(SUBJECTS)) : common();
  };
  const subjects = Array.from({ length: DOCUMENTS }, (_, i) =>
    random() < OF_ITS_TIME ? Math.floor((i / DOCUMENTS) * SUBJECTS) : below(SUBJECTS),
  );
  const documents = subjects.map((subject, i) => {
    const words = LEAST_WORDS + below(MOST_WORDS - LEAST_WORDS);
    return { id: `d${i}`, title: '', text: Array.from({ length: words }, () => wordIn(subject)).join(' ') };
  });
  const queries = Array.from({ length: SUBJECTS }, (_, subject) => ({
    id: `q${subject}`,
    text: [wordOn(subject), wordOn(subject), common()].join(' '),
  }));
  const judgments = new Map(
    queries.map(({ id }, subject) => [
      id,
      new Map(
        documents.flatMap((document, i) => (subjects[i] === subject ? [[document.id, 1] as const] : [])),
      ),
    ]),
  );
  return { documents, queries, judgments };
};
