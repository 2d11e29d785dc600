/** The order of the stages, without a disk: the box as of a moment → files by key, and what is wrong. */
import type { ChannelPlan, PrivateInput, PublicInput, Tools } from '../channels/channel.ts';
import { channels, closingChannels } from '../channels/index.ts';
import { type Diagnostic, mustFixAny } from '../diagnostics/diagnostic.ts';
import type { Box, Moment } from '../model/box.ts';
import { unsealed } from '../model/seal.ts';
import type { DrawingFaces } from '../render/drawing.ts';
import type { FilmOutput } from '../render/film.ts';
import type { PictureOutput, Step, Where } from '../render/output.ts';
import type { Templates } from '../render/templates.ts';
import { digestOf } from '../text/digest.ts';
import type { Memory } from '../text/memory.ts';
import type { WordNet } from '../text/wordnet.ts';
import { wordingFor } from '../wording/wording.ts';
import { askedForIn } from './asked-for.ts';
import { completenessOf } from './completeness/completeness.ts';
import { contentOf, factsOf, type KeyedDocument, keyOf, type Making } from './documents.ts';
import type { Kept } from './kept.ts';
import { isLeft, type Leavable } from './leavable.ts';
import { type ParcelsByCycle, parcelsReports } from './parcels.ts';
import { type ProofsFor, type Proved, proofsFor } from './proofs.ts';
import { rememberedReading } from './remembered-reading.ts';
import { cycleIn, documentsFor, hasCycle, hasPicture, type Share } from './share.ts';

/** `facts`: articles are read for their coverage; `pages`: documents are planned and made. */
export type Stage = 'facts' | 'pages';

export interface BuildInput {
  readonly box: Box;
  readonly asOf: Moment;
  /** Each cycle's list of shipments; none where there is none. */
  readonly parcels: ParcelsByCycle;
  /** Each cycle's photos, named by a record or not. */
  readonly photos: PrivateInput['photos'];
  readonly templates: Templates;
  /** Digest of the program, its wording among it: what a document was made with is part of what it is. */
  readonly program: string;
  /** Digest of every template, asset and script. */
  readonly templatesDigest: string;
  readonly memory: Memory;
  readonly wordnet: WordNet;
  readonly kept: Kept;
  readonly faces: DrawingFaces;
  /** Findings so far: a proof shows those of its cycle. */
  readonly diagnostics: readonly Diagnostic[];
  readonly without?: ReadonlySet<Leavable>;
  readonly share?: Share;
  /** Whether a film is made already, so that papers may lead to it. */
  readonly hasFilm?: (film: FilmOutput) => boolean;
  /** Called as each stage begins; the core has no clock, but the edge may time it so. */
  readonly onStage?: (stage: Stage) => void;
}

/** A file that is no picture, with what it is known by. */
export interface BuiltFile {
  readonly where: Where;
  readonly path: string;
  readonly step: Step;
  readonly key: string;
  readonly content: () => Promise<Uint8Array>;
}

export interface BuildResult {
  /** Empty when anything must be fixed, and for a share. Paths are unique within `site` and within `backroom`. */
  readonly files: readonly BuiltFile[];
  /** Each once. */
  readonly pictures: readonly PictureOutput[];
  /** Films that the back room is to have, whether or not they are made. */
  readonly films: readonly FilmOutput[];
  readonly diagnostics: readonly Diagnostic[];
  /** Of the newest cycle, and of every cycle whose proof was made now. */
  readonly proofs: readonly Proved[];
  /** Every proof in short, by its cycle. */
  readonly inShort: ReadonlyMap<string, Proved>;
}

const keyed = (where: Where, { documents }: ChannelPlan, tooling: string): readonly KeyedDocument[] =>
  documents.map((planned) => ({
    where,
    path: planned.path,
    step: planned.step,
    key: keyOf(`${where}/${planned.path}`, planned, tooling),
    planned,
  }));

/** The months of a path's cycle together: what was read of a cycle for one of its files is at hand for the next. */
const byCycle = (a: KeyedDocument, b: KeyedDocument): number => {
  const [one = '', other = ''] = [cycleIn(a.path), cycleIn(b.path)];
  return one < other ? -1 : one > other ? 1 : 0;
};

interface MadeFiles {
  readonly files: readonly BuiltFile[];
  readonly pictures: readonly PictureOutput[];
  readonly films: readonly FilmOutput[];
  readonly diagnostics: readonly Diagnostic[];
  /** Paths of the documents that were made now. */
  readonly fresh: ReadonlySet<string>;
}

const carryOut = async (documents: readonly KeyedDocument[], making: Making): Promise<MadeFiles> => {
  const files: BuiltFile[] = [];
  const pictures: PictureOutput[] = [];
  const films: FilmOutput[] = [];
  const diagnostics: Diagnostic[] = [];
  const fresh = new Set<string>();
  for (const document of [...documents].sort(byCycle)) {
    const { where, path, step, key } = document;
    const { facts, isNew } = await factsOf(document, making);
    if (isNew) fresh.add(path);
    files.push({ where, path, step, key, content: () => contentOf(document, making) });
    for (const named of facts.named)
      files.push({
        where,
        path: named.path,
        step: 'asset',
        // The path follows from the content, so it is all there is to know: two palettes may give the same colours.
        key: digestOf('named', named.path),
        content: async () => making.memory.recall(named.key) ?? partOf(document, named.key, making),
      });
    pictures.push(...facts.pictures);
    films.push(...facts.films);
    diagnostics.push(...facts.diagnostics);
  }
  return { files, pictures, films, diagnostics, fresh };
};

/** A fragment that was forgotten is made again with its document. */
const partOf = async (document: KeyedDocument, key: string, making: Making): Promise<Uint8Array> => {
  await contentOf({ ...document, key: `${document.key} again` }, making);
  const content = making.memory.recall(key);
  if (!content) throw new Error(`Expected a part of ${document.path} to be remembered once it is made`);
  return content;
};

/** One file a path; throws when two channels want different files in one place. */
const unique = (files: readonly BuiltFile[]): readonly BuiltFile[] => {
  const byPath = new Map<string, BuiltFile>();
  for (const file of files) {
    const place = `${file.where}/${file.path}`;
    const other = byPath.get(place);
    if (other && other.key !== file.key) throw new Error(`Two different files of one path: ${place}`);
    byPath.set(place, file);
  }
  return [...byPath.values()];
};

const uniquePictures = (pictures: readonly PictureOutput[]): readonly PictureOutput[] => {
  const byPath = new Map<string, PictureOutput>();
  for (const picture of pictures) {
    const place = `${picture.where}/${picture.path}`;
    const other = byPath.get(place);
    if (other && other.picture.key !== picture.picture.key)
      throw new Error(`Two different pictures of one path: ${place}`);
    byPath.set(place, picture);
  }
  return [...byPath.values()];
};

/** Findings, each once: a part that several documents share is found at fault in each. */
const distinct = (diagnostics: readonly Diagnostic[]): readonly Diagnostic[] => [
  ...new Map(diagnostics.map((diagnostic) => [JSON.stringify(diagnostic), diagnostic])).values(),
];

const plansOf = (
  { box, asOf, photos, without }: Pick<BuildInput, 'box' | 'asOf' | 'photos' | 'without'>,
  parcels: PrivateInput['parcels'],
  tools: Tools,
  proofs: ProofsFor['proofs'],
): readonly (readonly [Where, ChannelPlan])[] => {
  const outside: PublicInput = { ...tools, asOf, box: unsealed(box, asOf) };
  const inside: PrivateInput = { ...tools, asOf, box, proofs, parcels, photos };
  const made = channels.filter(({ name }) => !isLeft(name, without));
  return made.map((channel) => [
    channel.where,
    channel.where === 'site' ? channel.plan(outside) : channel.plan(inside),
  ]);
};

/** What comes of a build that makes no file of its own. */
const NOTHING: Omit<BuildResult, 'diagnostics'> = {
  files: [],
  pictures: [],
  films: [],
  proofs: [],
  inShort: new Map(),
};

/** All files of the site and the back room as of a moment, or what must be fixed first. */
export const buildSite = async (input: BuildInput): Promise<BuildResult> => {
  const { box, asOf, templates, program, memory, wordnet, kept, diagnostics: found, without, share } = input;
  const onStage = input.onStage ?? (() => {});
  if (mustFixAny(found)) return { ...NOTHING, diagnostics: found };
  const { lang } = box.settings;
  // The language chooses the wording.
  const tooling = digestOf(program, input.templatesDigest, lang);
  const tools: Tools = {
    templates,
    wording: wordingFor(lang),
    language: await kept.languageFor(lang),
    faces: input.faces,
  };
  const making: Making = { memory, known: kept.documents, tools, tooling };

  kept.turn();
  onStage('facts');
  const {
    proofs,
    inShort,
    diagnostics: proven,
  } = without?.has('proof')
    ? { proofs: new Map(), inShort: new Map<string, Proved>(), diagnostics: [] }
    : await proofsFor({
        box,
        asOf,
        tools,
        program,
        memory,
        wordnet,
        kept,
        diagnostics: found,
        ...(share && { only: new Set(box.cycles.map(({ id }) => id).filter((id) => hasCycle(share, id))) }),
      });

  onStage('pages');
  const parcels = parcelsReports({ box, asOf, parcels: input.parcels });
  const plans = plansOf(input, parcels, tools, proofs);
  const documents = plans.flatMap(([where, plan]) => keyed(where, plan, tooling));
  const { own, common } = documentsFor(share, documents);
  const made = await carryOut(own, making);
  const shared = await carryOut(common, making);
  const known = [...plans.flatMap(([, plan]) => plan.pictures ?? []), ...shared.pictures];
  const pictures = uniquePictures([
    ...known.filter((picture) => hasPicture(share, picture)),
    ...made.pictures,
  ]);
  const planned = plans.flatMap(([, plan]) => plan.diagnostics ?? []);
  if (share)
    return {
      ...NOTHING,
      pictures,
      diagnostics: distinct([...found, ...proven, ...planned, ...made.diagnostics, ...shared.diagnostics]),
    };

  const { whole, diagnostics: lacking } = await completenessOf({
    box,
    asOf,
    wording: tools.wording,
    reading: rememberedReading(made.files, memory),
    ...(without && { without }),
  });
  const askedFor = await askedForIn(box, tools.language, program, memory);
  const last = {
    ...tools,
    ...(askedFor && { askedFor }),
    asOf,
    box,
    proofs,
    parcels,
    photos: input.photos,
    files: [...made.files, ...made.films.filter((film) => input.hasFilm?.(film))].map(({ where, path }) => ({
      where,
      path,
    })),
    completeness: whole,
  };
  const closingPlans = closingChannels.map(({ where, plan }) => [where, plan(last)] as const);
  const closing = await carryOut(
    closingPlans.flatMap(([where, plan]) => keyed(where, plan, tooling)),
    making,
  );
  const diagnostics = distinct([
    ...found,
    ...proven,
    ...planned,
    ...made.diagnostics,
    ...closingPlans.flatMap(([, plan]) => plan.diagnostics ?? []),
    ...closing.diagnostics,
    ...lacking,
  ]);
  if (mustFixAny(diagnostics)) return { ...NOTHING, diagnostics };
  const newest = box.cycles.at(-1)?.id;
  return {
    files: unique([...made.files, ...closing.files]),
    pictures,
    films: made.films,
    diagnostics,
    proofs: [...inShort.values()].filter(
      ({ cycle }) => cycle === newest || made.fresh.has(`${cycle}/proof.html`),
    ),
    inShort,
  };
};
