import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, inject, test } from 'vitest';
import { describeWith, filesBelow, pagesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const pictures = filesBelow(site).filter((path) => path.startsWith('pictures/'));

describe('published pictures', () => {
  test('carry no metadata, are whole, and end where their format ends', async () => {
    const faults: string[] = [];
    for (const path of pictures) {
      const bytes = readFileSync(join(site, path));
      const { exif, icc, xmp, iptc, orientation } = await sharp(bytes).metadata();
      if (exif || icc || xmp || iptc || orientation) faults.push(`${path}: metadata`);
      if (path.endsWith('.jpg') && bytes.readUInt16BE(bytes.length - 2) !== 0xffd9)
        faults.push(`${path}: bytes after the end`);
    }
    expect(faults).toEqual([]);
    expect(pictures.length).toBeGreaterThan(500);
  });

  test('have the size their markup says, and text for people who cannot see them', async () => {
    const faults: string[] = [];
    for (const { path, text } of pagesBelow(site))
      for (const [tag] of text.matchAll(/<img [^>]*>/g)) {
        const of = (name: string): string => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? '';
        if (of('alt').trim() === '') faults.push(`${path}: ${of('src')} has no text`);
        const { width, height } = await sharp(
          join(site, path, '..', decodeURIComponent(of('src'))),
        ).metadata();
        if (String(width) !== of('width') || String(height) !== of('height'))
          faults.push(`${path}: ${of('src')} is ${width}×${height}`);
      }
    expect(faults).toEqual([]);
  });
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
