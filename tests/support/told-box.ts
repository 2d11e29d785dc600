/** Random boxes in which every text that an author can write bears a mark of its own, with where each mark must turn up. */
import { stringify } from 'yaml';
import { photo } from '../io/photos.ts';
import type { Chance } from './seeded.ts';

/** A text that was written somewhere, by its mark. */
export interface Written {
  readonly mark: string;
  /** Where it was written, for people: `2025-03 items/01 care`. */
  readonly field: string;
  /** The page or the papers that have to say it; a finding may say it instead. */
  readonly where: 'site' | 'backroom';
}

export interface ToldBox {
  readonly files: Readonly<Record<string, string | Uint8Array>>;
  readonly written: readonly Written[];
}

const BOX = {
  name: 'Crumb & Co',
  url: 'https://crumb.example/',
  lang: 'en-GB',
  timeZone: 'Europe/London',
  currency: 'GBP',
  description: 'A small box of baking tools, with the story of each.',
  author: 'Ada Crumb',
  every: 'P1M',
  pieces: ['article', 'invitation', 'live', 'letter', 'clip'],
  calls: {
    join: { address: 'https://crumb.example/join', text: 'Join for the next box' },
    spare: { address: 'https://crumb.example/spare', text: 'See what is left' },
  },
  call: 'join',
};

/** Words that are in no dictionary: consonants and vowels in turn, so that nothing takes them apart or bends them. */
const wordOf = (number: number): string => {
  let word = 'zq';
  for (let rest = number + 20; rest > 0; rest = Math.floor(rest / 20))
    word += `${'aeiou'[rest % 5]}${'bdgk'[Math.floor(rest / 5) % 4]}`;
  return `${word}ox`;
};

const MONTHS = Array.from({ length: 12 }, (_, i) => `2025-${String(i + 1).padStart(2, '0')}`);

const record = (fields: object, body: string): string => `---\n${stringify(fields)}---\n\n${body}\n`;

/**
 * A year of cycles, each with one to six things, each field there or not as chance has it. An invitation has no words of
 * its own here, because there is none to a reveal that is past.
 */
export const toldBox = async ({ share, below, one }: Chance): Promise<ToldBox> => {
  const files: Record<string, string | Uint8Array> = {};
  const written: Written[] = [];
  const picture = await photo(400, 300);

  for (const month of MONTHS) {
    const folder = `content/cycles/${month}`;
    const say = (field: string, where: Written['where'] = 'site'): string => {
      const mark = wordOf(written.length);
      written.push({ mark, field: `${month} ${field}`, where });
      return mark;
    };
    /** The field, as often as not. */
    const perhaps = (value: () => object): object => (share() < 0.5 ? value() : {});
    const shown = (field: string): object => {
      const file = `${say(`${field} photo`).slice(2)}.jpg`;
      // What a file is called is the author's own affair: its words are what must be shown.
      written.pop();
      files[`${folder}/photos/${file}`] = picture;
      return {
        file,
        alt: `The ${say(`${field} alt`)} on a table`,
        ...perhaps(() => ({ caption: `Here ${say(`${field} caption`)} stands.` })),
      };
    };

    const count = 1 + below(6);
    for (let number = 1; number <= count; number += 1) {
      const at = `items/${number}`;
      const sort = one(['none', 'food', 'candle', 'blade', 'plant', 'children', 'cosmetic']);
      const name = say(`${at} name`);
      const dangers: Record<string, () => object> = {
        none: () => ({ category: 'none' }),
        food: () => ({
          category: 'food',
          allergens: [one(['milk', 'sesame', 'celery'])],
          mayContain: [say(`${at} mayContain`)],
          ingredients: `Sugar, ${say(`${at} ingredients`)} and salt`,
        }),
        candle: () => ({ category: 'candle' }),
        blade: () => ({ category: 'blade' }),
        plant: () => ({ category: 'plant', toxicTo: [say(`${at} toxicTo`)] }),
        children: () => ({ category: 'children', minAge: 3, hazards: [say(`${at} hazards`)] }),
        cosmetic: () => ({ category: 'cosmetic', ingredients: `Wax and ${say(`${at} ingredients`)}` }),
      };
      files[`${folder}/items/0${number}-thing.md`] = record(
        {
          name: `Round ${name} basket`,
          slug: `thing-${number}`,
          kind: 'proving basket',
          brand: `${say(`${at} brand`)} Weavers`,
          description: `A round ${say(`${at} description`)} that shapes one loaf while it rises.`,
          ...(number === 1
            ? { lead: true }
            : { goesWith: `It goes with the lead because ${say(`${at} goesWith`)} does.` }),
          ...perhaps(() => ({ material: [say(`${at} material`), say(`${at} material 2`)] })),
          ...perhaps(() => ({ color: say(`${at} color`) })),
          ...perhaps(() => ({ size: `22 ${say(`${at} size`)}` })),
          ...perhaps(() => ({ weight: `300 ${say(`${at} weight`)}` })),
          ...perhaps(() => ({ care: `Brush the ${say(`${at} care`)} out.` })),
          ...perhaps(() => ({ cautions: [`Mind the ${say(`${at} cautions`)} of it.`] })),
          ...perhaps(() => ({ price: '18.50' })),
          ...perhaps(() => ({
            image: [shown(`${at} image`), ...(share() < 0.3 ? [shown(`${at} image 2`)] : [])],
          })),
          ...dangers[sort]?.(),
        },
        `Dust ${say(`${at} story`)} with rice flour.\n\n- A list of ${say(`${at} list`)}\n\n| ${say(`${at} table`)} | b |\n| - | - |\n| 1 | ${say(`${at} cell`)} |\n\nA note.[^n]\n\n[^n]: What ${say(`${at} footnote`)} says.`,
      );
    }
    files[`${folder}/cycle.md`] = record(
      {
        theme: `The ${say('theme')} box`,
        summary: `A round cane proving ${say('summary')} for one loaf of bread, told from the willow bed to the crust.`,
        shipped: `${month}-03`,
        reveal: `${month}-19T19:00`,
        ...perhaps(() => ({ photo: shown('photo') })),
        ...perhaps(() => ({ hero: shown('hero') })),
        ...perhaps(() => ({ peek: { text: `Look for ${say('peek')} soon.` } })),
        ...perhaps(() => ({
          voices: [{ text: `Mine is ${say('voice')}.`, name: say('voice name'), consent: `${month}-22` }],
        })),
        ...perhaps(() => ({
          live: {
            wear: `The grey ${say('live wear', 'backroom')}.`,
            layOut: [say('live layOut', 'backroom')],
            mishap: `Then ${say('live mishap', 'backroom')} came.`,
            questions: [`Who has a ${say('live question', 'backroom')}?`],
          },
        })),
        ...perhaps(() => ({
          letter: {
            subject: `Of ${say('letter subject', 'backroom')}`,
            preheader: `And ${say('letter preheader', 'backroom')}.`,
          },
        })),
      },
      `We looked for ${say('opening')} for a year.\n\n> As ${say('quotation')} said.\n\n## On ${say('heading')}\n\nAnd *${say('emphasis')}* was found.`,
    );
  }
  files['content/box.md'] = record(BOX, 'Crumb & Co sends one good tool a month.');
  return { files, written };
};
