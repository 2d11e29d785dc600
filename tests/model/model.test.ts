import { describe, expect, test } from 'vitest';
import { parseMarkdown } from '../../src/content/markdown.ts';
import type { Box, Cycle } from '../../src/model/box.ts';
import { momentOf } from '../../src/model/calendar.ts';
import { callFor, spareOnSale } from '../../src/model/calls.ts';
import { cautionsOf as cautionsAbout } from '../../src/model/cautions.ts';
import { shortName } from '../../src/model/in-text.ts';
import { earlierOfKind, nextCycle, previousCycle } from '../../src/model/relations.ts';
import { unsealed } from '../../src/model/seal.ts';
import { slugOf } from '../../src/model/slug.ts';
import { tellingOf } from '../../src/model/telling.ts';
import { titlesOf } from '../../src/model/title.ts';
import { cycle as cycleWords } from '../../src/wording/en/cycle.ts';
import * as sample from '../support/box.ts';
import { cautionText } from '../support/telling-input.ts';

const cautionsOf = (one: Parameters<typeof cautionsAbout>[0]) => cautionsAbout(one).map(cautionText);

const months = ['2026-01', '2026-02', '2026-03'];
const cycles: Cycle[] = months.map((id, i) =>
  sample.cycle({ id, month: i + 1, reveal: Date.UTC(2026, i, 20), items: [sample.item({ cycle: id })] }),
);
const box: Box = { ...sample.box(), cycles };

describe('the seal', () => {
  test('takes a cycle out of the box until the moment of its reveal', () => {
    const ids = (moment: number) => unsealed(box, moment).cycles.map(({ id }) => id);
    expect(ids(Date.UTC(2026, 1, 20) - 1)).toEqual(['2026-01']);
    expect(ids(Date.UTC(2026, 1, 20))).toEqual(['2026-01', '2026-02']);
    expect(ids(Date.UTC(2027, 0, 1))).toEqual(months);
  });

  test('takes the target out of links to sealed cycles and keeps their words', () => {
    const tree = parseMarkdown('See [March](x.md "Secret").');
    const link = (tree.children[0] as { children: { data?: object }[] }).children[1] as { data?: object };
    link.data = { target: { cycle: '2026-03' } };
    const first = { ...(cycles[0] as Cycle), story: { file: 'a.md', tree } };
    const settings = sample.settings({ story: { file: 'box.md', tree } });
    const open = JSON.stringify(
      unsealed({ ...box, settings, cycles: [first, ...cycles.slice(1)] }, Date.UTC(2026, 0, 25)),
    );
    expect(open).not.toContain('"target"');
    expect(open).not.toContain('Secret');
    expect(open).toContain('"March"');
    expect(JSON.stringify(tree)).toContain('"target"');
  });
});

describe('moments', () => {
  // IANA: Europe/London is at UTC+1 from 2026-03-29T01:00Z on.
  test('are local in the zone, summer time included, unless they bear an offset', () => {
    expect(momentOf('2026-03-19T19:00', 'Europe/London')).toBe(Date.UTC(2026, 2, 19, 19));
    expect(momentOf('2026-03-30T19:00', 'Europe/London')).toBe(Date.UTC(2026, 2, 30, 18));
    expect(momentOf('2026-03-30T19:00-05:00', 'Europe/London')).toBe(Date.UTC(2026, 2, 31, 0));
    expect(momentOf('2026-02-30T19:00', 'Europe/London')).toBeUndefined();
  });
});

describe('calls and spare pieces', () => {
  const spare = {
    count: 2,
    price: { amount: '4.00', currency: 'GBP' },
    address: 'https://example.org/s',
    until: '2026-03-31',
  };
  test('are on sale while some are left and the last day is not past in the box’s zone', () => {
    const onSale = (moment: number, count = 2) =>
      spareOnSale(sample.item({ spare: { ...spare, count } }), moment, 'Europe/London');
    expect(onSale(Date.UTC(2026, 2, 31, 22, 59))).toBe(true);
    expect(onSale(Date.UTC(2026, 2, 31, 23, 0))).toBe(false);
    expect(onSale(Date.UTC(2026, 2, 1), 0)).toBe(false);
  });

  test('a cycle’s call for spare pieces gives way to the box’s call when none are on sale', () => {
    const terms = (text: string) => ({ address: `https://example.org/${text}`, text });
    const settings = {
      ...box.settings,
      calls: { join: terms('join'), spare: terms('spare') },
      call: 'join' as const,
    };
    const call = (count: number) =>
      callFor(
        { ...box, settings },
        sample.cycle({ call: 'spare', items: [sample.item({ spare: { ...spare, count } })] }),
        Date.UTC(2026, 2, 1),
      )?.kind;
    expect([call(2), call(0)]).toEqual(['spare', 'join']);
  });
});

describe('cautions', () => {
  const lines = (hazards: object) =>
    cautionsOf(sample.item({ hazards: { categories: [], more: [], ...hazards } })).map(
      ({ label, lines }) => `${label}: ${lines.join(' ')}`,
    );
  test('of a point say nothing of cutting', () => {
    expect(lines({ categories: ['blade'], closes: false, isPointed: true })).toEqual([
      'Sharp point: Its point is sharp. Cover it when it is not in use, and keep it out of the reach of children.',
    ]);
  });
  test('say what the record states, and what is usual', () => {
    expect(lines({})).toEqual([]);
    expect(
      lines({
        categories: ['food'],
        allergens: ['milk', 'wheat'],
        mayContain: ['sesame'],
        ingredients: 'flour',
      }),
    ).toEqual(['Allergens: Contains milk, wheat. May contain traces of sesame.', 'Ingredients: flour']);
    expect(lines({ categories: ['drink'], allergens: [] })).toEqual([
      'Allergens: None of the major allergens is an ingredient.',
    ]);
    expect(lines({ categories: ['candle'], more: ['Ours.'] }).join()).toMatch(
      /within sight.*children and pets.*Ours/,
    );
    expect(lines({ categories: ['plant'], toxicTo: [] })).toEqual([]);
    expect(lines({ categories: ['children'], minAge: 3, hazards: ['small parts'] })).toEqual([
      'Small children: Not for children under 3. Small parts can choke a child.',
    ]);
  });
});

describe('the telling', () => {
  test('follows the usual order where the body places nothing', () => {
    const cycle = sample.cycle({
      story: { file: 'c.md', tree: parseMarkdown('Opening.') },
      items: [sample.item()],
    });
    expect(tellingOf(cycle).parts.map(({ part }) => part)).toEqual([
      'prose',
      'item',
      'box',
      'voices',
      'peek',
      'call',
    ]);
  });

  test('stands where the body places it, each part once', () => {
    const slug = sample.item().slug;
    const tree = parseMarkdown(
      `One.[^1]\n\n::peek\n\nTwo.\n\n::item[${slug}]\n\n::item[${slug}]\n\n[^1]: Note.\n`,
    );
    const { parts } = tellingOf(sample.cycle({ story: { file: 'c.md', tree }, items: [sample.item()] }));
    expect(parts.map(({ part }) => part)).toEqual([
      'prose',
      'peek',
      'prose',
      'item',
      'box',
      'voices',
      'call',
    ]);
    expect(parts.filter((part) => part.part === 'prose').map(({ opening }) => opening)).toEqual([
      true,
      false,
    ]);
  });
});

test('neighbours and earlier items of a kind are found', () => {
  const [first, second, third] = cycles as [Cycle, Cycle, Cycle];
  expect([previousCycle(box, first), nextCycle(box, second)?.id]).toEqual([undefined, '2026-03']);
  expect(earlierOfKind(box, third.items[0] as Cycle['items'][number]).map(({ cycle }) => cycle)).toEqual([
    '2026-02',
    '2026-01',
  ]);
});

test.each([
  ['Brass plant mister, 300 ml', 'Brass plant mister'],
  ['Garden knife (bare), 18 cm', 'Garden knife'],
  ['Plant mister (300 ml)', 'Plant mister'],
  ['Mug [blue]', 'Mug'],
  ['Hori-hori', 'Hori-hori'],
  [', odd', ', odd'],
  ['(bare)', '(bare)'],
])('the short name of %j is without what a card adds: %j', (name, short) => {
  expect(shortName({ name, kind: short }, 'en-GB')).toBe(short);
});

test('a title names the things and keeps the theme, in as many letters as a result shows', () => {
  const cycle = { year: 2026, month: 3, theme: 'First Sowings' };
  const named = (short: string, kind = short.toLowerCase()) => ({ short, name: short.toLowerCase(), kind });
  const titles = (...things: readonly { short: string; name: string; kind: string }[]) =>
    titlesOf(things, cycle, 'en-GB', cycleWords);
  expect(
    titles(...['Wooden seed tray', 'Four seed packets', 'Dibber', 'Mister'].map((one) => named(one))),
  ).toEqual([
    'Wooden seed tray and four seed packets: First Sowings, March 2026',
    'First Sowings: wooden seed tray, four seed packets and dibber',
    'Wooden seed tray: First Sowings, March 2026',
  ]);
  expect(titles(named('Tray'))).toEqual(['Tray: First Sowings, March 2026', 'First Sowings: tray']);
  expect(titles()).toEqual(['First Sowings: the March 2026 box']);
  const tin = { short: 'Bun, muffin and pudding tin', name: 'bun, muffin and pudding tin', kind: 'tin' };
  const whisk = { short: 'Danish dough whisk', name: 'Danish dough whisk', kind: 'whisk' };
  expect(titles(whisk, tin)[1]).toBe('First Sowings: Danish dough whisk; bun, muffin and pudding tin');
  // Who looks for something for a dog types the dog.
  const [rope, chew, towel] = [named('Rope toy', 'dog toy'), named('Beef chew', 'dog chew'), named('Towel')];
  expect(titles(rope, chew, towel)[0]).toBe('Rope toy and beef chew: First Sowings, the March 2026 dog box');
  expect(titles(named('Dog lead', 'dog lead'), chew)[0]).toBe(
    'Dog lead and beef chew: First Sowings, March 2026',
  );
  expect(titles(rope, named('Towel'), named('Mug'), named('Lamp'))[0]).not.toContain('dog');
  const long = named('Set of six hand-thrown stoneware dessert bowls with lids of beech');
  expect(titles(long)[0]).toContain(long.short);
});

// No standard for slugs: the rule is ours.
test.each([
  ['Tea & Żyto', 'tea-żyto'],
  ['Straße', 'straße'],
  ['冬の茶', '冬の茶'],
  ["Gardener's soap", 'gardeners-soap'],
  ['  --  ', ''],
])('the slug of `%s` is `%s`', (text, slug) => {
  expect(slugOf(text)).toBe(slug);
});

describe('cautions that are easily lost', () => {
  const lines = (hazards: object) =>
    cautionsOf(sample.item({ hazards: { categories: [], more: [], ...hazards } })).flatMap(
      (caution) => caution.lines,
    );
  test('a hazard in other words than ours is said in the record’s words', () => {
    expect(lines({ categories: ['children'], minAge: 0, hazards: ['Small parts', 'magnets'] })).toEqual([
      'Small parts can choke a child.',
      'Beware of magnets.',
    ]);
  });
  test('every animal is named', () => {
    expect(lines({ categories: ['plant'], toxicTo: ['cats', 'dogs', 'rabbits'] }).join()).toContain(
      'Harmful to cats, dogs and rabbits if eaten.',
    );
  });
  test('a candle’s wick is to be trimmed', () => {
    expect(lines({ categories: ['candle'] }).join()).toContain('trim it to 6 mm');
  });
});

test('a photo out of a sealed cycle’s folder is left out of what is unsealed', () => {
  const tree = parseMarkdown('Before ![a hint](../2026-03/photos/hint.jpg) after.');
  const shown = (tree.children[0] as { children: { type: string; data?: object }[] }).children;
  (shown[1] as { data?: object }).data = {
    picture: sample.picture({ file: 'cycles/2026-03/photos/hint.jpg' }),
  };
  const first = { ...(cycles[0] as Cycle), story: { file: 'a.md', tree } };
  const told = (moment: number) =>
    JSON.stringify(unsealed({ ...box, cycles: [first, ...cycles.slice(1)] }, moment).cycles[0]?.story.tree);
  expect(told(Date.UTC(2026, 0, 25))).not.toContain('hint');
  expect(told(Date.UTC(2026, 5, 1))).toContain('hint');
});
