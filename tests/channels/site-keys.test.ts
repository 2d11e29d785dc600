/**
 * Whether the data that the public channels plan stand for their files: what has the same data has the same bytes, and a
 * word changes the data of no more than shows it.
 */
import fc from 'fast-check';
import { visit } from 'unist-util-visit';
import { describe, expect, test } from 'vitest';
import { article } from '../../src/channels/article.ts';
import { assets } from '../../src/channels/assets.ts';
import { catalogue } from '../../src/channels/catalogue/index.ts';
import type { PublicInput } from '../../src/channels/channel.ts';
import { feeds } from '../../src/channels/feeds.ts';
import { home } from '../../src/channels/home.ts';
import { kinds } from '../../src/channels/kinds.ts';
import { notFound } from '../../src/channels/not-found.ts';
import { robots } from '../../src/channels/robots.ts';
import { sitemap } from '../../src/channels/sitemap.ts';
import { parseMarkdown } from '../../src/content/markdown.ts';
import type { Box, BoxSettings, Cycle, Item, Story } from '../../src/model/box.ts';
import { unsealed } from '../../src/model/seal.ts';
import { keyOf } from '../../src/pipeline/documents.ts';
import { digestOf } from '../../src/text/digest.ts';
import { box, cycle, item, picture, settings } from '../support/box.ts';
import { madeOf } from '../support/carried-out.ts';
import { publicInput } from '../support/demo-box.ts';

const channels = [article, home, catalogue, kinds, notFound, feeds, sitemap, robots, assets];

interface Kept {
  /** As a build has it. */
  readonly key: string;
  /** Content, pictures and findings as one text. */
  readonly made: string;
}

const base = await publicInput(box(), Date.UTC(2027, 0, 1));
const script = { path: 'search.en.js', bytes: Buffer.from('/* search */') };
const inputOf = (whole: Box, asOf: number): PublicInput => ({
  ...base,
  templates: { ...base.templates, scripts: [script] },
  box: unsealed(whole, asOf),
  asOf,
});

/** Everything that the channels make, with its key, by its name or path. */
const all = async (whole: Box, asOf: number): Promise<ReadonlyMap<string, Kept>> => {
  const input = inputOf(whole, asOf);
  const kept = new Map<string, Kept>();
  for (const channel of channels)
    for (const { planned, content, result } of await madeOf(channel.plan(input), input)) {
      const name = 'path' in planned ? planned.path : planned.name;
      const key = keyOf(name, planned, 'one program');
      // Pages of the same colours name the same sheet; else nothing is made twice.
      expect(kept.get(name)?.key ?? key, `one ${name}`).toBe(key);
      kept.set(name, { key, made: JSON.stringify([content, result]) });
    }
  return kept;
};

const MONTHS = ['2026-01', '2026-02', '2026-03', '2026-04', '2026-05'] as const;

/** A story whose links lead to items: `[words](2026-01/tray)`. */
const storyOf = (file: string, text: string): Story => {
  const tree = parseMarkdown(text);
  visit(tree, 'link', (node) => {
    const [to = '', slug] = node.url.split('/');
    node.data = { target: { cycle: to, ...(slug === undefined ? {} : { item: slug }) } };
  });
  visit(tree, 'image', (node) => {
    node.data = { picture: picture({ file: `cycles/${node.url}/photos/a.jpg`, alt: node.alt ?? '' }) };
  });
  return { file, tree, digest: digestOf(file, text) };
};

const itemsOf = (id: string): readonly Item[] => [
  item({
    cycle: id,
    slug: 'tray',
    kind: id === '2026-02' ? 'trays' : 'tray',
    name: `Tray of ${id}`,
    pictures: [picture({ file: `cycles/${id}/photos/tray.jpg` })],
    story: storyOf('tray.md', `A tray "for" seeds, unlike [the first](2026-01/tray).`),
  }),
  item({
    cycle: id,
    slug: 'thing',
    number: 2,
    lead: false,
    kind: `thing of ${id}`,
    name: `Thing of ${id}`,
    material: ['oak'],
    color: 'green',
    spare: { count: 2, price: { amount: '4.00', currency: 'GBP' }, address: 'https://shop.example/' },
    story: storyOf('thing.md', `Nothing but a thing, with <b>HTML</b>.\n\n![A view](${MONTHS[3]})`),
  }),
];

const whole = box({
  settings: settings({
    story: storyOf('box.md', 'A box; see [the newest](2026-05).'),
    subscription: { name: 'The box', price: { amount: '29.00', currency: 'GBP' } },
  }),
  cycles: MONTHS.map((id, i) =>
    cycle({
      id,
      month: i + 1,
      address: `${id}-a`,
      theme: `Theme ${id}`,
      reveal: Date.UTC(2026, i, 19),
      items: itemsOf(id),
      hero: picture({ file: `cycles/${id}/photos/hero.jpg` }),
      story: storyOf('cycle.md', `How it came to be, after [March](2026-03).\n\n![A look](${MONTHS[4]})`),
    }),
  ),
});

type Edit = (of: Box) => Box;
const ofCycle =
  (position: number, change: (one: Cycle) => Partial<Cycle>): Edit =>
  (of) => ({
    ...of,
    cycles: of.cycles.map((one, i) => (i === position ? { ...one, ...change(one) } : one)),
  });
const ofItem = (position: number, at: number, change: (one: Item) => Partial<Item>): Edit =>
  ofCycle(position, ({ items }) => ({
    items: items.map((one, i) => (i === at ? { ...one, ...change(one) } : one)),
  }));
const ofSettings =
  (change: Partial<BoxSettings>): Edit =>
  (of) => ({ ...of, settings: { ...of.settings, ...change } });

const word = fc.stringMatching(/^[a-z]{2,6}$/);
const position = fc.nat(MONTHS.length - 1);
const at = fc.nat(1);
const target = fc.tuple(fc.constantFrom(...MONTHS), fc.constantFrom('', '/tray', '/gone'));

const edit: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(position, at, word).map(([p, i, w]) => ofItem(p, i, () => ({ story: storyOf('item.md', w) }))),
  fc
    .tuple(position, at, target)
    .map(([p, i, to]) => ofItem(p, i, () => ({ story: storyOf('item.md', `a [link](${to.join('')})`) }))),
  fc.tuple(position, at, word).map(([p, i, w]) => ofItem(p, i, () => ({ name: w }))),
  fc.tuple(position, at, word).map(([p, i, w]) => ofItem(p, i, () => ({ description: w }))),
  fc.tuple(position, at, word).map(([p, i, w]) => ofItem(p, i, () => ({ material: [w] }))),
  fc.tuple(position, at, word).map(([p, i, w]) => ofItem(p, i, () => ({ color: w, brand: w }))),
  fc
    .tuple(position, at, fc.constantFrom('tray', 'mug', 'Thing'))
    .map(([p, i, kind]) => ofItem(p, i, () => ({ kind }))),
  fc
    .tuple(position, fc.nat(2))
    .map(([p, count]) =>
      ofItem(p, 1, ({ spare }) => (spare ? { spare: { ...spare, count, until: '2026-06-01' } } : {})),
    ),
  fc
    .tuple(position, word)
    .map(([p, w]) =>
      ofItem(p, 0, ({ pictures }) => ({ pictures: pictures.map((one) => ({ ...one, alt: w, caption: w })) })),
    ),
  fc.tuple(position, word).map(([p, w]) => ofCycle(p, () => ({ theme: w, address: w }))),
  fc.tuple(position, word).map(([p, w]) => ofCycle(p, () => ({ title: w, summary: w }))),
  fc.tuple(position, word).map(([p, w]) => ofCycle(p, () => ({ peek: { text: w } }))),
  fc.tuple(position, fc.constantFrom('spare', 'waitList')).map(([p, call]) => ofCycle(p, () => ({ call }))),
  position.map((p) => ofCycle(p, () => ({ updated: '2026-08-01' }))),
  position.map((p) => ofCycle(p, () => ({ palette: ['#803020'] }))),
  position.map((p) => ofCycle(p, () => ({ reveal: Date.UTC(2028, 0, 1) }))),
  position.map((p) => ofCycle(p, () => ({ hero: picture({ hash: 'c'.repeat(64) }) }))),
  position.map(
    (p): Edit =>
      (of) => ({ ...of, cycles: of.cycles.filter((_, i) => i !== p) }),
  ),
  word.map((w) => ofSettings({ name: w })),
  word.map((w) => ofSettings({ description: w, story: storyOf('box.md', w) })),
  fc.constant(ofSettings({ palette: ['#204060'], email: 'hello@sillandsprig.example' })),
  fc.constant(ofSettings({ logo: picture({ file: 'photos/logo.png' }) })),
  fc.constant(ofSettings({ calls: { spare: { address: 'https://x.example/', text: 'Spares' } } })),
  fc.constantFrom('article' as const, 'letter' as const).map((piece) =>
    ofSettings({
      calls: { join: { address: 'https://x.example/', text: 'Join', from: { [piece]: 'via=x' } } },
    }),
  ),
  fc.constant(ofSettings({ url: 'https://sillandsprig.example/box/' })),
);

const NOW = Date.UTC(2026, 5, 1);
const moment = fc.constantFrom(NOW, NOW, Date.UTC(2026, 3, 1), Date.UTC(2026, 5, 2, 12));

describe('the data of the public channels', () => {
  test('stand for the files: where they are the same after an edit, so is every byte', async () => {
    let same = 0;
    let other = 0;
    const first = await all(whole, NOW);
    await fc.assert(
      fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 2 }), moment, async (edits, asOf) => {
        const after = await all(
          edits.reduce((of, one) => one(of), whole),
          asOf,
        );
        for (const [name, { key, made }] of after) {
          const before = first.get(name);
          if (before?.key !== key) other += 1;
          else {
            same += 1;
            expect(made, name).toBe(before.made);
          }
        }
      }),
      { numRuns: 30 },
    );
    // Neither did nothing change, nor everything.
    expect(Math.min(same, other)).toBeGreaterThan(150);
  });

  const changedBy = async (change: Edit): Promise<readonly string[]> => {
    const [before, after] = await Promise.all([all(whole, NOW), all(change(whole), NOW)]);
    return [...after].flatMap(([name, { key }]) => (before.get(name)?.key === key ? [] : [name])).sort();
  };

  test('change with a word of one story in its article, the feeds and the index of the search alone', async () => {
    const change = ofItem(1, 1, () => ({ story: storyOf('thing.md', 'Another word.') }));
    expect(await changedBy(change)).toEqual([
      'boxes/2026-02-a.html',
      // It names the index by its hash; its lists stay as they are.
      'catalogue.html',
      'feed entry 2026-02',
      'feed.json',
      'feed.xml',
      'searched words of 2026-02',
      'stories-1',
    ]);
  });

  test('change with an item’s name where it is named, in later articles of its kind too', async () => {
    expect(await changedBy(ofItem(3, 0, () => ({ name: 'Better tray' })))).toEqual([
      'boxes/2026-04-a.html',
      'boxes/2026-05-a.html',
      'catalogue facets',
      'catalogue graph',
      'catalogue kinds',
      'catalogue section 2026-04',
      'catalogue.html',
      'feed entry 2026-04',
      'feed entry 2026-05',
      'feed.json',
      'feed.xml',
      'index.html',
      'kinds/tray.html',
      'names',
      'searched records of 2026-04',
      'searched words of 2026-04',
      'stories-1',
    ]);
  });

  test('change with a cycle’s colours in its article and their style sheet alone', async () => {
    expect(await changedBy(ofCycle(1, () => ({ palette: ['#803020'] })))).toEqual([
      'boxes/2026-02-a.html',
      'colours #803020',
      'feed entry 2026-02',
      'feed.json',
      'feed.xml',
    ]);
  });

  test('change with what the back room alone shows in nothing but the cycle’s own article', async () => {
    expect(await changedBy(ofCycle(0, () => ({ live: { hook: 'Hello' } })))).toEqual([
      'boxes/2026-01-a.html',
      'feed entry 2026-01',
      'feed.json',
      'feed.xml',
    ]);
  });
});
