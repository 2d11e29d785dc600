/** Where text stands on the finished page, and what a mention there is worth. */

export type PlaceName =
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
export const placeNames: readonly PlaceName[] = [
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

/** In words for the owner. */
export const placeWords: Readonly<Record<PlaceName, string>> = {
  title: 'title',
  address: 'address',
  summary: 'summary',
  heading: 'heading',
  opening: 'opening',
  section: 'own section',
  body: 'elsewhere',
  'picture text': 'picture text',
  'link text': 'link text',
  'structured data': 'structured data',
};

/** Words that the opening is long. Common practice, no source: what a visitor reads before deciding to stay. */
export const OPENING_WORDS = 100;

/**
 * What each place is worth, in all 1. Common practice, no source: what a list of results shows (title, summary,
 * address) and what names a part of the page (heading) tells most about it; a thing's own section is where a
 * visitor looks for it; text read by machines and by people who do not see the pictures counts less, and the
 * address least, for it should never change. One clear mention everywhere but in title and address reaches 0.7.
 */
export const placeWorth: Readonly<Record<PlaceName, number>> = {
  title: 0.12,
  address: 0.04,
  summary: 0.12,
  heading: 0.14,
  opening: 0.12,
  section: 0.18,
  body: 0.08,
  'picture text': 0.1,
  'link text': 0.06,
  'structured data': 0.04,
};
