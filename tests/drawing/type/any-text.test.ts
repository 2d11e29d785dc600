import fc from 'fast-check';
import { expect, test } from 'vitest';
import { balancedLines, fewestLines } from '../../../src/drawing/type/balance.ts';
import { type SetType, setText, type TypeSpec } from '../../../src/drawing/type/set-type.ts';
import { graphemesOf } from '../../../src/text/segments.ts';
import { typeFaces } from '../../support/type-faces.ts';

const faces = await typeFaces();

/** First and last letters of what is mixed into the texts, with the signs that lines are broken at. */
const ALPHABETS: readonly string[] = [
  'abcdefghijklmnopqrstuvwxyzABCXYZ',
  'äöüßéèñçøåłžőğıİ',
  'абвгдежзиклмнопрстуфхцчшщ',
  'αβγδεζηθικλμνξοπρστυφχψωάέ',
  'אבגדהוזחטיכלמנסעפצקרשת',
  'ابتثجحخدذرزسشصضطظعغفقكلمنهوي',
  'กขคงจฉชซญฎฏฐณดตถทธนบปผพฟมยรลวสหอ',
  'कखगघचछजझटठडढतथदधनपफबभमयरलवशसह',
  '搪瓷浇水壶一点二升鼠尾草绿色适合窗台',
  'のじょうろセージグリーン窓辺',
  '0123456789',
];
const SIGNS = [
  ...' .,;:!?-–—()“”«»/&%€',
  ' ',
  ' ',
  ' ',
  '\u00a0',
  '\u202f',
  '。',
  '、',
  '「',
  '」',
  '\u0301',
  '\u05b8',
  '\u064e',
];

const word = fc.oneof(
  ...ALPHABETS.map((letters) =>
    fc.array(fc.constantFrom(...letters), { minLength: 1, maxLength: 14 }).map((all) => all.join('')),
  ),
  { arbitrary: fc.constantFrom(...SIGNS), weight: 12 },
  fc.constantFrom('🌱', '👩🏽‍🌾', '\u{1F1E9}\u{1F1EA}', 'q\u0303', 'Donaudampfschifffahrt', 'a.example/b'),
);
const text = fc
  .array(word, { maxLength: 9 })
  .map((words) => words.join(''))
  .chain((joined) => fc.constantFrom(joined, joined.replaceAll(/(.{9})/gu, '$1 ')));

const spec = fc.record({
  hand: fc.constantFrom('display', 'text', 'italic'),
  size: fc.integer({ min: 40, max: 120 }),
  least: fc.integer({ min: 24, max: 40 }),
  width: fc.integer({ min: 160, max: 1000 }),
  lines: fc.integer({ min: 1, max: 5 }),
  leading: fc.constant(1.1),
  lang: fc.constantFrom('en', 'de', 'ar', 'he', 'ja', 'zh', 'th', 'hi'),
  spacing: fc.constantFrom(0, 0.05),
}) satisfies fc.Arbitrary<TypeSpec>;

const breadth = ({ ink, width }: SetType['lines'][number]): number =>
  Math.max(width, ink.right) - Math.min(0, ink.left);

/** What has to be there: all that is no space. */
const kept = (all: string): string => all.normalize('NFC').replace(/[\s-]/gu, '');

const SETTINGS = { numRuns: 100, seed: 13 };

test('no letter of any text is lost, and none is put in but hyphens', () => {
  fc.assert(
    fc.property(text, spec, (words, wanted) => {
      const { lines } = setText(words, wanted, faces);
      expect(kept(lines.map((line) => line.text).join(''))).toBe(kept(words));
    }),
    SETTINGS,
  );
});

test('what fits has no ink beyond its width, is of a size between the two, and on no more lines than allowed', () => {
  let fitting = 0;
  fc.assert(
    fc.property(text, spec, (words, wanted) => {
      const { lines, size, fits } = setText(words, wanted, faces);
      expect(size).toBeGreaterThanOrEqual(wanted.least);
      expect(size).toBeLessThanOrEqual(wanted.size);
      if (!fits) return;
      fitting += lines.length;
      expect(lines.length).toBeLessThanOrEqual(wanted.lines);
      for (const line of lines) expect(breadth(line)).toBeLessThanOrEqual(wanted.width + 0.02);
    }),
    SETTINGS,
  );
  expect(fitting).toBeGreaterThan(100);
});

test('no line begins or ends inside a sign that readers take for one', () => {
  fc.assert(
    fc.property(text, spec, (words, wanted) => {
      const whole = graphemesOf(kept(words), 'en');
      const { lines } = setText(words, wanted, faces);
      const parted = lines.flatMap((line) => graphemesOf(kept(line.text), 'en'));
      expect(parted).toEqual(whole);
    }),
    SETTINGS,
  );
});

test('the ink is where the path is: every point of it within the box', () => {
  fc.assert(
    fc.property(text, spec, (words, wanted) => {
      for (const { d, ink } of setText(words, wanted, faces).lines) {
        // Ends of curves lie on the outline; points between may be controls, which do not.
        for (const [, , numbers = ''] of d.matchAll(/([MLQC])([^MLQCZ]*)/g)) {
          const [x = 0, y = 0] = numbers.trim().split(/[ ,]+/).map(Number).slice(-2);
          expect(x).toBeGreaterThanOrEqual(ink.left - 0.02);
          expect(x).toBeLessThanOrEqual(ink.right + 0.02);
          expect(y).toBeGreaterThanOrEqual(ink.top - 0.02);
          expect(y).toBeLessThanOrEqual(ink.bottom + 0.02);
        }
      }
    }),
    { ...SETTINGS, numRuns: 60 },
  );
});

test('balanced lines are never more than filling each in turn gives', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 25 }),
      fc.integer({ min: 10, max: 60 }),
      (widths, width) => {
        const widthOf = (first: number, last: number): number =>
          widths.slice(first, last + 1).reduce((sum, one) => sum + one + 1, -1);
        const pieces = {
          count: widths.length,
          widthOf,
          isWithin: (first: number, last: number, most: number) => widthOf(first, last) <= most,
          costOf: (last: number) => (last % 5 === 0 ? 12 : 0),
        };
        const spans = balancedLines(pieces, width);
        expect(spans).toHaveLength(fewestLines(pieces, width));
        expect(
          spans.flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, i) => first + i)),
        ).toEqual(widths.map((_, i) => i));
        for (const [first, last] of spans)
          if (last > first) expect(pieces.widthOf(first, last)).toBeLessThanOrEqual(width);
      },
    ),
  );
});
