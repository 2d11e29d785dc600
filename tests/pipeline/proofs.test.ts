import { describe, expect, test } from 'vitest';
import type { Proof } from '../../src/channels/channel.ts';
import { proof } from '../../src/channels/proof/index.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { nothingKept } from '../../src/pipeline/kept.ts';
import { proofsFor } from '../../src/pipeline/proofs.ts';
import { digestOf } from '../../src/text/digest.ts';
import type { Memory } from '../../src/text/memory.ts';
import { BOX, cycleText, itemText } from '../analysis/article.ts';
import { boxOf, type Files } from '../support/built.ts';
import { privateInput } from '../support/demo-box.ts';
import { wordnet } from '../support/dictionary.ts';
import { shortMemory } from '../support/short-memory.ts';

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

const prove = async (
  texts: Files,
  asOf: number,
  diagnostics: readonly Diagnostic[] = [],
  memory: Memory = shortMemory(),
) => {
  const found = await boxOf(texts, asOf);
  if (!found) throw new Error('Expected a box');
  const input = await privateInput(found.box, asOf);
  const made = { memory, wordnet, kept: nothingKept(), tools: input, program: 'this one' };
  const { proofs } = await proofsFor({ ...found, ...made, diagnostics });
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
  const of = (cycle: string) =>
    found
      .get(cycle)
      ?.diagnostics.filter(({ rule }) => rule === 'a-rule')
      .map(({ message }) => message);
  expect(of('2026-03')).toEqual(['box.md', 'cycles/2026-03/cycle.md']);
  expect(of('2026-04')).toEqual(['box.md', 'cycles/2026-04/items/01-bee-hotel.md']);
});

const SAID_BEFORE =
  'Sow less than you think. A windowsill holds about forty seedlings, and forty seedlings want eighty pots, one for each and one to move it into, by June.';
const [MARCH, APRIL] = ['cycles/2026-03/cycle.md', 'cycles/2026-04/cycle.md'];
const ALIKE: Files = {
  ...TEXTS,
  'searches.csv': 'phrase,count\nseed tray for a sill,12\n',
  [MARCH]: `${TEXTS[MARCH]}\n${SAID_BEFORE}\n`,
  [APRIL]: `${TEXTS[APRIL]}\n${SAID_BEFORE}\n`,
};
const changedIn = (path: string, from: string, to: string): Files => {
  const text = ALIKE[path]?.replace(from, to) ?? '';
  expect(text).not.toBe(ALIKE[path]);
  return { ...ALIKE, [path]: text };
};

test.each([
  ['its own words', () => changedIn(MARCH, 'It came in March', 'It came in the rain'), SHOWN],
  [
    'what another article says as it does',
    () => changedIn(APRIL, 'forty seedlings want', 'they want'),
    SHOWN,
  ],
  ['what people typed', () => changedIn('searches.csv', 'for a sill', 'with a lid'), SHOWN],
  [
    'its kind, and with it its other names',
    () => changedIn('cycles/2026-03/items/01-seed-tray.md', 'kind: "seed tray"', 'kind: "watering can"'),
    SHOWN,
  ],
  ['the seal of another', () => ALIKE, Date.UTC(2026, 2, 10)],
] as const)('with %s changed, a proof is what it is where nothing is remembered', async (_, change, asOf) => {
  const memory = shortMemory();
  const wholeOf = (given: Awaited<ReturnType<typeof prove>>) =>
    [...given.proofs].map(([cycle, { coverage }]) => [cycle, { ...coverage }]);
  const before = wholeOf(await prove(ALIKE, SHOWN, [], memory));
  const changed = change();
  const cold = wholeOf(await prove(changed, asOf));
  expect(cold).not.toEqual(before);
  expect(wholeOf(await prove(changed, asOf, [], memory))).toEqual(cold);
});

test('a proof’s page is made anew where what it quotes of another article is written otherwise', async () => {
  const [before, after] = [
    await digests(ALIKE, SHOWN),
    await digests(changedIn(MARCH, 'Sow less than you think', 'SOW LESS than you think'), SHOWN),
  ];
  expect(after['2026-04']).not.toBe(before['2026-04']);
});
