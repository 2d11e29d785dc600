/** The proof of one cycle, and what the edge may know of it. */

import type { Coverage } from '../analysis/coverage/coverage.ts';
import { languageFor } from '../analysis/language/language.ts';
import { readRecords } from '../content/read.ts';
import type { FileReader } from '../content/record-file.ts';
import type { Sources } from '../content/sources.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { callFindings } from '../model/call-findings.ts';
import { linkBox } from '../model/link.ts';
import type { AsOf } from './as-of.ts';
import { DEFAULT_AIM } from './defaults.ts';
import { type NameMemory, proofsOf } from './facts.ts';
import type { ParcelsByCycle } from './parcels.ts';
import { waitsForParcels, withReveals } from './reveals.ts';

export { isAtAim } from '../analysis/coverage/aim.ts';
export type {
  Coverage,
  Edit,
  ItemCoverage,
  PhraseCoverage,
} from '../analysis/coverage/coverage.ts';
export { broughtFigures, standingText } from '../analysis/coverage/figures.ts';
export { type Zone, zones } from '../analysis/coverage/text/zones.ts';
export { verdictOf } from '../analysis/coverage/verdict.ts';
export { shortName } from '../model/title.ts';
export { linkMarkdown } from '../render/record-lines.ts';
export type { NameMemory } from './facts.ts';

/** Which proof is asked for. */
export interface ProofInput {
  readonly sources: Sources;
  readonly readFile: FileReader;
  readonly asOf: AsOf;
  /** The newest where it is absent. */
  readonly cycle?: string;
  readonly aim?: number;
  /** Filled with what the dictionary is asked. */
  readonly names?: NameMemory;
  /** Reads the cycles' lists of shipments; asked only where a reveal waits for its parcels. */
  readonly readParcels?: () => Promise<ParcelsByCycle>;
}

/** The proof, or what keeps it from being made. */
export interface ProofResult {
  /** Of the whole content: a fault elsewhere may be what keeps this cycle from being published. */
  readonly diagnostics: readonly Diagnostic[];
  /** Absent when the records do not make this cycle. */
  readonly coverage?: Coverage;
  /** Every cycle there is, the oldest first. */
  readonly cycles: readonly string[];
}

/** One cycle's proof, whether it is sealed or not: a proof is private. */
export const proofOf = async ({
  sources,
  readFile,
  asOf,
  cycle: asked,
  aim,
  names = new Map(),
  readParcels = async () => new Map(),
}: ProofInput): Promise<ProofResult> => {
  const records = readRecords(sources, readFile);
  const linked = linkBox(records.value, sources);
  const cycles = records.value.cycles.map(({ id }) => id);
  const id = asked ?? cycles.at(-1);
  const written = [...records.diagnostics, ...linked.diagnostics];
  if (!linked.value?.cycles.some((cycle) => cycle.id === id)) return { diagnostics: written, cycles };
  const lists = waitsForParcels(linked.value) ? await readParcels() : new Map();
  const { value: box, diagnostics: waiting } = withReveals(linked.value, lists);
  const moment = typeof asOf === 'number' ? asOf : asOf(box.settings.timeZone);
  const diagnostics = [...written, ...waiting, ...callFindings(box, moment)];
  const proofs = await proofsOf({
    box,
    language: await languageFor(box.settings.lang),
    sources,
    asOf: moment,
    aim: aim ?? DEFAULT_AIM,
    diagnostics,
    names,
    wanted: (cycle) => cycle.id === id,
  });
  const proof = proofs.get(id as string);
  return {
    diagnostics: proof?.diagnostics ?? diagnostics,
    cycles,
    ...(proof ? { coverage: proof.coverage } : {}),
  };
};
