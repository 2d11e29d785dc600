/** The words of the command line → what is asked for. */
import { parseArgs } from 'node:util';
import { nearest } from '../diagnostics/nearest.ts';
import { type Command, commands } from './commands.ts';
import type { Operands, Values } from './environment.ts';

export type CommandLine =
  | { readonly kind: 'help'; readonly command?: Command }
  | { readonly kind: 'version' }
  | {
      readonly kind: 'run';
      readonly command: Command;
      readonly values: Values;
      readonly operands: Operands;
    }
  /** The words make no sense: what to say about it. */
  | { readonly kind: 'mistake'; readonly message: string; readonly command?: Command };

const meant = (word: string | undefined): string => (word ? ` Did you mean ${word}?` : '');

/** Reads the words after the program's name. */
export const readWords = (words: readonly string[]): CommandLine => {
  const [first, ...rest] = words;
  if (first === undefined) return { kind: 'mistake', message: 'Name a command.' };
  if (first === '--help' || first === '-h' || first === 'help') {
    const command = commands.find(({ name }) => name === rest[0]);
    return command ? { kind: 'help', command } : { kind: 'help' };
  }
  if (first === '--version') return { kind: 'version' };
  const command = commands.find(({ name }) => name === first);
  if (command) return readOptions(command, rest);
  if (first.startsWith('-')) {
    const known = ['--help', '--version'];
    const ofCommand = commands.find(({ options }) =>
      options.some(({ name }) => first.split('=')[0] === `--${name}`),
    );
    if (ofCommand)
      return {
        kind: 'mistake',
        message: `Unexpected ${first}, expected a command before it: lidlore ${ofCommand.name} ${first}`,
      };
    return { kind: 'mistake', message: `Unknown option ${first}.${meant(nearest(first, known))}` };
  }
  return {
    kind: 'mistake',
    message: `Unknown command ${first}.${meant(
      nearest(
        first,
        commands.map(({ name }) => name),
      ),
    )}`,
  };
};

/** How many operands a command takes. */
const mostOperands = ({ operands }: Command): number =>
  operands === undefined ? 0 : operands.includes('…') ? Number.POSITIVE_INFINITY : 1;

const readOptions = (command: Command, words: readonly string[]): CommandLine => {
  const mistake = (message: string): CommandLine => ({ kind: 'mistake', message, command });
  const { tokens } = parseArgs({
    args: [...words],
    options: Object.fromEntries([
      ...command.options.map(({ name, value }) => [
        name,
        { type: value ? ('string' as const) : ('boolean' as const) },
      ]),
      ['help', { type: 'boolean' as const, short: 'h' }],
    ]),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  if (tokens.some((token) => token.kind === 'option' && token.name === 'help'))
    return { kind: 'help', command };
  const values: Record<string, string | true> = {};
  const operands: string[] = [];
  const most = mostOperands(command);
  for (const token of tokens) {
    if (token.kind === 'option-terminator') continue;
    if (token.kind === 'positional') {
      if (most === 0) return mistake(`Unexpected ${token.value}, expected an option.`);
      if (operands.length === most)
        return mistake(`Unexpected second ${token.value}, expected one ${command.operands}.`);
      operands.push(token.value);
      continue;
    }
    const option = command.options.find(({ name }) => name === token.name);
    if (!option) {
      const known = [...command.options.map(({ name }) => `--${name}`), '--help'];
      return mistake(`Unknown option ${token.rawName}.${meant(nearest(token.rawName, known))}`);
    }
    if (option.name in values) return mistake(`Unexpected second --${option.name}, expected it once.`);
    if (!option.value) {
      if (token.value !== undefined)
        return mistake(`Unexpected value ${token.value}: --${option.name} takes none.`);
      values[option.name] = true;
    } else {
      const taken = token.inlineValue === false && token.value !== '-' && token.value?.startsWith('-');
      if (!token.value || taken)
        return mistake(`Missing value: --${option.name} ${option.value}, ${option.help}.`);
      values[option.name] = token.value;
    }
  }
  return { kind: 'run', command, values, operands };
};
