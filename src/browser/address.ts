/** What is asked, as the page's address has it. */

/** Names are those of the form's controls; empty where nothing is asked. */
export interface Query {
  readonly q: string;
  readonly kind: string;
  /** A year or a cycle: `2025`, `2025-04`. */
  readonly when: string;
  readonly colour: string;
  readonly material: string;
  /** `on` for spare pieces alone. */
  readonly sale: string;
}

/** What a query asks for, by the names that the form and the address have for it. */
export const QUERY_NAMES = ['q', 'kind', 'when', 'colour', 'material', 'sale'] as const;

/** A query of the value that each name has; empty where it asks for nothing. */
export const queryFrom = (of: (name: (typeof QUERY_NAMES)[number]) => string): Query =>
  Object.fromEntries(QUERY_NAMES.map((name) => [name, of(name)])) as never;

/** The query that the page's address asks. */
export const queryOfAddress = (): Query => {
  const given = new URLSearchParams(location.search);
  return queryFrom((name) => given.get(name) ?? '');
};

/** Whether a query asks for nothing. */
export const isNothing = (query: Query): boolean => QUERY_NAMES.every((name) => query[name].trim() === '');

/** The address of a query on this page. */
export const addressOf = (query: Query): string => {
  const said = new URLSearchParams(
    QUERY_NAMES.filter((name) => query[name].trim() !== '').map((name) => [name, query[name].trim()]),
  ).toString();
  return location.pathname + (said === '' ? '' : `?${said}`);
};

/** Puts a query into the address: as a new step to come back from, or in place of the last. */
export const rememberQuery = (query: Query, how: 'push' | 'replace'): void => {
  const address = addressOf(query);
  if (address === location.pathname + location.search) return;
  try {
    if (how === 'push') history.pushState(null, '', address);
    else history.replaceState(null, '', address);
  } catch {
    // Some browsers let no page that was opened from disk change its address, and all limit how often.
  }
};
