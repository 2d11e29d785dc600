/**
 * Every change that was made to the author's files for them, so that each can be undone, also after a restart. What a file
 * was is written down before it is changed; a change that a stop prevented is known by the file being as it was.
 */
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { sha256 } from '../text/hash.ts';
import { replaceSeen, stateOf, type Written, writeWhole } from './owned-files.ts';
import { removeAbandoned, unfinished } from './unfinished.ts';

/** A change of one file. */
export interface Entry {
  readonly id: number;
  /** Milliseconds since 1970. */
  readonly at: number;
  /** Path in the content folder. */
  readonly path: string;
  /** SHA-256 of the file before and after; null where there was none. */
  readonly before: string | null;
  readonly after: string | null;
  /** What was changed, as whoever changed it says. */
  readonly about: readonly string[];
  /** The change that this one takes back, or, of a change that took back, brings again. */
  readonly undoes?: number;
}

export interface History {
  /** The oldest first. */
  readonly entries: () => readonly Entry[];
  /** Changes a file that somebody has seen, and writes down what it was. */
  readonly change: (change: {
    readonly path: string;
    readonly seen: string | null;
    readonly bytes: Uint8Array | null;
    readonly about: readonly string[];
    readonly undoes?: number;
  }) => Written;
  /** Bytes that a file had, by their hash; undefined where they are no longer kept. */
  readonly bytesOf: (hash: string) => Uint8Array | undefined;
  /** The newest change that can be taken back (of a file, where one is named): its file is as it left it. */
  readonly undoable: (path?: string) => Entry | undefined;
  /** The newest change that was taken back and can be brought again. */
  readonly redoable: (path?: string) => Entry | undefined;
  /** Takes a change back; undefined where what the file was is no longer kept. */
  readonly undo: (id: number) => Written | undefined;
}

/** As many changes are kept, and as many bytes: a year of evenings, and no more disk than a few photos. */
const MOST_ENTRIES = 2_000;
const MOST_BYTES = 400_000_000;

const ENTRY = /^(\d{8})\.json$/;

const isEntry = (value: unknown): value is Entry => {
  if (typeof value !== 'object' || value === null) return false;
  const { id, at, path, before, after, about } = value as Partial<Record<keyof Entry, unknown>>;
  const isHash = (one: unknown): boolean =>
    one === null || (typeof one === 'string' && /^[\da-f]{64}$/.test(one));
  return (
    typeof id === 'number' &&
    typeof at === 'number' &&
    typeof path === 'string' &&
    Array.isArray(about) &&
    isHash(before) &&
    isHash(after)
  );
};

const readEntries = (folder: string): Entry[] => {
  const entries: Entry[] = [];
  for (const name of readdirSync(folder).sort()) {
    if (!ENTRY.test(name)) continue;
    try {
      const value: unknown = JSON.parse(readFileSync(join(folder, name), 'utf8'));
      if (isEntry(value)) entries.push(value);
    } catch {
      // One that is damaged can be neither shown nor undone; the file that it was about is as it is.
    }
  }
  return entries;
};

/** Changes that were taken back and not brought again, by id. */
const undoneIn = (entries: readonly Entry[]): ReadonlySet<number> => {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const undone = new Set<number>();
  for (const { undoes } of entries) {
    if (undoes === undefined) continue;
    undone.add(undoes);
    const again = byId.get(undoes)?.undoes;
    if (again !== undefined) undone.delete(again);
  }
  return undone;
};

/** A file of the history's own, there as a whole or not at all. */
const put = (place: string, bytes: Uint8Array): void => {
  const temporary = unfinished(place);
  try {
    writeWhole(temporary, bytes);
    renameSync(temporary, place);
  } catch (error) {
    rmSync(temporary, { force: true });
    throw error;
  }
};

/** The history in `folder` of the files in `content`. `now` gives milliseconds since 1970. */
export const openHistory = (folder: string, content: string, now: () => number = Date.now): History => {
  const kept = join(folder, 'kept');
  mkdirSync(kept, { recursive: true });
  removeAbandoned(folder);
  let entries = readEntries(folder);
  let next = (entries.at(-1)?.id ?? 0) + 1;

  const fileOf = (id: number): string => join(folder, `${String(id).padStart(8, '0')}.json`);

  const keep = (bytes: Uint8Array): void => {
    const hash = sha256(bytes);
    // What is there may be damaged, and then it would be no way back.
    if (bytesOf(hash)) return;
    const place = join(kept, hash);
    put(place, bytes);
  };

  const bytesOf: History['bytesOf'] = (hash) => {
    if (!/^[\da-f]{64}$/.test(hash)) return undefined;
    try {
      const bytes = readFileSync(join(kept, hash));
      return sha256(bytes) === hash ? bytes : undefined;
    } catch {
      return undefined;
    }
  };

  /** Leaves out the oldest, and bytes that no change names. */
  const tidy = (): void => {
    const sizes = new Map<string, number>();
    for (const name of readdirSync(kept)) sizes.set(name, statSync(join(kept, name)).size);
    let bytes = 0;
    const counted = new Set<string>();
    let from = entries.length;
    while (from > 0 && entries.length - from < MOST_ENTRIES) {
      const { before, after } = entries[from - 1] as Entry;
      for (const hash of [before, after])
        if (hash !== null && !counted.has(hash)) {
          counted.add(hash);
          bytes += sizes.get(hash) ?? 0;
        }
      if (bytes > MOST_BYTES && from < entries.length) break;
      from -= 1;
    }
    for (const { id } of entries.slice(0, from)) rmSync(fileOf(id), { force: true });
    entries = entries.slice(from);
    const named = new Set(entries.flatMap(({ before, after }) => [before, after]));
    for (const name of sizes.keys()) if (!named.has(name)) rmSync(join(kept, name), { force: true });
  };
  tidy();

  const change: History['change'] = ({ path, seen, bytes, about, undoes }) => {
    const current = stateOf(content, path);
    if ((current?.hash ?? null) !== seen) return { kind: 'changed underneath', now: current };
    const after = bytes === null ? null : sha256(bytes);
    if (after === seen) return { kind: 'written', hash: after };
    // The folder may have been taken away meanwhile.
    mkdirSync(kept, { recursive: true });
    if (current) keep(current.bytes);
    if (bytes) keep(bytes);
    const entry: Entry = {
      id: next,
      at: now(),
      path,
      before: seen,
      after,
      about,
      ...(undoes !== undefined && { undoes }),
    };
    const file = fileOf(next);
    put(file, Buffer.from(JSON.stringify(entry)));
    next += 1;
    const written = replaceSeen(content, path, seen, bytes);
    if (written.kind === 'written') {
      entries.push(entry);
      if (entries.length > MOST_ENTRIES * 1.1) tidy();
    } else rmSync(file, { force: true });
    return written;
  };

  /** Whether there is a way back at all. */
  const isKept = ({ before }: Entry): boolean =>
    before === null || statSync(join(kept, before), { throwIfNoEntry: false }) !== undefined;
  const isAsLeft = ({ path, after }: Entry): boolean => (stateOf(content, path)?.hash ?? null) === after;
  const newest = (
    isOne: (entry: Entry, undone: ReadonlySet<number>) => boolean,
    path?: string,
  ): Entry | undefined => {
    const undone = undoneIn(entries);
    return entries.findLast(
      (entry) =>
        (path === undefined || entry.path === path) &&
        !undone.has(entry.id) &&
        isOne(entry, undone) &&
        isKept(entry) &&
        isAsLeft(entry),
    );
  };

  return {
    entries: () => entries,
    change,
    bytesOf,
    undoable: (path) => newest(({ undoes }) => undoes === undefined, path),
    redoable: (path) => {
      const takenBack = new Map(entries.map((entry) => [entry.id, entry]));
      return newest(
        ({ undoes }) => undoes !== undefined && takenBack.get(undoes)?.undoes === undefined,
        path,
      );
    },
    undo: (id) => {
      const entry = entries.find((one) => one.id === id);
      if (!entry) return undefined;
      const bytes = entry.before === null ? null : bytesOf(entry.before);
      if (bytes === undefined) return undefined;
      return change({ path: entry.path, seen: entry.after, bytes, about: entry.about, undoes: id });
    },
  };
};
