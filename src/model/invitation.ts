/**
 * The invitation to a live: the words of a post in three lengths, from what the owner wrote to make people curious and
 * from the date. Nothing in it is taken from what the box holds.
 */

import { graphemeCount } from '../text/segments.ts';
import { sentencesOf } from '../text/sentences.ts';
import { liveOf } from './beats.ts';
import type { Box, Cycle, Moment } from './box.ts';

/** Graphemes of a post: what fits under a picture, what the shortest networks allow, what a long one shows. Common practice, no source. */
export const POST_LENGTHS = [100, 280, 600] as const;

export interface Post {
  /** Graphemes it was to have at most. */
  readonly most: number;
  readonly text: string;
  /** Graphemes it has; more than `most` where the address alone is too long. */
  readonly length: number;
}

export interface Invitation {
  readonly posts: readonly Post[];
  /** One line that says what it is, without a date. */
  readonly title: string;
  /** For a calendar, which shows the date itself. */
  readonly description: string;
  readonly start: Moment;
  /** Whole minutes that the live lasts, rounded up to five. */
  readonly minutes: number;
  /** Where it is seen; the box's own site where the record does not say. */
  readonly address: string;
}

interface Words {
  readonly title: (box: string, month: string) => string;
  readonly short: (month: string, when: string) => string;
  readonly middle: (month: string, when: string, next: string | undefined) => string;
  /** Paragraphs, the first ones the most needed. */
  readonly long: (month: string, when: string, next: string | undefined) => readonly string[];
  readonly promise: (next: string) => string;
}

const english: Words = {
  title: (box, month) => `${box}: the ${month} box, opened live`,
  short: (month, when) => `The ${month} box, opened live: ${when}.`,
  middle: (month, when, next) =>
    `We open the ${month} box live on ${when}${next === undefined ? '' : `, and at the end there is a look at the ${next} box`}.`,
  long: (month, when, next) => [
    `On ${when} we open the ${month} box live: one thing at a time, who made it, what it is for, and what went wrong on the way here.${next === undefined ? '' : ` At the end there is a first look at the ${next} box.`}`,
    'If yours has come, bring it to the table. If you have none, come all the same, and ask whatever you like while we are at it.',
  ],
  promise: (next) => `At the end there is a first look at the ${next} box.`,
};

/** In another language the date and the owner's own words say it. */
const silent: Words = {
  title: (box) => box,
  short: (_, when) => `${when}.`,
  middle: (_, when) => `${when}.`,
  long: (_, when) => [`${when}.`],
  promise: () => '',
};

const wordsFor = (lang: string): Words => (/^en\b/i.test(lang) ? english : silent);

/** "Thursday 23 April at 19:00 British Summer Time": the box's own clock, which a reader elsewhere can reckon from. */
export const spokenMoment = (
  moment: Moment,
  timeZone: string,
  lang: string,
  zoneName: 'short' | 'long',
): string =>
  new Intl.DateTimeFormat(lang, {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    hour: 'numeric',
    minute: '2-digit',
    timeZone,
    timeZoneName: zoneName,
  }).format(moment);

/** "April" */
const monthOf = ({ year, month }: { readonly year: number; readonly month: number }, lang: string): string =>
  new Intl.DateTimeFormat(lang, { month: 'long', timeZone: 'UTC' }).format(Date.UTC(year, month - 1, 1));

/** The month of the box that follows: the next cycle's where there is one already. */
const nextMonth = ({ cycles, settings }: Box, cycle: Cycle): string => {
  const next = cycles[cycles.findIndex(({ id }) => id === cycle.id) + 1];
  return monthOf(next ?? { year: cycle.year, month: cycle.month + settings.everyMonths }, settings.lang);
};

/** Sentences that make people curious: the owner's own, else the first of the peek that ended the cycle before. */
export const hookOf = ({ cycles, settings }: Box, cycle: Cycle): readonly string[] => {
  const own = cycle.invitation?.hook;
  if (own !== undefined) return sentencesOf(own, settings.lang);
  const before = cycles[cycles.findIndex(({ id }) => id === cycle.id) - 1];
  // What follows it tells people what to do until the box comes, and by now it has.
  return sentencesOf(before?.peek?.text ?? '', settings.lang).slice(0, 1);
};

/** Whole minutes, in steps in which people plan an evening. */
const STEP = 5;

/**
 * The invitation to a cycle's live; undefined while nobody can know its moment. `spoils` says of a sentence whether it
 * gives something of the box away, and such a one is left out. `set` dresses the words before they are counted.
 */
export const invitationOf = (
  box: Box,
  cycle: Cycle,
  spoils: (sentence: string) => boolean,
  set: (text: string) => string = (text) => text,
): Invitation | undefined => {
  const { reveal } = cycle;
  if (reveal === undefined) return undefined;
  const { settings } = box;
  const { lang, timeZone } = settings;
  const words = wordsFor(lang);
  const month = monthOf(cycle, lang);
  const peek = cycle.peek ?? cycle.live?.peek;
  const next = peek === undefined ? undefined : nextMonth(box, cycle);
  const hook = hookOf(box, cycle).filter((sentence) => !spoils(sentence));
  const address = cycle.live?.address ?? settings.url;
  const when = (zoneName: 'short' | 'long'): string => spokenMoment(reveal, timeZone, lang, zoneName);
  const count = (text: string): number => graphemeCount(text, lang);

  /** The longest of some texts, given shortest first, that is not too long; else the shortest. */
  const fitting = (most: number, texts: readonly string[]): Post => {
    const dressed = texts.map(set);
    const text = dressed.findLast((one) => count(one) <= most) ?? dressed[0] ?? '';
    return { most, text, length: count(text) };
  };
  const hooks = hook.map((_, i) => hook.slice(0, i + 1).join(' '));
  const middle = words.middle(month, when('long'), next);
  const [needed = '', ...others] = words.long(month, when('long'), next);
  const paragraphs = (...parts: readonly string[]): string => parts.filter(Boolean).join('\n\n');
  const [short, medium, long] = POST_LENGTHS;
  const whole = hook.join(' ');
  return {
    posts: [
      fitting(short, [`${words.short(month, when('short'))} ${address}`]),
      fitting(medium, [`${middle} ${address}`, ...hooks.map((begin) => `${begin} ${middle} ${address}`)]),
      fitting(long, [
        paragraphs(needed, address),
        ...hooks.map((begin) => paragraphs(begin, needed, address)),
        paragraphs(whole, needed, ...others, address),
        ...(spoils(settings.description)
          ? []
          : [paragraphs(whole, needed, ...others, address, `${settings.name}: ${settings.description}`)]),
      ]),
    ],
    title: set(words.title(settings.name, month)),
    description: paragraphs(
      set([...hook, ...(next === undefined ? [] : [words.promise(next)])].filter(Boolean).join(' ')),
      address,
    ),
    start: reveal,
    minutes: Math.ceil(liveOf(box, cycle, reveal).seconds / 60 / STEP) * STEP,
    address,
  };
};
