/** What we left in a published folder, as a value and as text. Imports nothing, because the check that nothing has changed waits for it. */

/** A file as we left it. */
export interface Entry {
  /** Hash of all that the file was made from; empty where an older version left the file. */
  readonly key: string;
  /** SHA-256 of its bytes; empty where an older version left the file. */
  readonly hash: string;
  /** Bytes. */
  readonly size: number;
  /** Milliseconds since 1970, with fractions. */
  readonly mtimeMs: number;
  readonly ino: number;
}

/** What tells one file from another without reading it. A rename changes none of it. */
export type Fingerprint = Pick<Entry, 'size' | 'mtimeMs' | 'ino'>;

export interface Manifest {
  /** Hash of the rest; empty where an older version wrote the manifest. */
  readonly id: string;
  readonly files: ReadonlyMap<string, Entry>;
  /** Folders that we made, the published one itself apart. */
  readonly folders: readonly string[];
}

/** Whether a file is the one that we left: an edit changes one of the three. */
export const isAsLeft = (entry: Fingerprint, found: Fingerprint): boolean =>
  entry.ino === found.ino && entry.mtimeMs === found.mtimeMs && entry.size === found.size;

/** All folders on the way to a path, the outermost first: of `a/b/c.html` they are `a` and `a/b`. */
export const foldersOf = (path: string): string[] => {
  const parts = path.split('/').slice(0, -1);
  return parts.map((_, i) => parts.slice(0, i + 1).join('/'));
};

/** Files and folders as JSON, without the manifest's own hash: what that hash is made of. */
export const manifestBody = (files: ReadonlyMap<string, Entry>, folders: readonly string[]): string => {
  const rows = [...files]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([path, { key, hash, size, mtimeMs, ino }]) => [path, key, hash, size, mtimeMs, ino]);
  return `"folders":${JSON.stringify([...folders].sort())},"files":[\n${rows.map((row) => JSON.stringify(row)).join(',\n')}\n]`;
};

export const manifestText = (id: string, body: string): string =>
  `{"version":2,"id":${JSON.stringify(id)},${body}}\n`;

const isText = (value: unknown): value is string => typeof value === 'string';
const isNumber = (value: unknown): value is number => typeof value === 'number';

const rowOf = (row: unknown): [string, Entry] | undefined => {
  if (!Array.isArray(row)) return undefined;
  const [path, key, hash, size, mtimeMs, ino]: unknown[] = row;
  return isText(path) && isText(key) && isText(hash) && isNumber(size) && isNumber(mtimeMs) && isNumber(ino)
    ? [path, { key, hash, size, mtimeMs, ino }]
    : undefined;
};

/** What the version before wrote: paths alone. It made every folder on their way. */
const olderManifest = (paths: readonly string[]): Manifest => ({
  id: '',
  files: new Map(paths.map((path) => [path, { key: '', hash: '', size: -1, mtimeMs: 0, ino: 0 }])),
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
