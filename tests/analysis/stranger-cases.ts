/**
 * Summaries and titles of invented boxes in ten trades. Of each trade three honest ones and three that name a stranger
 * were looked at while the rules were written; the last three of each were kept aside. In the second list the stranger
 * stands after the bar: the word that its noun phrase ends with.
 */

/** A trade's box and what is said of it. */
export interface Trade {
  readonly trade: string;
  /** Names and kinds of what is in the box, with other names after an equals sign. */
  readonly items: readonly string[];
  /** What the stories say besides. */
  readonly story: string;
  readonly honest: readonly string[];
  readonly strange: readonly string[];
}

export const TRADES: readonly Trade[] = [
  {
    trade: 'baking',
    items: [
      'Danish dough whisk',
      'Linen couche',
      'Rye flour, 1 kg',
      'Beech rolling pin',
      'Proving basket = banneton',
    ],
    story: 'We baked for a week. The oven was never off, and the dog slept in front of it.',
    honest: [
      'A Danish dough whisk, a linen couche and a bag of rye flour, for the first loaves of the year.',
      'March began with a rolling pin: how to bake a rye loaf in an ordinary oven on a Sunday morning.',
      'A banneton and four more things for people who bake bread at the kitchen table',
      'The March box held a dough whisk, a proving basket, a rolling pin made by a joiner in the hills, and flour from a water mill.',
      'Two wooden tools and one flour: what a month of early mornings taught us about crust and crumb.',
      'A beech pin, a linen cloth and a kilo of rye, with a recipe from our grandmother.',
    ],
    strange: [
      'A Danish dough whisk, a steel bench scraper and a linen couche, for the first loaves of the year.|scraper',
      'A rolling pin, a proving basket and a sugar thermometer|thermometer',
      'The March box held a bag of rye flour, a cake tin and a dough whisk.|tin',
      'March came with a linen couche, a dough whisk, two oven gloves and a bag of flour.|gloves',
      'A pastry brush and a rolling pin: the March box|brush',
      'Unpack a banneton, a bread lame and a bag of rye flour for slow weekends.|lame',
    ],
  },
  {
    trade: 'dogs',
    items: [
      'Waxed rope lead = dog leash',
      'Snuffle mat',
      'Lamb and rice biscuits',
      'Tartan bandana',
      'Rubber treat ball',
    ],
    story: 'Biscuit, a terrier, tried all of it in the park behind the station.',
    honest: [
      'A waxed rope lead, a snuffle mat and a tartan bandana for wet walks in the woods.',
      'Lamb biscuits, a treat ball and how to tire out a terrier without leaving the house.',
      'Five good things for one muddy dog',
      'A leash that does not slip, a bandana that shows in the dark, and biscuits for the pocket of your coat.',
      'May was for noses: a snuffle mat, a rubber ball to fill with treats, and a bag of lamb and rice biscuits.',
      'The tartan bandana and the long wait at the post office',
    ],
    strange: [
      'A waxed rope lead, a brass whistle and a snuffle mat for wet walks in the woods.|whistle',
      'A tartan bandana and a leather collar: the May box|collar',
      'Lamb and rice biscuits, a rubber treat ball, a folding water bowl and a bandana came in May.|bowl',
      'May held a snuffle mat, a grooming comb and a rope lead.|comb',
      'A rubber treat ball, two squeaky hedgehogs and a tartan bandana for the garden.|hedgehogs',
      'Meet the rope lead, the snuffle mat and the paw balm.|balm',
    ],
  },
  {
    trade: 'tea',
    items: [
      'First flush Darjeeling',
      'Stoneware teapot',
      'Bamboo tea scoop',
      'Oatcakes = oat biscuits',
      'Linen tea towel',
    ],
    story: 'The kettle is put on at four. We pour with the window open.',
    honest: [
      'A stoneware teapot, a first flush Darjeeling and oatcakes, for four o’clock on the back step.',
      'A teapot, a scoop and the patience to let water cool',
      'April poured slowly, with a stoneware teapot, a bamboo scoop and a linen tea towel.',
      'Fifty grams of Darjeeling from a hillside garden, a pot to brew it in, and oat biscuits beside it.',
      'The teapot that leaked, the one that does not, and a towel for both',
      'A bamboo scoop, a tea towel and the first Darjeeling of spring: how to brew a light tea without bitterness.',
    ],
    strange: [
      'A stoneware teapot, a silver strainer and a first flush Darjeeling, for four o’clock.|strainer',
      'A Darjeeling, a bamboo scoop and a jar of quince jelly|jelly',
      'The April box held a linen tea towel, a porcelain cup, oatcakes and a scoop.|cup',
      'April came with a teapot, a tea cosy and a packet of oatcakes.|cosy',
      'A bamboo whisk and a stoneware teapot: the April box|whisk',
      'Oatcakes, a Darjeeling, a cake fork and a linen towel for a slow afternoon.|fork',
    ],
  },
  {
    trade: 'yarn',
    items: [
      'Merino sock yarn',
      'Birch stitch markers',
      'Bamboo double-pointed needles',
      'Lanolin hand cream',
      'Canvas project bag',
    ],
    story: 'The pattern is worked from the toe up. Our dyer lives by the sea.',
    honest: [
      'Merino sock yarn, bamboo needles and a canvas project bag, with a pattern for socks worked from the toe up.',
      'A skein of merino, a set of stitch markers and cream for dry hands.',
      'Needles, yarn and an evening by the fire',
      'June held a skein of merino dyed by the sea, birch stitch markers and a bag to keep them from the cat.',
      'How to turn a heel: sock yarn, five needles and a tin of lanolin cream for tired fingers.',
      'A hundred grams of merino and the sock that grew too long',
    ],
    strange: [
      'Merino sock yarn, a crochet hook and a canvas project bag, with a pattern for socks.|hook',
      'A canvas bag, bamboo needles and a tape measure: the June box|measure',
      'A skein of merino, a pair of embroidery scissors and hand cream came in June.|scissors',
      'June held birch stitch markers, a yarn bowl and lanolin hand cream.|bowl',
      'Bamboo needles, six wooden buttons and a skein of merino|buttons',
      'Meet a canvas project bag, a wool shawl and a set of stitch markers.|shawl',
    ],
  },
  {
    trade: 'painting',
    items: [
      'Pan watercolours',
      'Squirrel mop brush',
      'Cotton rag paper',
      'Ceramic mixing palette',
      'Masking fluid',
    ],
    story: 'We sat on the harbour wall and painted the boats until the rain came.',
    honest: [
      'Pan watercolours, a squirrel mop brush and cotton rag paper, for painting clouds from a window.',
      'A mixing palette, masking fluid and the sky over the harbour',
      'July went outdoors, with six watercolours in a tin, a mop brush and paper that does not buckle.',
      'A brush, a palette and a pad of cotton paper for the beach, the train and the kitchen table.',
      'The July box held watercolours, masking fluid and a ceramic palette thrown by a potter.',
      'How to paint a boat in the rain',
    ],
    strange: [
      'Pan watercolours, a tabletop easel and cotton rag paper, for painting clouds from a window.|easel',
      'A mop brush, a ceramic palette and a stick of charcoal|charcoal',
      'The July box held masking fluid, a palette knife and a squirrel brush.|knife',
      'July came with a mixing palette, a water jar, watercolours and paper.|jar',
      'A graphite pencil and a mop brush: the July box|pencil',
      'Cotton paper, masking fluid, a natural sponge and six watercolours for a wet week.|sponge',
    ],
  },
  {
    trade: 'bathing',
    items: ['Oat milk soap', 'Loofah', 'Cedar bath salts', 'Pumice stone', 'Beeswax lip balm'],
    story: 'It was tried in a bathroom without a window. The water was hot.',
    honest: [
      'Oat milk soap, a loofah and cedar bath salts, for a slow Sunday in the tub.',
      'A pumice stone, lip balm and the longest night of the year',
      'December was for warm water: a jar of cedar salts, a bar of soap and a loofah on a cord.',
      'Soap, salts and a stone for tired feet after a day in boots.',
      'The December box held a loofah grown in a greenhouse, a pumice stone and a tin of lip balm.',
      'A bar of oat soap, two handfuls of salts and nobody at the door',
    ],
    strange: [
      'Oat milk soap, a linen flannel and cedar bath salts, for a slow Sunday in the tub.|flannel',
      'A loofah, a beeswax candle and a pumice stone|candle',
      'December brought a lip balm, a nail brush and a bar of soap.|brush',
      'A wooden soap dish and a loofah: the December box|dish',
      'The box held cedar bath salts, a bottle of almond oil and a pumice stone.|oil',
      'A bar of oat soap, a cotton bathrobe, lip balm and salts came in December.|bathrobe',
    ],
  },
  {
    trade: 'coffee',
    items: [
      'Ethiopian coffee beans',
      'Pour-over dripper',
      'Paper filters',
      'Enamel mug',
      'Burr hand grinder = coffee mill',
    ],
    story: 'The scale read eighteen grams. The neighbour’s cat sat on the counter.',
    honest: [
      'Ethiopian beans, a pour-over dripper and paper filters, for the first cup of the day.',
      'A hand grinder, an enamel mug and a hundred filters',
      'October woke early, with a coffee mill, a dripper and a bag of beans roasted on Tuesday.',
      'How to grind by hand without waking the house: a burr grinder, a mug and Ethiopian coffee.',
      'A dripper for one, beans for ten mornings, and the mug that survived the stairs.',
      'Filters, beans and a mill at the campsite',
    ],
    strange: [
      'Ethiopian beans, a gooseneck kettle and paper filters, for the first cup of the day.|kettle',
      'A hand grinder, an enamel mug and a milk jug: the October box|jug',
      'October brought a dripper, a digital timer and a bag of beans.|timer',
      'A burr grinder, an espresso tamper and a hundred filters|tamper',
      'The October box held an enamel mug, a tin of cocoa and a dripper.|cocoa',
      'Almond biscuits and Ethiopian coffee beans for a grey month.|biscuits',
    ],
  },
  {
    trade: 'letters',
    items: [
      'Brass-nib fountain pen',
      'Iron gall ink',
      'Laid writing paper',
      'Sealing wax',
      'Letter opener = paper knife',
    ],
    story: 'Somebody still writes to us every Thursday, in green.',
    honest: [
      'A fountain pen, iron gall ink and laid paper, for the letter that you have owed since spring.',
      'Sealing wax, a paper knife and an afternoon without a telephone',
      'September wrote by hand, with a brass-nib pen, a bottle of iron gall ink and twenty sheets of laid paper.',
      'A stick of red wax, a letter opener and envelopes of your own.',
      'How to seal a letter at the desk: wax, a match and a steady hand.',
      'The September box held a pen, a bottle of ink that turns black overnight, and paper with deckled edges.',
    ],
    strange: [
      'A fountain pen, a leather blotter and laid paper, for the letter that you have owed since spring.|blotter',
      'Sealing wax, a brass seal stamp and iron gall ink|stamp',
      'The September box held a paper knife, a pencil sharpener and a bottle of ink.|sharpener',
      'September came with a fountain pen, a desk lamp and laid writing paper.|lamp',
      'A glass inkwell and a stick of sealing wax: the September box|inkwell',
      'Laid paper, a wooden ruler, a pen and ink for long evenings.|ruler',
    ],
  },
  {
    trade: 'toddlers',
    items: [
      'Maple stacking rings',
      'Board book of weather',
      'Felt finger puppets',
      'Cotton bib',
      'Beechwood rattle',
    ],
    story: 'Ida, fourteen months old, threw everything down the stairs and laughed.',
    honest: [
      'Maple stacking rings, a board book and felt finger puppets, for small hands on a rainy day.',
      'A rattle, a bib and the sound of spoons on a high chair',
      'November played quietly, with five felt puppets, a cotton bib and a book of weather to chew.',
      'Rings to stack, a rattle to shake and a book for the lap at bedtime.',
      'The November box held a beechwood rattle, puppets sewn by two sisters, and a bib with a deep pocket.',
      'How to play with a toddler who throws: rings, puppets and patience.',
    ],
    strange: [
      'Maple stacking rings, a step stool token and felt finger puppets, for small hands.|token',
      'A board book, a wooden duck on wheels and a cotton bib|duck',
      'The November box held a rattle, a knitted blanket and finger puppets.|blanket',
      'November came with a cotton bib, a bath boat and stacking rings.|boat',
      'A beechwood rattle and a jigsaw puzzle: the November box|puzzle',
      'Felt puppets, a silver spoon and a board book for long car rides.|spoon',
    ],
  },
  {
    trade: 'cycling',
    items: ['Chain oil', 'Brass bicycle bell', 'Merino cycling cap', 'Tyre levers', 'Fig energy bars'],
    story: 'We rode to the reservoir and back, and had one puncture.',
    honest: [
      'Chain oil, a brass bell and a merino cap, for the first ride after the clocks change.',
      'Tyre levers, fig bars and forty miles into the wind',
      'February got ready, with a bottle of chain oil, a pair of tyre levers and a cap to wear under the helmet.',
      'A bell for the towpath, a cap for the cold and bars for the top of the hill.',
      'How to mend a puncture at the side of the road: two levers, ten minutes and clean hands.',
      'The February box held fig bars baked in a village kitchen, a bicycle bell and oil for a dry chain.',
    ],
    strange: [
      'Chain oil, a frame pump and a merino cap, for the first ride after the clocks change.|pump',
      'A brass bell, tyre levers and a saddle bag: the February box|bag',
      'February brought fig energy bars, a rear light and a bottle of chain oil.|light',
      'A merino cap, a pair of wool socks and tyre levers|socks',
      'The box held a bicycle bell, a multi-tool wrench and chain oil.|wrench',
      'Fig bars, a water bottle, a cycling cap and a bell for the spring.|bottle',
    ],
  },
];
