/** The words of the command line → what is asked for. */
import { parseArgs } from 'node:util';
import { nearest } from '../diagnostics/nearest.ts';
import { commandLine } from '../wording/en/command-line.ts';
import { type Command, commands } from './commands.ts';
import type { Operands, Values } from './environment.ts';
import { optionHelp } from './help.ts';

const { mistakes } = commandLine;

/** What the words of the command line ask for. */
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

/** Reads the words after the program's name. */
export const readWords = (words: readonly string[]): CommandLine => {
  const [first, ...rest] = words;
  if (first === undefined) return { kind: 'mistake', message: mistakes.noCommand };
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
        message: mistakes.optionFirst(first, ofCommand.name),
      };
    return { kind: 'mistake', message: mistakes.unknownOption(first, nearest(first, known)) };
  }
  return {
    kind: 'mistake',
    message: mistakes.unknownCommand(
      first,
      nearest(
        first,
        commands.map(({ name }) => name),
      ),
    ),
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
      if (most === 0) return mistake(mistakes.operand(token.value));
      if (operands.length === most)
        return mistake(mistakes.secondOperand(token.value, command.operands ?? ''));
      operands.push(token.value);
      continue;
    }
    const option = command.options.find(({ name }) => name === token.name);
    if (!option) {
      const known = [...command.options.map(({ name }) => `--${name}`), '--help'];
      return mistake(mistakes.unknownOption(token.rawName, nearest(token.rawName, known)));
    }
    if (option.name in values) return mistake(mistakes.secondOption(option.name));
    if (!option.value) {
      if (token.value !== undefined) return mistake(mistakes.needlessValue(token.value, option.name));
      values[option.name] = true;
    } else {
      const taken = token.inlineValue === false && token.value !== '-' && token.value?.startsWith('-');
      if (!token.value || taken)
        return mistake(mistakes.missingValue(option.name, option.value, optionHelp(command, option)));
      values[option.name] = token.value;
    }
  }
  return { kind: 'run', command, values, operands };
};
