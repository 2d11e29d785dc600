/** A box, opened → its documents as of a moment, made as far as they are not remembered, and put nowhere. */
import { article } from '../channels/article.ts';
import type { Tools } from '../channels/channel.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { lookAt, mustFixAny } from '../diagnostics/diagnostic.ts';
import { drawingFaces } from '../io/drawing-faces.ts';
import { type MakePictures, makeRemembered, type PictureProgress } from '../io/ensure-pictures.ts';
import type { RememberedPictures } from '../io/memory/remembered-pictures.ts';
import type { ReadTemplates } from '../io/read-templates.ts';
import type { Box, Moment } from '../model/box.ts';
import { unsealed } from '../model/seal.ts';
import { type AsOf, momentFor } from '../pipeline/as-of.ts';
import { type BoxAsOf, boxAsOf } from '../pipeline/box-as-of.ts';
import { type BuildInput, type BuildResult, buildSite, type Stage } from '../pipeline/build.ts';
import { contentOf, factsOf, keyOf } from '../pipeline/documents.ts';
import type { Leavable } from '../pipeline/leavable.ts';
import type { ParcelsByCycle } from '../pipeline/parcels.ts';
import { waitsForParcels, withReveals } from '../pipeline/reveals.ts';
import type { Share } from '../pipeline/share.ts';
import { articlePath } from '../render/addresses.ts';
import type { PictureOutput } from '../render/output.ts';
import { compileTemplates } from '../render/templates.ts';
import { digestOf } from '../text/digest.ts';
import { remembered } from '../text/remembered.ts';
import { wordingFor } from '../wording/wording.ts';
import { readLists } from './parcel-lists.ts';
import type { Workspace } from './workspace.ts';

export interface DrawOptions {
  readonly asOf: AsOf;
  readonly templates: ReadTemplates;
  readonly without?: ReadonlySet<Leavable>;
  readonly share?: Share;
  readonly onStage?: (stage: Stage) => void;
  readonly hasFilm?: BuildInput['hasFilm'];
  /**
   * A cycle to be shown although nobody knows yet when it is revealed: as if it were revealed at that moment. For its
   * owner's eyes alone.
   */
  readonly opened?: string;
}

/** What is drawn, and all that was found on the way. */
export interface Drawn {
  readonly asOf: Moment;
  /** Undefined where box.md is no record. */
  readonly found: BoxAsOf | undefined;
  readonly parcels: ParcelsByCycle;
  /** What it is drawn of, and what came of it; both undefined where something must be fixed first. */
  readonly input?: BuildInput;
  readonly built: BuildResult | undefined;
  readonly diagnostics: readonly Diagnostic[];
}

/** Templates do not change while they are held. */
export const compiledOf = remembered(({ files, assets, scripts }: ReadTemplates) =>
  compileTemplates(files, assets, scripts),
);

const withOpened = (box: Box, id: string | undefined, asOf: Moment): Box =>
  id !== undefined && box.cycles.some((cycle) => cycle.id === id && cycle.reveal === undefined)
    ? { ...box, cycles: box.cycles.map((cycle) => (cycle.id === id ? { ...cycle, reveal: asOf } : cycle)) }
    : box;

/** An owner's notes are not published by chance. */
const strayFinding = (path: string): Diagnostic =>
  lookAt(
    'template-stray',
    { file: `templates/${path}`, line: 1, column: 1 },
    `Unexpected file \`${path}\`, expected templates, style sheets, scripts, pictures and fonts alone; it is not published`,
    'Keep it outside the folder templates/',
  );

/** The box as of a moment with its lists of parcels, and nothing drawn of it. */
export const boxAt = async (
  workspace: Workspace,
  wanted: AsOf,
): Promise<Pick<Drawn, 'asOf' | 'found' | 'parcels'>> => {
  const { box, facts, shown } = workspace.snapshot();
  const asOf = momentFor(wanted, facts.timeZone);
  const parcels = await readLists(workspace, asOf);
  return { asOf, found: box && boxAsOf(box, parcels, shown, asOf), parcels };
};

/** Everything that the box asks for as of a moment, without its pictures. */
export const drawSite = async (workspace: Workspace, options: DrawOptions): Promise<Drawn> => {
  const { templates, without, share, onStage, hasFilm, opened } = options;
  const { diagnostics: read, photos } = workspace.snapshot();
  const compiled = compiledOf(templates);
  const { asOf, found, parcels } = await boxAt(workspace, options.asOf);
  const diagnostics = [
    ...read,
    ...compiled.diagnostics,
    ...templates.strays.map(strayFinding),
    ...(found?.diagnostics ?? []),
  ];
  if (!found || mustFixAny(diagnostics)) return { asOf, found, parcels, built: undefined, diagnostics };
  const input: BuildInput = {
    box: withOpened(found.box, opened, asOf),
    asOf,
    parcels,
    photos,
    templates: compiled.value,
    templatesDigest: templates.digest,
    program: workspace.program,
    memory: workspace.memory,
    wordnet: workspace.wordnet,
    kept: workspace.kept,
    faces: drawingFaces(templates.assets),
    diagnostics,
    ...(hasFilm && { hasFilm }),
    ...(onStage && { onStage }),
    ...(without && { without }),
    ...(share && { share }),
  };
  const built = await buildSite(input);
  if (mustFixAny(built.diagnostics))
    return { asOf, found, parcels, built: undefined, diagnostics: built.diagnostics };
  return { asOf, found, parcels, input, built, diagnostics: built.diagnostics };
};

/** An article by itself, and the style sheet of its colours: what its author waits for after each word. */
export interface DrawnArticle {
  /** Its path in the site. */
  readonly path: string;
  readonly content: Uint8Array;
}

/**
 * One cycle's article as of a moment, with nothing made beside it; undefined where something must be fixed first, or the
 * cycle is sealed then. The bytes are those of `drawSite`.
 */
export const drawArticle = async (
  workspace: Workspace,
  { asOf: wanted, templates, opened }: DrawOptions,
  cycle: string,
): Promise<DrawnArticle | undefined> => {
  const { box: linked, facts, diagnostics } = workspace.snapshot();
  const asOf = momentFor(wanted, facts.timeZone);
  if (!linked || mustFixAny(diagnostics)) return undefined;
  const lists = waitsForParcels(linked) ? await readLists(workspace, asOf) : new Map();
  const box = withOpened(withReveals(linked, lists).value, opened, asOf);
  const { lang } = box.settings;
  const tools: Tools = {
    templates: compiledOf(templates).value,
    wording: wordingFor(lang),
    language: await workspace.kept.languageFor(lang),
    faces: drawingFaces(templates.assets),
  };
  const open = unsealed(box, asOf);
  const path = open.cycles.find(({ id }) => id === cycle);
  if (!path) return undefined;
  const planned = article
    .plan({ ...tools, asOf, box: open })
    .documents.find((one) => one.path === articlePath(path));
  if (!planned) return undefined;
  const tooling = digestOf(workspace.program, templates.digest, lang);
  const key = keyOf(`site/${planned.path}`, planned, tooling);
  const document = { where: 'site' as const, path: planned.path, step: planned.step, key, planned };
  const making = { memory: workspace.memory, known: workspace.kept.documents, tools, tooling };
  const { facts: made } = await factsOf(document, making);
  if (mustFixAny(made.diagnostics)) return undefined;
  return { path: planned.path, content: await contentOf(document, making) };
};

/** Makes pictures of a workspace into what is remembered. */
export const makePictures = (
  workspace: Workspace,
  templates: ReadTemplates,
  some: readonly PictureOutput[],
  memory: RememberedPictures,
  onProgress?: PictureProgress,
  make: MakePictures = makeRemembered,
): Promise<void> =>
  make(
    { content: workspace.folder.path, assets: templates.assets },
    some.map(({ picture }) => picture),
    memory,
    onProgress,
  );
