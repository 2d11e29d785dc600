/** Findings as the desk tells them: of what is typed into forms, and nothing of colons, quotes and lines of a file. */
import type { FormField } from '../content/form-fields.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type FindingView, findingViews } from '../render/findings.ts';
import { html } from '../render/html.ts';
import type { Context } from './context.ts';
import { fieldOf, type OpenRecord } from './record.ts';

/** The field of a form at a dotted path; numbers count within a list. */
const fieldAt = (fields: readonly FormField[], dotted: string): FormField | undefined => {
  const wanted = dotted.replace(/\.\d+(?=\.|$)/g, '');
  const keysOf = ({ path }: FormField): string => path.filter((step) => typeof step === 'string').join('.');
  return fields
    .flatMap((field) => [field, ...(field.fields ?? [])])
    .find((field) => keysOf(field) === wanted);
};

/** What a finding is about that a form can mend. */
const aboutOf = (record: OpenRecord | undefined, diagnostic: Diagnostic): FormField | undefined =>
  record?.values === undefined ? undefined : fieldAt(record.fields, fieldOf(record, diagnostic));

const keysOf = (fields: readonly FormField[]): readonly string[] =>
  fields.flatMap((field) => [field.key, ...keysOf(field.fields ?? [])]);

/** Fields by the names that their form has for them, where a text has their keys in the file. */
const inLabels = (text: string, keys: ReadonlySet<string>, { words }: Context): string =>
  text.replace(/`(\w+)(?:: …)?`/g, (code, key) => (keys.has(key) ? `“${words.label(key)}”` : code));

const viewOf = (context: Context, record: OpenRecord | undefined, diagnostic: Diagnostic): FindingView => {
  const keys = new Set(record?.values === undefined ? [] : keysOf(record.fields));
  const { message, fix } = diagnostic;
  const labelled = {
    ...diagnostic,
    message: inLabels(message, keys, context),
    ...(fix !== undefined && { fix: inLabels(fix, keys, context) }),
  };
  const [view] = findingViews([labelled], context.wording.findings);
  if (!view) throw new Error('Expected one view of one finding');
  return view;
};

const isEmpty = ({ rule }: Diagnostic): boolean => rule === 'empty-key';

/** Its form says what a text is by itself; of anything else the finding says what is expected. */
const expectedIn = ({ words }: Context, { sort, expected }: FormField): string =>
  sort === 'text' || sort === 'group' ? '' : ` ${words.form.expected(expected)}`;

const saying = ({ fix: _, ...view }: FindingView, message: string): FindingView => ({
  ...view,
  lines: [],
  message: html`${message}`,
});

/** A finding at its own field. */
export const toldAtField = (context: Context, record: OpenRecord, diagnostic: Diagnostic): FindingView => {
  const view = viewOf(context, record, diagnostic);
  const field = aboutOf(record, diagnostic);
  if (!field) return view;
  if (isEmpty(diagnostic)) return saying(view, context.words.form.empty + expectedIn(context, field));
  // The field shows its own example, or fields for each of those lines.
  return diagnostic.written ? { ...view, lines: [] } : view;
};

/** A finding in a list of several records' findings. */
export const toldInList = (
  context: Context,
  record: OpenRecord | undefined,
  diagnostic: Diagnostic,
): FindingView => {
  const view = viewOf(context, record, diagnostic);
  const field = aboutOf(record, diagnostic);
  if (!field || !isEmpty(diagnostic)) return view;
  const { form, label } = context.words;
  return saying(view, form.emptyField(label(field.key)) + expectedIn(context, field));
};
