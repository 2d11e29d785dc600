/** Published pictures between runs: each in a file of its own, named for the job it was made by. */
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import { MS_A_DAY } from '../../text/days.ts';
import { removeAbandoned, unfinished } from '../unfinished.ts';

export interface RememberedPictures {
  /** The picture of a job, by its key; undefined where there is none, or none that is as it was written. */
  readonly recall: (key: string) => Uint8Array | undefined;
  /** Whether one is there, without looking inside. */
  readonly has: (key: string) => boolean;
  /** Never throws: a picture that the disk does not take is remembered for as long as the process lasts. */
  readonly keep: (key: string, picture: Uint8Array) => void;
  /** Takes away what has not been asked for lately; `asked` are the keys of this run. Never throws. */
  readonly forgetOthers: (asked: ReadonlySet<string>) => void;
}

/** A checksum of the key and of what comes before: a picture that was cut, emptied or has another's name is made again. */
const FOOT = 4;

const checksumOf = (key: string, picture: Uint8Array): number => crc32(picture, crc32(key));

/** Milliseconds for which a picture that nobody asks for is kept: an owner who goes back finds it. */
const KEPT = 14 * MS_A_DAY;

/** Opens the pictures in a folder, which need not be there yet. */
export const rememberedPictures = (folder: string): RememberedPictures => {
  let names: Set<string> | undefined;
  /** Pictures that the disk did not take: this run goes on with them. */
  const held = new Map<string, Uint8Array>();
  const there = (): Set<string> => {
    if (names === undefined) {
      try {
        names = new Set(readdirSync(folder));
      } catch {
        names = new Set();
      }
    }
    return names;
  };
  return {
    has: (key) => held.has(key) || there().has(key),
    recall: (key) => {
      const mine = held.get(key);
      if (mine !== undefined || !there().has(key)) return mine;
      try {
        const bytes = readFileSync(join(folder, key));
        const picture = bytes.subarray(0, bytes.length - FOOT);
        if (bytes.length > FOOT && checksumOf(key, picture) === bytes.readUInt32LE(bytes.length - FOOT))
          return picture;
      } catch {
        // Gone since the folder was listed: it is made again.
      }
      there().delete(key);
      return undefined;
    },
    keep: (key, picture) => {
      const foot = Buffer.alloc(FOOT);
      foot.writeUInt32LE(checksumOf(key, picture));
      const temporary = unfinished(join(folder, key));
      try {
        mkdirSync(folder, { recursive: true });
        // Written aside first: a run that is stopped must not leave half a picture under a good name.
        writeFileSync(temporary, Buffer.concat([picture, foot]));
        renameSync(temporary, join(folder, key));
        there().add(key);
      } catch {
        held.set(key, picture);
      }
    },
    forgetOthers: (asked) => {
      const now = Date.now();
      removeAbandoned(folder);
      for (const name of there()) {
        const path = join(folder, name);
        try {
          const age = now - statSync(path).mtimeMs;
          // A file's time says when its picture was last asked for, to within a week.
          if (asked.has(name)) {
            if (age > KEPT / 2) utimesSync(path, now / 1000, now / 1000);
          } else if (age > KEPT) rmSync(path);
        } catch {
          // Gone, or the disk refuses: a picture too many does no harm.
        }
      }
    },
  };
};
