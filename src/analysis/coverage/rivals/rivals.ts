/** Pages of ours that would answer a phrase before this article. */
import type { Rival, RivalReason } from '../coverage.ts';
import type { Phrase } from '../phrases/phrase.ts';
import type { Archive } from './archive.ts';
import type { Contribution } from './bm25f.ts';
import { numbersOf } from './compounds.ts';
import type { FieldName } from './ranking.ts';
import { hashOf } from './term.ts';
import {
  lengthOf,
  placeOf,
  proseOf,
  type StreamSpot,
  spotsOf,
  type TextStream,
  writtenAt,
} from './text-stream.ts';

/**
 * How far ahead a page must be to be named, as a share of this article's score. Common practice, no source: a
 * lead of less than this turns with one sentence more, and a tie is no rival.
 */
const RIVAL_MARGIN = 1.05;
/**
 * A word in more than this share of the articles tells them apart no longer: of a candle shop's articles none is
 * the rival for "candle". No source.
 */
const COMMON_SHARE = 0.75;
/** Articles from which on that share says something: among three it does not. No source. */
const COMMON_FROM = 4;

/** A phrase's head with the word that is nearest to it: what a page must say to be about the thing at all. */
const coreOf = <T>(words: readonly T[], head: number): readonly T[] =>
  head > 0 ? words.slice(head - 1, head + 1) : words.slice(0, 2);

const countIn = (spots: readonly StreamSpot[], field: FieldName): number =>
  spots.filter((spot) => spot.field === field).length;

/** What each field gives the one more than the other, the most first. */
const leads = (
  ahead: readonly Contribution<FieldName>[],
  behind: readonly Contribution<FieldName>[],
): readonly FieldName[] => {
  const sums = new Map<FieldName, number>();
  for (const { field, gives } of ahead) sums.set(field, (sums.get(field) ?? 0) + gives);
  for (const { field, gives } of behind) sums.set(field, (sums.get(field) ?? 0) - gives);
  return [...sums]
    .filter(([, more]) => more > 0)
    .sort((a, b) => b[1] - a[1])
    .map(([field]) => field);
};

interface Side {
  readonly stream: TextStream;
  readonly contributions: readonly Contribution<FieldName>[];
  readonly spots: readonly StreamSpot[];
}

/** What the rival does more for a phrase than this article, `phrase` being as much of it as the rival says: the whole or its core. */
const reasonFor = (rival: Side, own: Side, phrase: string, whole: boolean): RivalReason => {
  const ahead = leads(rival.contributions, own.contributions);
  const fields = ahead
    .filter((field) => field !== 'text' && countIn(rival.spots, field) > countIn(own.spots, field))
    .map((field) => ({ field, many: countIn(rival.spots, field) > 1 }));
  const [there, here] = [countIn(rival.spots, 'text'), countIn(own.spots, 'text')];
  const [length, ownLength] = [lengthOf(rival.stream, 'text'), lengthOf(own.stream, 'text')];
  const text =
    there > here
      ? { there: { times: there }, here: { times: here } }
      : there > 0 && ahead.includes('text') && length < ownLength
        ? { there: { times: there, words: length }, here: { times: here, words: ownLength } }
        : undefined;
  if (fields.length === 0 && !text) return { kind: 'has its words', phrase, fields: ahead.slice(0, 2) };
  return { kind: 'says it', ...(!whole && { core: phrase }), fields, ...(text && { text }) };
};

/** Whether the page is of a box that held such a thing: then a heading or the structured data names it, and not the story alone. */
const packed = ({ spots }: Side): boolean =>
  spots.some(({ field }) => field === 'heading' || field === 'structured data');

/**
 * The link to write, with the phrase as anchor. It leads to the page that should answer: the one that packed such
 * a thing, and the newer where both did, because what it holds can still be had. Mostly that is this page, and the link
 * stands in the one that answers first. If that page links there already, it goes the other way round; if both do, it is
 * a second link with these very words. It is written at the first mention in prose that is no link yet, with the words there as
 * anchor. Where neither page has one, `at` is the paragraph to add such a sentence to.
 */
const linkBetween = (rival: Side, own: Side, phrase: string): Rival['link'] => {
  const toRival = packed(rival) && rival.stream.index.cycle > own.stream.index.cycle;
  const wanted = toRival ? ([own, rival] as const) : ([rival, own] as const);
  const ways = [wanted, [wanted[1], wanted[0]] as const];
  const open = ways.filter(([from, to]) => !from.stream.index.linksTo.includes(to.stream.index.cycle));
  const canWrite = ([from]: (typeof ways)[number]): boolean => from.spots.some(({ free }) => free);
  const [from, to] = open.find(canWrite) ?? ways.find(canWrite) ?? open[0] ?? wanted;
  const spot = from.spots.find(({ free }) => free);
  return {
    from: from.stream.index.cycle,
    to: to.stream.index.cycle,
    anchor: spot ? writtenAt(from.stream, spot) : phrase,
    at: spot ? placeOf(from.stream, spot) : proseOf(from.stream, from.spots[0]?.file),
  };
};

/** A score as it is shown, so that a word in another article does not change this proof by what nobody sees. */
const asShown = (score: number): number => Number(score.toFixed(2));

/** A phrase as the articles of an archive have it. */
export interface Termed {
  readonly phrase: Pick<Phrase, 'words' | 'head'>;
  /** Its words by their numbers. */
  readonly terms: readonly number[];
  /** Those that a page must say to be about the thing at all. */
  readonly core: readonly number[];
  /** Whether each of its words is one that some article has. */
  readonly isWhole: boolean;
}

/** A phrase in the words of an archive. */
export const termedIn = (
  phrase: Pick<Phrase, 'words' | 'head'>,
  { compounds, vocabulary }: Archive,
): Termed => {
  const keys = phrase.words.map(({ key }) => key);
  const numbered = numbersOf(keys, compounds, vocabulary);
  const terms = numbered.map(({ number }) => number);
  const head = numbered.findLastIndex(({ word }) => word <= phrase.head);
  const isWhole = keys.every((key) => vocabulary.find(hashOf(key)) >= 0);
  return { phrase, terms, core: coreOf(terms, head), isWhole };
};

/**
 * The page that answers a phrase before the article of a cycle, or undefined where that one is first, ties with the
 * first or is but a hair behind. Only pages that say the phrase's head together with its neighbour ("watering can"
 * of "sage watering can") are compared, since a page with the words scattered over it answers something else.
 * A phrase of nothing but words that most articles have is not ranked. Of equal scores the older page is the first.
 *
 * It depends on the phrase's keys, text and head and on the archive. Scores are rounded to two decimals.
 */
export const rivalFor = (
  { phrase, terms, core }: Termed,
  cycle: string,
  archive: Archive,
): Rival | undefined => {
  const { scorer, streamOf, articles } = archive;
  const ownNumber = archive.numberOf(cycle);
  const isCommon = (term: number): boolean => scorer.holders(term) > scorer.size * COMMON_SHARE;
  if (scorer.size >= COMMON_FROM && terms.every(isCommon)) return undefined;

  const own = scorer.score(terms, ownNumber);
  let first: { readonly article: number; readonly score: number } | undefined;
  let ahead = 0;
  for (const article of archive.saying(core)) {
    const score = scorer.score(terms, article);
    if (score <= own) continue;
    ahead += 1;
    if (!first || score > first.score) first = { article, score };
  }
  if (!first || first.score <= own * RIVAL_MARGIN) return undefined;

  const rivalStream = streamOf(first.article);
  // Where the rival never says the whole phrase, both are measured by what it does say.
  const whole = spotsOf(rivalStream, terms).length > 0;
  const said = whole ? terms : core;
  const words = whole ? phrase.words : coreOf(phrase.words, phrase.head);
  const text = words.map((word) => word.text).join(' ');
  const sideOf = (article: number): Side => ({
    stream: streamOf(article),
    contributions: scorer.explain(terms, article),
    spots: spotsOf(streamOf(article), said),
  });
  const [rival, mine] = [sideOf(first.article), sideOf(ownNumber)];
  const { cycle: rivalCycle, title } = articles[first.article] as (typeof articles)[number];
  return {
    cycle: rivalCycle,
    title,
    score: asShown(first.score),
    own: asShown(own),
    rank: ahead + 1,
    reason: reasonFor(rival, mine, text, whole),
    link: linkBetween(rival, mine, text),
  };
};
