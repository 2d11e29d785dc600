import { join } from 'node:path';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { passagesOf, surroundingsOf } from '../../src/analysis/coverage/measure-coverage.ts';
import { namingTextsOf } from '../../src/analysis/coverage/strangers/naming-texts.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import { loadTagger } from '../../src/analysis/language/tagger.ts';
import { locationText } from '../../src/diagnostics/diagnostic.ts';
import type { Box, Cycle } from '../../src/model/box.ts';
import { strangerFindings, strangersOf } from '../../src/pipeline/stranger-findings.ts';
import type { Memory } from '../../src/text/memory.ts';
import type { WordNet } from '../../src/text/wordnet.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { BOX, boxOf, cycleText, itemText, NOW } from '../analysis/article.ts';
import { type Files, siteOf } from '../support/built.ts';
import { demoBox } from '../support/demo-box.ts';
import { wordnet } from '../support/dictionary.ts';
import { shortMemory } from '../support/short-memory.ts';
import { cautionText } from '../support/telling-input.ts';

vi.mock('../../src/analysis/language/tagger.ts', async (original) => {
  const tagger = await original<typeof import('../../src/analysis/language/tagger.ts')>();
  return { ...tagger, loadTagger: vi.fn(tagger.loadTagger) };
});

const CYCLE = 'cycles/2026-03/cycle.md';
const TRAY = 'cycles/2026-03/items/01-seed-tray.md';
const OPENING = 'It came in March.';
const NAMED = {
  title: 'A seed tray and a brass whistle',
  summary: 'A pine seed tray, a steel bench scraper and how to sow a windowsill with them.',
};

const filesWith = (
  named: Readonly<Record<string, unknown>>,
  opening = OPENING,
  item: Readonly<Record<string, unknown>> = {},
): Files => ({
  [CYCLE]: cycleText(opening, named),
  [TRAY]: itemText('Seed tray', 'seed tray', 'Fill it.', { lead: true, ...item }),
});

interface Asked {
  readonly memory?: Memory;
  readonly dictionary?: WordNet;
}

const foundIn = async (
  box: Box,
  cycle: Cycle | undefined = box.cycles[0],
  { memory = shortMemory(), dictionary = wordnet }: Asked = {},
) => {
  if (!cycle) throw new Error('Expected a cycle');
  const language = await languageFor(box.settings.lang);
  const strangers = await strangersOf({
    box,
    cycle,
    passages: passagesOf(cycle, surroundingsOf(box, cycle, NOW), language, cautionText),
    tools: { language },
    program: 'this one',
    memory,
    wordnet: dictionary,
  });
  return strangerFindings(strangers, wordingFor(box.settings.lang));
};

const placesIn = async (files: Files, asked: Asked = {}): Promise<readonly string[]> =>
  (await foundIn(boxOf(files), undefined, asked)).map(
    ({ location, message }) => `${locationText(location)} ${/`(.*?)`/.exec(message)?.[1]}`,
  );

/** A dictionary that nobody may ask. */
const closed: WordNet = {
  senses: (lemma) => {
    throw new Error(`Expected nobody to look up ${lemma}`);
  },
  at: (offset) => {
    throw new Error(`Expected nobody to look at ${offset}`);
  },
};

const BOTH = [`${CYCLE}:3:27 brass whistle`, `${CYCLE}:4:31 steel bench scraper`];

afterEach(() => {
  vi.mocked(loadTagger).mockClear();
});

describe('a thing that is named and not in the box', () => {
  test('is a finding at its place, in the title and in the summary', async () => {
    const box = boxOf(filesWith(NAMED));
    expect(await placesIn(filesWith(NAMED))).toEqual(BOTH);
    expect(await foundIn(box)).toMatchObject([
      { weight: 'look at', rule: 'not-in-the-box', message: expect.stringContaining('in the title') },
      { weight: 'look at', rule: 'not-in-the-box', message: expect.stringContaining('in the summary') },
    ]);
  });

  test('is found on its own line where a summary runs over several', async () => {
    const folded = filesWith({})[CYCLE]?.replace(
      /^summary: .*$/m,
      'summary: >-\n  A pine seed tray,\n  and a steel bench scraper.',
    );
    expect(await placesIn({ ...filesWith({}), [CYCLE]: folded ?? '' })).toEqual([
      `${CYCLE}:6:9 steel bench scraper`,
    ]);
  });

  test.each([
    ['a story', filesWith(NAMED, 'The scraper came with a whistle.')],
    ['another name', filesWith(NAMED, OPENING, { also: ['whistle', 'bench scraper'] })],
    [
      'a material',
      filesWith({ summary: 'A seed tray and a beech plank.' }, OPENING, { material: ['plank'] }),
    ],
    ['the name of the box', filesWith({ summary: 'Sill & Sprig: a seed tray.' })],
    ['an item’s care', filesWith(NAMED, OPENING, { care: 'Wipe the scraper and the whistle.' })],
  ])('is none where %s has it', async (_, files) => {
    expect(await placesIn(files)).toEqual([]);
  });

  test('is looked for in no title that was made of the items’ names', () => {
    const files = filesWith({});
    const untitled = { ...files, [CYCLE]: files[CYCLE]?.replace(/^title: .*\n/m, '') ?? '' };
    const fieldsIn = ({ cycles: [cycle] }: Box) => cycle && namingTextsOf(cycle).map(({ field }) => field);
    expect(fieldsIn(boxOf(files))).toEqual(['title', 'summary']);
    expect(fieldsIn(boxOf(untitled))).toEqual(['summary']);
  });

  test('is asked for in English alone', async () => {
    const inGerman = { ...filesWith(NAMED), 'box.md': BOX.replace('lang: en-GB', 'lang: de-AT') };
    expect(await placesIn(inGerman, { dictionary: closed })).toEqual([]);
    expect(loadTagger).not.toHaveBeenCalled();
  });
});

describe('what was found is remembered', () => {
  test('and is the same without the tagger and the dictionary', async () => {
    const memory = shortMemory();
    const cold = await placesIn(filesWith(NAMED), { memory });
    expect(loadTagger).toHaveBeenCalled();
    vi.mocked(loadTagger).mockClear();
    expect(await placesIn(filesWith(NAMED), { memory, dictionary: closed })).toEqual(cold);
    expect(cold).toEqual(BOTH);
    expect(loadTagger).not.toHaveBeenCalled();
  });

  test('so that an edit of a story asks neither', async () => {
    const memory = shortMemory();
    await placesIn(filesWith(NAMED), { memory });
    vi.mocked(loadTagger).mockClear();
    const edited = filesWith(NAMED, 'It came in the rain, by the way.');
    expect(await placesIn(edited, { memory, dictionary: closed })).toEqual(BOTH);
    expect(loadTagger).not.toHaveBeenCalled();
  });

  test('and does not outlive a story that tells of the thing, or told of it', async () => {
    const memory = shortMemory();
    await placesIn(filesWith(NAMED), { memory });
    expect(await placesIn(filesWith(NAMED, 'The scraper is new.'), { memory })).toEqual(BOTH.slice(0, 1));
    expect(await placesIn(filesWith(NAMED), { memory })).toEqual(BOTH);
  });

  test('nor a summary or a record that is written otherwise', async () => {
    const memory = shortMemory();
    await placesIn(filesWith(NAMED), { memory });
    const summary = 'A seed tray and a silver spoon.';
    expect(await placesIn(filesWith({ ...NAMED, summary }), { memory })).toEqual([
      BOTH[0],
      `${CYCLE}:4:29 silver spoon`,
    ]);
    expect(await placesIn(filesWith(NAMED, OPENING, { also: ['whistle'] }), { memory })).toEqual([BOTH[1]]);
    expect(await placesIn(filesWith(NAMED), { memory })).toEqual(BOTH);
  });

  test('nor a name that makes a broader word of the thing', async () => {
    const memory = shortMemory();
    const summary = 'A seed tray and a brass timepiece.';
    const place = `${CYCLE}:4:29 brass timepiece`;
    expect(await placesIn(filesWith({ summary }), { memory })).toEqual([place]);
    expect(await placesIn(filesWith({ summary }, OPENING, { also: ['hourglass'] }), { memory })).toEqual([]);
  });
});

describe('in the demo', () => {
  test('no cycle names a stranger, and each would be found out if it did', async () => {
    const box = await demoBox(join(import.meta.dirname, '../../.lidlore'));
    expect(box.cycles).toHaveLength(13);
    for (const cycle of box.cycles) {
      expect(await foundIn(box, cycle), cycle.id).toEqual([]);
      const summary = `A brass trumpet. ${cycle.summary}`;
      const text = cycle.source.text.replace(/^summary: "?/m, '$&A brass trumpet. ');
      const strange = { ...cycle, summary, source: { ...cycle.source, text, digest: cycle.id } };
      expect(
        (await foundIn(box, strange)).map(({ message }) => message),
        cycle.id,
      ).toEqual([expect.stringContaining('`brass trumpet`')]);
    }
  });
});

test('a sealed cycle’s findings stay in the back room', async () => {
  const files = { 'box.md': BOX, ...filesWith(NAMED) };
  const { site, backroom, diagnostics } = await siteOf(files, Date.UTC(2026, 2, 10));
  expect(diagnostics.filter(({ rule }) => rule === 'not-in-the-box')).toHaveLength(2);
  expect(backroom.get('2026-03/proof.html')).toContain('<code>steel bench scraper</code>');
  expect(site.size).toBeGreaterThan(3);
  for (const [path, text] of site) expect(text, path).not.toMatch(/scraper|whistle/);
});
