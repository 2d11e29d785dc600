/** A line of letters as shapes: which glyphs, and where, from left to right. */
import type { Face, Faces } from './faces.ts';
import type { Letter, Letters } from './letters.ts';
import { type Ink, type Outline, outlineOf, pathOf, withInk } from './outline.ts';
import { markShift, type Part } from './stacked-marks.ts';

/** A shape on a line, in ems from the line's left end; `unit` is the size of a unit of its outline. */
interface Placed {
  readonly outline: Outline;
  readonly unit: number;
  readonly x: number;
  readonly y: number;
  /** Ems to the next shape of its run. */
  readonly advance: number;
  /** Where its letter begins in the text. */
  readonly at: number;
}

/** A shaped line, in ems. */
export interface ShapedLine {
  readonly placed: readonly Placed[];
  readonly advance: number;
  /** y upwards. */
  readonly ink: Ink | undefined;
}

/** Letters that go together: one face, script and direction. */
interface Run {
  readonly face: Face | undefined;
  readonly script: string;
  readonly level: number;
  readonly letters: readonly Letter[];
}

/** Scripts whose letters are joined, or hang on a bar: a gap would tear them. */
const JOINED = new Set(['Arab', 'Syrc', 'Mong', 'Nkoo', 'Deva', 'Beng']);

/** An empty frame, for a letter that no face has, in thousandths of an em. */
const FRAME = outlineOf('M60,0L60,640L500,640L500,0ZM100,40L460,40L460,600L100,600Z');
const FRAME_ADVANCE = 0.56;

const runsOf = (letters: readonly Letter[]): readonly Run[] => {
  const runs: (Run & { readonly letters: Letter[] })[] = [];
  for (const letter of letters) {
    const { face, script, level } = letter;
    const run = runs.at(-1);
    const goesOn = run && run.face === face && run.script === script && run.level === level;
    if (goesOn && !letter.parts && !run.letters[0]?.parts) run.letters.push(letter);
    else runs.push({ face, script, level, letters: [letter] });
  }
  return runs;
};

/** From left to right (UAX #9, rule L2). */
const inVisualOrder = (runs: readonly Run[]): readonly Run[] => {
  const order = [...runs];
  const levels = runs.map(({ level }) => level);
  const least = Math.min(...levels.filter((level) => level % 2 === 1));
  for (let level = Math.max(...levels); level >= least; level -= 1)
    for (let from = 0; from < order.length; from += 1) {
      let to = from;
      while ((order[to]?.level ?? -1) >= level) to += 1;
      if (to > from) order.splice(from, to - from, ...order.slice(from, to).reverse());
      from = to;
    }
  return order;
};

export interface ShapeOptions {
  readonly lang: string;
  /** Ems between letters. */
  readonly spacing: number;
  readonly harfbuzz: Faces['harfbuzz'];
}

interface ShapedRun {
  readonly placed: readonly Placed[];
  readonly advance: number;
}

interface Stretch {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** A stretch of a text in one face. */
const shapeStretch = (
  face: Face,
  { text, from, to }: Stretch,
  { script, level }: Pick<Run, 'script' | 'level'>,
  { lang, spacing, harfbuzz }: ShapeOptions,
): ShapedRun => {
  const gap = JOINED.has(script) ? 0 : spacing;
  const buffer = harfbuzz.createBuffer();
  // With the text around it, because a joined letter's shape depends on its neighbours.
  buffer.addText(text, from, to - from);
  buffer.setDirection(level % 2 === 1 ? 'rtl' : 'ltr');
  buffer.setScript(script);
  buffer.setLanguage(lang);
  harfbuzz.shape(face.font, buffer, gap === 0 ? undefined : '-liga,-clig,-dlig');
  const glyphs = buffer.json();
  buffer.destroy();
  const unit = 1 / face.unitsPerEm;
  const placed: Placed[] = [];
  let x = 0;
  for (const [i, { g, cl, dx, dy, ax }] of glyphs.entries()) {
    const advance = ax * unit + (glyphs[i + 1]?.cl === cl ? 0 : gap);
    placed.push({ outline: face.outline(g), unit, x: x + dx * unit, y: dy * unit, advance, at: cl });
    x += advance;
  }
  return { placed, advance: x };
};

const inkOf = (placed: readonly Placed[]): Ink | undefined => {
  let ink: Ink | undefined;
  for (const { outline, unit, x, y } of placed)
    if (outline.ink)
      ink = withInk(ink, {
        left: x + outline.ink.left * unit,
        right: x + outline.ink.right * unit,
        top: y + outline.ink.top * unit,
        bottom: y + outline.ink.bottom * unit,
      });
  return ink;
};

/** A letter and its marks, each in a face that has it. */
const shapeParts = (parts: readonly Part[], run: Run, options: ShapeOptions): ShapedRun => {
  const [whole, ...marks] = parts.map(({ face, text }) =>
    shapeStretch(face, { text, from: 0, to: text.length }, run, options),
  );
  const placed = [...(whole?.placed ?? [])];
  const letter = inkOf(placed);
  for (const [i, mark] of marks.entries()) {
    const [ink, all] = [inkOf(mark.placed), inkOf(placed)];
    if (!ink || !all || !letter) continue;
    const shift = markShift(parts[i + 1]?.text ?? '', ink, letter, all);
    for (const one of mark.placed)
      placed.push({ ...one, x: one.x + shift.x, y: one.y + shift.y, advance: 0 });
  }
  const at = run.letters[0]?.from ?? 0;
  return { placed: placed.map((one) => ({ ...one, at })), advance: whole?.advance ?? 0 };
};

const shapeRun = (run: Run, text: string, options: ShapeOptions): ShapedRun => {
  const { face, letters } = run;
  const [first] = letters;
  if (first?.parts) return shapeParts(first.parts, run, options);
  if (face)
    return shapeStretch(face, { text, from: first?.from ?? 0, to: letters.at(-1)?.to ?? 0 }, run, options);
  const across = FRAME_ADVANCE + options.spacing;
  return {
    placed: letters.map(({ from }, i) => ({
      outline: FRAME,
      unit: 0.001,
      x: i * across,
      y: 0,
      advance: across,
      at: from,
    })),
    advance: letters.length * across,
  };
};

/** Shapes some letters of a text as a line. What follows the last letter is no part of it. */
export const shapeLine = (
  { text }: Letters,
  letters: readonly Letter[],
  options: ShapeOptions,
): ShapedLine => {
  const placed: Placed[] = [];
  let advance = 0;
  for (const run of inVisualOrder(runsOf(letters))) {
    const shaped = shapeRun(run, text, options);
    for (const one of shaped.placed) placed.push({ ...one, x: one.x + advance });
    advance += shaped.advance;
  }
  if (letters.length > 0 && options.spacing !== 0 && !JOINED.has(letters.at(-1)?.script ?? ''))
    advance -= options.spacing;
  return { placed, advance, ink: inkOf(placed) };
};

/** Path data of a shaped line at a size in pixels, the baseline at y = 0. */
export const lineData = ({ placed }: ShapedLine, size: number): string =>
  placed.map(({ outline, unit, x, y }) => pathOf(outline, x / unit, y / unit, unit * size)).join('');
