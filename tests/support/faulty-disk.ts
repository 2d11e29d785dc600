/** A disk that refuses, or a process that dies, at a chosen call. */
import { disk, type FileSystem } from '../../src/io/publish/file-system.ts';

/** `die`: the process ends before the call. `die in it`: of what it was to write, half is written. Else the call fails with this code of the system. */
export const FAULTS = ['die', 'die in it', 'EACCES', 'ENOSPC', 'EXDEV', 'EIO'] as const;
export type Fault = (typeof FAULTS)[number];

export interface FaultyDisk {
  readonly fs: FileSystem;
  /** Calls made so far. */
  readonly calls: () => number;
  /** Name of the call that the fault met; undefined when it met none. */
  readonly met: () => string | undefined;
}

const DEAD = 'The process is dead';

/** Whether an error is how a simulated death looks to the code that dies. */
export const isDeath = (error: unknown): boolean => error instanceof Error && error.message.includes(DEAD);

/** The real disk until call number `at` (the first is 0), which meets the fault. `after` is called after each call that was made. */
export const faultyDisk = (at: number, fault: Fault, after: () => void = () => {}): FaultyDisk => {
  let calls = 0;
  let dead = false;
  let met: string | undefined;
  /** Throws where the call must not be made. */
  const before = (name: string): void => {
    if (dead) throw new Error(DEAD);
    if (calls++ !== at) return;
    met = name;
    if (fault === 'die' || fault === 'die in it') {
      dead = true;
      throw new Error(DEAD);
    }
    throw Object.assign(new Error(`${fault}: made to fail, ${name}`), { code: fault });
  };
  const wrapped =
    <A extends unknown[], R>(name: string, call: (...args: A) => Promise<R>) =>
    async (...args: A): Promise<R> => {
      before(name);
      const result = await call(...args);
      if (!dead) after();
      return result;
    };
  const wrappedNow =
    <A extends unknown[], R>(name: string, call: (...args: A) => R) =>
    (...args: A): R => {
      before(name);
      return call(...args);
    };
  const fs: FileSystem = {
    lstat: wrappedNow('lstat', disk.lstat),
    list: wrappedNow('list', disk.list),
    read: wrapped('read', disk.read),
    write: async (path, bytes) => {
      try {
        before('write');
      } catch (error) {
        if (met === 'write' && fault !== 'EACCES' && fault !== 'die' && calls === at + 1)
          await disk.write(path, bytes.slice(0, bytes.length / 2)).catch(() => undefined);
        throw error;
      }
      await disk.write(path, bytes);
      if (!dead) after();
    },
    claim: wrapped('claim', disk.claim),
    rename: wrapped('rename', disk.rename),
    unlink: wrapped('unlink', disk.unlink),
    rmdir: wrapped('rmdir', disk.rmdir),
    makeFolder: wrapped('makeFolder', disk.makeFolder),
    sync: wrapped('sync', disk.sync),
    realpath: wrapped('realpath', disk.realpath),
    readlink: wrapped('readlink', disk.readlink),
    // A sign of life comes by the clock, so it is not counted.
    touch: disk.touch,
  };
  return { fs, calls: () => calls, met: () => met };
};
