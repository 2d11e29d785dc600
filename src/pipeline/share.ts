/** One of several shares of the work: builds on several machines make one each, and what they remember is put together. */
import type { PictureOutput } from '../render/output.ts';

export interface Share {
  /** From 1. */
  readonly number: number;
  readonly of: number;
}

/** The cycle that a path names, by its month; undefined for what is of none, or of several. */
export const cycleIn = (path: string): string | undefined => /\d{4}-\d{2}/.exec(path)?.[0];

/**
 * Whether a cycle, by its month, falls to a share. Cycles that follow one another fall to different shares, and every machine
 * says the same. A choice of ours, no source.
 */
export const hasCycle = ({ number, of }: Share, cycle: string): boolean => {
  const [year = 0, month = 0] = cycle.split('-').map(Number);
  return (year * 12 + month) % of === number - 1;
};

/**
 * Which documents a share makes, by their paths: `own`, those of its cycles, with all that they show; `common`, those that
 * tell of several cycles (feeds, the catalogue). Every share makes the latter, because only a made document says which
 * pictures it shows; the pictures are what takes long.
 */
export const documentsFor = <Document extends { readonly path: string }>(
  share: Share | undefined,
  documents: readonly Document[],
): { readonly own: readonly Document[]; readonly common: readonly Document[] } => {
  if (!share) return { own: documents, common: [] };
  return {
    own: documents.filter(({ path }) => {
      const cycle = cycleIn(path);
      return cycle !== undefined && hasCycle(share, cycle);
    }),
    common: documents.filter(({ path }) => cycleIn(path) === undefined),
  };
};

/**
 * Whether a share makes a picture that all shares know of: the one that has its photo's cycle does, so each photo is opened
 * once. A drawing belongs to the cycle that its path names.
 */
export const hasPicture = (share: Share | undefined, { path, picture }: PictureOutput): boolean => {
  if (!share) return true;
  const cycle = cycleIn('source' in picture ? picture.source : path);
  if (cycle !== undefined) return hasCycle(share, cycle);
  return Number.parseInt(picture.key.slice(0, 8), 16) % share.of === share.number - 1;
};
