/** Which words are names, by WordNet 3.1 (Princeton), which writes every sense as English writes it. */
import type { CaseOf, LetterCase } from '../../text/letter-case.ts';
import type { WordNet, WordNetPart } from '../../text/wordnet.ts';

/** Whether each sense of a lemma is written with a capital, the commonest first. */
type Capitals = readonly boolean[];

/**
 * Endings that WordNet takes off a word that it does not have, and what it puts there: the rules of detachment of
 * morphy(7WN), and one for "enamelled".
 */
const DETACHED: Readonly<Record<WordNetPart, readonly (readonly [RegExp, string])[]>> = {
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

/** A lemma as one of its senses spells it; behind some adjectives stands a marker of where they can stand. */
const spelledAmong = (synonyms: readonly string[], lemma: string): string | undefined =>
  synonyms.map((word) => word.replace(/\(\w+\)$/, '')).find((word) => word.toLowerCase() === lemma);

const caseOfSenses = (senses: Readonly<Record<WordNetPart, Capitals>>): LetterCase | undefined => {
  const all = Object.values(senses).flat();
  if (all.length === 0) return undefined;
  if (all.every(Boolean)) return senses.adj.length > 0 ? 'name' : 'proper noun';
  // Of a word that is both, a name where that is its first meaning: China, though there is china.
  if (senses.noun[0] && !senses.adj.includes(false)) return senses.adj.length > 0 ? 'name' : 'proper noun';
  return senses.adj[0] ? 'name before a noun' : 'common';
};

/** How words are written inside an English sentence. Each is looked up once. */
export const letterCaseBy = (wordnet: WordNet): CaseOf => {
  const known = new Map<string, LetterCase | undefined>();
  const capitalsOf = (lemma: string, part: WordNetPart): Capitals =>
    wordnet
      .senses(lemma, part)
      .map((sense) => /^\p{Lu}/u.test(spelledAmong(wordnet.at(sense, part).synonyms, lemma) ?? ''));
  const sensesOf = (lemma: string, part: WordNetPart): Capitals => {
    const own = capitalsOf(lemma, part);
    if (own.length > 0) return own;
    return DETACHED[part].flatMap(([ending, base]) =>
      ending.test(lemma) ? capitalsOf(lemma.replace(ending, base), part) : [],
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
