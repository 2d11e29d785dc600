/** The clip of a cycle in the words of a language: its sheet, its film and the shoot list show the same shots. */
import type { LiveInput } from '../model/cues.ts';
import { rememberedFor } from '../text/remembered.ts';
import type { Wording } from '../wording/wording.ts';
import { type Clip, clipOf } from './clip-shots.ts';
import { spokenWordsFor } from './spoken-words.ts';
import { typeset } from './typeset.ts';

/** The clip itself: its words are tried against its length, which takes longer than all else. */
export const clipFor = rememberedFor((input: LiveInput, wording: Wording): Clip => {
  const { lang } = input.settings;
  return clipOf(input, spokenWordsFor(wording, lang), (text) => typeset(text, lang));
});
