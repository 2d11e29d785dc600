/** The owner's own filmed piece, read by the machine's ffmpeg: turned as the phone was held, cut to the frame, without sound. */
import { longestRun, runFfmpeg } from './ffmpeg.ts';
import { bytesOfFrame } from './planes.ts';

/** A stretch of a filmed piece. */
export interface Stretch {
  /** Absolute path. */
  readonly path: string;
  /** Seconds from its start. */
  readonly from: number;
  readonly frames: number;
}

/**
 * The frames of a stretch, one after the other, each as it comes and none held; fewer where the piece ends before, and
 * none where it cannot be read. The program reads that file and nothing else: no list in it may lead to another place.
 */
export async function* takeFrames(
  program: string,
  { path, from, frames }: Stretch,
  { width, height, rate }: { readonly width: number; readonly height: number; readonly rate: number },
  signal?: AbortSignal,
): AsyncGenerator<Uint8Array> {
  const whole = `scale=${width}:${height}:force_original_aspect_ratio=increase:flags=bicubic:out_color_matrix=bt709:out_range=tv`;
  const run = runFfmpeg(
    program,
    [
      ...[
        '-protocol_whitelist',
        'file',
        '-ss',
        String(from),
        '-i',
        `file:${path}`,
        '-map',
        '0:v:0',
        '-an',
        '-sn',
        '-dn',
      ],
      ...['-vf', `fps=${rate},${whole},crop=${width}:${height},setsar=1,format=yuv420p`],
      ...['-frames:v', String(frames), '-f', 'rawvideo', 'pipe:1'],
    ],
    longestRun(frames),
    signal,
  );
  const { stdin, stdout } = run.child;
  stdin?.on('error', () => {});
  stdin?.end();
  const size = bytesOfFrame(width, height);
  let frame = new Uint8Array(size);
  let filled = 0;
  try {
    for await (const chunk of stdout ?? []) {
      const bytes: Buffer = chunk;
      run.alive();
      for (let at = 0; at < bytes.length; ) {
        const some = Math.min(size - filled, bytes.length - at);
        frame.set(bytes.subarray(at, at + some), filled);
        at += some;
        filled += some;
        if (filled < size) continue;
        yield frame;
        frame = new Uint8Array(size);
        filled = 0;
      }
    }
  } finally {
    run.child.kill('SIGKILL');
    await run.ended;
  }
}
