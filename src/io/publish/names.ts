/** Names that publishing keeps for itself at the top of a published folder. */

/** Says that a folder is ours, and which of its files and folders we made. */
export const MANIFEST = '.lidlore';
/** There from the moment a run has decided what to put in place until all of it is in place. */
export const JOURNAL = '.lidlore-journal';
/** There while a run works on the folder. A run that takes over from a dead one adds a file of this name, a dot and the dead one's token. */
export const LOCK = '.lidlore-lock';
/** Begins the names of the folders that hold new files until they are put in place. */
export const STAGING = '.lidlore-new-';

/** Whether an entry at the top of a published folder is one of publishing's own. */
export const isBookkeeping = (name: string): boolean =>
  name === MANIFEST ||
  name === JOURNAL ||
  name === LOCK ||
  name.startsWith(`${LOCK}.`) ||
  name.startsWith(STAGING);

/** Whether it is one that a run at work has there, or that a stopped one left. */
export const isOfARun = (name: string): boolean => isBookkeeping(name) && name !== MANIFEST;
