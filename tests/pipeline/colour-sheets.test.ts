/** Pages and their style sheets of colours: one for each that differs, however often it is asked for. */

import { expect, test } from 'vitest';
import { siteOf } from '../support/built.ts';
import { smallBox } from '../support/small-box.ts';

const cycle = (id: string, palette: string) => ({
  [`cycles/${id}/cycle.md`]: `---
theme: Rising in ${id}
summary: A spoon, and how it came to be in a box after a year in which nobody could find a good one at all.
shipped: ${id}-03
reveal: ${id}-19T19:00
palette: ${palette}
---
`,
  [`cycles/${id}/items/01-spoon.md`]: `---
name: Larch spoon of ${id}
kind: spoon
lead: true
brand: A Turner
description: A spoon.
category: none
---
`,
});

test('cycles of one palette share a sheet, and so do two palettes that give the same colours', async () => {
  const { site, diagnostics } = await siteOf(
    {
      'box.md': smallBox(`palette: ["#5f7358"]
calls: {join: {address: "https://crumb.example/join", text: Join}}
call: join
`),
      ...cycle('2026-01', '["#803020", "#d8c9ab"]'),
      ...cycle('2026-02', '["#803020", "#d8c9ab"]'),
      // The same colours, written otherwise.
      ...cycle('2026-03', '["#803020", "#D8C9AB"]'),
      ...cycle('2026-04', '["#204060"]'),
    },
    Date.UTC(2026, 3, 30),
  );
  expect(diagnostics.filter(({ weight }) => weight === 'must fix')).toEqual([]);
  const sheetOf = (page: string): string =>
    /assets\/colours\.\w{10}\.css/.exec(site.get(page) ?? '')?.[0] ?? `none of ${page}`;
  const articles = [...site.keys()].filter((path) => path.startsWith('boxes/')).sort();
  const [first, second, third, last] = articles.map(sheetOf);
  expect(new Set([first, second, third]).size).toBe(1);
  expect(last).not.toBe(first);
  expect(sheetOf('index.html')).toBe(last);
  expect([...site.keys()].filter((path) => path.startsWith('assets/colours.')).sort()).toEqual(
    [first, last, sheetOf('catalogue.html')].sort(),
  );
});
