/** What the published files of the index hold. */
import type { PackedIndex } from './compact.ts';

/** What an entry on the page does not say of its item: kind as facets have it, also, material, colour, basic colours. */
export type PublishedParticulars = readonly [
  kind: string,
  also: readonly string[],
  material: readonly string[],
  color: string,
  colours: readonly string[],
];

/** The first file: enough for the first answer. */
export interface HeadFile {
  readonly index: PackedIndex;
  /** In the order of the entries on the page. */
  readonly items: readonly PublishedParticulars[];
}
