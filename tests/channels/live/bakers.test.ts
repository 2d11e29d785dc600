/** The run sheet of a box of another trade. */
import { beforeAll, describe, expect, test } from 'vitest';
import { bladeCloses } from '../../../src/content/hurtful-kinds.ts';
import { bakersBox } from '../../support/bakers-box.ts';
import { siteOf } from '../../support/built.ts';

const textOf = (page: string): string =>
  page
    .replace(/<(style|script)\b[^>]*>[\s\S]*?<\/\1>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

let sheets: ReadonlyMap<string, string>;

beforeAll(async () => {
  const { backroom } = await siteOf(bakersBox('en-GB'), Date.parse('2026-04-30T00:00:00Z'));
  sheets = new Map(
    ['2026-03', '2026-04'].map((id) => [id, textOf(backroom.get(`${id}/run-sheet.html`) ?? '')]),
  );
});

describe('the run sheet of the bakers’ box', () => {
  test('covers the edge of a knife that does not fold', () => {
    expect(sheets.get('2026-04')).toContain('cover its edge after use');
    expect(sheets.get('2026-04')).not.toContain('close it after use');
  });

  test('asks of two things at once only where the same becomes of both', () => {
    expect(sheets.get('2026-04')).toContain(
      'Of the Dutch oven and the Japanese bread knife: which would you use first',
    );
    expect(sheets.get('2026-04')).toContain('What would you do with the stone-ground rye flour first?');
    expect(sheets.get('2026-04')).not.toMatch(/biscuit cutter and the/);
  });

  test('says its length once', () => {
    expect(sheets.get('2026-04')).toMatch(/ (\d+:\d\d) of words and handling\. Say how long/);
  });

  test('ends with thanks, the day of the next box where it is known, and goodbye', () => {
    const end = 'Thank you for coming, and for everything you asked.';
    expect(sheets.get('2026-03')).toContain(
      `${end} The April box is opened on Sunday 19 April. Until then, goodbye.`,
    );
    expect(sheets.get('2026-04')).toContain(`${end} The May box comes next. Until then, goodbye.`);
  });
});

test('chapters stand a line each, to be copied', async () => {
  const files = bakersBox('en-GB');
  const path = 'cycles/2026-03/cycle.md';
  const replay =
    'replay: {address: "https://video.example/x", minutes: 20, beats: {hook: "0:00", whisk: "1:00", goodbye: "19:00"}}\n';
  const { backroom } = await siteOf(
    { ...files, [path]: (files[path] ?? '').replace('peek:', `${replay}peek:`) },
    Date.parse('2026-04-30T00:00:00Z'),
  );
  const lines = /<pre[^>]*>([\s\S]*?)<\/pre>/.exec(backroom.get('2026-03/run-sheet.html') ?? '')?.[1];
  expect(lines).toBe('0:00 The beginning\n1:00 Danish dough whisk\n19:00 Goodbye\n');
});

describe('a blade', () => {
  test.each([
    ['bread knife', 'Japanese bread knife', false],
    ['pruning saw', 'Pruning saw', false],
    ['hatchet', 'Camp hatchet', false],
    ['pruning saw', 'Folding pruning saw', true],
    ['pocket knife', 'Horn pocket knife', true],
    ['knife', 'Penknife', true],
    ['herb snips', 'Herb snips', true],
    ['secateurs', 'Secateurs for the left hand', true],
    ['dressmaking shears', 'Tailor’s shears', true],
    ['paring knife', 'Paring knife', false],
    ['oyster knife', 'Oyster knife', false],
    ['rotary cutter', 'Rotary cutter, retractable', true],
  ])('%s, “%s”, closes: %s', (kind, name, closes) => {
    expect(bladeCloses([name, kind])).toBe(closes);
  });
});
