/** What can wait until nobody types. */

/** Milliseconds without a key after which somebody has stopped typing. Common practice, no source. */
const QUIET_MS = 120;

/** Gives a function that runs the last task it was handed once none has come for `QUIET_MS`; earlier ones never run. */
export const debounce = (): ((task: () => void) => void) => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return (task) => {
    clearTimeout(timer);
    timer = setTimeout(task, QUIET_MS);
  };
};
