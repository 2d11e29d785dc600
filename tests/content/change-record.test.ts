import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { changeKey } from '../../src/content/change-record.ts';
import type { FieldPath } from '../../src/content/field-path.ts';
import type { FieldValue } from '../../src/content/write-yaml.ts';
import { readFrontMatter } from '../support/read-front-matter.ts';
import { shareOf } from '../support/share-of.ts';

const ITEM = 'cycles/2026-01/items/01-teapot.md';
const RECORD = `---
# What the card says
name: Teapot, two cups   # as printed
kind: 'tea pot'
also: [pot, "brown, pot", 'little pot']
lead: true # the piece

brand: "A \\"Potter\\""
description: >-   # folded
  A teapot that
  pours.

material:
  - clay
  # what it is glazed with
  - "tin: glaze"
care: |
  Rinse.
    Never soap.

price: 4.50
image:
  - file: pot.jpg
    alt: A pot
    # as the printer wants it
    focus: 50% 40%
  - {file: lid.jpg, alt: "A lid", caption: Its lid}
size:
spare:
  count: 4
  price: 3.00
  address: https://example.org/spare
minAge: 3
ingredients: many
   words # over lines
# the end
---
Its story.

---
name: not this one
`;
const LINES: readonly (readonly [path: FieldPath, first: number, last: number])[] = [
  [['name'], 3, 3],
  [['kind'], 4, 4],
  [['also', 0], 5, 5],
  [['also', 1], 5, 5],
  [['also', 2], 5, 5],
  [['lead'], 6, 6],
  [['brand'], 8, 8],
  [['description'], 9, 11],
  [['material', 0], 14, 14],
  [['material', 1], 16, 16],
  [['material'], 13, 16],
  [['care'], 17, 19],
  [['price'], 21, 21],
  [['image', 0, 'file'], 23, 23],
  [['image', 0, 'alt'], 24, 24],
  [['image', 0, 'focus'], 26, 26],
  [['image', 1, 'alt'], 27, 27],
  [['image', 1, 'caption'], 27, 27],
  [['image', 0], 23, 26],
  [['image'], 22, 27],
  [['size'], 28, 28],
  [['spare', 'count'], 30, 30],
  [['spare', 'address'], 32, 32],
  [['spare'], 29, 32],
  [['minAge'], 33, 33],
  [['ingredients'], 34, 35],
];
/** The file as different programs save it. */
const SAVED: readonly (readonly [string, string])[] = [
  ['with line feeds', RECORD],
  ['with carriage returns', RECORD.replaceAll('\n', '\r\n')],
  ['with a byte order mark', `\ufeff${RECORD}`],
];

const dataOf = (text: string) => {
  const { data, diagnostics } = readFrontMatter({
    path: ITEM,
    text: text.replace(/^\ufeff/, '').replaceAll('\r\n', '\n'),
  });
  expect(diagnostics).toEqual([]);
  return data;
};
const changed = (text: string, path: FieldPath, value: FieldValue | undefined): string => {
  const { value: after, diagnostics } = changeKey({ path: ITEM, text }, path, value);
  expect(diagnostics).toEqual([]);
  return after;
};
/** The same done to values, by another way than the program's. */
const set = (values: unknown, path: FieldPath, value: unknown): unknown => {
  const copy = structuredClone(values);
  const [last, ...before] = [...path].reverse();
  // biome-ignore lint/suspicious/noExplicitAny: any shape of values is walked
  const holder = before.reduceRight((here: any, step) => here[step], copy as any);
  if (value !== undefined) holder[last as string] = value;
  else if (Array.isArray(holder)) holder.splice(last as number, 1);
  else delete holder[last as string];
  return copy;
};
const at = (values: unknown, path: FieldPath): unknown =>
  // biome-ignore lint/suspicious/noExplicitAny: any shape of values is walked
  path.reduce((here: any, step) => here?.[step], values);

const HOSTILE = [
  ...[
    '',
    ' ',
    ' a',
    'a ',
    '\ta',
    'a\t',
    'a: b',
    'a:',
    ':a',
    'a #b',
    '#a',
    'a#b',
    '"',
    "'",
    `'"`,
    '\\',
    'a\\nb',
  ],
  ...[
    '- a',
    '-',
    '--',
    '---',
    '--- a',
    '...',
    '? a',
    '[a',
    'a]',
    '{a',
    'a}',
    'a, b',
    '&a',
    '*a',
    '!a',
    '%a',
    '@a',
    '`a',
  ],
  ...[
    '| a',
    '> a',
    '|',
    '>-',
    'null',
    '~',
    'Null',
    'true',
    'False',
    'yes',
    'no',
    '1',
    '01',
    '4.50',
    '1e3',
    '0x1F',
    '.5',
  ],
  ...[
    '-1',
    '+1',
    '.inf',
    '.nan',
    '2026-03-19',
    '2026-03-19T19:00',
    '12:30',
    '50% 40%',
    'https://a.example/b?c=d#e',
  ],
  ...[
    '\n',
    'a\nb',
    'a\n',
    '\na',
    'a\n\nb\n',
    'a\n\n\n',
    ' a\nb',
    'a\n b',
    'a\r\nb',
    'a\rb',
    '---\na',
    'a\n---\nb',
    'a \nb',
  ],
  ...[
    '\u0000',
    '\u0007',
    '\u007f',
    '\u0085',
    '\u00a0a',
    '\u2028',
    'a\u2029---',
    '\ufeff',
    '\ud800',
    '👩🏽‍🌾 🫖',
    'ö',
    '茶',
    'שלום',
  ],
  ...['<<', '=', '%YAML 1.2', 'a'.repeat(300), `${'word '.repeat(60)}end`],
];

const text = fc.oneof(
  fc.constantFrom(...HOSTILE),
  fc.string({ unit: 'grapheme' }),
  fc.string({ unit: 'binary' }),
  fc.string({ unit: fc.constantFrom(...' \n\r\t:#-\'"[]{},&*!|>%@`?~0aé') }),
);
/** Under a key that holds text, so that numbers are not among them. */
const value: fc.Arbitrary<FieldValue> = fc.letrec<{ value: FieldValue }>((tie) => ({
  value: fc.oneof(
    { depthSize: 'small' },
    { arbitrary: text, weight: 4 },
    fc.boolean(),
    fc.array(tie('value'), { maxLength: 3 }),
    fc.dictionary(fc.oneof(fc.constantFrom('alt', 'a b', 'x:y', 'null', '1', 'ö'), text), tie('value'), {
      maxKeys: 3,
      noNullPrototype: true,
    }),
  ),
})).value;
const path = fc.constantFrom(...LINES.map(([one]) => one));
const saved = fc.constantFrom(...SAVED.map(([, one]) => one));

test('the sample is a record of which every value is known', () => {
  for (const [, one] of SAVED)
    for (const [where] of LINES) expect(at(dataOf(one), where), where.join('.')).not.toBeUndefined();
});

describe.each(SAVED)('a file %s', (_, file) => {
  const lines = file.split('\n');
  test.each(LINES)('changes %j in its own lines alone', (where, first, last) => {
    // Each line has other ones, so that all are tried somewhere.
    const step = Math.round(HOSTILE.length / shareOf(HOSTILE.length / (file === RECORD ? 2 : 12)));
    const some = HOSTILE.filter((_one, i) => i % step === first % step);
    for (const one of [...some, true, ['a', 'b: c'], { alt: 'x', caption: '# y' }]) {
      const after = changed(file, where, one);
      expect(dataOf(after)).toEqual(set(dataOf(file), where, one));
      const now = after.split('\n');
      expect(now.slice(0, first - 1)).toEqual(lines.slice(0, first - 1));
      expect(now.slice(last - lines.length)).toEqual(lines.slice(last));
      // Every line ends as the file’s lines do.
      if (file.includes('\r')) expect(after.replaceAll('\r\n', '')).not.toContain('\n');
    }
  });

  // The first key of a thing in a list shares its line with the dash, which stays.
  const alone = LINES.filter(([where]) => where.join('.') !== 'image.0.file');
  test.each(alone)('loses %j and nothing else', (where, first, last) => {
    const after = changed(file, where, undefined);
    expect(dataOf(after)).toEqual(set(dataOf(file), where, undefined));
    const now = after.split('\n');
    expect(now.slice(0, first - 1)).toEqual(lines.slice(0, first - 1));
    expect(now.slice(last - lines.length)).toEqual(lines.slice(last));
  });

  test('is itself again when words are changed and changed back', () => {
    fc.assert(
      fc.property(path, fc.stringMatching(/^[a-z]+(?: [a-z]+)*$/), (where, words) => {
        const old = at(dataOf(file), where);
        fc.pre(typeof old === 'string' && !['true', 'false', 'null'].includes(words));
        // A plain value over two lines and a fold of its own are written as one line would be.
        fc.pre(where[0] !== 'ingredients' && where[0] !== 'description');
        expect(changed(changed(file, where, words), where, old as string)).toBe(file);
      }),
      { numRuns: shareOf(500) },
    );
  });
});

test('whatever is written is what is read, and all else is what it was', () => {
  fc.assert(
    fc.property(saved, path, value, (file, where, one) => {
      // Digits within a value that is made anew stay text, as they do everywhere but under the keys of numbers.
      fc.pre(!/"(?:clip|count|minAge|minutes|pace|places|share)"/.test(JSON.stringify(one)));
      expect(dataOf(changed(file, where, one))).toEqual(set(dataOf(file), where, one));
    }),
    { numRuns: shareOf(500) },
  );
});

test('several changes one after another are all there, in files of any layout', () => {
  const record = fc.dictionary(fc.constantFrom('name', 'care', 'image', 'note', 'x y'), value, {
    minKeys: 1,
    noNullPrototype: true,
  });
  const layout = fc.record({
    indent: fc.constantFrom(2, 3, 4),
    indentSeq: fc.boolean(),
    collectionStyle: fc.constantFrom('any' as const, 'block' as const, 'flow' as const),
    singleQuote: fc.constantFrom(null, true, false),
    lineWidth: fc.constantFrom(0, 20, 80),
    blockQuote: fc.constantFrom(true, false, 'folded' as const, 'literal' as const),
  });
  /** Every path that leads to something. */
  const pathsIn = (values: unknown, above: FieldPath = []): readonly FieldPath[] =>
    typeof values !== 'object' || values === null
      ? [above]
      : [
          ...(above.length > 0 ? [above] : []),
          ...Object.entries(values).flatMap(([key, below]) =>
            pathsIn(below, [...above, Array.isArray(values) ? Number(key) : key]),
          ),
        ];
  const change = fc.tuple(fc.nat(), fc.option(value, { nil: undefined }));
  const changes = fc.array(change, { minLength: 1, maxLength: 3 });
  fc.assert(
    fc.property(record, layout, changes, fc.constantFrom('\n', '\r\n'), (values, options, several, eol) => {
      let file = `---\n${stringify(values, options).replace(/\n?$/, '\n')}---\nbody\n`.replaceAll('\n', eol);
      const parsed = readFrontMatter({ path: ITEM, text: file.replaceAll('\r\n', '\n') });
      // A block that keeps the empty lines after it holds fewer of them where it is the last.
      fc.pre(parsed.data !== undefined && parsed.diagnostics.length === 0 && !/[|>]\d?\+/.test(file));
      let expected: unknown = dataOf(file);
      for (const [pick, one] of several) {
        const paths = [...pathsIn(expected), ['note']];
        const where = paths[pick % paths.length] ?? [];
        file = changed(file, where, one);
        expected = set(expected, where, one);
        expect(dataOf(file)).toEqual(expected);
      }
      expect(file.endsWith(`---${eol}body${eol}`)).toBe(true);
    }),
    { numRuns: shareOf(500) },
  );
});

describe('a value', () => {
  const front = (fields: string): string => `---\n${fields}\n---\nbody\n`;
  test.each<[string, string, FieldPath, FieldValue, string]>([
    [
      'with a lone quote within braces takes quotes',
      'image: {name: a}',
      ['image', 'name'],
      '?"',
      String.raw`image: {name: "?\""}`,
    ],
    ['plain stays plain', 'name: Pot # it', ['name'], 'Jug', 'name: Jug # it'],
    [
      'plain that would read as something else is quoted',
      'name: Pot',
      ['name'],
      'Jug: brown',
      'name: "Jug: brown"',
    ],
    ['between single quotes stays between them', "name: 'Pot'", ['name'], 'It’s', "name: 'It’s'"],
    ['between single quotes has its own doubled', "name: 'Pot'", ['name'], "It's", "name: 'It''s'"],
    ['between double quotes stays between them', 'name: "Pot"', ['name'], 'Jug', 'name: "Jug"'],
    [
      'in a literal block stays in one',
      'care: |-\n  One.\n  Two.',
      ['care'],
      'One.\nThree.',
      'care: |-\n  One.\n  Three.',
    ],
    [
      'in a block that ends in a line break keeps it',
      'care: |\n   One.',
      ['care'],
      'Two.\n',
      'care: |\n   Two.',
    ],
    [
      'in a folded block is folded as wide',
      'care: >-\n  Rinse it well\n  and dry it.',
      ['care'],
      'Rinse it well and then dry it.',
      'care: >-\n  Rinse it well\n  and then dry\n  it.',
    ],
    ['that is a number is one', 'minAge: 3', ['minAge'], 6, 'minAge: 6'],
    ['of digits keeps them', 'price: 4.50', ['price'], '5.00', 'price: 5.00'],
    ['of digits under a key of numbers is quoted', 'minAge: 3', ['minAge'], '6', 'minAge: "6"'],
    ['that was empty stands after its key', 'size:   \nname: Pot', ['size'], 'big', 'size: big\nname: Pot'],
    ['that was empty stands before its comment', 'size: # how big', ['size'], 'big', 'size: big # how big'],
    [
      'of a list in brackets stays within them',
      'also: [pot, jug]',
      ['also', 1],
      'a, b',
      'also: [pot, "a, b"]',
    ],
    ['of a list in lines stays a line', 'also:\n- pot\n- jug', ['also', 1], 'mug', 'also:\n- pot\n- mug'],
    ['that becomes a list is in brackets', 'also: pot', ['also'], ['pot', 'jug'], 'also: [pot, jug]'],
    [
      'that is a list in lines stays in lines',
      'also:\n  - pot\nname: Pot',
      ['also'],
      ['jug', 'mug'],
      'also:\n  - jug\n  - mug\nname: Pot',
    ],
    [
      'that was a list and is a word moves up',
      'also: # names\n  - pot\nname: Pot',
      ['also'],
      'jug',
      'also: jug # names\nname: Pot',
    ],
    [
      'alone where a list is meant is its first',
      'image: {file: a.jpg, alt: A}',
      ['image', 0, 'alt'],
      'B',
      'image: {file: a.jpg, alt: B}',
    ],
    ['beside one alone makes a list of them', 'also: pot', ['also', 1], 'jug', 'also: [pot, jug]'],
    ['new in brackets follows the last', 'also: [pot]', ['also', 1], 'jug', 'also: [pot, jug]'],
    [
      'new in lines follows the last',
      'also:\n  - pot # brown\nname: Pot',
      ['also', 1],
      'jug',
      'also:\n  - pot # brown\n  - jug\nname: Pot',
    ],
    [
      'new is put where the schema has it',
      'name: Pot\nkind: pot # brown\n# next\nbrand: B',
      ['also'],
      ['jug'],
      'name: Pot\nkind: pot # brown\nalso: [jug]\n# next\nbrand: B',
    ],
    ['new under no key that comes before it is the last', 'brand: B', ['name'], 'Pot', 'brand: B\nname: Pot'],
    [
      'new in braces is put there too',
      'image: {file: a.jpg, caption: C}',
      ['image', 0, 'alt'],
      'A',
      'image: {file: a.jpg, alt: A, caption: C}',
    ],
    ['new in empty braces is alone there', 'spare: {}', ['spare', 'count'], 2, 'spare: {count: 2}'],
    [
      'new below a key is indented as its neighbours',
      'spare:\n    count: 2\nname: Pot',
      ['spare', 'price'],
      '4.00',
      'spare:\n    count: 2\n    price: 4.00\nname: Pot',
    ],
    [
      'new below a new key brings it along',
      'name: Pot',
      ['spare', 'count'],
      2,
      'name: Pot\nspare: {count: 2}',
    ],
    [
      'new beside blocks is a block',
      'name: Pot\nimage:\n  - file: a.jpg',
      ['spare'],
      { count: 2, price: '4.00' },
      'name: Pot\nimage:\n  - file: a.jpg\nspare:\n  count: 2\n  price: 4.00',
    ],
  ])('%s', (_, before, where, one, after) => {
    expect(changed(front(before), where, one)).toBe(front(after));
  });

  test.each<[string, string, FieldPath, string]>([
    [
      'a key of braces takes its comma along',
      'image: {file: a.jpg, alt: A}',
      ['image', 0, 'file'],
      'image: {alt: A}',
    ],
    ['the last of brackets too', 'also: [pot, jug]', ['also', 1], 'also: [pot]'],
    ['the only one leaves them empty', 'also: [pot]', ['also', 0], 'also: []'],
    [
      'the only one in lines does so too',
      'name: Pot\nspare:\n  count: 2',
      ['spare', 'count'],
      'name: Pot\nspare: {}',
    ],
    [
      'the first key of a thing in a list leaves its dash',
      'image:\n  - file: a.jpg\n    alt: A',
      ['image', 0, 'file'],
      'image:\n  - alt: A',
    ],
    ['what is not there changes nothing', 'name: Pot', ['spare', 'count'], 'name: Pot'],
  ])('taken out: %s', (_, before, where, after) => {
    expect(changed(front(before), where, undefined)).toBe(front(after));
  });

  test('put in and taken out again leaves the bytes as they were', () => {
    const absent: FieldPath[] = [
      ['color'],
      ['sku'],
      ['note'],
      ['image', 0, 'caption'],
      ['image', 1, 'focus'],
      ['spare', 'until'],
    ];
    fc.assert(
      fc.property(saved, fc.constantFrom(...absent), value, (file, where, one) => {
        expect(changed(changed(file, where, one), where, undefined)).toBe(file);
      }),
      { numRuns: shareOf(500) },
    );
  });

  test('is changed in a file with carriage returns whatever its last line is', () => {
    for (const last of [
      'also: [a, b]',
      'brand: "B"',
      "brand: 'B'",
      'spare: {count: 2}',
      'care: |\r\n  Rinse.',
    ]) {
      const file = front(`name: Pot\r\n${last}`).replace(/\r?\n/g, '\r\n');
      expect(changed(file, ['name'], 'Jug')).toBe(file.replace('Pot', 'Jug'));
    }
  });

  test('that others are copies of is written out where it would change them', () => {
    const before = front('name: &pot Pot\nkind: *pot');
    expect(changed(before, ['kind'], 'jug')).toBe(front('name: &pot Pot\nkind: jug'));
    const { value: after, diagnostics } = changeKey({ path: ITEM, text: before }, ['name'], 'Jug');
    expect(after).toBe(before);
    expect(diagnostics.map(({ rule, location }) => [rule, location.line])).toEqual([['yaml', 2]]);
  });

  test.each([
    ['without front matter', 'Just words.\n', 1],
    ['that never closes', '---\nname: Pot\n', 2],
    ['that is closed by more than a line of three', '---\nname: Pot\n--- x\n', 3],
    ['that cannot be parsed', '---\nname: [Pot\n---\n', 2],
    ['with a key that stands twice', '---\nname: Pot\nname: Jug\n---\n', 3],
    ['that is a list', '---\n- Pot\n---\n', 2],
  ])('of a file %s is refused with its place', (_, file, line) => {
    const { value: after, diagnostics } = changeKey({ path: ITEM, text: file }, ['name'], 'Mug');
    expect(after).toBe(file);
    expect(diagnostics.map(({ weight, location }) => [weight, location.file, location.line])).toEqual([
      ['must fix', ITEM, line],
    ]);
  });
});
