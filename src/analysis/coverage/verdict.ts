/** What a proof comes to, counted. */
import { isAtAim, isFound } from './aim.ts';

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
  /** Short names of items whose sections say too little: they count as below the aim. */
  readonly thin: readonly string[];
  readonly edits: number;
}

/** The verdict on a proof, as figures. */
export const verdictOf = ({ aim, items, advice, outOfReach }: Judged): ProofVerdict => {
  const below = items.filter((item) => !isFound(item, aim));
  const isReached = ({ slug, promised, thin }: Judged['items'][number]): boolean =>
    !thin && isAtAim(promised, aim) && !outOfReach.includes(slug);
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
