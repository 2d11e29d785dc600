/** A file's front matter with the place of every key, and its body with its true line numbers. */
import matter from 'gray-matter';
import type { Nodes, Root } from 'mdast';
import { type Document, isMap, isNode, isPair, isSeq, LineCounter, visit, type YAMLMap } from 'yaml';
import type { Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import { type Fenced, type FenceFault, fencesOf } from './fences.ts';
import { parseMarkdown } from './markdown.ts';
import { BOUNDS, type Excess, excessIn, tooDeep } from './markdown-bounds.ts';
import { type FormFault, mendFields } from './mend-fields.ts';
import type { ParsedFile } from './record-file.ts';
import { schemaOf } from './record-schema.ts';
import { type SecondRecord, secondRecords } from './second-records.ts';
import type { TextSource } from './sources.ts';
import { UNREADABLE } from './unreadable-signs.ts';
import { parseFields, valuesOf } from './yaml-fields.ts';

/** Where the first `*name` stands, which YAML puts another value in place of. */
const firstAlias = (document: Document): number => {
  let offset = 0;
  visit(document, {
    Alias: (_, alias) => {
      offset = alias.range?.[0] ?? 0;
      return visit.BREAK;
    },
  });
  return offset;
};

const placesIn = (map: YAMLMap, at: (offset: number) => Location): Map<string, Location> => {
  const places = new Map<string, Location>();
  const walk = (node: unknown, path: string): void => {
    if (isMap(node)) {
      for (const pair of node.items) {
        if (!isPair(pair) || !isNode(pair.key)) continue;
        const below = path ? `${path}.${String(pair.key)}` : String(pair.key);
        if (!places.has(below)) places.set(below, at(pair.key.range?.[0] ?? 0));
        walk(pair.value, below);
      }
    } else if (isSeq(node)) {
      node.items.forEach((item, i) => {
        if (isNode(item)) places.set(`${path}.${i}`, at(item.range?.[0] ?? 0));
        walk(item, `${path}.${i}`);
      });
    }
  };
  walk(map, '');
  return places;
};

/** A first line of dashes; what it captures is the language that it claims. */
const OPENING = /^---[ \t]*((?:[^ \t\r\n][^\r\n]*)?)\r?\n/;

/** Passages within passages that a tree may have: each list is two, a list and its entry. */
const DEEPEST = 2 * BOUNDS.depth + 20;

const depthOf = (tree: Root): number => {
  let depth = 0;
  for (let level: Nodes[] = [tree]; level.length > 0; depth++)
    level = level.flatMap((node) => ('children' in node ? node.children : []));
  return depth;
};

const excessFinding = (file: string, { rule, line, found, expected, fix }: Excess): Diagnostic => ({
  weight: 'must fix',
  rule,
  location: { file, line, column: 1 },
  message: `Unexpected ${found}, expected ${expected}`,
  fix,
});

const bodyOf = (file: string, text: string, diagnostics: Diagnostic[]): Root => {
  const tree = parseMarkdown(text);
  if (depthOf(tree) <= DEEPEST) return tree;
  diagnostics.push(excessFinding(file, tooDeep(1)));
  return { type: 'root', children: [] };
};

/** The fields of a text whose story begins before a line; nothing where they are not whole there. */
const fieldsBefore = (text: string, line: number): string => {
  const lines = text.split('\n', line - 1);
  const end = lines.findIndex((one, i) => i > 0 && one.trimEnd() === '---');
  return end < 0 ? '' : `${lines.slice(0, end + 1).join('\n')}\n`;
};

/** A fault of the fields' form in words. `first` is the number of the file's line that is the first of the fields' text. */
const formFinding = (file: string, first: number, { line, column, kind, mend }: FormFault): Diagnostic => {
  if (mend) {
    return {
      weight: kind === 'left out' ? 'look at' : 'must fix',
      rule: 'yaml',
      location: { file, line: mend.line + first, column: mend.column },
      message: mend.message,
      fix: mend.fix,
      instead: { from: mend.from + first, to: mend.to + first, lines: mend.lines },
    };
  }
  const location = { file, line: line + first, column };
  if (kind === 'twice')
    return {
      weight: 'must fix',
      rule: 'repeated-key',
      location,
      message: 'Unexpected second field of the same name, expected each name once',
      fix: 'Keep the one you mean and take the other out',
    };
  return {
    weight: 'must fix',
    rule: 'yaml',
    location,
    message: 'Unexpected line, expected a field’s name, a colon, a space and its text',
    fix: 'Put double quotes round a text that has signs in it, and let what belongs together begin one under the other',
  };
};

const fenceFinding = (file: string, { line, column, ...rest }: FenceFault): Diagnostic => ({
  weight: 'must fix',
  rule: 'front-matter',
  location: { file, line, column },
  ...rest,
});

const secondFinding = (file: string, { from, to, keys }: SecondRecord): Diagnostic => ({
  weight: 'must fix',
  rule: 'second-record',
  location: { file, line: from + 1, column: 1 },
  message: 'Unexpected second record in one file, expected a file of its own for each',
  fix: `Move lines ${from + 1} to ${to + 1} ${
    keys.includes('theme')
      ? 'to the cycle.md of their cycle'
      : 'into a new file in items/, beginning with `---`, the fields and another `---`'
  }`,
});

/** A record's text with its fields between two lines `---`, each line of them under its own number. */
const asMeant = ({ lines, fields = { from: 0, to: 0 }, body }: Fenced): string =>
  [
    '---',
    ...Array<string>(Math.max(0, fields.from - 1)).fill(''),
    ...lines.slice(fields.from, fields.to),
    '---',
    ...lines.slice(body.from, body.to),
  ].join('\n');

/** Front matter and body of a record, as plain data. What is wrong with it is reported, never thrown. */
export const parseFile = ({ path: file, text: whole }: TextSource): ParsedFile => {
  const diagnostics: Diagnostic[] = [];
  const excess = excessIn(whole);
  if (excess) diagnostics.push(excessFinding(file, excess));
  // Of a text that is too much the fields alone are looked at.
  const text = excess ? fieldsBefore(whole, excess.line) : whole;
  if (excess && text === '') return { fields: [], body: { type: 'root', children: [] }, diagnostics };
  const top: Location = { file, line: 1, column: 1 };
  const refuse = (rule: string, location: Location, message: string, fix: string): void => {
    diagnostics.push({ weight: 'must fix', rule, location, message, fix });
  };
  const unusable = (body: string): ParsedFile => ({
    fields: [],
    body: bodyOf(file, body, diagnostics),
    diagnostics,
  });

  const strange = text.search(UNREADABLE);
  if (strange >= 0) {
    const before = text.slice(0, strange).split('\n');
    refuse(
      'encoding',
      { file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 },
      'Unexpected sign that cannot be read, expected a text file saved as UTF-8',
      'Open the file in a text editor and save it anew; where the editor asks for the encoding, choose UTF-8. Then see whether the sign is right',
    );
    // A file of another sort is not a record with faults.
    if (text.includes('\0')) return unusable('');
  }
  const fenced = fencesOf(text.split('\n'));
  if (!fenced && strange >= 0) return unusable('');
  if (!fenced) {
    const [first = '', behind = ''] = OPENING.exec(text) ?? [];
    if (behind === '')
      refuse(
        'front-matter',
        top,
        'Unexpected first line, expected `---` and the record’s fields',
        'Begin the file with a line `---`, the fields, and another line `---`',
      );
    else
      refuse(
        'front-matter',
        top,
        `Unexpected \`${first.trim()}\`, expected \`---\` alone: fields are written as \`name: text\` and in no other form`,
        'Write three dashes alone on the first line, and each field as its name, a colon, a space and its text',
      );
    return unusable(behind === '' ? text : '');
  }
  for (const fault of fenced.faults) diagnostics.push(fenceFinding(file, fault));
  if (!fenced.fields) return unusable('');
  const others = secondRecords(fenced.lines, fenced.body.from);
  for (const other of others) diagnostics.push(secondFinding(file, other));
  // What is not this record's is told once, and not read as its story.
  const end = Math.min(fenced.body.to, others[0]?.from ?? Number.POSITIVE_INFINITY);

  let lines = new LineCounter();
  let document: Document | undefined;
  let source = '';
  const parse = (fields: string): object => {
    source = fields;
    document = parseFields(fields, lines);
    return {};
  };
  const refused = (): object => ({});
  const { content } = matter(asMeant({ ...fenced, body: { ...fenced.body, to: end } }), {
    engines: {
      yaml: { parse },
      javascript: { parse: refused },
      coffee: { parse: refused },
      json: { parse: refused },
    },
  });
  // The body keeps its line numbers: all that stands before it stands empty.
  const body = bodyOf(file, '\n'.repeat(fenced.body.from) + content, diagnostics);
  // gray-matter hands the engine the text from the end of the opening line on; a file that lacks one begins below it.
  const first = fenced.fields.from === 0 ? 0 : 1;
  const at = (offset: number): Location => {
    const { line, col } = lines.linePos(offset);
    return { file, line: line - 1 + first, column: col };
  };
  if (!document) {
    refuse(
      'front-matter',
      top,
      'Unexpected record without fields, expected them between the two lines `---`',
      'Write one field a line, as `name: Brass plant mister`',
    );
    return { ...unusable(''), body };
  }
  const { faults, mended } = mendFields(source, schemaOf(file), { document, counter: lines });
  for (const fault of faults) diagnostics.push(formFinding(file, first, fault));
  if (mended === undefined) return { ...unusable(''), body };
  // What else is wrong is found in the same run, in the fields as they were meant.
  if (mended !== source) {
    lines = new LineCounter();
    document = parseFields(mended, lines);
  }
  if (!isMap(document.contents)) {
    refuse(
      'front-matter',
      { ...top, line: 2 },
      'Unexpected text between the two lines `---`, expected fields: a name, a colon, a space and a text',
      'Write one field a line, as `name: Brass plant mister`',
    );
    return { ...unusable(''), body };
  }
  const data = valuesOf(document);
  if (!data) {
    refuse(
      'yaml',
      at(firstAlias(document)),
      'Unexpected `*` or `&` at the beginning of a text, expected quotes round the text',
      'Put a text that begins with `*` or `&` between double quotes; where `*` stands for something written elsewhere, write that out',
    );
    return { ...unusable(''), body };
  }
  return { data, fields: [...placesIn(document.contents, at)], body, diagnostics };
};
