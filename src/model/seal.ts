/** The seal: what may not be shown yet does not exist in what the public channels are given. */
import type { Nodes, Root } from 'mdast';
import type { Box, Cycle, Item, Moment, Story } from './box.ts';
import './story.ts';

/** A cycle is sealed until the moment of its reveal; while nobody can know that moment, it is sealed. */
export const isSealed = ({ reveal }: Pick<Cycle, 'reveal'>, asOf: Moment): boolean =>
  reveal === undefined || asOf < reveal;

/** When an unsealed cycle was revealed. Throws for one that waits for its parcels: no public page is given such a one. */
export const revealedAt = ({ id, reveal }: Pick<Cycle, 'id' | 'reveal'>): Moment => {
  if (reveal === undefined) throw new Error(`Expected the moment of a reveal, found none in ${id}`);
  return reveal;
};

/** Whether a node shows a photo out of a sealed cycle's folder. */
const showsSealed = (sealed: ReadonlySet<string>, node: Nodes): boolean =>
  node.type === 'image' && sealed.has(/^cycles\/([^/]+)\//.exec(node.data?.picture?.file ?? '')?.[1] ?? '');

/** A copy of a tree in which links to sealed cycles keep their words and lose their target, and their photos are left out. */
const withoutLinksTo = (sealed: ReadonlySet<string>, node: Nodes): Nodes => {
  const children =
    'children' in node
      ? node.children
          .filter((child) => !showsSealed(sealed, child))
          .map((child) => withoutLinksTo(sealed, child))
      : undefined;
  const copy = { ...node, ...(children ? { children } : {}) } as Nodes;
  if (copy.type !== 'link' || !copy.data?.target || !sealed.has(copy.data.target.cycle)) return copy;
  return { ...copy, url: '', title: null, data: { dropped: true } };
};

/** The box as of a moment: its unsealed cycles alone, and no link that leads to another. */
export const unsealed = (box: Box, asOf: Moment): Box => {
  const sealed = new Set(box.cycles.filter((cycle) => isSealed(cycle, asOf)).map((cycle) => cycle.id));
  if (sealed.size === 0) return box;
  const story = (told: Story): Story => ({ ...told, tree: withoutLinksTo(sealed, told.tree) as Root });
  const item = (one: Item): Item => ({ ...one, story: story(one.story) });
  return {
    settings: { ...box.settings, story: story(box.settings.story) },
    cycles: box.cycles
      .filter((cycle) => !sealed.has(cycle.id))
      .map((cycle) => ({ ...cycle, story: story(cycle.story), items: cycle.items.map(item) })),
    // What was typed may name what is sealed, and no public page asks for it.
    searches: [],
  };
};
