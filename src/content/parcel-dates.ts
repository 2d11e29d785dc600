/** Dates as carriers' exports write them → day numbers. Never guesses which of two numbers is the month. */

import { Temporal } from 'temporal-polyfill';
import { isDayOfWeek, monthOfWord } from '../text/calendar-words.ts';
import { dayNumber, MS_A_DAY } from '../text/days.ts';
import { itemAt } from '../text/item-at.ts';
import { literal } from '../text/literal-pattern.ts';

/** A cell as a day, or why it is none. */
export type DateReading =
  | { readonly day: number }
  /** `shape`: not of the form. `none`: no such date. `swapped`: a date only if day and month change places. */
  | { readonly fault: 'shape' | 'none' | 'swapped' };

type DatePart = 'year' | 'month' | 'day';

const TOKEN = /YYYY|YY|MMM|MM|M|DD|D/g;
/** Which part of a date a token stands for. */
const partOf = (token: string): DatePart =>
  token.startsWith('Y') ? 'year' : token.startsWith('M') ? 'month' : 'day';

/** Whether a date stands in some text: three numbers, or two and a month's name. */
const hasWholeDate = (text: string): boolean => {
  const numbers = (text.match(/\d+/g) ?? []).length;
  return (
    numbers >= 3 || (numbers === 2 && (text.match(/\p{L}+/gu) ?? []).some((word) => monthOfWord(word) > 0))
  );
};

/**
 * A cell without the day of the week before its date, and without "of" between the parts: "Fri 3 de abril de 2026". What
 * may be a month too, as "mar" for Tuesday, is one where the rest is no date by itself.
 */
const bareDate = (cell: string): string => {
  const [, day = '', rest = ''] = /^(\p{L}{2,13})\.?,?\s+(\S.*)$/u.exec(cell) ?? [];
  const isDay = day !== '' && isDayOfWeek(day) && (monthOfWord(day) === 0 || hasWholeDate(rest));
  return (isDay ? rest : cell).replace(/(?<=\d|\p{L})\.? de (?=\p{L}|\d)/gu, ' ');
};

/** Days as spreadsheets number them (ECMA-376, 18.17.4.1): from 1 January 2010 to the end of 2049, and a part of a day. */
const SERIAL = /^(4\d{4}|5[0-4]\d{3})(?:[.,]\d+)?$/;
const FIRST_SERIAL = 40_179;
/** The number that spreadsheets have for 1970-01-01. */
const SERIAL_OF_EPOCH = 25_569;
const serialDay = (cell: string): number | undefined => {
  const number = Number(SERIAL.exec(cell)?.[1] ?? Number.NaN);
  return number >= FIRST_SERIAL ? number - SERIAL_OF_EPOCH : undefined;
};
/** Seconds or thousandths of them since 1970 (POSIX), from July 2017 on. */
const SINCE_EPOCH = /^1[5-9]\d{8}(?:\d{3})?$/;
const LETTERS_OF_SECONDS = 10;
const instantOf = (cell: string): number | undefined =>
  SINCE_EPOCH.test(cell) ? Number(cell) * (cell.length === LETTERS_OF_SECONDS ? 1000 : 1) : undefined;

/** The day that a bare number stands for, in UTC: as spreadsheets number days, or as machines count seconds. */
export const numberedDay = (cell: string): number | undefined => {
  const instant = instantOf(cell);
  return serialDay(cell) ?? (instant === undefined ? undefined : Math.floor(instant / MS_A_DAY));
};

/** The date's own pattern, without the time of day that may follow it. */
const datePart = (pattern: string): string => pattern.replace(/(?<![\sT,])[\sT,]+H{1,2}.*$/, '').trim();

/** Whether a pattern names year, month and day once each: `DD/MM/YYYY`, `D.M.YY`, `DD MMM YYYY`. */
export const isDatePattern = (pattern: string): boolean => {
  const tokens = datePart(pattern).match(TOKEN) ?? [];
  const rest = datePart(pattern).replace(TOKEN, '');
  return (
    tokens.length === 3 && new Set(tokens.map((token) => token[0])).size === 3 && !/[\p{L}\p{N}]/u.test(rest)
  );
};

const TIME =
  /^(?:[T ,]\s*(?:(?:à|um|at|kl\.?|o)\s)?(\d{1,2})[:.](\d{2})(?:[:.](\d{2})(?:[.,]\d+)?)?\s*([ap]\.?m\.?)?(?:\s(?:uhr|h))?)?\s*(Z|UTC|GMT|[+-]\d{2}:?\d{2})?$/i;

interface DateForm {
  readonly date: RegExp;
  readonly parts: readonly DatePart[];
}

const formOf = (pattern: string): DateForm => {
  const written = datePart(pattern);
  const parts: DatePart[] = [];
  // Without anything between them, numbers have the width of their letters.
  const tight = written.replace(TOKEN, '') === '';
  let source = '';
  let at = 0;
  for (const { 0: token, index } of written.matchAll(TOKEN)) {
    source += literal(written.slice(at, index));
    at = index + token.length;
    parts.push(partOf(token));
    if (token === 'MMM') source += '(\\p{L}{3,13})\\.?';
    else if (token.startsWith('Y') || tight) source += `(\\d{${token.length}})`;
    else source += '(\\d{1,2})';
  }
  return { date: new RegExp(`^${source}${literal(written.slice(at))}`, 'u'), parts };
};

const ISO: DateForm = { date: /^(\d{4})-(\d{2})-(\d{2})/, parts: ['year', 'month', 'day'] };

const numberOf = (text: string, part: DatePart): number => {
  if (part === 'month' && !/^\d/.test(text)) return monthOfWord(text);
  return Number(text) + (part === 'year' && text.length === 2 ? 2000 : 0);
};

const MS_A_MINUTE = 60_000;
/** Zones change their offset on quarter hours of UTC, by tzdata's rules since 1972: one look-up serves each. */
const QUARTER = 15 * MS_A_MINUTE;

/** Cells remembered, since an export has few different ones. Beyond, all are forgotten and learnt anew. */
const MOST_REMEMBERED = 20_000;

/**
 * Reads cells as days (since 1970-01-01). `pattern` is a form as `isDatePattern` takes it; ISO 8601 is read beside
 * it, and alone without it. An instant with an offset becomes the day it falls on in `timeZone`; a time without one
 * is local.
 */
export const dateReader = (
  pattern: string | undefined,
  timeZone: string,
): ((cell: string) => DateReading) => {
  const forms = [ISO, ...(pattern === undefined ? [] : [formOf(pattern)])];
  const offsets = new Map<number, number>();
  const offsetAt = (instant: number): number => {
    const quarter = Math.floor(instant / QUARTER);
    let offset = offsets.get(quarter);
    if (offset === undefined) {
      const zoned = Temporal.Instant.fromEpochMilliseconds(quarter * QUARTER).toZonedDateTimeISO(timeZone);
      offset = zoned.offsetNanoseconds / 1e6;
      offsets.set(quarter, offset);
    }
    return offset;
  };

  const read = (whole: string): DateReading => {
    const serial = serialDay(whole);
    if (serial !== undefined) return { day: serial };
    const instant = instantOf(whole);
    if (instant !== undefined) return { day: Math.floor((instant + offsetAt(instant)) / MS_A_DAY) };
    const cell = pattern === undefined ? whole : bareDate(whole);
    for (const form of forms) {
      const { date, parts } = form;
      const found = date.exec(cell);
      if (!found) continue;
      const time = TIME.exec(cell.slice(found[0].length));
      if (!time) continue;
      const value = (part: DatePart): number => numberOf(itemAt(found, parts.indexOf(part) + 1), part);
      const [year, month, day] = [value('year'), value('month'), value('day')];
      const local = dayNumber(year, month, day);
      if (local === undefined)
        return {
          // In ISO 8601 nobody takes the one for the other.
          fault: form !== ISO && month > 12 && dayNumber(year, day, month) !== undefined ? 'swapped' : 'none',
        };
      const [, hours = '0', minutes = '0', seconds = '0', half, zone] = time;
      const late = half ? (Number(hours) % 12) + (/^p/i.test(half) ? 12 : 0) : Number(hours);
      if (late > 24 || Number(minutes) > 59 || Number(seconds) > 60) return { fault: 'none' };
      if (zone === undefined) return { day: local };
      const [, sign, h = '0', m = '0'] = /^([+-])(\d{2}):?(\d{2})$/.exec(zone) ?? [];
      const east = (Number(h) * 60 + Number(m)) * (sign === '-' ? -1 : 1);
      const utc = local * MS_A_DAY + (late * 60 + Number(minutes) - east) * MS_A_MINUTE;
      return { day: Math.floor((utc + offsetAt(utc)) / MS_A_DAY) };
    }
    return { fault: 'shape' };
  };

  const remembered = new Map<string, DateReading>();
  return (cell) => {
    let reading = remembered.get(cell);
    if (reading === undefined) {
      reading = read(cell);
      if (remembered.size >= MOST_REMEMBERED) remembered.clear();
      remembered.set(cell, reading);
    }
    return reading;
  };
};

/** Forms that a cell of two numbers and a year may have, the months' order open: `['DD/MM/YYYY', 'MM/DD/YYYY']`. */
export const formsFitting = (cell: string): readonly string[] => {
  const found = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})(?!\d)/.exec(bareDate(cell));
  if (!found) return [];
  const [, first = '', mark = '', second = '', year = ''] = found;
  const written = year.length === 4 ? 'YYYY' : 'YY';
  return [
    ...(Number(second) <= 12 && Number(first) <= 31 ? [`DD${mark}MM${mark}${written}`] : []),
    ...(Number(first) <= 12 && Number(second) <= 31 ? [`MM${mark}DD${mark}${written}`] : []),
  ];
};
