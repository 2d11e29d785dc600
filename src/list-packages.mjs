/**
 * What an install of Lidlore brings along: each package with its version, licence and weight, and whether it runs a script
 * when it is installed. Plain Node, over the lock file and node_modules. `npm run packages`
 */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** Bytes of a package's own files, without the packages inside it. */
const bytesIn = (folder) =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.name !== 'node_modules')
    .reduce((sum, entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return sum + bytesIn(path);
      return entry.isFile() ? sum + statSync(path).size : sum;
    }, 0);

/** The packages of an install without development's, by name; those for other machines are left out. */
export const installedPackages = (root = ROOT) => {
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  return Object.entries(packages)
    .filter(([path, { dev, devOptional }]) => path !== '' && !dev && !devOptional)
    .filter(([path]) => existsSync(join(root, path, 'package.json')))
    .map(([path, { version, license, hasInstallScript = false }]) => ({
      name: path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length),
      version,
      licence: license ?? 'not stated',
      bytes: bytesIn(join(root, path)),
      hasInstallScript,
    }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const packages = installedPackages();
  const megabytes = (bytes) => `${(bytes / 1e6).toFixed(1)} MB`;
  const rows = packages.map(({ name, version, licence, bytes, hasInstallScript }) => [
    `${name} ${version}`,
    licence,
    megabytes(bytes),
    hasInstallScript ? 'runs a script when it is installed' : '',
  ]);
  const widths = [0, 1, 2].map((column) => Math.max(...rows.map((row) => row[column].length)));
  for (const [name, licence, size, script] of rows)
    console.log(
      `${name.padEnd(widths[0])}  ${licence.padEnd(widths[1])}  ${size.padStart(widths[2])}  ${script}`.trimEnd(),
    );
  const all = packages.reduce((sum, { bytes }) => sum + bytes, 0);
  console.log(`${packages.length} packages, ${megabytes(all)}`);
}
