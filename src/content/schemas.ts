/**
 * One schema a record: what each field is, what it may hold, what was expected instead. The reference table and
 * the findings are both made from these.
 */
import * as v from 'valibot';
import { ALLERGENS } from './allergens.ts';
import { isCountry, isDateTime, isGtin, isLanguage, isTimeZone } from './codes.ts';
import {
  address,
  addressPart,
  atMost,
  colours,
  currency,
  date,
  described,
  formerPages,
  is,
  list,
  listOrNone,
  none,
  picture,
  price,
  text,
  wholeNumber,
  wholePicture,
} from './fields.ts';
import { isDatePattern } from './parcel-dates.ts';
import { clipLength, clockTime, madeDates, piece } from './piece-fields.ts';
import { CALL_KINDS, CATEGORIES, PIECES } from './vocabulary.ts';

const call = v.strictObject(
  { address, text, places: v.optional(wholeNumber) },
  'a call as {address: …, text: …}',
);
/** Weekdays as box.md names them, Monday first (ISO 8601). */
export const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const callKind = v.picklist(CALL_KINDS, 'join, waitList or spare');
/** The fields of box.md. */
export const boxSchema = v.strictObject({
  name: described(text, 'The box’s name'),
  url: described(address, 'Address of the published site'),
  lang: described(is(isLanguage, 'a language tag, as en-GB'), 'Language of the articles, BCP 47'),
  timeZone: described(
    is(isTimeZone, 'an IANA time zone, as Europe/London'),
    'Where reveals are timed, IANA name',
  ),
  currency: described(currency, 'ISO 4217'),
  description: described(atMost(160), 'What the box is, in a sentence or two, at most 160 characters'),
  author: described(text, 'Who signs the articles'),
  email: v.optional(
    described(
      is((value) => /^[^\s@]+@[^\s@]+$/.test(value), 'an e-mail address'),
      'Where readers write to',
    ),
  ),
  postalAddress: v.optional(
    described(
      v.strictObject(
        {
          streetAddress: v.optional(text),
          addressLocality: v.optional(text),
          addressRegion: v.optional(text),
          postalCode: v.optional(text),
          addressCountry: v.optional(is(isCountry, 'an ISO 3166-1 country code, as GB')),
        },
        'an address as {streetAddress: …, addressLocality: …, addressCountry: …}',
      ),
      'schema.org PostalAddress: streetAddress, addressLocality, addressRegion, postalCode, addressCountry',
    ),
  ),
  every: v.optional(
    described(
      is((value) => /^P([1-9]|1[0-2])M$/.test(value), 'months as an ISO 8601 duration, as P1M'),
      'From one cycle to the next, ISO 8601 duration: P1M, P2M, P3M',
    ),
  ),
  palette: v.optional(described(colours, 'The box’s own colours, one to five')),
  logo: v.optional(described(wholePicture, 'Its logo in content/photos/, best a PNG of 512 pixels')),
  subscription: v.optional(
    described(
      v.strictObject(
        {
          name: text,
          price,
          description: v.optional(text),
          image: v.optional(v.union([text, picture], 'the name of a file, or {file: …, alt: …}')),
        },
        'a subscription as {name: …, price: …}',
      ),
      'What a subscriber pays for: name, price, description, image {file, alt} from content/photos/',
    ),
  ),
  calls: v.optional(
    described(
      v.strictObject(
        { join: v.optional(call), waitList: v.optional(call), spare: v.optional(call) },
        'calls as {join: {address: …, text: …}}',
      ),
      'The ways to act: join, waitList, spare; each with its address and text, join also with places left',
    ),
  ),
  call: v.optional(described(callKind, 'Which call holds now: join, waitList or spare')),
  reveal: v.optional(
    described(
      v.strictObject(
        {
          share: v.optional(
            v.pipe(
              v.number('a share between 0 and 1, as 0.9'),
              v.gtValue(0, 'a share between 0 and 1, as 0.9'),
              v.ltValue(1, 'a share between 0 and 1, as 0.9'),
            ),
          ),
          weekdays: v.optional(
            list(is((value) => WEEKDAYS.includes(value.toLowerCase()), `a weekday: ${WEEKDAYS.join(', ')}`)),
          ),
          time: v.optional(
            is((value) => /^(?:[01]\d|2[0-3]):[0-5]\d$/.test(value), 'a time of day, as 19:00'),
          ),
        },
        'a habit as {share: …, weekdays: …, time: …}',
      ),
      'The habit of revealing: share of parcels arrived, weekdays, time',
    ),
  ),
  searches: v.optional(
    described(
      v.strictObject(
        { phrase: v.optional(text), count: v.optional(text) },
        'columns as {phrase: …, count: …}',
      ),
      'Columns of content/searches.csv where they are not named phrase and count: phrase, count',
    ),
  ),
  parcels: v.optional(
    described(
      v.strictObject(
        {
          shipped: v.optional(text),
          delivered: v.optional(text),
          status: v.optional(text),
          carrier: v.optional(text),
          region: v.optional(text),
          parcel: v.optional(text),
          dates: v.optional(is(isDatePattern, 'a form of dates, as DD/MM/YYYY')),
          lost: v.optional(list(text)),
          returned: v.optional(list(text)),
          travelling: v.optional(list(text)),
        },
        'columns as {shipped: …, delivered: …, dates: DD/MM/YYYY}',
      ),
      'Columns of a cycle’s parcels.csv where they are not named so: shipped, delivered, status, carrier, region, parcel (its number); dates: their form, as DD/MM/YYYY, where they are not ISO 8601; lost, returned, travelling: what the status says then',
    ),
  ),
  unsubscribe: v.optional(
    described(
      is(
        (value) => /^[^<>"\n]{1,300}$/.test(value),
        'an https address, or your sending service’s placeholder, without < > or double quotes',
      ),
      'Where a letter’s reader stops them: an https address, or the placeholder that your sending service fills',
    ),
  ),
  pieces: v.optional(
    described(
      list(piece),
      `Which pieces this box makes, of ${PIECES.join(', ')}; the article alone without it`,
    ),
  ),
  pace: v.optional(
    described(
      v.pipe(
        v.number('words a minute, as 150'),
        v.minValue(60, 'words a minute from 60 to 300'),
        v.maxValue(300, 'words a minute from 60 to 300'),
      ),
      'Words a minute at which you speak; 150 without it',
    ),
  ),
  clip: v.optional(described(clipLength, 'Seconds the short video should last: 15, 30 or 60; 30 without it')),
  formerly: v.optional(
    described(
      formerPages,
      'Pages that are gone for good, each with the address that it sends on to: {kinds/hand-tool.html: kinds/garden-tool.html}; where a cycle or an item has only another address now, its own record says so',
    ),
  ),
  profiles: v.optional(described(list(address), 'Addresses of the box elsewhere, schema.org sameAs')),
});

/** What `reveal` says where the parcels decide. */
export const WHEN_DELIVERED = 'when-delivered';

/** The fields of a cycle.md. */
export const cycleSchema = v.strictObject({
  theme: described(text, 'The cycle’s theme'),
  title: v.optional(described(text, 'The article’s title; made from the items’ names without it')),
  summary: described(text, 'Names the things; 70 to 160 characters'),
  address: v.optional(
    described(addressPart, 'Last part of the page’s address; made from month and theme without it'),
  ),
  formerly: v.optional(
    described(
      list(addressPart),
      'Last parts of the page’s earlier addresses, as [2026-03-first-sowings]: at each a page is left that sends on to this one',
    ),
  ),
  shipped: described(date, 'Date the parcels left'),
  reveal: described(
    v.union(
      [
        is(
          (value) => value === WHEN_DELIVERED || isDateTime(value),
          `a date and time that exist, as 2026-03-19T19:00, or ${WHEN_DELIVERED}`,
        ),
        v.strictObject({
          when: v.literal('delivered', 'delivered'),
          notBefore: is(isDateTime, 'a date and time that exist, as 2026-03-19T19:00'),
        }),
      ],
      `a date and time, as 2026-03-19T19:00, or ${WHEN_DELIVERED}, or {when: delivered, notBefore: 2026-03-19T19:00}`,
    ),
    `Moment from which it may be shown, local in the box’s zone or with an offset; or ${WHEN_DELIVERED}: the first evening of the box’s habit after the wanted share of its parcels has arrived by its parcels.csv; or {when: delivered, notBefore: …}: that, and not before a moment`,
  ),
  moved: v.optional(
    described(
      list(is(isDateTime, 'a date and time that exist, as 2026-03-19T19:00')),
      'Earlier moments of the reveal, oldest first: when you move it, the old one is added here, so that people’s calendars take the new one',
    ),
  ),
  updated: v.optional(described(date, 'Date of the last real change')),
  author: v.optional(described(text, 'Who signs this article')),
  palette: v.optional(described(colours, 'One to five colours taken from the things')),
  photo: v.optional(described(picture, 'The whole box: file, alt, caption, focus')),
  hero: v.optional(described(picture, 'Head of the article; the lead item’s first picture without it')),
  replay: v.optional(
    described(
      v.strictObject(
        {
          address,
          recorded: v.optional(date),
          minutes: v.optional(wholeNumber),
          beats: v.optional(v.record(v.string(), clockTime, 'times as {hook: "0:00", plant-mister: "4:10"}')),
        },
        'a replay as {address: …, recorded: …, minutes: …}',
      ),
      'The live opening, recorded: address, recorded, minutes, beats (when each began, by its name on the run sheet: {hook: "0:00", plant-mister: "4:10"})',
    ),
  ),
  live: v.optional(
    described(
      v.strictObject(
        {
          address: v.optional(address),
          minutes: v.optional(v.pipe(wholeNumber, v.minValue(1, 'a whole number from 1'))),
          layOut: v.optional(list(text)),
          wear: v.optional(text),
          hook: v.optional(text),
          greet: v.optional(list(text)),
          about: v.optional(text),
          chosen: v.optional(text),
          mishap: v.optional(text),
          items: v.optional(v.record(v.string(), text, 'words by item, as {plant-mister: …}')),
          questions: v.optional(list(text)),
          whole: v.optional(text),
          peek: v.optional(text),
          call: v.optional(text),
          goodbye: v.optional(text),
        },
        'words for the live as {minutes: …, hook: …, questions: […]}',
      ),
      'The live, where the stories’ own words are not the ones to say: address (where it is seen), minutes (how long it should last), layOut, wear, hook, greet (early questions), about, chosen, mishap, items {slug: words}, questions, whole, peek, call, goodbye',
    ),
  ),
  clip: v.optional(
    described(clipLength, 'Seconds this cycle’s short video should last; the box’s without it'),
  ),
  invitation: v.optional(
    described(
      v.strictObject({ hook: v.optional(text) }, 'words as {hook: …}'),
      'The invitation’s own words: hook (why to come, without naming what is in the box); the peek of the cycle before without it',
    ),
  ),
  made: v.optional(
    described(madeDates, `When each piece was made or went out: {live: 2026-03-19, letter: 2026-03-20}`),
  ),
  peek: v.optional(
    described(
      v.strictObject(
        { text, picture: v.optional(picture) },
        'a peek as {text: …, picture: {file: …, alt: …}}',
      ),
      'The look at the next box: text, picture',
    ),
  ),
  voices: v.optional(
    described(
      list(
        v.strictObject(
          { text, name: text, consent: date, given: v.optional(v.boolean('true or false')) },
          'a voice as {text: …, name: …, consent: …}',
        ),
      ),
      'Subscribers’ words: text, name, consent (the date they agreed), given: true when the box was free or cheaper',
    ),
  ),
  call: v.optional(described(callKind, 'The call on this cycle’s own page')),
  value: v.optional(
    described(
      v.strictObject(
        { amount: price, currency: v.optional(currency), on: date },
        'a value as {amount: 74.60, on: 2026-03-03}',
      ),
      'What the items come to when each is bought by itself, the sum of their prices: amount, currency (the box’s without it), on (the day of those prices)',
    ),
  ),
  letter: v.optional(
    described(
      v.strictObject({ subject: v.optional(text), preheader: v.optional(text) }, 'words as {subject: …}'),
      'The letter’s own subject, and preheader (what lists of mail show after it)',
    ),
  ),
});

const category = v.pipe(list(v.picklist([...CATEGORIES, 'none'], `${CATEGORIES.join(', ')} or none`)));
const allergens = v.union(
  [none, list(is((value) => ALLERGENS.includes(value.toLowerCase()), `one of ${ALLERGENS.join(', ')}`))],
  `a list of ${ALLERGENS.join(', ')}, or none`,
);

/** The fields of an item’s file. */
export const itemSchema = v.strictObject({
  name: described(text, 'As printed on the card'),
  slug: v.optional(described(addressPart, 'Its anchor in the article; the file’s name without it')),
  formerly: v.optional(
    described(list(addressPart), 'Its earlier anchors, as [hand-rake]: links to them lead to it still'),
  ),
  kind: described(text, 'The common noun people say, singular: plant mister'),
  also: v.optional(described(list(text), 'Other names people use')),
  lead: v.optional(described(v.boolean('true or false'), 'true on the one item the box was built around')),
  brand: described(text, 'The maker'),
  description: described(atMost(200), 'One sentence, at most 200 characters'),
  material: v.optional(described(list(text), 'What it is made of')),
  color: v.optional(described(text, 'Its colour')),
  size: v.optional(described(text, 'Its size')),
  weight: v.optional(described(text, 'Its weight')),
  care: v.optional(described(text, 'How to keep it')),
  countryOfOrigin: v.optional(
    described(is(isCountry, 'an ISO 3166-1 country code, as GB'), 'ISO 3166-1 alpha-2'),
  ),
  price: v.optional(described(price, 'Its own price')),
  priceCurrency: v.optional(described(currency, 'ISO 4217; the box’s without it')),
  sku: v.optional(described(text, 'Your own number for it')),
  gtin: v.optional(
    described(
      is(isGtin, 'a GTIN of 8, 12, 13 or 14 digits that ends in its check digit'),
      'The number under its bar code, between quotes',
    ),
  ),
  image: v.optional(described(list(picture), 'Pictures from photos/: file, alt, caption, focus')),
  goesWith: v.optional(described(text, 'How it goes with the lead item; on every other item')),
  spare: v.optional(
    described(
      v.strictObject(
        { count: wholeNumber, price, address, until: v.optional(date) },
        'spare pieces as {count: …, price: …, address: …}',
      ),
      'Spare pieces for sale: count (0 is sold out), price, address, until',
    ),
  ),
  category: v.optional(described(category, `Where it can hurt: ${CATEGORIES.join(', ')}; or none`)),
  allergens: v.optional(described(allergens, 'Food and drink: the major allergens in it; [] says none')),
  mayContain: v.optional(described(listOrNone, 'Traces')),
  ingredients: v.optional(described(text, 'Food, drink, cosmetic')),
  toxicTo: v.optional(described(listOrNone, 'Plants: cats, dogs; [] says none known')),
  minAge: v.optional(described(v.pipe(v.number('years'), v.minValue(0, 'years')), 'For children: years')),
  hazards: v.optional(described(listOrNone, 'For children: small parts, cords; [] says none')),
  cautions: v.optional(described(list(text), 'More lines of your own')),
});

/** What box.md holds when it is sound. */
export type BoxRecord = v.InferOutput<typeof boxSchema>;
/** What a cycle.md holds when it is sound. */
export type CycleRecord = v.InferOutput<typeof cycleSchema>;
/** What an item’s file holds when it is sound. */
export type ItemRecord = v.InferOutput<typeof itemSchema>;
/** A picture as a record names it. */
export type PictureRecord = v.InferOutput<typeof picture>;
