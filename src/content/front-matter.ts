/** A file's front matter with the place of every key, and its body with its true line numbers. */
import matter from 'gray-matter';
import type { Nodes, Root } from 'mdast';
import { type Document, isMap, isNode, isPair, isSeq, LineCounter, visit, type YAMLMap } from 'yaml';
import type { Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import { CLOSING, OPENING } from './front-matter-span.ts';
import { parseMarkdown } from './markdown.ts';
import { type FormFault, mendFields } from './mend-fields.ts';
import type { ParsedFile } from './record-file.ts';
import { schemaOf } from './record-schema.ts';
import type { TextSource } from './sources.ts';
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

/** Passages within passages that a body may hold: deeper is noise, and what walks the tree would run out of room. */
const DEEPEST = 100;

const depthOf = (tree: Root): number => {
  let depth = 0;
  for (let level: Nodes[] = [tree]; level.length > 0; depth++)
    level = level.flatMap((node) => ('children' in node ? node.children : []));
  return depth;
};

const bodyOf = (file: string, text: string, diagnostics: Diagnostic[]): Root => {
  try {
    const tree = parseMarkdown(text);
    if (depthOf(tree) <= DEEPEST) return tree;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
  }
  diagnostics.push({
    weight: 'must fix',
    rule: 'markdown-depth',
    location: { file, line: 1, column: 1 },
    message: `Unexpected text, expected at most ${DEEPEST} lists and quotations within one another`,
    fix: 'Take out the rows of `>` or `*`',
  });
  return { type: 'root', children: [] };
};

/** A fault of the fields' form in words. */
const formFinding = (file: string, { line, column, kind, mend }: FormFault): Diagnostic => {
  if (mend) {
    const [first, last] = [mend.from + 1, mend.to + 1];
    return {
      weight: kind === 'left out' ? 'look at' : 'must fix',
      rule: 'yaml',
      location: { file, line: mend.line + 1, column: mend.column },
      message: mend.message,
      fix: mend.fix,
      instead: { from: first, to: last, lines: mend.lines },
    };
  }
  const location = { file, line: line + 1, column };
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

/** Front matter and body of a record, as plain data. What is wrong with it is reported, never thrown. */
export const parseFile = ({ path: file, text }: TextSource): ParsedFile => {
  const diagnostics: Diagnostic[] = [];
  const top: Location = { file, line: 1, column: 1 };
  const refuse = (rule: string, location: Location, message: string, fix: string): void => {
    diagnostics.push({ weight: 'must fix', rule, location, message, fix });
  };
  const unusable = (body: string): ParsedFile => ({
    fields: [],
    body: bodyOf(file, body, diagnostics),
    diagnostics,
  });

  const opening = OPENING.exec(text);
  if (!opening) {
    refuse(
      'front-matter',
      top,
      'Unexpected first line, expected `---` and the record’s fields',
      'Begin the file with a line `---`, the fields, and another line `---`',
    );
    return unusable(text);
  }
  const language = opening[1]?.trim() ?? '';
  if (language !== '' && language !== 'yaml') {
    refuse(
      'front-matter',
      top,
      `Unexpected \`---${language}\`, expected \`---\` and nothing else on the line`,
      'Write `---` alone on the first line and the fields below it, one a line, as `name: Brass plant mister`',
    );
    return unusable('');
  }
  const closing = CLOSING.exec(text.slice(opening[0].length))?.[0];
  if (closing === undefined || closing.trim() !== '---') {
    refuse(
      'front-matter',
      top,
      `Unexpected ${closing === undefined ? 'end of file' : `line \`${closing.slice(0, 40)}\``}, expected a line \`---\` after the fields`,
      'Write `---` and nothing else on the line after the last field',
    );
    return unusable('');
  }

  const lines = new LineCounter();
  let document: Document | undefined;
  let source = '';
  const parse = (fields: string): object => {
    source = fields;
    document = parseFields(fields, lines);
    return {};
  };
  const refused = (): object => ({});
  const { content } = matter(text, {
    engines: {
      yaml: { parse },
      javascript: { parse: refused },
      coffee: { parse: refused },
      json: { parse: refused },
    },
  });
  // The body keeps its line numbers: the front matter's lines stand empty before it.
  const before = text.slice(0, text.length - content.length).split('\n').length - 1;
  const body = bodyOf(file, '\n'.repeat(before) + content, diagnostics);
  // gray-matter hands the engine the text from the end of the opening line on, so its first line is ours.
  const at = (offset: number): Location => {
    const { line, col } = lines.linePos(offset);
    return { file, line, column: col };
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
  const { faults, mended } = mendFields(source, schemaOf(file));
  for (const fault of faults) diagnostics.push(formFinding(file, fault));
  if (mended === undefined) return { ...unusable(''), body };
  // What else is wrong is found in the same run, in the fields as they were meant.
  if (mended !== source) document = parseFields(mended, lines);
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
