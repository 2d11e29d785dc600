/**
 * Common nouns for things that are made, sold and given, in the singular. Written by hand (no source). It settles
 * what endings cannot: whether a colour, a room or a material after a word describes that word.
 */
import { wordSet } from '../../../text/word-set.ts';

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
