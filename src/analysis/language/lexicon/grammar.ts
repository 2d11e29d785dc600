/** Words of English that hold a name together, or tell that something is asked. Written by hand (no source); folded, lower case. */
import { expressions, wordSet, wordsOfAll } from '../../../text/word-set.ts';
import {
  ARTICLES,
  BARE_PREPOSITIONS,
  BE,
  CONJUNCTIONS,
  DEMONSTRATIVES,
  HAVE,
  POSSESSIVES,
  PREPOSITIONS,
  QUANTIFIERS,
  QUESTION_WORDS,
  TOTALS,
} from './function-words.ts';

/** What a noun phrase ends before. */
export const prepositions = PREPOSITIONS;

/** What opens a clause that says more of the thing before it. Modals that are things too, as "can", do not. */
export const relatives = wordsOfAll(
  QUESTION_WORDS,
  HAVE,
  wordSet(`that while if because so is are was were can't do does should could would will must cannot`),
);

/** "That" is none of them, because after a name it opens a clause. */
export const determiners = wordsOfAll(
  ...[ARTICLES, POSSESSIVES, QUANTIFIERS, TOTALS],
  wordSet('this these those other such own'),
);

/** Words without a meaning of their own: a phrase is the same without them. */
export const emptyWords = wordsOfAll(
  ...[ARTICLES, DEMONSTRATIVES, POSSESSIVES, CONJUNCTIONS, BARE_PREPOSITIONS, QUESTION_WORDS, BE],
  wordSet('it'),
);

/** They close a name and say how much it is the case. */
export const adverbs = wordSet(`
  only just also too very really extra super ultra more most less least quite pretty still already again not ever
  never always please online nearby cheap here there now today uk usa us eu etc each approx approximately about
  apart`);

/** After them, `in`, `on`, `off`, `out`, `up` … belong to the word: a clip on lamp, a fold out bed, a pull up bar. */
export const verbsWithParticles = wordSet(`
  add bolt break build built bolt carry check clip close cut dig drop dry fill fit flip fold freeze get glow go grow
  grab hang hold hook iron join keep lay lean lie lift light lock made make mix open paint peel pick play plug pop
  pour press pull push put ride roll rub screw set sew shut sign sit slide slip slot snap spin spread spray stack
  stand start stay step stick stir strap swing take tap tear throw tie tilt tip top touch trade try tuck turn twist
  wake walk warm wash wear wind wipe work wrap zip`);

/** Small words that a verb takes along: "fold out". */
export const particles = wordSet('around away back down in off on out over through to together under up');

/** Words that people ask with or ask for, not things: "bee hotel where to hang", "moisture meter reviews". */
export const askingWords = wordsOfAll(
  ...[QUESTION_WORDS, ARTICLES],
  wordSet(`
  do does is are can should will to buy best cheap cheapest review reviews online near me uk usa price prices sale
  ideas guide vs versus for of in on at with without and or my your much many long often use using make making get good
  i it you we direction`),
);

/** Names, mostly of plants and foods, with a small word inside that would cut them in two. */
export const fixedNames: readonly (readonly string[])[] = expressions(`
  lily of the valley|bird of paradise|birds of paradise|love in a mist|love lies bleeding|forget me not|forget me nots
  |star of bethlehem|rose of sharon|tree of heaven|crown of thorns|mother in laws tongue|string of pearls|touch me not
  |string of hearts|bells of ireland|snow in summer|fleur de lis|fleur de sel|tree of life|jack in the box
  |jack in the pulpit|work of art|works of art|mother of pearl|chest of drawers|chests of drawers|pot au feu
  |herbes de provence|pain au chocolat|eau de toilette|eau de parfum|eau de cologne|creme de la creme|creme de menthe
  |dulce de leche|pico de gallo|gin and tonic|mortar and pestle|pestle and mortar|mac and cheese|macaroni and cheese
  |fish and chip|fish and chips|tic tac toe|snakes and ladders|bed and breakfast|rock and roll|arts and crafts
  |bread and butter|to do list|to do lists`);

/** Turns of phrase that say how a thing is. */
export const turnsOfPhrase: readonly (readonly string[])[] = expressions(`
  state of the art|glow in the dark|made to measure|made to order|ready to use|ready to eat|ready to hang|ready to grow
  |easy to clean|easy to grow|all in one|two in one|three in one|four in one|over the door|under the bed|on the go
  |behind the door|top of the range|hook and loop|cut and come again|pick and mix|mix and match|his and hers
  |mr and mrs|mum and dad|mother and baby|up to date|down to earth|hard to find|off the shelf|one of a kind`);
