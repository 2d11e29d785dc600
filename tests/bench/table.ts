/** The table that a bench prints. */
import type { Compared, Cost } from './cost.ts';

export interface Row {
  readonly question: string;
  /** How many runs the medians are of. */
  readonly runs?: number;
  readonly floor?: Cost;
  readonly ours?: Cost;
  readonly cpuRatio?: number;
  readonly wallRatio?: number;
  readonly aim: string;
  /** Whether the aim is met; undefined where nothing was measured. */
  readonly met?: boolean;
  /** Instead of figures, why there are none; else what is to be said beside them. */
  readonly remark?: string;
}

/** A row whose aim is a ratio, of processor time and of wall alike. */
export const ratioRow = (
  question: string,
  { runs, floor, ours, cpuRatio, wallRatio }: Compared,
  most: number,
): Row => ({
  question,
  runs,
  floor,
  ours,
  cpuRatio,
  wallRatio,
  aim: `≤ ${most} ×`,
  met: cpuRatio <= most && wallRatio <= most,
});

const seconds = (value: number): string => (value < 10 ? value.toFixed(3) : value.toFixed(1));

const costs = (cost: Cost | undefined): string =>
  cost ? `${seconds(cost.cpu)} / ${seconds(cost.wall)}` : '';

const times = (ratio: number | undefined): string => (ratio === undefined ? '' : `${ratio.toFixed(2)} ×`);

const HEAD = ['question', 'floor', 'ours', 'cpu', 'wall', 'aim', 'met', 'runs', ''];

/** Lines of a Markdown table; times are in seconds, processor time before wall. */
export const tableLines = (rows: readonly Row[]): readonly string[] => {
  const cells = rows.map((row) => [
    row.question,
    costs(row.floor),
    costs(row.ours),
    times(row.cpuRatio),
    times(row.wallRatio),
    row.aim,
    row.met === undefined ? '–' : row.met ? 'yes' : 'NO',
    row.runs === undefined ? '' : String(row.runs),
    row.remark ?? '',
  ]);
  const widths = HEAD.map((head, i) =>
    Math.max(...[head, ...cells.map((row) => row[i] ?? '')].map((c) => c.length)),
  );
  const line = (row: readonly string[]): string =>
    `| ${row.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join(' | ')} |`;
  return [line(HEAD), line(widths.map((width) => '-'.repeat(width))), ...cells.map(line)];
};
