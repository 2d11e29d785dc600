import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Rival } from '../../src/analysis/coverage/coverage.ts';
import { archiveOf } from '../../src/analysis/coverage/rivals/archive.ts';
import type { Article } from '../../src/analysis/coverage/rivals/article.ts';
import { indexArticle } from '../../src/analysis/coverage/rivals/article-index.ts';
import { rivalFor, termedIn } from '../../src/analysis/coverage/rivals/rivals.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import { coverage } from '../../src/wording/en/coverage.ts';
import { articleFrom, phraseFrom, type Run } from './passages-sample.ts';

const english = await languageFor('en');
const japanese = await languageFor('ja');
const article = (cycle: string, runs: readonly (Run | string)[], linksTo: readonly string[] = []): Article =>
  articleFrom(english, cycle, runs, linksTo);
const rivalIn = (
  phrase: ReturnType<typeof phraseFrom>,
  cycle: string,
  articles: readonly Article[],
): Rival | undefined => {
  const archive = archiveOf(articles.map(indexArticle));
  return rivalFor(termedIn(phrase, archive), cycle, archive);
};
const rivalOf = (text: string, cycle: string, articles: readonly Article[]): Rival | undefined =>
  rivalIn(phraseFrom(english, text), cycle, articles);

const title = (text: string): Run => ({ text, form: 'title', zone: 'title' });
const heading = (text: string): Run => ({ text, form: 'heading', zone: 'heading' });
const filler = 'The kettle was on before the rain began, and nobody said much until the second cup was out.';

const strong = (cycle: string, linksTo: readonly string[] = []): Article =>
  article(
    cycle,
    [
      title('A sage watering can and a rain gauge'),
      heading('The watering can'),
      'A watering can should pour slowly. This watering can holds two litres, and the watering can is green.',
      filler,
    ],
    linksTo,
  );
const weak = (cycle: string, linksTo: readonly string[] = []): Article =>
  article(
    cycle,
    [
      title('Mugs for cold mornings'),
      filler,
      'Beside it stands a watering can that is not ours.',
      filler,
      'The end.',
    ],
    linksTo,
  );

const whyOf = (rival: Rival | undefined): string => (rival ? coverage.rivalReason(rival.reason) : '');

describe('a page that says a phrase in better places and more often', () => {
  test('is the rival of one that says it in passing, with both scores, the rank and the reason', () => {
    const rival = rivalOf('watering can', '2025-08', [strong('2025-06'), weak('2025-08')]);
    expect(rival).toMatchObject({ cycle: '2025-06', title: 'The article of 2025-06', rank: 2 });
    expect(rival?.score).toBeGreaterThan(rival?.own ?? Number.POSITIVE_INFINITY);
    expect(whyOf(rival)).toBe('Its title and a heading say it, and its text says it 3 times, this one once.');
  });

  test('has no rival itself', () => {
    expect(rivalOf('watering can', '2025-06', [strong('2025-06'), weak('2025-08')])).toBeUndefined();
  });

  test('is the rival of one that never says it, with a score of 0 here and the last rank', () => {
    const silent = article('2025-09', [filler]);
    const rival = rivalOf('watering can', '2025-09', [strong('2025-06'), weak('2025-08'), silent]);
    expect(rival).toMatchObject({ cycle: '2025-06', own: 0, rank: 3 });
    expect(whyOf(rival)).toContain('this one never');
  });

  test('is the same rival in whatever order the articles come, and whatever the plural', () => {
    const articles = [strong('2025-06'), weak('2025-08'), article('2025-09', [filler])];
    fc.assert(
      fc.property(fc.shuffledSubarray(articles, { minLength: 3 }), (shuffled) => {
        const expected = rivalOf('watering can', '2025-08', articles);
        expect(rivalOf('watering can', '2025-08', shuffled)).toEqual(expected);
        expect({ ...rivalOf('Watering cans', '2025-08', shuffled), link: expected?.link }).toEqual(expected);
      }),
    );
  });

  test('is found in a language without spaces', () => {
    const one = articleFrom(japanese, '2025-06', [
      { text: '如雨露と鉢', zone: 'title' },
      '如雨露で水をやる。',
    ]);
    const two = articleFrom(japanese, '2025-08', ['窓辺の鉢に、如雨露で水をやる。土を見る。']);
    const phrase = phraseFrom(japanese, '如雨露');
    expect(rivalIn(phrase, '2025-08', [one, two])?.cycle).toBe('2025-06');
  });

  test.each([
    ['house plant', 'houseplant'],
    ['house-plant', 'houseplants'],
    ['houseplant', 'house plant'],
    ['Houseplants', 'house-plant'],
    ['house plant pot', 'houseplant pots'],
    ['houseplant pot', 'house-plant pot'],
  ])('is found for %j though it writes %j', (phrase, written) => {
    const rival = rivalOf(phrase, '2025-08', [
      article('2025-06', [title(`The ${written} this month`), `Each ${written}, and then the ${written}.`]),
      article('2025-08', [filler, `It is beside one ${phrase} of ours that stands there.`, filler, filler]),
    ]);
    expect(whyOf(rival)).toBe('Its title says it, and its text says it twice, this one once.');
    expect(rival?.link).toMatchObject({ from: '2025-06', anchor: written, at: { line: 11, column: 6 } });
  });

  test('says so by what it does say, where it never says the whole phrase', () => {
    const own = article('2025-08', [filler, filler, filler, 'One sage thing, one watering of one can.']);
    const rival = rivalOf('sage watering can', '2025-08', [
      article('2025-06', [title('A watering can'), 'A watering can, in sage. A watering can.']),
      own,
    ]);
    expect(whyOf(rival)).toBe('Its title says “watering can”, and its text says it twice, this one never.');
    expect(rival?.link.anchor).toBe('watering can');
  });
});

describe('there is no rival', () => {
  test('where two pages are alike, or a page is but a hair ahead', () => {
    expect(rivalOf('watering can', '2025-08', [strong('2025-06'), strong('2025-08')])).toBeUndefined();
    const hair = article('2025-06', [...strong('x').passages.map(({ text }) => text), 'A can.']);
    const same = article('2025-08', [...strong('x').passages.map(({ text }) => text), 'A tap.']);
    expect(rivalOf('watering can', '2025-08', [hair, same])).toBeUndefined();
  });

  test('where a page has the words, but never side by side', () => {
    const scattered = article('2025-06', [
      title('Watering the tomatoes, and a can of oil'),
      heading('Watering'),
      'You can do the watering. Watering, can you believe it, can wait. The can, the can.',
    ]);
    expect(rivalOf('watering can', '2025-08', [scattered, weak('2025-08')])).toBeUndefined();
  });

  test('where a stop stands between the words', () => {
    const parted = article('2025-06', [
      title('Watering. Can anybody?'),
      'Watering. Can, can, can. Watering.',
    ]);
    expect(rivalOf('watering can', '2025-08', [parted, weak('2025-08')])).toBeUndefined();
  });

  test('for words that most articles have', () => {
    const all = ['01', '02', '03', '04', '05'].map((month) => weak(`2025-${month}`));
    expect(rivalOf('watering can', '2025-03', [...all, strong('2025-06')])).toBeUndefined();
  });

  test('for a phrase that nobody says, an article without words, one of one word, and one alone', () => {
    expect(rivalOf('hori hori', '2025-08', [strong('2025-06'), weak('2025-08')])).toBeUndefined();
    expect(rivalOf('tin', '2025-08', [article('2025-08', []), article('2025-09', [])])).toBeUndefined();
    expect(rivalOf('tin', '2025-08', [article('2025-08', ['Tin'])])).toBeUndefined();
    expect(rivalOf('', '2025-08', [weak('2025-08'), strong('2025-06')])).toBeUndefined();
  });
});

describe('the link to write', () => {
  const linkOf = (articles: readonly Article[]): Rival['link'] | undefined =>
    rivalOf('watering can', '2025-08', articles)?.link;

  test('leads from the page that answers first to this one, at its first mention in prose', () => {
    expect(linkOf([strong('2025-06'), weak('2025-08')])).toEqual({
      from: '2025-06',
      to: '2025-08',
      anchor: 'watering can',
      at: { file: '2025-06.md', line: 12, column: 3 },
    });
  });

  test('leads to the other page where that packed such a thing later', () => {
    expect(linkOf([strong('2025-10'), weak('2025-08')])).toEqual({
      from: '2025-08',
      to: '2025-10',
      anchor: 'watering can',
      at: { file: '2025-08.md', line: 12, column: 20 },
    });
  });

  test('leads to this page where the other, though newer, only speaks of such a thing', () => {
    const talks = article('2025-10', ['A watering can, a watering can and a watering can.']);
    expect(linkOf([talks, weak('2025-08')])).toMatchObject({ from: '2025-10', to: '2025-08' });
  });

  test('turns round where the one page links to the other already', () => {
    expect(linkOf([strong('2025-06', ['2025-08']), weak('2025-08')])).toMatchObject({
      from: '2025-08',
      to: '2025-06',
      at: { file: '2025-08.md', line: 12, column: 20 },
    });
  });

  test('passes over a mention that is a link, is no prose, or stands in a record', () => {
    const linked = article('2025-06', [
      title('A watering can'),
      { text: 'A watering can for you.', link: 'watering can' },
      { text: 'A watering can on a sill', form: 'caption', zone: 'picture text' },
      { text: 'A watering can, as the record has it.', written: false },
      { text: 'A watering can that goes with the rest.', field: 'goesWith' },
      'At last a watering-can.',
    ]);
    expect(linkOf([linked, weak('2025-08')])).toMatchObject({
      from: '2025-06',
      anchor: 'watering-can',
      at: { line: 15, column: 11 },
    });
  });

  test('is to be added to a paragraph where no page has the words in prose', () => {
    const named = article('2025-06', [title('A watering can'), heading('Watering can'), filler]);
    const silent = article('2025-08', [filler]);
    expect(linkOf([named, silent])).toEqual({
      from: '2025-06',
      to: '2025-08',
      anchor: 'watering can',
      at: { file: '2025-06.md', line: 12, column: 1 },
    });
  });
});

test('an article that is not in the archive, or is there twice, is our own mistake', () => {
  expect(() => rivalOf('tin', '2025-08', [])).toThrow('`2025-08`');
  expect(() => rivalOf('tin', '2025-08', [weak('2025-08'), weak('2025-08')])).toThrow('one article a cycle');
});

test('of two pages that answer equally well the older is the rival', () => {
  const articles = [strong('2025-07'), strong('2025-06'), weak('2025-08')];
  expect(rivalOf('watering can', '2025-08', articles)).toMatchObject({ cycle: '2025-06', rank: 3 });
});

test('scores have the two decimals that are shown', () => {
  const rival = rivalOf('watering can', '2025-08', [strong('2025-06'), weak('2025-08')]);
  for (const score of [rival?.score, rival?.own]) expect(score).toBe(Number(score?.toFixed(2)));
});
