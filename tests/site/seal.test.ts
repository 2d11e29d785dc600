import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { filesBelow } from '../support/tools.ts';

/** Marks of the cycle that is still sealed as of the demo's moment: theme, items, makers' photos. */
const marks = [
  'Balcony Bees',
  'balcony-bees',
  'Bee hotel',
  'bee-hotel',
  'bee-drinking-dish',
  'Bee Meadow',
  'bee-meadow',
  'honey-jar',
  'flower-seed-balls',
  'box-2026-04',
  '2026-04-balcony',
  'cycles/2026-04',
  'cycle-2026-04',
];

test('no byte and no file name of a sealed cycle is in the site', () => {
  const site = inject('demoSite');
  const found = filesBelow(site).flatMap((path) => {
    const content = readFileSync(join(site, path)).toString('latin1');
    return marks
      .filter((mark) => content.includes(mark) || path.includes(mark))
      .map((mark) => `${path}: ${mark}`);
  });
  const marker = readFileSync(join(site, '.lidlore'), 'utf8');
  expect(marks.filter((mark) => marker.includes(mark))).toEqual([]);
  expect(found).toEqual([]);
});
