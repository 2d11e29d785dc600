/** What the proof of each cycle is made of. */
import type { Coverage } from '../../analysis/coverage/coverage.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Box, BoxSettings, Cycle, Item, PlainDate } from '../../model/box.ts';
import { dateInZone } from '../../model/calendar.ts';
import { isSealed } from '../../model/seal.ts';
import { type ChannelPlan, type PrivateInput, type Proof, plannedDocument } from '../channel.ts';
import { proofPage } from './page.ts';

/** All that a proof is made of. */
export interface ProofData {
  readonly coverage: Coverage;
  readonly settings: Pick<BoxSettings, 'name' | 'lang' | 'timeZone'>;
  readonly cycle: Pick<Cycle, 'year' | 'month' | 'palette' | 'reveal'>;
  /** Their records say where another name would be written. */
  readonly items: readonly Item[];
  /** The day it is read as of, in the box's zone. */
  readonly asOf: PlainDate;
  readonly sealed: boolean;
  /** Findings of the cycle's records. */
  readonly diagnostics: readonly Diagnostic[];
}

/** What the proof of one cycle is made of. */
const proofData = (
  { settings }: Pick<Box, 'settings'>,
  cycle: Cycle,
  { day, sealed }: { readonly day: PlainDate; readonly sealed: boolean },
  { coverage, diagnostics }: Proof,
): ProofData => {
  const { name, lang, timeZone } = settings;
  const { year, month, palette, reveal, items } = cycle;
  return {
    coverage,
    settings: { name, lang, timeZone },
    cycle: { year, month, palette, reveal },
    items,
    asOf: day,
    sealed,
    diagnostics,
  };
};

/** A page for each cycle that was proved. */
export const planProofs = ({ box, asOf, proofs }: PrivateInput): ChannelPlan => {
  const day = dateInZone(asOf, box.settings.timeZone);
  return {
    documents: box.cycles.flatMap((cycle) => {
      const found = proofs.get(cycle.id);
      if (!found) return [];
      const data = proofData(box, cycle, { day, sealed: isSealed(cycle, asOf) }, found);
      return [plannedDocument(`${cycle.id}/proof.html`, 'page', data, proofPage)];
    }),
  };
};
