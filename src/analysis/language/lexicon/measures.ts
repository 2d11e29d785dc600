/** Numbers, units, sizes and what goods are counted in. Written by hand (no source); folded, lower case. */
import { wordSet } from '../../../text/word-set.ts';

/** Parts of one: a measure only beside a unit or a number ("half a litre", but a half apron). */
export const fractions = wordSet('half quarter third');

/** Those that stand before a thing to say how many there are, and for nothing else. */
export const counts = wordSet(`
  one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen
  nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand dozen several few many couple`);

/** Units of measure, as they stand after a number. */
export const units = wordSet(`
  mm cm m km in inch inches ft foot feet yd yds yard yards metre metres meter meters centimetre centimetres centimeter
  centimeters millimetre millimetres millimeter millimeters litre litres liter liters l lt ltr ltrs ml cl dl
  millilitre millilitres milliliter milliliters g gm gms gr gram grams gramme grammes kg kgs kilo kilos kilogram
  kilograms mg oz ounce ounces lb lbs pound pounds st stone pint pints pt qt qts quart quarts gal gallon gallons floz
  fl cup cups tsp tbsp w watt watts kw v volt volts mah lumen lumens lm k kelvin db hz ghz gb tb mb sq sqft sqm cc
  percent pc pcs pce piece pieces pk pks ct count ply gsm tog togs thread sheets hour hours hr hrs h minute minutes
  min mins day days week weeks month months year years yr yrs way ways tier tiers tiered drawer draw drawers shelf
  shelves light lights lamp panel panels seat seats seater person people finger fingers burner burners door doors
  blade blades setting settings speed speeds stage stages d x deg degree degrees`);

/** Sizes of beds and of clothes, and words for how large a thing is. */
export const sizes = wordSet(`
  small medium large mini maxi big tiny little giant jumbo huge xs s l xl xxl xxxl petite regular standard oversized
  oversize compact narrow wide tall short long slim king queen twin full super single double size sized sizes
  length width height high deep thick thin low counter extralarge twinxl xlarge plus junior miniature micro midi
  bulk family travel pocket`);

/** Sizes that people type before a thing, because it is another thing so: a mini backpack, a giant teddy. */
export const typedSizes = wordSet(
  'mini small large big tiny little giant jumbo oversized oversize miniature compact',
);

/** What a number of things, or an amount of stuff, is sold as: "set of five", "tin of plant ties". */
export const containers = wordSet(`
  set sets pair pairs pack packs packet packets bundle bundles bunch bunches box boxes bag bags tin tins jar jars
  bottle bottles tube tubes roll rolls reel reels spool spools ball balls skein skeins hank hanks sheet sheets pot
  pots tub tubs tray trays sachet sachets carton cartons case cases crate crates can cans cup cups mug mugs glass
  glasses bowl bowls basket baskets sack sacks stick sticks bar bars block blocks slab slabs piece pieces length
  lengths strip strips pad pads stack stacks batch batches assortment collection selection range choice variety mix
  dozen dozens handful handfuls pinch slice slices loaf loaves drop drops kit kits series trio duo quartet
  couple lot lots string strand strands bucket buckets punnet punnets pouch pouches wheel wedge round rounds sprig
  sprigs bouquet bouquets cluster clump kilo kilos gram grams litre litres pint pints metre metres
  yard yards vial vials flask flasks cone cones pod pods capsule capsules envelope envelopes card cards`);

/** What several things are sold as, behind them: "bracelet set". */
export const collectives = wordSet('set sets bundle bundles pack packs pair pairs trio duo');

/** A set named after one of these is of different things: a table set has chairs, a drum set cymbals. */
export const assortments = wordSet(
  'table chair desk sofa bed bar bath drum swing train vanity furniture cabinet',
);

/** Before a measure: "approx. 30 cm", "height 12 cm". */
export const measureWords = wordSet(`
  approx approximately about circa ca around diameter dia height length width depth size weight h w d l net each
  total capacity volume no number nr ref model item age aged ages`);
