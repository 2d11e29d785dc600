import { expect, test } from 'vitest';
import { storyOfParts, storyParts } from '../../src/content/story-asides.ts';

const NOTE = '<!-- Write here. -->';

test.each([
  ['nothing for the owner', 'It lifts a loaf.\n', 'It lifts a loaf.\n', []],
  ['a comment alone', `${NOTE}\n`, '', ['Write here.']],
  ['one before the text', `${NOTE}\n\nIt lifts.\n`, 'It lifts.\n', ['Write here.']],
  ['with no blank line between', `${NOTE}\nIt lifts.\n`, 'It lifts.\n', ['Write here.']],
  [
    'one after the text',
    `It lifts.\n\n<!-- Cost: 4.20\nFrom: Ada -->\n`,
    'It lifts.',
    ['Cost: 4.20\nFrom: Ada'],
  ],
  [
    'both',
    `${NOTE}\n\n<!-- b -->\n\nIt.\n\nLifts.\n\n<!-- c -->`,
    'It.\n\nLifts.',
    ['Write here.', 'b', 'c'],
  ],
  ['two without a text', `${NOTE}\n\n<!-- b -->\n`, '', ['Write here.', 'b']],
  ['one between paragraphs stays', `It.\n\n${NOTE}\n\nLifts.\n`, `It.\n\n${NOTE}\n\nLifts.\n`, []],
  ['one in code is shown to readers', `It.\n\n~~~\n\n${NOTE}\n`, `It.\n\n~~~\n\n${NOTE}\n`, []],
  ['one in a line of text', `${NOTE} It lifts.\n`, `${NOTE} It lifts.\n`, []],
  ['one that never ends', 'It.\n\n<!-- Write\n', 'It.\n\n<!-- Write\n', []],
])('%s', (_, story, text, asides) => {
  const parts = storyParts(story);
  expect([parts.text, parts.asides]).toEqual([text, asides]);
  expect(parts.before + parts.text + parts.after).toBe(story);
});

test('a text that comes to a comment is parted from it, and takes no more room with each save', () => {
  const { before, after } = storyParts(`${NOTE}`);
  const first = storyOfParts({ before, text: 'It lifts.\n', after });
  expect(first).toBe(`${NOTE}\n\nIt lifts.\n`);
  const ends = storyParts(`It.\n\n${NOTE}\n`);
  let story = '';
  for (const text of ['It lifts.\n', 'It lifts.\n\n', 'It lifts.'])
    story = storyOfParts({ before: '', text, after: storyParts(story || `It.\n\n${NOTE}\n`).after });
  expect([story, ends.text]).toEqual([`It lifts.\n\n${NOTE}\n`, 'It.']);
  expect(storyOfParts({ before: '', text: '', after: ends.after })).toBe(`${NOTE}\n`);
});
