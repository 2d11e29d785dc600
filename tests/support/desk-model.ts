/** What files and history should be after each change of a desk and of other programs: said again, without the desk's code. */

/** A change that was made by the desk; null where there was, or is, no file. */
export interface ModelChange {
  readonly path: string;
  readonly before: string | null;
  readonly after: string | null;
  /** The change that this one takes back, or brings again. */
  readonly reverses?: ModelChange;
}

export interface DeskModel {
  readonly files: ReadonlyMap<string, string>;
  readonly changes: readonly ModelChange[];
  readonly textOf: (path: string) => string | null;
  /** Another program writes a file, or takes it away. */
  readonly outside: (path: string, text: string | null) => void;
  /** The desk writes a file: the same text is no change. */
  readonly save: (path: string, text: string | null) => void;
  /** The newest change that is not taken back and whose file is as it left it. */
  readonly undoable: (path?: string) => ModelChange | undefined;
  /** The newest taking back that is not brought again and whose file is as it left it. */
  readonly redoable: () => ModelChange | undefined;
  /** Takes a change back, or brings again what was taken back. */
  readonly reverse: (change: ModelChange) => void;
  readonly isReversed: (change: ModelChange) => boolean;
}

/** A model of a folder with these files, of which the desk has changed none. */
export const deskModel = (given: Readonly<Record<string, string>>): DeskModel => {
  const files = new Map(Object.entries(given));
  const changes: ModelChange[] = [];
  const reversed = new Set<ModelChange>();
  const textOf = (path: string): string | null => files.get(path) ?? null;
  const outside: DeskModel['outside'] = (path, text) => {
    if (text === null) files.delete(path);
    else files.set(path, text);
  };
  const note = (change: ModelChange): void => {
    changes.push(change);
    outside(change.path, change.after);
  };
  const isFree = (change: ModelChange): boolean =>
    !reversed.has(change) && textOf(change.path) === change.after;
  return {
    files,
    changes,
    textOf,
    outside,
    save: (path, after) => {
      const before = textOf(path);
      if (before !== after) note({ path, before, after });
    },
    undoable: (path) =>
      changes.findLast((one) => !one.reverses && isFree(one) && (path === undefined || one.path === path)),
    redoable: () => changes.findLast((one) => one.reverses && !one.reverses.reverses && isFree(one)),
    reverse: (change) => {
      reversed.add(change);
      if (change.reverses) reversed.delete(change.reverses);
      note({ path: change.path, before: change.after, after: change.before, reverses: change });
    },
    isReversed: (change) => reversed.has(change),
  };
};

/** Every order of some things. */
export const ordersOf = <T>(some: readonly T[]): readonly (readonly T[])[] =>
  some.length < 2
    ? [some]
    : some.flatMap((first, i) => ordersOf(some.toSpliced(i, 1)).map((rest) => [first, ...rest]));
