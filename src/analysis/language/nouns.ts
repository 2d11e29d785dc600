/** WordNet's nouns as running text names them. */
import type { WordNet } from '../../text/wordnet.ts';

/** The senses of a noun of one word or several, the commonest first; none where it is not there. */
export const nounSenses = (wordnet: WordNet, noun: string): readonly number[] =>
  wordnet.senses(noun.replace(/[\s-]+/g, '_'), 'noun');
