/** The fields of an item’s file, as `box-schema.ts` has those of box.md. */
import * as v from 'valibot';
import { ALLERGENS } from './allergens.ts';
import { isCountry, isGtin } from './codes.ts';
import {
  address,
  addressPart,
  atMost,
  currency,
  date,
  described,
  group,
  heading,
  is,
  list,
  listOrNone,
  namingText,
  none,
  picture,
  price,
  text,
  wholeNumber,
} from './fields.ts';
import { filmedPiece } from './piece-fields.ts';
import { CATEGORIES } from './vocabulary.ts';

const category = v.pipe(list(v.picklist([...CATEGORIES, 'none'], `${CATEGORIES.join(', ')} or none`)));
const allergens = v.union(
  [none, list(is((value) => ALLERGENS.includes(value.toLowerCase()), `one of ${ALLERGENS.join(', ')}`))],
  `a list of ${ALLERGENS.join(', ')}, or none`,
);
const YEARS = 'a number of years, as 3';

export const itemSchema = v.strictObject({
  name: described(heading, 'As printed on the card in the box', 'Wooden seed tray, 30 × 12 cm'),
  slug: v.optional(
    described(addressPart, 'Its anchor in the article; the file’s name without it', 'seed-tray'),
  ),
  formerly: v.optional(
    described(list(addressPart), 'Its earlier anchors: links to them lead to it still', ['sowing-tray']),
  ),
  kind: described(namingText, 'The common noun people say, singular', 'seed tray'),
  also: v.optional(described(list(text), 'Other names people use', ['seedling tray', 'seed box'])),
  lead: v.optional(
    described(v.boolean('true or false'), 'true on the one item the box was built around', true),
  ),
  brand: described(heading, 'The maker', 'Tolley Joinery'),
  description: described(atMost(200), 'One sentence', 'A pine seed tray that fits the narrowest sill.'),
  material: v.optional(described(list(text), 'What it is made of', ['pine'])),
  color: v.optional(described(text, 'Its colour', 'brown')),
  size: v.optional(described(text, 'Its size', '30 × 12 × 8 cm')),
  weight: v.optional(described(text, 'Its weight', '480 g')),
  care: v.optional(described(text, 'How to keep it', 'Empty it after each sowing, and dry it in the air.')),
  countryOfOrigin: v.optional(
    described(is(isCountry, 'a country in two capital letters, as GB'), 'Where it was made', 'GB'),
  ),
  price: v.optional(described(price, 'Its own price', '16.00')),
  priceCurrency: v.optional(described(currency, 'What its price is in; the box’s without it', 'EUR')),
  sku: v.optional(described(text, 'Your own number for it', 'TT-2603-1')),
  gtin: v.optional(
    described(
      is(
        isGtin,
        'the number under a bar code, of 8, 12, 13 or 14 digits, the last of which checks the others, as 0202603000115',
      ),
      'The number under its bar code',
      '0202603000115',
    ),
  ),
  image: v.optional(described(list(picture), 'Pictures from photos/')),
  take: v.optional(
    described(
      filmedPiece,
      'Your own filmed piece of it, from takes/, for the film; with where to begin, where it is not the start',
      'seed-tray.mov 0:04',
    ),
  ),
  goesWith: v.optional(
    described(
      text,
      'How it goes with the lead item; on every other item',
      'The seed tray wants a fine mist until something is up, and this makes one.',
    ),
  ),
  spare: v.optional(
    described(
      group(
        {
          count: described(wholeNumber, 'How many are left; 0 is sold out', 12),
          price: described(price, 'What one costs', '18.50'),
          address: described(address, 'Where it is sold', 'https://shop.example/seed-tray'),
          until: v.optional(described(date, 'The last day', '2026-06-30')),
        },
        'spare pieces',
      ),
      'Spare pieces for sale',
    ),
  ),
  category: v.optional(described(category, 'Where it can hurt', ['food'])),
  allergens: v.optional(described(allergens, 'Food and drink: the major allergens in it', ['milk', 'wheat'])),
  mayContain: v.optional(described(listOrNone, 'Food and drink: traces', ['celery'])),
  ingredients: v.optional(
    described(text, 'Food, drink, cosmetic: all that it is made of', 'Sugar, red peppers, vinegar and salt'),
  ),
  toxicTo: v.optional(
    described(listOrNone, 'Plants: whom it poisons; none says none known', ['cats', 'dogs']),
  ),
  minAge: v.optional(
    described(v.pipe(v.number(YEARS), v.minValue(0, YEARS)), 'For children: from which age', 3),
  ),
  hazards: v.optional(described(listOrNone, 'For children: what can harm them', ['small parts', 'cords'])),
  cautions: v.optional(
    described(list(text), 'More lines of your own', ['The tip is steel and comes to a point.']),
  ),
});
