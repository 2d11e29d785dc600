import { dictionary } from 'cmu-pronouncing-dictionary';
import { describe, expect, test } from 'vitest';
import {
  fleschEase,
  kincaidGrade,
  readingOf,
  syllableCounter,
  WORDS_A_MINUTE,
} from '../../src/analysis/coverage/reading.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import { passagesFrom } from './passages-sample.ts';

const english = await languageFor('en');

describe('Flesch (1948) and Kincaid (1975)', () => {
  // Worked values of sentences, words and syllables; the first is "The cat sat on the mat."
  test.each([
    [1, 6, 6, 116.145, -1.45],
    [1, 13, 24, 37.4554, 11.2646],
    [1, 16, 24, 63.695, 8.35],
  ])(
    'of %d sentence, %d words, %d syllables: ease %d, grade %d',
    (sentences, words, syllables, ease, grade) => {
      expect(fleschEase({ sentences, words, syllables })).toBeCloseTo(ease, 4);
      expect(kincaidGrade({ sentences, words, syllables })).toBeCloseTo(grade, 4);
    },
  );

  test('of "The cat sat on the mat." read as text', async () => {
    const reading = await readingOf(passagesFrom(english, ['The cat sat on the mat.']), english);
    expect(reading).toMatchObject({ words: 6, sentences: 1 });
    expect(reading.ease).toBeCloseTo(116.145, 10);
    expect(reading.grade).toBeCloseTo(-1.45, 10);
  });
});

test('syllables are those of the CMU Pronouncing Dictionary for at least 91.4 % of its words', async () => {
  // Every thirtieth word; a vowel is a sound with a stress number. Measured over all: 92.4 % (CHECKS.md).
  const syllablesIn = await syllableCounter();
  const sample = Object.entries(dictionary)
    .filter(([word]) => /^[a-z]+$/.test(word))
    .filter((_, i) => i % 30 === 0);
  const right = sample.filter(
    ([word, sounds]) => syllablesIn(word) === (sounds.match(/[0-2]/g) ?? []).length,
  );
  expect(sample.length).toBeGreaterThan(3000);
  expect(right.length / sample.length).toBeGreaterThanOrEqual(0.914);
});

describe('the article as reading', () => {
  test('counts the paragraphs, not the headings, captions, data and the summary', async () => {
    const passages = passagesFrom(english, [
      { text: 'A seed tin', form: 'heading', zone: 'heading' },
      { text: 'What is in the box.', zone: 'summary' },
      'It has a lid. It shuts.',
      { text: 'The lid, shut', form: 'caption', zone: 'picture text' },
      { text: 'tin', form: 'data', zone: 'structured data' },
    ]);
    expect(await readingOf(passages, english)).toMatchObject({
      words: 6,
      sentences: 2,
      minutes: 6 / WORDS_A_MINUTE,
    });
  });

  test('counts sentences passage by passage', async () => {
    const reading = await readingOf(passagesFrom(english, ['One. Two.', 'Three. Four. Five']), english);
    expect(reading.sentences).toBe(5);
  });

  test('takes a number for one syllable, not for none', async () => {
    const reading = await readingOf(passagesFrom(english, ['30 12']), english);
    expect(reading.ease).toBeCloseTo(206.835 - 1.015 * 2 - 84.6, 10);
  });

  test('gives no ease of another language', async () => {
    const german = await languageFor('de');
    const reading = await readingOf(passagesFrom(german, ['Die Gießkanne ist blau.']), german);
    expect(reading).toEqual({ words: 4, sentences: 1, minutes: 4 / WORDS_A_MINUTE });
    const japanese = await languageFor('ja');
    const other = await readingOf(passagesFrom(japanese, ['水をやる。土を見る。']), japanese);
    expect(other.sentences).toBe(2);
    expect(other.ease).toBeUndefined();
  });

  test('gives no ease of nothing, and a number for one word', async () => {
    expect(await readingOf([], english)).toEqual({ words: 0, sentences: 0, minutes: 0 });
    expect(await readingOf(passagesFrom(english, ['…']), english)).toEqual({
      words: 0,
      sentences: 0,
      minutes: 0,
    });
    expect((await readingOf(passagesFrom(english, ['Seeds']), english)).ease).toBeTypeOf('number');
  });
});
