/** What the back room's first page is made of: of each cycle no more than the page says. */
import type { AskedFor } from '../../analysis/coverage/phrases/asked-for.ts';
import type { Box, Cycle, Item, Moment, Money, Piece, PlainDate } from '../../model/box.ts';
import { dateInZone } from '../../model/calendar.ts';
import { type Call, callFor, spareOnSale } from '../../model/calls.ts';
import type { CarriedRow, CycleCompleteness } from '../../model/carried.ts';
import { pieceOrder, piecesOf } from '../../model/pieces.ts';
import { isSealed } from '../../model/seal.ts';
import { absoluteAddress, articlePath } from '../../render/addresses.ts';
import { type ChannelPlan, type ClosingInput, type FilePlace, plannedDocument } from '../channel.ts';
import { indexPage } from './page.ts';
import { type Streak, streakOf } from './streaks.ts';

/** A month of a year, from 1 to 12. */
export interface Month {
  readonly year: number;
  readonly month: number;
}

/** An item's spare pieces as of the moment; undefined for an item that never had any. */
type SparePieces =
  | { readonly state: 'on sale'; readonly count: number; readonly price: Money }
  | { readonly state: 'sold out' | 'past' };

/** An item as the page notes it. */
export interface ItemBrief {
  readonly lead: boolean;
  readonly pictures: number;
  readonly spare?: SparePieces;
}

/** A cycle as the page shows it. */
export interface CycleBrief extends Month {
  readonly id: string;
  readonly theme: string;
  readonly sealed: boolean;
  /** Whether it stands among those that are worked at; the others are folded up. */
  readonly isCurrent: boolean;
  readonly reveal?: Moment;
  /** Where its article is read, for one that is shown. */
  readonly article?: string;
  /** Names of the files in its folder, sorted. */
  readonly files: readonly string[];
  /** In the order of the rows of items. */
  readonly items: readonly ItemBrief[];
  readonly pieces: readonly Piece[];
  readonly rows: readonly CarriedRow[];
}

/** Pieces by cycle, the newest first, with the day on which each was made. */
export interface YearBrief {
  readonly pieces: readonly Piece[];
  readonly streaks: readonly Streak[];
  /** The newest cycle that was shown. */
  readonly newest?: Month;
  /** Whether any record says when its pieces were made. */
  readonly kept: boolean;
  /** A day for each piece; empty where none was written down. */
  readonly rows: readonly (Month & { readonly days: readonly (PlainDate | '')[] })[];
}

/** What the page is made of. */
export interface IndexData {
  readonly name: string;
  readonly lang: string;
  readonly timeZone: string;
  readonly palette: readonly string[];
  readonly asOf: PlainDate;
  readonly call?: Call;
  /** The newest first. */
  readonly cycles: readonly CycleBrief[];
  readonly year: YearBrief;
  readonly askedFor?: AskedFor;
}

const spareOf = (item: Item, asOf: Moment, timeZone: string): SparePieces | undefined => {
  const { spare } = item;
  if (!spare) return undefined;
  if (spareOnSale(item, asOf, timeZone)) return { state: 'on sale', count: spare.count, price: spare.price };
  return { state: spare.count === 0 ? 'sold out' : 'past' };
};

const itemBrief = (item: Item, asOf: Moment, timeZone: string): ItemBrief => {
  const spare = spareOf(item, asOf, timeZone);
  return { lead: item.lead, pictures: item.pictures.length, ...(spare ? { spare } : {}) };
};

/** Names of the back room's files by folder, sorted. */
const filesByFolder = (files: readonly FilePlace[]): ReadonlyMap<string, readonly string[]> => {
  const folders = new Map<string, string[]>();
  for (const { where, path } of files) {
    const at = path.indexOf('/');
    if (where !== 'backroom' || at < 0) continue;
    const folder = path.slice(0, at);
    const names = folders.get(folder) ?? [];
    names.push(path.slice(at + 1));
    folders.set(folder, names);
  }
  for (const names of folders.values()) names.sort();
  return folders;
};

const briefOf = (
  cycle: Cycle,
  whole: CycleCompleteness,
  { box, asOf }: ClosingInput,
  files: readonly string[],
  isCurrent: boolean,
): CycleBrief => {
  const { settings } = box;
  const sealed = isSealed(cycle, asOf);
  return {
    id: cycle.id,
    year: cycle.year,
    month: cycle.month,
    theme: cycle.theme,
    sealed,
    isCurrent,
    ...(cycle.reveal === undefined ? {} : { reveal: cycle.reveal }),
    ...(sealed ? {} : { article: absoluteAddress(settings, articlePath(cycle)) }),
    files,
    items: cycle.items.map((item) => itemBrief(item, asOf, settings.timeZone)),
    pieces: whole.pieces,
    rows: whole.rows,
  };
};

/** Cycles that the year shows: twelve that were shown, and all that are to come. */
const YEAR = 12;

const yearOf = ({ cycles, settings }: Box, asOf: Moment, newest: Cycle | undefined): YearBrief => {
  const chosen = new Set(piecesOf(settings));
  const pieces = pieceOrder.filter(
    (piece) => chosen.has(piece) || cycles.some(({ made }) => made?.[piece] !== undefined),
  );
  const shown = new Set(cycles.filter((cycle) => !isSealed(cycle, asOf)).slice(-YEAR));
  const year = cycles.filter((cycle) => shown.has(cycle) || isSealed(cycle, asOf)).reverse();
  return {
    pieces,
    streaks: pieces.map((piece) => streakOf(cycles, piece, asOf)),
    ...(newest ? { newest: { year: newest.year, month: newest.month } } : {}),
    kept: cycles.some(({ made }) => made !== undefined),
    rows: year.map((cycle) => ({
      year: cycle.year,
      month: cycle.month,
      days: pieces.map((piece) => cycle.made?.[piece] ?? ''),
    })),
  };
};

/** The one page. */
export const planIndex = (input: ClosingInput): ChannelPlan => {
  const { box, asOf, completeness, files, askedFor } = input;
  const { name, lang, timeZone, palette } = box.settings;
  const newest = box.cycles.findLast((cycle) => !isSealed(cycle, asOf));
  const folders = filesByFolder(files);
  const call = callFor(box, undefined, asOf);
  const data: IndexData = {
    name,
    lang,
    timeZone,
    palette,
    asOf: dateInZone(asOf, timeZone),
    ...(call ? { call } : {}),
    cycles: box.cycles
      .flatMap((cycle, i) => {
        const whole = completeness[i];
        const isCurrent = cycle === newest || isSealed(cycle, asOf);
        return whole ? [briefOf(cycle, whole, input, folders.get(cycle.id) ?? [], isCurrent)] : [];
      })
      .reverse(),
    year: yearOf(box, asOf, newest),
    ...(askedFor && { askedFor }),
  };
  return { documents: [plannedDocument('index.html', 'list', data, indexPage)] };
};
