import { expect, test } from 'vitest';
import { siteOf } from '../support/built.ts';
import { smallBox } from '../support/small-box.ts';

const contentWith = (lines: string): Record<string, string> => ({
  'box.md': smallBox(
    `email: ada@crumb.example
calls:
  join: {address: "https://crumb.example/join", text: Join us}
call: join
pieces: [invitation, article, letter]
`,
    `
A small box.
`,
  ),
  'cycles/2026-03/cycle.md': `---
theme: Rising
summary: A larch spoon, and how it came to be in a box after a year in which nobody could find one at all.
shipped: 2026-03-03
reveal: 2026-03-19T19:00
${lines}
---

About the spoon.
`,
  'cycles/2026-03/items/01-spoon.md': `---
name: Larch spoon
kind: spoon
lead: true
brand: Fenn
description: A spoon of larch.
category: none
---

Stir with it.
`,
});

const build = (lines: string) => siteOf(contentWith(lines), Date.UTC(2026, 2, 10));

const mustFix = async (lines: string): Promise<readonly string[]> =>
  (await build(lines)).diagnostics
    .filter(({ weight }) => weight === 'must fix')
    .map(({ rule, location: place, message }) => `${rule} ${place.line}: ${message}`);

test('a piece that nobody knows is refused, with the one that was meant', async () => {
  expect(await mustFix('made: {article: 2026-03-20, leter: 2026-03-20}')).toEqual([
    'unknown-key 6: Unexpected `leter`, expected `letter`: there is no field called `leter` in `made`',
  ]);
});

test('a day that does not exist is refused', async () => {
  expect((await mustFix('made: {letter: 2026-02-30}')).join()).toContain('2026-02-30');
});

test('the reveal itself is no moment before it was moved', async () => {
  expect((await mustFix('moved: [2026-03-12T19:00, 2026-03-19T19:00]')).join()).toContain('reveal-moved');
});

const fileOf = async (lines: string, path: string): Promise<string> =>
  (await build(lines)).backroom.get(path) ?? '';

test('a reveal moved twice has an event of the third version', async () => {
  const moved = 'moved: [2026-03-12T19:00, "2026-03-13T18:00"]';
  expect(await fileOf(moved, '2026-03/invitation.ics')).toContain('SEQUENCE:2\r\n');
});

test('the year shows the day of each piece, and what is missing', async () => {
  const index = await fileOf('made: {invitation: 2026-03-15}', 'index.html');
  expect(index).toContain('<th scope="row">March 2026</th><td>15 Mar</td><td>–</td><td>–</td>');
  expect(index).toContain('<th scope="row">In a row</th><td>1</td><td>none</td><td>none</td>');
});

test('a live without an address is found, once, and the site’s own stands in', async () => {
  const { diagnostics } = await build('');
  expect(diagnostics.filter(({ rule }) => rule === 'invitation-address')).toHaveLength(1);
  expect(await fileOf('', '2026-03/invitation.ics')).toContain('URL:https://crumb.example/\r\n');
});
