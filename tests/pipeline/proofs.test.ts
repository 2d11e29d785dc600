import { describe, expect, test } from 'vitest';
import type { Proof } from '../../src/channels/channel.ts';
import { proof } from '../../src/channels/proof/index.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { proofsFor } from '../../src/pipeline/proofs.ts';
import { digestOf } from '../../src/text/digest.ts';
import { BOX, cycleText, itemText } from '../analysis/article.ts';
import { boxOf, type Files } from '../support/built.ts';
import { privateInput } from '../support/demo-box.ts';

const TEXTS: Files = {
  'box.md': BOX,
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

const prove = async (texts: Files, asOf: number, diagnostics: readonly Diagnostic[] = []) => {
  const found = await boxOf(texts, asOf);
  if (!found) throw new Error('Expected a box');
  const input = await privateInput(found.box, asOf);
  const { proofs } = await proofsFor({ ...found, tools: input, program: 'this one', diagnostics });
  return { ...input, proofs };
};
const proofsOf = async (
  texts: Files,
  asOf: number,
  diagnostics: readonly Diagnostic[],
): Promise<ReadonlyMap<string, Proof>> => (await prove(texts, asOf, diagnostics)).proofs;

/** What decides, of each proof, whether its page is made anew. */
const digests = async (texts: Files, asOf: number): Promise<Readonly<Record<string, string>>> =>
  Object.fromEntries(
    proof
      .plan(await prove(texts, asOf))
      .documents.map(({ path, data }) => [path.replace('/proof.html', ''), digestOf(data)]),
  );

describe('what a proof is made from', () => {
  test('is told apart by the seal alone, and for the one cycle whose seal it is', async () => {
    const [before, after] = [await digests(TEXTS, SEALED), await digests(TEXTS, SHOWN)];
    expect(after['2026-04']).not.toBe(before['2026-04']);
    expect(after['2026-03']).toBe(before['2026-03']);
    expect(await digests(TEXTS, SHOWN + 1)).toEqual(after);
  });

  test('is told apart by a word of its own texts, and of no other cycle’s', async () => {
    const path = 'cycles/2026-04/items/01-bee-hotel.md';
    const changed = { ...TEXTS, [path]: TEXTS[path]?.replace('Hang it up.', 'Hang it high.') ?? '' };
    const [before, after] = [await digests(TEXTS, SEALED), await digests(changed, SEALED)];
    expect(after['2026-04']).not.toBe(before['2026-04']);
    expect(after['2026-03']).toBe(before['2026-03']);
  });
});

test('a proof has the findings of its own records and of the box, and of no other cycle', async () => {
  const files = ['box.md', 'cycles/2026-03/cycle.md', 'cycles/2026-04/items/01-bee-hotel.md'];
  const found = await proofsOf(TEXTS, SEALED, files.map(noteIn));
  const of = (cycle: string) => found.get(cycle)?.diagnostics.map(({ message }) => message);
  expect(of('2026-03')).toEqual(['box.md', 'cycles/2026-03/cycle.md']);
  expect(of('2026-04')).toEqual(['box.md', 'cycles/2026-04/items/01-bee-hotel.md']);
});
