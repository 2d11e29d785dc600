import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parseFile } from '../../src/content/front-matter.ts';
import { parcelsReader } from '../../src/content/parcels.ts';
import { readSearches } from '../../src/content/searches.ts';
import { decodeText, encodingOf } from '../../src/io/decode-text.ts';
import { readInto } from '../../src/io/read-parcels.ts';
import { temporary } from './temporary.ts';

const utf16 = (text: string, isBig: boolean): Buffer => {
  const bytes = Buffer.from(text, 'utf16le');
  return isBig ? bytes.swap16() : bytes;
};
/** What Windows-1252 has above Latin-1, as far as the texts here need it (WHATWG Encoding Standard, index windows-1252). */
const HIGH = new Map([
  ['“', 0x93],
  ['”', 0x94],
  ['’', 0x92],
  ['–', 0x96],
  ['€', 0x80],
]);
const western = (text: string): Buffer =>
  Buffer.from([...text].map((sign) => HIGH.get(sign) ?? sign.charCodeAt(0)));

const SAVED: readonly (readonly [string, (text: string) => Buffer])[] = [
  ['UTF-8', (text) => Buffer.from(text)],
  ['UTF-8 with a mark', (text) => Buffer.from(`\ufeff${text}`)],
  ['UTF-16, little end first, with a mark', (text) => utf16(`\ufeff${text}`, false)],
  ['UTF-16, big end first, with a mark', (text) => utf16(`\ufeff${text}`, true)],
  ['UTF-16, little end first, without a mark', (text) => utf16(text, false)],
  ['UTF-16, big end first, without a mark', (text) => utf16(text, true)],
];
const WESTERN = ['Windows-1252', western] as const;

const RECORD =
  '---\nname: Théière “Bow”\nkind: teapot\ndescription: A pot – for 5 €.\nbrand: Potters’\n---\nIts café story.\n';
const SEARCHES = 'phrase;count\ncafé “pot”;226\nthéière;1.204\n';
const PARCELS = 'shipped;delivered;carrier\n2026-03-01;2026-03-04;Café Post\n2026-03-02;;Röhre\n';

const parcels = async (bytes: Uint8Array, chunk?: number, carrier = 'carrier') => {
  const path = join(await temporary({ 'parcels.csv': bytes }), 'parcels.csv');
  const reader = await readInto(
    path,
    () => parcelsReader({ file: 'parcels.csv', format: { carrier }, timeZone: 'UTC', asOf: 20_516 }),
    chunk,
  );
  return reader.end();
};

describe.each([...SAVED, WESTERN])('a file saved as %s', (_, saved) => {
  test('is read as a record', () => {
    const { data, diagnostics } = parseFile({ path: 'a.md', text: decodeText(saved(RECORD)) });
    expect(diagnostics).toEqual([]);
    expect(data).toMatchObject({ name: 'Théière “Bow”', description: 'A pot – for 5 €.', brand: 'Potters’' });
  });

  test('is read as a list of what was typed, with the line ends of Windows too', () => {
    for (const text of [SEARCHES, SEARCHES.replaceAll('\n', '\r\n')]) {
      const { value, diagnostics } = readSearches({ path: 'searches.csv', text: decodeText(saved(text)) });
      expect(diagnostics).toEqual([]);
      expect(value.map(({ phrase, count }) => [phrase, count])).toEqual([
        ['café “pot”', 226],
        ['théière', 1204],
      ]);
    }
  });

  test('is read as a list of parcels, however its bytes are cut into pieces', async () => {
    const whole = await parcels(saved(PARCELS));
    expect(whole.diagnostics.filter(({ weight }) => weight !== 'look at')).toEqual([]);
    expect(whole.value?.counts.map(({ carrier }) => carrier)).toEqual(['Café Post', 'Röhre']);
    for (const chunk of [1, 3, 7]) expect(await parcels(saved(PARCELS), chunk)).toEqual(whole);
  });

  test('is read to its end where it was cut off within a sign', async () => {
    const bytes = saved(PARCELS);
    const { value } = await parcels(bytes.subarray(0, bytes.length - 3), 5);
    expect(value?.counts).toHaveLength(2);
  });
});

describe.each(SAVED)('a file saved as %s', (_, saved) => {
  test.each([
    ['Greek', 'name: Τσαγιέρα\nkind: δοχείο'],
    ['Chinese', 'name: 茶壶\nkind: 壶'],
    ['Japanese with pictures', 'name: 急須🍵\nkind: 急須'],
    ['Cyrillic', 'name: Чайник\nbrand: Њ Ћ'],
    ['letters whose code ends in zero', 'name: Āā Ѐ \u3000 一'],
  ])('is read in any script: %s', (_script, fields) => {
    expect(decodeText(saved(`---\n${fields}\n---\n`))).toBe(`---\n${fields}\n---\n`);
  });
});

describe.each(SAVED)('a long list saved as %s', (_, saved) => {
  test.each([0, 1, 2, 3])('is told by its beginning, wherever that ends: %i signs further', async (shift) => {
    const rows = Array.from({ length: 700 }, () => '2026-03-01;2026-03-04;🍵🫖').join('\n');
    const text = `shipped;delivered;carrier${'x'.repeat(shift)}\n${rows}\n`;
    const list = await parcels(saved(text), 1021, `carrier${'x'.repeat(shift)}`);
    expect(list.value?.counts).toMatchObject([{ carrier: '🍵🫖', count: 700 }]);
  });
});

describe('bytes that are no text', () => {
  test.each([
    [
      'of a picture',
      Buffer.from('89504e470d0a1a0a0000000d49484452000000100000001008060000001ff3ff61', 'hex'),
    ],
    ['of a text with one zero', Buffer.from(`---\nname: Pot\0\n---\n${'A long story. '.repeat(9)}`)],
    ['of zeros', Buffer.alloc(64)],
    ['of an archive', Buffer.from('504b0304140006000800000021006200ee9d', 'hex')],
    ['of one zero', Buffer.alloc(1)],
  ])('are never taken for UTF-16: %s', (_, bytes) => {
    expect(encodingOf(bytes)).not.toMatch(/utf-16/);
  });

  test('in the place of a record are one finding that says how to save it', () => {
    for (const bytes of [
      Buffer.from('504b0304140006000800000021006200ee9d', 'hex'),
      Buffer.from(`\ufeff\0${RECORD.split('').join('\0')}`, 'utf16le'),
      Buffer.concat([
        Buffer.from('---\nname: '),
        Buffer.from([0xef, 0xf0, 0x81]),
        Buffer.from('\nkind: pot\n---\n'),
      ]),
    ]) {
      const { diagnostics } = parseFile({ path: 'a.md', text: decodeText(bytes) });
      expect(diagnostics.map(({ weight, rule, fix }) => [weight, rule, fix?.includes('UTF-8')])).toEqual([
        ['must fix', 'encoding', true],
      ]);
    }
  });

  test('in the place of a list are one finding that says how to save it', async () => {
    const workbook = Buffer.from('504b0304140006000800000021006200ee9d0a0041', 'hex');
    const { value, diagnostics } = await parcels(workbook);
    expect(value).toBeUndefined();
    expect(diagnostics.map(({ weight, rule }) => [weight, rule])).toEqual([['must fix', 'parcels-encoding']]);
    const searches = readSearches({ path: 'searches.csv', text: decodeText(workbook) });
    expect(searches.diagnostics.map(({ weight, rule }) => [weight, rule])).toEqual([
      ['look at', 'searches-encoding'],
    ]);
  });
});
