/** What a build may be asked to leave out. */
export const LEAVABLE = ['proof', 'cards', 'film'] as const;
export type Leavable = (typeof LEAVABLE)[number];

/** Whether something by its name, a channel or a piece, is left out. */
export const isLeft = (name: string, without: ReadonlySet<Leavable> | undefined): boolean =>
  LEAVABLE.some((one) => one === name && without?.has(one) === true);
