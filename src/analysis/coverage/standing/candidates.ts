/** Changes that would make an item easier to find: which words, in which place, on which line. */

import type { Location } from '../../../diagnostics/diagnostic.ts';
import { lazily } from '../../../text/lazy.ts';
import type { Language } from '../../language/language.ts';
import { determiners, questionMakers } from '../../language/lexicon/grammar.ts';
import type { EditAction, Mention } from '../coverage.ts';
import type { Phrase } from '../phrases/phrase.ts';
import { adjacent } from '../text/adjacent.ts';
import { type Passage, whereIs, type ZonedWord } from '../text/passage.ts';
import type { Zone } from '../text/zones.ts';
import { withCapitals } from './capitals.ts';
import { withinLonger } from './mentions.ts';
import { changed, type TextChange } from './rewriting.ts';
import type { TalliedItem, TalliedPhrase, Tally } from './tally.ts';

/** A change that might be advised, with the text as it would then be. */
export interface EditCandidate {
  readonly zone: Zone;
  readonly at: Location;
  readonly item: TalliedItem;
  readonly phrase: Phrase;
  /** Work for the writer, beside calling a thing by its name once where it is spoken of already (1). */
  readonly effort: number;
  /** The passage it changes; one past the last is a new one. */
  readonly passage: number;
  readonly change: TextChange | undefined;
  /** The passage as it would read: made when it is asked for, since few candidates are tried. */
  readonly fresh: () => Passage;
  readonly write: string;
  readonly action: EditAction;
}

/**
 * Effort of saying a phrase where nothing yet speaks of the thing. Common practice, no source: a description is
 * soon longer by two words; an opening or a summary must be worked on; a title is read by everyone and has no
 * room; a heading wants a passage to head.
 */
const EFFORT = {
  'picture text': 1.2,
  section: 1.5,
  body: 1.6,
  summary: 2,
  opening: 2,
  heading: 2.2,
  title: 3,
} as const satisfies Readonly<Partial<Record<Zone, number>>>;

/** Places where a writer can say something new. */
type WritableZone = keyof typeof EFFORT;

const CALL_BY_NAME_EFFORT = 1;

/** How many of a phrase's head-only mentions in one place are tried: it hardly matters which of them is changed. */
const TRIED = 2;

/** A phrase as it would stand in place of `head`: plural where the head is. */
const inNumberOf = (phrase: Phrase, head: ZonedWord): string => {
  const last = phrase.words[phrase.head];
  if (!last || last.folded === head.folded || last.key !== head.key) return phrase.text;
  return phrase.text.slice(0, last.start) + head.text.toLowerCase() + phrase.text.slice(last.end);
};

/** "the tin": the head with the article before it, as the reader meets it now. */
const metNow = ({ text, words }: Passage, at: number): string => {
  const [before, head] = [words[at - 1], words[at]] as const;
  const start = before && head && determiners.has(before.folded) ? before.start : head?.start;
  return text.slice(start, head?.end);
};

/** Calls a thing by its whole name where its head alone stands now. */
const callByName = (
  passages: readonly Passage[],
  item: TalliedItem,
  phrase: Phrase,
  mention: Mention,
  language: Language,
): EditCandidate | undefined => {
  const passage = passages[mention.passage];
  const head = passage?.words[mention.from];
  if (!passage?.written || !head || phrase.head !== phrase.words.length - 1) return undefined;
  // Words of the phrase that stand before its head already are taken up, not said twice.
  let first = mention.from;
  const own = new Set(phrase.words.map(({ key }) => key));
  while (first > 0 && adjacent(passage, first - 1) && own.has(passage.words[first - 1]?.key ?? ''))
    first -= 1;
  const write = withCapitals(inNumberOf(phrase, head), item.capitals);
  const start = passage.words[first]?.start ?? head.start;
  const change = { passage: mention.passage, start, end: head.end, text: write };
  const at = whereIs(passage, head);
  return {
    zone: mention.zone,
    at,
    item,
    phrase,
    effort: CALL_BY_NAME_EFFORT,
    passage: mention.passage,
    change,
    fresh: lazily(() => changed(passages, change, language)),
    write,
    action: { kind: 'call by name', now: metNow(passage, mention.from) },
  };
};

/** Says a phrase in a sentence that does not say it yet; measured as if it stood in brackets at the sentence's end. */
const sayIt = (
  passages: readonly Passage[],
  item: TalliedItem,
  phrase: Phrase,
  zone: WritableZone,
  target: Spot,
  language: Language,
): EditCandidate | undefined => {
  const passage = passages[target.passage];
  const words = passage?.words.filter(({ sentence }) => sentence === target.sentence) ?? [];
  const last = words.at(-1);
  const first = words[0];
  if (!passage || !last || !first) return undefined;
  const write = withCapitals(phrase.text, item.capitals);
  const change = { passage: target.passage, start: last.end, end: last.end, text: ` (${write})` };
  const at = whereIs(passage, first);
  const begins = passage.text.slice(first.start, words[Math.min(4, words.length - 1)]?.end);
  return {
    zone,
    at,
    item,
    phrase,
    effort: EFFORT[zone],
    passage: target.passage,
    change,
    fresh: lazily(() => changed(passages, change, language)),
    write,
    action: { kind: 'say', ...(passage.running && { begins }) },
  };
};

/** Gives an item's story a heading that says the phrase. */
const headIt = (
  passages: readonly Passage[],
  item: TalliedItem,
  phrase: Phrase,
  language: Language,
): EditCandidate | undefined => {
  const stories = passages.filter(
    (passage) => passage.item === item.slug && passage.running && passage.field === undefined,
  );
  // A heading over a single paragraph is longer than what it heads.
  const second = stories[1];
  const first = second?.words[0];
  if (!second || !first) return undefined;
  const at = whereIs(second, first);
  const fresh = lazily(
    (): Passage => ({
      form: 'heading',
      text: phrase.text,
      words: language
        .words(phrase.text)
        .map((word) => ({ ...word, zone: 'heading', sentence: 0, line: at.line, column: at.column })),
      item: item.slug,
      file: at.file,
      written: true,
    }),
  );
  return {
    zone: 'heading',
    at,
    item,
    phrase,
    effort: EFFORT.heading,
    passage: passages.length,
    change: undefined,
    fresh,
    write: withCapitals(phrase.text, item.capitals),
    action: { kind: 'head' },
  };
};

interface Targets {
  readonly zone: WritableZone;
  readonly holds: (passage: Passage, item: string) => boolean;
}

const inOpening = (passage: Passage): boolean => passage.words[0]?.zone === 'opening';

/** Passages that may be made to say something, for each place where a writer can. */
const TARGETS: readonly Targets[] = [
  { zone: 'title', holds: ({ form }) => form === 'title' },
  { zone: 'summary', holds: ({ field, item }) => field === 'summary' && item === undefined },
  { zone: 'opening', holds: (passage) => passage.running === true && inOpening(passage) },
  {
    zone: 'section',
    holds: (passage, item) => passage.running === true && passage.item === item && !inOpening(passage),
  },
  {
    zone: 'body',
    holds: (passage) => passage.running === true && passage.item === undefined && !inOpening(passage),
  },
  { zone: 'picture text', holds: ({ form, item }, own) => form === 'picture' && item === own },
];

/**
 * Whether a phrase reads as a name: one that was put together from a material, a colour or a maker and the kind is
 * how some look for a thing, and no way to speak of it; a search with a question in it wants a passage that answers.
 */
const canBeWritten = ({ origins, words }: Phrase): boolean => {
  const given = origins.map(({ from }) => from);
  if (given.some((from) => from === 'kind' || from === 'name' || from === 'also')) return true;
  return given.includes('search') && !words.some(({ folded }) => questionMakers.has(folded));
};

/** Phrases of an item that changes are tried for: those with the most to win. */
const PHRASES_TRIED = 6;

const worthWriting = (entries: readonly TalliedPhrase[]): readonly TalliedPhrase[] =>
  entries
    .filter(({ phrase }) => canBeWritten(phrase))
    .sort((a, b) => b.phrase.weight * (1 - b.standing) - a.phrase.weight * (1 - a.standing))
    .slice(0, PHRASES_TRIED);

/** A sentence of the article. */
interface Spot {
  readonly passage: number;
  readonly sentence: number;
}

/** Sentences of a passage with a word in some place, in reading order. */
type SentenceReader = (passage: Passage, zone: Zone) => readonly number[];

/** A reader that remembers what it read: a text of which one passage changes is asked about again and again. */
export const sentenceReader = (): SentenceReader => {
  const known = new Map<Passage, Map<Zone, readonly number[]>>();
  const read = (passage: Passage): Map<Zone, number[]> => {
    const byZone = new Map<Zone, number[]>();
    for (const { zone, sentence } of passage.words) {
      const here = byZone.get(zone);
      if (!here) byZone.set(zone, [sentence]);
      else if (!here.includes(sentence)) here.push(sentence);
    }
    return byZone;
  };
  return (passage, zone) => {
    const byZone = known.get(passage) ?? read(passage);
    known.set(passage, byZone);
    return byZone.get(zone) ?? [];
  };
};

/** Sentences of some place that a writer may change for an item, in reading order. */
const spotsIn = (
  passages: readonly Passage[],
  { zone, holds }: Targets,
  item: string,
  sentencesIn: SentenceReader,
): readonly Spot[] => {
  const spots: Spot[] = [];
  for (const [number, passage] of passages.entries()) {
    if (!passage.written || !holds(passage, item)) continue;
    for (const sentence of sentencesIn(passage, zone)) spots.push({ passage: number, sentence });
  }
  return spots;
};

/** An item, and the sentence of each place to say it in. */
interface Speaking {
  readonly item: TalliedItem;
  readonly spots: ReadonlyMap<WritableZone, Spot>;
}

/** The sentence of each place to say the item in: one that speaks of it already, else each item another. */
const spotsFor = (
  passages: readonly Passage[],
  item: TalliedItem,
  number: number,
  mentions: readonly Mention[],
  sentencesIn: SentenceReader,
): ReadonlyMap<WritableZone, Spot> => {
  const spots = new Map<WritableZone, Spot>();
  const spoken = new Set(
    mentions.map(({ passage, from }) => `${passage} ${passages[passage]?.words[from]?.sentence}`),
  );
  for (const target of TARGETS) {
    const fitting = spotsIn(passages, target, item.slug, sentencesIn);
    const speaking = fitting.find(({ passage, sentence }) => spoken.has(`${passage} ${sentence}`));
    // A place without a sentence that may be changed has none to say it in.
    const spot = speaking ?? (fitting.length > 0 ? fitting[number % fitting.length] : undefined);
    if (spot) spots.set(target.zone, spot);
  }
  return spots;
};

const named = (
  passages: readonly Passage[],
  { item }: Speaking,
  phrase: Phrase,
  mentions: readonly Mention[],
  language: Language,
): readonly EditCandidate[] => {
  const tried = new Map<Zone, number>();
  return mentions.flatMap((mention) => {
    const times = tried.get(mention.zone) ?? 0;
    // What is a part of another name of the thing is left as it is.
    if (mention.grade !== 'head only' || mention.within !== undefined || times >= TRIED) return [];
    const candidate = callByName(passages, item, phrase, mention, language);
    if (candidate) tried.set(mention.zone, times + 1);
    return candidate ?? [];
  });
};

const isClear = ({ grade }: Mention): boolean => grade === 'exact' || grade === 'inflected';

const said = (
  passages: readonly Passage[],
  { item, spots }: Speaking,
  phrase: Phrase,
  mentions: readonly Mention[],
  language: Language,
): readonly EditCandidate[] => {
  const clear = new Set<Zone>(mentions.filter(isClear).map(({ zone }) => zone));
  const sayings = [...spots]
    .filter(([zone]) => !clear.has(zone))
    .map(([zone, spot]) => sayIt(passages, item, phrase, zone, spot, language));
  const heading = clear.has('heading') ? undefined : headIt(passages, item, phrase, language);
  return [...sayings, heading].filter((candidate) => candidate !== undefined);
};

/** All changes worth trying for the items that are short of the aim. */
export const candidatesFor = (
  passages: readonly Passage[],
  tally: Tally,
  short: ReadonlySet<string>,
  language: Language,
  sentencesIn: SentenceReader,
): readonly EditCandidate[] => {
  return tally.items.flatMap((item, number) => {
    if (!short.has(item.slug)) return [];
    const entries = tally.entries.filter((entry) => entry.item === item);
    const mentions = withinLonger(entries);
    const spots = spotsFor(passages, item, number, mentions.flat(), sentencesIn);
    const speaking: Speaking = { item, spots };
    return worthWriting(entries).flatMap((entry) => {
      const own = mentions[entries.indexOf(entry)] ?? [];
      return [
        ...named(passages, speaking, entry.phrase, own, language),
        ...said(passages, speaking, entry.phrase, own, language),
      ];
    });
  });
};
