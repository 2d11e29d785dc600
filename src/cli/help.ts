/** Help, derived from the table of commands. */
import { DEFAULT_AIM, DEFAULT_SHARE } from '../pipeline/defaults.ts';
import { wrapLines } from '../text/wrap.ts';
import { type CommandWords, commandLine } from '../wording/en/command-line.ts';
import { type Command, commands, type Option } from './commands.ts';
import { EXIT } from './exit-status.ts';
import { HELP_WIDTH } from './widths.ts';

const { help, exits } = commandLine;
const described = commandLine.commands({ aim: DEFAULT_AIM, share: DEFAULT_SHARE });

/** What help says of a command. */
export const wordsOf = ({ name }: Command): CommandWords => described[name];

/** What help says of an option of a command; every option has its words, as a test holds. */
export const optionHelp = (command: Command, { name }: Option): string =>
  wordsOf(command).options[name] ?? '';

/** `text` in lines, those after the first indented. */
const indented = (text: string, indent: number): string =>
  wrapLines(text, HELP_WIDTH - indent).join(`\n${' '.repeat(indent)}`);

/** Two columns, the second wrapped. */
const table = (rows: readonly (readonly [string, string])[]): string => {
  const first = Math.max(...rows.map(([term]) => term.length)) + 2;
  return rows.map(([term, text]) => `  ${term.padEnd(first)}${indented(text, first + 2)}`).join('\n');
};

const examples = (rows: CommandWords['examples']): string =>
  rows.map(([line, what]) => `  ${line}\n      ${what}`).join('\n');

const optionTerm = ({ name, value }: Option): string => `--${name}${value ? ` ${value}` : ''}`;

const exitTable = (): string =>
  `${help.exitStatus}\n${table(
    (['done', 'mustFix', 'usage', 'bug', 'disk', 'stopped'] as const).map((name) => [
      String(EXIT[name]),
      exits[name],
    ]),
  )}`;

/** Help on the program as a whole. */
export const programHelp = (): string => `${help.program}

${help.usage('COMMAND [OPTIONS]')}

${help.commands}
${table(commands.map((command) => [command.name, wordsOf(command).summary]))}

${help.options}
${table([
  ['--help', help.helpOfAll],
  ['--version', help.version],
])}

${help.examples}
${examples(commands.flatMap((command) => wordsOf(command).examples.slice(0, 2)))}

${exitTable()}
`;

/** Help on one command. */
export const commandHelp = (command: Command): string => {
  const { summary, about, examples: rows } = wordsOf(command);
  const { name, operands, options } = command;
  return `${indented(help.command(name, summary), 2)}

${help.usage(`${name} [OPTIONS]${operands ? ` ${operands}` : ''}`)}

${indented(about, 0)}

${help.options}
${table([...options.map((option) => [optionTerm(option), optionHelp(command, option)] as const), ['--help', help.helpOfOne]])}

${help.examples}
${examples(rows)}

${exitTable()}
`;
};
