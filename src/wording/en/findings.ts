/**
 * How findings are shown: their weights and what leads to their fixes. What a finding says is worded where it is found,
 * or among the words of what it belongs to (`strangers.ts`).
 */
import type { Weight } from '../../diagnostics/diagnostic.ts';

const weights: Readonly<Record<Weight, string>> = {
  'must fix': 'must fix',
  'look at': 'look at',
  note: 'note',
};

/** `2 must fix, 1 look at`; empty where there are none. `counts` have the heaviest first. */
const count = (counts: readonly (readonly [Weight, number])[]): string =>
  counts
    .filter(([, some]) => some > 0)
    .map(([weight, some]) => `${some} ${some !== 1 && weight === 'note' ? 'notes' : weights[weight]}`)
    .join(', ');

/** What leads to whole lines as they should be, which follow at the margin so that they can be copied. */
const instead = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? `Line ${from} should be:` : `Lines ${from} to ${to} should be:`;

/** What leads to lines of a field that stand nowhere yet. */
const written = ({ invented }: { readonly invented: boolean }): string =>
  invented ? 'For example, written so:' : 'The lines to write:';

/** How findings are shown. */
export const findings = {
  weights,
  count,
  instead,
  written,
  fix: (text: string) => `Fix: ${text}`,
  fixLabel: 'Fix:',
};
