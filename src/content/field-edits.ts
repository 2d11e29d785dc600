/** The ways to change one field in a YAML text, as edits at the positions that its document knows. */
import {
  type Document,
  isMap,
  isNode,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import type { Slot } from './field-path.ts';
import {
  blockLines,
  type FieldValue,
  flowText,
  isFieldScalar,
  keyText,
  type ScalarForm,
  scalarForms,
} from './write-yaml.ts';

/** Offsets into the text of the fields. */
interface TextEdit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Edits that belong together, in the order of the text and apart from each other. */
export type Edits = readonly TextEdit[];

/** A text of fields with its document. */
export interface Fields {
  readonly source: string;
  readonly document: Document;
  /** What ends the file's lines. */
  readonly eol: string;
}

const nodeOf = (value: unknown): Node | undefined => (isNode(value) ? value : undefined);

const startOf = (node: Node | undefined): number | undefined => node?.range?.[0];

const lineStart = (source: string, offset: number): number => source.lastIndexOf('\n', offset - 1) + 1;

/** Before the line break, or at the end of the text. */
const lineEnd = (source: string, offset: number): number => {
  const found = /\r?\n|$/.exec(source.slice(offset));
  return offset + (found?.index ?? 0);
};

/** After the line break. */
const nextLine = (source: string, offset: number): number => {
  const end = source.indexOf('\n', offset);
  return end < 0 ? source.length : end + 1;
};

/** After the colon of a key. Undefined where the key is written in some other way. */
const colonEnd = (source: string, pair: Pair): number | undefined => {
  const end = nodeOf(pair.key)?.range?.[1];
  const colon = end === undefined ? null : /^[ \t]*:/.exec(source.slice(end));
  return end === undefined || !colon ? undefined : end + colon[0].length;
};

/** After the last sign of a value that counts: comments and empty lines that follow are not its own. */
const contentEnd = (source: string, node: Node | undefined): number | undefined => {
  const [start, end] = node?.range ?? [];
  if (!node || start === undefined || end === undefined) return undefined;
  if (isScalar(node) && (node.type === 'BLOCK_LITERAL' || node.type === 'BLOCK_FOLDED')) {
    const written = source.slice(start, end);
    // `+` keeps the empty lines at the end; any other block leaves them to the file.
    const keeps = /^[|>][1-9]?\+/.test(written);
    return start + (keeps ? written.replace(/\r?\n$/, '') : written.trimEnd()).length;
  }
  if (isMap(node) && !node.flow) {
    const last = node.items.at(-1);
    return last && pairEnd(source, last);
  }
  if (isSeq(node) && !node.flow) return contentEnd(source, nodeOf(node.items.at(-1)));
  return end;
};

const pairEnd = (source: string, pair: Pair): number | undefined => {
  const value = nodeOf(pair.value);
  const empty = !value || value.range?.[0] === value.range?.[1];
  if (empty && !isMap(value) && !isSeq(value)) return colonEnd(source, pair) ?? nodeOf(pair.key)?.range?.[1];
  return contentEnd(source, value);
};

const formOf = ({ source }: Fields, node: Node | undefined): ScalarForm => {
  if (!isScalar(node)) return { form: 'plain' };
  if (node.type === 'QUOTE_SINGLE') return { form: 'single' };
  if (node.type === 'QUOTE_DOUBLE') return { form: 'double' };
  if (node.type !== 'BLOCK_LITERAL' && node.type !== 'BLOCK_FOLDED') return { form: 'plain' };
  const written = source.slice(startOf(node), contentEnd(source, node));
  return { form: 'block', written, indent: /\n([ \t]+)\S/.exec(written)?.[1] ?? '  ' };
};

const indented = (lines: readonly string[], indent: string, eol: string): string =>
  lines.map((line) => indent + line).join(eol);

/** The column of an offset as spaces: what stands before it may be a dash. */
const columnOf = (source: string, offset: number): string => ' '.repeat(offset - lineStart(source, offset));

/** After the key's colon or the dash. */
const anchorOf = ({ source }: Fields, slot: Slot): number | undefined => {
  if (slot.of === 'whole') return undefined;
  if (slot.of === 'map') {
    const pair = slot.map.items[slot.at];
    return pair && colonEnd(source, pair);
  }
  const start = startOf(slot.node);
  // A dash on the line of its value, or nothing that can be relied on.
  return start !== undefined &&
    (slot.list.flow || /-[ \t]*$/.test(source.slice(lineStart(source, start), start)))
    ? start
    : undefined;
};

/** Ways to put a value in the place of another, the one most like what stood there first. */
export function* replacing(fields: Fields, slot: Slot, value: FieldValue): Generator<Edits> {
  const { source, eol } = fields;
  const { node } = slot;
  if (slot.of === 'whole') {
    const [from, to] = [startOf(node), contentEnd(source, node)];
    if (from !== undefined && to !== undefined) yield [{ from, to, text: flowText(value) }];
    return;
  }
  const anchor = anchorOf(fields, slot);
  const start = startOf(node);
  if (anchor === undefined || start === undefined || !node) return;
  const isEmpty = isScalar(node) && start === node.range?.[1];
  const end = isEmpty ? anchor : contentEnd(source, node);
  if (end === undefined) return;
  const key = slot.of === 'map' ? slot.key : '';
  const isBlock = (isMap(node) || isSeq(node)) && !node.flow;
  const sameLine = isEmpty || !source.slice(anchor, start).includes('\n');
  const inline = (text: string): Edits => {
    if (isEmpty) {
      const blank = /^[ \t]*(?=\r?\n|$)/.exec(source.slice(anchor))?.[0] ?? '';
      return [{ from: anchor, to: anchor + blank.length, text: ` ${text}` }];
    }
    if (sameLine) return [{ from: start, to: end, text }];
    // The value stood below: it moves up beside its key, before the comment that may be there.
    return [
      { from: anchor, to: anchor, text: ` ${text}` },
      { from: lineEnd(source, anchor), to: end, text: '' },
    ];
  };
  const lines = (): Edits => {
    const indent = columnOf(source, start);
    return [
      { from: start, to: end, text: indented(blockLines(value, key), indent, eol).slice(indent.length) },
    ];
  };
  if (isFieldScalar(value)) {
    for (const text of scalarForms(value, formOf(fields, node), eol)) yield inline(text);
    return;
  }
  if (isBlock && !slot.inFlow && Object.keys(value).length > 0) yield lines();
  yield inline(flowText(value, key));
}

/** Ways to take a value out with its key or its dash. None for the last one: then the whole of it becomes empty. */
export function* removing({ source }: Fields, slot: Slot): Generator<Edits> {
  if (slot.of === 'whole') return;
  const parent = slot.of === 'map' ? slot.map : slot.list;
  if (parent.items.length < 2) return;
  const startAt = (at: number): number | undefined =>
    startOf(slot.of === 'map' ? nodeOf(slot.map.items[at]?.key) : nodeOf(slot.list.items[at]));
  const endAt = (at: number): number | undefined => {
    const pair = slot.of === 'map' ? slot.map.items[at] : undefined;
    return pair
      ? pairEnd(source, pair)
      : contentEnd(source, slot.of === 'list' ? nodeOf(slot.list.items[at]) : undefined);
  };
  const [start, end, next, before] = [
    startAt(slot.at),
    endAt(slot.at),
    startAt(slot.at + 1),
    endAt(slot.at - 1),
  ];
  if (start === undefined || end === undefined) return;
  if (parent.flow) {
    if (next !== undefined) yield [{ from: start, to: next, text: '' }];
    else if (before !== undefined) yield [{ from: before, to: end, text: '' }];
    return;
  }
  const from = lineStart(source, start);
  const alone = slot.of === 'list' ? /^[ \t]*-[ \t]*$/ : /^[ \t]*$/;
  if (alone.test(source.slice(from, start))) yield [{ from, to: nextLine(source, end), text: '' }];
  else if (slot.of === 'map' && next !== undefined) yield [{ from: start, to: next, text: '' }];
}

const holdsBlocks = (values: readonly unknown[]): boolean =>
  values.some((value) => (isMap(value) || isSeq(value)) && !value.flow);

/** The value as it is written after `key: ` or `- `, on that line or on lines of its own below. */
const valueForms = (
  value: FieldValue,
  key: string,
  blockFirst: boolean,
): readonly ({ readonly inline: string } | { readonly below: readonly string[] })[] => {
  if (isFieldScalar(value)) return scalarForms(value, { form: 'plain' }, '\n').map((inline) => ({ inline }));
  const flow = { inline: flowText(value, key) };
  const below = { below: blockLines(value, key) };
  return blockFirst && Object.keys(value).length > 0 ? [below, flow] : [flow];
};

/** Ways to add a key to a map, after those that `order` has before it, or at its end. */
export function* addingKey(
  { source, eol }: Fields,
  map: YAMLMap,
  key: string,
  value: FieldValue,
  order: readonly string[],
): Generator<Edits> {
  const rank = order.indexOf(key);
  const isBefore = (pair: Pair): boolean => {
    const other = order.indexOf(isScalar(pair.key) ? String(pair.key.value) : '');
    return other >= 0 && other < rank;
  };
  const before = map.items.findLast(isBefore) ?? map.items.at(-1);
  const end = before && pairEnd(source, before);
  const name = keyText(key);
  if (map.flow) {
    const at = end ?? (startOf(map) ?? 0) + 1;
    const flow = isFieldScalar(value) ? scalarForms(value, { form: 'plain' }, eol) : [flowText(value, key)];
    for (const text of flow) yield [{ from: at, to: at, text: `${before ? ', ' : ''}${name}: ${text}` }];
    return;
  }
  const first = startOf(nodeOf(map.items[0]?.key));
  if (end === undefined || first === undefined) return;
  const indent = columnOf(source, first);
  const at = nextLine(source, end);
  for (const form of valueForms(value, key, holdsBlocks(map.items.map((pair) => pair.value)))) {
    const lines =
      'inline' in form ? [`${name}: ${form.inline}`] : [`${name}:`, ...form.below.map((line) => `  ${line}`)];
    yield [{ from: at, to: at, text: `${indented(lines, indent, eol)}${eol}` }];
  }
}

/** Ways to add a value to the end of a list. */
export function* addingItem({ source, eol }: Fields, list: YAMLSeq, value: FieldValue): Generator<Edits> {
  const last = nodeOf(list.items.at(-1));
  const end = contentEnd(source, last);
  if (list.flow) {
    const at = end ?? (startOf(list) ?? 0) + 1;
    const flow = isFieldScalar(value) ? scalarForms(value, { form: 'plain' }, eol) : [flowText(value)];
    for (const text of flow) yield [{ from: at, to: at, text: `${last ? ', ' : ''}${text}` }];
    return;
  }
  const start = startOf(list);
  if (end === undefined || start === undefined) return;
  const indent = columnOf(source, start);
  const at = nextLine(source, end);
  for (const form of valueForms(value, '', holdsBlocks(list.items))) {
    const lines = 'inline' in form ? [form.inline] : form.below;
    const text = lines.map((line, i) => `${indent}${i === 0 ? '- ' : '  '}${line}`).join(eol);
    yield [{ from: at, to: at, text: `${text}${eol}` }];
  }
}
