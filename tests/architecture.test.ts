import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { breachesOf } from './support/architecture.ts';
import { filesBelow } from './support/tools.ts';

const root = join(import.meta.dirname, '..');

test('the code keeps the layout that DEVELOPERS.md draws', () => {
  const files = filesBelow(join(root, 'src')).filter(
    (path) => path.endsWith('.ts') && !path.endsWith('.d.ts'),
  );
  const sources = Object.fromEntries(
    files.map((path) => [`src/${path}`, readFileSync(join(root, 'src', path), 'utf8')]),
  );
  expect(files.length).toBeGreaterThan(40);
  expect(breachesOf(sources)).toEqual([]);
});

describe('a file is reported', () => {
  test.each([
    ['rooms', 'src/model/a.ts', "import type { Html } from '../render/html.ts';"],
    ['rooms', 'src/content/a.ts', "export * from '../model/box.ts';"],
    ['rooms', 'src/render/a.ts', "const { article } = await import('../channels/article.ts');"],
    ['rooms', 'src/io/a.ts', "import {\n  buildSite,\n} from '../build/build.ts';"],
    ['rooms', 'src/diagnostics/a.ts', "import '../model/story.ts';"],
    ['rooms', 'src/utils/a.ts', 'export const a = 1;'],
    ['channels', 'src/channels/a.ts', "import { home } from './home.ts';"],
    ['libraries', 'src/render/a.ts', "import sharp from 'sharp';"],
    ['libraries', 'src/model/a.ts', "import matter from 'gray-matter';"],
    ['libraries', 'src/render/a.ts', "import remarkParse from 'remark-parse';"],
    ['libraries', 'src/channels/a.ts', "import remarkHtml from 'remark-html';"],
    ['libraries', 'src/model/a.ts', "import { PorterStemmer } from 'natural/lib/natural/stemmers/index.js';"],
    ['purity', 'src/model/a.ts', "import { readFile } from 'node:fs/promises';"],
    ['purity', 'src/render/a.ts', "import type { Stats } from 'fs';"],
    ['purity', 'src/channels/a.ts', "import { createHash } from 'node:crypto';"],
    ['purity', 'src/build/a.ts', 'export const now = () => Date.now();'],
    ['purity', 'src/model/a.ts', 'export const now = () => new Date();'],
    ['purity', 'src/render/a.ts', 'console.log(process.env.HOME);'],
    ['purity', 'src/analysis/a.ts', 'export const lot = Math.random();'],
    ['default export', 'src/cli/a.ts', 'export default 1;'],
    ['size', 'src/cli/a.ts', '\n'.repeat(401)],
  ])('by the rule on %s: %s with %j', (rule, file, source) => {
    expect(breachesOf({ [file]: source }).map((breach) => breach.rule)).toContain(rule);
  });

  test('and one that only speaks of such things in a comment is not', () => {
    expect(
      breachesOf({
        'src/model/a.ts':
          "// Date.now() and import 'sharp' are for io\n/* process.exit */ export const a = 1;",
      }),
    ).toEqual([]);
  });
});
