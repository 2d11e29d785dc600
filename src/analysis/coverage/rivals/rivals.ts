/** Pages of ours that would answer a phrase before this article. */

import { capital, listed } from '../../../text/counting-words.ts';
import type { Rival } from '../coverage.ts';
import type { Phrase } from '../phrases/phrase.ts';
import type { Article } from './article.ts';
import { type Contribution, type Ranker, rankerOf } from './bm25f.ts';
import { type Compounds, compoundsOf, numbersOf, withCompounds } from './compounds.ts';
import { type FieldName, fieldWords, RANK_PARAMETERS } from './ranking.ts';
import {
  keysByField,
  lengthOf,
  newVocabulary,
  proseOf,
  type StreamSpot,
  spotsOf,
  streamOf,
  type TextStream,
  type Vocabulary,
} from './text-stream.ts';

/**
 * How far ahead a page must be to be named, as a share of this article's score. Common practice, no source: a
 * lead of less than this turns with one sentence more, and a tie is no rival.
 */
export const RIVAL_MARGIN = 1.05;
/**
 * A word in more than this share of the articles tells them apart no longer: of a candle shop's articles none is
 * the rival for "candle". From this many articles on, for among three the share says nothing. No source.
 */
export const COMMON_SHARE = 0.75;
export const COMMON_FROM = 4;

export interface ArticleIndex {
  readonly ranker: Ranker<FieldName>;
  readonly streams: ReadonlyMap<string, TextStream>;
  readonly vocabulary: Vocabulary;
  readonly compounds: Compounds;
}

/** The articles that may answer first, read once each and not held: the unsealed ones and the one under proof. */
export const articleIndexOf = (articles: Iterable<Article>): ArticleIndex => {
  const vocabulary = newVocabulary();
  const read: TextStream[] = [];
  for (const article of articles) read.push(streamOf(article, vocabulary));
  // Which pairs of words make a word is known only when all were read.
  const compounds = compoundsOf(vocabulary);
  const streams = new Map(
    read.map((stream) => [stream.cycle, withCompounds(stream, compounds, vocabulary)] as const),
  );
  const documents = function* () {
    for (const [id, stream] of streams) yield { id, fields: keysByField(stream, vocabulary) };
  };
  return { ranker: rankerOf(documents(), RANK_PARAMETERS), streams, vocabulary, compounds };
};

/** A phrase's head with the word that is nearest to it: what a page must say to be about the thing at all. */
const coreOf = <T>(words: readonly T[], head: number): readonly T[] =>
  head > 0 ? words.slice(head - 1, head + 1) : words.slice(0, 2);

/** "never", "once", "14 times". */
const timesWords = (count: number): string => ['never', 'once', 'twice'][count] ?? `${count} times`;

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

/** "Its title and a heading say it, and its text says it 14 times, this one 3 times." `words`: what is said. */
const reasonFor = (rival: Side, own: Side, words: string, whole: boolean): string => {
  const ahead = leads(rival.contributions, own.contributions);
  const clauses: string[] = [];
  const named = (): string => (whole || clauses.length > 0 ? 'it' : words);

  const places = ahead.filter(
    (field) => field !== 'text' && countIn(rival.spots, field) > countIn(own.spots, field),
  );
  if (places.length > 0) {
    const many = (field: FieldName): boolean => countIn(rival.spots, field) > 1;
    const names = places.map((field) => fieldWords[field][many(field) ? 1 : 0]);
    const say = places.length > 1 || names[0] !== fieldWords[places[0] as FieldName][0] ? 'say' : 'says';
    clauses.push(`${listed(names)} ${say} ${named()}`);
  }
  const [there, here] = [countIn(rival.spots, 'text'), countIn(own.spots, 'text')];
  const [length, ownLength] = [lengthOf(rival.stream, 'text'), lengthOf(own.stream, 'text')];
  if (there > here) {
    clauses.push(`its text says ${named()} ${timesWords(there)}, this one ${timesWords(here)}`);
  } else if (there > 0 && ahead.includes('text') && length < ownLength) {
    const rate = `${timesWords(there)} in ${length} words`;
    clauses.push(`its text says ${named()} ${rate}, this one ${timesWords(here)} in ${ownLength}`);
  }
  if (clauses.length === 0) {
    const names = ahead.slice(0, 2).map((field) => fieldWords[field][1]);
    clauses.push(`the words of ${words} stand more often in ${listed(names)}`);
  }
  const sentence = clauses.join(', and ');
  return `${capital(sentence)}.`;
};

/** A page packed such a thing, and does not only speak of it, where a heading or its data say so. */
const packed = ({ spots }: Side): boolean =>
  spots.some(({ field }) => field === 'heading' || field === 'structured data');

/**
 * The link to write, with the phrase as anchor. It leads to the page that should answer: the one that packed such
 * a thing, and the newer where both did, for it has what a visitor can still get; so mostly from the page that
 * answers first to this one. If that page links there already, the other way round; if both do, a second link
 * with these very words. It is written at the first mention in prose that is no link yet, with the words there as
 * anchor. Where neither page has one, `at` is the paragraph to add such a sentence to.
 */
const linkBetween = (rival: Side, own: Side, phrase: string): Rival['link'] => {
  const toRival = packed(rival) && rival.stream.cycle > own.stream.cycle;
  const wanted = toRival ? ([own, rival] as const) : ([rival, own] as const);
  const ways = [wanted, [wanted[1], wanted[0]] as const];
  const open = ways.filter(([from, to]) => !from.stream.linksTo.has(to.stream.cycle));
  const canWrite = ([from]: (typeof ways)[number]): boolean => from.spots.some(({ free }) => free);
  const [from, to] = open.find(canWrite) ?? ways.find(canWrite) ?? open[0] ?? wanted;
  const spot = from.spots.find(({ free }) => free);
  return {
    from: from.stream.cycle,
    to: to.stream.cycle,
    anchor: spot?.text ?? phrase,
    at: spot?.at ?? proseOf(from.stream, from.spots[0]?.at.file),
  };
};

/**
 * The page that answers a phrase before the article of a cycle, or undefined where that one is first, ties with the
 * first or is but a hair behind. Only pages that say the phrase's head together with its neighbour ("watering can"
 * of "sage watering can") are compared, since a page with the words scattered over it answers something else.
 * A phrase of nothing but words that most articles have is not ranked.
 */
export const rivalFor = (
  phrase: Pick<Phrase, 'text' | 'words' | 'head'>,
  cycle: string,
  { ranker, streams, vocabulary, compounds }: ArticleIndex,
): Rival | undefined => {
  const ownStream = streams.get(cycle);
  if (!ownStream) throw new Error(`Expected the article of \`${cycle}\` in the index`);
  const keys = phrase.words.map(({ key }) => key);
  const numbered = numbersOf(keys, compounds, vocabulary);
  const numbers = numbered.map(({ number }) => number);
  const terms = numbers.map((number) => vocabulary.list[number] ?? '');
  const isCommon = (term: string): boolean => ranker.holders(term) > ranker.size * COMMON_SHARE;
  if (ranker.size >= COMMON_FROM && terms.every(isCommon)) return undefined;

  const head = numbered.findLastIndex(({ word }) => word <= phrase.head);
  const core = coreOf(numbers, head);
  const ranked = ranker.rank(terms);
  const own = ranked.find(({ id }) => id === cycle)?.score ?? 0;
  const ahead = ranked.filter(
    ({ id, score }) => score > own && spotsOf(streams.get(id) as TextStream, core, vocabulary).length > 0,
  );
  const [first] = ahead;
  if (!first || first.score <= own * RIVAL_MARGIN) return undefined;

  const rivalStream = streams.get(first.id) as TextStream;
  // Where the rival never says the whole phrase, both are measured by what it does say.
  const whole = spotsOf(rivalStream, numbers, vocabulary).length > 0;
  const said = whole ? numbers : core;
  const words = whole ? phrase.words : coreOf(phrase.words, phrase.head);
  const text = words.map((word) => word.text).join(' ');
  const sideOf = (stream: TextStream): Side => ({
    stream,
    contributions: ranker.explain(terms, stream.cycle),
    spots: spotsOf(stream, said, vocabulary),
  });
  const [rival, mine] = [sideOf(rivalStream), sideOf(ownStream)];
  return {
    cycle: first.id,
    title: rivalStream.title,
    score: first.score,
    own,
    rank: ahead.length + 1,
    why: reasonFor(rival, mine, `“${text}”`, whole),
    link: linkBetween(rival, mine, text),
  };
};
