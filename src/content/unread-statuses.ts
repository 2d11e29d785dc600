/** What a list's status column says that no rule reads: it is named, and never silently taken as on the way. */
import { foldCase } from '../text/fold.ts';
import type { RowFinding } from './csv-findings.ts';

/** Different statuses that are told apart: a column with more of them holds something else. */
const MOST_STATUSES = 40;
/** Statuses that are named, those of most parcels first. */
const MOST_NAMED = 8;
/** Longer cells are remarks, in which a person may be named. */
const MOST_WORDS = 4;

interface UnreadStatuses {
  readonly meet: (status: string, line: number) => void;
  /** At most one. `rows` is how many the list has. */
  readonly findings: (rows: number) => readonly RowFinding[];
}

interface Met {
  readonly status: string;
  readonly line: number;
  count: number;
}

/** A remark, or a word with a number in it, may be about one person's parcel. */
const isQuotable = (status: string): boolean =>
  !/\d/.test(status) && status.split(/\s+/).length <= MOST_WORDS;

/** Collects them. */
export const unreadStatuses = (): UnreadStatuses => {
  const met = new Map<string, Met>();
  let [first, all] = [0, 0];
  return {
    meet: (status, line) => {
      first ||= line;
      all += 1;
      const key = foldCase(status);
      const known = met.get(key);
      if (known) known.count += 1;
      else if (met.size <= MOST_STATUSES) met.set(key, { status, line, count: 1 });
    },
    findings: (rows) => {
      if (all === 0) return [];
      const named = [...met.values()].filter(({ status }) => isQuotable(status));
      const told =
        met.size > MOST_STATUSES
          ? []
          : named
              .sort((a, b) => b.count - a.count || a.line - b.line)
              .slice(0, MOST_NAMED)
              .map(({ status, count }) => `\`${status}\` ${count}`);
      const list =
        told.length === 0 ? '' : ` (${told.join(', ')}${told.length < met.size ? ' and more' : ''})`;
      return [
        {
          weight: 'look at',
          rule: 'parcels-status',
          line: first,
          message: `Unexpected status in ${all} of ${rows} rows${list}, expected one that says what became of the parcel; they were counted as on the way`,
          fix: 'Say in box.md what each means, as `lost`, `returned` or `travelling` under `parcels`',
        },
      ];
    },
  };
};
