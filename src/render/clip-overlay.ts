/**
 * Words laid over a picture that moves: a text cut into pieces of at most two lines, each shown long enough to be
 * read. Limits are common practice in subtitling.
 */
import { graphemeCount, graphemesOf, wordPieces } from '../text/segments.ts';

/** Graphemes a line. */
export const LINE_LENGTH = 42;
/** Lines at one time. */
export const LINES = 2;
/** Graphemes a second that a reader follows, spaces included. */
export const READING_SPEED = 17;
/** Milliseconds that even one word stays. */
const SHORTEST = 1000;

/** Words that are shown at one time. */
interface Overlay {
  /** One or two, none longer than `LINE_LENGTH`. */
  readonly lines: readonly string[];
  /** The same in one run, for who breaks it by its looks. */
  readonly text: string;
  /** Milliseconds that reading them takes at least. */
  readonly least: number;
}

/** What may not be parted from the word before it, and from the word after it. */
const CLINGS_BEFORE = /^[\p{Pe}\p{Pf}\p{Po}\p{Pd}\p{Mn}\u2019\u3001\u3002]+$/u;
const CLINGS_AFTER = /[\p{Ps}\p{Pi}]$/u;

/** A piece of text that a line may end after, with the space that follows it in the text. */
interface Unit {
  readonly text: string;
  readonly space: string;
  readonly length: number;
  /** Ends a clause. */
  readonly pause: boolean;
  /** What follows it belongs to the same name. */
  readonly inName: boolean;
  /** What follows it belongs to the same word. */
  readonly isCut: boolean;
}

/** A word too long for a line, in parts that are not, alike in length: no single letter is left over. */
const inParts = (word: string, lang: string): readonly string[] => {
  const signs = graphemesOf(word, lang);
  if (signs.length <= LINE_LENGTH) return [word];
  // A line has to hold the hyphen as well.
  const count = Math.ceil(signs.length / (LINE_LENGTH - 1));
  const size = Math.ceil(signs.length / count);
  return Array.from({ length: count }, (_, i) => signs.slice(i * size, (i + 1) * size).join(''));
};

/** Places in a text that lie inside one of some names, whatever their capitals. */
const insideNames = (text: string, names: readonly string[], lang: string): ReadonlySet<number> => {
  const inside = new Set<number>();
  const folded = text.toLocaleLowerCase(lang);
  for (const name of names) {
    const sought = name.toLocaleLowerCase(lang);
    for (let at = folded.indexOf(sought); at >= 0; at = folded.indexOf(sought, at + 1))
      for (let place = at + 1; place < at + sought.length; place += 1) inside.add(place);
  }
  return inside;
};

const unitsOf = (given: string, lang: string, names: readonly string[]): readonly Unit[] => {
  const text = given.trim().replace(/\s+/g, ' ');
  const held = insideNames(text, names, lang);
  let place = 0;
  const units: { text: string; space: string }[] = [];
  let opening = '';
  for (const piece of wordPieces(text, lang)) {
    const last = units.at(-1);
    if (piece.text.trim() === '') {
      if (last && opening === '') last.space = ' ';
      else opening += opening === '' ? '' : ' ';
    } else if (last && last.space === '' && opening === '' && CLINGS_BEFORE.test(piece.text))
      last.text += piece.text;
    else if (CLINGS_AFTER.test(piece.text) && !piece.isWord) opening += piece.text;
    else {
      // "co-op": after a sign that is no space the word goes on, unless the language writes without spaces.
      const goesOn = last && last.space === '' && opening === '' && /[-/'’_.@:]$/u.test(last.text);
      if (goesOn) last.text += piece.text;
      else units.push({ text: opening + piece.text, space: '' });
      opening = '';
    }
  }
  if (opening.trim() !== '') units.push({ text: opening.trim(), space: '' });
  return units.flatMap(({ text: word, space }) => {
    const parts = inParts(word, lang);
    place += word.length + space.length;
    const inName = held.has(place);
    return parts.map((part, i) => {
      const isLast = i === parts.length - 1;
      return {
        text: part,
        space: isLast ? space : '',
        length: graphemeCount(part, lang) + (isLast ? 0 : 1),
        pause: /[\p{Po}\p{Pd}]["”’»)]*$/u.test(part) && isLast,
        inName: inName && isLast,
        isCut: !isLast,
      };
    });
  });
};

/** In one run; a hyphen shows where its end cuts a word. */
const joined = (units: readonly Unit[]): string =>
  units
    .map(({ text, space }) => text + space)
    .join('')
    .trim() + (units.at(-1)?.isCut ? '-' : '');

/** Graphemes of any run of units without the space after it, from sums that are made once. */
const measured = (units: readonly Unit[]): ((from: number, to: number) => number) => {
  const sums = [0];
  let sum = 0;
  for (const { length, space } of units) {
    sum += length + space.length;
    sums.push(sum);
  }
  const upTo = (at: number): number => sums[at] ?? sum;
  return (from, to) => (to <= from ? 0 : upTo(to) - upTo(from) - (units[to - 1]?.space.length ?? 0));
};

/** An upright picture is narrow: what is longer than this goes on two lines where it can. */
const COMFORTABLE = 26;

/** Graphemes by which the longer of two lines may be longer still, where the first then ends with a clause. */
const WORTH_OF_PAUSE = 8;

/** Where a run of units is broken into lines. */
interface Break {
  /** The unit that the second line begins with; the first one for a single line. */
  readonly at: number;
  /** Whether that parts a name. */
  readonly partsName: boolean;
}

/**
 * Where to break a run of units into two lines of most equal length, outside of names where that can be; undefined
 * where two lines do not hold it.
 */
const breakOf = (
  units: readonly Unit[],
  widthOf: (from: number, to: number) => number,
  from: number,
  to: number,
): Break | undefined => {
  const width = widthOf(from, to);
  const single = { at: from, partsName: false };
  if (width <= COMFORTABLE) return single;
  let best: (Break & { readonly unlike: number }) | undefined;
  for (let at = from + 1; at < to; at += 1) {
    const longest = Math.max(widthOf(from, at), widthOf(at, to));
    if (longest > LINE_LENGTH) continue;
    const partsName = units[at - 1]?.inName ?? false;
    const unlike = longest + (units[at - 1]?.pause ? 0 : WORTH_OF_PAUSE);
    const isBetter = !best || (partsName === best.partsName ? unlike < best.unlike : best.partsName);
    if (isBetter) best = { at, partsName, unlike };
  }
  if (width <= LINE_LENGTH && (!best || best.partsName)) return single;
  return best;
};

/** One overlay more is worse than any raggedness. */
const COST_OF_ONE = 10_000;
/** Graphemes of raggedness that a break inside a clause is as bad as. */
const COST_INSIDE = 26;

/** A name that is parted is worse than one overlay more. */
const COST_OF_NAME = 2 * COST_OF_ONE;

/** Milliseconds that reading takes. */
const readingTime = (text: string, lang: string): number =>
  Math.max(SHORTEST, Math.ceil((graphemeCount(text, lang) * 1000) / READING_SPEED));

/**
 * A text as overlays in order: as few as hold it, alike in length, parted where a clause ends. Neither a line nor an
 * overlay ends inside one of `names`, as long as these are no longer than a line.
 */
export const overlaysOf = (text: string, lang: string, names: readonly string[] = []): readonly Overlay[] => {
  const units = unitsOf(text, lang, names);
  if (units.length === 0) return [];
  const widthOf = measured(units);
  const whole = widthOf(0, units.length);
  const ideal = whole / Math.ceil(whole / (LINE_LENGTH * LINES));
  // The cheapest way to part the first n units, with where its last overlay begins.
  const ways: { readonly cost: number; readonly from: number }[] = [{ cost: 0, from: 0 }];
  for (let to = 1; to <= units.length; to += 1) {
    let best = { cost: Number.POSITIVE_INFINITY, from: to - 1 };
    for (let from = to - 1; from >= 0; from -= 1) {
      const width = widthOf(from, to);
      if (width > LINE_LENGTH * LINES + 1) break;
      const inside = to < units.length && !units[to - 1]?.pause ? COST_INSIDE ** 2 : 0;
      const least = (ways[from]?.cost ?? 0) + COST_OF_ONE + (ideal - width) ** 2 + inside;
      // Looking for the break is what takes time, and no break makes a way cheaper.
      if (least >= best.cost) continue;
      const lines = breakOf(units, widthOf, from, to);
      if (lines === undefined) continue;
      const parted = [to < units.length && units[to - 1]?.inName, lines.partsName].filter(Boolean).length;
      const cost = least + parted * COST_OF_NAME;
      if (cost < best.cost) best = { cost, from };
    }
    ways.push(best);
  }
  const overlays: Overlay[] = [];
  for (let to = units.length; to > 0; ) {
    const from = ways[to]?.from ?? 0;
    const at = breakOf(units, widthOf, from, to)?.at ?? from;
    const lines = [units.slice(from, at), units.slice(at, to)].map(joined).filter((line) => line !== '');
    overlays.unshift({
      lines,
      text: joined(units.slice(from, to)),
      least: readingTime(lines.join(' '), lang),
    });
    to = from;
  }
  return overlays;
};
