/** A record's file, taken apart. */
import type { Root } from 'mdast';
import type { Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import type { TextSource } from './sources.ts';

/** What parsing a file gives, as plain data: it can be written down and read again. */
export interface ParsedFile {
  /** Plain values; absent when the front matter cannot be used. */
  readonly data?: Readonly<Record<string, unknown>>;
  /** Every key (`name`, `image.0.alt`) with its place. */
  readonly fields: readonly (readonly [string, Location])[];
  readonly body: Root;
  readonly diagnostics: readonly Diagnostic[];
}

/** A parsed file with its places at hand. */
export interface FrontMatter {
  readonly file: string;
  /** Plain values; undefined when the front matter cannot be used. */
  readonly data: Readonly<Record<string, unknown>> | undefined;
  /** Place of a key (`name`, `image.0.alt`), or of the nearest one above it. */
  readonly locationOf: (path: readonly (string | number)[]) => Location;
  readonly fields: ReadonlyMap<string, Location>;
  /** The whole file, which every place is a place in. */
  readonly text: string;
  readonly body: Root;
  readonly diagnostics: readonly Diagnostic[];
}

/** Parses, or remembers. */
export type FileReader = (source: TextSource) => FrontMatter;

/** A parsed file with its places at hand. */
export const frontMatterOf = ({ path: file, text }: TextSource, parsed: ParsedFile): FrontMatter => {
  const fields = new Map(parsed.fields);
  const placeOf = (path: readonly (string | number)[]): Location => {
    for (let length = path.length; length > 0; length--) {
      const some = path.slice(0, length);
      // One thing may stand where a list is meant: then the key has no `0` in it.
      const place = fields.get(some.join('.')) ?? fields.get(some.filter((step) => step !== 0).join('.'));
      if (place) return place;
    }
    return { file, line: 1, column: 1 };
  };
  const { data, body, diagnostics } = parsed;
  return { file, data, locationOf: placeOf, fields, text, body, diagnostics };
};
