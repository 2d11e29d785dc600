import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Mention } from '../../src/analysis/coverage/coverage.ts';
import { mentionsOf, withinLonger } from '../../src/analysis/coverage/mentions/mentions.ts';
import { phraseIndexOf } from '../../src/analysis/coverage/mentions/phrase-index.ts';
import type { Phrase } from '../../src/analysis/coverage/phrases/phrase.ts';
import { english, paragraphOf } from './article.ts';

const phrase = (text: string, head?: number): Phrase => {
  const words = english.words(text);
  return {
    text,
    words,
    head: head ?? words.length - 1,
    origins: [{ from: 'kind' }],
    weight: 1,
  };
};

const found = (text: string, wanted: Phrase): readonly Mention[] =>
  mentionsOf([paragraphOf(text)], phraseIndexOf([{ slug: 'item', phrases: [wanted] }], true)).get(0) ?? [];

/** `grade: the words`, each mention. */
const said = (text: string, wanted: string, head?: number): readonly string[] => {
  const { words } = paragraphOf(text);
  return found(text, phrase(wanted, head)).map(
    ({ grade, from, to }) => `${grade}: ${text.slice(words[from]?.start, words[to]?.end)}`,
  );
};

describe('a phrase is met', () => {
  test.each([
    [
      'exactly, case and accents aside',
      'The Crème brûlée dish.',
      'creme brulee dish',
      ['exact: Crème brûlée dish'],
    ],
    [
      'exactly, with another apostrophe',
      'A gardener’s apron.',
      "gardener's apron",
      ['exact: gardener’s apron'],
    ],
    ['as one word', 'Mist the houseplant.', 'house plant', ['exact: houseplant']],
    ['with a hyphen', 'Mist the house-plant.', 'houseplant', ['exact: house-plant']],
    ['with a space', 'Mist a house plant.', 'house-plant', ['exact: house plant']],
    ['in the plural', 'Two watering cans.', 'watering can', ['inflected: watering cans']],
    ['in the singular', 'One copper plant label.', 'copper plant labels', ['inflected: copper plant label']],
    ['across spellings and in the plural', 'Our houseplants.', 'house plant', ['inflected: houseplants']],
    ['by stem', 'A pruned rose bed.', 'pruning rose', ['same stem: pruned rose']],
    [
      'scattered over two nouns that a preposition joins',
      'A can for watering the sill.',
      'watering can',
      ['scattered: can for watering'],
    ],
    [
      'scattered over three of them',
      'The labels of soft copper for the plants.',
      'copper plant label',
      ['scattered: labels of soft copper for the plants'],
    ],
    [
      'scattered over what an “of” joins to its head',
      'Two skeins of the old thread.',
      'thread skein',
      ['scattered: skeins of the old thread'],
    ],
    [
      'scattered over adjectives in a row',
      'A ribbed, pale planter.',
      'ribbed planter',
      ['scattered: ribbed, pale planter'],
    ],
    ['by its head', 'Fill the can.', 'watering can', ['head only: can']],
    ['across a line break', 'A watering\ncan.', 'watering can', ['exact: watering\ncan']],
  ])('%s', (_, text, wanted, expected) => {
    expect(said(text, wanted)).toEqual(expected);
  });

  test.each([
    ['over the end of a sentence', 'I am watering. Can you?', 'watering can'],
    ['in a row over a comma', 'A seed, tray and pot.', 'seed tray', 'head only'],
    ['scattered over a clause', 'Turn the tray, since each seed leans.', 'seed tray', 'head only'],
    ['as a verb', 'You can water it, and can wait.', 'watering can'],
    ['as a verb of instruction', 'Press the soil.', 'flower press'],
    ['by another thing of the same stem', 'The engineer came.', 'engine'],
    ['by a plant where a planter is meant', 'Each plant grows.', 'planter'],
    ['in part of a longer word', 'The scanner.', 'can'],
    [
      'too far apart',
      'The can stood on the sill by the door of the house all year for watering.',
      'watering can',
      'head only',
    ],
  ])('never %s', (_, text, wanted, rather?: string) => {
    const grades = found(text, phrase(wanted)).map(({ grade }) => grade);
    expect(grades).toEqual(rather ? [rather] : []);
  });

  test('by its head where the head is not the last word', () => {
    expect(said('Wear the gloves.', 'gloves for pruning roses', 0)).toEqual(['head only: gloves']);
  });

  test('once by each word: what is said exactly is not counted as scattered too', () => {
    expect(said('A seed tray beside a seed tray.', 'seed tray')).toEqual([
      'exact: seed tray',
      'exact: seed tray',
    ]);
  });
});

describe('a head alone', () => {
  const cap = phrase('knitted cap');

  test.each([
    'The cap.',
    'A good, old cap.',
    'Her second cap is warmer.',
    'Wear caps.',
    'Mara knits caps.',
    'She kept caps.',
    'The knitting of a warmer cap.',
    'Everyone who wears knit caps.',
    'Let the cap dry.',
    'A cap smells of wool.',
    'The cap keeps you warm.',
    'The caps dry slowly.',
    'The cap’s brim.',
    'The musty cap.',
  ])('speaks of the thing in “%s”', (text) => {
    expect(found(text, cap)).toHaveLength(1);
  });

  test.each([
    ['another noun before it', 'A bottle cap.'],
    ['a noun behind describing words before it', 'A bottle old green cap.'],
    ['words that hyphens join before it', 'A pull-off cap.'],
    ['a name before it', 'He wore a Millrace Cap.'],
    ['an owner before it', 'My aunt’s cap.'],
    ['owners before it', 'The aunts’ caps.'],
    ['a material that the thing is not of', 'A copper cap.'],
    ['another noun after it', 'The cap badge shines.'],
    ['nouns after it', 'The cap badges shine.'],
    ['a noun that a hyphen joins to it', 'A cap-wearer.'],
    ['a noun in -er after it', 'The cap opener.'],
    ['a subject and an object around it', 'Orders and cap the bottle.'],
  ])('does not with %s', (_, text) => {
    expect(found(text, cap)).toEqual([]);
  });

  test('may have words before it that the record knows', () => {
    const record = { known: english.words('A ribbed cap of blue merino by Millrace Caps'), names: [] };
    const item = { slug: 'cap', phrases: [cap] };
    const grades = (text: string, known: boolean) =>
      mentionsOf([paragraphOf(text)], phraseIndexOf([known ? { ...item, record } : item], true)).get(0) ?? [];
    expect(grades('This merino cap.', false)).toEqual([]);
    expect(grades('This merino cap.', true)).toHaveLength(1);
    expect(grades('This felt and merino cap.', true)).toHaveLength(1);
    expect(grades('This red cap.', false)).toHaveLength(1);
    expect(grades('This red cap.', true)).toEqual([]);
  });

  test('is nothing in the name of a maker or of the box', () => {
    const known = english.words('Millrace Caps The Cap');
    const names = [english.words('Millrace Caps'), english.words('The Cap Letter')];
    const index = phraseIndexOf([{ slug: 'cap', phrases: [cap], record: { known, names } }], true);
    const counted = (text: string) => (mentionsOf([paragraphOf(text)], index).get(0) ?? []).length;
    expect(counted('We met Millrace Caps in March.')).toBe(0);
    expect(counted('Read the Cap Letter.')).toBe(0);
    expect(counted('We met the Millrace caps in March.')).toBe(1);
  });

  test('is nothing where it is how anything is sent or sold, unless the record’s words stand before it', () => {
    const box = phrase('cedar seed box');
    expect(found('This box is full.', box)).toEqual([]);
    expect(found('This cedar box is full.', box)).toHaveLength(1);
  });

  test('is met by the same rules where it is the whole phrase', () => {
    expect(said('A bottle cap and a cap badge beside the cap.', 'cap')).toEqual(['exact: cap']);
    expect(said('A box beside a shoe box.', 'box')).toEqual(['exact: box']);
  });

  test('counts in other languages wherever it stands', () => {
    const phrases = [phrase('zinc kanne'), phrase('tee set')];
    const index = phraseIndexOf([{ slug: 'item', phrases }], false);
    const found = mentionsOf([paragraphOf('Eine schöne Kanne Kaffee, ein Set.')], index);
    expect([found.get(0)?.length, found.get(1)?.length]).toEqual([1, 1]);
  });
});

describe('a word before the head, alone,', () => {
  const earrings = { slug: 'earrings', phrases: [phrase('gold hoop earrings')] };
  const mentioned = (text: string, ...others: readonly string[]) => {
    const items = [earrings, ...others.map((other) => ({ slug: other, phrases: [phrase(other)] }))];
    return (mentionsOf([paragraphOf(text)], phraseIndexOf(items, true)).get(0) ?? []).map(
      ({ grade }) => grade,
    );
  };

  test('means the thing by the grade of a bare head', () => {
    expect(mentioned('The hoops shine.')).toEqual(['head only']);
    expect(mentioned('Small gold hoops.')).toEqual(['head only']);
  });

  test('means nothing where another thing shares it', () => {
    expect(mentioned('The hoops shine.', 'embroidery hoop')).toEqual([]);
  });

  test('means nothing where it is no noun of that number, has a stranger before it or a noun after it', () => {
    expect(mentioned('A hoop.')).toEqual([]);
    expect(mentioned('The hula hoops.')).toEqual([]);
    expect(found('The oolong.', phrase('oolong tea'))).toHaveLength(1);
    expect(found('The oolong pot.', phrase('oolong tea'))).toEqual([]);
  });

  test('means nothing where it is a colour, a material or something of its own', () => {
    expect(mentioned('All that gold.')).toEqual([]);
    expect(found('Scrape your boots.', phrase('boot brush'))).toEqual([]);
    expect(found('A bag of compost.', phrase('compost scoop'))).toEqual([]);
    expect(found('Cut the rosemary.', phrase('rosemary tea'))).toEqual([]);
  });
});

test('a word that stands before the head of another thing is not that thing', () => {
  const items = [
    { slug: 'tray', phrases: [phrase('seed tray')] },
    { slug: 'seeds', phrases: [phrase('vegetable seeds')] },
  ];
  const text = 'A seed tray, and seeds.';
  const seeds = mentionsOf([paragraphOf(text)], phraseIndexOf(items, true)).get(1);
  expect(seeds?.map(({ grade, from }) => [grade, paragraphOf(text).words[from]?.text])).toEqual([
    ['head only', 'seeds'],
  ]);
});

test('a phrase within a longer one counts for both, and says so', () => {
  const text = 'An enamel watering can.';
  const all = [phrase('enamel watering can'), phrase('watering can')].map((one) => ({
    phrase: one,
    mentions: found(text, one),
  }));
  const [longer, shorter] = withinLonger(all);
  expect(longer?.[0]).toMatchObject({ grade: 'exact' });
  expect(longer?.[0]?.within).toBeUndefined();
  expect(shorter?.[0]).toMatchObject({ grade: 'exact', within: 'enamel watering can' });
});

describe('for any text', () => {
  const text = fc.string({
    unit: fc.constantFrom(...'watering can cans seed tray é. ,-\n'.split('')),
    maxLength: 120,
  });

  test('the same mentions are found in every Unicode normal form', () => {
    fc.assert(
      fc.property(text, (some) => {
        const grades = (form: 'NFC' | 'NFD'): readonly string[] =>
          found(some.normalize(form), phrase('watering can')).map(({ grade, from }) => `${grade} ${from}`);
        expect(grades('NFD')).toEqual(grades('NFC'));
      }),
    );
  });

  test('mentions lie in the text, in order', () => {
    fc.assert(
      fc.property(text, (some) => {
        const { words } = paragraphOf(some);
        const mentions = found(some, phrase('seed tray'));
        for (const { from, to } of mentions) {
          expect(from).toBeLessThanOrEqual(to);
          expect(to).toBeLessThan(words.length);
        }
        expect([...mentions].sort((a, b) => a.from - b.from)).toEqual(mentions);
      }),
    );
  });
});
