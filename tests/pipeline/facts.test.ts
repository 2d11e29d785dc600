import { describe, expect, test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { Proof } from '../../src/channels/channel.ts';
import { readRecords } from '../../src/content/read.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { linkBox } from '../../src/model/link.ts';
import { DEFAULT_AIM } from '../../src/pipeline/defaults.ts';
import { proofsOf } from '../../src/pipeline/facts.ts';
import { cycleText, itemText, sourcesOf } from '../analysis/article.ts';
import { readFrontMatter } from '../support/read-front-matter.ts';

const TEXTS: Readonly<Record<string, string>> = {
  'cycles/2026-03/cycle.md': cycleText('It came in March.'),
  'cycles/2026-03/items/01-seed-tray.md': itemText('Seed tray', 'seed tray', 'Fill it.', { lead: true }),
  'cycles/2026-04/cycle.md': cycleText('It came in April.', {
    theme: 'Small Tenants',
    shipped: '2026-04-03',
    reveal: '2026-04-19T19:00',
  }),
  'cycles/2026-04/items/01-bee-hotel.md': itemText('Bee hotel', 'bee hotel', 'Hang it up.', { lead: true }),
};
const SEALED = Date.UTC(2026, 3, 19, 17);
const SHOWN = Date.UTC(2026, 3, 19, 18);

const noteIn = (file: string): Diagnostic => ({
  weight: 'note',
  rule: 'a-rule',
  location: { file, line: 1, column: 1 },
  message: file,
});

const proofs = async (
  texts: Readonly<Record<string, string>>,
  asOf: number,
  diagnostics: readonly Diagnostic[] = [],
): Promise<ReadonlyMap<string, Proof>> => {
  const sources = sourcesOf(texts);
  const { value: box } = linkBox(readRecords(sources, readFrontMatter).value, sources);
  if (!box) throw new Error('Expected a box');
  return proofsOf({
    box,
    language: await languageFor('en-GB'),
    sources,
    asOf,
    aim: DEFAULT_AIM,
    diagnostics,
    names: new Map(),
    wanted: () => true,
  });
};
const hashes = async (texts: Readonly<Record<string, string>>, asOf: number) =>
  Object.fromEntries([...(await proofs(texts, asOf))].map(([cycle, { textHash }]) => [cycle, textHash]));

describe('what a proof was made from', () => {
  test('is told apart by the seal alone, and for the one cycle whose seal it is', async () => {
    const [before, after] = [await hashes(TEXTS, SEALED), await hashes(TEXTS, SHOWN)];
    expect(after['2026-04']).not.toBe(before['2026-04']);
    expect(after['2026-03']).toBe(before['2026-03']);
    expect(await hashes(TEXTS, SHOWN + 1)).toEqual(after);
  });

  test('is told apart by a word of its own texts, and of no other cycle’s', async () => {
    const path = 'cycles/2026-04/items/01-bee-hotel.md';
    const changed = { ...TEXTS, [path]: TEXTS[path]?.replace('Hang it up.', 'Hang it high.') ?? '' };
    const [before, after] = [await hashes(TEXTS, SEALED), await hashes(changed, SEALED)];
    expect(after['2026-04']).not.toBe(before['2026-04']);
    expect(after['2026-03']).toBe(before['2026-03']);
  });
});

test('a proof has the findings of its own records and of the box, and of no other cycle', async () => {
  const files = ['box.md', 'cycles/2026-03/cycle.md', 'cycles/2026-04/items/01-bee-hotel.md'];
  const found = await proofs(TEXTS, SEALED, files.map(noteIn));
  const of = (cycle: string) => found.get(cycle)?.diagnostics.map(({ message }) => message);
  expect(of('2026-03')).toEqual(['box.md', 'cycles/2026-03/cycle.md']);
  expect(of('2026-04')).toEqual(['box.md', 'cycles/2026-04/items/01-bee-hotel.md']);
});
