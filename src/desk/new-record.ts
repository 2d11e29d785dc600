/** Records that are begun on the desk: as little as makes one, so that what is found says what else it needs. */
import { ITEM_FILE, MONTH } from '../content/paths.ts';
import type { SentForm } from '../io/serve.ts';
import { slugOf } from '../model/slug.ts';
import { utf8Bytes } from '../text/utf8.ts';
import { type Context, sent } from './context.ts';
import { edited, recordOf } from './record.ts';

/** A record that is to be made: where, and its first fields. */
interface NewRecord {
  readonly path: string;
  readonly fields: Readonly<Record<string, string>>;
}

/** The next thing of the cycle: its file is named by its number and its name. */
export const newThing = ({ table, id }: Context, form: SentForm): NewRecord | undefined => {
  const name = (sent(form, 'name') ?? '').trim();
  if (name === '' || id === '') return undefined;
  const numbers = [...table.snapshot().files.keys()]
    .filter((path) => ITEM_FILE.test(path) && path.startsWith(`cycles/${id}/`))
    .map((path) => Number(/\/(\d+)-[^/]*$/.exec(path)?.[1] ?? 0));
  const number = String(Math.max(0, ...numbers) + 1).padStart(2, '0');
  return { path: `cycles/${id}/items/${number}-${slugOf(name) || 'thing'}.md`, fields: { name } };
};

/** A cycle of a month. */
export const newCycle = (form: SentForm): NewRecord | undefined => {
  const month = (sent(form, 'month') ?? '').trim();
  const theme = (sent(form, 'theme') ?? '').trim();
  return MONTH.test(month) && theme !== ''
    ? { path: `cycles/${month}/cycle.md`, fields: { theme } }
    : undefined;
};

const EMPTY = '---\n---\n\n';

/** Makes a record's file, where no file is; gives its path. */
export const addRecord = async (
  { table }: Context,
  wanted: NewRecord | undefined,
): Promise<string | undefined> => {
  if (!wanted) return undefined;
  const [[key, value] = ['', '']] = Object.entries(wanted.fields);
  // The first key is written by hand, because a record without one has no place for it.
  const begun = recordOf(wanted.path, EMPTY.replace('---\n---', `---\n${key}: x\n---`), '');
  const result = edited(begun, [{ path: [key], value }]);
  if (result.kind === 'refused') return undefined;
  const written = await table.save({
    path: wanted.path,
    seen: null,
    bytes: utf8Bytes(result.text),
    about: ['whole'],
  });
  return written.kind === 'written' ? wanted.path : undefined;
};
