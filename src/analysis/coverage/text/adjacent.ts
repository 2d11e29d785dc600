/** Which words of a passage stand side by side. */
import type { Passage } from './passage.ts';

/** Between the words of one phrase stands a space or a hyphen, or nothing where a script has no spaces. */
const JOIN = /^\s*(?:[-\u2010\u2011]\s*)?$/;

/** Whether a word and the next of its passage can belong to one phrase. */
export const adjacent = ({ text, words }: Passage, word: number): boolean => {
  const [one, next] = [words[word], words[word + 1]] as const;
  return one !== undefined && next !== undefined && JOIN.test(text.slice(one.end, next.start));
};
