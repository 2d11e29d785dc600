/** What a process keeps from one build to the next, so that what did not change is not read and made ready again. */
import type { SharedPassage } from '../analysis/coverage/coverage.ts';
import type { ArticleIndex, Comparison, OwnCoverage } from '../analysis/coverage/measure-coverage.ts';
import type { TypedSearches } from '../analysis/coverage/phrases/typed.ts';
import { type Language, languageFor } from '../analysis/language/language.ts';
import { type Generations, generations } from '../text/generations.ts';
import type { MadeFacts } from './documents.ts';

/** Each is known by all that it depends on; nothing in it is ever needed. */
export interface Kept {
  readonly languageFor: (tag: string) => Promise<Language>;
  readonly indexes: Generations<ArticleIndex>;
  readonly owns: Generations<Promise<OwnCoverage>>;
  readonly searches: Generations<TypedSearches>;
  readonly shared: Generations<Promise<readonly SharedPassage[]>>;
  readonly documents: Generations<MadeFacts | undefined>;
  /** How the articles stand beside one another. The next comparison begins with it. */
  comparison?: Comparison;
  /** Begins a build. */
  readonly turn: () => void;
}

/** Nothing yet. */
export const nothingKept = (): Kept => {
  const languages = generations<Promise<Language>>();
  const indexes = generations<ArticleIndex>();
  const owns = generations<Promise<OwnCoverage>>();
  const searches = generations<TypedSearches>();
  const shared = generations<Promise<readonly SharedPassage[]>>();
  const documents = generations<MadeFacts | undefined>();
  return {
    languageFor: (tag) => languages.get(tag, () => languageFor(tag)),
    indexes,
    owns,
    searches,
    shared,
    documents,
    turn: () => {
      for (const each of [languages, indexes, owns, searches, shared, documents]) each.turn();
    },
  };
};
