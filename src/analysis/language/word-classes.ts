/**
 * Closed classes of English and the open words that a tagger most often takes for another part of speech.
 * Compiled from common grammars' lists; common practice, no source.
 */

/** Compared in lower case. */
const words = (list: string): ReadonlySet<string> => new Set(list.split(/\s+/));

export const DETERMINERS = words(
  `a an the this that these those every each some any no another both all either neither such what which
  whatever whichever half`,
);

export const POSSESSIVES = words('my your his her its our their whose ur');

export const SUBJECTS = words('i we they he she who');

export const OBJECTS = words('me him them us');

/** Pronouns whatever a tagger says; they are not content. */
export const PRONOUNS = words(
  `i me mine myself you u ya yours yourself yourselves he him himself she hers herself it itself we us ours
  ourselves they them theirs themselves one's oneself someone somebody something anyone anybody anything
  everyone everybody everything nobody nothing none there who whom whoever`,
);

export const BE = words("be is are was were am been being 's 're 'm");

export const MODALS = words('can could will would shall should may might must ca wo do does did');

/** Modals that are also things, months or names: a tin can, good will, last May. */
export const MODAL_NOUNS = words('can will may might must');

/** Words that make an adjective stronger or weaker. */
export const INTENSIFIERS = words(
  `very so too really pretty quite rather extremely super real truly fairly most more less least incredibly
  absolutely totally perfectly well brand highly always overly somewhat slightly ultra extra`,
);

/** Of these, what is never anything else. */
export const ONLY_INTENSIFIERS = words('very so too really extremely quite');

/** Adjective before a noun, adverb elsewhere. */
export const FLAT = words(
  `fast hard early late long short best better worst worse last next only straight daily weekly monthly
  yearly overall high low deep close far right wrong extra free just fine clean cheap quick inside outside
  online near`,
);

/** Adjectives that are seldom nouns where something nominal follows, or after "is". */
export const ADJECTIVES = words(
  `cool cozy cosy yummy tasty great good nice lovely simple quick easy awesome amazing fresh hot cold warm
  clean friendly helpful happy sturdy fun funny classic neat sweet sour bitter soft tidy quiet loud bright
  dark light plain dry wet smooth rough solid firm tough tender crisp crunchy creamy spicy juicy heavy
  thick thin tall narrow wide round square flat sharp blunt gentle delicate fragile pale vivid glossy
  matte handmade homemade professional reasonable affordable pricey expensive diverse interesting superb
  fantastic wonderful terrific excellent perfect beautiful gorgeous pleasant polite rude terrible horrible
  awful meh ok okay responsive prompt honest caring attentive knowledgeable green blue red yellow white
  black brown grey gray purple pink orange`,
);

/** Words in -ing that are never something being done. */
export const THINGS_IN_ING = words(
  `thing nothing something anything everything king ring string spring evening morning ceiling wedding
  clothing pudding dumpling seedling duckling earring sibling sling surroundings`,
);

/** Words in -ing that are more often a thing, a trade or a stuff than something being done. */
export const NOUNS_IN_ING: ReadonlySet<string> = new Set([
  ...THINGS_IN_ING,
  ...words(
    `wing building packaging shipping pricing parking stitching lighting seating housing flooring fencing
    bedding wrapping lining coating padding filling topping icing frosting stuffing seasoning dressing
    painting drawing carving writing cooking baking gardening knitting sewing quilting weaving pottery
    fishing hiking camping shopping banking accounting engineering marketing advertising catering tutoring
    training teaching meaning feeling meeting greeting opening closing setting listing rating saving
    savings blessing ending beginning warning offering serving helping gathering outing swing railing
    plumbing roofing tiling piping wiring heating cooling timing spelling belongings`,
  ),
]);

/** Past participles that do not end in -ed. */
export const PARTICIPLES = words(
  `broken frozen hidden worn torn woven knitted knit sewn cut made handmade built bought drawn written
  chosen spun thrown blown grown cast bent bound burnt dried fried salted ground sliced known given hung
  lost found kept run paid sold told taken stolen spoken eaten beaten forgotten driven shaken sunken
  swollen undone`,
);

/** Verbs in the bare form that the sentences of shops and customers begin or go on with, usual slips included. */
export const BARE_VERBS = words(
  `add air allow apply arrange ask avoid bake be beat blend boil bring brush build buy call carry carve
  cast check chill choose chop clean clip close coat come contact cook cool cover crack crush cut dig dip
  discover do drain draw drill drink drive drop dry dust eat email empty enjoy enter expect explore feed
  feel fill find finish fit fix flip fold follow forget freeze get give go grate grease grind grow hand
  hang have heat help hold hope iron join keep knead knit know lay leave let lift light line listen load
  look love make mark measure meet melt mend mind mist mix move need open order pack paint pat pay peel
  pick pinch place plant play plug point polish post pour prepare press print prune pull push put read
  recommend recomend reccomend recommand refill remember remove repair repeat replace rest return rinse
  roast roll rub run save say scatter scoop scrape scrub seal season see sell send serve set sew shake
  share sharpen shop show sift sign simmer sit skip slice slide smell soak sow speak spend split spoon
  spray spread sprinkle squeeze stand start stay steam steep stir stop store strain strip support swap
  sweep take taste teach tear tell thank think thin throw tie tilt tip toast toss touch treat trim trust
  try turn twist unpack unroll use visit wait walk want warm wash watch water wax wear weave weigh whisk
  wipe wish work worry wrap write live ship chip cost leak drip fade shrink stack pop snap burn wake grip
  rest glow rust`,
);

/** Days that stand beside a noun phrase, not in it. */
export const DAYS = words('today tomorrow yesterday tonight');

/** Spans of time that "last" and "next" stand before. */
export const TIMES = words(
  `second minute hour day night morning afternoon evening week weekend month year decade spring summer
  autumn fall winter monday tuesday wednesday thursday friday saturday sunday`,
);

/** Adjectives that are things too where a determiner stands before and nothing after: "the flat". */
export const THINGS_LIKE_ADJECTIVES = words(
  `flat light plastic gold silver original sweet classic favorite favourite special square cold dark
  present individual professional local regular`,
);

/** Participles that make a describing word with the noun before them: "family owned", "web based". */
export const COMPOUNDING = words(
  `owned based sized shaped inspired scented themed flavored flavoured coated covered filled lined dyed
  oriented`,
);

/** Adverbs that say nothing of an adjective after them: "as other people", "there good food". */
export const STANDING_ALONE = words(
  'as how why when where just here there also then now maybe again back ago instead anyway however yet',
);
