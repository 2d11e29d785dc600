/**
 * How long, how deep and how crowded a text may be, judged by one reading of its lines before anything parses it. The
 * bounds lie far above any article, and below them parsing takes time by the text's length. They are ours, no source:
 * each was set where the parser was seen to take less than a second.
 */

/** What is too much of something in a text. */
export interface Excess {
  readonly rule: 'markdown-depth' | 'text-size';
  /** From 1. */
  readonly line: number;
  /** What was found and what was expected, as a finding's sentence ends. */
  readonly found: string;
  readonly expected: string;
  readonly fix: string;
}

/** Signs, lines and counts that a text may have. Lengths are in UTF-16 units. */
export const BOUNDS = {
  /** Some 100,000 words: a long novel. */
  text: 600_000,
  /** Lines that are not empty. */
  lines: 10_000,
  /** Paragraphs, headings and the like: what lines that are not empty make between two that are. */
  blocks: 3000,
  /** Some 8,000 words in a row. */
  paragraph: 50_000,
  /** Letters in a row of scripts that have spaces; an address may be long. */
  word: 5000,
  /** Signs without a space among them in any script. */
  unbroken: 10_000,
  /** Blanks in a row. */
  blanks: 500,
  /** Quotations and lists within one another. */
  depth: 40,
  /** Spaces before a line's first sign: each two of them may be a list in a list. */
  indent: 120,
  /** Lines that begin with `:::`. */
  containers: 100,
  /** Footnotes and addresses that stand apart from their words. */
  definitions: 1000,
  /** Stars, brackets, backticks and the like in one paragraph. */
  marks: 4000,
  /** Backticks in a row. */
  backticks: 40,
} as const;

const LEAD = /^(?:[ \t]*(?:>|[-+*](?=[ \t]|$)|\d{1,9}[.)](?=[ \t]|$)))*[ \t]*/;
const MARKER = />|[-+*]|\d{1,9}[.)]/g;
const DEFINITION = /^[ \t>]*\[[^\]]+\]:/;
const CONTAINER = /^[ \t>]*:::/;
/** Signs that may begin or end something, the same in a row counted once, as Markdown does. */
const MARKS = /\*+|_+|~+|`+|[[\]&<\\]/g;
const BACKTICKS = new RegExp(`\`{${BOUNDS.backticks + 1}}`);
const BLANKS = new RegExp(`\\s{${BOUNDS.blanks + 1}}`);
/** Chinese, Japanese and Korean signs, and those that take two units. */
const UNSPACED = /[\u2e80-\uffff]/;

const number = (value: number): string => value.toLocaleString('en');

const size = (line: number, found: string, expected: string, fix: string): Excess => ({
  rule: 'text-size',
  line,
  found,
  expected,
  fix,
});

/** A text with too much within one another. */
export const tooDeep = (line: number): Excess => ({
  rule: 'markdown-depth',
  line,
  found: 'text',
  expected: `at most ${BOUNDS.depth} lists and quotations within one another`,
  fix: 'Take out the rows of `>` or `*`, and the spaces before the lines',
});

const isNoWord = (word: string): boolean =>
  word.length > BOUNDS.unbroken || (word.length > BOUNDS.word && !UNSPACED.test(word));

const countOf = (line: string, pattern: RegExp): number => line.match(pattern)?.length ?? 0;

/** What one line has too much of by itself. */
const excessInLine = (text: string, line: number): Excess | undefined => {
  const [lead = ''] = LEAD.exec(text) ?? [];
  const isRule = text.length < 2 * BOUNDS.depth + 20 && /^[ \t]*(?:[-*][ \t]*)+$/.test(text);
  if (!isRule && countOf(lead, MARKER) > BOUNDS.depth) return tooDeep(line);
  const [indent = ''] = /^[ \t]*/.exec(text) ?? [];
  if (indent.replaceAll('\t', '    ').length > BOUNDS.indent && indent.length < text.length)
    return tooDeep(line);
  if (BACKTICKS.test(text))
    return size(line, 'row of backticks', `at most ${BOUNDS.backticks}`, 'Take the backticks out');
  if (text.length > BOUNDS.blanks && BLANKS.test(text))
    return size(line, `row of more than ${BOUNDS.blanks} blanks`, 'one', 'Take the blanks out');
  if (text.length > BOUNDS.word && text.split(/\s+/).some(isNoWord))
    return size(
      line,
      `word of more than ${number(BOUNDS.word)} letters`,
      'words as people write them',
      'Take it out: it is no word; a picture goes to photos/',
    );
  return undefined;
};

/** The first thing that a text has too much of; undefined where there is none. */
export const excessIn = (text: string): Excess | undefined => {
  if (text.length > BOUNDS.text)
    return size(
      1,
      `text of ${number(text.length)} letters`,
      `at most ${number(BOUNDS.text)}`,
      'Tell it shorter, or take out what was pasted by mistake',
    );
  let [lines, blocks, containers, definitions, length, marks] = [0, 0, 0, 0, 0, 0];
  let line = 0;
  let isWithin = false;
  for (const one of text.split('\n')) {
    line += 1;
    const bare = one.trim();
    if (bare !== '') lines += 1;
    if (bare !== '' && !isWithin) blocks += 1;
    isWithin = bare !== '';
    length += one.length;
    marks += countOf(one, MARKS);
    // An empty line ends a paragraph, and so does the line that ends the fields.
    if (bare === '' || bare === '---') [length, marks] = [0, 0];
    if (CONTAINER.test(one)) containers += 1;
    if (DEFINITION.test(one)) definitions += 1;
    const found = excessInLine(one, line);
    if (found) return found;
    if (length > BOUNDS.paragraph)
      return size(
        line,
        `paragraph of more than ${number(BOUNDS.paragraph)} letters`,
        'an empty line between two thoughts',
        'Put empty lines in, so that it becomes several paragraphs',
      );
    if (marks > BOUNDS.marks)
      return size(
        line,
        `paragraph with more than ${number(BOUNDS.marks)} stars, brackets and the like`,
        'mostly words',
        'Take out what was pasted by mistake, or put empty lines in',
      );
    if (lines > BOUNDS.lines)
      return size(
        line,
        `text of more than ${number(BOUNDS.lines)} lines`,
        'fewer',
        'Tell it shorter, or take out what was pasted by mistake',
      );
    if (blocks > BOUNDS.blocks)
      return size(
        line,
        `text of more than ${number(BOUNDS.blocks)} paragraphs`,
        'fewer',
        'Tell it shorter, or take out what was pasted by mistake',
      );
    if (containers > BOUNDS.containers)
      return size(
        line,
        `more than ${BOUNDS.containers} lines that begin with \`:::\``,
        'fewer',
        'Take them out: they mean nothing here',
      );
    if (definitions > BOUNDS.definitions)
      return size(
        line,
        `more than ${number(BOUNDS.definitions)} notes and addresses that stand by themselves`,
        'fewer',
        'Take out those that are not needed, or write an address where its words stand, as [words](address)',
      );
  }
  return undefined;
};
