/** The rules of the layout, as a function over files, so that each rule can be tried on a file that breaks it. */
import { builtinModules } from 'node:module';
import { posix } from 'node:path';

export interface Breach {
  readonly rule: string;
  readonly file: string;
  readonly what: string;
}

/**
 * Who may import whom. A room may always import itself. Plain strings know no room, so every room that has to may use
 * `text`. A finding is made where the mistake is met and shown at the edge, so `diagnostics` passes through most rooms.
 */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  text: [],
  diagnostics: ['text'],
  content: ['diagnostics', 'text'],
  model: ['content', 'diagnostics', 'text'],
  analysis: ['model', 'diagnostics', 'text'],
  wording: ['model', 'analysis', 'diagnostics', 'text'],
  render: ['model', 'wording', 'diagnostics', 'text'],
  channels: ['analysis', 'diagnostics', 'model', 'render', 'wording', 'text'],
  pipeline: ['analysis', 'channels', 'content', 'diagnostics', 'model', 'render', 'wording', 'text'],
  workspace: [
    ...['analysis', 'channels', 'content', 'diagnostics', 'io', 'model', 'pipeline', 'render', 'text'],
    'wording',
  ],
  drawing: ['render', 'text'],
  io: ['content', 'drawing', 'render', 'text'],
  // Words are cut and stemmed by one module on both sides, and an index is asked by the code that made it.
  browser: ['analysis', 'model', 'text', 'wording'],
  desk: [...['content', 'diagnostics', 'io', 'model', 'pipeline', 'render', 'text', 'wording', 'workspace']],
  cli: ['desk', 'diagnostics', 'io', 'pipeline', 'text', 'wording', 'workspace'],
};

/** Rooms of which a room may take the types, not the code: nothing of them runs there. */
const TYPES_ONLY: Readonly<Record<string, readonly string[]>> = {
  analysis: ['diagnostics'],
  wording: ['model', 'analysis', 'diagnostics'],
  drawing: ['render'],
  io: ['content', 'render'],
};

/** Beginnings of the paths in a room that another room may import, where not all of it. */
const FOLDERS_ONLY: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  // What tags sentences and measures coverage is for the build, and far too heavy for a visitor.
  // Of the words, those of the search alone.
  browser: { analysis: ['language/', 'search/'], wording: ['en/browser.ts'] },
};

/** Libraries that one room alone may import. */
const ONLY_IN: Readonly<Record<string, string>> = {
  'gray-matter': 'content',
  'remark-parse': 'content',
  yaml: 'content',
  'remark-html': 'render',
  sharp: 'io',
  'heic-decode': 'io',
  fontkit: 'drawing',
  harfbuzzjs: 'drawing',
  wawoff2: 'drawing',
  'bidi-js': 'drawing',
  linebreak: 'drawing',
  natural: 'analysis',
  'wink-nlp': 'analysis',
  'wink-eng-lite-web-model': 'analysis',
};

const EDGE = new Set(['io', 'cli']);

/** What reaches outside the process, or differs from run to run. */
const OUTSIDE: readonly (readonly [RegExp, string])[] = [
  [/\bDate\.now\b/, 'Date.now'],
  [/\bnew Date\b(?!\s*\(\s*[^)\s])|(?<!new )\bDate\(/, 'new Date()'],
  [/(?<![.\w'"-])process\b(?=\s*[.[?;,)}])/, 'process'],
  [/(?<![.\w'"-])console\b(?=\s*[.[?;,)}])/, 'console'],
  [/(?<![.\w'"-])fetch\b(?=\s*[(;,)}])/, 'fetch'],
  [/(?<![.\w'"-])performance\b(?=\s*[.[?;,)}])/, 'performance'],
  [/\bglobalThis\b/, 'globalThis'],
  [/\bMath\.random\b/, 'Math.random'],
  [/\bTemporal\.Now\b/, 'Temporal.Now'],
  [/\bset(?:Timeout|Interval|Immediate)\(/, 'timers'],
];

const MOST_LINES = 400;

/** Strings stay, so that one with `/*` in it does not hide the code after it. */
const withoutComments = (source: string): string =>
  source.replace(
    /("(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`)|\/\*[\s\S]*?\*\/|\/\/.*$/gm,
    (_, text: string | undefined) => text ?? '',
  );

/** Modules of which a source imports types alone, as a whole statement says. */
const typeImportsOf = (source: string): ReadonlySet<string> => {
  const named = (pattern: RegExp) => [...source.matchAll(pattern)].map((found) => found[1] as string);
  const types = named(/\b(?:import|export)\s+type\b[^'"`;()]*?\bfrom\s*['"]([^'"]+)['"]/g);
  const all = importsOf(source);
  return new Set(
    types.filter((one) => all.filter((a) => a === one).length === types.filter((t) => t === one).length),
  );
};

/** Every module a source names: static, type-only, re-exported, dynamic, required. */
const importsOf = (source: string): string[] =>
  [
    ...source.matchAll(/\b(?:import|export)\b[^'"`;()]*?\bfrom\s*['"]([^'"]+)['"]/g),
    ...source.matchAll(/\bimport\s*['"]([^'"]+)['"]/g),
    ...source.matchAll(/\b(?:import|require)\s*\(\s*['"`]([^'"`]+)['"`]/g),
  ].map((found) => found[1] as string);

/**
 * Channels know the shared types and the files of their own folder; the list alone names channels, each by its file or
 * its folder's index. `name` is the importer's file or folder in the room.
 */
const mayImportInChannels = (name: string, path: string): boolean => {
  const [, , targetName = '', inFolder = 'index.ts'] = path.split('/');
  if (name === 'index.ts') return inFolder === 'index.ts';
  return targetName === 'channel.ts' || (targetName === name && !name.endsWith('.ts'));
};

const breachesIn = (file: string, source: string): Breach[] => {
  const breaches: Breach[] = [];
  const breach = (rule: string, what: string): void => {
    breaches.push({ rule, file, what });
  };
  const [, room = '', name = ''] = file.split('/');
  const code = withoutComments(source);
  if (!(room in MAY_IMPORT)) breach('rooms', room);
  if (source.split('\n').length > MOST_LINES) breach('size', `over ${MOST_LINES} lines`);
  if (/\bexport\s+default\b|\bas\s+default\b/.test(code)) breach('default export', 'export default');

  const typesAlone = typeImportsOf(code);
  for (const specifier of importsOf(code)) {
    if (specifier.startsWith('.')) {
      const path = posix.join(posix.dirname(file), specifier);
      const [, target = '', ...below] = path.split('/');
      if (target !== room && !MAY_IMPORT[room]?.includes(target)) breach('rooms', specifier);
      const folders = FOLDERS_ONLY[room]?.[target];
      if (folders && !folders.some((folder) => below.join('/').startsWith(folder)))
        breach('folders', specifier);
      if (TYPES_ONLY[room]?.includes(target) && !typesAlone.has(specifier)) breach('types', specifier);
      if (room === 'channels' && target === 'channels' && !mayImportInChannels(name, path))
        breach('channels', specifier);
      continue;
    }
    const library = Object.keys(ONLY_IN).find((one) => specifier === one || specifier.startsWith(`${one}/`));
    const home = library ?? (specifier.startsWith('rehype') ? 'rehype' : undefined);
    if (home !== undefined && (ONLY_IN[home] ?? 'render') !== room) breach('libraries', specifier);
    const hashing = specifier === 'node:crypto' && file === 'src/text/hash.ts';
    const builtin = specifier.startsWith('node:') || builtinModules.includes(specifier);
    if (builtin && !EDGE.has(room) && !hashing) breach('purity', specifier);
  }
  if (!EDGE.has(room) && room !== 'browser')
    for (const [pattern, what] of OUTSIDE) if (pattern.test(code)) breach('purity', what);
  return breaches;
};

/** Every breach in files by path (`src/model/box.ts` → source). */
export const breachesOf = (files: Readonly<Record<string, string>>): Breach[] =>
  Object.entries(files).flatMap(([file, source]) => breachesIn(file, source));
