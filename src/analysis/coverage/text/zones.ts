/** Where text stands on the finished page, and what a mention there is worth. */

/** A place of the finished page. */
export type Zone =
  | 'title'
  | 'address'
  | 'summary'
  | 'heading'
  | 'opening'
  | 'section'
  | 'body'
  | 'picture text'
  | 'link text'
  | 'structured data';

/** Every place once, in the order of a page from its head down. */
export const zones: readonly Zone[] = [
  'title',
  'address',
  'summary',
  'heading',
  'opening',
  'section',
  'body',
  'picture text',
  'link text',
  'structured data',
];

/** Words that the opening is long. Common practice, no source: what a visitor reads before deciding to stay. */
export const OPENING_WORDS = 100;

/**
 * What each place is worth. Common practice, no source: a thing's own section is where a visitor looks for it; the heading
 * and what a list of results shows (summary, picture) tell most about it; what machines alone read counts less. These
 * five are an item's own, and worth 1 together. The others, which not every item can have, add to them; the address
 * least, because it should never change.
 */
export const zoneWorth: Readonly<Record<Zone, number>> = {
  title: 0.1,
  address: 0.05,
  summary: 0.2,
  heading: 0.2,
  opening: 0.1,
  section: 0.3,
  body: 0.05,
  'picture text': 0.2,
  'link text': 0.05,
  'structured data': 0.1,
};

const OWN: ReadonlySet<Zone> = new Set(['summary', 'heading', 'section', 'picture text', 'structured data']);

/** Whether a place is one that an item has for itself, and is asked for. */
export const isOwnZone = (zone: Zone): boolean => OWN.has(zone);
