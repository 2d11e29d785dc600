import { readdirSync, readFileSync } from 'node:fs';
import { join, parse } from 'node:path';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { siteOfFolder } from '../support/built.ts';
import { filesBelow } from '../support/tools.ts';

const root = join(import.meta.dirname, '../..');
const site = inject('demoSite');
/** The cycle that is sealed as of the demo's moment. */
const cycle = join(root, 'content/cycles/2026-04');

const namesIn = (folder: string): string[] =>
  readdirSync(join(cycle, folder)).map((file) => parse(file).name.replace(/^\d\d-/, ''));
const fieldIn = (file: string, field: string): string =>
  new RegExp(`^${field}: "?([^,"\n]+)`, 'm').exec(readFileSync(join(cycle, file), 'utf8'))?.[1] ?? '';

/** Marks of it, read from its records: theme, item names, item and photo file names, its article's address. */
const marks = [
  ...new Set(
    [
      fieldIn('cycle.md', 'theme'),
      fieldIn('cycle.md', 'theme').replaceAll(' ', '-'),
      ...readdirSync(join(cycle, 'items')).map((file) => fieldIn(`items/${file}`, 'name')),
      ...namesIn('items'),
      ...namesIn('photos'),
      'boxes/2026-04',
    ].map((mark) => mark.toLowerCase()),
  ),
];
/** Marks that only the private side may hold: no page ever names a folder of the content. */
const inner = ['cycles/2026-04'];

const found = (path: string, bytes: Uint8Array | string, wanted: readonly string[]): string[] => {
  const text = `${path}\n${Buffer.from(bytes).toString('latin1')}`.toLowerCase();
  return wanted.filter((mark) => text.includes(mark));
};

test('no byte and no file name of a sealed cycle is in the site', () => {
  const leaks = [...filesBelow(site), '.lidlore'].flatMap((path) =>
    found(path, readFileSync(join(site, path)), [...marks, ...inner]).map((mark) => `${path}: ${mark}`),
  );
  expect(leaks).toEqual([]);
});

// Without this the search above could pass by looking for the wrong words.
describe('the search knows its words:', () => {
  let text = '';
  beforeAll(async () => {
    const revealed = await siteOfFolder(
      join(root, 'content'),
      join(site, '../.lidlore'),
      Date.UTC(2026, 3, 24),
    );
    text = [...revealed.site].map((entry) => entry.join('\n')).join('\n');
  });
  test.each(marks)('“%s” is in the site once the cycle is revealed', (mark) => {
    expect(found('', text, [mark])).toEqual([mark]);
  });
});
