/** `lidlore phrases`. */

import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { decodeAsWritten, decodeText } from '../io/decode-text.ts';
import type { NamePhrases, TextPhrase } from '../pipeline/phrases.ts';
import { counted } from '../text/counting-words.ts';
import type { Environment, InputStream, Operands, Values } from './environment.ts';
import { EXIT } from './exit-status.ts';

interface Mistake {
  readonly mistake: string;
}

const EXAMPLE = "lidlore phrases 'Sage enamel watering can, 1.2 litre'";

const bytesOf = async (source: InputStream): Promise<Uint8Array> => {
  const chunks: Uint8Array[] = [];
  for await (const chunk of source)
    chunks.push(typeof chunk === 'string' ? new TextEncoder().encode(chunk) : chunk);
  return Buffer.concat(chunks);
};

/** A refusal of the disk in the words of somebody who named the file. */
const unreadable = (file: string, error: unknown): string => {
  const code = error instanceof Error && 'code' in error ? error.code : '';
  if (code === 'ENOENT') return `There is no file ${file}.`;
  if (code === 'EISDIR') return `${file} is a folder, expected a text file.`;
  return `${file} cannot be read: ${error instanceof Error ? error.message : error}.`;
};

const readText = async (file: string, edge: Environment): Promise<string | Mistake> => {
  if (file === '-' && edge.stdin.isTTY) return { mistake: 'Missing text: --text - expects it piped in.' };
  try {
    const bytes = file === '-' ? await bytesOf(edge.stdin) : await readFile(resolve(edge.cwd, file));
    const text = decodeAsWritten(bytes);
    if (text.includes('\0')) return { mistake: `${file} is not a text: it has a NUL byte in it.` };
    if (text.trim() !== '') return text;
    return { mistake: `${file === '-' ? 'Standard input' : file} is empty, expected a text.` };
  } catch (error) {
    return { mistake: unreadable(file, error) };
  }
};

const readNames = async (operands: Operands, edge: Environment): Promise<Operands | Mistake> => {
  const mistake = `Missing name, for example: ${EXAMPLE}`;
  if (operands.length > 0)
    return operands.some((name) => name.trim() === '') ? { mistake } : operands.map((name) => name.trim());
  if (edge.stdin.isTTY) return { mistake };
  const lines = decodeText(await bytesOf(edge.stdin)).split('\n');
  const names = lines.map((line) => line.trim()).filter((line) => line !== '');
  if (names.length > 0) return names;
  return { mistake: `Standard input is empty, expected a name a line. Or: ${EXAMPLE}` };
};

/** `text` in lines of at most `columns`, those after the first indented. */
const broken = (text: string, indent: number, columns: number): string => {
  const lines: string[] = [''];
  for (const word of text.split(' ')) {
    const line = lines.at(-1) as string;
    if (line !== '' && indent + line.length + 1 + word.length > columns) lines.push(word);
    else lines[lines.length - 1] = line === '' ? word : `${line} ${word}`;
  }
  return lines.join(`\n${' '.repeat(indent)}`);
};

/** Two columns, `indent` spaces in; the second starts on a line of its own where both are too wide for one. */
const rows = (pairs: readonly (readonly [string, string])[], indent: number, columns: number): string[] => {
  const first = Math.max(...pairs.map(([left]) => left.length)) + indent + 2;
  const narrow = first + 20 > columns;
  return pairs.map(([left, right]) => {
    const start = ' '.repeat(indent) + left;
    if (narrow) return `${start}\n${' '.repeat(indent + 2)}${broken(right, indent + 2, columns)}`;
    return start.padEnd(first) + broken(right, first, columns);
  });
};

const nameReport = ({ name, head, kind, phrases }: NamePhrases, columns: number): string => {
  const facts = [
    ['head', head === '' ? 'none: no word of it says what the thing is' : `${head}, what the thing is`],
    ...(kind === '' ? [] : [['kind', kind] as const]),
  ] as const;
  const typed = phrases.map(({ text, origin }) => [text, origin] as const);
  return [
    broken(name, 0, columns),
    ...rows(facts as readonly (readonly [string, string])[], 2, columns),
    ...(typed.length === 0
      ? ['  no phrases']
      : ['  typed by shoppers, and where it is from:', ...rows(typed, 4, columns)]),
    '',
  ].join('\n');
};

const textReport = (phrases: readonly TextPhrase[]): string => {
  const wide = Math.max('start'.length, String(phrases.at(-1)?.end ?? 0).length);
  const row = (start: unknown, end: unknown, text: string): string =>
    `${String(start).padStart(wide)}  ${String(end).padStart(wide)}  ${text}`;
  return [
    row('start', 'end', 'noun phrase'),
    // A phrase may run over a line end; the table's line may not.
    ...phrases.map(({ start, end, text }) => row(start, end, text.replace(/\s+/g, ' '))),
    '',
    `${counted(phrases.length, 'noun phrase')}. Offsets count UTF-16 units from 0; articles and pronouns are left out.`,
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
    edge.stderr.write(`${mistake}\nSee: lidlore phrases --help\n`);
    return EXIT.usage;
  };
  const print = (result: unknown, report: () => string): number => {
    edge.stdout.write(values.json === true ? `${JSON.stringify(result)}\n` : report());
    return EXIT.done;
  };
  const { phrasesOfNames, phrasesOfText } = await import('../pipeline/phrases.ts');
  if (typeof values.text === 'string') {
    if (operands.length > 0)
      return refuse({ mistake: `Unexpected ${operands[0]}: --text takes its words from the file alone.` });
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
