/** The small words of English that hold a name together. Written by hand (no source); folded, lower case. */
import { wordSet } from './word-set.ts';

/** What a noun phrase ends before. */
export const prepositions = wordSet(`
  about above across after against along among around as at before behind below beneath beside besides between
  beyond by during for from in including inside into like near next of off on onto outside over past per plus
  since than through throughout to toward towards under underneath until up upon via w with within without versus
  vs`);

/** What opens a clause that says more of the thing before it. */
export const relatives = wordSet(`
  that which who whom whose where when while what why how if because so is are was were has have had can't does do
  should could would will must cannot`);

export const determiners = wordSet(`
  a an the this these those my your our his her its their some any each every no another other all both such our
  own`);

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

export const particles = wordSet('around away back down in off on out over through to together under up');

/** Words that people ask with or ask for, not things: "bee hotel where to hang", "moisture meter reviews". */
export const askingWords = wordSet(`
  what where when which who why how do does is are can should will to buy best cheap cheapest review reviews online
  near me uk usa price prices sale ideas guide vs versus for the a an of in on at with without and or my your much
  many long often use using make making get good i it you we direction`);

/**
 * Names with a preposition or a conjunction inside: plants, and turns of phrase of the trade. The first word that
 * follows as a preposition would cut them in two.
 */
export const fixedExpressions: readonly (readonly string[])[] = `
  lily of the valley|bird of paradise|birds of paradise|love in a mist|love lies bleeding|forget me not|forget me nots
  |star of bethlehem|rose of sharon|tree of heaven|crown of thorns|mother in laws tongue|string of pearls
  |string of hearts|bells of ireland|snow in summer|baby's breath|touch me not|fleur de lis|fleur de sel|tree of life
  |jack in the box|jack in the pulpit|state of the art|work of art|works of art|mother of pearl|point of sale
  |chest of drawers|chests of drawers|bill of fare|pot au feu|herbes de provence|pain au chocolat|eau de toilette
  |eau de parfum|eau de cologne|creme de la creme|creme de menthe|dulce de leche|pico de gallo|papier mache
  |glow in the dark|made to measure|made to order|ready to use|ready to eat|ready to hang|easy to clean|add on|all in one
  |two in one|three in one|four in one|out of doors|over the door|under the bed|behind the door|on the go|day to day
  |end of line|top of the range|hand to hand|salt and pepper|black and white|gin and tonic|mortar and pestle
  |pestle and mortar|bed and breakfast|rock and roll|mac and cheese|macaroni and cheese|fish and chip|fish and chips
  |tic tac toe|snakes and ladders|hook and loop|hook and eye|tongue and groove|ball and claw|cut and come again
  |bread and butter|cloak and dagger|arts and crafts|pick and mix|mix and match|wash and go|lost and found
  |open and shut|his and hers|mr and mrs|mum and dad|mother and baby|home and away|peace and quiet|bits and bobs`
  .split('|')
  .map((expression) => expression.trim().split(/\s+/));
