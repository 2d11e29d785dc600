/** Where an article says a phrase, and how nearly. */
import { mayConflate } from '../../language/conflation.ts';
import type { Word } from '../../language/language.ts';
import { emptyWords } from '../../language/lexicon/grammar.ts';
import type { Mention } from '../coverage.ts';
import type { Phrase } from '../phrases/phrase.ts';
import { adjacent } from '../text/adjacent.ts';
import { type Passage, whereIs, zoneFor } from '../text/passage.ts';
import { NEVER_ALONE } from './neighbour-words.ts';
import { metWord, type PhraseIndex, type Sought } from './phrase-index.ts';
import { readThing, type SpokenThing, speaksOf } from './spoken-thing.ts';

type Found = Pick<Mention, 'passage' | 'from' | 'to' | 'grade'> & { readonly head: number };

const isOne = (a: Word, b: Word): boolean => a.key === b.key || (a.stem === b.stem && mayConflate(a, b));

/** A passage, and its number among those that are searched. */
interface Place {
  readonly passage: Passage;
  readonly number: number;
}

/** The phrase as a run of words from a word of a passage on, or undefined. */
const runAt = ({ passage, number }: Place, wanted: Sought, start: number): Found | undefined => {
  const { phrase } = wanted;
  let [folded, key] = ['', ''];
  const found = (to: number, grade: Found['grade']): Found => ({
    passage: number,
    from: start,
    to,
    grade,
    head: Math.min(start + phrase.head, to),
  });
  let inflected: Found | undefined;
  for (let at = start; at < passage.words.length; at++) {
    const word = passage.words[at] as Word;
    folded += word.folded;
    key += word.key;
    if (folded === wanted.folded) return found(at, 'exact');
    if (key === wanted.key) inflected ??= found(at, 'inflected');
    // One letter more than wanted may still be a plural's end: longer than both, nothing can match.
    const tooLong = folded.length > wanted.folded.length && key.length > wanted.key.length;
    if (tooLong || !adjacent(passage, at)) break;
  }
  if (inflected) return inflected;
  const stems = phrase.words.every((word, i) => {
    const at = passage.words[start + i];
    return at !== undefined && isOne(word, at) && (i === 0 || adjacent(passage, start + i - 1));
  });
  return stems ? found(start + phrase.words.length - 1, 'same stem') : undefined;
};

/** The phrase with its words in any order in what speaks of the thing that a head is. */
const scatteredAt = (
  { passage: { words }, number }: Place,
  phrase: Phrase,
  { head, stretch }: SpokenThing,
): Found | undefined => {
  const others = phrase.words.filter((word, i) => i !== phrase.head && !emptyWords.has(word.folded));
  if (others.length === 0) return undefined;
  const around = stretch();
  let [from, to] = [head, head];
  for (const other of others) {
    let nearest: number | undefined;
    for (let at = around.from; at < around.to; at++) {
      const isNearer = nearest === undefined || Math.abs(at - head) < Math.abs(nearest - head);
      if (at !== head && isNearer && isOne(other, words[at] as Word)) nearest = at;
    }
    if (nearest === undefined) return undefined;
    from = Math.min(from, nearest);
    to = Math.max(to, nearest);
  }
  return { passage: number, from, to, grade: 'scattered', head };
};

const inOrder = (a: Found, b: Found): number => a.passage - b.passage || a.from - b.from;

/** More words than a passage ever has: passage and word become one number. */
const PASSAGE = 2 ** 20;

const spotOf = (passage: number, word: number): number => passage * PASSAGE + word;

/** A word that stands for a thing, and where. */
interface SpokenAt {
  readonly place: Place;
  readonly thing: SpokenThing;
}

/** What a phrase has found, each word serving it once. */
interface MentionSearch {
  readonly found: Found[];
  readonly taken: Set<number>;
  /** Everywhere it stands as a run of words. */
  readonly runs: Found[];
  /** Where its head stands for the thing, for a phrase of two words and more. */
  readonly heads: SpokenAt[];
  /** Where another of its words stands for the thing. */
  readonly telling: SpokenAt[];
}

const take = ({ found, taken }: MentionSearch, mention: Found | undefined): void => {
  if (!mention) return;
  const { passage, head } = mention;
  // A scattered mention takes its head alone: the words between may serve others.
  const [from, to] = mention.grade === 'scattered' ? [head, head] : [mention.from, mention.to];
  for (let at = from; at <= to; at++) if (taken.has(spotOf(passage, at))) return;
  for (let at = from; at <= to; at++) taken.add(spotOf(passage, at));
  found.push(mention);
};

const RUNS: readonly Found['grade'][] = ['exact', 'inflected', 'same stem'];

/** Takes runs, each by the best grade it can have. */
const takeRuns = (search: MentionSearch): void => {
  for (const grade of RUNS)
    for (const run of search.runs.filter((one) => one.grade === grade).sort(inOrder)) take(search, run);
};

const oneWord = ({ place, thing: { head } }: SpokenAt): Found => ({
  passage: place.number,
  from: head,
  to: head,
  grade: 'head only',
  head,
});

/** Adds what is less than a run: the phrase's words scattered around its head, its head alone, a word that means it. */
const addLooser = (
  search: MentionSearch,
  { phrase, known }: Sought,
  modifiers: ReadonlySet<number>,
): void => {
  for (const { place, thing } of search.heads) take(search, scatteredAt(place, phrase, thing));
  const isFree = ({ place, thing }: SpokenAt): boolean => !modifiers.has(spotOf(place.number, thing.head));
  const needsMore = NEVER_ALONE.has(phrase.words[phrase.head]?.key ?? '');
  for (const spoken of search.heads)
    if (isFree(spoken) && (!needsMore || spoken.thing.isToldBy(known))) take(search, oneWord(spoken));
  for (const spoken of search.telling) if (isFree(spoken)) take(search, oneWord(spoken));
};

/** Whether a word that is not a phrase's head can mean it: things that are told in the plural are no single one. */
const agrees = (word: Word, { phrase }: Sought): boolean => {
  const head = phrase.words[phrase.head];
  return head === undefined || head.key === head.folded || word.key !== word.folded;
};

/** Adds what each phrase may have to do with the words of a passage, by the phrase's number. */
const addSearches = (searches: Map<number, MentionSearch>, place: Place, index: PhraseIndex): void => {
  const { passage } = place;
  const { words } = passage;
  const searchFor = (number: number): MentionSearch => {
    const known = searches.get(number);
    if (known) return known;
    const made: MentionSearch = { found: [], taken: new Set(), runs: [], heads: [], telling: [] };
    searches.set(number, made);
    return made;
  };
  for (const [at, word] of words.entries()) {
    const { begins, heads, telling } = metWord(index, word);
    if (begins.length + heads.length + telling.length === 0) continue;
    // Read once for all phrases, and only where one asks.
    let thing: SpokenThing | undefined;
    const thingFor = (phrase: number): SpokenThing | undefined => {
      thing ??= readThing(passage, at, index);
      return speaksOf(thing, (index.sought[phrase] as Sought).known) ? thing : undefined;
    };
    for (const phrase of begins) {
      const sought = index.sought[phrase] as Sought;
      const run = runAt(place, sought, at);
      if (run && (sought.phrase.words.length > 1 || run.to > run.from || thingFor(phrase)))
        searchFor(phrase).runs.push(run);
    }
    for (const phrase of heads) {
      const spoken = thingFor(phrase);
      if (spoken) searchFor(phrase).heads.push({ place, thing: spoken });
    }
    for (const phrase of telling) {
      const spoken = thingFor(phrase);
      if (spoken && agrees(word, index.sought[phrase] as Sought))
        searchFor(phrase).telling.push({ place, thing: spoken });
    }
  }
};

const mentionAt = (
  where: Passage | undefined,
  { passage, from, to, grade, head }: Found,
  item: string,
): Mention | undefined => {
  const [word, start] = [where?.words[head], where?.words[from]];
  if (!where || !word || !start) return undefined;
  return { passage, from, to, zone: zoneFor(word, where, item), grade, at: whereIs(where, start) };
};

/** Takes what was found, by the phrase's number. */
const mentionsFrom = (
  searches: ReadonlyMap<number, MentionSearch>,
  passages: readonly Passage[],
  index: PhraseIndex,
): ReadonlyMap<number, readonly Mention[]> => {
  const modifiers = new Set<number>();
  for (const search of searches.values()) {
    takeRuns(search);
    for (const { passage, from, to, head } of search.found)
      for (let at = from; at <= to; at++) if (at !== head) modifiers.add(spotOf(passage, at));
  }
  const mentions = new Map<number, readonly Mention[]>();
  for (const [number, search] of searches) {
    const sought = index.sought[number] as Sought;
    addLooser(search, sought, modifiers);
    mentions.set(
      number,
      search.found
        .sort(inOrder)
        .flatMap((found) => mentionAt(passages[found.passage], found, sought.item) ?? []),
    );
  }
  return mentions;
};

/**
 * Mentions of some phrases in some passages, by the phrase's number, each phrase's in reading order; a phrase without
 * any may be left out. A word serves a phrase once, by the best grade it can. A word alone, head or not, counts where it
 * stands for the thing (`readThing`) and not before the head of another phrase ("seed" in "seed tray" is no seed). A
 * mention depends on nothing outside its sentence. Linear in the words of the passages.
 */
export const mentionsOf = (
  passages: readonly Passage[],
  index: PhraseIndex,
): ReadonlyMap<number, readonly Mention[]> => {
  const searches = new Map<number, MentionSearch>();
  for (const [number, passage] of passages.entries()) addSearches(searches, { passage, number }, index);
  return mentionsFrom(searches, passages, index);
};

const covers = (longer: Mention, shorter: Mention): boolean =>
  longer.passage === shorter.passage &&
  longer.from <= shorter.from &&
  longer.to >= shorter.to &&
  longer.to - longer.from > shorter.to - shorter.from;

/** The mentions of an item's phrases, each saying which longer phrase of the item it is a part of, if any. */
export const withinLonger = (
  all: readonly { readonly phrase: Phrase; readonly mentions: readonly Mention[] }[],
): readonly (readonly Mention[])[] => {
  // Each passage's runs, the longest first: what covers a mention is in its passage.
  const runs = new Map<number, { readonly text: string; readonly mention: Mention }[]>();
  for (const { phrase, mentions } of all)
    for (const mention of mentions) {
      if (mention.grade === 'scattered' || mention.grade === 'head only') continue;
      const here = runs.get(mention.passage);
      if (here) here.push({ text: phrase.text, mention });
      else runs.set(mention.passage, [{ text: phrase.text, mention }]);
    }
  for (const here of runs.values())
    here.sort((a, b) => b.mention.to - b.mention.from - (a.mention.to - a.mention.from));
  return all.map(({ mentions }) =>
    mentions.map((mention) => {
      if (mention.grade === 'scattered') return mention;
      const longest = runs.get(mention.passage)?.find((run) => covers(run.mention, mention));
      return longest ? { ...mention, within: longest.text } : mention;
    }),
  );
};
