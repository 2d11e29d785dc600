/** The program as npm packs it, installed in a folder as its owner would. */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const npm = (cwd: string, ...words: readonly string[]): string =>
  execFileSync('npm', words, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

export interface InstalledPack {
  /** Every file of the pack. */
  readonly paths: readonly string[];
  /** The command. */
  readonly program: string;
}

/** Packs the program and installs it in `folder`, which has a package.json. */
export const installPacked = (folder: string): InstalledPack => {
  // Compiled already by `npm test`; to clean dist/ now would pull it from under other tests.
  const asCompiled = existsSync(join(ROOT, 'dist/cli/main.js')) ? ['--ignore-scripts'] : [];
  const [packed]: readonly {
    readonly filename: string;
    readonly files: readonly { readonly path: string }[];
  }[] = JSON.parse(npm(ROOT, 'pack', '--json', '--silent', '--pack-destination', folder, ...asCompiled));
  if (!packed) throw new Error('Expected npm to say what it packed');
  npm(folder, 'install', '--prefer-offline', '--no-audit', '--no-fund', `./${packed.filename}`);
  return {
    paths: packed.files.map(({ path }) => path),
    program: join(folder, 'node_modules/.bin/lidlore'),
  };
};
