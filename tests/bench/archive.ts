/**
 * Twenty years of a box that never was: 240 cycles of five items, texts without photos. The sentences are the
 * demo's, with a share of their words exchanged for invented ones in a long tail, so that the vocabulary grows as
 * it does in real texts (Heaps 1978). The same on every run.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseMarkdown } from '../../src/content/markdown.ts';
import type { Box, Cycle, Item } from '../../src/model/box.ts';
import { slugOf } from '../../src/model/slug.ts';
import { box, cycle, item, picture, settings } from '../support/box.ts';

export const CYCLES = 240;
const ITEMS = 5;
const FIRST_YEAR = 2006;
/** Words of a story, as the demo's have on average. */
const STORY_WORDS = 220;
/** Invented words, and the share of long words that one takes the place of. */
const TAIL = 9000;
const EXCHANGED = 0.16;

const content = join(import.meta.dirname, '../../content/cycles');

/** mulberry32 (Tommy Ettinger 2017, public domain): numbers from 0 to 1. */
const randomFrom = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};

const STARTS = 'b bl br c ch cl cr d dr f fl g gr h j k l m n p pl pr r s sh sl sp st t th tr v w'.split(' ');
const VOWELS = 'a e i o u ai ea ee oa ou'.split(' ');
const ENDS = ['', '', 'b', 'ck', 'd', 'ft', 'l', 'll', 'm', 'n', 'nd', 'p', 'r', 'rn', 's', 'st', 't', 'x'];
const INFLECTIONS = ['', '', '', '', 's', 's', 'ing', 'ed', 'er', 'ly'];
const MATERIALS =
  'ash bamboo beeswax brass bronze canvas ceramic clay coir copper cork cotton enamel felt glass hemp iron jute leather linen oak pine rattan silver slate steel stoneware terracotta tin walnut willow wool zinc'.split(
    ' ',
  );
const COLOURS =
  'green|sage|cream|brown|black|white|blue|navy|red|terracotta|copper|gold|grey|pink|purple|yellow|orange|cream and red'.split(
    '|',
  );
const HEADS =
  'apron axe basket bell bench blanket board bottle bowl box bracket brush bucket candle can cap case chair clock cloche coaster crate cup dibber dish fork frame funnel glove hammer hanger hook jar jug kettle knife label ladle lamp lantern mallet mat mister mug napkin needle notebook pan peg pen pencil pillow pitcher planter plate pot pouch press rack rake ring rope saw scoop scissors shelf shovel sieve soap spade spoon stand stool string tape thermometer tin tongs tray trellis trowel trug twine vase wreath'.split(
    ' ',
  );
const QUALITIES =
  'bread bulb butter cake camp coffee cold draw fire fruit garden herb kitchen leaf milk mountain night paper plant potting rain river rope sea seed shell spice sprout stitch stone sugar tea travel tulip water weather window winter wood writing yarn'.split(
    ' ',
  );

const demoSentences = (): readonly string[] =>
  readdirSync(content, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.md'))
    .sort()
    .flatMap((path) =>
      readFileSync(join(content, path), 'utf8')
        .replace(/^---\n[\s\S]*?\n---\n/, '')
        .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
        .split(/(?<=[.!?])\s+/)
        .filter((sentence) => /^[A-Z][^|#:[\]*]+[.!?]$/.test(sentence)),
    );

export const archive = (): Box => {
  const random = randomFrom(240);
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
  const syllable = (): string => pick(STARTS) + pick(VOWELS) + pick(ENDS);
  const words = Array.from(
    { length: TAIL },
    () => syllable() + syllable() + (random() < 0.4 ? syllable() : ''),
  );
  // Zipf: the word of rank r comes up in proportion to 1 / r.
  const tailWord = (): string => (words[Math.floor(TAIL ** random()) - 1] as string) + pick(INFLECTIONS);
  const sentences = demoSentences();
  const sentence = (): string =>
    pick(sentences).replace(/\p{L}{5,}/gu, (word) => (random() < EXCHANGED ? tailWord() : word));
  const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

  const story = (): string => {
    let text = '';
    for (let count = 0; count < STORY_WORDS; ) {
      const next = sentence();
      count += next.split(' ').length;
      text += `${next}${random() < 0.25 ? '\n\n' : ' '}`;
    }
    return text;
  };
  const makers = Array.from(
    { length: 160 },
    () =>
      `${capital(syllable() + syllable())} ${pick(['Works', 'Pottery', 'Bindery', 'Forge', 'Mill', 'Gardens'])}`,
  );
  const kinds = Array.from({ length: 260 }, () => `${pick(QUALITIES)} ${pick(HEADS)}`);

  const itemOf = (id: string, number: number): Item => {
    const kind = pick(kinds);
    const material = pick(MATERIALS);
    const name = `${capital(material)} ${kind}, ${Math.ceil(random() * 50)} cm`;
    return item({
      slug: slugOf(`${number} ${name}`),
      cycle: id,
      number,
      lead: number === 1,
      name,
      kind,
      also: Array.from(
        { length: Math.floor(random() * 4) },
        () => `${pick([...QUALITIES, tailWord()])} ${kind.split(' ')[1]}`,
      ),
      brand: pick(makers),
      description: sentence(),
      material: random() < 0.3 ? [material, pick(MATERIALS)] : [material],
      ...(random() < 0.7 ? { color: pick(COLOURS) } : {}),
      pictures: [
        picture({ file: `cycles/${id}/photos/${number}.jpg`, hash: slugOf(id + number).padEnd(64, '0') }),
      ],
      ...(random() < 0.1
        ? {
            spare: {
              count: 3,
              price: { amount: '9.00', currency: 'GBP' },
              address: 'https://sillandsprig.example/spare',
            },
          }
        : {}),
      story: { file: `cycles/${id}/items/${number}.md`, tree: parseMarkdown(story()) },
    });
  };
  const cycles = Array.from({ length: CYCLES }, (_, i): Cycle => {
    const year = FIRST_YEAR + Math.floor(i / 12);
    const month = (i % 12) + 1;
    const id = `${year}-${String(month).padStart(2, '0')}`;
    const theme = `${capital(pick(QUALITIES))} & ${capital(tailWord())}`;
    return cycle({
      id,
      year,
      month,
      theme,
      address: slugOf(`${id} ${theme}`),
      reveal: Date.UTC(year, month - 1, 20),
      items: Array.from({ length: ITEMS }, (_, n) => itemOf(id, n + 1)),
    });
  });
  return box({ settings: settings(), cycles });
};
