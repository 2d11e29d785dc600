/** Nouns, and what stands before them, that a tagger takes for verbs. */

import { MODAL_NOUNS } from './lexicon/function-words.ts';
import {
  isArticle,
  isDeterminer,
  isEdge,
  isIng,
  isNominal,
  isParticiple,
  isThird,
  opensObject,
  type Rule,
} from './site.ts';
import {
  BE_FORMS,
  COMPOUNDING,
  DAYS,
  DESCRIBING_ING,
  DETERMINERS,
  FLAT,
  INTENSIFIERS,
  LINKING,
  MODAL_FORMS,
  NOUNS_IN_ING,
  POSSESSIVE_FORMS,
  SIDES,
  THINGS_LIKE_ADJECTIVES,
} from './word-classes.ts';

/** Tried last, in this order. */
export const thingRules: readonly Rule[] = [
  {
    why: 'there was soup, would have plants',
    from: ['VERB'],
    to: 'NOUN',
    when: ({ word, before, after }) =>
      !isIng(word) &&
      !isParticiple(word) &&
      ((BE_FORMS.has(before.word) && before.pos === 'AUX' && (after.pos === 'ADV' || after.pos === 'ADP')) ||
        (/^(have|has|had)$/.test(before.word) && isThird(word))),
  },
  {
    why: 'the flat, in the light, a lovely present, the top may',
    from: ['ADJ'],
    to: 'NOUN',
    when: ({ word, before, before2, after }) =>
      (THINGS_LIKE_ADJECTIVES.has(word) || SIDES.has(word)) &&
      (isArticle(before) || (before.pos === 'ADJ' && isArticle(before2))) &&
      (isEdge(after) || ['ADP', 'AUX', 'SCONJ', 'PRON'].includes(after.pos)),
  },
  {
    why: 'on top of, in need of: between a preposition and "of" stands a thing',
    from: ['ADJ', 'ADV', 'VERB'],
    to: 'NOUN',
    when: ({ word, pos, before, after }) =>
      before.pos === 'ADP' &&
      after.word === 'of' &&
      (SIDES.has(word) || (pos === 'VERB' && !isIng(word) && !isParticiple(word))),
  },
  {
    why: 'is mostly wax, use only water: such an adverb between a verb and the end singles out a thing',
    from: ['VERB'],
    to: 'NOUN',
    when: ({ word, before, before2, after }) =>
      /^(only|mostly|mainly|partly|purely)$/.test(before.word) &&
      (before2.pos === 'VERB' || BE_FORMS.has(before2.word)) &&
      isEdge(after) &&
      !isIng(word) &&
      !isParticiple(word),
  },
  {
    why: 'working looms, operating costs fell: what describes a thing is followed by one',
    from: ['VERB'],
    to: 'NOUN',
    when: ({ word, before, after }) =>
      DESCRIBING_ING.has(before.word) &&
      isThird(word) &&
      (isEdge(after) || after.pos === 'VERB' || after.pos === 'AUX'),
  },
  {
    why: 'operating profit, and remaining stock',
    from: ['VERB', 'NOUN'],
    to: 'ADJ',
    when: ({ word, before, after }) =>
      DESCRIBING_ING.has(word) &&
      (isNominal(after) || after.pos === 'ADJ') &&
      !BE_FORMS.has(before.word) &&
      before.pos !== 'PRON' &&
      !isNominal(before),
  },
  {
    why: 'a tutoring service, my living room: -ing between determiner and noun',
    from: ['VERB', 'NOUN'],
    to: 'ADJ',
    when: ({ word, before, after }) =>
      isIng(word) &&
      (isNominal(after) || after.pos === 'ADJ' || MODAL_NOUNS.has(after.word)) &&
      (isDeterminer(before) || before.pos === 'ADJ' || (before.pos === 'PART' && /s$/.test(before.word))),
  },
  {
    why: 'clothing store, packaging: a noun that only looks like a verb',
    from: ['VERB', 'ADJ'],
    to: 'NOUN',
    when: ({ word, before, after }) =>
      NOUNS_IN_ING.has(word) &&
      !BE_FORMS.has(before.word) &&
      before.pos !== 'PRON' &&
      !opensObject(after) &&
      !(isNominal(before) && isNominal(after)),
  },
  {
    why: 'simple and filling',
    from: ['VERB', 'NOUN'],
    to: 'ADJ',
    when: ({ word, before, before2, after }) =>
      isIng(word) &&
      (!NOUNS_IN_ING.has(word) || (word === 'filling' && !isNominal(after))) &&
      before.pos === 'CCONJ' &&
      before2.pos === 'ADJ' &&
      !opensObject(after),
  },
  {
    why: 'the tying, good timing: a noun in -ing at the end of its phrase',
    from: ['VERB'],
    to: 'NOUN',
    when: ({ word, before, after }) =>
      isIng(word) && (before.pos === 'ADJ' || isDeterminer(before)) && (isEdge(after) || after.pos === 'ADP'),
  },
  {
    why: 'dried herbs keep: at the beginning of a clause that has another verb',
    from: ['VERB'],
    to: 'ADJ',
    when: ({ word, before, after, after2 }) =>
      after.pos === 'NOUN' &&
      (after2.pos === 'VERB' || after2.pos === 'AUX') &&
      (isEdge(before) || before.pos === 'CCONJ') &&
      isParticiple(word),
  },
  {
    why: 'dried herbs, a well kept garden: a participle before its noun',
    from: ['VERB'],
    to: 'ADJ',
    when: ({ word, before, before2, after }) =>
      isParticiple(word) &&
      (isNominal(after) || after.pos === 'ADJ') &&
      (isDeterminer(before) ||
        ['ADJ', 'ADP', 'NUM'].includes(before.pos) ||
        (before.pos === 'CCONJ' && before2.pos === 'ADJ') ||
        (COMPOUNDING.has(word) && before.pos === 'NOUN' && !isThird(before.word)) ||
        (before.pos === 'VERB' && !isIng(before.word)) ||
        (before.pos === 'PART' && /s$/.test(before.word)) ||
        (before.pos === 'ADV' &&
          (isDeterminer(before2) || INTENSIFIERS.has(before.word)) &&
          !BE_FORMS.has(before2.word))),
  },
  {
    why: 'the rope handles make, leaves taste, to carry logs: of two verbs side by side one is a thing',
    from: ['VERB'],
    to: 'NOUN',
    when: ({ word, before, before2, after }) =>
      isThird(word) &&
      ((before.pos === 'CCONJ' && after.pos === 'VERB' && LINKING.has(after.word)) ||
        (isNominal(before) && (after.pos === 'VERB' || after.pos === 'AUX') && !isIng(after.word)) ||
        (before.pos === 'VERB' && (before2.word === 'to' || MODAL_FORMS.has(before2.word)))),
  },
  {
    why: 'this company, for tap water, needing help: no bare verb stands here',
    from: ['VERB', 'AUX'],
    to: 'NOUN',
    when: ({ word, before, after }) =>
      !isIng(word) &&
      !isParticiple(word) &&
      !BE_FORMS.has(word) &&
      !MODAL_FORMS.has(word) &&
      ((DETERMINERS.has(before.word) && !/^(that|which|what|all|both|this)$/.test(before.word)) ||
        (before.word === 'this' && !isThird(word)) ||
        (POSSESSIVE_FORMS.has(before.word) && before.word !== 'her') ||
        (before.pos === 'ADJ' &&
          !opensObject(after) &&
          (isEdge(after) || isThird(word) || after.pos === 'ADP')) ||
        (['ADP', 'SCONJ'].includes(before.pos) &&
          /^(for|of|in|on|at|with|from|by|about|without|into)$/.test(before.word)) ||
        (before.pos === 'VERB' &&
          isIng(before.word) &&
          !opensObject(after) &&
          !isThird(word) &&
          before.word !== 'being')),
  },
  {
    why: 'my favourite, her best: what is owned is a thing',
    from: ['ADJ'],
    to: 'NOUN',
    when: ({ word, before, after, after2 }) =>
      POSSESSIVE_FORMS.has(before.word) &&
      !FLAT.has(word) &&
      word !== 'own' &&
      !isNominal(after) &&
      after.pos !== 'NUM' &&
      !((after.pos === 'CCONJ' || after.pos === 'ADJ') && (after2.pos === 'ADJ' || isNominal(after2))),
  },
  {
    why: 'today, yesterday',
    from: ['ADV', 'PROPN'],
    to: 'NOUN',
    when: ({ word }) => DAYS.has(word),
  },
];
