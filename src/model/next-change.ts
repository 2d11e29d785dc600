/** When the site would be another one, though nobody changed a word of it. */
import type { Box, CallKind, Moment } from './box.ts';
import { endOfDay } from './calendar.ts';
import { callFor, spareOnSale } from './calls.ts';

/** What a moment changes: a cycle is revealed, an item's spare pieces go off sale, another call holds. */
export type Change =
  | { readonly change: 'reveal'; readonly cycle: string; readonly theme: string }
  | { readonly change: 'spare'; readonly cycle: string; readonly item: string; readonly name: string }
  /** Without `cycle` the box's own; without `call` there is none any more. */
  | { readonly change: 'call'; readonly cycle?: string; readonly call?: CallKind };

interface NextChange {
  readonly at: Moment;
  readonly changes: readonly Change[];
}

interface Coming {
  readonly at: Moment;
  readonly change: Change;
}

const reveals = (box: Box, asOf: Moment): readonly Coming[] =>
  box.cycles.flatMap(({ id, theme, reveal }) =>
    reveal !== undefined && reveal > asOf
      ? [{ at: reveal, change: { change: 'reveal' as const, cycle: id, theme } }]
      : [],
  );

/** The ends of sales that a visitor could see: those of what is shown by then. */
const sales = (box: Box, asOf: Moment): readonly Coming[] => {
  const { timeZone } = box.settings;
  return box.cycles.flatMap(({ id, reveal, items }) =>
    items.flatMap((item) => {
      if (!item.spare?.until || !spareOnSale(item, asOf, timeZone)) return [];
      const at = endOfDay(item.spare.until, timeZone);
      const { slug, name } = item;
      return reveal !== undefined && reveal < at
        ? [{ at, change: { change: 'spare' as const, cycle: id, item: slug, name } }]
        : [];
    }),
  );
};

const calls = (box: Box, before: Moment, at: Moment): readonly Change[] =>
  [undefined, ...box.cycles.filter(({ reveal }) => reveal !== undefined && reveal <= before)].flatMap(
    (cycle) => {
      const kind = callFor(box, cycle, at)?.kind;
      // A page without a call of its own follows the box's, which is told once.
      if ((cycle && !cycle.call) || callFor(box, cycle, before)?.kind === kind) return [];
      return [{ change: 'call' as const, ...(cycle && { cycle: cycle.id }), ...(kind && { call: kind }) }];
    },
  );

/**
 * The next moment after `asOf` at which the same content gives another site, and what it changes; undefined where none
 * is known. Parcels that arrive change their list, which is content: a cycle that waits for them has no moment here.
 */
export const nextChange = (box: Box, asOf: Moment): NextChange | undefined => {
  const coming = [...reveals(box, asOf), ...sales(box, asOf)];
  if (coming.length === 0) return undefined;
  const at = Math.min(...coming.map((one) => one.at));
  const changes = coming.filter((one) => one.at === at).map(({ change }) => change);
  return { at, changes: [...changes, ...calls(box, asOf, at)] };
};
