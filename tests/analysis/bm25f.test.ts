import fc from 'fast-check';
import MiniSearch from 'minisearch';
import { describe, expect, test } from 'vitest';
import { type RankParameters, scorerOf } from '../../src/analysis/coverage/rivals/bm25f.ts';

/** A document as its terms by field, in any order within a field. */
interface FieldedDocument<Field extends string> {
  readonly id: string;
  readonly fields: Readonly<Record<Field, readonly string[]>>;
}

/** A scorer over documents of words, by their names: all that hold a word of a query, the best first. */
const rankerOf = <Field extends string>(
  documents: readonly FieldedDocument<Field>[],
  parameters: RankParameters<Field>,
) => {
  const fields = Object.keys(parameters.fields) as Field[];
  const words = [...new Set(documents.flatMap((one) => fields.flatMap((field) => one.fields[field])))];
  const countsIn = (term: number, number: number): number[] =>
    fields.map(
      (field) => documents[number]?.fields[field].filter((word) => word === words[term]).length ?? 0,
    );
  const scorer = scorerOf(
    {
      lengths: documents.map((one) => fields.map((field) => one.fields[field].length)),
      holders: (term) => [...documents.keys()].filter((number) => countsIn(term, number).some((n) => n > 0)),
      occurrences: countsIn,
    },
    parameters,
  );
  const termsOf = (query: readonly string[]): readonly number[] => query.map((word) => words.indexOf(word));
  return {
    holders: (word: string) => scorer.holders(words.indexOf(word)),
    rank: (query: readonly string[]) =>
      documents
        .map(({ id }, number) => ({ id, score: scorer.score(termsOf(query), number) }))
        .filter(({ score }) => score > 0)
        .sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1)),
    explain: (query: readonly string[], id: string) =>
      scorer.explain(
        termsOf(query),
        documents.findIndex((one) => one.id === id),
      ),
  };
};

const oneField: RankParameters<'text'> = { k1: 1.2, fields: { text: { weight: 1, b: 0.75 } } };
const document = (id: string, text: string): FieldedDocument<'text'> => ({
  id,
  fields: { text: text.split(' ').filter((word) => word !== '') },
});
const scoreOf = (ranked: readonly { id: string; score: number }[], id: string): number =>
  ranked.find((one) => one.id === id)?.score ?? 0;

describe('with one field it is BM25', () => {
  test.each([
    // N 5, n 1, one occurrence in a field of 3 words, mean 5.4, k1 1.2, b 0.75. The score there has the factor
    // k1 + 1 ("boost 2.2"), which Robertson and Zaragoza leave out of BM25F since it changes no order.
    ['Elasticsearch 7.1 reference, Explain API: 1.6943597', 3, 1.6943597, [6, 6, 6, 6]],
    // The same page of version 5: field of 4 words; tfNorm 1.1186441 × idf 1.3862944.
    ['Elasticsearch 5 reference, Explain API: 1.55077', 4, 1.55077, [6, 6, 6, 5]],
  ])('the worked example of the %s', (_, length, published, others) => {
    const filler = (count: number): string => Array(count).fill('filler').join(' ');
    const ranker = rankerOf(
      [
        document('0', `elasticsearch ${filler(length - 1)}`),
        ...others.map((count, i) => document(String(i + 1), filler(count))),
      ],
      oneField,
    );
    expect(scoreOf(ranker.rank(['elasticsearch']), '0') * 2.2).toBeCloseTo(published, 5);
  });

  test('the saturation in Croft, Metzler and Strohman, "Search Engines", 7.2.2 ("president lincoln")', () => {
    // k1 1.2, b 0.75, a document of 0.9 of the mean length: K 1.11; 25 occurrences give 2.2 × 25 / (1.11 + 25),
    // 1 gives 2.2 / (1.11 + 1): from memory of the book's table, scores 20.66 and 12.74 with 15 "president",
    // rarities 2.44 and 7.42, of which the difference is 7.42 × (2.106 - 1.043).
    const filler = (count: number): string => Array(count).fill('x').join(' ');
    const many = `${Array(25).fill('lincoln').join(' ')} ${filler(65)}`;
    const once = `lincoln ${filler(89)}`;
    // Two of 90 words and two of 110: the mean is 100.
    const ranker = rankerOf(
      [
        document('many', many),
        document('once', once),
        document('a', filler(110)),
        document('b', filler(110)),
      ],
      oneField,
    );
    const ranked = ranker.rank(['lincoln']);
    const rarity = Math.log(1 + 2.5 / 2.5);
    const difference = ((scoreOf(ranked, 'many') - scoreOf(ranked, 'once')) / rarity) * 2.2;
    expect(difference * 7.42).toBeCloseTo(20.66 - 12.74, 1);
  });

  test('the order of MiniSearch, an independent library, once its departures are undone', () => {
    // It counts a field's length in different words, so length is left out here (b 0) and counted in the next
    // test; it adds `d` to every frequency and multiplies by the number of terms asked for.
    const words = (from: number, count: number) => Array.from({ length: count }, (_, i) => `w${from + i}`);
    const texts = Array.from({ length: 40 }, (_, i) => [
      ...Array((i * 7) % 5).fill('seed'),
      ...Array((i * 3) % 4).fill('tray'),
      ...(i % 9 === 0 ? ['copper'] : []),
      ...words(i * 50, 5 + ((i * 11) % 23)),
    ]);
    const search = new MiniSearch<{ id: number; text: string }>({
      fields: ['text'],
      tokenize: (text) => text.split(' '),
      searchOptions: { bm25: { k: 1.2, b: 0, d: 0 } },
    });
    search.addAll(texts.map((text, id) => ({ id, text: text.join(' ') })));
    const ranker = rankerOf(
      texts.map((text, i) => ({ id: String(i), fields: { text } })),
      { k1: 1.2, fields: { text: { weight: 1, b: 0 } } },
    );
    for (const query of [['seed'], ['seed', 'tray'], ['copper', 'tray'], ['seed', 'tray', 'copper']]) {
      const theirs = search
        .search(query.join(' '))
        .map(({ id, score, queryTerms }) => ({ id: String(id), score: score / queryTerms.length / 2.2 }));
      const ours = ranker.rank(query);
      expect(ours).toHaveLength(theirs.length);
      for (const { id, score } of theirs) expect(scoreOf(ours, id)).toBeCloseTo(score, 10);
    }
  });

  test('the order of MiniSearch with length counted, where every word of a text is another', () => {
    const texts = Array.from({ length: 30 }, (_, i) => [
      ...(i % 3 === 0 ? ['seed'] : []),
      ...(i % 4 === 0 ? ['tray'] : []),
      ...Array.from({ length: 3 + ((i * 13) % 29) }, (_, j) => `w${i}x${j}`),
    ]);
    const search = new MiniSearch<{ id: number; text: string }>({
      fields: ['text'],
      tokenize: (text) => text.split(' '),
      searchOptions: { bm25: { k: 1.2, b: 0.75, d: 0 } },
    });
    search.addAll(texts.map((text, id) => ({ id, text: text.join(' ') })));
    const ranker = rankerOf(
      texts.map((text, i) => ({ id: String(i), fields: { text } })),
      oneField,
    );
    const theirs = search.search('seed tray').map((one) => ({
      id: String(one.id),
      score: one.score / one.queryTerms.length / 2.2,
    }));
    const ours = ranker.rank(['seed', 'tray']);
    expect(ours).toHaveLength(theirs.length);
    for (const { id, score } of theirs) expect(scoreOf(ours, id)).toBeCloseTo(score, 10);
  });
});

type Fields = 'title' | 'text';
const twoFields: RankParameters<Fields> = {
  k1: 2,
  fields: { title: { weight: 3, b: 0.3 }, text: { weight: 1, b: 0.75 } },
};
const term = fc.constantFrom('a', 'b', 'c', 'd');
const collection = fc
  .array(fc.record({ title: fc.array(term, { maxLength: 4 }), text: fc.array(term, { maxLength: 12 }) }), {
    minLength: 1,
    maxLength: 8,
  })
  .map((all) => all.map((fields, i): FieldedDocument<Fields> => ({ id: `d${i}`, fields })));

describe('the ranking', () => {
  test('does not depend on the order of the documents, nor on that of their words', () => {
    fc.assert(
      fc.property(collection, fc.array(term), (documents, query) => {
        const turned = [...documents].reverse().map(({ id, fields }) => ({
          id,
          fields: { title: [...fields.title].reverse(), text: [...fields.text].reverse() },
        }));
        expect(rankerOf(turned, twoFields).rank(query)).toEqual(rankerOf(documents, twoFields).rank(query));
      }),
    );
  });

  test('never falls for a page where another word makes way for one more of the term', () => {
    fc.assert(
      fc.property(collection, fc.constantFrom<Fields>('title', 'text'), (documents, field) => {
        const [first, ...others] = documents as [FieldedDocument<Fields>, ...FieldedDocument<Fields>[]];
        const before = { ...first, fields: { ...first.fields, [field]: [...first.fields[field], 'z', 'a'] } };
        const after = { ...first, fields: { ...first.fields, [field]: [...first.fields[field], 'a', 'a'] } };
        const score = (one: FieldedDocument<Fields>): number =>
          scoreOf(rankerOf([one, ...others], twoFields).rank(['a']), first.id);
        expect(score(after)).toBeGreaterThan(score(before));
      }),
    );
  });

  test('is explained in parts that add up to each score', () => {
    fc.assert(
      fc.property(collection, fc.array(term), (documents, query) => {
        const ranker = rankerOf(documents, twoFields);
        for (const { id, score } of ranker.rank(query)) {
          const parts = ranker.explain(query, id);
          expect(parts.reduce((sum, { gives }) => sum + gives, 0)).toBeCloseTo(score, 10);
        }
      }),
    );
  });

  test('is positive even for a word that every page has', () => {
    const ranker = rankerOf([document('a', 'seed'), document('b', 'seed tin')], oneField);
    expect(ranker.rank(['seed']).every(({ score }) => score > 0)).toBe(true);
    expect(ranker.holders('seed')).toBe(2);
  });

  test('counts a term once, however often it is asked for', () => {
    const ranker = rankerOf([document('a', 'seed tin'), document('b', 'tin')], oneField);
    expect(ranker.rank(['tin', 'seed', 'tin'])).toEqual(ranker.rank(['tin', 'seed']));
    expect(ranker.explain(['tin', 'tin'], 'a')).toEqual(ranker.explain(['tin'], 'a'));
  });

  test('gives equal pages equal scores', () => {
    const [first, second] = rankerOf([document('b', 'seed tin'), document('a', 'seed tin')], oneField).rank([
      'tin',
    ]);
    expect(first?.score).toBe(second?.score);
  });

  test('weighs a field before it saturates, so that a title does not count again for every term', () => {
    // Robertson and Zaragoza's reason for BM25F: a sum of saturated fields prefers two fields with the term once
    // each to what it is worth. Here a title of weight 3 equals three mentions in the text, exactly.
    const flat: RankParameters<Fields> = {
      k1: 2,
      fields: { title: { weight: 3, b: 0 }, text: { weight: 1, b: 0 } },
    };
    const ranker = rankerOf<Fields>(
      [
        { id: 'title', fields: { title: ['tin'], text: ['x'] } },
        { id: 'text', fields: { title: ['x'], text: ['tin', 'tin', 'tin'] } },
        { id: 'other', fields: { title: ['x'], text: ['x'] } },
      ],
      flat,
    );
    const ranked = ranker.rank(['tin']);
    expect(scoreOf(ranked, 'title')).toBe(scoreOf(ranked, 'text'));
  });

  test('has nothing to say of no documents, of empty ones and of unknown words', () => {
    expect(rankerOf([], oneField).rank(['tin'])).toEqual([]);
    expect(rankerOf([document('a', '')], oneField).rank(['tin'])).toEqual([]);
    expect(rankerOf([document('a', 'seed')], oneField).explain(['tin'], 'a')).toEqual([]);
  });
});
