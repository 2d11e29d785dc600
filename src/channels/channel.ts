/** A way out: takes the box, gives files as data. One file a channel; they never import each other. */
import type { Coverage } from '../analysis/coverage/coverage.ts';
import type { AskedFor } from '../analysis/coverage/phrases/asked-for.ts';
import type { Language } from '../analysis/language/language.ts';
import type { ParcelsFacts } from '../analysis/parcels/facts.ts';
import type { PhotoSource } from '../content/sources.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Moment } from '../model/box.ts';
import type { Completeness } from '../model/carried.ts';
import type { OpenBox } from '../model/seal.ts';
import { colourSheetPath } from '../render/assets.ts';
import { schemeStyle } from '../render/colours.ts';
import type { DrawingFaces } from '../render/drawing.ts';
import type { MadeDocument, PictureOutput, Step, Where } from '../render/output.ts';
import type { Templates } from '../render/templates.ts';
import type { Wording } from '../wording/wording.ts';

/** What was found about a cycle's article before publishing. */
export interface Proof {
  readonly coverage: Coverage;
  /** Findings of the records it was made from. */
  readonly diagnostics: readonly Diagnostic[];
}

/** What is known of a cycle's shipments. */
export interface ParcelsReport {
  readonly facts: ParcelsFacts;
  /** Findings of the list they come from. */
  readonly diagnostics: readonly Diagnostic[];
}

/** What every document is made with besides its own data: the same for all of a build. */
export interface Tools {
  readonly templates: Templates;
  readonly wording: Wording;
  /** The box's own. */
  readonly language: Language;
  /** What drawings are set in. */
  readonly faces: DrawingFaces;
}

/** What every channel is given. */
export interface ChannelInput extends Tools {
  readonly box: Box;
  readonly asOf: Moment;
}

/** What is sealed is not in the value, so no public channel can let it slip; and nothing private is in it either. */
export interface PublicInput extends ChannelInput {
  readonly box: OpenBox;
}

/** A private channel is given the whole box, and what is known of it that nobody else may see. */
export interface PrivateInput extends ChannelInput {
  /** By cycle; none where they are left out. */
  readonly proofs: ReadonlyMap<string, Proof>;
  /** By cycle, those with a list of shipments and those to come. */
  readonly parcels: ReadonlyMap<string, ParcelsReport>;
  /** By cycle: every photo that lies in its folder, named by a record or not. */
  readonly photos: ReadonlyMap<string, readonly PhotoSource[]>;
}

type Made = MadeDocument<Diagnostic>;
/** A fragment's content is text, because a document puts it into its own. */
type MadeText = Made & { readonly content: string };

/**
 * A part of one or several documents that is made by itself, so that a change elsewhere does not make it anew. Pictures
 * and findings of its making belong to the build as a document's do.
 */
export interface PlannedFragment {
  /** Says what it is, to people. */
  readonly name: string;
  /** As a document's: all that it is made of, apart from the tools and the contents of `of`. */
  readonly data: unknown;
  /** Fragments that it is put together from. */
  readonly of: readonly PlannedFragment[];
  /** Where its content is published by itself, at step `asset`: for a file whose name follows from its content. */
  readonly pathOf?: (content: string) => string;
  /** `contents` are those of `of`, in their order. */
  readonly make: (tools: Tools, contents: readonly string[]) => MadeText | Promise<MadeText>;
}

/** A file that a channel wants, and what it would be made of. It is made only where no file of the same data is at hand. */
export interface PlannedDocument {
  /** Path in the channel's folder, with forward slashes. */
  readonly path: string;
  readonly step: Step;
  /**
   * All that it is made of, apart from the tools and the contents of `of`: plain data, maps and sets. Where it equals
   * that of an earlier build, and so do the fragments', the file does too. Cycles, items and settings in it cost
   * nothing, because their digests stand for them.
   */
  readonly data: unknown;
  /** Fragments that it is put together from. */
  readonly of?: readonly PlannedFragment[];
  /** `contents` are those of `of`, in their order. */
  readonly make: (tools: Tools, contents: readonly string[]) => Made | Promise<Made>;
}

/** A planned document whose maker is given its data and nothing else, so that no part of what it reads is forgotten. */
export const plannedDocument = <Data>(
  path: string,
  step: Step,
  data: Data,
  make: (data: Data, tools: Tools, contents: readonly string[]) => Made | Promise<Made>,
  of: readonly PlannedFragment[] = [],
): PlannedDocument => ({ path, step, data, of, make: (tools, contents) => make(data, tools, contents) });

/** A planned fragment whose maker is given its data and nothing else. */
export const plannedFragment = <Data>(
  name: string,
  data: Data,
  make: (data: Data, tools: Tools, contents: readonly string[]) => MadeText | Promise<MadeText>,
  more: Partial<Pick<PlannedFragment, 'of' | 'pathOf'>> = {},
): PlannedFragment => ({
  name,
  data,
  of: [],
  ...more,
  make: (tools, contents) => make(data, tools, contents),
});

/**
 * The style sheet of a palette's colours, published by itself: a page that is served with a strict
 * Content-Security-Policy may hold no style. Its content goes to `pageText`.
 */
export const colourSheet = (palette: readonly string[]): PlannedFragment =>
  plannedFragment(`colours ${palette.join(' ')}`, palette, (colours) => ({ content: schemeStyle(colours) }), {
    pathOf: colourSheetPath,
  });

/** What a channel wants of a box: documents to be made, pictures that no document of it names, and its findings. */
export interface ChannelPlan {
  readonly documents: readonly PlannedDocument[];
  readonly pictures?: readonly PictureOutput[];
  readonly diagnostics?: readonly Diagnostic[];
}

/** The folder that a way out writes into decides what it is given. */
interface InputOf {
  readonly site: PublicInput;
  readonly backroom: PrivateInput;
}

/**
 * A way out of one folder; of either where `W` names both. `plan` turns the box into data and is quick; what takes time
 * is in the documents' makers.
 */
export type PlanningChannel<W extends Where = Where> = W extends Where
  ? {
      /** The trade's word for what it makes; also the template's name where it has one. */
      readonly name: string;
      readonly where: W;
      readonly plan: (input: InputOf[W]) => ChannelPlan;
    }
  : never;

/** A file by its place. */
export interface FilePlace {
  readonly where: Where;
  readonly path: string;
}

/** What a channel is given that speaks of the files of all others. */
export interface ClosingInput extends PrivateInput {
  /** Every file that the other channels make. */
  readonly files: readonly FilePlace[];
  readonly completeness: Completeness;
  /** What people typed beside all that was packed; absent where nobody knows what was typed. */
  readonly askedFor?: AskedFor;
}

/** A channel that is planned after every other, of what they make. */
export interface ClosingChannel {
  readonly name: string;
  readonly where: 'backroom';
  readonly plan: (input: ClosingInput) => ChannelPlan;
}
