/** The fields of a cycle.md, as `box-schema.ts` has those of box.md. */
import * as v from 'valibot';
import { isDateTime } from './codes.ts';
import {
  address,
  addressPart,
  colours,
  currency,
  date,
  described,
  group,
  heading,
  is,
  list,
  namingText,
  picture,
  price,
  text,
  wholeNumber,
} from './fields.ts';
import { callKind, cardLook, clipLength, clockTime, filmedPiece, madeDates } from './piece-fields.ts';

/** What `reveal` says where the parcels decide. */
export const WHEN_DELIVERED = 'when-delivered';

const MOMENT = 'a date and time that exist, as 2026-03-19T19:00';

export const cycleSchema = v.strictObject({
  theme: described(namingText, 'The cycle’s theme', 'First Sowings'),
  title: v.optional(
    described(
      heading,
      'The article’s title; made from the items’ names without it',
      'A wooden seed tray and a brass plant mister',
    ),
  ),
  summary: described(
    text,
    'Names the things; 70 to 160 characters',
    'A wooden seed tray and a brass plant mister, and how to sow a whole windowsill with the two of them.',
  ),
  address: v.optional(
    described(
      addressPart,
      'Last part of the page’s address; made from month and theme without it',
      '2026-03-first-sowings',
    ),
  ),
  formerly: v.optional(
    described(
      list(addressPart),
      'Last parts of the page’s earlier addresses: at each a page is left that sends on to this one',
      ['2026-03-sowings'],
    ),
  ),
  shipped: described(date, 'Date the parcels left', '2026-03-03'),
  reveal: described(
    v.union(
      [
        is((value) => value === WHEN_DELIVERED || isDateTime(value), `${MOMENT}, or ${WHEN_DELIVERED}`),
        group(
          {
            when: described(v.literal('delivered', 'delivered'), 'That the parcels decide', 'delivered'),
            notBefore: described(is(isDateTime, MOMENT), 'The earliest moment', '2026-03-19T19:00'),
          },
          'a reveal',
        ),
      ],
      `${MOMENT}, or ${WHEN_DELIVERED}, or the lines \`when\` and \`notBefore\` below it`,
    ),
    `Moment from which it may be shown, where the box is or with an offset, as 2026-03-19T19:00+01:00. With ${WHEN_DELIVERED} it is the first evening of the box’s habit after the wanted share of its parcels has arrived by its parcels.csv; with \`when\` and \`notBefore\` it is that, and not before a moment`,
    '2026-03-19T19:00',
    WHEN_DELIVERED,
    { when: 'delivered', notBefore: '2026-03-19T19:00' },
  ),
  moved: v.optional(
    described(
      list(is(isDateTime, MOMENT)),
      'Earlier moments of the reveal, oldest first: when you move it, the old one is added here, so that people’s calendars take the new one',
      ['2026-03-12T19:00'],
    ),
  ),
  updated: v.optional(described(date, 'Date of the last real change', '2026-04-02')),
  author: v.optional(
    described(heading, 'Who signs this article; the box’s author without it', 'Nell Orchard'),
  ),
  palette: v.optional(
    described(colours, 'One to five colours taken from the things', ['#8a9a7b', '#b87333']),
  ),
  photo: v.optional(described(picture, 'The whole box')),
  hero: v.optional(described(picture, 'Head of the article; the lead item’s first picture without it')),
  replay: v.optional(
    described(
      group(
        {
          address: described(address, 'Where it is seen', 'https://video.example/first-sowings'),
          recorded: v.optional(described(date, 'The day', '2026-03-19')),
          minutes: v.optional(described(wholeNumber, 'How long it is', 24)),
          beats: v.optional(
            described(
              v.record(
                v.string(),
                clockTime,
                'a line each: the beat’s name, a colon, and its time, as "4:10"',
              ),
              'When each beat began, by its name on the run sheet',
              { hook: '0:00', 'seed-tray': '2:22', peek: '22:49' },
            ),
          ),
        },
        'a recording',
      ),
      'The live opening, recorded',
    ),
  ),
  live: v.optional(
    described(
      group(
        {
          address: v.optional(described(address, 'Where it is seen', 'https://video.example/live')),
          minutes: v.optional(
            described(
              v.pipe(wholeNumber, v.minValue(1, 'a whole number from 1')),
              'How long it should last',
              22,
            ),
          ),
          layOut: v.optional(
            described(list(text), 'What to have at hand', ['ballpoint pen', 'tape measure']),
          ),
          wear: v.optional(described(text, 'What to wear', 'The grey apron.')),
          hook: v.optional(
            described(text, 'The first words', 'There are four labels in this box, and three are wrong.'),
          ),
          greet: v.optional(
            described(list(text), 'Early questions, while people arrive', ['Where are you watching from?']),
          ),
          about: v.optional(described(text, 'What the box is', 'Five things a month for one windowsill.')),
          chosen: v.optional(described(text, 'How it was chosen', 'We began with a tape measure.')),
          mishap: v.optional(described(text, 'What went wrong', 'The labels came in November.')),
          items: v.optional(
            described(
              v.record(v.string(), text, 'a line each: the item’s name in addresses, a colon, and the words'),
              'What to say of an item, by its name in addresses',
              { 'seed-tray': 'A pine tray with an education.' },
            ),
          ),
          questions: v.optional(
            described(list(text), 'Questions to ask in between', ['How deep is your windowsill?']),
          ),
          whole: v.optional(described(text, 'Of all things together', 'This is the whole box.')),
          peek: v.optional(described(text, 'Of the next box', 'In April we look for a wall in the sun.')),
          call: v.optional(described(text, 'What to do now', 'There are forty places for April.')),
          goodbye: v.optional(described(text, 'The last words', 'Sow something tonight.')),
        },
        'words for the live',
      ),
      'The live, where the stories’ own words are not the ones to say',
    ),
  ),
  clip: v.optional(
    described(clipLength, 'How long this cycle’s short video should last; the box’s without it', 15),
  ),
  takes: v.optional(
    described(
      group(
        {
          hook: v.optional(described(filmedPiece, 'For the first words', 'hands.mov')),
          whole: v.optional(described(filmedPiece, 'For the whole box', 'box-open.mov 0:02')),
        },
        'filmed pieces',
      ),
      'Your own filmed pieces for the film’s other shots, from takes/',
    ),
  ),
  cards: v.optional(
    described(
      cardLook,
      'This cycle’s picture cards, where they differ from the box’s; a past cycle with it keeps its cards',
    ),
  ),
  invitation: v.optional(
    described(
      group(
        {
          hook: v.optional(
            described(
              text,
              'Why to come, without naming what is in the box',
              'Our east window has thirty-eight tenants.',
            ),
          ),
        },
        'words for the invitation',
      ),
      'The invitation’s own words; the peek of the cycle before without it',
    ),
  ),
  made: v.optional(described(madeDates, 'When each piece was made or went out')),
  peek: v.optional(
    described(
      group(
        {
          text: described(text, 'What is said of it', 'In April we look for a wall in the sun.'),
          picture: v.optional(described(picture, 'A look at it')),
        },
        'a peek',
      ),
      'The look at the next box',
    ),
  ),
  voices: v.optional(
    described(
      list(
        group(
          {
            text: described(text, 'Their words', 'First radish up on the fifth day.'),
            name: described(heading, 'Who says it', 'Salome, second floor'),
            consent: described(date, 'The date they agreed', '2026-03-25'),
            given: v.optional(
              described(v.boolean('true or false'), 'true when the box was free or cheaper', false),
            ),
          },
          'a voice',
        ),
      ),
      'Subscribers’ words',
    ),
  ),
  call: v.optional(described(callKind, 'The call on this cycle’s own page', 'spare')),
  value: v.optional(
    described(
      group(
        {
          amount: described(price, 'The sum', '68.10'),
          currency: v.optional(described(currency, 'What it is in; the box’s without it', 'GBP')),
          on: described(date, 'The day of those prices', '2026-03-03'),
        },
        'a sum',
      ),
      'What the items come to when each is bought by itself, the sum of their prices',
    ),
  ),
  letter: v.optional(
    described(
      group(
        {
          subject: v.optional(described(heading, 'Its subject', 'Three of the four labels are wrong')),
          preheader: v.optional(
            described(text, 'What lists of mail show after it', 'And the fourth is basil.'),
          ),
        },
        'words for the letter',
      ),
      'The letter’s own words',
    ),
  ),
});
