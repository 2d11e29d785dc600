/** Fields that stand where they belong to nothing: beside what they are part of, or with a dash of no list. */
import { depthOf, fieldLine, keysOf, pathAt } from './record-lines.ts';
import { takesAnyKey } from './schema-keys.ts';
import { type Mend, runAt, type Slip } from './slip.ts';

/** Whether a line could be in a field's place: its key is one of those, or there may be any that is none of the others. */
type Fits = (key: string) => boolean;

/** What a field may hold; undefined where it holds no fields. */
const insideOf = (schema: unknown, path: readonly (string | number)[]): Fits | undefined => {
  const known = keysOf(schema, path);
  if (known.length > 0) return (key) => known.includes(key);
  if (!takesAnyKey(schema, path)) return undefined;
  const beside = keysOf(schema, path.slice(0, -1));
  return (key) => !beside.includes(key);
};

/** Whether a key that is unknown where it stands belongs to the field above: it, or the last that it holds, may have it. */
export const belongsTo = (
  schema: unknown,
  paths: readonly (readonly (string | number)[])[],
  key: string,
): boolean => paths.some((path) => insideOf(schema, path)?.(key));

/** Depths that a line may have been meant to have: those of the lines above that stand deeper, and below an empty field. */
const deeperPlaces = (lines: readonly string[], at: number, depth: number): readonly number[] => {
  const depths = new Set<number>();
  for (let i = at - 1; i >= 0; i--) {
    const line = lines[i] ?? '';
    if (line.trim() === '') continue;
    const { key, value } = fieldLine(line);
    if (depthOf(line) > depth) depths.add(depthOf(line));
    else {
      const below = depthOf(line) + 2;
      if (key !== undefined && value === '' && depths.size === 0 && below > depth) depths.add(below);
      break;
    }
  }
  return [...depths].sort((a, b) => b - a);
};

/** Fields beside the one that they are part of: they are moved below it, as many as fit there. */
export const misplaced: Slip = (lines, at, schema) => {
  const { lead, key } = fieldLine(lines[at] ?? '');
  if (key === undefined || lead.includes('-')) return [];
  const depth = lead.length;
  const blanks =
    depth === 0 ? 'at the margin' : `with ${depth} ${depth === 1 ? 'blank' : 'blanks'} before it`;
  return deeperPlaces(lines, at, depth).flatMap((place): readonly Mend[] => {
    const moved = (line: string): string => (line.trim() === '' ? line : ' '.repeat(place - depth) + line);
    const path = pathAt(lines.with(at, moved(lines[at] ?? '')), at).slice(0, -1);
    const fits = insideOf(schema, path);
    if (!fits?.(key)) return [];
    const ends: number[] = [];
    for (let i = at; i < lines.length; i++) {
      const line = lines[i] ?? '';
      const one = fieldLine(line);
      if (line.trim() === '' || one.lead.search(/\S|$/) > depth) continue;
      if (one.lead.length !== depth || one.key === undefined || !fits(one.key)) break;
      let end = i;
      while (end + 1 < lines.length && (lines[end + 1] ?? '').search(/\S|$/) > depth) end += 1;
      ends.unshift(end);
    }
    const parent = path.findLast((step) => typeof step === 'string');
    return ends.map((to) => ({
      from: at,
      to,
      lines: lines.slice(at, to + 1).map(moved),
      line: at,
      column: depth + 1,
      message: `Unexpected \`${key}\` ${blanks}, expected ${place} blanks: it belongs to \`${parent}\``,
      fix: 'What belongs to a field stands below it and further to the right',
    }));
  });
};

const DASHED = /^(?:[-–—*•·]\s*)(?=(\p{L}[\p{L}\p{N}_-]*)\s*:)/u;

const signOf = (line: string): string => (/^[-–—]/.test(line) ? 'dash' : `\`${line.slice(0, 1)}\``);

/** Dashes before fields of the record itself, which is no list; what stands below the first further in comes along. */
export const dashedField: Slip = (lines, at, schema) => {
  const known = keysOf(schema, []);
  const keyOf = (line: string): string | undefined => DASHED.exec(line)?.[1];
  const isDashed = (line: string): boolean => known.includes(keyOf(line) ?? '');
  const run = runAt(lines, at, isDashed);
  const key = keyOf(lines[at] ?? '');
  if (!run || key === undefined) return [];
  const mendOf = (from: number, to: number, mended: readonly string[]): Mend => ({
    from,
    to,
    lines: mended,
    line: from,
    column: 1,
    message: `Unexpected ${signOf(lines[from] ?? '')} before \`${keyOf(lines[from] ?? '')}\`, expected the field’s name at the margin`,
    fix: 'Only the things of a list have a dash; a field of the record has none',
  });
  const bare = (line: string): string => line.replace(DASHED, '');
  let to = run.to;
  while (/^ {2}\S/.test(lines[to + 1] ?? '') && known.includes(fieldLine(lines[to + 1] ?? '').key ?? ''))
    to += 1;
  const together = lines.slice(run.from, to + 1).map((line) => (isDashed(line) ? bare(line) : line.slice(2)));
  return [
    mendOf(run.from, to, together),
    mendOf(run.from, run.to, together.slice(0, run.to - run.from + 1)),
    mendOf(at, at, [bare(lines[at] ?? '')]),
  ];
};
