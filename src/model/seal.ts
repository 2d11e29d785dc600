/** The seal: what may not be shown yet does not exist in what the public channels are given. */
import type { Root } from 'mdast';
import { SKIP, visit } from 'unist-util-visit';
import { sha256 } from '../text/hash.ts';
import type { Box, Cycle, Item, Moment, Story } from './box.ts';
import { cycleNamedBy, cycleOfResolved, cyclesNamedIn } from './story.ts';

/** It stays in this file, so that nothing but `unsealed` makes an open box. */
const OPEN: unique symbol = Symbol('open');

/** A cycle that may be shown: its moment is known, and past. */
export interface OpenCycle extends Cycle {
  readonly reveal: Moment;
}

/** A box in which sealed cycles do not exist: all that a public channel is given. */
export interface OpenBox extends Box {
  readonly [OPEN]: true;
  readonly cycles: readonly OpenCycle[];
}

/** Whether a cycle may be shown as of a moment. */
export const isOpen = <C extends Pick<Cycle, 'reveal'>>(cycle: C, asOf: Moment): cycle is C & OpenCycle =>
  cycle.reveal !== undefined && asOf >= cycle.reveal;

/** A cycle is sealed until the moment of its reveal; while nobody can know that moment, it is sealed. */
export const isSealed = (cycle: Pick<Cycle, 'reveal'>, asOf: Moment): boolean => !isOpen(cycle, asOf);

/** When an unsealed cycle was revealed. */
export const revealedAt = ({ reveal }: Pick<OpenCycle, 'reveal'>): Moment => reveal;

/** A copy of a tree in which links to sealed cycles keep their words and lose their target, and their photos are left out. */
const treeWithout = (sealed: ReadonlySet<string>, tree: Root): Root => {
  const copy = structuredClone(tree);
  visit(copy, (node, index, parent) => {
    const named = cycleNamedBy(node);
    if (named === undefined || !sealed.has(named)) return undefined;
    if (node.type === 'link') {
      node.url = '';
      node.title = null;
      node.data = { dropped: true };
      return undefined;
    }
    parent?.children.splice(index ?? 0, 1);
    return [SKIP, index ?? 0];
  });
  return copy;
};

/** The story itself where it names nothing sealed; its tree is looked into only where it does. */
const storyWithout = (sealed: ReadonlySet<string>, story: Story): Story => {
  const { leadsTo = cyclesNamedIn(story.tree), digest, resolved } = story;
  const dropped = leadsTo.filter((cycle) => sealed.has(cycle));
  if (dropped.length === 0) return story;
  return {
    ...story,
    tree: treeWithout(sealed, story.tree),
    leadsTo: leadsTo.filter((cycle) => !sealed.has(cycle)),
    ...(resolved && { resolved: resolved.filter((one) => !sealed.has(cycleOfResolved(one) ?? '')) }),
    ...(digest !== undefined && { digest: sha256(JSON.stringify([digest, dropped])) }),
  };
};

const withStoryOf = <T extends { readonly story: Story }>(sealed: ReadonlySet<string>, told: T): T => {
  const story = storyWithout(sealed, told.story);
  return story === told.story ? told : { ...told, story };
};

const cycleWithout = (sealed: ReadonlySet<string>, cycle: OpenCycle): OpenCycle => {
  const told = withStoryOf(sealed, cycle);
  const items = told.items.map((item): Item => withStoryOf(sealed, item));
  return items.every((item, i) => item === told.items[i]) ? told : { ...told, items };
};

/**
 * The box as of a moment: its unsealed cycles alone, and no link that leads to another. Settings, cycles, items and
 * stories in which nothing changes are the very same objects; a story that changes has another digest.
 */
export const unsealed = (box: Box, asOf: Moment): OpenBox => {
  const sealed = new Set(box.cycles.filter((cycle) => isSealed(cycle, asOf)).map(({ id }) => id));
  return {
    [OPEN]: true,
    settings: withStoryOf(sealed, box.settings),
    cycles: box.cycles.filter((cycle) => isOpen(cycle, asOf)).map((cycle) => cycleWithout(sealed, cycle)),
    // What was typed may name what is sealed, and no public page asks for it.
    searches: [],
  };
};
