import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { fallbackFaces } from '../support/fallback-faces.ts';

const SHEET = join(import.meta.dirname, '../../templates/site.css');
/** What is made stands between these two lines. */
const BEGIN =
  '/* Fitted faces, made by tests/render/fallback-faces.test.ts: run it with -u after a font has changed. */\n';
const END = '/* End of the fitted faces. */\n';

test('the faces that stand in for ours have the measures of the font files', async () => {
  const sheet = readFileSync(SHEET, 'utf8');
  const [before, rest] = sheet.split(BEGIN);
  const after = rest?.split(END)[1];
  expect(after).toBeDefined();
  await expect(`${before}${BEGIN}${fallbackFaces(before ?? '')}${END}${after}`).toMatchFileSnapshot(SHEET);
});
