/** The data of the pieces' papers: as much as they are made of, and no more. */
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { languageFor } from '../../src/analysis/language/language.ts';
import { backRoomIndex } from '../../src/channels/back-room-index/index.ts';
import type { PrivateInput } from '../../src/channels/channel.ts';
import { clipSheet } from '../../src/channels/clip/index.ts';
import { invitation } from '../../src/channels/invitation/index.ts';
import { letter, letterPictures } from '../../src/channels/letter/index.ts';
import { runSheet } from '../../src/channels/live/index.ts';
import { parseMarkdown } from '../../src/content/markdown.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import type { Box, BoxSettings, Cycle, Item } from '../../src/model/box.ts';
import { pieceOrder } from '../../src/model/pieces.ts';
import { unsealed } from '../../src/model/seal.ts';
import { completenessOf } from '../../src/pipeline/completeness/completeness.ts';
import { keyOf } from '../../src/pipeline/documents.ts';
import { compileTemplates } from '../../src/render/templates.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { box, cycle, item, picture, settings } from '../support/box.ts';
import { carriedOut } from '../support/carried-out.ts';
import { shareOf } from '../support/share-of.ts';

const { files, assets } = readTemplates({ own: join(import.meta.dirname, '../../templates') });
const templates = compileTemplates(files, assets).value;
const language = await languageFor('en-GB');
const wording = wordingFor('en-GB');
const NOW = Date.UTC(2026, 1, 27);

const story = (file: string, text: string) => ({ file, tree: parseMarkdown(text) });

const itemOf = (month: number, number: number): Item =>
  item({
    slug: `thing-${number}`,
    cycle: `2026-0${month}`,
    number,
    lead: number === 1,
    name: `Oak ${['stool', 'ladle', 'comb'][number - 1]}, ${10 + month} cm`,
    kind: ['stool', 'ladle', 'comb'][number - 1] ?? '',
    description: 'It is made of oak. It lasts.',
    pictures: [picture({ file: `cycles/2026-0${month}/photos/${number}.jpg`, hash: `${month}${number}` })],
    ...(number === 1 ? {} : { goesWith: 'It lies beside the stool.' }),
    hazards: { categories: number === 2 ? ['blade'] : [], more: [] },
    story: story(`cycles/2026-0${month}/items/0${number}.md`, 'Roz made it in May. She told nobody.'),
  });

/** Three months, of which the last is to come. */
const whole = box({
  settings: settings({
    pieces: ['article', 'letter', 'live', 'clip', 'invitation'],
    email: 'hello@oak.example',
    calls: {
      join: { address: 'https://oak.example/join', text: 'Join', places: 4 },
      waitList: { address: 'https://oak.example/wait', text: 'Wait' },
    },
  }),
  cycles: [1, 2, 3].map((month) =>
    cycle({
      id: `2026-0${month}`,
      month,
      theme: `Theme ${month}`,
      address: `2026-0${month}-theme`,
      shipped: `2026-0${month}-03`,
      reveal: Date.UTC(2026, month - 1, 19, 19),
      hero: picture({ file: `cycles/2026-0${month}/photos/hero.jpg`, hash: `h${month}` }),
      peek: { text: 'Next comes something round. Clear a shelf.' },
      replay: { address: `https://video.example/${month}`, minutes: 20, beats: [{ name: 'hook', at: 0 }] },
      items: [1, 2, 3].map((number) => itemOf(month, number)),
      story: story(`cycles/2026-0${month}/cycle.md`, 'We looked for oak. The first plank cracked.'),
    }),
  ),
});

const onCycle = (given: Box, at: number, change: (one: Cycle) => Partial<Cycle>): Box => ({
  ...given,
  cycles: given.cycles.map((one, i) => (i === at ? { ...one, ...change(one) } : one)),
});
const onItem = (given: Box, at: number, n: number, change: (one: Item) => Partial<Item>): Box =>
  onCycle(given, at, ({ items }) => ({
    items: items.map((one, i) => (i === n ? { ...one, ...change(one) } : one)),
  }));
const onSettings = (given: Box, more: Partial<BoxSettings>): Box => ({
  ...given,
  settings: { ...given.settings, ...more },
});

type Edit = (given: Box, at: number, n: number, word: string) => Box;

const edits: Readonly<Record<string, Edit>> = {
  'an item’s story': (given, at, n, word) =>
    onItem(given, at, n, ({ story: { file } }) => ({
      story: story(file, `Roz ${word} it. She told nobody.`),
    })),
  'a cycle’s story': (given, at, _, word) =>
    onCycle(given, at, ({ story: { file } }) => ({ story: story(file, `We ${word} for oak. It cracked.`) })),
  'an item’s name': (given, at, n, word) => onItem(given, at, n, () => ({ name: `Oak ${word}` })),
  'a description': (given, at, n, word) => onItem(given, at, n, () => ({ description: `It is ${word}.` })),
  'how it goes with the lead item': (given, at, n, word) =>
    onItem(given, at, n, () => ({ goesWith: `${word}.` })),
  'a caution': (given, at, n, word) =>
    onItem(given, at, n, () => ({ hazards: { categories: ['candle'], more: [`Mind the ${word}.`] } })),
  'a photo': (given, at, n, word) => onItem(given, at, n, () => ({ pictures: [picture({ hash: word })] })),
  'a spare piece': (given, at, n) =>
    onItem(given, at, n, () => ({
      spare: { count: 2, price: { amount: '9.00', currency: 'GBP' }, address: 'https://oak.example/s' },
    })),
  'a theme': (given, at, _, word) => onCycle(given, at, () => ({ theme: word })),
  'a palette': (given, at) => onCycle(given, at, () => ({ palette: ['#334455'] })),
  'a reveal': (given, at) => onCycle(given, at, ({ reveal = 0 }) => ({ reveal: reveal + 3_600_000 })),
  'a reveal that waits': (given, at) => onCycle(given, at, () => ({ reveal: undefined })),
  'a peek': (given, at, _, word) => onCycle(given, at, () => ({ peek: { text: `A ${word}. Soon.` } })),
  'the hook of an invitation': (given, at, _, word) =>
    onCycle(given, at, () => ({ invitation: { hook: `Come for the ${word}.` } })),
  'words for the live': (given, at, _, word) =>
    onCycle(given, at, () => ({ live: { hook: `Look: ${word}!` } })),
  'chapters of the recording': (given, at) =>
    onCycle(given, at, () => ({
      replay: { address: 'https://video.example/x', beats: [{ name: 'call', at: 9 }] },
    })),
  'the day a piece was made': (given, at) => onCycle(given, at, () => ({ made: { letter: '2026-02-20' } })),
  'a voice': (given, at, _, word) =>
    onCycle(given, at, () => ({ voices: [{ text: word, name: 'Roz', consent: '2026-02-20', given: true }] })),
  'places left': (given) =>
    onSettings(given, {
      calls: {
        ...given.settings.calls,
        join: { address: 'https://oak.example/join', text: 'Join', places: 0 },
      },
    }),
  'the mark of a piece in a call': (given, at, n, word) =>
    onSettings(given, {
      calls: {
        ...given.settings.calls,
        join: {
          address: 'https://oak.example/join',
          text: 'Join',
          places: 4,
          from: { [pieceOrder[(at + n) % pieceOrder.length] ?? 'letter']: `via=${word}` },
        },
      },
    }),
  'the box’s name': (given, _at, _n, word) => onSettings(given, { name: word }),
  'the pace': (given) => onSettings(given, { pace: 120 }),
  'a cycle more': (given) => ({
    ...given,
    cycles: [
      ...given.cycles,
      cycle({ id: '2026-04', month: 4, reveal: Date.UTC(2026, 3, 19), address: 'b' }),
    ],
  }),
  'a cycle less': (given, at) => ({ ...given, cycles: given.cycles.filter((_, i) => i !== at) }),
};

interface Planned {
  /** As a build has it. */
  readonly key: string;
  /** Content and findings as one text. */
  readonly made: () => Promise<string>;
}

const privateInput = (given: Box, asOf: number): PrivateInput => ({
  ...{ box: given, asOf, templates, language, wording },
  faces: { digest: 'the faces', lacking: async () => [] },
  ...{ proofs: new Map(), parcels: new Map(), photos: new Map() },
});

/** Every document of the pieces as of a moment, by path. The first page is told of no finished file. */
const plannedFor = async (given: Box, asOf: number): Promise<ReadonlyMap<string, Planned>> => {
  const input = privateInput(given, asOf);
  const papers = [letter, runSheet, clipSheet, invitation].flatMap(({ plan }) => plan(input).documents);
  const places = papers.map(({ path }) => ({ where: 'backroom' as const, path }));
  const reading = async (): Promise<undefined> => undefined;
  const { whole: completeness } = await completenessOf({ box: given, asOf, wording, reading });
  const index = backRoomIndex.plan({ ...input, files: places, completeness }).documents;
  return new Map(
    [...papers, ...index].map((planned) => [
      planned.path,
      {
        key: keyOf(planned.path, planned, 'one program'),
        made: async () => {
          expect(planned.of ?? []).toEqual([]);
          const { content, diagnostics = [] } = await planned.make(input, []);
          return `${content}\n${JSON.stringify(diagnostics)}`;
        },
      },
    ]),
  );
};

const before = await plannedFor(whole, NOW);
const madeBefore = new Map(
  await Promise.all([...before].map(async ([path, { made }]) => [path, await made()] as const)),
);

const changedBetween = (now: ReadonlyMap<string, Planned>): readonly string[] =>
  [...now].filter(([path, { key }]) => before.get(path)?.key !== key).map(([path]) => path);

const word = fc.constantFrom('sanded', 'a comb', 'oak & ash', '“quoted”', 'stool');

test('papers of the same data have the same bytes and findings, whatever else of the box was changed', async () => {
  const anyEdit = fc.record({
    name: fc.constantFrom(...Object.keys(edits)),
    at: fc.nat(2),
    n: fc.nat(2),
    word,
    later: fc.constantFrom(0, 0, 0, 86_400_000, 40 * 86_400_000),
  });
  let kept = 0;
  await fc.assert(
    fc.asyncProperty(anyEdit, async ({ name, at, n, word: written, later }) => {
      const edited = edits[name]?.(whole, at, n, written) ?? whole;
      for (const [path, { key, made }] of await plannedFor(edited, NOW + later)) {
        if (before.get(path)?.key !== key) continue;
        kept += 1;
        expect({ path, made: await made() }).toEqual({ path, made: madeBefore.get(path) });
      }
    }),
    { numRuns: shareOf(60) },
  );
  expect(kept).toBeGreaterThan(shareOf(300));
});

describe('what is made anew', () => {
  const papersOf = (id: string): readonly string[] =>
    [...before.keys()].filter((path) => path.startsWith(`${id}/`) && !path.endsWith('chapters.vtt'));

  test.each([
    ['a word in a cycle’s story', 'a cycle’s story', 1],
    ['a word in an item’s story', 'an item’s story', 0],
    ['a caution of the cycle to come', 'words for the live', 2],
  ])('for %s are the papers of that cycle alone', async (_, name, at) => {
    const now = await plannedFor(edits[name]?.(whole, at, 1, 'sanded') ?? whole, NOW);
    expect([...changedBetween(now)].sort()).toEqual([...papersOf(`2026-0${at + 1}`)].sort());
  });

  test('for another moment, before which nothing was revealed or sold, is the first page alone', async () => {
    expect(changedBetween(await plannedFor(whole, NOW + 86_400_000))).toEqual(['index.html']);
  });

  test('for a peek are its own cycle’s papers and the invitation that begins with it', async () => {
    const now = await plannedFor(edits['a peek']?.(whole, 1, 0, 'comb') ?? whole, NOW);
    const invited = ['2026-03/invitation.html', '2026-03/invitation.ics'];
    expect([...changedBetween(now)].sort()).toEqual([...papersOf('2026-02'), ...invited].sort());
  });
});

test('pictures of letters are known without making a letter, and are those that the letters name', async () => {
  // Every cycle is shown by then: a sealed one's pictures are not published.
  const input = privateInput(whole, Date.UTC(2026, 3, 1));
  const { pictures = [] } = letterPictures.plan({ ...input, box: unsealed(whole, input.asOf) });
  const { outputs } = await carriedOut(letter, input);
  const named = outputs.flatMap((output) =>
    'text' in output && output.path.endsWith('letter.html')
      ? [...output.text.matchAll(/src="https:\/\/sillandsprig\.example\/([^"]+)"/g)].map(([, path]) => path)
      : [],
  );
  expect(named.length).toBe(12);
  expect(new Set(named)).toEqual(new Set(pictures.map(({ path }) => encodeURI(path))));
});
