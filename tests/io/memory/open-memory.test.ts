import { readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { openMemory } from '../../../src/io/memory/open-memory.ts';
import { rememberedPictures } from '../../../src/io/memory/remembered-pictures.ts';
import { sha256 } from '../../../src/text/hash.ts';
import { keepData, recallData } from '../../../src/text/memory.ts';
import { temporary } from '../temporary.ts';

const key = (name: string): string => sha256(name).slice(0, 32);
const text = (value: Uint8Array | undefined): string | undefined => value && Buffer.from(value).toString();
const packs = (dir: string): string[] => readdirSync(dir).filter((name) => name.endsWith('.pack'));

const filled = async (count = 40): Promise<string> => {
  const dir = await temporary();
  const memory = openMemory(dir);
  for (let i = 0; i < count; i += 1)
    memory.keep(key(`k${i}`), Buffer.from(`value ${i} ${'x'.repeat(i * 50)}`));
  memory.close();
  return dir;
};

describe('the memory between runs', () => {
  it('gives the next run what this one kept, the newest of each key', async () => {
    const dir = await temporary();
    for (const value of ['old', 'new']) {
      const memory = openMemory(dir);
      memory.keep(key('a'), Buffer.from(value));
      expect(text(memory.recall(key('a')))).toBe(value);
      memory.close();
    }
    const memory = openMemory(dir);
    expect(text(memory.recall(key('a')))).toBe('new');
    expect(memory.recall(key('b'))).toBeUndefined();
    memory.close();
  });

  it('gives the newest also where runs follow one another within a millisecond, or the clock was put back', async () => {
    const dir = await temporary();
    const clock = vi.spyOn(Date, 'now');
    try {
      for (let run = 0; run < 30; run += 1) {
        clock.mockReturnValue(1_774_000_000_000 - Math.floor(run / 10));
        const memory = openMemory(dir);
        memory.keep(key('a'), Buffer.from(`run ${run}`));
        memory.close(run % 7 === 6);
        const next = openMemory(dir);
        expect(text(next.recall(key('a')))).toBe(`run ${run}`);
        next.close();
      }
    } finally {
      clock.mockRestore();
    }
  });

  it('keeps any bytes, whatever their length, flushed in the middle or not', async () => {
    const dir = await temporary();
    await fc.assert(
      fc.property(
        fc.array(fc.uint8Array({ maxLength: 3000 }), { maxLength: 20 }),
        fc.nat(19),
        (values, flushAt) => {
          const memory = openMemory(dir);
          values.forEach((value, i) => {
            if (i === flushAt) memory.flush();
            memory.keep(key(`p${i}`), value);
          });
          const sameIn = (from: typeof memory): boolean =>
            values.every((value, i) => Buffer.from(from.recall(key(`p${i}`)) ?? []).equals(value));
          expect(sameIn(memory)).toBe(true);
          memory.close(true);
          const again = openMemory(dir);
          expect(sameIn(again)).toBe(true);
          again.close();
        },
      ),
      { numRuns: 40 },
    );
  });

  it('never gives a value whose bytes are not those that were kept, wherever a byte was changed', async () => {
    const dir = await filled(12);
    const [name = ''] = packs(dir);
    const whole = readFileSync(join(dir, name));
    let [lost, kept] = [0, 0];
    for (let at = 0; at < whole.length; at += 7) {
      const bytes = Buffer.from(whole);
      bytes[at] = (bytes[at] ?? 0) ^ 0x55;
      writeFileSync(join(dir, name), bytes);
      // With the list of entries, and without it, when the entries are looked for one after another.
      if (at % 2 === 0) rmSync(join(dir, `${name}.list`), { force: true });
      const memory = openMemory(dir);
      for (let i = 0; i < 12; i += 1) {
        const value = text(memory.recall(key(`k${i}`)));
        if (value === undefined) lost += 1;
        else {
          expect(value).toBe(`value ${i} ${'x'.repeat(i * 50)}`);
          kept += 1;
        }
      }
      memory.close();
    }
    expect(lost).toBeGreaterThan(0);
    expect(kept).toBeGreaterThan(lost);
  });

  it('reads a pack that a stopped run left unfinished as far as it goes', async () => {
    const dir = await filled(30);
    const [name = ''] = packs(dir);
    rmSync(join(dir, `${name}.list`));
    truncateSync(join(dir, name), readFileSync(join(dir, name)).length - 10);
    const memory = openMemory(dir);
    expect(text(memory.recall(key('k3')))).toMatch(/^value 3 /);
    expect(memory.recall(key('k29'))).toBeUndefined();
    memory.close();
  });

  it('takes what is no pack for nothing, and goes on', async () => {
    const dir = await filled(3);
    writeFileSync(join(dir, '0-0.pack'), 'not a pack at all');
    writeFileSync(join(dir, '1-1.pack'), '');
    const memory = openMemory(dir);
    expect(text(memory.recall(key('k1')))).toMatch(/^value 1/);
    memory.close();
  });

  it('lets two runs at once keep what each made', async () => {
    const dir = await filled(3);
    const [one, other] = [openMemory(dir), openMemory(dir)];
    one.keep(key('one'), Buffer.from('1'));
    other.keep(key('k1'), Buffer.from('again'));
    one.close(true);
    // The pack that the other is reading may be gone by now; what it opened it can read.
    expect(text(other.recall(key('k2')))).toMatch(/^value 2/);
    await new Promise((done) => setTimeout(done, 2));
    other.close();
    const next = openMemory(dir);
    expect(text(next.recall(key('one')))).toBe('1');
    next.close();
  });

  it('puts many packs together, and leaves out what a whole build did not ask for', async () => {
    const dir = await temporary();
    for (let run = 0; run < 16; run += 1) {
      const memory = openMemory(dir);
      memory.keep(key(`run ${run}`), Buffer.from(`made in run ${run}`));
      memory.close();
      await new Promise((done) => setTimeout(done, 2));
    }
    expect(packs(dir).length).toBe(16);
    const memory = openMemory(dir);
    for (let run = 0; run < 8; run += 1) expect(memory.has(key(`run ${run}`))).toBe(true);
    memory.close(true);
    expect(packs(dir).length).toBe(1);
    const after = openMemory(dir);
    expect(text(after.recall(key('run 7')))).toBe('made in run 7');
    expect(after.has(key('run 9'))).toBe(false);
    after.close();
  });

  it('does without, where nothing can be written', async () => {
    const dir = await temporary({ file: 'a file where the folder should be' });
    const memory = openMemory(join(dir, 'file', 'memory'));
    memory.keep(key('a'), Buffer.from('a'));
    memory.flush();
    expect(text(memory.recall(key('a')))).toBe('a');
    expect(() => memory.close(true)).not.toThrow();
  });

  it('takes data that cannot be read for none', async () => {
    const dir = await temporary();
    const memory = openMemory(dir);
    keepData(memory, key('data'), { a: [1, 'two'] });
    memory.keep(key('broken'), Buffer.from('{"a":'));
    expect(recallData(memory, key('data'))).toEqual({ a: [1, 'two'] });
    expect(recallData(memory, key('broken'))).toBeUndefined();
    memory.close();
  });
});

describe('remembered pictures', () => {
  it('are given only as they were kept: one that was emptied, cut, replaced or taken away is none', async () => {
    const dir = await temporary();
    const picture = Buffer.from('a picture’s bytes, some of them');
    for (const harm of [
      (file: string) => writeFileSync(file, ''),
      (file: string) => truncateSync(file, 8),
      (file: string) => writeFileSync(file, 'another picture of the same name'),
      (file: string) => rmSync(file),
    ]) {
      rememberedPictures(dir).keep(key('p'), picture);
      expect(Buffer.from(rememberedPictures(dir).recall(key('p')) ?? []).equals(picture)).toBe(true);
      harm(join(dir, key('p')));
      expect(rememberedPictures(dir).recall(key('p'))).toBeUndefined();
    }
  });
});
