/** Findings and results in words. Gives text; the caller prints it. */
import { type Diagnostic, locationText, WEIGHTS } from '../diagnostics/diagnostic.ts';

/** `3.4 MB`, decimal units. */
export const size = (bytes: number): string =>
  bytes < 1000
    ? `${bytes} bytes`
    : bytes < 1e6
      ? `${Math.round(bytes / 1000)} kB`
      : `${(bytes / 1e6).toFixed(1)} MB`;

const byPlace = (a: Diagnostic, b: Diagnostic): number =>
  WEIGHTS.indexOf(a.weight) - WEIGHTS.indexOf(b.weight) ||
  (a.location.file < b.location.file ? -1 : a.location.file > b.location.file ? 1 : 0) ||
  a.location.line - b.location.line ||
  a.location.column - b.location.column;

/** Findings one under the other, the heaviest first; `show` turns a finding's file into a path to open. */
export const diagnosticsReport = (
  diagnostics: readonly Diagnostic[],
  show: (file: string) => string,
): string =>
  [...diagnostics]
    .sort(byPlace)
    .map(({ weight, rule, location: place, message, fix, related }) => {
      const at = (where: typeof place): string => locationText({ ...where, file: show(where.file) });
      const lines = [`${at(place)}  ${weight}: ${message}  (${rule})`];
      if (related) lines.push(`    ${at(related.location)}: ${related.message}`);
      if (fix) lines.push(`    Fix: ${fix}`);
      return `${lines.join('\n')}\n`;
    })
    .join('');

/** `2 must fix, 1 look at`; empty when there is nothing. */
export const diagnosticsCount = (diagnostics: readonly Diagnostic[]): string =>
  WEIGHTS.map(
    (weight) => [diagnostics.filter((diagnostic) => diagnostic.weight === weight).length, weight] as const,
  )
    .filter(([count]) => count > 0)
    .map(([count, weight]) => `${count} ${count !== 1 && weight === 'note' ? 'notes' : weight}`)
    .join(', ');
