/** For how long the same content gives the same files. */
import { momentOfEvening } from '../analysis/parcels/reveal.ts';
import type { Box, Moment } from '../model/box.ts';
import { dateInZone, endOfDay } from '../model/calendar.ts';
import { nextChange } from '../model/next-change.ts';

/**
 * The next moment at which the same content could give other files: papers bear the day, a reveal or the end of a sale
 * changes pages, and the evenings that are proposed for a reveal are those still to come.
 */
export const unchangedUntil = (box: Box, asOf: Moment): Moment => {
  const { timeZone, revealHabit = {} } = box.settings;
  const today = dateInZone(asOf, timeZone);
  const coming = [
    endOfDay(today, timeZone),
    nextChange(box, asOf)?.at,
    momentOfEvening(today, revealHabit, timeZone),
    ...box.cycles.map(({ reveal }) => reveal),
  ].filter((moment): moment is Moment => moment !== undefined && moment > asOf);
  // A letter without a date bears the moment of the build.
  const isDated = box.cycles.every(({ reveal }) => reveal !== undefined);
  return isDated ? Math.min(...coming) : asOf;
};
