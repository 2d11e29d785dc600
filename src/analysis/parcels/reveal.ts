/** When the box may be shown: after the wanted share has arrived, on an evening of the box's habit. */
import type { Moment, PlainDate, RevealHabit } from '../../model/box.ts';
import { dateInZone, momentOf } from '../../model/calendar.ts';
import { dateOfDay, dayOfDate, weekdayOf } from '../../text/days.ts';
import type { ExpectedDate } from './expected.ts';
import { ROUNDING } from './rounding.ts';

/** Evening in most homes. Common practice, no source. */
const DEFAULT_TIME = '19:00';
const EVERY_DAY: readonly number[] = [1, 2, 3, 4, 5, 6, 7];

/** A week: a box whose habit is one weekday cannot move by less. */
const NEEDLESS_DAYS = 7;

/** Evenings named: the proposed one and its alternatives. */
const PROPOSED = 3;

/** The moment of a day's evening by the habit; undefined where its time is none. */
export const momentOfEvening = (date: PlainDate, habit: RevealHabit, timeZone: string): Moment | undefined =>
  momentOf(`${date}T${habit.time ?? DEFAULT_TIME}`, timeZone);

/**
 * The next evenings that the habit allows, on or after `from` (a day number) and after the moment `after`. A time
 * that a change of clocks skips is an hour later, as `momentOf` has it.
 */
export const evenings = (
  from: number,
  after: Moment,
  habit: RevealHabit,
  timeZone: string,
  count = PROPOSED,
): readonly Moment[] => {
  const weekdays = habit.weekdays?.length ? habit.weekdays : EVERY_DAY;
  const found: Moment[] = [];
  for (let day = Math.max(from, dayOfDate(dateInZone(after, timeZone))); found.length < count; day += 1) {
    if (!weekdays.includes(weekdayOf(day))) continue;
    const moment = momentOfEvening(dateOfDay(day), habit, timeZone);
    if (moment === undefined) throw new Error(`Expected a time of day, found ${habit.time}`);
    if (moment > after) found.push(moment);
  }
  return found;
};

/**
 * `safe`: the wanted share has surely arrived the day before. `close`: it is expected to have, and may not.
 * `early`: it is not expected to have. `late`: an evening a week or more before would be safe too. `unknown`: too little
 * has arrived to tell.
 */
type Verdict = 'safe' | 'close' | 'early' | 'late' | 'unknown';

/** A planned reveal as judged, and others that are proposed. */
export interface JudgedReveal {
  /** The planned moment, where there is one. */
  readonly planned?: Moment;
  /** Whether the planned moment is over. */
  readonly past: boolean;
  readonly verdict: Verdict;
  /** The first evening that the habit allows after the share is expected, and the next; empty where unknown, or past. */
  readonly proposed: readonly Moment[];
  /** The first evening by the upper limit of the interval, where it has one. */
  readonly surely?: Moment;
}

/** What a reveal is judged by. */
interface RevealInput {
  readonly planned?: Moment;
  readonly asOf: Moment;
  readonly habit: RevealHabit;
  readonly timeZone: string;
  /** Day number by whose end the share has arrived, with its interval. */
  readonly expected: ExpectedDate;
  /** Share that had arrived by the end of the day before the planned moment, where that day is over. */
  readonly before?: number;
  /** The share that is waited for. */
  readonly share: number;
}

/** Judges the planned moment, and proposes others. An evening counts as after a day from the next day on. */
export const judgeReveal = (input: RevealInput): JudgedReveal => {
  const { planned, asOf, habit, timeZone, expected, before, share } = input;
  const past = planned !== undefined && planned <= asOf;
  const plannedDay = planned === undefined ? undefined : dayOfDate(dateInZone(planned, timeZone));
  const ready = expected.day === undefined ? undefined : expected.day + 1;
  const sure = expected.upper === undefined ? undefined : expected.upper + 1;
  const verdict = (): Verdict => {
    if (plannedDay === undefined) return 'unknown';
    // What has happened is known, and needs neither an estimate nor its limits.
    if (before !== undefined && before < share - ROUNDING) return 'early';
    if (before === undefined && ready === undefined) return 'unknown';
    if (before === undefined && ready !== undefined && plannedDay < ready) return 'early';
    if (sure === undefined || plannedDay < sure) return before === undefined ? 'close' : 'safe';
    // An evening that is over is none that could be taken instead.
    const from = past ? (momentOf(`${dateOfDay(sure)}T00:00`, timeZone) as Moment) : asOf;
    const [first] = evenings(sure, from, habit, timeZone, 1);
    const firstDay = dayOfDate(dateInZone(first as Moment, timeZone));
    return plannedDay - firstDay >= NEEDLESS_DAYS ? 'late' : 'safe';
  };
  const surely = sure === undefined || past ? undefined : evenings(sure, asOf, habit, timeZone, 1)[0];
  return {
    ...(planned !== undefined && { planned }),
    past,
    verdict: verdict(),
    // What was revealed is not revealed again.
    proposed: past || ready === undefined ? [] : evenings(ready, asOf, habit, timeZone),
    ...(surely !== undefined && { surely }),
  };
};
