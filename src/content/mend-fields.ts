/**
 * What is wrong with the form of a record's fields, and the fields as they were meant. Each fault is held against
 * every slip that people make; lines are proposed only where reading them anew shows the fault gone.
 */
import { type Document, isMap, isPair, isScalar, isSeq, LineCounter, visit } from 'yaml';
import { keysOf } from './record-lines.ts';
import { isBullet, type Mend } from './slip.ts';
import { SLIPS } from './slips.ts';
import { belongsTo } from './slips-in-places.ts';
import { isDressed, isHalfQuoted, isTypographic } from './slips-in-texts.ts';
import { parseFields } from './yaml-fields.ts';

/** A place in the fields where something was not taken as it was meant. */
interface Fault {
  /** From 0. */
  readonly line: number;
  readonly column: number;
  /** `unread`: the fields cannot be read so. `twice`: a key stands twice. `misread`: they say what nobody meant. `left out`: part of a text was taken for a remark. */
  readonly kind: 'unread' | 'twice' | 'misread' | 'left out';
}

/** A fault, with the lines as they should be where a slip explains it. */
export interface FormFault extends Fault {
  readonly mend?: Mend;
}

/** Larger fields are not mended: each proposal is read anew. In characters. */
const MOST_FIELDS = 50_000;
/** A longer line is no sentence: it is not proposed anew. In characters. */
const MOST_LINE = 4_000;
/**
 * Proposals are read anew until so much has been read for one record, in characters: some two seconds. A record with
 * more slips than that is answered all the same, the last of them without lines.
 */
const MOST_READ = 1_500_000;
/** Lines before and after a fault that may hold the slip: a quote left open is noticed further down. */
const [BEFORE, AFTER] = [40, 1];
/** Faults told of one record. */
const MOST_FAULTS = 40;

interface Reading {
  readonly faults: readonly Fault[];
  /** Keys that the schema does not know. */
  readonly unknown: number;
  /** Whether there are fields at all. */
  readonly isMap: boolean;
}

/** Whether a text is a list whose dashes were not taken for any: it stands below its key, or goes on over lines. */
const hasBullets = (source: string, start: number, text: string): boolean => {
  if (/\n/.test(text) && text.split('\n').some((line, i) => i > 0 && (isBullet(line) || /^\s*- /.test(line))))
    return true;
  const before = source.slice(source.lastIndexOf('\n', start - 1) + 1, start);
  return before.trim() === '' && isBullet(text);
};

/** Whether a node stands between brackets or braces. */
const isInFlow = (ancestors: readonly unknown[]): boolean =>
  ancestors.some((node) => (isMap(node) || isSeq(node)) && node.flow === true);

/** The paths of what holds fields, or should, at the end of a field: it, the last thing in it, and so on. */
const insides = (
  value: unknown,
  path: readonly (string | number)[],
): readonly (readonly (string | number)[])[] => {
  if (!value || (isScalar(value) && value.value === null)) return [path];
  if (isSeq(value) && !value.flow) return insides(value.items.at(-1), [...path, 0]);
  if (!isMap(value) || value.flow) return [];
  const last = value.items.at(-1);
  return [
    path,
    ...(last && isScalar(last.key) ? insides(last.value, [...path, String(last.key.value)]) : []),
  ];
};

/** Fields as YAML has them, with where their lines begin. */
export interface ParsedFields {
  readonly document: Document;
  readonly counter: LineCounter;
}

const parsed = (source: string): ParsedFields => {
  const counter = new LineCounter();
  return { document: parseFields(source, counter), counter };
};

/** What is in the fields; leaves the document as it is. */
const read = (
  source: string,
  schema: unknown,
  { document, counter }: ParsedFields = parsed(source),
): Reading => {
  const faults: Fault[] = [];
  let unknown = 0;
  const at = (offset: number, kind: Fault['kind']): void => {
    const { line, col } = counter.linePos(Math.max(0, offset));
    faults.push({ line: line - 1, column: col, kind });
  };
  for (const error of document.errors) at(error.pos[0], error.code === 'DUPLICATE_KEY' ? 'twice' : 'unread');
  for (const warning of document.warnings) at(warning.pos[0], 'unread');

  const anchors = new Map<string, number>();
  const used = new Set<string>();
  visit(document, {
    Alias: (_, alias) => {
      used.add(alias.source);
      if (!alias.resolve(document)) at(alias.range?.[0] ?? 0, 'misread');
    },
    Scalar: (_, scalar, ancestors) => {
      const [start = 0, end = 0] = scalar.range ?? [];
      if (scalar.anchor !== undefined) anchors.set(scalar.anchor, start);
      if (scalar.type !== 'PLAIN' || start === end) return;
      const text = source.slice(start, end);
      if (isTypographic(text) || (isHalfQuoted(text) && isInFlow(ancestors))) at(start, 'misread');
      else if (hasBullets(source, start, text)) at(start, 'misread');
      else if (/^[ \t]+#[^\s#]/.test(source.slice(end))) at(end, 'left out');
    },
  });
  for (const [name, offset] of anchors) if (!used.has(name)) at(offset, 'misread');

  const fields = keysOf(schema, []);
  const walk = (node: unknown, path: readonly (string | number)[]): void => {
    if (isSeq(node))
      for (const one of node.items) {
        // In a list of texts at the margin, a field of the record is one that was given a dash.
        const key = isMap(one) && keysOf(schema, path).length === 0 ? one.items[0]?.key : undefined;
        if (
          isScalar(key) &&
          fields.includes(String(key.value)) &&
          counter.linePos(key.range?.[0] ?? 0).col === 3
        )
          at(key.range?.[0] ?? 0, 'misread');
        walk(one, [...path, 0]);
      }
    if (!isMap(node)) return;
    const known = keysOf(schema, path);
    /** The field above that the schema knows, with its value. */
    let above: readonly [key: string, value: unknown] | undefined;
    for (const pair of node.items) {
      if (!isPair(pair) || !isScalar(pair.key)) continue;
      const key = String(pair.key.value);
      const isUnknown = known.length > 0 && !known.includes(key);
      if (isUnknown) unknown += 1;
      if (isUnknown && above && belongsTo(schema, insides(above[1], [...path, above[0]]), key))
        at(pair.key.range?.[0] ?? 0, 'misread');
      if (!isUnknown) above = [key, pair.value];
      const isPart = node.flow && (!pair.value || (isScalar(pair.value) && pair.value.value === null));
      const isTyped = pair.key.type === 'PLAIN';
      if (isUnknown && isTyped && (isPart || isDressed(key))) at(pair.key.range?.[0] ?? 0, 'misread');
      walk(pair.value, [...path, key]);
    }
  };
  if (isSeq(document.contents)) at(document.contents.range?.[0] ?? 0, 'unread');
  walk(document.contents, []);
  return {
    faults: faults.sort((a, b) => a.line - b.line || a.column - b.column),
    unknown,
    isMap: isMap(document.contents),
  };
};

/** The first line that cannot be read; beyond the last where all can. */
const firstUnread = ({ faults }: Reading): number =>
  faults.find(({ kind }) => kind === 'unread')?.line ?? Number.POSITIVE_INFINITY;

/** How much better the second reading is, so that the first sign that is not 0 decides; in order of weight. */
const gain = (before: Reading, after: Reading): number => {
  const [was, is] = [firstUnread(before), firstUnread(after)];
  if (was !== is) return is - was;
  return before.faults.length - after.faults.length || before.unknown - after.unknown;
};

const applied = (lines: readonly string[], { from, to, lines: mended }: Mend): readonly string[] => [
  ...lines.slice(0, from),
  ...mended,
  // Every other line keeps its number.
  ...Array<string>(to - from + 1 - mended.length).fill(''),
  ...lines.slice(to + 1),
];

/** Lines to look at for what explains a fault, the nearest first. */
const linesAround = (line: number, count: number): readonly number[] => {
  const around = [line];
  for (let step = 1; step <= BEFORE; step++)
    around.push(...(step <= AFTER ? [line - step, line + step] : [line - step]));
  return around.filter((one) => one > 0 && one < count);
};

/** The lines that take away a fault, the surest of those that do it best. `readAgain` is undefined once enough was read. */
const mendOf = (
  lines: readonly string[],
  fault: Fault,
  before: Reading,
  schema: unknown,
  readAgain: (source: string) => Reading | undefined,
): Mend | undefined => {
  let best: { readonly mend: Mend; readonly after: Reading } | undefined;
  for (const at of linesAround(fault.line, lines.length))
    for (const slip of SLIPS)
      for (const mend of slip(lines, at, schema)) {
        const after = readAgain(applied(lines, mend).join('\n'));
        if (
          !after?.isMap ||
          gain(before, after) <= 0 ||
          after.faults.some((one) => one.line === fault.line && one.kind === fault.kind)
        )
          continue;
        if (!best || gain(best.after, after) > 0) best = { mend, after };
      }
  return best?.mend;
};

/**
 * Every fault of the fields' form, and the text with them mended: lines stay where they are. `undefined` for the text
 * where a fault is left that nobody can explain. `whole` is the source where it is parsed already.
 */
export const mendFields = (
  source: string,
  schema: unknown,
  whole?: ParsedFields,
): { readonly faults: readonly FormFault[]; readonly mended: string | undefined } => {
  let lines: readonly string[] = source.split('\n');
  const faults: FormFault[] = [];
  const told = new Set<string>();
  const name = ({ line, kind, column }: Fault): string =>
    kind === 'twice' ? `${line}:${column}` : kind === 'left out' ? `${line} ${kind}` : String(line);
  let left = MOST_READ;
  const readAgain = (fields: string): Reading | undefined => {
    if (left < fields.length) return undefined;
    left -= fields.length;
    return read(fields, schema);
  };
  for (let round = 0; round < MOST_FAULTS; round++) {
    const fields = lines.join('\n');
    const reading = read(fields, schema, fields === source ? whole : undefined);
    const fault =
      reading.faults.find((one) => one.kind === 'unread' && !told.has(name(one))) ??
      reading.faults.find((one) => !told.has(name(one)));
    if (!fault) break;
    told.add(name(fault));
    const isLong = source.length > MOST_FIELDS || (lines[fault.line]?.length ?? 0) > MOST_LINE;
    const mend = isLong ? undefined : mendOf(lines, fault, reading, schema, readAgain);
    // What cannot be explained here is left to the schema.
    if (mend || fault.kind === 'unread' || fault.kind === 'twice')
      faults.push({ ...fault, ...(mend && { mend }) });
    if (!mend && fault.kind === 'unread') return { faults, mended: undefined };
    // What was left out may be a remark: the record says what YAML says.
    if (mend && fault.kind !== 'left out') lines = applied(lines, mend);
  }
  return { faults, mended: lines.join('\n') };
};
