/**
 * Linked cycles between runs. A cycle's facts are small and read at once; the trees of its stories, which are most of
 * it, are put together only when somebody reads them.
 */
import { type FrontMatter, frontMatterOf } from '../content/record-file.ts';
import type { PhotoSource } from '../content/sources.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Cycle, RecordSource, Story } from '../model/box.ts';
import { type LinkTargets, linkStory } from '../model/link-stories.ts';
import type { Target } from '../model/story.ts';
import { digestOf } from '../text/digest.ts';
import { lazily } from '../text/lazy.ts';
import { keepData, type Memory, recallData } from '../text/memory.ts';
import { type ParsedRecord, recallRecord } from './record-reader.ts';

/** What a cycle was found to depend on beyond its own files while it was linked. */
export interface Dependencies {
  /** Digest of the photo at each path that was asked for; empty where there was none. */
  readonly photos: readonly (readonly [path: string, digest: string])[];
  /** Digest of what each file means that was linked to; empty where it meant nothing. */
  readonly targets: readonly (readonly [file: string, digest: string])[];
}

export interface LinkedCycle {
  readonly cycle: Cycle;
  readonly diagnostics: readonly Diagnostic[];
  readonly dependencies: Dependencies;
}

const digestOfEntry = (value: PhotoSource | Target | undefined): string =>
  value === undefined ? '' : digestOf(value);

/** Targets and photos that note what is asked of them. */
export const noting = (
  given: LinkTargets,
): { readonly targets: LinkTargets; readonly noted: () => Dependencies } => {
  const photos = new Map<string, string>();
  const files = new Map<string, string>();
  const watched = <Value extends PhotoSource | Target>(
    values: ReadonlyMap<string, Value>,
    notes: Map<string, string>,
  ): ReadonlyMap<string, Value> =>
    new Proxy(values, {
      get: (map, name) => {
        if (name === 'get')
          return (key: string) => {
            const value = map.get(key);
            notes.set(key, digestOfEntry(value));
            return value;
          };
        const member = Reflect.get(map, name, map);
        return typeof member === 'function' ? member.bind(map) : member;
      },
    });
  return {
    targets: {
      targets: watched(given.targets, files),
      photos: { ...given.photos, byPath: watched(given.photos.byPath, photos) },
    },
    noted: () => ({ photos: [...photos], targets: [...files] }),
  };
};

/** Whether what a cycle was found to depend on is as it was. */
export const holds = ({ photos, targets }: Dependencies, now: LinkTargets): boolean =>
  photos.every(([path, digest]) => digestOfEntry(now.photos.byPath.get(path)) === digest) &&
  targets.every(([file, digest]) => digestOfEntry(now.targets.get(file)) === digest);

/** The key of a cycle made from these files, under settings of this digest. */
export const cycleKey = (
  id: string,
  files: readonly { readonly path: string; readonly hash: string }[],
  settings: string,
): string =>
  digestOf(
    'linked cycle',
    id,
    files.map(({ path, hash }) => [path, hash]),
    settings,
  );

const leanSource = ({ file, digest }: RecordSource): object => ({ file, digest });
const leanStory = ({ tree: _, ...story }: Story): object => story;

interface Told {
  readonly story: Story;
  readonly source: RecordSource;
}

/** A record without its trees and texts. */
export const withoutText = (whole: Told): object => ({
  ...whole,
  story: leanStory(whole.story),
  source: leanSource(whole.source),
});

/** Remembers a cycle that may be published. */
export const keepCycle = (
  key: string,
  { cycle, diagnostics, dependencies }: LinkedCycle,
  memory: Memory,
): void => {
  keepData(memory, key, {
    cycle: { ...withoutText(cycle), items: cycle.items.map(withoutText) },
    diagnostics,
    dependencies,
  });
};

/** Where a remembered record's text, tree and places come from. */
export interface RecordShelf {
  readonly memory: Memory;
  readonly hashOf: (path: string) => string | undefined;
  readonly targets: () => LinkTargets;
}

/** Gives a lean story and its source back what was left out, read at the first use. */
export const furnish = (whole: Told, slugs: readonly string[] | undefined, shelf: RecordShelf): void => {
  const { file } = whole.source;
  const record = lazily((): FrontMatter => {
    const hash = shelf.hashOf(file);
    const known: ParsedRecord | undefined =
      hash === undefined ? undefined : recallRecord({ path: file, hash }, shelf.memory);
    // The run begins again without a memory.
    if (!known) throw new Error(`Expected what is remembered of ${file} to be sound`);
    return frontMatterOf(known, known.parsed);
  });
  // What is wrong with a remembered story was found when it was linked.
  const story = lazily(() => linkStory(record(), shelf.targets(), slugs, () => {}));
  Object.defineProperties(whole.source, {
    fields: { get: () => record().fields, enumerable: true },
    text: { get: () => record().text, enumerable: true },
  });
  Object.defineProperty(whole.story, 'tree', { get: () => story().tree, enumerable: true });
};

/** A cycle as it was remembered; undefined where it was not. */
export const recallCycle = (key: string, shelf: RecordShelf): LinkedCycle | undefined => {
  const known = recallData(shelf.memory, key) as LinkedCycle | undefined;
  if (!known) return undefined;
  const { cycle } = known;
  furnish(
    cycle,
    cycle.items.map(({ slug }) => slug),
    shelf,
  );
  for (const item of cycle.items) furnish(item, undefined, shelf);
  return known;
};
