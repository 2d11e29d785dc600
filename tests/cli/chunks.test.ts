/** The compiled program: what it loads, and that what V8 made of it is never believed without looking. */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { temporary } from '../io/temporary.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const node = (...words: readonly string[]): string =>
  execFileSync(process.execPath, words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });

/** A copy of the compiled program that may be damaged; gives the folder of its chunks. */
const copyOfProgram = async (): Promise<string> => {
  const dir = await temporary({});
  mkdirSync(join(dir, 'dist'));
  for (const path of ['package.json', 'dist/package.json', 'dist/cli'])
    cpSync(join(ROOT, path), join(dir, path), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(dir, 'node_modules'), 'junction');
  return join(dir, 'dist/cli');
};

const keptIn = (chunks: string): readonly string[] =>
  readdirSync(chunks)
    .filter((file) => file.endsWith('.v8'))
    .map((file) => join(chunks, file));

/** Loaded before the program: says at its end how many chunks it loaded, and of how many V8 took what was kept. */
const COUNT = `process.on('exit', () => {
  const scripts = [...require.cache[process.argv[1]].exports.loadedChunks.values()].flatMap(({ script }) => script ?? []);
  const taken = scripts.filter(({ cachedDataRejected }) => cachedDataRejected === false);
  process.stdout.write(JSON.stringify({ loaded: scripts.length, taken: taken.length }));
});`;

const countedRun = (chunks: string, ...words: readonly string[]): { loaded: number; taken: number } => {
  const count = join(chunks, 'count.cjs');
  writeFileSync(count, COUNT);
  const said = node('--require', count, join(chunks, 'main.js'), ...words);
  return JSON.parse(said.slice(said.lastIndexOf('{')));
};

const PHRASES = ['phrases', '--json', 'Sage enamel watering can, 1.2 litre'];

test('help and version need main.js alone', async () => {
  const chunks = await copyOfProgram();
  const main = join(chunks, 'main.js');
  const helps = [['--help'], ['build', '--help'], ['--version']];
  const said = helps.map((words) => node(main, ...words));
  for (const file of readdirSync(chunks)) if (file !== 'main.js') rmSync(join(chunks, file));
  expect(helps.map((words) => node(main, ...words))).toEqual(said);
  expect(said[0]).toContain('Usage: lidlore COMMAND');
});

test('a command loads its own chunks, not all', async () => {
  const chunks = await copyOfProgram();
  const all = readdirSync(chunks).filter((file) => file.endsWith('.js')).length;
  const { loaded } = countedRun(chunks, ...PHRASES);
  expect(loaded).toBeGreaterThan(0);
  expect(loaded).toBeLessThan(all / 2);
});

describe('what V8 made of a chunk', () => {
  test('is taken where it fits', async () => {
    const { loaded, taken } = countedRun(await copyOfProgram(), ...PHRASES);
    expect(taken).toBe(loaded);
  });

  const damages: readonly (readonly [string, (kept: Buffer, other: Buffer) => Buffer])[] = [
    [
      'has another byte in its middle',
      (kept) => {
        const at = kept.length >> 1;
        const damaged = Buffer.from(kept);
        damaged[at] = (damaged[at] as number) ^ 0x55;
        return damaged;
      },
    ],
    ['is cut short', (kept) => kept.subarray(0, kept.length - 100)],
    ['is empty', () => Buffer.alloc(0)],
    ['is made of zeros', (kept) => Buffer.alloc(kept.length)],
    ['is that of another chunk', (_, other) => other],
  ];
  test.each(damages)('is passed over where it %s', async (_, damage) => {
    const chunks = await copyOfProgram();
    const expected = node(join(chunks, 'main.js'), ...PHRASES);
    const files = keptIn(chunks);
    const bytes = files.map((file) => readFileSync(file));
    files.forEach((file, i) => {
      writeFileSync(file, damage(bytes[i] as Buffer, bytes[(i + 1) % bytes.length] as Buffer));
    });
    expect(countedRun(chunks, ...PHRASES).taken).toBe(0);
    expect(node(join(chunks, 'main.js'), ...PHRASES)).toBe(expected);
  });

  test('is not taken for a chunk that was changed since, even to the same length', async () => {
    const chunks = await copyOfProgram();
    const words = ['phrases', 'Sage enamel watering can'];
    expect(node(join(chunks, 'main.js'), ...words)).toContain('typed by shoppers');
    for (const file of readdirSync(chunks).filter((name) => name.endsWith('.js'))) {
      const text = readFileSync(join(chunks, file), 'utf8');
      writeFileSync(join(chunks, file), text.replaceAll('typed by shoppers', 'typed by SHOPPERS'));
    }
    expect(node(join(chunks, 'main.js'), ...words)).toContain('typed by SHOPPERS');
  });
});
