/** What an article and its entry in the feeds are made of: the cycle, and as much of the rest of the box as they show. */

import type { Box, Item, Moment, Picture, Story } from '../model/box.ts';
import { spareOnSale } from '../model/calls.ts';
import { cycleOf, earlierOfKind } from '../model/relations.ts';
import type { OpenBox, OpenCycle } from '../model/seal.ts';
import type { Target } from '../model/story.ts';
import { referencesIn } from '../model/story-references.ts';
import { defined } from '../text/defined.ts';
import { type Destination, destinationOf, itemDestination, kindPagePath } from './addresses.ts';
import { type CallFacts, type Frames, type SiteFacts, siteFactsOf } from './site-facts.ts';

/**
 * What stories lead to and show, as far as the box holds it: a tree alone does not say where a record stands, and the
 * seal takes links and pictures out of a story that keeps its digest.
 */
export interface StoryFacts {
  /** By `targetKey`. */
  readonly destinations: ReadonlyMap<string, Destination>;
  readonly pictures: readonly Picture[];
}

/** A target as a key. */
export const targetKey = ({ cycle, item }: Target): string =>
  item === undefined ? cycle : `${cycle} ${item}`;

/** Where the links of some stories lead, and the pictures they show. */
export const storyFactsOf = (box: Box, stories: readonly Story[]): StoryFacts => {
  const destinations = new Map<string, Destination>();
  const pictures: Picture[] = [];
  for (const references of stories.map(referencesIn)) {
    pictures.push(...references.pictures);
    for (const target of references.targets) {
      const to = destinationOf(box, target);
      if (to) destinations.set(targetKey(target), to);
    }
  }
  return { destinations, pictures };
};

/** An item of the same kind in an earlier cycle. */
interface EarlierItem {
  readonly name: string;
  /** Of its cycle; `month` from 1 to 12. */
  readonly year: number;
  readonly month: number;
  readonly to: Destination;
}

/** What an item's section says that its record does not. */
export interface ItemFacts {
  /** Whether its spare pieces can be bought now. */
  readonly onSale: boolean;
  /** Site path of its kind's page, where there is one. */
  readonly kindPage?: string;
  /** Newest first. */
  readonly earlier: readonly EarlierItem[];
}

/** All that the parts of an article say. */
export interface ArticleFacts {
  readonly site: SiteFacts;
  readonly cycle: OpenCycle;
  readonly stories: StoryFacts;
  /** By the item's slug. */
  readonly items: ReadonlyMap<string, ItemFacts>;
  readonly call: CallFacts;
}

const itemFactsOf = (box: Box, item: Item, asOf: Moment): ItemFacts =>
  defined({
    onSale: spareOnSale(item, asOf, box.settings.timeZone),
    kindPage: kindPagePath(box, item.kind),
    earlier: earlierOfKind(box, item).map((other) => {
      const cycle = cycleOf(box, other);
      const { year, month } = cycle;
      return { name: other.name, year, month, to: itemDestination(cycle, other) };
    }),
  });

/** What the article of a cycle says at a moment. */
export const articleFactsOf = (
  box: OpenBox,
  cycle: OpenCycle,
  asOf: Moment,
  frames: Frames,
): ArticleFacts => ({
  site: siteFactsOf(box.settings),
  cycle,
  stories: storyFactsOf(box, [cycle.story, ...cycle.items.map(({ story }) => story)]),
  items: new Map(cycle.items.map((item) => [item.slug, itemFactsOf(box, item, asOf)])),
  call: frames.call(cycle),
});
