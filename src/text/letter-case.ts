/** How English writes a word inside a sentence, as far as a dictionary knows it. */

/**
 * `name`: with a capital in every sense ("Danish", "Dutch oven"). `common`: in small letters, at least in its commonest
 * sense. `name before a noun`: a name where a thing follows it, else something common ("Polish pottery", polish).
 */
export type LetterCase = 'name' | 'common' | 'name before a noun';

/** The case of a word or of a run of words with spaces; undefined where it is not known. */
export type CaseOf = (words: string) => LetterCase | undefined;
