/** The one rule of what a visitor can do now. */
import { withQuery } from '../text/query.ts';
import type { Box, BoxSettings, CallKind, CallTerms, Cycle, Item, Moment, Piece } from './box.ts';
import { dateInZone } from './calendar.ts';
import { isSealed } from './seal.ts';

/** A call that holds. */
export interface Call {
  readonly kind: CallKind;
  /** With the mark of the piece that it is asked for. */
  readonly address: string;
  readonly text: string;
  /** Places left, where the box counts them. */
  readonly places?: number;
}

/** Whether an item's spare pieces are past their last day in the box's zone. */
export const sparePast = ({ spare }: Item, asOf: Moment, timeZone: string): boolean =>
  spare?.until !== undefined && dateInZone(asOf, timeZone) > spare.until;

/** Whether spare pieces of an item can be bought at a moment: some are left and the last day is not past. */
export const spareOnSale = (item: Item, asOf: Moment, timeZone: string): boolean =>
  item.spare !== undefined && item.spare.count > 0 && !sparePast(item, asOf, timeZone);

/** Whether any spare piece of some cycles can be bought. */
export const anySpareOnSale = (cycles: readonly Cycle[], asOf: Moment, timeZone: string): boolean =>
  cycles.some(({ items }) => items.some((item) => spareOnSale(item, asOf, timeZone)));

/** Whether what a call asks for can be had: a place is left, a spare piece is on sale. A wait list takes everybody. */
const canBeHad = (
  kind: CallKind,
  { settings, cycles }: Box,
  own: Cycle | undefined,
  asOf: Moment,
): boolean => {
  if (kind === 'join') return settings.calls.join?.places !== 0;
  if (kind === 'waitList') return true;
  // What is sealed sells nothing yet.
  const shelf = own ? [own] : cycles.filter((cycle) => !isSealed(cycle, asOf));
  return anySpareOnSale(shelf, asOf, settings.timeZone);
};

/** Where a call leads from a piece: its address with the piece's own mark, where it has one. */
export const addressFrom = ({ address, from }: CallTerms, piece: Piece): string => {
  const mark = from?.[piece];
  return mark === undefined ? address : withQuery(address, mark);
};

/**
 * The call that holds. Three are tried in this order: the cycle's own, the box's, the wait list. The first that has an
 * address and is open is given; undefined if none is, because no call is better than one that leads to a closed door.
 * What the box asks for is worked out once, however many cycles are asked for. A piece has the address with its own mark;
 * what is no piece, as the first page, has it as it is.
 */
export const callsAsOf = (
  box: Box,
  asOf: Moment,
  piece?: Piece,
): ((cycle: Cycle | undefined) => Call | undefined) => {
  const { call, calls } = box.settings;
  const callOf = (kind: CallKind | undefined): Call | undefined => {
    const terms = kind && calls[kind];
    if (!terms) return undefined;
    const { from: _, ...said } = terms;
    return { kind, ...said, address: piece ? addressFrom(terms, piece) : terms.address };
  };
  const boxCall = callOf(
    ([call, 'waitList'] as const).find((kind) => calls[kind] && canBeHad(kind, box, undefined, asOf)),
  );
  return (cycle) => {
    const own = cycle?.call;
    return own && calls[own] && canBeHad(own, box, cycle, asOf) ? callOf(own) : boxCall;
  };
};

/** The call that holds at a moment, for a cycle or for the box, as a piece gives it: see `callsAsOf`. */
export const callFor = (box: Box, cycle: Cycle | undefined, asOf: Moment, piece?: Piece): Call | undefined =>
  callsAsOf(box, asOf, piece)(cycle);

/** An address as it is said: without what a browser adds by itself. */
export const saidAddress = (address: string): string =>
  address.replace(/^https?:\/\/(?:www\.)?/i, '').replace(/\/$/, '');

/** A call's address as it stands in a picture, to be typed: without the piece's mark, which nobody would type. */
export const typedAddress = ({ calls }: Pick<BoxSettings, 'calls'>, { kind, address }: Call): string =>
  saidAddress(calls[kind]?.address ?? address);
