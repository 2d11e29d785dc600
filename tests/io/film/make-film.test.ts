/**
 * Films read by programs that are not ours: ffprobe and ffmpeg (ffmpeg.org). The form is what ISO/IEC 14496-12 and the
 * apps' own advice ask for: H.264, yuv420p, a whole number of frames, `moov` before `mdat`, a sound track.
 */
import { execFileSync } from 'node:child_process';
import { chmod, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { contrastOf, rgbOf, TEXT_CONTRAST } from '../../../src/drawing/contrast.ts';
import { findFfmpeg } from '../../../src/io/film/find-ffmpeg.ts';
import { makeFilm } from '../../../src/io/film/make-film.ts';
import { readTemplates } from '../../../src/io/read-templates.ts';
import { type Film, fillsFrame } from '../../../src/render/film.ts';
import { MOST_ENLARGED } from '../../../src/render/tall-picture.ts';
import { temporary } from '../temporary.ts';

const ffmpeg = findFfmpeg(process.env.PATH);
if (ffmpeg === undefined && process.env.CI === 'true') throw new Error('Expected ffmpeg to be installed');

const { assets } = readTemplates({ own: 'templates', theirs: 'none', scripts: 'none' });

const SIZE = { width: 216, height: 384 };

/** A picture with something to recognize in it: bright at the foot, where the words stand. */
const picture = (): Promise<Buffer> =>
  sharp(
    Buffer.from(
      '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="600"><rect width="400" height="600" fill="#fff"/><circle cx="200" cy="220" r="130" fill="#375e97"/><rect x="40" y="20" width="90" height="60" fill="#fb6542"/></svg>',
    ),
  )
    .jpeg({ quality: 95 })
    .toBuffer();

const film = async (
  change: Partial<Film> = {},
): Promise<{ readonly film: Film; readonly content: string }> => {
  const content = await temporary({ 'a.jpg': await picture() });
  const still = { file: 'a.jpg', hash: 'a', width: 400, height: 600 };
  return {
    content,
    film: {
      ...SIZE,
      rate: 30,
      frames: 47,
      lang: 'en-GB',
      colours: {
        paper: '#faf7f2',
        ink: '#22201c',
        accent: '#8a4b00',
        onAccent: '#ffffff',
        night: '#1c1a17',
        onNight: '#faf7f2',
      },
      shots: [
        {
          from: 0,
          to: 20,
          seen: { view: 'still', still, move: 'nearer' },
          words: [{ from: 0, to: 20, text: 'A blue moon over white sand, and then some' }],
        },
        { from: 20, to: 31, seen: { view: 'still', still, move: 'rightward' }, words: [] },
        {
          from: 31,
          to: 47,
          seen: { view: 'card', ground: 'paper' },
          words: [{ from: 31, to: 47, text: 'Join for May' }],
          under: { address: 'crumb.example/join', name: 'Crumb' },
        },
      ],
      ...change,
    },
  };
};

const make = async (given: Awaited<ReturnType<typeof film>>, program?: string) => {
  const made = await makeFilm(given.film, {
    content: given.content,
    assets,
    mostEnlarged: MOST_ENLARGED,
    fillsFrame: (still) => fillsFrame(still, given.film),
    pathOf: (take) => join(given.content, take.name),
    ...(program !== undefined && { ffmpeg: program }),
  });
  const file = join(given.content, 'film.mp4');
  await writeFile(file, made.bytes);
  return { ...made, file };
};

const probed = (file: string) =>
  JSON.parse(
    execFileSync(
      'ffprobe',
      ['-v', 'error', '-count_frames', '-show_streams', '-show_format', '-of', 'json', file],
      { encoding: 'utf8' },
    ),
  ) as {
    readonly streams: readonly Record<string, string | number>[];
    readonly format: { duration: string };
  };

/** A decoded frame as red, green and blue. */
const frameOf = (file: string, frame: number, size = SIZE): Buffer =>
  execFileSync(
    'ffmpeg',
    [
      '-v',
      'error',
      '-i',
      file,
      '-vf',
      `select=eq(n\\,${frame})`,
      '-frames:v',
      '1',
      '-f',
      'rawvideo',
      '-pix_fmt',
      'rgb24',
      '-',
    ],
    { maxBuffer: size.width * size.height * 4 },
  );

/** Peak signal-to-noise ratio in decibels (ITU-T J.340): above 30 two pictures look alike. */
const psnr = (a: Uint8Array, b: Uint8Array): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += ((a[i] ?? 0) - (b[i] ?? 0)) ** 2;
  return 10 * Math.log10((255 * 255 * a.length) / sum);
};

const boxTypes = (bytes: Uint8Array): readonly string[] => {
  const types: string[] = [];
  const look = Buffer.from(bytes);
  for (let at = 0; at < look.length; at += look.readUInt32BE(at))
    types.push(look.toString('latin1', at + 4, at + 8));
  return types;
};

describe.skipIf(ffmpeg === undefined)('a film', () => {
  describe.each([
    ['embedded', undefined],
    ['ffmpeg', ffmpeg],
  ] as const)('made with %s', (encoder, program) => {
    test('is what phones and apps take, to a frame', async () => {
      const made = await make(await film(), program);
      expect(made.encoder).toBe(encoder);
      const { streams, format } = probed(made.file);
      expect(streams).toMatchObject([
        {
          codec_name: 'h264',
          pix_fmt: 'yuv420p',
          color_range: 'tv',
          color_space: 'bt709',
          ...SIZE,
          r_frame_rate: '30/1',
          avg_frame_rate: '30/1',
          nb_read_frames: '47',
          duration: '1.566667',
        },
        { codec_name: 'aac', profile: 'LC', channels: 1 },
      ]);
      expect(Number(format.duration)).toBeCloseTo(47 / 30, 1);
      const types = boxTypes(made.bytes);
      expect(types.indexOf('moov')).toBeLessThan(types.indexOf('mdat'));
    });

    test('can be decoded to its end without a word of complaint, and nothing is heard', async () => {
      const { file } = await make(await film(), program);
      expect(
        execFileSync('ffmpeg', ['-v', 'warning', '-i', file, '-f', 'null', '-'], { encoding: 'utf8' }),
      ).toBe('');
      const sound = execFileSync('ffmpeg', ['-v', 'error', '-i', file, '-map', '0:a', '-f', 's16le', '-'], {
        maxBuffer: 1e7,
      });
      expect(sound.length).toBeGreaterThan(47 * (48_000 / 30) * 2 * 0.98);
      expect(Math.max(...sound.subarray(0, 60_000))).toBe(0);
    });

    test('shows the still, and the words over it with enough contrast', async () => {
      const given = await film();
      const { file } = await make(given, program);
      // The picture cut to 9:16 around its middle: above the veil nothing but the still is seen.
      const still = await sharp(await picture())
        .extract({ left: 31, top: 0, width: 338, height: 600 })
        .resize(SIZE.width, SIZE.height, { fit: 'fill' })
        .raw()
        .toBuffer();
      const upper = SIZE.width * 3 * 180;
      const frame = frameOf(file, 1);
      expect(psnr(frame.subarray(0, upper), still.subarray(0, upper))).toBeGreaterThan(27);
      // Right of the words, in their rows, the veil lies over white.
      const { paper } = given.film.colours;
      for (let row = 285; row < 310; row += 3) {
        const at = (row * SIZE.width + SIZE.width - 6) * 3;
        const under = [frame[at] ?? 0, frame[at + 1] ?? 0, frame[at + 2] ?? 0] as const;
        expect(contrastOf(under, rgbOf(paper))).toBeGreaterThan(TEXT_CONTRAST);
      }
    });
  });

  test('is the same bytes on each run of the embedded encoder', async () => {
    const [one, other] = [await make(await film()), await make(await film())];
    expect(Buffer.compare(one.bytes, other.bytes)).toBe(0);
  });

  test('is made without a broken ffmpeg, and says what that said', async () => {
    const given = await film();
    const broken = join(given.content, 'ffmpeg');
    await writeFile(broken, '#!/bin/sh\necho "Unknown encoder libx264" >&2\nexit 1\n');
    await chmod(broken, 0o755);
    const made = await make(given, broken);
    expect(made).toMatchObject({ encoder: 'embedded', refused: 'Unknown encoder libx264' });
    expect(probed(made.file).streams[0]).toMatchObject({ nb_read_frames: '47' });
  });

  test.each(['#faf7f2', '#faf6f6', '#5f7358'])(
    'has paper of one colour from edge to edge, beside a picture and below it: %s',
    async (paper) => {
      const size = { width: 540, height: 960 };
      const still = { file: 'wide.jpg', hash: 'wide', width: 900, height: 440 };
      const given = await film({
        ...size,
        frames: 4,
        shots: [{ from: 0, to: 4, seen: { view: 'still', still, move: 'nearer' }, words: [] }],
      });
      const { width, height } = still;
      const wide = sharp(await picture()).resize(width, height, { fit: 'fill' });
      await writeFile(join(given.content, still.file), await wide.jpeg().toBuffer());
      const colours = { ...given.film.colours, paper };
      const { file } = await make({ ...given, film: { ...given.film, colours } });
      const pixels = frameOf(file, 2, size);
      const seen = [40, 900].map((row) =>
        pixels
          .subarray(row * size.width * 3, (row + 1) * size.width * 3)
          .toString('hex')
          .match(/.{6}/g),
      );
      expect(new Set(seen.flatMap((row) => row ?? [])).size).toBe(1);
    },
  );

  test('sets a picture that is too wide for it on paper, whole', async () => {
    const given = await film();
    const wide = await sharp({ create: { width: 900, height: 300, channels: 3, background: '#375e97' } })
      .jpeg()
      .toBuffer();
    await writeFile(join(given.content, 'wide.jpg'), wide);
    const { file } = await make({
      ...given,
      film: {
        ...given.film,
        frames: 4,
        shots: [
          {
            from: 0,
            to: 4,
            seen: {
              view: 'still',
              still: { file: 'wide.jpg', hash: 'w', width: 900, height: 300 },
              move: 'nearer',
            },
            words: [{ from: 0, to: 4, text: 'Wide' }],
          },
        ],
      },
    });
    const frame = frameOf(file, 2);
    const blue = [...Array(SIZE.height).keys()].filter(
      (row) => (frame[(row * SIZE.width + 108) * 3] ?? 255) < 100,
    );
    // 216 × 72: its own shape, over the whole width.
    expect(blue.length).toBeGreaterThan(66);
    expect(blue.length).toBeLessThan(78);
    expect(frame[0]).toBeGreaterThan(240);
  });
});

describe.skipIf(ffmpeg === undefined)('a filmed piece of the owner’s', () => {
  /** Red and green one above the other, as a phone held upright writes it: side by side, with a note to turn it. */
  const phoneFilm = (file: string, codec: readonly string[], seconds = 2): void => {
    const plain = `${file}.side.mp4`;
    const drawn = `color=c=green:s=320x240:r=25:d=${seconds},drawbox=x=0:y=0:w=160:h=240:c=red:t=fill`;
    execFileSync('ffmpeg', [
      '-v',
      'error',
      '-f',
      'lavfi',
      '-i',
      drawn,
      ...codec,
      '-pix_fmt',
      'yuv420p',
      plain,
    ]);
    execFileSync('ffmpeg', ['-v', 'error', '-i', plain, '-c', 'copy', '-metadata:s:v:0', 'rotate=90', file]);
  };
  const withTake = async (name: string, from = 0) => {
    const given = await film();
    const [shot] = given.film.shots;
    if (!shot) throw new Error('Expected a shot');
    const take = { cycle: '2026-03', name, from };
    return { ...given, film: { ...given.film, frames: 20, shots: [{ ...shot, take }] } };
  };
  const H264 = ['-c:v', 'libx264'];
  const HEVC = ['-c:v', 'libx265', '-x265-params', 'log-level=none', '-tag:v', 'hvc1'];

  test.each([
    ['H.264', H264],
    ['HEVC', HEVC],
  ])('in %s is cut in, turned as the phone was held, with words that can be read', async (_, codec) => {
    const given = await withTake('take.mov', 0.5);
    phoneFilm(join(given.content, 'take.mov'), codec);
    const made = await make(given, ffmpeg);
    expect(made.takes).toEqual([]);
    expect(probed(made.file).streams).toMatchObject([{ nb_read_frames: '20', ...SIZE }, {}]);
    const frame = frameOf(made.file, 5);
    const at = (row: number) => [
      ...frame.subarray((row * SIZE.width + 108) * 3, (row * SIZE.width + 109) * 3),
    ];
    // A quarter turn: degrees against the clock, as ffprobe reads the note. Counter-clockwise, the left half ends below.
    const [{ side_data_list: notes } = {}] = probed(join(given.content, 'take.mov')).streams;
    const [{ rotation }] = notes as unknown as [{ readonly rotation: number }];
    expect(Math.abs(rotation)).toBe(90);
    const [red, green] = rotation === 90 ? [at(225), at(40)] : [at(40), at(225)];
    expect(red?.[0]).toBeGreaterThan(2 * (red?.[1] ?? 255));
    expect(green?.[1]).toBeGreaterThan(2 * (green?.[0] ?? 255));
  });

  test('that is too short, damaged or without a program to read it gives way to the still', async () => {
    const short = await withTake('take.mp4', 1.8);
    phoneFilm(join(short.content, 'take.mp4'), H264);
    const made = await make(short, ffmpeg);
    expect(made.takes).toMatchObject([{ take: { name: 'take.mp4' }, needed: 20 / 30 }]);
    expect(made.takes[0]?.seconds).toBeGreaterThan(0);
    expect(probed(made.file).streams[0]).toMatchObject({ nb_read_frames: '20' });

    const damaged = await withTake('take.mp4');
    await writeFile(join(damaged.content, 'take.mp4'), 'no film');
    expect((await make(damaged, ffmpeg)).takes).toMatchObject([{ seconds: 0 }]);

    const alone = await withTake('take.mp4');
    phoneFilm(join(alone.content, 'take.mp4'), H264);
    expect(await make(alone)).toMatchObject({ encoder: 'embedded', takes: [] });
  });

  test('that is a list of other addresses is not followed', async () => {
    const given = await withTake('take.mp4');
    await writeFile(
      join(given.content, 'take.mp4'),
      '#EXTM3U\n#EXTINF:2,\nhttp://127.0.0.1:9/x.ts\n#EXT-X-ENDLIST\n',
    );
    expect((await make(given, ffmpeg)).takes).toMatchObject([{ seconds: 0 }]);
  });
});

test('the program is found on the search path alone, and a folder of its name is none', async () => {
  const dir = await temporary({ 'bin/ffmpeg': '#!/bin/sh\n', 'other/ffmpeg/x': '' });
  await chmod(join(dir, 'bin/ffmpeg'), 0o755);
  expect(findFfmpeg(`${join(dir, 'other')}:${join(dir, 'bin')}`)).toBe(join(dir, 'bin/ffmpeg'));
  expect(findFfmpeg(join(dir, 'other'))).toBeUndefined();
  expect(findFfmpeg(undefined)).toBeUndefined();
  expect((await readFile(join(dir, 'bin/ffmpeg'))).length).toBeGreaterThan(0);
});
