/** Words as shapes: what a text looks like when it is set in our own faces, in lines of most equal length. */
import { lazily } from '../../text/lazy.ts';
import {
  allWithin,
  type Breakable,
  balancedLines,
  fewestLines,
  type LineSpan,
  PARTS_WORD,
} from './balance.ts';
import { innerPlaces, type Place, placesOf } from './break-places.ts';
import type { Faces, Hand } from './faces.ts';
import { type Letter, type Letters, lettersOf } from './letters.ts';
import { lineData, type ShapedLine, shapeLine } from './shape-line.ts';

export type { Hand } from './faces.ts';

export interface TypeSpec {
  readonly hand: Hand;
  /** Pixels of the em: the size wanted, and the least that it may shrink to before it takes another line. */
  readonly size: number;
  readonly least: number;
  /** Pixels that a line may be wide, and how many lines there may be. */
  readonly width: number;
  readonly lines: number;
  /** From one baseline to the next, in ems. */
  readonly leading: number;
  /** BCP 47. */
  readonly lang: string;
  /** Between letters, in ems; never within a script that joins its letters. */
  readonly spacing?: number;
}

export interface SetLine {
  readonly text: string;
  /** Path data (SVG), the baseline at y = 0 and the line's start at x = 0. */
  readonly d: string;
  /** Pixels from the start to the end of the advance. */
  readonly width: number;
  /** What the ink covers, relative to the same origin: it may reach beyond the advance. */
  readonly ink: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  readonly rightToLeft: boolean;
}

export interface SetType {
  readonly lines: readonly SetLine[];
  /** The size that was taken, in pixels of the em. */
  readonly size: number;
  /** Pixels between baselines. */
  readonly leading: number;
  /** Pixels of the tallest letters without accents. */
  readonly capHeight: number;
  /** Pixels of the widest line, and from the first line's top of ink to the last one's bottom. */
  readonly width: number;
  readonly height: number;
  /** Letters that no face has, each once: they are drawn as empty frames, and the caller says so. */
  readonly lacking: readonly string[];
  /** False where even the least size and all lines do not hold it: the lines then go on beyond `lines`. */
  readonly fits: boolean;
}

/** Sets a text: as large as wanted where it fits, else smaller, then on more lines. No letter is ever left out. */
export type SetText = (text: string, spec: TypeSpec, faces: Faces) => SetType;

/** Half a pixel: sizes that nobody tells apart need not be tried. */
const SIZE_STEP = 0.5;

/** Spaces and what no reader sees are one space or nothing; spaces that hold words together stay. */
const readable = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[\t\n\v\f\r \u2028\u2029]+/g, ' ')
    .replace(/[\p{Cc}\p{Cs}]/gu, '')
    .replace(/^ | $/g, '');

/** A text that is ready to be broken: its letters, and what any stretch of it looks like as a line. */
interface Prepared {
  readonly letters: Letters;
  /** Where it may be broken between words. */
  readonly places: () => readonly Place[];
  readonly shapeOf: (from: number, end: number, hyphen: boolean) => ShapedLine;
  /** Ems of a stretch inside the whole, where its ends are no ends of lines. */
  readonly advanceOf: (from: number, end: number, hyphen: boolean) => number;
}

/** What each letter of a text adds to its width, summed up to each place (UTF-16). */
const advancesIn = (text: string, whole: ShapedLine): readonly number[] => {
  const own = new Array<number>(text.length + 1).fill(0);
  for (const { at, advance } of whole.placed) own[at + 1] = (own[at + 1] ?? 0) + advance;
  let sum = 0;
  return own.map((one) => {
    sum += one;
    return sum;
  });
};

const prepare = (text: string, { hand, lang, spacing = 0 }: TypeSpec, faces: Faces): Prepared => {
  const order = faces.inOrder(hand, lang);
  const letters = lettersOf(text, lang, order);
  const options = { lang, spacing, harfbuzz: faces.harfbuzz };
  // The hyphen stands behind the text, as a run of its own.
  const withHyphen: Letters = { ...letters, text: `${text} -` };
  const hyphenAfter = (letter: Pick<Letter, 'level'>): Letter => ({
    text: '-',
    from: text.length + 1,
    to: text.length + 2,
    face: order.find((face) => face.has(0x2d)),
    script: 'Zyyy',
    level: letter.level,
  });
  const sums = lazily(() => advancesIn(text, shapeLine(withHyphen, letters.letters, options)));
  const hyphenWidth = lazily(() => shapeLine(withHyphen, [hyphenAfter({ level: 0 })], options).advance);
  const known = new Map<string, ShapedLine>();
  return {
    letters,
    places: lazily(() => placesOf(text, lang)),
    shapeOf: (from, end, hyphen) => {
      const key = `${from} ${end} ${hyphen}`;
      const before = known.get(key);
      if (before) return before;
      const own = letters.letters.filter((letter) => letter.from >= from && letter.to <= end);
      const last = own.at(-1);
      const shaped = shapeLine(withHyphen, hyphen && last ? [...own, hyphenAfter(last)] : own, options);
      known.set(key, shaped);
      return shaped;
    },
    advanceOf: (from, end, hyphen) =>
      (sums()[end] ?? 0) - (sums()[from] ?? 0) + (hyphen ? hyphenWidth() + spacing : 0),
  };
};

/** Texts that are held: all that the few drawings in a row say that are of the same things. */
const HELD = 60;

const held = new WeakMap<Faces, Map<string, Prepared>>();

/** A text's letters and shapes are the same at every size and width, and it is tried at many. */
const preparedIn = (text: string, spec: TypeSpec, faces: Faces): Prepared => {
  const known = held.get(faces) ?? new Map<string, Prepared>();
  held.set(faces, known);
  const key = JSON.stringify([text, spec.hand, spec.lang, spec.spacing ?? 0]);
  const prepared = known.get(key) ?? prepare(text, spec, faces);
  known.delete(key);
  known.set(key, prepared);
  for (const oldest of known.keys()) {
    if (known.size <= HELD) break;
    known.delete(oldest);
  }
  return prepared;
};

/** Ems that a line takes with all its ink. */
const breadthOf = ({ advance, ink }: ShapedLine): number =>
  Math.max(advance, ink?.right ?? 0) - Math.min(0, ink?.left ?? 0);

/** Ems that the ends of a line may change of its width: what hangs over, and how a letter is shaped at an end. */
const ENDS = 1;

/** Rounding must not decide whether a line fits. */
const NEARLY = 1e-6;

/** A text that may be broken at some places. */
interface Broken extends Breakable {
  readonly places: readonly Place[];
  readonly lineOf: (span: LineSpan) => ShapedLine;
}

const breakAt = ({ shapeOf, advanceOf }: Prepared, places: readonly Place[]): Broken => {
  const lineOf = ([first, last]: LineSpan): ShapedLine => {
    const { end = 0, hyphen = false } = places[last] ?? {};
    return shapeOf(places[first - 1]?.next ?? 0, end, hyphen);
  };
  const widthOf = (first: number, last: number): number => {
    const { end = 0, hyphen = false } = places[last] ?? {};
    return advanceOf(places[first - 1]?.next ?? 0, end, hyphen);
  };
  return {
    places,
    lineOf,
    count: places.length,
    widthOf,
    // Shaping is what takes time, and few lines are so near to the width that they have to be shaped to be judged.
    isWithin: (first, last, width) => {
      const nearly = widthOf(first, last);
      if (Math.abs(nearly - width) > ENDS) return nearly < width;
      return breadthOf(lineOf([first, last])) <= width + NEARLY;
    },
    costOf: (last) => places[last]?.cost ?? 0,
  };
};

/** The same text, broken also inside what is wider than a line: at good places, and anywhere where these are too few. */
const brokenInside = (prepared: Prepared, broken: Broken, width: number, lang: string): Broken => {
  const { text } = prepared.letters;
  const inside = (of: Broken, anywhere: boolean): Broken => {
    const places = of.places.flatMap((place, i) => {
      if (of.isWithin(i, i, width)) return [place];
      return [...innerPlaces(text, of.places[i - 1]?.next ?? 0, place.end, lang, anywhere), place];
    });
    return breakAt(prepared, places);
  };
  const atSyllables = inside(broken, false);
  return allWithin(atSyllables, width) ? atSyllables : inside(atSyllables, true);
};

/** The largest size from least to wanted for which something holds that holds for all smaller ones. */
const largestSize = ({ size, least }: TypeSpec, holds: (size: number) => boolean): number | undefined => {
  if (holds(size)) return size;
  if (least >= size || !holds(least)) return undefined;
  let [low, high] = [0, Math.ceil((size - least) / SIZE_STEP)];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (holds(least + middle * SIZE_STEP)) low = middle;
    else high = middle;
  }
  return least + low * SIZE_STEP;
};

interface Chosen {
  readonly broken: Broken;
  readonly size: number;
  readonly fits: boolean;
}

/** Shares of a size that are tried where it parts what belongs together. */
const KINDER = [0.96, 0.92, 0.88];

const partings = ({ costOf, count }: Breakable, spans: readonly LineSpan[]): number =>
  spans.filter(([, last]) => last < count - 1 && costOf(last) >= PARTS_WORD).length;

/** A size, or one up to an eighth smaller that parts fewer words and numbers on as many lines. */
const kinderSize = (broken: Broken, size: number, { width, least }: TypeSpec): number => {
  const lines = fewestLines(broken, width / size);
  const partedAt = (one: number): number => partings(broken, balancedLines(broken, width / one));
  let [best, fewest] = [size, partedAt(size)];
  for (const share of KINDER) {
    const smaller = Math.floor((size * share) / SIZE_STEP) * SIZE_STEP;
    if (fewest === 0 || smaller < least) break;
    const parted = partedAt(smaller);
    if (parted < fewest && fewestLines(broken, width / smaller) <= lines) [best, fewest] = [smaller, parted];
  }
  return best;
};

const chooseSize = (prepared: Prepared, spec: TypeSpec): Chosen => {
  const { width, lines, lang } = spec;
  const least = Math.min(spec.size, spec.least);
  const holds = (broken: Broken, most: number) => (size: number) =>
    allWithin(broken, width / size) && fewestLines(broken, width / size) <= most;
  const whole = breakAt(prepared, prepared.places());
  const size = largestSize(spec, holds(whole, lines));
  if (size !== undefined) return { broken: whole, size: kinderSize(whole, size, spec), fits: true };
  const inside = brokenInside(prepared, whole, width / least, lang);
  const fewest = fewestLines(inside, width / least);
  const fits = fewest <= lines && allWithin(inside, width / least);
  if (!fits) return { broken: inside, size: least, fits };
  // As few lines as at the least size, and then as large as they allow.
  return { broken: inside, size: largestSize(spec, holds(inside, fewest)) ?? least, fits };
};

const HIDDEN = /\u00ad/g;

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

/** Height of a capital of a hand, in ems. */
const capHeightOf = (prepared: Prepared): number => prepared.shapeOf(0, 1, false).ink?.top ?? 0;

/** Sets a text: as large as wanted where it fits, else smaller, then on more lines. No letter is ever left out. */
export const setText: SetText = (text, spec, faces) => {
  const prepared = preparedIn(readable(text), spec, faces);
  const { letters } = prepared;
  const { broken, size, fits } =
    letters.letters.length > 0
      ? chooseSize(prepared, spec)
      : { broken: breakAt(prepared, []), size: spec.size, fits: true };
  const lines = balancedLines(broken, spec.width / size).map((span): SetLine => {
    const shaped = broken.lineOf(span);
    const { end = 0, hyphen = false } = broken.places[span[1]] ?? {};
    const from = broken.places[span[0] - 1]?.next ?? 0;
    const { left = 0, right = 0, top = 0, bottom = 0 } = shaped.ink ?? {};
    // Most sizes are tried and given up, and their letters are never drawn.
    const data = lazily(() => lineData(shaped, size));
    return {
      text: letters.text.slice(from, end).replace(HIDDEN, '') + (hyphen ? '-' : ''),
      get d() {
        return data();
      },
      width: rounded(shaped.advance * size),
      ink: {
        left: rounded(left * size),
        right: rounded(right * size),
        top: rounded(-top * size),
        bottom: rounded(-bottom * size),
      },
      rightToLeft: letters.baseLevel === 1,
    };
  });
  const leading = rounded(spec.leading * size);
  const [first, last] = [lines[0], lines.at(-1)];
  return {
    lines,
    size,
    leading,
    capHeight: rounded(capHeightOf(preparedIn('H', { ...spec, spacing: 0 }, faces)) * size),
    width: Math.max(0, ...lines.map(({ width }) => width)),
    height: first && last ? rounded(last.ink.bottom - first.ink.top + leading * (lines.length - 1)) : 0,
    lacking: [
      ...new Set(letters.letters.filter(({ face, parts }) => !face && !parts).map((letter) => letter.text)),
    ],
    fits,
  };
};
