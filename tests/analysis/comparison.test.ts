import { describe, expect, test } from 'vitest';
import type { Article } from '../../src/analysis/coverage/rivals/article.ts';
import { type ArticleIndex, indexArticle } from '../../src/analysis/coverage/rivals/article-index.ts';
import { type Comparison, comparisonOf } from '../../src/analysis/coverage/rivals/comparison.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import { seeded } from '../support/seeded.ts';
import { articleFrom, type Run } from './passages-sample.ts';

const english = await languageFor('en');

/** Words that no article has at first. */
const NEW = ['fern pot', 'moss pot', 'palm pot', 'ivy pot', 'plantpot', 'seedtray'];
const WORDS =
  'sage green enamel watering can seed tray house plant houseplant pot potting bench linen twine tin lid mug trug the a of with and on sill window week drink'.split(
    ' ',
  );
const PHRASES = [
  'watering can',
  'seed tray',
  'houseplant',
  'house plant pot',
  'linen twine',
  'tin lid',
  'fern pot',
  'moss pot',
  'palm pot',
  'ivy pot',
];

/** An archive that somebody writes in: articles as lists of paragraphs. */
const writer = (seed: number) => {
  const { below, one: pick } = seeded(seed);
  const sentence = (): string => Array.from({ length: 22 + below(20) }, () => pick(WORDS)).join(' ');
  const texts = new Map<string, readonly string[]>();
  const month = (): string => `2026-${String(1 + below(12)).padStart(2, '0')}`;
  const paragraphs = (id: string): string[] => [...(texts.get(id) ?? [])];
  const someText = (): string => pick([...texts.values()].flat().concat(sentence()));
  const change = (): void => {
    const id = pick([...texts.keys()]);
    const own = paragraphs(id);
    const at = below(own.length);
    switch (below(6)) {
      case 0:
        own[at] = `${own[at]} ${pick(below(2) === 0 ? NEW : WORDS)}`;
        break;
      case 1:
        // What another article says already, or nearly.
        own[at] = `${someText()} ${pick(WORDS)}`;
        break;
      case 2:
        own.splice(at, 0, sentence());
        break;
      case 3:
        if (own.length > 1) own.splice(at, 1);
        break;
      case 4:
        texts.set(month(), [sentence(), someText()]);
        return;
      default:
        if (texts.size > 3) texts.delete(id);
        return;
    }
    texts.set(id, own);
  };
  for (let i = 0; i < 6; i += 1) texts.set(month(), [sentence(), sentence(), someText()]);
  const articleOf = (id: string): Article => {
    const [title = '', ...rest] = paragraphs(id);
    const head: Run = { text: title.split(' ').slice(0, 5).join(' '), form: 'title', zone: 'title' };
    return articleFrom(english, id, [head, title, ...rest]);
  };
  return {
    change,
    ids: () => [...texts.keys()].sort(),
    articleOf,
    textOf: (id: string) => paragraphs(id).join('\n'),
  };
};

describe('a comparison that goes on from the one before', () => {
  test('says what one from nothing says, after each of 400 changes', () => {
    let found = { rivals: 0, shared: 0, changes: 0 };
    for (let seed = 1; seed <= 10; seed += 1) {
      const { change, ids, articleOf, textOf } = writer(seed);
      const indexes = new Map<string, { readonly text: string; readonly index: ArticleIndex }>();
      const owns = new Map(
        Array.from({ length: 12 }, (_, i) => {
          const cycle = `2026-${String(i + 1).padStart(2, '0')}`;
          const phrases = PHRASES.slice(i % 3).map((text) => ({ text, head: text.split(' ').length - 1 }));
          return [cycle, { cycle, items: [{ slug: 'one', phrases }] }] as const;
        }),
      );
      let before: Comparison | undefined;
      for (let edit = 0; edit < 40; edit += 1) {
        change();
        const now = ids().map((id) => {
          const text = textOf(id);
          const known = indexes.get(id);
          // An article that did not change is the same object, as in a folder that is held open.
          const index = known?.text === text ? known.index : indexArticle(articleOf(id));
          indexes.set(id, { text, index });
          return index;
        });
        const continued = comparisonOf(now, english, new Set([now.at(-1)?.cycle ?? '']), before);
        const fresh = comparisonOf(now, english);
        for (const { cycle } of now) {
          const own = owns.get(cycle);
          if (!own) throw new Error(`Expected phrases of ${cycle}`);
          const [rivals, shared] = [fresh.rivalsOf(own), fresh.sharedOf(cycle)];
          expect(continued.rivalsOf(own)).toEqual(rivals);
          expect(continued.sharedOf(cycle)).toEqual(shared);
          found = { ...found, rivals: found.rivals + rivals.length, shared: found.shared + shared.length };
        }
        before = continued;
        found.changes += 1;
      }
    }
    expect(found.changes).toBe(400);
    expect(found.rivals).toBeGreaterThan(400);
    expect(found.shared).toBeGreaterThan(400);
  });
});
