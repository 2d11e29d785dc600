import { describe, expect, test } from 'vitest';
import type { Location } from '../../src/diagnostics/diagnostic.ts';
import type { Picture } from '../../src/model/box.ts';
import { pictureFindings } from '../../src/model/picture-findings.ts';
import { cycle, item, picture } from '../support/box.ts';

const at = (line: number): Location => ({ file: 'item.md', line, column: 3 });
const fields = new Map([
  ['name', at(2)],
  ['image.0.file', at(9)],
  ['image.1.file', at(10)],
]);
const source = { file: 'item.md', fields, text: '' };

const found = (pictures: readonly Picture[], more: { lead?: boolean; source?: typeof source } = {}) =>
  pictureFindings({ cycles: [cycle({ items: [item({ pictures, source, ...more })] })] }).map(
    ({ weight, rule, location }) => `${weight}: ${rule} at ${location.line}`,
  );

describe('a picture', () => {
  test.each([
    [799, 1000, ['look at: picture-small at 9']],
    [800, 1000, []],
    [120, 90, ['look at: picture-small at 9']],
    [2000, 1001, []],
    [2100, 1000, ['look at: picture-wide at 9']],
    [6000, 1200, ['look at: picture-wide at 9']],
    [1200, 4000, []],
  ])('of %i × %i pixels is found: %j', (width, height, expected) => {
    expect(found([picture({ width, height })])).toEqual(expected);
  });

  test('that is wide and says what is to be seen, or is not the first, is not found', () => {
    const wide = { width: 6000, height: 1200 };
    expect(found([picture({ ...wide, focus: { x: 0.2, y: 0.5 } })])).toEqual([]);
    expect(found([picture(), picture(wide)])).toEqual([]);
  });

  test('says how large it is and what is wanted', () => {
    const items = [item({ pictures: [picture({ width: 640, height: 480 })], source })];
    expect(pictureFindings({ cycles: [cycle({ items })] })[0]).toMatchObject({
      message: expect.stringContaining('640 × 480 pixels, expected 800'),
      fix: expect.stringContaining('1280 pixels wide'),
    });
  });

  test('of the cycle is found where its record names it', () => {
    const wide = picture({ width: 700, height: 100 });
    const own = new Map([
      ['photo.file', at(4)],
      ['hero.file', at(5)],
      ['peek.picture.file', at(6)],
    ]);
    const of = cycle({
      source: { ...source, fields: own },
      wholeBox: wide,
      hero: wide,
      peek: { text: 'Soon.', picture: wide },
      items: [],
    });
    expect(pictureFindings({ cycles: [of] }).map(({ rule, location }) => `${rule} ${location.line}`)).toEqual(
      ['picture-small 4', 'picture-small 5', 'picture-wide 5', 'picture-small 6'],
    );
  });
});

describe('an item without any picture', () => {
  test('is a note, and the lead item is looked at', () => {
    expect(found([], { lead: false })).toEqual(['note: item-picture at 2']);
    expect(found([], { lead: true })).toEqual(['look at: item-picture at 2']);
  });
  test('whose photo is not there is not reported twice', () => {
    const named = { ...source, fields: new Map([...fields, ['image', at(8)] as const]) };
    expect(found([], { source: named })).toEqual([]);
  });
});
