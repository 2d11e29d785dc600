/** A build split over machines: each makes its share into a memory, and a last build puts all of it together. */
import { cp, mkdir, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { documentsFor, hasCycle, hasPicture } from '../../src/pipeline/share.ts';
import { photo } from '../io/photos.ts';
import { sharePictures, temporary, writeFiles } from '../io/temporary.ts';
import { runCompiled } from '../support/compiled.ts';
import { editableBox } from '../support/random-edits.ts';
import { textsOf, treeOf } from '../support/tree.ts';
import { lidlore } from './terminal.ts';
import { tinyBox } from './tiny-box.ts';

const AS_OF = ['--as-of', '2026-03-27'] as const;

const made = (dir: string): object => ({
  site: textsOf(treeOf(join(dir, 'site'))),
  backroom: textsOf(treeOf(join(dir, 'backroom'))),
});

/** What the program said as JSON, once it has ended well. */
const told = async (dir: string, ...words: readonly string[]): Promise<Record<string, unknown>> => {
  const { status, stdout, stderr } = await runCompiled(
    dir,
    'build',
    ...AS_OF,
    '--json',
    '--without',
    'film',
    ...words,
  );
  expect({ status, stderr }).toMatchObject({ status: 0 });
  return JSON.parse(stdout);
};

/** Puts the box into a folder, as each machine has it. */
const layBox = async (dir: string): Promise<void> => {
  const box = await editableBox();
  // A photo that no cycle shows: only the first page tells of it.
  box['content/box.md'] += '\n![Us at the bench](photos/us.jpg)\n';
  box['content/photos/us.jpg'] = await photo(88, 66);
  await writeFiles(dir, box);
};
const machine = async (): Promise<string> => {
  const dir = await temporary();
  await layBox(dir);
  return dir;
};

const picturesIn = (dir: string): Promise<readonly string[]> => readdir(join(dir, '.lidlore/pictures'));

/** Of the whole box. */
const PICTURES = 36;
const NOTHING_LEFT = { ok: true, site: { pictures: 0, picturesFromCache: PICTURES } };

describe('two shares and a build that puts them together give the bytes of one build, and the last makes no picture', () => {
  let whole: object;
  beforeAll(async () => {
    const dir = await mkdtemp(join(tmpdir(), 'lidlore-alone-'));
    await layBox(dir);
    await sharePictures(dir);
    await told(dir);
    whole = made(dir);
    await rm(dir, { recursive: true });
  });

  test('where both shares work at the same time on one memory', async () => {
    const dir = await machine();
    const shares = await Promise.all([told(dir, '--share', '1/2'), told(dir, '--share', '2/2')]);
    // Each made a part, and nothing was published.
    for (const share of shares) expect(share.newPictures).toBeLessThan(PICTURES);
    expect(await readdir(dir)).not.toContain('site');
    expect(await told(dir)).toMatchObject(NOTHING_LEFT);
    expect(made(dir)).toEqual(whole);
  });

  test('where each has a memory of its own, and the folders are put into one afterwards', async () => {
    const machines = [await machine(), await machine(), await machine()];
    const dir = await machine();
    await Promise.all(machines.slice(0, 2).map((one, i) => told(one, '--share', `${i + 1}/3`)));
    await told(machines[2] ?? '', '--share', '3/3');
    const counts = await Promise.all(machines.map(async (one) => (await picturesIn(one)).length));
    expect(counts.every((count) => count > 0 && count < PICTURES)).toBe(true);
    await mkdir(join(dir, '.lidlore'));
    for (const one of machines) await cp(join(one, '.lidlore'), join(dir, '.lidlore'), { recursive: true });
    expect(await told(dir)).toMatchObject(NOTHING_LEFT);
    expect(made(dir)).toEqual(whole);
  });

  test('and where one share is missing, the last build makes it', async () => {
    const dir = await machine();
    await told(dir, '--share', '2/2');
    const known = (await picturesIn(dir)).length;
    expect(await told(dir)).toMatchObject({ site: { pictures: PICTURES - known, picturesFromCache: known } });
    expect(made(dir)).toEqual(whole);
  });
});

describe('a share', () => {
  const shares = [1, 2, 3].map((number) => ({ number, of: 3 }));

  test('has each cycle, picture and document of a cycle alone, and consecutive cycles go round', () => {
    for (const cycle of ['2025-11', '2025-12', '2026-01', '2026-02'])
      expect(shares.filter((share) => hasCycle(share, cycle))).toHaveLength(1);
    const owners = ['2025-12', '2026-01', '2026-02'].map((cycle) =>
      shares.findIndex((share) => hasCycle(share, cycle)),
    );
    expect([...owners].sort()).toEqual([0, 1, 2]);
    const documents = ['boxes/2026-01-proving.html', '2026-01/letter.txt', 'catalogue.html', 'feed.xml'].map(
      (path) => ({ path }),
    );
    expect(
      shares.flatMap((share) => documentsFor(share, documents).own.map(({ path }) => path)).sort(),
    ).toEqual(['2026-01/letter.txt', 'boxes/2026-01-proving.html']);
    for (const share of shares)
      expect(documentsFor(share, documents).common.map(({ path }) => path)).toEqual([
        'catalogue.html',
        'feed.xml',
      ]);
  });

  test('has each picture alone, whether its photo is a cycle’s or not', () => {
    const sources = ['cycles/2026-01/photos/a.jpg', 'cycles/2026-02/photos/b.jpg', 'logo.png', 'us.jpg'];
    for (const [i, source] of sources.entries()) {
      const job = { key: `${i}a34567890`, source, hash: '', width: 1, height: 1, format: 'jpeg' } as const;
      const picture = { where: 'site', path: `pictures/${i}.jpg`, picture: job } as const;
      expect(shares.filter((share) => hasPicture(share, picture))).toHaveLength(1);
      expect(hasPicture(undefined, picture)).toBe(true);
    }
  });

  test.each([
    [['--share', '3/2'], 'Unexpected --share 3/2'],
    [['--share', '0/2'], 'Unexpected --share 0/2'],
    [['--share', 'x'], 'Unexpected --share x'],
    [['--share', '1'], 'Unexpected --share 1'],
    [['--without', 'x'], 'Unexpected --without x'],
  ] as const)(
    'that cannot be understood is refused in two lines, before anything is written: %j',
    async (words, said) => {
      const dir = await temporary(await tinyBox());
      const { status, stderr, stdout } = await lidlore(dir, 'build', ...words);
      expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
      expect(stderr).toMatch(/^[^\n]+\n[^\n]+\n$/);
      expect(stderr).toContain(said);
      expect(stderr).toContain('lidlore build --help');
      expect(await readdir(dir)).toEqual(['content']);
    },
  );
});
