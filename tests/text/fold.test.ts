import { describe, expect, test } from 'vitest';
import { fold, foldCase } from '../../src/text/fold.ts';

describe('folding', () => {
  test('of a cell passes over case, Unicode form, width and spaces, and keeps accents', () => {
    expect(foldCase('  Ｃafe\u0301 \t Crème ')).toBe('café crème');
    expect(foldCase('naïve')).not.toBe(foldCase('naive'));
  });

  test('of a word takes accents, apostrophes and letters that nothing decomposes', () => {
    expect(fold('Crème Brûlée')).toBe('creme brulee');
    expect(fold('Gärtner’s Straße')).toBe("gartner's strasse");
    expect(fold('Smørrebrød')).toBe('smorrebrod');
  });
});
