/** What the public site says in its own voice. Names, texts, dates and prices come in as they are to be shown. */

import { capital } from '../../text/counting-words.ts';
import type { Spelling } from './spelling.ts';

const everyOne = (kind: string): string => `${kind}: every one we have packed`;
const spareLeft = (count: number, price: string): string => `${count} left at ${price}`;
const aBox = (price: string): string => `${price} a box`;

/** The frame of every page. */
const page = {
  title: (title: string, box: string): string => `${title} · ${box}`,
  skip: 'Skip to the text',
  navigation: 'Site',
  newest: 'Newest box',
  everything: 'Everything packed',
  firstPage: 'First page',
  feed: 'Feed',
};

/** A story's own parts that no author writes. */
const story = {
  table: 'Table',
  notes: 'Notes',
};

/** The moments of a sale that several pages name. */
const spare = {
  label: 'Spare pieces',
  left: spareLeft,
  until: (date: string): string => `, until ${date}`,
  buy: (kind: string): string => `Buy a spare ${kind}`,
  sold: 'All sold.',
  over: 'No longer for sale.',
};

const article = {
  box: (month: string): string => `The ${month} box`,
  mended: 'mended',
  packed: 'Packed in this box',
  plate: (number: number): string => `Plate ${number}`,
  others: 'Other boxes',
  before: (month: string): string => `Before this, ${month}`,
  after: (month: string): string => `After this, ${month}`,
};

/** An item's section in its article. */
const item = ({ colour }: Spelling) => ({
  /** Stands after the kind. */
  lead: ', the piece this box was built around',
  from: (month: string): string => `the ${month} box`,
  plate: article.plate,
  with: (lead: string): string => `With the ${lead}`,
  cautions: (name: string): string => `Cautions: ${name}`,
  earlier: 'Also packed',
  everyOne,
  spare,
  facts: {
    brand: 'Maker',
    material: 'Material',
    color: capital(colour),
    size: 'Size',
    weight: 'Weight',
    countryOfOrigin: 'Made in',
    care: 'Care',
  },
});

const wholeBox = {
  heading: 'The whole box',
  /** What stands before and after the day of the prices. */
  value: (total: string): { readonly before: string; readonly after: string } => ({
    before: `Bought one by one, these would come to ${total} at prices of `,
    after: '.',
  }),
};

const voices = {
  heading: 'From those who opened it',
  headingOfReplay: 'Watch it opened',
  given: '(had this box free or at a lower price)',
  replay: 'Watch the live opening again',
  minutes: (minutes: number): string => `, ${minutes} minutes`,
  moments: 'Moments of the recording',
};

const peek = { heading: 'A look at the next box' };

const placesLeft = (places: number): string => `${places} places left`;

/** The call at the foot of a page, by what can be done. */
const call = {
  heading: { join: 'Have the next one', waitList: 'Wait for a place', spare: 'Spare pieces' },
  price: (price: string): string => `${aBox(price)}.`,
  placesLeft,
};

const home = {
  newest: (month: string): string => `The newest box, ${month}`,
  nothingYet: 'The first box has not been opened yet. Come back soon.',
  about: 'What this box is',
  price: aBox,
  before: (boxes: number): string => (boxes === 1 ? 'The box before it' : `The ${boxes} boxes before it`),
  placesLeft,
};

const catalogue = {
  title: (pieces: number, boxes: number): string =>
    `Everything we have packed: ${pieces} pieces from ${boxes} boxes`,
  description: (box: string): string =>
    `Every piece from every ${box} box so far, by month and by kind, with its maker and whether spare pieces are for sale.`,
  heading: 'Everything we have packed',
  summary: (pieces: number, boxes: number): string =>
    `${pieces} pieces from ${boxes} boxes. Each leads to its own story.`,
  byKind: 'By kind',
  detail: (kind: string, brand: string): string => `${kind}, ${brand}`,
  onSale: 'Spare pieces for sale',
};

/** A choice and how many pieces it would leave. */
const choice = (name: string, count: number): string => `${name} (${count})`;

/** The catalogue's search form, as it stands in the page; what its script says is in browser.ts. */
const search = ({ colour }: Spelling) => ({
  label: 'Look for something',
  submit: 'Search',
  narrow: `Narrow it down by kind, date, ${colour} or material`,
  kind: 'Kind',
  anyKind: 'Any kind',
  when: 'Packed',
  anyTime: 'At any time',
  year: (year: number): string => `All of ${year}`,
  colour: capital(colour),
  anyColour: `Any ${colour}`,
  material: 'Material',
  anyMaterial: 'Any material',
  onSale: 'Still for sale',
  choice,
  reset: 'Show everything',
  results: 'What answers',
});

const kind = {
  title: everyOne,
  label: 'Every one we have packed',
  /** What a search result says of the page. Months are equal where all came in one; `names` stand in one line. */
  summary: (count: number, from: string, to: string, names: string): string =>
    `${count} so far, ${from === to ? `in ${from}` : `from ${from} to ${to}`}: ${names}.`,
  /** One more name in the line, for those that it has no room for. */
  more: (count: number): string => `${count} more`,
  spareLabel: spare.label,
  spareLeft,
  buy: 'Buy one',
  others: 'Other things we have packed',
  /** Stands after the name of another kind. */
  soFar: (count: number): string => `, ${count} so far`,
  everything: 'Everything, box by box',
};

const notFound = {
  title: 'Nothing at this address',
  heading: 'Nothing grows at this address',
  why: 'The page may have moved, or the link lost a letter on its way here.',
  newest: (theme: string): string => `The newest box, ${theme}`,
  everything: 'Everything we have packed',
};

/** A page that is left where another stood, and sends on. */
const redirect = {
  title: 'This page has moved',
  heading: 'This page has moved',
  /** The link to an article. */
  article: (theme: string, month: string): string => `${theme}, the box of ${month}`,
  everything: notFound.everything,
};

/** A feed's entry, which has no headings of its own to say what it is. */
const feed = (spelling: Spelling) => ({
  box: (month: string, theme: string): string => `The ${month} box: ${theme}.`,
  item: item(spelling),
  wholeBox,
  voices,
  peek,
  price: call.price,
  placesLeft: (places: number): string => `, ${placesLeft(places)}`,
  /** Stands before what it says. */
  label: (label: string): string => `${label}:`,
  fact: (label: string, value: string): string => `${label}: ${value}`,
  spare: (count: number, price: string): string => `${spare.label}: ${spareLeft(count, price)}`,
  sold: `${spare.label}: all sold.`,
  over: `${spare.label}: no longer for sale.`,
});

/** The comment of robots.txt, a line each. */
const robots: readonly string[] = [
  'All of this site may be read and indexed.',
  'Robots ask for this file at the root of a domain alone (RFC 9309, 2.3): where the site stands in a folder of one,',
  'the lines below belong in the file at the root.',
];

/** Words of the public site. */
export const site = (spelling: Spelling) => ({
  page,
  story,
  article,
  item: item(spelling),
  wholeBox,
  voices,
  peek,
  call,
  home,
  catalogue,
  search: search(spelling),
  kind,
  notFound,
  redirect,
  feed: feed(spelling),
  robots,
});
