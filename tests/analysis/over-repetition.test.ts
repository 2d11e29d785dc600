import { describe, expect, test } from 'vitest';
import type { OverRepetition } from '../../src/analysis/coverage/coverage.ts';
import { DENSE_STRETCH, overRepetitionsOf } from '../../src/analysis/coverage/over-repetition.ts';
import type { Passage } from '../../src/analysis/coverage/text/passage.ts';
import { sentenceText } from '../../src/analysis/coverage/text/sentence-text.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import { mentionsIn, passagesFrom, phraseFrom, type Run } from './passages-sample.ts';

const english = await languageFor('en');

const saidOf = (slug: string, texts: readonly string[], passages: readonly Passage[]) => ({
  slug,
  phrases: texts
    .map((text) => phraseFrom(english, text))
    .map((phrase) => ({ phrase, mentions: mentionsIn(passages, phrase) })),
});
const crowdedIn = (runs: readonly (Run | string)[], ...texts: string[]): readonly OverRepetition[] => {
  const passages = passagesFrom(english, runs);
  return overRepetitionsOf([saidOf('bird-feeder', texts, passages)], passages);
};

/** Sentences of ten words; `says` of them, spread evenly, name the feeder. */
const sentences = (count: number, says: number): string =>
  Array.from({ length: count }, (_, i) =>
    Math.floor(((i + 1) * says) / count) > Math.floor((i * says) / count)
      ? `Number ${i} of the bird feeder hangs by the window.`
      : `Number ${i} of the things here hangs by the window.`,
  ).join(' ');

describe('a phrase is crowded', () => {
  test('that is said eight times in a hundred words, even of its own section', () => {
    const [crowded, ...rest] = crowdedIn([{ text: sentences(10, 8), item: 'bird-feeder' }], 'bird feeder');
    expect(rest).toEqual([]);
    expect(crowded).toMatchObject({ item: 'bird-feeder', phrase: 'bird feeder', mentions: 8, rate: 8 });
    expect(crowded?.sentences).toHaveLength(8);
  });

  test('that is said so in one section of a long article, and only those sentences are named', () => {
    const [crowded] = crowdedIn(
      [
        `${sentences(40, 1)} ${sentences(40, 0)}`,
        { text: sentences(10, 8), item: 'bird-feeder' },
        { text: sentences(60, 1), item: 'nest-box' },
      ],
      'bird feeder',
    );
    expect(crowded?.mentions).toBe(10);
    expect(crowded?.sentences).toHaveLength(8);
    expect(new Set(crowded?.sentences.map(({ at }) => at.line))).toEqual(new Set([11]));
    expect(crowded?.dispersion).toBeGreaterThan(0.5);
  });

  test('that is said all over the text where other things should have the word', () => {
    const [crowded] = crowdedIn(
      [
        sentences(40, 10),
        { text: 'The nest box', form: 'heading', zone: 'heading' },
        { text: sentences(40, 10), item: 'nest-box' },
      ],
      'bird feeder',
    );
    expect(crowded).toMatchObject({ mentions: 20, rate: 2.5 });
    expect(crowded?.dispersion).toBeCloseTo(0, 10);
  });

  test('by the word that longer phrases share, which are not crowded each', () => {
    const text = Array.from(
      { length: 5 },
      (_, i) => `A red bird feeder ${i}, if you like. A blue bird feeder ${i}, if you do not.`,
    ).join(' ');
    const crowded = crowdedIn([text], 'red bird feeder', 'blue bird feeder', 'bird feeder');
    expect(crowded.map(({ phrase, mentions }) => [phrase, mentions])).toEqual([['bird feeder', 10]]);
  });

  test('once: not again for a shorter phrase inside it, nor for another item of the same name', () => {
    const passages = passagesFrom(english, [Array(9).fill('A red bird feeder hangs here.').join(' ')]);
    const crowded = overRepetitionsOf(
      [
        saidOf('feeder', ['bird feeder', 'red bird feeder', 'feeder'], passages),
        saidOf('wild-bird-seed', ['bird feeder'], passages),
      ],
      passages,
    );
    expect(crowded.map(({ item, phrase }) => [item, phrase])).toEqual([['feeder', 'red bird feeder']]);
  });
});

describe('a phrase is not crowded', () => {
  test('that is said ten times in the three hundred words of its own section', () => {
    expect(crowdedIn([{ text: sentences(30, 10), item: 'bird-feeder' }], 'bird feeder')).toEqual([]);
  });

  test('that is said once more than never, in a short text or an empty one', () => {
    expect(crowdedIn(['A bird feeder.'], 'bird feeder')).toEqual([]);
    expect(crowdedIn(['Bird feeder bird feeder.'], 'bird feeder')).toEqual([]);
    expect(crowdedIn([], 'bird feeder')).toEqual([]);
    expect(overRepetitionsOf([], [])).toEqual([]);
  });

  test('by what is in headings, captions, the summary and data', () => {
    const often = Array(DENSE_STRETCH + 2)
      .fill('A bird feeder.')
      .join(' ');
    const runs: readonly Run[] = [
      { text: often, form: 'heading', zone: 'heading' },
      { text: often, form: 'caption', zone: 'picture text' },
      { text: often, zone: 'summary' },
      { text: often, form: 'data', zone: 'structured data' },
    ];
    expect(crowdedIn([...runs, sentences(10, 1)], 'bird feeder')).toEqual([]);
  });

  test('by words that are only near to it', () => {
    const passages = passagesFrom(english, [sentences(10, 9)]);
    const [phrase] = saidOf('x', ['bird feeder'], passages).phrases;
    const loose = phrase?.mentions.map((mention) => ({ ...mention, grade: 'head only' as const })) ?? [];
    expect(loose).toHaveLength(9);
    const said = [{ slug: 'x', phrases: [{ phrase: phraseFrom(english, 'bird feeder'), mentions: loose }] }];
    expect(overRepetitionsOf(said, passages)).toEqual([]);
  });
});

describe('the sentences to thin out', () => {
  test('come densest first, of equals the shorter, each with its zone and its own text', () => {
    const [crowded] = crowdedIn(
      [
        'A feeder! “One feeder is a feeder,” said Bram. Then came a feeder for the tits. A feeder, a feeder and a feeder.',
      ],
      'feeder',
    );
    expect(crowded?.sentences).toEqual([
      {
        at: { file: 'cycle.md', line: 10, column: 83 },
        text: 'A feeder, a feeder and a feeder.',
        mentions: 3,
      },
      {
        at: { file: 'cycle.md', line: 10, column: 16 },
        text: '“One feeder is a feeder,” said Bram.',
        mentions: 2,
      },
      { at: { file: 'cycle.md', line: 10, column: 3 }, text: 'A feeder!', mentions: 1 },
      {
        at: { file: 'cycle.md', line: 10, column: 60 },
        text: 'Then came a feeder for the tits.',
        mentions: 1,
      },
    ]);
  });

  test('keep their stops where a script has no spaces', async () => {
    const japanese = await languageFor('ja');
    const [passage] = passagesFrom(japanese, ['水をやる。土を見る。']);
    expect([0, 1].map((number) => sentenceText(passage as Passage, number))).toEqual([
      '水をやる。',
      '土を見る。',
    ]);
  });
});
