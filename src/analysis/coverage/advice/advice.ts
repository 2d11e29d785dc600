/** The little work that brings items to the aim: at most five sentences a cycle, each as it is and as it would be. */
import type { Language } from '../../language/language.ts';
import { isAtAim } from '../aim.ts';
import type { Edit } from '../coverage.ts';
import { type TalliedItem, type TalliedPhrase, type Tally, talliedAgain } from '../standing/tally.ts';
import type { Passage } from '../text/passage.ts';
import {
  inDescription,
  inPicture,
  inStory,
  isNamedIn,
  type Rewrite,
  type Sought,
  summaryNaming,
} from './rewrites.ts';
import { rewritten } from './rewriting.ts';

/** What to change, and what it would bring. */
export interface Advice {
  readonly edits: readonly Edit[];
  /** Standing of each item by slug after all edits, counted on the changed text. */
  readonly promised: ReadonlyMap<string, number>;
}

/** More than a writer mends on an evening. A choice of ours. */
const MOST_EDITS = 5;

/** Items are named once in a place, and in no more places than this by advice. A choice of ours. */
const MOST_OF_ONE_ITEM = 3;

/** A change that brings less, in standing, is not worth a line of advice. A choice of ours. */
const LEAST_GAIN = 0.03;

interface Draft {
  readonly passages: readonly Passage[];
  readonly tally: Tally;
}

const standingOf = ({ tally }: Draft, slug: string): number => tally.standings.get(slug) ?? 0;

/**
 * For each item that is short of the aim, the weakest first: its picture's text, its description, the summary for all of
 * them at once, and one sentence of its story, until it stands at the aim. What would read oddly is not offered, so an
 * item may stay short. `tally` is that of the passages; each step is counted on the text as it would read.
 */
export const adviceFor = (
  passages: readonly Passage[],
  tally: Tally,
  aim: number,
  language: Language,
): Advice => {
  let draft: Draft = { passages, tally };
  const edits: Edit[] = [];
  const uses = new Map<string, number>();

  const changedBy = ({ change }: Rewrite): Draft => {
    const text = rewritten(draft.passages, change, language);
    return { passages: text, tally: talliedAgain(draft.tally, draft.passages, text) };
  };
  const take = (rewrite: Rewrite, after: Draft): void => {
    const { zone, at, action, before, after: text } = rewrite;
    const brings = tally.items
      .map(({ slug }) => ({ item: slug, before: standingOf(draft, slug), after: standingOf(after, slug) }))
      .filter((step) => step.after > step.before);
    edits.push({ zone, at, action, before, after: text, brings });
    draft = after;
  };
  const isShort = ({ slug }: TalliedItem): boolean => !isAtAim(standingOf(draft, slug), aim);
  /** Takes a rewrite that brings an item enough. */
  const tried = (item: TalliedItem, rewrite: Rewrite | undefined): boolean => {
    if (!rewrite || edits.length >= MOST_EDITS) return false;
    const after = changedBy(rewrite);
    if (standingOf(after, item.slug) - standingOf(draft, item.slug) < LEAST_GAIN) return false;
    take(rewrite, after);
    uses.set(item.slug, (uses.get(item.slug) ?? 0) + 1);
    return true;
  };
  const entriesOf = (item: TalliedItem): readonly TalliedPhrase[] =>
    draft.tally.entries.filter((entry) => entry.item === item);
  const soughtFor = (item: TalliedItem): Sought => ({
    passages: draft.passages,
    item,
    entries: entriesOf(item),
    language,
  });
  const weakestFirst = (): readonly TalliedItem[] =>
    tally.items
      .filter(isShort)
      .toSorted(
        (a, b) => standingOf(draft, a.slug) - standingOf(draft, b.slug) || (a.slug < b.slug ? -1 : 1),
      );
  const mend = (rewriteOf: (sought: Sought) => Rewrite | undefined): void => {
    for (const item of weakestFirst())
      if (isShort(item) && (uses.get(item.slug) ?? 0) < MOST_OF_ONE_ITEM)
        tried(item, rewriteOf(soughtFor(item)));
  };
  const mendSummary = (): void => {
    const short = new Set(weakestFirst().map(({ slug }) => slug));
    if (short.size === 0) return;
    const named = tally.items.filter((item) => isNamedIn(entriesOf(item), 'summary'));
    const slugs = new Set(named.map(({ slug }) => slug));
    const found = summaryNaming(draft.passages, tally.items, slugs, language);
    const [weakest] = tally.items.filter(({ slug }) => short.has(slug) && found?.slugs.includes(slug));
    if (found && weakest) tried(weakest, found.rewrite);
  };
  mend(inPicture);
  mend(inDescription);
  mendSummary();
  mend(inStory);
  return { edits, promised: draft.tally.standings };
};
