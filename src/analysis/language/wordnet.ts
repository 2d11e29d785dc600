/** The nouns of WordNet 3.1 (Princeton), through natural's reader. */

/** As much of natural's record of a set of synonyms as is read here. */
export interface Synset {
  /** Which of WordNet's files it stands in (lexnames(5WN)). */
  readonly lexFilenum: number;
  readonly synsetOffset: number;
  readonly synonyms: readonly string[];
  readonly def: string;
  readonly gloss: string;
  readonly ptrs: readonly {
    readonly pointerSymbol: string;
    readonly synsetOffset: number;
    readonly pos: string;
  }[];
}

/** WordNet's nouns, opened. */
export interface Nouns {
  /** The senses of a noun of one word or several, the commonest first, as offsets; none where it is not there. */
  readonly senses: (noun: string) => Promise<readonly number[]>;
  readonly at: (offset: number) => Promise<Synset>;
}

/** A question asked once: the answer to a key is kept. */
const once = <Key, Answer>(ask: (key: Key) => Promise<Answer>): ((key: Key) => Promise<Answer>) => {
  const answers = new Map<Key, Promise<Answer>>();
  return (key) => {
    const known = answers.get(key);
    if (known) return known;
    const answer = ask(key);
    answers.set(key, answer);
    return answer;
  };
};

/**
 * natural's reader opens a file for each question and closes it after. Only the nouns are asked: its own look-up would
 * search four files.
 */
const open = async (): Promise<Nouns> => {
  const { default: wordnet } = await import('natural/lib/natural/wordnet/index.js');
  const files = new wordnet.WordNet() as unknown as {
    nounIndex: {
      lookup(word: string, then: (found: { synsetOffset: number[] } | null) => void): void;
    };
    nounData: { get(offset: number, then: (synset: Synset) => void): void };
  };
  return {
    at: once((offset) => new Promise((resolve) => files.nounData.get(offset, resolve))),
    senses: once(
      (noun) =>
        new Promise((resolve) =>
          files.nounIndex.lookup(noun.replace(/[\s-]+/g, '_'), (found) => resolve(found?.synsetOffset ?? [])),
        ),
    ),
  };
};

let nouns: Promise<Nouns> | undefined;

/** Opened at the first call; what was asked once is not read again. */
export const openNouns = (): Promise<Nouns> => {
  nouns ??= open();
  return nouns;
};
