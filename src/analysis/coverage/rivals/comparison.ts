/** Articles compared with one another, again and again as they are written: only what a change can have touched is compared anew. */
import type { Language } from '../../language/language.ts';
import type { Rival, SharedPassage } from '../coverage.ts';
import type { Phrase } from '../phrases/phrase.ts';
import { type Archive, archiveOf } from './archive.ts';
import type { ArticleIndex } from './article-index.ts';
import { type Lexicon, newLexicon } from './lexicon.ts';
import { rivalFor, type Termed, termedIn } from './rivals.ts';
import { type SharedPassages, sharedPassages } from './shared-passages.ts';
import { saysAny, type TextStream } from './text-stream.ts';

/** An article's phrases, as its own half of a proof has them. */
interface Phrased {
  readonly cycle: string;
  readonly items: readonly {
    readonly slug: string;
    readonly phrases: readonly Pick<Phrase, 'text' | 'head'>[];
  }[];
}

/** A phrase that another page of ours would answer first, by its place among the item's phrases. */
export interface PhraseRival {
  readonly item: string;
  readonly phrase: number;
  readonly rival: Rival;
}

interface Ranked {
  readonly termed: Termed;
  readonly rival: Rival | undefined;
}

/** What is known of an article's phrases, by item and phrase. */
interface Known {
  readonly article: ArticleIndex;
  readonly items: Phrased['items'];
  /** Undefined where a phrase has to be ranked anew. */
  readonly ranked: readonly (readonly (Ranked | undefined)[])[];
}

export interface Comparison {
  /** Of one of the articles. Throws for another. */
  readonly rivalsOf: (own: Phrased) => readonly PhraseRival[];
  /** The paragraphs of one of the articles that are like an earlier one's, in reading order. */
  readonly sharedOf: (cycle: string) => readonly SharedPassage[];
  /** What the next comparison begins with. */
  readonly past: Past;
}

interface Past {
  readonly lexicon: Lexicon;
  readonly archive: Archive;
  readonly known: ReadonlyMap<string, Known>;
  readonly shared: () => SharedPassages | undefined;
}

/** What every phrase of an archive is ranked by. */
const frameOf = ({ scorer, compounds }: Archive): string =>
  `${scorer.size} ${scorer.meanLengths.join()} ${compounds.digest}`;

/** The texts of articles that are in one of two archives alone. */
const changedStreams = (one: Archive, other: Archive): readonly TextStream[] => {
  const inOther = new Set(other.articles);
  return one.articles.flatMap((article, number) => (inOther.has(article) ? [] : [one.streamOf(number)]));
};

/**
 * Whether a phrase may be ranked otherwise among other articles. Where every mean length and compound is as it was, a
 * rank depends on how many articles have each term, and on those that say the core: none of these may have changed.
 */
const touchOf = (before: Archive, now: Archive): ((termed: Termed) => boolean) => {
  if (frameOf(before) !== frameOf(now)) return () => true;
  const streams = [...changedStreams(before, now), ...changedStreams(now, before)];
  const said = new Map<string, boolean>();
  const isSaid = (words: readonly number[]): boolean => {
    const name = words.join(' ');
    const known = said.get(name) ?? streams.some((stream) => saysAny(stream, words));
    said.set(name, known);
    return known;
  };
  return ({ terms, core, isWhole }) =>
    !isWhole ||
    terms.some((term) => before.scorer.holders(term) !== now.scorer.holders(term)) ||
    isSaid(core);
};

/** What is still so of what was known, among other articles. */
const stillKnown = ({ archive, known }: Past, now: Archive): ReadonlyMap<string, Known> => {
  const isTouched = touchOf(archive, now);
  const there = new Set(now.articles);
  return new Map(
    [...known].flatMap(([cycle, one]): [string, Known][] =>
      there.has(one.article)
        ? [
            [
              cycle,
              {
                ...one,
                ranked: one.ranked.map((phrases) =>
                  phrases.map((ranked) => (ranked && !isTouched(ranked.termed) ? ranked : undefined)),
                ),
              },
            ],
          ]
        : [],
    ),
  );
};

/**
 * A comparison of some articles: those that a visitor can read, and the one under proof where it is still sealed.
 * `asked` names the cycles whose paragraphs are looked at together, all where it is left out. With the comparison that
 * came `before`, what cannot have changed since is taken from there.
 */
export const comparisonOf = (
  indexes: Iterable<ArticleIndex>,
  language: Language,
  asked?: ReadonlySet<string>,
  before?: Comparison,
): Comparison => {
  const lexicon = before?.past.lexicon ?? newLexicon();
  const archive = archiveOf(indexes, lexicon);
  const known = new Map(before ? stillKnown(before.past, archive) : []);
  let shared = before?.past.shared();
  const sharedIn = (article: ArticleIndex): SharedPassages => {
    if (shared?.articles !== archive.articles || !shared.found.has(article)) {
      const isAsked = (one: ArticleIndex): boolean => one === article || (asked?.has(one.cycle) ?? true);
      shared = sharedPassages(archive.articles, isAsked, shared);
    }
    return shared;
  };
  const articleOf = (cycle: string): ArticleIndex =>
    archive.articles[archive.numberOf(cycle)] as ArticleIndex;
  return {
    rivalsOf: ({ cycle, items }) => {
      const article = articleOf(cycle);
      const mine = known.get(cycle);
      const before = mine?.article === article && mine.items === items ? mine.ranked : [];
      const ranked = items.map(({ phrases }, item) =>
        phrases.map(({ text, head }, phrase): Ranked => {
          const one = before[item]?.[phrase];
          if (one) return one;
          const termed = termedIn({ words: language.words(text), head }, archive);
          return { termed, rival: rivalFor(termed, cycle, archive) };
        }),
      );
      known.set(cycle, { article, items, ranked });
      return items.flatMap(({ slug }, item) =>
        (ranked[item] ?? []).flatMap(({ rival }, phrase) => (rival ? [{ item: slug, phrase, rival }] : [])),
      );
    },
    sharedOf: (cycle) => {
      const article = articleOf(cycle);
      return (
        sharedIn(article)
          .found.get(article)
          ?.filter((one) => one !== undefined) ?? []
      );
    },
    past: { lexicon, archive, known, shared: () => shared },
  };
};
