/** How a finding looks: where, which rule, how heavy, what was found, what was expected, and the fix. */

/** A place in a file the author wrote. `line` and `column` count from 1; columns are UTF-16 units. */
export interface Location {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** By consequence, the heaviest first: the build cannot go on; a change may be needed; probably fine, but worth knowing. */
export const weights = ['must fix', 'look at', 'note'] as const;

/** How much a finding weighs. */
export type Weight = (typeof weights)[number];

/** A finding. */
export interface Diagnostic {
  readonly weight: Weight;
  /** The rule's name, kebab-case, stable: authors search for it. */
  readonly rule: string;
  readonly location: Location;
  /** One sentence, "Unexpected `x`, expected `y`" where something else was expected. */
  readonly message: string;
  /** What to do about it, as an instruction. */
  readonly fix?: string;
  /** Whole lines of the file as they should be, in the place of those from `from` to `to`, counted from 1. */
  readonly instead?: { readonly from: number; readonly to: number; readonly lines: readonly string[] };
  /** Lines of a field as it is written: the ones to write, or invented ones where nobody can know what was meant. */
  readonly written?: { readonly lines: readonly string[]; readonly invented: boolean };
  /** Dotted path of the field that it asks for, which stands nowhere yet; the location is that of what lacks it. */
  readonly adds?: string;
  /** The other place that caused it, where there is one. */
  readonly related?: { readonly location: Location; readonly message: string };
}

/** A finding of what may need a change. */
export const lookAt = (rule: string, location: Location, message: string, fix: string): Diagnostic => ({
  weight: 'look at',
  rule,
  location,
  message,
  fix,
});

/** A finding that keeps anything from being published. */
export const mustFix = (rule: string, location: Location, message: string, fix: string): Diagnostic => ({
  weight: 'must fix',
  rule,
  location,
  message,
  fix,
});

/** Takes a finding down, in the order in which they are made. */
export type ReportFinding = (diagnostic: Diagnostic) => void;

/** What a stage gives: its value, and what it found on the way. A stage never throws at an author. */
export interface Checked<T> {
  readonly value: T;
  readonly diagnostics: readonly Diagnostic[];
}

/** Whether any finding forbids publishing. */
export const mustFixAny = (diagnostics: readonly Diagnostic[]): boolean =>
  diagnostics.some((diagnostic) => diagnostic.weight === 'must fix');

/** Findings by weight, the heaviest first; of one weight, in the order given. */
export const heaviestFirst = (diagnostics: readonly Diagnostic[]): readonly Diagnostic[] =>
  weights.flatMap((weight) => diagnostics.filter((diagnostic) => diagnostic.weight === weight));

/** `file:line:column`, as editors and terminals understand it. */
export const locationText = (location: Location): string =>
  `${location.file}:${location.line}:${location.column}`;
