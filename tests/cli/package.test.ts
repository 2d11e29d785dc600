import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { temporary } from '../io/temporary.ts';
import { tinyBox } from './tiny-box.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const shell = (cwd: string, program: string, ...words: string[]): string =>
  execFileSync(program, words, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

it('what npm packs installs elsewhere and builds a box', { timeout: 180_000 }, async () => {
  const dir = await temporary({ ...(await tinyBox()), 'package.json': '{"name":"a-shop","private":true}' });
  // Compiled already by `npm test`; to clean dist/ now would pull it from under other tests.
  const compiled = existsSync(join(ROOT, 'dist/cli/main.js'));
  const packed = JSON.parse(
    shell(
      ROOT,
      'npm',
      'pack',
      '--json',
      '--silent',
      '--pack-destination',
      dir,
      ...(compiled ? ['--ignore-scripts'] : []),
    ),
  )[0];
  const paths: string[] = packed.files.map((file: { path: string }) => file.path);
  expect(paths).toContain('dist/cli/main.js');
  expect(paths).toContain('templates/site.css');
  expect(paths.filter((path) => /^(tests|content|src|site)\//.test(path))).toEqual([]);

  shell(dir, 'npm', 'install', '--prefer-offline', '--no-audit', '--no-fund', `./${packed.filename}`);
  const said = shell(dir, join(dir, 'node_modules/.bin/lidlore'), 'build', '--as-of', '2026-03-27');
  expect(said).toContain('Look at');
  expect(existsSync(join(dir, 'site/index.html'))).toBe(true);
});
