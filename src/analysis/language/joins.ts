/** Which words of one stem are one thing to a shopper. */
import type { Word } from './language.ts';

/** Whether two words of one stem may count for one another. */
export const mayJoin = (a: Word, b: Word): boolean => a.key === b.key || a.stem === b.stem;
