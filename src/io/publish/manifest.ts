/** What we left in a published folder, as a value and as text. Imports nothing, because the check that nothing has changed waits for it. */

/** A file as we left it. */
export interface Entry {
  /** Hash of all that the file was made from; empty where an older version left the file. */
  readonly key: string;
  /** SHA-256 of its bytes in base64url; empty where an older version left the file. */
  readonly hash: string;
  /** The file's `printOf` as we left it; empty where an older version left the file. */
  readonly print: string;
}

/** What a file is known by without being read. */
interface Stamped {
  /** Bytes. */
  readonly size: number;
  readonly mtimeMs: number;
  readonly ino: number;
}

const WORD = 2 ** 32;

/** Held, because it is filled for every file of a site and arrays made anew take five times as long. */
const halves = new Uint32Array(8);

/** 53 bits made of what a file is known by, and of the number before. The mixing is a choice of ours, no source. */
export const mixed = ({ size, mtimeMs, ino }: Stamped, before = 0): number => {
  const whole = Math.floor(mtimeMs);
  const rest = Math.round((mtimeMs % 1) * 1e6);
  // What is stored is taken modulo the word.
  halves[0] = size;
  halves[1] = size / WORD;
  halves[2] = whole;
  halves[3] = whole / WORD;
  halves[4] = rest;
  halves[5] = rest / WORD;
  halves[6] = ino;
  halves[7] = ino / WORD;
  let low = 0x9e3779b9 ^ before;
  let high = 0x85ebca6b ^ (before / WORD);
  for (let i = 0; i < 8; i++) {
    const half = halves[i] as number;
    low = Math.imul(low ^ half ^ (high >>> 15), 0xcc9e2d51);
    high = Math.imul(high ^ half ^ (low >>> 13), 0x1b873593);
  }
  return (((high ^ (low >>> 16)) >>> 0) & 0x1fffff) * WORD + ((low ^ (high >>> 16)) >>> 0);
};

const PRINT_LENGTH = 12;

/**
 * What tells a file from the one that it was, without reading it: a rename keeps it, an edit does not. Twelve small
 * letters (53 bits) made of the size in bytes, the time of change in milliseconds and the inode: the published
 * folder shall say nothing of the machine.
 */
export const printOf = (file: Stamped): string => {
  let rest = mixed(file);
  let letters = '';
  for (let i = 0; i < PRINT_LENGTH; i++) {
    letters += String.fromCharCode(97 + (rest % 26));
    rest = Math.floor(rest / 26);
  }
  return letters;
};

export interface Manifest {
  /** Hash of the rest; empty where an older version wrote the manifest. */
  readonly id: string;
  readonly files: ReadonlyMap<string, Entry>;
  /** Folders that we made, the published one itself apart. */
  readonly folders: readonly string[];
}

/** All folders on the way to a path, the outermost first: of `a/b/c.html` they are `a` and `a/b`. */
export const foldersOf = (path: string): string[] => {
  const parts = path.split('/').slice(0, -1);
  return parts.map((_, i) => parts.slice(0, i + 1).join('/'));
};

/** Files and folders as JSON, without the manifest's own hash: what that hash is made of. */
export const manifestBody = (files: ReadonlyMap<string, Entry>, folders: readonly string[]): string => {
  const rows = [...files]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([path, { key, hash, print }]) => [path, key, hash, print]);
  return `"folders":${JSON.stringify([...folders].sort())},"files":[\n${rows.map((row) => JSON.stringify(row)).join(',\n')}\n]`;
};

export const manifestText = (id: string, body: string): string =>
  `{"version":2,"id":${JSON.stringify(id)},${body}}\n`;

const isText = (value: unknown): value is string => typeof value === 'string';

const rowOf = (row: unknown): [string, Entry] | undefined => {
  if (!Array.isArray(row)) return undefined;
  const [path, key, hash, print]: unknown[] = row;
  return isText(path) && isText(key) && isText(hash) && isText(print)
    ? [path, { key, hash, print }]
    : undefined;
};

/** What the version before wrote: paths alone. It made every folder on their way. */
const olderManifest = (paths: readonly string[]): Manifest => ({
  id: '',
  files: new Map(paths.map((path) => [path, { key: '', hash: '', print: '' }])),
  folders: [...new Set(paths.flatMap(foldersOf))],
});

/** The manifest that a parsed text holds; undefined for anything else, so that a damaged one is never trusted. */
export const manifestOf = (value: unknown): Manifest | undefined => {
  if (typeof value !== 'object' || value === null || !('files' in value) || !Array.isArray(value.files))
    return undefined;
  const given: unknown[] = value.files;
  if (!('version' in value)) return given.every(isText) ? olderManifest(given) : undefined;
  if (value.version !== 2 || !('id' in value) || !isText(value.id) || !('folders' in value)) return undefined;
  const folders: unknown = value.folders;
  if (!Array.isArray(folders) || !folders.every(isText)) return undefined;
  const files = new Map<string, Entry>();
  for (const row of given) {
    const read = rowOf(row);
    if (!read) return undefined;
    files.set(...read);
  }
  return { id: value.id, files, folders };
};

/** The manifest in a text; undefined where it is damaged or not one. */
export const parseManifest = (text: string): Manifest | undefined => {
  try {
    return manifestOf(JSON.parse(text));
  } catch {
    return undefined;
  }
};
