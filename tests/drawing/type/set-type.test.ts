import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { type SetType, setText, type TypeSpec } from '../../../src/drawing/type/set-type.ts';
import { typeSvg } from '../../../src/drawing/type/type-svg.ts';
import { filesBelow } from '../../support/tools.ts';
import { typeFaces } from '../../support/type-faces.ts';

const faces = await typeFaces();

/** A name on a tall card. */
const NAME: TypeSpec = {
  hand: 'display',
  size: 84,
  least: 44,
  width: 880,
  lines: 3,
  leading: 1.1,
  lang: 'en',
};

const set = (text: string, spec: Partial<TypeSpec> = {}): SetType =>
  setText(text, { ...NAME, ...spec }, faces);
const linesOf = (text: string, spec: Partial<TypeSpec> = {}): readonly string[] =>
  set(text, spec).lines.map((line) => line.text);

const breadth = ({ ink, width }: SetType['lines'][number]): number =>
  Math.max(width, ink.right) - Math.min(0, ink.left);

const names = filesBelow(join(import.meta.dirname, '../../../content'))
  .filter((path) => path.endsWith('.md') && path.includes('items'))
  .flatMap(
    (path) =>
      /^name: *["']?(.+?)["']?$/m.exec(
        readFileSync(join(import.meta.dirname, '../../../content', path), 'utf8'),
      )?.[1] ?? [],
  )
  .sort((a, b) => b.length - a.length);

test('every name of the demo fits a card, at no less than the least size, within its width', () => {
  expect(names.length).toBeGreaterThan(60);
  for (const name of names) {
    const type = set(name);
    expect.soft(type.fits, name).toBe(true);
    expect.soft(type.lacking, name).toEqual([]);
    expect.soft(type.size, name).toBeGreaterThanOrEqual(NAME.least);
    for (const line of type.lines)
      expect.soft(breadth(line), line.text).toBeLessThanOrEqual(NAME.width + 0.01);
    expect.soft(type.lines.map((line) => line.text).join(' '), name).toBe(name);
  }
});

test('a text that fits is as large as wanted, and one that does not is smaller', () => {
  expect(set('Watering can').size).toBe(84);
  const long = set('Watering can of enamel', { lines: 1, width: 600 });
  expect(long.size).toBeLessThan(84);
  expect(long.size).toBeGreaterThan(44);
  expect(long.lines).toHaveLength(1);
});

test('what no size holds goes on in more lines, and says so', () => {
  const type = set('One two three four five six seven eight nine ten eleven twelve', {
    lines: 1,
    width: 300,
  });
  expect(type).toMatchObject({ fits: false, size: 44 });
  expect(type.lines.length).toBeGreaterThan(1);
  expect(type.lines.map((line) => line.text).join(' ')).toContain('eleven twelve');
});

test('lines are of most equal width, and none ends with an article or a number without its unit', () => {
  expect(linesOf('A quiet hour with the good teapot', { width: 700, lines: 2 })).toEqual([
    'A quiet hour with',
    'the good teapot',
  ]);
  expect(linesOf('Stoneware mug, 350 ml, speckled grey', { width: 760, lines: 2 })[0]).not.toMatch(/350$/);
  for (const [text, together] of [
    ['Größe und Maß: 40 × 60 cm, 3 St.', '40 × 60 cm'],
    ['A soap from Sill & Sprig, Ely', 'Sill & Sprig'],
    ['Handmade candle No. 5 with a wick', 'No. 5'],
  ] as const)
    for (const width of [640, 700, 760])
      expect(linesOf(text, { width, lines: 4 }).join('|')).toContain(together);
  expect(linesOf('Open from 10–12 and 14–18 daily', { width: 300, lines: 4 }).join('|')).not.toMatch(/–\|/);
});

test('a word wider than a line is parted after a syllable, with a hyphen, at the least size or above', () => {
  const type = set('Donaudampfschifffahrtselektrizitätenhauptbetriebswerk', { lang: 'de' });
  expect(type.fits).toBe(true);
  expect(type.lines.map((line) => line.text)).toEqual([
    'Donaudampfschifffahrtselek-',
    'trizitätenhauptbetriebswerk',
  ]);
  expect(
    linesOf('Rindfleischetikettierungsüberwachungsaufgabe', { lang: 'de', width: 300, lines: 9 })
      .join('')
      .replaceAll('-', ''),
  ).toBe('Rindfleischetikettierungsüberwachungsaufgabe');
});

test('a soft hyphen is where a word is parted, and is not seen elsewhere', () => {
  expect(linesOf('Wasch\u00adkorb', { width: 230, lines: 2 })).toEqual(['Wasch-', 'korb']);
  expect(linesOf('Wasch\u00adkorb')).toEqual(['Waschkorb']);
});

test('an address is parted at its signs alone, and no hyphen is added', () => {
  const lines = linesOf('sillandsprig.example/join/the-spring-box', { width: 420, lines: 3 });
  expect(lines.length).toBeGreaterThan(1);
  expect(lines.join('')).toBe('sillandsprig.example/join/the-spring-box');
  for (const line of lines.slice(1)) expect(line).toMatch(/^[./?&=#_@-]/);
});

test('no line of Chinese or Japanese begins with a sign that ends something', () => {
  // JIS X 4051 / CSS Text 3, 5.3: characters that a line may not begin with.
  for (const [text, lang] of [
    ['搪瓷浇水壶，一点二升，鼠尾草绿色，适合窗台上的小盆栽。', 'zh'],
    ['「琺瑯のじょうろ」、セージグリーン。窓辺の、小さな鉢のために。', 'ja'],
  ] as const)
    for (const width of [300, 400, 520, 640])
      for (const line of linesOf(text, { lang, width, lines: 8 })) {
        expect(line).not.toMatch(/^[、。，．」』）！？：；ゃゅょっー]/);
        expect(line).not.toMatch(/[「『（]$/);
      }
});

test('Thai is parted between words, never inside one', () => {
  const words = new Intl.Segmenter('th', { granularity: 'word' });
  const text = 'บัวรดน้ำเคลือบสีเขียวเสจสำหรับกระถางเล็กริมหน้าต่าง';
  const starts = new Set([...words.segment(text)].map(({ index }) => index));
  let at = 0;
  const lines = linesOf(text, { lang: 'th', width: 420, lines: 5 });
  expect(lines.length).toBeGreaterThan(2);
  for (const line of lines) {
    expect(starts).toContain(at);
    at += line.length;
  }
});

test('what is written from right to left says so, and begins at the right', () => {
  const arabic = set('إبريق سقي', { lang: 'ar' });
  expect(arabic.lines[0]?.rightToLeft).toBe(true);
  const { width = 0 } = arabic.lines[0] ?? {};
  expect(typeSvg(arabic, { x: 500, y: 100, align: 'start', fill: '#000' })).toContain(
    `translate(${Math.round((500 - width) * 100) / 100} 100)`,
  );
  expect(set('Kit של שלום').lines[0]?.rightToLeft).toBe(false);
  expect(typeSvg(set('Kit'), { x: 500, y: 100, align: 'start', fill: '#000' })).toContain(
    'translate(500 100)',
  );
});

test.each([
  ['Hebrew with points', 'מַשְׁפֵּךְ אֵמַיְל יָרֹק', 'he'],
  ['Arabic', 'إبريق سقي مطلي بالمينا', 'ar'],
  ['Persian', 'آبپاش لعابی سبز', 'fa'],
  ['Hindi', 'हरे रंग का एनामेल', 'hi'],
  ['Thai', 'บัวรดน้ำเคลือบ', 'th'],
  ['Chinese', '搪瓷浇水壶，一点二升', 'zh'],
  ['Chinese of Taiwan', '搪瓷澆水壺，鼠尾草綠', 'zh-Hant'],
  ['Japanese', '琺瑯のじょうろ、セージ', 'ja'],
  ['Russian', 'Лейка эмалированная «Шалфей»', 'ru'],
  ['Greek, also with breathings', 'Ποτιστήρι, ἀρχὴ σοφίας', 'el'],
  ['Vietnamese', 'Bình tưới cây tráng men Nguyễn', 'vi'],
  ['Polish and Czech', 'Łódź, žluťoučký kůň', 'cs'],
  ['marks upon marks', 'e\u0301 q\u0303 x\u0323\u0302 Z\u030c\u0301', 'en'],
  ['one letter', 'Q', 'en'],
])('%s has all its letters', (_, text, lang) => {
  for (const hand of ['display', 'text', 'italic'] as const) {
    const type = set(text, { lang, hand });
    expect(type.lacking).toEqual([]);
    expect(type.fits).toBe(true);
    expect(type.lines.every(({ d }) => /^M[-\d.]/.test(d))).toBe(true);
  }
});

test('a letter that no face has is an empty frame and is named', () => {
  const type = set('Seeds 🌱 and 👩🏽‍🌾 for 🌱');
  expect(type.lacking).toEqual(['🌱', '👩🏽‍🌾']);
  expect(type.lines.map((line) => line.text).join(' ')).toBe('Seeds 🌱 and 👩🏽‍🌾 for 🌱');
  expect(type.width).toBeGreaterThan(set('Seeds  and  for ').width + 3 * 40);
});

test('a mark that its letter has in no face stands over it, and another over that', () => {
  const top = (text: string): number => set(text).lines[0]?.ink.top ?? 0;
  const bottom = (text: string): number => set(text).lines[0]?.ink.bottom ?? 0;
  expect(top('x\u0302')).toBeLessThan(top('x') - 8);
  expect(top('x\u0302\u0301')).toBeLessThan(top('x\u0302') - 8);
  expect(bottom('x\u0323')).toBeGreaterThan(bottom('x') + 4);
  expect(set('x\u0302').width).toBe(set('x').width);
});

test('an empty text is no lines', () => {
  expect(set(' \n ')).toMatchObject({ lines: [], width: 0, height: 0, fits: true, lacking: [] });
});

test('letters are spread, but not those that are joined', () => {
  expect(set('April box', { spacing: 0.1 }).width - set('April box').width).toBeCloseTo(8 * 8.4, 0);
  expect(set('إبريق', { spacing: 0.1 }).width).toBe(set('إبريق').width);
});

test('capitals are as tall as they are drawn', () => {
  const type = set('H');
  expect(type.capHeight).toBeCloseTo(-(type.lines[0]?.ink.top ?? 0), 2);
  expect(type.capHeight / type.size).toBeGreaterThan(0.6);
});

test('the same text gives the same data', () => {
  expect(set('Sage enamel watering can, 1.2 litre')).toEqual(set('Sage enamel watering can, 1.2 litre'));
});
