/** The proof's figures as they are shown, on its page and on a terminal alike. */
import { isAtAim, SLACK } from './aim.ts';

/**
 * A standing with two decimals. What is below the aim is never rounded up to it: 0.697 beside an aim of 0.7 is
 * "0.69", since "0.70, below the aim of 0.7" would be taken for a mistake.
 */
export const standingText = (standing: number, aim: number): string => {
  const rounded = standing.toFixed(2);
  const misleads = !isAtAim(standing, aim) && Number(rounded) >= aim;
  return misleads ? (Math.floor(standing * 100 + SLACK) / 100).toFixed(2) : rounded;
};

/** An edit that brings an item less than this, by the way, is not made for that item's sake. */
const WORTH_SAYING = 0.005;

/** Cut off after three decimals, so that nothing is rounded up to an aim that it misses. */
const finely = (standing: number): string => (Math.floor(standing * 1000 + SLACK) / 1000).toFixed(3);

/** A standing before and after an edit, as shown, and whether the edit brings it to the aim. */
export interface BroughtFigures {
  readonly before: string;
  readonly after: string;
  readonly there: boolean;
}

/** What an edit brings an item, with three decimals where two show no difference; undefined where there is hardly any. */
export const broughtFigures = (
  brought: { readonly before: number; readonly after: number },
  aim: number,
): BroughtFigures | undefined => {
  const [before, after] = [standingText(brought.before, aim), standingText(brought.after, aim)];
  const there = isAtAim(brought.after, aim) && !isAtAim(brought.before, aim);
  if (before !== after) return { before, after, there };
  if (brought.after - brought.before < WORTH_SAYING) return undefined;
  return { before: finely(brought.before), after: finely(brought.after), there };
};

/**
 * `amounts` in thousandths, as they are shown, so that they add up to `total` as it is shown: each is cut off,
 * and what is then lacking goes to the largest remainders (Hamilton's method, as for seats in a parliament).
 */
export const addingUp = (amounts: readonly number[], total: number): readonly string[] => {
  const exact = amounts.map((amount) => amount * 1000);
  const cut = exact.map((amount) => Math.floor(amount + SLACK));
  // The total as it is shown: 0.1735 is a hair less than that, and shown as 0.173.
  const shown = Math.round(Number(total.toFixed(3)) * 1000);
  const lacking = shown - cut.reduce((sum, one) => sum + one, 0);
  const rounded = new Set(
    exact
      .map((amount, i) => ({ i, remainder: amount - (cut[i] ?? 0) }))
      .filter(({ remainder }) => remainder > SLACK)
      .sort((a, b) => b.remainder - a.remainder || a.i - b.i)
      .slice(0, Math.max(0, lacking))
      .map(({ i }) => i),
  );
  return cut.map((amount, i) => ((amount + (rounded.has(i) ? 1 : 0)) / 1000).toFixed(3));
};
