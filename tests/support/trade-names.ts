/**
 * Invented names of twelve trades, in classes that once were read wrongly. Each says what a shopper would type for such
 * a thing, and what nobody would. The rules were written with the first, third, fifth … of each trade in view; the
 * others were kept aside and read only to count.
 */

export interface TradeName {
  readonly trade: string;
  readonly name: string;
  readonly kind: string;
  /** Materials and colour, as the record states them. */
  readonly material?: readonly string[];
  readonly color?: string;
  readonly brand?: string;
  readonly typed: readonly string[];
  readonly never: readonly string[];
}

/** `name | kind | typed; typed | never; never | material, material | color | brand` */
const rows: Readonly<Record<string, string>> = {
  clothing: `
    Women's monogram crewneck sweatshirt | sweatshirt | women's sweatshirt; monogram sweatshirt; sweatshirt for women | women's monogram | cotton | oat
    Men's waffle-knit henley shirt | shirt | henley shirt; men's shirt; shirt for men | waffle shirt for henley | cotton | moss
    Embroidered initial denim jacket | denim jacket | denim jacket; initial denim jacket; jacket | initial embroidered | denim | blue
    Kids' oversized fleece hoodie | hoodie | kids hoodie; fleece hoodie; hoodie for kids; oversized hoodie | polyester hoodie | polyester | green
    Mini canvas backpack with name tag | backpack | mini backpack; canvas backpack | clay backpack; name tag backpack canvas | cotton canvas | clay
    Cat-eye sunglasses, tortoise | sunglasses | cat eye sunglasses; sunglasses | eye sunglasses; cat sunglasses | acetate | brown`,
  tea: `
    Lantern Lane Assam | loose leaf tea | loose leaf tea; lantern lane assam | lane assam; assam lane; lane tea | | | Tolliver Teas
    Harbour Fog Earl Grey | black tea | black tea; harbour fog earl grey | grey; fog earl grey tea for harbour; grey tea | | | Tolliver Teas
    Peppermint and liquorice tea bags, 20 | tea bag | tea bags; peppermint and liquorice tea bags | liquorice; peppermint bag | paper
    Bamboo matcha whisk | matcha whisk | matcha whisk; bamboo matcha whisk; whisk | bamboo matcha | bamboo
    Glass teapot for loose leaf tea | teapot | teapot; glass teapot | loose leaf; tea leaf teapot glass | glass
    Cold-brew infuser bottle, 750 ml | infuser bottle | infuser bottle; cold brew infuser bottle | cold bottle; brew infuser | glass, silicone`,
  books: `
    The Governess of Saltmere | novel | novel; governess of saltmere | governess; sea green governess; sea green novel | | sea green
    A Winter Among the Hives | memoir | memoir; winter among the hives | winter; hives | paper
    Hand-in-hand bookends | bookend | bookends; hand in hand bookends | hand | cast iron | black
    Leather bookmark with tassel | bookmark | bookmark; leather bookmark | tassel bookmark leather | leather | tan
    Reading journal for book lovers | reading journal | reading journal; journal | book lovers journal reading
    The Tin Lighthouse, signed first edition | children's book | children's book; tin lighthouse | lighthouse; edition; first edition tin`,
  dogs: `
    Collar for dogs, brass buckle | dog collar | dog collar; collar for dogs | buckle collar brass | nylon | navy
    Slow feeder bowl for puppies | dog bowl | dog bowl; puppy feeder bowl; feeder bowl | melamine dog bowl; melamine feeder bowl | melamine | blue
    Pink salmon training treats | dog treat | dog treats; training treats | pink treats; pink dog treat | salmon
    Squeaky rope toy, medium | dog toy | dog toy; rope toy; squeaky toy | medium rope | cotton rope
    Large waxed cotton dog coat | dog coat | dog coat; coat for dogs; large dog coat | cotton dog | waxed cotton | olive
    Poop bag holder with clip | bag holder | bag holder; poop bag holder | holder; clip holder | nylon`,
  cats: `
    Feather wand toy for cats | cat toy | cat toy; toy for cats; wand toy | feather cats
    Cardboard scratcher lounge | cat scratcher | cat scratcher; cardboard scratcher | lounge cardboard | cardboard
    Small felt cat cave | cat bed | cat cave; felt cat cave | small felt | wool felt | grey
    Catnip mice, set of three | cat toy | catnip mice; cat toy | mice set | cotton
    Salmon bites for kittens | cat treat | cat treat; salmon bites | pink bites | | pink
    Stoneware water fountain bowl | water bowl | water bowl; fountain bowl | water fountain stoneware | stoneware | white`,
  baking: `
    Cast-iron loaf tin, 900 g | loaf tin | loaf tin; cast iron loaf tin | iron tin loaf | cast iron
    Bun, muffin and pudding tin | baking tin | pudding tin; muffin tin; bun tin | pudding | steel
    Nesting measuring cup set | measuring cup | measuring cups; measuring cup; nesting measuring cup set | nesting measuring | stainless steel
    Beech rolling pin for pastry | rolling pin | rolling pin; beech rolling pin; pastry rolling pin | pastry beech | beech
    Sourdough starter kit | baking kit | sourdough starter kit; starter kit | sourdough
    Large linen bread bag | bread bag | bread bag; linen bread bag; large bread bag | bread linen | linen | natural`,
  candles: `
    Fig and cedar soy candle, 30 hours | candle | candle; soy candle | cedar; fig; hours | soy wax
    Midnight Orchard | scented candle | scented candle; midnight orchard | orchard; soy wax midnight orchard | soy wax | plum
    Hand-poured beeswax pillar candle | pillar candle | pillar candle; beeswax pillar candle; candle | hand candle; poured candle | beeswax
    Brass candle snuffer | candle snuffer | candle snuffer; brass candle snuffer | candle brass | brass
    Wax melts, lavender & oat | wax melt | wax melts; wax melt | lavender; oat | soy wax
    Mini taper candle set | taper candle | taper candle; taper candles; taper candle set; mini taper candle | mini set | paraffin | red`,
  stationery: `
    To-do list pad, 50 sheets | notepad | to do list pad; notepad | to; do list | paper
    Clothbound dot grid notebook | notebook | notebook; dot grid notebook; clothbound notebook | grid clothbound | paper, cloth | green
    Brass fountain pen with ink | fountain pen | fountain pen; brass fountain pen | pen with ink; ink pen brass | brass
    Washi tape set, six rolls | washi tape | washi tape; washi tape set | six rolls | paper
    Wax seal stamp with initials | wax seal stamp | wax seal stamp; brass wax seal stamp | initials stamp wax | brass
    Pop-up birthday cards for kids | birthday card | birthday card; birthday cards; pop up birthday cards | pop; up card | card`,
  garden: `
    Copper hand trowel Fiji | hand trowel | hand trowel; copper hand trowel; trowel | fiji; trowel fiji | copper
    Self-watering planter, small | planter | planter; self watering planter; small planter | self; watering self | terracotta
    Hedgehog house with ramp | hedgehog house | hedgehog house; house for hedgehogs | house with ramp; ramp | pine | brown
    Pull-out garden kneeler seat | garden kneeler | garden kneeler; kneeler seat; garden kneeler seat | pull | steel, foam
    Wildflower seed bombs for bees | seed bomb | seed bomb; seed bombs; wildflower seed bombs | clay seed bomb | clay
    Galvanised watering can Galveston | watering can | watering can; galvanised watering can | galveston; can galveston | zinc`,
  toys: `
    Pull-along wooden duck | wooden toy | wooden duck; pull along duck; wooden toy | pull; pull along | beech
    Roll-a-long rattle for babies | baby rattle | rattle; baby rattle | roll; roll rattle | beech
    Magnetic farm animal puzzle | puzzle | puzzle; magnetic puzzle; animal puzzle | farm animal magnetic | plywood | green
    Dress-up lion mask for toddlers | lion mask | lion mask; toddler lion mask | dress; up mask | felt | yellow
    Giant floor jigsaw, 48 pieces | jigsaw puzzle | floor jigsaw; giant jigsaw; jigsaw puzzle | pieces; 48 pieces | card
    Stacking rainbow blocks set | stacking toy | rainbow blocks; stacking blocks | rainbow set stacking | wood`,
  kitchen: `
    Safe Mill Security Jar Opener | jar opener | jar opener; security jar opener | mill jar opener; safe jar opener | steel | | Safe Mill
    Hendry Forge carbon steel paring knife | paring knife | paring knife; carbon steel paring knife | forge knife; forge paring knife | carbon steel | | Hendry Forge
    Tea towel and oven glove | kitchen linen | tea towel; oven glove | tea towel and oven glove | linen | sage
    Over-the-door spice rack | spice rack | spice rack; over the door spice rack | door rack over; the door | steel | black
    Olive oil pourer with stopper | oil pourer | oil pourer; olive oil pourer | stopper; olive pourer oil | glass
    Small enamel colander, cream | colander | colander; enamel colander; small colander; cream colander | cream | enamel | cream`,
  bath: `
    Rosé lip balm | lip balm | lip balm; rosé lip balm | rosé; balm | beeswax | pink
    Soap, lavender and oat | soap | soap; lavender soap | lavender; oat; lavender and oat
    Waffle bath towel for men | bath towel | bath towel; waffle bath towel | for men waffle | cotton | white
    Bath bomb trio, eucalyptus | bath bomb | bath bomb | trio; eucalyptus | | green
    Bamboo soap dish, draining | soap dish | soap dish; bamboo soap dish | draining; bamboo dish soap | bamboo
    Exfoliating sisal body brush | body brush | body brush; sisal body brush | body sisal; body | sisal, beech`,
};

const listed = (text = '', divider = ';'): readonly string[] =>
  text
    .split(divider)
    .map((one) => one.trim())
    .filter((one) => one !== '');

/** All of them, in the order of their trades. */
export const tradeNames: readonly TradeName[] = Object.entries(rows).flatMap(([trade, text]) =>
  text
    .trim()
    .split('\n')
    .map((row) => {
      const [name = '', kind = '', typed, never, material, color = '', brand = ''] = row
        .split('|')
        .map((field) => field.trim());
      return {
        trade,
        name,
        kind,
        typed: listed(typed),
        never: listed(never),
        material: listed(material, ','),
        brand,
        ...(color !== '' && { color }),
      };
    }),
);
