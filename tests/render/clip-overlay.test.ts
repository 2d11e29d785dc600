import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LINE_LENGTH, LINES, overlaysOf, READING_SPEED } from '../../src/render/clip-overlay.ts';

/** Counted apart from the code under test. */
const signs = (text: string): number =>
  [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text)].length;
const bare = (text: string): string => text.replace(/[\s-]/g, '');

const scripts = [
  'the wooden seed tray, and “a brass mister” (300 ml)',
  '木製の種まきトレイ「四つの種袋」と霧吹き。',
  'Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft',
  '👩‍🌾🌱 ça alors ! co-op 10:30 e\u0301clair',
  'พันธุ์ไม้ในกระถาง',
];
const piece = fc.oneof(
  fc.constantFrom(...scripts.flatMap((text) => text.split(' '))),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  fc.constantFrom('.', ',', ' – ', '…', '”', '«', '。'),
);
const text = fc
  .array(piece, { maxLength: 40 })
  .chain((pieces) => fc.constantFrom(' ', '', ', ').map((between) => pieces.join(between)));
const lang = fc.constantFrom('en-GB', 'ja', 'de', 'th', 'zh-Hant');

describe('words over a picture', () => {
  test('are parted where a clause ends, though both halves would be more alike elsewhere', () => {
    const text =
      'The wooden seed tray holds twelve small pots of soil, and the tin that lies beside it keeps all of your seeds dry.';
    const [first] = overlaysOf(text, 'en-GB');
    expect(first?.lines.join(' ')).toBe('The wooden seed tray holds twelve small pots of soil,');
  });

  test('are parted inside a clause where its end is so far off that one half would be much the longer', () => {
    const text =
      'Look at it in the sun, where the wooden seed tray holds twelve pots of good dark soil and keeps them dry.';
    const [first] = overlaysOf(text, 'en-GB');
    expect(signs(first?.lines.join(' ') ?? '')).toBeGreaterThan(40);
  });

  test('stand in one or two lines of at most 42 graphemes, long enough to be read', () => {
    fc.assert(
      fc.property(text, lang, (words, tag) => {
        for (const { lines, least } of overlaysOf(words, tag)) {
          expect(lines.length).toBeGreaterThan(0);
          expect(lines.length).toBeLessThanOrEqual(LINES);
          for (const line of lines) {
            expect(line.trim()).not.toBe('');
            expect(signs(line)).toBeLessThanOrEqual(LINE_LENGTH);
          }
          expect((signs(lines.join(' ')) * 1000) / least).toBeLessThanOrEqual(READING_SPEED);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('lose and add nothing but spaces and the hyphens of cut words', () => {
    fc.assert(
      fc.property(text, lang, (words, tag) => {
        const shown = overlaysOf(words, tag).flatMap(({ lines }) => lines);
        expect(bare(shown.join(''))).toBe(bare(words));
      }),
      { numRuns: 300 },
    );
  });

  test('do not part a name, neither by a line nor by an overlay', () => {
    const names = ['Danish dough whisk', 'Bun, muffin and pudding tin', 'Tolley Joinery of Cable Steps'];
    const words = [
      'This is where the Danish dough whisk comes in, and where the bun, muffin and pudding tin goes out again.',
      'Made for us by Tolley Joinery of Cable Steps, who also made the table that the Danish dough whisk lies on.',
      'Bun, muffin and pudding tin. A loaf wants a pound of it, said Tolley Joinery of Cable Steps.',
    ];
    for (const text of words)
      for (let cut = 0; cut < text.length; cut += 3) {
        const shown = text.slice(cut);
        const lines = overlaysOf(shown, 'en-GB', names).flatMap((one) => one.lines);
        for (const name of names)
          if (shown.toLowerCase().includes(name.toLowerCase()))
            expect(
              lines.some((line) => line.toLowerCase().includes(name.toLowerCase())),
              `${name}: ${lines.join(' / ')}`,
            ).toBe(true);
      }
  });

  test('break after a sentence sooner than after the word that begins the next', () => {
    expect(overlaysOf('Japanese bread knife. It opens what the oven made.', 'en-GB')[0]?.lines).toEqual([
      'Japanese bread knife.',
      'It opens what the oven made.',
    ]);
  });

  test('part a name that is longer than a line', () => {
    const name = 'Tolley Joinery of Cable Steps and Sons and Daughters';
    const lines = overlaysOf(`By ${name}.`, 'en-GB', [name]).flatMap((one) => one.lines);
    expect(lines.length).toBeGreaterThan(1);
    expect(Math.max(...lines.map(signs))).toBeLessThanOrEqual(LINE_LENGTH);
  });

  test('cut a word that is longer than a line into parts alike, and whole where it is set in one run', () => {
    const word = 'Rindfleischetikettierungsüberwachungshonig.';
    const [first, ...others] = overlaysOf(word, 'de');
    expect(others).toEqual([]);
    expect(first?.text).toBe(word);
    expect(first?.lines).toEqual(['Rindfleischetikettieru-', 'ngsüberwachungshonig.']);
    const long = 'a'.repeat(200);
    const runs = overlaysOf(long, 'en');
    expect(runs.length).toBeGreaterThan(2);
    for (const { text, lines } of runs.slice(0, -1))
      expect([text.endsWith('-'), lines.at(-1)?.endsWith('-')]).toEqual([true, true]);
    expect(runs.map(({ text }) => text.replaceAll('-', '')).join('')).toBe(long);
    expect(runs.map(({ text }) => (text.match(/-/g) ?? []).length)).toEqual([
      ...runs.slice(1).map(() => 1),
      0,
    ]);
  });

  test('break where a clause ends', () => {
    const words =
      'Tomato and basil fill the tray’s two halves; the other two seed packets lean on it and wait.';
    expect(overlaysOf(words, 'en').map(({ lines }) => lines.join(' / '))).toEqual([
      'Tomato and basil fill / the tray’s two halves;',
      'the other two seed packets / lean on it and wait.',
    ]);
  });

  test('do not begin with a closing sign, and are broken between words where no spaces are written', () => {
    const lines = overlaysOf(`${'木製の種まきトレイと霧吹き、'.repeat(8)}。`, 'ja').flatMap(
      (one) => one.lines,
    );
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.filter((line) => /^[、。]/.test(line))).toEqual([]);
  });

  test('are none where there is nothing to say', () => {
    expect(overlaysOf('  ', 'en')).toEqual([]);
  });
});
