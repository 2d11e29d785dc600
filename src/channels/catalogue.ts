/**
 * The catalogue: every item of every unsealed cycle, grouped by cycle, with an index by kind; and the index that
 * its search is asked of, made with the page so that an entry and its place in the index cannot disagree.
 */
import { BASIC_COLOURS } from '../analysis/search/basic-colours.ts';
import { type CatalogueItem, catalogueItems, searchIndex } from '../analysis/search/documents.ts';
import type { HeadFile } from '../analysis/search/published.ts';
import type { Box, Cycle, Item } from '../model/box.ts';
import { monthName } from '../model/calendar.ts';
import { spareOnSale } from '../model/calls.ts';
import { kindGroupOf, kindGroups } from '../model/kinds.ts';
import { cycleOf } from '../model/relations.ts';
import { articlePath, CATALOGUE_PATH, itemAddress, kindPagePath } from '../render/addresses.ts';
import { hashedPath } from '../render/assets.ts';
import { smallPlate } from '../render/layouts.ts';
import type { BytesOutput, PictureOutput, TextOutput } from '../render/output.ts';
import { linker, pageOutput } from '../render/page.ts';
import { pictureMarkup } from '../render/pictures.ts';
import { handingOver } from '../render/script-data.ts';
import { catalogueGraph } from '../render/structured-data.ts';
import type { Templates } from '../render/templates.ts';
import { typeset } from '../render/typeset.ts';
import type { Channel, ChannelInput } from './channel.ts';

/** What the index files call. */
const RECEIVER = 'lidloreIndex';

/** The script of a language, or the one that knows no stems. */
const scriptFor = ({ scripts }: Templates, lang: string) => {
  const primary = lang.toLowerCase().split('-')[0];
  return (
    scripts.find(({ path }) => path === `search.${primary}.js`) ??
    scripts.find(({ path }) => path === 'search.js')
  );
};

const kindOf = (box: Box, item: Item): string => kindGroupOf(box, item.kind)?.kind ?? item.kind;

interface SearchFiles {
  readonly script: BytesOutput;
  readonly head: TextOutput;
  readonly stories: readonly TextOutput[];
}

/** The search's files; none where there is no script for it. */
const searchFiles = (
  { box, language, templates }: ChannelInput,
  items: readonly CatalogueItem[],
): SearchFiles | undefined => {
  const script = scriptFor(templates, box.settings.lang);
  if (!script) return undefined;
  const index = searchIndex(items, box.settings, language);
  const head: HeadFile = {
    index: index.head,
    items: items.map(({ item, particulars: { also, material, color, colours } }) => [
      kindOf(box, item),
      also,
      material,
      color,
      colours,
    ]),
  };
  const file = (name: string, data: unknown): TextOutput => {
    const text = handingOver(RECEIVER, data);
    return { where: 'site', path: hashedPath(`search/${name}.js`, text), text };
  };
  return {
    script: { where: 'site', path: hashedPath('search.js', script.bytes), bytes: script.bytes },
    head: file('names', head),
    stories: index.stories.map((part, i) => file(`stories-${i + 1}`, part)),
  };
};

interface Choice {
  readonly value: string;
  readonly name: string;
  readonly count: number;
}

/** Values with how many items have each, in the order that `order` gives. */
const choicesOf = (
  items: readonly CatalogueItem[],
  valuesOf: (item: CatalogueItem) => readonly { readonly value: string; readonly name: string }[],
  order: (a: Choice, b: Choice) => number,
): readonly Choice[] => {
  const choices = new Map<string, Choice>();
  for (const item of items)
    for (const { value, name } of new Map(valuesOf(item).map((one) => [one.value, one])).values()) {
      const seen = choices.get(value);
      choices.set(value, { value, name: seen?.name ?? name, count: (seen?.count ?? 0) + 1 });
    }
  return [...choices.values()].sort(order);
};

/** What the catalogue can be narrowed down by. Values are those that the browser compares. */
const facetsOf = (box: Box, items: readonly CatalogueItem[]) => {
  const { lang } = box.settings;
  const { compare } = new Intl.Collator(lang);
  const byName = (a: Choice, b: Choice): number => compare(a.name, b.name);
  const rank = ({ value }: Choice): number => BASIC_COLOURS.indexOf(value);
  const plain = (value: string) => ({ value, name: typeset(value, lang) });
  const newestFirst = [...box.cycles].reverse();
  return {
    kinds: choicesOf(items, ({ item }) => [plain(kindOf(box, item))], byName),
    years: [...new Set(newestFirst.map(({ year }) => year))].map((year) => {
      const cycles = newestFirst.filter((cycle) => cycle.year === year);
      return {
        year,
        count: cycles.reduce((sum, cycle) => sum + cycle.items.length, 0),
        cycles: cycles.map((cycle) => ({
          id: cycle.id,
          name: monthName(cycle, lang),
          count: cycle.items.length,
        })),
      };
    }),
    colours: choicesOf(
      items,
      ({ particulars }) => particulars.colours.map(plain),
      (a, b) => rank(a) - rank(b) || byName(a, b),
    ),
    materials: choicesOf(
      items,
      ({ item }) =>
        item.material.map((name) => ({ value: name.toLowerCase(), name: typeset(name.toLowerCase(), lang) })),
      byName,
    ),
  };
};

export const catalogue: Channel<'site'> = {
  name: 'catalogue',
  where: 'site',
  make: (input) => {
    const { box, asOf, templates, language } = input;
    const { settings } = box;
    const { lang, timeZone } = settings;
    const link = linker(CATALOGUE_PATH);
    const pictures: PictureOutput[] = [];
    const hrefOf = (item: Item): string => itemAddress(box, item, CATALOGUE_PATH);
    const items = catalogueItems(box, language);
    const search = searchFiles(input, items);
    const entry = ({ item }: CatalogueItem) => {
      const first = item.pictures[0];
      const picture = first && pictureMarkup(first, smallPlate, CATALOGUE_PATH);
      pictures.push(...(picture?.outputs ?? []));
      return {
        href: hrefOf(item),
        name: typeset(item.name, lang),
        kind: typeset(item.kind, lang),
        brand: typeset(item.brand, lang),
        picture: picture?.html,
        onSale: spareOnSale(item, asOf, timeZone),
      };
    };
    // Entries stand in the index's order, by construction: both are this one list.
    const cycleView = (cycle: Cycle) => ({
      id: `cycle-${cycle.id}`,
      href: link(articlePath(cycle)),
      theme: typeset(cycle.theme, lang),
      month: monthName(cycle, lang),
      items: items.filter((one) => one.cycle === cycle).map(entry),
    });
    const cycles = [...new Set(items.map(({ cycle }) => cycle))].map(cycleView);
    const body = templates.render('catalogue', {
      name: typeset(settings.name, lang),
      count: items.length,
      cycleCount: box.cycles.length,
      cycles,
      search: search && {
        action: link(CATALOGUE_PATH),
        script: link(search.script.path),
        head: link(search.head.path),
        stories: search.stories.map(({ path }) => link(path)).join(' '),
        onSale: items.filter(({ item }) => spareOnSale(item, asOf, timeZone)).length,
        ...facetsOf(box, items),
      },
      kinds: kindGroups(box).map(({ kind, items }) => {
        const page = kindPagePath(box, kind);
        return {
          kind: typeset(kind, lang),
          href: page === undefined ? undefined : link(page),
          items: items.map((item) => ({
            href: hrefOf(item),
            name: typeset(item.name, lang),
            month: monthName(cycleOf(box, item), lang),
          })),
        };
      }),
    });
    const page = pageOutput({
      box,
      asOf,
      templates,
      path: CATALOGUE_PATH,
      title: `Everything we have packed: ${items.length} pieces from ${box.cycles.length} boxes`,
      description: `Every piece from every ${settings.name} box so far, by month and by kind, with its maker and whether spare pieces are for sale.`,
      type: 'website',
      styles: ['lists.css'],
      palette: settings.palette,
      body,
      graph: catalogueGraph({ box, asOf }),
    });
    const files = search ? [search.script, search.head, ...search.stories] : [];
    return { outputs: [page, ...files, ...pictures], diagnostics: [] };
  },
};
