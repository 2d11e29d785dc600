/** Findings of the parts of an article that say too little. */
import { leastOf, type ThinPart } from '../analysis/coverage/substance.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { counted } from '../text/counting-words.ts';

/** One for each part. */
export const substanceFindings = (thin: readonly ThinPart[]): readonly Diagnostic[] =>
  thin.map(({ item, substance, at }): Diagnostic => {
    const { words, sentences, beyond } = leastOf(item);
    const isMute = item !== undefined && substance.telling === 0;
    const own = `${counted(substance.words, 'word')} in ${counted(substance.sentences, 'sentence')}`;
    return {
      weight: 'look at',
      rule: item === undefined ? 'opening-thin' : 'story-thin',
      location: at,
      message:
        item === undefined
          ? `Unexpected opening of ${own}, expected at least ${words} words in ${sentences} sentences`
          : `Unexpected story of ${own}${isMute ? ' that tells of no use, care, making or measure' : ''}, expected at least ${words} words in ${sentences} sentences, and ${beyond} words that the record does not have`,
      fix:
        item === undefined
          ? 'Say how the box came to be, and what goes together in it'
          : 'Say how the thing is used, cared for or made, and why it is in the box',
    };
  });
