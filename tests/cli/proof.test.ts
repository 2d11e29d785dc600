import { appendFile, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { BOX, cycleText, itemText } from '../analysis/article.ts';
import { lidlore } from './terminal.ts';

const OLDER = 'cycles/2026-03/cycle.md';
const FILES: Readonly<Record<string, string>> = {
  'box.md': BOX,
  [OLDER]: cycleText('The seed tray came first. A seed tray is a shallow box.', {
    title: 'A seed tray for the narrowest sill',
    summary: 'A seed tray of pine, and how to sow a whole windowsill with the seed tray.',
  }),
  'cycles/2026-03/items/01-seed-tray.md': itemText(
    'Seed tray',
    'seed tray',
    'Fill the seed tray with compost to the edge, and press it down with a second tray until it is level. Sow thinly, because what comes up will want room, and water from below so that the seed stays where you put it. When the second pair of leaves is there, lift each one out with a pencil and give it a pot. Empty the seed tray afterwards, scrub it, and dry it in the air.',
    { lead: true },
  ),
  'cycles/2026-04/cycle.md': cycleText('It hangs on the wall and is let by the room.', {
    theme: 'Small Tenants',
    shipped: '2026-04-03',
    reveal: '2026-04-19T19:00',
  }),
  'cycles/2026-04/items/01-bee-hotel.md': itemText('Bee hotel', 'bee hotel', 'Hang it in the sun.', {
    lead: true,
  }),
};

let dir = '';
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'lidlore-proof-'));
  for (const [path, text] of Object.entries(FILES)) {
    await mkdir(dirname(join(dir, 'content', path)), { recursive: true });
    await writeFile(join(dir, 'content', path), text);
  }
});
afterEach(() => rm(dir, { recursive: true, force: true }));

const AS_OF = ['--as-of', '2026-04-01'] as const;

describe('proof', () => {
  test('reads the newest cycle, sealed or not, and says by its exit status that the aim is missed', async () => {
    const { status, stdout } = await lidlore(dir, 'proof', ...AS_OF);
    expect(stdout).toMatch(/^Proof of 2026-04, Small Tenants/);
    expect(stdout).toContain('Bee hotel');
    expect(status).toBe(1);
  });

  test('reads another that is named, and is content where every item stands at the aim', async () => {
    const { status, stdout } = await lidlore(dir, 'proof', '2026-03', '--aim', '0.2', ...AS_OF);
    expect(stdout).toMatch(/^Proof of 2026-03, First Sowings/);
    expect(status).toBe(0);
  });

  test('is not content with one that is told about in a sentence, as its report is not', async () => {
    await writeFile(
      join(dir, 'content', 'cycles/2026-03/items/01-seed-tray.md'),
      itemText('Seed tray', 'seed tray', 'Fill the seed tray.', { lead: true }),
    );
    const { status, stdout } = await lidlore(dir, 'proof', '2026-03', '--aim', '0.2', ...AS_OF);
    expect(stdout).toMatch(/thin/i);
    expect(status).toBe(1);
  });

  test('says the same of what it remembers, in a report and as JSON', async () => {
    for (const words of [[], ['--json']]) {
      const first = await lidlore(dir, 'proof', ...words, ...AS_OF);
      const again = await lidlore(dir, 'proof', ...words, ...AS_OF);
      expect(again).toEqual(first);
      expect(first.stdout).toContain('Bee hotel');
      await rm(join(dir, '.lidlore'), { recursive: true });
    }
  });

  test('is not content with an article that must be mended first', async () => {
    await writeFile(
      join(dir, 'content', 'cycles/2026-03/items/02-jam.md'),
      itemText('Chilli jam', 'chilli jam', 'Hot.'),
    );
    const { status, stdout } = await lidlore(dir, 'proof', '2026-03', '--aim', '0.01', ...AS_OF);
    expect(stdout).toContain('Must fix');
    expect(status).toBe(1);
  });

  test('calls nothing a stranger while a record is at fault that may tell of it', async () => {
    const cycle = String(FILES[OLDER]).replace(
      'A seed tray of pine,',
      'A seed tray of pine, a brass whistle',
    );
    await writeFile(join(dir, 'content', OLDER), cycle);
    expect((await lidlore(dir, 'proof', '2026-03', ...AS_OF)).stdout).toContain('not-in-the-box');
    const whistle = join(dir, 'content', 'cycles/2026-03/items/02-whistle.md');
    await writeFile(whistle, itemText('Brass whistle', 'whistle', 'Blow.').replace(/^brand:.*\n/m, ''));
    const { stdout } = await lidlore(dir, 'proof', '2026-03', ...AS_OF);
    expect(stdout).toContain('Must fix');
    expect(stdout).not.toContain('not-in-the-box');
  });

  test('as JSON gives every standing with its parts and every mention with its place, and no text twice', async () => {
    const { stdout } = await lidlore(dir, 'proof', '2026-03', '--json', ...AS_OF);
    const proof = JSON.parse(stdout);
    const [item] = proof.items;
    expect(item.phrases[0]).toMatchObject({ text: 'seed tray' });
    const sum = (some: readonly { gives: number }[]) => some.reduce((all, { gives }) => all + gives, 0);
    const own = item.places
      .filter(({ isOwn }: { isOwn: boolean }) => isOwn)
      .map(({ worth }: { worth: number }) => ({ gives: worth }));
    expect(item.standing).toBeCloseTo(Math.min(1, sum(item.places) / sum(own)), 10);
    for (const { at } of item.phrases[0].mentions)
      expect(at).toEqual({ file: expect.any(String), line: expect.any(Number), column: expect.any(Number) });
    expect(proof.passages).toBeUndefined();
  });

  test('finds the word it names at the line and column it names', async () => {
    const { stdout } = await lidlore(dir, 'proof', '2026-03', '--json', ...AS_OF);
    const lines = (FILES[OLDER] as string).split('\n');
    const mentions = JSON.parse(stdout).items[0].phrases[0].mentions as readonly {
      readonly grade: string;
      readonly at: { readonly file: string; readonly line: number; readonly column: number };
    }[];
    const here = mentions.filter(({ at, grade }) => at.file === OLDER && grade === 'exact');
    expect(here.length).toBeGreaterThan(3);
    for (const { at } of here)
      expect(lines[at.line - 1]?.slice(at.column - 1, at.column + 8).toLowerCase()).toBe('seed tray');
  });

  test.each([
    [['proof', '2026-3'], 'Did you mean 2026-03'],
    [['proof', '--aim', '70'], 'between 0 and 1'],
    [['proof', '2026-03', '2026-04'], 'second'],
  ])('%j is refused in a line', async (words, said) => {
    const { status, stderr } = await lidlore(dir, ...words);
    expect(stderr).toContain(said);
    expect(status).toBe(2);
  });
});

describe('build', () => {
  const proved = (stdout: string): readonly string[] =>
    [...stdout.matchAll(/^Proof of (\S+),/gm)].map((found) => found[1] as string);
  const pageOf = (cycle: string): Promise<string> =>
    readFile(join(dir, 'backroom', cycle, 'proof.html'), 'utf8');

  test('makes the proof of the newest cycle and of each whose text changed, and keeps the others', async () => {
    expect(proved((await lidlore(dir, 'build', ...AS_OF)).stdout)).toEqual(['2026-03', '2026-04']);
    const first = await pageOf('2026-03');
    expect(proved((await lidlore(dir, 'build', ...AS_OF)).stdout)).toEqual(['2026-04']);
    expect(await pageOf('2026-03')).toBe(first);
    await appendFile(join(dir, 'content', OLDER), '\nAnd a word about quinces.\n');
    expect(proved((await lidlore(dir, 'build', ...AS_OF)).stdout)).toEqual(['2026-03', '2026-04']);
    expect(await pageOf('2026-03')).toContain('quinces');
  });

  test('brings a proof back that somebody took away, without proving it anew', async () => {
    await lidlore(dir, 'build', ...AS_OF);
    const page = join(dir, 'backroom', '2026-03', 'proof.html');
    const before = await readFile(page, 'utf8');
    await rm(page);
    expect(proved((await lidlore(dir, 'build', ...AS_OF)).stdout)).toEqual(['2026-04']);
    expect(await readFile(page, 'utf8')).toBe(before);
  });

  test('makes a proof again where what is remembered is gone with it', async () => {
    await lidlore(dir, 'build', ...AS_OF);
    await rm(join(dir, 'backroom', '2026-03', 'proof.html'));
    await rm(join(dir, '.lidlore'), { recursive: true });
    expect(proved((await lidlore(dir, 'build', ...AS_OF)).stdout)).toEqual(['2026-03', '2026-04']);
  });

  test('leaves no word of a sealed cycle’s proof in the site', async () => {
    const { stdout } = await lidlore(dir, 'build', ...AS_OF);
    expect(stdout).toContain('Sealed until');
    const home = await readFile(join(dir, 'site', 'index.html'), 'utf8');
    expect(home).not.toMatch(/bee hotel|Small Tenants/i);
  });
});
