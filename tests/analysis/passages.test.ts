import { describe, expect, test } from 'vitest';
import type { Passage } from '../../src/analysis/coverage/text/passage.ts';
import { passagesOf } from '../../src/analysis/coverage/text/passages.ts';
import { surroundingsOf } from '../../src/analysis/coverage/text/surroundings.ts';
import { OPENING_WORDS } from '../../src/analysis/coverage/text/zones.ts';
import type { Cycle } from '../../src/model/box.ts';
import { cautionText } from '../support/telling-input.ts';
import { boxOf, cycleText, english, itemText, NOW } from './article.ts';

const CYCLE = 'cycles/2026-03/cycle.md';
const TRAY = 'cycles/2026-03/items/01-seed-tray.md';
const DIBBER = 'cycles/2026-03/items/02-dibber.md';

const passagesFor = (texts: Readonly<Record<string, string>>): readonly Passage[] => {
  const box = boxOf(texts);
  const cycle = box.cycles[0] as Cycle;
  return passagesOf(cycle, surroundingsOf(box, cycle, NOW), english, cautionText);
};

/** Where one word stands, written `place file:line:column`. */
const whereabouts = (passages: readonly Passage[], word: string): readonly string[] =>
  passages.flatMap(({ words, file }) =>
    words
      .filter(({ text }) => text === word)
      .map(({ zone, line, column }) => `${zone} ${file.split('/').at(-1)}:${line}:${column}`),
  );

const small = {
  [CYCLE]: cycleText(
    'Quince.\n\n## Medlar\n\nSee [sloe](items/01-seed-tray.md) and *damson*\nover two lines: bullace.',
  ),
  [TRAY]: itemText('Wooden seed tray', 'seed tray', 'Marrow &amp; gourd. A \\*squash\\*.'),
  [DIBBER]: itemText('Dibber', 'dibber', 'Turnip.', { also: ['Swede'], material: ['Ash'] }),
};

describe('every word has its zone and where it was written:', () => {
  const passages = passagesFor(small);
  test.each([
    ['Quince', ['opening cycle.md:9:1']],
    ['Medlar', ['heading cycle.md:11:4']],
    ['sloe', ['link text cycle.md:13:6']],
    ['damson', ['opening cycle.md:13:40']],
    ['bullace', ['opening cycle.md:14:17']],
    ['gourd', ['opening 01-seed-tray.md:9:14']],
    ['squash', ['opening 01-seed-tray.md:9:25']],
    ['Swede', ['structured data 02-dibber.md:7:9']],
    ['Ash', ['section 02-dibber.md:8:13', 'structured data 02-dibber.md:8:13']],
    ['Sowings', ['body cycle.md:2:15']],
  ])('%s', (word, expected) => {
    expect(whereabouts(passages, word)).toEqual(expected);
  });
});

describe('the opening', () => {
  const words = (count: number, word: string): string => Array.from({ length: count }, () => word).join(' ');

  test(`is the first ${OPENING_WORDS} words of running text, whoever wrote them where`, () => {
    const passages = passagesFor({
      [CYCLE]: cycleText(`${words(60, 'one')}.\n\n# Between\n\n${words(60, 'two')}.`),
      [TRAY]: itemText('Tray', 'tray', 'three'),
    });
    const placed = passages.flatMap((passage) => passage.words);
    expect(placed.filter(({ zone }) => zone === 'opening')).toHaveLength(OPENING_WORDS);
    expect(placed.filter(({ text, zone }) => text === 'two' && zone === 'body')).toHaveLength(20);
    expect(placed.find(({ text }) => text === 'three')?.zone).toBe('section');
  });

  test('does not count headings, and leaves links to be links', () => {
    const passages = passagesFor({
      [CYCLE]: cycleText(`# ${words(40, 'head')}\n\n[linked](https://a.example/) ${words(99, 'one')} last`),
      [TRAY]: itemText('Tray', 'tray', 'three'),
    });
    const placed = passages.flatMap((passage) => passage.words);
    expect(placed.find(({ text }) => text === 'linked')?.zone).toBe('link text');
    expect(placed.find(({ text }) => text === 'last')?.zone).toBe('body');
  });
});

test('a link to what may not be shown yet is plain text', () => {
  const box = boxOf({
    [CYCLE]: cycleText('See [hidden](../2026-05/cycle.md).'),
    [TRAY]: itemText('Tray', 'tray', 'x'),
    'cycles/2026-05/cycle.md': cycleText('Later.', { reveal: '2026-05-19T19:00' }),
    'cycles/2026-05/items/01-tray.md': itemText('Tray', 'tray', 'x'),
  });
  const places = (asOf: number): (string | undefined)[] =>
    passagesOf(
      box.cycles[0] as Cycle,
      surroundingsOf(box, box.cycles[0] as Cycle, asOf),
      english,
      cautionText,
    ).flatMap(({ words }) => words.filter(({ text }) => text === 'hidden').map(({ zone }) => zone));
  expect(places(NOW)).toEqual(['link text']);
});

test('line breaks, marks and composed letters do not change the words', () => {
  const folded = (body: string): readonly string[] =>
    passagesFor({ [CYCLE]: cycleText(body), [TRAY]: itemText('Tray', 'tray', 'x') })
      .filter(({ running }) => running)
      .flatMap(({ words }) => words.map((word) => `${word.folded} ${word.sentence}`));
  const plain = folded('A cafe creme for the **watering can**. Then tea.');
  expect(folded('A café\ncrème for\nthe watering\ncan. Then tea.')).toEqual(plain);
  expect(folded('A cafe\u0301 cre\u0300me for the *watering* can. Then tea.')).toEqual(plain);
});

test('notes are read last, and only those that are referred to', () => {
  const passages = passagesFor({
    [CYCLE]: cycleText('First.[^a]\n\n[^a]: Noted.\n\n[^b]: Never.\n\nSecond.'),
    [TRAY]: itemText('Tray', 'tray', 'x'),
  });
  const texts = passages.filter(({ running, item }) => running && !item).map(({ text }) => text);
  expect(texts).not.toContain('Never.');
  expect(texts.indexOf('Second.')).toBeLessThan(passages.findIndex(({ text }) => text === 'Noted.'));
  expect(passages.find(({ text }) => text === 'Noted.')?.words[0]?.zone).toBe('body');
});

test('the cells of a table stand apart', () => {
  const passages = passagesFor({
    [CYCLE]: cycleText('| Plant | Pot |\n| --- | --- |\n| watering | can |'),
    [TRAY]: itemText('Tray', 'tray', 'x'),
  });
  expect(passages.filter(({ form }) => form === 'fact').map(({ text }) => text)).toContain('watering · can');
});
