/** The catalogue's items as documents that are searched, and the facets they are sorted by. */

import type { Nodes } from 'mdast';
import { toString as wordsOf } from 'mdast-util-to-string';
import type { Box, BoxSettings, Cycle, Item } from '../../model/box.ts';
import { monthName } from '../../model/calendar.ts';
import type { Language } from '../language/language.ts';
import { basicColoursOf } from './basic-colours.ts';
import { buildIndex, type FieldTexts } from './build-index.ts';
import type { PackedIndex } from './compact.ts';
import { HEAD_FIELDS, TEXT_FIELDS } from './options.ts';

/** What is known of an item beyond what its entry on the page says. */
export interface Particulars {
  readonly also: readonly string[];
  readonly material: readonly string[];
  /** As the record has it; empty where it has none. */
  readonly color: string;
  /** Basic colours: said, or of its picture. */
  readonly colours: readonly string[];
}

/** One entry of the catalogue. */
export interface CatalogueItem {
  readonly item: Item;
  readonly cycle: Cycle;
  readonly particulars: Particulars;
}

/** The parts of the index, in the order they are loaded. */
export interface SearchIndex {
  readonly head: PackedIndex;
  readonly stories: readonly PackedIndex[];
}

/** Items of one part of the stories: more would keep a phone busy for longer than a key is held. */
const STORIES_A_PART = 240;

/** Every item as the catalogue lists them: newest cycle first, lead item first. Their places are their numbers. */
export const catalogueItems = (box: Box, language: Language): readonly CatalogueItem[] =>
  [...box.cycles].reverse().flatMap((cycle) =>
    cycle.items.map((item) => ({
      item,
      cycle,
      particulars: {
        also: item.also,
        material: item.material,
        color: item.color ?? '',
        colours: basicColoursOf(item, language),
      },
    })),
  );

/** Zones where the seasons are those of the south; islands and the rest of America are left out. */
const SOUTHERN =
  /^(?:Australia|Antarctica|America\/Argentina)\/|^(?:Pacific\/Auckland|Africa\/(?:Johannesburg|Harare|Maputo|Windhoek)|America\/(?:Sao_Paulo|Santiago|Montevideo|Buenos_Aires|Asuncion|Lima))$/;
const SEASONS = ['winter', 'spring', 'summer', 'autumn fall'] as const;

/** The season a cycle was sent in, by whole months as weather services count; people remember it better than the month. */
const seasonOf = ({ month }: Cycle, timeZone: string): string => {
  const quarter = Math.floor((month % 12) / 3) + (SOUTHERN.test(timeZone) ? 2 : 0);
  return SEASONS[quarter % SEASONS.length] as string;
};

/** Runs of words that belong together, so that none is joined to the next. */
const runsOf = (node: Nodes): readonly string[] => {
  if (node.type === 'image') return node.alt ? [node.alt] : [];
  if (node.type === 'html' || node.type === 'definition') return [];
  const holdsRuns = !('children' in node) || ['paragraph', 'heading', 'tableCell'].includes(node.type);
  return holdsRuns ? [wordsOf(node)] : node.children.flatMap(runsOf);
};

const textsOf = (
  { item, cycle, particulars }: CatalogueItem,
  { lang, timeZone }: BoxSettings,
  language: Language,
): FieldTexts => {
  const name = [item.name, item.kind, ...item.also].join(' · ');
  const about = [
    item.brand,
    ...item.material,
    particulars.color,
    ...particulars.colours,
    cycle.theme,
    monthName(cycle, lang),
  ].join(' · ');
  const season = language.english ? seasonOf(cycle, timeZone) : '';
  return {
    name,
    about: `${about} · ${season}`,
    text: [name, about, item.description, ...runsOf(item.story.tree)].join('\n'),
  };
};

/** The index of items in their order. */
export const searchIndex = (
  items: readonly CatalogueItem[],
  settings: BoxSettings,
  language: Language,
): SearchIndex => {
  const texts = items.map((item) => textsOf(item, settings, language));
  const starts = Array.from(
    { length: Math.ceil(texts.length / STORIES_A_PART) },
    (_, i) => i * STORIES_A_PART,
  );
  return {
    head: buildIndex(texts, HEAD_FIELDS, language),
    stories: starts.map((start) =>
      buildIndex(texts.slice(start, start + STORIES_A_PART), TEXT_FIELDS, language, start),
    ),
  };
};
