/**
 * What people type who have never seen YAML, one rule a slip: the lines as they were meant. A rule only proposes;
 * whether its lines are taken is decided by reading them (`mend-fields.ts`).
 */
import type { Slip } from './slip.ts';
import {
  boldKey,
  bullets,
  colon,
  goesOn,
  indentation,
  missingDash,
  missingDashes,
  remarks,
  strangeBlanks,
  tabs,
} from './slips-in-lines.ts';
import { dashedField, misplaced } from './slips-in-places.ts';
import { braces, brackets, quoteAll, quotes, typographicQuotes } from './slips-in-texts.ts';

/** Every slip, those first that are surer of what was meant. */
export const SLIPS: readonly Slip[] = [
  strangeBlanks,
  tabs,
  typographicQuotes,
  remarks,
  boldKey,
  dashedField,
  bullets,
  missingDash,
  missingDashes,
  colon,
  quotes,
  braces,
  brackets,
  quoteAll,
  misplaced,
  goesOn,
  indentation,
];
