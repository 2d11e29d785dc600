/** Lists that were sent and not yet said yes to. */

/** A list that waits for a yes. */
export interface Upload {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface Uploads {
  /** Keeps one, and gives what it is asked by. */
  readonly keep: (upload: Upload) => string;
  readonly of: (id: string) => Upload | undefined;
}

/** As many wait at once: nobody looks at more. */
const MOST = 4;

/** Uploads that last as long as the desk is open. */
export const openUploads = (): Uploads => {
  const kept = new Map<string, Upload>();
  let next = 1;
  return {
    keep: (upload) => {
      const id = String(next++);
      kept.set(id, upload);
      for (const old of [...kept.keys()].slice(0, -MOST)) kept.delete(old);
      return id;
    },
    of: (id) => kept.get(id),
  };
};
