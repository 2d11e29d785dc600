import { editDistance } from '../text/edit-distance.ts';

/** The known word that `word` was most likely meant to be, where one is close. */
export const nearest = (word: string, known: readonly string[]): string | undefined => {
  const ranked = known
    .map((candidate) => ({ candidate, edits: editDistance(word.toLowerCase(), candidate.toLowerCase()) }))
    .sort((a, b) => a.edits - b.edits);
  const best = ranked[0];
  return best && best.edits <= Math.max(1, Math.floor(best.candidate.length / 2))
    ? best.candidate
    : undefined;
};
