/** The catalogue's items as documents that are searched: the words of each, and how the parts of the index are cut. */

import type { Nodes } from 'mdast';
import { toString as wordsOf } from 'mdast-util-to-string';
import type { BoxSettings, Cycle, Item } from '../../model/box.ts';
import { monthName } from '../../model/calendar.ts';
import { defined } from '../../text/defined.ts';
import { itemAt } from '../../text/item-at.ts';
import type { Language } from '../language/language.ts';
import { basicColoursOf } from './basic-colours.ts';
import { type CountedDocument, countedDocument, type FieldTexts, indexOf } from './build-index.ts';
import type { PackedIndex } from './compact.ts';
import { HEAD_FIELDS, TEXT_FIELDS } from './options.ts';

/** What the search knows of an item without its story. */
export type SearchedRecord = Pick<
  Item,
  'name' | 'kind' | 'also' | 'brand' | 'material' | 'color' | 'pictures'
>;

/** What the search knows of a whole item. */
export type SearchedItem = SearchedRecord & Pick<Item, 'description' | 'story'>;

/** An item's cycle, as far as it is searched. */
export type SearchedCycle = Pick<Cycle, 'theme' | 'year' | 'month'>;

/** The box's language and zone. */
export type SearchedIn = Pick<BoxSettings, 'lang' | 'timeZone'>;

/** The record of an item by itself. */
export const searchedRecord = (item: Item): SearchedRecord => {
  const { name, kind, also, brand, material, color, pictures } = item;
  return defined({ name, kind, also, brand, material, color, pictures });
};

/** Items of one part of the stories: more would keep a phone busy for longer than a key is held. */
const STORIES_A_PART = 240;

/** Zones where the seasons are those of the south; islands and the rest of America are left out. */
const SOUTHERN =
  /^(?:Australia|Antarctica|America\/Argentina)\/|^(?:Pacific\/Auckland|Africa\/(?:Johannesburg|Harare|Maputo|Windhoek)|America\/(?:Sao_Paulo|Santiago|Montevideo|Buenos_Aires|Asuncion|Lima))$/;
const SEASONS = ['winter', 'spring', 'summer', 'autumn fall'] as const;

/** The season a cycle was sent in, by whole months as weather services count; people remember it better than the month. */
const seasonOf = ({ month }: SearchedCycle, timeZone: string): string => {
  const quarter = Math.floor((month % 12) / 3) + (SOUTHERN.test(timeZone) ? 2 : 0);
  return itemAt(SEASONS, quarter % SEASONS.length);
};

/** Runs of words that belong together, so that none is joined to the next. */
const runsOf = (node: Nodes): readonly string[] => {
  if (node.type === 'image') return node.alt ? [node.alt] : [];
  if (node.type === 'html' || node.type === 'definition') return [];
  const holdsRuns = !('children' in node) || ['paragraph', 'heading', 'tableCell'].includes(node.type);
  return holdsRuns ? [wordsOf(node)] : node.children.flatMap(runsOf);
};

const recordTexts = (
  record: SearchedRecord,
  cycle: SearchedCycle,
  { lang, timeZone }: SearchedIn,
  language: Language,
) => {
  const name = [record.name, record.kind, ...record.also].join(' · ');
  const about = [
    record.brand,
    ...record.material,
    record.color ?? '',
    ...basicColoursOf(record, language),
    cycle.theme,
    monthName(cycle, lang),
  ].join(' · ');
  return { name, about, season: language.english ? seasonOf(cycle, timeZone) : '' };
};

/** The words of an item's record, for the first file. */
export const countedRecord = (
  record: SearchedRecord,
  cycle: SearchedCycle,
  where: SearchedIn,
  language: Language,
): CountedDocument => {
  const { name, about, season } = recordTexts(record, cycle, where, language);
  const texts: FieldTexts = { name, about: `${about} · ${season}` };
  return countedDocument(texts, HEAD_FIELDS, language);
};

/** All of an item's words, its story's among them, for the files that follow. */
export const countedItem = (
  item: SearchedItem,
  cycle: SearchedCycle,
  where: SearchedIn,
  language: Language,
): CountedDocument => {
  const { name, about } = recordTexts(item, cycle, where, language);
  const texts: FieldTexts = { text: [name, about, item.description, ...runsOf(item.story.tree)].join('\n') };
  return countedDocument(texts, TEXT_FIELDS, language);
};

/** The first file's index, of counted records in the order of the catalogue. */
export const headIndex = (records: readonly CountedDocument[]): PackedIndex => indexOf(records, HEAD_FIELDS);

/** A later file's index, of counted items of which the first has the number `first` in the catalogue. */
export const storyIndex = (items: readonly CountedDocument[], first: number): PackedIndex =>
  indexOf(items, TEXT_FIELDS, first);

/** How the stories of so many items are cut into files: the first item of each, and the one after its last. */
export const storyParts = (items: number): readonly { readonly from: number; readonly to: number }[] =>
  Array.from({ length: Math.ceil(items / STORIES_A_PART) }, (_, i) => ({
    from: i * STORIES_A_PART,
    to: Math.min(items, (i + 1) * STORIES_A_PART),
  }));
