/** The texts of a cycle that say what is in the box, as far as a thing that is not in it is looked for. */
import type { Cycle } from '../../../model/box.ts';

/** One of them, by the key of the record that it is the value of. */
export interface NamingText {
  readonly field: 'title' | 'summary';
  readonly text: string;
}

/**
 * Title and summary; a title that was made of the items' names says nothing of its own. Descriptions are not among them:
 * they call a thing by what it is like ("a dried gourd"), and of 43 honest ones, written for a trial, 14 were at fault.
 */
export const namingTextsOf = ({ title, summary, source }: Cycle): readonly NamingText[] => [
  ...(source.fields.has('title') ? [{ field: 'title', text: title } as const] : []),
  { field: 'summary', text: summary },
];
