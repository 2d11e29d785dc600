/** This cycle: what is done, what is next and by when, and the call that holds now. */
import { CALL_KINDS, PIECES } from '../../content/vocabulary.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { SentForm } from '../../io/serve.ts';
import { dateInZone, monthName, revealDay } from '../../model/calendar.ts';
import { isSealed } from '../../model/seal.ts';
import { factsOfCycle } from '../../pipeline/parcels.ts';
import { countFound } from '../../pipeline/proof.ts';
import { longDate } from '../../text/long-date.ts';
import {
  addressOf,
  type Context,
  itemFiles,
  momentToSee,
  type Outcome,
  openedOf,
  type Panel,
  sent,
} from '../context.ts';
import { beginRecord, isBeginning, monthToBegin } from '../new-record.ts';
import { picturesOf } from '../pictures.ts';
import { edited, openRecord, saveText } from '../record.ts';
import { type Step, type StepName, type StepsInput, stepsOf } from '../steps.ts';

interface StepView {
  readonly name: string;
  readonly isDone: boolean;
  readonly state: string;
  readonly stateName: Step['state'];
  readonly day: string;
  readonly told: string;
  readonly href: string;
  /** The piece that can be noted as done; empty where the records tell by themselves. */
  readonly piece: string;
  readonly doneOn: string;
}

/** A form that begins a cycle. */
export interface BeginView {
  readonly words: Context['words'];
  readonly token: string;
  readonly at: string;
  /** Proposed, `2026-05`. */
  readonly month: string;
}

interface CycleView {
  readonly words: Context['words'];
  readonly token: string;
  readonly at: string;
  readonly month: string;
  readonly summary: string;
  readonly reveal: string;
  readonly next: StepView | undefined;
  readonly steps: readonly StepView[];
  readonly today: string;
  readonly calls: readonly {
    readonly kind: string;
    readonly label: string;
    readonly text: string;
    readonly isNow: boolean;
    readonly isThere: boolean;
  }[];
  readonly places: string;
  readonly hasJoin: boolean;
  /** Where the calls' addresses are written. */
  readonly callsAt: string;
  readonly peek: string;
  readonly begin: BeginView;
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/cycle': CycleView;
    'desk/begin': BeginView;
    'desk/first': { readonly words: Context['words']; readonly begin: BeginView };
  }
}

const WHERE: Readonly<Partial<Record<StepName, string>>> = {
  written: 'write',
  photographs: 'photos',
  sent: 'parcels',
  arrived: 'parcels',
  proof: 'proof',
};

/** The piece among the pieces that a step is done with, by its name there. */
const PIECE: Readonly<Partial<Record<StepName, string>>> = {
  invitation: 'invitation',
  live: 'run-sheet',
  article: 'article',
  letter: 'letter',
  clip: 'film',
  cards: 'cards',
};

/** Findings of a cycle's own records. */
export const findingsOf = (id: string, diagnostics: readonly Diagnostic[]): readonly Diagnostic[] =>
  diagnostics.filter(({ location }) => location.file.startsWith(`cycles/${id}/`));

/** Where there is no cycle yet, the first is begun here. */
const firstCycle = (context: Context): Outcome => {
  const { table, words, token } = context;
  const begin = { words, token, at: addressOf('cycle'), month: monthToBegin(context) };
  return {
    kind: 'page',
    heading: words.cycle.first,
    body: table.templates().render('desk/first', { words, begin }),
  };
};

/** How many things are at the aim, of a cycle that nothing can be drawn of as it is. */
const proofOf = async (context: Context): Promise<StepsInput['proof']> => {
  const coverage = await context.table.coverage(context.id, momentToSee(context));
  return coverage && { atAim: countFound(coverage.items, coverage.aim), items: coverage.items.length };
};

const show = async (context: Context): Promise<Outcome> => {
  const { table, words, wording, lang, settings, id, cycle, token } = context;
  if (settings && id === '') return firstCycle(context);
  if (!settings || !cycle) return { kind: 'go', to: addressOf('findings', id), said: 'broken' };
  const asOf = table.now();
  const { found, parcels } = await table.boxAt(asOf);
  const here = found?.box.cycles.find((one) => one.id === id) ?? cycle;
  const facts =
    (found && parcels.has(id)) || found?.box.cycles.some((one) => one.id < id && parcels.has(one.id))
      ? factsOfCycle({ box: found.box, asOf, parcels }, here)
      : undefined;
  // Drawn once for the whole page, as of the moment at which this cycle is there to be seen.
  const { drawn } = await table.shown(momentToSee(context), openedOf(context));
  const own = findingsOf(id, drawn.diagnostics);
  const read = drawn.built?.inShort.get(id) ?? (await proofOf(context));
  // What is said of some of its things is not said of the cycle.
  const proof = read && read.items > 0 && read.items === itemFiles(context).length && read;
  const mustFix = own.filter(({ weight }) => weight === 'must fix').length;
  const pictures = picturesOf(context);
  const told: Partial<Record<StepName, string>> = {
    written: pictures.of === 0 ? words.cycle.nothingYet : words.cycle.mustFix(mustFix),
    ...(pictures.of > 0 && {
      photographs: `${words.cycle.pictures(pictures.have, pictures.of)} ${pictures.wholeBox ? words.cycle.wholeBox : words.cycle.noWholeBox}`,
    }),
    proof: proof ? words.cycle.proof(proof.atAim, proof.items) : words.cycle.noProof,
    arrived: facts
      ? [wording.parcels.state(facts), wording.parcels.outlook(facts, lang)[0] ?? ''].join(' ')
      : words.parcels.none,
    ...(here.made?.letter === undefined && { letter: words.cycle.letter }),
  };
  const steps = stepsOf({
    cycle: here,
    settings,
    asOf,
    diagnostics: own,
    pictures,
    parcels: facts,
    ...(proof && { proof }),
  }).map(({ name, state, due, doneOn }): StepView => {
    const isPiece = PIECES.some((piece) => piece === name);
    return {
      name: words.cycle.steps[name],
      isDone: state === 'done',
      state: words.cycle.states[state],
      stateName: state,
      day:
        doneOn !== undefined
          ? words.cycle.doneOn(longDate(doneOn, lang))
          : due !== undefined && state !== 'done'
            ? words.cycle.due(longDate(due, lang))
            : '',
      told: told[name] ?? '',
      href: addressOf(WHERE[name] ?? 'pieces', id, ...(PIECE[name] === undefined ? [] : [PIECE[name]])),
      piece: isPiece ? name : '',
      doneOn: doneOn ?? '',
    };
  });
  const day = revealDay({ reveal: here.reveal }, settings.timeZone, lang);
  const body = table.templates().render('desk/cycle', {
    words,
    token,
    at: addressOf('cycle', id),
    month: monthName(here, lang),
    summary: here.summary === here.theme ? '' : here.summary,
    reveal: isSealed(here, asOf) ? words.cycle.lead.sealed(day) : words.cycle.lead.open(day ?? ''),
    next: steps.find(({ stateName }) => stateName === 'next') ?? steps.find(({ isDone }) => !isDone),
    steps,
    today: dateInZone(asOf, settings.timeZone),
    calls: CALL_KINDS.map((kind) => ({
      kind,
      label: words.label(kind),
      text: settings.calls[kind]?.text ?? words.cycle.callAddressMissing,
      isNow: settings.call === kind,
      isThere: settings.calls[kind] !== undefined,
    })),
    places: settings.calls.join?.places === undefined ? '' : String(settings.calls.join.places),
    hasJoin: settings.calls.join !== undefined,
    callsAt: `${addressOf('write', 'box.md')}#field-calls`,
    peek: here.peek?.text ?? '',
    begin: { at: addressOf('cycle', id), month: monthToBegin(context), token, words },
  });
  return { kind: 'page', heading: here.theme, body };
};

/** Writes some keys of a record and goes back to a part of the desk. */
export const writeKeys = async (
  { table }: Context,
  path: string,
  changes: Parameters<typeof edited>[1],
): Promise<boolean> => {
  const record = openRecord(table, path);
  if (!record || record === 'other encoding') return false;
  const result = edited(record, changes);
  if (result.kind === 'refused') return false;
  const written = await saveText(table, record, result.text, result.about);
  return written.kind === 'written';
};

const act = async (context: Context, form: SentForm): Promise<Outcome> => {
  const { id } = context;
  const back = addressOf('cycle', id);
  const action = sent(form, 'do');
  if (isBeginning(action)) return beginRecord(context, form, action, back);
  if (action === 'call') {
    const kind = sent(form, 'call') ?? '';
    const places = sent(form, 'places')?.trim();
    const isKind = CALL_KINDS.some((one) => one === kind);
    const changes = [
      ...(isKind ? [{ path: ['call'], value: kind }] : []),
      ...(places !== undefined
        ? [
            {
              path: ['calls', 'join', 'places'],
              value: /^\d{1,6}$/.test(places) ? Number(places) : undefined,
            },
          ]
        : []),
    ];
    const isWritten = await writeKeys(context, 'box.md', changes);
    return { kind: 'go', to: back, said: isWritten ? 'call' : 'same' };
  }
  const piece = sent(form, 'piece') ?? '';
  const day = sent(form, 'on') ?? '';
  if (action === 'done' && PIECES.some((one) => one === piece) && /^\d{4}-\d{2}-\d{2}$/.test(day)) {
    const isWritten = await writeKeys(context, `cycles/${id}/cycle.md`, [
      { path: ['made', piece], value: day },
    ]);
    return { kind: 'go', to: back, said: isWritten ? 'done' : 'same' };
  }
  return { kind: 'go', to: back };
};

/** This cycle. */
export const cyclePanel: Panel = { show, act };
