/** Which noun phrases of a summary or a title stand as what is in the box, and which only as what surrounds it. */
import { wordSet, wordsOfAll } from '../../../text/word-set.ts';
import type { Chunk } from '../../language/chunks.ts';
import { PREPOSITIONS, QUESTION_WORDS } from '../../language/lexicon/function-words.ts';
import { containers } from '../../language/lexicon/measures.ts';
import type { Tagged } from '../../language/tagger.ts';

/** Verbs whose object is what a box has. By hand, no source. */
const HOLDING = wordSet(`
  held hold holds holding contained contain contains containing brought bring brings bringing carried carry carries
  packed pack packs packing unpack unpacked included include includes including had has have got get meet meets
  opened open opens sent send sends shipped ship ships gave give gives`);

/** Verbs whose subject is what came: the others say what a potter or the rain did. */
const COMING = wordSet(`
  came come comes arrived arrive arrives led lead leads joined join joins is are was were head heads headed
  travelled travels made make makes fill fills filled`);

/** They begin what is told of a thing or how to use it, up to the end of the sentence's part. */
const CLAUSE = wordsOfAll(QUESTION_WORDS, wordSet('that because while so if'));

const INDEFINITE = /^(?:a|an|another)$/;
const DETERMINER =
  /^(?:the|this|that|these|those|my|your|his|her|its|our|their|every|each|no|any|some|all|both)$/;

type Manner = 'a' | 'the' | 'bare';

/** `the` for what the reader is thought to know; a number counts like "a". */
const mannerOf = (before: string, first: Tagged | undefined): Manner => {
  if (INDEFINITE.test(before) || first?.pos === 'NUM') return 'a';
  return DETERMINER.test(before) ? 'the' : 'bare';
};

/** "bag of", "set of": what comes in it is what is there. */
const isContainer = (head: string): boolean => containers.has(head);

/**
 * The phrases that are listed as contents, in their order. A list begins with the text, after a colon or a dash, after
 * a verb of holding and after a "with" that follows a verb or a comma. A preposition, another verb or a question word
 * ends it; "and" and a comma take it up again where another manner of article shows that a new thing begins ("for the
 * sill and a book", but "for the table and the sill").
 */
export const listedPhrases = (words: readonly Tagged[], phrases: readonly Chunk[]): readonly Chunk[] => {
  const listed: Chunk[] = [];
  /** Things named before a verb that says whether they came. */
  let waiting: Chunk[] = [];
  let state: 'list' | 'context' | 'clause' = 'list';
  let around: Manner | undefined;
  let before = '';
  let lastHead = '';
  let verbSeen = false;
  const settle = (came: boolean): void => {
    if (came) listed.push(...waiting);
    waiting = [];
  };
  for (let i = 0; i < words.length; ) {
    const word = words[i];
    if (!word) break;
    const found = phrases.find(({ start }) => start === word.start);
    const phrase = found && withItsLast(found, before, words);
    const text = word.text.toLowerCase();
    if (phrase) {
      const manner = mannerOf(before, word);
      const joins = /^(?:,|and|&|plus)$/.test(before) || joinedBefore(words, i);
      if (state === 'context' && joins && around !== undefined && manner !== around) state = 'list';
      else if (state === 'context' && joins && manner === 'a') state = 'list';
      if (state === 'list') waiting.push(phrase);
      else if (state === 'context') around ??= manner;
      while (words[i] && (words[i]?.start ?? phrase.end) < phrase.end) i++;
      lastHead = phrase.text.toLowerCase().split(/\s+/).at(-1) ?? '';
      before = lastHead;
      continue;
    }
    if (/^(?:[:;.!?–—]|-)$/.test(text)) {
      settle(true);
      state = 'list';
      around = undefined;
      verbSeen = false;
    } else if (state !== 'clause') {
      if (CLAUSE.has(text) || text === 'to') {
        state = text === 'to' && lastHead !== '' ? 'context' : 'clause';
        around = undefined;
      } else if (text === 'with' && (before === ',' || verbSeen)) {
        state = 'list';
        verbSeen = false;
      } else if (text === 'of' && isContainer(lastHead) && state === 'list') waiting.pop();
      else if (text === 'plus' || text === 'including') state = 'list';
      else if (HOLDING.has(text) && (word.pos === 'VERB' || word.pos === 'AUX')) {
        // Who held it is no thing in it.
        if (!verbSeen && !/[,]/.test(before)) waiting = [];
        state = 'list';
        verbSeen = true;
      } else if (word.pos === 'VERB' && qualifies(words, i, phrases)) {
        // It belongs to the thing that follows.
      } else if (word.pos === 'VERB' || word.pos === 'AUX') {
        // A participle after a thing tells of that thing: "made by a joiner".
        const tells =
          /(?:ed|en|n|de|wn|ng|nd)$/.test(text) && PREPOSITIONS.has(words[i + 1]?.text.toLowerCase() ?? '');
        if (!COMING.has(text) && !tells) {
          if (waiting.length === 1 && listed.length === 0) waiting = [];
          if (lastHead === '') state = 'clause';
        }
        if (state !== 'clause') state = 'context';
        around = undefined;
        verbSeen = true;
      } else if (PREPOSITIONS.has(text)) {
        state = 'context';
        around = undefined;
      }
    }
    before = text;
    i++;
  }
  settle(true);
  return listed;
};

const ENDS_A_THING = /^(?:,|and|&|plus|[:;.])$/i;

/**
 * A phrase after "a" with the word that closes it, which the tagger took for a verb or an adjective: before "and", a
 * comma or the end a verb would say "pumps", so "a frame pump and" names a pump.
 */
const withItsLast = (phrase: Chunk, before: string, words: readonly Tagged[]): Chunk => {
  const at = words.findIndex(({ start }) => start >= phrase.end);
  const last = words[at];
  if (!last || !INDEFINITE.test(before)) return phrase;
  const isTaken = /^(?:VERB|ADJ)$/.test(last.pos) && !/(?:s|ed)$/.test(last.text);
  if (!isTaken || !ENDS_A_THING.test(words[at + 1]?.text ?? '.')) return phrase;
  return { ...phrase, end: last.end, text: `${phrase.text} ${last.text}` };
};

/** "stacking rings", ", felt puppets", "Pan watercolours,": no verb of a sentence but a word that tells a thing apart. */
const qualifies = (words: readonly Tagged[], i: number, phrases: readonly Chunk[]): boolean => {
  const next = words[i + 1];
  if (!next || !phrases.some(({ start }) => start === next.start)) return false;
  const before = words[i - 1];
  const isIng = /ing$/.test(words[i]?.text ?? '') && before?.pos === 'NOUN';
  const opens = before === undefined && words.slice(i + 2, i + 4).some(({ text }) => text === ',');
  return isIng || opens || /^(?:,|and|&|plus)$/i.test(before?.text ?? '');
};

/** Whether "and" or a comma stands before the article of the phrase at `i`. */
const joinedBefore = (words: readonly Tagged[], i: number): boolean => {
  const article = words[i - 1]?.text.toLowerCase() ?? '';
  const at = INDEFINITE.test(article) || DETERMINER.test(article) ? i - 2 : i - 1;
  return /^(?:,|and|&|plus)$/i.test(words[at]?.text ?? '');
};
