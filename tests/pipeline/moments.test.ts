/** Whatever the moment: nothing of a cycle before its reveal, all of it after, and no change that was not announced. */

import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { siteOf } from '../support/built.ts';
import { shareOf } from '../support/share-of.ts';
import { smallBox } from '../support/small-box.ts';

/** Local reveals on both sides of changes of clocks, one in the hour that London skips and one in that which it has twice. */
const CYCLES = [
  { id: '2025-09', reveal: '2025-09-18T19:00', item: 'Aardbei', zone: '' },
  { id: '2025-10', reveal: '2025-10-26T01:30', item: 'Bramble', zone: '' },
  { id: '2025-12', reveal: '2025-12-18T19:00', item: 'Cornflower', zone: '-05:00' },
  { id: '2026-03', reveal: '2026-03-29T01:30', item: 'Damson', zone: '' },
  { id: '2026-04', reveal: '2026-04-23T19:00', item: 'Elderberry', zone: '' },
] as const;
const ZONE = 'Europe/London';

/** By another road than the program's own `momentOf`: Temporal's constructors. */
const momentOfReveal = ({ reveal, zone }: (typeof CYCLES)[number]): number =>
  zone
    ? Temporal.Instant.from(`${reveal}${zone}`).epochMilliseconds
    : Temporal.PlainDateTime.from(reveal).toZonedDateTime(ZONE, { disambiguation: 'compatible' })
        .epochMilliseconds;

const files: Record<string, string> = {
  'box.md': smallBox(
    `calls:
  join: {address: "https://crumb.example/join", text: Join us}
  spare: {address: "https://crumb.example/spare", text: See what is left}
call: join
`,
    `
A small box.
`,
    { timeZone: ZONE },
  ),
  'searches.csv': `phrase,count\n${CYCLES.map(({ item }) => `${item} spoon,3`).join('\n')}\n`,
  ...Object.fromEntries(
    CYCLES.flatMap(({ id, reveal, zone, item }, i) => [
      [
        `cycles/${id}/cycle.md`,
        `---
theme: Theme of ${item}
summary: A ${item} spoon, and how it came to be in a box after a year in which nobody could find one at all.
shipped: ${id}-01
reveal: ${reveal}${zone}
call: ${i === 1 ? 'spare' : 'join'}
---

About the ${item}; see [the next](../${CYCLES[i + 1]?.id ?? id}/cycle.md).
`,
      ],
      [
        `cycles/${id}/items/01-${item.toLowerCase()}-spoon.md`,
        `---
name: ${item} spoon
kind: spoon
lead: true
brand: Maker of ${item}
description: A spoon of ${item} wood.
category: none
${i === 1 ? `spare: {count: 2, price: 4.00, address: "https://crumb.example/${item}", until: 2026-02-28}` : ''}
---

Stir with the ${item} spoon.
`,
      ],
    ]),
  ),
};

const DAY = 86_400_000;
/** Moments around the reveals, and exactly at them and a millisecond before. */
const moments = fc
  .tuple(
    fc.constantFrom(...CYCLES),
    fc.oneof(fc.constantFrom(0, -1, 1, -3_600_000, 3_600_000), fc.integer({ min: -40 * DAY, max: 40 * DAY })),
  )
  .map(([cycle, away]) => momentOfReveal(cycle) + away);

const siteAt = async (moment: number): Promise<ReadonlyMap<string, string>> => {
  const { site, diagnostics } = await siteOf(files, moment);
  expect(diagnostics.filter(({ weight }) => weight === 'must fix')).toEqual([]);
  return site;
};

describe('as of any moment', () => {
  test('nothing of a cycle is in any public file before its reveal, and its item is in all that list it after', async () => {
    await fc.assert(
      fc.asyncProperty(moments, async (moment) => {
        const site = await siteAt(moment);
        const whole = [...site].map((entry) => entry.join('\n')).join('\n');
        for (const cycle of CYCLES) {
          const { id, item } = cycle;
          if (moment < momentOfReveal(cycle)) {
            expect(whole.toLowerCase()).not.toContain(item.toLowerCase());
            expect(whole).not.toContain(id);
            continue;
          }
          const page = `boxes/${id}-theme-of-${item.toLowerCase()}.html`;
          expect(site.get(page)).toContain(`${item} spoon`);
          for (const list of ['index.html', 'catalogue.html', 'feed.xml', 'feed.json'])
            expect(site.get(list), list).toContain(`${item} spoon`);
          expect(site.get('sitemap.xml')).toContain(page);
        }
        const open = CYCLES.filter((cycle) => moment >= momentOfReveal(cycle));
        const kindPage = site.get('kinds/spoon.html');
        expect(kindPage !== undefined).toBe(open.length >= 3);
        for (const { item } of kindPage ? open : []) expect(kindPage).toContain(`${item} spoon`);
        expect([...site.keys()].filter((path) => path.startsWith('boxes/')).length).toBe(open.length);
      }),
      { numRuns: shareOf(100) },
    );
  });

  test('the site is the same until the moment that the build names, and another from then on', async () => {
    await fc.assert(
      fc.asyncProperty(moments, async (moment) => {
        const { next } = await siteOf(files, moment);
        const now = await siteAt(moment);
        if (!next) {
          expect(await siteAt(moment + 3650 * DAY)).toEqual(now);
          return;
        }
        const at = Date.parse(next.at);
        expect(at).toBeGreaterThan(moment);
        expect(await siteAt(at - 1)).toEqual(now);
        expect(await siteAt(at)).not.toEqual(now);
      }),
      { numRuns: shareOf(50) },
    );
  });

  test('the end of a sale is the midnight after its last day in the box’s zone, and the call changes with it', async () => {
    const { next } = await siteOf(files, Date.UTC(2026, 1, 10));
    expect(next).toEqual({
      at: '2026-03-01T00:00:00Z',
      when: '1 March 2026, 00:00',
      changes: [
        { change: 'spare', cycle: '2025-10', item: 'bramble-spoon', name: 'Bramble spoon' },
        { change: 'call', cycle: '2025-10', call: 'join' },
      ],
    });
  });
});
