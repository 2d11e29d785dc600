import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { temporary } from '../io/temporary.ts';
import { installPacked } from '../support/packed.ts';
import { tinyBox } from './tiny-box.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const shell = (cwd: string, program: string, ...words: string[]): string =>
  execFileSync(program, words, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

/** A link of a readme to a file beside it; addresses and jumps within the page are none. */
const LINK = /\]\((?!\w+:|#)([^)#]+)/g;

/** What `npm install` put there, scopes unfolded. */
const installedIn = (modules: string): readonly string[] =>
  readdirSync(modules)
    .filter((name) => !name.startsWith('.'))
    .flatMap((name) =>
      name.startsWith('@') ? readdirSync(join(modules, name)).map((inner) => `${name}/${inner}`) : name,
    );

it('what npm packs installs elsewhere and builds a box', { timeout: 180_000 }, async () => {
  const box = await tinyBox();
  const settings = String(box['content/box.md']).replace(
    'every: P1M',
    'every: P1M\npieces: [article, invitation, live, letter, clip]',
  );
  const dir = await temporary({
    ...box,
    'content/box.md': settings,
    'package.json': '{"name":"a-shop","private":true}',
  });
  const { paths, program: lidlore } = installPacked(dir);
  expect(paths).toContain('dist/cli/main.js');
  expect(paths).toContain('dist/NOTICES.txt');
  expect(paths).toContain('templates/site.css');
  // The program in few files, and its types and sources not at all.
  expect(paths.filter((path) => /^dist\/cli\/.*\.js$/.test(path)).length).toBeLessThan(130);
  expect(
    paths.filter((path) =>
      /^dist\/(?!(cli|browser)\/[^/]+$|io\/(?:film\/encode-piece|decode-heic-thread)\.cjs$|NOTICES\.txt$|package\.json$)/.test(
        path,
      ),
    ),
  ).toEqual([]);
  const linked = ['README.md', 'DEVELOPERS.md'].flatMap((readme) =>
    [...readFileSync(join(ROOT, readme), 'utf8').matchAll(LINK)].map(([, to]) => to as string),
  );
  expect(linked.length).toBeGreaterThan(1);
  expect(linked.filter((to) => !paths.includes(to) && existsSync(join(ROOT, to)))).toEqual([]);
  expect(paths.filter((path) => /^(tests|content|src|site)\//.test(path) && !linked.includes(path))).toEqual(
    [],
  );

  const { dependencies } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  const installed = installedIn(join(dir, 'node_modules'));
  expect(installed).toEqual(expect.arrayContaining(Object.keys(dependencies)));
  // sharp brings a few of its own, and faces are a package each; a library that is bundled must not come a second time.
  expect(installed.length).toBeLessThan(26);

  const said = shell(dir, lidlore, 'build', '--as-of', '2026-03-27', '--without', 'film');
  expect(said).toContain('Look at');
  expect(existsSync(join(dir, 'site/index.html'))).toBe(true);
  for (const paper of ['proof.html', 'letter.eml', 'run-sheet.html', 'clip-sheet.html'])
    expect(existsSync(join(dir, 'backroom/2026-03', paper))).toBe(true);
  expect(shell(dir, lidlore, 'phrases', '--json', 'Oak tea trays')).toContain('"head":"tray');
});
