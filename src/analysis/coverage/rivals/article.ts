/** One article as the comparisons between articles read it. */
import { visit } from 'unist-util-visit';
import type { Cycle } from '../../../model/box.ts';
import type {} from '../../../model/story.ts';
import type { Passage } from '../text/passage.ts';

/** An article as text, before it is indexed. */
export interface Article {
  /** The cycle's id, `2026-03`: as a string it sorts by age. */
  readonly cycle: string;
  readonly title: string;
  readonly passages: readonly Passage[];
  /** Cycles whose articles its own text links to already. */
  readonly linksTo: readonly string[];
}

/** Cycles that a cycle's stories link to. */
const linkedCycles = (cycle: Cycle): readonly string[] => {
  const linked = new Set<string>();
  for (const { tree } of [cycle.story, ...cycle.items.map(({ story }) => story)])
    visit(tree, 'link', ({ data }) => {
      if (data?.target && !data.dropped) linked.add(data.target.cycle);
    });
  return [...linked];
};

/** A cycle's article with its passages. It depends on the two alone. */
export const articleOf = (cycle: Cycle, passages: readonly Passage[]): Article => ({
  cycle: cycle.id,
  title: cycle.title,
  passages,
  linksTo: linkedCycles(cycle),
});

/** Running text: paragraphs on the page, without the summary, which is read in a list of results. */
export const isRunning = ({ form, words }: Passage): boolean =>
  form === 'paragraph' && words[0]?.zone !== 'summary';
