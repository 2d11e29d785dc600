/** Every command and option once: the parser and the help are both derived from this table. Their words are wording. */
import type { Environment, Operands, Values } from './environment.ts';

/** An option: a switch where it has no `value`, else what its value is called. */
export interface Option {
  readonly name: string;
  readonly value?: string;
}

/** A command of the program. */
export interface Command {
  readonly name: 'begin' | 'build' | 'proof' | 'film' | 'parcels' | 'phrases' | 'desk';
  /** What it is called on, as the usage shows it: `[CYCLE]` for at most one, `[NAME…]` for any number; absent for none. */
  readonly operands?: string;
  readonly options: readonly Option[];
  /** Gives the exit status. Loaded when called, so that help does not wait for what it does not need. */
  readonly run: (values: Values, edge: Environment, operands: Operands) => Promise<number>;
}

const content: Option = { name: 'content', value: 'DIR' };
const asOf: Option = { name: 'as-of', value: 'INSTANT' };
const json: Option = { name: 'json' };

/** Every command, in the order of the help. */
export const commands: readonly Command[] = [
  {
    name: 'begin',
    operands: '[MONTH]',
    options: [
      content,
      { name: 'name', value: 'NAME' },
      { name: 'about', value: 'SENTENCE' },
      { name: 'address', value: 'ADDRESS' },
      { name: 'currency', value: 'CURRENCY' },
      { name: 'zone', value: 'ZONE' },
      { name: 'language', value: 'LANGUAGE' },
      { name: 'join', value: 'ADDRESS' },
      { name: 'author', value: 'NAME' },
      { name: 'theme', value: 'THEME' },
      { name: 'things', value: 'NAMES' },
      { name: 'kinds', value: 'WORDS' },
      { name: 'lead', value: 'NUMBER' },
      { name: 'shipped', value: 'DATE' },
      { name: 'reveal', value: 'MOMENT' },
      { name: 'from', value: 'FILE' },
      { name: 'columns', value: 'PAIRS' },
      { name: 'photos', value: 'DIR' },
      { name: 'pairs', value: 'PAIRS' },
      { name: 'yes' },
    ],
    run: async (values, edge, operands) =>
      (await import('./begin-command.ts')).beginCommand(values, edge, operands),
  },
  {
    name: 'build',
    options: [
      content,
      { name: 'out', value: 'DIR' },
      { name: 'backroom', value: 'DIR' },
      asOf,
      { name: 'without', value: 'PART' },
      { name: 'share', value: 'N/OF' },
      json,
    ],
    run: async (values, edge) => (await import('./build-command.ts')).buildCommand(values, edge),
  },
  {
    name: 'proof',
    operands: '[CYCLE]',
    options: [content, { name: 'aim', value: 'STANDING' }, asOf, json],
    run: async (values, edge, operands) =>
      (await import('./proof-command.ts')).proofCommand(values, edge, operands),
  },
  {
    name: 'film',
    operands: '[CYCLE]',
    options: [content, { name: 'out', value: 'DIR' }, { name: 'backroom', value: 'DIR' }, asOf, json],
    run: async (values, edge, operands) =>
      (await import('./film-command.ts')).filmCommand(values, edge, operands),
  },
  {
    name: 'parcels',
    operands: '[CYCLE | FILE.csv]',
    options: [content, asOf, { name: 'share', value: 'SHARE' }, json],
    run: async (values, edge, operands) =>
      (await import('./parcels-command.ts')).parcelsCommand(values, edge, operands),
  },
  {
    name: 'desk',
    options: [content, { name: 'port', value: 'N' }, asOf, { name: 'no-open' }, { name: 'share' }],
    run: async (values, edge) => (await import('./desk-command.ts')).deskCommand(values, edge),
  },
  {
    name: 'phrases',
    operands: '[NAME…]',
    options: [{ name: 'text', value: 'FILE' }, json],
    run: async (values, edge, operands) =>
      (await import('./phrases-command.ts')).phrasesCommand(values, edge, operands),
  },
];
