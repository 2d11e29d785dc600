/** How a finding looks: where, which rule, how heavy, what was found, what was expected, and the fix. */

/** A place in a file the author wrote. `line` and `column` count from 1; columns are UTF-16 units. */
export interface Location {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** By consequence, the heaviest first: the build cannot go on; a change may be needed; probably fine, but worth knowing. */
export const WEIGHTS = ['must fix', 'look at', 'note'] as const;
/** How heavy a finding is. */
export type Weight = (typeof WEIGHTS)[number];

/** One finding. */
export interface Diagnostic {
  readonly weight: Weight;
  /** The rule's name, kebab-case, stable: authors search for it. */
  readonly rule: string;
  readonly location: Location;
  /** One sentence, "Unexpected `x`, expected `y`" where something else was expected. */
  readonly message: string;
  /** What to do about it, as an instruction. */
  readonly fix?: string;
  /** The other place that caused it, where there is one. */
  readonly related?: { readonly location: Location; readonly message: string };
}

/** What a stage gives: its value, and what it found on the way. A stage never throws at an author. */
export interface Checked<T> {
  readonly value: T;
  readonly diagnostics: readonly Diagnostic[];
}

/** Whether any finding forbids publishing. */
export const mustFixAny = (diagnostics: readonly Diagnostic[]): boolean =>
  diagnostics.some((diagnostic) => diagnostic.weight === 'must fix');

/** `file:line:column`, as editors and terminals understand it. */
export const locationText = (location: Location): string =>
  `${location.file}:${location.line}:${location.column}`;
