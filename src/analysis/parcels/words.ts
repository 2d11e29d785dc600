/** The parcels in plain sentences, worded alike on a page and on a terminal. English. */

import type { Moment } from '../../model/box.ts';
import { longDate } from '../../model/calendar.ts';
import { capital, counted, listed, numberWord } from '../../text/counting-words.ts';
import { dateOfDay } from '../../text/days.ts';
import type { Group } from './compare.ts';
import type { ParcelsFacts } from './facts.ts';
import { arrivedBy } from './kaplan-meier.ts';
import type { Quantile } from './quantile.ts';

const parcelsWords = (count: number): string => counted(count, 'parcel');

/** Whole per cent, which never says all or none of what is not, nor rounds what falls short of `wanted` up to it. */
export const percent = (share: number, wanted = 1): string => {
  const nearest = Math.round(share * 100);
  const rounded = share < wanted && wanted < 1 && nearest >= wanted * 100 ? Math.floor(share * 100) : nearest;
  if (rounded === 100 && share < 1) return 'over 99%';
  if (rounded === 0 && share > 0) return 'under 1%';
  return `${rounded}%`;
};

/** "nine in ten", "half", "95%". */
export const shareWords = (share: number): string => {
  if (Math.abs(share - 0.5) < 1e-9) return 'half';
  if (Math.abs(share - 0.75) < 1e-9) return 'three in four';
  const tenths = share * 10;
  return Math.abs(tenths - Math.round(tenths)) < 1e-9
    ? `${numberWord(Math.round(tenths))} in ten`
    : `${Math.round(share * 1000) / 10}%`;
};

const dayWords = (day: number, lang: string): string => longDate(dateOfDay(Math.ceil(day)), lang);

/** "Thursday 26 March 2026, 19:00", as clocks show it in the zone. */
export const eveningWords = (moment: Moment, timeZone: string, lang: string): string => {
  const format = (options: Intl.DateTimeFormatOptions): string =>
    new Intl.DateTimeFormat(lang, { timeZone, ...options }).format(moment);
  const weekday = format({ weekday: 'long' });
  const date = format({ dateStyle: 'long' });
  return `${weekday} ${date}, ${format({ hour: '2-digit', minute: '2-digit', hourCycle: 'h23' })}`;
};

/** "164 of 180 parcels have arrived, 91%; 13 are on their way, 2 were lost and 1 was returned." */
export const stateWords = ({ parcels, tally, file }: ParcelsFacts): string => {
  if (file === undefined) return 'There is no list of its parcels yet.';
  if (parcels === 0) return 'No parcel had left by then.';
  const { delivered, travelling, lost, returned } = tally;
  const be = (count: number, one: string, more: string, what: string): string[] =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : more} ${what}`];
  const others = [
    ...be(travelling, 'is', 'are', 'on the way'),
    ...be(lost, 'was', 'were', 'lost'),
    ...be(returned, 'was', 'were', 'sent back'),
  ];
  const first = `${delivered} of ${parcelsWords(parcels)} ${delivered === 1 ? 'has' : 'have'} arrived, ${percent(delivered / parcels)}`;
  return others.length === 0 ? `${first}.` : `${first}; ${listed(others)}.`;
};

/** How lost and returned parcels are counted; empty where there are none. */
export const neverWords = ({ tally, parcels }: ParcelsFacts): string => {
  const gone = tally.lost + tally.returned;
  if (gone === 0) return '';
  const most = 1 - gone / parcels;
  return `What was lost or sent back never arrives: it is not left out, nor taken for a parcel still to come, but stays among those that wait to the end. So the curve cannot rise above ${percent(most)}.`;
};

const limitsWords = ({ lower, upper }: Quantile, say: (day: number) => string): string => {
  if (lower === undefined && upper === undefined) return '';
  if (upper === undefined) return `, not before ${say(lower as number)} by its 95% limits`;
  if (lower === undefined) return `, not after ${say(upper)} by its 95% limits`;
  return lower === upper
    ? `, and so do both of its 95% limits`
    : `, between ${say(lower)} and ${say(upper)} by its 95% limits`;
};

const daysText = (days: number): string => `${days} ${days === 1 ? 'day' : 'days'}`;

/** When the wanted share arrives, and by whose parcels that is told. */
export const outlookWords = (facts: ParcelsFacts, lang: string): readonly string[] => {
  const { outlook, curve, wanted, parcels, tally, asOfDate } = facts;
  const share = shareWords(wanted);
  const { source, days, dates, cycles, horizon } = outlook;
  if (source === 'none')
    return [
      parcels === 0
        ? 'There is nothing to tell from: no earlier cycle has a list of parcels either.'
        : `This cycle is too young to say when ${share} will have arrived, and there is no earlier one to go by.`,
    ];
  const whose =
    source === 'own'
      ? []
      : source === 'both'
        ? [
            `This cycle is too young to tell by itself: what is known of its first ${daysText(horizon)} is continued by ${cycles.length === 1 ? 'the earlier cycle' : `${numberWord(cycles.length)} earlier cycles, pooled`} (${listed(cycles)}), for what had not arrived by then. Cycles differ, so the limits are narrower than they should be.`,
          ]
        : [
            `Told from ${cycles.length === 1 ? 'the earlier cycle' : `${numberWord(cycles.length)} earlier cycles, pooled`} (${listed(cycles)}). Cycles differ, so the limits are narrower than they should be.`,
          ];
  if (days.day === undefined || dates.day === undefined) {
    const lacking =
      tally.travelling === 0 && parcels > 0
        ? `${capital(share)} will never have arrived: nothing is on the way any more, and ${parcelsWords(tally.lost + tally.returned)} will not come.`
        : `It cannot be said when ${share} will have arrived: ${percent(arrivedBy(curve, horizon))} had after ${daysText(horizon)}, and ${cycles.length === 0 ? 'there is no earlier cycle to go by from there on' : `by the earlier ${cycles.length === 1 ? 'cycle' : 'cycles'} (${listed(cycles)}) no more than ${percent(arrivedBy(outlook.curve, outlook.curve.last))} ever do`}.`;
    return [lacking];
  }
  const past = dateOfDay(Math.ceil(dates.day)) <= asOfDate;
  const say = (day: number): string => dayWords(day, lang);
  const when = `${capital(share)} ${past ? 'had arrived' : 'will have arrived'} by ${say(dates.day)}, ${past ? '' : 'about '}${daysText(Math.ceil(days.day))} after they left`;
  const { lower, upper } = dates;
  const bounds = [
    ...(lower === undefined ? [] : [`begin on ${say(lower)}`]),
    upper === undefined ? 'end later than these can tell' : `end on ${say(upper)}`,
  ];
  // Of what has happened there is nothing to doubt: the limits are those of parcels like these.
  const inGeneral =
    lower === undefined && upper === undefined
      ? []
      : [`For parcels like these in general, the 95% limits of that day ${listed(bounds)}.`];
  return [
    facts.reached ? `${when}.` : `${when}${limitsWords(dates, say)}.`,
    ...(facts.reached ? inGeneral : []),
    ...whose,
    ...(outlook.oldEnough && source === 'both'
      ? [`From about ${longDate(outlook.oldEnough, lang)} this cycle tells by itself.`]
      : []),
  ];
};

/** Whether the planned reveal is safe, early or needlessly late, and what else there is. */
export const revealWords = (facts: ParcelsFacts, lang: string): readonly string[] => {
  const { reveal, atReveal, wanted, asOf, timeZone } = facts;
  const { planned, verdict, proposed, surely } = reveal;
  const share = shareWords(wanted);
  const say = (moment: Moment): string => eveningWords(moment, timeZone, lang);
  const sentences: string[] = [];
  if (planned !== undefined) {
    const past = planned <= asOf;
    const expected = atReveal
      ? `${percent(atReveal.share, wanted)} ${past ? 'had arrived' : 'should have arrived'} by the evening before`
      : '';
    const because = expected && `: ${expected}`;
    const verdicts = {
      safe: `${past ? 'It was' : 'It is'} safe${because}${past ? '' : `, and ${share} surely`}.`,
      close: `${past ? 'It was' : 'It is'} close${because}, but ${share} may not have.`,
      early: `${past ? 'It was' : 'It is'} early${because}, fewer than ${share}.`,
      late: `${past ? 'It was' : 'It is'} needlessly late${because}; an evening a week or more before would have been safe too.`,
      never: `${expected ? `${capital(expected)}. ` : ''}Waiting brings no more.`,
      unknown: 'It cannot be said whether that is safe.',
    };
    sentences.push(
      `${past ? 'The reveal was on' : 'The reveal is planned for'} ${say(planned)}. ${verdicts[verdict]}`,
    );
    if (past) return sentences;
  }
  const [first] = proposed;
  if (first !== undefined) {
    sentences.push(
      `The first evening of the box’s habit after ${share} are expected is ${first === planned ? 'that one' : say(first)}.`,
    );
    if (surely !== undefined && surely !== first)
      sentences.push(`To be sure of ${share}, by the upper limit, wait until ${say(surely)}.`);
  }
  return sentences;
};

/** What is to be chased, in one sentence. */
export const overdueWords = ({ overdue, tally }: ParcelsFacts): string => {
  if (tally.travelling === 0) return 'Nothing is on the way any more.';
  if (!overdue) return 'Too little has arrived to say what is overdue.';
  const limit = `Of what has arrived, 99 in a hundred took at most ${daysText(overdue.limit)}`;
  return overdue.count === 0
    ? `${limit}; nothing on the way is older.`
    : `${limit}; ${parcelsWords(overdue.count)} on the way ${overdue.count === 1 ? 'is' : 'are'} older and should be chased.`;
};

/** The groups that are behind, a sentence each. `kind` is what they are: "carrier". */
export const paceWords = (groups: readonly Group[], kind: string, lang: string): readonly string[] =>
  groups.flatMap(({ name, pace, parcels, delivered, travelling, newest }) => {
    if (pace === 'usual') return [];
    const who = name === '' ? `What names no ${kind}` : name;
    const have = delivered === 1 ? 'has' : 'have';
    const since = newest === undefined ? '' : `, the newest on ${dayWords(newest, lang)}`;
    return [
      pace === 'stuck'
        ? `${who} is stuck: ${delivered} of ${parcelsWords(parcels)} ${have} arrived${since}, and ${travelling} ${travelling === 1 ? 'is' : 'are'} on the way.`
        : `${who} is slower than the others, beyond chance: ${delivered} of ${parcelsWords(parcels)} ${have} arrived${since}.`,
    ];
  });
