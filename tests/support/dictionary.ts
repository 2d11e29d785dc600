/** The dictionary as tests ask it: what one of them has read of it is there for the next. */
import { letterCaseBy } from '../../src/analysis/language/letter-case.ts';
import { openWordNet } from '../../src/io/wordnet.ts';

export const wordnet = openWordNet();

/** How words are written inside an English sentence. */
export const caseOf = letterCaseBy(wordnet);
