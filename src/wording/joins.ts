/**
 * Lines in which our words and the box's own make one sentence: titles, subjects, what a search result says. Where there
 * are no words of ours in the box's language its own stand alone, so that no line is in two languages.
 */
import { isWordedIn, type Wording, wordingFor } from './wording.ts';

/** The lines. `things`, `names`: what is in a box, as one run of words. */
interface Joins {
  readonly title: Pick<Wording['cycle'], 'title' | 'themeTitle' | 'bareTitle'>;
  readonly kind: Pick<Wording['site']['kind'], 'title' | 'summary' | 'more'>;
  readonly letter: Wording['letter']['lines'];
  readonly post: Wording['clip']['post']['contents'];
  readonly recording: Wording['structuredData']['recording'];
}

const beside = (...parts: readonly string[]): string => parts.join(' · ');

const bare: Joins = {
  title: {
    title: (things, theme, month, trade) =>
      beside(...[things, theme, month, trade].filter((part) => part !== undefined)),
    themeTitle: beside,
    bareTitle: beside,
  },
  kind: {
    title: (kind) => kind,
    summary: (_count, _from, _to, names) => `${names}.`,
    more: (count) => `+ ${count}`,
  },
  letter: { leadSubject: (lead) => lead, themeSubject: beside, promise: () => '' },
  post: beside,
  recording: beside,
};

/** The lines for a box in a language (BCP 47). */
export const joinsFor = (lang: string): Joins => {
  const wording = wordingFor(lang);
  if (!isWordedIn(wording, lang)) return bare;
  const { cycle, site, letter, clip, structuredData } = wording;
  return {
    title: cycle,
    kind: site.kind,
    letter: letter.lines,
    post: clip.post.contents,
    recording: structuredData.recording,
  };
};
