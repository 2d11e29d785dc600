import { isPlain, scalarForms } from './write-yaml.ts';

/** Lines to stand in the place of others, with what is to be said of them. */
export interface Mend {
  /** First and last line that they replace, from 0. */
  readonly from: number;
  readonly to: number;
  readonly lines: readonly string[];
  /** The slip's place: its line, and its column from 1. */
  readonly line: number;
  readonly column: number;
  readonly message: string;
  /** Why, in the words of the page, and what to do. */
  readonly fix: string;
}

/** Proposes what the line at `at` may have been meant to be. */
export type Slip = (lines: readonly string[], at: number, schema: unknown) => readonly Mend[];

/** The text of a field, by its name. */
export const named = (key: string | undefined): string =>
  key === undefined ? 'the text' : `the text of \`${key}\``;

/** Between quotes: double ones, or single ones where the text has double ones or backslashes. */
export const quoted = (text: string): string => {
  const form = /["\\]/.test(text) && !text.includes("'") ? 'single' : 'double';
  return scalarForms(text, { form }, '\n')[0] ?? text;
};

/** What most texts with a sign in them need. */
export const QUOTES_ROUND = 'put double quotes round it';

/** One line in the place of one. */
export const oneLine = (
  at: number,
  line: string,
  column: number,
  message: string,
  fix: string,
): readonly Mend[] => [{ from: at, to: at, lines: [line], line: at, column, message, fix }];

/** Lines next to one another that `isOne` holds for, the one at `at` among them; none where it does not. */
export const runAt = (
  lines: readonly string[],
  at: number,
  isOne: (line: string) => boolean,
): { readonly from: number; readonly to: number } | undefined => {
  if (!isOne(lines[at] ?? '')) return undefined;
  let [from, to] = [at, at];
  while (from > 0 && isOne(lines[from - 1] ?? '')) from -= 1;
  while (to + 1 < lines.length && isOne(lines[to + 1] ?? '')) to += 1;
  return { from, to };
};

/** The same done to each line of a run. */
export const eachLine = (
  lines: readonly string[],
  at: number,
  isOne: (line: string) => boolean,
  mend: (line: string) => string,
  message: string,
  fix: string,
): readonly Mend[] => {
  const run = runAt(lines, at, isOne);
  if (!run) return [];
  const mended = lines.slice(run.from, run.to + 1).map(mend);
  return [{ ...run, lines: mended, line: run.from, column: 1, message, fix }];
};

/** A sign that is meant for the dash of a list, with the blanks around it. */
export const BULLET = /^([ \t]*)(?:[*•·‣–—][ \t]*|-(?=[\p{L}\p{N}"']))(?=\S)(?!\*)/u;

/** Whether a line begins with a sign that is meant for the dash of a list. */
export const isBullet = (line: string): boolean => BULLET.test(line);

/** The text that somebody meant who typed quotes that do not pair. */
export const unquoted = (value: string): string => {
  const [, quote = '', inner = ''] = /^(["'])(.*)$/s.exec(value.replace(/,$/, '')) ?? [];
  if (!inner.endsWith(quote)) return inner.includes(quote) ? value : inner;
  const text = inner.slice(0, -1);
  // `"One" and "two"`: the first quote within closes, so the outer ones are no pair.
  return quote === '"' && /^[^"]*\S"(?:[\s,.]|$)/.test(text) ? value : text;
};

/** A text as it is written within braces or brackets; what was typed as a number or `true` stays one. */
export const within = (text: string): string => (isPlain(text) || text === '' ? text : quoted(text));
