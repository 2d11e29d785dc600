/**
 * Puts what runs in a visitor's browser into one classic script a language, since a page opened from disk may
 * load neither modules nor data. Outside the rooms: it runs when the program is compiled, not when it runs.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'rolldown';

const path = (file) => fileURLToPath(new URL(file, import.meta.url));

/** Each language that has a stemmer, with the end of its file's name, as the one table of them says. */
const STEMMERS = Object.fromEntries(
  Array.from(
    readFileSync(path('analysis/language/stemmer.ts'), 'utf8').matchAll(
      /(\w+): \(\) => import\('natural\/lib\/natural\/stemmers\/porter_stemmer(\w*)\.js'\)/g,
    ),
    ([, lang, ending]) => [lang, ending],
  ),
);
if (STEMMERS.en !== '') throw new Error('Expected the table of stemmers in analysis/language/stemmer.ts');

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

const bundle = (name, wanted) =>
  build({
    input: path('browser/search.ts'),
    plugins: [oneStemmer(wanted), pluralizeAsModule],
    platform: 'browser',
    output: {
      file: path(`../dist/browser/${name}.js`),
      format: 'iife',
      name: 'lidloreSearch',
      minify: true,
      codeSplitting: false,
    },
    logLevel: 'warn',
  });

// A language without a stemmer is searched by its words as they are.
await bundle('search', 'none');
for (const [lang, wanted] of Object.entries(STEMMERS)) await bundle(`search.${lang}`, wanted);
