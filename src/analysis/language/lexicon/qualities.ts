/** Colours, materials and adjectives of the trade. Written by hand (no source); folded, lower case, British and US. */
import { wordSet } from '../../../text/word-set.ts';

/** Colours that are hardly ever the thing itself. */
export const colours = wordSet(`
  amber apricot aqua aquamarine auburn azure beige black blk blond blonde blue bluish brown burgundy buff camel cerise
  champagne charcoal cobalt coloured colored colorful colourful crimson cyan ecru emerald fuchsia ginger gray green
  greenish grey greyish indigo ivory jade khaki magenta maroon mauve multicolor multicolored multicolour multicoloured
  navy ochre ocher oatmeal opal orange pewter pink pinkish purple red reddish russet rust sapphire scarlet sepia sienna
  silver tan taupe teal terracotta turquoise ultramarine umber vermilion violet white yellow gold golden clear
  transparent natural neutral pastel neon fluorescent rainbow metallic translucent opaque monochrome blush`);

/** Colours that are things too: a rug in plum, but a plum. They are colours only beside a thing. */
export const thingColours = wordSet(`
  almond aubergine bark biscuit blueberry brick butter caramel cherry chestnut chocolate cinnamon clay coal cocoa coffee
  coral cream denim dove duckegg ebony eggplant espresso fawn fern flax forest grape hazel heather honey ink lavender
  lemon lilac lime linen mahogany mango mint mist mocha moss mustard oat olive peach pearl periwinkle pine pistachio
  plum pumpkin raspberry rose ruby saffron sage salmon sand sky slate smoke snow spice steel stone straw sunflower
  tangerine tobacco toffee vanilla walnut wheat wine`);

/** Colours that stuff has by itself: the brown of wood, the tan of jute, the gold of brass. Worn, they are chosen. */
export const naturalColours = wordSet(
  'brown tan natural clear transparent neutral oatmeal gold golden silver honey multicolour multicolor multicoloured multicolored',
);

/** They go before a colour and make one with it: "dark green", "rose gold", "off white". */
export const shades = wordSet(`
  dark light pale bright deep soft dusty dusky burnt hot baby royal navy sky sea rose off warm cool muted faded antique
  brushed matte matt gloss old olive forest bottle mint duck burnished polished satin snow lime electric powder steel
  slate midnight racing blood brick sage multi jet ash`);

/** What things are made of, and how it was worked: "cast", "woven". */
export const materials = wordSet(`
  acacia acetate acrylic alloy alpaca aluminium aluminum ash bamboo beech beechwood birch boucle brass bronze
  calico canvas cardboard cashmere cedar cement ceramic chambray chenille chintz chrome clay coir concrete
  copper corduroy cork cotton crystal damask denim earthenware elm enamel enamelled enameled fabric faux felt
  fiberglass fibreglass flannel fleece foam fur gingham glass gold granite hardwood hemp hessian iron jersey
  jute kraft lacquer laminate leather leatherette linen lucite macrame mahogany maple marble mdf melamine mesh metal
  microfiber microfibre mohair muslin nickel nylon oak oilcloth olivewood onyx organza paper paraffin pewter
  pine plastic platinum plywood polyester polypropylene polyurethane porcelain pvc quartz raffia rattan resin
  rosewood rubber sandstone satin seagrass seersucker sheepskin silicone silicon silk silver sisal slate
  soapstone softwood soy spruce stainless steel stoneware suede teak terracotta terrazzo terry tin titanium
  travertine tweed twill velour velvet viscose walnut wicker willow wire wood woodchip wool woolen woollen
  zinc beeswax birchwood wrought cast galvanised galvanized bone china limestone wooden woven knitted
  crocheted`);

/** Materials that a label states and no shopper asks for: they are cheap, technical, hidden, or a matter of course. */
export const unsoughtMaterials = wordSet(`
  acetate aluminium aluminum cardboard card chrome fiberglass fibreglass foam laminate mdf melamine microfiber
  microfibre nickel nylon paper paraffin plastic plywood polyester polypropylene polyurethane pvc resin synthetic tpr viscose zinc led`);

/** Materials that close a shopper's phrase as a quality ("mister brass"), and hardly ever are the thing there. */
export const trailingMaterials = wordSet(`
  acrylic aluminium aluminum bamboo beech brass bronze ceramic chrome clay coir concrete copper cotton earthenware enamel hardwood
  jute leather linen mahogany maple marble metal nickel oak pine plastic polyester porcelain rattan resin rubber silicone soy silver
  raffia stainless steel stoneware teak terracotta velvet vinyl walnut wicker wood wooden zinc gold faux`);

/** Stuff that keeps its material as its head: bed linen, knitting wool, sewing cotton. */
export const beforeStuff = wordSet(
  'bed table kitchen household sheet scrap precious fire ply hard soft drift',
);

/** Two or more words that are one material or colour. The second decides nothing by itself. */
export const pairedQualities = new Set([
  'rose gold',
  'stainless steel',
  'carbon steel',
  'cast iron',
  'wrought iron',
  'bone china',
  'fine china',
  'mother of pearl',
  'faux leather',
  'faux fur',
  'vegan leather',
  'real leather',
  'solid wood',
  'solid oak',
  'olive wood',
  'egg shell',
  'duck egg',
  'wool felt',
  'memory foam',
  'sea grass',
  'bees wax',
  'soy wax',
  'kraft paper',
  'borosilicate glass',
  'recycled glass',
  'organic cotton',
  'cotton canvas',
  'free range',
  'fair trade',
  'waxed cotton',
  'cat eye',
]);

/** Adjectives that names of goods and shoppers use and that are no things; more are known by their endings. */
export const adjectives = wordSet(`
  accessible acoustic adjustable aesthetic affordable airy american ancient angled antique apothecary
  artificial artisan artisanal artistic assorted asymmetric asymmetrical authentic automatic bare baroque
  basic beaded beautiful biodegradable bladed blank bohemian boho bold botanical bottled braided breathable
  bright british broad budget bulky busy calm calming carved casual celestial celtic charming cheap checked
  checkered chequered chic chilled chinese chunky circular classic classical clean cleansing clever closed
  coastal cold collapsible colonial comfortable comfy commercial contemporary cool cordless cosmic cosy
  country cozy creamy crisp crocheted crunchy cubist curly curved cushioned custom customisable customised
  customizable customized cute cylindrical damp danish decorative deluxe designer detachable diagonal diamond
  digital dimmable dirty disposable domestic dotted double downtown dried dry dual easter eclectic ecological
  edible egyptian elastic electric electrical electronic elegant embossed empty energising energizing english
  engraved ergonomic essential ethical ethnic european everyday executive exfoliating expandable extendable
  extendible extra fair fancy farmhouse fast fat favorite favourite felted feminine festive fine finnish firm
  flat flexible floating floral flowery fluffy flush fluted foldable folding foreign formal fragile fragrant
  framed free freestanding freezable french fresh friendly frozen fruity full fun functional funky funny
  furry fuzzy gentle genuine geometric german gigantic gloss glossy gorgeous gothic grand graphic great greek
  green grown halloween handheld handled handmade handy hanging happy hard hardy healthy heated heavy
  heavyduty herbal hexagon hexagonal high historic hollow homemade horizontal hot huge hydrating
  hypoallergenic indian indoor industrial innovative interactive interior irish irregular italian japanese
  jarred jewish juicy knitted lasting latin lazy leafy lidded lightweight lined lively local long loose
  lovely low lucky luxurious luxury magnetic male manual marbled marine masculine massive matching matt matte
  mature mechanical mediterranean merry mexican microwave mid midcentury minimal minimalist minimalistic
  modern modular moist moisturising moisturizing moroccan mottled mounted multifunction multifunctional
  multipurpose mystic narrow nautical neat nesting new nice nordic norwegian nourishing novelty octagon
  octagonal odd odourless official old ombre open optical organic oriental original ornamental ornate
  orthopaedic orthopedic outdoor outside oval overhead oversized padded painted paisley pale patio perennial
  perfect persian personal personalised personalized petite plaid plain plaited playful pleated plush polar
  portable portuguese posh practical premium pretty printed private professional pure quality queer quick
  quiet quilted quirky rare raw real rechargeable reclining rectangle rectangular recyclable refillable
  refreshing regency relaxing removable retractable retro reusable reversible ribbed rich rigid robust
  rocking romantic rosy rough round royal ruched ruffle ruled rural russian rustic safe salty scalloped
  scandi scandinavian scottish seamless seasonal sensory shabby shaggy sharp sheer shiny short silent silky
  simple single skinny sleek sleepy sliding slim slow small smart smocked smoky smooth soft solar solid
  soothing spacious spanish spare sparkling sparkly special speckled spicy spooky spotted square squared
  stackable standard stationary stemless sticky stiff still straight striped strong sturdy stylish
  summery super superior sustainable swedish sweet swivel symmetrical tactile tall tartan tasty technical
  temporary textured thermal thick thin thrown tidy tight tinned tiny traditional transitional transparent
  triangle triangular tribal triple tropical tufted turkish turned twin ultra unbreakable unique universal
  unlined unscented unusual upright urban useful utility vegan vegetarian versatile vertical vibrant
  victorian viennese vintage visible vivid warm washable waterproof watertight wavy welsh western wet
  whimsical whole wide wild wireless wobbly wonderful woolly worn woven young zen zero zesty zigzag`);

/** What sellers say of everything, and shoppers type of nothing. */
export const praise = wordSet(`
  amazing authentic awesome beautiful best charming clever elegant exquisite fabulous fantastic favourite favorite fine
  finest genuine gorgeous great handy happy honest ideal incredible lovely lucky magnificent perfect premium pretty proper quality
  safe smart special splendid stunning super superb superior true trusty ultimate unique useful wonderful`);

/**
 * Parts of things and of plants that take the word before them along and are a quality with it: a long sleeve, shea
 * butter, a linen blend. Neither of the two is said of the thing by itself.
 */
export const partsOfThings = wordSet(`
  bark batch blend breed brim butter cuff hem inspired leaf milk panel petal profile rim root sleeve sole spout style
  tier`);

/** The same of what is worn: a crew neck is a neck of the jumper, but a neck pillow is for one's own. */
export const partsOfClothes = wordSet('collar fit heel leg neck necked rise shoulder strap toe top waist');

/** Endings that make an adjective of nearly any word. Participles in -ed are tested apart from these. */
export const adjectiveEndings =
  /(?:able|ible|ful|less|ous|ish|esque|proof|resistant|friendly|style|shaped|sized|inspired|themed|scented|mounted|coloured|colored)$/;

/** Things that an ending makes look like an adjective. */
export const notAdjectives = wordSet(`
  table vegetable timetable constable cable stable turntable worktable tabletop syllable parable bible crucible thimble
  dish fish polish brush radish relish varnish finish dress mattress chess duchess address mistress actress waitress
  wilderness bed seed weed feed reed bread thread shed sled daybed flatbed seedbed birdseed seaweed aniseed linseed
  flaxseed poppyseed rapeseed hotbed flowerbed watershed woodshed toolshed flatbread gingerbread shortbread cornbread
  crispbread sweetbread speed breed steed tweed bleed creed greed spread tread shred sunbed airbed waterbed headboard
  moped biped homestead bedstead lead head red handful mouthful spoonful teaspoonful tablespoonful cupful apprentice
  dried armful bucketful lifestyle hairstyle freestyle style unloved starfish catfish crayfish swordfish goldfish
  jellyfish squish licorice`);

/** Thing colours that before a thing mean what is in it: a lavender sachet holds lavender, a sage mug is green. */
export const flavours = wordSet(`
  almond bark biscuit blueberry caramel cherry chocolate cinnamon cocoa coffee fern flax grape hazel honey ink lavender
  lemon lime linen mango mint moss oat orange pine pistachio pumpkin raspberry rose saffron snow spice stone straw
  sunflower tangerine toffee vanilla walnut wheat wine ginger pearl steel sand smoke ruby butter brick clay ebony`);

/** Scents beside the flavours; most are plants. */
export const scents = wordSet(`
  aloe amber basil bergamot calendula cedar cedarwood chamomile citronella clary cypress eucalyptus fig frankincense
  freesia gardenia geranium hyacinth jasmine juniper lemongrass lilac linden magnolia marigold melissa musk myrrh neroli
  nettle oatmeal palmarosa patchouli peony peppermint petitgrain poppy rosemary sandalwood seaweed spearmint thyme
  tuberose verbena vetiver violet wildflower wintergreen yarrow ylang`);

/** Adjectives that are half of a thing's name. */
export const namingPairs = new Set(
  `sweet pea|sweet peas|sweet potato|sweet corn|sweet william|hot water|hot chocolate|hot sauce|hot tub|french press
  |green tea|black tea|white tea|black pepper|red wine|white wine|cold brew|wild flower|dry shampoo|french bean
  |runner bean|broad bean|spring onion|winter squash|baby corn|brown sugar|white chocolate|dark chocolate|red onion
  |high chair|rocking chair|hanging basket|rocking horse|folding chair|polar fleece|silver birch|christmas cactus
  |cotton bud|cotton wool|steel wool|cast iron|wild bird|dry erase|fresh water|solar light|string light|electric blanket
  |magic wand|french knitting|blank book|pocket knife|pocket watch|travel mug|sewing machine|paper clip|paper weight
  |wood burner|wood stain|tin opener|bottle opener|leather care|oak moss|orange blossom|garden fork|garden twine
  |animal feed|sea salt|earl grey|lady grey|orange pekoe|wall hanging|door hanging|baby blanket|oval|square foot`
    .split('|')
    .map((pair) => pair.trim()),
);

/** Woods that things are turned, carved and joined of; willow and bamboo are woven. Common knowledge, no source. */
export const woods: ReadonlySet<string> = wordSet(`
  acacia alder ash beech beechwood birch birchwood boxwood cedar cherry chestnut elm hardwood hazel larch lime mahogany
  mango maple oak olivewood pear pine plywood poplar rosewood softwood spruce sycamore teak walnut wood yew
`);
