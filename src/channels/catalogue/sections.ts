/** The catalogue's lists, each made by itself: a section a cycle, the index by kind, and what search engines are told. */

import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { Box, Cycle, Item, Moment, Picture } from '../../model/box.ts';
import { monthName } from '../../model/calendar.ts';
import { spareOnSale } from '../../model/calls.ts';
import { kindGroups } from '../../model/kinds.ts';
import { cycleOf } from '../../model/relations.ts';
import {
  addressFrom,
  articlePath,
  CATALOGUE_PATH,
  itemDestination,
  kindPagePath,
} from '../../render/addresses.ts';
import { fragmentText } from '../../render/document.ts';
import { smallPlate } from '../../render/layouts.ts';
import type { MadeDocument, PictureOutput } from '../../render/output.ts';
import { linker } from '../../render/page.ts';
import { pageLang } from '../../render/page-lang.ts';
import { pictureMarkup } from '../../render/pictures.ts';
import { type SiteFacts, siteFactsOf } from '../../render/site-facts.ts';
import { catalogueGraph, jsonLdScript, type ListedPage } from '../../render/structured-data.ts';
import { typeset } from '../../render/typeset.ts';
import { defined } from '../../text/defined.ts';
import { remembered } from '../../text/remembered.ts';
import type { Wording } from '../../wording/wording.ts';
import { type PlannedFragment, plannedFragment, type Tools } from '../channel.ts';

type MadeText = MadeDocument<Diagnostic> & { readonly content: string };

/** An item as a section lists it, with its first picture. */
type ListedItem = Pick<Item, 'slug' | 'name' | 'kind' | 'brand'> & { readonly picture?: Picture };

interface SectionData {
  readonly lang: string;
  readonly cycle: Pick<Cycle, 'id' | 'address' | 'theme' | 'year' | 'month'>;
  readonly items: readonly ListedItem[];
  /** Of each item, whether its spare pieces can be bought now. */
  readonly onSale: readonly boolean[];
}

const sectionView = (
  { lang, cycle, items, onSale }: SectionData,
  words: Wording['site']['catalogue'],
  pictures: PictureOutput[],
) => ({
  words,
  id: `cycle-${cycle.id}`,
  href: linker(CATALOGUE_PATH)(articlePath(cycle)),
  theme: typeset(cycle.theme, lang),
  month: monthName(cycle, pageLang(lang)),
  items: items.map((item, i) => {
    const picture = item.picture && pictureMarkup(item.picture, smallPlate, CATALOGUE_PATH);
    pictures.push(...(picture?.outputs ?? []));
    return {
      href: addressFrom(CATALOGUE_PATH, itemDestination(cycle, item)),
      name: typeset(item.name, lang),
      kind: typeset(item.kind, lang),
      brand: typeset(item.brand, lang),
      picture: picture?.html,
      onSale: onSale[i] ?? false,
    };
  }),
});

interface KindIndexData {
  readonly lang: string;
  /** In the language's order of letters. */
  readonly kinds: readonly {
    readonly kind: string;
    /** Site path of its page, where it has one. */
    readonly page?: string;
    /** Oldest first. */
    readonly items: readonly ListedPage[];
  }[];
}

const kindIndexView = ({ lang, kinds }: KindIndexData, words: Wording['site']['catalogue']) => {
  const link = linker(CATALOGUE_PATH);
  return {
    words,
    kinds: kinds.map(({ kind, page, items }) => ({
      kind: typeset(kind, lang),
      href: page === undefined ? undefined : link(page),
      items: items.map(({ name, to }) => ({
        href: addressFrom(CATALOGUE_PATH, to),
        name: typeset(name, lang),
      })),
    })),
  };
};

declare module '../../render/templates.ts' {
  interface TemplateData {
    'catalogue-cycle': ReturnType<typeof sectionView>;
    'catalogue-kinds': ReturnType<typeof kindIndexView>;
  }
}

const section = (data: SectionData, { templates, wording }: Tools): MadeText => {
  const pictures: PictureOutput[] = [];
  const view = sectionView(data, wording.site.catalogue, pictures);
  return { content: fragmentText(templates.render('catalogue-cycle', view)), pictures };
};

const kindIndex = (data: KindIndexData, { templates, wording }: Tools): MadeText => ({
  content: fragmentText(templates.render('catalogue-kinds', kindIndexView(data, wording.site.catalogue))),
});

interface GraphData {
  readonly site: SiteFacts;
  readonly items: readonly ListedPage[];
}

const graph = ({ site, items }: GraphData, { wording }: Tools): MadeText => ({
  content: fragmentText(jsonLdScript(catalogueGraph({ site, items, words: wording.structuredData }))),
});

/** What a section lists of an item: the same object for the same item, and frozen, so that it is hashed once. */
const listedItem = remembered(
  ({ slug, name, kind, brand, pictures: [picture] }: Item): ListedItem =>
    Object.freeze(defined({ slug, name, kind, brand, picture })),
);

/** The section of a cycle. */
export const sectionFragment = (box: Box, cycle: Cycle, asOf: Moment): PlannedFragment => {
  const { lang, timeZone } = box.settings;
  const { id, address, theme, year, month, items } = cycle;
  return plannedFragment(
    `catalogue section ${id}`,
    {
      lang,
      cycle: { id, address, theme, year, month },
      items: items.map(listedItem),
      onSale: items.map((item) => spareOnSale(item, asOf, timeZone)),
    },
    section,
  );
};

/** The index by kind, and the graph that lists the same items in the same order. */
export const kindFragments = (
  box: Box,
): { readonly index: PlannedFragment; readonly graph: PlannedFragment } => {
  const kinds = kindGroups(box).map(({ kind, items }) =>
    defined({
      kind,
      page: kindPagePath(box, kind),
      items: items.map((item) => ({ name: item.name, to: itemDestination(cycleOf(box, item), item) })),
    }),
  );
  return {
    index: plannedFragment('catalogue kinds', { lang: box.settings.lang, kinds }, kindIndex),
    graph: plannedFragment(
      'catalogue graph',
      { site: siteFactsOf(box.settings), items: kinds.flatMap(({ items }) => items) },
      graph,
    ),
  };
};
