/** The same content and moment give the same bytes, whatever the machine; and of the machine and of people nothing is in them. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { homedir, hostname, tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { temporary } from '../io/temporary.ts';
import { compiledCommand } from '../support/compiled.ts';
import { textsOf, treeOf } from '../support/tree.ts';
import { tinyBox } from './tiny-box.ts';

/** Nobody, by marks that are in no other text. */
const PEOPLE = ['Zqxanna Zqxberg', '17 Zqxlane', 'zqxanna@zqx.example', 'ZQX-4711-PARCEL'];

const PARCELS = `name,street,email,tracking,shipped,delivered,carrier,region\n${Array.from({ length: 60 }, (_, i) => `${PEOPLE.slice(0, 3).join(',')},${PEOPLE[3]}-${i},2026-03-03,2026-03-${String(5 + (i % 9)).padStart(2, '0')},Heronway,Kent`).join('\n')}\n`;

/** The smallest box that has pictures: one photo a cycle. */
const content = async (): Promise<readonly (readonly [string, string | Uint8Array])[]> =>
  Object.entries({ ...(await tinyBox()), 'content/cycles/2026-03/parcels.csv': PARCELS })
    .filter(([path]) => !path.includes('2026-04/photos'))
    .map(
      ([path, text]) =>
        [
          path,
          typeof text === 'string'
            ? text
                .replace(/^photo: .*\n/m, '')
                .replace(/^image:\n {2}- .*\n/m, (line) => (path.includes('2026-04') ? '' : line))
            : text,
        ] as const,
    );

interface Ground {
  readonly env?: Readonly<Record<string, string>>;
  /** Before the program's own words. */
  readonly shell?: string;
  readonly isReversed?: boolean;
}

interface Made {
  readonly folder: string;
  readonly site: ReadonlyMap<string, string>;
  readonly backroom: ReadonlyMap<string, string>;
}

const made = async ({ env = {}, shell = '', isReversed = false }: Ground = {}): Promise<Made> => {
  const folder = join(await temporary(), isReversed ? 'a folder of another name, zqxfolder' : 'zqxfolder');
  const files = [...(await content())];
  for (const [path, text] of isReversed ? files.reverse() : files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
    if (isReversed) utimesSync(join(folder, path), 86_400, 86_400);
  }
  const words = compiledCommand('build', '--as-of', '2026-03-27', '--without', 'film');
  const { status, stderr } = spawnSync(
    'sh',
    ['-c', `${shell} exec ${shell.endsWith('taskset -c 0') ? '' : ''}"$@"`, 'sh', ...words],
    {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, ...env },
    },
  );
  expect(status, stderr).toBe(0);
  return {
    folder,
    site: new Map(Object.entries(textsOf(treeOf(join(folder, 'site'))))),
    backroom: new Map(Object.entries(textsOf(treeOf(join(folder, 'backroom'))))),
  };
};

describe('a build', () => {
  test('gives the same bytes under another clock, language, mask, order of files and number of processors, and holds nothing of its machine', async () => {
    const first = await made({ env: { TZ: 'UTC', LANG: 'C', LC_ALL: 'C' } });
    const others: readonly (readonly [string, Ground])[] = [
      [
        'another zone and language',
        {
          env: {
            TZ: 'Pacific/Kiritimati',
            LANG: 'tr_TR.UTF-8',
            LC_ALL: 'tr_TR.UTF-8',
            LANGUAGE: 'tr',
            UV_THREADPOOL_SIZE: '16',
          },
        },
      ],
      [
        'files in another order, of another age, all private, on one processor',
        {
          env: { TZ: 'America/St_Johns', UV_THREADPOOL_SIZE: '1' },
          shell: 'umask 077; command -v taskset >/dev/null && taskset -pc 0 $$ >/dev/null;',
          isReversed: true,
        },
      ],
    ];
    expect(first.site.size).toBeGreaterThan(20);
    for (const [name, ground] of others) {
      const other = await made(ground);
      for (const where of ['site', 'backroom'] as const) {
        const differing = [...new Set([...first[where].keys(), ...other[where].keys()])].filter(
          (path) => path !== '.lidlore' && first[where].get(path) !== other[where].get(path),
        );
        expect([name, where, ...differing]).toEqual([name, where]);
      }
    }
    console.info(
      `The same bytes: ${first.site.size + first.backroom.size} files on ${1 + others.length} grounds.`,
    );

    const today = new Date().toISOString().slice(0, 10);
    const machine = [
      'zqxfolder',
      tmpdir(),
      homedir(),
      hostname(),
      process.execPath,
      import.meta.dirname,
      today,
    ].filter((word) => word.length > 4);
    const told: string[] = [];
    for (const where of ['site', 'backroom'] as const)
      for (const [path, text] of first[where])
        for (const word of [...machine, ...PEOPLE])
          if (`${path}\n${text}`.includes(word)) told.push(`${where}/${path}: ${word}`);
    expect(told).toEqual([]);

    const memory = [...treeOf(join(first.folder, '.lidlore'))].flatMap(([path, { bytes }]) =>
      bytes === undefined ? [] : [[path, bytes] as const],
    );
    const remembered = memory.filter(([path, bytes]) =>
      PEOPLE.some((one) => `${path}${bytes}`.includes(one)),
    );
    expect(remembered.map(([path]) => path)).toEqual([]);
    // Without this it could pass by being blind: what a record says is there as it was written.
    expect(memory.some(([, bytes]) => bytes.includes('shapes one loaf while it rises'))).toBe(true);
    expect(readFileSync(join(first.folder, 'content/cycles/2026-03/parcels.csv'), 'utf8')).toContain(
      PEOPLE[0],
    );
    console.info(
      `People and machine: ${PEOPLE.length + machine.length} words sought in ${first.site.size + first.backroom.size} files, people in ${memory.length} of the memory.`,
    );
  });
});
