import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { typeset, typesetRuns } from '../../src/render/typeset.ts';
import { capitalised } from '../../src/text/capitalised.ts';

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
  test('breaks runs where it will: cut anywhere, a paragraph is set as it is whole', () => {
    const sign = fc.constantFrom('"', "'", 'a', 'b', ' ', ',', '7', '(');
    const text = fc.array(sign, { maxLength: 14 }).map((signs) => signs.join(''));
    fc.assert(
      fc.property(fc.array(text, { maxLength: 6 }), fc.constantFrom('en', 'de', 'sv'), (texts, lang) => {
        const runs = typesetRuns(
          texts.map((one) => ({ text: one, asIs: false })),
          lang,
        );
        // Of the next run one sign is looked at, and a clipped year has two.
        fc.pre(!/'\d\d/.test(texts.join('')));
        expect(runs).toHaveLength(texts.length);
        expect(runs.join('')).toBe(typeset(texts.join(''), lang));
      }),
    );
  });
  test('looks at what stands as it is, and leaves it', () => {
    const runs = [
      { text: 'say "', asIs: false },
      { text: 'a"b', asIs: true },
      { text: '', asIs: false },
      { text: '"', asIs: false },
    ];
    expect(typesetRuns(runs, 'en')).toEqual(['say “', 'a"b', '', '”']);
  });
  test('of many runs takes no longer for each than of few', () => {
    const runs = Array.from({ length: 40_000 }, () => ({ text: 'a "b" c', asIs: false }));
    const began = performance.now();
    typesetRuns(runs, 'en');
    // Looking at every run before and after each took minutes; this takes a twentieth of a second.
    expect(performance.now() - began).toBeLessThan(5000);
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
