/**
 * Which nouns before another noun name a sort of it, and which name something of their own. Written by hand (no source);
 * folded, lower case.
 */
import { wordSet, wordsOfAll } from '../../../text/word-set.ts';
import { goods } from '../../language/lexicon/goods.ts';
import { flavours, thingColours } from '../../language/lexicon/qualities.ts';
import { audiences, rooms } from '../../language/lexicon/settings.ts';
import { GENERAL, NEVER_ALONE, VERBS } from './neighbour-words.ts';

/**
 * Things that come in sorts, in the singular: a noun before one of them is mostly the name of a sort, as in "oolong tea",
 * and means the thing when it stands alone. Before others it mostly says what a thing is for or made of: a compost scoop.
 */
export const COMES_IN_SORTS = wordSet(`
  backpack bag beer belt bike blanket boot bracelet bread brooch bulb cake candle cap cardigan chair cheese coat
  coffee cushion dress earring fabric flower game gin glasses glove hat headband jacket jean jumper knife lamp
  mitten mushroom necklace noodle notebook paper pasta pastry pen plant purse puzzle rice ring robe rug rum sandal
  sausage scarf shawl shirt shoe skirt slipper sock sofa stool sunglasses sweater tape tea tent tie towel trousers
  wallet watch whisky wine wool yarn`);

/** Goods that are also sorts of others: hoop earrings. */
const SORTS = wordSet('hoop pendant cape wrap throw runner clutch loaf');

/**
 * What is a thing of its own, in the singular: where such a word tells one thing from another, as in "boot brush", it
 * means, alone, what the thing is for, in, of or like.
 */
const OWN_THINGS = wordSet(`
  accident act adult adventure afternoon age air airport album alcohol ale angel animal ankle answer ant apple arm
  army art artist ash aunt autumn avocado baby back bacon bacteria bakery banana bank barn bass bat bath bathroom
  bay beach bead bean bear beard beast beauty bedroom bedtime bee beef beer beetle berry bike bird birth birthday
  bite blade blood blossom blouse board boat body bone bonfire boot border boss bottom bouquet boy brain branch
  bread breakfast breast breath brick bride bridge bristle brother bubble bug building bus bush business butter
  butterfly cabin cable cake calf camera camp campfire campsite canal car carpenter carrot castle cat cattle cave
  ceiling celery cellar century cereal chain chalk charm cheek cheese chef cherry chess chest chew chick chicken
  child chilli chin chip chive chocolate christmas church cider cigar circle city claw climb climber cloud clover
  club coast coffee coin cold collar company computer cook cooking corn corner couple course court cow crab craft
  creature crew crop crowd crumb crust cucumber culture curry curve customer cycle cyclist dad daisy dairy dance
  daughter dawn day death deer dentist desert desk dessert diamond diet dinner dirt disc doctor dog dough dragon
  dream driver duck dusk dust ear earth easter eel egg elbow elephant engine evening event exercise eye eyebrow
  eyelash face family farm farmer father feather festival fiddle field fig finger fingernail fire fish fisherman
  fishing flag flame flavour flea flight floor flour flower fly foam foot football forehead forest fox friend frog
  frost fruit fun fungus fur game garage garden gardener garlic gas ghost ginger girl glass goal goat gold golf
  goose grain gran grandfather grandmother grape grass gravel grave guest guitar gum hair hall hand harbour harvest
  hazel head health heart hedge heel hen herb hill hip history holiday home honey hoof horn horse hospital hotel
  hour house husband ice icing idea infant ink insect island ivy jam jewel jewellery jewelry job joint journey juice
  king kiss kitchen kitten knee knight knot lace lady lake lamb land lap lard lavender law lawn leaf leather lecture
  leg lemon lesson letter lettuce library life lily lime line lip liver lobster log love luggage lunch machine magic
  mail man map maple market marriage meadow meal meat medicine melon metal midnight milk mind mint minute mist
  mobile money monkey month moon morning mosquito moss moth mother motor mountain mouse mouth movie mud mum muscle
  mushroom music mustard nail name nature neck nest newspaper night noon nose nut oak oat ocean office oil olive
  onion orange orchard orchid owl ox oyster page pain paint painter palm panda pantry paper parent park parsley
  party pasta paste pastry path patio paw pea peach peanut pear pearl pencil people pepper perfume person pet petal
  petrol phone piano picnic pie pig pigeon pine pipe pizza plant plate play pocket poem poet point pond pony pool
  pork porridge portrait potato powder prayer price prince princess prune pudding pumpkin puppy queen question quill
  rabbit race radish rain rainbow raspberry rat razor reader recipe record restaurant rib rice river road rock roof
  room root rope rose royal rubber rum rust rye sail sailor salad salmon salt sand sandwich sausage school science
  scissors scone sea season seat seaweed seed seedling sewing shade shadow shape shark shaving sheep shell ship shoe
  shop shore shoulder shower silk sink sister skate skating skin skull sky sleep slug smoke snack snail snake snow
  soap soil soldier sole son soul soup space spice spider spinach spring squirrel stable stage stair star stain
  station steak steam stem stone storm story stove straw strawberry stream street stroke student sugar summer sun
  sunday sunset surf surface surgeon swan sweat sweet swim table tail tape tea teacher team tear teddy teeth
  telephone temple tennis theatre thorn thread throat thumb thunder tide tiger timber time tobacco toe toilet tomato
  tongue tooth top tower town toy track trail train travel tree trip truck trunk tug turkey turtle twig tyre uncle
  valley vegetable veil vinegar violin wall walnut war wasp water wave wax weather wedding weed week weekend whale
  wheat wheel whisky wick wife wind windowsill wine wing winter wolf woman wood wool word work worker world worm
  wound wrist writer writing yard year yogurt zoo packing sealing washing reading cutting baking watering gardening
  knitting polishing training picture photo photograph image postcard card note list plan message news post memory
  gift present bulb cut burn scent smell taste colour color light dark noise sound pressure heat size edge end side
  middle front part piece place position use user hunt walk run ride drive rest stay visit help pass press push pull
  turn fill safety comfort care repair storage display security sport hobby beginner starter kid men women luck sill
  shelf drawer cupboard balcony ledge fence gate door window lid incense candle cloth bag cup mug bowl pan pot
  cocktail espresso filter loose slow single origin basil chamomile dill fennel hibiscus jasmine rosemary sage thyme
  verbena laundry cane pole stick stake`);

/** Words that mean something of their own, as the keys of words are. */
export const SPEAKS_FOR_ITSELF: ReadonlySet<string> = new Set(
  [
    ...wordsOfAll(OWN_THINGS, goods, rooms, audiences, thingColours, flavours, NEVER_ALONE, GENERAL, VERBS),
  ].filter((word) => !SORTS.has(word)),
);
