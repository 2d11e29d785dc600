/** The program, bundled. */
import { readFileSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { fileURLToPath } from 'node:url';
import { build } from 'rolldown';

const path = (file) => fileURLToPath(new URL(`../${file}`, import.meta.url));

const { dependencies } = JSON.parse(readFileSync(path('../package.json'), 'utf8'));

/** The package that an import names: `@a/b` of `@a/b/c.js`. */
const packageOf = (specifier) => /^(?:@[^/]+\/)?[^/]+/.exec(specifier)?.[0];

const loadedDependencies = new Set();

const staysOutside = (specifier) => {
  const name = packageOf(specifier);
  if (name in dependencies) loadedDependencies.add(name);
  return name in dependencies || isBuiltin(specifier);
};

/** The letter's library for HTML can fetch pages, with a whole client of HTTP, and is never asked to. */
const withoutNetwork = {
  name: 'without-network',
  resolveId: (source) => (source === 'undici' ? '\0no-network' : null),
  load: (id) => (id === '\0no-network' ? 'module.exports = {};' : null),
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

const loader = readFileSync(path('bundling/load-chunk.cjs'), 'utf8');

/** Chunks load one another through `loadChunk` of load-chunk.cjs, which is put at the head of main.js. */
const throughLoader = {
  name: 'through-loader',
  generateBundle: (_, chunks) => {
    for (const chunk of Object.values(chunks)) {
      const code = chunk.code.replace(/\brequire\((["'`])\.\/([^"'`]+)\1\)/g, (call, _quote, name) =>
        name in chunks ? `loadChunk("${name}")` : call,
      );
      chunk.code = chunk.isEntry ? code.replace(/^(?:#!.*\n)?/, (line) => `${line}${loader}`) : code;
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
    input: path('cli/main.ts'),
    plugins: [ownAddress, throughLoader, withoutNetwork],
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
      // Names stay as they are written: the report of a bug shows them.
      minify: { compress: true, mangle: false, codegen: { removeWhitespace: true } },
    },
    // gray-matter's `eval` is of an engine that content/front-matter.ts takes away.
    checks: { eval: false },
    logLevel: 'warn',
  });
  checkDependencies();
  return output.flatMap((chunk) => Object.keys(chunk.modules ?? {}));
};
