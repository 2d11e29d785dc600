/** What is said of letters without opening a face is what opening them shows. */
import { expect, test } from 'vitest';
import { openFaces } from '../../src/drawing/type/faces.ts';
import { setText } from '../../src/drawing/type/set-type.ts';
import { COMMON_LETTERS, drawingFaces } from '../../src/io/drawing-faces.ts';
import { readFaces } from '../../src/io/read-faces.ts';
import { typeFaces } from '../support/type-faces.ts';

const SPEC = { hand: 'text', size: 10, least: 10, width: 1e6, lines: 1, leading: 1, lang: 'en' } as const;
const letters = Array.from({ length: 0x2100 - 0x20 }, (_, i) => String.fromCodePoint(i + 0x20)).filter(
  (letter) => letter.replace(COMMON_LETTERS, '') === '',
);

test('every common letter is in the templates’ faces, and in those behind them where an owner’s have none', async () => {
  expect(letters.length).toBe(95 + 96 + 7);
  for (const faces of [await typeFaces(), await openFaces([], readFaces())])
    for (const hand of ['text', 'display', 'italic'] as const)
      expect(
        letters.filter((letter) => setText(`a${letter}`, { ...SPEC, hand }, faces).lacking.length > 0),
      ).toEqual([]);
});

test('a letter that no face has is told, among common ones too', async () => {
  const faces = drawingFaces([]);
  expect(await faces.lacking('Seed tray, “30 × 12 cm”', 'en')).toEqual([]);
  expect(await faces.lacking('Seed tray \u{1f331}', 'en')).toEqual(['\u{1f331}']);
});
