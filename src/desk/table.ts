/**
 * The writing table: one content folder held open, what it gives as of any moment, and every change of it. One thing is done
 * at a time, so that a save never meets a look at the folder half way.
 */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { MakePictures } from '../io/ensure-pictures.ts';
import type { Entry, History } from '../io/history.ts';
import type { RememberedPictures } from '../io/memory/remembered-pictures.ts';
import { type FileState, stateOf, type Written } from '../io/owned-files.ts';
import type { ReadTemplates } from '../io/read-templates.ts';
import type { Box, Cycle, Moment } from '../model/box.ts';
import type { BuildInput, BuiltFile } from '../pipeline/build.ts';
import type { Coverage } from '../pipeline/proof.ts';
import type { FilmOutput } from '../render/film.ts';
import type { PictureOutput } from '../render/output.ts';
import type { Templates } from '../render/templates.ts';
import type { Snapshot } from '../workspace/assemble.ts';
import { type BuildOutcome, buildInto } from '../workspace/build-into.ts';
import {
  boxAt,
  compiledOf,
  type Drawn,
  type DrawnArticle,
  drawArticle,
  drawSite,
  makePictures,
} from '../workspace/draw-site.ts';
import { type FilmGround, keyedFilms, makeAndKeep } from '../workspace/films.ts';
import { proveIn } from '../workspace/prove-cycle.ts';
import type { Workspace } from '../workspace/workspace.ts';

export interface TableOptions {
  readonly workspace: Workspace;
  /**
   * Opens the folder again without what is remembered, after an error that what is remembered may have caused; undefined
   * for any other.
   */
  readonly openAnew?: (error: unknown) => Promise<Workspace | undefined>;
  readonly history: History;
  readonly pictures: RememberedPictures;
  /** Films that were made. */
  readonly films: RememberedPictures;
  /** The machine's encoder, where it has one. */
  readonly ffmpeg?: string;
  /** Makes a film where that is not to be done in this thread. */
  readonly makeFilm?: typeof makeAndKeep;
  /** How a build makes its pictures, where not in this thread. */
  readonly makePictures?: MakePictures;
  /** Reads the templates anew. */
  readonly readTemplates: () => ReadTemplates;
  readonly folders: { readonly site: string; readonly backroom: string };
  /** The moment that the desk takes for now. */
  readonly now: () => Moment;
  /** Up to when what is shown is public; absent where the site is not the usual one. */
  readonly publicUntil?: () => Moment;
}

/** Pages of a moment: the newest that could be made, and whether the records have changed since. */
export interface Shown {
  readonly drawn: Drawn;
  /** Documents by `site/PATH` and `backroom/PATH`; those of an earlier state where this one has none. */
  readonly files: ReadonlyMap<string, BuiltFile>;
  readonly pictures: ReadonlyMap<string, PictureOutput>;
  /** Films that the documents ask for. */
  readonly films: readonly FilmOutput[];
  /** What the documents were made of; undefined where there has been none yet. */
  readonly input: BuildInput | undefined;
  /** Whether the documents are older than the records. */
  readonly isOlder: boolean;
}

export interface Table {
  readonly snapshot: () => Snapshot;
  readonly workspace: () => Workspace;
  readonly history: History;
  readonly now: () => Moment;
  /** Counts the states of the folder that were seen. */
  readonly version: () => number;
  readonly templates: () => Templates;
  /** Where films find what they are made of. */
  readonly filmGround: () => FilmGround;
  readonly makeFilm: typeof makeAndKeep;
  /** Films that were made. */
  readonly films: RememberedPictures;
  readonly folders: TableOptions['folders'];
  /** The file as it stands on the disk now. */
  readonly read: (path: string) => FileState | undefined;
  /** Changes a file that somebody has seen, and looks at it again. */
  readonly save: (change: Parameters<History['change']>[0]) => Promise<Written>;
  readonly undo: (id: number) => Promise<Written | undefined>;
  /** Says that what is drawn has changed although no file has: a film is there by now. */
  readonly redraw: () => void;
  /** Whether a picture is drawn already. */
  readonly hasPicture: (picture: PictureOutput) => boolean;
  /** Looks at every file; true where anything has changed. */
  readonly refresh: () => Promise<boolean>;
  /** The box as of a moment, with nothing drawn of it. */
  readonly boxAt: (asOf: Moment) => Promise<Pick<Drawn, 'found' | 'parcels'>>;
  /** What is drawn as of a moment. `opened`: a cycle that nobody knows the reveal of is shown all the same. */
  readonly shown: (asOf: Moment, opened?: string) => Promise<Shown>;
  /** A cycle's article by itself, made before all else; undefined where there is none as of then. */
  readonly article: (cycle: string, asOf: Moment, opened?: string) => Promise<DrawnArticle | undefined>;
  /** What was drawn last as of a moment, of whatever state. */
  readonly lastShown: (asOf: Moment, opened?: string) => Shown | undefined;
  readonly picture: (picture: PictureOutput) => Promise<Uint8Array | undefined>;
  readonly coverage: (cycle: string, asOf: Moment) => Promise<Coverage | undefined>;
  /** Everything that is wrong as of a moment. */
  readonly findings: (asOf: Moment, opened?: string) => Promise<readonly Diagnostic[]>;
  readonly build: () => Promise<BuildOutcome>;
  /** Goes on without what is remembered, where that may have caused an error; false where it cannot have. */
  readonly renew: (error: unknown) => Promise<boolean>;
  /** Calls back after each new state, until the function that it gives is called. */
  readonly onChange: (listener: () => void) => () => void;
}

/** States of pages that are held: the article as it will be, the site as of now, and as of a moment that is tried. */
const MOST_HELD = 6;

/** A minute: pages change with the moment no more often than somebody could see. */
const MINUTE = 60_000;

interface Held {
  readonly version: number;
  readonly shown: Promise<Shown>;
}

const byPlace = <File extends { readonly where: string; readonly path: string }>(
  files: readonly File[],
): ReadonlyMap<string, File> => new Map(files.map((file) => [`${file.where}/${file.path}`, file]));

const keyOf = (asOf: Moment, opened: string | undefined): string =>
  `${Math.floor(asOf / MINUTE) * MINUTE} ${opened ?? ''}`;

/** Lays the table. */
export const layTable = (options: TableOptions): Table => {
  const { history, pictures, films, folders } = options;
  let { workspace } = options;
  let version = 1;
  let templates = options.readTemplates();
  let last: Promise<unknown> = Promise.resolve();
  const held = new Map<string, Held>();
  const lastGood = new Map<string, Shown>();
  const proofs = new Map<
    string,
    { readonly version: number; readonly coverage: Promise<Coverage | undefined> }
  >();
  const listeners = new Set<() => void>();
  const making = new Map<string, Promise<void>>();

  const inTurn = <Value>(work: () => Promise<Value>): Promise<Value> => {
    const done = last.then(work, work);
    last = done.catch(() => undefined);
    return done;
  };

  const changed = (): void => {
    version += 1;
    for (const listener of listeners) listener();
  };

  /** After this, nothing is shown that was made of what turned out to be wrong. */
  const openAnew = async (error: unknown): Promise<boolean> => {
    const other = await options.openAnew?.(error);
    if (!other) return false;
    workspace = other;
    changed();
    return true;
  };

  /** The value of some work over the workspace; what is remembered may be wrong inside, and show it anywhere. */
  const surely = async <Value>(work: () => Promise<Value>): Promise<Value> => {
    try {
      return await work();
    } catch (error) {
      if (await openAnew(error)) return work();
      throw error;
    }
  };

  const update = (paths?: readonly string[]): Promise<boolean> => surely(() => look(paths));

  const look = async (paths?: readonly string[]): Promise<boolean> => {
    const before = workspace.snapshot().files;
    const now = (await workspace.update(paths)).files;
    const isSame =
      before.size === now.size && [...now].every(([path, file]) => before.get(path)?.stamp === file.stamp);
    if (!isSame) changed();
    return !isSame;
  };

  const filmGround = (): FilmGround => ({
    content: workspace.folder.path,
    templates,
    ...(options.ffmpeg !== undefined && { ffmpeg: options.ffmpeg }),
  });

  const hold = (key: string, one: Held): void => {
    held.delete(key);
    held.set(key, one);
    for (const old of [...held.keys()].slice(0, -MOST_HELD)) {
      held.delete(old);
      lastGood.delete(old);
    }
  };

  const draw = async (key: string, asOf: Moment, opened: string | undefined): Promise<Shown> => {
    const drawn = await drawSite(workspace, {
      asOf,
      templates,
      hasFilm: (film) => keyedFilms([film], filmGround()).some((one) => films.has(one.key)),
      ...(opened !== undefined && { opened }),
    });
    const { built } = drawn;
    const good = lastGood.get(key);
    if (!built)
      return {
        drawn,
        files: good?.files ?? new Map(),
        pictures: good?.pictures ?? new Map(),
        films: good?.films ?? [],
        input: good?.input,
        isOlder: true,
      };
    const shown = {
      drawn,
      files: byPlace(built.files),
      pictures: byPlace(built.pictures),
      films: built.films,
      input: drawn.input,
      isOlder: false,
    };
    lastGood.set(key, shown);
    return shown;
  };

  const shown: Table['shown'] = (asOf, opened) => {
    const key = keyOf(asOf, opened);
    const at = Math.floor(asOf / MINUTE) * MINUTE;
    const before = held.get(key);
    if (before?.version === version) return before.shown;
    const wanted = version;
    const work = inTurn(() => surely(() => draw(key, at, opened)));
    hold(key, { version: wanted, shown: work });
    return work;
  };

  const picture: Table['picture'] = async (wanted) => {
    const { key } = wanted.picture;
    const known = pictures.recall(key);
    if (known) return known;
    // Pictures of one photo one after the other: each of them decodes it.
    const source = 'source' in wanted.picture ? wanted.picture.source : key;
    const before = making.get(source) ?? Promise.resolve();
    const work = before.then(() => makePictures(workspace, templates, [wanted], pictures));
    making.set(
      source,
      work.catch(() => undefined),
    );
    await work;
    return pictures.recall(key);
  };

  const coverage: Table['coverage'] = (cycle, asOf) => {
    const key = `${cycle} ${asOf}`;
    const before = proofs.get(key);
    if (before?.version === version) return before.coverage;
    const work = inTurn(() => surely(async () => (await proveIn(workspace, { asOf, cycle }, true)).coverage));
    proofs.delete(key);
    for (const old of [...proofs.keys()].slice(0, -MOST_HELD)) proofs.delete(old);
    proofs.set(key, { version, coverage: work });
    return work;
  };

  return {
    workspace: () => workspace,
    history,
    folders,
    now: options.now,
    snapshot: () => workspace.snapshot(),
    version: () => version,
    templates: () => compiledOf(templates).value,
    filmGround,
    films,
    makeFilm: options.makeFilm ?? makeAndKeep,
    redraw: changed,
    hasPicture: (wanted) => pictures.has(wanted.picture.key),
    read: (path) => stateOf(workspace.folder.path, path),
    save: (change) =>
      inTurn(async () => {
        const written = history.change(change);
        await update([change.path]);
        return written;
      }),
    undo: (id) =>
      inTurn(async () => {
        const entry: Entry | undefined = history.entries().find((one) => one.id === id);
        const written = history.undo(id);
        if (entry) await update([entry.path]);
        return written;
      }),
    refresh: () =>
      inTurn(async () => {
        const read = options.readTemplates();
        const areNew = read.digest !== templates.digest;
        if (areNew) templates = read;
        const isNew = await update();
        if (areNew && !isNew) changed();
        return isNew || areNew;
      }),
    boxAt: (asOf) => inTurn(() => surely(() => boxAt(workspace, asOf))),
    shown,
    lastShown: (asOf, opened) => lastGood.get(keyOf(asOf, opened)),
    article: (cycle, asOf, opened) =>
      inTurn(() =>
        surely(() =>
          drawArticle(workspace, { asOf, templates, ...(opened !== undefined && { opened }) }, cycle),
        ),
      ),
    picture,
    coverage,
    findings: async (asOf, opened) => (await shown(asOf, opened)).drawn.diagnostics,
    build: () =>
      inTurn(() =>
        surely(() =>
          buildInto(workspace, {
            asOf: options.now(),
            folders,
            templates,
            pictures,
            ...(options.makePictures && { makePictures: options.makePictures }),
            // Films are made where they are asked for.
            films: {
              made: films,
              cycles: [],
              ...(options.ffmpeg !== undefined && { ffmpeg: options.ffmpeg }),
            },
            ...(options.publicUntil && { publicUntil: options.publicUntil() }),
          }),
        ),
      ),
    renew: (error) => inTurn(() => openAnew(error)),
    onChange: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
};

/** The cycle of an id, of a box that is there. */
export const cycleOf = ({ box }: Snapshot, id: string): Cycle | undefined =>
  (box as Box | undefined)?.cycles.find((cycle) => cycle.id === id);
