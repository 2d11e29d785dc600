/** The parcels in plain sentences, worded alike on a page and on a terminal. */
import type { Group } from '../../analysis/parcels/compare.ts';
import type { ExpectedDate } from '../../analysis/parcels/expected.ts';
import type { ParcelsFacts } from '../../analysis/parcels/facts.ts';
import type { Pace } from '../../analysis/parcels/pace.ts';
import type { Moment } from '../../model/box.ts';
import { capital, counted, listed, numberWord, percent } from '../../text/counting-words.ts';
import { longDate, longDay } from '../../text/long-date.ts';

/** The facts as they are worded: whether the planned moment is over is told by `reveal.past`. */
type WordedFacts = Omit<ParcelsFacts, 'asOf'>;

const someParcels = (count: number): string => counted(count, 'parcel');

/** "nine in ten", "half", "95%". */
const shareWords = (share: number): string => {
  if (Math.abs(share - 0.5) < 1e-9) return 'half';
  if (Math.abs(share - 0.75) < 1e-9) return 'three in four';
  const tenths = share * 10;
  return Math.abs(tenths - Math.round(tenths)) < 1e-9
    ? `${numberWord(Math.round(tenths))} in ten`
    : `${Math.round(share * 1000) / 10}%`;
};

/** What is waited for, as `shareWords`; where it can no longer arrive, of what can. */
const aimWords = ({ wanted, isOutOfReach }: WordedFacts): string =>
  isOutOfReach ? `${shareWords(wanted)} of those that can arrive` : shareWords(wanted);

/** "Thursday 26 March 2026, 19:00", as clocks show it in the zone. */
const evening = (moment: Moment, timeZone: string, lang: string): string => {
  const format = (options: Intl.DateTimeFormatOptions): string =>
    new Intl.DateTimeFormat(lang, { timeZone, ...options }).format(moment);
  const weekday = format({ weekday: 'long' });
  const date = format({ dateStyle: 'long' });
  return `${weekday} ${date}, ${format({ hour: '2-digit', minute: '2-digit', hourCycle: 'h23' })}`;
};

/** "164 of 180 parcels have arrived, 91%; 10 are on the way, 3 have yet to leave, 2 were lost and 1 was sent back." */
const state = ({ parcels, tally, file }: WordedFacts): string => {
  if (file === undefined) return 'There is no list of its parcels yet.';
  const { delivered, travelling, lost, returned, toLeave } = tally;
  if (parcels === toLeave)
    return `No parcel had left by then${toLeave === 0 ? '' : `; ${toLeave} ${toLeave === 1 ? 'is' : 'are'} to`}.`;
  const be = (count: number, one: string, more: string, what: string): string[] =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : more} ${what}`];
  const others = [
    ...be(travelling, 'is', 'are', 'on the way'),
    ...be(toLeave, 'has', 'have', 'yet to leave'),
    ...be(lost, 'was', 'were', 'lost'),
    ...be(returned, 'was', 'were', 'sent back'),
  ];
  const first = `${delivered} of ${someParcels(parcels)} ${delivered === 1 ? 'has' : 'have'} arrived, ${percent(delivered / parcels)}`;
  return others.length === 0 ? `${first}.` : `${first}; ${listed(others)}.`;
};

/** How lost and returned parcels are counted; empty where there are none. */
const never = ({ tally, parcels, isOutOfReach }: WordedFacts): string => {
  const gone = tally.lost + tally.returned;
  if (gone === 0) return '';
  const most = isOutOfReach ? '' : `: at most ${percent(1 - gone / parcels)} of these parcels can`;
  return `What was lost or sent back never arrives, and is not left out${most}. Few lists say when a parcel was given up, so each counts as waiting until the day it came back, or else until the list was read.`;
};

/** That the wanted share can no longer arrive, and what is waited for instead; nothing where it can. */
const outOfReach = (facts: WordedFacts): readonly string[] => {
  const { isOutOfReach, wanted, tally, parcels } = facts;
  const gone = tally.lost + tally.returned;
  return isOutOfReach
    ? [
        `${capital(shareWords(wanted))} can no longer arrive: ${gone} of ${someParcels(parcels)} ${gone === 1 ? 'was' : 'were'} lost or sent back, so that at most ${percent(1 - gone / parcels)} can. What follows is about ${aimWords(facts)}.`,
      ]
    : [];
};

const limitsClause = ({ lower, upper }: ExpectedDate, say: (day: number) => string): string => {
  if (lower === undefined && upper === undefined) return '';
  if (upper === undefined) return `, not before ${say(lower as number)} by its 95% limits`;
  if (lower === undefined) return `, not after ${say(upper)} by its 95% limits`;
  return lower === upper
    ? `, by both of its 95% limits too`
    : `, between ${say(lower)} and ${say(upper)} by its 95% limits`;
};

const someDays = (days: number): string => `${days} ${days === 1 ? 'day' : 'days'}`;

/** "the earlier cycle (2026-01)", "two earlier cycles, pooled (2026-01 and 2026-02)". */
const earlierCycles = (cycles: readonly string[]): string =>
  `${cycles.length === 1 ? 'the earlier cycle' : `${numberWord(cycles.length)} earlier cycles, pooled`} (${listed(cycles)})`;

/** Whose parcels tell, where it is not this cycle's alone. */
const toldBy = ({ source, cycles, horizon }: WordedFacts['outlook']): readonly string[] => {
  const narrow = 'Cycles differ, so the limits are narrower than they should be.';
  if (source === 'both')
    return [
      `This cycle is too young to tell by itself: what is known of its first ${someDays(horizon)} is continued by ${earlierCycles(cycles)}, for what had not arrived by then. ${narrow}`,
    ];
  return source === 'earlier' ? [`Told from ${earlierCycles(cycles)}. ${narrow}`] : [];
};

/** When what is waited for arrives, and by whose parcels that is told. */
const arrivalSentences = (facts: WordedFacts, lang: string): readonly string[] => {
  const { outlook, parcels, tally } = facts;
  const share = aimWords(facts);
  const { source, days, dates, past, cycles, atMost } = outlook;
  if (source === 'none')
    return [
      parcels === 0
        ? 'There is nothing to tell from: no earlier cycle has a list of parcels either.'
        : `This cycle is too young to say when ${share} will have arrived, and there is no earlier one to go by.`,
    ];
  if (dates.day === undefined) {
    const by = source === 'own' ? 'what has arrived of this cycle' : earlierCycles(cycles);
    const have = parcels === 0 ? '' : `${percent(tally.delivered / parcels)} have, and `;
    return [
      `It cannot be said when ${share} will have arrived: ${have}by ${by} no more than ${percent(atMost, facts.aim)} ever will.`,
    ];
  }
  const say = (day: number): string => longDay(day, lang);
  const after =
    days === undefined || days < 0 ? '' : `, ${past ? '' : 'about '}${someDays(days)} after they left`;
  const when = `${capital(share)} ${past ? 'had arrived' : 'will have arrived'} by ${say(dates.day)}${after}`;
  return [
    // Of what has happened there is nothing to doubt.
    facts.reached ? `${when}.` : `${when}${limitsClause(dates, say)}.`,
    ...toldBy(outlook),
    ...(outlook.oldEnough && source === 'both'
      ? [`From about ${longDate(outlook.oldEnough, lang)} this cycle tells by itself.`]
      : []),
  ];
};

const outlookSentences = (facts: WordedFacts, lang: string): readonly string[] => [
  ...outOfReach(facts),
  ...arrivalSentences(facts, lang),
];

/** Whether the planned reveal is safe, early or needlessly late, and what else there is. */
const revealSentences = (facts: WordedFacts, lang: string): readonly string[] => {
  const { reveal, atReveal, aim, timeZone } = facts;
  const { planned, past, verdict, proposed, surely } = reveal;
  const share = aimWords(facts);
  const say = (moment: Moment): string => evening(moment, timeZone, lang);
  const sentences: string[] = [];
  if (planned !== undefined) {
    const here = facts.reached && !past;
    const expected = here
      ? `${share} have arrived`
      : atReveal
        ? `${percent(atReveal.share, aim)} ${atReveal.isCounted ? (past ? 'had arrived' : 'have arrived') : 'should have arrived'} by the evening before`
        : '';
    const because = expected && `: ${expected}`;
    const is = past ? 'It was' : 'It is';
    const verdicts = {
      safe: `${is} safe${because}${past || here ? '' : `, and ${share} surely`}.`,
      close: `${is} close${because}, but ${share} may not have.`,
      early: `${is} early${because}, fewer than ${share}.`,
      late: `${is} needlessly late${because}; an evening a week or more before would ${past ? 'have been' : 'be'} safe too.`,
      unknown: `It cannot be said whether that ${past ? 'was' : 'is'} safe.`,
    };
    sentences.push(
      `${past ? 'The reveal was on' : 'The reveal is planned for'} ${say(planned)}. ${verdicts[verdict]}`,
    );
    if (past) return sentences;
  }
  const [first] = proposed;
  if (first !== undefined) {
    sentences.push(
      `The first evening of the box’s habit ${facts.reached ? 'from now on' : `after ${share} are expected`} is ${first === planned ? 'that one' : say(first)}.`,
    );
    if (surely !== undefined && surely !== first)
      sentences.push(`To be sure of ${share}, by the upper limit, wait until ${say(surely)}.`);
  }
  return sentences;
};

/** What is to be chased, in one sentence. */
const overdueSentence = ({ overdue, tally }: WordedFacts): string => {
  if (tally.travelling === 0)
    return tally.toLeave === 0 ? 'Nothing is on the way any more.' : 'Nothing is on the way.';
  if (!overdue) return 'Too little has arrived to say what is overdue.';
  const limit = `Of what has arrived, 99 in a hundred took at most ${someDays(overdue.limit)}`;
  return overdue.count === 0
    ? `${limit}; nothing on the way is older.`
    : `${limit}; ${someParcels(overdue.count)} on the way ${overdue.count === 1 ? 'is' : 'are'} older and should be chased.`;
};

/** What groups of parcels are told apart by. */
type GroupedBy = 'carrier' | 'region';

/** The groups that are behind, a sentence each. */
const paceSentences = (groups: readonly Group[], by: GroupedBy, lang: string): readonly string[] =>
  groups.flatMap(({ name, pace, parcels, delivered, travelling, newest }) => {
    if (pace === 'usual') return [];
    const who = name === '' ? `What names no ${by}` : name;
    const have = delivered === 1 ? 'has' : 'have';
    const since = newest === undefined ? '' : `, the newest on ${longDay(newest, lang)}`;
    return [
      pace === 'stuck'
        ? `${who} is stuck: ${delivered} of ${someParcels(parcels)} ${have} arrived${since}, and ${travelling} ${travelling === 1 ? 'is' : 'are'} on the way, of which the others would have brought some since.`
        : `${who} is slower than the others, beyond chance: ${delivered} of ${someParcels(parcels)} ${have} arrived${since}.`,
    ];
  });

const paces: Readonly<Record<Pace, string>> = { usual: '', slow: 'slow', stuck: 'stuck' };

/** What the page and the report on a terminal both say. */
const sentences = {
  state,
  never,
  outlook: outlookSentences,
  reveal: revealSentences,
  overdue: overdueSentence,
  pace: paceSentences,
  paces,
  share: shareWords,
  percent,
  evening,
  unnamed: 'not named',
};

/** What is said of parcels. */
export const parcels = {
  ...sentences,
  page: {
    title: (month: string) => `Parcels of ${month}`,
    asOf: (date: string, state: string) => `As of ${date}. ${state}`,
    revealMark: (date: string) => `Reveal, ${date}`,
    foot: 'days since they left',
    /** The caption of the drawing, up to the words that lead to the table. */
    caption: (first: string | undefined, isContinued: boolean) =>
      `Share of the parcels that has arrived, by days since they left${first === undefined ? '' : `; the reveal is counted from ${first}, when the first did`}. Thick line: what is known of this cycle${isContinued ? '; broken line: how it goes on by earlier ones' : ''}. Dotted: pointwise 95% limits. The figures are in `,
    table: 'the table',
    reveal: 'The reveal',
    expected: (share: string) => `${share} expected`,
    overdue: 'Overdue',
    overdueParcels: 'Overdue parcels',
    leftOn: 'Left on',
    daysAgo: 'Days ago',
    linesOf: 'Lines of',
    andMore: ' and more',
    groups: { carrier: 'Carriers', region: 'Regions' } satisfies Record<GroupedBy, string>,
    sideBySide: (title: string) => `${title} side by side`,
    columns: {
      group: { carrier: 'Carrier', region: 'Region' } satisfies Record<GroupedBy, string>,
      parcels: 'Parcels',
      arrived: 'Arrived',
      travelling: 'On the way',
      toLeave: 'To leave',
      lost: 'Lost',
      returned: 'Sent back',
      overdue: 'Overdue',
      share: 'Share',
      half: 'Half by day',
      newest: 'Newest arrival',
      day: 'Day',
      waiting: 'Waiting',
      limits: '95% limits',
    },
    curve: 'The curve in figures',
    method:
      'Aalen and Johansen’s estimate: of those that still waited on a day, so many arrived; what was given up leaves them and never arrives. Limits are by log(−log).',
    thisCycle: 'This cycle',
    pooled: (cycles: readonly string[], isContinued: boolean) =>
      `${isContinued ? 'From there on, by' : 'By'} ${cycles.join(', ')}`,
    findings: 'Findings in the list',
  },
  report: {
    title: (cycle: string, theme: string | undefined, date: string) =>
      `Parcels of ${cycle}${theme ? `, ${theme}` : ''}, as of ${date}`,
    reveal: 'Reveal',
    evening: (when: string, share: string) => `${when}: ${share} expected by the day before`,
    overdue: 'Overdue',
    overdueDay: (day: {
      readonly count: number;
      readonly shipped: string;
      readonly days: number;
      readonly file: string;
      readonly lines: readonly number[];
    }) =>
      `${someParcels(day.count)} that left on ${day.shipped}, ${counted(day.days, 'day')} ago: ${day.file}, ${day.lines.length === 1 ? 'line' : 'lines'} ${day.lines.join(', ')}${day.count > day.lines.length ? ' and more' : ''}`,
    by: { carrier: 'By carrier', region: 'By region' } satisfies Record<GroupedBy, string>,
    columns: {
      group: { carrier: 'Carrier', region: 'Region' } satisfies Record<GroupedBy, string>,
      parcels: 'Parcels',
      arrived: 'Arrived',
      travelling: 'On way',
      overdue: 'Overdue',
      share: 'Share',
      half: 'Half by',
      day: 'Day',
      waiting: 'Waiting',
      limits: '95% limits',
    },
    halfBy: (day: number) => `day ${day}`,
    range: (from: string, to: string) => `${from} to ${to}`,
    curve: 'Share arrived by days since they left (Aalen-Johansen)',
    continuing: 'And from there on, by the earlier cycles',
    earlier: 'Share arrived by days since they left, in earlier cycles (Aalen-Johansen)',
  },
};
