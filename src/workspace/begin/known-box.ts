/** What beginning a cycle needs to know of the box. */
import type { RevealHabit } from '../../model/box.ts';
import { defined } from '../../text/defined.ts';
import type { Snapshot } from '../assemble.ts';

/** A cycle that stands, as far as the next one follows from it. */
export interface KnownCycle {
  /** Its month, `2026-03`. */
  readonly id: string;
  /** `YYYY-MM-DD`. */
  readonly shipped: string;
  /** In milliseconds since 1970; absent where the parcels decide. */
  readonly reveal?: number;
  readonly isWhenDelivered: boolean;
  /** What it said of the box after it. */
  readonly peek?: string;
  readonly things: readonly { readonly name: string; readonly kind: string }[];
}

export interface KnownBox {
  /** BCP 47. */
  readonly lang: string;
  /** IANA. */
  readonly timeZone: string;
  /** ISO 4217. */
  readonly currency: string;
  /** Months from one cycle to the next. */
  readonly everyMonths: number;
  readonly habit: RevealHabit;
  /** The oldest first. */
  readonly cycles: readonly KnownCycle[];
  /** Months that have a folder, also those whose records are at fault. */
  readonly months: readonly string[];
}

/** What is known of the box in a snapshot; undefined where box.md is no record. */
export const knownBox = ({ box, cycleIds }: Snapshot): KnownBox | undefined => {
  if (!box) return undefined;
  const { lang, timeZone, currency, everyMonths, revealHabit: habit } = box.settings;
  return {
    lang,
    timeZone,
    currency,
    everyMonths,
    habit: habit ?? {},
    months: cycleIds,
    cycles: box.cycles.map(
      (cycle): KnownCycle =>
        defined({
          id: cycle.id,
          shipped: cycle.shipped,
          reveal: cycle.reveal,
          isWhenDelivered: cycle.whenDelivered !== undefined,
          peek: cycle.peek?.text,
          things: cycle.items.map(({ name, kind }) => ({ name, kind })),
        }),
    ),
  };
};
