/** The back room's first page: what is sealed and until when, and each box's pieces with their cautions and spares. */
import type { Item, Moment } from '../model/box.ts';
import { dateInZone, longDate, monthName, revealDay } from '../model/calendar.ts';
import { callFor, spareOnSale } from '../model/calls.ts';
import { cautionsOf } from '../model/cautions.ts';
import { isSealed } from '../model/seal.ts';
import { schemeStyle } from '../render/colours.ts';
import { htmlSource, trusted } from '../render/html.ts';
import { priceText } from '../render/money.ts';
import { typeset } from '../render/typeset.ts';
import type { Channel } from './channel.ts';

const spareWords = (item: Item, asOf: Moment, timeZone: string, lang: string): string => {
  if (!item.spare) return '';
  if (!spareOnSale(item, asOf, timeZone)) return item.spare.count === 0 ? 'all sold' : 'no longer for sale';
  return `${item.spare.count} at ${priceText(item.spare.price, lang)}`;
};

export const papers: Channel = {
  name: 'papers',
  where: 'backroom',
  make: ({ box, asOf, templates }) => {
    const { lang, timeZone, name, palette } = box.settings;
    const page = templates.render('papers', {
      lang,
      name: typeset(name, lang),
      scheme: trusted(`<style>${schemeStyle(palette)}</style>`),
      asOf: longDate(dateInZone(asOf, timeZone), lang),
      call: callFor(box, undefined, asOf),
      cycles: [...box.cycles].reverse().map((cycle) => ({
        month: monthName(cycle, lang),
        theme: typeset(cycle.theme, lang),
        sealed: isSealed(cycle, asOf),
        reveal: revealDay(cycle, timeZone, lang),
        items: cycle.items.map((item) => ({
          name: typeset(item.name, lang),
          lead: item.lead,
          pictures: item.pictures.length,
          cautions: cautionsOf(item)
            .map(({ label }) => label)
            .join(', '),
          spare: spareWords(item, asOf, timeZone, lang),
        })),
      })),
    });
    return {
      outputs: [{ where: 'backroom', path: 'index.html', text: `<!doctype html>\n${htmlSource(page)}` }],
      diagnostics: [],
    };
  },
};
