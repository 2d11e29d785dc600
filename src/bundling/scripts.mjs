/** What runs in a visitor's browser, bundled. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'rolldown';

const path = (file) => fileURLToPath(new URL(`../${file}`, import.meta.url));

/** Languages that have a stemmer, and the end of its file's name. */
const STEMMERS = new Map(
  [
    ...readFileSync(path('analysis/language/stemmer.ts'), 'utf8').matchAll(
      /(\w+): \(\) => import\('.*porter_stemmer(\w*)\.js'\)/g,
    ),
  ].map(([, lang, end]) => [lang, end]),
);
if (STEMMERS.size === 0) throw new Error('Expected stemmer.ts to import a stemmer a line');

/** What a stemmer's file loads besides the stemmer, to split texts that we split ourselves. */
const UNUSED = /natural[\\/]lib[\\/]natural[\\/]tokenizers[\\/]/;

/** Keeps the one stemmer that is wanted, and leaves nothing of the others. */
const oneStemmer = (wanted) => ({
  name: 'one-stemmer',
  resolveId: (source) => {
    const other = /natural\/stemmers\/porter_stemmer(_\w+)?\.js$/.exec(source);
    return other && (other[1] ?? '') !== wanted ? '\0no-stemmer' : null;
  },
  load: (id) => {
    if (id === '\0no-stemmer') return 'export default undefined;';
    return UNUSED.test(id) ? 'module.exports = function () {};' : null;
  },
});

/** pluralize hands itself over only to what has a `require`; the bundle has none. */
const pluralizeAsModule = {
  name: 'pluralize-as-module',
  transform: (code, id) => {
    if (!/pluralize[\\/]pluralize\.js$/.test(id)) return null;
    const bundled = code.replace("typeof require === 'function'", 'true');
    if (bundled === code) throw new Error('Expected pluralize to ask for `require`');
    return bundled;
  },
};

const bundle = (name, wanted, from = 'search') =>
  build({
    input: path(`browser/${from}.ts`),
    plugins: [oneStemmer(wanted), pluralizeAsModule],
    platform: 'browser',
    output: {
      file: path(`../dist/browser/${name}.js`),
      format: 'iife',
      name: from === 'search' ? 'lidloreSearch' : 'lidloreDesk',
      minify: true,
      codeSplitting: false,
    },
    logLevel: 'warn',
  });

/**
 * Writes `dist/browser`: one classic script a language, because a page opened from disk may load neither modules
 * nor data. Gives the bundled modules' paths.
 */
export const bundleScripts = async () => {
  const bundled = [
    // A language without a stemmer is searched by its words as they are.
    await bundle('search', 'none'),
    // The owner's own pages, served by the desk and never published.
    await bundle('desk', 'none', 'desk/desk'),
  ];
  for (const [lang, wanted] of STEMMERS) bundled.push(await bundle(`search.${lang}`, wanted));
  return bundled.flatMap(({ output }) => output.flatMap((chunk) => Object.keys(chunk.modules ?? {})));
};
