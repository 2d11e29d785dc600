/** What the proof of each cycle is made of. */
import type { Coverage } from '../../analysis/coverage/coverage.ts';
import type { Diagnostic, Location } from '../../diagnostics/diagnostic.ts';
import type { Box, BoxSettings, Cycle, Moment, PlainDate } from '../../model/box.ts';
import { dateInZone } from '../../model/calendar.ts';
import { isSealed } from '../../model/seal.ts';
import { defined } from '../../text/defined.ts';
import { type PlanningChannel, type Proof, plannedDocument } from '../channel.ts';
import { proofPage } from './page.ts';

/** The names that a record gives an item besides its own, and where another would be written. */
export interface RecordedNames {
  readonly also: readonly string[];
  readonly at?: Location;
}

/** All that a proof is made of. */
export interface ProofData {
  readonly coverage: Coverage;
  readonly settings: Pick<BoxSettings, 'name' | 'lang' | 'timeZone'>;
  readonly cycle: Pick<Cycle, 'year' | 'month' | 'palette' | 'reveal'>;
  /** By the item's slug. */
  readonly names: Readonly<Record<string, RecordedNames>>;
  /** The day it is read as of, in the box's zone. */
  readonly asOf: PlainDate;
  readonly sealed: boolean;
  /** Findings of the cycle's records. */
  readonly diagnostics: readonly Diagnostic[];
  /** Of all that an author wrote for it: it stands in the page's head. */
  readonly textHash: string;
}

/** What the proof of one cycle is made of. */
export const proofData = (
  { settings }: Pick<Box, 'settings'>,
  cycle: Cycle,
  asOf: Moment,
  { coverage, diagnostics, textHash }: Proof,
): ProofData => {
  const { name, lang, timeZone } = settings;
  const { year, month, palette, reveal, items } = cycle;
  return {
    coverage,
    settings: { name, lang, timeZone },
    cycle: { year, month, palette, reveal },
    names: Object.fromEntries(
      items.map(({ slug, also, source: { fields } }) => [
        slug,
        defined({ also, at: fields.get('also') ?? fields.get('kind') }),
      ]),
    ),
    asOf: dateInZone(asOf, timeZone),
    sealed: isSealed(cycle, asOf),
    diagnostics,
    textHash,
  };
};

/** An article read for whether it will be found, before it is published: a page for each cycle that was proved. */
export const proof: PlanningChannel<'backroom'> = {
  name: 'proof',
  where: 'backroom',
  plan: ({ box, asOf, proofs }) => ({
    documents: box.cycles.flatMap((cycle) => {
      const found = proofs.get(cycle.id);
      return found
        ? [plannedDocument(`${cycle.id}/proof.html`, 'page', proofData(box, cycle, asOf, found), proofPage)]
        : [];
    }),
  }),
};
