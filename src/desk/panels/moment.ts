/** Before and after: the site as anybody sees it at a moment that is moved about. */
import { isoInstant, localMinute, longTime } from '../../model/calendar.ts';
import { isOpen } from '../../model/seal.ts';
import { momentFor, readAsOf } from '../../pipeline/as-of.ts';
import { articlePath } from '../../render/addresses.ts';
import { addressOf, type Context, type Outcome, type Panel, shownAddress } from '../context.ts';

interface MomentView {
  readonly words: Context['words'];
  readonly at: string;
  readonly asOf: string;
  readonly isWrong: boolean;
  readonly hint: string;
  readonly tries: readonly { readonly href: string; readonly label: string; readonly isHere: boolean }[];
  readonly title: string;
  readonly src: string;
  readonly isOlder: boolean;
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/moment': MomentView;
  }
}

const MINUTE = 60_000;

const show = async (context: Context): Promise<Outcome> => {
  const { table, words, lang, settings, cycle, id, asked } = context;
  const timeZone = settings?.timeZone ?? 'UTC';
  const typed = asked.query.get('at')?.trim() ?? '';
  const read = typed === '' ? table.now() : readAsOf(typed);
  const moment = Math.floor(momentFor(read ?? table.now(), timeZone) / MINUTE) * MINUTE;
  const address = addressOf('moment', id);
  const tryAt = (when: number, label: string) => ({
    href: `${address}?at=${encodeURIComponent(isoInstant(when))}`,
    label,
    isHere: typed !== '' && moment === Math.floor(when / MINUTE) * MINUTE,
  });
  const reveal = cycle?.reveal;
  const shown = await table.shown(moment);
  const here = shown.drawn.found?.box.cycles.find((one) => one.id === id);
  const place = here && isOpen(here, moment) ? `site/${articlePath(here)}` : 'site/index.html';
  const body = table.templates().render('desk/moment', {
    words,
    at: address,
    asOf: localMinute(moment, timeZone),
    hint: words.moment.hint(timeZone),
    isWrong: read === undefined,
    tries: [
      { href: address, label: words.moment.now, isHere: typed === '' },
      ...(reveal === undefined
        ? []
        : [tryAt(reveal - MINUTE, words.moment.before), tryAt(reveal, words.moment.after)]),
    ],
    title: words.moment.frame(longTime(moment, timeZone, lang)),
    src: shownAddress(moment, shown.files.has(place) ? place : 'site/index.html'),
    isOlder: shown.isOlder,
  });
  return { kind: 'page', heading: words.panels.moment, body };
};

/** Before and after. */
export const momentPanel: Panel = { show };
