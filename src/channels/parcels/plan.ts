/** What the paper on each cycle's parcels is made of. */
import type { ParcelsFacts } from '../../analysis/parcels/facts.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Box, BoxSettings, Cycle } from '../../model/box.ts';
import { type ChannelPlan, type ParcelsReport, type PrivateInput, plannedDocument } from '../channel.ts';
import { parcelsPage } from './page.ts';

/** All that the paper on one cycle's parcels is made of. */
export interface ParcelsData {
  /** Without the moment they hold for: the paper speaks of whole days, and is made anew once a day at most. */
  readonly facts: Omit<ParcelsFacts, 'asOf'>;
  readonly settings: Pick<BoxSettings, 'name' | 'lang'>;
  readonly cycle: Pick<Cycle, 'year' | 'month' | 'theme' | 'palette' | 'shipped'>;
  /** Findings of the cycle's list. */
  readonly diagnostics: readonly Diagnostic[];
}

/** What the paper on one cycle's parcels is made of. */
const parcelsData = (
  { settings }: Pick<Box, 'settings'>,
  cycle: Cycle,
  { facts: { asOf: _moment, ...facts }, diagnostics }: ParcelsReport,
): ParcelsData => {
  const { name, lang } = settings;
  const { year, month, theme, palette, shipped } = cycle;
  return { facts, settings: { name, lang }, cycle: { year, month, theme, palette, shipped }, diagnostics };
};

/** A paper for each cycle of which anything is known. */
export const planParcels = ({ box, parcels }: PrivateInput): ChannelPlan => ({
  documents: box.cycles.flatMap((cycle) => {
    const report = parcels.get(cycle.id);
    return report
      ? [plannedDocument(`${cycle.id}/parcels.html`, 'page', parcelsData(box, cycle, report), parcelsPage)]
      : [];
  }),
});
