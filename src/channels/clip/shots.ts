/** The short vertical video as a list of shots, with words that fit its length at the same pace as the live. */

import { liveOf } from '../../model/beats.ts';
import type { ClipLength, Item, Picture } from '../../model/box.ts';
import type { LiveInput } from '../../model/cues.ts';
import type { SpokenWords } from '../../model/live-words.ts';
import { paragraphsOf } from '../../model/paragraphs.ts';
import { type Speech, secondsToSay, speechOf } from '../../model/speaking.ts';
import { nameInSentence, namesInLine, shortName } from '../../model/title.ts';
import { itemAt } from '../../text/item-at.ts';
import { graphemeCount } from '../../text/segments.ts';
import { sentencesOf } from '../../text/sentences.ts';
import type { FilmDirection } from '../../wording/en/clip.ts';
import { overlaysOf } from './overlay.ts';

export type ShotKind = 'hook' | 'item' | 'whole' | 'call';

/** Words over a shot, in milliseconds from the start of the video. */
export interface TimedOverlay {
  readonly start: number;
  readonly end: number;
  readonly lines: readonly string[];
}

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

/** Milliseconds that a text needs, said aloud and read. */
const leastFor = (text: string, { lang, pace }: Speech): number =>
  overlaysOf(text, lang).reduce((sum, one) => sum + overlayTime(one, { lang, pace }), 0);

const overlayTime = (
  { lines, least }: { readonly lines: readonly string[]; readonly least: number },
  speech: Speech,
): number => Math.max(least, Math.ceil(secondsToSay(lines.join(' '), speech) * 1000));

const endsSentence = (text: string): string => (/[.!?…。！？]["”’»)]*$/u.test(text) ? text : `${text}.`);

/** The different ones, shortest first. */
const byLength = (choices: readonly string[], speech: Speech): readonly string[] =>
  [...new Set(choices)]
    .map((text) => ({ text, time: leastFor(text, speech) }))
    .sort((a, b) => a.time - b.time)
    .map(({ text }) => text);

/** Whether a sentence says what it is about, so that it can stand by itself. */
const namesIt = (sentence: string, { name, kind, also }: Item, lang: string): boolean => {
  const text = sentence.toLocaleLowerCase(lang);
  return [shortName(name), kind, ...also].some((one) => text.includes(one.toLocaleLowerCase(lang)));
};

const itemDraft = (item: Item, lead: Item | undefined, speech: Speech): ShotDraft => {
  const { lang } = speech;
  const name = endsSentence(shortName(item.name));
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
  const still = item.pictures[0];
  return {
    kind: 'item',
    item,
    film:
      !lead || lead === item
        ? { film: 'in use', name: nameInSentence(item.name, lang) }
        : {
            film: 'beside',
            lead: lead.kind,
            ...(item.goesWith === undefined ? {} : { how: endsSentence(item.goesWith) }),
          },
    choices: byLength([name, ...told, ...longer], speech),
    ...(still && { still }),
  };
};

const draftsOf = (input: LiveInput, words: SpokenWords, speech: Speech): readonly ShotDraft[] => {
  const { cycle, call } = input;
  const hook = liveOf(input, words).beats.find(({ kind }) => kind === 'hook')?.say ?? [];
  const [lead] = cycle.items;
  const names = namesInLine(
    cycle.items.map(({ name }) => name),
    speech.lang,
  );
  return [
    {
      kind: 'hook',
      film: { film: 'close' },
      // Sentences of the live's hook from the first on.
      choices: byLength(hook.map((_, i) => hook.slice(0, i + 1).join(' ')).slice(0, 2), speech),
      ...(cycle.hero && { still: cycle.hero }),
    },
    ...cycle.items.map((item) => itemDraft(item, lead, speech)),
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

/** Milliseconds that a shot without a word lasts. */
const SILENT_SHOT = 1200;

/** The order in which shots get more words while there is time. */
const takesWordsFirst: Readonly<Record<ShotKind, number>> = { item: 1, whole: 2, hook: 3, call: 4 };

/** For each draft the longest choice that fits, tried lead item first, then the others as told. */
const chosen = (drafts: readonly ShotDraft[], wanted: number, speech: Speech): readonly string[] => {
  const costs = drafts.map(({ choices }) =>
    choices.map((text) => Math.max(text === '' ? SILENT_SHOT : 0, leastFor(text, speech))),
  );
  const picks = drafts.map(() => 0);
  const costOf = (i: number, pick: number): number => costs[i]?.[pick] ?? SILENT_SHOT;
  let spent = picks.reduce((sum, pick, i) => sum + costOf(i, pick), 0);
  const order = drafts
    .map(({ kind }, i) => ({ i, turn: takesWordsFirst[kind] }))
    .sort((a, b) => a.turn - b.turn);
  // A step at a time, so that the first in the row does not take what two others could have used.
  for (let more = true; more; ) {
    more = false;
    for (const { i } of order) {
      const pick = itemAt(picks, i);
      const step = costOf(i, pick + 1) - costOf(i, pick);
      if (pick + 1 >= itemAt(costs, i).length || spent + step > wanted) continue;
      picks[i] = pick + 1;
      spent += step;
      more = true;
    }
  }
  return drafts.map(({ choices }, i) => choices[itemAt(picks, i)] ?? '');
};

/**
 * The video of a cycle, made of what its live says. Its shots follow each other without a gap; where there is time left, all last longer alike.
 * `set` dresses the words (quotes, dashes) before they are counted.
 */
export const clipOf = (
  input: LiveInput,
  spoken: SpokenWords,
  set: (text: string) => string = (text) => text,
): Clip => {
  const { cycle, settings } = input;
  const speech = speechOf(settings);
  const wanted = cycle.clip ?? settings.clip ?? USUAL_LENGTH;
  const drafts = draftsOf(input, spoken, speech).map((draft) => ({
    ...draft,
    choices: draft.choices.map(set),
  }));
  const words = chosen(drafts, wanted * 1000, speech);
  const lengths = words.map((text) => {
    const overlays = overlaysOf(text, speech.lang).map((one) => ({ ...one, time: overlayTime(one, speech) }));
    return { overlays, least: overlays.reduce((sum, { time }) => sum + time, 0) || SILENT_SHOT };
  });
  const needed = lengths.reduce((sum, { least }) => sum + least, 0);
  const spare = Math.max(0, wanted * 1000 - needed);
  let start = 0;
  const shots = drafts.map(({ choices, ...draft }, i): Shot => {
    const { overlays, least } = itemAt(lengths, i);
    const length = least + Math.floor(spare / drafts.length) + (i < spare % drafts.length ? 1 : 0);
    const from = start;
    let at = start;
    start += length;
    return {
      ...draft,
      say: itemAt(words, i),
      start: from,
      end: start,
      overlays: overlays.map(({ lines, time }, n) => {
        const begin = at;
        // What is left of the shot goes to its last words.
        at = n === overlays.length - 1 ? start : at + time;
        return { start: begin, end: at, lines };
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
