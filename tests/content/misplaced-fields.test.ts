import { describe, expect, test } from 'vitest';
import { parseFile } from '../../src/content/front-matter.ts';
import { frontMatterOf } from '../../src/content/record-file.ts';
import { schemaOf } from '../../src/content/record-schema.ts';
import { validate } from '../../src/content/validate.ts';
import { pasted } from '../support/pasted.ts';
import { MISPLACED_FIELDS, type MisplacedField } from './misplaced-fields.ts';

const PATHS = { item: 'cycles/2026-01/items/01-pot.md', cycle: 'cycles/2026-01/cycle.md' };
const NEEDED = {
  item: ['name: Teapot', 'kind: teapot', 'description: A pot.', 'brand: A Potter'],
  cycle: ['theme: First', 'summary: A pot.', 'shipped: 2026-01-06', 'reveal: 2026-01-20T19:00'],
};

const reading = (of: MisplacedField['of'], text: string) => {
  const source = { path: PATHS[of], text };
  const record = frontMatterOf(source, parseFile(source));
  return { record, found: [...record.diagnostics, ...validate(schemaOf(source.path), record).diagnostics] };
};

const check = ({ of, typed, meant }: MisplacedField): void => {
  const [first, ...rest] = NEEDED[of];
  const text = ['---', first, typed, ...rest, '---', 'Its story.', ''].join('\n');
  const { found } = reading(of, text);
  expect(found.map(({ message }) => message)).toHaveLength(1);
  const [finding] = found;
  expect(finding?.location.line).toBeGreaterThanOrEqual(3);
  expect(finding?.location.line).toBeLessThan(3 + typed.split('\n').length);
  expect(finding?.message).not.toMatch(/YAML|mapping|scalar|sequence|collection|implicit/i);
  expect(finding?.instead).toBeDefined();
  if (!finding?.instead) return;
  const mended = reading(of, pasted(text, finding.instead));
  expect(mended.found).toEqual([]);
  expect(mended.record.data).toMatchObject(meant);
};

describe('a record with', () => {
  const open = MISPLACED_FIELDS.filter((_, i) => i % 2 === 0);
  const aside = MISPLACED_FIELDS.filter((_, i) => i % 2 === 1);
  test.each(open)('$slip gives one finding, and lines that say what was meant', check);
  test.each(aside)('$slip gives one finding, and lines that say what was meant (aside)', check);
});

test.each([
  ['item', 'also: [pot 5", cup]'],
  ['item', "also: [potters', cup]"],
  ['item', 'cautions:\n- Hot when full.\n- Keep dry.'],
  ['item', 'image:\n- file: pot.jpg\n  alt: A pot\n- {file: cup.jpg, alt: A cup}'],
  ['item', 'care: |\n  - care: rinse it\n  alt: none'],
  ['cycle', `replay:\n  address: https://video.example/one\n  beats:\n    hook: "0:00"\n  minutes: 24`],
  ['cycle', 'live: {minutes: 20, hook: "One, two"}'],
] as const)('a field of the %s that stands in its place is let alone: %j', (of, typed) => {
  const [first, ...rest] = NEEDED[of];
  expect(reading(of, ['---', first, typed, ...rest, '---', ''].join('\n')).found).toEqual([]);
});

test('a field that stands further in than it could belong is answered, wherever it came from', () => {
  for (const blanks of [1, 2, 3, 4, 6, 9])
    for (const before of ['voices:', 'live:', 'hero:', 'summary: A pot.'])
      for (const typed of ['title: javascript:x', 'alt: A: pot', '- text: First', 'consent: "2026'])
        expect(
          reading('cycle', `---\n${before}\n${' '.repeat(blanks)}${typed}\n  - {text: Lovely.}\n---\n`).found,
        ).not.toEqual([]);
});
