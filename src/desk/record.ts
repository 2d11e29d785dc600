/** A record on the desk: its text as it stands, its values, and a new text with what was typed into its form. */
import { changeKey } from '../content/change-record.ts';
import { type FieldPath, valueAt } from '../content/field-path.ts';
import { type FormField, formFieldsOf } from '../content/form-fields.ts';
import { type FormChange, formChanges, type Typed } from '../content/form-values.ts';
import { parseFile } from '../content/front-matter.ts';
import { ITEM_FILE } from '../content/paths.ts';
import { type FrontMatter, frontMatterOf } from '../content/record-file.ts';
import { type StoryParts, storyOfParts, storyParts } from '../content/story-asides.ts';
import { storyLine, storyOf, withStory } from '../content/story-text.ts';
import { type FieldValue, isFieldValue } from '../content/write-yaml.ts';
import { type Diagnostic, mustFixAny } from '../diagnostics/diagnostic.ts';
import { utf8Bytes } from '../text/utf8.ts';
import { begin } from '../wording/en/begin.ts';
import { ownersNote } from '../workspace/begin/record-text.ts';
import type { Context } from './context.ts';
import type { Table } from './table.ts';

/** A record's file, open on the desk. */
export interface OpenRecord {
  readonly path: string;
  readonly text: string;
  readonly hash: string;
  readonly fields: readonly FormField[];
  readonly record: FrontMatter;
  /** Undefined where the fields cannot be read, and the whole text is mended instead. */
  readonly values: FieldValue | undefined;
  readonly story: string | undefined;
  /** What the form shows of it, and what stands around that for its owner alone. */
  readonly parts: StoryParts | undefined;
}

const CYCLE_FILE = /^cycles\/[^/]+\/cycle\.md$/;

/** Whether a path is that of a record, and of nothing else. */
export const isRecordPath = (path: string): boolean =>
  path === 'box.md' || CYCLE_FILE.test(path) || ITEM_FILE.test(path);

/** Bytes as the text that gives the very same bytes again; undefined where they are no UTF-8. */
export const exactText = (bytes: Uint8Array): string | undefined => {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
};

/** A record's text with all that the desk knows of it. */
export const recordOf = (path: string, text: string, hash: string): OpenRecord => {
  const source = { path, text: text.replace(/^\ufeff/, '').replaceAll('\r\n', '\n') };
  const parsed = parseFile(source);
  const record = frontMatterOf(source, parsed);
  const story = storyOf(text);
  const isReadable = !mustFixAny(parsed.diagnostics) && story !== undefined;
  return {
    path,
    text,
    hash,
    fields: formFieldsOf(path),
    record,
    values: isReadable && isFieldValue(parsed.data) ? parsed.data : undefined,
    story,
    parts: story === undefined ? undefined : storyParts(story),
  };
};

/** What a record is called on the desk: a thing by its name, or by its file where it has none yet. */
export const recordName = (
  { table, words, id }: Pick<Context, 'table' | 'words' | 'id'>,
  path: string,
): string => {
  if (path === 'box.md') return words.form.box;
  if (CYCLE_FILE.test(path))
    return path.startsWith(`cycles/${id}/`)
      ? words.form.cycleItself
      : `${words.form.cycleItself} ${path.split('/')[1]}`;
  const record = openRecord(table, path);
  const name = record && record !== 'other encoding' ? valueAt(record.values, ['name']) : undefined;
  return typeof name === 'string' && name !== ''
    ? name
    : path.slice(path.lastIndexOf('/') + 1).replace(/\.md$/, '');
};

/** The records that were read last, by path: one is asked for by its page, its save and the list beside it. */
const lastRead = new WeakMap<Table, Map<string, OpenRecord>>();

const remembered = (table: Table): Map<string, OpenRecord> => {
  const known = lastRead.get(table) ?? new Map<string, OpenRecord>();
  lastRead.set(table, known);
  return known;
};

/** More than the longest box has in a cycle, and few enough to be held. */
const MOST_READ = 100;

/** A record as it stands on the disk; `other encoding` for one that no save could give back as it was. */
export const openRecord = (table: Table, path: string): OpenRecord | 'other encoding' | undefined => {
  if (!isRecordPath(path)) return undefined;
  const state = table.read(path);
  if (!state) return undefined;
  const known = remembered(table);
  const before = known.get(path);
  if (before?.hash === state.hash) return before;
  const text = exactText(state.bytes);
  if (text === undefined) return 'other encoding';
  const record = recordOf(path, text, state.hash);
  known.delete(path);
  known.set(path, record);
  for (const old of [...known.keys()].slice(0, -MOST_READ)) known.delete(old);
  return record;
};

/** A text with changes made in it, or why it cannot be. */
export type Edited =
  | { readonly kind: 'edited'; readonly text: string; readonly about: readonly string[] }
  | { readonly kind: 'refused'; readonly diagnostics: readonly Diagnostic[] };

/** What the history says of the story. */
export const STORY = 'story';

/** A record's text with some keys changed, and its story where another one is given. */
export const edited = (
  { path, text, story }: Pick<OpenRecord, 'path' | 'text' | 'story'>,
  changes: readonly FormChange[],
  newStory?: string,
): Edited => {
  let now = text;
  for (const change of changes) {
    const { value, diagnostics } = changeKey({ path, text: now }, change.path, change.value);
    if (mustFixAny(diagnostics)) return { kind: 'refused', diagnostics };
    now = value;
  }
  const about = changes.map((change) => change.path.join('.'));
  const told = newStory === undefined ? undefined : unified(newStory);
  if (told === undefined || told === story) return { kind: 'edited', text: now, about };
  const whole = withStory(now, told);
  return whole === undefined
    ? { kind: 'refused', diagnostics: [] }
    : { kind: 'edited', text: whole, about: [...about, STORY] };
};

/** Names under which a form carries what stands before and after the text that it shows, as it was when it was shown. */
export const STORY_BEFORE = 'story.before';
export const STORY_AFTER = 'story.after';

const { boxBody, cycleBody, itemBody } = begin.hints;

/** What a record that was begun asks for in the place of its story. */
export const STORY_HINTS: ReadonlySet<string> = new Set([boxBody, cycleBody, itemBody]);

const withoutStoryHints = (before: string): string =>
  [...STORY_HINTS].reduce((text, hint) => {
    const note = ownersNote(hint);
    const at = text.indexOf(note);
    return at < 0 ? text : text.slice(0, at) + text.slice(at + note.length).trimStart();
  }, before);

const unified = (text: string): string => text.replace(/\r\n?/g, '\n');

/**
 * The whole story that a form sends: what was typed, between what the form did not show. What asked for a story goes with
 * the first words of one, because it is answered; every other comment keeps its bytes, because only its owner knows what it
 * is good for, and no page shows it.
 */
export const typedStory = ({ story }: Pick<OpenRecord, 'story'>, typed: Typed): string | undefined => {
  const sent = typed(STORY);
  if (sent === undefined) return undefined;
  const [before, text, after] = [typed(STORY_BEFORE) ?? '', sent, typed(STORY_AFTER) ?? ''].map(unified) as [
    string,
    string,
    string,
  ];
  const asShown = before + text + after;
  if (asShown === story || asShown === text) return asShown;
  return storyOfParts({ before: text.trim() === '' ? before : withoutStoryHints(before), text, after });
};

/** A record's text with what was typed into its form. */
export const editedBy = (record: OpenRecord, typed: Typed): Edited =>
  edited(record, formChanges(record.fields, record.values, typed), typedStory(record, typed));

/** Saves a text over the one that was seen. */
export const saveText = (
  table: Table,
  { path, hash }: Pick<OpenRecord, 'path' | 'hash'>,
  text: string,
  about: readonly string[],
) => table.save({ path, seen: hash, bytes: utf8Bytes(text), about });

/** A dotted path step by step: numbers are places in lists. */
export const pathOf = (dotted: string): FieldPath =>
  dotted.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));

type Placed = Pick<Diagnostic, 'location' | 'written' | 'adds'>;

const holds = (fields: readonly FormField[], [step, ...rest]: readonly string[]): boolean => {
  const field = fields.find(({ key }) => key === step);
  const further = rest.filter((one) => !/^\d+$/.test(one));
  return field !== undefined && (further.length === 0 || holds(field.fields ?? [], further));
};

/** The field that a finding asks for, or whose lines it shows, where it stands nowhere yet: the place is only that of the record. */
const fieldToAdd = ({ fields, values }: OpenRecord, { adds, written }: Placed): string | undefined => {
  const key = adds ?? /^[\w-]+(?=:)/.exec(written?.lines[0] ?? '')?.[0];
  return key !== undefined && valueAt(values, pathOf(key)) === undefined && holds(fields, key.split('.'))
    ? key
    : undefined;
};

/** The field that a finding is about: its dotted path, `story` for the text below, empty for the record as a whole. */
export const fieldOf = (open: OpenRecord, diagnostic: Placed): string => {
  const { text, record } = open;
  const { location } = diagnostic;
  if (location.line >= storyLine(text) && location.line > 1) return STORY;
  const added = fieldToAdd(open, diagnostic);
  if (added !== undefined) return added;
  let best = '';
  let at = { line: 0, column: 0 };
  for (const [path, { line, column }] of record.fields) {
    const isBefore = line < location.line || (line === location.line && column <= location.column);
    const isLater = line > at.line || (line === at.line && column >= at.column);
    if (isBefore && isLater) {
      best = path;
      at = { line, column };
    }
  }
  return best;
};
