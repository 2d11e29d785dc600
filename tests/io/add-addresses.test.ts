/** The one file of the content folder that a build writes to: added to and never rewritten, whatever happens. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { addressesToAdd, type PublicAddress, readAddresses } from '../../src/content/addresses.ts';
import { addAddresses } from '../../src/io/add-addresses.ts';
import { checksumOfAddresses } from '../../src/io/addresses-file.ts';
import { decodeText } from '../../src/io/decode-text.ts';
import { contents, temporary } from './temporary.ts';

const SHOWN: readonly PublicAddress[] = [
  { address: 'boxes/2026-03-früh.html', sort: 'article', cycle: '2026-03' },
  { address: 'boxes/2026-03-früh.html#冬の茶', sort: 'item', cycle: '2026-03' },
  { address: 'kinds/spoon.html', sort: 'kind' },
];
const toAdd =
  (shown = SHOWN) =>
  (text: string): string =>
    addressesToAdd(text, shown, '2026-03-27').text;
const whole = toAdd()('');
const [head = '', first = ''] = whole.split('\n');

const folder = async (bytes?: Uint8Array | string): Promise<{ content: string; site: string }> => {
  const dir = await temporary(bytes === undefined ? {} : { 'content/addresses.csv': bytes });
  await mkdir(join(dir, 'content'), { recursive: true });
  return { content: join(dir, 'content'), site: join(dir, 'site') };
};
const bytesIn = (content: string): Promise<Buffer> => readFile(join(content, 'addresses.csv'));

test('the file is made where there is none, and left alone where nothing is to be added', async () => {
  const { content, site } = await folder();
  const { from, to } = await addAddresses(content, toAdd(), { site });
  expect((await bytesIn(content)).toString()).toBe(whole);
  expect(to).toBe(checksumOfAddresses(content));
  expect(await addAddresses(content, toAdd(), { site })).toEqual({ from: to, to });
  expect(from).toBe(checksumOfAddresses(join(content, 'nowhere')));
  expect(Object.keys(await contents(content))).toEqual(['addresses.csv']);
});

describe('what stands in the file stays byte for byte, in', () => {
  const begun = `${head}\n${first}\n`;
  test.each<readonly [string, Uint8Array]>([
    ['UTF-8', Buffer.from(begun)],
    ['UTF-8 with a mark and Windows line ends', Buffer.from(`\ufeff${begun.replaceAll('\n', '\r\n')}`)],
    ['UTF-16 with a mark', Buffer.from(`\ufeff${begun.replaceAll(',', '\t')}`, 'utf16le')],
    ['UTF-16, big end first', Buffer.from(`\ufeff${begun.replaceAll(',', '\t')}`, 'utf16le').swap16()],
    ['UTF-16 without a mark', Buffer.from(begun, 'utf16le')],
    ['the old encoding of Western Windows', Buffer.from(begun, 'latin1')],
  ])('%s', async (_, bytes) => {
    const { content, site } = await folder(bytes);
    await addAddresses(content, toAdd(), { site });
    const after = await bytesIn(content);
    expect(after.subarray(0, bytes.length)).toEqual(Buffer.from(bytes));
    expect(after.length).toBeGreaterThan(bytes.length);
    const { value, diagnostics } = readAddresses({ path: 'addresses.csv', text: decodeText(after) });
    expect(value.map(({ address }) => address)).toEqual(SHOWN.map(({ address }) => address));
    expect(diagnostics).toEqual([]);
    await addAddresses(content, toAdd(), { site });
    expect(await bytesIn(content)).toEqual(after);
  });
});

test('twenty at once add each address once', async () => {
  const { content, site } = await folder();
  const kinds = Array.from(
    { length: 20 },
    (_, i): PublicAddress => ({ address: `kinds/${i}.html`, sort: 'kind' }),
  );
  await Promise.all(
    kinds.map((_, i) => addAddresses(content, toAdd([...SHOWN, ...kinds.slice(0, i + 1)]), { site })),
  );
  const { value } = readAddresses({ path: '', text: (await bytesIn(content)).toString() });
  expect(value).toHaveLength(23);
  expect((await bytesIn(content)).toString().trim().split('\n')).toHaveLength(24);
});

describe('where the disk refuses', () => {
  const refusal = (code: string): Error => Object.assign(new Error(`${code}: made to fail`), { code });
  test.each(['EROFS', 'EACCES', 'ENOSPC', 'EIO'])(
    'with %s it says so, the file is as it was and the folder is free again',
    async (code) => {
      const { content, site } = await folder(`${head}\n${first}\n`);
      const list = {
        read: (path: string) => readFile(path),
        append: () => Promise.reject(refusal(code)),
      };
      await expect(addAddresses(content, toAdd(), { site, list })).rejects.toMatchObject({ code });
      expect((await bytesIn(content)).toString()).toBe(`${head}\n${first}\n`);
      await addAddresses(content, toAdd(), { site });
      expect((await bytesIn(content)).toString()).toBe(whole);
    },
  );

  test('where a folder has its name', async () => {
    const { content, site } = await folder();
    await mkdir(join(content, 'addresses.csv'));
    await expect(addAddresses(content, toAdd(), { site })).rejects.toMatchObject({ code: 'EISDIR' });
  });

  test('a full disk of the system itself', async () => {
    // Linux: every write to it is refused with ENOSPC.
    await expect(
      addAddresses((await folder()).content, toAdd(), {
        site: (await folder()).site,
        list: { read: async () => undefined, append: (_, bytes) => writeFile('/dev/full', bytes) },
      }),
    ).rejects.toMatchObject({ code: 'ENOSPC' });
  });
});
