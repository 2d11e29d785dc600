/** How long words take to say: the one pace that the live and the short video share. */

import { wordCount } from '../text/segments.ts';
import { sentencesOf } from '../text/sentences.ts';
import type { BoxSettings } from './box.ts';

/** Words a minute of somebody who talks while showing things. Common practice, no source. */
const SPEAKING_PACE = 150;

/** The box's language and pace. */
export interface Speech {
  readonly lang: string;
  /** Words a minute. */
  readonly pace: number;
}

/** The box's language and pace, its own or the usual one. */
export const speechOf = ({ lang, pace = SPEAKING_PACE }: BoxSettings): Speech => ({ lang, pace });

/** Seconds that a text takes to say, not rounded. */
export const secondsToSay = (text: string, { lang, pace }: Speech): number =>
  (wordCount(text, lang) * 60) / pace;

/**
 * The first sentences of a text that can be said in `seconds`, whole; the first alone where even that takes longer,
 * since half a sentence says nothing.
 */
export const firstSentences = (text: string, seconds: number, speech: Speech): readonly string[] => {
  const [first, ...others] = sentencesOf(text, speech.lang);
  if (first === undefined) return [];
  const kept = [first];
  let spent = secondsToSay(first, speech);
  for (const sentence of others) {
    spent += secondsToSay(sentence, speech);
    if (spent > seconds) break;
    kept.push(sentence);
  }
  return kept;
};

/** Seconds as a clock shows them: "4:10", "1:02:30". Rounded to the nearest second. */
export const clockText = (seconds: number): string => {
  const whole = Math.round(seconds);
  const [hours, minutes, rest] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const two = (number: number): string => String(number).padStart(2, '0');
  return hours > 0 ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`;
};
