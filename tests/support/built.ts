/** Content files → their box and its files, in memory: what a build does between two disks. */

import { join } from 'node:path';
import { type ParcelsReader, parcelsReader } from '../../src/content/parcels.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { isParcels, type KnownFile } from '../../src/io/know-files.ts';
import { openMemory } from '../../src/io/memory/open-memory.ts';
import { programDigest } from '../../src/io/program.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import type { Moment } from '../../src/model/box.ts';
import { dateInZone } from '../../src/model/calendar.ts';
import { type BoxAsOf, boxAsOf } from '../../src/pipeline/box-as-of.ts';
import { buildSite } from '../../src/pipeline/build.ts';
import { nothingKept } from '../../src/pipeline/kept.ts';
import { type NextBuild, nextBuild } from '../../src/pipeline/next-build.ts';
import type { ParcelsByCycle } from '../../src/pipeline/parcels.ts';
import type { Where } from '../../src/render/output.ts';
import { compileTemplates } from '../../src/render/templates.ts';
import { dayOfDate } from '../../src/text/days.ts';
import { sha256 } from '../../src/text/hash.ts';
import type { Memory } from '../../src/text/memory.ts';
import { assembler, type Snapshot } from '../../src/workspace/assemble.ts';
import { readLists } from '../../src/workspace/parcel-lists.ts';
import { openWorkspace } from '../../src/workspace/workspace.ts';
import { wordnet } from './dictionary.ts';
import { shortMemory } from './short-memory.ts';

/** Texts by their path in the content folder. */
export type Files = Readonly<Record<string, string>>;

/** Content that was read and linked, as of a moment. */
export interface BuiltBox extends BoxAsOf {
  readonly memory: Memory;
  readonly parcels: ParcelsByCycle;
}

/** What a build would publish. */
export interface BuiltSite {
  /** Undefined where the records make none. */
  readonly box: BoxAsOf['box'] | undefined;
  /** Texts by path, none where anything must be fixed. Fonts are left out, because no words are in them. */
  readonly site: ReadonlyMap<string, string>;
  readonly backroom: ReadonlyMap<string, string>;
  readonly diagnostics: readonly Diagnostic[];
  readonly next: NextBuild | undefined;
}

const own = readTemplates({ own: join(import.meta.dirname, '../../templates') });
/** Stands in for the compiled search, so that its index is made. */
const script = { path: 'search.en.js', bytes: Buffer.from('/* search */') };
const templates = compileTemplates(own.files, own.assets, [script]).value;

const knownFile = ([path, text]: readonly [string, string]): readonly [string, KnownFile] => [
  path,
  { path, stamp: '', hash: sha256(text), text },
];

const snapshotOf = (files: Files, memory: Memory): Promise<Snapshot> => {
  const readText = async (path: string): Promise<string> => files[path] ?? '';
  const known = Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1));
  return assembler(memory, readText, wordnet).assemble(new Map(known.map(knownFile)));
};

const listsOf = (files: Files, { facts }: Snapshot, asOf: Moment): ParcelsByCycle => {
  const { timeZone, parcels } = facts;
  const readerFor = (file: string): ParcelsReader =>
    parcelsReader({ file, ...parcels, timeZone, asOf: dayOfDate(dateInZone(asOf, timeZone)) });
  return new Map(
    Object.entries(files)
      .filter(([path]) => isParcels(path))
      .map(([path, text]) => {
        const reader = readerFor(path);
        reader.write(text);
        return [path.split('/')[1] ?? '', reader.end()];
      }),
  );
};

/** The box of content files as of a moment, with every finding so far; undefined where the records make none. */
export const boxOf = async (files: Files, asOf: Moment): Promise<BuiltBox | undefined> => {
  const memory = shortMemory();
  const snapshot = await snapshotOf(files, memory);
  return withLists(snapshot, listsOf(files, snapshot, asOf), asOf, memory);
};

const withLists = (
  { box: linked, diagnostics, shown }: Snapshot,
  parcels: ParcelsByCycle,
  asOf: Moment,
  memory: Memory,
): BuiltBox | undefined => {
  if (!linked) return undefined;
  const found = boxAsOf(linked, parcels, shown, asOf);
  return { ...found, diagnostics: [...diagnostics, ...found.diagnostics], parcels, memory };
};

const siteFrom = async (
  given: BuiltBox | undefined,
  { diagnostics, photos }: Snapshot,
): Promise<BuiltSite> => {
  if (!given) return { box: undefined, site: new Map(), backroom: new Map(), diagnostics, next: undefined };
  const { box, asOf } = given;
  const { files, diagnostics: all } = await buildSite({
    ...given,
    photos,
    templates,
    templatesDigest: own.digest,
    program: 'this one',
    wordnet,
    kept: nothingKept(),
    faces: { digest: 'the faces', lacking: async () => [] },
  });
  const textsIn = async (where: Where): Promise<ReadonlyMap<string, string>> =>
    new Map(
      await Promise.all(
        files
          .filter((file) => file.where === where && !file.path.endsWith('.woff2'))
          .map(async ({ path, content }) => [path, new TextDecoder().decode(await content())] as const),
      ),
    );
  return {
    box,
    site: await textsIn('site'),
    backroom: await textsIn('backroom'),
    diagnostics: all,
    next: nextBuild(box, asOf),
  };
};

/** Builds content files as of a moment, with nothing remembered. */
export const siteOf = async (files: Files, asOf: Moment): Promise<BuiltSite> => {
  const memory = shortMemory();
  const snapshot = await snapshotOf(files, memory);
  return siteFrom(withLists(snapshot, listsOf(files, snapshot, asOf), asOf, memory), snapshot);
};

/** Builds a content folder as of a moment. `cache` is the folder of what earlier builds remember. */
export const siteOfFolder = async (path: string, cache: string, asOf: Moment): Promise<BuiltSite> => {
  const memory = openMemory(cache);
  const workspace = await openWorkspace({ path, memory, program: programDigest() });
  const snapshot = workspace.snapshot();
  const site = await siteFrom(withLists(snapshot, await readLists(workspace, asOf), asOf, memory), snapshot);
  memory.close();
  return site;
};
