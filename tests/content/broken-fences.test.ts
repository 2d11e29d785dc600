import fc from 'fast-check';
import { toString as textOf } from 'mdast-util-to-string';
import { describe, expect, test } from 'vitest';
import { parseFile } from '../../src/content/front-matter.ts';
import { frontMatterOf } from '../../src/content/record-file.ts';
import { itemSchema } from '../../src/content/schemas.ts';
import { validate } from '../../src/content/validate.ts';
import { pasted } from '../support/pasted.ts';
import { sourcesOf, wholeBox } from '../support/whole-box.ts';
import { BROKEN_FENCES, type BrokenFence, FENCES_ASIDE } from './broken-fences.ts';

const PATH = 'cycles/2026-01/items/01-pot.md';

const reading = (text: string) => {
  const source = { path: PATH, text };
  const record = frontMatterOf(source, parseFile(source));
  return { record, found: [...record.diagnostics, ...validate(itemSchema, record).diagnostics] };
};

const MEANT = { name: 'Teapot', kind: 'teapot', description: 'A pot.', brand: 'A Potter' };

const check = ({ text, line, body }: BrokenFence): void => {
  const { found, record } = reading(text);
  expect(found.map(({ message }) => message)).toHaveLength(1);
  const [finding] = found;
  expect(finding).toMatchObject({ weight: 'must fix', location: { line } });
  expect(finding?.message).not.toMatch(/YAML|front matter|mapping|scalar/i);
  expect(finding?.message).toMatch(/^Unexpected .*, expected /);
  if (body === undefined) return;
  // What else may be wrong is found in the same run: the fields are read as they were meant.
  expect(record.data).toMatchObject(MEANT);
  expect(finding?.instead).toBeDefined();
  if (!finding?.instead) return;
  const mended = reading(pasted(text, finding.instead));
  expect(mended.found).toEqual([]);
  expect(mended.record.data).toMatchObject(MEANT);
  expect(textOf(mended.record.body).startsWith(body)).toBe(true);
  expect(textOf(record.body).startsWith(body)).toBe(true);
};

describe('a record with', () => {
  test.each(BROKEN_FENCES)('$slip gives one finding, and lines that mend it', check);
  test.each(FENCES_ASIDE)('$slip gives one finding, and lines that mend it (aside)', check);
});

describe('lines of dashes', () => {
  const FIELDS = 'name: Teapot\nkind: teapot\ndescription: A pot.\nbrand: A Potter\n';

  test.each([
    ['a rule in the story', `---\n${FIELDS}---\nIts story.\n\n---\n\nAnd more.\n`],
    ['a rule of stars in the story', `---\n${FIELDS}---\nIts story.\n\n***\n\nAnd more.\n`],
    ['a heading with a line below', `---\n${FIELDS}---\nIts story\n---\n\nAnd more.\n`],
    [
      'dashes in a text of several lines',
      `---\n${FIELDS}care: |\n  Rinse.\n  ---\n  Dry.\n---\nIts story.\n`,
    ],
    ['dashes in a list', `---\n${FIELDS}also:\n  - brewer\n  - ---\n---\nIts story.\n`],
    [
      'remarks and empty lines',
      `---\n\n# The pot\n${FIELDS}\n# Its care\n\ncare: Rinse it.\n\n---\nIts story.\n`,
    ],
    ['blanks after them', `--- \n${FIELDS}---  \nIts story.\n`],
    [
      'a story that begins with a colon, and a rule',
      `---\n${FIELDS}---\nIts story.\nSize: small\n\n---\n\nMore.\n`,
    ],
    ['the word yaml behind the first', `---yaml\n${FIELDS}---\nIts story.\n`],
  ])('are let alone where they mean something else: %s', (_, text) => {
    const { found, record } = reading(text);
    expect(found).toEqual([]);
    expect(record.data).toMatchObject(MEANT);
    expect(textOf(record.body).startsWith('Its story')).toBe(true);
  });

  test('part no fields where a story begins with a capital and a colon, and do where fields go on', () => {
    const text = (size: string) => `---\n${FIELDS}---\n${size}: 10 cm\n\n---\n\nMore.\n`;
    expect(reading(text('Size')).found).toEqual([]);
    expect(reading(text('size')).found.map(({ rule, location }) => [rule, location.line])).toEqual([
      ['front-matter', 6],
    ]);
    expect(reading(text('size')).record.data).toMatchObject({ ...MEANT, size: '10 cm' });
  });

  test.each([
    ['no first line', `${FIELDS}colour: red\n---\n`, 5, 7],
    ['empty lines first', `\n\n---\n${FIELDS}colour: red\n---\n`, 8, 10],
    ['a longer last line', `---\n${FIELDS}colour: red\n----\n`, 6, 8],
    [
      'a field behind the first',
      `---name: Teapot\n${FIELDS.split('\n').slice(1).join('\n')}colour: red\n---\n`,
      5,
      7,
    ],
    ['no last line', `---\n${FIELDS}color: red\ncolour: red\n\n`, 7, 9],
  ])('at fault leave every other finding its line: %s', (_, head, field, link) => {
    const { found, record } = reading(`${head}[May](../../2025-05/cycle.md)\n`);
    expect(found.map(({ rule }) => rule)).toEqual(['front-matter', 'unknown-key']);
    expect(found[1]?.location.line).toBe(field);
    expect(record.body.children[0]?.position?.start.line).toBe(link);
  });

  test('at fault leave a slip in the fields its line, and lines that can be pasted', () => {
    const text = `${FIELDS}care: Rinse: twice.\n---\nIts story.\n`;
    const { found } = reading(text);
    expect(found.map(({ rule, location }) => [rule, location.line])).toEqual([
      ['front-matter', 1],
      ['yaml', 5],
    ]);
    const mended = found
      .toReversed()
      .reduce((all, { instead }) => (instead ? pasted(all, instead) : all), text);
    expect(reading(mended).found).toEqual([]);
    expect(reading(mended).record.data?.care).toBe('Rinse: twice.');
  });

  test('that are missing at both ends are a finding each, and both can be pasted', () => {
    const text = `${FIELDS}\nIts story.\n`;
    const { found } = reading(text);
    expect(found.map(({ rule, location }) => [rule, location.line])).toEqual([
      ['front-matter', 1],
      ['front-matter', 4],
    ]);
    const mended = found
      .toReversed()
      .reduce((all, { instead }) => (instead ? pasted(all, instead) : all), text);
    expect(reading(mended).found).toEqual([]);
  });

  test('that no one can place are one finding, and nothing is read by guess', () => {
    const text = `---\n${FIELDS}\nIts story.\n\nprice: dear\n\nMore of it.\n`;
    const { found, record } = reading(text);
    expect(found.map(({ rule, instead }) => [rule, instead])).toEqual([['front-matter', undefined]]);
    expect(record.data).toBeUndefined();
  });

  test('of any sort anywhere give a record or a finding', () => {
    const line = fc.constantFrom(
      ...[
        '---',
        '----',
        '—',
        '-- -',
        ' ---',
        '***',
        '...',
        '```',
        '',
        '# One',
        '- a',
        '  b: c',
        'name: Pot',
        'kind: pot',
      ],
      ...['Its story.', 'care: |', '  ---', 'colour: red', '--- x', '---js', '\ufeff---'],
    );
    fc.assert(
      fc.property(fc.array(line, { maxLength: 14 }), (lines) => {
        const parsed = parseFile({ path: PATH, text: lines.join('\n') });
        expect(parsed.data !== undefined || parsed.diagnostics.length > 0).toBe(true);
        for (const { location, instead } of parsed.diagnostics) {
          expect(location.line).toBeGreaterThan(0);
          expect(location.line).toBeLessThanOrEqual(Math.max(1, lines.length));
          if (instead) expect(instead.from).toBeGreaterThan(0);
          if (instead) expect(instead.to).toBeGreaterThanOrEqual(instead.from);
        }
      }),
      { numRuns: 500 },
    );
  });
});

test.each([
  ['that no one can place', '---\nname: Pot\nkind: pot\n\nIts story.\n\nprice: dear\n', 'front-matter'],
  ['that are missing though nothing else is there', 'Just a story.\n', 'front-matter'],
  ['in another encoding', '---\nname: P\0ot\n---\n', 'encoding'],
])('lines of dashes %s are all that is found in the box', (_, text, rule) => {
  const files = {
    'box.md':
      '---\nname: A Box\nurl: https://example.org/\nlang: en\ntimeZone: Europe/London\ncurrency: GBP\ndescription: A box.\nauthor: A. Writer\ncalls: {join: {address: "https://example.org/join", text: Join}}\ncall: join\n---\n',
    'cycles/2026-01/cycle.md':
      '---\ntheme: First\nsummary: A teapot and a tin of tea, and how the two of them came to be in one box in the end.\nshipped: 2026-01-06\nreveal: 2026-01-20T19:00\n---\n',
    [PATH]: text,
  };
  expect(wholeBox(sourcesOf(files)).diagnostics.map((one) => one.rule)).toEqual([rule]);
});
