/** A cycle's records as they stand, whatever is still to be written in them, and the pictures added to them. */
import { changeKey } from '../../content/change-record.ts';
import { parseFile } from '../../content/front-matter.ts';
import { ITEM_FILE } from '../../content/paths.ts';
import type { TextSource } from '../../content/sources.ts';
import { type FieldValue, isFieldValue } from '../../content/write-yaml.ts';
import { begin } from '../../wording/en/begin.ts';
import type { PhotoMatch } from './match-photos.ts';

/** A record of a thing. */
interface StandingThing extends TextSource {
  readonly name: string;
  readonly kind: string;
  readonly hasPicture: boolean;
}

export interface StandingCycle {
  readonly record: TextSource | undefined;
  readonly theme: string;
  readonly hasWholeBox: boolean;
  /** In the order of their files. */
  readonly things: readonly StandingThing[];
  /** Names of all files that a record of the cycle names. */
  readonly pictures: ReadonlySet<string>;
}

const textAt = (data: Readonly<Record<string, unknown>> | undefined, key: string): string => {
  const value = data?.[key];
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
};

/** Every file that a record names: what stands under a key `file`. */
const filesIn = (value: unknown): readonly string[] => {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) =>
    key === 'file' && typeof one === 'string' ? [one] : filesIn(one),
  );
};

/** The cycle in the texts of its folder, paths as in the content folder. */
export const standingCycle = (texts: readonly TextSource[]): StandingCycle => {
  const parsed = texts.map((source) => ({ source, data: parseFile(source).data }));
  const record = parsed.find(({ source }) => source.path.endsWith('/cycle.md'));
  return {
    record: record?.source,
    theme: textAt(record?.data, 'theme'),
    hasWholeBox: record?.data?.photo !== undefined && record.data.photo !== null,
    things: parsed
      .filter(({ source }) => ITEM_FILE.test(source.path))
      .map(({ source, data }) => ({
        ...source,
        name: textAt(data, 'name') || source.path.replace(/^.*\/(?:\d+-)?|\.md$/g, '').replaceAll('-', ' '),
        kind: textAt(data, 'kind'),
        hasPicture: filesIn(data?.image).length > 0,
      })),
    pictures: new Set(parsed.flatMap(({ data }) => filesIn(data))),
  };
};

/** A record with the pictures added that belong to it. */
interface ChangedRecord extends TextSource {
  /** Pictures added, by the names of their files. */
  readonly added: readonly string[];
}

const withPictures = (
  record: TextSource,
  files: readonly string[],
  change: (data: Readonly<Record<string, unknown>> | undefined) => FieldValue,
  key: 'image' | 'photo',
): readonly ChangedRecord[] => {
  if (files.length === 0) return [];
  const { value: text } = changeKey(record, [key], change(parseFile(record).data));
  return text === record.text ? [] : [{ path: record.path, text, added: files }];
};

const listOf = (value: unknown): readonly FieldValue[] =>
  value === undefined || value === null || !isFieldValue(value) ? [] : Array.isArray(value) ? value : [value];

/**
 * The records that take pictures, changed: each gets its photos behind those it has, with the thing's name as the text
 * until somebody describes them. `fileOf` is the name under which a photo stands in the cycle's photos/.
 */
export const addPictures = (
  { record, theme, things }: StandingCycle,
  matches: readonly PhotoMatch[],
  fileOf: (match: PhotoMatch) => string,
): readonly ChangedRecord[] => {
  const filesFor = (shows: PhotoMatch['shows']): readonly string[] =>
    matches.filter((match) => match.shows === shows).map(fileOf);
  const [whole] = filesFor('box');
  return [
    ...(record && whole !== undefined
      ? withPictures(record, [whole], () => ({ file: whole, alt: begin.hints.wholeBox(theme) }), 'photo')
      : []),
    ...things.flatMap((thing, i) => {
      const files = filesFor(i);
      const added = files.map((file) => ({ file, alt: thing.name }));
      return withPictures(thing, files, (data) => [...listOf(data?.image), ...added], 'image');
    }),
  ];
};
