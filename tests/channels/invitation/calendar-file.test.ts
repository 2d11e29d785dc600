import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { type CalendarEvent, calendarFile } from '../../../src/channels/invitation/calendar-file.ts';
import { momentOf } from '../../../src/model/calendar.ts';
import { calendarFaults, LIBICAL, libicalErrors } from '../../support/calendars.ts';
import { describeWhen } from '../../support/tools.ts';

const event = (more: Partial<CalendarEvent> = {}): CalendarEvent => ({
  uid: '2026-03.live@sillandsprig.example',
  sequence: 0,
  stamp: Date.UTC(2026, 2, 3),
  start: Date.UTC(2026, 2, 19, 19),
  timeZone: 'Europe/London',
  minutes: 25,
  reminder: 30,
  summary: 'Sill & Sprig: the March box, opened live',
  description: 'Come; bring yours, too.\n\nhttps://video.example/live',
  url: 'https://video.example/live',
  location: 'https://video.example/live',
  organizer: { name: 'Sill & Sprig', email: 'hello@sillandsprig.example' },
  ...more,
});

const eventIn = (text: string): ICAL.Event => {
  const calendar = new ICAL.Component(ICAL.parse(text));
  for (const zone of calendar.getAllSubcomponents('vtimezone'))
    ICAL.TimezoneService.register(new ICAL.Timezone(zone), zone.getFirstPropertyValue('tzid') as string);
  const read = new ICAL.Event(calendar.getFirstSubcomponent('vevent') as ICAL.Component);
  return read;
};

/** The moment that ical.js reads with the file's own zone rules. */
const momentIn = (text: string): number => {
  ICAL.TimezoneService.reset();
  return eventIn(text).startDate.toJSDate().getTime();
};

/** Hours around both changes of clocks, in zones that change by an hour, by half an hour, southern and never. */
const zones = ['Europe/London', 'America/New_York', 'Asia/Tokyo', 'Australia/Lord_Howe'];
const days = [
  '2026-03-25',
  '2026-03-28',
  '2026-03-29',
  '2026-03-30',
  '2026-04-05',
  '2026-10-04',
  '2026-10-24',
  '2026-10-25',
  '2026-10-26',
  '2026-11-01',
];
const around = zones.flatMap((timeZone) =>
  days.flatMap((day) =>
    ['00:30', '01:30', '02:15', '19:00'].map((time) => ({
      timeZone,
      local: `${day}T${time}`,
      start: momentOf(`${day}T${time}`, timeZone) as number,
    })),
  ),
);

describe('an event across a change of clocks', () => {
  // ical.js 2 (MPL, kewisch/ical.js), which knows only the rules that the file brings along.
  test.each(around)('is at the same moment for ical.js: $local in $timeZone', ({ timeZone, start }) => {
    expect(momentIn(calendarFile(event({ timeZone, start })))).toBe(start);
  });

  // The runtime's own zone data (Intl, from the IANA database), asked for the offset itself.
  test.each(around)('has the offset that Intl has: $local in $timeZone', ({ timeZone, start }) => {
    const text = calendarFile(event({ timeZone, start }));
    if (!text.includes('DTSTART;TZID')) return;
    const zone = new ICAL.Timezone(
      new ICAL.Component(ICAL.parse(text)).getFirstSubcomponent('vtimezone') as ICAL.Component,
    );
    const offsetAt = (moment: number): number => {
      const parts = new Intl.DateTimeFormat('en-US', { timeZone, timeZoneName: 'longOffset' }).formatToParts(
        moment,
      );
      const [, sign = '+', hours = '0', minutes = '0'] =
        /GMT(?:([+-])(\d\d):(\d\d))?/.exec(parts.find(({ type }) => type === 'timeZoneName')?.value ?? '') ??
        [];
      return Number(`${sign}1`) * (Number(hours) * 3600 + Number(minutes) * 60);
    };
    const local = ICAL.Time.fromData(
      { ...ICAL.Time.fromJSDate(new Date(start + offsetAt(start) * 1000), true).toJSON(), isDate: false },
      zone,
    );
    expect(zone.utcOffset(local)).toBe(offsetAt(start));
  });

  // RFC 5545 §3.3.5 takes such a time for the first, ical.js for the second.
  test.each([0, 1])('stands in UTC where the clock shows its time twice, %i hours on', (hours) => {
    const start = Date.UTC(2026, 9, 25, hours, 30);
    const text = calendarFile(event({ start }));
    expect(text).toContain(`DTSTART:20261025T0${hours}3000Z\r\n`);
    expect(text).not.toContain('VTIMEZONE');
  });

  test('brings the rules of the year around it', () => {
    const text = calendarFile(event({ start: momentOf('2026-03-29T19:00', 'Europe/London') as number }));
    expect(text).toContain(
      'BEGIN:DAYLIGHT\r\nDTSTART:20260329T010000\r\nTZOFFSETFROM:+0000\r\nTZOFFSETTO:+0100\r\nEND:DAYLIGHT\r\n',
    );
  });
});

/** What a file can bear of a text: no control characters, one sort of line ends. */
const kept = (text: string): string => {
  const words = text.replace(/\r\n?/g, '\n').replace(/(?![\t\n])\p{Cc}(?<![\u0080-\u009f])|\p{Cs}/gu, '');
  return words.trim() === '' ? '' : words;
};

/** Without the sign that stands for a character cut in two: the check cannot tell one that an author wrote. */
const texts = fc.string({ unit: 'binary', maxLength: 300 }).map((text) => text.replaceAll('\ufffd', ''));
const anyEvent = fc
  .record({
    summary: texts.map((text) => `The live ${text}`),
    description: texts,
    location: texts,
    name: texts,
    sequence: fc.nat({ max: 40 }),
    minutes: fc.integer({ min: 1, max: 300 }),
    start: fc.integer({ min: Date.UTC(2020, 0), max: Date.UTC(2035, 0) }).map((ms) => ms - (ms % 60_000)),
    timeZone: fc.constantFrom(...zones, 'Europe/Dublin', 'America/Sao_Paulo', 'UTC', 'Africa/Casablanca'),
  })
  .map(({ name, ...more }) => event({ ...more, organizer: { name, email: 'hello@sillandsprig.example' } }));

test('no event has a fault that readers forgive, and ical.js reads its words and moment again', () => {
  fc.assert(
    fc.property(anyEvent, (one) => {
      const text = calendarFile(one);
      expect(calendarFaults(text)).toEqual([]);
      expect(momentIn(text)).toBe(one.start);
      expect(eventIn(text).description ?? '').toBe(kept(one.description));
    }),
    { numRuns: 300 },
  );
});

const broken: readonly (readonly [string, (text: string) => string])[] = [
  ['3.1: a line that does not end in CRLF', (text) => text.replace('SEQUENCE:0\r\n', 'SEQUENCE:0\n')],
  ['3.1: a line of more than 75 octets', (text) => text.replace('SUMMARY:', `SUMMARY:${'é'.repeat(60)}`)],
  ['3.3.11: a sign that is not escaped', (text) => text.replace('Come\\;', 'Come;')],
  ['3.2.19: a zone that nobody knows', (text) => text.replaceAll('Europe/London', 'Europe/Londinium')],
  [
    '3.2.19: a zone that is not in the file',
    (text) => text.replace('TZID:Europe/London', 'TZID:Europe/Paris'),
  ],
  ['3.3.6: an event that lasts no time', (text) => text.replace('DURATION:PT25M', 'DURATION:-PT25M')],
  [
    '3.8.2.2: an end before the start',
    (text) => text.replace('DURATION:PT25M', 'DTEND;TZID=Europe/London:20260319T180000'),
  ],
];

test.each(broken)('the checks of our own see it: %s', (fault, broke) => {
  const text = calendarFile(event());
  expect(calendarFaults(text)).toEqual([]);
  expect(broke(text)).not.toBe(text);
  expect(calendarFaults(broke(text))).toEqual([fault]);
});

describeWhen(LIBICAL, 'libical 3 with python3', 'libical3', 'libical', () => {
  test('finds nothing in events of any zone, moment and words', () => {
    const some = fc.sample(anyEvent, { numRuns: 200, seed: 6 }).map(calendarFile);
    const edges = around.map(({ timeZone, start }) => calendarFile(event({ timeZone, start })));
    const all = [...some, ...edges];
    expect(libicalErrors(all).flatMap((errors, i) => (errors.length > 0 ? [[errors, all[i]]] : []))).toEqual(
      [],
    );
  });

  test.each([
    ['without a UID', /UID:.*\r\n/],
    ['without a DTSTAMP', /DTSTAMP:.*\r\n/],
    ['without an organizer', /ORGANIZER;.*\r\n/],
    ['whose version is unknown', /VERSION:.*\r\n/],
  ])('finds the fault in one %s', (_, line) => {
    expect(libicalErrors([calendarFile(event()).replace(line, '')])[0]).not.toEqual([]);
  });
});

test('an event without an organizer is not published, for nobody could say so', () => {
  const { organizer: _, ...rest } = event();
  expect(calendarFile(rest)).not.toContain('METHOD');
});
