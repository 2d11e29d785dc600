/** The desk in English: what the fields of its forms are called, and what is said under that. */

/** Names of fields where the key is not the word for it. */
const LABELS: Readonly<Record<string, string>> = {
  also: 'Also called',
  alt: 'In words',
  brand: 'Maker',
  color: 'Colour',
  consent: 'Agreed on',
  count: 'How many',
  countryOfOrigin: 'Made in',
  every: 'How often',
  file: 'Photo',
  focus: 'Point to keep',
  formerly: 'Earlier addresses',
  given: 'Had the box free or cheaper',
  goesWith: 'Goes with the lead item',
  gtin: 'Number under the bar code',
  hero: 'Picture at the head',
  image: 'Picture',
  lang: 'Language',
  layOut: 'Lay out',
  lead: 'Lead item',
  made: 'Done on',
  mayContain: 'May contain traces of',
  minAge: 'From which age',
  moved: 'Earlier evenings',
  notBefore: 'Not before',
  pace: 'Words a minute',
  palette: 'Colours',
  photo: 'Whole box',
  preheader: 'Line after the subject',
  priceCurrency: 'Currency of the price',
  profiles: 'Elsewhere',
  replay: 'Recording',
  sku: 'Your own number',
  slug: 'Name in addresses',
  spare: 'Spare pieces',
  text: 'Words',
  timeZone: 'Time zone',
  toxicTo: 'Poisons',
  url: 'Address of the site',
  value: 'Bought one by one',
  voices: 'Voice',
  waitList: 'Wait list',
  when: 'Decided by',
};

/** "Last words" of `lastWords`. */
export const label = (key: string): string => {
  const known = LABELS[key];
  if (known !== undefined) return known;
  const words = key.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
  return words.charAt(0).toUpperCase() + words.slice(1);
};

/** Words without a meaning of their own where a field is described. */
const SMALL = new Set(['a', 'an', 'the', 'its', 'it', 'of', 'in', 'on', 'at', 'for', 'your', 'own', 'which']);

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}+/gu) ?? [];

/** What is said about a field under its label: nothing where that would be the label once more. */
export const aboutField = (name: string, about: string): string => {
  const known = new Set(wordsOf(name));
  return wordsOf(about).every((word) => SMALL.has(word) || known.has(word))
    ? ''
    : about.replace(/`([^`]*)`/g, '“$1”');
};

const CHOICES: Readonly<Record<string, string>> = {
  true: 'yes',
  false: 'no',
  waitList: 'wait list',
  '15': '15 seconds',
  '30': '30 seconds',
  '60': '60 seconds',
};

/** What may be chosen, where the record's own word is not the one for it. */
export const choice = (value: string): string => CHOICES[value] ?? value;
