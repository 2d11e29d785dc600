/** Queries of addresses (RFC 3986 §3.4) as names with values: `via=letter&by=post`. */

/** What may stand in a query, letters of every script, and the signs that placeholders are set in. */
const SIGNS = /^(?:[\p{L}\p{M}\p{N}\-._~!$&'()*+,;=:@/?{}[\]|]|%[\da-f]{2})+$/iu;
/** A name has none of the signs that an address is made of. */
const PAIR = /^[^=:/?]+=.+$/;

/** Without what joins it to an address or to another. */
const bare = (text: string): string => text.replace(/^[?&]+/, '').replace(/(?<!&)&+$/, '');

/** Whether a text is a query of names with values, with or without the sign that joins it to an address. */
export const isQuery = (text: string): boolean => {
  const query = bare(text);
  return SIGNS.test(query) && query.split('&').every((pair) => PAIR.test(pair));
};

/** A query without the sign that joins it, letters outside ASCII percent-encoded; throws for a text that is none. */
export const queryOf = (text: string): string => {
  if (!isQuery(text)) throw new Error(`Expected a query, found ${text}`);
  return bare(text).replace(/[^\p{ASCII}]+/gu, encodeURIComponent);
};

const nameOf = (pair: string): string | undefined => new URLSearchParams(pair).keys().next().value;

/**
 * An absolute http or https address with a query added: before its fragment, after its own query, in which the same names
 * give way, because of two values of one name readers take either. Nothing else of the address is changed.
 */
export const withQuery = (address: string, query: string): string => {
  const [, place = '', own = '', fragment = ''] = /^([^?#]*)(?:\?([^#]*))?(#.*)?$/s.exec(address) ?? [];
  const names = new Set(query.split('&').map(nameOf));
  const kept = own.split('&').filter((pair) => pair !== '' && !names.has(nameOf(pair)));
  const root = /^https?:\/\/[^/]*$/i.test(place) ? '/' : '';
  return `${place}${root}?${[...kept, query].join('&')}${fragment}`;
};
