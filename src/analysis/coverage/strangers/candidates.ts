/** Noun phrases that stand as what is in a box. English alone. */
import { wordSet } from '../../../text/word-set.ts';
import { phrasesAmongWords } from '../../language/chunks.ts';
import type { Language } from '../../language/language.ts';
import { listedPhrases } from './listed.ts';
import type { NamingText } from './naming-texts.ts';

/** A noun phrase that is thought to name a thing in the box. */
export interface Candidate extends Pick<NamingText, 'field'> {
  /** Where it begins in its text, in UTF-16 units. */
  readonly start: number;
  readonly phrase: string;
  /** The keys of its last two words, or of its one. */
  readonly keys: readonly string[];
}

/** Words for what every box has, or is. By hand. */
const GENERAL = wordSet(`
  box parcel package set kit thing item piece gift present treat surprise project craft recipe ingredient material gear
  stuff product selection collection pair bundle month cycle tool edition`);

/** "two-ply", "three-tier": a quality of a thing, though it may stand for it. */
const QUALITY = /(?:^|\s)(?:\d+|one|two|three|four|five|six)-\p{L}+$/u;

/** The phrases of the texts that are listed as contents, in their order. The tagger is loaded for them. */
export const candidatesIn = async (
  texts: readonly NamingText[],
  language: Language,
): Promise<readonly Candidate[]> => {
  const candidates: Candidate[] = [];
  for (const { field, text } of texts) {
    const { words, phrases } = await phrasesAmongWords(text);
    for (const { start, text: phrase } of listedPhrases(words, phrases)) {
      const keys = language
        .words(phrase)
        .map(({ key }) => key)
        .slice(-2);
      const head = keys.at(-1);
      if (head !== undefined && !GENERAL.has(head) && !QUALITY.test(phrase))
        candidates.push({ field, start, phrase, keys });
    }
  }
  return candidates;
};
