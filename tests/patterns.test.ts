/**
 * Every pattern of the program against texts that make a pattern slow: one that goes back over what it has read takes time
 * by the square of a text's length or worse, and an author's text is as long as its author likes.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseAst } from 'rolldown/parseAst';
import { describe, expect, it } from 'vitest';

/** Rooms whose patterns read what authors wrote. */
const ROOMS = ['content', 'text', 'analysis', 'model', 'diagnostics'];

interface Pattern {
  readonly place: string;
  readonly source: string;
  readonly flags: string;
}

interface Node {
  readonly type?: string;
  readonly start?: number;
  readonly regex?: { readonly pattern: string; readonly flags: string };
}

/** Every literal pattern below a node of a syntax tree. */
const literalsIn = (node: unknown, found: Node[] = []): readonly Node[] => {
  if (Array.isArray(node)) for (const one of node) literalsIn(one, found);
  else if (typeof node === 'object' && node !== null) {
    const one = node as Node;
    if (one.type === 'Literal' && one.regex) found.push(one);
    else for (const value of Object.values(node)) literalsIn(value, found);
  }
  return found;
};

const patternsOf = (path: string, text: string): readonly Pattern[] =>
  literalsIn(parseAst(text, { lang: 'ts' })).map(({ regex, start = 0 }) => ({
    place: `${path}:${text.slice(0, start).split('\n').length}`,
    source: regex?.pattern ?? '',
    flags: regex?.flags ?? '',
  }));

const patternsOfRooms = (): readonly Pattern[] =>
  ROOMS.flatMap((room) => {
    const folder = new URL(`../src/${room}/`, import.meta.url).pathname;
    return readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.ts'))
      .sort()
      .flatMap((path) => patternsOf(`${room}/${path}`, readFileSync(join(folder, path), 'utf8')));
  });

const SIGNS: Readonly<Record<string, string>> = { t: '\t', n: '\n', r: '\r', s: ' ', d: '1', w: 'a', p: 'a' };

/** Signs that a pattern names, and a few that stand for the classes that it may mean. */
const signsOf = (source: string): readonly string[] => {
  const signs = new Set(['a', ' ', '1', '.']);
  for (const [, escaped, plain] of source.matchAll(/\\([^ux])|([^\\\w])/g))
    signs.add(escaped === undefined ? (plain as string) : (SIGNS[escaped.toLowerCase()] ?? escaped));
  return [...signs];
};

/** Beginnings and pairs that are tried: more of them find nothing else and take longer. */
const MOST_HEADS = 3;
const MOST_IN_PAIRS = 5;

/** What a pattern may want to see before it begins to repeat: signs that stand beside each other in it. */
const headsOf = (source: string): readonly string[] =>
  [...source.replace(/\(\?(?:[:=!]|<[=!])/g, '(').matchAll(/(?:\\[^\w]|[^\\^$.*+?()[\]{}|]){2,}/g)]
    .map(([run]) => run.replace(/\\(.)/g, '$1'))
    .slice(0, MOST_HEADS);

/** Beginnings, each with what comes again and again after it. */
const attacksOn = (source: string): readonly (readonly [head: string, again: string])[] => {
  const signs = signsOf(source);
  const few = signs.slice(-MOST_IN_PAIRS);
  const pairs = few.flatMap((one) => few.filter((other) => other !== one).map((other) => one + other));
  const heads = [...new Set(['', 'a', ...headsOf(source), ...signs.slice(4, 4 + MOST_HEADS)])];
  return [
    ...heads.flatMap((head) => signs.map((sign) => [head, sign] as const)),
    ...pairs.map((pair) => ['', pair] as const),
  ];
};

/** What no pattern expects: it cannot end there, and goes back. */
const STOP = '\u0001';

/**
 * Lengths, one after another, so that what takes time by a power of two or three of the length shows before it takes for ever:
 * 22 signs for the powers of 2, 300 and 1000 for the cube, 10,000 for the square.
 */
const LENGTHS = [22, 300, 1000, 10_000];
/** Milliseconds: a pattern that reads 10,000 signs once takes at most one, one that reads them 10,000 times fifty and more. */
const MOST_MS = 20;
/**
 * The least of so many tries counts: each is shorter than the time that a busy machine gives to one program at once, and one
 * of them falls whole into such a time.
 */
const TRIES = 15;
/** Nobody is as busy as that. */
const SURELY_MS = 500;

const millisecondsOf = (pattern: RegExp, text: string): number => {
  let least = Number.POSITIVE_INFINITY;
  for (let n = 0; n < TRIES && least >= MOST_MS && (n === 0 || least < SURELY_MS); n += 1) {
    const begun = performance.now();
    if (pattern.global) text.match(pattern);
    else pattern.exec(text);
    least = Math.min(least, performance.now() - begun);
  }
  return least;
};

/** A text that the pattern takes too long for, shortened; undefined where none was found. */
const slowOn = ({ source, flags }: Pattern): string | undefined => {
  const pattern = new RegExp(source, flags.replace('y', ''));
  const attacks = attacksOn(source);
  for (const length of LENGTHS)
    for (const [head, again] of attacks) {
      const text = head + again.repeat(Math.ceil(length / again.length)) + STOP;
      if (millisecondsOf(pattern, text) >= MOST_MS) return JSON.stringify(`${head}${again} … ×${length}`);
    }
  return undefined;
};

const mayRepeat = ({ source }: Pattern): boolean => /[+*]|\{\d+,\}/.test(source);

/** Patterns that are slow on long texts, each with what keeps such a text from it. */
const BOUNDED: ReadonlyMap<string, string> = new Map([
  [String.raw`\([^)]*\)|\[[^\]]*\]`, 'a title of a column has 200 signs (MOST_OF_TITLE)'],
  [String.raw`[:*#?\s]+$`, 'the same'],
  [String.raw`[([]\s*([^)\]]{1,12}?)\s*[)\]]`, 'the same'],
  [
    String.raw`(?:[“„«]|(?<!\d)"(?=\S))[^”“»"]*(?:[”“»]|(?<!\d)")`,
    'a name has 200 signs (content/fields.ts)',
  ],
]);

describe('a pattern that reads what an author wrote', () => {
  it('takes time by the length of the text', () => {
    const patterns = patternsOfRooms().filter(mayRepeat);
    expect(patterns.length).toBeGreaterThan(200);
    const slow = patterns.flatMap((pattern) => {
      if (BOUNDED.has(pattern.source)) return [];
      const text = slowOn(pattern);
      return text === undefined ? [] : [`${pattern.place} /${pattern.source}/${pattern.flags} on ${text}`];
    });
    expect(slow).toEqual([]);
    // What has gone from the sources goes from the list.
    const sources = new Set(patterns.map(({ source }) => source));
    expect([...BOUNDED.keys()].filter((source) => !sources.has(source))).toEqual([]);
  });

  it.each([
    ['blanks to the end', /\s+$/],
    ['a lazy beginning', /^(.*?)\s*:\s+(.*)$/],
    ['brackets that are not closed', /\([^)]*\)/g],
    ['blanks three times', /^(\s*)(?:<!--\s*(.*?)\s*-->)\s*$/],
    ['repetitions of repetitions', /^(?:a+)+$/],
    ['two ways to say the same', /^(?:\w|\d)*:$/],
  ])('is found where it does not: %s', (_, { source, flags }) => {
    expect(slowOn({ place: '', source, flags })).toBeDefined();
  });
});
