/**
 * The memory between runs, in a folder of packs. Each run writes packs of its own and never changes another's, so that
 * two runs at once do not meet; what neither reads any more is left out when packs are put together.
 */
import { randomUUID } from 'node:crypto';
import {
  closeSync,
  fstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import type { Memory } from '../../text/memory.ts';
import { removeAbandoned, unfinished } from '../unfinished.ts';
import {
  closePack,
  entriesIn,
  entrySize,
  openPack,
  PACK_HEAD,
  type PackEntry,
  packedEntry,
  valueIn,
} from './pack.ts';
import { readPackIndex, writePackIndex } from './pack-index.ts';

export interface LastingMemory extends Memory {
  /** Writes what is still held in memory, so that a run which is stopped from here on loses nothing. */
  readonly flush: () => void;
  /**
   * Finishes: this run's values are there for the next. `tidy` says that this run has asked for all that is of use; then
   * packs that have become many, or mostly useless, are put together without what it did not ask for. Never throws for
   * a disk that refuses: what is not remembered is made again.
   */
  readonly close: (tidy?: boolean) => void;
}

/** Values held before they are written, in bytes. */
const HELD = 8_000_000;

/** More packs than this are put together at the end of a run. */
const MOST_PACKS = 12;

/** From this many bytes on it is looked at how much of the packs is of no use any more. */
const WORTH_TIDYING = 20_000_000;

/** Share of the bytes that may be of no use before packs are put together. */
const MOST_WASTE = 0.5;

interface OpenPack {
  readonly path: string;
  readonly file: number;
  readonly size: number;
}

interface Place extends PackEntry {
  readonly pack: OpenPack;
}

const ENDING = '.pack';

/** Packs in the order they were made: their names begin with the time. */
const packsIn = (folder: string): readonly string[] => {
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith(ENDING))
      .sort();
  } catch {
    return [];
  }
};

const attempt = (work: () => void): boolean => {
  try {
    work();
    return true;
  } catch {
    return false;
  }
};

/** When a pack was begun, by its name, in milliseconds since 1970; 0 for a name that is not of ours. */
const timeIn = (name: string): number => (/^[0-9a-z]{8}-/.test(name) ? Number.parseInt(name, 36) : 0);

/**
 * Opens the memory in a folder, which need not be there yet. One that is not trusted recalls nothing but what it keeps
 * itself, and what it keeps takes the place of what is there.
 */
export const openMemory = (folder: string, isTrusted = true): LastingMemory => {
  const places = new Map<string, Place>();
  const packs: OpenPack[] = [];
  const used = new Set<string>();
  const held = new Map<string, Uint8Array>();
  let heldBytes = 0;
  let own: { readonly pack: OpenPack; readonly entries: PackEntry[]; end: number } | undefined;
  let writable = true;
  const there = packsIn(folder);
  let latest = Math.max(0, ...there.map(timeIn));

  /**
   * A name that no other run has, on this machine or on another whose memory is put beside this one's; in the order of time,
   * and after all that was there, also within one millisecond or where a clock was put back.
   */
  const freshName = (): string => {
    latest = Math.max(Date.now(), latest + 1);
    return `${latest.toString(36)}-${randomUUID().slice(0, 8)}`;
  };

  for (const name of isTrusted ? there : []) {
    const path = join(folder, name);
    const file = openPack(path);
    if (file === undefined) continue;
    const pack = { path, file, size: fstatSync(file).size };
    packs.push(pack);
    // A later pack's value takes the place of an earlier one's of the same key.
    for (const entry of readPackIndex(path, pack.size) ?? entriesIn(file, pack.size))
      places.set(entry.key, { ...entry, pack });
  }

  const begin = (): NonNullable<typeof own> => {
    mkdirSync(folder, { recursive: true });
    const path = join(folder, `${freshName()}${ENDING}`);
    // An existing name is another run's, and is left to it.
    const file = openSync(path, 'wx+');
    writeSync(file, PACK_HEAD);
    return { pack: { path, file, size: 0 }, entries: [], end: PACK_HEAD.length };
  };

  const write = (): void => {
    own ??= begin();
    const { pack, entries } = own;
    const pieces: Uint8Array[] = [];
    for (const [key, value] of held) {
      const written = packedEntry(key, value);
      const [head = new Uint8Array()] = written;
      const entry = {
        key,
        offset: own.end + head.length,
        length: value.length,
        checksum: Buffer.from(head.buffer, head.byteOffset, head.length).readUInt32LE(20),
      };
      pieces.push(...written);
      entries.push(entry);
      places.set(key, { ...entry, pack });
      own.end += entrySize(value.length);
    }
    writeSync(pack.file, Buffer.concat(pieces));
    held.clear();
    heldBytes = 0;
  };

  const flush = (): void => {
    if (held.size === 0 || !writable) return;
    // On a disk that takes no more, what is held stays held, and the run goes on without a memory.
    writable = attempt(write);
  };

  const recall = (key: string): Uint8Array | undefined => {
    used.add(key);
    const mine = held.get(key);
    if (mine !== undefined) return mine;
    const place = places.get(key);
    return place && valueIn(place.pack.file, place);
  };

  /** Writes all that is used into one pack, and takes the others away. */
  const tidy = (): void => {
    const live = [...places].filter(([key]) => used.has(key));
    const target = join(folder, `${freshName()}${ENDING}`);
    const temporary = unfinished(target);
    const file = openSync(temporary, 'wx');
    const entries: PackEntry[] = [];
    let end = PACK_HEAD.length;
    try {
      writeSync(file, PACK_HEAD);
      for (const [key, place] of live) {
        const value = valueIn(place.pack.file, place);
        if (value === undefined) continue;
        for (const piece of packedEntry(key, value)) writeSync(file, piece);
        entries.push({ ...place, key, offset: end + entrySize(0) });
        end += entrySize(value.length);
      }
    } finally {
      closeSync(file);
    }
    writePackIndex(target, entries, end);
    renameSync(temporary, target);
    for (const { path } of own ? [...packs, own.pack] : packs) {
      rmSync(path, { force: true });
      rmSync(`${path}.list`, { force: true });
    }
  };

  const wasteful = (): boolean => {
    const all = [...packs.map(({ size }) => size), own?.end ?? 0].reduce((sum, size) => sum + size, 0);
    if (packs.length + (own ? 1 : 0) > MOST_PACKS) return true;
    if (all < WORTH_TIDYING) return false;
    let live = 0;
    for (const [key, { length }] of places) if (used.has(key)) live += entrySize(length);
    return live < all * (1 - MOST_WASTE);
  };

  return {
    recall,
    has: (key) => {
      used.add(key);
      return held.has(key) || places.has(key);
    },
    keep: (key, value) => {
      used.add(key);
      const before = held.get(key);
      heldBytes += value.length - (before?.length ?? 0);
      held.set(key, value);
      if (heldBytes >= HELD) flush();
    },
    flush,
    close: (mayTidy = false) => {
      flush();
      if (own) {
        const { pack, entries, end } = own;
        attempt(() => writePackIndex(pack.path, entries, end));
      }
      if (mayTidy && writable && wasteful()) attempt(tidy);
      for (const { file } of own ? [...packs, own.pack] : packs) attempt(() => closePack(file));
      removeAbandoned(folder);
    },
  };
};
