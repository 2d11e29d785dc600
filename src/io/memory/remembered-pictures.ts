/** Published pictures between runs: each in a file of its own, named for the job it was made by. */
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import type { PictureJob } from '../../render/output.ts';
import { MS_A_DAY } from '../../text/days.ts';

export interface RememberedPictures {
  /** The picture of a job, by its key; undefined where there is none, or none that is as it was written. */
  readonly recall: (key: string) => Uint8Array | undefined;
  /** Whether one is there, without looking inside. */
  readonly has: (key: string) => boolean;
  readonly keep: (key: string, picture: Uint8Array) => void;
  /** Takes away what is in none of these jobs and was not made lately. */
  readonly forgetOthers: (keys: ReadonlySet<string>) => void;
}

export type JobKey = (job: PictureJob) => string;

/** A checksum of what comes before it: a picture that was cut, emptied or put there by another hand is made again. */
const FOOT = 4;

/** Milliseconds for which a picture that nobody asks for is kept: an owner who goes back finds it. */
const KEPT = 14 * MS_A_DAY;

/** Opens the pictures in a folder, which need not be there yet. */
export const rememberedPictures = (folder: string): RememberedPictures => {
  let names: Set<string> | undefined;
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
    has: (key) => there().has(key),
    recall: (key) => {
      if (!there().has(key)) return undefined;
      try {
        const bytes = readFileSync(join(folder, key));
        const picture = bytes.subarray(0, bytes.length - FOOT);
        if (bytes.length > FOOT && crc32(picture) === bytes.readUInt32LE(bytes.length - FOOT)) return picture;
      } catch {
        // Gone since the folder was listed: it is made again.
      }
      there().delete(key);
      return undefined;
    },
    keep: (key, picture) => {
      mkdirSync(folder, { recursive: true });
      const foot = Buffer.alloc(FOOT);
      foot.writeUInt32LE(crc32(picture));
      const temporary = join(folder, `${key}.${process.pid}.part`);
      // Written aside first: a run that is stopped must not leave half a picture under a good name.
      writeFileSync(temporary, Buffer.concat([picture, foot]));
      renameSync(temporary, join(folder, key));
      there().add(key);
    },
    forgetOthers: (keys) => {
      const now = Date.now();
      for (const name of there()) {
        if (keys.has(name)) continue;
        const path = join(folder, name);
        const age = now - (statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? now);
        if (age > KEPT || (name.endsWith('.part') && age > 3_600_000)) rmSync(path, { force: true });
      }
    },
  };
};
