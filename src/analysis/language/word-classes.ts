/**
 * Closed classes of English and the open words that a tagger most often takes for another part of speech.
 * Compiled from common grammars' lists; common practice, no source.
 */

import { wordSet, wordsOfAll } from '../../text/word-set.ts';
import * as small from './lexicon/function-words.ts';

/** Words that open a noun phrase, possessives apart. */
export const DETERMINERS = wordsOfAll(
  ...[small.ARTICLES, small.DEMONSTRATIVES, small.QUANTIFIERS, small.TOTALS],
  wordSet('either neither such what which whatever whichever half'),
);

/** With the slip that customers write. */
export const POSSESSIVE_FORMS = wordsOfAll(small.POSSESSIVES, wordSet('whose ur'));

/** Pronouns whatever a tagger says; they are not content. */
export const PRONOUNS = wordsOfAll(
  ...[small.SUBJECTS, small.OBJECTS, small.BOTH_CASES],
  wordSet(`
  mine myself u ya yours yourself yourselves himself hers herself itself ours ourselves theirs themselves one's
  oneself someone somebody something anyone anybody anything everyone everybody everything nobody nothing none there
  whom whoever`),
);

/** With the forms that the tagger cuts off. */
export const BE_FORMS = wordsOfAll(small.BE, wordSet("'s 're 'm"));

/** "Do" among them, which stands before a bare verb as they do, and "ca", "wo" of "can't", "won't". */
export const MODAL_FORMS = wordsOfAll(small.MODALS, small.DO, wordSet('ca wo'));

/** Words that make an adjective stronger or weaker. */
export const INTENSIFIERS = wordSet(
  `very so too really pretty quite rather extremely super real truly fairly most more less least incredibly
  absolutely totally perfectly well brand highly always overly somewhat slightly ultra extra`,
);

/** Of these, what is never anything else. */
export const ONLY_INTENSIFIERS = wordSet('very so too really extremely quite');

/** Adjective before a noun, adverb elsewhere. */
export const FLAT = wordSet(
  `fast hard early late long short best better worst worse last next only straight daily weekly monthly
  yearly overall high low deep close far right wrong extra free just fine clean cheap quick inside outside
  online near`,
);

/** Adjectives that are seldom nouns where something nominal follows, or after "is". */
export const ADJECTIVES = wordSet(
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
export const THINGS_IN_ING = wordSet(
  `thing nothing something anything everything king ring string spring evening morning ceiling wedding
  clothing pudding dumpling seedling duckling earring sibling sling surroundings`,
);

/** Words in -ing that are more often a thing, a trade or a stuff than something being done. */
export const NOUNS_IN_ING: ReadonlySet<string> = new Set([
  ...THINGS_IN_ING,
  ...wordSet(
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
export const PARTICIPLES = wordSet(
  `broken frozen hidden worn torn woven knitted knit sewn cut made handmade built bought drawn written
  chosen spun thrown blown grown cast bent bound burnt dried fried salted ground sliced known given hung
  lost found kept run paid sold told taken stolen spoken eaten beaten forgotten driven shaken sunken
  swollen undone said sent shown seen done gone brought taught caught held meant spent heard begun swept
  dug laid lent sought`,
);

/** Verbs in the bare form that the sentences of shops and customers begin or go on with, usual slips included. */
export const BARE_VERBS = wordSet(
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
export const DAYS = wordSet('today tomorrow yesterday tonight');

/** Spans of time that "last" and "next" stand before. */
export const TIMES = wordSet(
  `second minute hour day night morning afternoon evening week weekend month year decade spring summer
  autumn fall winter monday tuesday wednesday thursday friday saturday sunday`,
);

/** Adjectives that are things too where a determiner stands before and nothing after: "the flat". */
export const THINGS_LIKE_ADJECTIVES = wordSet(
  `flat light plastic gold silver original sweet classic favorite favourite special square cold dark
  present individual professional local regular`,
);

/** Participles that make a describing word with the noun before them: "family owned", "web based". */
export const COMPOUNDING = wordSet(
  `owned based sized shaped inspired scented themed flavored flavoured coated covered filled lined dyed
  oriented`,
);

/** Adverbs that say nothing of an adjective after them: "as other people", "there good food". */
export const STANDING_ALONE = wordSet(
  'as how why when where just here there also then now maybe again back ago instead anyway however yet',
);

/**
 * Words in -ing that describe the thing after them, with an article or without: "operating profit", "working looms". Most
 * are of verbs that nothing is done by to another: "rising costs", "trailing ivy".
 */
export const DESCRIBING_ING = wordSet(
  `operating existing remaining leading outstanding working surviving emerging recurring prevailing ongoing
  incoming outgoing upcoming forthcoming surrounding neighbouring neighboring opposing competing missing
  matching living rising falling ageing aging lasting lingering shining glowing floating sleeping arriving
  blooming flowering trailing creeping wilting thriving`,
);

/** Titles whose full stop is no end of a sentence, since a name follows. Without "St.", which ends an address too. */
export const TITLES = wordSet('mr mrs ms dr prof rev capt sgt lt col gen sen rep gov');

/** They say what a thing is like and not what it does: "smells sweet". */
export const LINKING = wordSet('look looks taste tastes smell smells feel feels sound sounds');

/** Plurals that do not end like one. */
export const PLURALS_WITHOUT_S = wordSet('people children men women folk');

/** Where on a compass; adverbs by themselves. */
export const COMPASS = wordSet('north south east west northeast northwest southeast southwest');

/** Sides of a thing, which a tagger takes for what describes it: "on top of". */
export const SIDES = wordSet('top bottom front back');

/** What is left of a verb where its apostrophe is forgotten: "it s", "i ve". */
export const CLITICS = wordSet('s m re ve ll d');

/** Numbers that multiply the number before them. */
export const MULTIPLIERS = wordSet('hundred thousand million billion trillion bn m');
