/** The proof's sentences and figures, worded alike on its page and on a terminal. */
import { capital, listed, numberWord } from '../text/counting-words.ts';

/** What the words need of a proof: a `Coverage` is one. */
export interface Judged {
  readonly aim: number;
  readonly items: readonly {
    readonly slug: string;
    readonly name: string;
    readonly standing: number;
    readonly promised: number;
  }[];
  readonly advice: readonly unknown[];
  /** Slugs. */
  readonly outOfReach: readonly string[];
}

const ordinals = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];

/** "second"; from the eleventh on "in place 11". */
export const ordinalWord = (rank: number): string => ordinals[rank - 1] ?? `in place ${rank}`;

/** A name without its measure and its particulars: "Brass plant mister" of "Brass plant mister, 300 ml". */
export const briefName = (name: string): string => {
  const brief = name.split(/,|\s[([]/)[0]?.trim();
  return brief || name;
};

/** Of what may be many, this many are named; the rest are counted. */
const MOST_NAMED = 3;

/** The first few, and how many others there are. */
export const abridged = (parts: readonly string[]): readonly string[] =>
  parts.length <= MOST_NAMED + 1
    ? parts
    : [...parts.slice(0, MOST_NAMED), `${numberWord(parts.length - MOST_NAMED)} others`];

/** What YAML takes for a word and nothing else. */
const PLAIN_YAML = /^(?!(?:true|false|null|yes|no|on|off|y|n)$)\p{L}[\p{L}\p{N} '’-]*$/iu;

/** The line of a record that names other names: those are quoted that YAML would take for something else. */
export const alsoLine = (names: readonly string[]): string =>
  `also: [${names.map((name) => (PLAIN_YAML.test(name) ? name : JSON.stringify(name))).join(', ')}]`;

/** What each grade means, the best first. */
export const gradeMeanings = [
  ['exact', 'the very words'],
  ['inflected', 'singular for plural, or the other way about'],
  ['same stem', 'words of the same stem'],
  ['scattered', 'all its words in one sentence, apart'],
  ['head only', 'only the word that says what it is'],
  ['absent', 'not there'],
] as const;

/** What adding fractions in another order may lose: no standing falls short of the aim by this. */
const SLACK = 1e-9;

/** Whether a standing has reached the aim. */
export const isAtAim = (standing: number, aim: number): boolean => standing >= aim - SLACK;

/**
 * A standing with two decimals. What is below the aim is never rounded up to it: 0.697 beside an aim of 0.7 is
 * "0.69", since "0.70, below the aim of 0.7" would be taken for a mistake.
 */
export const standingText = (standing: number, aim: number): string => {
  const rounded = standing.toFixed(2);
  const misleads = !isAtAim(standing, aim) && Number(rounded) >= aim;
  return misleads ? (Math.floor(standing * 100 + SLACK) / 100).toFixed(2) : rounded;
};

/** Less than this an edit brings by the way, and nobody does it for. */
const WORTH_SAYING = 0.005;

/** Cut off after three decimals, so that nothing is rounded up to an aim that it misses. */
const finely = (standing: number): string => (Math.floor(standing * 1000 + SLACK) / 1000).toFixed(3);

/** What an edit brings an item, as figures: with three decimals where two show no difference, or nothing where there is hardly any. */
export const broughtWords = (
  brought: { readonly before: number; readonly after: number },
  aim: number,
): { readonly before: string; readonly after: string; readonly there: boolean } | undefined => {
  const [before = '', after = ''] = [brought.before, brought.after].map((one) => standingText(one, aim));
  const there = isAtAim(brought.after, aim) && !isAtAim(brought.before, aim);
  if (before !== after) return { before, after, there };
  if (brought.after - brought.before < WORTH_SAYING) return undefined;
  return { before: finely(brought.before), after: finely(brought.after), there };
};

const otherWords = (below: number, reached: number, all: number): string => {
  if (below === 1) return all === 1 ? 'it' : 'the other';
  if (reached === below)
    return below === all ? (all === 2 ? 'both' : 'all') : `the other ${numberWord(below)}`;
  return reached === 1 ? 'one of them' : `${numberWord(reached)} of them`;
};

/** Whether an instruction says the words to write already, so that they need not be said twice. */
export const saysItself = (edit: { readonly words: string; readonly write: string }): boolean =>
  edit.words.includes(`“${edit.write}”`);

/** A link from a record of one cycle to another cycle, as an author writes it. */
export const linkMarkdown = (link: {
  readonly to: string;
  readonly anchor: string;
  readonly at: { readonly file: string };
}): string => {
  const folders = link.at.file.split('/').length - 2;
  return `[${link.anchor}](${'../'.repeat(Math.max(0, folders))}${link.to}/cycle.md)`;
};

/** The proof in one sentence: how many items stand at the aim, and what would bring the others there. */
export const verdictWords = ({ aim, items, advice, outOfReach }: Judged): string => {
  const all = items.length;
  if (all === 0) return 'There are no items to prove.';
  const below = items.filter(({ standing }) => !isAtAim(standing, aim));
  if (below.length === 0)
    return all === 1
      ? `The one item stands at the aim of ${aim}.`
      : `All ${numberWord(all)} items stand at the aim of ${aim}.`;
  const at = all - below.length;
  const stand =
    all === 1
      ? `The one item stands below the aim of ${aim}`
      : at === 0
        ? `None of the ${numberWord(all)} items stands at the aim of ${aim}`
        : `${capital(numberWord(at))} of ${numberWord(all)} items ${at === 1 ? 'stands' : 'stand'} at the aim of ${aim}`;
  const reached = below.filter(({ slug, promised }) => isAtAim(promised, aim) && !outOfReach.includes(slug));
  const stuck = below.filter((item) => !reached.includes(item));
  const edits = `${numberWord(advice.length)} ${advice.length === 1 ? 'edit' : 'edits'}`;
  const bring = advice.length === 1 ? 'brings' : 'bring';
  const stay = stuck.length === 1 ? 'stays' : 'stay';
  const names =
    stuck.length <= MOST_NAMED
      ? listed(stuck.map(({ name }) => briefName(name)))
      : `${numberWord(stuck.length)} of them`;
  if (advice.length === 0) return `${stand}, and there is no edit to propose for ${names}.`;
  if (reached.length === 0 && stuck.length > MOST_NAMED)
    return `${stand}; ${edits} would help, but not as far as that.`;
  if (reached.length === 0) return `${stand}; ${edits} would help, but ${names} ${stay} below it.`;
  const others = otherWords(below.length, reached.length, all);
  const rest = stuck.length === 0 ? '' : `, and ${names} ${stay} below it`;
  return `${stand}; ${edits} ${bring} ${others} there${rest}.`;
};

/** Flesch's own table for his scores (How to Write Plain English, 1979, chapter 2; from memory): the least of each. */
const EASE: readonly (readonly [number, string])[] = [
  [90, 'very easy'],
  [80, 'easy'],
  [70, 'fairly easy'],
  [60, 'plain English'],
  [50, 'fairly difficult'],
  [30, 'difficult'],
];

const easeWords = (ease: number): string => EASE.find(([least]) => ease >= least)?.[1] ?? 'very difficult';

/** The article as reading, in one or two sentences. Numbers are written as `lang` groups them. */
export const readingWords = (
  reading: {
    readonly words: number;
    readonly sentences: number;
    readonly minutes: number;
    readonly ease?: number;
    readonly grade?: number;
  },
  lang: string,
): string => {
  const { words, sentences, minutes, ease, grade } = reading;
  const figure = new Intl.NumberFormat(lang);
  const counted = (count: number, one: string): string =>
    `${figure.format(count)} ${count === 1 ? one : `${one}s`}`;
  const whole = Math.max(1, Math.round(minutes));
  const time = `about ${numberWord(whole)} ${whole === 1 ? 'minute' : 'minutes'} of reading`;
  const first = `${counted(words, 'word')} in ${counted(sentences, 'sentence')}, ${time}.`;
  if (ease === undefined || grade === undefined) return first;
  const years = Math.max(1, Math.round(grade));
  const school = `somebody with ${numberWord(years)} ${years === 1 ? 'year' : 'years'} of school can follow it`;
  return `${first} Its reading ease is ${Math.round(ease)}, which Flesch calls ${easeWords(ease)}; by Kincaid’s count ${school}.`;
};

/**
 * `amounts` in thousandths, as they are shown, so that they add up to `total` as it is shown: each is cut off,
 * and what is then lacking goes to the largest remainders (Hamilton's method, as for seats in a parliament).
 */
export const addingUp = (amounts: readonly number[], total: number): readonly string[] => {
  const exact = amounts.map((amount) => amount * 1000);
  const cut = exact.map((amount) => Math.floor(amount + SLACK));
  // The total as it is shown: 0.1735 is a hair less than that, and shown as 0.173.
  const shown = Math.round(Number(total.toFixed(3)) * 1000);
  let lacking = shown - cut.reduce((sum, one) => sum + one, 0);
  const byRemainder = exact
    .map((amount, i) => ({ i, remainder: amount - (cut[i] as number) }))
    .sort((a, b) => b.remainder - a.remainder || a.i - b.i);
  for (const { i, remainder } of byRemainder) {
    if (lacking <= 0 || remainder <= SLACK) break;
    cut[i] = (cut[i] as number) + 1;
    lacking -= 1;
  }
  return cut.map((amount) => (amount / 1000).toFixed(3));
};
