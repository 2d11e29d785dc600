/** A box, opened → its folders: what `build` does, and what the desk does after each save. */
import { type Diagnostic, lookAt } from '../diagnostics/diagnostic.ts';
import { addAddresses } from '../io/add-addresses.ts';
import { ADDRESSES_FILE, type Added } from '../io/addresses-file.ts';
import type { MakePictures, PictureProgress } from '../io/ensure-pictures.ts';
import type { BuildFolders, Validity } from '../io/last-build.ts';
import type { RememberedPictures } from '../io/memory/remembered-pictures.ts';
import { isPhotoFailure } from '../io/photo-problem.ts';
import {
  type PublishedFile,
  type PublishOptions,
  publish,
  settle,
  type Target,
} from '../io/publish/index.ts';
import type { ReadTemplates } from '../io/read-templates.ts';
import type { Box, Moment } from '../model/box.ts';
import { dateInZone, revealDay } from '../model/calendar.ts';
import { unusablePhoto } from '../model/pictures.ts';
import { unsealed } from '../model/seal.ts';
import type { AsOf } from '../pipeline/as-of.ts';
import { type BuildInput, type BuildResult, buildSite, type Stage } from '../pipeline/build.ts';
import type { Leavable } from '../pipeline/leavable.ts';
import { type NextBuild, nextBuild } from '../pipeline/next-build.ts';
import type { Proved } from '../pipeline/proofs.ts';
import { type SealedCycle, sealedIn } from '../pipeline/sealed.ts';
import type { Share } from '../pipeline/share.ts';
import { unchangedUntil } from '../pipeline/validity.ts';
import type { PictureOutput, Where } from '../render/output.ts';
import { pageLang } from '../render/page-lang.ts';
import { publicAddresses } from '../render/public-addresses.ts';
import { templateFinding } from '../render/templates.ts';
import { codeOf } from '../text/error-code.ts';
import { drawSite, makePictures } from './draw-site.ts';
import {
  currentCycles,
  type FilmGround,
  type FilmMade,
  type FilmTools,
  filmFile,
  filmKeys,
  type KeyedFilm,
  keyedFilms,
  madeFindings,
  makeAndKeep,
  takeFindings,
} from './films.ts';
import type { Workspace } from './workspace.ts';

export interface BuildIntoOptions {
  readonly asOf: AsOf;
  readonly folders: Pick<BuildFolders, 'site' | 'backroom'>;
  readonly templates: ReadTemplates;
  readonly pictures: RememberedPictures;
  /** How pictures are made, where not in this thread. */
  readonly makePictures?: MakePictures;
  readonly without?: ReadonlySet<Leavable>;
  readonly films: FilmTools;
  /**
   * The moment up to which what is shown is public, so that its addresses are written down beside the records; absent
   * where the site goes into a folder that is not the usual one.
   */
  readonly publicUntil?: Moment;
  /** Makes its share of the work into the memory, and publishes nothing. */
  readonly share?: Share;
  readonly onStage?: (stage: Stage | 'pictures' | 'publish' | 'films') => void;
  readonly onPictures?: PictureProgress;
  readonly onWait?: PublishOptions['onWait'];
}

/** A sealed cycle with the day it is sealed until, in words of the box's language; absent while nobody can know it. */
export interface SealedUntil extends SealedCycle {
  readonly day?: string;
}

/** What a build did, as plain data. */
export interface BuildReport {
  readonly pages: number;
  /** One that stands in both folders counts once. */
  readonly pictures: number;
  /** Pictures that were made now. */
  readonly newPictures: number;
  /** Files of the site, and their bytes. */
  readonly files: number;
  readonly bytes: number;
  readonly sealed: readonly SealedUntil[];
  readonly next?: NextBuild;
  readonly proofs: readonly Proved[];
  /** Others' files in the folders, and files of ours that somebody had changed by hand. */
  readonly kept: readonly string[];
  readonly replaced: readonly string[];
  /** How many addresses were written down now. */
  readonly newAddresses: number;
  /** Films that were made now, and the cycles that matter now whose film is still to be made. */
  readonly films: readonly FilmMade[];
  readonly filmsToMake: readonly string[];
}

export type BuildOutcome = { readonly diagnostics: readonly Diagnostic[] } & (
  | { readonly kind: 'must fix'; readonly isReadable: boolean }
  | { readonly kind: 'shared out'; readonly pictures: number; readonly newPictures: number }
  | {
      readonly kind: 'published';
      readonly report: BuildReport;
      readonly validity: Validity;
      /** Whether all is there that was asked for: else it has to be tried again, though nothing has changed. */
      readonly isWhole: boolean;
      /** What was added to the list of addresses; `refused` where the disk took nothing, and it has to be tried again. */
      readonly addresses?: Added | 'refused';
    }
);

/** A page waits for all that it refers to, so pictures are there first. */
const pictureFile = (
  { path, picture }: PictureOutput,
  pictures: RememberedPictures,
  remake: () => Promise<void>,
): PublishedFile => ({
  path,
  key: picture.key,
  step: 'asset',
  bring: async () => {
    const known = pictures.recall(picture.key);
    if (known) return known;
    // What was remembered is damaged, or gone since it was looked for.
    await remake();
    const made = pictures.recall(picture.key);
    if (!made) throw new Error(`Expected ${path} to be remembered once it is made`);
    return made;
  },
});

/**
 * Which files are taken away before all else: where a page of an article goes while some cycle is sealed, everything
 * that goes may be that cycle's, and none of it may stand a moment longer than it must.
 */
const sealedFirst = (box: Box, asOf: Moment): Pick<Target, 'first'> =>
  sealedIn(box, asOf).length === 0
    ? {}
    : { first: (_path, gone) => [...gone].some((path) => path.endsWith('.html')) };

/** The two folders with all that is to be in them. */
const targetsOf = (
  { files, pictures }: BuildResult,
  films: readonly KeyedFilm[],
  { box, asOf }: Pick<BuildInput, 'box' | 'asOf'>,
  options: BuildIntoOptions,
  makePicture: (picture: PictureOutput) => Promise<void>,
): readonly [site: Target, backroom: Target] => {
  const { folders, pictures: memory, films: tools } = options;
  const filesOf = (where: Where): readonly PublishedFile[] => [
    ...files
      .filter((file) => file.where === where)
      .map(({ path, key, step, content }) => ({ path, key, step, bring: content })),
    ...pictures
      .filter((picture) => picture.where === where)
      .map((one) => pictureFile(one, memory, () => makePicture(one))),
  ];
  const made = films.filter(({ key }) => tools.made.has(key)).map((film) => filmFile(film, tools.made));
  return [
    { dir: folders.site, files: filesOf('site'), ...sealedFirst(box, asOf) },
    { dir: folders.backroom, files: [...filesOf('backroom'), ...made] },
  ];
};

interface WrittenDown {
  readonly count: number;
  readonly added?: Added | 'refused';
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Writes down the addresses that were published, as far as the list lacks them. After the publish, because until then
 * nobody has seen them; a run that is stopped in between leaves it to the next.
 */
const writeDown = async (
  { folder }: Workspace,
  box: Box,
  asOf: Moment,
  { folders, publicUntil, onWait }: BuildIntoOptions,
): Promise<WrittenDown> => {
  if (publicUntil === undefined || asOf > publicUntil) return { count: 0, diagnostics: [] };
  const { addressesToAdd } = await import('../content/addresses.ts');
  const shown = publicAddresses(unsealed(box, asOf));
  const day = dateInZone(asOf, box.settings.timeZone);
  let count = 0;
  try {
    const added = await addAddresses(
      folder.path,
      (text) => {
        const toAdd = addressesToAdd(text, shown, day);
        count = toAdd.count;
        return toAdd.text;
      },
      { site: folders.site, ...(onWait && { onWait }) },
    );
    return { count, added, diagnostics: [] };
  } catch (error) {
    // Our own bugs have no code of the system.
    if (codeOf(error) === '') throw error;
    const refusal = lookAt(
      'addresses-unwritten',
      { file: ADDRESSES_FILE, line: 1, column: 1 },
      `Unexpected refusal of the disk (${codeOf(error)}), expected to add ${count === 1 ? 'an address' : `${count} addresses`} that ${count === 1 ? 'is' : 'are'} shown now`,
      'See that addresses.csv can be written, and build again; until then nobody sees it when one of them goes',
    );
    return { count: 0, added: 'refused', diagnostics: [refusal] };
  }
};

const sealedUntil = (box: Box, asOf: Moment): readonly SealedUntil[] => {
  const { timeZone, lang } = box.settings;
  return sealedIn(box, asOf).map((cycle) => {
    const day = revealDay({ reveal: cycle.reveal }, timeZone, pageLang(lang));
    return { ...cycle, ...(day !== undefined && { day }) };
  });
};

interface Filming {
  readonly made: readonly FilmMade[];
  /** Cycles that matter now whose film is not there. */
  readonly toMake: readonly string[];
  /** Whether none failed that was to be made now. */
  readonly isWhole: boolean;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Makes the films that are wanted and not remembered, once all else is published; `add` puts them into the back room. A
 * run that is stopped meanwhile leaves a back room without them.
 */
const addFilms = async (
  ground: FilmGround,
  films: readonly KeyedFilm[],
  { box, asOf }: Pick<BuildInput, 'box' | 'asOf'>,
  { films: tools, without, onStage }: BuildIntoOptions,
  add: () => Promise<void>,
): Promise<Filming> => {
  const wanted = new Set(tools.cycles ?? currentCycles(box, asOf));
  const missing = films.filter(({ cycle, key }) => wanted.has(cycle) && !tools.made.has(key));
  const diagnostics: Diagnostic[] = [
    ...takeFindings(
      films.filter(({ cycle }) => wanted.has(cycle)),
      ground,
    ),
  ];
  for (const film of films)
    if (wanted.has(film.cycle) && tools.made.has(film.key))
      diagnostics.push(...madeFindings(film, tools.made));
  if (missing.length === 0) return { made: [], toMake: [], isWhole: true, diagnostics };
  if (without?.has('film'))
    return { made: [], toMake: missing.map(({ cycle }) => cycle), isWhole: true, diagnostics };
  onStage?.('films');
  const made: FilmMade[] = [];
  const toMake: string[] = [];
  // The newest first: it is what is waited for.
  for (const film of [...missing].reverse()) {
    const one = await makeAndKeep(film, ground, tools);
    diagnostics.push(...one.diagnostics);
    if (!one.film) {
      toMake.push(film.cycle);
      continue;
    }
    made.push(one.film);
    await add();
  }
  tools.made.forgetOthers(new Set(films.flatMap(filmKeys)));
  return { made, toMake, isWhole: toMake.length === 0, diagnostics };
};

/**
 * Makes everything that the box asks for as of a moment, as far as it is not remembered, and puts it into its folders. Where
 * anything must be fixed, the folders stay as they were; what a stopped run left half done there is finished.
 */
export const buildInto = async (workspace: Workspace, options: BuildIntoOptions): Promise<BuildOutcome> => {
  try {
    return await makeAndPublish(workspace, options);
  } catch (error) {
    const finding = templateFinding(error) ?? photoFinding(error);
    if (!finding) throw error;
    return { kind: 'must fix', diagnostics: [finding], isReadable: true };
  }
};

/** A photo was looked at before: what stops it now is a change meanwhile, or a clock. */
const photoFinding = (error: unknown): Diagnostic | undefined =>
  isPhotoFailure(error)
    ? unusablePhoto({ file: error.source, line: 1, column: 1 }, error.source, error.problem, error.fix)
    : undefined;

const makeAndPublish = async (workspace: Workspace, options: BuildIntoOptions): Promise<BuildOutcome> => {
  const { folders, templates, pictures, without, share } = options;
  const onStage = options.onStage ?? (() => {});
  const filmGround: FilmGround = {
    content: workspace.folder.path,
    templates,
    ...(options.films.ffmpeg !== undefined && { ffmpeg: options.films.ffmpeg }),
  };
  const { asOf, found, input, built, diagnostics } = await drawSite(workspace, {
    asOf: options.asOf,
    templates,
    onStage,
    hasFilm: (film) => keyedFilms([film], filmGround).some(({ key }) => options.films.made.has(key)),
    ...(without && { without }),
    ...(share && { share }),
  });
  if (!found || !input || !built) {
    const sealed = found ? sealedIn(found.box, asOf) : [];
    // Of a stopped run's files none may appear that are sealed by now.
    if (!share) {
      await settle(folders.site, () => sealed.length > 0);
      await settle(folders.backroom);
    }
    return { kind: 'must fix', diagnostics, isReadable: found !== undefined };
  }
  const { box } = found;

  onStage('pictures');
  // One picture may stand in both folders.
  const byKey = new Map(built.pictures.map((one) => [one.picture.key, one]));
  const missing = [...byKey.values()].filter(({ picture }) => !pictures.has(picture.key));
  const make = (some: readonly PictureOutput[], onProgress?: PictureProgress): Promise<void> =>
    makePictures(workspace, templates, some, pictures, onProgress, options.makePictures);
  await make(missing, options.onPictures);
  const counts = { pictures: byKey.size, newPictures: missing.length };
  if (share) return { kind: 'shared out', diagnostics: built.diagnostics, ...counts };

  onStage('publish');
  const films = keyedFilms(built.films, filmGround);
  const publishing: PublishOptions = options.onWait ? { onWait: options.onWait } : {};
  const remake = (picture: PictureOutput): Promise<void> => make([picture]);
  const [site, backroom] = await publish(targetsOf(built, films, input, options, remake), publishing);
  // Where none was made, none has lost its use.
  if (missing.length > 0) pictures.forgetOthers(new Set(built.pictures.map(({ picture }) => picture.key)));
  const addresses = await writeDown(workspace, box, asOf, options);
  const next = nextBuild(box, asOf);
  let id = backroom?.id;
  const filming = await addFilms(filmGround, films, input, options, async () => {
    const again = await buildSite({ ...input, onStage: () => {} });
    const [, target] = targetsOf(again, films, input, options, remake);
    const [added] = await publish([{ ...target, ...(id !== undefined && { after: id }) }], publishing);
    id = added?.id ?? id;
  });
  return {
    kind: 'published',
    isWhole: addresses.added !== 'refused' && filming.isWhole,
    diagnostics: [...built.diagnostics, ...addresses.diagnostics, ...filming.diagnostics],
    ...(addresses.added && { addresses: addresses.added }),
    validity: { from: asOf, until: unchangedUntil(box, asOf) },
    report: {
      pages: built.files.filter(({ where, path }) => where === 'site' && path.endsWith('.html')).length,
      ...counts,
      files: site?.files ?? 0,
      bytes: site?.bytes ?? 0,
      sealed: sealedUntil(box, asOf),
      ...(next && { next }),
      proofs: built.proofs,
      newAddresses: addresses.count,
      films: filming.made,
      filmsToMake: filming.toMake,
      kept: [site, backroom].flatMap((one) => one?.kept ?? []),
      replaced: [site, backroom].flatMap((one) => one?.replaced ?? []),
    },
  };
};
