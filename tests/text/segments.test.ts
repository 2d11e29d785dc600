import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { graphemesOf, segmentsOf, wordCount } from '../../src/text/segments.ts';

const KINDS = ['word', 'grapheme', 'sentence'] as const;

/** Pieces of texts in many scripts, with all that joins over a break. */
const PIECES = [
  'Brass mister, 300 ml. ',
  'Dr. Finch’s café ',
  '春の箱。新しい鉢、',
  'ラジオ！',
  'سلام ',
  'क्षि ',
  '👩‍👩‍👧 ',
  '  \u0301',
  '\u200da ',
  'e\u0301e\u0301',
  '\n',
  '1,000.5 ',
  '\ud83d',
  'x',
  'สวัสดีครับ',
];

describe('a text cut into segments', () => {
  test('is cut as the runtime cuts the whole of it, wherever words and paragraphs are of a human length', () => {
    let cut = 0;
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...PIECES), { minLength: 50, maxLength: 600, size: 'max' }),
        fc.constantFrom('en', 'ja', 'de', 'th'),
        (pieces, lang) => {
          const text = pieces.join('');
          if (text.length > 1000) cut += 1;
          for (const granularity of KINDS) {
            const whole = new Intl.Segmenter(lang, { granularity }).segment(text);
            expect([...segmentsOf(text, lang, granularity)]).toEqual(
              [...whole].map(({ segment, index, isWordLike = false }) => ({ segment, index, isWordLike })),
            );
          }
        },
      ),
      { numRuns: 40 },
    );
    expect(cut).toBeGreaterThan(15);
  });

  test('is whole again when put together, also one word without an end', () => {
    for (const sign of ['x', 'ж', '😀', '手', '\ud83d', '\u0301', 'é ']) {
      const text = sign.repeat(10_000);
      for (const granularity of KINDS)
        expect([...segmentsOf(text, 'en', granularity)].map(({ segment }) => segment).join('')).toBe(text);
    }
    expect(graphemesOf('😀'.repeat(10_000), 'en')).toHaveLength(10_000);
  });

  test('takes time by its length, not by its square', () => {
    // The system shares a thousandth of a second between program and kernel by chance, and knows their sum.
    const once = (text: string): number => {
      const begun = process.cpuUsage();
      wordCount(text, 'en');
      const { user, system } = process.cpuUsage(begun);
      return user + system;
    };
    const timed = (text: string): number => Math.min(once(text), once(text), once(text));
    for (const piece of ['é 1 ', 'ж', '手', 'a1']) {
      timed(piece.repeat(2000));
      // Long enough that the shorter one takes more than the clock's own grain.
      const one = timed(piece.repeat(16_000));
      expect(timed(piece.repeat(128_000)) / one).toBeLessThan(24);
    }
  });
});
