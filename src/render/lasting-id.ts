/** Ids for what leaves the site for good: a message, an event. */
import type { BoxSettings, Cycle } from '../model/box.ts';

/**
 * An id that is unique in the world, the same each time, and tells nothing of a person (RFC 5322 §3.6.4 for messages, RFC
 * 7986 §5.3 for events): the cycle, `what` of it, and the site's own folder and host.
 */
export const lastingId = (
  { url }: Pick<BoxSettings, 'url'>,
  { id }: Pick<Cycle, 'id'>,
  what: 'letter' | 'live',
): string => {
  const { hostname, pathname } = new URL(url);
  const folder = pathname.split(/[^A-Za-z0-9]+/).filter(Boolean);
  return `${[id, what, ...folder].join('.')}@${hostname}`;
};
