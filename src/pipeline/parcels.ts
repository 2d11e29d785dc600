/** The way from a cycle's list of shipments to what is said of it. */
import { type ParcelsFacts, parcelsFacts } from '../analysis/parcels/facts.ts';
import type { ParcelsReport } from '../channels/channel.ts';
import type { Checked, Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Moment, Parcels } from '../model/box.ts';
import { dateInZone } from '../model/calendar.ts';
import { isSealed } from '../model/seal.ts';
import { dayOfDate } from '../text/days.ts';
import { withReveals } from './reveals.ts';

export type { Group } from '../analysis/parcels/compare.ts';
export type { ParcelsFacts } from '../analysis/parcels/facts.ts';
export { logLogLimits, type Step, standardError } from '../analysis/parcels/incidence.ts';
export { dateOfDay } from '../text/days.ts';

/** What was read of each list, by the cycle. The value is absent where a file cannot be relied on. */
export type ParcelsByCycle = ReadonlyMap<string, Checked<Parcels | undefined>>;

interface Wanted {
  readonly box: Box;
  readonly asOf: Moment;
  readonly parcels: ParcelsByCycle;
  /** Instead of the habit's. */
  readonly share?: number;
}

const common = ({ box, asOf, share }: Wanted) => {
  const { timeZone, revealHabit } = box.settings;
  return {
    asOf,
    asOfDay: dayOfDate(dateInZone(asOf, timeZone)),
    timeZone,
    habit: revealHabit ?? {},
    ...(share !== undefined && { share }),
  };
};

const poolOf = (box: Box, parcels: ParcelsByCycle, before: (cycle: Cycle) => boolean) =>
  box.cycles.filter(before).flatMap(({ id }) => {
    const value = parcels.get(id)?.value;
    return value ? [{ cycle: id, parcels: value }] : [];
  });

/** The facts of one cycle. */
export const factsOfCycle = (wanted: Wanted, cycle: Cycle): ParcelsFacts => {
  const { box, parcels } = wanted;
  const own = parcels.get(cycle.id)?.value;
  return parcelsFacts({
    ...common(wanted),
    cycle: cycle.id,
    theme: cycle.theme,
    ...(cycle.reveal !== undefined && { planned: cycle.reveal }),
    leaves: dayOfDate(cycle.shipped),
    ...(own && { parcels: own }),
    earlier: poolOf(box, parcels, ({ id }) => id < cycle.id),
  });
};

/** The facts of a list that is no cycle's: cycles that left before it are the earlier ones. */
export const factsOfFile = (wanted: Wanted, own: Parcels): ParcelsFacts => {
  const first = own.counts.reduce((least, { shipped }) => Math.min(least, shipped), Number.POSITIVE_INFINITY);
  return parcelsFacts({
    ...common(wanted),
    cycle: own.file,
    parcels: own,
    earlier: poolOf(wanted.box, wanted.parcels, ({ shipped }) => dayOfDate(shipped) < first),
  });
};

/**
 * The facts of every cycle that has a list, and of each that is still sealed where earlier ones have: its reveal
 * can be judged before it leaves.
 */
export const factsByCycle = (wanted: Wanted): ReadonlyMap<string, ParcelsFacts> => {
  const { box, asOf, parcels } = wanted;
  const listed = box.cycles.filter(({ id }) => parcels.get(id)?.value);
  const [oldest] = listed;
  return new Map(
    box.cycles
      .filter(
        (cycle) =>
          listed.includes(cycle) ||
          (oldest !== undefined && oldest.id < cycle.id && !parcels.has(cycle.id) && isSealed(cycle, asOf)),
      )
      .map((cycle) => [cycle.id, factsOfCycle(wanted, cycle)]),
  );
};

/** Findings of all lists. */
export const parcelsFindings = (parcels: ParcelsByCycle): readonly Diagnostic[] =>
  [...parcels.values()].flatMap(({ diagnostics }) => diagnostics);

/** The facts with what was found in the lists they come from, for the papers. */
export const parcelsReports = (wanted: Wanted): ReadonlyMap<string, ParcelsReport> =>
  new Map(
    [...factsByCycle(wanted)].map(([cycle, facts]) => [
      cycle,
      { facts, diagnostics: wanted.parcels.get(cycle)?.diagnostics ?? [] },
    ]),
  );

/** Which parcels are asked about, and in which box. */
export interface ParcelsQuestion {
  readonly box: Box | undefined;
  readonly asOf: Moment;
  readonly parcels: ParcelsByCycle;
  /** Every cycle there is, the oldest first. */
  readonly cycles: readonly string[];
  /** Of the records: told where no box could be made of them. */
  readonly diagnostics: readonly Diagnostic[];
  /** The newest that has a list, or else the newest, where it is absent. */
  readonly cycle?: string;
  /** A list that is no cycle's, instead of one. */
  readonly file?: Checked<Parcels | undefined>;
  /** Instead of the habit's. */
  readonly share?: number;
}

/** What is known of the parcels asked about. */
export interface ParcelsResult {
  /** Of the lists that were read, and of records where no box could be made of them. */
  readonly diagnostics: readonly Diagnostic[];
  readonly facts?: ParcelsFacts;
}

/** One cycle's parcels, or a file's. */
export const parcelsOf = (question: ParcelsQuestion): ParcelsResult => {
  const { asOf, parcels, cycles, file, share } = question;
  const box = question.box && withReveals(question.box, parcels).value;
  const id = question.cycle ?? [...cycles].reverse().find((one) => parcels.has(one)) ?? cycles.at(-1);
  const list = id === undefined ? undefined : parcels.get(id);
  const found = file?.diagnostics ?? list?.diagnostics ?? [];
  const cycle = box?.cycles.find((one) => one.id === id);
  if (!box || (!file && !cycle)) return { diagnostics: [...question.diagnostics, ...found] };
  const wanted = { box, asOf, parcels, ...(share !== undefined && { share }) };
  if (file) return { diagnostics: found, ...(file.value && { facts: factsOfFile(wanted, file.value) }) };
  const isBroken = list !== undefined && !list.value;
  return { diagnostics: found, ...(!isBroken && cycle && { facts: factsOfCycle(wanted, cycle) }) };
};
