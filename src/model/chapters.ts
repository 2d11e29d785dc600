/** A recording's chapters: when each beat began, from the times that the owner wrote down afterwards. */
import { type NamedKind, namedKind } from './beat-names.ts';
import type { Cycle } from './box.ts';

/** A chapter as data; its title is the wording's. */
export interface Chapter {
  /** As cycle.md has it: `hook`, or an item's slug. */
  readonly name: string;
  /** What it tells, where it is not an item. */
  readonly kind?: NamedKind;
  /** The item's whole name, where it is one. */
  readonly item?: string;
  /** Seconds from the start of the recording. */
  readonly start: number;
  /** The next one's start; the last ends with the recording. */
  readonly end: number;
  /** The same, absent where nobody wrote down how long the recording is: for what may say nothing that is not known. */
  readonly knownEnd?: number;
  /** Whether somebody who missed the live would look for it. */
  readonly sought: boolean;
}

/** Seconds given to the last chapter of a recording whose length nobody wrote down. */
const LAST_CHAPTER = 60;

const SOUGHT: ReadonlySet<string> = new Set(['chosen', 'mishap', 'whole', 'peek']);

/** The chapters of a cycle's recording in order; none where no times are known. They neither overlap nor leave gaps. */
export const chaptersOf = ({ replay, items }: Pick<Cycle, 'replay' | 'items'>): readonly Chapter[] => {
  const beats = replay?.beats ?? [];
  const length = (replay?.minutes ?? 0) * 60;
  return beats.map(({ name, at }, i) => {
    const kind = namedKind(name);
    const item = items.find(({ slug }) => slug === name);
    const next = beats[i + 1]?.at;
    const knownEnd = next ?? (length > at ? length : undefined);
    return {
      name,
      ...(kind ? { kind } : {}),
      ...(item && !kind ? { item: item.name } : {}),
      start: at,
      end: next ?? Math.max(length, at + LAST_CHAPTER),
      ...(knownEnd === undefined ? {} : { knownEnd }),
      sought: item !== undefined || SOUGHT.has(name),
    };
  });
};

/** The address of a moment of a recording: W3C Media Fragments URI 1.0 (2012), §4.2.1, normal play time in seconds. */
export const momentAddress = (address: string, seconds: number): string =>
  `${address}${address.includes('#') ? '&' : '#'}t=${Math.round(seconds)}`;
