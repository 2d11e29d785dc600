/** Phrases said too often, and the sentences to thin out. */

import { itemAt, lastOf } from '../../text/item-at.ts';
import { isClear, type Mention, type OverRepetition } from './coverage.ts';
import { normalDeviation, type TextPart } from './dispersion.ts';
import type { Phrase } from './phrases/phrase.ts';
import { isRunning } from './rivals/article.ts';
import type { Passage } from './text/passage.ts';
import { sentenceText } from './text/sentence-text.ts';

/**
 * Thresholds are common practice, no source; they were set so that a thing may be named in every other sentence
 * of its own section, as a good writer may, and no more.
 */
/** Running words in which a phrase is counted at a time: about a paragraph, what the eye holds at once. */
const STRETCH = 100;
/** Mentions in a stretch from which a phrase is dense there. */
export const DENSE_STRETCH = 6;
/** Mentions in each hundred words outside the thing's own section from which it is said all over. */
const DENSE_ELSEWHERE = 2;
/** Mentions in each hundred words of the whole text without which nothing is crowded. */
const LEAST_RATE = 0.3;
/** Mentions without which nothing is crowded, however short the text. */
const LEAST_MENTIONS = 6;

/** An item's slug and its phrases with their mentions; an `ItemCoverage` is one. */
interface PhraseMentions {
  readonly slug: string;
  readonly phrases: readonly {
    readonly phrase: Pick<Phrase, 'text' | 'words'>;
    readonly mentions: readonly Mention[];
  }[];
}

interface Running {
  readonly passages: readonly Passage[];
  /** Words of running text before each passage; undefined for a passage that is none. */
  readonly before: readonly (number | undefined)[];
  readonly words: number;
}

const runningOf = (passages: readonly Passage[]): Running => {
  let words = 0;
  const before = passages.map((passage) => {
    if (!isRunning(passage)) return undefined;
    const here = words;
    words += passage.words.length;
    return here;
  });
  return { passages, before, words };
};

/**
 * The parts of an article between which a phrase may be spread: running text between two headings, cut also where
 * an item's own section begins or ends.
 */
const partsOf = ({ passages, before }: Running, mentions: readonly Mention[]): readonly TextPart[] => {
  const parts: { occurrences: number; size: number }[] = [];
  const counts = new Map<number, number>();
  for (const { passage } of mentions) counts.set(passage, (counts.get(passage) ?? 0) + 1);
  let [item, fresh]: [string | undefined, boolean] = [undefined, true];
  for (const [i, passage] of passages.entries()) {
    if (passage.form === 'heading') fresh = true;
    if (before[i] === undefined) continue;
    if (fresh || passage.item !== item) parts.push({ occurrences: 0, size: 0 });
    [item, fresh] = [passage.item, false];
    const part = lastOf(parts);
    part.size += passage.words.length;
    part.occurrences += counts.get(i) ?? 0;
  }
  return parts;
};

/** Mentions that lie in some stretch which holds too many of them. */
const denseOf = ({ before }: Running, mentions: readonly Mention[]): ReadonlySet<Mention> => {
  const positions = mentions.map(({ passage, from }) => itemAt(before, passage) + from);
  const dense = new Set<Mention>();
  for (let last = DENSE_STRETCH - 1; last < mentions.length; last += 1) {
    const first = last - DENSE_STRETCH + 1;
    if (itemAt(positions, last) - itemAt(positions, first) >= STRETCH) continue;
    for (const mention of mentions.slice(first, last + 1)) dense.add(mention);
  }
  return dense;
};

/** Mentions outside the item's own section, if they are too many for the text there; else none. */
const elsewhereOf = (running: Running, mentions: readonly Mention[], slug: string): readonly Mention[] => {
  const outside = (passage: number): boolean => running.passages[passage]?.item !== slug;
  const words = running.passages.reduce(
    (sum, passage, i) => sum + (running.before[i] !== undefined && outside(i) ? passage.words.length : 0),
    0,
  );
  const found = mentions.filter(({ passage }) => outside(passage));
  const many = found.length >= LEAST_MENTIONS && (100 * found.length) / words >= DENSE_ELSEWHERE;
  return many ? found : [];
};

/** The sentences of some mentions: most mentions first, of equals the shorter sentence, then in reading order. */
const sentencesOf = (
  passages: readonly Passage[],
  mentions: readonly Mention[],
): OverRepetition['sentences'] => {
  const sentences = new Map<string, { passage: Passage; sentence: number; mentions: Mention[] }>();
  for (const mention of mentions) {
    const passage = itemAt(passages, mention.passage);
    const sentence = passage.words[mention.from]?.sentence ?? 0;
    const name = `${mention.passage} ${sentence}`;
    const known = sentences.get(name);
    if (known) known.mentions.push(mention);
    else sentences.set(name, { passage, sentence, mentions: [mention] });
  }
  return [...sentences.values()]
    .map(({ passage, sentence, mentions: here }) => ({
      at: itemAt(here, 0).at,
      text: sentenceText(passage, sentence),
      mentions: here.length,
    }))
    .sort((a, b) => b.mentions - a.mentions || a.text.length - b.text.length);
};

const spotsOf = ({ passage, from, to }: Mention): readonly string[] =>
  Array.from({ length: to - from + 1 }, (_, i) => `${passage} ${from + i}`);

/**
 * The crowded phrases of an article. Exact and inflected mentions in running text count. A phrase is crowded when
 * its rate over the whole is no trifle and it is dense somewhere: in some stretch of a hundred words, or all
 * over the text outside the section of its own item, where another thing should have the word.
 *
 * The longest phrases are judged first, and a mention inside one that is crowded is not held against a shorter
 * one again; but what longer phrases that are not crowded share ("red bird feeder", "blue bird feeder") is.
 */
export const overRepetitionsOf = (
  items: readonly PhraseMentions[],
  passages: readonly Passage[],
): readonly OverRepetition[] => {
  const running = runningOf(passages);
  const blamed = new Set<string>();
  const longestFirst = items
    .flatMap(({ slug, phrases }) => phrases.map(({ phrase, mentions }) => ({ slug, phrase, mentions })))
    .sort((a, b) => b.phrase.words.length - a.phrase.words.length);

  const crowded = longestFirst.flatMap(({ slug, phrase, mentions }): readonly OverRepetition[] => {
    const counted = mentions
      .filter((one) => isClear(one) && running.before[one.passage] !== undefined)
      .filter((one) => !spotsOf(one).every((spot) => blamed.has(spot)))
      .sort((a, b) => a.passage - b.passage || a.from - b.from);
    const rate = running.words === 0 ? 0 : (100 * counted.length) / running.words;
    if (counted.length < LEAST_MENTIONS || rate < LEAST_RATE) return [];
    const dense = denseOf(running, counted);
    const elsewhere = elsewhereOf(running, counted, slug);
    if (dense.size === 0 && elsewhere.length === 0) return [];

    for (const spot of counted.flatMap(spotsOf)) blamed.add(spot);
    const named = new Set([...dense, ...elsewhere]);
    return [
      {
        item: slug,
        phrase: phrase.text,
        rate,
        dispersion: normalDeviation(partsOf(running, counted)),
        mentions: counted.length,
        sentences: sentencesOf(
          passages,
          counted.filter((one) => named.has(one)),
        ),
      },
    ];
  });
  return crowded.sort((a, b) => b.rate - a.rate);
};
