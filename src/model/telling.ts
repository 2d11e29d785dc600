/**
 * The one telling: a cycle's article as an ordered list of parts. Whatever renders the reveal, and whatever
 * measures it, reads this same list, so that they cannot disagree about what stands where.
 */
import type { Root, RootContent } from 'mdast';
import type {} from 'mdast-util-directive';
import { toString as wordsOf } from 'mdast-util-to-string';
import type { Cycle, Item } from './box.ts';

/** A run of the cycle's own body between placements. `tree` has the body's positions. */
interface ProsePart {
  readonly part: 'prose';
  readonly tree: Root;
  /** The opening is the first run of prose. */
  readonly opening: boolean;
}
interface ItemPart {
  readonly part: 'item';
  readonly item: Item;
}
/** The parts that have nothing of their own, in the usual order. */
const PLAIN_NAMES = ['box', 'voices', 'peek', 'call'] as const;
type PlainName = (typeof PLAIN_NAMES)[number];

interface PlainPart {
  readonly part: PlainName;
}

/** One part of an article. */
export type TellingPart = ProsePart | ItemPart | PlainPart;

interface Telling {
  readonly cycle: Cycle;
  readonly parts: readonly TellingPart[];
}

const isPlainName = (name: string): name is PlainName => PLAIN_NAMES.some((one) => one === name);

type Placement = { readonly name: PlainName | 'item'; readonly label: string };

/** A leaf directive of ours at the top of a body; anything else is prose. */
const placementOf = (node: RootContent): Placement | undefined => {
  if (node.type !== 'leafDirective') return undefined;
  if (node.name === 'item') return { name: 'item', label: wordsOf(node).trim() };
  return isPlainName(node.name) ? { name: node.name, label: '' } : undefined;
};

const isDefinition = (node: RootContent): boolean =>
  node.type === 'definition' || node.type === 'footnoteDefinition';

/**
 * The item whose picture heads the page, the first of those that show it. One photo may serve several items: the others
 * show it in their own sections, each with its own words.
 */
export const itemAtHead = ({ hero, items }: Pick<Cycle, 'hero' | 'items'>): Item | undefined =>
  hero && items.find(({ pictures }) => pictures.some(({ file }) => file === hero.file));

/**
 * A cycle's article in order. What the body places stands where it was placed; what it does not place follows in
 * the usual order: lead item, the rest, whole box, voices, peek, call. Each run of prose bears the definitions
 * of the whole body, so that a note or link may be defined anywhere.
 */
export const tellingOf = (cycle: Cycle): Telling => {
  const body = cycle.story.tree.children;
  const definitions = body.filter(isDefinition);
  const parts: TellingPart[] = [];
  let run: RootContent[] = [];
  const endRun = (): void => {
    if (run.length === 0) return;
    const opening = !parts.some((part) => part.part === 'prose');
    parts.push({ part: 'prose', opening, tree: { type: 'root', children: [...run, ...definitions] } });
    run = [];
  };
  const placed = new Set<string>();
  const place = (part: Exclude<TellingPart, ProsePart>): void => {
    const key = part.part === 'item' ? `item ${part.item.slug}` : part.part;
    if (placed.has(key)) return;
    placed.add(key);
    parts.push(part);
  };
  for (const node of body) {
    if (isDefinition(node)) continue;
    const placement = placementOf(node);
    if (!placement) {
      run.push(node);
      continue;
    }
    const item = cycle.items.find((other) => other.slug === placement.label);
    if (placement.name !== 'item') {
      endRun();
      place({ part: placement.name });
    } else if (item) {
      endRun();
      place({ part: 'item', item });
    }
  }
  endRun();
  for (const item of cycle.items) place({ part: 'item', item });
  for (const part of PLAIN_NAMES) place({ part });
  return { cycle, parts };
};
