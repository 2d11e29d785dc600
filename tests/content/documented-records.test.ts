/** Records as the documents and the demo show them: people copy them. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { diagnosticsReport } from '../../src/cli/report.ts';
import { parseFile } from '../../src/content/front-matter.ts';
import { frontMatterOf } from '../../src/content/record-file.ts';
import { boxSchema, cycleSchema, itemSchema } from '../../src/content/schemas.ts';
import { validate } from '../../src/content/validate.ts';
import { parseFields, valuesOf } from '../../src/content/yaml-fields.ts';
import { filesBelow } from '../support/tools.ts';

const root = join(import.meta.dirname, '../..');
const textOf = (path: string): string => readFileSync(join(root, path), 'utf8');

/** `key: {…` or `- {…`: within braces a comma in a text begins the next field. */
const BRACES = /(?:^|[\s`])(?:[\w-]+:|-) \{/;

const records = filesBelow(join(root, 'content'))
  .filter((path) => path.endsWith('.md'))
  .map((path) => ({ path: `content/${path}`, text: textOf(`content/${path}`).split('\n---\n')[0] ?? '' }));

describe('records are shown a key a line', () => {
  test.each(records)('in $path', ({ text }) => {
    expect(text.split('\n').filter((line) => BRACES.test(line))).toEqual([]);
    // A list in brackets is one of words: no sentence, and nothing that has a comma in it.
    const lists = text.split('\n').filter((line) => /^\s*[\w-]+: \[/.test(line));
    expect(lists.filter((line) => line.match(/"[^"]*"/g)?.some((one) => /[ ,]/.test(one)))).toEqual([]);
  });

  test.each(['README.md', 'DEVELOPERS.md', 'src/HOSTING.md', 'src/content/FIELDS.md'])('in %s', (path) => {
    const code = [...textOf(path).matchAll(/```[\s\S]*?```|`[^`\n]+`/g)].map(([found]) => found);
    expect(code.filter((found) => BRACES.test(found))).toEqual([]);
  });

  test('in the words of every finding', () => {
    const said = filesBelow(join(root, 'src'))
      .filter((path) => path.endsWith('.ts'))
      .flatMap((path) => [...textOf(`src/${path}`).matchAll(/'[^'\n]*'|`[^`\n]*`/g)].map(([found]) => found));
    expect(said.length).toBeGreaterThan(1000);
    expect(said.filter((words) => /\b[a-z]\w*: \{[^$]*…/i.test(words))).toEqual([]);
  });
});

/** The fields of a block of an example, one text each: a block may show one key in several records. */
const shown = (block: string): readonly string[] => block.split(/\n(?=[\p{L}])/u);

const blocks = ['README.md', 'src/content/FIELDS.md'].flatMap((path) =>
  [...textOf(path).matchAll(/```yaml\n([\s\S]*?)\n```/g)].flatMap(([, block = '']) =>
    shown(block).map((lines) => ({ path, lines })),
  ),
);

test('there are examples', () => {
  expect(blocks.filter(({ path }) => path === 'README.md').length).toBeGreaterThan(10);
  expect(blocks.filter(({ path }) => path !== 'README.md').length).toBeGreaterThan(20);
});

test.each(blocks)('$path shows what a record takes: $lines', ({ lines }) => {
  const document = parseFields(lines);
  expect(document.errors).toEqual([]);
  const values = valuesOf(document) ?? {};
  const faults = [boxSchema, cycleSchema, itemSchema].map((schema) => {
    const result = v.safeParse(schema, values);
    // Other fields of the record are not shown.
    return (result.issues ?? []).filter(({ path }) => Object.hasOwn(values, String(path?.[0]?.key)));
  });
  expect(Object.keys(values)).toHaveLength(1);
  expect(faults.some((issues) => issues.length === 0)).toBe(true);
});

test('the finding with its line that the README shows is the one that is made', () => {
  const [sample = '', file = ''] =
    /^(content\/\S+?):7:\d+ {2}must fix[\s\S]*?alone\."$/m.exec(textOf('README.md')) ?? [];
  const source = {
    path: file.replace('content/', ''),
    text: '---\nname: Wooden seed tray\nkind: seed tray\nlead: true\nbrand: Tolley Joinery\ndescription: A tray.\ncare: Oil it: the outside alone.\n---\n',
  };
  const record = frontMatterOf(source, parseFile(source));
  const report = diagnosticsReport(
    [...record.diagnostics, ...validate(itemSchema, record).diagnostics],
    (name) => `content/${name}`,
  );
  expect(report.trimEnd()).toBe(sample);
});
