/**
 * Twenty years of a box that never was: 240 cycles of five items, texts without photos. The same on every run.
 */
import { parseMarkdown } from '../../src/content/markdown.ts';
import type { Box, Cycle, Item } from '../../src/model/box.ts';
import { slugOf } from '../../src/model/slug.ts';
import { box, cycle, item, picture, settings } from '../support/box.ts';
import { COLOURS, capital, MATERIALS, QUALITIES, stockOfWords } from './words.ts';

export const CYCLES = 240;
const ITEMS = 5;
const FIRST_YEAR = 2006;

export const archive = (): Box => {
  const { random, pick, tailWord, sentence, story, makers, kinds } = stockOfWords(240);

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
