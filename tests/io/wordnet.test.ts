import wordnet from 'natural/lib/natural/wordnet/index.js';
import { expect, test } from 'vitest';
import { openWordNet } from '../../src/io/wordnet.ts';

/** As much of natural's reader of the same files as is asked here. */
interface OtherReader {
  readonly nounIndex: {
    lookup(lemma: string, then: (found: { synsetOffset: readonly number[] } | null) => void): void;
  };
  readonly nounData: {
    get(
      offset: number,
      then: (synset: {
        readonly lexFilenum: number;
        readonly synonyms: readonly string[];
        readonly gloss: string;
        readonly ptrs: readonly { readonly pointerSymbol: string; readonly synsetOffset: number }[];
      }) => void,
    ): void;
  };
}

const other = new wordnet.WordNet() as unknown as OtherReader;
const own = openWordNet();

const otherSenses = (lemma: string): Promise<readonly number[]> =>
  new Promise((resolve) => other.nounIndex.lookup(lemma, (found) => resolve(found?.synsetOffset ?? [])));

// natural (MIT) reads the same files by itself. "City" has an entry of some 15,000 bytes, "excalibur" is an instance.
test.each(['scraper', 'tea_towel', 'secateurs', 'city', 'excalibur', 'entity', 'herb', '.22', 'zymosis'])(
  'the senses of %s are those that another reader gives',
  async (lemma) => {
    const senses = own.senses(lemma, 'noun');
    expect(senses.length).toBeGreaterThan(0);
    expect(senses).toEqual(await otherSenses(lemma));
    for (const sense of senses) {
      const synset = await new Promise<Parameters<Parameters<OtherReader['nounData']['get']>[1]>[0]>(
        (resolve) => other.nounData.get(sense, resolve),
      );
      const led = (...symbols: readonly string[]) =>
        synset.ptrs
          .filter(({ pointerSymbol }) => symbols.includes(pointerSymbol))
          .map((one) => one.synsetOffset);
      expect(own.at(sense, 'noun')).toEqual({
        lexFile: synset.lexFilenum,
        synonyms: synset.synonyms,
        gloss: synset.gloss.trim(),
        broader: led('@', '@i'),
        narrower: led('~'),
      });
    }
  },
);

test.each(['', ' ', 'no_such_thing', 'Scraper', 'the software', '\n', 'ü', '🌱', '__proto__', '~', '!'])(
  'of %j there is no sense',
  (lemma) => {
    for (const part of ['noun', 'adj', 'verb', 'adv'] as const) expect(own.senses(lemma, part)).toEqual([]);
  },
);

test('each part of speech has its own senses', () => {
  const { senses, at } = own;
  const glosses = (['noun', 'adj', 'verb', 'adv'] as const).map(
    (part) => senses('well', part).map((sense) => at(sense, part).gloss)[0],
  );
  expect(new Set(glosses).size).toBe(4);
  expect(glosses[0]).toContain('hole');
});
