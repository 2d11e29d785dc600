import { describe, expect, test } from 'vitest';
import { askedForOf } from '../../src/analysis/coverage/phrases/asked-for.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { Search } from '../../src/model/box.ts';
import { BOX, cycleText, itemText } from '../analysis/article.ts';
import { item } from '../support/box.ts';
import { siteOf } from '../support/built.ts';

const english = await languageFor('en');
const search = (phrase: string, count: number): Search => ({
  phrase,
  count,
  location: { file: 'searches.csv', line: 2, column: 1 },
});
const ITEMS = [
  item({ name: 'Wooden seed tray', kind: 'seed tray' }),
  item({ name: 'Boot brush', kind: 'boot brush' }),
];

describe('what people typed', () => {
  test('is for what was packed, or the oftenest first for nothing that was', () => {
    const typed = [
      search('seed trays', 40),
      search('worm bin', 9),
      search('window box', 21),
      search('brush for boots', 7),
    ];
    expect(askedForOf(typed, ITEMS, english)).toEqual({
      all: 77,
      answered: 47,
      others: [
        { phrase: 'window box', count: 21 },
        { phrase: 'worm bin', count: 9 },
      ],
    });
  });

  test('is nothing else where it is a packed thing but for a letter', () => {
    const typed = [search('wooden seed tray', 40), search('woodden seed tray', 9), search('seed trap', 3)];
    expect(askedForOf(typed, ITEMS, english).others).toEqual([{ phrase: 'seed trap', count: 3 }]);
  });

  test('is told once on the back room’s first page, escaped, and nowhere where no list is', async () => {
    const files = {
      'box.md': BOX,
      'cycles/2026-03/cycle.md': cycleText('It came in March.'),
      'cycles/2026-03/items/01-seed-tray.md': itemText('Seed tray', 'seed tray', 'Fill it.', { lead: true }),
    };
    const asOf = Date.UTC(2026, 3, 1);
    const index = (built: Awaited<ReturnType<typeof siteOf>>): string =>
      built.backroom.get('index.html') ?? '';
    const told = await siteOf(
      { ...files, 'searches.csv': 'phrase,count\nseed tray,30\n"worm <bin>",12\n' },
      asOf,
    );
    expect(index(told)).toContain(
      'Of 42 times that something was typed by searches.csv, 30 were for a thing that was packed.',
    );
    expect(index(told)).toContain('<th scope="row">worm &lt;bin&gt;</th><td>12</td>');
    expect([...told.site.values()].join()).not.toContain('worm');
    expect(index(await siteOf(files, asOf))).not.toContain('id="asked"');
  });
});
