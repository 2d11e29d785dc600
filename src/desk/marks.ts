/** Where a story speaks of the things of the box: as places in its text, for the page to underline. */
import { storyLine } from '../content/story-text.ts';
import type { Coverage } from '../pipeline/proof.ts';
import type { OpenRecord } from './record.ts';

/** A mention in a story: offsets in the text that its form shows, with line feeds alone, the item's number, and whether it is met in passing. */
export type Mark = readonly [from: number, to: number, item: number, isFaint: 0 | 1];

const FAINT = new Set(['same stem', 'scattered', 'head only']);

/** Mentions in a record's story, in the order of the text, none within another. */
export const marksIn = (
  { path, text, story, parts }: Pick<OpenRecord, 'path' | 'text' | 'story' | 'parts'>,
  coverage: Coverage | undefined,
): readonly Mark[] => {
  if (!coverage || story === undefined || !parts) return [];
  const first = storyLine(text);
  const skipped = parts.before.length;
  const starts = [0];
  for (let at = story.indexOf('\n'); at >= 0; at = story.indexOf('\n', at + 1)) starts.push(at + 1);
  const offsetOf = (line: number, column: number): number | undefined => {
    const start = starts[line - first];
    return start === undefined ? undefined : start + column - 1;
  };
  const all: Mark[] = [];
  for (const { number, phrases } of coverage.items)
    for (const { mentions } of phrases)
      for (const { at, passage, to, grade } of mentions) {
        const where = coverage.passages[passage];
        const last = where?.words[to];
        if (at.file !== path || !last || where.field !== undefined) continue;
        const from = offsetOf(at.line, at.column);
        const end = offsetOf(last.line, last.column);
        if (from !== undefined && end !== undefined && end >= from)
          all.push([
            from - skipped,
            end + (last.end - last.start) - skipped,
            number,
            FAINT.has(grade) ? 1 : 0,
          ]);
      }
  all.sort((a, b) => a[0] - b[0] || a[3] - b[3] || b[1] - a[1]);
  const kept: Mark[] = [];
  for (const mark of all) if (mark[0] >= (kept.at(-1)?.[1] ?? 0)) kept.push(mark);
  return kept;
};
