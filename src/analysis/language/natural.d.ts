/** natural's stemmers one by one: its index of them loads all, its root far more. */
declare module 'natural/lib/natural/stemmers/*.js' {
  const stemmer: { stem(word: string): string };
  export = stemmer;
}
