/** How the articles of a box are ranked: their fields, and what each counts. */

import type { Zone } from '../text/zones.ts';
import type { RankParameters } from './bm25f.ts';

/** The fields of an article as it is ranked. */
export type FieldName =
  | 'title'
  | 'address'
  | 'summary'
  | 'heading'
  | 'text'
  | 'picture text'
  | 'link text'
  | 'structured data';

/** The field of each place: opening, sections and the rest are one running text to whoever ranks it. */
export const fieldOf: Readonly<Record<Zone, FieldName>> = {
  title: 'title',
  address: 'address',
  summary: 'summary',
  heading: 'heading',
  opening: 'text',
  section: 'text',
  body: 'text',
  'picture text': 'picture text',
  'link text': 'link text',
  'structured data': 'structured data',
};

/**
 * k1 is the upper end of the range that Robertson and Zaragoza (2009) find good, 1.2 to 2: with weighted fields a
 * frequency is larger than in plain BM25, and these articles are long. b of the text is the usual 0.75; fields
 * whose length is a matter of form, not of how much is said, are held to it less. The weights are common practice,
 * without a source: a title's word counts as three of the text, a heading's and a summary's as two, and what
 * machines read as half, since it repeats the record; an address and a link are one mention like any other.
 */
export const RANK_PARAMETERS: RankParameters<FieldName> = {
  k1: 2,
  fields: {
    title: { weight: 3, b: 0.3 },
    address: { weight: 1, b: 0.3 },
    summary: { weight: 2, b: 0.3 },
    heading: { weight: 2, b: 0.5 },
    text: { weight: 1, b: 0.75 },
    'picture text': { weight: 1, b: 0.5 },
    'link text': { weight: 1, b: 0.5 },
    'structured data': { weight: 0.5, b: 0.5 },
  },
};

/** Every field once, in the order in which they are numbered. */
export const FIELDS: readonly FieldName[] = [...new Set(Object.values(fieldOf))];
