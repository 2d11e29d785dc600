/** A box of words alone, whose addresses have been shown: what of it moves, the addresses notice. */
import type { Files } from './built.ts';

const BOX = `---
name: Crumb & Co
url: https://crumb.example/box/
lang: en-GB
timeZone: Europe/London
currency: GBP
description: A small box of baking tools, with the story of each.
author: Ada Crumb
calls: {join: {address: "https://crumb.example/join", text: Join us}}
call: join
---

One good tool a month.
`;

/** A cycle's record; `more` are lines of its own. */
export const cycleText = (month: string, theme: string, more = ''): string => `---
theme: ${theme}
summary: A spoon and a sieve, and how they came to be in a box after a year in which nobody could find a good one.
shipped: ${month}-03
reveal: ${month}-19T19:00
${more}---

We looked for these for a year.
`;

/** An item's record; `more` are lines of its own. */
export const itemText = (name: string, kind: string, lead: boolean, more = ''): string => `---
name: ${name}
kind: ${kind}
${lead ? 'lead: true' : 'goesWith: It lies beside the first.'}
brand: Fenn Weavers
description: A plain ${kind}.
category: none
${more}---

It was made in a shed.
`;

/** Three cycles with a spoon and a sieve each, by path in the content folder: both kinds have a page. */
export const SHOWN_BOX: Files = {
  'box.md': BOX,
  ...Object.fromEntries(
    [
      ['2026-01', 'Crust'],
      ['2026-02', 'Steam'],
      ['2026-03', 'Rising'],
    ].flatMap(([month = '', theme = '']) => [
      [`cycles/${month}/cycle.md`, cycleText(month, theme)],
      [`cycles/${month}/items/01-spoon.md`, itemText('Wooden spoon', 'spoon', true)],
      [`cycles/${month}/items/02-flour-sieve.md`, itemText('Flour sieve', 'flour sieve', false)],
    ]),
  ),
};

/** As a build of the box wrote them down on 27 March 2026. */
export const SHOWN = `address,what,first shown
boxes/2026-01-crust.html,article 2026-01,2026-03-27
boxes/2026-01-crust.html#spoon,item 2026-01,2026-03-27
boxes/2026-01-crust.html#flour-sieve,item 2026-01,2026-03-27
boxes/2026-02-steam.html,article 2026-02,2026-03-27
boxes/2026-02-steam.html#spoon,item 2026-02,2026-03-27
boxes/2026-02-steam.html#flour-sieve,item 2026-02,2026-03-27
boxes/2026-03-rising.html,article 2026-03,2026-03-27
boxes/2026-03-rising.html#spoon,item 2026-03,2026-03-27
boxes/2026-03-rising.html#flour-sieve,item 2026-03,2026-03-27
kinds/flour-sieve.html,kind,2026-03-27
kinds/spoon.html,kind,2026-03-27
`;

/** The box's files below `content/`, for a folder on a disk. */
export const inContent = (files: Files): Record<string, string> =>
  Object.fromEntries(Object.entries(files).map(([path, text]) => [`content/${path}`, text]));
