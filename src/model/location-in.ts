/** Where an author wrote something, for a finding about it. */
import type { Location } from '../diagnostics/diagnostic.ts';
import type { RecordSource } from './box.ts';

/** The location of the first of these keys that the record has (`reveal`, `image.0.alt`); else the head of its file. */
export const locationIn = (
  { file, fields }: Pick<RecordSource, 'file' | 'fields'>,
  ...keys: readonly string[]
): Location =>
  keys.map((key) => fields.get(key)).find((location) => location !== undefined) ?? {
    file,
    line: 1,
    column: 1,
  };
