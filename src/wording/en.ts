/** English, in parts by what is spoken of. */
export const en = {
  /** BCP 47 language of these words. */
  lang: 'en',
};
