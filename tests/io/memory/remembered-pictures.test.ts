import { existsSync, mkdirSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { rememberedPictures } from '../../../src/io/memory/remembered-pictures.ts';
import { temporary } from '../temporary.ts';

const DAY = 86_400;

/** Sets a file's time back by so many days. */
const age = (path: string, days: number): void => {
  const then = Date.now() / 1000 - days * DAY;
  utimesSync(path, then, then);
};

test('pictures that nobody has asked for in two weeks are taken away, and no others', async () => {
  const folder = await temporary();
  const keep = (key: string, days: number): void => {
    rememberedPictures(folder).keep(key, Uint8Array.of(1, 2, 3));
    age(join(folder, key), days);
  };
  keep('asked-for-long-ago', 300);
  keep('asked-for-now', 20);
  keep('not-asked-for-since-last-week', 8);
  keep('not-asked-for-since-last-month', 30);
  writeFileSync(join(folder, 'half.part'), '');
  age(join(folder, 'half.part'), 1);
  writeFileSync(join(folder, 'another-run.part'), '');
  mkdirSync(join(folder, 'somebody-else'));
  age(join(folder, 'somebody-else'), 30);

  rememberedPictures(folder).forgetOthers(new Set(['asked-for-long-ago', 'asked-for-now']));
  expect(readdirSync(folder).sort()).toEqual([
    'another-run.part',
    'asked-for-long-ago',
    'asked-for-now',
    'not-asked-for-since-last-week',
    'somebody-else',
  ]);

  // What was asked for then is not old now.
  rememberedPictures(folder).forgetOthers(new Set());
  expect(existsSync(join(folder, 'asked-for-long-ago'))).toBe(true);
});
