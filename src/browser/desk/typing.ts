/** Room for keys: what is shown beside the writing waits for whoever writes. */

/** Milliseconds without a key after which somebody has paused. */
const STILL = 400;

let lastKey = Number.NEGATIVE_INFINITY;
addEventListener(
  'keydown',
  () => {
    lastKey = performance.now();
  },
  true,
);

/** Waits so many milliseconds. */
export const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Lets what waits for its turn go first, keys among it. */
export const breath = (): Promise<void> => wait(0);

/** Waits until nobody is typing. */
export const inPause = async (): Promise<void> => {
  const left = (): number => lastKey + STILL - performance.now();
  while (left() > 0) await wait(left());
};
