import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Coverage, Edit } from '../../src/analysis/coverage/coverage.ts';
import type { Cycle } from '../../src/model/box.ts';
import { shareOf } from '../support/share-of.ts';
import { boxOf, cycleText, english, itemText, NOW } from './article.ts';
import { proofIn } from './whole-proof.ts';

type Texts = Readonly<Record<string, string>>;

const coverageFor = async (texts: Texts, aim = 0.7): Promise<Coverage> => {
  const box = boxOf(texts);
  return proofIn(box, box.cycles.at(-1) as Cycle, NOW, english, { aim });
};

const standings = ({ items }: Coverage): Readonly<Record<string, number>> =>
  Object.fromEntries(items.map(({ slug, standing }) => [slug, standing]));

/** Does one edit as its reader would: puts the sentence as it would be in the place of the one that is there. */
const done = (texts: Texts, { at, before, after }: Edit): Texts => {
  const text = texts[at.file] as string;
  expect(text.split(before).length).toBe(2);
  return { ...texts, [at.file]: text.replace(before, after) };
};
const allDone = (texts: Texts, edits: readonly Edit[]): Texts => edits.reduce(done, texts);
const told = ({ advice }: Coverage): readonly string[] => advice.map(({ after }) => after);

const CYCLE = 'cycles/2026-03/cycle.md';
const TIN = 'cycles/2026-03/items/01-seed-tin.md';
const BRUSH = 'cycles/2026-03/items/02-boot-brush.md';
const LONG =
  'It was made in a shed behind the station, by two people who used to make lanterns, and it took them four tries to get the hinge to close without a sound.';
const weak: Texts = {
  [CYCLE]: cycleText(
    'A box for spring came together slowly this year. The frost took its time, and so did we.\n\nWe packed it on a Sunday, with the radio on and both doors open to the yard.',
    { summary: 'What we packed for spring, and how it came to be.' },
  ),
  [TIN]: itemText(
    'Seed tin',
    'seed tin',
    `Take the tin off its shelf in February and put it where you will see it every day. ${LONG}\n\nStand it where you pass. What is seen is used.`,
    { also: ['seed box'], description: 'It keeps sixty packets dry.' },
  ),
  [BRUSH]: itemText(
    'Beech boot brush',
    'boot brush',
    `Two rows of bristles take off most of it. ${LONG}\n\nHang it by the door. The brush lasts for years.`,
    { material: ['beech'], description: 'Stands by the door and waits for mud.' },
  ),
};

describe('advice', () => {
  test('brings every item to the aim, or says which it cannot', async () => {
    const coverage = await coverageFor(weak);
    expect(coverage.advice.length).toBeGreaterThan(0);
    for (const { slug, promised, standing } of coverage.items) {
      expect(promised).toBeGreaterThanOrEqual(standing);
      expect(coverage.outOfReach.includes(slug)).toBe(promised < coverage.aim);
    }
  });

  test('shows each sentence as it is and as it would be, with capitals, articles and number', async () => {
    expect(told(await coverageFor(weak))).toEqual([
      'The seed tin keeps sixty packets dry.',
      'What we packed for spring, and how it came to be. In the box: a seed tin and a beech boot brush.',
    ]);
    const bare = await coverageFor(
      {
        [CYCLE]: weak[CYCLE] as string,
        [TIN]: itemText(
          'Enamel watering cans',
          'watering can',
          `A can of this size waters forty pots before you have to walk back to the tap. ${LONG}\n\nFill it.`,
          { description: 'Bright, and made for balconies.' },
        ),
      },
      0.9,
    );
    expect(told(bare)).toContain(
      'A watering can of this size waters forty pots before you have to walk back to the tap.',
    );
  });

  test('writes “an” where the name begins with a vowel', async () => {
    const { advice } = await coverageFor(
      {
        [CYCLE]: weak[CYCLE] as string,
        [TIN]: itemText(
          'Olive wood spoon',
          'olive wood spoon',
          `You need a spoon that is longer than the pot is deep, or you burn your hand. ${LONG}\n\nOil it.`,
          { description: 'Long, and made for deep pots.' },
        ),
      },
      0.9,
    );
    expect(advice.map(({ after }) => after)).toContain(
      'You need an olive wood spoon that is longer than the pot is deep, or you burn your hand.',
    );
  });

  test('done in any order gives what it promised, and leaves nothing to advise in the same places', async () => {
    for (const texts of [weak]) {
      const coverage = await coverageFor(texts);
      for (const edits of [coverage.advice, coverage.advice.toReversed()]) {
        const after = await coverageFor(allDone(texts, edits));
        for (const { slug, promised } of coverage.items)
          expect(standings(after)[slug]).toBeCloseTo(promised, 9);
        expect(after.advice).toEqual([]);
      }
    }
  });

  test('is not given where nothing is short', async () => {
    const coverage = await coverageFor(weak, 0.01);
    expect(coverage.advice).toEqual([]);
    expect(coverage.outOfReach).toEqual([]);
  });

  test('says for each step what it brings, and each begins where the one before it ended', async () => {
    const { advice, items } = await coverageFor(weak);
    const reached = new Map(items.map(({ slug, standing }) => [slug, standing]));
    for (const { brings } of advice) {
      expect(brings.length).toBeGreaterThan(0);
      for (const { item, before, after } of brings) {
        expect(after).toBeGreaterThan(before);
        expect(before).toBeCloseTo(reached.get(item) as number, 9);
        reached.set(item, after);
      }
    }
  });

  test('never touches a name, a fact, an address or a subscriber’s words', async () => {
    const { advice, passages } = await coverageFor({
      ...weak,
      [CYCLE]: cycleText('It came.', {
        voices: [
          {
            text: 'The tin is on my desk, where I can see it all day long.',
            name: 'Imke',
            consent: '2026-03-22',
          },
        ],
      }),
    });
    const written = passages.filter((passage) => passage.written).map(({ text }) => text);
    expect(passages.some((passage) => !passage.written && passage.text.includes('desk'))).toBe(true);
    expect(advice.length).toBeGreaterThan(0);
    for (const { before } of advice) {
      expect(written.some((text) => text.includes(before))).toBe(true);
      expect(before).not.toContain('desk');
    }
  });

  const story = (text: string): Texts => ({
    [CYCLE]: cycleText(`${LONG} ${LONG} ${LONG} ${LONG}`, { summary: 'Does it pour' }),
    [TIN]: itemText('Enamel watering can', 'watering can', text, {
      description: 'Bright, and made for balconies.',
    }),
  });
  test.each([
    ['a sentence of fewer than seven words', `Fill the can at noon. ${LONG}`],
    [
      'the sentence in which a paragraph ends',
      'Two people made it in a shed. By June you will have carried the can up four flights of stairs.',
    ],
    ['speech', `She said “carry the can up four flights of stairs and you will know”. ${LONG}`],
    [
      'a sentence that has a word of the name already',
      `For watering, carry the can up four flights of stairs. ${LONG}`,
    ],
    [
      'a pronoun further on',
      `Somebody carried water up four flights of stairs every day. It was hard on the knees and the carpets. ${LONG}`,
    ],
    [
      'a sentence that does not speak of the thing',
      `Somebody carried water up four flights of stairs every day. ${LONG}`,
    ],
  ])('puts no name into %s', async (_, text) => {
    const { advice } = await coverageFor(story(text), 0.95);
    expect(advice.filter(({ zone }) => zone === 'section')).toEqual([]);
  });

  test('puts it into another', async () => {
    const { advice } = await coverageFor(
      story(`By June you will have carried the can up four flights of stairs. ${LONG}`),
      0.95,
    );
    expect(advice.filter(({ zone }) => zone === 'section').map(({ after }) => after)).toEqual([
      'By June you will have carried the watering can up four flights of stairs.',
    ]);
  });

  test('adds no list to a summary that does not end, or would grow too long', async () => {
    for (const summary of ['What we packed for', `${LONG} And more of it.`]) {
      const { advice } = await coverageFor({ ...weak, [CYCLE]: cycleText('A box.', { summary }) });
      expect(advice.filter(({ zone }) => zone === 'summary')).toEqual([]);
    }
  });

  test('lists a title with what it is, and writes no word that stands in the sentence already', async () => {
    const { advice } = await coverageFor({
      [CYCLE]: cycleText('A box.', { summary: 'Something to read, and something to draw with.' }),
      [TIN]: itemText(
        'The Lamplighter of Ostrow',
        'novel',
        `Read it in one evening, or do not begin. ${LONG}`,
        {
          description: 'Two hundred pages in cloth.',
        },
      ),
      [BRUSH]: itemText('Tailor’s chalk pencil', 'chalk pencil', `Sharpen it with a blade. ${LONG}`, {
        description: 'White chalk in a cedar pencil with a brush at its end.',
      }),
    });
    expect(advice.map(({ after }) => after)).toEqual([
      'Something to read, and something to draw with. In the box: The Lamplighter of Ostrow (novel) and a tailor’s chalk pencil.',
    ]);
  });

  test('is at most five edits a cycle, and three of one item', async () => {
    const items = Object.fromEntries(
      ['Seed tin', 'Boot brush', 'Plant tie', 'Hand fork', 'Rain gauge', 'Bulb vase', 'Leaf rake'].map(
        (name, i) => {
          const head = name.split(' ')[1];
          return [
            `cycles/2026-03/items/0${i + 1}-${name.toLowerCase().replace(' ', '-')}.md`,
            itemText(
              name,
              name.toLowerCase(),
              `Take the ${head} out in March and look at it for a while. ${LONG}`,
              {
                description: `A ${head} for years.`,
              },
            ),
          ];
        },
      ),
    );
    const { advice } = await coverageFor({ [CYCLE]: cycleText('A box.', { summary: 'Why' }), ...items }, 0.9);
    expect(advice.length).toBe(5);
    const uses = advice.flatMap(({ brings }) => brings.map(({ item }) => item));
    for (const slug of new Set(uses))
      expect(uses.filter((one) => one === slug).length).toBeLessThanOrEqual(3);
  });
});

describe('advice on random boxes', () => {
  const THINGS = ['Seed tin', 'Boot brush', 'Olive wood spoon', 'Plant labels', 'Rain gauge', 'Linen apron'];
  const SENTENCES = [
    'Nobody in our house remembers who wanted it, or why the morning felt so long.',
    'You will need the HEAD again in autumn, when the leaves are down and the days are short.',
    'It was made in a shed behind the station by two people who used to make lanterns.',
    'Keep the HEAD dry.',
    'A HEAD like this lasts for years if you oil it once before the winter comes.',
    'She said “the HEAD is the best thing in this house” and went back to her soup.',
    'Fill it at noon, put it on the sill, and wash it by hand when the week is over.',
  ];
  const item = fc.record({
    story: fc.array(fc.constantFrom(...SENTENCES), { minLength: 3, maxLength: 8 }),
    cut: fc.nat(7),
    description: fc.constantFrom('It keeps for years.', 'A HEAD for every day.', 'Made for small places.'),
  });
  const boxes = fc
    .record({
      names: fc.shuffledSubarray(THINGS, { minLength: 2, maxLength: 4 }),
      items: fc.array(item, { minLength: 4, maxLength: 4 }),
      summary: fc.constantFrom(
        'What we packed, and how it came to be.',
        'What we packed',
        'A spoon, and more.',
      ),
    })
    .map(({ names, items, summary }): Texts => {
      const said = (text: string, name: string): string =>
        text.replaceAll('HEAD', name.split(' ').at(-1) ?? '');
      return Object.fromEntries([
        [CYCLE, cycleText('A box for spring.', { summary })],
        ...names.map((name, i) => {
          const { story, cut, description } = items[i] ?? { story: [], cut: 0, description: '' };
          const paragraphs = [story.slice(0, cut), story.slice(cut)].map((part) =>
            said(part.join(' '), name),
          );
          const path = `cycles/2026-03/items/0${i + 1}-${name.toLowerCase().replaceAll(' ', '-')}.md`;
          const kind = name.toLowerCase().replace(/s$/, '');
          return [
            path,
            itemText(name, kind, paragraphs.filter(Boolean).join('\n\n'), {
              description: said(description, name),
            }),
          ];
        }),
      ]);
    });
  /** Does an edit at its line: another item may say the same sentence. */
  const doneAt = (texts: Texts, { at, before, after }: Edit): Texts => {
    const lines = (texts[at.file] as string).split('\n');
    const line = lines[at.line - 1] as string;
    const from = Math.max(0, line.indexOf(before));
    expect(line).toContain(before);
    lines[at.line - 1] = line.slice(0, from) + after + line.slice(from + before.length);
    return { ...texts, [at.file]: lines.join('\n') };
  };

  test('promises what comes true, whatever the order, and is silent when it is done', async () => {
    let given = 0;
    await fc.assert(
      fc.asyncProperty(boxes, fc.boolean(), async (texts, isTurned) => {
        const first = await coverageFor(texts, 0.85);
        given += first.advice.length;
        expect(first.advice.length).toBeLessThanOrEqual(5);
        const edits = isTurned ? first.advice.toReversed() : first.advice;
        const after = await coverageFor(edits.reduce(doneAt, texts), 0.85);
        for (const { slug, promised, standing } of first.items) {
          expect(promised).toBeGreaterThanOrEqual(standing);
          expect(standings(after)[slug]).toBeCloseTo(promised, 9);
        }
        if (first.advice.length < 5) expect(after.advice).toEqual([]);
      }),
      { numRuns: shareOf(60) },
    );
    // What advises nothing keeps every promise.
    expect(given).toBeGreaterThan(shareOf(60));
  });
});

describe('an honest record', () => {
  // Other names, whatever they are: made of words that the text has, and of words that it has not.
  const name = fc
    .array(
      fc.constantFrom(...'seed box tin caddy packet sixty shelf hinge garden winter keeper'.split(' ')),
      {
        minLength: 1,
        maxLength: 3,
      },
    )
    .map((words) => words.join(' '));
  test('of more other names never stands lower, and is never asked for more', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uniqueArray(name, { maxLength: 5 }), async (also) => {
        const withNames = (names: readonly string[]): Texts => ({
          ...weak,
          [TIN]: (weak[TIN] as string).replace(
            /also:.*\n(?: {2}- .*\n)*/,
            names.length > 0 ? `also: [${names.join(', ')}]\n` : '',
          ),
        });
        const [none, some] = [await coverageFor(withNames([])), await coverageFor(withNames(also))];
        for (const { slug, standing } of none.items)
          expect(standings(some)[slug]).toBeGreaterThanOrEqual(standing - 1e-9);
        expect(some.advice.length).toBeLessThanOrEqual(none.advice.length);
      }),
      { numRuns: shareOf(40) },
    );
  });
});

describe('a story that calls its thing otherwise', () => {
  const called = async (story: string, more: Readonly<Record<string, unknown>> = {}) => {
    const { items } = await coverageFor({
      [CYCLE]: cycleText('A box.'),
      [TIN]: itemText('Beech dough scraper', 'dough scraper', story, more),
    });
    return items[0]?.called;
  };
  const STORY =
    'A bench scraper lives beside the flour. The bench scraper cuts, lifts and cleans; two bench scrapers are one too many. The old scraper was steel.';
  test('three times and more lacks a name in its record, and not in its text', async () => {
    expect(await called(STORY)).toEqual([{ name: 'bench scraper', times: 3 }]);
  });
  test.each([
    ['twice alone', STORY.replace('The bench scraper', 'It'), {}],
    ['by a name that the record has', STORY, { also: ['bench scraper'] }],
    ['by adjectives', STORY.replaceAll('bench', 'old'), {}],
    ['by a maker', STORY.replaceAll('bench', 'Halloway'), {}],
  ])('lacks none where it does so %s', async (_, story, more) => {
    expect(await called(story, more)).toEqual([]);
  });
});
