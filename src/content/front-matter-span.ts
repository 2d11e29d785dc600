/** Where the fields of a record's file stand in its text. */
import { fencesOf } from './fences.ts';

/**
 * Offsets of the fields between the two lines `---`; undefined where a file has none, or lines that are only meant for
 * them. A byte order mark is passed over, and lines may end as those of Windows do.
 */
export const frontMatterSpan = (text: string): { readonly from: number; readonly to: number } | undefined => {
  const mark = text.startsWith('\ufeff') ? 1 : 0;
  const lines = text.slice(mark).split('\n');
  const fenced = fencesOf(lines.map((line) => line.replace(/\r$/, '')));
  if (!fenced?.fields || fenced.faults.length > 0) return undefined;
  const offsetOf = (line: number): number =>
    lines.slice(0, line).reduce((offset, { length }) => offset + length + 1, mark);
  return { from: offsetOf(fenced.fields.from), to: offsetOf(fenced.fields.to) };
};
