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
import { adverbs, particles } from '../../language/lexicon/grammar.ts';
import { adjectives } from '../../language/lexicon/qualities.ts';

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
  downstairs else elsewhere even everywhere forever forward forwards further hence however indoors indeed instead
  maybe meanwhile nearly nevertheless once otherwise outdoors overnight perhaps rather regardless sideways so soon
  somehow sometimes somewhere straightaway then therefore though thus today together tomorrow tonight twice upright
  upside upstairs yesterday yet alike anyway anymore downhill uphill somewhat almost yes no`),
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
  someone somebody something anyone anybody anything everyone everybody everything nobody nothing none having let
  lets unless whether although whereas whenever wherever don't doesn't didn't isn't aren't wasn't weren't can't
  won't couldn't wouldn't shouldn't haven't hasn't cannot it's that's here's there's what's who's he's she's i'm
  i've i'll i'd you're you've you'll you'd we're we've we'll we'd they're they've they'll they'd let's`),
);

/** Between a noun and what says more of it: "a spool of twine". */
export const JOINING_PREPOSITIONS: ReadonlySet<string> = new Set(
  [...BARE_PREPOSITIONS].filter((word) => !['at', 'to', 'by'].includes(word)),
);

/** Participles between a noun and such a preposition: "made of copper". */
export const JOINING_PARTICIPLES = wordSet('made meant used cut woven knitted carved turned cast');

/** Adjectives that say nothing of which thing is meant, more than the lexicon of the trade has. */
export const GENERAL = wordSet(`
  able absolute absurd accurate actual additional adequate afraid alert alive ample ancient angry annual apt awake
  aware awful awkward bad bald bare base best better big bitter bleak blind blunt bony brave brief brilliant brisk
  brittle broken bumpy bushy busy careful central certain cheeky cheerful chilly chunky clammy clear clever close
  cloudy clumsy coarse cold common compact complete complex convenient correct costly crazy crisp crooked crucial
  crude crumbly crumpled cunning curious current daft daily dainty damp dark dear decent deep definite delicate
  delicious dense different difficult dim dire direct distant distinct dizzy dreadful dreamy dry due dull dumb dusty
  eager early earnest earthy easy edgy elder elderly enormous enough entire eternal even everlasting exact excellent
  exotic expensive explicit exquisite extreme faint fair faithful false familiar famous far few fierce fiery filthy
  final first fitting flimsy fond foolish foreign former fragile fragrant frail frank frequent frosty frozen funny
  further fussy general generous gentle gigantic glad glassy gleaming glorious good grand grateful grave greasy
  great greedy grim gritty gross grubby grumpy guilty hairy half handsome handy happy hard harsh hasty hearty hefty
  helpful hidden high hoarse hollow holy honest humble hungry icy ideal idle ill immediate important impossible
  indirect inexpensive infinite initial inner innocent intact intense intimate intricate jaunty jolly joint just
  keen knotty lame lanky large last late latest latter lazy lean least legal lesser lethal light likely little
  living lofty lone lonely long loose lost loud lousy low loyal lucky lukewarm lumpy lush mad main marvellous
  marvelous mature mean meek mellow mere merry messy middle mighty mild misty mobile moderate modest moist monthly
  moral muddy murky mutual naked narrow nasty natural nearby nearest neat necessary nervous new next nice noble
  noisy normal notable novel numb obvious occasional odd off old only opposite ordinary original other outer overdue
  own pale particular patient peculiar perfect permanent plain playful pleasant plump polite poor popular possible
  posh powdery powerful precious precise present previous prickly prime prior probable prompt proper proud pure
  quaint quick quiet random rapid rare raw ready real recent regular relevant reliable remarkable remote resilient
  rich rickety right rigid ripe robust rosy rotten rough rubbery rude ruined rustic rusty sacred sad safe salty same
  sandy satisfying savage savoury savory scarce scary second secret secure sensible separate serious severe shady
  shaky shallow shapely sharp sheer shiny short shy sick silent silly similar simple sincere single singular sleepy
  slender slight slim slippery sloppy slow sluggish small smart smooth snappy snug sober sole solemn solid sore
  sorry sour spare sparse specific speedy splendid springy square stale stark steady steep sterile stern sticky
  stiff still stout straight strange strict strong stubborn stupid sturdy stylish sublime subtle sudden sufficient
  suitable sunny super superb superior supple supreme sure sweet swift tall tame tangy tart tasty tender tepid
  terrible terrific thankful thick thin thirsty thorough thoughtful thrifty tidy tight timeless timid tiny tired top
  total tough tricky trim true trusty typical ugly ultimate unique upper upright upset urgent useful useless usual
  utter vague vain valid valuable various vast very vivid vulgar warm wary wavy weak wealthy weekly weird welcome
  well wet whole wicked wide wild wise witty wobbly wonderful wonky woody worn worse worst worthy wrong yearly young
  dozen several many much more most fewer less extra identical gorgeous everyday fourth fifth sixth seventh eighth
  ninth tenth eleventh twelfth thirteenth twentieth third hundredth umpteenth made grown bought kept torn hung woven
  bound bent blown thrown chosen forgotten given known shared level musty sown favourite favorite beloved so-called
  ex wooden metal woollen woolen metallic coloured colored january february march april june july august september
  october november december`);

/** Verbs of what people do with things and what things do, in their bare form. */
export const VERBS = wordSet(`
  add age air allow appear arrange arrive ask avoid bake be beat become begin belong bend bite blend bloom blow boil
  borrow bounce break breathe brew bring brush build burn buy call carry catch change check chew chill choose chop
  clean clear cling clip close coat collect come contain cook cool cost count cover crack crease crumble crush cure
  curl cut dab darken deserve differ dig dip discover dissolve do double drag drain draw dress drink drip drop dry
  dust eat empty end enjoy enter expect fade fail fall feed feel fetch fill find finish fit fix flake flicker flip
  float flow fold follow forget fray freeze gather get give glow go grab grate grease grind grip grow hand hang
  happen harden have hear heat help hide hold hope hug hum include invite iron join keep knead knit know lack land
  last laugh lay lead leak lean leave lend let lie lift light like line list listen live load look loosen lose love
  lower make mark marry match matter mean measure meet melt mend mind miss mist mix mount move need offer open order
  outlast outlive owe own pack paint pass pat pay peel pick pinch place plant play plug point polish post pour
  prefer prepare press print promise prop protect prove prune pull push put raise reach read receive recommend
  refill remain remember remind remove repair repeat replace rest return ring rinse rise roast roll rot rub run rust
  save say scatter scoop scrape scrub seal season see seem sell send serve set settle sew shake share sharpen shed
  shift shine shop show shrink shut sift sign simmer sing sink sip sit skip slice slide slip slow smell smoke soak
  soften sound sow speak spill spin split spoil spread sprinkle squash squeeze stack stain stand start stay steam
  steep stick stir stop store strain stretch strike string strip suffer suit support surprise swap sweep swell swing
  take taste teach tear tell thank think throw tie tighten tilt tip tire toast toss touch travel treat trim trust
  try tuck turn twist uncover undo unfold unpack unroll unscrew untie use visit wait wake walk want warm wash watch
  water wear weave weigh welcome wet whisk whistle win wind wipe wish withstand wobble wonder work worry wrap write
  wring yield adore advise agree announce apply attach balance bear blame boast celebrate compare complete confuse
  consider continue copy create crave cycle decide decorate deliver design dislike display drape earn encourage
  explain explore fasten feature fear form glide guess handle hate honour honor imagine improve insert inspire
  introduce invent leap learn lock lug manage mention mess name note notice number obey pair pause perch plan please
  pop practise practice praise preserve produce prompt punch question rattle realise realize recall recycle refuse
  regret reheat rely require rescue reveal review reward ruin scare score scream search separate shape shelter
  shorten sleep smile snap sniff solve stamp struggle study supply suppose suspect swallow switch tackle test thin
  thrive answer sweat tangle tick tug value vary wag wander`);

/** Past forms that do not end in -ed, of verbs that have things for subject or object. */
export const PASTS = wordSet(`
  ate beat became began bent bit blew bought broke brought built burnt came caught chose clung cost crept cut dealt
  did drank drew drove dug dwelt fed fell felt fit flew forgot found froze gave got grew ground had heard held hid
  hit hung hurt kept knew laid lay led left lent let lit lost made meant met paid put ran rang read rose said sang
  sank sat saw sent set shed shone shook shot showed shrank shut slept slid smelt sold spent spilt split spoke
  spread sprang spun stank stole stood stuck struck swam swept swore swung taught thought threw told took tore went
  wept woke won wore wound wove wrote was were outgrew overtook undid withstood`);

/** Bare verbs after which another bare verb may follow a thing: "let the candle burn". */
export const BEFORE_THING_AND_VERB = wordsOfAll(
  MODALS,
  DO,
  wordSet(`
  let lets letting make makes made making help helps helped helping see saw seeing watch watches watched watching
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
