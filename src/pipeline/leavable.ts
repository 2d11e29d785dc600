/** What a build may be asked to leave out. */
export const LEAVABLE = ['proof', 'film'] as const;
export type Leavable = (typeof LEAVABLE)[number];
