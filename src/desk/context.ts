/** What every part of the desk is asked with, and what it gives. */
import { ITEM_FILE } from '../content/paths.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Compared } from '../io/compare-served.ts';
import type { Answer, Asked, SentForm } from '../io/serve.ts';
import type { BoxSettings, Cycle, Moment } from '../model/box.ts';
import { monthName } from '../model/calendar.ts';
import type { Html } from '../render/html.ts';
import type { Said } from '../wording/en/desk.ts';
import type { Wording } from '../wording/wording.ts';
import { cycleOf, type Table } from './table.ts';
import type { Uploads } from './uploads.ts';
import type { Works } from './works.ts';

/** Parts of the desk, in the order in which a cycle needs them. */
export const PANELS = [
  'cycle',
  'write',
  'photos',
  'proof',
  'parcels',
  'pieces',
  'voices',
  'moment',
  'findings',
  'ready',
] as const;
export type PanelName = (typeof PANELS)[number];

/** A comparison with what an address serves. */
export interface ComparedAt extends Compared {
  readonly address: string;
}

/** What goes on while the desk is used. */
export interface DeskWorks {
  /** Films, by their keys, with what was found on the way. */
  readonly films: Works<readonly Diagnostic[]>;
  /** Cards of a cycle, by its id. */
  readonly cards: Works<void>;
  /** What an address serves, held against the site. */
  readonly compared: Works<ComparedAt>;
}

/** One request with all that is known of the box. */
export interface Context {
  readonly table: Table;
  readonly asked: Asked;
  readonly words: Wording['desk'];
  readonly wording: Wording;
  /** Language of the wording. */
  readonly lang: string;
  /** Undefined where box.md is no record. */
  readonly settings: BoxSettings | undefined;
  /** The cycle that is worked at: its id, and the cycle itself where its records make one. */
  readonly id: string;
  readonly cycle: Cycle | undefined;
  /** The rest of the address after the panel's name. */
  readonly rest: string;
  readonly token: string;
  readonly uploads: Uploads;
  readonly works: DeskWorks;
}

/** A part of the desk as it is shown. */
export interface Shown {
  readonly kind: 'page';
  readonly heading: string;
  readonly body: Html;
  readonly status?: number;
  /** What is said once, aloud too. */
  readonly said?: string;
}

/** What a part of the desk gives: a page, a way on, or an answer as it is. */
export type Outcome =
  | Shown
  | { readonly kind: 'go'; readonly to: string; readonly said?: Said }
  | { readonly kind: 'answer'; readonly answer: Answer };

export interface Panel {
  readonly show: (context: Context) => Promise<Outcome>;
  readonly act?: (context: Context, form: SentForm) => Promise<Outcome>;
}

/** A cycle that nobody knows the reveal of yet is shown to its owner all the same. */
export const openedOf = ({ cycle, id }: Pick<Context, 'cycle' | 'id'>): string | undefined =>
  cycle && cycle.reveal === undefined ? id : undefined;

/** Whether an address says what was just done. */
export const isSaid = (word: string | null, said: Readonly<Record<Said, string>>): word is Said =>
  word !== null && Object.hasOwn(said, word);

/** The first value of a field of a form. */
export const sent = ({ fields }: SentForm, name: string): string | undefined => fields.get(name)?.[0];

/** An address of the desk: parts are names, not paths. */
export const addressOf = (...parts: readonly string[]): string =>
  `/${parts
    .flatMap((part) => part.split('/'))
    .map(encodeURIComponent)
    .join('/')}`;

/** Paths of the records of the cycle's things, in their order, those at fault among them. */
export const itemFiles = ({ table, id }: Pick<Context, 'table' | 'id'>): readonly string[] =>
  [...table.snapshot().files.keys()]
    .filter((path) => ITEM_FILE.test(path) && path.startsWith(`cycles/${id}/`))
    .sort();

/** A cycle by its month and, where it has one yet, its theme: "March 2026, First Sowings". `lang` is the page's. */
export const cycleLabel = ({ table, lang }: Pick<Context, 'table' | 'lang'>, id: string): string => {
  const month = monthName({ year: Number(id.slice(0, 4)), month: Number(id.slice(5, 7)) }, lang);
  const theme = cycleOf(table.snapshot(), id)?.theme;
  return theme ? `${month}, ${theme}` : month;
};

/** What a page is looked at in, whatever the browser prefers. */
export const SCHEMES = ['light', 'dark'] as const;
export type SchemeName = (typeof SCHEMES)[number];

/**
 * An address of a page of the site or the back room as of a moment; a cycle that is `opened` is shown all the same. With a
 * scheme the page and all that it loads are in these colours.
 */
export const shownAddress = (asOf: Moment, place: string, opened?: string, scheme?: SchemeName): string =>
  addressOf(
    'shown',
    `${asOf}${opened === undefined ? '' : `~${opened}`}${scheme === undefined ? '' : `.${scheme}`}`,
    place,
  );

/** The moment as of which a cycle's article is there: now, or the reveal's where that is later. */
export const momentToSee = ({ table, cycle }: Pick<Context, 'table' | 'cycle'>): Moment => {
  const now = Math.floor(table.now() / 60_000) * 60_000;
  return Math.max(now, cycle?.reveal ?? 0);
};
