import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, describe, expect, test } from 'vitest';
import { contrastOf, type Rgb, rgbOf } from '../../src/drawing/contrast.ts';
import { type Box, inkBoxes, type Sheet } from '../../src/drawing/sheet.ts';
import { sheetSvg } from '../../src/drawing/sheet-svg.ts';
import { type Drawn, openDrawing } from '../../src/io/make-drawing.ts';
import { DRAWING_SIZES, type Drawing, type DrawingShape, SAFE_AREAS } from '../../src/render/drawing.ts';
import { assetsOfTemplates, drawingOf, entry, paintedPhoto } from '../drawing/drawings.ts';
import { shareOf } from '../support/share-of.ts';
import { meanSsim } from '../support/ssim.ts';
import { describeWith } from '../support/tools.ts';

const content = mkdtempSync(join(tmpdir(), 'drawings-'));
const draw = await openDrawing({ content, assets: assetsOfTemplates() });
const upright = await paintedPhoto(content, 'upright.jpg', 1280, 1600);
const dark = await paintedPhoto(content, 'dark.jpg', 1280, 1600, ['#c0a040', '#303438', '#181a1c']);
const busy = await paintedPhoto(content, 'busy.jpg', 1280, 1600, ['#ffffff', '#000000', '#ffffff']);
const plain = await paintedPhoto(content, 'plain.jpg', 1280, 1600, ['#828282', '#8a8a8a', '#707070']);
const wide = await paintedPhoto(content, 'wide.jpg', 1600, 1200);

const layouts = ['plate', 'broadside'] as const;
const shapes: readonly DrawingShape[] = ['card', 'pin', 'square'];

/** Some of the shapes, others each time; all of them where everything is tried. */
const shapesFor = (n: number): readonly DrawingShape[] =>
  Array.from({ length: shareOf(3) }, (_, i) => shapes[(n + i) % 3] as DrawingShape);

const one = (shape: DrawingShape, layout: Drawing['layout'], picture = upright, more = {}): Drawing =>
  drawingOf(shape, layout, { entries: [entry({ picture: 0, ...more })], pictures: [picture] });

const two = (shape: DrawingShape, layout: Drawing['layout'], more = {}): Drawing =>
  drawingOf(shape, layout, {
    entries: [entry({ picture: 0, ...more }), entry({ picture: 1, name: 'Copper plant labels', ...more })],
    pictures: [upright, dark],
  });

const boxesOf = ({ blocks }: Pick<Sheet, 'blocks'>): readonly Box[] =>
  blocks.flatMap(inkBoxes).filter(({ width, height }) => width > 0 && height > 0);

const apart = (a: Box, b: Box): boolean =>
  a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y;

const collisions = (sheet: Sheet): readonly (readonly [Box, Box])[] => {
  const boxes = boxesOf(sheet);
  return boxes.flatMap((a, i) => boxes.slice(i + 1).flatMap((b) => (apart(a, b) ? [] : [[a, b] as const])));
};

/** Letters of a text without what setting it may add or take: spaces, hyphens at an end of a line. */
const letters = (text: string): string => text.normalize('NFC').replace(/[\s\u00a0-]/gu, '');

const setLetters = (sheet: Sheet, role: string): string =>
  letters(
    sheet.blocks
      .filter((block) => block.role === role)
      .flatMap(({ type }) => type.lines.map(({ text }) => text))
      .join(''),
  );

const rasterOf = async (jpeg: Uint8Array) => {
  const { data, info } = await sharp(jpeg).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
};

/** Where two pictures differ: the first and the last row. */
const rowsChanged = async (drawn: Drawn): Promise<{ readonly first: number; readonly last: number }> => {
  const { tones, sheet } = drawn;
  const [a, b] = await Promise.all([
    rasterOf(await drawn.jpeg()),
    rasterOf(await drawn.jpeg('without words')),
  ]);
  expect(tones.ink).toMatch(/^#/);
  const rows: number[] = [];
  for (let y = 0; y < sheet.height; y++)
    for (let x = 0; x < sheet.width; x++) {
      const i = (y * sheet.width + x) * 3;
      // JPEG spreads an edge over its block of 8 pixels, faintly.
      if (Math.abs((a.data[i] as number) - (b.data[i] as number)) > 40) {
        rows.push(y);
        break;
      }
    }
  return { first: rows[0] ?? -1, last: rows.at(-1) ?? -1 };
};

const NAMES: readonly (readonly [string, string, string])[] = [
  ['one letter', 'O', 'en'],
  ['the longest of the demo', 'Hand salve tin, calendula and lavender', 'en-GB'],
  ['German, forty letters', 'Donaudampfschifffahrtskapitänsmützenband', 'de'],
  [
    'German, a row of them',
    'Rindfleischetikettierungsüberwachung im Kraftfahrzeughaftpflichtversicherung',
    'de',
  ],
  ['Arabic', 'مرشة نباتات نحاسية صغيرة للنوافذ والشرفات', 'ar'],
  ['Hebrew', 'מרסס פליז לצמחים קטנים על אדן החלון', 'he'],
  ['Chinese', '黄铜植物喷雾器适合窗台和阳台的小花园使用', 'zh'],
  ['combining marks', 'Ȩ̈́̓x̣̂ ạ̄̈m̱̂ p̣̈l̨ē Vi\u1ec7t Nam th\u01b0\u0323c ph\u1ea9m', 'vi'],
  ['no place to break', 'x'.repeat(70), 'en'],
  ['very many words', 'A tin of something very useful '.repeat(9).trim(), 'en'],
];

describe.each(layouts)('in the layout %s', (layout) => {
  test.each(NAMES)(
    'a name of %s stays within the sheet, meets nothing and keeps every letter',
    async (_, name, lang) => {
      for (const shape of shapesFor(name.length)) {
        const { sheet } = await draw({ ...one(shape, layout, upright, { name }), lang });
        expect(collisions(sheet)).toEqual([]);
        for (const { x, y, width, height } of boxesOf(sheet)) {
          expect(x).toBeGreaterThanOrEqual(20);
          expect(x + width).toBeLessThanOrEqual(sheet.width - 20);
          expect(y).toBeGreaterThanOrEqual(SAFE_AREAS[shape].top - 1);
          expect(y + height).toBeLessThanOrEqual(sheet.height - SAFE_AREAS[shape].bottom + 1);
        }
        expect(setLetters(sheet, 'name')).toBe(letters(name));
      }
    },
    120_000,
  );

  test('cautions are whole, whatever else gives way, and as large as a phone can show', async () => {
    const cautions = [
      {
        label: 'Burning',
        text: 'Burn it within sight and put it out before you leave the room. '.repeat(4).trim(),
      },
    ];
    for (const shape of ['card', 'pin'] as const)
      for (const drawing of [
        one(shape, layout, upright, { cautions }),
        drawingOf(shape, layout, { entries: [entry({ cautions })] }),
      ]) {
        const { sheet } = await draw(drawing);
        expect(setLetters(sheet, 'caution')).toBe(letters(`${cautions[0]?.label}. ${cautions[0]?.text}`));
        expect(sheet.fits).toBe(true);
        expect(Math.min(...sheet.blocks.map(({ type }) => type.capHeight))).toBeGreaterThanOrEqual(34);
      }
  }, 60_000);

  test('the rule of cautions stands where their own lines begin, whatever script the names are in', async () => {
    const cautions = [{ label: 'Allergens', text: 'None of the major allergens is an ingredient.' }];
    const arabic = 'شاي الأعشاب بالنعناع';
    for (const [names, isRight] of [
      [['Mug', arabic], false],
      [[arabic, 'Mug'], true],
    ] as const) {
      const { sheet } = await draw(
        drawingOf('card', layout, { entries: names.map((name) => entry({ name, cautions })) }),
      );
      const lines = boxesOf({ blocks: sheet.blocks.filter(({ role }) => role === 'caution') });
      const rules = sheet.patches.filter(
        ({ fill, width, height }) => fill === 'accent' && height > width * 3,
      );
      expect(rules.length).toBe(2);
      for (const rule of rules)
        for (const line of lines)
          if (isRight) expect(rule.x).toBeGreaterThan(line.x + line.width);
          else expect(rule.x + rule.width).toBeLessThan(line.x);
    }
  });

  test('words on cards keep out of the top 250 and the bottom 340 pixels: the card with and without them says so', async () => {
    for (const drawing of [
      one('card', layout),
      two('card', layout),
      drawingOf('card', layout, { entries: [entry()] }),
    ]) {
      const { first, last } = await rowsChanged(await draw(drawing));
      expect(first).toBeGreaterThanOrEqual(250);
      expect(last).toBeGreaterThan(first);
      expect(last).toBeLessThan(1920 - 340);
    }
  }, 60_000);

  // WCAG 2.2, 1.4.3, over the finished JPEG without its words; one pixel in 200 may be JPEG's own noise.
  test('every letter has a contrast of 4.5 to 1 with the very pixels under it', async () => {
    for (const [i, picture] of [upright, dark, busy, wide, plain].entries())
      for (const shape of shapesFor(i)) {
        const drawn = await draw(one(shape, layout, picture, { lines: [], relation: undefined }));
        const { data, width } = await rasterOf(await drawn.jpeg('without words'));
        for (const block of drawn.sheet.blocks) {
          const words = rgbOf(drawn.tones[block.tone]);
          const contrasts = inkBoxes(block).flatMap((box) => {
            const found: number[] = [];
            for (let y = Math.floor(box.y); y < box.y + box.height; y++)
              for (let x = Math.floor(box.x); x < box.x + box.width; x++) {
                const i = (y * width + x) * 3;
                found.push(contrastOf([data[i], data[i + 1], data[i + 2]] as unknown as Rgb, words));
              }
            return found;
          });
          contrasts.sort((a, b) => a - b);
          expect(contrasts[Math.floor(contrasts.length / 200)]).toBeGreaterThanOrEqual(4.5);
        }
      }
  }, 120_000);

  test('no picture is enlarged more than 1.3 times, however small or wide', async () => {
    for (const [width, height] of [
      [300, 300],
      [800, 1000],
      [4000, 600],
      [640, 480],
      [1280, 1600],
    ] as const) {
      const photo = await paintedPhoto(content, `${width}x${height}.jpg`, width, height);
      for (const shape of shapes) {
        const { sheet } = await draw(one(shape, layout, photo));
        for (const window of sheet.windows) {
          const scale = Math.max(window.width / width, window.height / height);
          expect(scale).toBeLessThanOrEqual(1.3);
        }
      }
    }
  }, 60_000);
});

describe('a drawing', () => {
  test('is a JPEG of its shape’s size, and the same bytes each time', async () => {
    for (const shape of [...shapes, 'share'] as const) {
      const drawing = one(shape, 'plate');
      const [jpeg, again] = [await (await draw(drawing)).jpeg(), await (await draw(drawing)).jpeg()];
      const { format, width, height } = await sharp(jpeg).metadata();
      expect({ format, width, height }).toEqual({ format: 'jpeg', ...DRAWING_SIZES[shape] });
      expect(Buffer.from(jpeg).equals(Buffer.from(again))).toBe(true);
    }
  }, 60_000);

  test('says more where there is room, and melts only where nothing lies under the words', async () => {
    const { sheet } = await draw(one('card', 'broadside'));
    expect(sheet.blocks.map(({ role }) => role)).toEqual(['label', 'name', 'line', 'relation']);
    const low = await paintedPhoto(content, 'low.jpg', 1280, 1600, ['#a04030', '#e8e8e0', '#e8e8e0']);
    expect((await draw(one('card', 'broadside', low))).sheet.ground).toBe('picture');
  }, 60_000);
});

/** Brightness, pixel by pixel. */
const greyOf = async (jpeg: Uint8Array): Promise<Uint8Array> => sharp(jpeg).greyscale().raw().toBuffer();

describe('words alone', () => {
  // The one is drawn in one step and the other as layers, each a part of the sheet.
  test('stand alike whether there is no picture or one too small to be shown', async () => {
    const small = await paintedPhoto(content, 'small.jpg', 60, 60);
    for (const shape of ['square', 'share'] as const)
      for (const layout of layouts) {
        const none = drawingOf(shape, layout, { entries: [entry()] });
        const [alone, beside] = [await draw(none), await draw({ ...none, pictures: [small] })];
        expect(beside.sheet.windows).toEqual([]);
        const [a, b] = [await greyOf(await alone.jpeg()), await greyOf(await beside.jpeg())];
        expect(meanSsim(a, b, none.width)).toBeGreaterThan(0.99);
      }
  }, 60_000);

  test('of a link preview are as long in bytes as by the slow way of writing them, and look the same', async () => {
    const { sheet, tones, jpeg } = await draw(drawingOf('share', 'plate', { entries: [entry()] }));
    const pixels = sharp(Buffer.from(sheetSvg(sheet, tones, true))).removeAlpha();
    const slow = await pixels
      .clone()
      .jpeg({ mozjpeg: true, quality: 84, chromaSubsampling: '4:4:4' })
      .toBuffer();
    const short = await jpeg();
    expect(short.length / slow.length).toBeLessThan(1.1);
    expect(
      meanSsim(await greyOf(short), await greyOf(await pixels.png().toBuffer()), sheet.width),
    ).toBeGreaterThan(0.99);
  });
});

describeWith('exiftool', 'libimage-exiftool-perl', 'the metadata of a drawing, by exiftool', () => {
  test('carries none', async () => {
    const path = join(content, 'drawn.jpg');
    writeFileSync(path, await (await draw(one('card', 'plate'))).jpeg());
    const found = JSON.parse(execFileSync('exiftool', ['-json', '-G', path]).toString())[0] as object;
    const groups = new Set(Object.keys(found).map((key) => key.split(':')[0]));
    expect(
      [...groups].filter(
        (group) => !['SourceFile', 'ExifTool', 'File', 'JFIF', 'Composite'].includes(group ?? ''),
      ),
    ).toEqual([]);
  });
});

// Small grey pictures, by mean SSIM; 0.97 lets another processor's rounding pass, and no other layout (the last test).
describe('a golden picture', () => {
  const folder = join(import.meta.dirname, '../drawing/golden');
  const WIDTH = 160;
  const grey = async (bytes: Uint8Array): Promise<Uint8Array> =>
    sharp(bytes).resize({ width: WIDTH }).greyscale().raw().toBuffer();
  const greys = new Map<string, Uint8Array>();

  for (const layout of layouts)
    for (const [name, drawing] of [
      ['one', one('card', layout)],
      ['two', two('card', layout)],
      ['alone', drawingOf('card', layout, { entries: [entry()] })],
    ] as const)
      test(`of ${layout}, ${name}, is still drawn`, async () => {
        const file = join(folder, `${layout}-${name}.png`);
        const jpeg = await (await draw(drawing)).jpeg();
        if (!existsSync(file)) {
          mkdirSync(folder, { recursive: true });
          writeFileSync(file, await sharp(jpeg).resize({ width: WIDTH }).greyscale().png().toBuffer());
        }
        const [now, before] = [await grey(jpeg), await grey(readFileSync(file))];
        greys.set(`${layout}-${name}`, now);
        expect(meanSsim(now, before, WIDTH)).toBeGreaterThan(0.97);
      }, 30_000);

  afterAll(() => {
    const [plate, broadside] = [greys.get('plate-one'), greys.get('broadside-one')];
    if (plate && broadside) expect(meanSsim(plate, broadside, WIDTH)).toBeLessThan(0.9);
  });
});
