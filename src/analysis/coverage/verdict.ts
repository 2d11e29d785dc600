/** What a proof comes to, counted. */
import { isAtAim } from './aim.ts';

/** As much of a proof as the verdict is made of: a `Coverage` is one. */
export interface Judged {
  readonly aim: number;
  readonly items: readonly {
    readonly slug: string;
    readonly shortName: string;
    readonly standing: number;
    readonly promised: number;
    readonly thin: boolean;
  }[];
  readonly advice: readonly unknown[];
  /** Slugs. */
  readonly outOfReach: readonly string[];
}

/** How many items stand at the aim, and what would bring the others there. */
export interface ProofVerdict {
  readonly aim: number;
  readonly items: number;
  /** Items that stand below the aim, those among them that the advice brings to it, and the short names of the rest. */
  readonly below: number;
  readonly reached: number;
  readonly stuck: readonly string[];
  /** Short names of items whose sections say too little to be found, wherever they stand. */
  readonly thin: readonly string[];
  readonly edits: number;
}

/** The verdict on a proof, as figures. */
export const verdictOf = ({ aim, items, advice, outOfReach }: Judged): ProofVerdict => {
  // By the figures that the table beside it shows: what is thin is said by itself.
  const below = items.filter(({ standing }) => !isAtAim(standing, aim));
  const isReached = ({ slug, promised }: Judged['items'][number]): boolean =>
    isAtAim(promised, aim) && !outOfReach.includes(slug);
  const stuck = below.filter((item) => !isReached(item)).map(({ shortName }) => shortName);
  return {
    aim,
    items: items.length,
    below: below.length,
    reached: below.length - stuck.length,
    stuck,
    thin: items.filter(({ thin }) => thin).map(({ shortName }) => shortName),
    edits: advice.length,
  };
};
