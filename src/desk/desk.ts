/** The desk: every request to its pages, and nothing else. */
import type { Answer, Asked, SentForm } from '../io/serve.ts';
import { monthName } from '../model/calendar.ts';
import { documentText } from '../render/document.ts';
import { type Html, html } from '../render/html.ts';
import { pageLang } from '../render/page-lang.ts';
import { desk as english, type Said } from '../wording/en/desk.ts';
import { wordingFor } from '../wording/wording.ts';
import {
  addressOf,
  type Context,
  cycleLabel,
  type DeskWorks,
  isSaid,
  momentToSee,
  type Outcome,
  openedOf,
  PANELS,
  type Panel,
  type PanelName,
  type Shown,
  sent,
} from './context.ts';
import { DESK_POLICY, fileAnswer, GUARDED, ownFile, photoFile, shownFile } from './files.ts';
import { type Gate, hasToken, keyCookie, type Refusal, refusalOf } from './gate.ts';
import { cyclePanel } from './panels/cycle.ts';
import { findingsPanel } from './panels/findings.ts';
import { historyPanel } from './panels/history.ts';
import { momentPanel } from './panels/moment.ts';
import { MOST_LIST_BYTES, parcelsPanel } from './panels/parcels.ts';
import { MOST_PHOTO_BYTES, photosPanel } from './panels/photos.ts';
import { piecesPanel } from './panels/pieces.ts';
import { proofPanel } from './panels/proof.ts';
import { readyPanel } from './panels/ready.ts';
import { voicesPanel } from './panels/voices.ts';
import { writePanel } from './panels/write.ts';
import { cycleOf, type Table } from './table.ts';
import { openUploads } from './uploads.ts';
import { openWorks } from './works.ts';

interface FrameView {
  readonly words: Context['words'];
  readonly lang: string;
  readonly title: string;
  readonly name: string;
  readonly heading: string;
  readonly id: string;
  readonly token: string;
  readonly version: number;
  readonly here: string;
  readonly address: string;
  readonly panels: readonly {
    readonly name: PanelName;
    readonly label: string;
    readonly href: string;
    readonly isHere: boolean;
    readonly note: string;
  }[];
  readonly cycles: readonly {
    readonly id: string;
    readonly href: string;
    readonly label: string;
    readonly isHere: boolean;
  }[];
  readonly month: string;
  readonly said: string;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly historyHref: string;
  readonly isHistory: boolean;
  readonly body: Html;
}

declare module '../render/templates.ts' {
  interface TemplateData {
    'desk/page': FrameView;
  }
}

const panels: Readonly<Record<PanelName | 'history', Panel>> = {
  cycle: cyclePanel,
  write: writePanel,
  photos: photosPanel,
  proof: proofPanel,
  parcels: parcelsPanel,
  pieces: piecesPanel,
  voices: voicesPanel,
  moment: momentPanel,
  findings: findingsPanel,
  ready: readyPanel,
  history: historyPanel,
};

/** Parts in which there is nothing to do before there is a cycle. */
const OF_A_CYCLE: ReadonlySet<string> = new Set<PanelName>([
  'photos',
  'proof',
  'parcels',
  'pieces',
  'voices',
]);

const isPanel = (name: string): name is PanelName | 'history' => Object.hasOwn(panels, name);

/** The longest book is a tenth of it; what is more is no record. */
const MOST_FORM_BYTES = 8_000_000;

const MOST_BYTES: Readonly<Partial<Record<string, number>>> = {
  photos: MOST_PHOTO_BYTES,
  parcels: MOST_LIST_BYTES,
};

const STATUS: Readonly<Record<Refusal | 'missing', number>> = {
  method: 405,
  host: 421,
  origin: 403,
  key: 403,
  token: 403,
  'too large': 413,
  unreadable: 400,
  missing: 404,
};

const refused = (why: Refusal | 'missing'): Answer => ({
  status: STATUS[why],
  headers: { ...GUARDED, 'content-type': 'text/html; charset=utf-8', 'content-security-policy': DESK_POLICY },
  body: documentText(
    html`<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${english.refusals.heading}</title><link rel="stylesheet" href="/desk/colours-.css"><link rel="stylesheet" href="/desk/style.css"></head><body><main><h1>${english.refusals.heading}</h1><p>${english.refusals[why]}</p><p><a href="/" target="_top">${english.refusals.home}</a></p></main></body></html>`,
  ),
});

const withSaid = (to: string, said: Said | undefined): string => {
  if (said === undefined) return to;
  const [path = '', fragment] = to.split('#');
  return `${path}${path.includes('?') ? '&' : '?'}said=${encodeURIComponent(said)}${fragment === undefined ? '' : `#${fragment}`}`;
};

/** The cycle that an address is about, or else the one that is worked at: the first still to be shown, or the newest. */
const cycleIdOf = (table: Table, path: string): string => {
  const { cycleIds, box } = table.snapshot();
  const named = /(?:^|\/)(\d{4}-\d{2})(?:\/|$)/.exec(path)?.[1];
  if (named !== undefined && cycleIds.includes(named)) return named;
  const coming = box?.cycles.find(({ reveal }) => reveal === undefined || reveal > table.now());
  return coming?.id ?? cycleIds.at(-1) ?? '';
};

/** Draws what the first page shows, so that it is there when the browser asks. Rejects as the page would. */
export const drawFirst = async (table: Table): Promise<void> => {
  const id = cycleIdOf(table, '');
  const cycle = cycleOf(table.snapshot(), id);
  await table.findings(momentToSee({ table, cycle }), openedOf({ cycle, id }));
};

const pageAnswer = async (context: Context, name: PanelName | 'history', shown: Shown): Promise<Answer> => {
  const { table, words, lang, settings, id, token, asked } = context;
  const snapshot = table.snapshot();
  const found = await table.findings(momentToSee(context), openedOf(context));
  const counts = (weight: string): number => found.filter((one) => one.weight === weight).length;
  const said = asked.query.get('said');
  const panelHref = (panel: PanelName): string =>
    panel === 'write'
      ? addressOf('write', id === '' ? 'box.md' : `cycles/${id}/cycle.md`)
      : addressOf(panel, id);
  const monthOf = (cycle: string): string =>
    monthName({ year: Number(cycle.slice(0, 4)), month: Number(cycle.slice(5, 7)) }, lang);
  const label = name === 'history' ? words.history : words.panels[name];
  const query = new URLSearchParams(asked.query);
  query.delete('said');
  const rest = query.toString();
  const page = table.templates().render('desk/page', {
    words,
    lang,
    title: words.title(label, settings?.name ?? ''),
    name: settings?.name ?? '',
    heading: shown.heading,
    id,
    token,
    version: table.version(),
    here: asked.path,
    address: `${asked.path.split('/').map(encodeURIComponent).join('/')}${rest === '' ? '' : `?${rest}`}`,
    panels: PANELS.filter((panel) => id !== '' || !OF_A_CYCLE.has(panel)).map((panel) => ({
      name: panel,
      label: words.panels[panel],
      href: panelHref(panel),
      isHere: panel === name,
      note: panel === 'findings' ? words.findingsCount(counts('must fix'), counts('look at')) : '',
    })),
    cycles: [...snapshot.cycleIds].reverse().map((cycle) => ({
      id: cycle,
      href: addressOf('cycle', cycle),
      label: cycleLabel(context, cycle),
      isHere: cycle === id,
    })),
    month: id === '' ? '' : monthOf(id),
    said: shown.said ?? (isSaid(said, words.said) ? words.said[said] : ''),
    canUndo: table.history.undoable() !== undefined,
    canRedo: table.history.redoable() !== undefined,
    historyHref: addressOf('history', id),
    isHistory: name === 'history',
    body: shown.body,
  });
  return {
    ...fileAnswer('page.html', documentText(page), { 'content-security-policy': DESK_POLICY }),
    status: shown.status ?? 200,
  };
};

/** Gives news of each new state of the folder. */
const newsOf = (table: Table): Answer => ({
  status: 200,
  headers: { ...GUARDED, 'content-type': 'text/event-stream; charset=utf-8' },
  news: (send) => {
    send('version', String(table.version()));
    return table.onChange(() => send('version', String(table.version())));
  },
});

/** Without anybody to close it, work goes on until it is done. */
const NEVER = new AbortController().signal;

/**
 * What answers every request. `gate` may change while the desk is open: its port is known only once it listens. `until`
 * stops what is at work.
 */
export const openDesk = (
  table: Table,
  gate: () => Gate,
  until: AbortSignal = NEVER,
): ((asked: Asked) => Promise<Answer>) => {
  const uploads = openUploads();
  const works: DeskWorks = { films: openWorks(until), cards: openWorks(until), compared: openWorks(until) };

  const contextOf = (asked: Asked, rest: string): Context => {
    const snapshot = table.snapshot();
    const { settings } = snapshot.facts;
    const id = cycleIdOf(table, rest);
    const lang = settings?.lang ?? 'en-GB';
    const wording = wordingFor(lang);
    return {
      table,
      asked,
      words: wording.desk,
      wording,
      lang: pageLang(lang),
      settings,
      id,
      cycle: cycleOf(snapshot, id),
      rest,
      token: gate().token,
      uploads,
      works,
    };
  };

  const answerOf = async (
    context: Context,
    name: PanelName | 'history',
    outcome: Outcome,
  ): Promise<Answer> => {
    if (outcome.kind === 'answer') return outcome.answer;
    if (outcome.kind === 'page') return pageAnswer(context, name, outcome);
    // A page that saves as one writes asks for no more than what became of it.
    const seen =
      context.asked.headers['x-desk-quiet'] === undefined ? undefined : table.read(context.rest)?.hash;
    if (seen !== undefined && outcome.said !== undefined)
      return fileAnswer(
        'saved.json',
        JSON.stringify({ seen, said: context.words.said[outcome.said], version: String(table.version()) }),
      );
    return { status: 303, headers: { ...GUARDED, location: withSaid(outcome.to, outcome.said) } };
  };

  const acted = async (context: Context, name: PanelName | 'history'): Promise<Answer> => {
    const { act } = panels[name];
    if (!act) return refused('method');
    const form: SentForm | 'too large' | 'unreadable' = await context.asked.form(
      MOST_BYTES[name] ?? MOST_FORM_BYTES,
    );
    if (form === 'too large' || form === 'unreadable') return refused(form);
    if (!hasToken(sent(form, 'token'), gate())) return refused('token');
    return answerOf(contextOf(context.asked, context.rest), name, await act(context, form));
  };

  const answer = async (asked: Asked): Promise<Answer> => {
    const cookie = keyCookie(gate(), asked);
    const why = refusalOf(asked, gate());
    // The key is kept, and the address is shown without it.
    if (cookie !== undefined && (why === undefined || why === 'key'))
      return { status: 303, headers: { ...GUARDED, location: '/', 'set-cookie': cookie } };
    if (why !== undefined) return refused(why);
    const [, name = '', rest = ''] = /^\/([^/]*)\/?(.*)$/.exec(asked.path) ?? [];
    const context = contextOf(asked, rest);
    if (asked.method === 'POST') return isPanel(name) ? acted(context, name) : refused('missing');
    if (name === '')
      return {
        status: 303,
        headers: {
          ...GUARDED,
          location: addressOf('cycle', context.id),
        },
      };
    if (name === 'news') return newsOf(table);
    if (name === 'shown') return (await shownFile(context, rest)) ?? refused('missing');
    if (name === 'photo') return (await photoFile(context, rest)) ?? refused('missing');
    if (name === 'desk') return ownFile(context, rest) ?? refused('missing');
    if (!isPanel(name)) return refused('missing');
    // What is about a cycle begins with one.
    if (context.id === '' && context.settings && OF_A_CYCLE.has(name))
      return answerOf(context, name, { kind: 'go', to: addressOf('cycle', '') });
    return answerOf(context, name, await panels[name].show(context));
  };

  return async (asked) => {
    try {
      return await answer(asked);
    } catch (error) {
      // What was held may still lean on what is remembered. A page is asked for again; a change is made once.
      if (asked.method === 'POST' || !(await table.renew(error))) throw error;
      return answer(asked);
    }
  };
};
