/**
 * Local times around changes of clocks: those that the clocks skip and those they show twice. The rule is RFC 9557's
 * and Temporal's "compatible" (RFC 5545 §3.3.5 has the same): a skipped time is taken by the offset before the change,
 * one that comes twice is the first. The oracle is Intl's own reading of the IANA data, which knows nothing of Temporal.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endOfDay, momentOf } from '../../src/model/calendar.ts';

const MINUTE = 60_000;
const formats = new Map<string, Intl.DateTimeFormat>();

/** What a clock in the zone shows, as `YYYY-MM-DDTHH:mm`. */
const clock = (moment: number, timeZone: string): string => {
  const format =
    formats.get(timeZone) ??
    new Intl.DateTimeFormat('en-CA', {
      timeZone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
    });
  formats.set(timeZone, format);
  const parts = Object.fromEntries(format.formatToParts(moment).map(({ type, value }) => [type, value]));
  return `${parts.year}-${parts.month}-${parts.day}T${parts.hour}:${parts.minute}`;
};

/** Every moment at which a clock in the zone shows a local time, earliest first. */
const showing = (local: string, timeZone: string): readonly number[] => {
  const asUtc = Date.parse(`${local}Z`);
  const found: number[] = [];
  // No zone is further than 14 hours from UTC, and all offsets are whole quarters of an hour.
  for (let away = -15 * 60; away <= 15 * 60; away += 15)
    if (clock(asUtc + away * MINUTE, timeZone) === local) found.push(asUtc + away * MINUTE);
  return found;
};

/** By the rule, from Intl alone: the first showing; else the local time by the offset that held before the gap. */
const compatible = (local: string, timeZone: string): number => {
  const [first] = showing(local, timeZone);
  if (first !== undefined) return first;
  const asUtc = Date.parse(`${local}Z`);
  const before = asUtc - 24 * 60 * MINUTE;
  const offset = Date.parse(`${clock(before, timeZone)}Z`) - before;
  return asUtc - offset;
};

describe('a reveal’s local time', () => {
  test.each([
    // Spring: London goes from 00:59 GMT to 02:00 BST on 29 March 2026.
    ['2026-03-29T01:30', 'Europe/London', '2026-03-29T01:30:00Z', 'skipped, an hour later'],
    // Autumn: London has 01:00 to 01:59 twice on 25 October 2026.
    ['2026-10-25T01:30', 'Europe/London', '2026-10-25T00:30:00Z', 'shown twice, the first'],
    ['2026-03-08T02:30', 'America/New_York', '2026-03-08T07:30:00Z', 'skipped, an hour later'],
    ['2026-11-01T01:30', 'America/New_York', '2026-11-01T05:30:00Z', 'shown twice, the first'],
    // Lord Howe moves by half an hour.
    ['2026-10-04T02:15', 'Australia/Lord_Howe', '2026-10-03T15:45:00Z', 'skipped, half an hour later'],
    ['2026-04-05T01:45', 'Australia/Lord_Howe', '2026-04-04T14:45:00Z', 'shown twice, the first'],
    // Midnight itself is skipped in Cairo on 24 April 2026.
    ['2026-04-24T00:00', 'Africa/Cairo', '2026-04-23T22:00:00Z', 'skipped, an hour later'],
  ])('%s in %s is %s: %s', (local, zone, instant) => {
    expect(momentOf(local, zone)).toBe(Date.parse(instant));
    expect(compatible(local, zone)).toBe(Date.parse(instant));
  });

  test('is what Intl’s clock shows, in any zone and at any quarter of an hour around a change', () => {
    const changes = [
      '2026-03-08',
      '2026-03-29',
      '2026-04-05',
      '2026-04-24',
      '2026-10-04',
      '2026-10-25',
      '2026-11-01',
    ];
    const zones = [
      'Europe/London',
      'Europe/Lisbon',
      'America/New_York',
      'America/St_Johns',
      'Australia/Lord_Howe',
      'Pacific/Chatham',
      'Africa/Cairo',
      'America/Havana',
      'Asia/Kathmandu',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...changes),
        fc.constantFrom(...zones),
        fc.integer({ min: 0, max: 95 }),
        (date, zone, quarter) => {
          const time = `${String(quarter >> 2).padStart(2, '0')}:${String((quarter & 3) * 15).padStart(2, '0')}`;
          expect(momentOf(`${date}T${time}`, zone)).toBe(compatible(`${date}T${time}`, zone));
        },
      ),
      { numRuns: 400 },
    );
  });
});

describe('the end of a day', () => {
  test.each([
    ['2026-03-28', 'Europe/London'],
    ['2026-03-29', 'Europe/London'],
    ['2026-10-25', 'Europe/London'],
    // The next day begins at 01:00 there.
    ['2026-04-23', 'Africa/Cairo'],
  ])('%s in %s is when Intl’s clock comes to the next date', (date, zone) => {
    const end = endOfDay(date, zone);
    expect(clock(end - 1, zone).slice(0, 10)).toBe(date);
    expect(clock(end, zone).slice(0, 10) > date).toBe(true);
  });
});
