/**
 * A whole proof for tests of its page and its report, made by the program from a small box: five items, one with a
 * long name, one with a name in another script; a rival, a crowded phrase, absent phrases, advice, a passage said
 * before. Its sentences are those that the program says.
 */

import type { Coverage } from '../../src/analysis/coverage/coverage.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { PhotoSource } from '../../src/content/sources.ts';
import { cycleText, itemText, sourcesOf } from '../analysis/article.ts';
import { proofIn } from '../analysis/whole-proof.ts';
import { wholeBox } from './whole-box.ts';

const photo = (path: string): PhotoSource => ({
  path,
  hash: 'a'.repeat(64),
  width: 3000,
  height: 2000,
  tint: '#8a9a7b',
  dominant: '#b87333',
});

const PHOTOS = ['seed-tin', 'plant-labels', 'plant-mister'].map((name) =>
  photo(`cycles/2026-03/photos/${name}.jpg`),
);

const image = (name: string, alt: string, caption?: string): Readonly<Record<string, unknown>> => ({
  image: [{ file: `${name}.jpg`, alt, ...(caption && { caption }) }],
});

const SOW_LESS =
  'Sow less than you think. A windowsill holds about forty seedlings, and forty seedlings want eighty pots, one for each and one to move it into, by ';

const TEXTS: Readonly<Record<string, string>> = {
  'cycles/2025-05/cycle.md': cycleText(
    `The pots came in May, and the string came with them.\n\n${SOW_LESS}June.`,
    {
      theme: 'Climbers',
      title: 'Terracotta pots and what climbs out of them',
      shipped: '2025-05-03',
      reveal: '2025-05-19T19:00',
    },
  ),
  'cycles/2025-05/items/01-pots.md': itemText('Terracotta pots', 'terracotta pots', 'Soak them first.', {
    lead: true,
  }),
  'cycles/2025-09/cycle.md': cycleText(
    'A plant mister is a small thing to build a box around. This plant mister is brass, and a plant mister of brass can be mended.',
    {
      theme: 'Indoors Again',
      title: 'Brass plant mister, linen apron and a wicker trug: the September box',
      shipped: '2025-09-03',
      reveal: '2025-09-19T19:00',
    },
  ),
  'cycles/2025-09/items/01-plant-mister.md': itemText(
    'Tall brass plant mister',
    'plant mister',
    'Fill the plant mister with rain. A plant mister wants soft water.',
    { lead: true },
  ),
  'cycles/2026-03/cycle.md': cycleText(
    [
      'Every March the same thing happens in the loft. The packets come down from the shelf, the dates are read out, and half of them turn out to be older than the cat. Seeds keep for years if they are dry and dark and for one damp winter if they are not, so this box was built around a tin. It has a lid that closes with a sound like a good front door, and it has dividers, because a tin of seeds without dividers is a tin of confetti. The rest of the box follows the seeds out of doors: something to name them with, something to water them with, something to plant them out with, and something to drink.',
      '## What the cat is younger than',
      'I bought my first seed tin at a farm sale, full of fuses. “Don’t tip them out,” said the man, “you’ll want the fuses.” I have them still. The seed tin went through three house moves, and what I learnt from it is in this one: the seed tin must be shallow, since nobody looks at the bottom layer of anything. See [the terracotta pots from May](../2025-05/cycle.md).',
      `${SOW_LESS}May.`,
    ].join('\n\n'),
    {
      title: 'A seed tin, copper plant labels and a brass plant mister: the March box',
      summary:
        'A seed tin with dividers led March, with copper plant labels, a brass mister, a garden knife and a chamomile tea for the evening.',
    },
  ),
  'cycles/2026-03/items/01-seed-tin.md': itemText(
    'Sage green seed tin',
    'seed tin',
    'A seed tin wants to be opened often, so this seed tin has a hinge and not a lid that walks off. The seed tin holds sixty packets standing up. Put the seed tin where it is cold: a seed tin on a boiler is a slow oven. Our seed tin is powder coated inside as well, and the seed tin will not rust if you file your packets straight from the garden.',
    {
      lead: true,
      also: ['tin: the good one'],
      material: ['powder-coated steel'],
      ...image(
        'seed-tin',
        'A sage green seed tin with its lid open and twelve card dividers inside stands on a windowsill.',
        'The one on the left has been to four allotments.',
      ),
    },
  ),
  'cycles/2026-03/items/02-plant-labels.md': itemText(
    'Set of five copper plant labels',
    'plant labels',
    'Press hard with a ball pen on something soft, a folded tea towel will do, and the name stays in the copper when the ink has long washed off. Copper plant labels go brown in a month and green in a year. A plant label that can be read in August is worth ten that could be read in March.\n\nEach label is cut and then pressed by hand; its plants outgrow it.',
    {
      also: ['metal plant tags'],
      ...image('plant-labels', 'Five copper plant labels in a fan on grey cloth, one already written on.'),
    },
  ),
  'cycles/2026-03/items/03-plant-mister.md': itemText(
    'Brass plant mister, 300 ml',
    'plant mister',
    'Seedlings do not like to be watered; they like to be breathed on. A mister does that. Halloway turn the pump from bar and it will come apart with two spanners, which is how you mend it. Mist the plants in the morning.',
    image('plant-mister', 'A brass mister with a turned knob beside a tray of seedlings.'),
  ),
  'cycles/2026-03/items/04-hori-hori.md': itemText(
    'Hori-hori garden knife (掘り 園芸ナイフ), 18 cm blade, beech handle and waxed canvas sheath',
    'garden knife',
    'Hori is the sound of digging, twice. The blade is marked in centimetres, one edge is a saw, and it goes into the sheath one way only. It is a knife: keep it from children, and carry it in the sheath. 園芸ナイフ is what it says on the blade, and that is all it says.\n\nUse it to lift, to cut twine and to set a seedling out to the depth of its &lt;first&gt; leaves & no deeper.',
    { also: ['hori-hori', '園芸ナイフ'] },
  ),
  'cycles/2026-03/items/05-chamomile-tea.md': itemText(
    'Chamomile tea, 40 g',
    'tea',
    'Chamomile tea, cooled, is what my aunt sprayed on seedlings against damping off, and she drank what was left. Whole flowers from Gorsebank, dried slowly. Three minutes under a saucer, no more.',
    { allergens: [] },
  ),
  'searches.csv': 'phrase,count\nhouse plant mister,238\nseed packet tin,96\ntin plant labels,31\n',
};

const OTHER_NAMES = new Map([
  ['seed tin', ['seed box', 'seed canister']],
  ['plant mister', ['sprayer', 'atomizer', 'spray bottle']],
]);

const linked = wholeBox({ ...sourcesOf(TEXTS), photos: PHOTOS });
if (!linked.value) throw new Error(JSON.stringify(linked.linking));

const AS_OF = Date.UTC(2026, 2, 10);

/** The box that the sample is proved in. */
export const sampleBox = linked.value;

const newest = sampleBox.cycles.at(-1);
if (!newest) throw new Error('Expected the box to have cycles');

/** The cycle that is proved, sealed as of the sample's moment. */
export const sampleCycle = newest;

const language = await languageFor(sampleBox.settings.lang);

/** The proof of the newest cycle of the box, as of 10 March 2026. */
export const coverageSample: Coverage = await proofIn(sampleBox, sampleCycle, AS_OF, language, {
  otherNames: OTHER_NAMES,
});
