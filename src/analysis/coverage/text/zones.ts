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
 * What each place is worth. Common practice, no source: a thing's own section is where a visitor looks for it; what
 * a list of results shows (title, summary) and what names a part of the page (heading, opening) tells most about
 * it; text read by machines and by people who do not see the pictures counts less, and the address least, because
 * it should never change. All together are more than the 1 that a phrase can reach: no article has room for every
 * phrase in every place, and a phrase that is clear in most of them is carried well.
 */
export const zoneWorth: Readonly<Record<Zone, number>> = {
  title: 0.2,
  address: 0.05,
  summary: 0.2,
  heading: 0.2,
  opening: 0.2,
  section: 0.25,
  body: 0.1,
  'picture text': 0.15,
  'link text': 0.1,
  'structured data': 0.05,
};
