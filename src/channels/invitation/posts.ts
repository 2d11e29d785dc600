/**
 * The invitation to a live: the words of a post in three lengths, from what the owner wrote to make people curious and
 * from the date. Nothing in it is taken from what the box holds.
 */
import { liveOf } from '../../model/beats.ts';
import type { Moment } from '../../model/box.ts';
import { monthAlone } from '../../model/calendar.ts';
import type { LiveInput } from '../../model/cues.ts';
import type { SpokenWords } from '../../model/live-words.ts';
import type { NextBox } from '../../model/relations.ts';
import { graphemeCount } from '../../text/segments.ts';
import { sentencesOf } from '../../text/sentences.ts';
import type { InvitationWords } from '../../wording/en/invitation.ts';

/** Graphemes of a post: what fits under a picture, what the shortest networks allow, what a long one shows. Common practice, no source. */
export const POST_LENGTHS = [100, 280, 600] as const;

/** A post's text in one of the lengths. */
export interface Post {
  /** Graphemes it was to have at most. */
  readonly most: number;
  readonly text: string;
  /** Graphemes it has; more than `most` where the address alone is too long. */
  readonly length: number;
}

/** Everything that an invitation says, its words dressed. */
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

/** What an invitation is made of. `call` is the one that holds at the reveal. */
export interface InvitationInput extends LiveInput {
  /** The peek that the cycle before ended with. */
  readonly peekBefore?: string;
  /** The month of the box that follows. */
  readonly next: NextBox;
}

/** In another language than the wording's, the date and the owner's own words say it. */
const silent: InvitationWords = {
  title: (box) => box,
  short: (_, when) => `${when}.`,
  middle: (_, when) => `${when}.`,
  long: (_, when) => [`${when}.`],
  promise: () => '',
};

/** What posts are made with. */
interface PostTools {
  readonly spoken: SpokenWords;
  /** The wording's sentences; none where it is not in the box's language. */
  readonly words?: InvitationWords;
  /** Whether a sentence gives something of the box away: such a one is left out. */
  readonly spoils: (sentence: string) => boolean;
  /** Dresses words (quotes, dashes) before they are counted. */
  readonly set: (text: string) => string;
}

/** "Thursday 23 April at 19:00 British Summer Time": the box's own clock, which a reader elsewhere can reckon from. */
const spokenMoment = (moment: Moment, timeZone: string, lang: string, zoneName: 'short' | 'long'): string =>
  new Intl.DateTimeFormat(lang, {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    hour: 'numeric',
    minute: '2-digit',
    timeZone,
    timeZoneName: zoneName,
  }).format(moment);

/** Sentences that make people curious: the owner's own, else the first of the peek that ended the cycle before. */
export const hookOf = ({ settings, cycle, peekBefore = '' }: InvitationInput): readonly string[] => {
  const own = cycle.invitation?.hook;
  if (own !== undefined) return sentencesOf(own, settings.lang);
  // What follows it tells people what to do until the box comes, and by now it has.
  return sentencesOf(peekBefore, settings.lang).slice(0, 1);
};

/** Whole minutes, in steps in which people plan an evening. */
const STEP = 5;

/** The invitation to a cycle's live; undefined while nobody can know its moment. */
export const invitationOf = (
  input: InvitationInput,
  { spoken, words = silent, spoils, set }: PostTools,
): Invitation | undefined => {
  const { cycle, settings } = input;
  const { reveal } = cycle;
  if (reveal === undefined) return undefined;
  const { lang, timeZone } = settings;
  const month = monthAlone(cycle, lang);
  const peek = cycle.peek ?? cycle.live?.peek;
  const next = peek === undefined ? undefined : monthAlone(input.next, lang);
  const hook = hookOf(input).filter((sentence) => !spoils(sentence));
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
    minutes: Math.ceil(liveOf(input, spoken).seconds / 60 / STEP) * STEP,
    address,
  };
};
