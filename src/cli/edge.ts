/** The outside world as a command sees it; tests pass their own. */
export interface Stream {
  write(text: string): unknown;
}

export interface Edge {
  readonly stdout: Stream;
  readonly stderr: Stream;
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Whether somebody watches stderr on a terminal. */
  readonly isTTY: boolean;
}

/** Values of a command's options by name: text for those that take a value, true for those that do not. */
export type Values = Readonly<Record<string, string | true | undefined>>;
