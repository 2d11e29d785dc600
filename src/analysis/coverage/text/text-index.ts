/** Every word of an article by its forms, so that a phrase is looked up and not searched for. */
import type { Passage, ZonedWord } from './passage.ts';

/** A word's position in the article: its passage and its number there. */
export interface Position {
  readonly passage: number;
  readonly word: number;
}

export interface TextIndex {
  readonly passages: readonly Passage[];
  readonly byFolded: ReadonlyMap<string, readonly Position[]>;
  readonly byKey: ReadonlyMap<string, readonly Position[]>;
  readonly byStem: ReadonlyMap<string, readonly Position[]>;
}

const put = (map: Map<string, Position[]>, form: string, position: Position): void => {
  const list = map.get(form);
  if (list) list.push(position);
  else map.set(form, [position]);
};

/** The index of an article's passages; linear in their words. */
export const textIndex = (passages: readonly Passage[]): TextIndex => {
  const byFolded = new Map<string, Position[]>();
  const byKey = new Map<string, Position[]>();
  const byStem = new Map<string, Position[]>();
  passages.forEach(({ words }, passage) => {
    words.forEach(({ folded, key, stem }, word) => {
      const position = { passage, word };
      put(byFolded, folded, position);
      put(byKey, key, position);
      put(byStem, stem, position);
    });
  });
  return { passages, byFolded, byKey, byStem };
};

/** Between the words of one phrase stands a space or a hyphen, or nothing where a script has no spaces. */
const JOIN = /^\s*[-\u2010\u2011]?\s*$/;

/** Whether a word and the next of its passage can belong to one phrase. */
export const adjacent = ({ text, words }: Passage, word: number): boolean => {
  const [one, next] = [words[word], words[word + 1]] as const;
  return one !== undefined && next !== undefined && JOIN.test(text.slice(one.end, next.start));
};

export const wordAt = (index: TextIndex, { passage, word }: Position): ZonedWord =>
  index.passages[passage]?.words[word] as ZonedWord;
