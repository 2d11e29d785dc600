/** Keeps beside each chunk of the program what V8 makes of it, because compiling is a tenth of a short run. */
import { spawnSync } from 'node:child_process';
import {
  appendFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

const path = (file) => fileURLToPath(new URL(`../${file}`, import.meta.url));

/**
 * What of the demo the sample leaves out: cycles, because the newest run the same functions, and the list of addresses,
 * which would miss them.
 */
const LEFT_OUT = /2025-\d\d|^addresses\.csv$/;

/** Only functions that have run are kept. So a part of the demo is built, with photos that take no time. */
const makeSample = async (folder) => {
  const content = path('../content');
  const photo = await sharp({ create: { width: 64, height: 48, channels: 3, background: '#5f7358' } })
    .jpeg()
    .toBuffer();
  for (const file of readdirSync(content, { recursive: true, encoding: 'utf8' })) {
    if (LEFT_OUT.test(file) || !/\.\w+$/.test(file)) continue;
    const copy = join(folder, 'content', file);
    mkdirSync(dirname(copy), { recursive: true });
    if (!file.endsWith('.md'))
      writeFileSync(copy, /\.jpe?g$/i.test(file) ? photo : readFileSync(join(content, file)));
    else
      writeFileSync(
        copy,
        readFileSync(join(content, file), 'utf8').replace(/\]\(([^)]*)\)/g, (link, to) =>
          LEFT_OUT.test(to) ? '](https://example.com/)' : link,
        ),
      );
  }
};

/** A word that is mended in the sample. */
const mend = (folder) =>
  appendFileSync(join(folder, 'content/cycles/2026-03/cycle.md'), 'And a word more.\n');

/**
 * A first build, one with nothing changed, one with a word changed, and the commands that ask. Each adds what it runs to
 * what is kept.
 */
const RUNS = [
  ['build', '--without', 'film', '--as-of', '2026-03-27'],
  ['build', '--without', 'film', '--as-of', '2026-03-27'],
  mend,
  ['build', '--without', 'film', '--as-of', '2026-03-27'],
  ['proof', '2026-03', '--as-of', '2026-03-27'],
  ['parcels', '--as-of', '2026-03-27'],
  ['phrases', 'Sage enamel watering can, 1.2 litre'],
];

/**
 * Writes `CHUNK.js.v8` beside each chunk in `dist/cli` that these runs load. A run that fails is said on standard
 * error and nothing more: the program starts without what is kept, only later.
 */
export const keepCompiled = async () => {
  const folder = mkdtempSync(join(tmpdir(), 'lidlore-compile-'));
  try {
    await makeSample(folder);
    for (const words of RUNS) {
      if (words === mend) {
        mend(folder);
        continue;
      }
      const { status, stderr } = spawnSync(
        process.execPath,
        ['--require', path('bundling/keep-chunks.cjs'), path('../dist/cli/main.js'), ...words],
        { cwd: folder, encoding: 'utf8' },
      );
      // A proof below its aim ends with 1.
      const ended = status === 0 || (status === 1 && words[0] === 'proof');
      if (!ended)
        process.stderr.write(
          `Nothing is kept of compiling for lidlore ${words.join(' ')}, which ended with ${status}:\n${stderr}`,
        );
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
