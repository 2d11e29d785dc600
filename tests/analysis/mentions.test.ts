import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Mention } from '../../src/analysis/coverage/coverage.ts';
import type { Phrase } from '../../src/analysis/coverage/phrases/phrase.ts';
import { mentionsOf, withinLonger } from '../../src/analysis/coverage/standing/mentions.ts';
import { phraseIndexOf } from '../../src/analysis/coverage/standing/phrase-index.ts';
import type { Passage } from '../../src/analysis/coverage/text/passage.ts';
import { zonedWords } from '../../src/analysis/coverage/text/zoning.ts';
import { sentenceSpans } from '../../src/text/sentences.ts';
import { english } from './article.ts';

const passage = (text: string): Passage => ({
  form: 'paragraph',
  text,
  words: zonedWords(english, text, sentenceSpans(text, 'en'), { zone: 'body' }, () => ({
    line: 1,
    column: 1,
  })),
  file: 'cycle.md',
  written: true,
  running: true,
});

const phrase = (text: string, head?: number): Phrase => {
  const words = english.words(text);
  return {
    text,
    words,
    head: head ?? words.length - 1,
    origins: [{ from: 'kind' }],
    weight: 1,
  };
};

const found = (text: string, wanted: Phrase): readonly Mention[] =>
  mentionsOf([passage(text)], phraseIndexOf([{ slug: 'item', phrases: [wanted] }], true)).get(0) ?? [];

/** `grade: the words`, each mention. */
const said = (text: string, wanted: string, head?: number): readonly string[] => {
  const { words } = passage(text);
  return found(text, phrase(wanted, head)).map(
    ({ grade, from, to }) => `${grade}: ${text.slice(words[from]?.start, words[to]?.end)}`,
  );
};

describe('a phrase is met', () => {
  test.each([
    [
      'exactly, case and accents aside',
      'The Crème brûlée dish.',
      'creme brulee dish',
      ['exact: Crème brûlée dish'],
    ],
    [
      'exactly, with another apostrophe',
      'A gardener’s apron.',
      "gardener's apron",
      ['exact: gardener’s apron'],
    ],
    ['as one word', 'Mist the houseplant.', 'house plant', ['exact: houseplant']],
    ['with a hyphen', 'Mist the house-plant.', 'houseplant', ['exact: house-plant']],
    ['with a space', 'Mist a house plant.', 'house-plant', ['exact: house plant']],
    ['in the plural', 'Two watering cans.', 'watering can', ['inflected: watering cans']],
    ['in the singular', 'One copper plant label.', 'copper plant labels', ['inflected: copper plant label']],
    ['across spellings and in the plural', 'Our houseplants.', 'house plant', ['inflected: houseplants']],
    ['by stem', 'A pruned rose bed.', 'pruning rose', ['same stem: pruned rose']],
    ['scattered', 'The can is for watering the sill.', 'watering can', ['scattered: can is for watering']],
    ['by its head', 'Fill the can.', 'watering can', ['head only: can']],
    ['across a line break', 'A watering\ncan.', 'watering can', ['exact: watering\ncan']],
  ])('%s', (_, text, wanted, expected) => {
    expect(said(text, wanted)).toEqual(expected);
  });

  test.each([
    ['over the end of a sentence', 'I am watering. Can you?', 'watering can'],
    ['in a row over a comma', 'A seed, tray and pot.', 'seed tray', 'scattered'],
    ['as a verb', 'You can water it, and can wait.', 'watering can'],
    ['as a verb of instruction', 'Press the soil.', 'flower press'],
    ['by another thing of the same stem', 'The engineer came.', 'engine'],
    ['by a plant where a planter is meant', 'Each plant grows.', 'planter'],
    ['in part of a longer word', 'The scanner.', 'can'],
    [
      'too far apart',
      'The can stood on the sill by the door of the house all year for watering.',
      'watering can',
      'head only',
    ],
  ])('never %s', (_, text, wanted, rather?: string) => {
    const grades = found(text, phrase(wanted)).map(({ grade }) => grade);
    expect(grades).toEqual(rather ? [rather] : []);
  });

  test('by its head where the head is not the last word', () => {
    expect(said('Wear the gloves.', 'gloves for pruning roses', 0)).toEqual(['head only: gloves']);
  });

  test('once by each word: what is said exactly is not counted as scattered too', () => {
    expect(said('A seed tray beside a seed tray.', 'seed tray')).toEqual([
      'exact: seed tray',
      'exact: seed tray',
    ]);
  });
});

test('a word that stands before the head of another thing is not that thing', () => {
  const items = [
    { slug: 'tray', phrases: [phrase('seed tray')] },
    { slug: 'seeds', phrases: [phrase('vegetable seeds')] },
  ];
  const text = 'A seed tray, and seeds.';
  const seeds = mentionsOf([passage(text)], phraseIndexOf(items, true)).get(1);
  expect(seeds?.map(({ grade, from }) => [grade, passage(text).words[from]?.text])).toEqual([
    ['head only', 'seeds'],
  ]);
});

test('a phrase within a longer one counts for both, and says so', () => {
  const text = 'An enamel watering can.';
  const all = [phrase('enamel watering can'), phrase('watering can')].map((one) => ({
    phrase: one,
    mentions: found(text, one),
  }));
  const [longer, shorter] = withinLonger(all);
  expect(longer?.[0]).toMatchObject({ grade: 'exact' });
  expect(longer?.[0]?.within).toBeUndefined();
  expect(shorter?.[0]).toMatchObject({ grade: 'exact', within: 'enamel watering can' });
});

describe('for any text', () => {
  const text = fc.string({
    unit: fc.constantFrom(...'watering can cans seed tray é. ,-\n'.split('')),
    maxLength: 120,
  });

  test('the same mentions are found in every Unicode normal form', () => {
    fc.assert(
      fc.property(text, (some) => {
        const grades = (form: 'NFC' | 'NFD'): readonly string[] =>
          found(some.normalize(form), phrase('watering can')).map(({ grade, from }) => `${grade} ${from}`);
        expect(grades('NFD')).toEqual(grades('NFC'));
      }),
    );
  });

  test('mentions lie in the text, in order', () => {
    fc.assert(
      fc.property(text, (some) => {
        const { words } = passage(some);
        const mentions = found(some, phrase('seed tray'));
        for (const { from, to } of mentions) {
          expect(from).toBeLessThanOrEqual(to);
          expect(to).toBeLessThan(words.length);
        }
        expect([...mentions].sort((a, b) => a.from - b.from)).toEqual(mentions);
      }),
    );
  });
});
