/** What the words around a word say about its part of speech, where a tagger is often wrong. */
import { itemAt } from '../../text/item-at.ts';
import { describingRules } from './describing-rules.ts';
import { EDGE, isArticle, isEdge, isNominal, isParticiple, type Near, type Site } from './site.ts';
import type { Tagged } from './tagger.ts';
import { thingRules } from './thing-rules.ts';
import { verbRules } from './verb-rules.ts';
import { MODAL_FORMS } from './word-classes.ts';

/** Lower case, one kind of apostrophe, and "veryyyy" as "very". */
export const plain = (word: string): string =>
  word
    .toLowerCase()
    .replace(/’/g, "'")
    .replace(/(\p{L})\1{2,}/gu, '$1');

/** A name is written so, and a word that is only shouted is not. */
export const NAMELIKE = /^\p{Lu}[\p{Ll}\p{M}]/u;

/** What follows a shortened word, so that its full stop is no end: "Pvt. Ltd.", "Bros., who". */
const AFTER_SHORTENED = /^(?:,|(?:ltd|inc|co|corp|llc)\.?)$/i;

/** Names with the full stop that shortens them and ends no sentence, where the tagger has cut it off. */
const shortened = (tagged: readonly Tagged[]): readonly Tagged[] => {
  const out: Tagged[] = [];
  tagged.forEach((one, i) => {
    const name = out.at(-1);
    const isOfName = one.text === '.' && name?.pos === 'PROPN' && name.end === one.start;
    if (name && isOfName && AFTER_SHORTENED.test(tagged[i + 1]?.text ?? ''))
      out[out.length - 1] = { ...name, text: `${name.text}.`, end: one.end };
    else out.push(one);
  });
  return out;
};

/** Words joined by hyphens as one: "must-have" describes what follows it, "tea-towel" is what its last part is. */
const joined = (tagged: readonly Tagged[]): readonly Tagged[] => {
  const out: Tagged[] = [];
  for (let i = 0; i < tagged.length; i++) {
    const first = out.at(-1);
    const hyphen = itemAt(tagged, i);
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

/** A family name that is a verb too: "Mr. Wade", "Jane Wade". The tagger sees a verb, its capital says otherwise. */
const named = (tagged: readonly Tagged[]): readonly Tagged[] =>
  tagged.map((one, i) => {
    const before = tagged[i - 1];
    const isName =
      one.pos === 'VERB' && before?.pos === 'PROPN' && NAMELIKE.test(one.text) && NAMELIKE.test(before.text);
    return isName ? { ...one, pos: 'PROPN' } : one;
  });

/** In words. What is longer is a list or no sentence, and is not searched to its end. */
const LONGEST_SUBJECT = 8;
const LONGEST_CLAUSE = 30;

type OpenClass<T> = { -readonly [K in keyof T]: T[K] };

/** Each word with its neighbours; all see it when one changes. */
const sitesOf = (tagged: readonly Tagged[]): readonly OpenClass<Site>[] => {
  const sites = tagged.map(
    ({ text, pos }, i): OpenClass<Site> => ({
      word: plain(text),
      pos,
      before: EDGE,
      before2: EDGE,
      after: EDGE,
      after2: EDGE,
      subject: () => subjectBefore(sites, i),
      asked: () => askedOf(sites, i),
    }),
  );
  sites.forEach((site, i) => {
    site.before = sites[i - 1] ?? EDGE;
    site.before2 = sites[i - 2] ?? EDGE;
    site.after = sites[i + 1] ?? EDGE;
    site.after2 = sites[i + 2] ?? EDGE;
  });
  return sites;
};

const isVerb = ({ pos }: Near): boolean => pos === 'VERB' || pos === 'AUX';
const isLimit = (near: Near): boolean => isEdge(near) || near.pos === 'CCONJ';

const subjectBefore = (sites: readonly Near[], i: number): boolean => {
  const at = (j: number): Near => sites[j] ?? EDGE;
  let first = i;
  while (!isLimit(at(first - 1))) {
    first--;
    if (i - first > LONGEST_SUBJECT || isVerb(at(first)) || at(first).pos === 'ADP') return false;
  }
  for (let j = i + 1; j - i < LONGEST_CLAUSE && !isLimit(at(j)); j++) if (isVerb(at(j))) return false;
  return isArticle(at(first)) && at(first).word !== 'no';
};

const askedOf = (sites: readonly Near[], i: number): boolean => {
  const at = (j: number): Near => sites[j] ?? EDGE;
  let first = i;
  while (!isEdge(at(first - 1)) && i - first <= LONGEST_SUBJECT) {
    first--;
    if (isVerb(at(first)))
      return MODAL_FORMS.has(at(first).word) && isEdge(at(first - 1)) && isArticle(at(first + 1));
  }
  return false;
};

const RULES = [...describingRules, ...verbRules, ...thingRules];

/** The words with their parts of speech put right by the words around them: rules of common grammar, no source. */
export const putRight = (words: readonly Tagged[]): readonly Tagged[] => {
  const tagged = named(joined(shortened(words)));
  const sites = sitesOf(tagged);
  // A rule sees what those before it, and itself further left, have put right.
  for (const { from, to, when } of RULES)
    for (const site of sites) if (from.includes(site.pos) && when(site)) site.pos = to;
  return tagged.map((one, i) => ({ ...one, pos: itemAt(sites, i).pos }));
};
