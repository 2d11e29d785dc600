/** The standing that an item should reach, and whether one has. Loads nothing, so that help can name the default. */

/** Standing that every item should reach. Common practice, no source: one clear mention in each good place. */
export const DEFAULT_AIM = 0.7;

/** What the adding up of fractions in another order may lose: no standing falls short of the aim by this. */
export const SLACK = 1e-9;

/** Whether a standing, from 0 to 1, has reached the aim. */
export const isAtAim = (standing: number, aim: number): boolean => standing >= aim - SLACK;

/** Whether a thing is at the aim: it stands there, and is told about at some length, because one that is thin is not found. */
export const isFound = (
  { standing, thin }: { readonly standing: number; readonly thin: boolean },
  aim: number,
): boolean => !thin && isAtAim(standing, aim);

/** How many of some things are. */
export const countFound = (items: readonly Parameters<typeof isFound>[0][], aim: number): number =>
  items.filter((item) => isFound(item, aim)).length;
