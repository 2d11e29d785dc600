import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { alsoLine, linkMarkdown } from '../../src/render/record-lines.ts';

test('a link is written from the folder of its file', () => {
  const link = { to: '2025-09', anchor: 'mister' };
  expect(
    ['cycles/2026-03/cycle.md', 'cycles/2026-03/items/01-tin.md'].map((file) =>
      linkMarkdown({ ...link, at: { file } }),
    ),
  ).toEqual(['[mister](../2025-09/cycle.md)', '[mister](../../2025-09/cycle.md)']);
});

test('a line of other names is YAML that gives them back', () => {
  const names = [
    'seed tin',
    'tin: the good one',
    'no',
    '12',
    'jardinière',
    '園芸ナイフ',
    '- a',
    "gardener's soap",
    '#1',
  ];
  expect(parse(alsoLine(names))).toEqual({ also: names });
});
