/** Numbers and lists in English sentences, where findings are worded. */
export * from '../text/counting-words.ts';
