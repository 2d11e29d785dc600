/** What somebody may have meant who wrote a value in another form: tried by the field's own schema. */
import { isDayOfWeek, monthOfWord } from '../text/calendar-words.ts';
import { CALL_KINDS } from './vocabulary.ts';

const two = (digits: string): string => digits.padStart(2, '0');

/** A date in digits; none where either number may be the month, because a date is never guessed. */
const dates = (text: string): readonly string[] => {
  const [, first = '', second = '', year = ''] = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/.exec(text) ?? [];
  const [, y = '', m = '', d = ''] = /^(\d{4})[./-](\d{1,2})[./-](\d{1,2})$/.exec(text) ?? [];
  if (y !== '') return [`${y}-${two(m)}-${two(d)}`];
  if (year === '') return [];
  if (Number(first) > 12) return [`${year}-${two(second)}-${two(first)}`];
  if (Number(second) > 12 || first === second) return [`${year}-${two(first)}-${two(second)}`];
  return [];
};

/** Words of a date that say nothing more: days of the week follow from it. */
const FILLERS = /^(?:the|of|on|tues|thurs|den|der|le|de|del|di)$/;

const saysNothing = (word: string): boolean =>
  FILLERS.test(word) || (isDayOfWeek(word) && monthOfWord(word) === 0);

/** A date whose month is a word: "1st December 2026", "Dec 1, 2026". Its three parts stand in any order, and nothing else. */
const worded = (text: string): readonly string[] => {
  const words = text
    .toLowerCase()
    .split(/[\s,./-]+/)
    .filter((word) => word !== '' && !saysNothing(word));
  const days = words.flatMap((word) => /^(\d{1,2})(?:st|nd|rd|th|er|º)?$/.exec(word)?.[1] ?? []);
  const years = words.filter((word) => /^\d{4}$/.test(word));
  const months = words.map(monthOfWord).filter(Boolean);
  const [[day], [month], [year]] = [days, months, years];
  return words.length === 3 && day !== undefined && month !== undefined && year !== undefined
    ? [`${year}-${two(String(month))}-${two(day)}`]
    : [];
};

/** A time of day by the clock of twelve hours. */
const clock = (text: string): string | undefined => {
  const [, hour = '', minute = '00', half = ''] =
    /^(\d{1,2})(?:[:.](\d{2}))?\s*([ap])\.?m\.?$/i.exec(text) ?? [];
  if (hour === '') return undefined;
  return `${two(String((Number(hour) % 12) + (half.toLowerCase() === 'p' ? 12 : 0)))}:${minute}`;
};

/** A colour without its sign. */
const COLOUR = /^[\da-f]{3}(?:[\da-f]{3})?$/i;

const YES = new Set(['yes', 'y', 'on', 'true', 'ja', 'oui']);
const NO = new Set(['no', 'n', 'off', 'false', 'nein', 'non']);

/** Values that `typed` may stand for, the likeliest first; a schema says which of them will do. */
export const likelyValues = (typed: unknown): readonly (string | number | boolean)[] => {
  if (typeof typed !== 'string' && typeof typed !== 'number') return [];
  const text = String(typed).trim();
  // A text of nothing but spaces stands for nothing.
  if (text === '') return [];
  const word = text.toLowerCase();
  const number = /^\D{0,3}?(\d+(?:[.,]\d+)?)(?:\s*\p{L}*\.?|\s*%|\D{0,3})$/u
    .exec(text)?.[1]
    ?.replace(',', '.');
  const time = clock(text);
  return [
    ...(YES.has(word) ? [true] : NO.has(word) ? [false] : []),
    ...dates(text),
    ...worded(text),
    ...(time === undefined ? [] : [time]),
    text.replace(/^(\d{4}-\d{2}-\d{2})\s+(\d{2}:\d{2})/, '$1T$2'),
    ...(number === undefined ? [] : [number, Number(number), Number(number) / 100]),
    text.toUpperCase(),
    word,
    ...CALL_KINDS.filter((kind) => kind.toLowerCase() === word.replace(/[\s-]/g, '')),
    ...(COLOUR.test(text) ? [`#${text}`] : []),
    `https://${text}`,
  ];
};
