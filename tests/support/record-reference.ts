/** The table of fields, made from the schemas. */
import * as v from 'valibot';
import { boxSchema, cycleSchema, itemSchema } from '../../src/content/schemas.ts';

type Field = v.GenericSchema | v.OptionalSchema<v.GenericSchema, undefined>;

const table = (
  title: string,
  file: string,
  schema: { readonly entries: Readonly<Record<string, Field>> },
): string => {
  const rows = Object.entries(schema.entries).map(([key, field]) => {
    const optional = 'wrapped' in field;
    const description = v.getDescription(optional ? field.wrapped : field);
    return `| \`${key}\` | ${optional ? '' : 'yes'} | ${description ?? ''} |`;
  });
  return `## ${title}\n\n\`${file}\`\n\n| field | needed | what it is |\n|---|---|---|\n${rows.join('\n')}\n`;
};

/** Markdown: every field of every record. */
export const recordReference = (): string =>
  `# Fields of the records\n\nMade from the schemas; do not edit by hand.\n\n${[
    table('The box', 'content/box.md', boxSchema),
    table('A cycle', 'content/cycles/2026-03/cycle.md', cycleSchema),
    table('An item', 'content/cycles/2026-03/items/01-name.md', itemSchema),
  ].join('\n')}`;
