/** What several readers ask of the same text one after the other is found once. */

/**
 * The same function of a text in a language, which keeps what it gave for the last texts: between `most` and twice as many.
 * What shows is only the time it takes.
 */
export const latelyKnown = <Answer>(
  find: (text: string, lang: string) => Answer,
  most: number,
): ((text: string, lang: string) => Answer) => {
  let now = new Map<string, Answer>();
  let before = new Map<string, Answer>();
  return (text, lang) => {
    const key = `${lang} ${text}`;
    const known = now.get(key) ?? before.get(key);
    const answer = known === undefined ? find(text, lang) : known;
    if (now.size >= most) {
      before = now;
      now = new Map();
    }
    now.set(key, answer);
    return answer;
  };
};
