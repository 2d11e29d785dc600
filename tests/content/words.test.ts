/** What the schemas say of a record, held against every field there is. */
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { examplesOf } from '../../src/content/examples.ts';
import { parseFile } from '../../src/content/front-matter.ts';
import { frontMatterOf } from '../../src/content/record-file.ts';
import { schemaAt } from '../../src/content/schema-keys.ts';
import { boxSchema, cycleSchema, itemSchema } from '../../src/content/schemas.ts';
import { validate } from '../../src/content/validate.ts';
import { blockLines } from '../../src/content/write-yaml.ts';
import { parseFields, valuesOf } from '../../src/content/yaml-fields.ts';
import { fieldsOf } from '../support/record-reference.ts';

const RECORDS = [
  { path: 'box.md', schema: boxSchema },
  { path: 'cycles/2026-03/cycle.md', schema: cycleSchema },
  { path: 'cycles/2026-03/items/01-pot.md', schema: itemSchema },
] as const;

const fields = RECORDS.flatMap(({ path, schema }) =>
  fieldsOf(schema).map(({ way, schema: of }) => ({ path, record: schema, way, of })),
);

/** Only what is said of the field itself, whatever else the record lacks. */
const findingsAt = (path: string, record: v.GenericSchema, lines: readonly string[]) => {
  const source = { path, text: `---\n${lines.join('\n')}\n---\n` };
  const parsed = frontMatterOf(source, parseFile(source));
  return [...parsed.diagnostics, ...validate(record, parsed).diagnostics].filter(
    ({ location }) => location.line > 1,
  );
};

/** A value below the names on the way to its field. */
const below = (way: readonly (string | number)[], value: unknown): Record<string, unknown> =>
  way.reduceRight<unknown>((inner, step) => (step === 0 ? [inner] : { [step]: inner }), value) as Record<
    string,
    unknown
  >;

test('there are fields enough to speak of', () => {
  expect(fields.length).toBeGreaterThan(120);
  expect(new Set(fields.map(({ path }) => path)).size).toBe(3);
});

describe.each(fields)('$path, $way', ({ path, record, way, of }) => {
  test('says what it is, and shows it as the record takes it', () => {
    expect(v.getDescription(of)).toMatch(/\p{L}/u);
    const examples = examplesOf(schemaAt(record, way), 'all');
    expect(examples.length).toBeGreaterThan(0);
    for (const example of examples) {
      const lines = blockLines({ [String(way.at(-1))]: example });
      const read = valuesOf(parseFields(lines.join('\n')));
      expect(read).toEqual({ [String(way.at(-1))]: example });
      expect(v.safeParse(of, example).issues, lines.join('\n')).toBeUndefined();
    }
  });

  // Whatever somebody writes there, they are answered in the page's words.
  test.each([
    ['a word', 'zzz zzz!'],
    ['a number', -7.25],
    ['yes', true],
    ['a list', [['zzz']]],
    ['lines', { zzz: 'zzz' }],
    ['nothing', null],
  ])('is answered in words of the page where it holds %s', (_, value) => {
    const found = findingsAt(
      path,
      record,
      JSON.stringify(below(way, value), null, 1).split('\n').slice(1, -1),
    );
    // No field takes a list in a list.
    if (Array.isArray(value)) expect(found).not.toEqual([]);
    for (const { message, fix = '', written } of found) {
      expect(message).toMatch(/^Unexpected .*, expected /);
      // Between backticks stands what was typed, or is to be.
      expect(`${message} ${fix}`.replace(/`[^`]*`/g, '')).not.toMatch(
        /\b(?:ISO|IANA|BCP|YAML|JSON|GTIN|schema|key|keys|string|object|array|integer|boolean|undefined|null|value|Invalid)\b|[{}]/,
      );
      expect(message).not.toContain('native code');
      expect([message, fix, ...(written?.lines ?? [])].join('\n')).not.toContain('{');
    }
  });
});
