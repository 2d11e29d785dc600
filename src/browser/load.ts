/** The index, a file at a time, as classic scripts: a page opened from disk may load nothing else. */
import type { PackedIndex } from '../analysis/search/compact.ts';
import type { HeadFile } from '../analysis/search/published.ts';

declare global {
  /** What an index file calls to hand over what it holds. */
  var lidloreIndex: (data: unknown) => void;
}

const load = (address: string): Promise<unknown> =>
  new Promise((resolve, reject) => {
    const script = document.createElement('script');
    // A script runs just before its own load event, so what was handed over last is its own.
    let data: unknown;
    globalThis.lidloreIndex = (given) => {
      data = given;
    };
    script.onload = () => {
      script.remove();
      resolve(data);
    };
    script.onerror = () => {
      script.remove();
      reject(new Error(`Expected an index file at ${address}`));
    };
    script.src = address;
    document.head.append(script);
  });

/** The first file of the index. Rejects where it cannot be loaded. */
export const loadHead = (address: string): Promise<HeadFile> => load(address) as Promise<HeadFile>;
/** A file of the words of stories. Rejects where it cannot be loaded. */
export const loadStory = (address: string): Promise<PackedIndex> => load(address) as Promise<PackedIndex>;
