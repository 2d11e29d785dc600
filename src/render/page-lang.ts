/** The language of working papers, which are written in the wording's own. */
import { isWordedIn, wordingFor } from '../wording/wording.ts';

/** The tag of a paper on a box in `lang` (BCP 47): the box's own where there are words in it, else the wording's. */
export const pageLang = (lang: string): string => {
  const wording = wordingFor(lang);
  return isWordedIn(wording, lang) ? lang : wording.lang;
};
