/** Which record of a cycle shows which pictures, whatever else is still to be written in it. */
import { type FieldValue, isFieldList, isFieldScalar } from '../content/write-yaml.ts';
import { type Context, itemFiles } from './context.ts';
import { type OpenRecord, openRecord, recordName } from './record.ts';

/** A picture that a record names, with the way to it. */
interface NamedPicture {
  readonly at: readonly (string | number)[];
  readonly file: string;
}

/** A record that can show pictures. */
export interface Pictured {
  readonly path: string;
  readonly record: OpenRecord;
  readonly name: string;
  readonly pictures: readonly NamedPicture[];
}

const picturesIn = (
  value: FieldValue | undefined,
  at: readonly (string | number)[] = [],
): readonly NamedPicture[] => {
  if (value === undefined || isFieldScalar(value)) return [];
  if (isFieldList(value)) return value.flatMap((one, i) => picturesIn(one, [...at, i]));
  const here =
    'file' in value && typeof value.file === 'string' && value.file !== '' ? [{ at, file: value.file }] : [];
  return [...here, ...Object.entries(value).flatMap(([key, one]) => picturesIn(one, [...at, key]))];
};

/** The records of a cycle: the whole box's, which is the cycle's own, and those of its things. */
export const picturedRecords = (context: Context): readonly Pictured[] =>
  [`cycles/${context.id}/cycle.md`, ...itemFiles(context)].flatMap((path) => {
    const record = openRecord(context.table, path);
    if (!record || record === 'other encoding') return [];
    const isWhole = path.endsWith('/cycle.md');
    return [
      {
        path,
        record,
        name: isWhole ? context.words.photos.wholeBox : recordName(context, path),
        pictures: picturesIn(record.values),
      },
    ];
  });

/** Where the whole box's own picture stands in its record. */
const isOfWholeBox = ({ at }: NamedPicture): boolean => at[0] === 'photo';

/** Which of the cycle's things have a picture, and whether the whole box has one. */
export const picturesOf = (context: Context) => {
  const { cycle } = context;
  const of = itemFiles(context).length;
  // A cycle without a fault is read already, and its records are not read once more.
  if (cycle && cycle.items.length === of)
    return {
      have: cycle.items.filter(({ pictures }) => pictures.length > 0).length,
      of,
      wholeBox: cycle.wholeBox !== undefined,
    };
  const [whole, ...things] = picturedRecords(context);
  return {
    have: things.filter(({ pictures }) => pictures.length > 0).length,
    of,
    wholeBox: whole?.pictures.some(isOfWholeBox) ?? false,
  };
};

/** The record that a photo most likely shows: the first thing without one, else the whole box. */
export const likelyShown = (records: readonly Pictured[]): string | undefined => {
  const [whole, ...things] = records;
  return (things.find(({ pictures }) => pictures.length === 0) ?? whole)?.path;
};
