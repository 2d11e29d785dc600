import { expect, test } from 'vitest';
import type { Box, Piece } from '../../src/model/box.ts';
import { completenessOf as completed } from '../../src/pipeline/completeness/completeness.ts';
import { readingOf } from '../../src/pipeline/completeness/facts.ts';
import { plainWords } from '../../src/render/plain-words.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { box, cycle, item, settings } from '../support/box.ts';
import type { Output } from '../support/carried-out.ts';

const asOf = Date.UTC(2026, 2, 27);

const completenessOf = (whole: Box, moment: number, outputs: readonly Output[]) =>
  completed({ box: whole, asOf: moment, wording: wordingFor('en'), reading: readingOf(outputs) });

const basket = item({
  slug: 'basket',
  name: 'Cane basket, 22 cm',
  kind: 'basket',
  hazards: { categories: ['blade'], more: ["Don't put it in the oven -- it burns."] },
});
const salve = item({
  slug: 'salve',
  number: 2,
  lead: false,
  name: 'Hand salve',
  kind: 'salve',
  hazards: {
    categories: ['food'],
    allergens: ['milk'],
    mayContain: ['nuts'],
    ingredients: 'Beeswax, milk',
    more: [],
  },
});

const tiny = (pieces: readonly Piece[], sealed = false): Box =>
  box({
    settings: settings({ pieces }),
    cycles: [
      cycle({
        items: [basket, salve],
        peek: { text: 'In April we go outside. Bring a hat.' },
        ...(sealed && { reveal: Date.UTC(2026, 3, 1) }),
      }),
    ],
  });

const ALL = [
  'Cane basket',
  'It is sharp. Cut away from yourself, close it after use and keep it out of the reach of children.',
  'Don’t put it in the oven – it burns.',
  'Hand salve',
  'Contains milk.',
  'May contain traces of nuts.',
  'Beeswax, milk',
  'In April we go outside. Bring a hat.',
  'Join',
  'https://sillandsprig.example/join',
];

const page = (lines: readonly string[]): string =>
  `<!doctype html><html><head><title>Cane basket</title></head><body>${lines.map((line) => `<p>${line}</p>`).join('')}</body></html>`;

const file = (path: string, text: string, where: 'site' | 'backroom' = 'backroom'): Output => ({
  where,
  path,
  text,
});
const article = (lines: readonly string[] = ALL): Output =>
  file('boxes/2026-03-first-sowings.html', page(lines), 'site');
const letter = (html: readonly string[] = ALL, text: readonly string[] = ALL): readonly Output[] => [
  file('2026-03/letter.html', page(html)),
  file('2026-03/letter.txt', text.join('\n\n')),
];

const rulesOf = (whole: Box, outputs: readonly Output[]): readonly string[] =>
  completenessOf(whole, asOf, outputs).diagnostics.map(({ rule, message }) => `${rule}: ${message}`);

test('nothing is found where every piece says everything, whatever its quotes, dashes and spaces', () => {
  const wrapped = ALL.map((line) => line.replace(/ /g, ' \n   '));
  expect(rulesOf(tiny(['article', 'letter']), [article(), ...letter(ALL, wrapped)])).toEqual([]);
});

const lacking = (missing: string): readonly string[] => ALL.filter((line) => line !== missing);

test.each([
  ['Hand salve', 'whole-item', '`Hand salve`'],
  ['Contains milk.', 'whole-caution', '“Allergens” of `Hand salve`'],
  ['May contain traces of nuts.', 'whole-caution', '“Allergens” of `Hand salve`'],
  ['Beeswax, milk', 'whole-caution', '“Ingredients” of `Hand salve`'],
  ['Don’t put it in the oven – it burns.', 'whole-caution', '“Please note” of `Cane basket`'],
  ['In April we go outside. Bring a hat.', 'whole-peek', 'the peek'],
  ['https://sillandsprig.example/join', 'whole-call', 'the call’s address'],
])('a letter whose plain text lacks “%s” is found', (missing, rule, called) => {
  const found = rulesOf(tiny(['article', 'letter']), [article(), ...letter(ALL, lacking(missing))]);
  expect(found).toHaveLength(1);
  expect(found[0]).toContain(rule);
  expect(found[0]).toContain(called);
  expect(found[0]).toContain('2026-03/letter.txt');
  expect(found[0]).not.toContain('letter.html');
});

test('what stands in a page’s head alone is not told', () => {
  expect(rulesOf(tiny(['article']), [article(lacking('Cane basket'))])[0]).toContain('whole-item');
});

test('a link’s address counts, whatever its words', () => {
  const linked = [
    ...lacking('https://sillandsprig.example/join'),
    '<a href="https://sillandsprig.example/join">here</a>',
  ];
  expect(rulesOf(tiny(['article']), [article(linked)])).toEqual([]);
});

test('another address than the call’s is found', () => {
  const other = ALL.map((line) => line.replace('/join', '/joint'));
  expect(rulesOf(tiny(['article']), [article(other)])[0]).toContain('whole-call');
});

test('a run sheet may cut the peek short and leaves the ingredients on the card', () => {
  const said = [...ALL.filter((line) => !/Bring a hat|Beeswax/.test(line)), 'In April we go outside.'];
  expect(rulesOf(tiny(['live']), [file('2026-03/run-sheet.html', page(said))])).toEqual([]);
  const mute = said.filter((line) => !line.startsWith('In April'));
  expect(rulesOf(tiny(['live']), [file('2026-03/run-sheet.html', page(mute))])[0]).toContain('whole-peek');
});

test('an invitation keeps still, and is found where it does not', () => {
  const invite = (text: string) => [file('2026-03/invitation.html', page([text]))];
  const whole = tiny(['invitation'], true);
  expect(rulesOf(whole, invite('Come and see.'))).toEqual([]);
  expect(rulesOf(whole, invite('Come and see the cane basket.'))[0]).toContain('whole-spoils');
  expect(completenessOf(whole, asOf, invite('Come.')).whole[0]?.rows[0]?.states).toEqual(['kept still']);
});

test('the article of a sealed cycle is not missed', () => {
  const { whole, diagnostics } = completenessOf(tiny(['article'], true), asOf, []);
  expect(diagnostics).toEqual([]);
  expect(new Set(whole[0]?.rows.flatMap(({ states }) => states))).toEqual(new Set(['sealed']));
});

test('a piece that nothing makes is said once', () => {
  expect(rulesOf(tiny(['article', 'cards']), [article()])).toEqual([
    'whole-piece: Unexpected absence of the piece `cards` for any cycle, expected its files',
  ]);
});

test('a letter that one cycle of two has is missed of the other', () => {
  const one = tiny(['letter']);
  const two = { ...one, cycles: [...one.cycles, { ...one.cycles[0], id: '2026-02' }] } as Box;
  expect(rulesOf(two, letter())).toEqual([
    'whole-piece: Unexpected absence of the piece `letter` for 2026-02, expected its files',
  ]);
});

test('words of a page are its own, without tags, references and soft hyphens', () => {
  const text =
    '<head><title>no</title></head><style>no</style><p>Wa<b>ter</b>ing&#x2D;can&nbsp;&amp; r&#111;se</p><td>a</td><td>b</td><script>no</script>soft&shy;ly';
  expect(plainWords(text, true)).toBe('watering can rose a b softly');
});
