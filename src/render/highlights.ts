/** Text with underlines that overlap: cut into runs, each drawn with every highlight that holds it. */
import { itemAt } from '../text/item-at.ts';
import { type Html, html, joinHtml } from './html.ts';
import { typesetRuns } from './typeset.ts';

/** One stretch of a text that says something of an item. Offsets in UTF-16 units. */
export interface Highlight {
  readonly start: number;
  readonly end: number;
  /** The item's number, from 1. */
  readonly item: number;
  /** Its name on the page: where links to it lead. */
  readonly anchor: string;
  /** Drawn in a lighter stroke. */
  readonly weak: boolean;
  /** For whoever walks from one to the next. */
  readonly words: string;
}

/** A stretch of text that the same highlights hold. */
export interface Run {
  readonly text: string;
  readonly start: number;
  /** All that hold this run, in the order given. */
  readonly said: readonly Highlight[];
}

/**
 * `text` in runs, a new one wherever a stretch begins or ends and at every offset in `cuts`. The runs put one
 * after another are the text.
 */
export const runsOf = (
  text: string,
  said: readonly Highlight[],
  cuts: readonly number[] = [],
): readonly Run[] => {
  const inside = (offset: number): boolean => offset > 0 && offset < text.length;
  const edges = [...said.flatMap(({ start, end }) => [start, end]), ...cuts].filter(inside);
  const borders = [0, ...new Set(edges.sort((a, b) => a - b)), text.length];
  return borders.slice(1).flatMap((end, i) => {
    const start = itemAt(borders, i);
    if (end === start) return [];
    const here = said.filter((one) => one.start <= start && one.end >= end);
    return [{ text: text.slice(start, end), start, said: here }];
  });
};

/** Ways to underline; a sixth item begins again with the first, told apart by its number. */
const UNDERLINES = 5;
/** Underlines of one run that are drawn below each other; more would reach the next line. */
const DEEPEST = 2;

/** The class that underlines an item's words. */
export const underlineOf = (item: number): string => `u u${((item - 1) % UNDERLINES) + 1}`;

/** One run, underlined once for each item it is of, with anchors for what begins in it. */
const runHtml = (run: Run, text: string, next: Run | undefined): Html => {
  if (run.said.length === 0) return html`${text}`;
  const items = [...new Set(run.said.map(({ item }) => item))].sort((a, b) => a - b);
  const underlined = items.reduceRight<Html>((inner, item, depth) => {
    const weak = run.said.every((one) => one.item !== item || one.weak);
    const classes = `${underlineOf(item)} d${Math.min(depth, DEEPEST)}${weak ? ' weak' : ''}`;
    return html`<span class="${classes}">${inner}</span>`;
  }, html`${text}`);
  const begins = run.said
    .filter(({ start }) => start === run.start)
    .map(({ anchor, words }) => html`<span id="${anchor}" data-words="${words}"></span>`);
  const ends = items.filter((item) => !next?.said.some((one) => one.item === item));
  // Read aloud, a digit after every third word would drown the text; lists of links say the same.
  const numbers = ends.length === 0 ? '' : html`<sup aria-hidden="true">${ends.join(',')}</sup>`;
  const anchors = run.said.map(({ anchor }) => anchor).join(' ');
  return html`${begins}<span class="said" data-said="${anchors}">${underlined}</span>${numbers}`;
};

/** How a highlighted text is set. */
interface HighlightOptions {
  readonly lang: string;
  /** Letter for letter, not typeset. */
  readonly asIs: boolean;
  /** An offset with words that stand before it, as a surveyor's mark. */
  readonly border?: { readonly at: number; readonly words: string };
}

/** A text with all that is said in it underlined, and each item's number after its words. */
export const highlightedText = (
  text: string,
  said: readonly Highlight[],
  options: HighlightOptions,
): Html => {
  const { lang, asIs, border } = options;
  const runs = runsOf(text, said, border ? [border.at] : []);
  const set = typesetRuns(
    runs.map((run) => ({ text: run.text, asIs })),
    lang,
  );
  return joinHtml(
    runs.map((run, i) => {
      const mark = border?.at === run.start ? html`<span class="border">${border.words}</span> ` : '';
      return html`${mark}${runHtml(run, set[i] ?? '', runs[i + 1])}`;
    }),
  );
};
