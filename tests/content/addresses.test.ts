/** The list of addresses as a table: read whatever a spreadsheet made of it, and added to as it is. */
import { describe, expect, test } from 'vitest';
import { addressesToAdd, type PublicAddress, readAddresses } from '../../src/content/addresses.ts';

const PAGE: PublicAddress = { address: 'boxes/2026-03-rising.html', sort: 'article', cycle: '2026-03' };
const ITEM: PublicAddress = { address: 'boxes/2026-03-rising.html#spoon', sort: 'item', cycle: '2026-03' };
const KIND: PublicAddress = { address: 'kinds/löffel.html', sort: 'kind' };
const DAY = '2026-03-27';
const TABLE = `address,what,first shown
boxes/2026-03-rising.html,article 2026-03,2026-03-27
boxes/2026-03-rising.html#spoon,item 2026-03,2026-03-27
kinds/löffel.html,kind,2026-03-27
`;

const read = (text: string) => readAddresses({ path: 'addresses.csv', text });
const shownIn = (text: string) =>
  read(text).value.map(({ location: _, firstShown: __, ...address }) => address);
const findings = (text: string) =>
  read(text).diagnostics.map(({ weight, rule, location: { line } }) => `${weight} ${rule} ${line}`);
const toAdd = (text: string, day = DAY) => addressesToAdd(text, [PAGE, ITEM, KIND], day).text;

test('a table is read as it was written, with its places', () => {
  expect(toAdd('')).toBe(TABLE);
  expect(read(TABLE)).toEqual({
    value: [PAGE, ITEM, KIND].map((one, i) => ({
      ...one,
      firstShown: DAY,
      location: { file: 'addresses.csv', line: i + 2, column: 1 },
    })),
    diagnostics: [],
  });
  expect(readAddresses(undefined)).toEqual({ value: [], diagnostics: [] });
});

describe('adding', () => {
  test('gives nothing where all is there, and only what is not', () => {
    expect(toAdd(TABLE, '2026-05-01')).toBe('');
    const [head = '', first = '', ...rest] = TABLE.split('\n');
    expect(toAdd(`${head}\n${first}\n`)).toBe(rest.join('\n'));
    expect(addressesToAdd(`${head}\n${first}\n`, [PAGE, ITEM, ITEM, KIND], DAY).count).toBe(2);
  });

  test.each([
    ['Windows line ends', TABLE.replaceAll('\n', '\r\n')],
    ['a byte order mark', `\ufeff${TABLE}`],
    ['semicolons', TABLE.replaceAll(',', ';')],
    ['tabs and quotes', TABLE.replaceAll(/[^,\n]+/g, '"$&"').replaceAll(',', '\t')],
    ['a line that names the delimiter', `sep=;\r\n${TABLE.replaceAll(',', ';').replaceAll('\n', '\r\n')}`],
    ['capitals in its titles', TABLE.replace('address,what', 'Address,WHAT')],
    ['addresses copied out of a browser', TABLE.replace('löffel', 'l%C3%B6ffel')],
    ['no line end at its end', TABLE.trimEnd()],
    [
      'lines sorted another way',
      TABLE.split('\n')
        .toSorted((a, b) => (a < b ? -1 : 1))
        .join('\n')
        .trim(),
    ],
  ])('understands a table with %s', (_, text) => {
    expect(new Set(shownIn(text).map(({ address }) => address))).toEqual(
      new Set([PAGE, ITEM, KIND].map(({ address }) => address)),
    );
    expect(findings(text)).toEqual([]);
    expect(toAdd(text)).toBe('');
    const less = text
      .split(/\r?\n/)
      .filter((line) => !line.includes('#spoon'))
      .join(/\r?\n/.exec(text)?.[0]);
    const more = less + toAdd(less);
    expect(more.startsWith(less)).toBe(true);
    expect(shownIn(more)).toContainEqual(ITEM);
    expect(findings(more)).toEqual([]);
    expect(more.includes('\r\n')).toBe(text.includes('\r\n'));
  });

  test('keeps columns that somebody moved and added', () => {
    const table = 'note,first shown,what,address\nhm,2026-03-27,kind,kinds/löffel.html\n';
    expect(toAdd(table)).toBe(
      ',2026-03-27,article 2026-03,boxes/2026-03-rising.html\n,2026-03-27,item 2026-03,boxes/2026-03-rising.html#spoon\n',
    );
  });

  test('completes a line that a stopped build left half written, wherever it was stopped', () => {
    for (let length = 0; length < TABLE.length; length += 1) {
      const half = TABLE.slice(0, length);
      const whole = half + toAdd(half);
      expect(new Set(shownIn(whole).map(({ address }) => address)).size, half).toBe(3);
      expect(
        findings(half).filter((finding) => finding.startsWith('must fix')),
        half,
      ).toEqual([]);
      expect(whole.trim().split('\n').length, half).toBe(4);
    }
  });

  test('begins a new line where the last one is whole, or another day’s', () => {
    const half = TABLE.slice(0, TABLE.indexOf('#spoon'));
    expect(toAdd(`${half}#sp`, DAY)).toBe(`oon,item 2026-03,${DAY}\nkinds/löffel.html,kind,${DAY}\n`);
    expect(toAdd(`${half}#else`, DAY).startsWith('\n')).toBe(true);
  });
});

describe('a damaged line is a finding at its place', () => {
  test.each([
    ['what a merge left', '<<<<<<< HEAD'],
    ['no address', 'hello,kind,2026-03-27'],
    ['an address of another site', 'https://crumb.example/a.html,kind,2026-03-27'],
    ['a word that says nothing', 'kinds/a.html,thing,2026-03-27'],
    ['an article of no cycle', 'boxes/a.html,article,2026-03-27'],
    ['an item without its anchor', 'boxes/a.html,item 2026-03,2026-03-27'],
    ['columns run into one', '"kinds/a.html,kind,2026-03-27"'],
  ])('for %s', (_, line) => {
    expect(findings(`${TABLE}${line}\n`)).toEqual(['must fix addresses-row 5']);
    expect(read(`${TABLE}${line}\n`).diagnostics[0]?.fix).toMatch(/^Put the line back/);
    expect(shownIn(`${TABLE}${line}\n`)).toHaveLength(3);
  });

  test('for a day that a spreadsheet wrote its own way; the address still counts', () => {
    const text = TABLE.replace('#spoon,item 2026-03,2026-03-27', '#spoon,item 2026-03,27/03/2026');
    expect(findings(text)).toEqual(['look at addresses-row 3']);
    expect(shownIn(text)).toHaveLength(3);
  });

  test('for a table of other columns, and for a quote that is never closed', () => {
    expect(findings('page,when\na,b\n')).toEqual(['must fix addresses-column 1']);
    expect(findings(`${TABLE}"kinds/a.html,kind\n`)).toContain('must fix addresses-quote 5');
  });

  test('and thousands of them are ten, and a count', () => {
    const text = TABLE + 'x\n'.repeat(3000);
    expect(findings(text)).toHaveLength(11);
    expect(read(text).diagnostics.at(-1)?.message).toContain('2990 more');
  });
});
