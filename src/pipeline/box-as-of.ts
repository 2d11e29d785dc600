/** The box as of a moment, as every command sees it: reveals that parcels decide found, and what is wrong so far. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Moment, ShownAddress } from '../model/box.ts';
import { callFindings } from '../model/call-findings.ts';
import { openFindings } from '../model/open-findings.ts';
import { pictureFindings } from '../model/picture-findings.ts';
import { isOpen } from '../model/seal.ts';
import { formerlyFindings } from './addresses/formerly.ts';
import { lostAddresses } from './addresses/lost.ts';
import { type ParcelsByCycle, parcelsFindings } from './parcels.ts';
import { withReveals } from './reveals.ts';

export interface BoxAsOf {
  readonly box: Box;
  readonly asOf: Moment;
  /** Of the lists of parcels, of reveals that wait for them, of the calls, of pictures, and of addresses that were shown. */
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * The linked box with the reveals that its parcels tell, and every finding that depends on the moment. `shown` are the
 * addresses that earlier builds have shown.
 */
export const boxAsOf = (
  linked: Box,
  parcels: ParcelsByCycle,
  shown: readonly ShownAddress[],
  asOf: Moment,
): BoxAsOf => {
  const { value: box, diagnostics } = withReveals(linked, parcels);
  // What asks only where pages stand looks into no story.
  const open: Box = { ...box, cycles: box.cycles.filter((cycle) => isOpen(cycle, asOf)) };
  return {
    box,
    asOf,
    diagnostics: [
      ...parcelsFindings(parcels),
      ...diagnostics,
      ...callFindings(box, asOf),
      ...openFindings(box, asOf),
      ...formerlyFindings(box, open),
      ...lostAddresses(box, open, shown, asOf),
      ...pictureFindings(box),
    ],
  };
};
