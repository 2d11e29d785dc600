/** Work that goes on at the desk: how far it is is asked for again and again, and when it is over the page is loaded as it is now. */

/** Milliseconds from one answer to the next question. */
const EVERY = 800;

const isAtWork = (page: Document): boolean => page.querySelector('[data-work]') !== null;

/** Follows the work that this page tells of. `refresh` puts the page in place as it is now, and gives it. */
export const followWork = (refresh: () => Promise<Document | undefined>): void => {
  if (!isAtWork(document)) return;
  const ask = (): void => {
    refresh()
      .then((page) => {
        if (page && !isAtWork(page)) location.reload();
        else setTimeout(ask, EVERY);
      })
      .catch(() => setTimeout(ask, EVERY));
  };
  setTimeout(ask, EVERY);
};
