/** The encoder of the machine, where there is one: `ffmpeg` on the search path. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FrameMaker } from './frames.ts';
import { bytesOfFrame } from './planes.ts';

/** Milliseconds after which a run that says nothing is ended: it hangs. */
const SILENT = 60_000;

/** Milliseconds that a run may take for each frame, besides those that it may be silent. Far beyond the slowest seen. */
const A_FRAME = 2_000;

/** Milliseconds after which a run over so many frames is ended, however lively it is. */
export const longestRun = (frames: number): number => SILENT + frames * A_FRAME;

/**
 * A run of the program. Its words are given as they are, never through a shell, and it reads files alone. It is ended
 * after `most` milliseconds, and at once where `signal` says so.
 */
export const runFfmpeg = (program: string, words: readonly string[], most: number, signal?: AbortSignal) => {
  const child: ChildProcess = spawn(program, ['-nostdin', '-hide_banner', '-loglevel', 'error', ...words], {
    stdio: ['pipe', 'pipe', 'pipe'],
    windowsHide: true,
  });
  let said = '';
  let timer: NodeJS.Timeout | undefined;
  let isOver = false;
  const alive = (): void => {
    // A clock that is set after the run would hold up the whole program for nothing.
    if (isOver) return;
    clearTimeout(timer);
    timer = setTimeout(() => child.kill('SIGKILL'), SILENT);
  };
  alive();
  const limit = setTimeout(() => child.kill('SIGKILL'), most);
  const stop = (): boolean => child.kill('SIGKILL');
  signal?.addEventListener('abort', stop);
  if (signal?.aborted) stop();
  child.stderr?.on('data', (chunk: Buffer) => {
    said = (said + chunk.toString('utf8')).slice(-2000);
  });
  const ended = new Promise<number>((resolve) => {
    child.on('error', () => resolve(-1));
    child.on('close', (status) => resolve(status ?? -1));
  }).finally(() => {
    isOver = true;
    clearTimeout(timer);
    clearTimeout(limit);
    signal?.removeEventListener('abort', stop);
  });
  return { child, ended, alive, said: () => said.trim() };
};

/** H.264's rate factor: the smaller, the finer and the larger. */
const QUALITY = 21;

/** What is asked of the encoder, so that every phone and every app takes the film. */
const encoding = ({ rate, frames }: FrameMaker, most: number): readonly string[] => {
  const seconds = frames / rate;
  // Sound and tables take little: what is left is the pictures'.
  const kilobits = Math.floor((most * 0.92 * 8) / seconds / 1000);
  return [
    ...['-map', '0:v', '-map', '1:a', '-c:v', 'libx264', '-preset', 'veryfast', '-crf', String(QUALITY)],
    ...['-maxrate', `${kilobits}k`, '-bufsize', `${kilobits}k`, '-profile:v', 'high', '-level:v', '4.0'],
    ...['-pix_fmt', 'yuv420p', '-colorspace', 'bt709', '-color_primaries', 'bt709', '-color_trc', 'bt709'],
    ...['-color_range', 'tv', '-c:a', 'aac', '-b:a', '32k', '-t', seconds.toFixed(6)],
    ...['-map_metadata', '-1', '-fflags', '+bitexact', '-movflags', '+faststart', '-f', 'mp4', '-y'],
  ];
};

/** A film, or what the program said where it gave none. */
export type Encoded = { readonly bytes: Uint8Array } | { readonly refused: string };

/** A film as a file of at most `most` bytes; rejects where `signal` stops it. */
export const encodeWithFfmpeg = async (
  program: string,
  film: FrameMaker,
  most: number,
  onFrame: () => void = () => {},
  signal?: AbortSignal,
): Promise<Encoded> => {
  const { width, height, rate, frames } = film;
  const folder = await mkdtemp(join(tmpdir(), 'lidlore-film-'));
  const file = join(folder, 'film.mp4');
  try {
    const run = runFfmpeg(
      program,
      [
        ...['-f', 'rawvideo', '-pix_fmt', 'yuv420p', '-s', `${width}x${height}`, '-r', String(rate)],
        ...['-color_range', 'tv', '-colorspace', 'bt709', '-color_primaries', 'bt709', '-color_trc', 'bt709'],
        ...['-i', 'pipe:0', '-f', 'lavfi', '-i', 'anullsrc=r=48000:cl=mono'],
        ...encoding(film, most),
        file,
      ],
      longestRun(frames),
      signal,
    );
    const { stdin } = run.child;
    if (!stdin) throw new Error('Expected a pipe');
    let isBroken = false;
    stdin.on('error', () => {
      isBroken = true;
    });
    let status: number | undefined;
    void run.ended.then((ended) => {
      status = ended;
    });
    for (let frame = 0; frame < frames && !isBroken && status === undefined; frame += 1) {
      const bytes = new Uint8Array(bytesOfFrame(width, height));
      await film.make(frame, bytes);
      run.alive();
      // Waits until the frame before was taken, so that only a few are held.
      if (!stdin.write(bytes)) await Promise.race([once(stdin, 'drain').catch(() => {}), run.ended]);
      onFrame();
    }
    stdin.end();
    const ended = await run.ended;
    signal?.throwIfAborted();
    if (ended !== 0) return { refused: run.said() || `status ${ended}` };
    const made = await readFile(file);
    return made.length > 0 && made.length <= most ? { bytes: made } : { refused: `${made.length} bytes` };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
};
