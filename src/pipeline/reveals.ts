/** The moments of reveals that parcels decide: found before anything is unsealed. */
import { DEFAULT_SHARE } from '../analysis/parcels/default-share.ts';
import { deliveredOf, deliveredReveal } from '../analysis/parcels/delivered.ts';
import { type Checked, type Diagnostic, lookAt } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Moment, Parcels } from '../model/box.ts';
import { locationIn } from '../model/location-in.ts';
import { percent } from '../text/counting-words.ts';

type Lists = ReadonlyMap<string, Checked<Parcels | undefined>>;

const revealOf = (box: Box, cycle: Cycle, lists: Lists): Checked<Moment | undefined> => {
  const list = lists.get(cycle.id);
  if (!list)
    return {
      value: undefined,
      diagnostics: [
        lookAt(
          'reveal-parcels',
          locationIn(cycle.source, 'reveal'),
          'Unexpected reveal that waits for parcels without their list, expected parcels.csv beside cycle.md; the box stays sealed',
          `Put the carrier’s export at cycles/${cycle.id}/parcels.csv, or write the moment of the reveal`,
        ),
      ],
    };
  // What keeps a list from being relied on was reported where it was read, and an empty one too.
  if (!list.value) return { value: undefined, diagnostics: [] };
  const habit = box.settings.revealHabit ?? {};
  const wanted = habit.share ?? DEFAULT_SHARE;
  const { day, parcels, gone, most, isOutOfReach } = deliveredOf(list.value.counts, wanted);
  if (day !== undefined)
    return {
      value: deliveredReveal(day, habit, box.settings.timeZone, cycle.whenDelivered?.notBefore),
      diagnostics: [],
    };
  return {
    value: undefined,
    diagnostics: isOutOfReach
      ? [
          lookAt(
            'reveal-never',
            locationIn(cycle.source, 'reveal'),
            `Unexpected ${gone} of ${parcels} parcels lost or sent back, so that at most ${percent(most, wanted)} can arrive; expected ${percent(wanted)}, and the box would stay sealed`,
            'Write the moment of the reveal, or a smaller `share` in `reveal` of box.md',
          ),
        ]
      : [],
  };
};

/** Whether any reveal of the box has to be found in a list of parcels. */
export const waitsForParcels = ({ cycles }: Box): boolean =>
  cycles.some(({ whenDelivered }) => whenDelivered !== undefined);

/**
 * The box with the moment of every reveal that its parcels decide, as far as their lists, read as of a moment, tell.
 * A list that is missing, empty or cannot be relied on gives no moment, and the seal holds.
 */
export const withReveals = (box: Box, lists: Lists): Checked<Box> => {
  if (!waitsForParcels(box)) return { value: box, diagnostics: [] };
  const diagnostics: Diagnostic[] = [];
  const cycles = box.cycles.map((cycle) => {
    if (!cycle.whenDelivered) return cycle;
    const found = revealOf(box, cycle, lists);
    diagnostics.push(...found.diagnostics);
    return cycle.reveal === found.value ? cycle : { ...cycle, reveal: found.value };
  });
  return { value: { ...box, cycles }, diagnostics };
};
