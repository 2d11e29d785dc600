/** Content folders of any length that never were: text alone, six items a cycle. The same on every run. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { COLOURS, capital, MATERIALS, QUALITIES, stockOfWords } from './words.ts';

const ITEMS = 6;
const FIRST_YEAR = 1900;
/** By then every cycle of the longest box is revealed. */
export const AFTER_ALL = '2090-01-01';

const BOX = `---
name: Tin & Tansy
url: https://tinandtansy.example/
lang: en-GB
timeZone: Europe/London
currency: GBP
description: A box every month for people who dry, steep and store what they grow.
author: Nell Orchard
postalAddress: {streetAddress: 1 Mill Yard, addressLocality: Aldermouth, postalCode: AM9 4ZZ, addressCountry: GB}
unsubscribe: https://tinandtansy.example/stop
every: P1M
palette: ["#5f7358", "#b5714a"]
calls:
  join: {address: "https://tinandtansy.example/join", text: Join for the next box}
call: join
pieces: [article, letter]
---

Six things a month for the shelf by the kettle.
`;

/** YAML reads a JSON string as it stands. */
const quoted = (text: string): string => JSON.stringify(text);

/**
 * Writes the `content` folder of a box with so many cycles into `folder`; gives the cycles' names, oldest first.
 * `photosOf` names the photos of a cycle, counted from 0: of the whole box, then of each item, then more of the first.
 */
export const writeTextBox = (
  folder: string,
  cycles: number,
  photosOf: (cycle: number) => readonly string[] = () => [],
): readonly string[] => {
  const { random, pick, tailWord, sentence, story, makers, kinds } = stockOfWords(6);
  /** Nothing to be mended: a summary or description has to be of such a length. */
  const fittingSentence = (least: number, most: number): string => {
    for (;;) {
      const one = sentence();
      if (one.length >= least && one.length <= most) return one;
    }
  };
  const content = join(folder, 'content');
  const write = (path: string, text: string): void => {
    mkdirSync(join(content, path, '..'), { recursive: true });
    writeFileSync(join(content, path), text);
  };
  write('box.md', BOX);
  return Array.from({ length: cycles }, (_, i) => {
    const year = FIRST_YEAR + Math.floor(i / 12);
    const id = `${year}-${String((i % 12) + 1).padStart(2, '0')}`;
    const theme = `${capital(pick(QUALITIES))} & ${capital(tailWord())}`;
    const front = `theme: ${quoted(theme)}\nsummary: ${quoted(fittingSentence(70, 160))}\nshipped: ${id}-03\nreveal: ${id}-19T19:00`;
    const [whole, ...photos] = photosOf(i).map(
      (file) => `{file: ${file}, alt: A made picture with waves and grain}`,
    );
    const photo = whole ? `\nphoto: ${whole}` : '';
    write(`cycles/${id}/cycle.md`, `---\n${front}${photo}\n---\n\n${story()}\n`);
    for (let n = 1; n <= ITEMS; n += 1) {
      const kind = pick(kinds);
      const material = pick(MATERIALS);
      const fields = [
        `name: ${quoted(`${capital(material)} ${kind}, ${Math.ceil(random() * 50)} cm`)}`,
        `kind: ${kind}`,
        'category: none',
        n === 1 ? 'lead: true' : `goesWith: ${quoted(fittingSentence(20, 200))}`,
        `brand: ${pick(makers)}`,
        `description: ${quoted(fittingSentence(20, 200))}`,
        `material: [${material}]`,
        `color: ${pick(COLOURS)}`,
        `price: ${Math.ceil(random() * 30)}.50`,
      ];
      const own = photos.filter((_, at) => at === n - 1 || (n === 1 && at >= ITEMS));
      if (own.length > 0) fields.push(`image: [${own.join(', ')}]`);
      write(
        `cycles/${id}/items/0${n}-${kind.replace(' ', '-')}-${i * ITEMS + n}.md`,
        `---\n${fields.join('\n')}\n---\n\n${story()}\n`,
      );
    }
    return id;
  });
};
