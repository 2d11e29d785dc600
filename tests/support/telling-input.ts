/** What the live, the clip and the letter of a cycle are told from, and with which words. */
import type { Box, Cycle, Moment } from '../../src/model/box.ts';
import { callFor } from '../../src/model/calls.ts';
import type { LiveInput } from '../../src/model/cues.ts';
import type { SpokenWords } from '../../src/model/live-words.ts';
import { spokenWordsFor } from '../../src/render/spoken-words.ts';
import { wordingFor } from '../../src/wording/wording.ts';

/** Of a box and one of its cycles as of a moment. */
export const tellingInput = (box: Box, cycle: Cycle, asOf: Moment): LiveInput => ({
  cycle,
  settings: box.settings,
  call: callFor(box, cycle, asOf),
});

/** The words of a live in the box's language. */
export const spokenIn = ({ settings: { lang } }: Box): SpokenWords => spokenWordsFor(wordingFor(lang), lang);

/** Words of cautions in English. */
export const cautionText = wordingFor('en-GB').cautions.text;
