/** What was changed: every change that was made here, to be taken back or brought again. */
import type { Entry } from '../../io/history.ts';
import type { SentForm } from '../../io/serve.ts';
import { longTime } from '../../model/calendar.ts';
import { addressOf, type Context, cycleLabel, type Outcome, type Panel, sent } from '../context.ts';
import { exactText, isRecordPath, recordName } from '../record.ts';

interface EntryView {
  readonly id: number;
  readonly when: string;
  /** What it is: a thing by its name, a cycle by its month. */
  readonly name: string;
  readonly path: string;
  readonly about: string;
  readonly isUndo: boolean;
  readonly canUndo: boolean;
  readonly earlier: string;
}

interface HistoryView {
  readonly words: Context['words'];
  readonly token: string;
  readonly at: string;
  readonly entries: readonly EntryView[];
  readonly version:
    | {
        readonly id: number;
        readonly text: string;
        readonly now: string;
        readonly name: string;
        readonly path: string;
      }
    | undefined;
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/history': HistoryView;
  }
}

const MOST_SHOWN = 100;

/** What a change was about: names of its fields. */
const aboutWords = ({ words }: Context, { about, before }: Entry): string =>
  about
    .map((one) => {
      if (before === null) return words.historyPage.newFile;
      if (one === 'story') return words.historyPage.story;
      if (one === 'whole') return words.historyPage.wholeFile;
      return words.label(one.split('.').findLast((step) => !/^\d+$/.test(step)) ?? one).toLowerCase();
    })
    .join(', ');

/** What a file is called by whoever wrote it. */
const fileName = (context: Context, path: string): string => {
  const { files } = context.words.historyPage;
  const [, cycle, rest = path] = /^cycles\/(\d{4}-\d{2})\/(.+)$/.exec(path) ?? [];
  const of = (what: string): string =>
    cycle === undefined ? what : files.of(what, cycleLabel(context, cycle));
  if (isRecordPath(path))
    return rest === 'cycle.md' && cycle ? cycleLabel(context, cycle) : recordName(context, path);
  if (rest.startsWith('photos/')) return of(files.photo(rest.slice('photos/'.length)));
  const [name = ''] = rest.toLowerCase().split('.');
  return Object.hasOwn(files.lists, name) ? of(files.lists[name] ?? '') : of(rest);
};

const show = async (context: Context): Promise<Outcome> => {
  const { table, words, lang, settings, token, id, asked } = context;
  const { history } = table;
  const undoable = history.undoable();
  const all = [...history.entries()].reverse();
  const entries = all.slice(0, MOST_SHOWN).map(
    (entry): EntryView => ({
      id: entry.id,
      when: longTime(entry.at, settings?.timeZone ?? 'UTC', lang),
      name: fileName(context, entry.path),
      path: entry.path,
      about: aboutWords(context, entry),
      isUndo: entry.undoes !== undefined,
      canUndo:
        entry.id === undoable?.id ||
        (entry.undoes === undefined && history.undoable(entry.path)?.id === entry.id),
      earlier:
        entry.before !== null && entry.path.endsWith('.md')
          ? `${addressOf('history', id)}?of=${entry.id}`
          : '',
    }),
  );
  const wanted = all.find((entry) => String(entry.id) === asked.query.get('of'));
  const bytes = wanted?.before ? history.bytesOf(wanted.before) : undefined;
  const nowBytes = wanted && table.read(wanted.path)?.bytes;
  const version =
    wanted && bytes
      ? {
          id: wanted.id,
          name: fileName(context, wanted.path),
          path: wanted.path,
          text: exactText(bytes) ?? '',
          now: (nowBytes && exactText(nowBytes)) ?? words.conflict.gone,
        }
      : undefined;
  const body = table
    .templates()
    .render('desk/history', { words, token, at: addressOf('history', id), entries, version });
  return { kind: 'page', heading: words.history, body };
};

/** Where a person came from, on this desk; the history where that is not known. */
const back = ({ id }: Context, form: SentForm): string => {
  const to = sent(form, 'back') ?? '';
  return /^\/[a-z]+\/[\w./%-]*(?:\?[\w=&%:.-]*)?$/i.test(to) && !to.startsWith('//')
    ? to
    : addressOf('history', id);
};

const act = async (context: Context, form: SentForm): Promise<Outcome> => {
  const { table } = context;
  const { history } = table;
  const action = sent(form, 'do');
  const path = sent(form, 'path') || undefined;
  const to = back(context, form);
  if (action === 'restore') {
    const entry = history.entries().find(({ id }) => String(id) === sent(form, 'entry'));
    const bytes = entry?.before ? history.bytesOf(entry.before) : undefined;
    if (!entry || !bytes) return { kind: 'go', to, said: 'nothing to undo' };
    const written = await table.save({
      path: entry.path,
      seen: table.read(entry.path)?.hash ?? null,
      bytes,
      about: ['whole'],
    });
    return { kind: 'go', to, said: written.kind === 'written' ? 'saved' : 'cannot undo' };
  }
  const chosen = sent(form, 'entry');
  const entry =
    chosen === undefined
      ? action === 'redo'
        ? history.redoable(path)
        : history.undoable(path)
      : history.entries().find(({ id }) => String(id) === chosen);
  if (!entry) return { kind: 'go', to, said: 'nothing to undo' };
  const written = await table.undo(entry.id);
  if (written?.kind === 'written') return { kind: 'go', to, said: action === 'redo' ? 'redone' : 'undone' };
  return { kind: 'go', to: `${addressOf('history', context.id)}?of=${entry.id}`, said: 'cannot undo' };
};

/** What was changed. */
export const historyPanel: Panel = { show, act };
