/** What a name or a text says, for somebody choosing words: the way from the edge to the analysis. */
import type { NameOrigin } from '../analysis/coverage/phrases/name.ts';

/** A name taken apart. */
export interface NamePhrases {
  readonly name: string;
  /** The word that says what the thing is: "can" in "Sage enamel watering can". */
  readonly head: string;
  /** What it is a kind of: "watering can". */
  readonly kind: string;
  /** What a shopper would type, the fullest first, each with what it was taken from. */
  readonly phrases: readonly { readonly text: string; readonly origin: NameOrigin }[];
}

/** A noun phrase of a text; `start` and `end` are offsets in UTF-16 units. */
export interface TextPhrase {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Names taken apart, in the order they are given in. English, the one language whose names can be. */
export const phrasesOfNames = async (names: readonly string[]): Promise<readonly NamePhrases[]> => {
  const [{ readName }, { languageFor }] = await Promise.all([
    import('../analysis/coverage/phrases/name.ts'),
    import('../analysis/language/language.ts'),
  ]);
  const english = await languageFor('en');
  return names.map((name) => {
    const { head, kind, phrases } = readName(name, english);
    return { name, head, kind, phrases: phrases.map(({ text, origin }) => ({ text, origin })) };
  });
};

/** The noun phrases of an English text, in its order. */
export const phrasesOfText = async (text: string): Promise<readonly TextPhrase[]> => {
  const { nounPhrases } = await import('../analysis/language/chunks.ts');
  return nounPhrases(text);
};
