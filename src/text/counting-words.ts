/** Numbers and lists in English sentences, for findings and reports alike. */

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
export const listed = (parts: readonly string[], last = 'and'): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} ${last} ${parts.at(-1)}`;

/** With a capital letter, as a sentence begins. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
