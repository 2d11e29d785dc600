/**
 * What the neighbours of a noun may be, beside what the lexicons of the language have. Written by hand after the
 * adjectives, verbs and nouns that WordNet 3.1 counts most often; folded, lower case.
 */
import { wordSet, wordsOfAll } from '../../../text/word-set.ts';
import {
  ARTICLES,
  BARE_PREPOSITIONS,
  BE,
  BOTH_CASES,
  CONJUNCTIONS,
  DEMONSTRATIVES,
  DO,
  HAVE,
  MODALS,
  OBJECTS,
  POSSESSIVES,
  PREPOSITIONS,
  QUANTIFIERS,
  QUESTION_WORDS,
  SUBJECTS,
  TOTALS,
} from '../../language/lexicon/function-words.ts';
import { goods } from '../../language/lexicon/goods.ts';
import { adverbs, particles } from '../../language/lexicon/grammar.ts';
import { adjectives, flavours, thingColours } from '../../language/lexicon/qualities.ts';
import { audiences, rooms } from '../../language/lexicon/settings.ts';

/** They open a noun phrase. */
export const OPENERS = wordsOfAll(
  ...[ARTICLES, DEMONSTRATIVES, POSSESSIVES, QUANTIFIERS, TOTALS],
  wordSet('whose which what such neither either enough'),
);

/** They say when, where or how much and are no part of a noun phrase; more end in -ly. */
const ADVERBS = wordsOfAll(
  adverbs,
  wordSet(`
  abroad afterwards ago ahead alone along altogether always anywhere apart around aside away back backwards besides
  downstairs else elsewhere even everywhere forever forward forwards further hence however indoors indeed instead maybe
  meanwhile nearly nevertheless once otherwise outdoors overnight perhaps rather regardless sideways
  so soon somehow sometimes somewhere straightaway then therefore though thus today together tomorrow tonight twice
  upright upside upstairs yesterday yet alike anyway anymore downhill uphill somewhat almost yes no`),
);

/** What may stand right after a verb, and seldom after a noun; adverbs in -ly too. */
export const AFTER_VERBS = wordsOfAll(
  ...[OPENERS, OBJECTS, BOTH_CASES, ADVERBS],
  wordSet('around away back down off out over through together up into onto against'),
);

/** Words that no noun phrase goes over, whatever stands around them. */
export const BORDERS = wordsOfAll(
  ...[OPENERS, SUBJECTS, OBJECTS, BOTH_CASES, QUESTION_WORDS, CONJUNCTIONS],
  ...[PREPOSITIONS, particles, BE, HAVE, DO, MODALS, ADVERBS],
  wordSet(`
  ours yours mine hers theirs itself himself herself themselves ourselves yourself myself oneself there here not
  someone somebody something anyone anybody anything everyone everybody everything nobody nothing none
  having let lets unless whether although whereas whenever wherever don't doesn't didn't isn't aren't wasn't weren't
  can't won't couldn't wouldn't shouldn't haven't hasn't cannot it's that's here's there's what's who's he's she's
  i'm i've i'll i'd you're you've you'll you'd we're we've we'll we'd they're they've they'll they'd let's`),
);

/** Between a noun and what says more of it: "a spool of twine". */
export const JOINING_PREPOSITIONS: ReadonlySet<string> = new Set(
  [...BARE_PREPOSITIONS].filter((word) => !['at', 'to', 'by'].includes(word)),
);

/** Participles between a noun and such a preposition: "made of copper". */
export const JOINING_PARTICIPLES = wordSet('made meant used cut woven knitted carved turned cast');

/** Adjectives that say nothing of which thing is meant, more than the lexicon of the trade has. */
export const GENERAL = wordSet(`
  able absolute absurd accurate actual additional adequate afraid alert alive ample ancient angry annual apt awake aware
  awful awkward bad bald bare base best better big bitter bleak blind blunt bony brave brief brilliant brisk brittle
  broken bumpy bushy busy careful central certain cheeky cheerful chilly chunky clammy clear clever close
  cloudy clumsy coarse cold common compact complete complex convenient correct costly crazy crisp crooked crucial crude
  crumbly crumpled cunning curious current daft daily dainty damp dark dear decent deep definite delicate delicious dense
  different difficult dim dire direct distant distinct dizzy dreadful dreamy dry due dull dumb dusty eager early earnest
  earthy easy edgy elder elderly enormous enough entire eternal even everlasting exact excellent exotic expensive
  explicit exquisite extreme faint fair faithful false familiar famous far few fierce fiery filthy final first
  fitting flimsy fond foolish foreign former fragile fragrant frail frank frequent frosty frozen funny further fussy 
  general generous gentle gigantic glad glassy gleaming glorious good grand grateful grave greasy great greedy grim gritty
  gross grubby grumpy guilty hairy half handsome handy happy hard harsh hasty hearty hefty helpful hidden high hoarse
  hollow holy honest humble hungry icy ideal idle ill immediate important impossible indirect inexpensive infinite
  initial inner innocent intact intense intimate intricate jaunty jolly joint just keen knotty lame lanky
  large last late latest latter lazy lean least legal lesser lethal light likely little living lofty lone lonely long
  loose lost loud lousy low loyal lucky lukewarm lumpy lush mad main marvellous marvelous mature mean meek
  mellow mere merry messy middle mighty mild misty mobile moderate modest moist monthly moral muddy murky mutual naked
  narrow nasty natural nearby nearest neat necessary nervous new next nice noble noisy normal notable novel numb
  obvious occasional odd off old only opposite ordinary original other outer overdue own pale particular patient
  peculiar perfect permanent plain playful pleasant plump polite poor popular possible posh powdery powerful
  precious precise present previous prickly prime prior probable prompt proper proud pure quaint quick quiet random
  rapid rare raw ready real recent regular relevant reliable remarkable remote resilient rich rickety right rigid ripe
  robust rosy rotten rough rubbery rude ruined rustic rusty sacred sad safe salty same sandy satisfying savage savoury
  savory scarce scary second secret secure sensible separate serious severe shady shaky shallow shapely sharp sheer
  shiny short shy sick silent silly similar simple sincere single singular sleepy slender slight slim slippery sloppy slow
  sluggish small smart smooth snappy snug sober sole solemn solid sore sorry sour spare sparse specific speedy
  splendid springy square stale stark steady steep sterile stern sticky stiff still stout straight strange strict strong
  stubborn stupid sturdy stylish sublime subtle sudden sufficient suitable sunny super superb superior supple supreme sure
   sweet swift tall tame tangy tart tasty tender tepid terrible terrific thankful thick thin thirsty thorough
  thoughtful thrifty tidy tight timeless timid tiny tired top total tough tricky trim true trusty typical ugly ultimate
  unique upper upright upset urgent useful useless usual utter vague vain valid valuable various vast very vivid vulgar
  warm wary wavy weak wealthy weekly weird welcome well wet whole wicked wide wild wise witty wobbly wonderful wonky
  woody worn worse worst worthy wrong yearly young dozen several many much more most fewer less extra identical gorgeous
  everyday fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth twentieth third hundredth umpteenth
  made grown bought kept torn hung woven bound bent blown thrown chosen broken forgotten given known shared
  level musty sown favourite favorite beloved so-called ex wooden metal woollen woolen metallic coloured colored
  january february march april june july august september october november december`);

/** Verbs of what people do with things and what things do, in their bare form. */
export const VERBS = wordSet(`
  add age air allow appear arrange arrive ask avoid bake be beat become become begin belong bend bite blend bloom blow boil
  borrow bounce break breathe brew bring brush build burn buy call carry catch change check chew chill choose chop clean
  clear cling clip close coat collect come contain cook cool cost count cover crack crease crumble crush cure curl cut dab
  darken deserve differ dig dip discover dissolve do double drag drain draw dress drink drip drop dry dust eat empty end
  enjoy enter expect fade fail fall feed feel fetch fill find finish fit fix flake flicker flip float flow fold follow
  forget fray freeze gather get give glow go grab grate grease grind grip grow hand hang happen harden have hear heat help
  hide hold hope hug hum include invite iron join keep knead knit know lack land last laugh lay lead leak lean leave lend
  let lie lift light like line list listen live load look loosen lose love lower make mark marry match matter mean measure
  meet melt mend mind miss mist mix mount move need offer open order outlast outlive owe own pack paint pass pat pay peel
  pick pinch place plant play plug point polish post pour prefer prepare press print promise prop protect prove prune pull
  push put raise reach read receive recommend refill remain remember remind remove repair repeat replace rest return ring
  rinse rise roast roll rot rub run rust save say scatter scoop scrape scrub seal season see seem sell send serve set settle
  sew shake share sharpen shed shift shine shop show shrink shut sift sign simmer sing sink sip sit skip slice slide slip
  slow smell smoke soak soften sound sow speak spill spin split spoil spread sprinkle squash squeeze stack stain stand start
  stay steam steep stick stir stop store strain stretch strike string strip suffer suit support surprise swap sweep swell
  swing take taste teach tear tell thank think throw tie tighten tilt tip tire toast toss touch travel treat trim trust try
  tuck turn twist uncover undo unfold unpack unroll unscrew untie use visit wait wake walk want warm wash watch water wear
  weave weigh welcome wet whisk whistle win wind wipe wish withstand wobble wonder work worry wrap write wring yield adore
  choose advise agree announce apply attach balance bear blame boast bring celebrate collect compare complete confuse
  consider continue copy cost create crave cycle decide decorate deliver design dislike display drape earn encourage
  explain explore fasten feature fear finish form glide guess handle hate hear honour honor imagine improve insert inspire
  introduce invent keep leap learn lock lug make manage mention mess name note notice number obey pair pause perch plan
  please pop practise practice praise preserve produce prompt punch question rattle realise realize recall recycle refuse
  regret reheat rely require rescue reveal review reward ruin scare score scream search separate shape shelter shorten
  sleep smile snap sniff solve stamp store struggle study supply suppose suspect swallow switch tackle test thin thrive
  answer sweat tangle tick tug value vary wag wander`);

/** Past forms that do not end in -ed, of verbs that have things for subject or object. */
export const PASTS = wordSet(`
  ate beat became began bent bit blew bought broke brought built burnt came caught chose clung cost crept cut dealt did
  drank drew drove dug dwelt fed fell felt fit flew forgot found froze gave got grew ground had heard held hid hit hung hurt
  kept knew laid lay led left lent let lit lost made meant met paid put ran rang read rose said sang sank sat saw
  sent set shed shone shook shot showed shrank shut slept slid smelt sold spent spilt split spoke spread sprang spun
  stank stole stood stuck struck swam swept swore swung taught thought threw told took tore went wept woke won wore wound
  wove wrote was were outgrew overtook undid withstood`);

/** Bare verbs after which another bare verb may follow a thing: "let the candle burn". */
export const BEFORE_THING_AND_VERB = wordsOfAll(
  MODALS,
  DO,
  wordSet(`let lets letting make makes made making help helps helped helping see saw seeing watch watches watched watching
  hear heard feel`),
);

/** Verbs of which a noun in the plural is the subject, where it stands right before them. */
export const AFTER_PLURALS: ReadonlySet<string> = new Set(
  [...wordsOfAll(BE, HAVE, DO, MODALS, VERBS)].filter((word) => !GENERAL.has(word) && !adjectives.has(word)),
);

/** Doings that are named after the thing that is made: "candle making". */
export const NAMED_DOINGS = wordSet('making keeping weaving growing dipping pouring blowing brewing');

/** Words in -ing that say what a thing is for, and seldom what is being done with it: sealing wax. */
export const PURPOSES = wordSet(`
  boxing chewing climbing dancing diving hiking measuring riding rocking running sealing shopping sleeping smelling
  swimming tracing`);

/** After these heads no reader knows which thing is meant: they are the sending itself, or how anything is sold. */
export const NEVER_ALONE = wordSet('box set kit pack parcel bundle collection selection hamper subscription');

/**
 * Things that come in sorts, in the singular: a noun before one of them is mostly the name of a sort, as in "oolong tea",
 * and means the thing when it stands alone. Before others it mostly says what a thing is for or made of: a compost scoop.
 */
export const COMES_IN_SORTS = wordSet(`
  backpack bag beer belt bike blanket boot bracelet bread brooch bulb cake candle cap cardigan chair cheese coat coffee
  cushion dress earring fabric flower game gin glasses glove hat headband jacket jean jumper knife lamp mitten mushroom
  necklace noodle notebook paper pasta pastry pen plant purse puzzle rice ring robe rug rum sandal sausage scarf shawl
  shirt shoe skirt slipper sock sofa stool sunglasses sweater tape tea tent tie towel trousers wallet watch whisky wine
  wool yarn`);

/** Goods that are also sorts of others: hoop earrings. */
const SORTS = wordSet('hoop pendant cape wrap throw runner clutch loaf');

/**
 * What is a thing of its own, in the singular: where such a word tells one thing from another, as in "boot brush", it
 * means, alone, what the thing is for, in, of or like.
 */
const OWN_THINGS = wordSet(`
  accident act adult adventure afternoon age air airport album alcohol ale angel animal ankle answer ant apple arm army art
  artist ash aunt autumn avocado baby back bacon bacteria bakery banana bank barn bass bat bath bathroom bay beach
  bead bean bear beard beast beauty bedroom bedtime bee beef beer beetle berry bike bird birth birthday bite blade blood
  blossom blouse board boat body bone bonfire boot border boss bottom bouquet boy brain branch bread breakfast breast breath
  brick bride bridge bristle brother bubble bug building bus bush business butter butterfly cabin cable cake calf camera
  camp campfire campsite canal car carpenter carrot castle cat cattle cave ceiling celery cellar century cereal chain
  chalk charm cheek cheese chef cherry chess chest chew chick chicken child chilli chin chip chive chocolate christmas
  church cider cigar circle city claw climb climber cloud clover club coast coffee coin cold collar company computer cook
  cooking corn corner couple course court cow crab craft creature crew crop crowd crumb crust cucumber culture curry
  curve customer cycle cyclist dad daisy dairy dance daughter dawn day death deer dentist desert desk dessert diamond diet
  dinner dirt disc doctor dog dough dragon dream driver duck dusk dust ear earth easter eel egg elbow elephant engine
  evening event exercise eye eyebrow eyelash face family farm farmer father feather festival fiddle field fig finger
  fingernail fire fish fisherman fishing flag flame flavour flea flight floor flour flower fly foam foot football forehead
  forest fox friend frog frost fruit fun fungus fur game garage garden gardener garlic gas ghost ginger girl glass goal
  goat gold golf goose grain gran grandfather grandmother grape grass gravel grave guest guitar gum hair hall hand
  harbour harvest hazel head health heart hedge heel hen herb hill hip history holiday home honey hoof horn horse hospital
  hotel hour house husband ice icing idea infant ink insect island ivy jam jewel jewellery jewelry job joint journey juice
  king kiss kitchen kitten knee knight knot lace lady lake lamb land lap lard lavender law lawn leaf leather lecture leg
  lemon lesson letter lettuce library life lily lime line lip liver lobster log love luggage lunch machine magic mail man
  map maple market marriage meadow meal meat medicine melon metal midnight milk mind mint minute mist mobile money monkey
  month moon morning mosquito moss moth mother motor mountain mouse mouth movie mud mum muscle mushroom music mustard nail
  name nature neck nest newspaper night noon nose nut oak oat ocean office oil olive onion orange orchard orchid owl ox
  oyster page pain paint painter palm panda pantry paper parent park parsley party pasta paste pastry path patio paw pea
  peach peanut pear pearl pencil people pepper perfume person pet petal petrol phone piano picnic pie pig pigeon pine pipe
  pizza plant plate play pocket poem poet point pond pony pool pork porridge portrait potato powder prayer price prince
  princess prune pudding pumpkin puppy queen question quill rabbit race radish rain rainbow raspberry rat razor reader
  recipe record restaurant rib rice river road rock roof room root rope rose royal rubber rum rust rye sail sailor salad
  salmon salt sand sandwich sausage school science scissors scone sea season seat seaweed seed seedling sewing shade shadow
  shape shark shaving sheep shell ship shoe shop shore shoulder shower silk sink sister skate skating skin skull sky sleep
  slug smoke snack snail snake snow soap soil soldier sole son soul soup space spice spider spinach spring squirrel stable
  stage stair star stain station steak steam stem stone storm story stove straw strawberry stream street stroke student
  sugar summer sun sunday sunset surf surface surgeon swan sweat sweet swim table tail tape tea teacher team tear teddy
  teeth telephone temple tennis theatre thorn thread throat thumb thunder tide tiger timber time tobacco toe toilet tomato
  tongue tooth top tower town toy track trail train travel tree trip truck trunk tug turkey turtle twig tyre uncle valley
  vegetable veil vinegar violin wall walnut war wasp water wave wax weather wedding weed week weekend whale wheat wheel
  whisky wick wife wind windowsill wine wing winter wolf woman wood wool word work worker world worm wound wrist writer
  writing yard year yogurt zoo packing sealing washing reading cutting baking watering gardening knitting polishing training
  picture photo photograph image postcard card note list plan message news post mail memory gift present bulb cut burn scent
  smell taste colour color light dark noise sound pressure heat size edge end side middle front part piece place
  position use user home house hunt walk run ride drive rest stay visit help pass press push pull turn fill
  safety comfort care repair storage display security sport hobby beginner starter kid men women child luck
  sill shelf drawer cupboard balcony ledge fence gate door window floor lid incense candle cloth bag cup mug bowl pan pot
  cocktail espresso filter loose slow single origin
  basil chamomile dill fennel hibiscus jasmine rosemary sage thyme verbena laundry cane pole stick stake`);

/** Words that mean something of their own, as the keys of words are. */
export const SPEAKS_FOR_ITSELF: ReadonlySet<string> = new Set(
  [
    ...wordsOfAll(OWN_THINGS, goods, rooms, audiences, thingColours, flavours, NEVER_ALONE, GENERAL, VERBS),
  ].filter((word) => !SORTS.has(word)),
);
