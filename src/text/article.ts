/** "a" or "an" before English words. */

/** Letters that are read as vowels at a word's beginning, but for those that are heard as "you" or "w". */
const VOWEL = /^[aeiou]/i;
const HEARD_AS_CONSONANT = /^(?:eu|ewe|one\b|once|uni(?!m|n)|use|usu|ut[ie])/i;
/** Words whose h is silent. */
const SILENT_H = /^(?:heir|honest|honou?r|hour)/i;
/** Single letters and numbers that are spoken with a vowel first: an LED, an 8-inch tin. */
const SPOKEN = /^(?:[AEFHILMNORSX](?=[A-Z\d-]|\b)|8|11\b|18\b)/;

/** The words with their indefinite article: "an enamel can", "a unicorn mug". Common English usage, no source. */
export const withArticle = (words: string): string => {
  const an =
    SPOKEN.test(words) || SILENT_H.test(words) || (VOWEL.test(words) && !HEARD_AS_CONSONANT.test(words));
  return `${an ? 'an' : 'a'} ${words}`;
};
