/** What holds whatever a film shows: its bytes, what is in memory at once, and how long a program may take. */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chmod, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { encodeEmbedded } from '../../../src/io/film/embedded.ts';
import { encodeWithFfmpeg, runFfmpeg } from '../../../src/io/film/ffmpeg.ts';
import { findFfmpeg } from '../../../src/io/film/find-ffmpeg.ts';
import type { FrameMaker } from '../../../src/io/film/frames.ts';
import { temporary } from '../temporary.ts';

const ffmpeg = findFfmpeg(process.env.PATH);
const SIZE = { width: 160, height: 288, rate: 30 };

/** A film of grey bars that move, and of noise where `isNoise` says so: nothing is harder to encode. */
const filmOf = (
  frames: number,
  cuts: readonly number[],
  isNoise: (frame: number) => boolean,
): FrameMaker & { readonly buffers: () => number; readonly made: () => number } => {
  let [seed, buffers, made] = [1, 0, 0];
  return {
    ...SIZE,
    frames,
    cuts,
    buffers: () => buffers,
    made: () => made,
    make: async (frame, into) => {
      // Memory that comes new is empty; memory that was used before is not.
      if (into.every((byte) => byte === 0)) buffers += 1;
      made += 1;
      for (let i = 0; i < into.length; i += 1) {
        seed = (Math.imul(seed, 1_103_515_245) + 12_345) & 0x7fffffff;
        into[i] = isNoise(frame)
          ? 16 + ((seed >> 16) % 220)
          : 60 + ((((i % SIZE.width) + frame) >> 4) % 8) * 16;
      }
    },
  };
};

/** Each frame's mean light, as another decoder sees it, and what it complains of. */
const decoded = (file: string) => {
  const complaints = execFileSync('ffmpeg', ['-v', 'warning', '-i', file, '-f', 'null', '-'], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const planes = execFileSync(
    'ffmpeg',
    ['-v', 'error', '-i', file, '-map', '0:v', '-f', 'rawvideo', '-pix_fmt', 'gray', '-'],
    { maxBuffer: 1e9 },
  );
  const size = SIZE.width * SIZE.height;
  return {
    complaints,
    frame: (at: number) => planes.subarray(at * size, (at + 1) * size),
    count: planes.length / size,
  };
};

describe('the encoder that comes along', () => {
  test.skipIf(ffmpeg === undefined)(
    'keeps within the bytes by coarser pieces beside fine ones, and every decoder reads both',
    async () => {
      const film = filmOf(36, [0, 12, 24], (frame) => frame >= 12 && frame < 24);
      const fine = await encodeEmbedded(film, 30_000_000);
      const most = Math.round(fine.bytes.length * 0.8);
      const small = await encodeEmbedded(film, most);
      expect(small.bytes.length).toBeLessThanOrEqual(most);
      expect(small.softened).toBe(0);
      const file = join(await temporary({}), 'film.mp4');
      await writeFile(file, small.bytes);
      const { complaints, count, frame } = decoded(file);
      expect(complaints).toBe('');
      expect(count).toBe(36);
      await writeFile(file, fine.bytes);
      const before = decoded(file);
      // The shots without noise are as they were; the one with noise is not.
      for (const at of [0, 5, 11, 24, 30, 35]) expect(Buffer.compare(frame(at), before.frame(at))).toBe(0);
      expect(Buffer.compare(frame(15), before.frame(15))).not.toBe(0);
    },
    120_000,
  );

  test('takes small details away where coarseness alone is not enough, and says so', async () => {
    const film = filmOf(12, [0], () => true);
    const { bytes, softened } = await encodeEmbedded(film, 30_000);
    expect(bytes.length).toBeLessThanOrEqual(30_000);
    expect(softened).toBe(1);
  }, 120_000);

  test('gives no film rather than one that is too large', async () => {
    await expect(
      encodeEmbedded(
        filmOf(12, [0], () => true),
        1_000,
      ),
    ).rejects.toThrow('at most 1000 bytes');
  }, 120_000);

  test('fails as a film that cannot be painted does, and nothing else', async () => {
    const film = filmOf(12, [0, 6], () => false);
    const broken: FrameMaker = {
      ...film,
      make: async (frame, into) => {
        if (frame === 4) throw new Error('no paint');
        await film.make(frame, into);
      },
    };
    await expect(encodeEmbedded(broken, 1_000_000)).rejects.toThrow('no paint');
  });

  test('is stopped at the next frame', async () => {
    const film = filmOf(240, [0], () => false);
    const stop = new AbortController();
    const stopAtFive = (): void => {
      if (film.made() === 5) stop.abort(new Error('enough'));
    };
    await expect(encodeEmbedded(film, 30_000_000, stopAtFive, stop.signal)).rejects.toThrow('enough');
    expect(film.made()).toBe(5);
  });

  test('holds two frames of a shot at a time, however long it is', async () => {
    const film = filmOf(240, [0], () => false);
    await encodeEmbedded(film, 30_000_000);
    expect(film.buffers()).toBeLessThanOrEqual(2);
  }, 60_000);
});

describe('the encoder of the machine', () => {
  const program = async (text: string): Promise<string> => {
    const file = join(await temporary({ ffmpeg: `#!/bin/sh\n${text}` }), 'ffmpeg');
    await chmod(file, 0o755);
    return file;
  };

  test('is given no frame before it has taken the one before', async () => {
    const film = filmOf(240, [0], () => false);
    let whileAsleep = 0;
    const watch = setTimeout(() => {
      whileAsleep = film.made();
    }, 1500);
    await encodeWithFfmpeg(await program('sleep 2\ncat > /dev/null\nexit 1\n'), film, 30_000_000);
    clearTimeout(watch);
    expect(whileAsleep).toBeGreaterThan(0);
    // A pipe holds some of these small frames by itself.
    expect(whileAsleep).toBeLessThanOrEqual(8);
    expect(film.made()).toBe(240);
  }, 60_000);

  test('is ended where it is stopped, though it takes no frame', async () => {
    const folder = await temporary({});
    const pid = join(folder, 'pid');
    const film = filmOf(240, [0], () => false);
    const stop = new AbortController();
    const made = encodeWithFfmpeg(
      await program(`echo $$ > ${pid}\nexec sleep 60\n`),
      film,
      30_000_000,
      () => {},
      stop.signal,
    );
    while (!existsSync(pid)) await new Promise((resolve) => setTimeout(resolve, 20));
    stop.abort(new Error('enough'));
    await expect(made).rejects.toThrow('enough');
    expect(film.made()).toBeLessThan(240);
    const number = Number(await readFile(pid, 'utf8'));
    expect(() => process.kill(number, 0)).toThrow('ESRCH');
  });

  test('is ended when its time is over, however lively it is', async () => {
    const run = runFfmpeg(await program('exec sleep 30\n'), [], 400);
    const lively = setInterval(run.alive, 50);
    const began = performance.now();
    expect(await run.ended).toBe(-1);
    clearInterval(lively);
    expect(performance.now() - began).toBeLessThan(10_000);
  });
});
