/** What an address serves, held against a folder: each file by its hash, that address alone. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { sha256 } from '../text/hash.ts';
import { mapConcurrently } from './map-concurrently.ts';

/** What became of the files of a folder at an address; paths are those in the folder. */
export interface Compared {
  /** Files that are served as they are in the folder. */
  readonly same: number;
  /** Served with another content, or only at another address. */
  readonly other: readonly string[];
  /** Not served (RFC 9110, 15.5.5 and 15.5.11). */
  readonly missing: readonly string[];
  /** Of which nobody knows, because no answer came. */
  readonly unanswered: readonly string[];
}

export interface CompareOptions {
  readonly folder: string;
  /** Files of the folder, with forward slashes. */
  readonly paths: readonly string[];
  readonly onProgress?: (done: number, total: number) => void;
  readonly signal?: AbortSignal;
}

/** Files asked for at once: a small host is not to be pressed. */
const AT_ONCE = 4;
/** Milliseconds for one file. */
const PATIENCE = 20_000;

/** An address that can be compared, ending in a slash, without query and fragment; undefined for what is none. */
export const servedAt = (typed: string): URL | undefined => {
  const written = typed.trim();
  const whole = /^[a-z][a-z\d+.-]*:\/\//i.test(written) ? written : `https://${written}`;
  if (written === '' || !URL.canParse(whole)) return undefined;
  const url = new URL(whole);
  if (!/^https?:$/.test(url.protocol) || url.username !== '' || url.password !== '') return undefined;
  url.search = '';
  url.hash = '';
  // A page is named where its folder is meant.
  url.pathname = `${url.pathname.replace(/[^/]*\.html?$/i, '').replace(/\/+$/, '')}/`;
  return url;
};

const pathAt = (base: URL, path: string): URL =>
  new URL(path.split('/').map(encodeURIComponent).join('/'), base);

/** The body as far as it may be what is sought: one that is longer is another. */
const bodyOf = async (answer: Response, most: number): Promise<Uint8Array | undefined> => {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of answer.body ?? []) {
    size += chunk.length;
    if (size > most) return undefined;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
};

type Fate = 'same' | 'other' | 'missing' | 'unanswered';

const fateOf = async (at: URL, mine: Uint8Array, signal: AbortSignal | undefined): Promise<Fate> => {
  const late = AbortSignal.timeout(PATIENCE);
  try {
    const answer = await fetch(at, {
      // Where it leads elsewhere, that place is not asked.
      redirect: 'manual',
      headers: { 'cache-control': 'no-cache' },
      signal: signal ? AbortSignal.any([signal, late]) : late,
    });
    if (answer.status !== 200) {
      await answer.body?.cancel();
      return answer.status === 404 || answer.status === 410 ? 'missing' : 'other';
    }
    const theirs = await bodyOf(answer, mine.length);
    return theirs && sha256(theirs) === sha256(mine) ? 'same' : 'other';
  } catch {
    signal?.throwIfAborted();
    return 'unanswered';
  }
};

/**
 * Asks an address for every file and compares hashes. Nothing is asked but that address, and no redirect is followed; where
 * the first file is not answered, no other is asked for. Rejects where `signal` stops it.
 */
export const compareServed = async (
  base: URL,
  { folder, paths, onProgress, signal }: CompareOptions,
): Promise<Compared> => {
  const fates = new Map<string, Fate>();
  const ask = async (path: string): Promise<void> => {
    signal?.throwIfAborted();
    fates.set(path, await fateOf(pathAt(base, path), await readFile(join(folder, path)), signal));
    onProgress?.(fates.size, paths.length);
  };
  const [first, ...others] = paths;
  if (first !== undefined) await ask(first);
  if (fates.get(first ?? '') !== 'unanswered') await mapConcurrently(AT_ONCE, others, ask);
  const of = (fate: Fate): readonly string[] =>
    paths.filter((path) => (fates.get(path) ?? 'unanswered') === fate);
  return {
    same: of('same').length,
    other: of('other'),
    missing: of('missing'),
    unanswered: of('unanswered'),
  };
};
