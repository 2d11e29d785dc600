/**
 * Words for boxes that never were. The sentences are the demo's, with a share of their words exchanged for
 * invented ones in a long tail, so that the vocabulary grows as it does in real texts (Heaps 1978).
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Words of a story, as the demo's have on average. */
const STORY_WORDS = 220;
/** Invented words, and the share of long words that one takes the place of. */
const TAIL = 9000;
const EXCHANGED = 0.16;

const content = join(import.meta.dirname, '../../content/cycles');

/** mulberry32 (Tommy Ettinger 2017, public domain): numbers from 0 to 1, the same for the same seed. */
export const randomFrom = (seed: number): (() => number) => {
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
export const MATERIALS =
  'ash bamboo beeswax brass bronze canvas ceramic clay coir copper cork cotton enamel felt glass hemp iron jute leather linen oak pine rattan silver slate steel stoneware terracotta tin walnut willow wool zinc'.split(
    ' ',
  );
export const COLOURS =
  'green|sage|cream|brown|black|white|blue|navy|red|terracotta|copper|gold|grey|pink|purple|yellow|orange|cream and red'.split(
    '|',
  );
const HEADS =
  'apron axe basket bell bench blanket board bottle bowl box bracket brush bucket candle can cap case chair clock cloche coaster crate cup dibber dish fork frame funnel glove hammer hanger hook jar jug kettle knife label ladle lamp lantern mallet mat mister mug napkin needle notebook pan peg pen pencil pillow pitcher planter plate pot pouch press rack rake ring rope saw scoop scissors shelf shovel sieve soap spade spoon stand stool string tape thermometer tin tongs tray trellis trowel trug twine vase wreath'.split(
    ' ',
  );
export const QUALITIES =
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

export const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** A stock of words, kinds and makers, and ways to pick of them; the same for the same seed. */
export const stockOfWords = (seed: number) => {
  const random = randomFrom(seed);
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
  return { random, pick, tailWord, sentence, story, makers, kinds };
};
