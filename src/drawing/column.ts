/** Words one under the other: each entry's label, name, line, relation and cautions, as many as there is room for. */
import type { Drawing, DrawnEntry } from '../render/drawing.ts';
import type { SetBlock, Tone, WordRole } from './sheet.ts';
import type { SetType, TypeSpec } from './type/set-type.ts';

/** Sets a text in the faces at hand. */
export type Setting = (text: string, spec: TypeSpec) => SetType;

/** How a role is written, in pixels of the em; `least` where no smaller one can be read on a phone. */
export interface RoleStyle {
  readonly hand: TypeSpec['hand'];
  readonly size: number;
  readonly least?: number;
  readonly lines: number;
  readonly leading: number;
  readonly spacing?: number;
  readonly tone: Tone;
  /** Above it, in pixels. */
  readonly above: number;
}

export type Style = Readonly<Record<WordRole, RoleStyle>>;

/** A block with the pixels from the column's top to its first baseline. */
interface Placed {
  readonly role: WordRole;
  readonly text: string;
  readonly type: SetType;
  readonly tone: Tone;
  readonly baselines: readonly number[];
  /** Further in than the column, as cautions are behind their rule. */
  readonly indent: number;
}

/** Where words stand, from the column's top. */
interface Span {
  readonly top: number;
  readonly bottom: number;
  /** Whether they begin at the column's right side. */
  readonly isRight: boolean;
}

export interface Column {
  readonly placed: readonly Placed[];
  readonly height: number;
  readonly fits: boolean;
  /** Where each entry begins, from the column's top, and where its cautions stand. */
  readonly entries: readonly {
    readonly top: number;
    readonly cautions?: Span;
  }[];
}

/**
 * Which lines of a column stand at its right side: all where the first name runs from the right, and elsewhere each that
 * does.
 */
const standsRight = (
  placed: readonly Placed[],
): ((line: SetType['lines'][number] | undefined) => boolean) => {
  const isRight = placed.find(({ role }) => role === 'name')?.type.lines[0]?.rightToLeft === true;
  return (line) => isRight || line?.rightToLeft === true;
};

/** Ems of capitals' height in the text face, until the type itself says: for nothing but the first guess. */
const GUESSED_CAPITALS = 0.63;

/** How much of its words an entry shows. `line`: which of the lines; -1 for none. */
interface Detail {
  readonly line: number;
  readonly relation: boolean;
}

const BARE: Detail = { line: -1, relation: false };

/** What is shown of each entry, and at which share of the sizes wanted. */
interface Words {
  readonly scale: number;
  readonly shown: readonly Detail[];
}

/** Of the sizes wanted, what all words may shrink to together before they stand where a picture would. */
const SCALES = [1, 0.9, 0.8, 0.7];
/** Smaller than can be read on a phone: for more words than any sheet holds, so that none is lost. */
const SMALLEST = [0.6, 0.5, 0.4, 0.3, 0.2];

/** All entries alike, richest first. */
const richWords = (entries: readonly DrawnEntry[]): readonly Words[] => {
  const alike = (scale: number, detail: Detail): Words => ({ scale, shown: entries.map(() => detail) });
  const most = Math.max(0, ...entries.map(({ lines }) => lines.length));
  const related = entries.some(({ relation }) => relation !== undefined);
  const details = [
    ...Array.from({ length: most }, (_, line) => ({ line, relation: true })),
    ...(related ? [{ line: -1, relation: true }] : []),
  ];
  return details.flatMap((detail) => [1, 0.9].map((scale) => alike(scale, detail)));
};

const bareWords = (entries: readonly DrawnEntry[], scales: readonly number[]): readonly Words[] =>
  scales.map((scale) => ({ scale, shown: entries.map(() => BARE) }));

/** The same with a little more of one entry: how each goes with the others first, then a line of each. */
const richerWords = ({ scale, shown }: Words, entries: readonly DrawnEntry[]): readonly Words[] => {
  const withMore = (at: number, more: Partial<Detail>): Words => ({
    scale,
    shown: shown.map((detail, n) => (n === at ? { ...detail, ...more } : detail)),
  });
  return [
    ...entries.flatMap(({ relation }, at) =>
      relation !== undefined && !shown[at]?.relation ? [withMore(at, { relation: true })] : [],
    ),
    ...entries.flatMap(({ lines }, at) =>
      (shown[at]?.line ?? 0) < 0 ? lines.map((_, line) => withMore(at, { line })) : [],
    ),
  ];
};

/** Space between ink of one line and the next within a text, at least, in ems. */
const LEAST_BETWEEN = 0.06;

const baselinesFrom = (
  type: SetType,
  top: number,
): { readonly baselines: readonly number[]; readonly bottom: number } => {
  const baselines: number[] = [];
  let bottom = top;
  type.lines.forEach((line, n) => {
    const before = baselines.at(-1);
    // Marks above and below letters may reach farther than the lines are apart.
    const free =
      n === 0
        ? top - Math.min(line.ink.top, -type.capHeight)
        : bottom + type.size * LEAST_BETWEEN - line.ink.top;
    const baseline = before === undefined ? free : Math.max(before + type.leading, free);
    baselines.push(baseline);
    bottom = baseline + Math.max(line.ink.bottom, 0);
  });
  return { baselines, bottom };
};

const textsOf = (
  entry: DrawnEntry,
  detail: Detail,
): readonly { readonly role: WordRole; readonly text: string }[] => {
  const line = detail.line < 0 ? undefined : (entry.lines[detail.line] ?? entry.lines.at(-1));
  return [
    { role: 'label' as const, text: entry.label },
    { role: 'name' as const, text: entry.name },
    ...(line === undefined ? [] : [{ role: 'line' as const, text: line }]),
    ...(entry.relation === undefined || !detail.relation
      ? []
      : [{ role: 'relation' as const, text: entry.relation }]),
    ...entry.cautions.map(({ label, text }) => ({ role: 'caution' as const, text: `${label}. ${text}` })),
  ].filter(({ text }) => text !== '');
};

/** Pixels that cautions stand in from the column, behind their rule. */
export const CAUTION_INDENT = 36;

/** Share of the size wanted that a name may lose so that it is parted at its commas alone. A choice of ours. */
const WORTH_OF_COMMAS = 0.8;

/** A name, parted after a comma where each part has room for itself: "Wooden seed tray, | 30 × 12 cm". */
const setName = (text: string, spec: TypeSpec, set: Setting): SetType => {
  const parts = text.split(/(?<=,) /u);
  const plain = set(text, spec);
  if (parts.length === 1 || plain.lines.length === 1) return plain;
  const held = parts.map((part) => part.replaceAll(' ', '\u00a0')).join(' ');
  const type = set(held, { ...spec, least: Math.max(spec.least, spec.size * WORTH_OF_COMMAS) });
  return type.fits && type.lines.length <= parts.length ? type : plain;
};

const columnWith = (
  drawing: Drawing,
  style: Style,
  width: number,
  gap: number,
  { scale, shown }: Words,
  set: Setting,
  floor: number,
): Column => {
  const placed: Placed[] = [];
  const entries: { top: number; cautions?: Span }[] = [];
  let y = 0;
  let fits = true;
  const add = (role: WordRole, text: string, first: boolean): Span => {
    const { hand, size, least = floor, lines, leading, spacing, tone, above } = style[role];
    const indent = role === 'caution' ? CAUTION_INDENT : 0;
    const smallest = Math.min(size, least) * Math.min(1, scale < 0.7 ? scale / 0.7 : 1);
    const spec: TypeSpec = {
      hand,
      size: Math.max(smallest, size * scale),
      least: smallest,
      width: width - indent,
      lines,
      leading,
      lang: drawing.lang,
      ...(spacing === undefined ? {} : { spacing }),
    };
    const type = role === 'name' ? setName(text, spec, set) : set(text, spec);
    if (type.lines.some(({ ink }) => ink.right - ink.left > width - indent + 1)) fits = false;
    const top = first ? y : y + above * Math.max(scale, 0.7);
    const { baselines, bottom } = baselinesFrom(type, top);
    placed.push({ role, text, type, tone, baselines, indent });
    y = bottom;
    return { top, bottom, isRight: standsRight(placed)(type.lines[0]) };
  };
  drawing.entries.forEach((entry, n) => {
    if (n > 0) y += gap;
    const top = y;
    let cautions: Span | undefined;
    textsOf(entry, shown[n] ?? BARE).forEach(({ role, text }, at) => {
      const span = add(role, text, at === 0);
      if (role === 'caution') cautions = { ...span, top: cautions?.top ?? span.top };
    });
    entries.push({ top, ...(cautions && { cautions }) });
  });
  if (drawing.call) {
    add('call', drawing.call.text, placed.length === 0);
    add('address', drawing.call.address, placed.length === 0);
  }
  return { placed, height: y, fits, entries };
};

/** Em of the smallest words: as large as its capitals have to be high. */
const leastEm = (drawing: Drawing, set: Setting): number => {
  const { capHeight, size } = set('H', {
    hand: 'text',
    size: 100,
    least: 100,
    width: 1000,
    lines: 1,
    leading: 1,
    lang: 'en',
  });
  return Math.ceil((drawing.leastCapitals / (size > 0 ? capHeight / size : GUESSED_CAPITALS)) * 2) / 2;
};

/** Pixels that words may take: while pictures are as large as wanted, and at most. */
interface Room {
  readonly width: number;
  readonly wanted: number;
  readonly most: number;
  /** Between two entries. */
  readonly gap: number;
}

/**
 * The richest words for the room that is wanted, else what has to be said in the room there is: names, cautions and the
 * call are always among them. Only what no sheet could hold becomes smaller than can be read on a phone.
 */
export const columnFor = (
  drawing: Drawing,
  style: Style,
  { width, wanted, most, gap }: Room,
  set: Setting,
): Column => {
  const floor = leastEm(drawing, set);
  const tried = (words: Words): Column => columnWith(drawing, style, width, gap, words, set, floor);
  const firstIn = (room: number, choices: readonly Words[]) => {
    for (const words of choices) {
      const column = tried(words);
      if (column.fits && column.height <= room) return { words, column };
    }
    return undefined;
  };
  const { entries } = drawing;
  const found =
    firstIn(wanted, [...richWords(entries), ...bareWords(entries, SCALES)]) ??
    // The smallest that can be read takes least from the pictures.
    firstIn(most, bareWords(entries, SCALES.slice(-1)));
  if (found) {
    let best = found;
    for (let more = firstIn(wanted, richerWords(best.words, entries)); more; ) {
      best = more;
      more = firstIn(wanted, richerWords(best.words, entries));
    }
    return best.column;
  }
  const small =
    firstIn(most, bareWords(entries, SMALLEST))?.column ??
    tried({ scale: 0.2, shown: entries.map(() => BARE) });
  return { ...small, fits: false };
};

/** The column's blocks with its left top corner at a place. */
export const blocksAt = (column: Column, x: number, y: number, width: number): readonly SetBlock[] => {
  const isRight = standsRight(column.placed);
  return column.placed.map(({ role, text, type, tone, baselines, indent }) => ({
    role,
    text,
    type,
    tone,
    origins: type.lines.map((line, n) => ({
      x: isRight(line) ? x + width - indent - line.width : x + indent,
      y: y + (baselines[n] ?? 0),
    })),
  }));
};
