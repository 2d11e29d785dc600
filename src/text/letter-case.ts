/** How English writes a word inside a sentence, as far as a dictionary knows it. */

/**
 * `name`: of a language, a people or a place, with a capital wherever it stands ("Danish"). `proper noun`: with a capital
 * as far as is known, though a trade may have a thing that is called so ("Assam", "Mister"). `common`: in small letters,
 * at least in its commonest sense. `name before a noun`: a name where a thing follows it, else something common ("Polish
 * pottery", polish).
 */
export type LetterCase = 'name' | 'proper noun' | 'common' | 'name before a noun';

/** The case of a word or of a run of words with spaces; undefined where it is not known. */
export type CaseOf = (words: string) => LetterCase | undefined;
