/**
 * Test collections in the layout of TREC: documents, queries and judgments, our search and a textbook BM25 over
 * them, and how good a ranking is.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Language } from '../../src/analysis/language/language.ts';
import { storyParts } from '../../src/analysis/search/documents.ts';
import { find } from '../../src/analysis/search/find.ts';
import { HEAD_FIELDS, TEXT_FIELDS } from '../../src/analysis/search/options.ts';
import { searchedWords } from '../../src/analysis/search/text.ts';
import { type WholeIndex, wholeIndex } from '../../src/analysis/search/whole-index.ts';
import { indexInParts } from './whole-index.ts';

export interface Collection {
  readonly documents: readonly { readonly id: string; readonly title: string; readonly text: string }[];
  readonly queries: readonly { readonly id: string; readonly text: string }[];
  /** By query: by document, how relevant it is; 0 and below is not. */
  readonly judgments: ReadonlyMap<string, ReadonlyMap<string, number>>;
}

/** Document ids by query, best first. */
export type Ranking = ReadonlyMap<string, readonly string[]>;

const element = (source: string, names: string): string =>
  [
    ...source.matchAll(
      new RegExp(
        `<(?:${names})>([\\s\\S]*?)(?=</(?:${names})>|<(?:/?(?:DOC|top)|num|title|desc|narr)\\b|$)`,
        'gi',
      ),
    ),
  ]
    .map(([, text = '']) => text.trim())
    .join('\n');

/** Texts of the files whose name, or whose folder's name, begins so. */
const textsOf = (dir: string, beginnings: readonly string[]): readonly string[] =>
  readdirSync(dir, { recursive: true, encoding: 'utf8' })
    .filter((path) =>
      path.split('/').some((part) => beginnings.some((one) => part.toLowerCase().startsWith(one))),
    )
    .sort()
    .flatMap((path) => {
      try {
        return [readFileSync(join(dir, path), 'utf8')];
      } catch {
        // A folder of such a name: its files are listed too.
        return [];
      }
    });

/**
 * Reads a folder: `docs*` with `<DOC><DOCNO>…<TITLE>…<TEXT>…` (a text without a tag is text), `queries*` or
 * `topics*` with `<top><num>…<title>…` or lines of id, tab, text, and `qrels*` with lines of query, 0, document,
 * relevance.
 */
export const readCollection = (dir: string): Collection => {
  const documents = textsOf(dir, ['docs', 'documents'])
    .join('\n')
    .split(/<DOC>/i)
    .slice(1)
    .map((source) => ({
      id: element(source, 'DOCNO'),
      title: element(source, 'TITLE|HEAD|HEADLINE'),
      text:
        element(source, 'TEXT|ABSTRACT|BODY') ||
        source.replace(/<(DOCNO|TITLE|HEAD|HEADLINE)>[\s\S]*?<\/\1>/gi, '').replace(/<[^>]+>/g, ' '),
    }));
  const asked = textsOf(dir, ['queries', 'topics']).join('\n');
  const queries = /<top>/i.test(asked)
    ? asked
        .split(/<top>/i)
        .slice(1)
        .map((source) => ({
          id: element(source, 'num').replace(/^Number:\s*/i, ''),
          text: element(source, 'title').replace(/^Topic:\s*/i, '') || element(source, 'desc'),
        }))
    : asked
        .split('\n')
        .filter((line) => line.includes('\t'))
        .map((line) => ({ id: line.split('\t')[0] as string, text: line.split('\t').slice(1).join(' ') }));
  const judgments = new Map<string, Map<string, number>>();
  for (const line of textsOf(dir, ['qrels']).join('\n').split('\n')) {
    const [query, , document, relevance] = line.trim().split(/\s+/);
    if (query === undefined || document === undefined) continue;
    const known = judgments.get(query) ?? new Map<string, number>();
    judgments.set(query, known.set(document, Number(relevance)));
  }
  return { documents, queries, judgments };
};

/** Where a collection of so many documents is cut, as the catalogue's stories are. */
const publishedEnds = (documents: number): readonly number[] => storyParts(documents).map(({ to }) => to);

const textsOfSearch = ({ documents }: Collection) =>
  documents.map(({ title, text }) => ({ name: title, about: '', text: `${title}\n${text}` }));

const rankIn = (indexes: readonly WholeIndex[], { documents, queries }: Collection, language: Language) =>
  new Map(
    queries.map(({ id, text }) => [
      id,
      find(indexes, language, text, { slips: false, beginnings: false }).found.map(
        (found) => (documents[found.id] as { id: string }).id,
      ),
    ]),
  );

/**
 * Our search as the catalogue has it, slips and beginnings off: a document's title is its name, its text is in the part
 * that it is published in, or in one that ends at the next of `ends`.
 */
export const rankOurs = (
  collection: Collection,
  language: Language,
  ends: readonly number[] = publishedEnds(collection.documents.length),
): Ranking => {
  const texts = textsOfSearch(collection);
  const names = indexInParts(texts, HEAD_FIELDS, language);
  return rankIn([names, indexInParts(texts, TEXT_FIELDS, language, ends)], collection, language);
};

/** The same, but each part counts for itself: what it would cost if the parts did not know of each other. */
export const rankApart = (
  collection: Collection,
  language: Language,
  ends: readonly number[] = publishedEnds(collection.documents.length),
): Ranking => {
  const texts = textsOfSearch(collection);
  const names = indexInParts(texts, HEAD_FIELDS, language);
  const { parts } = indexInParts(texts, TEXT_FIELDS, language, ends);
  return rankIn([names, ...parts.map((part) => wholeIndex([part]))], collection, language);
};

/**
 * BM25 by the book (Robertson & Zaragoza 2009, "The Probabilistic Relevance Framework: BM25 and Beyond", 3.2; k1
 * 1.2, b 0.75), over title and text as one, the same stems and stop words, lengths in words. The weight of a
 * word is the logarithm of 1 + odds, so that a common word's is not below nought.
 */
export const bm25Scores = (documents: Collection['documents'], language: Language) => {
  const k1 = 1.2;
  const b = 0.75;
  const stemsOf = (text: string): readonly string[] => searchedWords(text, language).map(({ stem }) => stem);
  const bags = documents.map(({ title, text }) => stemsOf(`${title}\n${text}`));
  const average = bags.reduce((sum, bag) => sum + bag.length, 0) / bags.length;
  const postings = new Map<string, Map<number, number>>();
  bags.forEach((bag, i) => {
    for (const stem of bag) {
      const counts = postings.get(stem) ?? new Map<number, number>();
      postings.set(stem, counts.set(i, (counts.get(i) ?? 0) + 1));
    }
  });
  return (query: string): ReadonlyMap<number, number> => {
    const scores = new Map<number, number>();
    for (const stem of stemsOf(query)) {
      const counts = postings.get(stem) ?? new Map<number, number>();
      const weight = Math.log(1 + (bags.length - counts.size + 0.5) / (counts.size + 0.5));
      for (const [i, count] of counts) {
        const length = 1 - b + (b * (bags[i] as readonly string[]).length) / average;
        scores.set(i, (scores.get(i) ?? 0) + (weight * count * (k1 + 1)) / (count + k1 * length));
      }
    }
    return scores;
  };
};

export const rankByBm25 = ({ documents, queries }: Collection, language: Language): Ranking => {
  const scoresOf = bm25Scores(documents, language);
  return new Map(
    queries.map(({ id, text }) => {
      const ranked = [...scoresOf(text)].sort(([i, a], [j, c]) => c - a || i - j);
      return [id, ranked.map(([i]) => (documents[i] as { id: string }).id)];
    }),
  );
};

const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

/**
 * Mean average precision (Buckley & Voorhees 2000) and nDCG at 10 (Järvelin & Kekäläinen 2002, gains as judged, the
 * discount from the second rank), over queries that have a relevant document.
 */
export const measure = (ranking: Ranking, { judgments }: Collection): { map: number; ndcg10: number } => {
  const judged = [...judgments].filter(([, known]) => [...known.values()].some((gain) => gain > 0));
  const each = judged.map(([query, known]) => {
    const ranked = ranking.get(query) ?? [];
    const gainOf = (id: string): number => Math.max(0, known.get(id) ?? 0);
    const relevant = [...known.values()].filter((gain) => gain > 0);
    let met = 0;
    let precision = 0;
    ranked.forEach((id, i) => {
      if (gainOf(id) === 0) return;
      met += 1;
      precision += met / (i + 1);
    });
    const discounted = (gains: readonly number[]): number =>
      gains.slice(0, 10).reduce((sum, gain, i) => sum + gain / Math.log2(i + 2), 0);
    return {
      map: precision / relevant.length,
      ndcg10: discounted(ranked.map(gainOf)) / discounted([...relevant].sort((a, b) => b - a)),
    };
  });
  return { map: mean(each.map(({ map }) => map)), ndcg10: mean(each.map(({ ndcg10 }) => ndcg10)) };
};
