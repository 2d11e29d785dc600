/**
 * What the last build of a box saw and left. Where all of it still holds, a build has nothing to do; to find that out
 * nothing is loaded but this file and what lists folders.
 */
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ADDRESSES_FILE, type Added, checksumOfAddresses } from './addresses-file.ts';
import { checksum } from './checksum.ts';
import { CONTENT, isTooFresh, type ListedFile, listedIfThere, listFiles } from './list-files.ts';
import { intact, stampOf } from './publish/intact.ts';
import { unfinished } from './unfinished.ts';

/** The folders of a build, absolute paths. */
export interface BuildFolders {
  readonly content: string;
  /** The author's own templates; they may be absent. */
  readonly templates: string;
  /** Public. */
  readonly site: string;
  /** Private. */
  readonly backroom: string;
  /** What is remembered between runs. */
  readonly memory: string;
}

/** What tells one build of these folders from another, the files apart. */
export interface Asked {
  /** Identity of the program. */
  readonly program: string;
  /** The options, as they were given. */
  readonly options: string;
  /** The moment, where the options name none and it is now; milliseconds since 1970. */
  readonly now: number | undefined;
}

/** The moments as of which the same content gives the same files: from the first, up to but not the second. */
export interface Validity {
  readonly from: number;
  readonly until: number;
}

/** What was listed before anything was read. */
export interface Seen {
  /** Without the list of addresses. */
  readonly content: readonly ListedFile[];
  /** Checksum of the list of addresses: a build adds to it itself, so its stamp says nothing. */
  readonly addresses: string;
  readonly templates: readonly ListedFile[];
  /** When, in milliseconds since 1970. */
  readonly at: number;
}

interface Written extends Validity {
  readonly program: string;
  readonly options: string;
  readonly inputs: string;
  readonly outputs: string;
  readonly report: unknown;
}

const rows = (files: readonly ListedFile[]): string =>
  files.map(({ path, stamp }) => `${path}\0${stamp}`).join('\n');

/** The listing itself and no hash of it: it is short, and to load what hashes takes longer than to compare it. */
const inputsOf = ({ content, addresses, templates }: Seen): string =>
  `${rows(content)}\n${addresses}\n\n${rows(templates)}`;

/** What both folders are known by; undefined where either has no stamp. A back room that was never made is none. */
const outputsOf = (
  { site, backroom }: BuildFolders,
  stamp: (dir: string) => string | undefined,
): string | undefined => {
  const [open, closed] = [stamp(site), stamp(backroom)];
  if (open === undefined || (closed === undefined && existsSync(backroom))) return undefined;
  return `${open} ${closed ?? 'none'}`;
};

/** Builds of one content folder into several places are remembered side by side. */
const fileFor = ({ memory, site, backroom }: BuildFolders): string =>
  join(memory, `last-build-${checksum(`${site}\0${backroom}`)}.json`);

/** Lists what a build of these folders reads. Throws where the content cannot be read. */
export const seeFolders = ({ content, templates }: BuildFolders): Seen => ({
  at: Date.now(),
  content: listFiles(content, CONTENT).filter(({ path }) => path !== ADDRESSES_FILE),
  addresses: checksumOfAddresses(content),
  templates: listedIfThere(templates),
});

/** The report of the last build into these folders, where a build now would give the same files. Never throws. */
export const reportOfLastBuild = (
  folders: BuildFolders,
  { program, options, now }: Asked,
  seen: Seen,
): unknown => {
  try {
    const [text = '', sum] = readFileSync(fileFor(folders), 'utf8').split('\n');
    // A report of another shape must not reach who tells it.
    if (checksum(text) !== sum) return undefined;
    const last = JSON.parse(text) as Written;
    if (last.program !== program || last.options !== options) return undefined;
    if (now !== undefined && !(last.from <= now && now < last.until)) return undefined;
    if (last.inputs !== inputsOf(seen)) return undefined;
    return last.outputs === outputsOf(folders, stampOf) ? last.report : undefined;
  } catch {
    return undefined;
  }
};

/**
 * Writes down what a build saw and left. `seen` was listed before anything was read, so that
 * what was changed while the build ran is seen the next time; `added` is what the build itself added to the list of
 * addresses. Does nothing where the disk refuses.
 */
export const rememberBuild = (
  folders: BuildFolders,
  { program, options }: Asked,
  { from, until }: Validity,
  seen: Seen,
  report: unknown,
  added?: Added,
): void => {
  const outputs = outputsOf(folders, intact);
  // A file changed just before it was read may be changed again without another stamp.
  const isFresh = [...seen.content, ...seen.templates].some((file) => isTooFresh(file, seen.at));
  if (outputs === undefined || isFresh) return;
  const inputs = inputsOf(added?.from === seen.addresses ? { ...seen, addresses: added.to } : seen);
  const written: Written = { program, options, from, until, inputs, outputs, report };
  const file = fileFor(folders);
  try {
    mkdirSync(folders.memory, { recursive: true });
    const text = JSON.stringify(written);
    const temporary = unfinished(file);
    writeFileSync(temporary, `${text}\n${checksum(text)}`);
    renameSync(temporary, file);
  } catch {
    // The next build looks at everything once more.
  }
};
