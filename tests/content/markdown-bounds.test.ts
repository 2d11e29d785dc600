import { describe, expect, test } from 'vitest';
import { parseFile } from '../../src/content/front-matter.ts';
import { BOUNDS } from '../../src/content/markdown-bounds.ts';

const HEAD = '---\nname: Teapot\n---\n';

const numbered = (count: number, line: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => line(i)).join('\n');

/** Texts that nobody writes by hand, each with the rule that answers it and the line. */
const TOO_MUCH: Readonly<Record<string, readonly [body: string, rule: string, line: number]>> = {
  'lists in lists': [numbered(300, (i) => `${'  '.repeat(i)}- a`), 'markdown-depth', 65],
  'lists in lists on one line': ['- '.repeat(2000), 'markdown-depth', 4],
  'quotations in quotations': [`${'>'.repeat(100_000)}a`, 'markdown-depth', 4],
  'numbers in numbers': ['1. '.repeat(500), 'markdown-depth', 4],
  'containers in containers': [':::a\n'.repeat(5000), 'text-size', 104],
  addresses: [numbered(5000, (i) => `[a${i}]: /u${i}`), 'text-size', 1004],
  footnotes: [numbered(5000, (i) => `[^a${i}]: x\n`), 'text-size', 2004],
  'references and their addresses': [numbered(5000, (i) => `[a${i}] `), 'text-size', 2004],
  'emphasis that is never closed': ['a**b '.repeat(20_000), 'text-size', 4],
  'stars and words': ['*a* '.repeat(5000), 'text-size', 4],
  brackets: ['[ '.repeat(10_000), 'text-size', 4],
  'links that are not closed': ['[a]( '.repeat(10_000), 'text-size', 4],
  ampersands: ['&x '.repeat(100_000), 'text-size', 4],
  'backticks in rows of every length': [numbered(1000, (i) => '`'.repeat(i)), 'text-size', 45],
  rules: ['---\n\n'.repeat(50_000), 'text-size', 6004],
  paragraphs: ['a\n\n'.repeat(100_000), 'text-size', 6004],
  lines: ['a\n'.repeat(100_000), 'text-size', 10_001],
  'one word': ['x'.repeat(100_000), 'text-size', 4],
  'one word of a megabyte': ['é'.repeat(1_000_000), 'text-size', 1],
  'quotation marks': ['"'.repeat(100_000), 'text-size', 4],
  'Chinese signs without a stop': ['手'.repeat(100_000), 'text-size', 4],
  blanks: [`a${' '.repeat(10_000)}b`, 'text-size', 4],
  'stars in one line': ['*'.repeat(10_000), 'text-size', 4],
  'a paragraph of 200,000 words': ['a word '.repeat(100_000), 'text-size', 1],
  'a paragraph of 20,000 words': ['words '.repeat(20_000), 'text-size', 4],
  'a novel in many volumes': ['A word and another.\n\n'.repeat(40_000), 'text-size', 1],
};

/** What is just within the bounds. */
const JUST_SO: Readonly<Record<string, string>> = {
  'lists in lists': numbered(36, (i) => `${'  '.repeat(i)}- a`),
  quotations: `${'>'.repeat(BOUNDS.depth)}a`,
  containers: ':::a\n'.repeat(BOUNDS.containers),
  addresses: numbered(BOUNDS.definitions, (i) => `[a${i}]: /u${i}`),
  footnotes: numbered(BOUNDS.definitions, (i) => `x[^${i}]\n\n[^${i}]: y\n`),
  emphasis: 'a**b '.repeat(BOUNDS.marks),
  stars: '*a* '.repeat(BOUNDS.marks / 2),
  brackets: '[ '.repeat(BOUNDS.marks),
  links: '[a](b) '.repeat(BOUNDS.marks / 2),
  backticks: `${numbered(BOUNDS.backticks, (i) => '`'.repeat(i))} `.repeat(20),
  rules: '---\n\n'.repeat(BOUNDS.blocks - 10),
  paragraphs: 'a\n\n'.repeat(BOUNDS.blocks - 10),
  lines: 'a\n'.repeat(BOUNDS.lines - 10),
  word: 'x'.repeat(BOUNDS.word),
  unspaced: '手'.repeat(BOUNDS.unbroken),
  paragraph: 'word '.repeat(BOUNDS.paragraph / 5),
  'every colon': 'at 10:30 '.repeat(BOUNDS.paragraph / 9),
  table: `a|b\n-|-\n${'c|d\n'.repeat(2000)}`,
};

/** Seconds of processor time on a quiet machine, with room for a slow one. */
const MOST_SECONDS = { refused: 0.5, read: 8 };

const seconds = (run: () => void): number => {
  const begun = process.cpuUsage();
  run();
  return process.cpuUsage(begun).user / 1e6;
};

describe('a text that nobody wrote', () => {
  test.each(Object.entries(TOO_MUCH))('of %s is named before it is parsed', (_, [body, rule, line]) => {
    const took = seconds(() => {
      const { diagnostics } = parseFile({ path: 'items/01-teapot.md', text: HEAD + body });
      expect(diagnostics).toHaveLength(1);
      expect(diagnostics[0]).toMatchObject({ weight: 'must fix', rule, location: { line, column: 1 } });
      expect(diagnostics[0]?.message).toMatch(/^Unexpected .+, expected .+/);
      expect(diagnostics[0]?.fix).toBeTruthy();
    });
    expect(took).toBeLessThan(MOST_SECONDS.refused);
  });

  test('leaves the fields before it to be read', () => {
    const { data } = parseFile({ path: 'items/01-teapot.md', text: `${HEAD}${'>'.repeat(1000)}` });
    expect(data).toEqual({ name: 'Teapot' });
  });

  test('is named among the fields too', () => {
    const { data, diagnostics } = parseFile({
      path: 'items/01-teapot.md',
      text: `---\nname: ${'x'.repeat(50_000)}\n---\nText.\n`,
    });
    expect(data).toBeUndefined();
    expect(diagnostics).toMatchObject([{ rule: 'text-size', location: { line: 2 } }]);
  });

  test.each(Object.entries(JUST_SO))(
    'is not one of %s just within the bounds, which is read quickly',
    (_, body) => {
      const took = seconds(() =>
        expect(parseFile({ path: 'items/01-teapot.md', text: HEAD + body }).diagnostics).toEqual([]),
      );
      expect(took).toBeLessThan(MOST_SECONDS.read);
    },
  );
});
