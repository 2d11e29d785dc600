import { describe, expect, test } from 'vitest';
import { isThin, leastOf, thinPartsOf } from '../../src/analysis/coverage/substance.ts';
import { substanceFindings } from '../../src/pipeline/substance-findings.ts';
import { boxOf, cycleText, english, itemText, NOW } from './article.ts';
import { proofIn } from './whole-proof.ts';

const OPENING =
  'The rain came in February and stayed, so this month’s box is for the windowsill. Two things go together in it, and the second would be lost without the first of them.';
const STORY =
  'Fill it the evening before, because cold water shocks the roots of young plants. The long neck reaches behind the pots at the back, where nobody wants to climb in wet shoes. It is made of one sheet of enamelled steel, rolled and welded by a family of four in Bratsk, and the only thing that ever breaks is the rose, which is sold alone. Hang it upside down when you have done.';

const proofOf = async (opening: string, story: string) => {
  const box = boxOf({
    'cycles/2026-03/cycle.md': cycleText(opening),
    'cycles/2026-03/items/01-can.md': itemText('Watering can', 'watering can', story, { lead: true }),
  });
  const [cycle] = box.cycles;
  if (!cycle) throw new Error('Expected a cycle');
  return proofIn(box, cycle, NOW, english);
};

describe('a part that says too little', () => {
  test('is none where the opening and the story say something', async () => {
    const { thin, items } = await proofOf(OPENING, STORY);
    expect(thin).toEqual([]);
    expect(items.map((item) => item.thin)).toEqual([false]);
  });

  test('is a story of two words, at its place', async () => {
    const { thin, items } = await proofOf(OPENING, 'Watering can.');
    expect(thin).toMatchObject([
      {
        item: 'can',
        substance: { words: 2, sentences: 1, beyond: 0 },
        at: { file: 'cycles/2026-03/items/01-can.md' },
      },
    ]);
    expect(items.map((item) => item.thin)).toEqual([true]);
  });

  test('is a story that only says the record again, however long', async () => {
    const again = 'The watering can is a watering can. It came in the box, the watering can. '.repeat(5);
    const { thin } = await proofOf(OPENING, again);
    expect(thin.map(({ item }) => item)).toEqual(['can']);
  });

  test('is no story at all, at its file', async () => {
    const { thin } = await proofOf(OPENING, '');
    expect(thin).toMatchObject([{ item: 'can', at: { file: 'cycles/2026-03/items/01-can.md', line: 1 } }]);
  });

  test('is an opening of a few words, and one that is not there', async () => {
    expect((await proofOf('A box.', STORY)).thin.map(({ item }) => item)).toEqual([undefined]);
    expect((await proofOf('', STORY)).thin.map(({ item }) => item)).toEqual([undefined]);
  });

  test('is a long story that tells of no use, care, making or measure', async () => {
    const mood =
      'Nobody in our house remembers who wanted it, or why the morning felt so long. There was rain over the harbour, and my sister said that March is the month in which people believe anything. We agreed with her, since it is easier. Then the post came, late as ever, and the dog barked at the gate until everybody had forgotten what the quarrel had been about.';
    const { thin } = await proofOf(OPENING, mood);
    expect(thin.map(({ item }) => item)).toEqual(['can']);
    expect(substanceFindings(thin)[0]?.message).toContain('tells of no use, care, making or measure');
    expect((await proofOf(OPENING, `${mood} Fill it at the tap.`)).thin).toEqual([]);
  });

  test('is the less thin the more is said', () => {
    for (const item of [undefined, 'can']) {
      const least = leastOf(item);
      expect(isThin(least, least)).toBe(false);
      for (const key of ['words', 'sentences', 'beyond', 'telling'] as const)
        expect(isThin({ ...least, [key]: least[key] - 1 }, least)).toBe(true);
    }
    expect(leastOf('can').words).toBeGreaterThan(leastOf(undefined).words);
    expect(thinPartsOf({ id: '2026-03', items: [] }, [], english)).toHaveLength(1);
  });

  test('is a finding with what to say, and never with a name to put in', async () => {
    const { thin } = await proofOf('A box.', 'Watering can.');
    const findings = substanceFindings(thin);
    expect(findings.map(({ weight, rule }) => `${weight} ${rule}`)).toEqual([
      'look at opening-thin',
      'look at story-thin',
    ]);
    expect(findings[1]?.message).toContain('2 words in 1 sentence');
    expect(findings[1]?.fix).not.toMatch(/watering/i);
  });
});
