/** A thing that a title or a summary names and the box has not, as a finding. */
import type { Stranger } from '../../analysis/coverage/strangers/untold.ts';
import { coverage } from './coverage.ts';

/** What is found, and what to do. */
export const strangers = {
  message: ({ field, phrase }: Pick<Stranger, 'field' | 'phrase'>) =>
    `Unexpected \`${phrase}\` in the ${coverage.zones[field]}, expected a thing that is in the box; no record and no story of this cycle has it`,
  fix: 'Take it out, or write its record if it was packed; if one of the items is called so, add the word to its `also`',
};
