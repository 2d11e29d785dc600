import { expect, test } from 'vitest';
import type { Box, Piece } from '../../src/model/box.ts';
import { completenessOf as completed } from '../../src/pipeline/completeness/completeness.ts';
import { type FileReading, heldBy } from '../../src/pipeline/completeness/facts.ts';
import type { Where } from '../../src/render/output.ts';
import { plainWords } from '../../src/render/plain-words.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { box, cycle, item, settings } from '../support/box.ts';

const asOf = Date.UTC(2026, 2, 27);

/** A finished file of a piece. */
interface Finished {
  readonly where: Where;
  readonly path: string;
  readonly text: string;
}

const readingOf =
  (files: readonly Finished[]): FileReading =>
  async ({ where, path }, sought) => {
    const found = files.find((one) => one.where === where && one.path === path);
    return found && heldBy(found, sought);
  };

const completenessOf = (whole: Box, moment: number, files: readonly Finished[]) =>
  completed({ box: whole, asOf: moment, wording: wordingFor('en-GB'), reading: readingOf(files) });

const basket = item({
  slug: 'basket',
  name: 'Cane basket, 22 cm',
  kind: 'basket',
  hazards: { categories: ['blade'], closes: true, more: ["Don't put it in the oven -- it burns."] },
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

const file = (path: string, text: string, where: Where = 'backroom'): Finished => ({
  where,
  path,
  text,
});
const article = (lines: readonly string[] = ALL): Finished =>
  file('boxes/2026-03-first-sowings.html', page(lines), 'site');
const letter = (html: readonly string[] = ALL, text: readonly string[] = ALL): readonly Finished[] => [
  file('2026-03/letter.html', page(html)),
  file('2026-03/letter.txt', text.join('\n\n')),
];

const rulesOf = async (whole: Box, files: readonly Finished[]): Promise<readonly string[]> =>
  (await completenessOf(whole, asOf, files)).diagnostics.map(({ rule, message }) => `${rule}: ${message}`);

test('nothing is found where every piece says everything, whatever its quotes, dashes and spaces', async () => {
  const wrapped = ALL.map((line) => line.replace(/ /g, ' \n   '));
  expect(await rulesOf(tiny(['article', 'letter']), [article(), ...letter(ALL, wrapped)])).toEqual([]);
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
])('a letter whose plain text lacks “%s” is found', async (missing, rule, called) => {
  const found = await rulesOf(tiny(['article', 'letter']), [article(), ...letter(ALL, lacking(missing))]);
  expect(found).toHaveLength(1);
  expect(found[0]).toContain(rule);
  expect(found[0]).toContain(called);
  expect(found[0]).toContain('2026-03/letter.txt');
  expect(found[0]).not.toContain('letter.html');
});

test('what stands in a page’s head alone is not told', async () => {
  expect((await rulesOf(tiny(['article']), [article(lacking('Cane basket'))]))[0]).toContain('whole-item');
});

test('a link’s address counts, whatever its words', async () => {
  const linked = [
    ...lacking('https://sillandsprig.example/join'),
    '<a href="https://sillandsprig.example/join">here</a>',
  ];
  expect(await rulesOf(tiny(['article']), [article(linked)])).toEqual([]);
});

test('another address than the call’s is found', async () => {
  const other = ALL.map((line) => line.replace('/join', '/joint'));
  expect((await rulesOf(tiny(['article']), [article(other)]))[0]).toContain('whole-call');
});

test('a run sheet may cut the peek short and leaves the ingredients on the card', async () => {
  const said = [...ALL.filter((line) => !/Bring a hat|Beeswax/.test(line)), 'In April we go outside.'];
  expect(await rulesOf(tiny(['live']), [file('2026-03/run-sheet.html', page(said))])).toEqual([]);
  const mute = said.filter((line) => !line.startsWith('In April'));
  expect((await rulesOf(tiny(['live']), [file('2026-03/run-sheet.html', page(mute))]))[0]).toContain(
    'whole-peek',
  );
});

test('an invitation keeps still, and is found where it does not', async () => {
  const invite = (text: string) => [file('2026-03/invitation.html', page([text]))];
  const whole = tiny(['invitation'], true);
  expect(await rulesOf(whole, invite('Come and see.'))).toEqual([]);
  expect((await rulesOf(whole, invite('Come and see the cane basket.')))[0]).toContain('whole-spoils');
  const { whole: found } = await completenessOf(whole, asOf, invite('Come.'));
  expect(found[0]?.rows[0]?.states).toEqual(['kept still']);
});

test('the article of a sealed cycle is not missed', async () => {
  const { whole, diagnostics } = await completenessOf(tiny(['article'], true), asOf, []);
  expect(diagnostics).toEqual([]);
  expect(new Set(whole[0]?.rows.flatMap(({ states }) => states))).toEqual(new Set(['sealed']));
});

test('a piece that nothing makes is said once', async () => {
  expect(await rulesOf(tiny(['article', 'letter']), [article()])).toEqual([
    'whole-piece: Unexpected absence of the piece `letter` for any cycle, expected its files',
  ]);
});

test('a letter that one cycle of two has is missed of the other', async () => {
  const one = tiny(['letter']);
  const two = { ...one, cycles: [...one.cycles, { ...one.cycles[0], id: '2026-02' }] } as Box;
  expect(await rulesOf(two, letter())).toEqual([
    'whole-piece: Unexpected absence of the piece `letter` for 2026-02, expected its files',
  ]);
});

test('words of a page are its own, without tags, references and soft hyphens', () => {
  const text =
    '<head><title>no</title></head><style>no</style><p>Wa<b>ter</b>ing&#x2D;can&nbsp;&amp; r&#111;se</p><td>a</td><td>b</td><script>no</script>soft&shy;ly';
  expect(plainWords(text, true)).toBe('watering can rose a b softly');
});
