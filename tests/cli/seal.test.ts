/** Nothing of a sealed cycle in any published byte: names, text, data, scripts, archives, pixels, metadata. */
import { execFileSync } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { brotliDecompressSync, gunzipSync, gzipSync } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cycleSchema, itemSchema } from '../../src/content/schemas.ts';
import { writeFiles } from '../io/temporary.ts';
import { MARK, markedBox, NUMBER_MARKS, PEEK } from '../support/marked-box.ts';
import { readFrontMatter } from '../support/read-front-matter.ts';
import { describeWith } from '../support/tools.ts';
import { lidlore } from './terminal.ts';

/** A mark with three letters more, as each has: packed bytes and pictures spell any three by chance. */
const marks = new RegExp(
  [`${MARK}[a-z]{3}`, ...NUMBER_MARKS.map((mark) => mark.replaceAll('.', '\\.'))].join('|'),
  'gi',
);

/** Everything below a folder, hidden files too. */
const everyFile = async (dir: string): Promise<readonly string[]> =>
  (await readdir(dir, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => relative(dir, join(entry.parentPath, entry.name)))
    .sort();

/** The bytes of a file; of the manifest its paths alone, because its hashes spell any three letters by chance. */
const bytesAt = async (dir: string, path: string): Promise<Buffer> => {
  const bytes = await readFile(join(dir, path));
  if (path !== '.lidlore') return bytes;
  const { version, id, folders, files } = JSON.parse(bytes.toString('utf8'));
  expect(version).toBe(2);
  expect(id).toMatch(/^[\w-]{43}$/);
  for (const [, ...facts] of files)
    expect(facts).toEqual([
      // Of a page, or of a picture, which is longer.
      expect.stringMatching(/^[0-9a-f]{32}(?:[0-9a-f]{32})?$/),
      expect.stringMatching(/^[\w-]{43}$/),
      expect.stringMatching(/^[a-z]{12}$/),
    ]);
  return Buffer.from([...folders, ...files.map(([path]: readonly string[]) => path)].join('\n'));
};

/** The bytes of a file and what is packed in them. */
const unpacked = (path: string, bytes: Buffer): readonly Buffer[] => {
  const inner: Buffer[] = [];
  if (bytes[0] === 0x1f && bytes[1] === 0x8b) inner.push(gunzipSync(bytes));
  if (path.endsWith('.br')) inner.push(brotliDecompressSync(bytes));
  for (const [, data = ''] of bytes.toString('latin1').matchAll(/;base64,([\w+/=]{8,})/g))
    inner.push(Buffer.from(data, 'base64'));
  return [bytes, ...inner];
};

/** Marks in bytes, whether a character takes one byte or two, and whether an address writes it with `%`. */
const marksIn = (bytes: Buffer): readonly string[] => {
  const text = bytes.toString('latin1');
  const percent = text.replace(/%([0-9a-f]{2})/gi, (_, hex) => String.fromCharCode(Number.parseInt(hex, 16)));
  return [text, text.replaceAll('\0', ''), percent].flatMap((one) => one.match(marks) ?? []);
};

interface Scan {
  readonly bytes: number;
  readonly files: number;
  readonly found: readonly string[];
}
const scan = async (dir: string): Promise<Scan> => {
  const paths = await everyFile(dir);
  let bytes = 0;
  const found: string[] = [];
  for (const path of paths) {
    const content = await bytesAt(dir, path);
    for (const part of [Buffer.from(path), ...unpacked(path, content)]) {
      bytes += part.length;
      found.push(...new Set(marksIn(part).map((mark) => `${path}: ${mark.toLowerCase()}`)));
    }
  }
  return { bytes, files: paths.length, found };
};

let dir = '';
let sealed: Scan;
let said = '';
const site = (): string => join(dir, 'site');
const build = (...asOf: readonly string[]) => lidlore(dir, 'build', '--without', 'film', '--as-of', ...asOf);

beforeAll(async () => {
  dir = await mkdtemp(join(tmpdir(), 'lidlore-seal-'));
  await writeFiles(dir, await markedBox());
  const { status, stdout, stderr } = await build('2026-04-19T18:59:59');
  expect(status, stderr).toBe(0);
  said = stdout;
  sealed = await scan(site());
  process.stdout.write(`The seal: ${sealed.bytes} bytes of ${sealed.files} files scanned.\n`);
});
afterAll(() => rm(dir, { recursive: true, force: true }));

describe('the marked box', () => {
  test.each([
    ['cycle', cycleSchema, 'cycle.md'],
    ['item', itemSchema, 'items/01-zqxfile.md'],
  ] as const)('has a mark in every field of a %s', async (_, schema, file) => {
    const path = `cycles/2026-04/${file}`;
    const text = await readFile(join(dir, 'content', path), 'utf8');
    const { data } = readFrontMatter({ path, text });
    expect(Object.keys(schema.entries).filter((field) => data?.[field] === undefined)).toEqual([]);
  });
});

describe('a second before its reveal', () => {
  test('no byte of a sealed cycle is in the site, and no name of a file', () => {
    expect(sealed.found).toEqual([]);
    expect(sealed.files).toBeGreaterThan(20);
  });

  test('nor is there one once a host has packed the files', async () => {
    for (const path of await everyFile(site())) {
      const packed = gzipSync(await bytesAt(site(), path));
      expect(unpacked(path, packed).flatMap(marksIn), path).toEqual([]);
    }
  });

  test('none of its photos is there, in any size', async () => {
    const pictures = (await everyFile(site())).filter((path) => /\.(jpe?g|png|webp|avif)$/.test(path));
    expect(pictures.length).toBeGreaterThan(5);
    for (const path of pictures) {
      const { channels } = await sharp(join(site(), path)).stats();
      // The photos of the sealed cycle are green all over, and no paper that a picture is drawn on is greener than red.
      const [red, green] = channels.map(({ mean }) => mean);
      expect((green ?? 255) - (red ?? 0), path).toBeLessThan(64);
    }
  });

  test('the kind that its items share has two pieces, and no page yet', async () => {
    const paths = await everyFile(site());
    expect(paths.filter((path) => path.startsWith('kinds/'))).toEqual([]);
    const catalogue = await readFile(join(site(), 'catalogue.html'), 'utf8');
    expect(catalogue.match(/>Cane proving basket of/g)?.length).toBeGreaterThan(0);
  });

  test('what the cycle before shows of it on purpose is there', async () => {
    expect(await readFile(join(site(), 'boxes/2026-03-rising.html'), 'utf8')).toContain(PEEK);
  });

  test('no page sends on to it, and its addresses are not written down', async () => {
    expect(await everyFile(site())).not.toContain('boxes/2026-01-crust.html');
    const shown = await readFile(join(dir, 'content/addresses.csv'), 'utf8');
    expect(shown).toContain('boxes/2026-03-rising.html');
    // The day it was written down is in the month of the sealed box.
    expect(shown.replaceAll(',2026-04-19', '')).not.toMatch(marks);
  });

  test('a link to it keeps its words alone', async () => {
    const article = await readFile(join(site(), 'boxes/2026-03-rising.html'), 'utf8');
    expect(article).toContain('Then came the next box.');
    expect(await readFile(join(site(), 'index.html'), 'utf8')).toContain('The next is a secret.');
  });

  test('the build says until when, and when to build again', () => {
    expect(said).toContain('Sealed until 19 April 2026: 2026-04, Zqxtheme.');
    expect(said).toContain('Build again after 19 April 2026, 19:00: 2026-04, Zqxtheme, is revealed');
  });

  // Without these the scan could pass by being blind.
  test('the scan finds it in the back room', async () => {
    expect(new Set((await scan(join(dir, 'backroom'))).found).size).toBeGreaterThan(20);
  });
});

describeWith('exiftool', 'libimage-exiftool-perl', 'as exiftool reads it, metadata', () => {
  const metadata = (folder: string): string =>
    execFileSync('exiftool', ['-r', '-a', '-u', '-U', '-G1', '-s', '-ee', folder], {
      maxBuffer: 1e9,
    }).toString('latin1');
  test('of no file of the site bears a mark', () => {
    const lines = metadata(site())
      .split('\n')
      // Where the folder lies and what the files are called was scanned above.
      .filter((line) => !/^(?:=====|\[System\])/.test(line));
    expect(lines.length).toBeGreaterThan(50);
    expect(lines.filter((line) => marksIn(Buffer.from(line)).length > 0)).toEqual([]);
  });
  test('of the photos themselves does', () => {
    expect(metadata(join(dir, 'content/cycles/2026-04/photos'))).toMatch(/zqxexif[\s\S]*zqxxmp/);
  });
});

describe('the folder of what is remembered', () => {
  test.each([
    ['.', 'holds the content folder'],
    ['.lidlore/../content', 'is the content folder itself'],
  ])('cannot come to lie in the site: --out %s', async (out, words) => {
    const { status, stderr } = await build('2026-04-19T18:59', '--out', out);
    expect({ status, stderr }).toMatchObject({ status: 2, stderr: expect.stringContaining(words) });
  });
});

describe('from the moment of its reveal', () => {
  test('it is there; and a date that is moved later takes it out again, to the last byte', async () => {
    expect((await build('2026-04-19T19:00')).status).toBe(0);
    const shown = await scan(site());
    const words = [
      'title',
      'name',
      'other',
      'body',
      'story',
      'photoalt',
      'address',
      'voice',
      'caution',
      'brand',
      'formeraddress',
      'formerslug',
    ];
    for (const word of words) {
      const texts = await Promise.all(
        (await everyFile(site())).map(async (path) => path + (await readFile(join(site(), path), 'latin1'))),
      );
      expect(texts.join('\n').toLowerCase(), word).toContain(`${MARK}${word}`);
    }
    expect(shown.files).toBeGreaterThan(sealed.files);
    // Never: what only the owner should see, revealed or not.
    const all = await Promise.all(
      (await everyFile(site())).map((path) => readFile(join(site(), path), 'latin1')),
    );
    expect(all.join('\n')).not.toMatch(/zqx(?:search|wear|exif|xmp|carrier|region|sku\.)/i);

    const file = join(dir, 'content/cycles/2026-04/cycle.md');
    const text = await readFile(file, 'utf8');
    await writeFiles(dir, {
      'content/cycles/2026-04/cycle.md': text.replace('reveal: 2026-04-19T19:00', 'reveal: 2026-04-23T19:00'),
    });
    const again = await build('2026-04-19T19:00');
    expect(again.status).toBe(0);
    // What was shown is written down for good, and nobody is kept from sealing it again.
    expect(await readFile(join(dir, 'content/addresses.csv'), 'utf8')).toContain('boxes/zqxaddress.html');
    expect(again.stderr).toMatch(
      /2026-04\/cycle\.md:\d+:\d+ {2}look at: Unexpected seal on `boxes\/zqxaddress/,
    );
    expect(await scan(site())).toEqual(sealed);
  });
});
