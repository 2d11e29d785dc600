/**
 * Files that hold more than one record, as people paste them together, and texts that only look so. Written before the
 * rules; only every other one was looked at while they were written.
 */

/** What stands below the fields of a first record. */
export interface SecondRecord {
  readonly slip: string;
  readonly below: readonly string[];
  /** The lines that findings name, from 1 with the line below the fields; none where the text is a story. */
  readonly at: readonly number[];
}

const CUP = ['name: Cup', 'kind: cup', 'description: A cup.', 'brand: A Potter'];
const JUG = ['name: Jug', 'kind: jug', 'description: A jug.'];
const CYCLE = [
  'theme: First',
  'summary: A pot and a cup.',
  'shipped: 2026-01-06',
  'reveal: 2026-01-20T19:00',
];

export const SECOND_RECORDS: readonly SecondRecord[] = [
  {
    slip: 'a second record after the story',
    below: ['Its story.', '', '---', ...CUP, '---', 'Of the cup.'],
    at: [3],
  },
  { slip: 'a second record after no story', below: ['', '---', ...CUP, '---', 'Of the cup.'], at: [2] },
  {
    slip: 'a third record',
    below: ['Its story.', '', '---', ...CUP, '---', 'Of the cup.', '', '---', ...JUG, '---', ''],
    at: [3, 11],
  },
  {
    slip: 'a second record with longer dashes',
    below: ['Its story.', '', '-----', ...CUP, '-----', 'Of the cup.'],
    at: [3],
  },
  {
    slip: 'a second record without the dashes before it',
    below: ['Its story.', '', ...CUP, '---', 'Of the cup.'],
    at: [3],
  },
  {
    slip: 'a second record without the dashes after it',
    below: ['Its story.', '', '---', ...CUP, '', 'Of the cup.'],
    at: [3],
  },
  {
    slip: 'a second record right below a line of text',
    below: ['Its story.', '---', ...CUP, '---', 'Of the cup.'],
    at: [2],
  },
  { slip: 'a record of a cycle', below: ['Its story.', '', '---', ...CYCLE, '---', 'Of the box.'], at: [3] },
  {
    slip: 'a second record with a list',
    below: ['Its story.', '', '---', ...CUP, 'also:', '  - mug', '  - beaker', '---', ''],
    at: [3],
  },
  {
    slip: 'a second record with capital names',
    below: ['Its story.', '', '---', 'Name: Cup', 'Kind: cup', 'Description: A cup.', '---', ''],
    at: [3],
  },
  {
    slip: 'a second record with a picture in braces and empty lines',
    below: [
      'Its story.',
      '',
      '---',
      '',
      ...CUP,
      '',
      'image: {file: cup.jpg, alt: A cup}',
      '',
      '---',
      'Of the cup.',
    ],
    at: [3],
  },
  {
    slip: 'a second record of only a name and a kind',
    below: ['Its story.', '', '---', 'name: Cup', 'kind: cup', '---', 'Of the cup.'],
    at: [3],
  },
  {
    slip: 'a rule between two paragraphs',
    below: ['Its story.', '', '---', '', 'More.', '', '---', '', 'And more.'],
    at: [],
  },
  {
    slip: 'a code block that shows a record',
    below: ['Write:', '', '```', '---', ...CUP, '---', '```', '', 'So.'],
    at: [],
  },
  {
    slip: 'sizes between two rules',
    below: ['Its story.', '', '---', 'Weight: 400 g', 'Size: 10 cm', '---', '', 'More.'],
    at: [],
  },
  {
    slip: 'a line with a colon between two rules',
    below: ['Its story.', '', '---', '', 'Name: it has none.', '', '---', '', 'More.'],
    at: [],
  },
  {
    slip: 'an indented record',
    below: ['Write:', '', '    ---', ...CUP.map((line) => `    ${line}`), '    ---', '', 'So.'],
    at: [],
  },
  {
    slip: 'a letter with its head',
    below: ['She wrote:', '', '---', '', 'Subject: the pot', 'Date: today', '', '---', '', 'Yes.'],
    at: [],
  },
  {
    slip: 'a code block of tildes that shows a record',
    below: ['Write:', '', '~~~md', '---', ...JUG, '---', '~~~', ''],
    at: [],
  },
  {
    slip: 'a recipe as a list',
    below: ['Its story.', '', '---', '', '- name: tea', '- kind: black', '', '---', ''],
    at: [],
  },
];
