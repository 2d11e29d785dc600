/** Pictures made in a thread of the compiled program: the same bytes, and a photo that fails is told by its name. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { picturesInThread } from '../../src/cli/pictures-in-thread.ts';
import { type MakePictures, makeRemembered } from '../../src/io/ensure-pictures.ts';
import { isPhotoFailure } from '../../src/io/photo-problem.ts';
import type { PictureJob } from '../../src/render/output.ts';
import { photo } from '../io/photos.ts';
import { temporary } from '../io/temporary.ts';
import { compiledCommand } from '../support/compiled.ts';

const [, program = ''] = compiledCommand();
const inThread = picturesInThread(program);

const SOURCES = ['one.jpg', 'two.jpg', 'three.jpg'];

const jobs: readonly PictureJob[] = SOURCES.flatMap((source) =>
  [80, 120, 160, 200, 240].map((width) => ({
    source,
    hash: source,
    width,
    height: width / 2,
    format: 'webp' as const,
    key: `${source}-${width}`,
  })),
);

const folder = async (): Promise<string> => {
  const content = await temporary();
  for (const source of SOURCES) await writeFile(join(content, source), await photo(400, 300));
  return content;
};

const madeBy = async (make: MakePictures, content: string) => {
  const made = new Map<string, string>();
  const progress: string[] = [];
  await make(
    { content, assets: [] },
    jobs,
    { keep: (key, bytes) => made.set(key, Buffer.from(bytes).toString('base64')) },
    (done, total) => progress.push(`${done} of ${total}`),
  );
  return { made, progress };
};

test('they are those that are made without one, each told of once', async () => {
  const content = await folder();
  const { made, progress } = await madeBy(inThread, content);
  const here = await madeBy(makeRemembered, content);
  expect(made).toEqual(here.made);
  expect(made.size).toBe(15);
  expect(progress).toEqual(here.progress);
});

test('a photo that was damaged since it was looked at is told by its path', async () => {
  const content = await folder();
  await writeFile(join(content, 'two.jpg'), (await photo(400, 300)).subarray(0, 900));
  const failure = await madeBy(inThread, content).catch((error: unknown) => error);
  if (!isPhotoFailure(failure)) throw new Error(`Expected a photo to fail, found ${failure}`);
  expect(failure).toMatchObject({ source: 'two.jpg', problem: expect.stringMatching(/cut short|damaged/) });
});

test('what is no photo’s fault is passed on as it is', async () => {
  const nowhere = join(await temporary(), 'nowhere');
  await expect(madeBy(inThread, nowhere)).rejects.toMatchObject({ code: 'ENOENT' });
});
