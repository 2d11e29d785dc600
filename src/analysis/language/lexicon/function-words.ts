/**
 * The small words of English by class: the one list of them. Who needs several classes joins them and says what for.
 * Closed classes of common grammars, written by hand, no source; folded, lower case.
 */
import { wordSet, wordsOfAll } from '../../../text/word-set.ts';

/** They stand before a noun and say only whether it is a known one. */
export const ARTICLES = wordSet('a an the');
/** They point. */
export const DEMONSTRATIVES = wordSet('this that these those');
/** They say whose it is. */
export const POSSESSIVES = wordSet('my your his her its our their');

/** They stand where an article would and say how many, or which one of several. */
export const QUANTIFIERS = wordSet('each every some any no another');
/** These may stand for the things themselves: "all can", "both will". */
export const TOTALS = wordSet('all both');

/** Pronouns as the subject of a verb; "you" and "it" are objects as well. */
export const SUBJECTS = wordSet('i we they he she who');
/** Pronouns that are only the object of a verb. */
export const OBJECTS = wordSet('me him them us');
/** Pronouns that are subject and object alike. */
export const BOTH_CASES = wordSet('you it');

/** They open a question; most open a clause that says more of a thing too. */
export const QUESTION_WORDS = wordSet('what which who whom whose where when why how');

/** They join words or clauses. */
export const CONJUNCTIONS = wordSet('and or but nor if so because while');

/** Prepositions that say next to nothing by themselves; the others say where or when. */
export const BARE_PREPOSITIONS = wordSet('of for with in on at to from by');

/** All prepositions, with signs that are used as such. */
export const PREPOSITIONS = wordsOfAll(
  BARE_PREPOSITIONS,
  wordSet(`
  about above across after against along among around as before behind below beneath beside besides between
  beyond during including inside into like near next off onto outside over past per plus
  since than through throughout toward towards under underneath until up upon via w within without versus
  vs`),
);

/** Forms of "be". */
export const BE = wordSet('be is are was were am been being');
/** Forms of "have" that begin a clause about a thing: "which has". */
export const HAVE = wordSet('has have had');
/** Forms of "do" that stand before another verb. */
export const DO = wordSet('do does did');
/** Verbs that stand before a bare verb. */
export const MODALS = wordSet('can could will would shall should may might must');

/** Modals that are also things, months or names: a tin can, good will, last May. */
export const MODAL_NOUNS = wordSet('can will may might must');
