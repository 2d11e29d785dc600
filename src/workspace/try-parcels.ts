/** A list of parcels that is not in its place yet, read as it would be there. */
import type { ParcelFormat } from '../content/parcel-row.ts';
import { parcelsReader } from '../content/parcels.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { decodeText } from '../io/decode-text.ts';
import type { Moment } from '../model/box.ts';
import { dateInZone } from '../model/calendar.ts';
import { boxAsOf } from '../pipeline/box-as-of.ts';
import { factsOfCycle, type ParcelsFacts } from '../pipeline/parcels.ts';
import { dayOfDate } from '../text/days.ts';
import { readLists } from './parcel-lists.ts';
import type { Workspace } from './workspace.ts';

/** What a list would say of a cycle's parcels. */
export interface TriedParcels {
  readonly diagnostics: readonly Diagnostic[];
  readonly facts?: ParcelsFacts;
}

/** A list's bytes as text, whatever program saved it. */
export const listText = (bytes: Uint8Array): string => decodeText(bytes);

/** What is known of a cycle's parcels if these bytes were its list and were described so. */
export const tryParcels = async (
  workspace: Workspace,
  {
    cycle: id,
    bytes,
    format,
    asOf,
  }: {
    readonly cycle: string;
    readonly bytes: Uint8Array;
    readonly format: ParcelFormat;
    readonly asOf: Moment;
  },
): Promise<TriedParcels> => {
  const { box: linked, facts, shown } = workspace.snapshot();
  const { timeZone } = facts;
  const file = `cycles/${id}/parcels.csv`;
  const reader = parcelsReader({ file, format, timeZone, asOf: dayOfDate(dateInZone(asOf, timeZone)) });
  reader.write(decodeText(bytes));
  const read = reader.end();
  const lists = new Map([...(await readLists(workspace, asOf)), [id, read] as const]);
  const box = linked && boxAsOf(linked, lists, shown, asOf).box;
  const cycle = box?.cycles.find((one) => one.id === id);
  if (!box || !cycle || !read.value) return { diagnostics: read.diagnostics };
  return { diagnostics: read.diagnostics, facts: factsOfCycle({ box, asOf, parcels: lists }, cycle) };
};
