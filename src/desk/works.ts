/** Work that goes on while the desk is used: one of a name at a time, told how far it is, and stopped when it is no longer wanted. */

/** What a piece of work is told with. */
export interface Working {
  readonly onProgress: (done: number, total: number) => void;
  readonly signal: AbortSignal;
}

/** How a piece of work stands. `total` is 0 while nobody knows how much there is. */
export type WorkState<Value> =
  | { readonly kind: 'at work'; readonly done: number; readonly total: number }
  | { readonly kind: 'done'; readonly value: Value }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly said: string };

/** Works of one sort. */
export interface Works<Value> {
  /** Begins it, unless it is being done. */
  readonly start: (name: string, run: (working: Working) => Promise<Value>) => void;
  readonly stop: (name: string) => void;
  /** How it stands, or how it ended the last time. */
  readonly stateOf: (name: string) => WorkState<Value> | undefined;
}

interface Held<Value> {
  readonly state: WorkState<Value>;
  readonly controller: AbortController;
}

/** Works of one sort; all of them are stopped when `until` says so. */
export const openWorks = <Value>(until: AbortSignal): Works<Value> => {
  const held = new Map<string, Held<Value>>();
  const stopAll = (): void => {
    for (const { controller } of held.values()) controller.abort();
  };
  until.addEventListener('abort', stopAll);
  return {
    stateOf: (name) => held.get(name)?.state,
    stop: (name) => held.get(name)?.controller.abort(),
    start: (name, run) => {
      if (until.aborted || held.get(name)?.state.kind === 'at work') return;
      const controller = new AbortController();
      const { signal } = controller;
      const set = (state: WorkState<Value>): unknown => held.set(name, { state, controller });
      set({ kind: 'at work', done: 0, total: 0 });
      run({ signal, onProgress: (done, total) => set({ kind: 'at work', done, total }) }).then(
        (value) => set(signal.aborted ? { kind: 'stopped' } : { kind: 'done', value }),
        (error: unknown) =>
          set(
            signal.aborted
              ? { kind: 'stopped' }
              : { kind: 'failed', said: error instanceof Error ? error.message : String(error) },
          ),
      );
    },
  };
};
