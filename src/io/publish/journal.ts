/** What a run has decided to do to a folder. Everything in it is made already, so that it only has to be put in place. */
import { type Manifest, manifestOf, manifestText } from './manifest.ts';

export interface Journal {
  /** Name of the folder that holds the new files and, as `manifest`, the new manifest. */
  readonly staging: string;
  /** What stands in the folder afterwards. */
  readonly next: Manifest;
  /** Files to take away before all else. */
  readonly first: readonly Leaving[];
  /** Folders to make, the outer before the inner. */
  readonly make: readonly string[];
  /** New files, in the order in which they are to be put in place. */
  readonly place: readonly Placing[];
  /** Files to take away last. */
  readonly gone: readonly Leaving[];
  /** Folders of ours that are not needed any more, to be removed where they are empty by then. */
  readonly drop: readonly string[];
}

/** A file to take away, as it was found, so that one which the owner puts there later is not taken for it. */
export interface Leaving {
  readonly path: string;
  /** Its `printOf`. */
  readonly print: string;
}

/** A new file, by its name in the staging folder. */
export interface Placing {
  readonly staged: string;
  readonly path: string;
  /** Whether a file of ours stood there. */
  readonly isOver: boolean;
}

/** Names of the new manifest and the journal in the staging folder. */
export const STAGED_MANIFEST = 'manifest';
export const STAGED_JOURNAL = 'journal';

/** The journal as JSON; `body` is the `manifestBody` of what stands afterwards. */
export const journalText = ({ next, ...rest }: Journal, body: string): string =>
  `${JSON.stringify(rest).slice(0, -1)},"next":${manifestText(next.id, body).trimEnd()}}\n`;

const areTexts = (value: unknown): value is string[] =>
  Array.isArray(value) && value.every((one) => typeof one === 'string');

const areLeaving = (value: unknown): value is Leaving[] =>
  Array.isArray(value) &&
  value.every(
    (one: Partial<Record<keyof Leaving, unknown>>) =>
      typeof one.path === 'string' && typeof one.print === 'string',
  );

const arePlacing = (value: unknown): value is Placing[] =>
  Array.isArray(value) &&
  value.every(
    (one: Partial<Record<keyof Placing, unknown>>) =>
      typeof one.staged === 'string' && typeof one.path === 'string' && typeof one.isOver === 'boolean',
  );

/** The journal in a text; undefined where there is none. A crash leaves no half of one, because it is renamed into its place. */
export const parseJournal = (text: string): Journal | undefined => {
  if (text === '') return undefined;
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof value !== 'object' || value === null) return undefined;
  const given: Partial<Record<keyof Journal, unknown>> = value;
  const { staging, first, make, place, gone, drop } = given;
  const next = manifestOf(given.next);
  if (!next || typeof staging !== 'string' || !areTexts(make) || !areTexts(drop)) return undefined;
  return areLeaving(first) && arePlacing(place) && areLeaving(gone)
    ? { staging, next, first, make, place, gone, drop }
    : undefined;
};
