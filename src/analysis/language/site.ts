/** A word among its neighbours, and the questions that rules on parts of speech ask of it. */
import { wordSet, wordsOfAll } from '../../text/word-set.ts';
import { ARTICLES, OBJECTS } from './lexicon/function-words.ts';
import type { PartOfSpeech } from './tagger.ts';
import { BARE_VERBS, DETERMINERS, PARTICIPLES, POSSESSIVE_FORMS } from './word-classes.ts';

/** A neighbour. `word` is in lower case. */
export interface Near {
  readonly word: string;
  readonly pos: PartOfSpeech;
}

/** A word with the two words on either side of it. */
export interface Site extends Near {
  readonly before: Near;
  readonly before2: Near;
  readonly after: Near;
  readonly after2: Near;
  /** Whether what stands before, from the beginning of a clause without a verb, is "the ..." or "our ...": its subject. */
  readonly subject: () => boolean;
  /** Whether it comes after "will the ..." or "does our ..." at the beginning of a sentence and no verb since. */
  readonly asked: () => boolean;
}

/** One reason to take a word for another part of speech; `why` gives examples. */
export interface Rule {
  readonly why: string;
  readonly from: readonly PartOfSpeech[];
  readonly to: PartOfSpeech;
  readonly when: (site: Site) => boolean;
}

/** Determiners that never stand by themselves. */
const NEVER_ALONE = wordsOfAll(ARTICLES, wordSet('no every'));

/** What stands before the first word and after the last. */
export const EDGE: Near = { word: '', pos: 'PUNCT' };

/** Whether a tagger took it for a noun or a name. */
export const isNominal = ({ pos }: Near): boolean => pos === 'NOUN' || pos === 'PROPN';
/** Whether it opens a noun phrase. */
export const isDeterminer = ({ word }: Near): boolean => DETERMINERS.has(word) || POSSESSIVE_FORMS.has(word);
/** The end of a sentence or of a part of one; a hyphen or a quotation mark may stand inside. */
export const isEdge = ({ pos, word }: Near): boolean => pos === 'PUNCT' && !/^[-–"'“‘(]$/.test(word);
/** Whether it ends in -ing, with letters enough before. */
export const isIng = (word: string): boolean => word.length >= 5 && word.endsWith('ing');
/** "Need", "seed" and "weed" end as a participle does; of those in -eed only these are one. */
const PARTICIPLE_IN_EED = /(?:agr|fr|guarant|decr)eed$/;
/** Whether it looks like a past participle. */
export const isParticiple = (word: string): boolean =>
  (word.length >= 4 && word.endsWith('ed') && (!word.endsWith('eed') || PARTICIPLE_IN_EED.test(word))) ||
  PARTICIPLES.has(word);
/** Ends like a plural or like what he does. (Asked so often that most words are told by their last letter alone.) */
export const isThird = (word: string): boolean => word.endsWith('s') && /[^s']s$/.test(word);
/** A bare verb, or one done again: "repack". */
export const isBare = (word: string): boolean =>
  BARE_VERBS.has(word) || (word.startsWith('re') && BARE_VERBS.has(word.replace(/^re-?/, '')));
/** A bare verb's form beside "he" or "it". */
export const isBareWithS = (word: string): boolean =>
  isThird(word) && (isBare(word.slice(0, -1)) || isBare(word.replace(/es$/, '')));
/** Whether a noun has to follow. */
export const isArticle = ({ word }: Near): boolean => NEVER_ALONE.has(word) || POSSESSIVE_FORMS.has(word);
/** Whether an object may begin here: then the word before is a verb. */
export const opensObject = ({ word }: Near): boolean =>
  DETERMINERS.has(word) || POSSESSIVE_FORMS.has(word) || OBJECTS.has(word) || word === 'it';

/** Parts of speech of things and names. */
export const NOUNS: readonly PartOfSpeech[] = ['NOUN', 'PROPN'];
/** Every part of speech but punctuation. */
export const ANY: readonly PartOfSpeech[] = [
  'NOUN',
  'PROPN',
  'ADJ',
  'ADV',
  'VERB',
  'AUX',
  'ADP',
  'SCONJ',
  'NUM',
  'INTJ',
  'X',
];
