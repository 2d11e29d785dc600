/** What can wait until nobody types. */

/** Longer than a key is held, shorter than a pause to read (common practice, no source). */
const QUIET_MS = 120;

/** A place for one task: it runs when nothing was put there for a while; a new one takes the place of the last. */
export const debounce = (): ((task: () => void) => void) => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return (task) => {
    clearTimeout(timer);
    timer = setTimeout(task, QUIET_MS);
  };
};
