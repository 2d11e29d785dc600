/**
 * The back room's first page: the papers of each box in the order of their use, what every piece of it carries, and
 * the year at a glance.
 */

import type { Box, Cycle, Item, Moment, Piece } from '../model/box.ts';
import { dateInZone, longDate, monthName, revealDay } from '../model/calendar.ts';
import { callFor, spareOnSale } from '../model/calls.ts';
import { papersInOrder, pieceOrder, piecesOf, pieceTitles } from '../model/pieces.ts';
import { isSealed } from '../model/seal.ts';
import { streakOf } from '../model/streaks.ts';
import { absoluteAddress, articlePath } from '../render/addresses.ts';
import { documentText, schemeElement } from '../render/document.ts';
import { priceText } from '../render/money.ts';
import type { Output } from '../render/output.ts';
import { pageLang } from '../render/page-lang.ts';
import { typeset } from '../render/typeset.ts';
import type { CarriedRow, ClosingChannel, ClosingInput, CycleCompleteness, PieceState } from './channel.ts';

interface Link {
  readonly href: string;
  readonly title: string;
}

/** The cycle's papers that were made; one that nobody knows the use of stands last, under its file's name. */
const linksOf = (cycle: Cycle, { box, asOf, outputs }: ClosingInput) => {
  const folder = `${cycle.id}/`;
  const files = new Set(
    outputs.flatMap(({ where, path }: Output) =>
      where === 'backroom' && path.startsWith(folder) ? [path.slice(folder.length)] : [],
    ),
  );
  const link = (file: string, title: string): readonly Link[] =>
    files.delete(file) ? [{ href: `${folder}${encodeURIComponent(file)}`, title }] : [];
  const known = papersInOrder.flatMap(({ file, title, more = [] }) => {
    const own =
      file === undefined
        ? isSealed(cycle, asOf)
          ? []
          : [{ href: absoluteAddress(box.settings, articlePath(cycle)), title }]
        : link(file, title);
    const others = more.flatMap((one) => link(one.file, one.title));
    const [first, ...rest] = [...own, ...others];
    return first ? [{ ...first, more: rest }] : [];
  });
  const others = [...files].sort().flatMap((file) => link(file, file));
  return [...known, ...others.map((one) => ({ ...one, more: [] }))];
};

const spareWords = (item: Item, asOf: Moment, { timeZone, lang }: Box['settings']): string => {
  if (!item.spare) return '';
  if (!spareOnSale(item, asOf, timeZone))
    return item.spare.count === 0 ? 'spare pieces all sold' : 'spare pieces no longer for sale';
  return `${item.spare.count} spare at ${priceText(item.spare.price, lang)}`;
};

const itemNotes = (item: Item, asOf: Moment, settings: Box['settings']): string => {
  const count = item.pictures.length;
  const pictures = count === 0 ? 'no picture' : `${count} ${count === 1 ? 'picture' : 'pictures'}`;
  return [item.lead ? 'lead' : '', pictures, spareWords(item, asOf, settings)].filter(Boolean).join(', ');
};

const stateWords: Readonly<Record<PieceState, string>> = {
  there: 'yes',
  absent: 'absent',
  sealed: 'sealed',
  'not made': 'not made',
  'not asked': '',
  'kept still': 'kept still',
  'given away': 'given away',
};

/** States that somebody has to look at. */
const WRONG: ReadonlySet<PieceState> = new Set(['absent', 'given away']);

/** Columns of a cycle's table: to a live that is long over there is no invitation, and none is missed. */
const columnsOf = ({ pieces, rows }: CycleCompleteness): readonly number[] =>
  pieces.flatMap((piece, i) =>
    piece === 'invitation' && rows.some(({ states }) => states[i] === 'not made') ? [] : [i],
  );

const rowView = (row: CarriedRow, columns: readonly number[], notes: string, lang: string) => ({
  kind: row.kind,
  label: typeset(row.label, lang),
  notes,
  cells: columns.flatMap((column) => {
    const state = row.states[column];
    return state ? [{ words: stateWords[state], wrong: WRONG.has(state) }] : [];
  }),
});

const cycleView = (cycle: Cycle, whole: CycleCompleteness, input: ClosingInput) => {
  const { box, asOf } = input;
  const { settings } = box;
  const own = pageLang(settings.lang);
  const columns = columnsOf(whole);
  const items = cycle.items[Symbol.iterator]();
  const wrong = whole.rows.flatMap(({ states }) => states).filter((state) => WRONG.has(state)).length;
  return {
    id: cycle.id,
    month: monthName(cycle, own),
    theme: typeset(cycle.theme, settings.lang),
    sealed: isSealed(cycle, asOf),
    reveal: revealDay(cycle, settings.timeZone, own),
    links: linksOf(cycle, input),
    pieces: columns.map((column) => pieceTitles[whole.pieces[column] as Piece]),
    wrong,
    rows: whole.rows.map((row) => {
      const item = row.kind === 'item' ? items.next().value : undefined;
      return rowView(row, columns, item ? itemNotes(item, asOf, settings) : '', settings.lang);
    }),
  };
};

/** Cycles that the year shows: twelve that were shown, and all that are to come. */
const YEAR = 12;

/** What the year counts are deeds, not papers: a live that was held, a clip that went out. */
const deeds: Readonly<Record<Piece, string>> = { ...pieceTitles, live: 'Live', clip: 'Clip' };

const shortDate = (date: string, lang: string): string =>
  new Intl.DateTimeFormat(lang, { day: 'numeric', month: 'short', timeZone: 'UTC' }).format(
    Date.parse(`${date}T00:00:00Z`),
  );

const streakWords = (cycles: readonly Cycle[], piece: Piece, asOf: Moment, lang: string): string => {
  const { length, upToDate } = streakOf(cycles, piece, asOf);
  const newest = cycles.findLast((cycle) => !isSealed(cycle, asOf));
  if (length === 0) return 'none';
  return upToDate || !newest ? String(length) : `${length}, ${monthName(newest, lang)} not yet`;
};

const yearView = ({ cycles, settings }: Box, asOf: Moment) => {
  const own = pageLang(settings.lang);
  const pieces = pieceOrder.filter(
    (piece) => piecesOf(settings).includes(piece) || cycles.some(({ made }) => made?.[piece] !== undefined),
  );
  const shown = cycles.filter((cycle) => !isSealed(cycle, asOf)).slice(-YEAR);
  const year = cycles.filter((cycle) => shown.includes(cycle) || isSealed(cycle, asOf)).reverse();
  return {
    pieces: pieces.map((piece) => deeds[piece]),
    streaks: pieces.map((piece) => streakWords(cycles, piece, asOf, own)),
    kept: cycles.some(({ made }) => made !== undefined),
    rows: year.map((cycle) => ({
      month: monthName(cycle, own),
      cells: pieces.map((piece) => {
        const date = cycle.made?.[piece];
        return date === undefined ? '' : shortDate(date, own);
      }),
    })),
  };
};

export const backRoomIndex: ClosingChannel = {
  name: 'back-room-index',
  where: 'backroom',
  make: (input) => {
    const { box, asOf, templates, completeness: whole } = input;
    const { lang, timeZone, name, palette } = box.settings;
    const own = pageLang(lang);
    const newest = box.cycles.findLast((cycle) => !isSealed(cycle, asOf));
    const views = box.cycles
      .map((cycle, i) => ({ now: cycle === newest || isSealed(cycle, asOf), cycle, whole: whole[i] }))
      .reverse()
      .flatMap((one) => (one.whole ? [{ now: one.now, ...cycleView(one.cycle, one.whole, input) }] : []));
    const page = templates.render('back-room-index', {
      lang: own,
      name: typeset(name, lang),
      scheme: schemeElement(palette),
      asOf: longDate(dateInZone(asOf, timeZone), own),
      call: callFor(box, undefined, asOf),
      now: views.filter(({ now }) => now),
      earlier: views.filter(({ now }) => !now),
      year: yearView(box, asOf),
    });
    return {
      outputs: [{ where: 'backroom', path: 'index.html', text: documentText(page) }],
      diagnostics: [],
    };
  },
};
