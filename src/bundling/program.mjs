/** The program, bundled. */
import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'rolldown';

const path = (file) => fileURLToPath(new URL(`../${file}`, import.meta.url));

const { dependencies } = JSON.parse(readFileSync(path('../package.json'), 'utf8'));

/** The package that an import names: `@a/b` of `@a/b/c.js`. */
const packageOf = (specifier) => /^(?:@[^/]+\/)?[^/]+/.exec(specifier)?.[0];

/** What the program and all that it makes depend on: its sources, templates, and the versions of its libraries. */
const programDigest = () => {
  const hash = createHash('sha256');
  const add = (file) =>
    hash
      .update(`${file}\0`)
      .update(readFileSync(path(`../${file}`)))
      .update('\0');
  for (const folder of ['src', 'templates'])
    for (const file of readdirSync(path(`../${folder}`), { recursive: true }).sort())
      if (statSync(path(`../${folder}/${file}`)).isFile()) add(`${folder}/${file}`);
  add('package-lock.json');
  return hash.digest('hex').slice(0, 32);
};

/** What is started by itself, from a file of its own. */
const OUTSIDE = ['io/film/encode-piece.cjs', 'io/decode-heic-thread.cjs'];

const loadedDependencies = new Set();

const staysOutside = (specifier) => {
  const name = packageOf(specifier);
  if (name in dependencies) loadedDependencies.add(name);
  return name in dependencies || isBuiltin(specifier);
};

/** A source that asks where a package lies reads its files without loading it, and depends on it as well. */
const readPackages = {
  name: 'read-packages',
  transform: (code, id) => {
    if (/[\\/]src[\\/].+\.ts$/.test(id))
      for (const [, specifier] of code.matchAll(/\.resolve\(["']([^"'.][^"']*)["']\)/g))
        staysOutside(specifier);
    return null;
  },
};

/** A source finds other files from where it would lie if it were compiled alone, though it lies in a chunk. */
const ownAddress = {
  name: 'own-address',
  transform: (code, id) => {
    const source = /[\\/]src[\\/](.+)\.ts$/.exec(id)?.[1];
    if (source === undefined) return null;
    if (/import\.meta\.(?:dirname|filename)/.test(code))
      throw new Error(
        `Expected ${id} to ask for import.meta.url, because a chunk lies elsewhere than its sources`,
      );
    if (!code.includes('import.meta.url')) return null;
    const compiled = JSON.stringify(`../${source.replaceAll('\\', '/')}.js`);
    return code.replaceAll('import.meta.url', `new URL(${compiled}, import.meta.url).href`);
  },
};

/** What each module loads at once, by its path. */
const importsOf = new Map();

const seeImports = {
  name: 'see-imports',
  moduleParsed: ({ id, importedIds }) => {
    importsOf.set(id, importedIds);
  },
};

/** Modules with all that they load at once. */
const withImports = (ids, seen = new Set()) => {
  for (const id of ids) {
    if (seen.has(id)) continue;
    seen.add(id);
    withImports(importsOf.get(id) ?? [], seen);
  }
  return seen;
};

const MAIN = path('cli/main.ts');

/** What a build loads that finds nothing changed. It is one chunk, because it would be a dozen and each takes time to open. */
const UNCHANGED = ['cli/build-command.ts', 'cli/build-report.ts'].map(path);

/** Modules of that chunk, known once all are read. What main.js has stays there, so that help needs no chunk. */
let unchanged;

const isOfUnchanged = (id) => {
  if (unchanged === undefined) {
    const ofMain = withImports([MAIN]);
    unchanged = new Set([...withImports(UNCHANGED)].filter((one) => !ofMain.has(one)));
  }
  return unchanged.has(id);
};

const loader = readFileSync(path('bundling/load-chunk.cjs'), 'utf8');

/** What every chunk calls, as the bundler names it. */
const RUNTIME = 'rolldown-runtime.js';

/**
 * Chunks load one another through `loadChunk` of load-chunk.cjs, which is put at the head of main.js with what every
 * chunk calls.
 */
const throughLoader = {
  name: 'through-loader',
  generateBundle: (_, chunks) => {
    const runtime = chunks[RUNTIME]?.code;
    if (runtime === undefined) throw new Error(`Expected the bundler to make ${RUNTIME}`);
    delete chunks[RUNTIME];
    const head = `${loader}loadChunk.take("${RUNTIME}",function(exports,require){${runtime}});\n`;
    for (const chunk of Object.values(chunks)) {
      const code = chunk.code.replace(/\brequire\((["'`])\.\/([^"'`]+)\1\)/g, (call, _quote, name) =>
        name in chunks || name === RUNTIME ? `loadChunk("${name}")` : call,
      );
      chunk.code = chunk.isEntry ? code.replace(/^(?:#!.*\n)?/, (line) => `${line}${head}`) : code;
    }
  },
};

const checkDependencies = () => {
  const unused = Object.keys(dependencies).filter((name) => !loadedDependencies.has(name));
  if (unused.length > 0)
    throw new Error(
      `Unexpected dependencies in package.json that the program never loads: ${unused.join(', ')}`,
    );
};

/**
 * Writes `dist/cli`: main.js, which knows the command line and its help, and beside it the chunks that a command
 * loads as it needs them. What package.json names as a dependency stays outside. Gives the bundled modules' paths.
 * CommonJS, because Node starts it sooner than modules.
 */
export const bundleProgram = async () => {
  const { output } = await build({
    input: MAIN,
    plugins: [seeImports, readPackages, ownAddress, throughLoader],
    transform: { define: { PROGRAM_DIGEST: JSON.stringify(programDigest()) } },
    external: staysOutside,
    platform: 'node',
    // Lets other chunks take from main.js what it has, so that help needs no chunk.
    preserveEntrySignatures: false,
    output: {
      dir: path('../dist/cli'),
      format: 'cjs',
      dynamicImportInCjs: false,
      entryFileNames: 'main.js',
      chunkFileNames: '[name].js',
      codeSplitting: {
        groups: [{ name: 'unchanged', test: isOfUnchanged, includeDependenciesRecursively: false }],
      },
      // Names stay as they are written: the report of a bug shows them.
      minify: { compress: true, mangle: false, codegen: { removeWhitespace: true } },
    },
    // gray-matter's `eval` is of an engine that content/front-matter.ts takes away.
    checks: { eval: false },
    logLevel: 'warn',
  });
  checkDependencies();
  for (const file of OUTSIDE) {
    mkdirSync(dirname(path(`../dist/${file}`)), { recursive: true });
    copyFileSync(path(file), path(`../dist/${file}`));
  }
  return output.flatMap((chunk) => Object.keys(chunk.modules ?? {}));
};
