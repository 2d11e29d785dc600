/** `--from`: a list of things, shown before it is used. */
import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { decodeText } from '../io/decode-text.ts';
import { codeOf } from '../text/error-code.ts';
import { begin } from '../wording/en/begin.ts';
import { fieldNamed, listThings } from '../workspace/begin/index.ts';
import type { ItemList, ListField } from '../workspace/begin/list.ts';
import type { Environment, Values } from './environment.ts';
import type { Checked, Questioner } from './questions.ts';
import { bytesOf } from './read-input.ts';

const { questions, expected, mistakes, list: words } = begin;

/** The list's text, or why there is none. */
const readList = async (
  file: string,
  edge: Environment,
): Promise<{ readonly text: string } | { readonly mistake: string }> => {
  try {
    const bytes = file === '-' ? await bytesOf(edge.stdin) : await readFile(resolve(edge.cwd, file));
    // A spreadsheet's own file is a zip (APPNOTE.TXT, 4.3.7), or an old compound file.
    const head = Buffer.from(bytes.subarray(0, 4)).toString('latin1');
    if (head === 'PK\x03\x04' || head === '\xd0\xcf\x11\xe0') return { mistake: mistakes.spreadsheet(file) };
    const text = decodeText(bytes);
    return text.includes('\0') ? { mistake: mistakes.unreadable(file, mistakes.noText) } : { text };
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return { mistake: mistakes.noFile(file) };
    return { mistake: mistakes.unreadable(file, error instanceof Error ? error.message : String(error)) };
  }
};

/** What the list was taken for, in lines. */
const shown = (
  file: string,
  { columns, things, passed, blank, gaps, refused, unclosed }: ItemList,
): readonly string[] => [
  words.columns(file, things.length),
  ...columns.map(({ title, field }, i) => words.column(title || words.untitled(i + 1), field)),
  ...(passed.length + blank + refused.length > 0 || unclosed !== undefined ? [words.rows] : []),
  ...passed.map(({ line, why, text }) => words.row(line, why, text)),
  ...(blank > 0 ? [words.blank(blank)] : []),
  ...refused.map((cell) => words.refused(cell)),
  ...(unclosed === undefined ? [] : [words.unclosed(unclosed)]),
  ...gaps.map(({ title, lines }) => words.gap(title, lines)),
];

/** "price = Sells for; note = Maker" as fields by their columns' titles. */
const readColumns = (
  typed: string,
  list: ItemList,
  fieldNamed: (word: string) => ListField | undefined,
): Checked<ReadonlyMap<string, ListField>> => {
  const columns = new Map<string, ListField>();
  for (const pair of typed.split(/[;\n]/).filter((one) => one.trim() !== '')) {
    const [, word = '', title = ''] = /^([^=]+)=(.+)$/.exec(pair.trim()) ?? [];
    const field = fieldNamed(word.trim());
    const wanted = title.trim().toLowerCase();
    const column = list.columns.find(
      (one, i) => one.title.toLowerCase() === wanted || words.untitled(i + 1) === wanted,
    );
    if (!field || !column) return { expected: expected.column };
    columns.set(column.title, field);
  }
  return { value: columns };
};

/** The list that `--from` names, as the owner agreed to it; undefined where they did not. */
export const askList = async (
  questioner: Questioner,
  values: Values,
  edge: Environment,
  currency: string,
): Promise<{ readonly list: ItemList } | { readonly mistake: string } | undefined> => {
  const file = String(values.from);
  const read = await readList(file, edge);
  if ('mistake' in read) return read;
  let list = listThings(read.text, currency);
  const say = (): void => void edge.stderr.write(`${shown(file, list).join('\n')}\n`);
  for (;;) {
    if (list.things.length === 0 && !questioner.isAsked && values.columns === undefined)
      return { mistake: mistakes.noThings(file) };
    if (values.columns === undefined) say();
    const answer = await questioner.ask<ReadonlyMap<string, ListField> | 'yes' | 'no'>({
      option: 'columns',
      words: questions.columns,
      initial: 'yes',
      check: (typed) =>
        /^y(?:es)?$/i.test(typed)
          ? { value: 'yes' }
          : /^no?$/i.test(typed)
            ? { value: 'no' }
            : readColumns(typed, list, fieldNamed),
    });
    if (answer === undefined || answer === 'no') return undefined;
    if (answer === 'yes') return list.things.length > 0 ? { list } : { mistake: mistakes.noThings(file) };
    list = listThings(read.text, currency, answer);
    if (values.columns !== undefined) {
      say();
      return list.things.length > 0 ? { list } : { mistake: mistakes.noThings(file) };
    }
  }
};
