/** One cycle of a content folder, proved. */
import type { Coverage } from '../analysis/coverage/coverage.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type AsOf, momentFor } from '../pipeline/as-of.ts';
import { boxAsOf } from '../pipeline/box-as-of.ts';
import { proofOf } from '../pipeline/proof.ts';
import { waitsForParcels } from '../pipeline/reveals.ts';
import { readLists } from './parcel-lists.ts';
import { type OpenOptions, openWorkspace, type Workspace } from './workspace.ts';

export interface ProveOptions extends OpenOptions {
  readonly asOf: AsOf;
  /** The newest where it is left out. */
  readonly cycle?: string;
  /** Standing that every item should reach. */
  readonly aim?: number;
}

export interface Proven {
  /** Of this cycle and of what belongs to none; of the whole content where there is no proof. */
  readonly diagnostics: readonly Diagnostic[];
  /** Absent when the records do not make this cycle. */
  readonly coverage?: Coverage;
  /** Every cycle there is, the oldest first. */
  readonly cycles: readonly string[];
}

/** One cycle of a folder that is open, proved. `isKept`: what it reads is kept for the next time. */
export const proveIn = async (
  workspace: Workspace,
  { asOf, cycle, aim }: Pick<ProveOptions, 'asOf' | 'cycle' | 'aim'>,
  isKept = false,
): Promise<Proven> => {
  const { box: linked, cycleIds: cycles, diagnostics, facts, shown } = workspace.snapshot();
  const id = cycle ?? cycles.at(-1);
  if (id === undefined || !linked?.cycles.some((one) => one.id === id)) return { diagnostics, cycles };
  const moment = momentFor(asOf, facts.timeZone);
  // A list of parcels says something to a proof only where a reveal waits for it.
  const lists = waitsForParcels(linked) ? await readLists(workspace, moment) : new Map();
  const found = boxAsOf(linked, lists, shown, moment);
  const proof = await proofOf({
    ...found,
    diagnostics: [...diagnostics, ...found.diagnostics],
    cycle: id,
    program: workspace.program,
    memory: workspace.memory,
    wordnet: workspace.wordnet,
    ...(isKept && { kept: workspace.kept }),
    ...(aim !== undefined && { aim }),
  });
  return { ...proof, cycles };
};

/** Opens a content folder and proves one cycle of it, sealed or not: a proof is private. */
export const proveCycle = async ({ asOf, cycle, aim, ...options }: ProveOptions): Promise<Proven> => {
  const workspace = await openWorkspace(options);
  workspace.folder.remember();
  return proveIn(workspace, {
    asOf,
    ...(cycle !== undefined && { cycle }),
    ...(aim !== undefined && { aim }),
  });
};
