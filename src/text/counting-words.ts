/** Numbers and lists in English sentences, in findings, pages and reports alike. */
import { capitalised } from './capitalised.ts';
import { listInWords } from './list-in-words.ts';

const SMALL = [
  ...['no', 'one', 'two', 'three', 'four', 'five', 'six'],
  ...['seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'],
];

/** Numbers up to twelve as words, the rest as figures. */
export const numberWord = (count: number): string => SMALL[count] ?? String(count);

/** `3 pages`, `1 page`. */
export const counted = (count: number, one: string, more = `${one}s`): string =>
  `${count} ${count === 1 ? one : more}`;

/** "a, b and c". */
export const listed = (parts: readonly string[]): string => listInWords(parts, 'en-GB');

/** With a capital letter, as a sentence begins. */
export const capital = (text: string): string => capitalised(text, 'en');

/**
 * A share from 0 to 1 in whole per cent: "91%". It never says all or none of what is not, and a share that falls short
 * of `wanted` is never rounded up to it.
 */
export const percent = (share: number, wanted = 1): string => {
  const nearest = Math.round(share * 100);
  const rounded = share < wanted && wanted < 1 && nearest >= wanted * 100 ? Math.floor(share * 100) : nearest;
  if (rounded === 100 && share < 1) return 'over 99%';
  if (rounded === 0 && share > 0) return 'under 1%';
  return `${rounded}%`;
};
