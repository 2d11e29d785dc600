import { describe, expect, test } from 'vitest';
import { capitalised, typeset } from '../../src/render/typeset.ts';

describe('typesetting', () => {
  test.each([
    ['en-GB', `It's "the 'best' tin" -- so far...`, 'It’s “the ‘best’ tin” – so far…'],
    ['en-GB', `the growers' tin, '90s and 'tis`, 'the growers’ tin, ’90s and ’tis'],
    ['en-GB', `a 12" pot - or 3' of twine`, 'a 12″ pot – or 3′ of twine'],
    ['en-GB', `one---two`, 'one—two'],
    ['de', `Er sagte "das ist 'gut' so"`, 'Er sagte „das ist ‚gut‘ so“'],
    ['fr', `L'herbe "verte" ?`, 'L’herbe «\u202fverte\u202f»\u202f?'],
    ['sv', `it's "so" -- yes`, 'it’s "so" – yes'],
  ])('in %s %s becomes %s', (lang, plain, set) => {
    expect(typeset(plain, lang)).toBe(set);
  });
  test('never touches an address', () => {
    const address = "https://example.org/a--b...c'd";
    expect(typeset(`see ${address} -- "now"`, 'en')).toBe(`see ${address} – “now”`);
    expect(typeset("o'neil--x@example.org", 'en')).toContain('neil--x@example.org');
  });
  test('is settled: what is set stays as it is when set again', () => {
    const once = typeset(`It's "the 'best' tin" -- so far...`, 'en');
    expect(typeset(once, 'en')).toBe(once);
  });
});

test('a first letter becomes a capital of its language, whole characters alone', () => {
  expect(capitalised('hand tool', 'en')).toBe('Hand tool');
  expect(capitalised('ipek', 'tr')).toBe('İpek');
  expect(capitalised('', 'en')).toBe('');
  expect(capitalised('𐐨x', 'en')).toBe('𐐀x');
});
