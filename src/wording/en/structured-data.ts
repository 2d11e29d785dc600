import { capital } from '../../text/counting-words.ts';
import type { Spelling } from './spelling.ts';

/** What search engines are told in words of our own. */
export const structuredData = ({ catalogue }: Spelling) => ({
  /** The catalogue's step in the way from the first page down. */
  catalogue: capital(catalogue),
  /** What the recording of a live is called. */
  recording: (theme: string, month: string, box: string): string =>
    `${theme}: the ${month} box of ${box}, opened live`,
});
