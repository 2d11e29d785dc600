/** Pronouns, adverbs and adjectives that a tagger takes for something else. */

import { BOTH_CASES, MODAL_NOUNS, SUBJECTS } from './lexicon/function-words.ts';
import {
  ANY,
  isArticle,
  isDeterminer,
  isEdge,
  isIng,
  isNominal,
  isParticiple,
  isThird,
  type Near,
  NOUNS,
  opensObject,
  type Rule,
} from './site.ts';
import {
  ADJECTIVES,
  BE_FORMS,
  CLITICS,
  COMPASS,
  FLAT,
  INTENSIFIERS,
  ONLY_INTENSIFIERS,
  PRONOUNS,
  SIDES,
  THINGS_IN_ING,
} from './word-classes.ts';

/** "The packaging can be", "the building will also": a modal is followed so. */
const goesOnAfterModal = ({ word, pos }: Near): boolean =>
  pos === 'ADV' ||
  pos === 'PART' ||
  (pos === 'AUX' && /^(be|have|do|not)$/.test(word)) ||
  (pos === 'VERB' && !isThird(word));

/** Tried first: what describes is known by itself, and tells what the words beside it are. */
export const describingRules: readonly Rule[] = [
  {
    why: 'keeps that water in. The end of a sentence, not inches',
    from: NOUNS,
    to: 'ADP',
    when: ({ word, before }) => word === 'in.' && before.pos !== 'NUM',
  },
  {
    why: 'it s, i ve: a verb without its apostrophe',
    from: ANY,
    to: 'AUX',
    when: ({ word, before }) =>
      CLITICS.has(word) &&
      (SUBJECTS.has(before.word) ||
        BOTH_CASES.has(before.word) ||
        /^(that|there|what|here)$/.test(before.word)),
  },
  {
    why: 'a pronoun is no content',
    from: [...ANY, 'DET'],
    to: 'PRON',
    when: ({ word, after }) => PRONOUNS.has(word) && !(word === 'mine' && isNominal(after)),
  },
  {
    why: 'the watering can holds; last May; may stands where only a thing can; but the top may chip, what more can be',
    from: ['AUX', 'VERB'],
    to: 'NOUN',
    when: ({ word, before, before2, after }) =>
      MODAL_NOUNS.has(word) &&
      (isArticle(before) ||
        (before.pos === 'ADJ' &&
          isDeterminer(before2) &&
          before2.word !== 'what' &&
          !(SIDES.has(before.word) && goesOnAfterModal(after))) ||
        (isIng(before.word) &&
          (isDeterminer(before2) || before2.pos === 'ADJ') &&
          !goesOnAfterModal(after)) ||
        (isNominal(before) &&
          ((after.pos === 'VERB' && isThird(after.word)) || /^(is|was|has|are|were)$/.test(after.word)))),
  },
  {
    why: 'firing this company, painting their pots',
    from: [...NOUNS, 'ADJ'],
    to: 'VERB',
    when: ({ word, after }) =>
      isIng(word) &&
      !THINGS_IN_ING.has(word) &&
      !/^(that|which|what|each)$/.test(after.word) &&
      opensObject(after),
  },
  {
    why: 'very, sooo: nothing else',
    from: ANY,
    to: 'ADV',
    when: ({ word }) => ONLY_INTENSIFIERS.has(word),
  },
  {
    why: 'very, super, pretty before an adjective',
    from: ['NOUN', 'PROPN', 'ADJ', 'VERB'],
    to: 'ADV',
    when: ({ word, after }) =>
      INTENSIFIERS.has(word) && (after.pos === 'ADJ' || after.pos === 'ADV' || ADJECTIVES.has(after.word)),
  },
  {
    why: 'the only reason, the northwest corner: after an article and what describes stands a thing',
    from: ['VERB'],
    to: 'NOUN',
    when: ({ word, before, before2 }) =>
      (before.word === 'only' || (COMPASS.has(before.word) && !isThird(word))) &&
      isArticle(before2) &&
      !isIng(word) &&
      !isParticiple(word),
  },
  {
    why: 'the northwest corner',
    from: ['ADV'],
    to: 'ADJ',
    when: ({ word, after }) => COMPASS.has(word) && isNominal(after),
  },
  {
    why: 'they were kind about it, so kind; but a kind of jar',
    from: ['NOUN'],
    to: 'ADJ',
    when: ({ word, before, after }) =>
      word === 'kind' && after.word !== 'of' && (BE_FORMS.has(before.word) || INTENSIFIERS.has(before.word)),
  },
  {
    why: 'fast delivery, the last decade, best service',
    from: ['ADV', 'VERB', 'NOUN', 'PROPN', 'ADP'],
    to: 'ADJ',
    when: ({ word, before, after }) =>
      FLAT.has(word) &&
      word !== 'just' &&
      (isNominal(after) || isIng(after.word) || (isDeterminer(before) && after.pos === 'NUM')) &&
      (isEdge(before) ||
        isDeterminer(before) ||
        ['ADP', 'CCONJ', 'ADJ', 'PART', 'VERB'].includes(before.pos)) &&
      !(before.pos === 'VERB' && !/^(last|next|best|better|free|worst|cheap|quick|clean)$/.test(word)),
  },
  {
    why: 'a known adjective before what it describes, or after "is"',
    from: ['NOUN', 'PROPN', 'VERB', 'ADV', 'INTJ'],
    to: 'ADJ',
    when: ({ word, before, after, after2 }) =>
      ADJECTIVES.has(word) &&
      (isNominal(after) ||
        after.pos === 'ADJ' ||
        ADJECTIVES.has(after.word) ||
        (isIng(after.word) && isNominal(after2)) ||
        ((after.word === ',' || after.pos === 'CCONJ') &&
          (after2.pos === 'ADJ' || ADJECTIVES.has(after2.word))) ||
        ((BE_FORMS.has(before.word) || INTENSIFIERS.has(before.word)) && !isNominal(after))),
  },
  {
    why: 'right on the lake',
    from: ['ADJ', 'NOUN'],
    to: 'ADV',
    when: ({ word, after }) => word === 'right' && (after.pos === 'ADP' || after.pos === 'ADV'),
  },
];
