/** What the words around a word say about its part of speech, where a tagger is often wrong. */
import { describingRules } from './describing-rules.ts';
import { EDGE, isArticle, isEdge, isNominal, isParticiple, type Near } from './site.ts';
import type { PartOfSpeech, Tagged } from './tagger.ts';
import { thingRules } from './thing-rules.ts';
import { verbRules } from './verb-rules.ts';

/** Lower case, one kind of apostrophe, and "veryyyy" as "very". */
export const plain = (word: string): string =>
  word
    .toLowerCase()
    .replace(/’/g, "'")
    .replace(/(\p{L})\1{2,}/gu, '$1');

/** Words joined by hyphens as one: "must-have" describes what follows it, "tea-towel" is what its last part is. */
const joined = (tagged: readonly Tagged[]): readonly Tagged[] => {
  const out: Tagged[] = [];
  for (let i = 0; i < tagged.length; i++) {
    const first = out.at(-1);
    const hyphen = tagged[i] as Tagged;
    const second = tagged[i + 1];
    const bound =
      /^[-‐‑]$/.test(hyphen.text) &&
      first &&
      second &&
      first.end === hyphen.start &&
      hyphen.end === second.start;
    if (!bound || !/[\p{L}\p{N}]$/u.test(first.text) || !/^[\p{L}\p{N}]/u.test(second.text)) {
      out.push(hyphen);
      continue;
    }
    const describes =
      isParticiple(second.text) ||
      ['ADJ', 'ADV', 'ADP', 'AUX', 'VERB'].includes(second.pos) ||
      isNominal({ word: '', pos: tagged[i + 2]?.pos ?? 'PUNCT' });
    const pos = first.pos === 'NUM' && second.pos === 'NUM' ? 'NUM' : describes ? 'ADJ' : second.pos;
    out[out.length - 1] = {
      text: `${first.text}${hyphen.text}${second.text}`,
      start: first.start,
      end: second.end,
      pos,
    };
    i++;
  }
  return out;
};

/** In words. What is longer is a list or no sentence, and is not searched to its end. */
const LONGEST_SUBJECT = 8;
const LONGEST_CLAUSE = 30;

/** The words with their parts of speech put right by the words around them: rules of common grammar, no source. */
export const putRight = (words: readonly Tagged[]): readonly Tagged[] => {
  const tagged = joined(words);
  const pos = tagged.map((one) => one.pos);
  const lower = tagged.map(({ text }) => plain(text));
  const near = (i: number): Near =>
    i < 0 || i >= tagged.length ? EDGE : { word: lower[i] as string, pos: pos[i] as PartOfSpeech };
  const isLimit = (i: number): boolean => isEdge(near(i)) || near(i).pos === 'CCONJ';
  const isVerb = (i: number): boolean => near(i).pos === 'VERB' || near(i).pos === 'AUX';
  const subjectBefore = (i: number): boolean => {
    let first = i;
    while (!isLimit(first - 1)) {
      first--;
      if (i - first > LONGEST_SUBJECT) return false;
      if (isVerb(first) || near(first).pos === 'ADP') return false;
    }
    for (let j = i + 1; j - i < LONGEST_CLAUSE && !isLimit(j); j++) if (isVerb(j)) return false;
    return isArticle(near(first)) && near(first).word !== 'no';
  };
  // A rule sees what those before it have put right.
  for (const { from, to, when } of [...describingRules, ...verbRules, ...thingRules])
    for (let i = 0; i < tagged.length; i++)
      if (
        from.includes(pos[i] as PartOfSpeech) &&
        when({
          ...near(i),
          before: near(i - 1),
          before2: near(i - 2),
          after: near(i + 1),
          after2: near(i + 2),
          subject: () => subjectBefore(i),
        })
      )
        pos[i] = to;
  return tagged.map((one, i) => ({ ...one, pos: pos[i] as PartOfSpeech }));
};
