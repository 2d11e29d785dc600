import { spawnSync } from 'node:child_process';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { disk } from '../../../src/io/publish/file-system.ts';
import { lock } from '../../../src/io/publish/lock.ts';
import { treeOf } from '../../support/tree.ts';
import { temporary, writeFiles } from '../temporary.ts';

afterEach(() => vi.useRealTimers());

const taken = async (dir: string) => {
  const held = await lock(disk, dir, { wait: false });
  await held?.release();
  return held !== undefined;
};

const holder = (facts: object): string =>
  JSON.stringify({ token: 'a', pid: process.pid, host: 'another-machine', began: '', ...facts });

describe('a lock', () => {
  it('lets one in at a time, in the same process too, and tells who is waited for, once', async () => {
    const dir = await temporary();
    const first = await lock(disk, dir, { wait: true });
    expect(await taken(dir)).toBe(false);
    const told: number[] = [];
    const second = lock(disk, dir, { wait: true, onWait: ({ pid }) => told.push(pid) });
    await sleep(200);
    expect(told).toEqual([process.pid]);
    await first?.release();
    await (await second)?.release();
    expect([...treeOf(dir).keys()]).toEqual([]);
  });

  it('is held by one alone when many find the lock of a dead process', async () => {
    const dir = await temporary();
    const { pid } = spawnSync('true');
    const first = await lock(disk, dir, { wait: true });
    const [path = '', mine] = [...treeOf(dir)][0] ?? [];
    await first?.release();
    for (let round = 0; round < 20; round++) {
      await writeFiles(dir, {
        [path]: JSON.stringify({ ...JSON.parse(mine?.bytes ?? ''), token: `t${round}`, pid }),
      });
      let inside = 0;
      let most = 0;
      const enter = async (): Promise<void> => {
        const held = await lock(disk, dir, { wait: true });
        most = Math.max(most, ++inside);
        await sleep(1);
        inside--;
        await held?.release();
      };
      await Promise.all([enter(), enter(), enter(), enter()]);
      expect(most).toBe(1);
    }
    expect([...treeOf(dir).keys()]).toEqual([]);
  });

  it('of a process whose number was given to another one is taken over', async () => {
    const dir = await temporary();
    const first = await lock(disk, dir, { wait: true });
    const bytes = [...treeOf(dir)][0]?.[1].bytes ?? '';
    await first?.release();
    expect(JSON.parse(bytes).host).toContain(hostname());
    await writeFiles(dir, {
      '.lidlore-lock': JSON.stringify({ ...JSON.parse(bytes), token: 'b', began: '1' }),
    });
    expect(await taken(dir)).toBe(true);
    await writeFiles(dir, { '.lidlore-lock': JSON.stringify({ ...JSON.parse(bytes), token: 'b' }) });
    expect(await taken(dir), 'one left over from this very process').toBe(true);
  });

  it.each([
    ['of another machine', holder({})],
    ['that does not say who made it', ''],
    ['whose token would lead out of the folder', holder({ token: '../../a' })],
  ])('%s is respected while it gives signs of life, and taken over when it gives none', async (_, text) => {
    const dir = await temporary({ '.lidlore-lock': text });
    expect(await taken(dir)).toBe(false);
    vi.useFakeTimers({ toFake: ['Date'] });
    let got = false;
    const waiting = lock(disk, dir, { wait: true }).then((held) => {
      got = true;
      return held;
    });
    const twoSeconds = async (): Promise<void> => {
      vi.setSystemTime(Date.now() + 2000);
      await sleep(60);
    };
    for (let i = 0; i < 12; i++) {
      await disk.touch(join(dir, '.lidlore-lock'));
      await twoSeconds();
    }
    expect(got).toBe(false);
    for (let i = 0; i < 100 && !got; i++) await twoSeconds();
    expect(got).toBe(true);
    await (await waiting)?.release();
    expect([...treeOf(dir).keys()]).toEqual([]);
  });
});
