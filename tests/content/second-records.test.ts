import { toString as textOf } from 'mdast-util-to-string';
import { describe, expect, test } from 'vitest';
import { parseFile } from '../../src/content/front-matter.ts';
import { sourcesOf, wholeBox } from '../support/whole-box.ts';
import { SECOND_RECORDS, type SecondRecord } from './second-records.ts';

const FIRST = [
  '---',
  'name: Teapot',
  'kind: teapot',
  'description: A pot.',
  'brand: A Potter',
  'lead: true',
  '---',
];

const check = ({ below, at }: SecondRecord): void => {
  const text = [...FIRST, ...below].join('\n');
  const { data, body, diagnostics } = parseFile({ path: 'cycles/2026-01/items/01-pot.md', text });
  expect(diagnostics.map(({ rule, location }) => [rule, location.line])).toEqual(
    at.map((line) => ['second-record', FIRST.length + line]),
  );
  expect(data).toMatchObject({ name: 'Teapot', kind: 'teapot' });
  // Nothing of the second is taken for the first one's story, and nothing of a story for a record.
  const own = below.slice(0, (at[0] ?? below.length + 1) - 1);
  expect(body).toEqual(parseFile({ path: 'a.md', text: [...FIRST, ...own].join('\n') }).body);
  if (below[0]) expect(textOf(body).startsWith(below[0])).toBe(true);
};

describe('below the fields of a record,', () => {
  const open = SECOND_RECORDS.filter((_, i) => i % 2 === 0);
  const aside = SECOND_RECORDS.filter((_, i) => i % 2 === 1);
  test.each(open)('$slip: $at', check);
  test.each(aside)('$slip: $at (aside)', check);
});

test('a second record says which lines are to be moved, and is all that is found in the box', () => {
  const box =
    '---\nname: A Box\nurl: https://example.org/\nlang: en\ntimeZone: Europe/London\ncurrency: GBP\ndescription: A box.\nauthor: A. Writer\ncalls: {join: {address: "https://example.org/join", text: Join}}\ncall: join\n---\n';
  const cycle =
    '---\ntheme: First\nsummary: A teapot and a tin of tea, and how the two of them came to be in one box in the end.\nshipped: 2026-01-06\nreveal: 2026-01-20T19:00\n---\n';
  const second = [
    '',
    '---',
    'name: Jam',
    'kind: jam',
    'description: Jam.',
    '---',
    'See [May](../../2025-05/cycle.md).',
    '',
  ];
  const files = {
    'box.md': box,
    'cycles/2026-01/cycle.md': cycle,
    'cycles/2026-01/items/01-pot.md': [...FIRST, 'Its story.', ...second].join('\n'),
  };
  expect(wholeBox(sourcesOf(files)).diagnostics).toMatchObject([
    {
      rule: 'second-record',
      location: { line: 10 },
      fix: expect.stringMatching(/^Move lines 10 to 15 into a new file/),
    },
  ]);
});
