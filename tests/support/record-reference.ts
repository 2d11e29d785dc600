/** The table of fields, made from the schemas. */
import * as v from 'valibot';
import { examplesOf } from '../../src/content/examples.ts';
import { boxSchema, cycleSchema, itemSchema } from '../../src/content/schemas.ts';
import { blockLines } from '../../src/content/write-yaml.ts';

interface Part {
  readonly wrapped?: v.GenericSchema;
  readonly entries?: Readonly<Record<string, v.GenericSchema>>;
  readonly item?: v.GenericSchema;
  readonly pipe?: readonly (Part & { readonly kind: string; readonly message?: unknown })[];
  readonly options?: readonly unknown[];
  readonly message?: unknown;
}

const wordsOf = (message: unknown): string | undefined =>
  typeof message === 'function' ? message({ input: '' }) : typeof message === 'string' ? message : undefined;

/** The group that a schema is, or that each of its list is; undefined where it is neither. */
const groupOf = (schema: Part): { readonly entries: Part['entries']; readonly many: boolean } | undefined => {
  if (schema.entries) return { entries: schema.entries, many: false };
  if (schema.item) {
    const group = groupOf(schema.item as Part);
    return group && { ...group, many: true };
  }
  // A piped schema spreads its first step, so it is found in itself.
  for (const step of [...(schema.pipe ?? [])].reverse()) {
    const group = step.kind === 'schema' && (step as unknown) !== schema ? groupOf(step) : undefined;
    if (group) return group;
  }
  return undefined;
};

/** What was expected where a field holds something else: the very words of the finding. */
const formOf = (schema: Part): string => {
  if (schema.wrapped) return formOf(schema.wrapped as Part);
  for (const step of [...(schema.pipe ?? [])].reverse()) {
    if (step.kind === 'validation' && wordsOf(step.message)) return wordsOf(step.message) ?? '';
    if (step.kind === 'schema' && (step as unknown) !== schema) return formOf(step);
  }
  if (schema.item) return `${formOf(schema.item as Part)}; or a list of such`;
  return wordsOf(schema.message) ?? '';
};

/** A field of a record, with the names that lead to it; `0` stands for each of a list. */
interface Field {
  readonly way: readonly (string | number)[];
  readonly schema: v.GenericSchema;
  readonly needed: boolean;
}

/** Every field of a record and of its groups, in the order of the schema. */
export const fieldsOf = (schema: v.GenericSchema, before: Field['way'] = []): readonly Field[] =>
  Object.entries(groupOf(schema as Part)?.entries ?? {}).flatMap(([key, one]) => {
    const { wrapped } = one as Part;
    const inner = wrapped ?? one;
    const field = { way: [...before, key], schema: inner, needed: wrapped === undefined };
    const isMany = groupOf(inner as Part)?.many ?? false;
    return [field, ...fieldsOf(inner, isMany ? [...field.way, 0] : field.way)];
  });

const yaml = (lines: readonly string[]): string => `\`\`\`yaml\n${lines.join('\n')}\n\`\`\`\n`;

const linesOf = ({ way, schema }: Field): readonly (readonly string[])[] =>
  examplesOf(schema, 'all').map((example) => blockLines({ [String(way.at(-1))]: example }));

/** A cell must not end at a bar, and what is between backticks is as it is typed. */
const cell = (text: string): string => text.replaceAll('|', '\\|');

/** "`file` of each `image`", "`hook` under `live`": a field below another. */
const nameOf = ({ way }: Field): string => {
  const [, ...names] = way.filter((step) => typeof step === 'string').reverse();
  return [`\`${way.at(-1)}\``, ...names.slice(0, -1).map((name) => `\`${name}\``)].join(' under ');
};

/** The form, and an example where it stands on one line. */
const written = (field: Field): string => {
  const lines = linesOf(field).filter(({ length }) => length === 1);
  return [formOf(field.schema as Part), ...lines.map(([line]) => `\`${line}\``)].map(cell).join('<br>');
};

const tableOf = (fields: readonly Field[]): string =>
  `| field | needed | what it is | how it is written |\n|---|---|---|---|\n${fields
    .map(
      (field) =>
        `| ${nameOf(field)} | ${field.needed ? 'yes' : ''} | ${cell(v.getDescription(field.schema) ?? '')} | ${written(field)} |`,
    )
    .join('\n')}\n`;

const section = (title: string, file: string, schema: v.GenericSchema): string => {
  const fields = fieldsOf(schema);
  const tops = fields.filter(({ way }) => way.length === 1);
  const long = tops.flatMap((top) => {
    const blocks = linesOf(top).filter(({ length }) => length > 1);
    if (blocks.length === 0) return [];
    const parts = fields.filter(({ way }) => way.length > 1 && way[0] === top.way[0]);
    const table = parts.length > 0 ? `${tableOf(parts)}\n` : '';
    return [`### \`${top.way[0]}\` in ${title}\n\n${table}${blocks.map(yaml).join('\n')}`];
  });
  return `## ${title[0]?.toUpperCase()}${title.slice(1)}\n\n\`${file}\`\n\n${tableOf(tops)}\n${long.join('\n')}`;
};

/** Markdown: every field of every record. */
export const recordReference = (): string =>
  `# Fields of the records\n\nMade from the schemas; do not edit by hand. A field is its name, a colon, a space and what it holds. Fields of a field stand below it, each on a line of its own, two blanks further in; each thing of a list begins with a dash. Examples are invented.\n\n${[
    section('the box', 'content/box.md', boxSchema),
    section('a cycle', 'content/cycles/2026-03/cycle.md', cycleSchema),
    section('an item', 'content/cycles/2026-03/items/01-name.md', itemSchema),
  ].join('\n')}`;
