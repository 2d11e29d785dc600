/**
 * The proof of a cycle's article: its phrases, where they stand and how well, and the least work that would mend it.
 *
 * A proof has two halves, because they change at different times. `ownCoverage` depends on the cycle; `comparedCoverage`
 * on the phrases of the first half and on the indexes of all articles. Both are plain data and survive JSON; the
 * passages, by far the largest part, are read anew when a proof is shown.
 */
import type { BoxSettings, Item } from '../../model/box.ts';
import { itemAt } from '../../text/item-at.ts';
import type { Language } from '../language/language.ts';
import { adviceFor } from './advice/advice.ts';
import { capitalsIn } from './advice/capitals.ts';
import { isAtAim } from './aim.ts';
import {
  type Coverage,
  type ItemCoverage,
  isClear,
  type Limit,
  type Mention,
  type PhraseCoverage,
  type SharedPassage,
} from './coverage.ts';
import { itemRecordOf } from './mentions/known-words.ts';
import { withinLonger } from './mentions/mentions.ts';
import { overRepetitionsOf } from './over-repetition.ts';
import { audienceOf } from './phrases/audience.ts';
import type { Phrase } from './phrases/phrase.ts';
import { phrasesOf } from './phrases/phrases.ts';
import type { TypedSearches } from './phrases/typed.ts';
import { readingOf } from './reading.ts';
import type { Comparison, PhraseRival } from './rivals/comparison.ts';
import { calledOf } from './standing/called.ts';
import { placesOf } from './standing/standing.ts';
import { type TalliedItem, type TalliedPhrase, tallyOf } from './standing/tally.ts';
import type { Stranger } from './strangers/untold.ts';
import { thinPartsOf } from './substance.ts';
import { type Passage, whereIs } from './text/passage.ts';

export { indexSearches, type ReadSearches, readSearches, searchIndexOf } from './phrases/typed.ts';
export { articleOf } from './rivals/article.ts';
export { type ArticleIndex, indexArticle } from './rivals/article-index.ts';
export { type Comparison, comparisonOf } from './rivals/comparison.ts';
export { decodeIndex, encodeIndex } from './rivals/index-bytes.ts';
export { passagesOf } from './text/passages.ts';
export { type Surroundings, surroundingsOf } from './text/surroundings.ts';

const limitsOf = ({ english, stems }: Language): readonly Limit[] => [
  ...(english ? [] : (['names taken whole'] as const)),
  ...(stems ? [] : (['no stemmer'] as const)),
];

/** A mention without what its passage says of it. */
type OwnMention = readonly [
  passage: number,
  from: number,
  to: number,
  zone: Mention['zone'],
  grade: Mention['grade'],
  within?: string,
];

/** A phrase without its words, which are those of its text. */
interface OwnPhrase extends Omit<Phrase, 'words'> {
  readonly mentions: readonly OwnMention[];
}

/** All of a proof that depends on the cycle alone. */
export interface OwnCoverage
  extends Pick<
    Coverage,
    | 'cycle'
    | 'theme'
    | 'title'
    | 'titles'
    | 'aim'
    | 'lang'
    | 'limits'
    | 'overRepeated'
    | 'reading'
    | 'advice'
    | 'outOfReach'
    | 'thin'
    | 'strangers'
  > {
  readonly items: readonly (Omit<ItemCoverage, 'phrases'> & { readonly phrases: readonly OwnPhrase[] })[];
}

interface OwnCoverageInput {
  readonly cycle: {
    readonly id: string;
    readonly theme: string;
    readonly title: string;
    readonly titles?: readonly string[];
    readonly items: readonly Item[];
  };
  /** Words of the box's name speak of no thing; its description may say what animal all of it is for. */
  readonly box: Pick<BoxSettings, 'name' | 'description'>;
  /** The cycle's, as `passagesOf` gives them. */
  readonly passages: readonly Passage[];
  /** What people typed. */
  readonly searches: TypedSearches;
  /** Standing that every item should reach, more than 0 and less than 1. */
  readonly aim: number;
  readonly language: Language;
  /** Other names that a dictionary has, by kind. */
  readonly otherNames: ReadonlyMap<string, readonly string[]>;
  /** What is named in the cycle and not in its box. */
  readonly strangers: readonly Stranger[];
}

const ownMention = ({ passage, from, to, zone, grade, within }: Mention): OwnMention =>
  within === undefined ? [passage, from, to, zone, grade] : [passage, from, to, zone, grade, within];

/** Whether the article says a phrase where people read it. */
const isSaid = ({ mentions }: TalliedPhrase): boolean =>
  mentions.some((mention) => mention.zone !== 'structured data' && isClear(mention));

/** The other names that the text says, and those it does not. */
const reachOf = (entries: readonly TalliedPhrase[]): ItemCoverage['reach'] => {
  const others = entries.filter(({ phrase }) => phrase.origins.some(({ from }) => from === 'also'));
  const names = (some: readonly TalliedPhrase[]): readonly string[] => some.map(({ phrase }) => phrase.text);
  return { said: names(others.filter(isSaid)), unsaid: names(others.filter((one) => !isSaid(one))) };
};

/** How often an item was typed, and how often in words that the text has. */
const typedOf = (entries: readonly TalliedPhrase[]): Pick<ItemCoverage, 'typed'> => {
  const countOf = ({ phrase }: TalliedPhrase): number =>
    phrase.origins.reduce((sum, origin) => sum + (origin.from === 'search' ? origin.count : 0), 0);
  const sum = (some: readonly TalliedPhrase[]): number => some.reduce((all, one) => all + countOf(one), 0);
  const all = sum(entries);
  if (all === 0) return {};
  const unanswered = entries
    .filter((entry) => countOf(entry) > 0 && !isSaid(entry))
    .toSorted((a, b) => countOf(b) - countOf(a))
    .map(({ phrase }) => phrase.text);
  return { typed: { all, answered: sum(entries.filter(isSaid)), unanswered } };
};

/**
 * What an article's own text and records say in a proof. It depends on its input alone: on the cycle's id, theme,
 * title and items, its passages (so on what `passagesOf` depends on), all that was typed, the aim, the language, and
 * the other names of the cycle's kinds and the strangers among its things. Nothing in it depends on other articles.
 */
export const ownCoverage = async (input: OwnCoverageInput): Promise<OwnCoverage> => {
  const { cycle, box, passages, searches, aim, language, otherNames, strangers } = input;
  const audience = audienceOf(box.description, language);
  const tallied = cycle.items.map(
    (item): TalliedItem => ({
      slug: item.slug,
      hasPicture: item.pictures.length > 0,
      name: item.inText.name,
      kind: item.inText.kind,
      capitals: capitalsIn([item.inText.name, item.inText.kind]),
      phrases: phrasesOf(item, searches, language, audience),
      record: itemRecordOf(item, language, box.name),
    }),
  );
  const tally = tallyOf(passages, tallied, language.english);
  const { edits, promised } = adviceFor(passages, tally, aim, language);

  const thin = thinPartsOf(
    { id: cycle.id, items: cycle.items.map(({ slug, source }) => ({ slug, file: source.file })) },
    passages,
    language,
  );
  const items = cycle.items.map((item, i) => {
    const own = itemAt(tallied, i);
    const entries = tally.entries.filter((entry) => entry.item === own);
    const mentions = withinLonger(entries);
    return {
      slug: item.slug,
      number: item.number,
      name: item.name,
      shortName: item.inText.short,
      kind: item.kind,
      standing: tally.standings.get(item.slug) ?? 0,
      places: placesOf(entries, own),
      reach: reachOf(entries),
      ...typedOf(entries),
      promised: promised.get(item.slug) ?? 0,
      thin: thin.some((part) => part.item === item.slug),
      called: calledOf(item, passages, language),
      otherNames: otherNames.get(item.kind) ?? [],
      phrases: entries.map(({ phrase }, k) => ({ phrase, mentions: mentions[k] ?? [] })),
    };
  });
  return {
    cycle: cycle.id,
    theme: cycle.theme,
    title: cycle.title,
    titles: cycle.titles ?? [],
    aim,
    lang: language.tag,
    limits: limitsOf(language),
    items: items.map((item) => ({
      ...item,
      phrases: item.phrases.map(({ phrase: { text, head, origins, weight }, mentions }) => ({
        text,
        head,
        origins,
        weight,
        mentions: mentions.map(ownMention),
      })),
    })),
    overRepeated: overRepetitionsOf(items, passages),
    reading: await readingOf(passages, language),
    advice: edits,
    thin,
    strangers,
    outOfReach: items.filter((item) => !isAtAim(item.promised, aim)).map(({ slug }) => slug),
  };
};

/** All of a proof that depends on other articles. */
export interface ComparedCoverage {
  readonly rivals: readonly PhraseRival[];
  readonly shared: readonly SharedPassage[];
}

/**
 * What an article is beside the others. It depends on the comparison, which is to hold the article itself and all that a
 * visitor can read; so on all their indexes and on the language. Rivals depend on the cycle and the phrases of its first
 * half besides, shared passages on the indexes of this article and of earlier ones alone.
 */
export const comparedCoverage = (own: OwnCoverage, comparison: Comparison): ComparedCoverage => ({
  rivals: comparison.rivalsOf(own),
  shared: comparison.sharedOf(own.cycle),
});

const mentionFrom = (
  [passage, from, to, zone, grade, within]: OwnMention,
  passages: readonly Passage[],
): Mention => {
  const where = passages[passage];
  const word = where?.words[from];
  if (!where || !word)
    throw new Error(`Expected the passages of the mentions, found none of number ${passage}`);
  const mention = { passage, from, to, zone, grade };
  return { ...mention, ...(within === undefined ? {} : { within }), at: whereIs(where, word) };
};

/** The whole of a proof from its two halves and the passages that the first of them was made from. */
export const coverageOf = (
  own: OwnCoverage,
  { rivals, shared }: ComparedCoverage,
  passages: readonly Passage[],
  language: Language,
): Coverage => ({
  ...own,
  passages,
  shared,
  items: own.items.map((item): ItemCoverage => {
    const phrases = item.phrases.map((own, i): PhraseCoverage => {
      const { text, head, origins, weight } = own;
      const mentions = own.mentions.map((mention) => mentionFrom(mention, passages));
      const found = rivals.find((one) => one.item === item.slug && one.phrase === i);
      return {
        phrase: { text, words: language.words(text), head, origins, weight },
        mentions,
        ...(found ? { rival: found.rival } : {}),
      };
    });
    return { ...item, phrases };
  }),
});
