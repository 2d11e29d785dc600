/**
 * The files that the catalogue's search is asked of. The words of each cycle are counted by themselves, since cutting and
 * stemming them is what the index costs; the files are put together from the counts.
 */
import { basicColoursOf } from '../../analysis/search/basic-colours.ts';
import type { CountedDocument } from '../../analysis/search/build-index.ts';
import {
  countedItem,
  countedRecord,
  headIndex,
  type SearchedCycle,
  type SearchedIn,
  type SearchedItem,
  type SearchedRecord,
  searchedRecord,
  storyIndex,
  storyParts,
} from '../../analysis/search/documents.ts';
import type { HeadFile, PublishedParticulars } from '../../analysis/search/published.ts';
import type { Box, Cycle, Item, Picture } from '../../model/box.ts';
import { kindGroupOf } from '../../model/kinds.ts';
import { referencesIn } from '../../model/story-references.ts';
import { hashedPath } from '../../render/assets.ts';
import { handingOver } from '../../render/script-data.ts';
import { remembered } from '../../text/remembered.ts';
import { type PlannedFragment, plannedFragment, type Tools } from '../channel.ts';

/** What the index files call. */
const RECEIVER = 'lidloreIndex';

/** What counting the words of a cycle gave, as JSON: a document for each item. */
const countedIn = (content: string): readonly CountedDocument[] => JSON.parse(content);

interface CycleRecords {
  readonly where: SearchedIn;
  readonly cycle: SearchedCycle;
  readonly records: readonly SearchedRecord[];
}

const countRecords = ({ where, cycle, records }: CycleRecords, { language }: Tools) => ({
  content: JSON.stringify(records.map((record) => countedRecord(record, cycle, where, language))),
});

interface CycleItems {
  readonly where: SearchedIn;
  readonly cycle: SearchedCycle;
  readonly items: readonly SearchedItem[];
  /** Those that the stories show, because the seal takes pictures out of a story that keeps its digest. */
  readonly pictures: readonly Picture[];
}

const countItems = ({ where, cycle, items }: CycleItems, { language }: Tools) => ({
  content: JSON.stringify(items.map((item) => countedItem(item, cycle, where, language))),
});

/** What the page's entries do not say of an item; its basic colours follow. */
interface Particulars {
  readonly kind: string;
  readonly record: SearchedRecord;
}

const headFile = (particulars: readonly Particulars[], { language }: Tools, contents: readonly string[]) => {
  const head: HeadFile = {
    index: headIndex(contents.flatMap(countedIn)),
    items: particulars.map(
      ({ kind, record }): PublishedParticulars => [
        kind,
        record.also,
        record.material,
        record.color ?? '',
        basicColoursOf(record, language),
      ],
    ),
  };
  return { content: handingOver(RECEIVER, head) };
};

interface StoryPart {
  /** Number in the catalogue of the part's first item. */
  readonly from: number;
  /** Items of the first of its cycles that belong to the part before. */
  readonly skipped: number;
  readonly count: number;
}

const storyFile = ({ from, skipped, count }: StoryPart, _: Tools, contents: readonly string[]) => ({
  content: handingOver(
    RECEIVER,
    storyIndex(contents.flatMap(countedIn).slice(skipped, skipped + count), from),
  ),
});

/** An item's record as the search knows it: the same object for the same item, and frozen, so that it is hashed once. */
export const recordOf = remembered((item: Item) => Object.freeze(searchedRecord(item)));

/** The name of an item's kind, as all items of the kind have it in the index and in the form. */
export const kindNameOf = (box: Box, item: Item): string => kindGroupOf(box, item.kind)?.kind ?? item.kind;

const inCycle = ({ theme, year, month }: Cycle): SearchedCycle => ({ theme, year, month });

/** Site path of an index file, which bears its content's hash. */
export const indexPath = (name: string, content: string): string => hashedPath(`search/${name}.js`, content);

/** Names of the index files beside their fragments: the records' first, then the stories'. */
interface SearchFragments {
  readonly head: PlannedFragment;
  readonly stories: readonly PlannedFragment[];
}

const published = (name: string) => ({ pathOf: (content: string) => indexPath(name, content) });

/** The name of a part of the stories, from 0. */
export const storyName = (part: number): string => `stories-${part + 1}`;

/** The name of the first file. */
export const HEAD_NAME = 'names';

/** The index of the items of `cycles`, in their order. */
export const searchFragments = (box: Box, cycles: readonly Cycle[]): SearchFragments => {
  const { lang, timeZone } = box.settings;
  const where = { lang, timeZone };
  const records = cycles.map((cycle) =>
    plannedFragment(
      `searched records of ${cycle.id}`,
      { where, cycle: inCycle(cycle), records: cycle.items.map(recordOf) },
      countRecords,
    ),
  );
  const words = cycles.map((cycle) =>
    plannedFragment(
      `searched words of ${cycle.id}`,
      {
        where,
        cycle: inCycle(cycle),
        items: cycle.items,
        pictures: cycle.items.flatMap(({ story }) => referencesIn(story).pictures),
      },
      countItems,
    ),
  );
  const starts: number[] = [];
  let items = 0;
  for (const cycle of cycles) {
    starts.push(items);
    items += cycle.items.length;
  }
  const particulars = cycles.flatMap((cycle) =>
    cycle.items.map((item) => ({ kind: kindNameOf(box, item), record: recordOf(item) })),
  );
  const partOf = ({ from, to }: { readonly from: number; readonly to: number }, i: number) => {
    const touched = cycles.flatMap((cycle, n) => {
      const start = starts[n] ?? 0;
      return start < to && start + cycle.items.length > from ? [n] : [];
    });
    const data: StoryPart = {
      from,
      skipped: from - (starts[touched[0] ?? 0] ?? 0),
      count: to - from,
    };
    const name = storyName(i);
    return plannedFragment(name, data, storyFile, {
      of: touched.flatMap((n) => words[n] ?? []),
      ...published(name),
    });
  };
  return {
    head: plannedFragment(HEAD_NAME, particulars, headFile, { of: records, ...published(HEAD_NAME) }),
    stories: storyParts(items).map(partOf),
  };
};
