/**
 * Names of things in ten trades, as owners write them. What the dictionary does not know (stoneground, refillable, sloyd)
 * keeps its capital until the record's own text writes it small.
 */
import { expect, test } from 'vitest';
import { inTextOf } from '../../src/model/in-text.ts';
import { caseOf } from '../support/dictionary.ts';

type Named = readonly [name: string, kind: string, short: string, inside: string];

const trades: Readonly<Record<string, readonly Named[]>> = {
  baking: [
    ['Danish dough whisk', 'dough whisk', 'Danish dough whisk', 'Danish dough whisk'],
    [
      'Bun, muffin and pudding tin',
      'baking tin',
      'Bun, muffin and pudding tin',
      'bun, muffin and pudding tin',
    ],
    ['IKA rolling pin', 'rolling pin', 'IKA rolling pin', 'IKA rolling pin'],
    ['Dutch oven, 4 litre', 'Dutch oven', 'Dutch oven', 'Dutch oven'],
    ['Japanese bread knife (left-handed)', 'bread knife', 'Japanese bread knife', 'Japanese bread knife'],
    ['Round rye proving basket', 'proving basket', 'Round rye proving basket', 'round rye proving basket'],
    ['Swiss meringue thermometer', 'thermometer', 'Swiss meringue thermometer', 'Swiss meringue thermometer'],
    [
      'Stoneground wholemeal flour, 1 kg',
      'flour',
      'Stoneground wholemeal flour',
      'Stoneground wholemeal flour',
    ],
    ['Biscuit cutters, star and moon', 'biscuit cutter', 'Biscuit cutters', 'biscuit cutters'],
    [
      'Vanilla, cinnamon and clove set',
      'spice set',
      'Vanilla, cinnamon and clove set',
      'vanilla, cinnamon and clove set',
    ],
    ['Bundt pan', 'cake pan', 'Bundt pan', 'Bundt pan'],
    ['Victoria sandwich tins, pair', 'cake tin', 'Victoria sandwich tins', 'Victoria sandwich tins'],
  ],
  'the kitchen table': [
    ['Salt and pepper mill', 'mill', 'Salt and pepper mill', 'salt and pepper mill'],
    ['Knife, fork and spoon set', 'cutlery set', 'Knife, fork and spoon set', 'knife, fork and spoon set'],
    ['French press, 0.5 l', 'coffee press', 'French press', 'French press'],
    ['Moroccan tea glass', 'tea glass', 'Moroccan tea glass', 'Moroccan tea glass'],
    ['China teapot', 'teapot', 'China teapot', 'China teapot'],
    ['Cork trivet', 'trivet', 'Cork trivet', 'cork trivet'],
    ['Turkey baster', 'baster', 'Turkey baster', 'turkey baster'],
    ['Turkish coffee pot', 'coffee pot', 'Turkish coffee pot', 'Turkish coffee pot'],
    ['Olive-wood salad servers', 'salad servers', 'Olive-wood salad servers', 'olive-wood salad servers'],
    [
      'Oil, vinegar and dressing bottle',
      'bottle',
      'Oil, vinegar and dressing bottle',
      'oil, vinegar and dressing bottle',
    ],
    ['Sichuan pepper, whole', 'pepper', 'Sichuan pepper', 'Sichuan pepper'],
    ['Kilner jar, 1 litre', 'preserving jar', 'Kilner jar', 'Kilner jar'],
  ],
  gardening: [
    ['Wooden seed tray', 'seed tray', 'Wooden seed tray', 'wooden seed tray'],
    ['Bee Meadow seeds', 'seeds', 'Bee Meadow seeds', 'Bee Meadow seeds'],
    ['Hand-forged dibber', 'dibber', 'Hand-forged dibber', 'hand-forged dibber'],
    ['Iris bulbs, mixed', 'bulbs', 'Iris bulbs', 'iris bulbs'],
    ['Alpine trough', 'trough', 'Alpine trough', 'alpine trough'],
    ['Pot, tray and saucer set', 'pot set', 'Pot, tray and saucer set', 'pot, tray and saucer set'],
    ['Tolley-made watering can', 'watering can', 'Tolley-made watering can', 'Tolley-made watering can'],
    ['African violet feed', 'plant food', 'African violet feed', 'African violet feed'],
    ['Galvanised bucket, 9 l', 'bucket', 'Galvanised bucket', 'galvanised bucket'],
    ['Gardener’s soap', 'soap', 'Gardener’s soap', 'gardener’s soap'],
    ['Jute twine', 'twine', 'Jute twine', 'jute twine'],
    ['Chelsea chop shears', 'shears', 'Chelsea chop shears', 'Chelsea chop shears'],
    ['Weatherproof plant labels', 'plant label', 'Weatherproof plant labels', 'weatherproof plant labels'],
  ],
  knitting: [
    ['Shetland wool skein', 'yarn', 'Shetland wool skein', 'Shetland wool skein'],
    ['Circular needles, 4 mm', 'knitting needles', 'Circular needles', 'circular needles'],
    ['Undyed merino skein', 'yarn', 'Undyed merino skein', 'undyed merino skein'],
    ['Norwegian mitten pattern', 'pattern', 'Norwegian mitten pattern', 'Norwegian mitten pattern'],
    ['Stitch markers, brass and copper', 'stitch marker', 'Stitch markers', 'stitch markers'],
    [
      'Hook, needle and scissors case',
      'case',
      'Hook, needle and scissors case',
      'hook, needle and scissors case',
    ],
    ['Tunisian crochet hook', 'crochet hook', 'Tunisian crochet hook', 'Tunisian crochet hook'],
    ['Hand-dyed mohair', 'yarn', 'Hand-dyed mohair', 'hand-dyed mohair'],
    ['Estonian lace shawl kit', 'kit', 'Estonian lace shawl kit', 'Estonian lace shawl kit'],
    ['Row counter', 'row counter', 'Row counter', 'row counter'],
    ['Icelandic lopi, 50 g', 'yarn', 'Icelandic lopi', 'Icelandic lopi'],
    ['Blocking pins (rustproof)', 'pins', 'Blocking pins', 'blocking pins'],
  ],
  writing: [
    ['A5 notebook', 'notebook', 'A5 notebook', 'A5 notebook'],
    ['Prussian blue ink, 30 ml', 'ink', 'Prussian blue ink', 'Prussian blue ink'],
    ['Brass pencil sharpener', 'pencil sharpener', 'Brass pencil sharpener', 'brass pencil sharpener'],
    ['Indian ink', 'ink', 'Indian ink', 'Indian ink'],
    ['Pen, nib and holder box', 'pen box', 'Pen, nib and holder box', 'pen, nib and holder box'],
    ['Venetian glass pen', 'pen', 'Venetian glass pen', 'Venetian glass pen'],
    ['Letterpress cards, set of 6', 'cards', 'Letterpress cards', 'letterpress cards'],
    ['Nepalese lokta paper', 'paper', 'Nepalese lokta paper', 'Nepalese lokta paper'],
    ['Refillable fineliner', 'pen', 'Refillable fineliner', 'Refillable fineliner'],
    ['Sealing wax, red', 'sealing wax', 'Sealing wax', 'sealing wax'],
    ['Gothic nib', 'nib', 'Gothic nib', 'Gothic nib'],
    ['Cursive Practice Book', 'practice book', 'Cursive Practice Book', 'Cursive Practice Book'],
  ],
  'soap and bath': [
    ['Bath towel', 'towel', 'Bath towel', 'bath towel'],
    ['Soap, lavender and oat', 'soap', 'Soap', 'soap'],
    ['Castile soap', 'soap', 'Castile soap', 'castile soap'],
    ['Dead Sea salt', 'bath salt', 'Dead Sea salt', 'Dead Sea salt'],
    ['Himalayan bath salts', 'bath salts', 'Himalayan bath salts', 'Himalayan bath salts'],
    ['Wash, shave and hair kit', 'wash kit', 'Wash, shave and hair kit', 'wash, shave and hair kit'],
    ['Natural sponge', 'sponge', 'Natural sponge', 'natural sponge'],
    ['Cedar shaving bowl', 'shaving bowl', 'Cedar shaving bowl', 'cedar shaving bowl'],
    ['Turkish towel, striped', 'towel', 'Turkish towel', 'Turkish towel'],
    ['Reading-light bath rack', 'bath rack', 'Reading-light bath rack', 'reading-light bath rack'],
    ['Aleppo soap', 'soap', 'Aleppo soap', 'Aleppo soap'],
    ['Rose and geranium balm', 'balm', 'Rose and geranium balm', 'rose and geranium balm'],
  ],
  tea: [
    ['Earl Grey tea', 'tea', 'Earl Grey tea', 'Earl Grey tea'],
    ['Assam, second flush', 'tea', 'Assam', 'Assam'],
    ['Chinese gaiwan', 'tea bowl', 'Chinese gaiwan', 'Chinese gaiwan'],
    ['Oolong, 40 g', 'oolong', 'Oolong', 'oolong'],
    ['English breakfast tea', 'tea', 'English breakfast tea', 'English breakfast tea'],
    [
      'Honey, lemon and ginger infusion',
      'infusion',
      'Honey, lemon and ginger infusion',
      'honey, lemon and ginger infusion',
    ],
    ['Bamboo whisk', 'whisk', 'Bamboo whisk', 'bamboo whisk'],
    ['Ceylon orange pekoe', 'tea', 'Ceylon orange pekoe', 'Ceylon orange pekoe'],
    ['Loose-leaf caddy', 'tea caddy', 'Loose-leaf caddy', 'loose-leaf caddy'],
    ['Tasting spoons', 'spoon', 'Tasting spoons', 'tasting spoons'],
    ['Russian caravan tea', 'tea', 'Russian caravan tea', 'Russian caravan tea'],
    ['Small Japanese teapot', 'teapot', 'Small Japanese teapot', 'small Japanese teapot'],
  ],
  woodwork: [
    ['Sloyd knife', 'carving knife', 'Sloyd knife', 'Sloyd knife'],
    ['Danish oil, 250 ml', 'wood oil', 'Danish oil', 'Danish oil'],
    ['Scots pine blank', 'carving blank', 'Scots pine blank', 'Scots pine blank'],
    ['Beech mallet', 'mallet', 'Beech mallet', 'beech mallet'],
    [
      'Hammer, chisel and plane roll',
      'tool roll',
      'Hammer, chisel and plane roll',
      'hammer, chisel and plane roll',
    ],
    ['Beeswax polish', 'polish', 'Beeswax polish', 'beeswax polish'],
    ['Arkansas stone', 'whetstone', 'Arkansas stone', 'Arkansas stone'],
    ['T-bevel', 'bevel', 'T-bevel', 'T-bevel'],
    ['Japanese pull saw', 'saw', 'Japanese pull saw', 'Japanese pull saw'],
    ['Sanding blocks, fine and coarse', 'sanding block', 'Sanding blocks', 'sanding blocks'],
    ['Spokeshave', 'spokeshave', 'Spokeshave', 'spokeshave'],
    ['Swedish axe sheath', 'axe sheath', 'Swedish axe sheath', 'Swedish axe sheath'],
  ],
  'pets and outdoors': [
    ['Tug rope', 'dog toy', 'Tug rope', 'tug rope'],
    ['Alsatian-size collar', 'collar', 'Alsatian-size collar', 'Alsatian-size collar'],
    [
      'Beef, pea and carrot biscuits',
      'dog biscuits',
      'Beef, pea and carrot biscuits',
      'beef, pea and carrot biscuits',
    ],
    ['Persian cat comb', 'comb', 'Persian cat comb', 'Persian cat comb'],
    ['Waxed-cotton lead', 'lead', 'Waxed-cotton lead', 'waxed-cotton lead'],
    ['Catnip mouse', 'cat toy', 'Catnip mouse', 'catnip mouse'],
    ['Swiss army whistle', 'whistle', 'Swiss army whistle', 'Swiss army whistle'],
    ['LED collar light', 'collar light', 'LED collar light', 'LED collar light'],
    ['Foldable water bowl', 'water bowl', 'Foldable water bowl', 'foldable water bowl'],
    ['Mexican blanket', 'blanket', 'Mexican blanket', 'Mexican blanket'],
    ['Enamel camping mug', 'mug', 'Enamel camping mug', 'enamel camping mug'],
    ['Nordic walking poles', 'walking poles', 'Nordic walking poles', 'Nordic walking poles'],
  ],
  'crafts of several traditions': [
    ['Polish pottery bowl', 'bowl', 'Polish pottery bowl', 'Polish pottery bowl'],
    ['Sashiko needles', 'needle', 'Sashiko needles', 'Sashiko needles'],
    ['Kantha quilt kit', 'quilt kit', 'Kantha quilt kit', 'Kantha quilt kit'],
    ['Berber basket', 'basket', 'Berber basket', 'Berber basket'],
    ['Warp, weft and heddle kit', 'weaving kit', 'Warp, weft and heddle kit', 'warp, weft and heddle kit'],
    ['Navajo spindle', 'spindle', 'Navajo spindle', 'Navajo spindle'],
    ['Batik wax pen', 'wax pen', 'Batik wax pen', 'batik wax pen'],
    ['Welsh love-spoon blank', 'spoon blank', 'Welsh love-spoon blank', 'Welsh love-spoon blank'],
    ['Origami paper, indigo and cream', 'origami paper', 'Origami paper', 'origami paper'],
    ['Ghanaian glass beads', 'beads', 'Ghanaian glass beads', 'Ghanaian glass beads'],
    [
      'Black, white and red wool blanket',
      'blanket',
      'Black, white and red wool blanket',
      'black, white and red wool blanket',
    ],
    ['Panama hat', 'hat', 'Panama hat', 'Panama hat'],
  ],
};

const cases = Object.entries(trades).flatMap(([trade, names]) =>
  names.map((named) => [trade, ...named] as const),
);

test.each(cases)('%s: %j (%s) is %j, in a sentence %j', (_, name, kind, short, inside) => {
  const { short: foundShort, name: foundInside } = inTextOf(
    { name, kind, brand: 'Tolley' },
    { lang: 'en-GB', caseOf, texts: [] },
  );
  expect([foundShort, foundInside]).toEqual([short, inside]);
});

const inside = (name: string, kind: string, ...texts: readonly string[]): string =>
  inTextOf({ name, kind, brand: 'Tolley Joinery' }, { lang: 'en-GB', caseOf, texts }).name;

test('what the box itself writes inside a sentence decides where the dictionary does not', () => {
  expect(inside('Sloyd knife', 'carving knife')).toBe('Sloyd knife');
  expect(inside('Sloyd knife', 'carving knife', 'Hold the sloyd knife low.')).toBe('sloyd knife');
  expect(inside('Stoneground flour', 'stoneground flour')).toBe('stoneground flour');
  expect(inside('Falcon mug', 'mug', 'We chose the Falcon mug, because it chips well.')).toBe('Falcon mug');
  expect(inside('Falcon mug', 'mug', 'Falcon mug at the ready. A mug is a mug.')).toBe('falcon mug');
});

test('a proper noun that the box writes small is a thing to it; a people or a place stays a name', () => {
  expect(inside('Mister, brass', 'plant mister')).toBe('mister');
  expect(inside('Assam', 'tea', 'We pour the assam late.')).toBe('assam');
  expect(inside('Danish dough whisk', 'danish dough whisk')).toBe('Danish dough whisk');
});

test('a name that begins with its maker keeps the maker’s capital', () => {
  const use = { lang: 'en-GB', caseOf, texts: [] };
  expect(inTextOf({ name: 'Copper & Oak pan', kind: 'pan', brand: 'Copper & Oak' }, use).name).toBe(
    'Copper & Oak pan',
  );
  expect(inTextOf({ name: 'Copper pan', kind: 'pan', brand: 'Copper & Oak' }, use).name).toBe('copper pan');
});

test('a kind that is written with a capital loses it as a name does', () => {
  const use = { lang: 'en-GB', caseOf, texts: [] };
  expect(inTextOf({ name: 'X1', kind: 'Bread knife', brand: '' }, use).kind).toBe('bread knife');
  expect(inTextOf({ name: 'X1', kind: 'Dutch oven', brand: '' }, use).kind).toBe('Dutch oven');
});

test('in a language without a dictionary a capital stays, unless the text writes the word small', () => {
  const use = (...texts: readonly string[]) => ({ lang: 'fr', caseOf: () => undefined, texts });
  const german = { name: 'Pflanzenschilder aus Kupfer', kind: 'Pflanzenschild', brand: '' };
  expect(inTextOf(german, { ...use('Das sind Pflanzenschilder aus Kupfer.'), lang: 'de' }).name).toBe(
    'Pflanzenschilder aus Kupfer',
  );
  const french = { name: 'Arrosoir en cuivre', kind: 'Arrosoir', brand: '' };
  expect(inTextOf(french, use()).name).toBe('Arrosoir en cuivre');
  expect(inTextOf(french, use('On remplit un arrosoir en cuivre.')).name).toBe('arrosoir en cuivre');
});
