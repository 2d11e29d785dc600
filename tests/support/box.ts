/** A small whole box for tests of rendering: one cycle, one item, everything optional left out. */
import type { Root } from 'mdast';
import type { Box, BoxSettings, Cycle, Item, Picture, RecordSource } from '../../src/model/box.ts';
import { inTextOf } from '../../src/model/in-text.ts';
import { caseOf } from './dictionary.ts';

const source: RecordSource = { file: 'box.md', fields: new Map(), text: '' };
const story = { file: 'box.md', tree: { type: 'root', children: [] } satisfies Root };

export const picture = (more: Partial<Picture> = {}): Picture => ({
  file: 'cycles/2026-03/photos/Mister 1.jpg',
  hash: 'a'.repeat(64),
  width: 3000,
  height: 2000,
  tint: '#8a9a7b',
  dominant: '#b87333',
  alt: 'A brass mister',
  ...more,
});

export const settings = (more: Partial<BoxSettings> = {}): BoxSettings => ({
  name: 'Sill & Sprig',
  url: 'https://sillandsprig.example/',
  lang: 'en-GB',
  timeZone: 'Europe/London',
  currency: 'GBP',
  description: 'A box for people with a window sill.',
  author: 'Ottilie Marsh',
  everyMonths: 1,
  palette: ['#8a9a7b'],
  calls: { join: { address: 'https://sillandsprig.example/join', text: 'Join' } },
  call: 'join',
  profiles: [],
  story,
  source,
  ...more,
});

const NAMED = { name: 'Brass plant mister', kind: 'plant mister', brand: 'Halloway Brassworks' };

export const item = (more: Partial<Item> = {}): Item => ({
  slug: 'plant-mister',
  cycle: '2026-03',
  number: 1,
  lead: true,
  ...NAMED,
  inText: inTextOf({ ...NAMED, ...more }, { lang: 'en-GB', caseOf, texts: [] }),
  also: [],
  description: 'A mister that fits the hand.',
  material: [],
  pictures: [],
  hazards: { categories: [], more: [] },
  story,
  source,
  ...more,
});

export const cycle = (more: Partial<Cycle> = {}): Cycle => ({
  id: '2026-03',
  year: 2026,
  month: 3,
  theme: 'First Sowings',
  title: 'A brass plant mister and what came with it',
  summary: 'What was in the March box.',
  address: '2026-03-first-sowings',
  shipped: '2026-03-03',
  reveal: Date.UTC(2026, 2, 19, 19),
  author: 'Ottilie Marsh',
  palette: ['#8a9a7b'],
  voices: [],
  items: [item()],
  story,
  source,
  ...more,
});

export const box = (more: Partial<Box> = {}): Box => ({
  settings: settings(),
  cycles: [cycle()],
  searches: [],
  ...more,
});
