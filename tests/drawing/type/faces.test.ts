import { expect, test } from 'vitest';
import { openFaces } from '../../../src/drawing/type/faces.ts';
import { setText, type TypeSpec } from '../../../src/drawing/type/set-type.ts';
import { inRanges, rangesOf } from '../../../src/drawing/type/unicode-range.ts';
import { readFaces } from '../../../src/io/read-faces.ts';
import { fontAssets, typeFaces } from '../../support/type-faces.ts';

const SPEC: TypeSpec = {
  hand: 'display',
  size: 80,
  least: 40,
  width: 900,
  lines: 2,
  leading: 1.1,
  lang: 'en',
};

const withFile = (path: string, bytes: Uint8Array) =>
  fontAssets().map((asset) => (asset.path === path ? { path, bytes } : asset));

const GOUDY = 'fonts/sorts-mill-goudy.woff2';

test("an owner's own font in place of ours is what words are set in", async () => {
  const italic = fontAssets().find(({ path }) => path === 'fonts/alegreya-italic.woff2');
  if (!italic) throw new Error('Expected an italic');
  const [ours, theirs] = [await typeFaces(), await openFaces(withFile(GOUDY, italic.bytes), readFaces())];
  expect(theirs.digest).not.toBe(ours.digest);
  expect(setText('Sage', SPEC, theirs).lines[0]?.d).toBe(
    setText('Sage', { ...SPEC, hand: 'italic' }, ours).lines[0]?.d,
  );
});

test('a font that is damaged is named, and the next face takes its place', async () => {
  for (const bytes of [
    new Uint8Array(),
    new TextEncoder().encode('no font at all'),
    (fontAssets().find(({ path }) => path === GOUDY)?.bytes ?? new Uint8Array()).slice(0, 900),
  ]) {
    const faces = await openFaces(withFile(GOUDY, bytes), readFaces());
    expect(faces.unreadable).toEqual([GOUDY]);
    const type = setText('Sage', SPEC, faces);
    expect(type.lacking).toEqual([]);
    expect(type.lines[0]?.d).toBe(setText('Sage', { ...SPEC, hand: 'text' }, faces).lines[0]?.d);
  }
});

test('without any face every letter is an empty frame', async () => {
  const type = setText('Sage', SPEC, await openFaces([]));
  expect(type.lacking).toEqual(['S', 'a', 'g', 'e']);
  expect(type.width).toBeGreaterThan(0);
});

test('files of other scripts are read when a letter asks for them, and no others', async () => {
  const read: string[] = [];
  const files = readFaces().map((file) => ({
    ...file,
    bytes: () => {
      read.push(file.name);
      return file.bytes();
    },
  }));
  const faces = await openFaces(fontAssets(), files);
  setText('Sage enamel watering can, 1.2 litre', SPEC, faces);
  expect(read).toEqual([]);
  setText('Kit של שלום', SPEC, faces);
  expect(read).toEqual(['noto-serif-hebrew-hebrew-wght-normal.woff2']);
});

test('Han letters are drawn as the language draws them', async () => {
  const faces = await typeFaces();
  const drawn = (lang: string) => setText('直', { ...SPEC, lang }, faces).lines[0]?.d;
  // U+76F4 is the Unicode Standard's own example of a letter with regional forms (chapter 18, Han).
  expect(drawn('ja')).not.toBe(drawn('zh'));
  expect(drawn('en')).toBe(drawn('zh'));
});

test('ranges are read as CSS writes them', () => {
  const ranges = rangesOf('U+5D0-5EA, U+20AA,U+0307-0308');
  expect([0x5d0, 0x5ea, 0x20aa, 0x307].every((code) => inRanges(ranges, code))).toBe(true);
  expect([0x5cf, 0x5eb, 0x20ab, 0x306].some((code) => inRanges(ranges, code))).toBe(false);
});
