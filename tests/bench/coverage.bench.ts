/** How long a proof takes, and how it grows with the archive: `npm run bench -- coverage`. */

import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import remarkHtml from 'remark-html';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, test } from 'vitest';
import {
  type ArticleIndex,
  articleOf,
  comparedCoverage,
  comparisonOf,
  coverageOf,
  decodeIndex,
  encodeIndex,
  indexArticle,
  ownCoverage,
  passagesOf,
  searchIndexOf,
  surroundingsOf,
} from '../../src/analysis/coverage/measure-coverage.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { TextSource } from '../../src/content/sources.ts';
import type { Cycle } from '../../src/model/box.ts';
import { cautionText } from '../support/telling-input.ts';
import { type Sources, wholeBox } from '../support/whole-box.ts';

const root = join(import.meta.dirname, '../..');
const content = join(root, 'content');

/** The demo's texts without pictures, which a proof does not look at. */
const demoTexts = (): readonly TextSource[] =>
  readdirSync(content, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.md'))
    .sort()
    .map((path) => ({ path: path.replaceAll('\\', '/'), text: readFileSync(join(content, path), 'utf8') }));

/** Numbers below 1, the same ones each time (mulberry32). */
const dice = (seed: number) => {
  let counter = seed;
  return (): number => {
    counter += 0x6d2b79f5;
    let state = counter;
    state = Math.imul(state ^ (state >>> 15), state | 1);
    state ^= state + Math.imul(state ^ (state >>> 7), state | 61);
    return ((state ^ (state >>> 14)) >>> 0) / 4294967296;
  };
};

const monthAfter = (first: number, count: number): string => {
  const year = first + Math.floor(count / 12);
  return `${year}-${String((count % 12) + 1).padStart(2, '0')}`;
};

/** An archive of so many cycles: the demo's records, each body made anew of the demo's sentences. */
const archive = (cycles: number): Sources => {
  const demo = demoTexts();
  const folders = [...new Set(demo.map(({ path }) => /^cycles\/([^/]+)\//.exec(path)?.[1]))].filter(
    (id): id is string => id !== undefined,
  );
  const bodyOf = (text: string): string => text.split(/^---$/m).slice(2).join('---');
  const sentences = demo.flatMap(({ text }) => bodyOf(text).match(/[A-Z][^.!?\n|[\]]{40,}[.!?]/g) ?? []);
  const roll = dice(1);
  const paragraph = (): string =>
    Array.from({ length: 5 }, () => sentences[Math.floor(roll() * sentences.length)]).join(' ');
  const texts = Array.from({ length: cycles }, (_, i) => {
    const folder = folders[i % folders.length] as string;
    const id = monthAfter(1900, i);
    return demo
      .filter(({ path }) => path.startsWith(`cycles/${folder}/`))
      .map(({ path, text }) => {
        const front = text.split(/^---$/m)[1] as string;
        const dated = front
          .replace(/^(image|photo|hero|peek|voices|replay):(?:\n[ -].*)+/gm, '')
          .replace(/^shipped:.*$/m, `shipped: ${id}-03`)
          .replace(/^reveal:.*$/m, `reveal: ${id}-19T19:00`)
          .replace(/^(?:sku|gtin|address|spare|updated):.*(?:\n[ -].*)*$/gm, '');
        const body = Array.from({ length: path.endsWith('cycle.md') ? 7 : 3 }, paragraph).join('\n\n');
        return {
          path: path.replace(`cycles/${folder}/`, `cycles/${id}/`),
          text: `---${dated}---\n\n${body}\n`,
        };
      });
  }).flat();
  const all = [...demo.filter(({ path }) => path === 'box.md'), ...texts];
  return { texts: all, photos: [], paths: all.map(({ path }) => path).sort() };
};

/** Processor time of this process so far, in milliseconds. */
const processorTime = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

type Steps = Record<string, number>;

/** Runs a step and adds its processor time to those of its name. */
const timed = async <T>(steps: Steps, name: string, run: () => T | Promise<T>): Promise<T> => {
  const began = processorTime();
  const result = await run();
  steps[name] = (steps[name] ?? 0) + processorTime() - began;
  return result;
};

interface Measured {
  readonly articles: number;
  /** Of each step for all articles. */
  readonly steps: Steps;
  readonly floor: number;
  /** Indexes read back, and one article compared with all. */
  readonly one: Steps;
  readonly indexBytes: number;
  readonly ownBytes: number;
}

const measure = async (articles: number): Promise<Measured> => {
  const sources = archive(articles);
  const box = wholeBox(sources).value;
  if (!box || box.cycles.length !== articles)
    throw new Error(`Expected ${articles} cycles, found ${box?.cycles.length}`);
  const english = await languageFor('en-GB');
  const asOf = Date.UTC(2100, 0, 1);
  const bare = unified().use(remarkParse).use(remarkHtml);
  const floor: Steps = {};
  for (const { path, text } of sources.texts) {
    const body = text.split(/^---$/m).slice(2).join('---');
    if (path.startsWith('cycles/')) await timed(floor, 'floor', () => bare.process(body));
  }

  const readingOf = (cycle: Cycle) =>
    passagesOf(cycle, surroundingsOf(box, cycle, asOf), english, cautionText);
  const steps: Steps = {};
  const searches = await timed(steps, 'searches', () => searchIndexOf(box.searches, english));
  const bytes: Uint8Array[] = [];
  const halves = [];
  for (const cycle of box.cycles) {
    const passages = await timed(steps, 'passages', () => readingOf(cycle));
    bytes.push(await timed(steps, 'index', () => encodeIndex(indexArticle(articleOf(cycle, passages)))));
    const input = {
      cycle,
      box: box.settings,
      passages,
      searches,
      aim: 0.7,
      language: english,
      otherNames: new Map(),
      strangers: [],
    };
    halves.push(await timed(steps, 'own', () => ownCoverage(input)));
  }
  const decoded = (): readonly ArticleIndex[] => bytes.flatMap((one) => decodeIndex(one) ?? []);
  const all = await timed(steps, 'archive', () => comparisonOf(decoded(), english));
  for (const own of halves) await timed(steps, 'compared', () => comparedCoverage(own, all));

  const one: Steps = {};
  const [cycle, own] = [box.cycles.at(-1) as Cycle, halves.at(-1) as (typeof halves)[number]];
  const indexes = await timed(one, 'decoding', decoded);
  const alone = await timed(one, 'archive', () => comparisonOf(indexes, english, new Set([cycle.id])));
  const compared = await timed(one, 'comparing', () => comparedCoverage(own, alone));
  coverageOf(own, compared, readingOf(cycle), english);
  const sum = (sizes: readonly number[]): number => sizes.reduce((total, size) => total + size, 0) / articles;
  return {
    articles,
    steps,
    floor: floor.floor ?? 0,
    one,
    indexBytes: sum(bytes.map(({ length }) => length)),
    ownBytes: sum(halves.map((half) => Buffer.byteLength(JSON.stringify(half)))),
  };
};

const ms = (time: number): string => `${time.toFixed(0).padStart(7)} ms`;
const total = (steps: Steps): number => Object.values(steps).reduce((sum, time) => sum + time, 0);
const each = (steps: Steps, count: number): string =>
  Object.entries(steps)
    .map(([name, time]) => `${name} ${(time / count).toFixed(2)}`)
    .join(', ');

describe('coverage', () => {
  test('grows with the archive', async () => {
    await measure(12); // Warm.
    const all: Measured[] = [];
    for (const articles of [12, 120, 1200]) {
      const measured = await measure(articles);
      const { steps, floor, one, indexBytes, ownBytes } = measured;
      all.push(measured);
      console.log(
        [
          `${articles} articles, processor time in ms an article: ${each(steps, articles)}`,
          `  together ${(total(steps) / articles).toFixed(1)}, ${(total(steps) / floor).toFixed(1)} times remark-parse → remark-html of the same bodies (${(floor / articles).toFixed(1)})`,
          `  index ${indexBytes.toFixed(0)} bytes, first half of the proof ${ownBytes.toFixed(0)} bytes of JSON`,
          `  one of them compared with all: ${each(one, 1)}; together ${total(one).toFixed(1)} ms`,
        ].join('\n'),
      );
    }
    const [first, middle, last] = all as [Measured, Measured, Measured];
    const exponent = (a: Measured, b: Measured): string =>
      Math.log10(total(b.steps) / total(a.steps)).toFixed(2);
    console.log(
      `Exponent from 12 to 120 articles ${exponent(first, middle)}, to 1,200 ${exponent(middle, last)}`,
    );
  });

  test('of one article among the demo’s, as a whole process', () => {
    const times = (words: readonly string[]): string => {
      const runs = Array.from({ length: 7 }, () => {
        const began = performance.now();
        const { status } = spawnSync(process.execPath, [join(root, 'dist/cli/main.js'), ...words], {
          cwd: root,
        });
        if (status === null || status > 1) throw new Error(`lidlore ${words.join(' ')} ended with ${status}`);
        return performance.now() - began;
      }).sort((a, b) => a - b);
      return `median ${ms(runs[3] as number)}, fastest ${ms(runs[0] as number)}`;
    };
    for (const words of [
      ['--help'],
      ['phrases', 'Sage enamel watering can, 1.2 litre'],
      ['proof', '2026-03', '--as-of', '2026-03-27'],
    ])
      console.log(`lidlore ${words.join(' ')}: ${times(words)}`);
  });
});
