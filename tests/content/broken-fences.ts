/**
 * Records whose lines of dashes are not as they should be, as people type them. Both lists were written before the
 * rules that explain them; only the first was looked at while they were written.
 */

/** A record whose fields do not begin or end as they should. */
export interface BrokenFence {
  readonly slip: string;
  readonly text: string;
  /** The line of the finding. */
  readonly line: number;
  /** First words of the text below the fields as it was meant; none where only the owner can say where it begins. */
  readonly body?: string;
}

const FIELDS = ['name: Teapot', 'kind: teapot', 'description: A pot.', 'brand: A Potter'];
const STORY = ['', 'Its story.', '', 'And more of it.', ''];

const fence = (slip: string, lines: readonly string[], line: number, body?: string): BrokenFence => ({
  slip,
  text: lines.join('\n'),
  line,
  ...(body !== undefined && { body }),
});
/** Another line where the fields end. */
const closed = (slip: string, closing: string, body = 'Its story.'): BrokenFence =>
  fence(slip, ['---', ...FIELDS, closing, ...STORY], 6, body);
/** Another line where they begin. */
const opened = (slip: string, opening: string): BrokenFence =>
  fence(slip, [opening, ...FIELDS, '---', ...STORY], 1, 'Its story.');

export const BROKEN_FENCES: readonly BrokenFence[] = [
  closed('four dashes at the end', '----'),
  closed('two dashes at the end', '--'),
  closed('a long dash and a short one at the end', '—-'),
  closed('three middle dashes at the end', '–––'),
  closed('a gap between the dashes at the end', '-- -'),
  closed('a space before the dashes at the end', ' ---'),
  closed('a hard space after the dashes at the end', '\u00a0---\u00a0'),
  closed('stars at the end', '***'),
  closed('the first words of the story behind the dashes', '--- Its story begins here.', 'Its story begins'),
  opened('five dashes at the beginning', '-----'),
  opened('a long dash and a short one at the beginning', '—-'),
  opened('a space before the dashes at the beginning', '  ---'),
  opened('a gap between the dashes at the beginning', '-- -'),
  opened('lines of an equals sign at the beginning', '==='),
  fence('no dashes at the beginning', [...FIELDS, '---', ...STORY], 1, 'Its story.'),
  fence('empty lines before the dashes', ['', '', '---', ...FIELDS, '---', ...STORY], 1, 'Its story.'),
  fence(
    'the first field behind the dashes',
    ['--- name: Teapot', ...FIELDS.slice(1), '---', ...STORY],
    1,
    'Its story.',
  ),
  fence('no dashes at the end, a blank line and a story', ['---', ...FIELDS, ...STORY], 5, 'Its story.'),
  fence('no dashes at the end and no story', ['---', ...FIELDS, ''], 5, ''),
  fence(
    'no dashes at the end, and a rule between two parts of the story',
    [...['---', ...FIELDS, '', 'Its story.', '', '---', '', 'And more.', '']],
    5,
    'Its story.',
  ),
  fence(
    'dashes after the story only',
    ['---', ...FIELDS, '', 'Its story.', '', 'More.', '', '---', ''],
    11,
    'Its story.',
  ),
  fence(
    'no dashes at the end, a list of dashes among the fields',
    [...['---', ...FIELDS, 'cautions:', '  - Hot when full.', '  - Keep dry.', '', 'Its story.', '']],
    8,
    'Its story.',
  ),
  fence(
    'a row of dashes between two groups of fields',
    ['---', ...FIELDS.slice(0, 2), '-----', ...FIELDS.slice(2), '---', ...STORY],
    4,
    'Its story.',
  ),
  fence(
    'no dashes at the end, and a story that begins in the next line',
    ['---', ...FIELDS, 'Its story.', '', 'More.', ''],
    5,
    'Its story.',
  ),
];

export const FENCES_ASIDE: readonly BrokenFence[] = [
  closed('seven dashes at the end', '-------'),
  closed('one long dash at the end', '—'),
  closed('two long dashes at the end', '——'),
  closed('a minus and two dashes at the end', '−--'),
  closed('gaps between all dashes at the end', '- - -'),
  closed('a tab before the dashes at the end', '\t---'),
  closed('four dashes and a space at the end', '---- '),
  closed('underscores at the end', '___'),
  closed('a heading behind the dashes', '---## The story', 'The story'),
  opened('two dashes at the beginning', '--'),
  opened('three middle dashes at the beginning', '–––'),
  opened('a tab before the dashes at the beginning', '\t---'),
  opened('a gap and a long dash at the beginning', '- —'),
  opened('a fence of code at the beginning', '```yaml'),
  fence('a blank line and no dashes at the beginning', ['', ...FIELDS, '---', ...STORY], 2, 'Its story.'),
  fence('one line of blanks before the dashes', ['   ', '---', ...FIELDS, '---', ...STORY], 1, 'Its story.'),
  fence(
    'the first field right behind the dashes',
    ['---name: Teapot', ...FIELDS.slice(1), '---', ...STORY],
    1,
    'Its story.',
  ),
  fence(
    'no dashes at the end, and a heading',
    ['---', ...FIELDS, '', '## How it came', '', 'So it came.', ''],
    5,
    'How it came',
  ),
  fence(
    'no dashes at the end, and a list in the story',
    ['---', ...FIELDS, '', '- It pours.', '- It holds.', ''],
    5,
    'It pours.',
  ),
  fence(
    'no dashes at the end, and blank lines between fields',
    ['---', ...FIELDS.slice(0, 2), '', ...FIELDS.slice(2), '', '', 'Its story.', ''],
    6,
    'Its story.',
  ),
  fence(
    'no dashes at the end, a picture in braces last',
    ['---', ...FIELDS, 'also: [brewer]', '', '**Its** story.', ''],
    6,
    'Its story.',
  ),
  fence(
    'no dashes at the end, and a story with a colon',
    ['---', ...FIELDS, '', 'Remember: it is hot.', '', 'More.', ''],
    5,
    'Remember: it is hot.',
  ),
  fence(
    'stars between two groups of fields',
    ['---', ...FIELDS.slice(0, 3), '***', ...FIELDS.slice(3), '---', ...STORY],
    5,
    'Its story.',
  ),
  fence(
    'one line of dashes too many at the end',
    ['---', ...FIELDS, '-----', '---', ...STORY],
    6,
    'Its story.',
  ),
  closed('six dashes in pairs at the end', '-- -- --'),
  closed('a horizontal bar at the end', '―'),
  closed('tildes at the end', '~~~'),
  closed('full stops at the end', '...'),
  closed('a blank that only looks like one before the dashes at the end', '\u2003---'),
  closed('the story right behind four dashes', '----Its story begins', 'Its story begins'),
  opened('a fence of code with another word at the beginning', '```markdown'),
  opened('two long dashes and blanks at the beginning', ' —— '),
  fence('a title above the dashes', ['# The teapot', '---', ...FIELDS, '---', ...STORY], 1, 'Its story.'),
  fence(
    'no dashes at the end, a quotation first in the story',
    ['---', ...FIELDS, '', '> It pours.', '', 'More.', ''],
    5,
    'It pours.',
  ),
  fence(
    'no dashes at the end, a picture first in the story',
    ['---', ...FIELDS, 'image:', '  - file: a.jpg', '    alt: A pot', '', '![A pot](../photos/a.jpg)', ''],
    8,
    '',
  ),
  fence(
    'no dashes at the end, a lower-case story',
    ['---', ...FIELDS, '', 'it pours, and pours.', ''],
    5,
    'it pours',
  ),
  fence(
    'no dashes at the end, a story and a rule of stars',
    ['---', ...FIELDS, '', 'Its story.', '', '***', '', 'More.', ''],
    5,
    'Its story.',
  ),
  fence(
    'long dashes after the story only',
    ['---', ...FIELDS, '', 'Its story.', '', '——', ''],
    9,
    'Its story.',
  ),
];
