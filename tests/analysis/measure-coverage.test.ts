import { describe, expect, test } from 'vitest';
import type { Coverage } from '../../src/analysis/coverage/coverage.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { Cycle } from '../../src/model/box.ts';
import { BOX, boxOf, cycleText, itemText } from './article.ts';
import { proofIn } from './whole-proof.ts';

type Texts = Readonly<Record<string, string>>;

const coverageFor = async (texts: Texts, id: string, asOf: number): Promise<Coverage> => {
  const box = boxOf(texts);
  const language = await languageFor(box.settings.lang);
  const cycle = box.cycles.find((one) => one.id === id) as Cycle;
  return proofIn(box, cycle, asOf, language, { otherNames: new Map([['seed tray', ['flat']]]) });
};

const tray = (body: string): string => itemText('Seed tray', 'seed tray', body, { lead: true });
const BOXES: Texts = {
  'cycles/2026-03/cycle.md': cycleText('It came in March.'),
  'cycles/2026-03/items/01-seed-tray.md': tray('It is shallow.'),
  'cycles/2026-04/cycle.md': cycleText('A seed tray for all. The seed tray is deep, and a seed tray lasts.', {
    theme: 'Second Sowings',
    title: 'The seed tray that lasts',
    shipped: '2026-04-03',
    reveal: '2026-04-19T19:00',
  }),
  'cycles/2026-04/items/01-seed-tray.md': tray('This seed tray is deep. Fill the seed tray.'),
};

const rivalsOf = ({ items }: Coverage): readonly (string | undefined)[] =>
  items.flatMap(({ phrases }) => phrases.flatMap(({ rival }) => (rival ? [rival.cycle] : [])));

describe('a rival', () => {
  test('is another page of ours that says the phrase better, with the link to write between the two', async () => {
    const coverage = await coverageFor(BOXES, '2026-03', Date.UTC(2026, 5, 1));
    expect(rivalsOf(coverage)).toContain('2026-04');
    const rival = coverage.items[0]?.phrases.find((phrase) => phrase.rival)?.rival;
    expect(rival?.rank).toBe(2);
    expect(rival?.link.anchor.toLowerCase()).toContain('seed tray');
    expect([rival?.link.from, rival?.link.to].sort()).toEqual(['2026-03', '2026-04']);
  });

  test('is never a page that is still sealed', async () => {
    expect(rivalsOf(await coverageFor(BOXES, '2026-03', Date.UTC(2026, 3, 1)))).toEqual([]);
  });

  test('may stand before a sealed page under proof', async () => {
    const turned: Texts = {
      ...BOXES,
      'cycles/2026-03/cycle.md': BOXES['cycles/2026-04/cycle.md']
        ?.replace('2026-04-03', '2026-03-03')
        .replace('2026-04-19', '2026-03-19') as string,
      'cycles/2026-03/items/01-seed-tray.md': BOXES['cycles/2026-04/items/01-seed-tray.md'] as string,
      'cycles/2026-04/cycle.md': cycleText('It came in April.', {
        theme: 'Later',
        shipped: '2026-04-03',
        reveal: '2026-04-19T19:00',
      }),
      'cycles/2026-04/items/01-seed-tray.md': tray('It is shallow.'),
    };
    expect(rivalsOf(await coverageFor(turned, '2026-04', Date.UTC(2026, 3, 1)))).toContain('2026-03');
  });
});

test('a passage that an earlier article has too is shown in the words of both', async () => {
  const opening =
    'Every month the same van comes up the lane, and every month the dog pretends that it has never seen a van';
  const texts: Texts = {
    ...BOXES,
    'cycles/2026-03/cycle.md': cycleText(`It came in March.\n\n${opening} before.`),
    'cycles/2026-04/cycle.md': cycleText(`${opening} at all.`, {
      theme: 'Second Sowings',
      shipped: '2026-04-03',
      reveal: '2026-04-19T19:00',
    }),
  };
  const { shared } = await coverageFor(texts, '2026-04', Date.UTC(2026, 5, 1));
  expect(shared.map(({ text, other }) => [text, other.cycle, other.text])).toEqual([
    [`${opening} at all.`, '2026-03', `${opening} before.`],
  ]);
});

test('another name that a dictionary has is offered and scores nothing', async () => {
  const { items } = await coverageFor(BOXES, '2026-03', Date.UTC(2026, 5, 1));
  expect(items[0]?.otherNames).toEqual(['flat']);
  expect(items[0]?.phrases.map(({ phrase }) => phrase.text)).not.toContain('flat');
});

describe('in another language', () => {
  const box = (lang: string): Texts => ({
    'box.md': BOX.replace('lang: en-GB', `lang: ${lang}`),
    'cycles/2026-03/cycle.md': cycleText('Gießkannen sind schwer. Diese Gießkanne ist leicht.'),
    'cycles/2026-03/items/01-kanne.md': itemText('Kanne aus Blech, 1,2 Liter', 'Gießkanne', 'Leicht.', {
      also: ['Blumenkanne'],
      lead: true,
    }),
  });

  test('phrases come from kind and other names, forms of a word are one, and the proof says what it cannot do', async () => {
    const { items, limits, reading } = await coverageFor(box('de'), '2026-03', Date.UTC(2026, 5, 1));
    expect(items[0]?.phrases.map(({ phrase }) => phrase.text)).toEqual(['gießkanne', 'blumenkanne']);
    const grades = items[0]?.phrases[0]?.mentions
      .filter(({ zone }) => zone === 'opening')
      .map(({ grade }) => grade);
    expect(grades).toEqual(['inflected', 'exact']);
    expect(limits).toHaveLength(1);
    expect(reading.ease).toBeUndefined();
  });

  test('without a stemmer the proof says that too', async () => {
    expect((await coverageFor(box('fi'), '2026-03', Date.UTC(2026, 5, 1))).limits).toHaveLength(2);
  });
});
