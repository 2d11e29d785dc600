/**
 * Common nouns for things that are made, sold and given, in the singular. Written by hand (no source). It settles
 * what endings cannot: whether a colour, a room or a material after a word describes that word.
 */
import { wordSet, wordsOfAll } from '../../../text/word-set.ts';

/** The nouns, folded. */
export const goods = wordSet(`
  accessory air-freshener apron armchair armoire awning backpack backsplash badge bag ball banner bar barrow barstool
  basin basket bath bathtub beaker bean bed bedding bedspread bedstead bell belt bench bib bike bin bird-bath birdbath
  birdhouse blanket blind board boiler bolster book bookcase bookend bookmark bookshelf boot bottle bowl bowls box
  bracelet bracket bread bread-bin brick broom brush bucket buckle buffet bulb bunting bureau burner button cabinet
  cachepot caddy cage cake candelabra candle candleholder candlestick canister cap cape card cardigan carpet cart case
  casserole chain chair chaise chandelier chest chime chopstick chopsticks clip cloche clock cloth clothes coaster coat
  coffeepot colander comb comforter compass console container cooker cooler corkscrew corner-shelf costume cot couch
  counter cover coverlet cradle crate credenza crib crock crown cruet cup cupboard curtain cushion cutlery dagger
  daybed decanter decor decoration decorations desk dibber diffuser dinnerware dish dishcloth dishes dispenser doll
  door doorbell doormat doorstop drape drapery drawer dress dresser dressing-gown drill drum drumstick dustpan duvet
  earring earrings easel edging envelope eraser fabric fan faucet feeder fence figurine fire-pit firepit fireplace
  flag flask flatware flooring flowerpot footstool fork fountain frame freezer fridge fryer funnel furniture futon
  gadget game garland gate gazebo gift glasses globe glove glue gnome goblet grater greenhouse griddle grill guitar
  hammer hammock hamper handbag handkerchief handle hanger hat headband headboard heater helmet hinge hoe holder hood
  hook hose hutch jacket jar jewellery jewelry jigsaw journal jug jumper kettle key keyring kit knife knob label
  ladder ladle lamp lampshade lantern lawnmower leash lid light lighting lightbulb lighter linen loaf lock locker lounger
  loveseat luggage machine magnet mailbox mallet marker mask mat mattress mirror mister mitt mitten mobile mop mortar
  mould mouse mug nail napkin necklace needle nest-box nestbox net nightlight nightstand notebook notepad nozzle olla
  oven ornament ottoman outfit overall pad paddle padlock pan panel pants parasol peeler peg pen pencil pendant pergola
  pestle photo piano picture pillow pillowcase pin pincushion pitcher planter plaque plate platter pliers plug pole
  poncho postcard poster pot pouch pouf print projector propagator prop pruner pump puppet purse puzzle quilt rack
  radiator radio rail rake ramekin razor recliner refrigerator ring rocker rolling-pin rope rug runner saddle salt
  sandal sauna saucepan saucer saw scale scarf sconce scoop screen screw screwdriver sculpture seat secateurs sectional
  settee shade shampoo shears shed sheet shelf shelving shirt shoe shoes shovel shower showerhead sideboard sieve sign
  sink skewer skillet skirt slipper snips soap sock socks sofa spade spatula speaker spectacles sponge spoon sprayer
  sprinkler stamp stand statue steamer step-stool sticker stocking stool stove strap strainer string suit suitcase
  sunglasses sweater swing switch table tablecloth tableware tag tapestry teacup teapot teaspoon telephone television
  tent terrarium thermometer thermos throw tie tile tin tissue toaster toilet tongs tool toolbox toothbrush topper torch
  toy tray trellis trinket trivet trolley trouser trowel trunk tub tumbler twine umbrella urn valance vanity vase
  vessel wagon wallet wallpaper wand wardrobe washer watch weight wheelbarrow whisk whistle wig wind-chime window wok
  workbench wrap wreath wrench yarn lid gauge gauze lotion balm salve perfume deodorant toothpaste sampler notecard
  planner diary calendar ribbon thread bobbin loom hoop kneeler sowing-tray bell-jar windchime suncatcher dreamcatcher
  biscuit bonbon brownie chocolate chutney cookie cordial cracker crisp fudge jam jelly lollipop marmalade muffin nougat
  pickle preserve relish sauce shortbread snack spread sweet syrup teabag toffee tonic truffle seed bulb   `);

/** Things that are hardly anything without what they are for: a pad for the knees, a stand for plants. */
export const generalGoods = wordSet(`
  accessory art article arrangement attachment ball bar base basin bed board bomb box bracket brush caddy can case
  container cover cup cutter cuff decor decoration device disc dish dispenser edging equipment feed feeder filter
  fork frame garden gear gift grip guard handle hanger head holder hook house insert jar keeper kit label light lid
  liner machine maker mat meter mix mount organiser organizer ornament pack packet pad panel part peg piece pin plate
  pole pot pouch press print protector rack rail ring rod roll set sheet shelf spray spreader stamp stand station
  stick stone storage strap strip supply support system table tag tie tin tool topper top tray tub tube unit vessel
  wash wrap`);

/** Words for shelves of a shop rather than for things: who looks for a dibber does not type "hand tool". */
export const wideGoods = wordSet(`
  accessory apparel article clothing craft decor decoration equipment furniture gadget gear gift good goods hardware instrument
  item jewellery jewelry kit linen ornament packet product set stationery supply support textile tool utensil ware wear`);

/** Things of several meanings of which this one is typed by itself. */
export const namesakes = wordSet(`
  apron blanket book bookmark bracelet brooch candle cap card chocolate coaster cushion diary earring fudge
  glove hat honey jam journal jumper kite lantern lock marmalade mug napkin necklace notebook pencil perfume pillow
  planner postcard poster puppet purse puzzle quilt ribbon rug salt scarf shampoo shirt shortbread snips soap sock
  sponge sticker sweater tea toffee torch towel toy twine vase wallet watch whistle wreath yarn`);

/** Works and blends: whatever stands before the word is mostly a title, as in "Quiet Evening tea". */
export const namedGoods = wordSet(`
  album anthology atlas audiobook book booklet cd chapbook comic cookbook essay fiction film guide guidebook lp magazine
  manga memoir mystery novel novella paperback pamphlet picturebook play poem poetry romance saga song story storybook
  textbook thriller trilogy vinyl volume workbook zine
  blend brew coffee infusion tea tisane gin wine beer rum whisky vodka cider ale cologne fragrance perfume potpourri`);

/** With these, everything whose name may be a title without the word, as "Midnight Orchard" of a candle. */
export const titledGoods = wordsOfAll(
  namedGoods,
  wordSet(`
  game graphic jigsaw pattern poster print puzzle record
  candle cordial diffuser incense melt oil scent spray wax
  colour ink lipstick paint polish skein yarn`),
);

/** What animals wear, eat and use. A dog on a mug is a picture. */
export const petGoods = wordSet(`
  bandana bandanna bed biscuit blanket bone bowl brush cage carrier chew coat collar crate feed flap food harness house
  hutch jumper kennel lead leash litter mat scratcher shampoo snack sweater tag teaser treat tower toy tunnel wand`);

/** Foods by words that WordNet has for other things first. */
export const morsels = wordSet('treat snack chew bite');

/** What is sown, planted or dissolved, and what that is sold in. */
export const sown = wordSet('seed bulb tuber corm plant plug seedling packet sachet mix bomb');

/** Beside what is worn and what stands at home: these are chosen by colour too. */
export const colourful = wordSet(`
  apron bag bandana beanie blanket bow bowl candle cardigan coat cup curtain cushion dress glove gloves hat headband jug
  jumper lampshade lead leash mug napkin notebook notecard pencil pen pillow pot planter purse ribbon rug sandal scarf shawl shirt
  skirt slipper sock socks sweater sweatshirt tablecloth tee throw towel twine umbrella vase wallet yarn can collar
  harness journal ink wax thread paint floss`);

/** What is sold in several scents; what is eaten and drunk comes in flavours anyway. */
export const scented = wordSet(`
  balm bath bomb butter candle cologne cream diffuser fragrance incense lotion melt mist oil perfume potpourri sachet salve
  salt scrub shampoo soak soap spray wash wax`);
