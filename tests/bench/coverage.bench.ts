/** How long a proof takes, and how it grows with the archive: `npm run bench -- coverage`. */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { describe, test } from 'vitest';
import { comparisonsOf, coverageOf } from '../../src/analysis/coverage/measure-coverage.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import { readRecords } from '../../src/content/read.ts';
import type { Sources, TextSource } from '../../src/content/sources.ts';
import type { Cycle } from '../../src/model/box.ts';
import { linkBox } from '../../src/model/link.ts';
import { readFrontMatter } from '../support/read-front-matter.ts';
import { cautionText } from '../support/telling-input.ts';

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
  return { root: 'content', texts: all, photos: [], paths: all.map(({ path }) => path).sort() };
};

interface Measured {
  readonly articles: number;
  readonly words: number;
  readonly comparing: number;
  readonly proving: number;
}

const measure = async (articles: number): Promise<Measured> => {
  const sources = archive(articles);
  const box = linkBox(readRecords(sources, readFrontMatter).value, sources).value;
  if (!box || box.cycles.length !== articles)
    throw new Error(`Expected ${articles} cycles, found ${box?.cycles.length}`);
  const english = await languageFor('en-GB');
  const asOf = Date.UTC(2100, 0, 1);
  const cycle = box.cycles.at(-1) as Cycle;
  const began = performance.now();
  const comparisons = comparisonsOf(box, asOf, english, new Set(), cautionText);
  const compared = performance.now();
  const coverage = await coverageOf({
    box,
    cycle,
    asOf,
    aim: 0.7,
    comparisons,
    cautionText,
    otherNames: new Map(),
  });
  return {
    articles,
    words: coverage.reading.words,
    comparing: compared - began,
    proving: performance.now() - compared,
  };
};

const ms = (time: number): string => `${time.toFixed(0).padStart(7)} ms`;

describe('coverage', () => {
  test('grows with the archive', async () => {
    await measure(12); // Warm.
    const all: Measured[] = [];
    for (const articles of [12, 120, 1200]) all.push(await measure(articles));
    for (const { articles, words, comparing, proving } of all)
      console.log(
        `${String(articles).padStart(5)} articles of about ${words} words: comparing ${ms(comparing)}, proving one ${ms(proving)}`,
      );
    const [, middle, last] = all as [Measured, Measured, Measured];
    const exponent = Math.log10((last.comparing + last.proving) / (middle.comparing + middle.proving));
    console.log(`Exponent from 120 to 1,200 articles: ${exponent.toFixed(2)}`);
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
