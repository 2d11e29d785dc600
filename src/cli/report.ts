/** Findings in words. Gives text; the caller prints it. */
import { type Diagnostic, heaviestFirst, locationText, weights } from '../diagnostics/diagnostic.ts';
import { findings } from '../wording/en/findings.ts';

const byPlace = (a: Diagnostic, b: Diagnostic): number =>
  (a.location.file < b.location.file ? -1 : a.location.file > b.location.file ? 1 : 0) ||
  a.location.line - b.location.line ||
  a.location.column - b.location.column;

/** Lines that a finding gives to copy: they stand at the margin, so that they can be copied whole. */
export const linesToCopy = ({
  instead,
  written,
}: Pick<Diagnostic, 'instead' | 'written'>): readonly string[] => [
  ...(instead ? [`    ${findings.instead(instead)}`, ...instead.lines] : []),
  ...(written ? [`    ${findings.written(written)}`, ...written.lines] : []),
];

/** What an author wrote may have line breaks, and a finding is found by its lines. */
const oneLine = (text: string): string => text.replace(/\s*\n\s*/g, ' ');

/** Findings one under the other, the heaviest first; `show` turns a finding's file into a path to open. */
export const diagnosticsReport = (
  diagnostics: readonly Diagnostic[],
  show: (file: string) => string,
): string =>
  heaviestFirst([...diagnostics].sort(byPlace))
    .map(({ weight, rule, location: place, message, fix, related, ...rest }) => {
      const at = (where: typeof place): string => locationText({ ...where, file: show(where.file) });
      const lines = [`${at(place)}  ${findings.weights[weight]}: ${oneLine(message)}  (${rule})`];
      if (related) lines.push(`    ${at(related.location)}: ${oneLine(related.message)}`);
      if (fix) lines.push(`    ${findings.fix(oneLine(fix))}`);
      lines.push(...linesToCopy(rest));
      return `${lines.join('\n')}\n`;
    })
    .join('');

/** `2 must fix, 1 look at`; empty when there is nothing. */
export const diagnosticsCount = (diagnostics: readonly Diagnostic[]): string =>
  findings.count(
    weights.map((weight) => [
      weight,
      diagnostics.filter((diagnostic) => diagnostic.weight === weight).length,
    ]),
  );

/** A heading and what stands under it; nothing where there is nothing. */
export const part = (heading: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', heading, ...lines];
