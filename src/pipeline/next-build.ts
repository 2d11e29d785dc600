/** When to build again, in words for the owner and as data. */
import type { Box, Moment } from '../model/box.ts';
import { isoInstant, longTime } from '../model/calendar.ts';
import { type Change, nextChange } from '../model/next-change.ts';
import { pageLang } from '../render/page-lang.ts';

export interface NextBuild {
  /** ISO 8601 in UTC. */
  readonly at: string;
  readonly changes: readonly Change[];
  /** "23 April 2026, 19:00: 2026-04, Small Wings, is revealed", in the box's zone. */
  readonly words: string;
}

const changeWords = (one: Change): string => {
  if (one.change === 'reveal') return `${one.cycle}, ${one.theme}, is revealed`;
  if (one.change === 'spare') return `spare pieces of ${one.name} (${one.cycle}) go off sale`;
  return `the call of ${one.cycle ?? 'the box'} is ${one.call ? `then \`${one.call}\`` : 'gone'}`;
};

/** The next build that would give another site of the same content; undefined where none is known. */
export const nextBuild = (box: Box, asOf: Moment): NextBuild | undefined => {
  const next = nextChange(box, asOf);
  if (!next) return undefined;
  const { lang, timeZone } = box.settings;
  const when = longTime(next.at, timeZone, pageLang(lang));
  return {
    at: isoInstant(next.at),
    changes: next.changes,
    words: `${when}: ${next.changes.map(changeWords).join('; ')}`,
  };
};
