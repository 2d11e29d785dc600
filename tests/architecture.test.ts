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
    ['rooms', 'src/io/a.ts', "import {\n  buildSite,\n} from '../pipeline/build.ts';"],
    ['rooms', 'src/diagnostics/a.ts', "import '../model/story.ts';"],
    ['rooms', 'src/analysis/a.ts', "const { html } = require('../render/html.ts');"],
    ['rooms', 'src/model/a.ts', "export type { Html } from '../render/html.ts';"],
    ['rooms', 'src/model/a.ts', "let html: import('../render/html.ts').Html;"],
    ['rooms', 'src/browser/a.ts', "import type { Html } from '../render/html.ts';"],
    ['folders', 'src/browser/a.ts', "import { cover } from '../analysis/coverage/measure-coverage.ts';"],
    ['folders', 'src/browser/a.ts', "import { wordingFor } from '../wording/wording.ts';"],
    ['folders', 'src/browser/a.ts', "import { site } from '../wording/en/site.ts';"],
    [
      'libraries',
      'src/browser/a.ts',
      "import stemmer from 'natural/lib/natural/stemmers/porter_stemmer.js';",
    ],
    ['rooms', 'src/pipeline/a.ts', "import { publish } from '../io/publish.ts';"],
    ['rooms', 'src/render/a.ts', "import page from '../../templates/page.ts';"],
    ['types', 'src/analysis/a.ts', "import { mustFixAny } from '../diagnostics/diagnostic.ts';"],
    ['rooms', 'src/text/a.ts', "import type { Location } from '../diagnostics/diagnostic.ts';"],
    ['types', 'src/io/a.ts', "import { htmlSource } from '../render/html.ts';"],
    ['types', 'src/io/a.ts', "import { type Html, htmlSource } from '../render/html.ts';"],
    [
      'types',
      'src/wording/a.ts',
      "import type { Box } from '../model/box.ts';\nexport * from '../model/box.ts';",
    ],
    ['rooms', 'src/cli/a.ts', "import type { Box } from '../model/box.ts';"],
    ['rooms', 'src/cli/a.ts', "import type { Channel } from '../channels/channel.ts';"],
    ['rooms', 'src/cli/a.ts', "import { htmlSource } from '../render/html.ts';"],
    ['rooms', 'src/cli/a.ts', "const { readRecords } = await import('../content/read.ts');"],
    ['rooms', 'src/cli/a.ts', "import { languageFor } from '../analysis/language/language.ts';"],
    ['rooms', 'src/desk/a.ts', "import { channels } from '../channels/index.ts';"],
    ['rooms', 'src/desk/a.ts', "import type { Coverage } from '../analysis/coverage/coverage.ts';"],
    ['rooms', 'src/workspace/a.ts', "import { EXIT } from '../cli/exit-status.ts';"],
    ['rooms', 'src/io/a.ts', "import type { Snapshot } from '../workspace/assemble.ts';"],
    ['rooms', 'src/wording/en/a.ts', "import type { Html } from '../../render/html.ts';"],
    ['rooms', 'src/wording/en/a.ts', "import type { BoxRecord } from '../../content/schemas.ts';"],
    ['rooms', 'src/analysis/a.ts', "import type { Sources } from '../content/sources.ts';"],
    ['rooms', 'src/render/a.ts', "import type { Sources } from '../content/sources.ts';"],
    ['types', 'src/io/a.ts', "import { readRecords } from '../content/read.ts';"],
    ['purity', 'src/workspace/a.ts', "import { statSync } from 'node:fs';"],
    ['rooms', 'src/utils/a.ts', 'export const a = 1;'],
    ['channels', 'src/channels/a.ts', "import { home } from './home.ts';"],
    ['channels', 'src/channels/a.ts', "import { channels } from './index.ts';"],
    ['channels', 'src/channels/channel.ts', "import { home } from './home.ts';"],
    ['channels', 'src/channels/letter/page.ts', "import { liveFindings } from '../live/findings.ts';"],
    ['channels', 'src/channels/letter/page.ts', "import { letter } from '../index.ts';"],
    ['channels', 'src/channels/a.ts', "import { letter } from './letter/index.ts';"],
    ['channels', 'src/channels/letter/page.ts', "import { home } from '../home.ts';"],
    ['channels', 'src/channels/index.ts', "import { letterPage } from './letter/page.ts';"],
    ['types', 'src/wording/en/a.ts', "import { isAtAim } from '../../analysis/coverage/aim.ts';"],
    ['libraries', 'src/render/a.ts', "import sharp from 'sharp';"],
    ['libraries', 'src/io/a.ts', "import { create } from 'fontkit';"],
    ['rooms', 'src/drawing/a.ts', "import type { Cycle } from '../model/box.ts';"],
    ['types', 'src/drawing/a.ts', "import { html } from '../render/html.ts';"],
    ['purity', 'src/drawing/a.ts', "import { readFileSync } from 'node:fs';"],
    ['libraries', 'src/model/a.ts', "import matter from 'gray-matter';"],
    ['libraries', 'src/render/a.ts', "import remarkParse from 'remark-parse';"],
    ['libraries', 'src/channels/a.ts', "import remarkHtml from 'remark-html';"],
    ['libraries', 'src/model/a.ts', "import { parse } from 'yaml';"],
    ['libraries', 'src/model/a.ts', "import { PorterStemmer } from 'natural/lib/natural/stemmers/index.js';"],
    ['libraries', 'src/pipeline/a.ts', "const { default: wink } = await import('wink-nlp');"],
    ['libraries', 'src/pipeline/a.ts', "const { default: sharp } = await import('sharp');"],
    ['libraries', 'src/cli/a.ts', "export { default as decode } from 'heic-decode';"],
    ['libraries', 'src/content/a.ts', "import rehypeStringify from 'rehype-stringify';"],
    ['libraries', 'src/io/a.ts', "import natural from 'natural';"],
    ['purity', 'src/model/a.ts', "import { readFile } from 'node:fs/promises';"],
    ['purity', 'src/render/a.ts', "import type { Stats } from 'fs';"],
    ['purity', 'src/channels/a.ts', "import { createHash } from 'node:crypto';"],
    ['purity', 'src/pipeline/a.ts', 'export const now = () => Date.now();'],
    ['purity', 'src/model/a.ts', 'export const now = () => new Date();'],
    ['purity', 'src/render/a.ts', 'console.log(process.env.HOME);'],
    ['purity', 'src/analysis/a.ts', 'export const lot = Math.random();'],
    ['purity', 'src/model/a.ts', 'export const now = new Date;'],
    ['purity', 'src/model/a.ts', 'export const now = () => Date();'],
    ['purity', 'src/pipeline/a.ts', 'const { env } = process;'],
    ['purity', 'src/pipeline/a.ts', "process['exit'](1);"],
    ['purity', 'src/content/a.ts', 'console.warn(1);'],
    ['purity', 'src/channels/a.ts', "const answer = await fetch('https://a.example/');"],
    ['purity', 'src/pipeline/a.ts', 'const since = performance.now();'],
    ['purity', 'src/model/a.ts', 'const now = Temporal.Now.instant();'],
    ['purity', 'src/model/a.ts', 'setTimeout(() => {}, 1);'],
    ['purity', 'src/model/a.ts', "globalThis['Date'].now();"],
    ['purity', 'src/model/a.ts', "import { setTimeout } from 'timers/promises';"],
    ['default export', 'src/cli/a.ts', 'const a = 1;\nexport { a as default };'],
    ['default export', 'src/cli/a.ts', 'export default 1;'],
    ['libraries', 'src/model/a.ts', "const a = 'b/*';\nimport sharp from 'sharp';\nconst c = '*/';"],
  ])('by the rule on %s: %s with %j', (rule, file, source) => {
    expect(breachesOf({ [file]: source }).map((breach) => breach.rule)).toContain(rule);
  });

  test('by the rule on size: 401 lines', () => {
    expect(breachesOf({ 'src/cli/a.ts': '\n'.repeat(400) }).map((breach) => breach.rule)).toEqual(['size']);
    expect(breachesOf({ 'src/cli/a.ts': '\n'.repeat(399) })).toEqual([]);
  });

  test('and one that only speaks of such things in a comment is not', () => {
    expect(
      breachesOf({
        'src/model/a.ts':
          "// Date.now() and import 'sharp' are for io\n/* process.exit */ export const a = 1;",
      }),
    ).toEqual([]);
  });

  test.each([
    ['a date of a given moment', 'src/model/a.ts', 'export const day = (m: number) => new Date(m);'],
    [
      'the words of a language in the browser',
      'src/browser/a.ts',
      "import { languageFor } from '../analysis/language/language.ts';",
    ],
    ['what the search says', 'src/browser/a.ts', "import { browser } from '../wording/en/browser.ts';"],
    ['its own room', 'src/model/a.ts', "import type { Box } from './box.ts';"],
    ['a file of its own channel', 'src/channels/proof/a.ts', "import { b } from './b.ts';"],
    [
      'the shared type from a folder',
      'src/channels/proof/a.ts',
      "import type { Tools } from '../channel.ts';",
    ],
    ['the list of channels', 'src/channels/index.ts', "import { article } from './article.ts';"],
    [
      'the list of channels in folders',
      'src/channels/index.ts',
      "import { letter } from './letter/index.ts';",
    ],
    ['its own folder', 'src/channels/letter/index.ts', "import { planLetters } from './plan.ts';"],
    [
      'the shared type above its folder',
      'src/channels/letter/page.ts',
      "import type { Tools } from '../channel.ts';",
    ],
    ['the shared type of channels', 'src/channels/a.ts', "import type { Channel } from './channel.ts';"],
    [
      'a file of the channel’s own folder',
      'src/channels/a/index.ts',
      "import { page } from './page.ts';\nimport type { Channel } from '../channel.ts';",
    ],
    ['a type for the disk', 'src/io/a.ts', "import type { Output } from '../render/output.ts';"],
    ['the edge’s clock', 'src/cli/a.ts', 'export const now = Date.now();'],
    ['a word that only looks like the outside', 'src/pipeline/a.ts', 'const a = { process: 1 }; a.process;'],
  ])('and not for %s', (_, file, source) => {
    expect(breachesOf({ [file]: source })).toEqual([]);
  });
});
