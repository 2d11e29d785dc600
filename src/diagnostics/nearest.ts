/** Edits (insert, delete, replace a letter) from one word to the other. Levenshtein 1966. */
const distance = (a: string, b: string): number => {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[b.length] as number;
};

/** The known word that `word` was most likely meant to be, where one is close. */
export const nearest = (word: string, known: readonly string[]): string | undefined => {
  const ranked = known
    .map((candidate) => ({ candidate, edits: distance(word.toLowerCase(), candidate.toLowerCase()) }))
    .sort((a, b) => a.edits - b.edits);
  const best = ranked[0];
  return best && best.edits <= Math.max(1, Math.floor(best.candidate.length / 2))
    ? best.candidate
    : undefined;
};
