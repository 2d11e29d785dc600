/** The outside world as a command sees it; tests pass their own. */
export interface OutputStream {
  write(text: string): unknown;
}

/** What is typed or piped in, in the chunks it comes in. Empty when nothing is. */
export interface InputStream extends AsyncIterable<Uint8Array | string> {
  /** True when somebody would have to type: then nothing is waited for. */
  readonly isTTY?: boolean;
}

/** Somebody at a terminal who can be asked. */
export interface Dialogue {
  /** The line that was typed; undefined where they stopped, by Ctrl-C or by the end of input. */
  readonly ask: (question: string) => Promise<string | undefined>;
  readonly close: () => void;
}

export interface Environment {
  /** Gives nobody where one side of the terminal is none. Absent where nobody can ever be asked. */
  readonly dialogue?: () => Promise<Dialogue | undefined>;
  readonly stdin: InputStream;
  readonly stdout: OutputStream;
  readonly stderr: OutputStream;
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Whether somebody watches stderr on a terminal. */
  readonly isTTY: boolean;
  /** How wide stdout's terminal is; undefined where it is none, and lines are not broken. */
  readonly columns?: number | undefined;
}

/** Values of a command's options by name: text for those that take a value, true for those that do not. */
export type Values = Readonly<Record<string, string | true | undefined>>;

/** What is named by itself, without an option: `lidlore phrases NAME NAME`. */
export type Operands = readonly string[];
