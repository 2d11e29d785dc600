/** What the proof and the parcels' paper are made of, and what a change elsewhere leaves as it was. */

import { describe, expect, test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';
import { type ParcelsFactsInput, parcelsFacts } from '../../src/analysis/parcels/facts.ts';
import type { PlanningChannel, PrivateInput } from '../../src/channels/channel.ts';
import { parcels } from '../../src/channels/parcels/index.ts';
import { proof } from '../../src/channels/proof/index.ts';
import { nothingKept } from '../../src/pipeline/kept.ts';
import { proofsFor } from '../../src/pipeline/proofs.ts';
import { dayOfDate } from '../../src/text/days.ts';
import { digestOf } from '../../src/text/digest.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { boxOf, cycleText, itemText } from '../analysis/article.ts';
import { parcel } from '../analysis/parcels/parcels.ts';
import { box, cycle } from '../support/box.ts';
import { carriedOut } from '../support/carried-out.ts';
import { wordnet } from '../support/dictionary.ts';
import { outputFiles } from '../support/output-files.ts';
import { ownTemplates } from '../support/own-templates.ts';
import { shortMemory } from '../support/short-memory.ts';

const language = await languageFor('en-GB');
const HOUR = 3_600_000;

const inputFor = (given: Pick<PrivateInput, 'box' | 'asOf'> & Partial<PrivateInput>): PrivateInput => ({
  templates: ownTemplates,
  wording: wordingFor('en-GB'),
  language,
  faces: { digest: 'the faces', lacking: async () => [] },
  proofs: new Map(),
  parcels: new Map(),
  photos: new Map(),
  ...given,
});

/** The digest of each document's data, by its path. */
const dataOf = (
  { plan }: PlanningChannel<'backroom'>,
  input: PrivateInput,
): Readonly<Record<string, string>> =>
  Object.fromEntries(plan(input).documents.map(({ path, data }) => [path, digestOf(data)]));

const filesOf = async (channel: PlanningChannel<'backroom'>, input: PrivateInput) =>
  Object.fromEntries(outputFiles((await carriedOut(channel, input)).outputs));

/** Paths of the documents whose data, and of those whose bytes, are not the same of two inputs. */
const changed = async (channel: PlanningChannel<'backroom'>, a: PrivateInput, b: PrivateInput) => {
  const [before, after] = [dataOf(channel, a), dataOf(channel, b)];
  const [old, made] = [await filesOf(channel, a), await filesOf(channel, b)];
  const paths = Object.keys(after);
  return {
    data: paths.filter((path) => before[path] !== after[path]),
    bytes: paths.filter((path) => old[path] !== made[path]),
  };
};

const TEXTS: Readonly<Record<string, string>> = {
  'cycles/2026-03/cycle.md': cycleText('A seed tray came in March, and the seed tray was shallow.'),
  'cycles/2026-03/items/01-seed-tray.md': itemText('Seed tray', 'seed tray', 'Fill it.', { lead: true }),
  'cycles/2026-04/cycle.md': cycleText('A bee hotel came in April.', {
    theme: 'Small Tenants',
    shipped: '2026-04-03',
    reveal: '2026-04-19T19:00',
  }),
  'cycles/2026-04/items/01-bee-hotel.md': itemText('Bee hotel', 'bee hotel', 'Hang it up.', { lead: true }),
};

const proofInput = async (texts: Readonly<Record<string, string>>, asOf: number): Promise<PrivateInput> => {
  const input = inputFor({ box: boxOf(texts), asOf });
  const { proofs } = await proofsFor({
    ...{ box: input.box, asOf, tools: input },
    ...{ program: 'this one', memory: shortMemory(), wordnet, kept: nothingKept(), diagnostics: [] },
  });
  return { ...input, proofs };
};

describe('a proof', () => {
  const noon = Date.UTC(2026, 4, 1, 12);
  test('is planned for each cycle that was proved, and for no other', async () => {
    const input = await proofInput(TEXTS, noon);
    expect(Object.keys(dataOf(proof, input))).toEqual(['2026-03/proof.html', '2026-04/proof.html']);
    const proofs = new Map([...input.proofs].slice(1));
    expect(Object.keys(dataOf(proof, { ...input, proofs }))).toEqual(['2026-04/proof.html']);
  });

  test('of another cycle is left as it was by a word in a story that it does not share', async () => {
    const path = 'cycles/2026-04/items/01-bee-hotel.md';
    const edited = { ...TEXTS, [path]: TEXTS[path]?.replace('Hang it up.', 'Hang it high.') ?? '' };
    const both = await changed(proof, await proofInput(TEXTS, noon), await proofInput(edited, noon));
    expect(both).toEqual({ data: ['2026-04/proof.html'], bytes: ['2026-04/proof.html'] });
  });

  test('is the same all day, and another one on the next, whose date it names', async () => {
    const at = (asOf: number): Promise<PrivateInput> => proofInput(TEXTS, asOf);
    expect(await changed(proof, await at(noon), await at(noon + 3 * HOUR))).toEqual({ data: [], bytes: [] });
    const all = ['2026-03/proof.html', '2026-04/proof.html'];
    expect(await changed(proof, await at(noon), await at(noon + 24 * HOUR))).toEqual({
      data: all,
      bytes: all,
    });
  });

  test('is another one once its cycle is shown', async () => {
    const reveal = Date.UTC(2026, 3, 19, 18);
    const [before, after] = [await proofInput(TEXTS, reveal - 1), await proofInput(TEXTS, reveal)];
    // The proof of the older one is compared with the newer from then on, but shares no word with it.
    expect((await changed(proof, before, after)).bytes).toContain('2026-04/proof.html');
    expect((await changed(proof, before, after)).data).toEqual(['2026-04/proof.html']);
  });
});

describe('the paper on parcels', () => {
  const LEFT = dayOfDate('2026-03-03');
  const input = (hour: number, more: Partial<ParcelsFactsInput> = {}): PrivateInput => {
    const asOf = Date.UTC(2026, 2, 8, hour);
    const facts = parcelsFacts({
      cycle: '2026-03',
      theme: 'First Sowings',
      parcels: {
        file: 'cycles/2026-03/parcels.csv',
        asOf: LEFT + 5,
        counts: [1, 2, 3, 4, 5].map((days) => ({ ...parcel(days), shipped: LEFT })),
      },
      earlier: [],
      planned: Date.UTC(2026, 2, 8, 15),
      asOf,
      asOfDay: LEFT + 5,
      timeZone: 'Europe/London',
      habit: {},
      ...more,
    });
    return inputFor({
      box: box({ cycles: [cycle({ id: '2026-02' }), cycle()] }),
      asOf,
      parcels: new Map([['2026-03', { facts, diagnostics: [] }]]),
    });
  };

  test('is planned for each cycle of which anything is known, and for no other', () => {
    expect(Object.keys(dataOf(parcels, input(9)))).toEqual(['2026-03/parcels.html']);
  });

  test('is the same at any hour of a day, but for whether the reveal is over', async () => {
    expect(await changed(parcels, input(9), input(11))).toEqual({ data: [], bytes: [] });
    const paper = ['2026-03/parcels.html'];
    expect(await changed(parcels, input(11), input(16))).toEqual({ data: paper, bytes: paper });
  });
});
