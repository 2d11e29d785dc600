/** The catalogue: every item of every unsealed cycle, grouped by cycle, with an index by kind. */

import type { Item } from '../model/box.ts';
import { monthName } from '../model/calendar.ts';
import { spareOnSale } from '../model/calls.ts';
import { cycleOf, kindGroups } from '../model/relations.ts';
import { articlePath, CATALOGUE_PATH, itemAddress } from '../render/addresses.ts';
import { smallPlate } from '../render/layouts.ts';
import type { PictureOutput } from '../render/output.ts';
import { linker, pageOutput } from '../render/page.ts';
import { pictureMarkup } from '../render/pictures.ts';
import { catalogueGraph } from '../render/structured-data.ts';
import { typeset } from '../render/typeset.ts';
import type { Channel } from './channel.ts';

export const catalogue: Channel = {
  name: 'catalogue',
  where: 'site',
  make: ({ box, asOf, templates }) => {
    const { settings } = box;
    const { lang, timeZone } = settings;
    const link = linker(CATALOGUE_PATH);
    const pictures: PictureOutput[] = [];
    const hrefOf = (item: Item): string => itemAddress(box, item, CATALOGUE_PATH);
    const entry = (item: Item) => {
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
    const count = box.cycles.reduce((sum, cycle) => sum + cycle.items.length, 0);
    const body = templates.render('catalogue', {
      name: typeset(settings.name, lang),
      count,
      cycleCount: box.cycles.length,
      cycles: [...box.cycles].reverse().map((cycle) => ({
        id: `cycle-${cycle.id}`,
        href: link(articlePath(cycle)),
        theme: typeset(cycle.theme, lang),
        month: monthName(cycle, lang),
        items: cycle.items.map(entry),
      })),
      kinds: kindGroups(box).map(({ kind, items }) => ({
        kind: typeset(kind, lang),
        items: items.map((item) => ({
          href: hrefOf(item),
          name: typeset(item.name, lang),
          month: monthName(cycleOf(box, item), lang),
        })),
      })),
    });
    const page = pageOutput({
      box,
      asOf,
      templates,
      path: CATALOGUE_PATH,
      title: `Everything we have packed: ${count} pieces from ${box.cycles.length} boxes`,
      description: `Every piece from every ${settings.name} box so far, by month and by kind, with its maker and whether spare pieces are for sale.`,
      type: 'website',
      palette: settings.palette,
      body,
      graph: catalogueGraph({ box, asOf }),
    });
    return { outputs: [page, ...pictures], diagnostics: [] };
  },
};
