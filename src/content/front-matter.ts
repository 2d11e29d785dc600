/** A file's front matter with the place of every key, and its body with its true line numbers. */
import matter from 'gray-matter';
import type { Root } from 'mdast';
import {
  type Document,
  isMap,
  isNode,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  visit,
  type YAMLMap,
} from 'yaml';
import type { Diagnostic, Place } from '../diagnostics/diagnostic.ts';
import { parseMarkdown } from './markdown.ts';
import type { TextSource } from './sources.ts';

export interface FrontMatter {
  readonly file: string;
  /** Plain values; undefined when the front matter cannot be used. */
  readonly data: Readonly<Record<string, unknown>> | undefined;
  /** Place of a key (`name`, `image.0.alt`), or of the nearest one above it. */
  readonly placeOf: (path: readonly (string | number)[]) => Place;
  readonly fields: ReadonlyMap<string, Place>;
  readonly body: Root;
  readonly diagnostics: readonly Diagnostic[];
}

/** Keys whose digits matter as they were typed: 4.50 is not 4.5, and a code may begin with 0. */
const AS_TYPED = new Set(['price', 'gtin', 'sku']);

const keepDigits = (document: Document): void => {
  visit(document, {
    Pair: (_, pair) => {
      if (!isScalar(pair.key) || !AS_TYPED.has(String(pair.key.value))) return;
      if (isScalar(pair.value) && typeof pair.value.value === 'number') pair.value.value = pair.value.source;
    },
  });
};

const placesIn = (map: YAMLMap, at: (offset: number) => Place): Map<string, Place> => {
  const places = new Map<string, Place>();
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

const OPENING = /^---[ \t]*([^\r\n]*)\r?\n/;

/** Front matter and body of a record. What is wrong with it is reported, never thrown. */
export const readFrontMatter = ({ path: file, text }: TextSource): FrontMatter => {
  const diagnostics: Diagnostic[] = [];
  const top: Place = { file, line: 1, column: 1 };
  const refuse = (rule: string, place: Place, message: string, fix: string): void => {
    diagnostics.push({ weight: 'must fix', rule, place, message, fix });
  };
  const unusable = (body: string): FrontMatter => ({
    file,
    data: undefined,
    placeOf: () => top,
    fields: new Map(),
    body: parseMarkdown(body),
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
      `Unexpected \`---${language}\`, expected \`---\`: front matter is YAML and nothing else`,
      'Write `---` alone on the first line and the fields in YAML',
    );
    return unusable('');
  }
  if (!/\r?\n---[ \t]*(?:\r?\n|$)/.test(text.slice(opening[0].length - 1))) {
    refuse(
      'front-matter',
      top,
      'Unexpected end of file, expected a line `---` that closes the front matter',
      'Add a line `---` after the last field',
    );
    return unusable('');
  }

  const lines = new LineCounter();
  let document: Document | undefined;
  const parse = (source: string): object => {
    document = parseDocument(source, {
      version: '1.2',
      schema: 'core',
      lineCounter: lines,
      logLevel: 'silent',
    });
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
  const body = parseMarkdown('\n'.repeat(before) + content);
  // gray-matter hands the engine the text from the end of the opening line on, so its first line is ours.
  const at = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { file, line, column: col };
  };
  if (!document) {
    refuse(
      'front-matter',
      top,
      'Unexpected empty front matter, expected the record’s fields',
      'Write the fields between the two lines `---`',
    );
    return { ...unusable(''), body };
  }
  for (const error of document.errors) {
    const place = at(error.pos[0]);
    const message = error.message.split('\n')[0]?.replace(/ at line \d+, column \d+:?$/, '') ?? '';
    if (error.code === 'DUPLICATE_KEY')
      refuse(
        'repeated-key',
        place,
        'Unexpected second key of the same name, expected each key once',
        'Keep the one you mean and take the other out',
      );
    else
      refuse(
        'yaml',
        place,
        `Unexpected YAML: ${message}`,
        'Put text that holds `:` or `#` between double quotes, and keep the indentation even',
      );
  }
  if (document.errors.some((error) => error.code !== 'DUPLICATE_KEY')) return { ...unusable(''), body };
  if (!isMap(document.contents)) {
    refuse(
      'front-matter',
      { ...top, line: 2 },
      'Unexpected front matter, expected fields as `key: value`',
      'Write one field a line, as `name: Brass plant mister`',
    );
    return { ...unusable(''), body };
  }
  keepDigits(document);
  const fields = placesIn(document.contents, at);
  const placeOf = (path: readonly (string | number)[]): Place => {
    for (let length = path.length; length > 0; length--) {
      const some = path.slice(0, length);
      // One thing may stand where a list is meant: then the key has no `0` in it.
      const place = fields.get(some.join('.')) ?? fields.get(some.filter((step) => step !== 0).join('.'));
      if (place) return place;
    }
    return top;
  };
  return {
    file,
    data: document.toJS({ maxAliasCount: 100 }) as Record<string, unknown>,
    placeOf,
    fields,
    body,
    diagnostics,
  };
};
