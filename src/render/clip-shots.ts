/** The short vertical video as a list of shots, with words that fit its length at the same pace as the live. */

import { liveOf } from '../model/beats.ts';
import type { ClipLength, Item, Picture } from '../model/box.ts';
import type { LiveInput } from '../model/cues.ts';
import type { SpokenWords } from '../model/live-words.ts';
import { paragraphsOf } from '../model/paragraphs.ts';
import { endsSentence, namesIt } from '../model/short-lines.ts';
import { type Speech, secondsToSay, speechOf } from '../model/speaking.ts';
import { namesInLine } from '../model/title.ts';
import { graphemeCount } from '../text/segments.ts';
import { sentencesOf } from '../text/sentences.ts';
import type { FilmDirection } from '../wording/en/clip.ts';
import { overlaysOf } from './clip-overlay.ts';

/** What a shot is of. */
type ShotKind = 'hook' | 'item' | 'whole' | 'call';

/** Words over a shot, in milliseconds from the start of the video. */
interface TimedOverlay {
  readonly start: number;
  readonly end: number;
  readonly lines: readonly string[];
  /** The same in one run. */
  readonly text: string;
}

/** One shot of a video. */
export interface Shot {
  readonly kind: ShotKind;
  readonly item?: Item;
  /** What the camera does, to be worded where it is shown. */
  readonly film: FilmDirection;
  /** Whole sentences. */
  readonly say: string;
  readonly overlays: readonly TimedOverlay[];
  /** Milliseconds from the start of the video. */
  readonly start: number;
  readonly end: number;
  /** A photo that can stand in for the shot. */
  readonly still?: Picture;
}

/** A video of which every second is planned. */
export interface Clip {
  readonly wanted: ClipLength;
  readonly shots: readonly Shot[];
  /** Milliseconds; more than wanted where even the shortest words do not fit. */
  readonly length: number;
}

const USUAL_LENGTH: ClipLength = 30;

/** Longest sentence that still sounds like talk when it is read over pictures, in seconds. Common practice, no source. */
const LONGEST_SENTENCE = 8;

interface ShotDraft {
  readonly kind: ShotKind;
  readonly item?: Item;
  readonly film: FilmDirection;
  readonly still?: Picture;
  /** What could be said, the shortest first; each is one or more whole sentences. */
  readonly choices: readonly string[];
}

/** Words that could be said in a shot, cut into overlays. */
interface Talk {
  readonly text: string;
  /** Each with the milliseconds that it is shown, said aloud and read. */
  readonly overlays: readonly {
    readonly lines: readonly string[];
    readonly text: string;
    readonly time: number;
  }[];
  /** Milliseconds of the shot at least. */
  readonly time: number;
}

/** Milliseconds that a shot lasts at least, so that a viewer sees what it shows, by the video's length. Common practice, no source. */
const LEAST_SHOT: Readonly<Record<ClipLength, number>> = { 15: 1500, 30: 2000, 60: 2500 };

/** Cuts a text into overlays. */
type Cutting = (text: string) => Talk;

/** Cuts a text once, however often it is asked for: a choice is weighed, tried and then shown. */
const cuttingAt = (speech: Speech, names: readonly string[], leastShot: number): Cutting => {
  const known = new Map<string, Talk>();
  const cut = (text: string): Talk => {
    const overlays = overlaysOf(text, speech.lang, names).map(({ lines, text: run, least }) => ({
      lines,
      text: run,
      time: Math.max(least, Math.ceil(secondsToSay(lines.join(' '), speech) * 1000)),
    }));
    return {
      text,
      overlays,
      time: Math.max(
        leastShot,
        overlays.reduce((sum, { time }) => sum + time, 0),
      ),
    };
  };
  return (text) => {
    const talk = known.get(text) ?? cut(text);
    known.set(text, talk);
    return talk;
  };
};

/** Wider than this, less than a third of a picture is left in an upright video. */
const WIDEST = 16 / 9;

/** What is left of a picture's width when it is cut to an upright video, 9:16, from 0 to 1. */
export const leftUpright = ({ width, height }: Pick<Picture, 'width' | 'height'>): number =>
  Math.min(1, ((height / width) * 9) / 16);

/** Whether a picture is too wide to be cut to an upright video. */
export const isTooWide = ({ width, height }: Pick<Picture, 'width' | 'height'>): boolean =>
  width / height > WIDEST;

/** The first picture that is not too wide, else the one of which most is left. */
const stillOf = (pictures: readonly Picture[]): Picture | undefined =>
  pictures.find((picture) => !isTooWide(picture)) ??
  [...pictures].sort((a, b) => leftUpright(b) - leftUpright(a))[0];

/** The different ones, shortest first. */
const byLength = (choices: readonly string[], cut: Cutting): readonly string[] =>
  [...new Set(choices)]
    .map(cut)
    .sort((a, b) => a.time - b.time)
    .map(({ text }) => text);

const itemDraft = (item: Item, lead: Item | undefined, speech: Speech, cut: Cutting): ShotDraft => {
  const { lang } = speech;
  const name = endsSentence(item.inText.short);
  const alone = (sentence: string): string =>
    namesIt(sentence, item, lang) ? endsSentence(sentence) : `${name} ${endsSentence(sentence)}`;
  const [paragraph] = paragraphsOf(item.story.tree, item.story.file);
  const talk = (sentence: string | undefined): sentence is string =>
    sentence !== undefined && secondsToSay(sentence, speech) <= LONGEST_SENTENCE;
  const [first, second] = sentencesOf(paragraph?.text ?? '', lang);
  const short = [first, item.goesWith].filter(talk).map(alone);
  const told = short.length > 0 ? short : [alone(item.description)];
  // How it goes with the lead item is worth more than a second sentence; the lead item has only that.
  const more = [item.goesWith ?? second].filter(talk).map(endsSentence);
  const longer = talk(first) && more[0] ? [`${alone(first)} ${more[0]}`] : [];
  const still = stillOf(item.pictures);
  return {
    kind: 'item',
    item,
    film:
      !lead || lead === item
        ? { film: 'in use', name: item.inText.name }
        : {
            film: 'beside',
            lead: lead.inText.kind,
            ...(item.goesWith === undefined ? {} : { how: endsSentence(item.goesWith) }),
          },
    choices: byLength([name, ...told, ...longer], cut),
    ...(still && { still }),
  };
};

const draftsOf = (
  input: LiveInput,
  words: SpokenWords,
  speech: Speech,
  cut: Cutting,
): readonly ShotDraft[] => {
  const { cycle, call } = input;
  const hook = liveOf(input, words).beats.find(({ kind }) => kind === 'hook')?.say ?? [];
  const [lead] = cycle.items;
  const names = namesInLine(
    cycle.items.map(({ inText }) => inText),
    speech.lang,
  );
  return [
    {
      kind: 'hook',
      film: { film: 'close' },
      // Sentences of the live's hook from the first on.
      choices: byLength(
        hook.slice(0, 2).map((_, i) => hook.slice(0, i + 1).join(' ')),
        cut,
      ),
    },
    ...cycle.items.map((item) => itemDraft(item, lead, speech, cut)),
    {
      kind: 'whole',
      film: { film: 'from above', names },
      choices: ['', ...(cycle.wholeBox?.caption ? [endsSentence(cycle.wholeBox.caption)] : [])],
      ...(cycle.wholeBox && { still: cycle.wholeBox }),
    },
    ...(call
      ? [
          {
            kind: 'call' as const,
            film: { film: 'box closed' } as const,
            choices: [endsSentence(call.text)],
          },
        ]
      : []),
  ];
};

/** Names of several words that are not to be parted. */
const namesIn = ({ cycle, settings }: LiveInput): readonly string[] =>
  [
    ...cycle.items.flatMap(({ inText, kind, also, brand }) => [inText.short, kind, ...also, brand]),
    cycle.theme,
    settings.name,
    settings.author,
  ].filter((name) => name.includes(' '));

/** The order in which shots get more words while there is time. */
const takesWordsFirst: Readonly<Record<ShotKind, number>> = { item: 1, whole: 2, hook: 3, call: 4 };

/** A draft with what is said in it, and what could be said instead, each longer than the one before. */
interface Take {
  readonly draft: ShotDraft;
  readonly talk: Talk;
  readonly longer: readonly Talk[];
}

/** For each draft the longest choice that fits into `most` milliseconds, tried item by item, the lead item first. */
const taken = (drafts: readonly ShotDraft[], most: number, cut: Cutting): readonly Take[] => {
  const takes = drafts.map((draft): { -readonly [K in keyof Take]: Take[K] } => {
    const [talk = cut(''), ...longer] = draft.choices.map(cut);
    return { draft, talk, longer };
  });
  const order = [...takes].sort((a, b) => takesWordsFirst[a.draft.kind] - takesWordsFirst[b.draft.kind]);
  let spent = takes.reduce((sum, { talk }) => sum + talk.time, 0);
  // A step at a time, so that the first in the row does not take what two others could have used.
  for (let more = true; more; ) {
    more = false;
    for (const take of order) {
      const [next, ...longer] = take.longer;
      const step = next ? next.time - take.talk.time : 0;
      if (!next || spent + step > most) continue;
      take.talk = next;
      take.longer = longer;
      spent += step;
      more = true;
    }
  }
  return takes;
};

/** What each of some times gets of what is left, all whole: the shortest are raised to one level. */
const roomsOf = (times: readonly number[], spare: number): readonly number[] => {
  const sorted = [...times].sort((a, b) => a - b);
  let below = 0;
  let sum = 0;
  // As many of the shortest as the rest suffices to raise to the next longer one.
  while (below < sorted.length && (sorted[below] ?? 0) * below - sum <= spare) {
    sum += sorted[below] ?? 0;
    below += 1;
  }
  const level = (sum + spare) / below;
  const rooms = times.map((time) => Math.max(0, Math.floor(level - time)));
  let left = spare - rooms.reduce((total, room) => total + room, 0);
  return rooms.map((room, i) => {
    const more = left > 0 && (times[i] ?? 0) < level ? 1 : 0;
    left -= more;
    return room + more;
  });
};

/**
 * The video of a cycle, made of what its live says. Its shots follow each other without a gap; where there is time
 * left, the shortest last longer. `set` dresses the words (quotes, dashes) before they are counted.
 */
export const clipOf = (
  input: LiveInput,
  spoken: SpokenWords,
  set: (text: string) => string = (text) => text,
): Clip => {
  const { cycle, settings } = input;
  const speech = speechOf(settings);
  const wanted = cycle.clip ?? settings.clip ?? USUAL_LENGTH;
  const cut = cuttingAt(speech, namesIn(input).map(set), LEAST_SHOT[wanted]);
  const drafts = draftsOf(input, spoken, speech, cut).map((draft) => ({
    ...draft,
    choices: draft.choices.map(set),
  }));
  const takes = taken(drafts, wanted * 1000, cut);
  const needed = takes.reduce((sum, { talk }) => sum + talk.time, 0);
  const rooms = roomsOf(
    takes.map(({ talk }) => talk.time),
    Math.max(0, wanted * 1000 - needed),
  );
  let start = 0;
  const shots = takes.map(({ draft: { choices, ...draft }, talk }, i): Shot => {
    const from = start;
    let at = start;
    start += talk.time + (rooms[i] ?? 0);
    return {
      ...draft,
      say: talk.text,
      start: from,
      end: start,
      overlays: talk.overlays.map(({ lines, text, time }, n) => {
        const begin = at;
        // What is left of the shot goes to its last words.
        at = n === talk.overlays.length - 1 ? start : at + time;
        return { start: begin, end: at, lines, text };
      }),
    };
  });
  return { wanted, shots, length: start };
};

/** Graphemes a second of the fastest words in a video; at most `READING_SPEED` by the way they are made. */
export const fastestReading = ({ shots }: Clip, lang: string): number =>
  Math.max(
    0,
    ...shots.flatMap(({ overlays }) =>
      overlays.map(({ lines, start, end }) => (graphemeCount(lines.join(' '), lang) * 1000) / (end - start)),
    ),
  );
