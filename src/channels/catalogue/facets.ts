/** What the catalogue can be narrowed down by, as the form lists it. Values are those that the browser compares. */
import { qualitiesIn } from '../../analysis/language/qualities.ts';
import { BASIC_COLOURS, basicColoursOf } from '../../analysis/search/basic-colours.ts';
import type { SearchedRecord } from '../../analysis/search/documents.ts';
import type { Box, Cycle } from '../../model/box.ts';
import { monthName } from '../../model/calendar.ts';
import { fragmentText } from '../../render/document.ts';
import { pageLang } from '../../render/page-lang.ts';
import { typeset } from '../../render/typeset.ts';
import { type PlannedFragment, plannedFragment, type Tools } from '../channel.ts';
import { kindNameOf, recordOf } from './search.ts';

interface FacetItem {
  readonly kind: string;
  readonly record: SearchedRecord;
}

interface FacetsData {
  readonly lang: string;
  /** In the order of the catalogue. */
  readonly items: readonly FacetItem[];
  /** Newest first; `month` from 1 to 12. */
  readonly cycles: readonly (Pick<Cycle, 'id' | 'year' | 'month'> & { readonly count: number })[];
  /** Items whose spare pieces can be bought now. */
  readonly onSale: number;
}

interface Choice {
  readonly value: string;
  readonly name: string;
  readonly count: number;
}

/** Values with how many items have each, in the order that `order` gives. */
const choicesOf = (
  items: readonly FacetItem[],
  valuesOf: (item: FacetItem) => readonly string[],
  nameOf: (value: string) => string,
  order: (a: Choice, b: Choice) => number,
): readonly Choice[] => {
  const counts = new Map<string, number>();
  for (const item of items)
    for (const value of new Set(valuesOf(item))) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].map(([value, count]) => ({ value, name: nameOf(value), count })).sort(order);
};

const facetsView = ({ lang, items, cycles, onSale }: FacetsData, { language, wording }: Tools) => {
  const { compare } = new Intl.Collator(lang);
  const byName = (a: Choice, b: Choice): number => compare(a.name, b.name);
  const rank = ({ value }: Choice): number => BASIC_COLOURS.indexOf(value);
  const named = (value: string): string => typeset(value, lang);
  return {
    words: wording.site.search,
    kinds: choicesOf(items, ({ kind }) => [kind], named, byName),
    years: [...new Set(cycles.map(({ year }) => year))].map((year) => {
      const inYear = cycles.filter((cycle) => cycle.year === year);
      return {
        year,
        count: inYear.reduce((sum, { count }) => sum + count, 0),
        cycles: inYear.map((cycle) => ({
          id: cycle.id,
          name: monthName(cycle, pageLang(lang)),
          count: cycle.count,
        })),
      };
    }),
    colours: choicesOf(
      items,
      ({ record }) => basicColoursOf(record, language),
      named,
      (a, b) => rank(a) - rank(b) || byName(a, b),
    ),
    materials: choicesOf(
      items,
      ({ record }) => record.material.flatMap(qualitiesIn).map((material) => material.toLowerCase()),
      named,
      byName,
    ),
    onSale,
  };
};

declare module '../../render/templates.ts' {
  interface TemplateData {
    'catalogue-facets': ReturnType<typeof facetsView>;
  }
}

const facetsPart = (data: FacetsData, tools: Tools) => ({
  content: fragmentText(tools.templates.render('catalogue-facets', facetsView(data, tools))),
});

/** The part of the search form that narrows the catalogue down; `cycles` newest first. */
export const facetsFragment = (box: Box, cycles: readonly Cycle[], onSale: number): PlannedFragment =>
  plannedFragment(
    'catalogue facets',
    {
      lang: box.settings.lang,
      items: cycles.flatMap((cycle) =>
        cycle.items.map((item) => ({ kind: kindNameOf(box, item), record: recordOf(item) })),
      ),
      cycles: cycles.map(({ id, year, month, items }) => ({ id, year, month, count: items.length })),
      onSale,
    },
    facetsPart,
  );
