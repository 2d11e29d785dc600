/**
 * The fields of box.md: what each is, what it may hold, what was expected instead, and one as it is written. The
 * reference table and the findings are both made from these.
 */
import * as v from 'valibot';
import { isCountry, isLanguage, isTimeZone } from './codes.ts';
import {
  address,
  addressOrGap,
  atMost,
  colours,
  currency,
  described,
  formerPages,
  group,
  heading,
  is,
  list,
  picture,
  price,
  siteAddress,
  text,
  wholeNumber,
  wholePicture,
} from './fields.ts';
import { isDatePattern } from './parcel-dates.ts';
import { callKind, callMarks, cardLook, clipLength, piece } from './piece-fields.ts';

const call = (where: string, words: string) => ({
  address: described(address, 'Where it leads', `https://tinandtansy.example/${where}`),
  text: described(heading, 'What the link says', words),
  from: v.optional(
    described(
      callMarks,
      'What each piece adds to the address, so that your shop can tell which of them brought people; it says which piece, never who. The live’s is read out and typed by hand: keep it short, or leave it out',
      { letter: '?via=letter' },
    ),
  ),
});
/** Weekdays as box.md names them, Monday first (ISO 8601). */
export const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const SHARE = 'a share between 0 and 1, as 0.9';
const PACE = 'words a minute from 60 to 300, as 150';

export const boxSchema = v.strictObject({
  name: described(heading, 'The box’s name', 'Tin & Tansy'),
  url: described(siteAddress, 'Address of the published site', 'https://tinandtansy.example/'),
  lang: described(is(isLanguage, 'a language, as en-GB or fr'), 'Language of the articles', 'en-GB'),
  timeZone: described(
    is(isTimeZone, 'a time zone by its continent and city, as Europe/London'),
    'Where reveals are timed',
    'Europe/London',
  ),
  currency: described(currency, 'What prices are in', 'GBP'),
  description: described(
    atMost(160),
    'What the box is, in a sentence or two',
    'A box every month for people who dry, steep and store what they grow.',
  ),
  author: described(heading, 'Who signs the articles', 'Nell Orchard'),
  email: v.optional(
    described(
      is((value) => /^[^\s@]+@[^\s@]+$/.test(value), 'an e-mail address, as hello@tinandtansy.example'),
      'Where readers write to',
      'hello@tinandtansy.example',
    ),
  ),
  postalAddress: v.optional(
    described(
      group(
        {
          streetAddress: v.optional(described(text, 'House and street', '4 Cable Steps')),
          addressLocality: v.optional(described(text, 'Town', 'Aldermouth')),
          addressRegion: v.optional(described(text, 'County or state', 'Kent')),
          postalCode: v.optional(described(text, 'Postal code', 'AM9 4ZZ')),
          addressCountry: v.optional(
            described(is(isCountry, 'a country in two capital letters, as GB'), 'Country', 'GB'),
          ),
        },
        'an address',
      ),
      'Where the box has its post; letters that sell must carry it',
    ),
  ),
  every: v.optional(
    described(
      is(
        (value) => /^P([1-9]|1[0-2])M$/.test(value),
        'P1M for every month, P2M for every second one, and so on to P12M',
      ),
      'From one cycle to the next',
      'P1M',
    ),
  ),
  palette: v.optional(described(colours, 'The box’s own colours, one to five', ['#5f7358', '#b5714a'])),
  logo: v.optional(
    described(wholePicture, 'Its logo in content/photos/, best a PNG of 512 pixels', 'logo.png'),
  ),
  subscription: v.optional(
    described(
      group(
        {
          name: described(heading, 'What it is called', 'The monthly box'),
          price: described(price, 'What one box costs', '29.00'),
          description: v.optional(
            described(
              text,
              'What is sent, in a sentence or two',
              'Five things a month for the shelf by the kettle.',
            ),
          ),
          image: v.optional(
            described(
              v.union(
                [text, picture],
                'the name of a file, or a picture: the lines `file` and `alt` below it',
              ),
              'A picture of it in content/photos/',
              'box.jpg',
            ),
          ),
        },
        'a subscription',
      ),
      'What a subscriber pays for',
    ),
  ),
  calls: v.optional(
    described(
      group(
        {
          join: v.optional(
            described(
              group(
                {
                  ...call('join', 'Join for the next box'),
                  places: v.optional(described(wholeNumber, 'How many places are left', 40)),
                },
                'a call',
              ),
              'Subscribe',
            ),
          ),
          waitList: v.optional(
            described(group(call('wait', 'Put me on the list'), 'a call'), 'Wait for a place'),
          ),
          spare: v.optional(
            described(group(call('spare', 'See what is left over'), 'a call'), 'Buy what was left over'),
          ),
        },
        'calls',
      ),
      'The ways to act',
    ),
  ),
  call: v.optional(described(callKind, 'Which call holds now', 'join')),
  reveal: v.optional(
    described(
      group(
        {
          share: v.optional(
            described(
              v.pipe(v.number(SHARE), v.gtValue(0, SHARE), v.ltValue(1, SHARE)),
              'The share of parcels that must have arrived',
              0.9,
            ),
          ),
          weekdays: v.optional(
            described(
              list(
                is((value) => WEEKDAYS.includes(value.toLowerCase()), `a weekday: ${WEEKDAYS.join(', ')}`),
              ),
              'Your evenings',
              ['thursday'],
            ),
          ),
          time: v.optional(
            described(
              is((value) => /^(?:[01]\d|2[0-3]):[0-5]\d$/.test(value), 'a time of day, as 19:00'),
              'When you begin',
              '19:00',
            ),
          ),
        },
        'a habit',
      ),
      'The habit of revealing',
    ),
  ),
  searches: v.optional(
    described(
      group(
        {
          phrase: v.optional(described(text, 'The column of what was typed', 'Search term')),
          count: v.optional(described(text, 'The column of how often', 'Impressions')),
        },
        'names of columns',
      ),
      'Columns of content/searches.csv where they are not named phrase and count',
    ),
  ),
  parcels: v.optional(
    described(
      group(
        {
          shipped: v.optional(described(text, 'The column of the day it left', 'Ship date')),
          delivered: v.optional(described(text, 'The column of the day it arrived', 'Delivered on')),
          status: v.optional(described(text, 'The column of what became of it', 'State')),
          carrier: v.optional(described(text, 'The column of who carries it', 'Courier')),
          region: v.optional(described(text, 'The column of where it goes', 'County')),
          parcel: v.optional(described(text, 'The column of its number', 'Tracking no.')),
          dates: v.optional(
            described(
              is(isDatePattern, 'a form of dates, as DD/MM/YYYY'),
              'How its dates are written, where they are not as 2026-03-19',
              'DD/MM/YYYY',
            ),
          ),
          lost: v.optional(described(list(text), 'What the status says of one that was lost', ['missing'])),
          returned: v.optional(
            described(list(text), 'What it says of one that came back', ['sent back', 'refused']),
          ),
          travelling: v.optional(
            described(list(text), 'What it says of one on its way', ['at the depot', 'out with driver']),
          ),
        },
        'names of columns',
      ),
      'Columns of a cycle’s parcels.csv where they have other names',
    ),
  ),
  unsubscribe: v.optional(
    described(
      addressOrGap,
      'Where a letter’s reader stops them: an https address, or the placeholder that your sending service fills',
      'https://tinandtansy.example/letters/stop',
    ),
  ),
  pieces: v.optional(
    described(list(piece), 'Which pieces this box makes; the article alone without it', ['live', 'article']),
  ),
  pace: v.optional(
    described(
      v.pipe(v.number(PACE), v.minValue(60, PACE), v.maxValue(300, PACE)),
      'How fast you speak; 150 without it',
      150,
    ),
  ),
  clip: v.optional(described(clipLength, 'How long the short video should last; 30 without it', 30)),
  cards: v.optional(described(cardLook, 'The picture cards; `plate` without it')),
  formerly: v.optional(
    described(
      formerPages,
      'Pages that are gone for good, each with the address that it sends on to; where a cycle or an item has only another address now, its own record says so',
      { 'kinds/hand-tool.html': 'kinds/garden-tool.html' },
    ),
  ),
  profiles: v.optional(
    described(list(address), 'Addresses of the box elsewhere', ['https://video.example/tinandtansy']),
  ),
});
