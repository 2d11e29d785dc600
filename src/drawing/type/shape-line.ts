/** A line of letters as shapes: which glyphs, and where, from left to right. */
import type { Face, Faces } from './faces.ts';
import type { Letter, Letters } from './letters.ts';
import { type Ink, type Outline, outlineOf, pathOf, withInk } from './outline.ts';

/** A shape on a line, in ems from the line's left end; `unit` is the size of a unit of its outline. */
interface Placed {
  readonly outline: Outline;
  readonly unit: number;
  readonly x: number;
  readonly y: number;
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
    if (run && run.face === face && run.script === script && run.level === level) run.letters.push(letter);
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

const shapeRun = (
  { face, script, level, letters }: Run,
  text: string,
  { lang, spacing, harfbuzz }: ShapeOptions,
): { readonly placed: readonly Placed[]; readonly advance: number } => {
  const placed: Placed[] = [];
  let x = 0;
  if (!face) {
    for (const _ of letters) {
      placed.push({ outline: FRAME, unit: 0.001, x, y: 0 });
      x += FRAME_ADVANCE + spacing;
    }
    return { placed, advance: x };
  }
  const from = letters[0]?.from ?? 0;
  const to = letters.at(-1)?.to ?? from;
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
  for (const [i, { g, cl, dx, dy, ax }] of glyphs.entries()) {
    placed.push({ outline: face.outline(g), unit, x: x + dx * unit, y: dy * unit });
    x += ax * unit;
    if (glyphs[i + 1]?.cl !== cl) x += gap;
  }
  return { placed, advance: x };
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
  let ink: Ink | undefined;
  for (const { outline, unit, x, y } of placed)
    if (outline.ink)
      ink = withInk(ink, {
        left: x + outline.ink.left * unit,
        right: x + outline.ink.right * unit,
        top: y + outline.ink.top * unit,
        bottom: y + outline.ink.bottom * unit,
      });
  return { placed, advance, ink };
};

/** Path data of a shaped line at a size in pixels, the baseline at y = 0. */
export const lineData = ({ placed }: ShapedLine, size: number): string =>
  placed.map(({ outline, unit, x, y }) => pathOf(outline, x / unit, y / unit, unit * size)).join('');
