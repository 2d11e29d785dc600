/**
 * Which kinds of thing can hurt somebody. A kind is known by its head, the word that says what the thing is: "honey" in
 * "a jar of heather honey". Common practice, no source.
 */
import { fold } from '../text/fold.ts';
import { singularOf } from '../text/singular.ts';
import { harmAbroad } from './hurtful-words.ts';
import type { Category } from './vocabulary.ts';

const words: Record<Category, string> = {
  food: `chilli chili garlic ginger jam jelly marmalade chutney honey biscuit shortbread cookie cake chocolate fudge toffee caramel sweet candy granola
    nut cracker cheese pickle relish sauce mustard vinegar oil spice salt sugar syrup flour seasoning truffle brownie
    nougat brittle praline bonbon lollipop liquorice licorice gummy jellybean marshmallow meringue wafer mint popcorn pretzel
    crisp crispbread flatbread oatcake flapjack scone muffin cupcake doughnut donut croissant pastry panettone stollen
    gingerbread macaron macaroon bread loaf toast tart pie bun muesli porridge oat cereal rice pasta noodle spaghetti lentil
    bean pea chickpea couscous quinoa soup broth bouillon ketchup mayonnaise aioli pesto tapenade hummus dip salsa curd compote
    conserve preserve spread butter ghee yogurt yoghurt egg ham salami chorizo sausage bacon jerky biltong pate rillettes
    terrine anchovy sardine tuna salmon mackerel caviar brie camembert gouda cheddar stilton manchego feta ricotta
    mozzarella parmesan pecorino gruyere comte emmental edam halloumi taleggio gorgonzola roquefort raclette tomme chevre
    burrata mascarpone paneer raisin sultana apricot fig prune cranberry pepper peppercorn paprika turmeric cumin cinnamon
    saffron vanilla nutmeg cardamom clove dukkah masala curry rub marinade dressing gravy yeast miso tahini molasses treacle
    agave sprinkle almond cashew pistachio peanut hazelnut walnut pecan macadamia mushroom porcini seaweed nori kimchi
    sauerkraut olive caper gherkin cornichon tofu snack food treat kibble chew rawhide`,
  drink: `cordial tea coffee juice cider beer wine gin liqueur cocoa tisane squash darjeeling assam oolong sencha matcha
    genmaicha hojicha chai rooibos redbush puerh infusion brew espresso decaf latte cappuccino chicory lemonade limeade
    kombucha kefir smoothie soda cola presse spritz vermouth whisky whiskey rum vodka brandy cognac tequila mezcal mead sake
    sherry prosecco champagne cava ale lager stout ipa bitters cocktail negroni mocktail aperitif amaro limoncello schnapps
    nectar drink beverage horchata`,
  cosmetic: `soap salve balm cream lotion shampoo conditioner scrub perfume serum ointment parfum cologne toner cleanser
    moisturiser moisturizer deodorant lipstick mascara eyeliner eyeshadow blusher concealer sunscreen pomade hairspray
    aftershave exfoliator exfoliant fizzer talc henna hydrosol lipgloss attar fragrance`,
  candle: `candle tealight melt taper votive match matchstick firelighter firestarter incense sparkler firework lighter fuel`,
  blade: `snip snips knife secateur shear scissor pruner lopper saw sickle scythe billhook hatchet axe razor blade cutter
    scalpel gouge chisel slicer mandoline cleaver shucker machete dagger penknife pocketknife multitool clipper nipper
    peeler trimmer fly lure awl bradawl spokeshave drawknife adze ripper needle skewer fishhook`,
  plant: `bulb seed seedling plant cutting corm tuber houseplant succulent cactus amaryllis crocus daffodil hyacinth lily
    snowdrop tulip sapling shrub monstera pothos philodendron calathea maranta dieffenbachia hoya ficus sansevieria dracaena
    alocasia anthurium spathiphyllum begonia peperomia pilea tradescantia aloe echeveria haworthia sedum crassula kalanchoe
    euphorbia orchid fern ivy palm bonsai geranium pelargonium primrose cyclamen poinsettia narcissus paperwhite iris allium
    dahlia anemone ranunculus bluebell foxglove peony hydrangea jasmine azalea rhododendron oleander yew holly mistletoe
    lupin delphinium monkshood aconite hosta croton caladium cordyline yucca zamioculcas aglaonema syngonium schefflera
    fatsia`,
  children: 'toy rattle teether doll dolly plush plushie marble balloon stacker slime playdough',
};

/** Two words that mean another thing than the last of them alone; undefined is harmless. */
const phrases: Readonly<Record<string, Category | undefined>> = {
  'seed packet': 'plant',
  'seed ball': 'plant',
  'seed bomb': 'plant',
  'seed mix': 'plant',
  'soap bar': 'cosmetic',
  'shampoo bar': 'cosmetic',
  'chocolate bar': 'food',
  'tea bag': 'drink',
  'coffee bean': 'drink',
  'hot chocolate': 'drink',
  'drinking chocolate': 'drink',
  'coconut milk': 'food',
  'ice cream': 'food',
  'clotted cream': 'food',
  'sausage roll': 'food',
  'tea light': 'candle',
  'fire lighter': 'candle',
  'fire starter': 'candle',
  'lamp oil': 'candle',
  'palo santo': 'candle',
  'cat grass': 'plant',
  'joss stick': 'candle',
  'smudge stick': 'candle',
  'essential oil': 'cosmetic',
  'perfume oil': 'cosmetic',
  'fragrance oil': 'cosmetic',
  'fly hook': 'blade',
  'fish hook': 'blade',
  'fishing hook': 'blade',
  'barbless hook': 'blade',
  'treble hook': 'blade',
  'building block': 'children',
  'toy block': 'children',
  'stacking block': 'children',
  'building tile': 'children',
  'magnetic tile': 'children',
  'teething ring': 'children',
  'spinning top': 'children',
  'safety eye': 'children',
  'linseed oil': undefined,
  'tool oil': undefined,
  'machine oil': undefined,
  'bird seed': undefined,
  'bird food': undefined,
  'plant food': undefined,
  'light bulb': undefined,
  'wood chip': undefined,
  'oil paint': undefined,
  'bath mat': undefined,
  'knitting needle': undefined,
  'circular needle': undefined,
  'cookie cutter': undefined,
  'biscuit cutter': undefined,
  'pastry cutter': undefined,
  'clay cutter': undefined,
  'coffee set': undefined,
  'tea set': undefined,
  'candle stick': undefined,
  'bean bag': undefined,
  'christmas tree': undefined,
  'dog toy': undefined,
  'cat toy': undefined,
  'pet toy': undefined,
  'chew toy': undefined,
};

/** Parts of a body and what is put on it: an oil is eaten, a beard oil is not. */
const BODY = new Set(
  `face facial hand foot body hair beard moustache skin lip cuticle nail bath bathing shower massage shaving clay sheet
   pillow linen room setting micellar rose tanning eye brow eyebrow lash eyelash scalp heel`.split(/\s+/),
);
/** What is cosmetic where a part of the body stands before it. */
const SUBSTANCES = new Set(
  `mist spray mask oil butter milk gel wash polish varnish lacquer salt soak bomb fizz dust powder water tint gloss bar foam
   peel wax elixir remover rinse tonic puck paint`.split(/\s+/),
);
/** Masks and sheets of cloth. */
const CLOTH = new Set(['eye mask']);

/** Words for a part or a number of what the word before them says: a cheese wedge is cheese. */
const PORTIONS = new Set(
  `bite wedge flake slice chunk nibble piece bar stick drop sample sampler miniature vial decant pouch sachet packet pack set
   kit selection assortment mix blend trio duo pair bundle wheel truckle leaf pod capsule granule powder cube pellet crumble
   shard button nib cluster thin twist refill concentrate paste round cone`
    .split(/\s+/)
    .map(singularOf),
);

/** Whether a word says how much of a thing there is, and not which thing. */
export const isPortion = (head: string): boolean => PORTIONS.has(head);

/** Botanical names of a species stand behind its genus: "monstera deliciosa". */
const SPECIES = /^[a-z]{3,}(?:a|us|um|is|ii|ae|i|ens|ans|ides|or)$/;

/** Names of plants in which the plant is not the last word before a preposition. */
const STRING_OF = /\bstring of (?:pearl|heart|banana|dolphin|turtle|nickel|bead)s?\b/;

const byWord = new Map(
  Object.entries(words).flatMap(([category, list]) =>
    list.split(/\s+/).map((word) => [singularOf(word), category as Category] as const),
  ),
);

/** A jar of honey is honey: what holds or counts the thing is not the thing. */
const CONTAINER =
  /^(?:an? )?(?:bag|bar|bottle|box|bundle|bunch|card|jar|packet|pair|piece|pot|pouch|roll|sachet|sack|selection|set|slice|tin|trio|tub|tube|vial|wedge|wheel)s? of (?:\d+ |two |three |four |five |six |twelve )?/;

/** Words of a kind up to the first preposition, in small letters. */
const wordsBefore = (kind: string): readonly string[] =>
  (
    kind
      .toLowerCase()
      .replace(CONTAINER, '')
      .split(/ (?:for|of|with|in|on|from|to) /)[0] ?? ''
  )
    .split(/[\s-]+/)
    .filter(Boolean);

/** The word that says what a thing of this kind is: the last before the first preposition, in the singular. */
export const headOf = (kind: string): string => singularOf(wordsBefore(kind).at(-1) ?? '');

const ofTwo = (before: string, head: string): Category | undefined => {
  const two = `${before} ${head}`;
  if (Object.hasOwn(phrases, two)) return phrases[two];
  if (BODY.has(before) && SUBSTANCES.has(head)) return CLOTH.has(two) ? undefined : 'cosmetic';
  if (byWord.get(before) === 'plant' && SPECIES.test(head) && !byWord.has(head)) return 'plant';
  return byWord.get(head);
};

/**
 * The category that a kind's head word suggests. A set of slices of cheese is cheese: what parts or counts a thing is
 * passed over, unless it is one with the word before it.
 */
export const suggestedCategory = (kind: string): Category | undefined => {
  if (STRING_OF.test(kind.toLowerCase())) return 'plant';
  const parts = wordsBefore(kind).map((word) => singularOf(fold(word)));
  for (let at = parts.length - 1; at >= 0; at -= 1) {
    const [before, head] = [parts[at - 1] ?? '', parts[at] ?? ''];
    const found = ofTwo(before, head);
    if (found !== undefined || Object.hasOwn(phrases, `${before} ${head}`)) return found;
    if (!PORTIONS.has(head)) break;
  }
  return harmAbroad(kind);
};

const FOR_CHILDREN =
  /\bfor (?:an? |the |small |young |little )*(?:bab(?:y|ies)|toddlers?|child(?:ren)?|kids?|newborns?|infants?|little ones)\b/i;

/** Whether its name says that a thing is for children: "for toddlers". */
export const isForChildren = (name: string): boolean => FOR_CHILDREN.test(name);

/** A thing to eat, where it is for animals and its noun is none of a made thing. */
export const isForAnimals = (name: string): boolean =>
  / (?:for|für|pour|para|per|voor|för|dla) (?:\S+ )?(?:dogs?|cats?|pupp(?:y|ies)|kittens?|rabbits?|horses?|hamsters?|hunde?|katzen?|chiens?|chats?|perros?|gatos?|cani|gatti|honden|katten|hundar|hund|katt(?:er)?|cães|psów|kotów)\b/i.test(
    name,
  );

/** Words behind these say where or for what a thing is, and not what it is. */
const PURPOSE = / (?:for|in|on|from|to|against) /;

/** What any word of a name can do harm as, the last before its purpose first: of a name whose noun is not known. */
export const harmInName = (name: string): Category | undefined => {
  const words = (name.toLowerCase().split(PURPOSE)[0] ?? '')
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean)
    .map((word) => singularOf(fold(word)));
  for (let at = words.length - 1; at >= 0; at -= 1) {
    const found = ofTwo(words[at - 1] ?? '', words[at] ?? '');
    if (found !== undefined) return found;
  }
  return harmAbroad(name);
};

/** Tools whose two blades meet and can be closed or locked. */
const CLOSING = new Set(
  'snip snips secateur shear scissor pruner lopper clipper nipper multitool'.split(' ').map(singularOf),
);

const FOLDING = /\b(?:folding|fold-up|retractable|(?:clasp|pocket|pen|jack|lock|locking)[- ]?knife)\b/i;

/** What pricks, and does not cut. */
const POINTED = new Set(
  'needle awl bradawl skewer fishhook hook fly lure pin dart'.split(' ').map(singularOf),
);

/** Whether things of a kind are sharp at their point alone: of them nobody cuts away from herself. */
export const isPointed = (kind: string): boolean => POINTED.has(headOf(kind));

/** Whether the blade of a thing folds or closes, by any name that it goes by; of one that does not, the edge is covered. */
export const bladeCloses = (names: readonly string[]): boolean =>
  names.some((name) => FOLDING.test(name) || CLOSING.has(headOf(name)));
