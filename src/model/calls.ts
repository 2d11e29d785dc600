/** The one rule of what a visitor can do now. */
import type { Box, CallKind, Cycle, Item, Moment } from './box.ts';
import { dateInZone } from './calendar.ts';

export interface Call {
  readonly kind: CallKind;
  readonly address: string;
  readonly text: string;
  /** Places left, where the box counts them. */
  readonly places?: number;
}

/** Whether spare pieces of an item can be bought at a moment: some are left and the last day is not past. */
export const spareOnSale = ({ spare }: Item, asOf: Moment, timeZone: string): boolean =>
  spare !== undefined &&
  spare.count > 0 &&
  (spare.until === undefined || dateInZone(asOf, timeZone) <= spare.until);

/** The call that holds: the cycle's own, unless it is for spare pieces and none of the cycle's are on sale; else the box's. */
export const callFor = ({ settings }: Box, cycle: Cycle | undefined, asOf: Moment): Call | undefined => {
  const own = cycle?.call;
  const sold = own === 'spare' && !cycle?.items.some((item) => spareOnSale(item, asOf, settings.timeZone));
  const kind = own === undefined || sold ? settings.call : own;
  const terms = settings.calls[kind];
  return terms && { kind, ...terms };
};
