/** `lidlore phrases`. */

import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { decodeAsWritten, decodeText } from '../io/decode-text.ts';
import type { NamePhrases, TextPhrase } from '../pipeline/phrases.ts';
import { codeOf } from '../text/error-code.ts';
import { commandLine } from '../wording/en/command-line.ts';
import { coverage as said } from '../wording/en/coverage.ts';
import { cellsOf, padEnd, wrappedInCells } from './cells.ts';
import type { Environment, Operands, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';
import { bytesOf } from './read-input.ts';

const { phrases: words, mistakes, help } = commandLine;

interface Mistake {
  readonly mistake: string;
}

/** A refusal of the disk in the words of somebody who named the file. */
const unreadable = (file: string, error: unknown): string => {
  const code = codeOf(error);
  if (code === 'ENOENT') return mistakes.noFile(file);
  if (code === 'EISDIR') return words.isFolder(file);
  return words.isUnreadable(file, error instanceof Error ? error.message : String(error));
};

const readText = async (file: string, edge: Environment): Promise<string | Mistake> => {
  if (file === '-' && edge.stdin.isTTY) return { mistake: words.missingText };
  try {
    const bytes = file === '-' ? await bytesOf(edge.stdin) : await readFile(resolve(edge.cwd, file));
    const text = decodeAsWritten(bytes);
    if (text.includes('\0')) return { mistake: words.isNoText(file) };
    if (text.trim() !== '') return text;
    return { mistake: words.isEmpty(file === '-' ? words.standardInput : file) };
  } catch (error) {
    return { mistake: unreadable(file, error) };
  }
};

const readNames = async (operands: Operands, edge: Environment): Promise<Operands | Mistake> => {
  const mistake = words.missingName;
  if (operands.length > 0)
    return operands.some((name) => name.trim() === '') ? { mistake } : operands.map((name) => name.trim());
  if (edge.stdin.isTTY) return { mistake };
  const lines = decodeText(await bytesOf(edge.stdin)).split('\n');
  const names = lines.map((line) => line.trim()).filter((line) => line !== '');
  if (names.length > 0) return names;
  return { mistake: words.noNames };
};

/** `text` in lines of at most `columns` cells, those after the first indented. */
const indented = (text: string, indent: number, columns: number): string =>
  wrappedInCells(text, Math.max(1, columns - indent)).join(`\n${' '.repeat(indent)}`);

/** Two columns, `indent` spaces in; the second starts on a line of its own where both are too wide for one. */
const rows = (pairs: readonly (readonly [string, string])[], indent: number, columns: number): string[] => {
  const first = Math.max(...pairs.map(([left]) => cellsOf(left))) + indent + 2;
  const narrow = first + 20 > columns;
  return pairs.map(([left, right]) => {
    const start = ' '.repeat(indent) + left;
    if (narrow) return `${start}\n${' '.repeat(indent + 2)}${indented(right, indent + 2, columns)}`;
    return padEnd(start, first) + indented(right, first, columns);
  });
};

const nameReport = ({ name, head, kind, phrases }: NamePhrases, columns: number): string => {
  const facts: (readonly [string, string])[] = [
    [words.head, head === '' ? words.noHead : words.headIs(head)],
    ...(kind === '' ? [] : [[words.kind, kind] as const]),
  ];
  const typed = phrases.map(({ text, origin }) => [text, said.nameParts[origin]] as const);
  return [
    indented(name, 0, columns),
    ...rows(facts, 2, columns),
    ...(typed.length === 0 ? [`  ${words.none}`] : [`  ${words.typed}`, ...rows(typed, 4, columns)]),
    '',
  ].join('\n');
};

const textReport = (phrases: readonly TextPhrase[]): string => {
  const wide = Math.max(words.start.length, words.end.length, String(phrases.at(-1)?.end ?? 0).length);
  const row = (start: unknown, end: unknown, text: string): string =>
    `${String(start).padStart(wide)}  ${String(end).padStart(wide)}  ${text}`;
  return [
    row(words.start, words.end, words.nounPhrase),
    // A phrase may run over a line end; the table's line may not.
    ...phrases.map(({ start, end, text }) => row(start, end, text.replace(/\s+/g, ' '))),
    '',
    words.nounPhrases(phrases.length),
    '',
  ].join('\n');
};

/** Takes names or a text apart, prints, and gives the exit status. */
export const phrasesCommand = async (
  values: Values,
  edge: Environment,
  operands: Operands,
): Promise<number> => {
  const refuse = ({ mistake }: Mistake): number => {
    edge.stderr.write(`${mistake}\n${help.see('phrases')}\n`);
    return EXIT.usage;
  };
  const print = (result: unknown, report: () => string): number => {
    edge.stdout.write(values.json === true ? `${JSON.stringify(result)}\n` : report());
    return EXIT.done;
  };
  const { phrasesOfNames, phrasesOfText } = await import('../pipeline/phrases.ts');
  if (typeof values.text === 'string') {
    if (operands.length > 0) return refuse({ mistake: words.nameBesideText(operands[0] ?? '') });
    const text = await readText(values.text, edge);
    if (typeof text !== 'string') return refuse(text);
    const phrases = await phrasesOfText(text);
    return print(phrases, () => textReport(phrases));
  }
  const names = await readNames(operands, edge);
  if ('mistake' in names) return refuse(names);
  const taken = await phrasesOfNames(names);
  const columns = edge.columns ?? Number.POSITIVE_INFINITY;
  return print(taken, () => taken.map((one) => nameReport(one, columns)).join('\n'));
};
