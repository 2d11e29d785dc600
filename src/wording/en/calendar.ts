/** Moments of a cycle in English, for the owner's papers. */

/** Until when a cycle is sealed: a day in words, or that nobody can know it yet. */
const revealDay = (day: string | undefined): string => day ?? 'its parcels have arrived';

/** Words for a reveal's day. */
export const calendar = {
  revealDay,
  sealedUntil: (day: string | undefined): string => `Sealed until ${revealDay(day)}.`,
};
