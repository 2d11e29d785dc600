/** The proof of one cycle, and what the edge may know of it. */
import type { Coverage } from '../analysis/coverage/coverage.ts';
import type { Tools } from '../channels/channel.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Templates } from '../render/templates.ts';
import type { Memory } from '../text/memory.ts';
import type { WordNet } from '../text/wordnet.ts';
import { wordingFor } from '../wording/wording.ts';
import type { BoxAsOf } from './box-as-of.ts';
import { type Kept, nothingKept } from './kept.ts';
import { proofsFor } from './proofs.ts';

export { countFound, isFound } from '../analysis/coverage/aim.ts';
export type {
  Coverage,
  Edit,
  ItemCoverage,
  PhraseCoverage,
} from '../analysis/coverage/coverage.ts';
export { broughtFigures, standingText } from '../analysis/coverage/figures.ts';
export { type Zone, zones } from '../analysis/coverage/text/zones.ts';
export { verdictOf } from '../analysis/coverage/verdict.ts';
export { linkMarkdown } from '../render/record-lines.ts';

/** Which proof is asked for. */
export interface ProofInput extends BoxAsOf {
  readonly cycle: string;
  readonly aim?: number;
  /** Digest of the program. */
  readonly program: string;
  readonly memory: Memory;
  readonly wordnet: WordNet;
  /** What a process keeps that goes on. */
  readonly kept?: Kept;
}

export interface ProofResult {
  readonly coverage: Coverage;
  /** Of this cycle's records, and of what belongs to no cycle. */
  readonly diagnostics: readonly Diagnostic[];
}

const NO_TEMPLATES: Templates = {
  render: (name) => {
    throw new Error(`Expected no template to be asked for, found ${name}`);
  },
  assets: [],
  scripts: [],
};

/** One cycle's proof, whether it is sealed or not: a proof is private. Throws for a cycle that the box does not hold. */
export const proofOf = async ({ cycle, ...given }: ProofInput): Promise<ProofResult> => {
  const { lang } = given.box.settings;
  const kept = given.kept ?? nothingKept();
  const tools: Tools = {
    templates: NO_TEMPLATES,
    wording: wordingFor(lang),
    language: await kept.languageFor(lang),
    faces: { digest: '', lacking: async () => [] },
  };
  const { proofs } = await proofsFor({ ...given, tools, kept, only: new Set([cycle]) });
  const proof = proofs.get(cycle);
  if (!proof) throw new Error(`Expected the box to hold ${cycle}`);
  return proof;
};
