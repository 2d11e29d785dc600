import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { audienceOf } from '../../src/analysis/coverage/phrases/audience.ts';
import { phrasesOf } from '../../src/analysis/coverage/phrases/phrases.ts';
import { searchIndexOf } from '../../src/analysis/coverage/phrases/typed.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { Item, Search } from '../../src/model/box.ts';
import { item } from '../support/box.ts';

const english = await languageFor('en-GB');
const german = await languageFor('de');
const french = await languageFor('fr-FR');

const typed = (phrase: string, count: number): Search => ({
  phrase,
  count,
  location: { file: 'searches.csv', line: 2, column: 1 },
});
const can = item({
  name: 'Sage enamel watering can, 1.2 litre',
  kind: 'watering can',
  also: ['indoor watering can'],
  brand: 'Culverhythe Enamel',
  material: ['enamelled steel', 'brass'],
  color: 'sage',
});
const weights = (one: Item, searches: readonly Search[] = []): Readonly<Record<string, number>> =>
  Object.fromEntries(phrasesOf(one, searches, english).map(({ text, weight }) => [text, weight]));
const textsOf = (one: Item, searches: readonly Search[] = []): readonly string[] =>
  Object.keys(weights(one, searches));

describe('the phrases of an item', () => {
  test('come from its kind, name, other names, material, colour and maker, the weightiest first', () => {
    expect(weights(can)).toEqual({
      'watering can': 4,
      'sage enamel watering can': 3,
      'indoor watering can': 2,
      'enamel watering can': 0.5,
      'enamelled steel watering can': 0.5,
      'sage watering can': 0.5,
      'culverhythe watering can': 0.25,
    });
    expect(phrasesOf(can, [], english).map(({ text }) => text)).toEqual(textsOf(can));
  });

  test('have their head first in a language that puts the noun before what describes it', () => {
    const pen = item({ name: 'Stylo plume en laiton', kind: 'stylo plume', also: ['plume de voyage'] });
    expect(phrasesOf(pen, [], french).map(({ words, head }) => words[head]?.text)).toEqual([
      'stylo',
      'plume',
    ]);
    const knife = item({ name: 'Käsemesser', kind: 'scharfes Käsemesser' });
    expect(phrasesOf(knife, [], german).map(({ words, head }) => words[head]?.text)).toEqual(['käsemesser']);
  });

  test('take the name’s own noun for the kind where the kind is a wider word', () => {
    const dibber = item({ name: 'Wooden dibber with steel tip', kind: 'hand tool' });
    expect(weights(dibber)).toMatchObject({ dibber: 4, 'wooden dibber': 3, 'hand tool': 1 });
    const rake = item({ name: 'Hand rake', kind: 'hand tool' });
    expect(weights(rake)).toMatchObject({ 'hand rake': 4, 'hand tool': 1 });
    const peas = item({ name: 'Sweet pea seeds', kind: 'seed packet' });
    expect(weights(peas)).toMatchObject({ 'sweet pea seeds': 4, 'seed packet': 1 });
    // A dog toy is looked for by that name, whatever toy it is.
    const puzzle = item({ name: 'Interactive treat puzzle for dogs', kind: 'dog toy' });
    expect(weights(puzzle)).toMatchObject({ 'dog toy': 4, 'treat puzzle': 2 });
  });

  test('leave a title whole, below its kind', () => {
    const novel = item({ name: 'The Governess of Saltmere', kind: 'novel', color: 'sea green', brand: '' });
    expect(weights(novel)).toEqual({
      novel: 4,
      'governess of saltmere': 2,
      'governess of saltmere novel': 0.5,
    });
    const tea = item({ name: 'Lantern Lane Assam', kind: 'loose leaf tea', brand: 'Tolliver Teas' });
    expect(textsOf(tea)[0]).toBe('loose leaf tea');
    expect(textsOf(tea)).not.toContain('lane assam');
    const steamy = item({ name: 'Steamy Nights', kind: 'black tea', brand: '' });
    expect(weights(steamy)).toMatchObject({ 'black tea': 4, 'steamy nights': 2 });
  });

  test('take no figure for a thing: a cat cave is a cat bed', () => {
    const cave = weights(item({ name: 'Felt cat cave', kind: 'cat bed', brand: '' }));
    expect(cave).toMatchObject({ 'cat bed': 4, 'felt cat cave': 3, 'cat cave': 2 });
    const bites = item({ name: 'Salmon bites for kittens', kind: 'cat treat', brand: '' });
    expect(textsOf(bites)).toEqual(['cat treat', 'salmon bites', 'treat for cats']);
    expect(cave).not.toHaveProperty('cave');
  });

  test('have no quality that nobody would type', () => {
    const of = (more: Partial<Item>): readonly string[] => textsOf(item({ brand: '', ...more }));
    const pack = { name: 'Day backpack', kind: 'backpack' };
    expect(of({ ...pack, color: 'clay' })).not.toContain('clay backpack');
    expect(of({ ...pack, color: 'green' })).toContain('green backpack');
    expect(of({ ...pack, color: 'black, red and blue' }).filter((text) => /black/.test(text))).toEqual([]);
    const bowl = { name: 'Feeder bowl', kind: 'dog bowl' };
    expect(of({ ...bowl, material: ['melamine'] }).filter((text) => /melamine/.test(text))).toEqual([]);
    expect(of({ ...bowl, material: ['glazed stoneware'] })).toContain('stoneware dog bowl');
    expect(of({ ...pack, material: ['vegan leather'] })).toContain('vegan leather backpack');
    expect(of({ ...bowl, material: ['stoneware', 'cork', 'steel'] }).join()).not.toMatch(/stoneware/);
    expect(of({ name: 'Salmon treats', kind: 'dog treat', color: 'pink' }).join()).not.toMatch(/pink/);
    expect(of({ name: 'Wooden duck', kind: 'wooden toy', material: ['beech'] })).not.toContain(
      'beech wooden toy',
    );
  });

  test('call a maker as people do, without what it makes', () => {
    const of = (brand: string): readonly string[] =>
      textsOf(item({ name: 'Hand rake', kind: 'hand rake', brand }));
    expect(of('Ebbsworth Forge')).toContain('ebbsworth hand rake');
    expect(of('Hesk & Daughters')).toContain('hesk & daughters hand rake');
    expect(of('Safe Mill')).toContain('safe mill hand rake');
  });

  test('ask no more of an article for many other names than for one', () => {
    const also = ['plant can', 'water can', 'indoor pourer', 'spouted can'];
    const many = weights(item({ ...can, also }));
    expect(also.reduce((sum, name) => sum + (many[name] as number), 0)).toBeCloseTo(2, 12);
  });

  test('have their head where the thing is said', () => {
    for (const { words, head } of phrasesOf(can, [], english)) expect(words[head]?.key).toBe('can');
    const [first] = phrasesOf(item({ name: 'Gloves for pruning roses', kind: 'gloves' }), [], english);
    expect(first?.words[first.head]?.text).toBe('gloves');
  });

  test('are one, however they are spaced and whether one or many, with every origin', () => {
    const phrases = phrasesOf(
      item({ name: 'House-plant misters', kind: 'houseplant mister', also: ['house plant mister'] }),
      [],
      english,
    );
    const [first] = phrases;
    expect(phrases.filter(({ text }) => /house/.test(text) && !/halloway/.test(text))).toHaveLength(1);
    expect(first?.text).toBe('houseplant mister');
    expect(first?.origins.map(({ from }) => from)).toEqual(['kind', 'name', 'also']);
    expect(first?.weight).toBe(4);
  });

  test.each([
    [
      'Ceramic pour-over dripper',
      'coffee dripper',
      [],
      ['ceramic coffee dripper', 'pour over coffee dripper'],
      [],
    ],
    ['Linen tote', 'shopping tote', [], ['linen shopping tote'], []],
    ['Valve tin for 500 g', 'coffee tin', [], [], ['valve coffee tin']],
    ['Enamelled jug', 'milk jug', [], ['enamelled milk jug'], ['milk milk jug']],
    [
      'Darning mushroom',
      'darning mushroom',
      ['beech'],
      ['wooden darning mushroom', 'beech darning mushroom'],
      [],
    ],
    ['Dough scraper', 'dough scraper', ['olive wood'], ['wooden dough scraper'], []],
    ['Log basket', 'log basket', ['willow'], [], ['wooden log basket']],
    ['500-piece puzzle, Harbour', 'jigsaw puzzle', [], ['500 piece puzzle', '500 piece jigsaw puzzle'], []],
    ['Set of 24 piece cutlery', 'cutlery set', [], ['24 piece cutlery set'], []],
  ])('of %s, kind %s, material %j, are typed', (name, kind, material, typed, never) => {
    const texts = phrasesOf(item({ name, kind, material }), [], english).map(({ text }) => text);
    for (const text of typed) expect(texts).toContain(text);
    for (const text of never) expect(texts).not.toContain(text);
  });

  test.each([
    ['Lick mat', 'lick mat', 'dog', ['dog lick mat', 'lick mat for dogs'], []],
    ['Drying coat', 'dog drying coat', undefined, ['dog drying coat', 'drying coat for dogs'], []],
    ['Scratch post', 'cat scratch post', 'cat', ['scratch post for cats'], ['cat cat scratch post']],
    ['Boot brush', 'boot brush', undefined, ['boot brush'], ['dog boot brush']],
    ['Laid writing pad, A5', 'writing pad', undefined, ['a5 writing pad'], []],
    ['Sealing wax sticks, set of four', 'sealing wax', undefined, ['sealing wax sticks'], []],
    [
      'Two long sticks of red sealing wax',
      'sealing wax',
      undefined,
      [],
      ['two long sticks of red sealing wax'],
    ],
  ])('of %s, kind %s, in a box for %s, are typed', (name, kind, audience, typed, never) => {
    const short = name.split(',')[0] ?? name;
    const one = item({ name, kind, inText: { short, name: short.toLowerCase(), kind } });
    const texts = phrasesOf(one, [], english, audience).map(({ text }) => text);
    for (const text of typed) expect(texts).toContain(text);
    for (const text of never) expect(texts).not.toContain(text);
  });

  test.each([
    ['A monthly box for dogs who go out in all weathers.', 'dog'],
    ['Toys and treats for cats.', 'cat'],
    ['A box for people who garden on windowsills, packed by two people and a dog.', undefined],
    ['Hot dogs and what goes with them.', undefined],
  ])('a box that says “%s” is for %s', (description, audience) => {
    expect(audienceOf(description, english)).toBe(audience);
  });

  test('never say a colour or a material twice', () => {
    const pot = item({
      name: 'Terracotta pot',
      kind: 'terracotta pot',
      material: ['terracotta'],
      color: 'terracotta',
    });
    for (const text of textsOf(pot)) expect(text.match(/terracotta/g)?.length ?? 0).toBeLessThan(2);
  });

  test('put a quality before the nearer of the name’s and the record’s nouns', () => {
    const rake = item({
      name: 'Hand rake',
      kind: 'hand tool',
      material: ['iron', 'ash'],
      color: 'black and brown',
    });
    expect(textsOf(rake)).toContain('iron hand rake');
    expect(textsOf(rake)).not.toContain('iron hand tool');
  });

  test('leave out parts that are not what it is made of, and the maker’s address', () => {
    const bulbs = item({ name: 'Tulip bulbs', kind: 'tulip bulb', material: ['tulip bulbs', 'jute'] });
    expect(textsOf(bulbs).filter((text) => /bulbs? tulip/.test(text))).toEqual([]);
    const stand = item({ name: 'Oak plant stand', kind: 'plant stand', brand: 'Tolley of Cable Steps' });
    expect(textsOf(stand)).toContain('tolley plant stand');
  });

  test('in another language are kind, other names and what was typed alone', () => {
    const kanne = item({
      name: 'Gießkanne aus Emaille',
      kind: 'Gießkanne',
      also: ['Blumenkanne'],
      color: 'grün',
    });
    expect(
      phrasesOf(kanne, [typed('gießkanne', 10)], german).map(({ text, weight }) => [text, weight]),
    ).toEqual([
      ['gießkanne', 8],
      ['blumenkanne', 2],
    ]);
  });

  test('are at most a dozen', () => {
    const many = item({
      also: Array.from({ length: 30 }, (_, i) => `spray bottle number ${String.fromCharCode(97 + i)}x`),
    });
    expect(phrasesOf(many, [], english)).toHaveLength(12);
  });

  test('do not hang on the order of other names or searches, and weigh more than nothing', () => {
    const also = ['water sprayer', 'mist sprayer', 'houseplant mister'];
    const searches = [
      typed('plant mister', 139),
      typed('brass houseplant mister', 29),
      typed('house plant mister', 238),
    ];
    const expected = JSON.stringify(weights(item({ also }), searches));
    fc.assert(
      fc.property(
        fc.shuffledSubarray(also, { minLength: 3 }),
        fc.shuffledSubarray(searches, { minLength: 3 }),
        (some, typedOnes) => {
          const here = weights(item({ also: some }), typedOnes);
          expect(JSON.stringify(here)).toBe(expected);
          for (const weight of Object.values(here)) expect(weight).toBeGreaterThan(0);
        },
      ),
    );
  });

  test('are read of any words without a fault, no two alike', () => {
    const some = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 30 }),
      fc.constantFrom('', ' ', '🌱', '12', 'and', 'of'),
    );
    fc.assert(
      fc.property(some, some, some, some, (name, kind, other, quality) => {
        const phrases = phrasesOf(
          item({ name, kind, also: [other], material: [quality], color: quality, brand: other }),
          [typed(name, 3), typed(other, 1)],
          english,
        );
        const keys = phrases.map(({ words }) => words.map(({ key }) => key).join(''));
        expect(new Set(keys).size).toBe(keys.length);
        for (const { words, head } of phrases) expect(words[head]).toBeDefined();
      }),
      { numRuns: 300 },
    );
  });
});

describe('what people typed', () => {
  test('adds to a phrase of the record by its share of the item’s most typed', () => {
    const mister = item({ also: ['houseplant mister'] });
    const searches = [typed('house plant mister', 200), typed('plant mister', 100)];
    expect(weights(mister, searches)).toMatchObject({ 'houseplant mister': 6, 'plant mister': 6 });
  });

  test('is counted together in any spacing and number', () => {
    const mister = item({ also: ['houseplant mister'] });
    const searches = [
      typed('house plant mister', 50),
      typed('houseplant misters', 50),
      typed('plant mister', 100),
    ];
    expect(weights(mister, searches)).toMatchObject({ 'houseplant mister': 6, 'plant mister': 8 });
  });

  test('says how often, and how it was typed where that differs', () => {
    const phrases = phrasesOf(can, [typed('watering can indoor', 95)], english);
    const phrase = phrases.find(({ text }) => text === 'indoor watering can');
    expect(phrase?.origins).toContainEqual({ from: 'search', count: 95, as: 'watering can indoor' });
  });

  const belongs = (one: Item, phrase: string): boolean =>
    phrasesOf(one, [typed(phrase, 5)], english).some(({ origins }) =>
      origins.some(({ from }) => from === 'search'),
    );

  test.each([
    'watering can',
    'watering cans',
    'indoor watering can',
    'watering can for houseplants',
    'how to clean a watering can',
    'watering can where to buy',
    'sage watering can',
    'small wateringcan',
    'enamelled watering can',
  ])('“%s” belongs to a sage watering can', (phrase) => {
    expect(belongs(can, phrase)).toBe(true);
  });

  test.each([
    'red watering can',
    'plastic watering can',
    'tin can',
    'can',
    'watering',
    'houseplant watering',
    'can opener',
    'trash can indoor',
    'pot for watering can',
  ])('“%s” does not', (phrase) => {
    expect(belongs(can, phrase)).toBe(false);
  });

  test('in the middle of a name of one word is kept away by what is unknown of the item', () => {
    const tin = item({ name: 'Tin', kind: 'tin', brand: 'X', material: [] });
    expect(belongs(tin, 'cake tin')).toBe(false);
    expect(belongs(tin, 'large tin')).toBe(true);
    expect(belongs(tin, 'kitchen tin')).toBe(true);
  });

  test('loses what asks, and keeps what follows a preposition', () => {
    const hotel = item({ name: 'Bee hotel', kind: 'bee hotel' });
    expect(textsOf(hotel, [typed('bee hotel where to hang', 203)])).not.toContain('bee hotel where to hang');
    expect(weights(hotel, [typed('bee hotel where to hang', 203)])['bee hotel']).toBe(8);
    expect(textsOf(hotel, [typed('bee hotel for balcony', 20)])).toContain('bee hotel for balcony');
  });

  test('with a slip in it is passed over where the right word was typed oftener', () => {
    const pole = item({ name: 'Moss pole, 40 cm', kind: 'moss pole' });
    const searches = [typed('moss pole for monstera', 16), typed('monsterra moss pole', 9)];
    expect(textsOf(pole, searches).filter((text) => /monsterra/.test(text))).toEqual([]);
    expect(textsOf(pole, searches)).toContain('moss pole for monstera');
  });

  test('is read once for any number of items', () => {
    const index = searchIndexOf(
      [typed('watering can', 5), typed('', 4), typed('🌱', 3), typed('why', 2)],
      english,
    );
    expect(phrasesOf(can, index, english)).toEqual(phrasesOf(can, [typed('watering can', 5)], english));
  });
});
