import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSearches, type SearchColumns } from '../../src/content/searches.ts';
import type { TextSource } from '../../src/content/sources.ts';
import { unsealed } from '../../src/model/seal.ts';
import { box, cycle } from '../support/box.ts';
import { sourcesOf, wholeBox } from '../support/whole-box.ts';

const file = (text: string): TextSource => ({ path: 'searches.csv', text });
const columns = (some: Omit<SearchColumns, 'location'>): SearchColumns => ({
  ...some,
  location: { file: 'box.md', line: 12, column: 1 },
});
const pairs = (text: string, named?: SearchColumns) =>
  readSearches(file(text), named).value.map(({ phrase, count }) => [phrase, count]);
const findings = (text: string, named?: SearchColumns) =>
  readSearches(file(text), named).diagnostics.map(
    ({ weight, rule, location, message, fix }) =>
      `${weight} ${rule} ${location.file}:${location.line} ${message} > ${fix}`,
  );

const TWO = [
  ['plant labels', 226],
  ['seed tin', 64],
];

describe('searches.csv', () => {
  test.each([
    ['commas', 'phrase,count\nplant labels,226\nseed tin,64\n'],
    ['semicolons', 'phrase;count\nplant labels;226\nseed tin;64\n'],
    ['bars', 'phrase|count\nplant labels|226\nseed tin|64\n'],
    ['a first line that names the separator', 'sep=;\nphrase;count\nplant labels;226\nseed tin;64\n'],
    ['tabs', 'phrase\tcount\nplant labels\t226\nseed tin\t64\n'],
    [
      'a mark at its head and the line ends of Windows',
      '\ufeffphrase,count\r\nplant labels,226\r\nseed tin,64\r\n',
    ],
    ['the line ends of old', 'phrase,count\rplant labels,226\rseed tin,64'],
    ['quotes', '"phrase","count"\n"plant labels","226"\n"seed tin","64"\n'],
    ['empty lines and spaces', '\n\nphrase , count\n\n plant  labels ,226\n\n,\nseed tin, 64\n\n'],
    ['other columns and another order', 'page,Count,Phrase\n/a,226,plant labels\n/b,64,seed tin\n'],
    ['a phrase that stands twice', 'phrase,count\nplant labels,200\nseed tin,64\nPlant Labels,26\n'],
    ['rows of nought', 'phrase,count\nplant labels,226\nfork,0\nseed tin,64\n'],
  ])('is read with %s', (_, text) => {
    expect(pairs(text)).toEqual(TWO);
    expect(findings(text)).toEqual([]);
  });

  test.each(['1,204', '1.204', '1 204', '1\u00a0204', '1’204', "1'204", '1204', '1204.0'])(
    'takes “%s” for one thousand two hundred and four',
    (count) => {
      expect(pairs(`phrase;count\nseed tin;${count}\n`)).toEqual([['seed tin', 1204]]);
    },
  );

  test('keeps a separator inside quotes', () => {
    expect(pairs('phrase,count\n"pots, small","1,204"\n')).toEqual([['pots, small', 1204]]);
  });

  test('keeps the location of a phrase, after empty lines and quoted ends of lines too', () => {
    const { value } = readSearches(file('phrase,count\n\nseed tin,64\n"two\nlines",3\nfork,2\n'));
    expect(value.map(({ phrase, location }) => [phrase, location.line])).toEqual([
      ['seed tin', 3],
      ['two lines', 4],
      ['fork', 6],
    ]);
  });

  test('takes the columns that box.md names, in any case', () => {
    const text = 'Top queries,Clicks,Position\nplant labels,226,3.1\nseed tin,64,2\n';
    expect(pairs(text, columns({ phrase: 'top queries', count: 'Clicks' }))).toEqual(TWO);
  });

  test('reports a column that box.md names and the file lacks as a must fix, and where it was named', () => {
    const { value, diagnostics } = readSearches(
      file('phrase,count\nseed tin,64\n'),
      columns({ count: 'Clicks' }),
    );
    expect(value).toEqual([]);
    expect(diagnostics).toMatchObject([
      {
        weight: 'must fix',
        rule: 'searches-column',
        location: { line: 1 },
        related: { location: { file: 'box.md' } },
      },
    ]);
  });

  test('is passed over with a look-at where its columns are others, and says how to name them', () => {
    const text = 'Suchanfrage;Klicks\nSaatdose;64\n';
    expect(pairs(text)).toEqual([]);
    expect(
      findings(text).every((finding) => finding.startsWith('look at searches-column searches.csv:1')),
    ).toBe(true);
    expect(findings(text)[0]).toContain('`phrase: …` under `searches`');
  });

  test('reports rows that are none with their line and a fix, and reads the others', () => {
    const text = 'phrase,count\nplant labels,226\nfork,many\n,12\nseed tin,64\nrake,-3\nspade\n';
    expect(pairs(text)).toEqual(TWO);
    expect(findings(text).map((finding) => finding.replace(/ >.*/, ''))).toEqual([
      'look at searches-row searches.csv:3 Unexpected count `many`, expected a whole number',
      'look at searches-row searches.csv:4 Unexpected row without a phrase, expected what was typed',
      'look at searches-row searches.csv:6 Unexpected count `-3`, expected a whole number',
      'look at searches-row searches.csv:7 Unexpected count ``, expected a whole number',
    ]);
  });

  test('passes over a phrase of more signs than anybody types, and keeps one that just fits', () => {
    const longest = '🌱'.repeat(200);
    expect(pairs(`phrase,count\n${longest},3\n`)).toEqual([[longest, 3]]);
    expect(findings(`phrase,count\n${longest}a,3\n`)).toEqual([
      'look at searches-row searches.csv:2 Unexpected phrase of more than 200 characters, expected what was typed > Mend the row or take it out; the row was passed over',
    ]);
  });

  test('names ten rows at fault and counts the rest', () => {
    const text = `phrase,count\n${'fork,x\n'.repeat(1_000)}`;
    expect(findings(text)).toHaveLength(11);
    expect(findings(text).at(-1)).toContain('990 more');
  });

  test('is read past a quote that nothing closes', () => {
    const text = 'phrase,count\n"plant labels,226\nseed tin,64\n';
    expect(pairs(text)).toEqual(TWO);
    expect(findings(text)[0]).toContain('searches-quote searches.csv:');
  });

  test.each(['', '\ufeff', '\n\n', 'phrase,count', 'phrase,count\n'])(
    'with nothing in it (%j) gives nothing',
    (text) => {
      expect(pairs(text)).toEqual([]);
      expect(findings(text)).toEqual([]);
    },
  );

  test('is wanted where box.md names its columns', () => {
    expect(readSearches(undefined).diagnostics).toEqual([]);
    expect(readSearches(undefined, columns({ count: 'Clicks' })).diagnostics).toMatchObject([
      { weight: 'look at', rule: 'searches-missing', location: { file: 'box.md', line: 12 } },
    ]);
  });

  test('of any bytes is read without a fault', () => {
    const noise = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc
        .array(fc.constantFrom('"', ',', ';', '\n', '\r', 'phrase', 'count', 'a', '1', '\t', ' '), {
          maxLength: 60,
        })
        .map((some) => `phrase,count\n${some.join('')}`),
    );
    fc.assert(
      fc.property(noise, (text) => {
        for (const { phrase, count, location } of readSearches(file(text)).value) {
          expect(phrase.trim()).not.toBe('');
          expect(count).toBeGreaterThan(0);
          expect(location.line).toBeGreaterThan(1);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('the box', () => {
  test('has what people typed, and no must fix for it', () => {
    const head =
      '---\nname: B\nurl: https://b.example/\nlang: en\ntimeZone: UTC\ncurrency: GBP\ndescription: D\nauthor: A\nsearches: {phrase: Query, count: Clicks}\n---\n';
    const files = { 'box.md': head, 'searches.csv': 'Query,Clicks\nseed tin,64\n' };
    const { value, diagnostics } = wholeBox(sourcesOf(files));
    expect(value?.searches).toEqual([
      { phrase: 'seed tin', count: 64, location: { file: 'searches.csv', line: 2, column: 1 } },
    ]);
    expect(diagnostics.filter(({ weight }) => weight === 'must fix')).toEqual([]);
  });

  test('does not tell public pages what was typed while a cycle is sealed', () => {
    const typed = [{ phrase: 'seed tin', count: 64, location: { file: 'searches.csv', line: 2, column: 1 } }];
    const whole = box({ searches: typed, cycles: [cycle({ reveal: 10 })] });
    expect(unsealed(whole, 5).searches).toEqual([]);
  });
});
