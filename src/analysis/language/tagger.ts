/** Words of running English text with their parts of speech. */
import { TITLES } from './word-classes.ts';

/** The universal parts of speech (Universal Dependencies 2), as far as the tagger gives them. */
export type PartOfSpeech =
  | 'ADJ'
  | 'ADP'
  | 'ADV'
  | 'AUX'
  | 'CCONJ'
  | 'DET'
  | 'INTJ'
  | 'NOUN'
  | 'NUM'
  | 'PART'
  | 'PRON'
  | 'PROPN'
  | 'PUNCT'
  | 'SCONJ'
  | 'SYM'
  | 'VERB'
  | 'X';

/** A word, mark or clitic ("n't", "'s"). `start` and `end` are offsets in UTF-16 units. */
export interface Tagged {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly pos: PartOfSpeech;
}

type Tagger = (text: string) => readonly Tagged[];

/**
 * Letters without accents and in as many UTF-16 units as before, so that offsets hold: the tagger cuts words at letters
 * that it does not know. Those of other scripts become an x, a mark over a letter an e.
 */
const bare = (text: string): string =>
  text.replace(/(?!\p{ASCII})\p{L}|(?<=\p{L})[\p{M}\u00ad\u200b-\u200d]/gu, (sign) =>
    /\p{L}/u.test(sign)
      ? (/^[a-z]/i.exec(sign.normalize('NFD'))?.[0] ?? 'x').padEnd(sign.length, 'x')
      : 'e'.repeat(sign.length),
  );

const lower = (text: string): string => text.toLowerCase();
const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** From this share of capitals on, a text of more than a few letters is shouted as a whole. */
const MOSTLY = 0.7;
const FEW_LETTERS = 8;

/** A word of four or more capitals is shouted rather than abbreviated. */
const SHOUTED = /(?<![\p{L}\p{N}])\p{Lu}{4,}(?![\p{L}\p{N}])/gu;

/**
 * A word with a capital that begins the text, a sentence or a part of one; after a title's full stop it is a name.
 * (The look ahead spares a look back.)
 */
const FIRST = new RegExp(
  [
    /(?=\p{Lu})/u,
    new RegExp(String.raw`(?<!(?<!\p{L})(?:${[...TITLES].map(capital).join('|')})\.\s{0,3})`, 'u'),
    /(?<=^[^\p{L}\p{N}]*|[.!?:;…)"”–—-]\s*["'“‘(]*|\s[-–—]\s)/u,
    /\p{Lu}[\p{Ll}\p{M}]+(?=[^\p{L}\p{N}]|$)/u,
  ]
    .map(({ source }) => source)
    .join(''),
  'gu',
);

/** The tagger takes capitals for names: what begins a sentence or is only shouted is tagged as if it were not. */
const calmed = (text: string): string => {
  const letters = text.match(/\p{L}/gu)?.length ?? 0;
  const capitals = text.match(/\p{Lu}/gu)?.length ?? 0;
  if (letters > FEW_LETTERS && capitals > letters * MOSTLY) return lower(text);
  return text.replace(SHOUTED, lower).replace(FIRST, lower);
};

/** Addresses, handles and hash tags, and what is too long to be a word (the tagger's time grows with its square). */
const NO_WORD = /(?:https?:\/\/|www\.)\S+|(?<!\S)[^\s@]+@[^\s@]+|(?<!\S)[@#]\S+|(?<!\S)\S{100,}/gu;

/** A mark in the place of what is no word, as long as it was. */
const blotted = (text: string): string => text.replace(NO_WORD, (run) => '·'.padEnd(run.length));

/** More than this between two words of the tagger and its word was not found, but another like it further on. */
const MOST_BETWEEN = 40;

const makeTagger = async (): Promise<Tagger> => {
  const [{ default: wink }, { default: model }] = await Promise.all([
    import('wink-nlp'),
    import('wink-eng-lite-web-model'),
  ]);
  const nlp = wink(model, ['sbd', 'pos']);
  return (text) => {
    const calm = calmed(bare(blotted(text)));
    // The tagger takes "we're" apart but not "I'm".
    const tokens = nlp.readDoc(calm.replace(/(?<=\bI)(?=['’](?:m|ve|ll|d)\b)/gi, ' ')).tokens();
    const words = tokens.out();
    const parts = tokens.out(nlp.its.pos) as (PartOfSpeech | 'SPACE')[];
    const tagged: Tagged[] = [];
    let from = 0;
    words.forEach((word, i) => {
      const pos = parts[i] as PartOfSpeech | 'SPACE';
      if (pos === 'SPACE') return;
      // The tagger does not keep white space as it was: each word is looked for from the end of the last.
      const start = calm.indexOf(word, from);
      if (start < 0 || calm.slice(from, start).trim().length > MOST_BETWEEN) return;
      from = start + word.length;
      tagged.push({ text: text.slice(start, from), start, end: from, pos });
    });
    return tagged;
  };
};

let tagger: Promise<Tagger> | undefined;

/** wink-nlp's tagger with its small English model, loaded at the first call: a tenth of a second and 50 MB. */
export const loadTagger = (): Promise<Tagger> => {
  tagger ??= makeTagger();
  return tagger;
};
