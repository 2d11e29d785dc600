import { join } from 'node:path';
import { expect, test } from 'vitest';
import { runSheet } from '../../../src/channels/live/index.ts';
import { readTemplates } from '../../../src/io/read-templates.ts';
import { compileTemplates } from '../../../src/render/templates.ts';
import { wordingFor } from '../../../src/wording/wording.ts';
import { box, cycle, settings } from '../../support/box.ts';
import { carriedOut } from '../../support/carried-out.ts';

const { files, assets } = readTemplates({ own: join(import.meta.dirname, '../../../templates') });
const templates = compileTemplates(files, assets).value;

const sheetOf = async (more: Parameters<typeof cycle>[0], lang = 'en-GB'): Promise<string> => {
  const { outputs } = await carriedOut(runSheet, {
    box: box({ settings: settings({ pieces: ['live'], lang }), cycles: [cycle(more)] }),
    asOf: Date.UTC(2026, 2, 27),
    templates,
    language: undefined as never,
    faces: { digest: 'the faces', lacking: async () => [] },
    wording: wordingFor(lang),
    proofs: new Map(),
    parcels: new Map(),
    photos: new Map(),
  });
  const sheet = outputs.find(({ path }) => path === '2026-03/run-sheet.html');
  return sheet && 'text' in sheet ? sheet.text : '';
};

test('the chapters of a recording stand on a line each, to be copied', async () => {
  const beats = [
    { name: 'hook', at: 0 },
    { name: 'plant-mister', at: 95 },
    { name: 'questions-2', at: 3_700 },
  ];
  const sheet = await sheetOf({ replay: { address: 'https://video.example/1', minutes: 70, beats } });
  expect(/<pre[^>]*>([^<]*)<\/pre>/.exec(sheet)?.[1]).toBe(
    '0:00 The beginning\n1:35 Brass plant mister\n1:01:40 Questions\n',
  );
});

test('a sheet in another language is led in English and says nothing that no author wrote', async () => {
  const sheet = await sheetOf({}, 'de');
  expect(sheet).toContain('Set the stage');
  expect(sheet).toContain('Nothing to say yet.');
  expect(sheet).not.toContain('Where are you watching from?');
  expect(await sheetOf({})).toContain('Where are you watching from?');
});
