/** Facts about the box that its papers are made from: found once, before any channel runs. */
import type { Proof } from '../channels/channel.ts';
import type { Sources } from '../content/sources.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Moment } from '../model/box.ts';
import { isSealed } from '../model/seal.ts';
import { shortHash } from '../render/hash.ts';

/** Standing that every item should reach. Common practice, no source: one clear mention in each good place. */
export const DEFAULT_AIM = 0.7;

/** Raise when a proof of the same text would read otherwise, so that old pages are made anew. */
const PROOF_VERSION = 1;

/** Of what an author wrote that a cycle's proof is made from, other articles left aside, and of its seal. */
const textHashOf = ({ texts }: Sources, cycle: Cycle, asOf: Moment): string =>
  shortHash(
    JSON.stringify([
      PROOF_VERSION,
      isSealed(cycle, asOf),
      texts.filter(
        ({ path }) => path.startsWith(`cycles/${cycle.id}/`) || path === 'searches.csv' || path === 'box.md',
      ),
    ]),
  );

const concerns = ({ id }: Cycle, { place }: Diagnostic): boolean =>
  place.file.startsWith(`cycles/${id}/`) || !place.file.startsWith('cycles/');

export interface FactsInput {
  readonly box: Box;
  readonly sources: Sources;
  readonly asOf: Moment;
  readonly aim: number;
  readonly diagnostics: readonly Diagnostic[];
  /** Whether a cycle's proof has to be made, by the hash of what it would be made from. */
  readonly wanted: (cycle: Cycle, textHash: string) => boolean;
}

/**
 * The proofs of the cycles that are wanted, in the order of the box. What compares and counts is loaded only when
 * some proof is. A sealed cycle is compared with the open ones, and never the other way about.
 */
export const proofsOf = async (input: FactsInput): Promise<ReadonlyMap<string, Proof>> => {
  const { box, sources, asOf, aim, diagnostics, wanted } = input;
  const hashes = new Map(box.cycles.map((cycle) => [cycle.id, textHashOf(sources, cycle, asOf)]));
  const chosen = box.cycles.filter((cycle) => wanted(cycle, hashes.get(cycle.id) as string));
  if (chosen.length === 0) return new Map();

  const [{ comparisonsOf, coverageOf }, { languageFor }, { otherNames }] = await Promise.all([
    import('../analysis/coverage/cover.ts'),
    import('../analysis/language/language.ts'),
    import('../analysis/coverage/phrases/other-names.ts'),
  ]);
  const language = await languageFor(box.settings.lang);
  const names = await otherNames(
    chosen.flatMap(({ items }) => items),
    language,
  );
  const open = comparisonsOf(box, asOf, language, new Set());
  const proofs = new Map<string, Proof>();
  for (const cycle of chosen) {
    const comparisons = isSealed(cycle, asOf)
      ? comparisonsOf(box, asOf, language, new Set([cycle.id]))
      : open;
    proofs.set(cycle.id, {
      coverage: await coverageOf({ box, cycle, asOf, aim, comparisons, otherNames: names }),
      diagnostics: diagnostics.filter((diagnostic) => concerns(cycle, diagnostic)),
      textHash: hashes.get(cycle.id) as string,
    });
  }
  return proofs;
};
