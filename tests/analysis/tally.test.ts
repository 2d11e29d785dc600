import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Phrase } from '../../src/analysis/coverage/phrases/phrase.ts';
import { type TalliedItem, talliedAgain, tallyOf } from '../../src/analysis/coverage/standing/tally.ts';
import type { Passage } from '../../src/analysis/coverage/text/passage.ts';
import type { Zone } from '../../src/analysis/coverage/text/zones.ts';
import { zonedWords } from '../../src/analysis/coverage/text/zoning.ts';
import { sentenceSpans } from '../../src/text/sentences.ts';
import { english } from './article.ts';

const passage = (text: string, zone: Zone = 'body'): Passage => ({
  form: 'paragraph',
  text,
  words: zonedWords(english, text, sentenceSpans(text, 'en'), { zone }, () => ({ line: 1, column: 1 })),
  file: 'cycle.md',
  written: true,
});

const phrase = (text: string, weight: number): Phrase => {
  const words = english.words(text);
  return { text, words, head: words.length - 1, origins: [{ from: 'kind' }], weight };
};

const ITEMS: readonly TalliedItem[] = [
  {
    slug: 'tray',
    hasPicture: true,
    name: 'seed tray',
    kind: 'seed tray',
    capitals: new Map(),
    phrases: [phrase('seed tray', 4), phrase('wooden seed tray', 3)],
  },
  {
    slug: 'can',
    hasPicture: false,
    name: 'watering can',
    kind: 'watering can',
    capitals: new Map(),
    phrases: [phrase('watering can', 4), phrase('enamel can', 1)],
  },
  {
    slug: 'seeds',
    hasPicture: true,
    name: 'vegetable seeds',
    kind: 'vegetable seeds',
    capitals: new Map(),
    phrases: [phrase('vegetable seeds', 4)],
  },
];

const word = fc.constantFrom(
  ...'a the wooden seed seeds tray trays watering can enamel vegetable . ,'.split(' '),
);
const sentence = fc.array(word, { minLength: 1, maxLength: 14 }).map((words) => words.join(' '));
const zone = fc.constantFrom<Zone>('title', 'summary', 'heading', 'body', 'picture text');
const article = fc.array(fc.tuple(sentence, zone), { minLength: 1, maxLength: 6 });

const passagesOf = (parts: readonly (readonly [string, Zone])[]): readonly Passage[] =>
  parts.map(([text, where]) => passage(text, where));

const standings = (parts: readonly (readonly [string, Zone])[], items = ITEMS): Record<string, number> =>
  Object.fromEntries(tallyOf(passagesOf(parts), items, true).standings);

describe('every item’s standing', () => {
  test('lies between 0 and 1, whatever the text', () => {
    fc.assert(
      fc.property(article, (parts) => {
        for (const standing of Object.values(standings(parts))) {
          expect(standing).toBeGreaterThanOrEqual(0);
          expect(standing).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  test('is the same in whatever order the items are told', () => {
    fc.assert(
      fc.property(article, (parts) => {
        expect(standings(parts, [...ITEMS].reverse())).toEqual(standings(parts));
      }),
    );
  });

  test('is the same in every Unicode normal form and with other line breaks', () => {
    fc.assert(
      fc.property(article, (parts) => {
        const other = parts.map(
          ([text, where]) => [text.normalize('NFD').replaceAll(' ', '  '), where] as const,
        );
        expect(standings(other)).toEqual(standings(parts));
      }),
    );
  });

  test('is never lowered by one passage more', () => {
    fc.assert(
      fc.property(article, sentence, zone, (parts, text, where) => {
        const before = standings(parts);
        const after = standings([...parts, [text, where]]);
        for (const [slug, standing] of Object.entries(before))
          expect(after[slug]).toBeGreaterThanOrEqual(standing - 1e-12);
      }),
    );
  });
});

test('counting a changed passage again gives what counting everything gives', () => {
  fc.assert(
    fc.property(article, fc.nat(5), sentence, (parts, at, text) => {
      const before = passagesOf(parts);
      const changed = at % before.length;
      const after = before.map((one, i) => (i === changed ? passage(text, parts[i]?.[1]) : one));
      const again = talliedAgain(tallyOf(before, ITEMS, true), before, after);
      const anew = tallyOf(after, ITEMS, true);
      expect([...again.standings]).toEqual([...anew.standings]);
      expect(again.entries.map(({ mentions }) => mentions)).toEqual(
        anew.entries.map(({ mentions }) => mentions),
      );
    }),
  );
});
