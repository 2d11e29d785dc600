import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { openHistory } from '../../src/io/history.ts';
import { CONTENT, listFiles } from '../../src/io/list-files.ts';
import { bundleScript } from '../bench/bundle.ts';
import { seeded } from '../support/seeded.ts';

/** More by hand: `LIDLORE_KILLS=300 npx vitest run tests/desk/killed-saves.test.ts`. */
const KILLS = Number(process.env.LIDLORE_KILLS ?? 30);

/** Runs the saver and kills it (SIGKILL) so many milliseconds after its first save; gives the last save that it said was made. */
const killedAfter = (script: string, words: readonly string[], ms: number): Promise<number> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [script, ...words], { stdio: ['ignore', 'pipe', 'pipe'] });
    let [said, errors, isCounting] = ['', '', false];
    child.stderr.setEncoding('utf8').on('data', (text: string) => (errors += text));
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      said += text;
      if (!isCounting) setTimeout(() => child.kill('SIGKILL'), ms);
      isCounting = true;
    });
    child.on('error', reject);
    child.on('close', (_, signal) => {
      if (signal === 'SIGKILL') resolve(Number(said.trim().split('\n').at(-1)));
      else reject(new Error(errors));
    });
  });

test('a save that is killed at any moment leaves the old file or the new one, whole, and every change before it can be taken back', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'lidlore-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  const script = await bundleScript('../desk/saver', folder);
  const chance = seeded(4);
  let [inBetween, all] = [0, 0];
  for (let kill = 0; kill < KILLS; kill += 1) {
    const [content, kept] = [join(folder, `${kill}/content`), join(folder, `${kill}/history`)];
    mkdirSync(content, { recursive: true });
    writeFileSync(join(content, 'box.md'), 'save 0\n');
    const last = await killedAfter(script, [content, kept], chance.share() * 60);
    const file = join(content, 'box.md');
    const found = readFileSync(file, 'utf8');
    const number = Number(/^save (\d+)\n/.exec(found)?.[1]);
    expect([last, last + 1]).toContain(number);
    expect(found.endsWith(`end of ${number}\n`)).toBe(true);
    if (number === last + 1) inBetween += 1;
    // What a stopped save left is hidden, and no record.
    expect(listFiles(content, CONTENT).map(({ path }) => path)).toEqual(['box.md']);
    const history = openHistory(kept, content);
    for (let back = number - 1; back >= Math.max(0, number - 3); back -= 1) {
      expect(history.undo(history.undoable()?.id ?? -1)?.kind).toBe('written');
      expect(readFileSync(file, 'utf8').startsWith(`save ${back}\n`)).toBe(true);
    }
    // And the desk goes on from there.
    const again = history.change({
      path: 'box.md',
      seen: history.entries().at(-1)?.after ?? null,
      bytes: Buffer.from('save 9\nend of 9\n'),
      about: ['name'],
    });
    expect(again.kind).toBe('written');
    expect(readdirSync(kept).filter((name) => name.endsWith('.part')).length).toBeLessThanOrEqual(1);
    all += last;
  }
  process.stderr.write(
    `${KILLS} kills among ${all} saves, ${inBetween} of them after a rename that nobody had heard of\n`,
  );
}, 300_000);
