/** Reveals that wait for the parcels, from the text of the lists to the pages. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deliveredOf, deliveredReveal } from '../../src/analysis/parcels/delivered.ts';
import { evenings } from '../../src/analysis/parcels/reveal.ts';
import { momentOf, revealDay } from '../../src/model/calendar.ts';
import { type SealedCycle, sealedIn } from '../../src/pipeline/sealed.ts';
import { dateOfDay, dayOfDate } from '../../src/text/days.ts';
import { parcel, seeded } from '../analysis/parcels/parcels.ts';
import { type BuiltSite, type Files, siteOf } from '../support/built.ts';
import { smallBox } from '../support/small-box.ts';

const at = (local: string): number => momentOf(local, 'Europe/London') as number;

const LIST_PATH = 'cycles/2026-03/parcels.csv';

const contentWith = (reveal: string, list?: string): Files => ({
  ...(list !== undefined && { [LIST_PATH]: list }),
  'box.md': smallBox(`calls: {join: {address: "https://crumb.example/join", text: Join us}}
pieces: [article, invitation, live, letter, clip]
reveal: {share: 0.9, weekdays: [thursday], time: "19:00"}
`),
  'cycles/2026-03/cycle.md': `---
theme: Rising
summary: A spoon, and how it came to be in a box after a year in which nobody could find a good one at all.
shipped: 2026-03-03
reveal: ${reveal}
---
`,
  'cycles/2026-03/items/01-spoon.md': `---
name: Larch spoon
kind: spoon
lead: true
brand: A Turner
description: A spoon.
category: none
---
`,
});

/** Ten parcels that left on 3 March, arriving on these days of the month; `-` for one on its way. */
const listOf = (days: string): string =>
  `shipped,delivered,status\n${days
    .split(' ')
    .map(
      (day) =>
        `2026-03-03,${day === '-' || day === 'lost' ? '' : `2026-03-${day.padStart(2, '0')}`},${day === 'lost' ? 'lost' : ''}`,
    )
    .join('\n')}\n`;

const NINTH_ON_12 = listOf('4 5 5 6 7 7 8 9 12 -');

const build = (reveal: string, list: string | undefined, local: string): Promise<BuiltSite> =>
  siteOf(contentWith(reveal, list), at(local));
const shows = ({ site }: BuiltSite): boolean => [...site.values()].join().includes('Larch');
const sealedAt = ({ box }: BuiltSite, local: string): readonly SealedCycle[] =>
  box ? sealedIn(box, at(local)) : [];
const rulesOf = ({ diagnostics }: BuiltSite): readonly string[] =>
  diagnostics
    .filter(({ rule }) => /^(?:reveal|parcels)/.test(rule))
    .map(({ weight, rule }) => `${weight}: ${rule}`);

describe('a reveal that waits for its parcels', () => {
  test('is sealed while too few have arrived, and every paper says until what', async () => {
    const result = await build('when-delivered', NINTH_ON_12, '2026-03-11T23:59');
    expect(shows(result)).toBe(false);
    expect(sealedAt(result, '2026-03-11T23:59')).toEqual([{ cycle: '2026-03', theme: 'Rising' }]);
    expect(result.next).toBeUndefined();
    const papers = [...result.backroom].filter(([path]) => path.endsWith('.html'));
    expect(papers.length).toBeGreaterThan(2);
    for (const path of [
      'index.html',
      '2026-03/proof.html',
      '2026-03/letter-sheet.html',
      '2026-03/run-sheet.html',
    ])
      expect(result.backroom.get(path), path).toContain('Sealed until its parcels have arrived');
    for (const [path, text] of papers) {
      const words = text.replace(/<(script|style)\b[\s\S]*?<\/\1>|<[^>]*>/g, ' ');
      expect(words, path).not.toMatch(/Invalid Date|NaN|undefined|Infinity/);
    }
  });

  test('is revealed on the first evening of the habit after the share has arrived', async () => {
    // The ninth of ten arrived on 12 March, a Thursday: the next is the 19th.
    expect(dateOfDay(dayOfDate('2026-03-12'))).toBe('2026-03-12');
    const before = await build('when-delivered', NINTH_ON_12, '2026-03-19T18:59');
    expect(shows(before)).toBe(false);
    const [sealed = { cycle: '', theme: '' }] = sealedAt(before, '2026-03-19T18:59');
    expect(sealed).toMatchObject({ cycle: '2026-03', reveal: at('2026-03-19T19:00') });
    expect(revealDay({ reveal: sealed.reveal }, 'Europe/London', 'en-GB')).toBe('19 March 2026');
    expect(before.next?.at).toBe('2026-03-19T19:00:00Z');
    const after = await build('when-delivered', NINTH_ON_12, '2026-03-19T19:00');
    expect(shows(after)).toBe(true);
    const page = after.site.get('boxes/2026-03-rising.html');
    expect(page).toContain('"datePublished":"2026-03-19T19:00:00Z"');
    expect(page).toContain('<time datetime="2026-03-19">19 March 2026</time>');
    // Weeks later the moment is the same.
    const later = await build('when-delivered', NINTH_ON_12, '2026-05-01T12:00');
    expect(later.site.get('boxes/2026-03-rising.html')).toBe(page);
  });

  test('may have a moment before which it is not', async () => {
    const reveal = '{when: delivered, notBefore: 2026-03-21T10:00}';
    expect(shows(await build(reveal, NINTH_ON_12, '2026-03-21T09:59'))).toBe(false);
    expect(shows(await build(reveal, NINTH_ON_12, '2026-03-21T10:00'))).toBe(true);
    const early = '{when: delivered, notBefore: 2026-03-05T10:00}';
    expect(shows(await build(early, NINTH_ON_12, '2026-03-19T18:59'))).toBe(false);
    expect(shows(await build(early, NINTH_ON_12, '2026-03-19T19:00'))).toBe(true);
  });

  test.each([
    ['there is none', undefined, ['look at: reveal-parcels']],
    ['it is empty', '', undefined],
    ['it has a header alone', 'shipped,delivered,status\n', ['look at: parcels-empty']],
    [
      'its columns are others',
      'sent,came\n2026-03-03,2026-03-05\n',
      ['must fix: parcels-column', 'must fix: parcels-column'],
    ],
    ['it is no table', '\0\0PK nonsense', undefined],
    ['the rest is lost', listOf('4 5 5 6 7 7 8 9 lost lost'), ['look at: reveal-never']],
  ])('stays sealed for ever with its list when %s', async (_, list, rules) => {
    const result = await build('when-delivered', list, '2031-01-01T00:00');
    expect(shows(result)).toBe(false);
    if (rules) expect(rulesOf(result)).toEqual(rules);
    else expect(rulesOf(result).length).toBeGreaterThan(0);
  });

  test('says that too much is lost while others are still on their way', async () => {
    const result = await build('when-delivered', listOf('4 5 5 6 - - lost lost'), '2026-03-07T12:00');
    expect(rulesOf(result)).toEqual(['look at: reveal-never']);
    const one = await build('when-delivered', listOf('4 5 5 6 6 - - - - lost'), '2026-03-07T12:00');
    expect(rulesOf(one)).toEqual([]);
  });

  test('counts parcels of the list that have yet to leave', async () => {
    const more = `${NINTH_ON_12}${'2026-03-20,,\n'.repeat(5)}`;
    expect(shows(await build('when-delivered', more, '2026-03-19T19:00'))).toBe(false);
  });

  test.each([
    [
      'when-arrived',
      'Unexpected `when-arrived`, expected a date and time that exist, as 2026-03-19T19:00, or when-delivered',
    ],
    [
      '{when: delivered}',
      'Unexpected lines `when`, expected a date and time that exist, as 2026-03-19T19:00, or when-delivered, or the lines `when` and `notBefore` below it',
    ],
  ])('is not written %s', async (reveal, message) => {
    const { diagnostics } = await build(reveal, NINTH_ON_12, '2026-03-19T19:00');
    expect(diagnostics.map((one) => one.message).join('\n')).toContain(message);
  });
});

describe('the day by which the share had arrived', () => {
  test('is the first on which counting finds it, and no day where it never does', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 99 }),
        fc.integer(),
        (parcels, hundredths, seed) => {
          const random = seeded(seed);
          const counts = Array.from({ length: parcels }, () =>
            random() < 0.9
              ? parcel(Math.floor(random() * 20), 'delivered', { shipped: Math.floor(random() * 4) })
              : parcel(30, random() < 0.5 ? 'travelling' : 'returned'),
          );
          const { day } = deliveredOf(counts, hundredths / 100);
          const arrivedBy = (last: number): number =>
            counts.filter(({ state, shipped, days }) => state === 'delivered' && shipped + days <= last)
              .length;
          // In whole numbers, which do not round.
          const enough = (last: number): boolean => arrivedBy(last) * 100 >= hundredths * parcels;
          if (day === undefined) expect(enough(1000)).toBe(false);
          else expect([enough(day - 1), enough(day)]).toEqual([false, true]);
        },
      ),
    );
  });

  test('is the day before the earliest evening, in zones on both sides of the date line', () => {
    for (const zone of ['Pacific/Kiritimati', 'Pacific/Pago_Pago', 'Europe/London']) {
      const day = dayOfDate('2026-03-18');
      const moment = deliveredReveal(day, { time: '00:00' }, zone);
      expect(moment, zone).toBe(momentOf('2026-03-19T00:00', zone));
      expect(moment).toBe(evenings(day + 1, 0, { time: '00:00' }, zone, 1)[0]);
    }
  });
});
