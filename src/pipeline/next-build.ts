/** When to build again. */
import type { Box, Moment } from '../model/box.ts';
import { isoInstant, longTime } from '../model/calendar.ts';
import { type Change, nextChange } from '../model/next-change.ts';
import { pageLang } from '../render/page-lang.ts';

/** The next moment at which the same content gives another site. */
export interface NextBuild {
  /** ISO 8601 in UTC. */
  readonly at: string;
  readonly changes: readonly Change[];
  /** "23 April 2026, 19:00", in the box's zone. */
  readonly when: string;
}

/** The next build that would give another site of the same content; undefined where none is known. */
export const nextBuild = (box: Box, asOf: Moment): NextBuild | undefined => {
  const next = nextChange(box, asOf);
  if (!next) return undefined;
  const { lang, timeZone } = box.settings;
  return {
    at: isoInstant(next.at),
    when: longTime(next.at, timeZone, pageLang(lang)),
    changes: next.changes,
  };
};
