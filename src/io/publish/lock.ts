/**
 * One run at a time in a folder. A lock is a file that names who holds it. When the holder is dead, whoever
 * first makes the file `LOCK.TOKEN`, with the dead one's token, holds the folder; when that one is dead too,
 * so on. Tokens are never used twice, so a dead holder has one successor. The first file of such a chain is the
 * first to go when the folder is free again: a slow run that then still makes a successor's file sees that
 * the chain does not lead there, and takes it back.
 */
import { randomUUID } from 'node:crypto';
import { readFileSync, readlinkSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { codeOf } from '../../text/error-code.ts';
import { utf8Text } from '../../text/utf8.ts';
import type { FileSystem } from './file-system.ts';
import { LOCK } from './names.ts';

export interface Holder {
  readonly token: string;
  readonly pid: number;
  /** The machine, and the process numbers' own world on it where there is more than one (a container). */
  readonly host: string;
  /** When the process began, as the system counts, because a number is given to another process later; empty where the system does not tell. */
  readonly began: string;
}

export interface Lock {
  /** Never rejects: a lock that cannot be taken away counts as a dead one's from now on. */
  readonly release: () => Promise<void>;
}

const POLL_MS = 50;
/** A holder that we cannot ask shows that it lives by touching its file this often; */
const BEAT_MS = 2_000;
/** when it did not for so long, it is dead. */
const SILENCE_MS = 15_000;

/** Tokens held by this process: a lock with its number and another token is left over from one before. */
const held = new Set<string>();

/** Fields of /proc/PID/stat after the name, which may hold blanks: the first is the state, the twentieth the start (proc_pid_stat(5), fields 3 and 22). */
const processFacts = (pid: number): readonly string[] | undefined => {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, 'latin1');
    return text.slice(text.lastIndexOf(')') + 2).split(' ');
  } catch {
    return undefined;
  }
};
const beganOf = (pid: number): string => processFacts(pid)?.[19] ?? '';

const thisHost = (): string => {
  try {
    return `${hostname()} ${readlinkSync('/proc/self/ns/pid')}`;
  } catch {
    return hostname();
  }
};

const lives = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
  } catch (error) {
    return codeOf(error) === 'EPERM';
  }
  return processFacts(pid)?.[0] !== 'Z';
};

/** `unknown`: on another machine, or a file that does not say who made it. */
const lifeOf = (holder: Holder): 'alive' | 'dead' | 'unknown' => {
  if (holder.host !== thisHost()) return 'unknown';
  if (!lives(holder.pid) || beganOf(holder.pid) !== holder.began) return 'dead';
  return holder.pid !== process.pid || held.has(holder.token) ? 'alive' : 'dead';
};

interface Link {
  readonly file: string;
  readonly holder: Holder;
  /** Changes with each sign of life. */
  readonly sign: string;
}

const holderOf = (text: string, otherwise: string): Holder => {
  const unknown = { token: otherwise, pid: 0, host: '', began: '' };
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null) return unknown;
    const { token, pid, host, began }: Partial<Record<keyof Holder, unknown>> = value;
    return typeof token === 'string' &&
      /^[\w-]+$/.test(token) &&
      typeof pid === 'number' &&
      typeof host === 'string' &&
      typeof began === 'string'
      ? { token, pid, host, began }
      : unknown;
  } catch {
    return unknown;
  }
};

/** The lock's files from the first to the one that holds. */
const chainIn = async (fs: FileSystem, dir: string): Promise<readonly Link[]> => {
  const chain: Link[] = [];
  for (let file = join(dir, LOCK); ; file = join(dir, `${LOCK}.${chain.at(-1)?.holder.token}`)) {
    const found = fs.lstat(file);
    const text = found && (await fs.read(file));
    if (!text) return chain;
    const sign = found.print;
    chain.push({ file, holder: holderOf(utf8Text(text), `of-${sign}`), sign });
  }
};

const claimed = async (fs: FileSystem, file: string, holder: Holder): Promise<boolean> => {
  try {
    await fs.claim(file, `${JSON.stringify(holder)}\n`);
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST' || codeOf(error) === 'ENOENT') return false;
    throw error;
  }
};

/** Takes away what runs that were stopped left of their chains. */
const sweep = async (fs: FileSystem, dir: string, chain: readonly Link[]): Promise<void> => {
  const mine = new Set(chain.map(({ file }) => file));
  for (const { name } of fs.list(dir)) {
    const file = join(dir, name);
    if (name.startsWith(`${LOCK}.`) && !mine.has(file)) await fs.unlink(file).catch(() => undefined);
  }
};

const lockOf = (fs: FileSystem, chain: readonly Link[], token: string): Lock => {
  const last = chain.at(-1)?.file ?? '';
  const beat = setInterval(() => void fs.touch(last).catch(() => undefined), BEAT_MS);
  beat.unref();
  return {
    release: async () => {
      clearInterval(beat);
      held.delete(token);
      for (const { file } of chain) {
        const freed = await fs.unlink(file).then(
          () => true,
          (error) => codeOf(error) === 'ENOENT',
        );
        // The rest of a chain must not go before its beginning.
        if (!freed) return;
      }
    },
  };
};

/**
 * Waits until no other run works on `dir`, which it makes where it is absent, and holds it. `onWait` is told
 * once who is waited for. With `wait: false` it gives undefined rather than wait. Rejects when the disk refuses.
 */
export const lock = async (
  fs: FileSystem,
  dir: string,
  { wait, onWait }: { readonly wait: boolean; readonly onWait?: ((holder: Holder) => void) | undefined },
): Promise<Lock | undefined> => {
  const token = randomUUID();
  const me: Holder = { token, pid: process.pid, host: thisHost(), began: beganOf(process.pid) };
  let told = false;
  let last = { sign: '', since: 0 };
  let mine: string | undefined;
  held.add(token);
  try {
    for (;;) {
      if (wait) await fs.makeFolder(dir);
      const chain = await chainIn(fs, dir);
      const end = chain.at(-1);
      if (end && end.sign !== last.sign) last = { sign: end.sign, since: Date.now() };
      const life = end && lifeOf(end.holder);
      const isFree =
        life === undefined || life === 'dead' || (life === 'unknown' && Date.now() - last.since > SILENCE_MS);
      const file = join(dir, end ? `${LOCK}.${end.holder.token}` : LOCK);
      if (isFree && (await claimed(fs, file, me))) {
        mine = file;
        const now = await chainIn(fs, dir);
        if (now.at(-1)?.holder.token === token) {
          await sweep(fs, dir, now);
          return lockOf(fs, now, token);
        }
        await fs.unlink(file).catch(() => undefined);
        mine = undefined;
      }
      if (!wait) {
        held.delete(token);
        return undefined;
      }
      if (!isFree && end) {
        if (!told) onWait?.(end.holder);
        told = true;
        await sleep(POLL_MS);
      }
    }
  } catch (error) {
    if (mine !== undefined) await fs.unlink(mine).catch(() => undefined);
    held.delete(token);
    throw error;
  }
};
