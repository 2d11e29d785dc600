import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, inject, test } from 'vitest';
import { halfOf } from '../support/share-of.ts';
import { describeWith, filesBelow, pagesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const pictures = filesBelow(site).filter((path) => path.startsWith('pictures/'));

/**
 * Where a picture ends by its own account: JPEG's end-of-image marker (ITU-T T.81 B.1.1.3), the size that RIFF
 * states (RFC 9649), PNG's IEND (ISO/IEC 15948 11.2.5), the last box of an ISOBMFF file (ISO/IEC 14496-12). Decoders pass over what follows.
 */
const endOf = (path: string, bytes: Buffer): number => {
  if (path.endsWith('.jpg')) return bytes.indexOf(Buffer.from([0xff, 0xd9])) + 2;
  if (path.endsWith('.webp')) return bytes.readUInt32LE(4) + 8;
  // Its name and its checksum.
  if (path.endsWith('.png')) return bytes.lastIndexOf('IEND') + 8;
  if (path.endsWith('.avif')) {
    let at = 0;
    for (let size = 1; size > 0 && at + 8 <= bytes.length; at += size) size = bytes.readUInt32BE(at);
    return at;
  }
  throw new Error(`A published picture of an unknown kind: ${path}`);
};

describe('published pictures', () => {
  test('carry no metadata, are whole, and end where their format ends', async () => {
    const faults: string[] = [];
    const decoded = new Set(halfOf(pictures));
    for (const path of pictures) {
      const bytes = readFileSync(join(site, path));
      // A truncated picture may have a size; only decoding it shows the fault.
      const picture = sharp(bytes, { failOn: 'warning' });
      try {
        if (endOf(path, bytes) !== bytes.length) faults.push(`${path}: does not end where it says`);
        const { exif, icc, xmp, iptc, orientation, width } = await picture.metadata();
        if (exif || icc || xmp || iptc || orientation) faults.push(`${path}: metadata`);
        // Its boxes have told already that an AVIF is whole, and a wide one takes long to decode.
        if (decoded.has(path) && (!path.endsWith('.avif') || width < 500)) await picture.raw().toBuffer();
      } catch (error) {
        faults.push(`${path}: ${error}`);
      }
    }
    expect(faults).toEqual([]);
    expect(pictures.length).toBeGreaterThan(500);
  });

  test('have the size their markup says, and text for people who cannot see them', async () => {
    const faults: string[] = [];
    for (const { path, text } of pagesBelow(site))
      for (const [tag] of text.matchAll(/<img [^>]*>/g)) {
        const of = (name: string): string => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? '';
        // The lead item's picture is at the head with its words, and stands in its section a second time without.
        const name = /([^/]+?)-\d+\.\w+\.jpg$/.exec(of('src'))?.[1];
        const isSaid = new RegExp(`<img [^>]*src="[^"]*/${name}-[^"]*" [^>]*alt="[^"]`).test(text);
        if (of('alt').trim() === '' && !isSaid) faults.push(`${path}: ${of('src')} has no text`);
        const { width, height } = await sharp(
          join(site, path, '..', decodeURIComponent(of('src'))),
        ).metadata();
        if (String(width) !== of('width') || String(height) !== of('height'))
          faults.push(`${path}: ${of('src')} is ${width}×${height}`);
      }
    expect(faults).toEqual([]);
  });
});

// HTML standard, srcset: a width descriptor is the picture's own width.
test('every width that a srcset states is the picture’s own', async () => {
  const faults = new Set<string>();
  /** A picture stands on several pages. */
  const widths = new Map<string, number | undefined>();
  const widthOf = async (file: string): Promise<number | undefined> => {
    if (!widths.has(file))
      widths.set(
        file,
        await sharp(file)
          .metadata()
          .then(
            ({ width }) => width,
            () => undefined,
          ),
      );
    return widths.get(file);
  };
  let count = 0;
  for (const { path, text } of pagesBelow(site))
    for (const [, srcset = ''] of text.matchAll(/ srcset="([^"]*)"/g))
      for (const one of srcset.split(', ')) {
        const [address = '', width = ''] = one.split(' ');
        const own = await widthOf(join(site, path, '..', decodeURIComponent(address)));
        if (`${own}w` !== width) faults.add(`${path}: ${one} is ${own} wide`);
        count += 1;
      }
  expect([...faults]).toEqual([]);
  expect(count).toBeGreaterThan(1000);
});

describeWith('exiftool', 'libimage-exiftool-perl', 'exiftool', () => {
  test('finds no camera, place or profile in any published picture', () => {
    const { stdout } = spawnSync(
      'exiftool',
      [
        '-r',
        '-G',
        '-json',
        '-EXIF:all',
        '-GPS:all',
        '-XMP:all',
        '-IPTC:all',
        '-ICC_Profile:all',
        join(site, 'pictures'),
      ],
      { encoding: 'utf8', maxBuffer: 1e9 },
    );
    const all = JSON.parse(stdout) as Record<string, unknown>[];
    expect(all).toHaveLength(pictures.length);
    expect(all.filter((one) => Object.keys(one).length > 1)).toEqual([]);
  });
});
