/** Write: each record as a form, its story in a plain text, and the article as it will be beside it. */

import { valueAt } from '../../content/field-path.ts';
import { formChanges, type Typed } from '../../content/form-values.ts';
import { storyLine } from '../../content/story-text.ts';
import { isFieldScalar } from '../../content/write-yaml.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { SentForm } from '../../io/serve.ts';
import { articlePath } from '../../render/addresses.ts';
import type { FindingView } from '../../render/findings.ts';
import { utf8Bytes } from '../../text/utf8.ts';
import {
  addressOf,
  type Context,
  isSaid,
  itemFiles,
  momentToSee,
  type Outcome,
  openedOf,
  type Panel,
  sent,
  shownAddress,
} from '../context.ts';
import { type FieldView, fieldViews, inHeaps } from '../form-view.ts';
import { marksIn } from '../marks.ts';
import { beginRecord, isBeginning, monthToBegin } from '../new-record.ts';
import {
  editedBy,
  exactText,
  fieldOf,
  isRecordPath,
  type OpenRecord,
  openRecord,
  recordName,
  recordOf,
  STORY,
  STORY_HINTS,
  saveText,
  typedStory,
} from '../record.ts';
import { toldAtField } from '../told.ts';
import type { BeginView } from './cycle.ts';

interface RecordLink {
  readonly href: string;
  readonly name: string;
  readonly note: string;
  readonly isHere: boolean;
  readonly mustFix: number;
}

interface WriteView {
  readonly words: Context['words'];
  readonly token: string;
  readonly at: string;
  readonly path: string;
  readonly seen: string;
  readonly records: readonly RecordLink[];
  readonly told: readonly FieldView[];
  readonly more: readonly FieldView[];
  readonly story: string | undefined;
  /** The line of the file on which it begins. */
  readonly storyLine: number;
  readonly storyFindings: readonly FindingView[];
  readonly findings: readonly FindingView[];
  readonly whole: string | undefined;
  readonly asOther: string | undefined;
  readonly otherEncoding: boolean;
  readonly marks: string;
  /** `part`: the anchor of what is written at. */
  readonly article: {
    readonly src: string;
    readonly part: string;
    readonly isOlder: boolean;
    readonly isThere: boolean;
  };
  readonly begin: BeginView;
  /** What the text below the fields is. */
  readonly storyLabel: string;
  /** Whether something in it is for its owner alone. */
  readonly hasAside: boolean;
  /** What asks for a story, and what else stands around it for its owner alone. */
  readonly asks: readonly string[];
  readonly notes: readonly string[];
  /** As they stand in the file, for the save. */
  readonly before: string;
  readonly after: string;
  /** Where what must be fixed is listed. */
  readonly toMend: string;
  /** The cycle to which a thing can be added; empty where there is none. */
  readonly cycleId: string;
  /** Whether the cycle has a thing already. */
  readonly hasThings: boolean;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
}

interface ConflictView {
  readonly words: Context['words'];
  readonly token: string;
  readonly at: string;
  readonly seen: string;
  readonly rows: readonly { readonly label: string; readonly mine: string; readonly theirs: string }[];
  readonly kept: readonly { readonly name: string; readonly value: string }[];
  readonly isRefused: boolean;
  /** Hash of the text that the form was made of. */
  readonly base: string;
  readonly theirsWhole: string;
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/write': WriteView;
    'desk/conflict': ConflictView;
  }
}

/** The name of the whole text in a form. */
const WHOLE = 'whole';

/** Texts that forms were made of, by hash: what was typed is held against the one that its writer saw. */
const seenTexts = new WeakMap<object, Map<string, string>>();
const MOST_SEEN = 400;

const seenOf = ({ table }: Context): Map<string, string> => {
  const known = seenTexts.get(table) ?? new Map<string, string>();
  seenTexts.set(table, known);
  return known;
};

const see = (context: Context, { hash, text }: Pick<OpenRecord, 'hash' | 'text'>): void => {
  const known = seenOf(context);
  known.delete(hash);
  known.set(hash, text);
  for (const old of [...known.keys()].slice(0, -MOST_SEEN)) known.delete(old);
};

/** The text of a hash: seen since the desk was opened, or kept by the history. */
const textOfHash = (context: Context, hash: string): string | undefined => {
  const bytes = context.table.history.bytesOf(hash);
  return seenOf(context).get(hash) ?? (bytes && exactText(bytes));
};

const recordLinks = (context: Context, mustFixIn: (path: string) => number): readonly RecordLink[] => {
  const { id, rest } = context;
  const link = (path: string, note = ''): RecordLink => ({
    href: addressOf('write', path),
    name: recordName(context, path),
    note,
    isHere: rest === path,
    mustFix: mustFixIn(path),
  });
  return [
    ...(id === '' ? [] : [link(`cycles/${id}/cycle.md`, id)]),
    ...itemFiles(context).map((path) => link(path)),
    link('box.md'),
  ];
};

/** Findings of a record by the field that they are about. */
const foundIn = (
  context: Context,
  record: OpenRecord,
  diagnostics: readonly Diagnostic[],
): ReadonlyMap<string, readonly FindingView[]> => {
  const byField = new Map<string, FindingView[]>();
  for (const diagnostic of diagnostics) {
    if (diagnostic.location.file !== record.path) continue;
    const field = fieldOf(record, diagnostic);
    byField.set(field, [...(byField.get(field) ?? []), toldAtField(context, record, diagnostic)]);
  }
  return byField;
};

/** Photos are named by their files in the cycle's folder, or in the box's own. */
const photoAddress = ({ table }: Context, path: string): ((file: string) => string) => {
  const folder = path.startsWith('cycles/') ? `${path.split('/').slice(0, 2).join('/')}/photos` : 'photos';
  return (file) => {
    const place = `${folder}/${file}`;
    return table.snapshot().files.get(place)?.photo ? addressOf('photo', place) : '';
  };
};

const articleView = async (context: Context): Promise<WriteView['article']> => {
  const { table, cycle } = context;
  const path = cycle ? `site/${articlePath(cycle)}` : 'site/index.html';
  const asOf = momentToSee(context);
  const opened = openedOf(context);
  const shown = await table.shown(asOf, opened);
  const isThere = shown.files.has(path);
  return {
    src: shownAddress(asOf, isThere ? path : 'site/index.html', opened),
    part: cycle?.items.find(({ source }) => source.file === context.rest)?.slug ?? '',
    isOlder: shown.isOlder,
    isThere: shown.files.size > 0,
  };
};

const show = async (context: Context): Promise<Outcome> => {
  const { table, words, id, rest: path, token, asked } = context;
  if (!isRecordPath(path))
    return { kind: 'go', to: addressOf('write', id === '' ? 'box.md' : `cycles/${id}/cycle.md`) };
  const article = await articleView(context);
  const diagnostics = await table.findings(momentToSee(context), openedOf(context));
  const mustFixIn = (file: string): number =>
    diagnostics.filter(({ weight, location }) => weight === 'must fix' && location.file === file).length;
  const record = openRecord(table, path);
  const at = addressOf('write', path);
  const begin = { words, token, at, month: monthToBegin(context) };
  const base = {
    ...{ words, token, at, path, article, begin, cycleId: id },
    records: recordLinks(context, mustFixIn),
    storyLabel: words.form.stories[path === 'box.md' ? 'box' : path.endsWith('/cycle.md') ? 'cycle' : 'item'],
    toMend: addressOf('findings', id),
    hasThings: itemFiles(context).length > 0,
  };
  // A folder may be without its record, and the box without its own.
  if (record === undefined) {
    const said = asked.query.get('said');
    return { kind: 'go', to: addressOf('findings', id), ...(isSaid(said, words.said) && { said }) };
  }
  const nothing = {
    seen: '',
    told: [],
    more: [],
    story: undefined,
    storyLine: 1,
    storyFindings: [],
    findings: [],
    whole: undefined,
    asOther: undefined,
    marks: '[]',
    hasAside: false,
    asks: [],
    notes: [],
    before: '',
    after: '',
    canUndo: false,
    canRedo: false,
  };
  const heading = base.records.find(({ isHere }) => isHere)?.name ?? path;
  if (record === 'other encoding')
    return {
      kind: 'page',
      heading,
      body: table.templates().render('desk/write', { ...base, ...nothing, otherEncoding: true }),
    };
  see(context, record);
  const byField = foundIn(context, record, diagnostics);
  const views = fieldViews(record.fields, record.values, {
    words,
    findings: byField,
    photo: photoAddress(context, path),
  });
  const { told, more } = inHeaps(views);
  const { parts } = record;
  const { before = '', asides = [] } = parts ?? {};
  const asText = record.values === undefined || asked.query.get('as') === 'text';
  const shownFields = new Set<string>([STORY]);
  const visit = (view: FieldView): void => {
    if (view.findings.length > 0) shownFields.add(view.name.slice(2));
    view.fields.forEach(visit);
  };
  views.forEach(visit);
  const others = [...byField].flatMap(([field, some]) => (asText || !shownFields.has(field) ? some : []));
  const coverage = path.startsWith('cycles/') ? await table.coverage(id, momentToSee(context)) : undefined;
  const body = table.templates().render('desk/write', {
    ...base,
    seen: record.hash,
    told: asText ? [] : told,
    more: asText ? [] : more,
    story: asText ? undefined : parts?.text,
    hasAside: parts?.text.includes('<!--') === true,
    asks: asides.filter((aside) => STORY_HINTS.has(aside)),
    notes: asides.filter((aside) => !STORY_HINTS.has(aside)),
    before,
    after: parts?.after ?? '',
    storyLine: storyLine(record.text) + before.split('\n').length - 1,
    storyFindings: asText ? [] : (byField.get(STORY) ?? []),
    findings: others,
    whole: asText ? record.text.replaceAll('\r\n', '\n') : undefined,
    asOther: record.values === undefined ? undefined : asText ? at : `${at}?as=text`,
    otherEncoding: false,
    marks: JSON.stringify(asText ? [] : marksIn(record, coverage)),
    canUndo: table.history.undoable(path) !== undefined,
    canRedo: table.history.redoable(path) !== undefined,
  });
  return { kind: 'page', heading, body };
};

const typedIn =
  (form: SentForm): Typed =>
  (name) => {
    const values = form.fields.get(name);
    // Boxes to tick send one each, and an empty one that says that they were on the form.
    return values && values.length > 1 ? values.filter(Boolean).join('\n') : values?.[0];
  };

const shownValue = (value: unknown): string =>
  value === undefined
    ? ''
    : typeof value === 'string'
      ? value
      : isFieldScalar(value as never)
        ? String(value)
        : JSON.stringify(value, null, 1);

/** Both versions side by side: what was typed, and what the file says now. */
const conflict = (
  context: Context,
  form: SentForm,
  base: OpenRecord | undefined,
  now: OpenRecord | undefined,
  isRefused: boolean,
): Outcome => {
  const { words, token, rest, table } = context;
  const typed = typedIn(form);
  const changes = base ? formChanges(base.fields, base.values, typed) : [];
  const story = typedStory(base ?? { story: undefined }, typed);
  const whole = typed(WHOLE);
  const rows = [
    ...changes.map(({ path, value }) => ({
      label: words.label(String(path.findLast((step) => typeof step === 'string') ?? '')),
      mine: shownValue(value),
      theirs: shownValue(now && valueAt(now.values, path)),
    })),
    ...(story !== undefined && story !== now?.story && story !== base?.story
      ? [{ label: words.form.story, mine: story, theirs: now?.story ?? '' }]
      : []),
    ...(whole === undefined ? [] : [{ label: words.form.whole, mine: whole, theirs: now?.text ?? '' }]),
  ];
  // Who has changed nothing loses nothing.
  if (rows.length === 0 && base && now && !isRefused)
    return { kind: 'go', to: addressOf('write', rest), said: 'same' };
  const kept = [...form.fields].flatMap(([name, values]) =>
    ['token', 'seen', 'base', 'do'].includes(name) ? [] : values.map((value) => ({ name, value })),
  );
  const body = table.templates().render('desk/conflict', {
    words,
    token,
    at: addressOf('write', rest),
    seen: now?.hash ?? '',
    rows,
    kept,
    isRefused,
    base: sent(form, 'base') ?? sent(form, 'seen') ?? '',
    theirsWhole: now?.text ?? words.conflict.gone,
  });
  return { kind: 'page', heading: words.conflict.heading, body, status: 409 };
};

const act = async (context: Context, form: SentForm): Promise<Outcome> => {
  const { table, rest: path } = context;
  const back = addressOf('write', path);
  const action = sent(form, 'do');
  if (isBeginning(action)) return beginRecord(context, form, action, back);
  const now = openRecord(table, path);
  if (!isRecordPath(path) || now === 'other encoding') return { kind: 'go', to: back };
  const seen = sent(form, 'seen') ?? '';
  if (!now || now.hash !== seen) {
    const seenText = textOfHash(context, seen);
    const base = seenText === undefined ? undefined : recordOf(path, seenText, seen);
    return conflict(context, form, base ?? now, now, false);
  }
  const whole = sent(form, WHOLE);
  if (whole !== undefined) {
    const eol = now.text.includes('\r\n') ? '\r\n' : '\n';
    const text = whole.replace(/\r\n?/g, '\n').replaceAll('\n', eol);
    if (text.replaceAll('\r\n', '\n') === now.text.replaceAll('\r\n', '\n'))
      return { kind: 'go', to: `${back}?as=text`, said: 'same' };
    const written = await table.save({ path, seen, bytes: utf8Bytes(text), about: ['whole'] });
    return written.kind === 'written'
      ? { kind: 'go', to: back, said: 'saved' }
      : conflict(context, form, now, now, false);
  }
  // Saying yes to one's own words over a file that changed: only what was typed is put into it.
  const ofBase = sent(form, 'base');
  const origin = ofBase ? textOfHash(context, ofBase) : undefined;
  const result = editedBy(
    origin === undefined ? now : { ...recordOf(path, origin, now.hash), text: now.text },
    typedIn(form),
  );
  if (result.kind === 'refused') return conflict(context, form, now, now, true);
  if (result.text === now.text) return { kind: 'go', to: back, said: 'same' };
  const written = await saveText(table, now, result.text, result.about);
  if (written.kind === 'written') return { kind: 'go', to: back, said: 'saved' };
  const again = openRecord(table, path);
  return conflict(context, form, now, again === 'other encoding' ? undefined : again, false);
};

/** Write. */
export const writePanel: Panel = { show, act };
