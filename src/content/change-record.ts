/**
 * Changes one key of a record and no other byte of its file. The places to change are those of the YAML document;
 * whatever is written is read again, and only a text that says what was meant and nothing else is given back.
 */
import { isMap, isSeq } from 'yaml';
import { type Checked, mustFixAny } from '../diagnostics/diagnostic.ts';
import { addingItem, addingKey, type Edits, type Fields, removing, replacing } from './field-edits.ts';
import { type FieldPath, isSameValue, slotsOn, valueAt, withValue } from './field-path.ts';
import { parseFile } from './front-matter.ts';
import { frontMatterSpan } from './front-matter-span.ts';
import { frontMatterOf } from './record-file.ts';
import { schemaOf } from './record-schema.ts';
import { keysAt } from './schema-keys.ts';
import type { TextSource } from './sources.ts';
import { type FieldValue, isFieldValue } from './write-yaml.ts';
import { parseFields, valuesOf } from './yaml-fields.ts';

interface Change {
  readonly path: FieldPath;
  /** None takes the key out. */
  readonly value: FieldValue | undefined;
  /** All values of the record as they should be then. */
  readonly wanted: FieldValue;
}

/** Every way to make a change, the one that leaves most of the file as it is first. */
function* waysTo({ path, value, wanted }: Change, fields: Fields, schema: unknown): Generator<Edits> {
  const { slots, rest } = slotsOn(fields.document, path);
  const isThere = rest.length === 0;
  const last = slots.at(-1);
  if (!last) return;
  const at = path.slice(0, path.length - rest.length);
  const [step] = rest;
  if (isThere && value === undefined) yield* removing(fields, last);
  const added = step === undefined ? undefined : valueAt(wanted, [...at, step]);
  if (added !== undefined && isMap(last.node) && typeof step === 'string')
    yield* addingKey(fields, last.node, step, added, keysAt(schema, at));
  if (added !== undefined && isSeq(last.node) && typeof step === 'number')
    yield* addingItem(fields, last.node, added);
  // What cannot be done in its own place is done by writing anew what holds it.
  for (const slot of [...slots].reverse()) {
    const whole = valueAt(wanted, path.slice(0, slot.depth));
    const isEmpty = typeof whole === 'object' && whole !== null && Object.keys(whole).length === 0;
    if (whole !== undefined && (slot.of !== 'whole' || isEmpty)) yield* replacing(fields, slot, whole);
  }
}

const applied = (source: string, edits: Edits): string => {
  let text = '';
  let done = 0;
  for (const edit of edits) {
    text += source.slice(done, edit.from) + edit.text;
    done = edit.to;
  }
  return text + source.slice(done);
};

/** Whether fields hold these values and nothing else. The last line break belongs to the line that closes them. */
const reads = (source: string, wanted: FieldValue): boolean => {
  const document = parseFields(source.replace(/\r?\n$/, ''));
  if (document.errors.length > 0 || document.warnings.length > 0 || !isMap(document.contents)) return false;
  return isSameValue(valuesOf(document), wanted);
};

/**
 * A record without its body, which no change of a key touches, as the program reads it: with line feeds alone, which leaves
 * every line and column where it is.
 */
const withoutBody = ({ path, text }: TextSource): TextSource => {
  const span = frontMatterSpan(text);
  const start = text.startsWith('\ufeff') ? 1 : 0;
  const closed = span && text.slice(start, span.to) + (/^[^\r\n]*/.exec(text.slice(span.to))?.[0] ?? '');
  return { path, text: (closed ?? text.slice(start)).replaceAll('\r\n', '\n') };
};

/**
 * The text of a record's file with one key changed, added where the schema has it, or taken out where `value` is
 * undefined. All else stays byte for byte: comments, order, quotes, line ends, byte order mark and body. A value that
 * stood in quotes or as a block stays so where it can. The text as it was, with what must be fixed, where its front
 * matter cannot be used. Throws for a place beyond the end of a list.
 */
export const changeKey = (
  { path: file, text }: TextSource,
  path: FieldPath,
  value: FieldValue | undefined,
): Checked<string> => {
  const span = frontMatterSpan(text);
  const record = withoutBody({ path: file, text });
  const parsed = parseFile(record);
  const { data } = parsed;
  if (!span || !data || mustFixAny(parsed.diagnostics))
    return { value: text, diagnostics: parsed.diagnostics };
  if (!isFieldValue(data)) throw new Error(`Expected values of YAML’s core schema in ${file}`);

  const { from, to } = span;
  const source = text.slice(from, to);
  const fields: Fields = {
    source,
    document: parseFields(source),
    eol: text[from - 2] === '\r' ? '\r\n' : '\n',
  };
  if (value === undefined && slotsOn(fields.document, path).rest.length > 0)
    return { value: text, diagnostics: [] };
  const wanted = withValue(data, path, value);
  if (wanted === undefined) throw new Error('Expected a key to change, found an empty path');
  let asYaml: string | undefined;
  for (const edits of waysTo({ path, value, wanted }, fields, schemaOf(file))) {
    const changed = applied(source, edits);
    const whole = text.slice(0, from) + changed + text.slice(to);
    if (frontMatterSpan(whole)?.to !== from + changed.length || !reads(changed, wanted)) continue;
    // What YAML takes may still be what the program asks its author about, as a lone quote within braces.
    if (!mustFixAny(parseFile(withoutBody({ path: file, text: whole })).diagnostics))
      return { value: whole, diagnostics: [] };
    asYaml ??= whole;
  }
  if (asYaml !== undefined) return { value: asYaml, diagnostics: [] };
  return {
    value: text,
    diagnostics: [
      {
        weight: 'must fix',
        rule: 'yaml',
        location: frontMatterOf(record, parsed).locationOf(path),
        message: `Unexpected form of \`${path.join('.')}\`, expected a line of its own`,
        fix: 'Change it in the file; where `*` stands for something written elsewhere, write that out',
      },
    ],
  };
};
