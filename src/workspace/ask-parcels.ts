/** The parcels of a cycle of a content folder, or of a file that lies elsewhere. */
import { type AsOf, momentFor } from '../pipeline/as-of.ts';
import { type ParcelsResult, parcelsOf } from '../pipeline/parcels.ts';
import { readListAt, readLists } from './parcel-lists.ts';
import { type OpenOptions, openWorkspace } from './workspace.ts';

export interface AskParcelsOptions extends OpenOptions {
  readonly asOf: AsOf;
  /** The newest that has a list, where neither it nor a file is named. */
  readonly cycle?: string;
  /** A list that is no cycle's: its absolute path, and what findings call it. */
  readonly file?: { readonly path: string; readonly name: string };
  /** Share that should have arrived, from 0 to 1, instead of the habit's. */
  readonly share?: number;
}

/** What is known, with every cycle there is, the oldest first. */
export interface AskedParcels extends ParcelsResult {
  readonly cycles: readonly string[];
}

/** Opens a content folder and says what is known of its parcels. */
export const askParcels = async ({
  asOf,
  cycle,
  file,
  share,
  ...options
}: AskParcelsOptions): Promise<AskedParcels> => {
  const workspace = await openWorkspace(options);
  const { box, cycleIds: cycles, diagnostics, facts } = workspace.snapshot();
  workspace.folder.remember();
  const moment = momentFor(asOf, facts.timeZone);
  const parcels = await readLists(workspace, moment);
  const list = file && (await readListAt(workspace, file.path, file.name, moment));
  const answer = parcelsOf({
    box,
    asOf: moment,
    parcels,
    cycles,
    diagnostics,
    ...(list ? { file: list } : cycle === undefined ? {} : { cycle }),
    ...(share !== undefined && { share }),
  });
  return { ...answer, cycles };
};
