import { describe, expect, test } from 'vitest';
import type { Coverage, Edit } from '../../src/analysis/coverage/coverage.ts';
import type { Cycle } from '../../src/model/box.ts';
import { coverage } from '../../src/wording/en/coverage.ts';
import { boxOf, cycleText, english, itemText, NOW } from './article.ts';
import { proofIn } from './whole-proof.ts';

type Texts = Readonly<Record<string, string>>;

const coverageFor = async (texts: Texts, aim = 0.7): Promise<Coverage> => {
  const box = boxOf(texts);
  return proofIn(box, box.cycles.at(-1) as Cycle, NOW, english, { aim });
};

const standings = ({ items }: Coverage): Readonly<Record<string, number>> =>
  Object.fromEntries(items.map(({ slug, standing }) => [slug, standing]));

/** Does one edit as its reader would: by the file, the line and the words it names. */
const done = (texts: Texts, { at, write, action }: Edit): Texts => {
  const lines = (texts[at.file] as string).split('\n');
  const line = lines[at.line - 1] as string;
  const head = line.slice(0, at.column - 1);
  const rest = line.slice(at.column - 1);
  if (action.kind === 'head') lines.splice(at.line - 1, 0, `### ${write}`, '');
  else if (action.kind === 'call by name') {
    const now = action.now.replace(/^(?:a|an|the|this|that|these|those|my|your|our|its) /i, '');
    expect(rest.startsWith(now)).toBe(true);
    // Words of the phrase that stand before its head already are not said twice.
    const before = head.trimEnd().split(/\s+/).reverse();
    const own = write.split(' ').slice(0, -1).reverse();
    const there = own.findIndex((word, i) => before[i]?.toLowerCase() !== word);
    const kept = there < 0 ? own.length : there;
    lines[at.line - 1] =
      head + write.split(' ').slice(0, 0).join(' ') + missing(write, kept) + rest.slice(now.length);
  } else {
    const end = /[.!?"]/.exec(rest)?.index ?? rest.length;
    lines[at.line - 1] = `${head}${rest.slice(0, end)} (${write})${rest.slice(end)}`;
  }
  return { ...texts, [at.file]: lines.join('\n') };
};

/** The phrase without the words before its head that the text has already. */
const missing = (write: string, kept: number): string => {
  const words = write.split(' ');
  const last = words.at(-1) as string;
  return [...words.slice(0, words.length - 1 - kept), last].join(' ');
};

const CYCLE = 'cycles/2026-03/cycle.md';
const weak: Texts = {
  [CYCLE]: cycleText(
    'A box for spring came together slowly this year. The frost took its time, and so did we.\n\nWe packed it on a Sunday. The tin goes on the shelf, and the brush hangs beside the door.',
    { summary: 'What we packed for spring, and how it came to be.' },
  ),
  'cycles/2026-03/items/01-seed-tin.md': itemText(
    'Seed tin',
    'seed tin',
    'The tin has five dividers. Keep it dry.\n\nStand it where you will see it. A seed tin that is seen is used.',
    { also: ['seed box'] },
  ),
  'cycles/2026-03/items/02-boot-brush.md': itemText(
    'Beech boot brush',
    'boot brush',
    'Two rows of bristles take off most of it.\n\nHang it by the door. The brush lasts for years.',
    { material: ['beech'] },
  ),
};

describe('advice', () => {
  test('brings every item to the aim, or says which it cannot', async () => {
    const coverage = await coverageFor(weak);
    expect(coverage.advice.length).toBeGreaterThan(0);
    for (const { slug, promised, standing } of coverage.items) {
      expect(promised).toBeGreaterThanOrEqual(standing);
      if (!coverage.outOfReach.includes(slug)) expect(promised).toBeGreaterThanOrEqual(coverage.aim);
    }
  });

  test('done by hand, one after the other, gives the standing that each step promised', async () => {
    const coverage = await coverageFor(weak);
    let texts = weak;
    // From the foot of each file up, and from the end of each line: a change moves what comes after it.
    const upwards = [...coverage.advice].sort((a, b) => b.at.line - a.at.line || b.at.column - a.at.column);
    for (const edit of upwards) texts = done(texts, edit);
    const after = standings(await coverageFor(texts));
    for (const { slug, promised } of coverage.items) expect(after[slug]).toBeCloseTo(promised, 9);
  });

  test('is not given where nothing is short', async () => {
    const coverage = await coverageFor(weak, 0.01);
    expect(coverage.advice).toEqual([]);
    expect(coverage.outOfReach).toEqual([]);
  });

  test('is chosen by what it brings to items that are short, however high the others stand', async () => {
    const strong = 'A seed tin. '.repeat(3);
    const texts: Texts = {
      ...weak,
      [CYCLE]: cycleText(`The seed tin, again and again. ${strong}`, {
        title: 'A seed tin',
        summary: 'A seed tin, and a brush for boots.',
      }),
    };
    const strongest = Math.max(...Object.values(standings(await coverageFor(texts))));
    const { advice, items, aim } = await coverageFor(texts, strongest - 0.01);
    const above = new Set(items.filter(({ standing }) => standing >= aim).map(({ slug }) => slug));
    expect([...above]).toEqual(['seed-tin']);
    for (const { brings } of advice)
      expect(brings.some(({ item, before }) => !above.has(item) && before < aim)).toBe(true);
  });

  test('says for each step what it brings, and each begins where the one before it ended', async () => {
    const { advice, items } = await coverageFor(weak);
    const reached = new Map(items.map(({ slug, standing }) => [slug, standing]));
    for (const { brings, serves } of advice) {
      expect(brings.length).toBeGreaterThan(0);
      expect(serves.length).toBeGreaterThan(0);
      for (const { item, before, after } of brings) {
        expect(after).toBeGreaterThan(before);
        expect(before).toBeCloseTo(reached.get(item) as number, 2);
        reached.set(item, after);
      }
    }
  });

  test('asks nothing of an item that is short of the aim by less than an addition loses', async () => {
    const texts: Texts = {
      [CYCLE]: cycleText('A tin came in March.'),
      'cycles/2026-03/items/01-seed-tin.md': itemText('Seed tin', 'seed tin', 'Shut the tin.', {
        lead: true,
      }),
    };
    const [{ standing = 0 } = {}] = (await coverageFor(texts)).items;
    const hardly = await coverageFor(texts, standing + 1e-10);
    expect({ advice: hardly.advice, outOfReach: hardly.outOfReach }).toEqual({ advice: [], outOfReach: [] });
    expect((await coverageFor(texts, standing + 1e-4)).advice).not.toEqual([]);
  });

  test('never touches a name, a fact, an address or a subscriber’s words', async () => {
    const { advice, passages } = await coverageFor({
      ...weak,
      [CYCLE]: cycleText('It came.', {
        voices: [{ text: 'The tin is on my desk.', name: 'Imke', consent: '2026-03-22' }],
      }),
    });
    const untouchable = passages.filter(({ written }) => !written).map(({ field }) => field);
    expect(untouchable).toContain('voices.0.text');
    expect(untouchable).toContain('name');
    const voice = advice.filter((edit) => coverage.instruction(edit).includes('desk'));
    expect(voice).toEqual([]);
  });
});
