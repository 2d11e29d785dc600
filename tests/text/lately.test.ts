import { expect, test } from 'vitest';
import { latelyKnown } from '../../src/text/lately.ts';

test('what was asked of a text lately is not found again, and what was asked long ago is let go', () => {
  const asked: string[] = [];
  const length = latelyKnown((text, lang) => {
    asked.push(`${lang} ${text}`);
    return text.length;
  }, 3);
  expect(['tray', 'tray', 'mister', 'tray'].map((text) => length(text, 'en'))).toEqual([4, 4, 6, 4]);
  // The same letters in another language are another text.
  expect(length('tray', 'de')).toBe(4);
  expect(asked).toEqual(['en tray', 'en mister', 'de tray']);
  for (const text of 'abcdefgh') length(text, 'en');
  length('mister', 'en');
  expect(asked.filter((one) => one === 'en mister')).toHaveLength(2);
});
