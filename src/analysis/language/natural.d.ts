/** natural's stemmers one by one: its index of them loads all, its root far more. */
declare module 'natural/lib/natural/stemmers/*.js' {
  const stemmer: { stem(word: string): string };
  export = stemmer;
}

/** natural's English stop words; its stemmers load this file in any case. */
declare module 'natural/lib/natural/util/stopwords.js' {
  const list: { readonly words: readonly string[] };
  export = list;
}
