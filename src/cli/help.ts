/** Help, derived from the table of commands. */
import { type Command, commands, type Option } from './commands.ts';
import { exitMeanings } from './exit-status.ts';

const WIDTH = 80;

const wrap = (text: string, indent: number): string => {
  const lines: string[] = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1) as string;
    if (line !== '' && indent + line.length + 1 + word.length > WIDTH) lines.push(word);
    else lines[lines.length - 1] = line === '' ? word : `${line} ${word}`;
  }
  return lines.join(`\n${' '.repeat(indent)}`);
};

/** Two columns, the second wrapped. */
const table = (rows: readonly (readonly [string, string])[]): string => {
  const first = Math.max(...rows.map(([term]) => term.length)) + 2;
  return rows.map(([term, text]) => `  ${term.padEnd(first)}${wrap(text, first + 2)}`).join('\n');
};

const examples = (rows: Command['examples']): string =>
  rows.map(([line, what]) => `  ${line}\n      ${what}`).join('\n');

const optionTerm = ({ name, value }: Option): string => `--${name}${value ? ` ${value}` : ''}`;

const exits = (): string =>
  `Exit status:\n${table(exitMeanings.map(([status, what]) => [String(status), what]))}`;

/** Help on the program as a whole. */
export const programHelp = (): string => `lidlore: reveal articles from the records of a subscription box

Usage: lidlore COMMAND [OPTIONS]

Commands:
${table(commands.map(({ name, summary }) => [name, summary]))}

Options:
${table([
  ['--help', 'this text; after a command, help on that command'],
  ['--version', 'the version'],
])}

Examples:
${examples(commands.flatMap((command) => command.examples.slice(0, 2)))}

${exits()}
`;

/** Help on one command. */
export const commandHelp = (
  command: Command,
): string => `${wrap(`lidlore ${command.name}: ${command.summary}`, 2)}

Usage: lidlore ${command.name} [OPTIONS]${command.operands ? ` ${command.operands}` : ''}

${wrap(command.about, 0)}

Options:
${table([...command.options.map((option) => [optionTerm(option), option.help] as const), ['--help', 'this text']])}

Examples:
${examples(command.examples)}

${exits()}
`;
