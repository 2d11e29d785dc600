/** Verbs that a tagger takes for nouns. */

import { OBJECTS, SUBJECTS } from './lexicon/function-words.ts';
import {
  isBare,
  isBareWithS,
  isEdge,
  isIng,
  isNominal,
  isParticiple,
  isThird,
  NOUNS,
  opensObject,
  type Rule,
} from './site.ts';
import {
  BE_FORMS,
  LINKING,
  MODAL_FORMS,
  NOUNS_IN_ING,
  PLURALS_WITHOUT_S,
  POSSESSIVE_FORMS,
} from './word-classes.ts';

/** Tried second, in this order. */
export const verbRules: readonly Rule[] = [
  {
    why: 'I, we, who + verb',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, before2, after }) =>
      !isIng(word) &&
      (SUBJECTS.has(before.word) ||
        (before.word === 'you' && !isEdge(after)) ||
        (before.pos === 'ADV' && SUBJECTS.has(before2.word))),
  },
  {
    why: 'can, will, does not + verb',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, before2, after }) =>
      (MODAL_FORMS.has(before.word) && before.pos === 'AUX' && isBare(word)) ||
      ((before.word === "n't" || before.word === 'not') &&
        MODAL_FORMS.has(before2.word) &&
        !isNominal(after)),
  },
  {
    why: 'fold the paper, press it: a noun is not followed by an object',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after }) =>
      !isThird(word) &&
      (isEdge(before) || before.pos === 'CCONJ' || (before.pos === 'PART' && before.word === 'to')) &&
      (isBare(word) ? opensObject(after) || after.word === 'to' : OBJECTS.has(after.word)),
  },
  {
    why: 'call before you go, point upwards, plant ten tulips',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after, after2 }) =>
      isEdge(before) &&
      isBare(word) &&
      (/^(before|after|until|when|if|because|once|again|gently|well|.+wards|.+ly)$/.test(after.word) ||
        (after.pos === 'NUM' && isThird(after2.word))),
  },
  {
    why: 'brush off the soil',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after }) =>
      isEdge(before) && isBare(word) && /^(off|up|out|away|down|aside)$/.test(after.word),
  },
  {
    why: 'store dried herbs, rinse cups: a bare verb that opens a sentence before a plural',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after, after2 }) =>
      isEdge(before) &&
      isBare(word) &&
      ((isParticiple(after.word) && after2.pos === 'NOUN') ||
        (after.pos === 'ADJ' && /s$/.test(after2.word))),
  },
  {
    why: 'to load and pack',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, before2, after }) =>
      isBare(word) &&
      ((before.pos === 'CCONJ' && before2.pos === 'VERB' && !isNominal(after)) ||
        (before.pos === 'PART' && before.word === 'to')),
  },
  {
    why: '100% recommend',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after }) =>
      before.word === '%' && isBare(word) && !isNominal(after) && !isEdge(after),
  },
  {
    why: 'had sown forty pots, has fitted it, they soaked the bench',
    from: ['NOUN', 'ADJ'],
    to: 'VERB',
    when: ({ word, before, before2 }) =>
      isParticiple(word) &&
      (/^(have|has|had|having|'ve)$/.test(before.word) ||
        (before.pos === 'ADV' && /^(have|has|had|having|'ve)$/.test(before2.word)) ||
        SUBJECTS.has(before.word) ||
        (before.word === 'it' && before2.pos === 'PUNCT')),
  },
  {
    why: 'whoever bends, seed that rustles',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, before2 }) =>
      isBareWithS(word) &&
      (/^(whoever|whatever|which|everyone|everybody|someone|somebody|nobody|he|she|it)$/.test(before.word) ||
        (before.word === 'that' && isNominal(before2))),
  },
  {
    why: 'Anna glazes them: no plural is followed by an object',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after }) => OBJECTS.has(after.word) && isNominal(before) && isThird(word),
  },
  {
    why: 'the pot suits it, drinks almost nothing',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after }) =>
      isBareWithS(word) &&
      isNominal(before) &&
      (after.word === 'it' ||
        POSSESSIVE_FORMS.has(after.word) ||
        /^(almost|out|up|off|away|well|easily|nicely|perfectly)$/.test(after.word)),
  },
  {
    why: 'is carving, has been trusting',
    from: [...NOUNS, 'ADJ'],
    to: 'VERB',
    when: ({ word, before, before2, after }) =>
      isIng(word) &&
      (BE_FORMS.has(before.word) || (before.pos === 'ADV' && BE_FORMS.has(before2.word))) &&
      before.pos !== 'PART' &&
      (opensObject(after) || isNominal(after) || (after.pos === 'ADP' && !NOUNS_IN_ING.has(word))),
  },
  {
    why: 'for pruning roses, who love baking bread: what is done to a plural',
    from: [...NOUNS, 'ADJ'],
    to: 'VERB',
    when: ({ word, before, after, after2 }) =>
      isIng(word) &&
      !NOUNS_IN_ING.has(word) &&
      (before.pos === 'ADP' || before.pos === 'SCONJ' || before.pos === 'VERB') &&
      /[^s]s$/.test(after.word) &&
      !isNominal(after2),
  },
  {
    why: 'seeds smell sweet, and taste great: what a thing is like ends its clause',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after, after2 }) =>
      LINKING.has(word) &&
      (isNominal(before) || isThird(before.word) || before.pos === 'CCONJ') &&
      after.pos === 'ADJ' &&
      after2.pos !== 'ADJ' &&
      !isNominal(after2),
  },
  {
    why: 'strongly recommend: an adverb in -ly describes what is done',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after }) =>
      before.pos === 'ADV' && before.word.endsWith('ly') && isBare(word) && !isNominal(after),
  },
  {
    why: 'rinse it before planting: what is done and not a trade',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after }) =>
      isIng(word) &&
      !NOUNS_IN_ING.has(word) &&
      /^(before|after|while|without)$/.test(before.word) &&
      (isEdge(after) || after.pos === 'CCONJ'),
  },
  {
    why: 'the waiters check on you: a plural and what it does',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, before2, after }) =>
      isBare(word) &&
      before.pos === 'NOUN' &&
      (isThird(before.word) || PLURALS_WITHOUT_S.has(before.word)) &&
      before2.pos !== 'VERB' &&
      (after.pos === 'ADP' || after.pos === 'ADV' || opensObject(after)),
  },
  {
    why: 'the spinner lives two doors down: a clause without a verb needs one',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after, subject }) =>
      isBareWithS(word) &&
      before.pos === 'NOUN' &&
      !isThird(before.word) &&
      !isNominal(after) &&
      !isEdge(after) &&
      after.pos !== 'CCONJ' &&
      subject(),
  },
  {
    why: 'will the lid fit, does the knife rust?',
    from: NOUNS,
    to: 'VERB',
    when: ({ word, before, after, asked }) =>
      isBare(word) && before.pos === 'NOUN' && !isNominal(after) && after.pos !== 'VERB' && asked(),
  },
];
