/** What other programs and published rules say about shapes, order and lines. */
import { existsSync } from 'node:fs';
import * as fontkit from 'fontkit';
import { chromium } from 'playwright-core';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { placesOf } from '../../../src/drawing/type/break-places.ts';
import type { Hand } from '../../../src/drawing/type/faces.ts';
import { lettersOf } from '../../../src/drawing/type/letters.ts';
import type { Outline } from '../../../src/drawing/type/outline.ts';
import { setText } from '../../../src/drawing/type/set-type.ts';
import { type ShapedLine, shapeLine } from '../../../src/drawing/type/shape-line.ts';
import { typeSvg } from '../../../src/drawing/type/type-svg.ts';
import { readFaces } from '../../../src/io/read-faces.ts';
import { CHROMIUM } from '../../support/chromium.ts';
import { fontAssets, typeFaces } from '../../support/type-faces.ts';

const faces = await typeFaces();

const shaped = (text: string, lang = 'en', hand: Hand = 'display'): ShapedLine => {
  const letters = lettersOf(text, lang, faces.inOrder(hand, lang));
  return shapeLine(letters, letters.letters, { lang, spacing: 0, harfbuzz: faces.harfbuzz });
};

/** Letters in the order in which they are seen. */
const seen = (text: string, lang = 'en'): string =>
  shaped(text, lang)
    .placed.map(({ at }) => String.fromCodePoint(text.codePointAt(at) ?? 0))
    .join('');

const bytesOf = (file: string): Uint8Array => {
  const asset = fontAssets().find(({ path }) => path === `fonts/${file}`);
  if (asset) return asset.bytes;
  const face = readFaces().find(({ name }) => name === file);
  if (!face) throw new Error(`Expected a face in ${file}`);
  return face.bytes();
};

describe('fontkit, another reader of fonts and another shaper, agrees', () => {
  test.each([
    [
      'sorts-mill-goudy.woff2',
      'display',
      ['AVATAR', 'To Yolanda, with Waffles', 'Fjord & Type', 'quietly; yes!'],
    ],
    ['alegreya.woff2', 'text', ['Sage enamel watering can, 1.2', 'AV To Ty', 'Kept for the 3rd year']],
    ['alegreya-italic.woff2', 'italic', ['for Waffles, Type', 'fjord 1905']],
  ] as const)('on widths of %s to a thousandth of an em', (file, hand, texts) => {
    const font = fontkit.create(Buffer.from(bytesOf(file)));
    if (!('layout' in font)) throw new Error('Expected one font');
    for (const text of texts) {
      const { advanceWidth } = font.layout(text);
      expect(Math.abs(shaped(text, 'en', hand).advance * 1000 - advanceWidth), text).toBeLessThanOrEqual(1);
    }
  });

  test('on what the ink of every letter covers, to two thousandths', () => {
    for (const file of ['sorts-mill-goudy.woff2', 'alegreya.woff2']) {
      const font = fontkit.create(Buffer.from(bytesOf(file)));
      if (!('layout' in font)) throw new Error('Expected one font');
      const hand = file.startsWith('alegreya') ? 'text' : 'display';
      for (const code of font.characterSet.filter((one) => one > 0x20 && one < 0x7f)) {
        const { ink } = shaped(String.fromCodePoint(code), 'en', hand);
        const { minX, maxX, minY, maxY } = font.glyphForCodePoint(code).bbox;
        for (const [ours, theirs] of [
          [ink?.left, minX],
          [ink?.right, maxX],
          [ink?.bottom, minY],
          [ink?.top, maxY],
        ] as const)
          expect(Math.abs((ours ?? 0) * 1000 - theirs), `${file} ${code}`).toBeLessThanOrEqual(2);
      }
    }
  });
});

/** The widest of some shapes: a letter without its dots, which are shapes of their own. */
const body = ({ placed }: ShapedLine): Outline | undefined =>
  placed
    .map(({ outline }) => outline)
    .sort((one, other) => widthOf(other) - widthOf(one))
    .at(0);
const widthOf = ({ ink }: Outline): number => (ink ? ink.right - ink.left : 0);

test('Arabic letters are joined: inside a word they have other shapes than alone, and after alif they have not', () => {
  const outlines = shaped('بيت', 'ar').placed.map(({ outline }) => outline);
  for (const letter of 'بيت') expect(outlines).not.toContain(body(shaped(letter, 'ar')));
  expect(shaped('دار', 'ar').placed.map(({ outline }) => outline)).toContain(body(shaped('ر', 'ar')));
});

test('Devanagari letters are put together: ki is seen before its consonant, and kSa is one shape', () => {
  expect(shaped('कि', 'hi').placed).not.toEqual(shaped('क', 'hi').placed);
  expect(shaped('क्ष', 'hi').placed).toHaveLength(1);
});

/** As the standard writes its examples: capitals stand for letters that go from right to left. */
const mixed = (text: string): string =>
  text.replace(/[A-Z]/g, (letter) => String.fromCodePoint(0x5d0 + letter.charCodeAt(0) - 65));

describe('the bidirectional algorithm (UAX #9)', () => {
  const RLM = '\u200f';
  test.each([
    // 3.4, Reordering resolved levels, examples 1, 2 and 4.
    ['car means CAR.', 'car means RAC.'],
    [`${RLM}car MEANS CAR.`, '.RAC SNAEM car'],
    ['DID YOU SAY car MEANS CAR?', '?RAC SNAEM car YAS UOY DID'],
    // Rules W2 to W7: numbers keep their order, and signs between digits stay with them.
    ['KIT 1.2 LITER', 'RETIL 1.2 TIK'],
    ['a KIT 10-12 b', 'a 10-12 TIK b'],
    // Rule N0, bracket pairs, its example of a name with a bracketed company.
    ['smith (fabrikam ARABIC) HEBREW', 'smith (fabrikam CIBARA) WERBEH'],
    [`${RLM}smith (fabrikam ARABIC) HEBREW`, 'WERBEH (CIBARA fabrikam) smith'],
  ])('%s', (stored, displayed) => {
    const order = seen(mixed(stored)).replaceAll(RLM, '');
    // A bracket keeps its place in the text and is mirrored in its shape.
    const mirrored = displayed.startsWith('WERBEH')
      ? displayed.replace(/[()]/g, (b) => (b === '(' ? ')' : '('))
      : displayed;
    expect(order).toBe(mixed(mirrored));
  });

  test('a bracket is turned where its letters go from right to left', () => {
    const [open, close] = ['(', ')'].map((sign) => shaped(sign).placed[0]?.outline);
    const outlines = shaped(mixed('A(B)C')).placed.map(({ outline }) => outline);
    expect(outlines[1]).toBe(open);
    expect(outlines[3]).toBe(close);
  });
});

/** A line may end at every ÷ and nowhere else: LineBreakTest.txt's notation. */
describe('the line breaking algorithm (UAX #14)', () => {
  test.each([
    ['LB7, LB18: after spaces', 'Sage ÷enamel ÷can'],
    ['LB11, LB12: not around word joiner and no-break space', 'a\u00a0can ÷and ÷2\u202fkg ÷of\u2060tea'],
    ['LB13: not before closing signs', '(small) ÷and ÷“fine” !'],
    ['LB14: not after opening ones', 'a ÷( b ÷c)'],
    ['LB21: after a hyphen', 'co-÷op'],
    ['LB25: not inside numbers', '$1,200.50 ÷(10%)'],
    ['LB30: not before a bracket inside a word', 'cup(s) ÷of'],
    ['ID, CL: between Han letters, not before 、 and 。', '花÷と、÷水。÷本'],
    ['NS, CJ: not before small kana and the sound mark', 'セー÷ジッ'],
    ['OP: not after 「', '「花」÷と'],
    ['B2: around an em dash', 'so÷—÷well'],
    ['LB30b, ZWJ: not inside a family', '👩🏽‍🌾÷👩🏽‍🌾'],
  ])('%s', (_, marked) => {
    const text = marked.replaceAll('÷', '');
    const expected: number[] = [];
    for (let at = marked.indexOf('÷'), before = 0; at >= 0; at = marked.indexOf('÷', at + 1), before += 1)
      expected.push(at - before);
    expect(
      placesOf(text, 'ja')
        .slice(0, -1)
        .map(({ next }) => next),
    ).toEqual(expected);
  });
});

describe.runIf(process.env.CI || existsSync('/usr/bin/chromium'))('Chromium draws the same', () => {
  /** Share of the ink by which two greyscale pictures differ; edges are smoothed in two ways. */
  const MOST_UNLIKE = 0.06;
  const [WIDTH, HEIGHT, X, Y, SIZE] = [1000, 200, 60, 130, 72];

  const CASES = [
    ['sorts-mill-goudy.woff2', 'display', 'en', 'Waffles & To AVATAR, quietly'],
    ['alegreya-italic.woff2', 'italic', 'en', 'Waffles & To fjord, 1.2'],
    ['alegreya-vietnamese-wght-normal.woff2', 'text', 'vi', 'ạảấầẩẫậắằẳẵặẹẻẽếềểễệ'],
    ['noto-naskh-arabic-arabic-wght-normal.woff2', 'text', 'ar', 'مطليٌّ'],
    ['noto-serif-hebrew-hebrew-wght-normal.woff2', 'text', 'he', 'מַשְׁפֵּךְ'],
    ['noto-serif-devanagari-devanagari-wght-normal.woff2', 'text', 'hi', 'क्षत्रियश्रीहिन्दी'],
    ['noto-serif-thai-thai-wght-normal.woff2', 'text', 'th', 'บัวรดน้ำเคลือบปู่'],
    ['noto-serif-sc-119-wght-normal.woff2', 'text', 'zh', '中新日月有点的网'],
  ] as const;

  test('the words in their faces', async () => {
    const browser = await chromium.launch({
      ...CHROMIUM,
      args: [...(CHROMIUM.args ?? []), '--font-render-hinting=none', '--disable-lcd-text'],
    });
    try {
      const page = await browser.newPage({ viewport: { width: WIDTH, height: HEIGHT } });
      const unlike: Record<string, number> = {};
      for (const [file, hand, lang, text] of CASES) {
        const type = setText(
          text,
          { hand, lang, size: SIZE, least: SIZE, width: WIDTH, lines: 1, leading: 1 },
          faces,
        );
        expect(type.lacking).toEqual([]);
        const font = Buffer.from(bytesOf(file)).toString('base64');
        const dir = type.lines[0]?.rightToLeft ? 'rtl' : 'ltr';
        const x = dir === 'rtl' ? WIDTH - X : X;
        await page.setContent(
          `<style>@font-face{font-family:F;src:url(data:font/woff2;base64,${font});font-weight:100 900}body{margin:0}` +
            `text{font:400 ${SIZE}px F;white-space:pre;text-rendering:geometricPrecision}</style><svg width="${WIDTH}" height="${HEIGHT}">` +
            `<text x="${x}" y="${Y}" lang="${lang}" direction="${dir}"></text></svg>`,
        );
        await page.locator('text').evaluate((node, words) => {
          node.textContent = words;
        }, text);
        await page.evaluate('document.fonts.ready');
        const svg =
          `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}">` +
          `<rect width="100%" height="100%" fill="#fff"/>${typeSvg(type, { x, y: Y, align: 'start', fill: '#000' })}</svg>`;
        const pixels = (image: Buffer) => sharp(image).flatten().greyscale().blur(1).raw().toBuffer();
        const [theirs, ours] = [await pixels(await page.screenshot()), await pixels(Buffer.from(svg))];
        let [differs, ink] = [0, 0];
        for (const [i, value] of theirs.entries()) {
          differs += Math.abs(value - (ours[i] ?? 0));
          ink += 255 - value;
        }
        unlike[file] = differs / ink;
      }
      if (process.env.LIDLORE_SHOW) process.stdout.write(`${JSON.stringify(unlike, null, 1)}\n`);
      for (const [file, share] of Object.entries(unlike)) expect.soft(share, file).toBeLessThan(MOST_UNLIKE);
    } finally {
      await browser.close();
    }
  }, 60_000);
});
