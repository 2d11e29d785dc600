import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wrapLines } from '../../src/text/wrap.ts';

describe('lines', () => {
  test.each([
    ['break at spaces', 'a seed tin', 6, ['a seed', 'tin']],
    ['take white space of any length for one', 'a \n seed\t tin', 20, ['a seed tin']],
    ['hold at a no-break space', 'about 300\u00a0ml', 8, ['about', '300\u00a0ml']],
    [
      'leave a word that is too long on a line to itself',
      'see https://a.example/b now',
      9,
      ['see', 'https://a.example/b', 'now'],
    ],
    ['are one, and empty, for no text', ' ', 9, ['']],
    ['count a character outside the first plane once', '🌱🌱 🌱', 4, ['🌱🌱 🌱']],
  ])('%s', (_, text, width, lines) => {
    expect(wrapLines(text, width)).toEqual(lines);
  });

  test('are cut inside a word by a ruler that can', () => {
    const cut = (word: string, width: number): string[] => word.match(new RegExp(`.{1,${width}}`, 'g')) ?? [];
    const ruler = { widthOf: (text: string) => text.length, cut };
    expect(wrapLines('a seedling tray', 4, ruler)).toEqual(['a', 'seed', 'ling', 'tray']);
  });

  test('lose no word, are never empty, and could not hold the next word too', () => {
    const words = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(words, fc.integer({ min: 1, max: 20 }), (some, width) => {
        const lines = wrapLines(some.join(' '), width);
        expect(lines.join(' ')).toBe(some.join(' '));
        for (const [i, line] of lines.entries()) {
          if (line.includes(' ')) expect(line.length).toBeLessThanOrEqual(width);
          const next = lines[i + 1]?.split(' ')[0];
          if (next !== undefined) expect(line.length + 1 + next.length).toBeGreaterThan(width);
        }
      }),
    );
  });
});
