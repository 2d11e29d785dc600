import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { cards as channel } from '../../../src/channels/cards/index.ts';
import type { Box, Item } from '../../../src/model/box.ts';
import { callFor, saidAddress } from '../../../src/model/calls.ts';
import { cautionsOf, isDanger } from '../../../src/model/cautions.ts';
import type { Drawing } from '../../../src/render/drawing.ts';
import { plainWords } from '../../../src/render/plain-words.ts';
import { wordingFor } from '../../../src/wording/wording.ts';
import { box as boxWith, cycle, item, picture, settings } from '../../support/box.ts';
import { carriedOut } from '../../support/carried-out.ts';
import { demoBox, privateInput } from '../../support/demo-box.ts';

const NOW = Date.UTC(2026, 2, 27, 12);
const demo = await demoBox(join(import.meta.dirname, '../../../.lidlore'));
const input = await privateInput(demo, NOW);

interface MadeCards {
  readonly texts: ReadonlyMap<string, string>;
  readonly drawings: ReadonlyMap<string, Drawing>;
  readonly findings: readonly { readonly rule: string; readonly message: string }[];
}

const made = async (box: Box, lacking: readonly string[] = []): Promise<MadeCards> => {
  const faces = { digest: 'the faces', lacking: async () => lacking };
  const { outputs, diagnostics } = await carriedOut(channel, { ...input, faces, box });
  return {
    texts: new Map(outputs.flatMap((one) => ('text' in one ? [[one.path, one.text] as const] : []))),
    drawings: new Map(
      outputs.flatMap((one) =>
        'picture' in one && 'drawing' in one.picture ? [[one.path, one.picture.drawing] as const] : [],
      ),
    ),
    findings: diagnostics,
  };
};

const withCards = (...items: readonly Item[]): Box =>
  boxWith({ settings: settings({ pieces: ['cards'] }), cycles: [cycle({ items, wholeBox: picture() })] });

const { texts, drawings } = await made(demo);
const foldersOf = (paths: Iterable<string>): readonly string[] => [
  ...new Set([...paths].map((path) => path.slice(0, 7))),
];

describe('the cards', () => {
  test('are made for what is to come and the last three that were shown, and of a past cycle that asks for them', async () => {
    expect(foldersOf(texts.keys())).toEqual(['2026-01', '2026-02', '2026-03', '2026-04']);
    const cycles = demo.cycles.map((one) =>
      one.id === '2025-06' ? { ...one, cards: { layout: 'broadside' as const } } : one,
    );
    const asked = await made({ ...demo, cycles });
    expect(foldersOf(asked.texts.keys())).toContain('2025-06');
    expect(asked.drawings.get('2025-06/cards/01.jpg')?.layout).toBe('broadside');
    expect(asked.drawings.get('2026-03/cards/01.jpg')?.layout).toBe('plate');
  });

  test('are not made by a box that does not choose them', async () => {
    const box = { ...demo, settings: { ...demo.settings, pieces: ['article' as const] } };
    expect((await made(box)).texts.size).toBe(0);
  });

  test('are named by no paper unless they are there', () => {
    for (const [path, text] of texts) {
      const named = [...text.matchAll(/(?:src|href)="(cards\/[^"]+)"/g)].map((found) => found[1]);
      if (path.endsWith('.html')) expect(named.length).toBeGreaterThan(6);
      for (const file of named) expect(drawings.has(`${path.slice(0, 7)}/${file}`)).toBe(true);
    }
  });

  test('begin with the lead item alone and end with the whole box, the call and its address', () => {
    for (const { id, items, theme } of demo.cycles.slice(-4)) {
      const tall = [...drawings].filter(([path]) => new RegExp(`^${id}/cards/\\d+\\.jpg$`).test(path));
      const [first, last] = [tall[0]?.[1], tall.at(-1)?.[1]];
      expect(first?.entries.map(({ name }) => name)).toEqual([items[0]?.name]);
      expect(last?.entries.map(({ name }) => name)).toEqual([theme]);
      const found = demo.cycles.find((one) => one.id === id);
      const call = callFor(demo, found, NOW);
      expect(last?.call?.address).toBe(saidAddress(call?.address ?? ''));
      expect(tall.slice(0, -1).every(([, drawing]) => drawing.call === undefined)).toBe(true);
    }
  });

  test('show every item once, and its cautions on its own card in whole', () => {
    const { cautions } = wordingFor('en-GB');
    for (const { id, items } of demo.cycles.slice(-4))
      for (const shape of ['', 'pin-', 'square-']) {
        const of = new RegExp(`^${id}/cards/${shape}\\d+\\.jpg$`);
        const entries = [...drawings].filter(([path]) => of.test(path)).flatMap(([, one]) => one.entries);
        for (const one of items) {
          const own = entries.filter(({ name }) => plainWords(name) === plainWords(one.name));
          expect(own).toHaveLength(1);
          const said = plainWords(own.flatMap((entry) => entry.cautions.map(({ text }) => text)).join(' '));
          for (const caution of cautionsOf(one).filter(isDanger))
            for (const line of cautions.text(caution).lines) expect(said).toContain(plainWords(line));
        }
      }
  });

  test('are told in both papers: every item, every danger, the call and its address', () => {
    const { cautions } = wordingFor('en-GB');
    for (const one of demo.cycles.slice(-4)) {
      const call = callFor(demo, one, NOW);
      const sought = [
        ...one.items.map(({ name }) => name),
        ...one.items.flatMap((thing) =>
          cautionsOf(thing)
            .filter(isDanger)
            .flatMap((caution) => cautions.text(caution).lines),
        ),
        call?.text ?? '',
        call?.address ?? '',
      ];
      for (const end of ['cards.html', 'cards.txt']) {
        const words = plainWords(texts.get(`${one.id}/${end}`) ?? '', end.endsWith('.html'));
        for (const text of sought) expect(words).toContain(plainWords(text));
      }
    }
  });
});

describe('a finding', () => {
  test('says which size is wanted, for a picture that is too small or too wide', async () => {
    const { findings } = await made(
      withCards(
        item({ pictures: [picture({ width: 400, height: 400 })] }),
        item({ slug: 'two', lead: false, pictures: [picture({ width: 6000, height: 1500 })] }),
        item({ slug: 'three', lead: false, pictures: [picture({ width: 1200, height: 1500 })] }),
      ),
    );
    const found = findings.filter(({ rule }) => rule === 'card-picture');
    expect(found.map(({ message }) => /\d+ × \d+/.exec(message)?.[0])).toEqual(['400 × 400', '6000 × 1500']);
    expect(found[0]?.message).toContain('expected 1080 × 1350 or more');
  });

  test('names the letters that no face has', async () => {
    const { findings } = await made(withCards(item({ name: 'ߊߓߌ mister' })), ['ߊ', 'ߓ']);
    expect(findings.find(({ rule }) => rule === 'card-letters')?.message).toContain('ߊ ߓ');
  });

  test('asks for fewer words where a card would be too full to be read', async () => {
    const hazards = { categories: [], more: ['Keep it dry and out of the sun. '.repeat(25)] };
    const { findings } = await made(withCards(item({ hazards })));
    expect(findings.map(({ rule }) => rule)).toContain('card-crowded');
    expect((await made(withCards(item()))).findings).toEqual([]);
  });
});
