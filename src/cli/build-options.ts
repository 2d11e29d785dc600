/** What `lidlore build` may leave out, and the share of the work that it may be given. */

import { LEAVABLE, type Leavable } from '../pipeline/leavable.ts';
import type { Share } from '../pipeline/share.ts';
import { commandLine } from '../wording/en/command-line.ts';

const { mistakes } = commandLine;

interface Mistake {
  readonly mistake: string;
}

const isLeavable = (word: string): word is Leavable => LEAVABLE.some((one) => one === word);

/** `--without proof`: the parts that are not made, each once. */
export const readWithout = (
  value: string | true | undefined,
): { readonly parts: ReadonlySet<Leavable> } | Mistake => {
  const words = typeof value === 'string' ? value.split(',').map((word) => word.trim()) : [];
  const parts = new Set<Leavable>();
  for (const word of words) {
    if (!isLeavable(word)) return { mistake: mistakes.without(word, LEAVABLE) };
    parts.add(word);
  }
  return { parts };
};

/** `--share 1/4`: the first of four shares. */
export const readShare = (value: string | true | undefined): Share | Mistake | undefined => {
  if (typeof value !== 'string') return undefined;
  const found = /^([1-9]\d{0,3})\/([1-9]\d{0,3})$/.exec(value.trim());
  const [number, of] = [Number(found?.[1]), Number(found?.[2])];
  return found && number <= of ? { number, of } : { mistake: mistakes.buildShare(value) };
};
