/** Months by their English names. */

const MONTHS = [
  ...['january', 'february', 'march', 'april', 'may', 'june', 'july'],
  ...['august', 'september', 'october', 'november', 'december'],
];

/** The number of a month, from 1, by its name in small letters or a short form of it of three letters or more; 0 for another word. */
export const monthOfWord = (word: string): number =>
  word.length < 3 ? 0 : MONTHS.findIndex((name) => name.startsWith(word)) + 1;
