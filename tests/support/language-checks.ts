/** How well names are read, measured on shoppers' phrases. The data are described beside each function. */
import { readFileSync } from 'node:fs';
import { readName } from '../../src/analysis/coverage/phrases/name.ts';
import type { Language } from '../../src/analysis/language/language.ts';
import { fold } from '../../src/text/fold.ts';
import { singularOf } from '../../src/text/singular.ts';

/** Rows of a tab-separated file, `#` lines and empty ones left out. */
export const rowsOf = (file: string): readonly (readonly string[])[] =>
  readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '' && !line.startsWith('#'))
    .map((line) => line.split('\t'));

const singularsOf = (text: string): readonly string[] => (fold(text).match(/\p{L}+/gu) ?? []).map(singularOf);

/**
 * The head words of a class of goods: the last word of each part that "&", "and", "," or "/" joins. A part in the
 * singular before another ("Wall & Accent Mirrors") shares the head of the one after it and has none of its own.
 */
export const headsOfClass = (name: string): ReadonlySet<string> => {
  const parts = name.split(/,|&|\/|\band\b/i).filter((part) => /\p{L}/u.test(part));
  return new Set(
    parts.flatMap((part, i) => {
      const last =
        fold(part)
          .match(/\p{L}+/gu)
          ?.at(-1) ?? '';
      const singular = singularOf(last);
      return i < parts.length - 1 && singular === last ? [] : [singular];
    }),
  );
};

export interface HeadMeasure {
  /** Queries in which a head word of the class occurs at all, singular and plural alike. */
  readonly qualify: number;
  readonly right: number;
  /** From 0 to 1. */
  readonly share: number;
  readonly wrong: readonly { readonly query: string; readonly head: string; readonly expected: string }[];
}

/**
 * The share of shoppers' phrases whose head is read as one of their class's head words. `file` holds the open
 * WANDS query set (Chen et al. 2022, ECIR; MIT): id, query, class.
 */
export const measureHeads = (file: string, language: Language): HeadMeasure => {
  const judged = rowsOf(file).flatMap(([, query = '', name = '']) => {
    const heads = headsOfClass(name);
    if (!singularsOf(query).some((word) => heads.has(word))) return [];
    const { head } = readName(query, language);
    const right = heads.has(singularOf(fold(head)));
    return [{ query, head, expected: [...heads].join(' or '), right }];
  });
  const wrong = judged
    .filter(({ right }) => !right)
    .map(({ query, head, expected }) => ({ query, head, expected }));
  const right = judged.length - wrong.length;
  return { qualify: judged.length, right, share: right / judged.length, wrong };
};
