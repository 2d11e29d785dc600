/** Proof: what would help, to be taken with one press; where each thing is named; the text with its marks. */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import type { SentForm } from '../../io/serve.ts';
import {
  broughtFigures,
  type Coverage,
  countFound,
  type Edit,
  isFound,
  standingText,
} from '../../pipeline/proof.ts';
import { digestOf } from '../../text/digest.ts';
import { withAdvice } from '../advice.ts';
import {
  addressOf,
  type Context,
  momentToSee,
  type Outcome,
  type Panel,
  sent,
  shownAddress,
} from '../context.ts';
import { fieldOf, type OpenRecord, openRecord, STORY, saveText } from '../record.ts';

interface AdviceView {
  readonly id: string;
  readonly words: string;
  readonly before: string;
  readonly after: string;
  readonly brings: readonly string[];
  readonly href: string;
  /** Whether it can be taken with one press. */
  readonly canTake: boolean;
}

interface MentionView {
  readonly href: string;
  readonly words: string;
}

interface ProofPanelView {
  readonly words: Context['words'];
  readonly token: string;
  readonly at: string;
  readonly verdict: string;
  readonly advice: readonly AdviceView[];
  readonly items: readonly {
    readonly name: string;
    readonly standing: string;
    readonly isBelow: boolean;
    readonly phrases: readonly {
      readonly text: string;
      readonly times: string;
      readonly places: readonly MentionView[];
    }[];
  }[];
  /** Address of the text with its marks; empty where there is none as of now. */
  readonly paper: string;
}

declare module '../../render/templates.ts' {
  interface TemplateData {
    'desk/proof': ProofPanelView;
  }
}

/** Phrases of a thing that are shown: those that people type most come first. */
const MOST_PHRASES = 4;
const MOST_PLACES = 12;

/** What an edit is asked by: it stays while the sentence does. */
const idOf = ({ at, before, after }: Edit): string => digestOf(at.file, before, after).slice(0, 12);

const recordAt = ({ table }: Context, file: string): OpenRecord | undefined => {
  const record = openRecord(table, file);
  return record === 'other encoding' ? undefined : record;
};

/** The address of the place in a record's form that a location lies in, or that what is to be written there has. */
export const placeAddress = (
  context: Context,
  location: Edit['at'],
  asked: Pick<Diagnostic, 'written' | 'adds'> = {},
): string => {
  const { file, line } = location;
  const record = recordAt(context, file);
  if (!record) return addressOf('findings', context.id);
  const field = fieldOf(record, { ...asked, location });
  const anchor =
    field === STORY
      ? `story-${line}-${location.column}`
      : field === ''
        ? ''
        : `field-${field.replaceAll('.', '-')}`;
  return `${addressOf('write', file)}${anchor === '' ? '' : `#${anchor}`}`;
};

const itemViews = (context: Context, { items, aim }: Coverage): ProofPanelView['items'] =>
  items.map(({ name, standing, thin, phrases }) => ({
    name,
    standing: context.words.proof.standing(standingText(standing, aim), String(aim)),
    isBelow: !isFound({ standing, thin }, aim),
    phrases: phrases.slice(0, MOST_PHRASES).map(({ phrase, mentions }) => ({
      text: phrase.text,
      times: context.words.proof.times(mentions.length),
      places: mentions.slice(0, MOST_PLACES).map(({ at, zone }) => ({
        href: placeAddress(context, at),
        words: `${context.wording.coverage.zones[zone]}, ${at.line}`,
      })),
    })),
  }));

const show = async (context: Context): Promise<Outcome> => {
  const { table, words, wording, id, token } = context;
  const coverage = await table.coverage(id, momentToSee(context));
  if (!coverage || coverage.items.length === 0)
    return { kind: 'go', to: addressOf('findings', id), said: 'no proof' };
  const nameOf = (slug: string): string =>
    coverage.items.find((item) => item.slug === slug)?.shortName ?? slug;
  const advice = coverage.advice.map((edit): AdviceView => {
    const record = recordAt(context, edit.at.file);
    const taken = record && withAdvice(record, edit);
    return {
      id: idOf(edit),
      words: wording.coverage.instruction(edit),
      before: edit.before,
      after: edit.after,
      brings: edit.brings.flatMap((brought) => {
        const figures = broughtFigures(brought, coverage.aim);
        return figures ? [words.proof.brings(nameOf(brought.item), figures.before, figures.after)] : [];
      }),
      href: placeAddress(context, edit.at),
      canTake: taken?.kind === 'edited',
    };
  });
  const now = Math.floor(table.now() / 60_000) * 60_000;
  const paper = `backroom/${id}/proof.html`;
  const shown = await table.shown(now);
  const at = countFound(coverage.items, coverage.aim);
  const body = table.templates().render('desk/proof', {
    words,
    token,
    at: addressOf('proof', id),
    verdict: words.cycle.proof(at, coverage.items.length),
    advice,
    items: itemViews(context, coverage),
    paper: shown.files.has(paper) ? shownAddress(now, paper) : '',
  });
  return { kind: 'page', heading: words.panels.proof, body };
};

const act = async (context: Context, form: SentForm): Promise<Outcome> => {
  const { table, id } = context;
  const back = addressOf('proof', id);
  const coverage = await table.coverage(id, momentToSee(context));
  const edit = coverage?.advice.find((one) => idOf(one) === sent(form, 'edit'));
  const record = edit && recordAt(context, edit.at.file);
  const result = record && withAdvice(record, edit);
  if (!record || result?.kind !== 'edited') return { kind: 'go', to: back, said: 'not taken' };
  const written = await saveText(table, record, result.text, result.about);
  return { kind: 'go', to: back, said: written.kind === 'written' ? 'taken' : 'not taken' };
};

/** Proof. */
export const proofPanel: Panel = { show, act };
