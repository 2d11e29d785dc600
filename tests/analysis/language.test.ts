import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';

const english = await languageFor('en-GB');
const breaks = new Intl.Segmenter('en-GB', { granularity: 'word' });

/** Words as UAX #29 has them, by the runtime. */
const segmented = (text: string): readonly string[] =>
  [...breaks.segment(text)]
    .filter(({ isWordLike }) => isWordLike)
    .map(({ segment, index }) => `${index} ${segment}`);

const split = (text: string): readonly string[] =>
  english.words(text).map(({ text: word, start }) => `${start} ${word}`);

describe('the words of a text are those of UAX #29', () => {
  test.each([
    'Of the four copper plant labels, one is right.',
    'It’s the gardener\'s: "Mrs Ludd", e.g. a.m., half-apron … café, naïve; Zoë–Ida—so?',
    '‘Quoted’ words, ’tis and rock ’n’ roll',
    'No.  Two.No 3.5 cm, 30×12; a_b, A.B. x:y ½ in',
  ])('%s', (text) => {
    expect(split(text)).toEqual(segmented(text));
  });

  test('whatever signs it is made of', () => {
    const signs = [...'abcAZéßÿ×÷', ...' .,:;\'’‘“”"!?()–—…-', '1', '_', '冬', '\u0301', '\u00ad'];
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...signs, 'clay pot ', ' 1.2 ', '\n'), maxLength: 40 }),
        (text) => {
          expect(split(text)).toEqual(segmented(text));
        },
      ),
      { numRuns: 2000 },
    );
  });
});

test('a narrow no-break space parts words as any other space does', () => {
  expect(split('300\u202fml of tea')).toEqual(['0 300', '4 ml', '7 of', '10 tea']);
});

test('offsets are those of the text, whatever stands before a word', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (text) => {
      for (const { text: word, start, end } of english.words(text)) expect(text.slice(start, end)).toBe(word);
    }),
  );
});

describe('forms', () => {
  test.each([
    ['Gardener’s', 'gardener', 'gardener'],
    ['CAFÉS', 'cafes', 'cafe'],
    ['Gießkanne', 'giesskanne', 'giesskanne'],
    ['knives', 'knives', 'knife'],
  ])('of %s are %s and %s', (word, folded, key) => {
    expect(english.word(word)).toMatchObject({ folded, key });
  });

  test('in another language one key serves for number and stem', async () => {
    const german = await languageFor('de');
    expect(german.word('Handschuhe').key).toBe(german.word('Handschuh').key);
    expect(german.english).toBe(false);
  });

  test('without a stemmer words are compared as they are written', async () => {
    const finnish = await languageFor('fi');
    expect(finnish.stems).toBe(false);
    expect(finnish.word('Kannut')).toMatchObject({ key: 'kannut', stem: 'kannut' });
  });
});
