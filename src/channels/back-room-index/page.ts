/**
 * The back room's first page: the papers of each box in the order of their use, what every piece of it carries, and
 * the year at a glance.
 */

import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { monthName, revealDay } from '../../model/calendar.ts';
import { type CarriedRow, type CarriedThing, type PieceState, WRONG_STATES } from '../../model/carried.ts';
import { FILM_FILE, papersInOrder } from '../../model/pieces.ts';
import { documentText } from '../../render/document.ts';
import { priceText } from '../../render/money.ts';
import type { MadeDocument } from '../../render/output.ts';
import { pageLang } from '../../render/page-lang.ts';
import { paperStyle } from '../../render/paper.ts';
import { typeset } from '../../render/typeset.ts';
import { longDate } from '../../text/long-date.ts';
import type { Wording } from '../../wording/wording.ts';
import type { Tools } from '../channel.ts';
import type { CycleBrief, IndexData, ItemBrief, YearBrief } from './plan.ts';

declare module '../../render/templates.ts' {
  interface TemplateData {
    'back-room-index': ReturnType<typeof indexView>;
  }
}

interface Link {
  readonly href: string;
  readonly title: string;
}

/** The cycle's papers that were made; one that nobody knows the use of stands last, under its file's name. */
const linksOf = ({ id, article, files }: CycleBrief, titles: Wording['pieces']['papers']) => {
  const left = new Set(files);
  const link = (file: string, title: string): readonly Link[] =>
    left.delete(file) ? [{ href: `${id}/${encodeURIComponent(file)}`, title }] : [];
  const known = papersInOrder.flatMap(({ name, file, more = [] }) => {
    const inSite = article === undefined ? [] : [{ href: article, title: titles[name] }];
    const own = file === undefined ? inSite : link(file, titles[name]);
    const others = more.flatMap((one) => link(one.file, titles[one.name]));
    const [first, ...rest] = [...own, ...others];
    return first ? [{ ...first, more: rest }] : [];
  });
  const others = [...left].flatMap((file) => link(file, file));
  return [...known, ...others.map((one) => ({ ...one, more: [] }))];
};

/** Columns of a cycle's table: of a cycle long over there are no invitation and no cards, and none is missed. */
const columnsOf = ({ pieces, rows }: CycleBrief): readonly number[] =>
  pieces.flatMap((piece, i) =>
    (piece === 'invitation' || piece === 'cards') && rows.some(({ states }) => states[i] === 'not made')
      ? []
      : [i],
  );

/** What a row is called. */
const labelOf = (thing: CarriedThing, { pieces, cautions }: Wording): string => {
  switch (thing.kind) {
    case 'item':
      return thing.name;
    case 'caution':
      return cautions.labels[thing.sort];
    case 'peek':
      return pieces.carried.peek;
    case 'call':
      return pieces.carried.call(thing.text);
    case 'address':
      return pieces.carried.address;
  }
};

const itemNotes = ({ lead, pictures, spare }: ItemBrief, lang: string, { backRoom }: Wording): string =>
  backRoom.itemNotes(
    lead,
    pictures,
    spare?.state === 'on sale' ? { ...spare, price: priceText(spare.price, pageLang(lang)) } : spare,
  );

/**
 * How the film stands to a thing. It is made of the shots of its clip sheet, so it carries what that does, as soon as it is
 * there. Cautions stand in the post that it goes out with, and it gives no look at the next box.
 */
const filmState = (thing: CarriedThing, ofSheet: PieceState, isThere: boolean): PieceState => {
  if (thing.kind === 'caution' || thing.kind === 'peek') return 'not asked';
  return ofSheet === 'there' && !isThere ? 'not made' : ofSheet;
};

/** A cycle's rows and columns, those of pieces that are made, and beside its clip sheet the film, where there is one. */
const withFilm = ({ pieces, rows, files }: CycleBrief, columns: readonly number[]) => {
  const isThere = files.includes(FILM_FILE);
  const clip = isThere ? pieces.indexOf('clip') : -1;
  const titles = (names: Wording['pieces']): readonly string[] =>
    columns.flatMap((column) => {
      const title = pieces[column] === undefined ? '' : names.titles[pieces[column]];
      return column === clip ? [title, names.papers.film] : [title];
    });
  const statesOf = ({ thing, states }: CarriedRow): readonly PieceState[] =>
    columns.flatMap((column) => {
      const state = states[column] ?? 'not asked';
      return column === clip ? [state, filmState(thing, state, isThere)] : [state];
    });
  return { titles, rows: rows.map((row) => ({ ...row, states: statesOf(row) })) };
};

const rowView = ({ thing, states }: CarriedRow, notes: string, lang: string, wording: Wording) => {
  const cell = (state: PieceState) => ({
    words: wording.backRoom.states[state],
    wrong: WRONG_STATES.has(state),
  });
  return {
    kind: thing.kind === 'address' ? 'call' : thing.kind,
    label: typeset(labelOf(thing, wording), lang),
    notes,
    cells: states.map(cell),
  };
};

const cycleView = (cycle: CycleBrief, { lang, timeZone }: IndexData, wording: Wording) => {
  const { backRoom, calendar, pieces } = wording;
  const own = pageLang(lang);
  const shown = withFilm(cycle, columnsOf(cycle));
  const items = cycle.items[Symbol.iterator]();
  const wrong = cycle.rows.flatMap(({ states }) => states).filter((state) => WRONG_STATES.has(state)).length;
  const month = monthName(cycle, own);
  const day = revealDay({ reveal: cycle.reveal }, timeZone, own);
  return {
    words: backRoom,
    id: cycle.id,
    heading: backRoom.cycle(month, typeset(cycle.theme, lang)),
    sealed: cycle.sealed && calendar.sealedUntil(day),
    shown: !cycle.sealed && backRoom.shownSince(calendar.revealDay(day)),
    links: linksOf(cycle, pieces.papers),
    carries: backRoom.carries(month),
    pieces: shown.titles(pieces),
    wrong: wrong > 0 && backRoom.wrong(wrong),
    toLookAt: wrong > 0 && backRoom.toLookAt(wrong),
    rows: shown.rows.map((row) => {
      const item = row.thing.kind === 'item' ? items.next().value : undefined;
      return rowView(row, item ? itemNotes(item, lang, wording) : '', lang, wording);
    }),
  };
};

const shortDate = (date: string, lang: string): string =>
  new Intl.DateTimeFormat(lang, { day: 'numeric', month: 'short', timeZone: 'UTC' }).format(
    Date.parse(`${date}T00:00:00Z`),
  );

const yearView = ({ pieces, streaks, newest, kept, rows }: YearBrief, lang: string, wording: Wording) => {
  const words = wording.backRoom.year;
  return {
    words,
    pieces: pieces.map((piece) => wording.pieces.deeds[piece]),
    streaks: streaks.map(({ length, upToDate }) =>
      words.streak(length, upToDate || !newest ? undefined : monthName(newest, pageLang(lang))),
    ),
    kept,
    rows: rows.map(({ days, ...month }) => ({
      month: monthName(month, pageLang(lang)),
      cells: days.map((day) => (day === '' ? words.none : shortDate(day, lang))),
    })),
  };
};

const indexView = (data: IndexData, { templates, wording }: Tools) => {
  const { name, lang, palette, asOf, call, cycles, year, askedFor } = data;
  const { backRoom } = wording;
  const own = pageLang(lang);
  const box = typeset(name, lang);
  const viewsOf = (some: readonly CycleBrief[]) => some.map((cycle) => cycleView(cycle, data, wording));
  return {
    words: backRoom,
    lang: own,
    pageTitle: backRoom.title(box),
    heading: backRoom.of(box),
    scheme: paperStyle(palette, templates),
    asOf: backRoom.asOf(longDate(asOf, own)),
    call,
    now: viewsOf(cycles.filter(({ isCurrent }) => isCurrent)),
    earlier: viewsOf(cycles.filter(({ isCurrent }) => !isCurrent)),
    year: yearView(year, own, wording),
    askedFor: askedFor && {
      told: backRoom.asked.told(askedFor.answered, askedFor.all),
      others: askedFor.others,
    },
  };
};

/** The page as HTML. */
export const indexPage = (data: IndexData, tools: Tools): MadeDocument<Diagnostic> => ({
  content: documentText(tools.templates.render('back-room-index', indexView(data, tools))),
});
