/** A live reveal as a list of beats: what is said, what is held up, and how long each takes. */
import type { BeatKind } from './beat-names.ts';
import { type Cue, cuesOf, type LiveInput } from './cues.ts';
import type { SpokenWords } from './live-words.ts';
import { type Speech, secondsToSay, speechOf } from './speaking.ts';

/** A cue with its time. */
export interface Beat extends Cue {
  /** Seconds that the words take, cautions included; not rounded. */
  readonly speaking: number;
  /** Seconds for holding up, showing how, waiting for answers. */
  readonly handling: number;
  /** Seconds left over from the wanted length, for questions and looking. */
  readonly room: number;
  /** Whole seconds from the start of the live; the stage is set before it and starts at 0 with none. */
  readonly start: number;
  /** Whole seconds: words, handling and room. */
  readonly seconds: number;
}

/** A live from the first word to the last. */
export interface Live {
  readonly beats: readonly Beat[];
  /** Whole seconds from the hook to the goodbye. */
  readonly seconds: number;
  /** Whole seconds of words and handling alone. */
  readonly needed: number;
  /** Seconds the live should last, where anybody said so. */
  readonly wanted?: number;
}

/** Seconds beside the words. Common practice, no source. */
const HANDLING: Readonly<Record<BeatKind | 'lead', number>> = {
  stage: 0,
  hook: 0,
  greet: 22,
  about: 0,
  chosen: 0,
  mishap: 5,
  lead: 60,
  item: 40,
  questions: 45,
  whole: 30,
  peek: 5,
  call: 10,
  goodbye: 5,
};

/** Beats in which there is something to look at or to answer: they share what is left of the wanted length. */
const TAKES_ROOM: ReadonlySet<BeatKind> = new Set(['item', 'questions', 'whole']);

const timed = (cues: readonly Cue[], speech: Speech, wanted: number | undefined): Live => {
  const own = cues.map((one) => {
    const words = [...one.say, ...one.cautions.flatMap(({ lines }) => lines)];
    const speaking = words.reduce((sum, sentence) => sum + secondsToSay(sentence, speech), 0);
    const handling = HANDLING[one.item?.lead ? 'lead' : one.kind];
    return { ...one, speaking, handling, least: Math.ceil(speaking + handling) };
  });
  const needed = own.reduce((sum, { least }) => sum + least, 0);
  const spare = Math.max(0, (wanted ?? needed) - needed);
  const takers = own.filter(({ kind }) => TAKES_ROOM.has(kind)).length;
  let start = 0;
  let taken = 0;
  const beats = own.map(({ least, ...one }): Beat => {
    let room = 0;
    if (TAKES_ROOM.has(one.kind)) {
      // Of shares that do not come out even, the earlier ones have the second more.
      room = Math.floor(spare / takers) + (taken < spare % takers ? 1 : 0);
      taken += 1;
    }
    const beat = { ...one, room, start, seconds: least + room };
    start += beat.seconds;
    return beat;
  });
  return { beats, seconds: start, needed, ...(wanted === undefined ? {} : { wanted }) };
};

/** The live of a cycle, beat by beat. It reads whole stories: not for where a plan is made. */
export const liveOf = (input: LiveInput, words: SpokenWords): Live => {
  const { cycle, settings } = input;
  const speech = speechOf(settings);
  const live = cycle.live ?? {};
  const minutes = live.minutes ?? cycle.replay?.minutes;
  return timed(
    cuesOf({ ...input, speech, words, live }),
    speech,
    minutes === undefined ? undefined : minutes * 60,
  );
};
