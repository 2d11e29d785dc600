import { describe, expect, test } from 'vitest';
import { parseFile } from '../../src/content/front-matter.ts';
import { frontMatterOf } from '../../src/content/record-file.ts';
import { cycleSchema, itemSchema } from '../../src/content/schemas.ts';
import { validate } from '../../src/content/validate.ts';
import { pasted } from '../support/pasted.ts';
import { BROKEN_RECORDS, type BrokenRecord } from './broken-records.ts';

const PATH = 'cycles/2026-01/items/01-pot.md';

/** Needed fields round the lines at fault, apart from those that they write themselves. */
const recordOf = ({ typed, meant = {} }: BrokenRecord): string => {
  const needed = { name: 'Teapot', kind: 'teapot', description: 'A pot.', brand: 'A Potter' };
  const rest = Object.entries(needed)
    .filter(([key]) => !(key in meant) && !new RegExp(`^${key}`, 'm').test(typed))
    .map(([key, text]) => `${key}: ${text}`);
  return ['---', rest[0], typed, ...rest.slice(1), '---', 'Its story.', ''].join('\n');
};

const findingsOf = (text: string) => {
  const source = { path: PATH, text };
  const record = frontMatterOf(source, parseFile(source));
  return { record, found: [...record.diagnostics, ...validate(itemSchema, record).diagnostics] };
};

describe('a record with', () => {
  test.each(BROKEN_RECORDS)(
    '$slip gives one finding at its line, and lines that say what was meant',
    (broken) => {
      const text = recordOf(broken);
      const { found } = findingsOf(text);
      expect(found.map(({ message }) => message)).toHaveLength(1);
      const [finding] = found;
      const lines = broken.typed.split('\n').length;
      expect(finding?.location.line).toBeGreaterThanOrEqual(3);
      expect(finding?.location.line).toBeLessThan(3 + lines);
      expect(finding?.message).not.toMatch(/YAML|mapping|scalar|sequence|collection|implicit/i);
      if (!broken.meant) return;
      expect(finding?.instead).toBeDefined();
      if (!finding?.instead) return;
      const { record, found: left } = findingsOf(pasted(text, finding.instead));
      expect(left).toEqual([]);
      expect(record.data).toMatchObject(broken.meant);
    },
  );
});

test('fields below one that was mended keep the numbers of their own lines', () => {
  const text = [
    '---',
    'name: Teapot',
    'description: A pot: brown',
    'brand: A Potter',
    'color: red',
    '---',
    '',
  ];
  const { fields } = parseFile({ path: PATH, text: text.join('\n') });
  const places = new Map(fields);
  for (const key of ['name', 'description', 'brand', 'color'])
    expect({ key, line: places.get(key)?.line }).toEqual({
      key,
      line: text.findIndex((line) => line.startsWith(`${key}:`)) + 1,
    });
});

test.each([
  ['19/3/2026', 'updated: 2026-03-19'],
  ['3/19/2026', 'updated: 2026-03-19'],
  ['2026/3/9', 'updated: 2026-03-09'],
  ['3/4/2026', undefined],
])('a date typed as %s is proposed as `%s`: which number is the month is never guessed', (typed, line) => {
  const text = `---\ntheme: Tea\nsummary: A pot.\nshipped: 2026-03-03\nreveal: 2026-03-19T19:00\nupdated: ${typed}\n---\n`;
  const source = { path: 'cycles/2026-03/cycle.md', text };
  const { diagnostics } = validate(cycleSchema, frontMatterOf(source, parseFile(source)));
  expect(diagnostics.map(({ rule, instead }) => [rule, instead?.lines[0]])).toEqual([['updated', line]]);
});

test('two slips in one record are two findings, and lines pasted for both give what was meant', () => {
  const text = recordOf({ slip: '', typed: 'care: Rinse: twice.\nimage: {file: a.jpg, alt: A pot, warm}' });
  const { found } = findingsOf(text);
  expect(found.map(({ location }) => location.line)).toEqual([3, 4]);
  const mended = found.reduce((all, { instead }) => (instead ? pasted(all, instead) : all), text);
  expect(findingsOf(mended).found).toEqual([]);
});

test('a record with hundreds of slips is answered, the first of them with lines and the rest without', () => {
  const typed = Array.from({ length: 700 }, (_, i) => `key${i}: some text: that stands here ${i}`).join('\n');
  const { found } = findingsOf(`---\n${typed}\n---\nIts story.\n`);
  const forms = found.filter(({ rule }) => rule === 'yaml');
  expect(forms[0]?.instead?.lines).toEqual(['key0: "some text: that stands here 0"']);
  expect(forms.at(-1)?.instead).toBeUndefined();
});
