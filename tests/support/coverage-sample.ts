/**
 * A whole proof, made by hand, for tests of its page and its report: five items, one with a long name, one with
 * a name in another script; a rival, a crowded phrase, absent phrases, advice, a shared passage. What each
 * phrase meets in the text is found here by plain comparison; the analysis proper is tested elsewhere.
 */
import type {
  Coverage,
  Edit,
  Grade,
  ItemCoverage,
  Mention,
  PhraseCoverage,
  Rival,
} from '../../src/analysis/coverage/coverage.ts';
import type { Phrase } from '../../src/analysis/coverage/phrases/phrase.ts';
import type { Passage, PassageForm, ZonedWord } from '../../src/analysis/coverage/text/passage.ts';
import { whereIs, zoneFor } from '../../src/analysis/coverage/text/passage.ts';
import { type Zone, zones } from '../../src/analysis/coverage/text/zones.ts';
import { languageFor } from '../../src/analysis/language/language.ts';

const language = await languageFor('en');
const CYCLE = 'cycles/2026-03/cycle.md';

const files = {
  'seed-tin': 'cycles/2026-03/items/01-seed-tin.md',
  'copper-plant-labels': 'cycles/2026-03/items/02-copper-plant-labels.md',
  'plant-mister': 'cycles/2026-03/items/03-plant-mister.md',
  'hori-hori': 'cycles/2026-03/items/04-hori-hori.md',
  'chamomile-tea': 'cycles/2026-03/items/05-chamomile-tea.md',
} as const;
type Slug = keyof typeof files;

interface Run {
  readonly form: PassageForm;
  readonly zone: Zone;
  readonly line: number;
  readonly text: string;
  readonly item?: Slug;
  readonly column?: number;
  readonly written?: boolean;
}

const opening =
  'Every March the same thing happens in the loft. The packets come down from the shelf, the dates are read out, and half of them turn out to be older than the cat. Seeds keep for years if they are dry and dark and for one damp winter if they are not, so this box was built around a tin. It has a lid that closes with a sound like a good front door, and it has dividers, because a tin of seeds without dividers is a tin of confetti. The rest of the box follows the seeds out of doors: something to name them with, something to water them with, something to plant them out with, and something to drink.';

const runs: readonly Run[] = [
  {
    form: 'title',
    zone: 'title',
    line: 3,
    column: 8,
    text: 'A seed tin, copper plant labels and a brass plant mister: the March box',
  },
  { form: 'address', zone: 'address', line: 2, column: 8, text: '2026-03 first sowings', written: false },
  {
    form: 'fact',
    zone: 'summary',
    line: 4,
    column: 10,
    text: 'A seed tin with dividers led March, with copper plant labels, a brass mister, a garden knife and a chamomile tea for the evening.',
  },
  { form: 'heading', zone: 'heading', line: 22, column: 4, text: 'What the cat is younger than' },
  { form: 'paragraph', zone: 'opening', line: 24, text: opening },
  {
    form: 'paragraph',
    zone: 'body',
    line: 26,
    text: 'I bought my first seed tin at a farm sale, full of fuses. “Don’t tip them out,” said the man, “you’ll want the fuses.” I have them still. The seed tin went through three house moves, and what I learnt from it is in this one: the seed tin must be shallow, since nobody looks at the bottom layer of anything.',
  },
  { form: 'link', zone: 'link text', line: 28, column: 41, text: 'the terracotta pots from April' },
  { form: 'heading', zone: 'heading', item: 'seed-tin', line: 2, column: 7, text: 'Sage green seed tin' },
  {
    form: 'paragraph',
    zone: 'section',
    item: 'seed-tin',
    line: 24,
    text: 'A seed tin wants to be opened often, so this seed tin has a hinge and not a lid that walks off. The seed tin holds sixty packets standing up. Put the seed tin where it is cold: a seed tin on a boiler is a slow oven. Our seed tin is powder coated inside as well, and the seed tin will not rust if you file your packets straight from the garden.',
  },
  {
    form: 'caption',
    zone: 'section',
    item: 'seed-tin',
    line: 15,
    column: 14,
    text: 'The one on the left has been to four allotments.',
  },
  {
    form: 'picture',
    zone: 'picture text',
    item: 'seed-tin',
    line: 14,
    column: 10,
    text: 'A sage green seed tin with its lid open and twelve card dividers inside stands on a windowsill.',
  },
  { form: 'fact', zone: 'section', item: 'seed-tin', line: 7, column: 12, text: 'Powder-coated steel' },
  {
    form: 'heading',
    zone: 'heading',
    item: 'copper-plant-labels',
    line: 2,
    column: 7,
    text: 'Set of five copper plant labels',
  },
  {
    form: 'paragraph',
    zone: 'section',
    item: 'copper-plant-labels',
    line: 22,
    text: 'Press hard with a ball pen on something soft, a folded tea towel will do, and the name stays in the copper when the ink has long washed off. Copper plant labels go brown in a month and green in a year. A plant label that can be read in August is worth ten that could be read in March. Cut from an old seed tin, plant labels last three years.',
  },
  {
    form: 'picture',
    zone: 'picture text',
    item: 'copper-plant-labels',
    line: 14,
    column: 10,
    text: 'Five copper plant labels in a fan on grey cloth, one already written on.',
  },
  {
    form: 'heading',
    zone: 'heading',
    item: 'plant-mister',
    line: 2,
    column: 7,
    text: 'Brass plant mister, 300 ml',
  },
  {
    form: 'paragraph',
    zone: 'section',
    item: 'plant-mister',
    line: 22,
    text: 'Seedlings do not like to be watered; they like to be breathed on. A mister does that. Halloway turn the pump from bar and it will come apart with two spanners, which is how you mend it. Mist the plants in the morning.',
  },
  {
    form: 'picture',
    zone: 'picture text',
    item: 'plant-mister',
    line: 14,
    column: 10,
    text: 'A brass mister with a turned knob beside a tray of seedlings.',
  },
  {
    form: 'heading',
    zone: 'heading',
    item: 'hori-hori',
    line: 2,
    column: 7,
    text: 'Hori-hori garden knife (掘り 園芸ナイフ), 18 cm blade, beech handle and waxed canvas sheath',
  },
  {
    form: 'paragraph',
    zone: 'section',
    item: 'hori-hori',
    line: 26,
    text: 'Hori is the sound of digging, twice. The blade is marked in centimetres, one edge is a saw, and it goes into the sheath one way only. It is a knife: keep it from children, and carry it in the sheath. 園芸ナイフ is what it says on the blade, and that is all it says.',
  },
  {
    form: 'paragraph',
    zone: 'section',
    item: 'hori-hori',
    line: 28,
    text: 'Use it to lift, to cut twine and to set a seedling out to the depth of its <first> leaves & no deeper.',
  },
  {
    form: 'heading',
    zone: 'heading',
    item: 'chamomile-tea',
    line: 2,
    column: 7,
    text: 'Chamomile tea, 40 g',
  },
  {
    form: 'paragraph',
    zone: 'section',
    item: 'chamomile-tea',
    line: 20,
    text: 'Chamomile tea, cooled, is what my aunt sprayed on seedlings against damping off, and she drank what was left. Whole flowers from Gorsebank, dried slowly. Three minutes under a saucer, no more.',
  },
  {
    form: 'paragraph',
    zone: 'body',
    line: 34,
    text: 'Sow less than you think. A windowsill holds about forty seedlings, and forty seedlings want eighty pots by May.',
  },
  {
    form: 'data',
    zone: 'structured data',
    line: 3,
    column: 8,
    text: 'A seed tin, copper plant labels and a brass plant mister: the March box',
    written: false,
  },
  {
    form: 'data',
    zone: 'structured data',
    item: 'seed-tin',
    line: 2,
    column: 7,
    text: 'Sage green seed tin',
    written: false,
  },
  {
    form: 'data',
    zone: 'structured data',
    item: 'copper-plant-labels',
    line: 2,
    column: 7,
    text: 'Set of five copper plant labels',
    written: false,
  },
  {
    form: 'data',
    zone: 'structured data',
    item: 'plant-mister',
    line: 2,
    column: 7,
    text: 'Brass plant mister, 300 ml',
    written: false,
  },
  {
    form: 'data',
    zone: 'structured data',
    item: 'chamomile-tea',
    line: 2,
    column: 7,
    text: 'Chamomile tea, 40 g',
    written: false,
  },
];

/** The opening is 100 words long: the rest of its paragraph is body. */
let opened = 0;
const passages: readonly Passage[] = runs.map(
  ({ form, zone, item, line, column = 1, text, written = true }) => {
    const sentences = language.sentences(text);
    const words = language.words(text).map((word): ZonedWord => {
      if (zone === 'opening') opened += 1;
      return {
        ...word,
        zone: zone === 'opening' && opened > 100 ? 'body' : zone,
        sentence: sentences.findIndex(({ start, end }) => word.start >= start && word.start < end),
        line,
        column: column + word.start,
      };
    });
    return { form, text, words, written, file: item ? files[item] : CYCLE, ...(item && { item }) };
  },
);

const phrase = (
  text: string,
  from: Phrase['origins'][number]['from'],
  weight: number,
  origin: string,
): Phrase => {
  const words = language.words(text);
  return { text, words, head: words.length - 1, origins: [{ from, words: origin }], weight };
};

/** The sample's own, so that it stays as it is when the analysis weighs places otherwise. */
const placeWorth: Record<Zone, number> = {
  title: 0.12,
  address: 0.04,
  summary: 0.12,
  heading: 0.14,
  opening: 0.12,
  section: 0.18,
  body: 0.08,
  'picture text': 0.1,
  'link text': 0.06,
  'structured data': 0.04,
};

const HEAD_ONLY = 0.2;
const gradeShare: Record<Grade, number> = {
  exact: 1,
  inflected: 0.9,
  'same stem': 0.6,
  scattered: 0.4,
  'head only': HEAD_ONLY,
  absent: 0,
};

const gradeAt = (passage: Passage, from: number, { words }: Phrase): Mention['grade'] | undefined => {
  const there = passage.words.slice(from, from + words.length);
  if (there.length < words.length) return undefined;
  const alike = (form: 'folded' | 'key' | 'stem'): boolean =>
    there.every((word, i) => word[form] === words[i]?.[form]);
  return alike('folded') ? 'exact' : alike('key') ? 'inflected' : alike('stem') ? 'same stem' : undefined;
};

const mentionsOf = (one: Phrase, item: string): readonly Mention[] =>
  passages.flatMap((passage, index) => {
    const found: Mention[] = [];
    const covered = new Set<number>();
    const add = (from: number, to: number, grade: Mention['grade']): void => {
      const word = passage.words[from] as ZonedWord;
      for (let i = from; i <= to; i += 1) covered.add(i);
      found.push({
        passage: index,
        from,
        to,
        grade,
        zone: zoneFor(word, passage, item),
        at: whereIs(passage, word),
      });
    };
    passage.words.forEach((_, from) => {
      const grade = gradeAt(passage, from, one);
      if (grade) add(from, from + one.words.length - 1, grade);
    });
    if (one.words.length === 2 && found.length === 0)
      passage.words.forEach((word, i) => {
        const other = passage.words.findIndex(
          ({ key, sentence }, j) =>
            j !== i && Math.abs(j - i) < 8 && key === one.words[0]?.key && sentence === word.sentence,
        );
        if (word.key === one.words[1]?.key && other >= 0)
          add(Math.min(i, other), Math.max(i, other), 'scattered');
      });
    passage.words.forEach((word, i) => {
      if (
        one.words.length > 1 &&
        passage.item === item &&
        !covered.has(i) &&
        word.key === one.words.at(-1)?.key
      )
        add(i, i, 'head only');
    });
    return found.sort((a, b) => a.from - b.from);
  });

const covered = (one: Phrase, item: string, rival?: Rival): PhraseCoverage => {
  const mentions = mentionsOf(one, item);
  const parts = zones.map((zone) => {
    const here = mentions.filter((mention) => mention.zone === zone);
    const shares = here.map(({ grade }) => gradeShare[grade]).sort((a, b) => b - a);
    const filled = 1 - shares.reduce((left, share, i) => left * (1 - (i === 0 ? 0.95 : 0.3) * share), 1);
    const grade: Grade =
      here.map((mention) => mention.grade).sort((a, b) => gradeShare[b] - gradeShare[a])[0] ?? 'absent';
    return {
      zone,
      worth: placeWorth[zone],
      gives: placeWorth[zone] * filled,
      mentions: here.length,
      grade,
    };
  });
  const standing = parts.reduce((sum, { gives }) => sum + gives, 0);
  return { phrase: one, standing, parts, mentions, ...(rival && { rival }) };
};

const rival: Rival = {
  cycle: '2025-09',
  title: 'Brass plant mister, linen apron and a wicker trug: the September box',
  score: 7.412,
  own: 5.087,
  rank: 2,
  why: 'It has “plant mister” in its title, its summary and four times in one section; this article has it in its title and a heading.',
  link: {
    from: '2025-09',
    to: '2026-03',
    anchor: 'brass plant mister',
    at: { file: 'cycles/2025-09/items/02-plant-mister.md', line: 24, column: 1 },
  },
};

const item = (
  slug: Slug,
  number: number,
  name: string,
  kind: string,
  phrases: readonly PhraseCoverage[],
  more: { promised?: number; otherNames?: readonly string[] } = {},
): ItemCoverage => {
  const weights = phrases.reduce((sum, one) => sum + one.phrase.weight, 0);
  const standing = phrases.reduce((sum, one) => sum + one.standing * one.phrase.weight, 0) / weights;
  return {
    slug,
    number,
    name,
    kind,
    standing,
    promised: more.promised ?? standing,
    phrases,
    otherNames: more.otherNames ?? [],
  };
};

const items: readonly ItemCoverage[] = [
  item(
    'seed-tin',
    1,
    'Sage green seed tin',
    'seed tin',
    [
      covered(phrase('seed tin', 'kind', 1, 'kind'), 'seed-tin'),
      covered(phrase('sage green seed tin', 'name', 0.15, 'name'), 'seed-tin'),
      covered(phrase('seed packet tin', 'search', 0.05, 'searches.csv, typed 96 times'), 'seed-tin'),
    ],
    { otherNames: ['seed box', 'seed canister'] },
  ),
  item(
    'copper-plant-labels',
    2,
    'Set of five copper plant labels',
    'plant labels',
    [
      covered(phrase('plant labels', 'kind', 1, 'kind'), 'copper-plant-labels'),
      covered(phrase('copper plant labels', 'name', 0.8, 'name without its count'), 'copper-plant-labels'),
      covered(phrase('metal plant tags', 'also', 0.4, 'also: metal plant tags'), 'copper-plant-labels'),
      covered(
        phrase('tin plant labels', 'search', 0.1, 'searches.csv, typed 31 times'),
        'copper-plant-labels',
      ),
    ],
    { promised: 0.73 },
  ),
  item(
    'plant-mister',
    3,
    'Brass plant mister, 300 ml',
    'plant mister',
    [
      covered(phrase('plant mister', 'kind', 1, 'kind'), 'plant-mister', rival),
      covered(phrase('brass plant mister', 'name', 0.5, 'name without its measure'), 'plant-mister'),
      covered(phrase('house plant mister', 'search', 0.6, 'searches.csv, typed 238 times'), 'plant-mister'),
    ],
    { promised: 0.71, otherNames: ['sprayer', 'atomizer', 'spray bottle'] },
  ),
  item(
    'hori-hori',
    4,
    'Hori-hori garden knife (掘り 園芸ナイフ), 18 cm blade, beech handle and waxed canvas sheath',
    'garden knife',
    [
      covered(phrase('garden knife', 'kind', 1, 'kind'), 'hori-hori'),
      covered(phrase('hori-hori', 'also', 0.6, 'also: hori-hori'), 'hori-hori'),
      covered(phrase('園芸ナイフ', 'also', 0.3, 'also: 園芸ナイフ'), 'hori-hori'),
    ],
    { promised: 0.58 },
  ),
  item(
    'chamomile-tea',
    5,
    'Chamomile tea, 40 g',
    'tea',
    [
      covered(phrase('chamomile tea', 'name', 1, 'name without its measure'), 'chamomile-tea'),
      covered(phrase('tea', 'kind', 0.4, 'kind'), 'chamomile-tea'),
    ],
    { promised: 0.7 },
  ),
];

const before = (slug: string): number => items.find((one) => one.slug === slug)?.standing ?? 0;

const advice: readonly Edit[] = [
  {
    zone: 'opening',
    at: { file: CYCLE, line: 24, column: 398 },
    serves: [
      { item: 'copper-plant-labels', phrase: 'plant labels' },
      { item: 'copper-plant-labels', phrase: 'copper plant labels' },
    ],
    write: 'copper plant labels to name them with',
    words:
      'Opening, line 24: name the copper plant labels once; now they are only “something to name them with”.',
    brings: [{ item: 'copper-plant-labels', before: before('copper-plant-labels'), after: 0.73 }],
  },
  {
    zone: 'section',
    at: { file: files['plant-mister'], line: 22, column: 64 },
    serves: [
      { item: 'plant-mister', phrase: 'plant mister' },
      { item: 'plant-mister', phrase: 'house plant mister' },
    ],
    write: 'A plant mister does that',
    words: 'Its own section, line 22: call it a plant mister once; now it is only “a mister”.',
    brings: [{ item: 'plant-mister', before: before('plant-mister'), after: 0.64 }],
  },
  {
    zone: 'summary',
    at: { file: CYCLE, line: 4, column: 10 },
    serves: [
      { item: 'plant-mister', phrase: 'plant mister' },
      { item: 'hori-hori', phrase: 'hori-hori' },
    ],
    write: 'a brass plant mister, a hori-hori garden knife',
    words:
      'Summary, line 4: write “a brass plant mister, a hori-hori garden knife” for “a brass mister, a garden knife”.',
    brings: [
      { item: 'plant-mister', before: 0.64, after: 0.71 },
      { item: 'hori-hori', before: before('hori-hori'), after: 0.58 },
    ],
  },
  {
    zone: 'opening',
    at: { file: CYCLE, line: 24, column: 524 },
    serves: [{ item: 'chamomile-tea', phrase: 'chamomile tea' }],
    write: 'and a chamomile tea to drink',
    words: 'Opening, line 24: call it chamomile tea once; now it is only “something to drink”.',
    brings: [{ item: 'chamomile-tea', before: before('chamomile-tea'), after: 0.7 }],
  },
];

/** The passage that holds `text`. */
const found = (text: string): number => passages.findIndex((passage) => passage.text.includes(text));

export const coverageSample: Coverage = {
  cycle: '2026-03',
  theme: 'First Sowings',
  title: 'A seed tin, copper plant labels and a brass plant mister: the March box',
  aim: 0.7,
  lang: 'en-GB',
  limits: [],
  passages,
  items,
  overRepeated: [
    {
      item: 'seed-tin',
      phrase: 'seed tin',
      rate: 1.87,
      dispersion: 0.61,
      mentions: 10,
      sentences: [
        {
          at: { file: files['seed-tin'], line: 24, column: 142 },
          text: 'Put the seed tin where it is cold: a seed tin on a boiler is a slow oven.',
          mentions: 2,
        },
        {
          at: { file: files['seed-tin'], line: 24, column: 216 },
          text: 'Our seed tin is powder coated inside as well, and the seed tin will not rust if you file your packets straight from the garden.',
          mentions: 2,
        },
        {
          at: { file: CYCLE, line: 26, column: 148 },
          text: 'The seed tin went through three house moves, and what I learnt from it is in this one: the seed tin must be shallow, since nobody looks at the bottom layer of anything.',
          mentions: 2,
        },
      ],
    },
  ],
  shared: [
    {
      passage: found('Sow less than you think'),
      at: { file: CYCLE, line: 34, column: 1 },
      other: {
        cycle: '2025-05',
        at: { file: 'cycles/2025-05/cycle.md', line: 31, column: 1 },
      },
      resemblance: 0.83,
    },
  ],
  reading: { words: 534, sentences: 41, minutes: 2.6, ease: 78.4, grade: 5.6 },
  advice,
  outOfReach: ['hori-hori'],
};
