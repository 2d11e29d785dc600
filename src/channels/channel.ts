/** A way out: takes the box, gives files as data. One file a channel; they never import each other. */
import type { Coverage } from '../analysis/coverage/coverage.ts';
import type { Language } from '../analysis/language/language.ts';
import type { ParcelsFacts } from '../analysis/parcels/facts.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Moment } from '../model/box.ts';
import type { Completeness } from '../model/carried.ts';
import type { MadeDocument, Output, PictureOutput, Step, Where } from '../render/output.ts';
import type { Templates } from '../render/templates.ts';
import type { Wording } from '../wording/wording.ts';

/** What was found about a cycle's article before publishing. */
export interface Proof {
  readonly coverage: Coverage;
  /** Findings of the records it was made from. */
  readonly diagnostics: readonly Diagnostic[];
  /** Of everything an author wrote that it was made from. */
  readonly textHash: string;
}

/** What is known of a cycle's shipments. */
export interface ParcelsReport {
  readonly facts: ParcelsFacts;
  /** Findings of the list they come from. */
  readonly diagnostics: readonly Diagnostic[];
}

export interface ChannelInput {
  /**
   * For a public channel this holds unsealed cycles alone: what is sealed is not in the value, so no channel
   * can let it slip. A private channel is given the whole box.
   */
  readonly box: Box;
  readonly asOf: Moment;
  readonly templates: Templates;
  readonly wording: Wording;
  /** The box's own. */
  readonly language: Language;
  /** By cycle, those made anew; a cycle without one keeps the page it has. Empty for a public channel. */
  readonly proofs: ReadonlyMap<string, Proof>;
  /** By cycle, those with a list of shipments and those to come. Empty for a public channel: none of it is public. */
  readonly parcels: ReadonlyMap<string, ParcelsReport>;
}

/** What every document is made with besides its own data: the same for all of a build. */
export interface Tools {
  readonly templates: Templates;
  readonly wording: Wording;
  /** The box's own. */
  readonly language: Language;
}

/** A file that a channel wants, and what it would be made of. It is made only where no file of the same data is at hand. */
export interface PlannedDocument {
  /** Path in the channel's folder, with forward slashes. */
  readonly path: string;
  readonly step: Step;
  /**
   * All that it is made of, apart from the tools: plain data, maps and sets. Where it equals that of an earlier build,
   * so does the file. Cycles, items and settings in it cost nothing, because their digests stand for them.
   */
  readonly data: unknown;
  readonly make: (tools: Tools) => MadeDocument<Diagnostic> | Promise<MadeDocument<Diagnostic>>;
}

/** A planned document whose maker is given its data and nothing else, so that no part of what it reads is forgotten. */
export const plannedDocument = <Data>(
  path: string,
  step: Step,
  data: Data,
  make: (data: Data, tools: Tools) => MadeDocument<Diagnostic> | Promise<MadeDocument<Diagnostic>>,
): PlannedDocument => ({ path, step, data, make: (tools) => make(data, tools) });

/** What a channel wants of a box: documents to be made, pictures that no document of it names, and its findings. */
export interface ChannelPlan {
  readonly documents: readonly PlannedDocument[];
  readonly pictures?: readonly PictureOutput[];
  readonly diagnostics?: readonly Diagnostic[];
}

/** A way out. `plan` turns the box into data and is quick; what takes time is in the documents' makers. */
export interface PlanningChannel {
  /** The trade's word for what it makes. */
  readonly name: string;
  readonly where: Where;
  readonly plan: (input: ChannelInput) => ChannelPlan;
}

export interface ChannelResult {
  readonly outputs: readonly Output[];
  readonly diagnostics: readonly Diagnostic[];
}

export interface Channel {
  /** The trade's word for what it makes; also the template's name where it has one. */
  readonly name: string;
  readonly where: Where;
  readonly make: (input: ChannelInput) => ChannelResult;
}

/** A file by its place. */
export interface FilePlace {
  readonly where: Where;
  readonly path: string;
}

/** What a channel is given that speaks of the files of all others. */
export interface ClosingInput extends ChannelInput {
  /** Every file that the other channels make. */
  readonly files: readonly FilePlace[];
  readonly completeness: Completeness;
}

/** A channel that is planned after every other, of what they make. */
export interface ClosingChannel extends Omit<PlanningChannel, 'plan'> {
  readonly plan: (input: ClosingInput) => ChannelPlan;
}
