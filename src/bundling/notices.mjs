/** The licences of the libraries that are bundled. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** Licences that ask for no more than that their text goes with the copy. Others have to be read first. */
const FREE = new Set([
  '0BSD',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'ISC',
  'MIT',
  'MIT-0',
  'Python-2.0',
]);

/** natural as a whole is MIT, but some of its files carry other terms. */
const OTHER_TERMS = /GNU (?:Lesser )?General Public/i;

const readPackage = (folder) => JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

/** The folder of the package that a module belongs to; undefined for our own. */
const packageFolder = (module) => {
  if (!/[\\/]node_modules[\\/]/.test(module)) return undefined;
  for (let folder = dirname(module); folder !== dirname(folder); folder = dirname(folder)) {
    const file = join(folder, 'package.json');
    if (existsSync(file) && readPackage(folder).name) return folder;
  }
  throw new Error(`Expected a package around ${module}`);
};

/** Some write an address behind the name: `MIT (http://…)`. */
const licenceOf = ({ license, licenses }) =>
  /^[\w.-]+/.exec(license?.type ?? license ?? licenses?.[0]?.type)?.[0];

const authorOf = ({ author }) => author?.name ?? author ?? 'its authors';

const noticeOf = (folder) => {
  const about = readPackage(folder);
  const licence = licenceOf(about);
  if (!FREE.has(licence)) throw new Error(`Unexpected licence ${licence} of ${about.name}, which is bundled`);
  const texts = readdirSync(folder)
    .filter((name) => /^(?:licen[cs]e|copying|notice)/i.test(name))
    .sort()
    .map((name) => readFileSync(join(folder, name), 'utf8').trim());
  const said = texts.length > 0 ? texts.join('\n\n') : `By ${authorOf(about)}.`;
  return { title: `${about.name} ${about.version} (${licence})`, said };
};

/**
 * One text with the licences of all packages that `modules` (paths of files) come from. Throws when one of them
 * is not free to be bundled.
 */
export const noticesOf = (modules) => {
  const bundled = modules.filter((module) => packageFolder(module) && existsSync(module));
  const bound = bundled.find((module) => OTHER_TERMS.test(readFileSync(module, 'utf8')));
  if (bound) throw new Error(`Unexpected terms in ${bound}, which is bundled`);
  const folders = [...new Set(bundled.map(packageFolder))];
  const notices = folders.map(noticeOf).sort((a, b) => (a.title < b.title ? -1 : 1));
  return [
    'Parts of these libraries are in the files of this folder.\n',
    ...notices.map(({ title, said }) => `${'-'.repeat(78)}\n${title}\n\n${said}\n`),
  ].join('\n');
};
