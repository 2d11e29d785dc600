/** Where the words of a film stand in its frame, and what they look like. */
import type { Film, FilmShot, FilmWords } from '../../render/film.ts';
import type { Faces } from '../type/faces.ts';
import type { SetText, SetType, TypeSpec } from '../type/set-type.ts';
import { lineStart, typeSvg } from '../type/type-svg.ts';

/** Pixels of a frame 1080 wide that the players' own controls cover at the top and the bottom; common practice, no source. */
const COVERED = { top: 250, bottom: 340 };
/** Pixels of such a frame, for all lengths below. */
const FULL_WIDTH = 1080;
const MARGIN = 96;
/** Between a picture or a veil's beginning and the words. */
const ROOM = 64;

/** A rectangle in pixels of the frame. */
export interface FrameBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Words as they are laid over a frame. */
export interface LaidWords {
  readonly from: number;
  readonly to: number;
  /** SVG paths, in pixels of the frame. */
  readonly svg: string;
  /** What the ink of each line covers. */
  readonly ink: readonly FrameBox[];
  /** Letters that no face has. */
  readonly lacking: readonly string[];
  /** Whether they keep within the part of the frame that no control covers. */
  readonly fits: boolean;
}

type Frame = Pick<Film, 'width' | 'height' | 'lang'>;

/** A scale from lengths of a frame 1080 wide. */
const scaleOf = ({ width }: Pick<Film, 'width'>): number => width / FULL_WIDTH;

/** The part of a frame that no control covers, margins left and right. */
export const safePart = (frame: Pick<Film, 'width' | 'height'>): FrameBox => {
  const scale = scaleOf(frame);
  return {
    left: MARGIN * scale,
    top: COVERED.top * scale,
    width: frame.width - 2 * MARGIN * scale,
    height: frame.height - (COVERED.top + COVERED.bottom) * scale,
  };
};

/** Sizes in pixels of a frame 1080 wide. Capitals of the least are 34 pixels high and more; common practice, no source. */
const SPECS = {
  said: { hand: 'text', size: 78, least: 60, lines: 4, leading: 1.16 },
  spoken: { hand: 'display', size: 132, least: 76, lines: 7, leading: 1.08 },
  address: { hand: 'text', size: 92, least: 56, lines: 3, leading: 1.16 },
  name: { hand: 'text', size: 58, least: 56, lines: 2, leading: 1.16 },
} as const;

const specOf = (role: keyof typeof SPECS, frame: Frame): TypeSpec => {
  const { hand, size, least, lines, leading } = SPECS[role];
  const scale = scaleOf(frame);
  return {
    hand,
    size: size * scale,
    least: least * scale,
    lines,
    leading,
    width: safePart(frame).width,
    lang: frame.lang,
  };
};

/** From the first baseline up to the top of its ink, and from there to the last line's bottom. */
const inkOf = ({ lines, leading }: SetType) => {
  const tops = lines.map(({ ink }, i) => i * leading + ink.top);
  const bottoms = lines.map(({ ink }, i) => i * leading + ink.bottom);
  const top = Math.min(...tops);
  return { top, height: Math.max(...bottoms) - top };
};

interface Placed {
  readonly svg: string;
  readonly ink: readonly FrameBox[];
}

/** Set words with the top of their ink at `top`, from the left edge, or the right one where they are read from there. */
const placed = (set: SetType, top: number, frame: Frame, fill: string): Placed => {
  const safe = safePart(frame);
  const isFromRight = set.lines[0]?.rightToLeft ?? false;
  const x = isFromRight ? safe.left + safe.width : safe.left;
  const align = 'start';
  const y = top - inkOf(set).top;
  return {
    svg: typeSvg(set, { x, y, align, fill }),
    ink: set.lines.map((line, i) => ({
      left: x + lineStart(line, align) + line.ink.left,
      top: y + i * set.leading + line.ink.top,
      width: line.ink.right - line.ink.left,
      height: line.ink.bottom - line.ink.top,
    })),
  };
};

/** Where a picture that does not fill the frame is set on paper, with or without words below it. */
export const platePlace = (
  still: { readonly width: number; readonly height: number },
  frame: Pick<Film, 'width' | 'height'>,
  { most, hasWords }: { readonly most: number; readonly hasWords: boolean },
): FrameBox => {
  const safe = safePart(frame);
  const room = hasWords ? SPECS.said.lines * SPECS.said.leading * SPECS.said.size + 2 * ROOM : 0;
  const lowest = safe.top + safe.height - room * scaleOf(frame);
  const even = (length: number): number => Math.floor(length / 2) * 2;
  const width = even(Math.min(frame.width, still.width * most));
  const height = even(Math.min(lowest, (width * still.height) / still.width, still.height * most));
  const top = Math.max(0, Math.min(lowest - height, safe.top + (lowest - safe.top - height) / 2));
  return { left: even((frame.width - width) / 2), top: even(top), width, height };
};

/**
 * The words of a shot, each laid where no control covers them: at the foot of a picture that fills the frame, below one
 * that does not, and in the middle of a card.
 */
export const layWords = (
  shot: Pick<FilmShot, 'words' | 'seen' | 'under'>,
  frame: Frame & Pick<Film, 'colours'>,
  { faces, setText, plate }: { readonly faces: Faces; readonly setText: SetText; readonly plate?: FrameBox },
): readonly LaidWords[] => {
  const { colours } = frame;
  const safe = safePart(frame);
  const scale = scaleOf(frame);
  const room = ROOM * scale;
  const set = (text: string, role: keyof typeof SPECS): SetType => setText(text, specOf(role, frame), faces);
  const laid = ({ from, to }: FilmWords, sets: readonly SetType[], parts: readonly Placed[]): LaidWords => {
    const ink = parts.flatMap((part) => part.ink);
    const isWithin = ink.every(
      ({ top, height }) => top >= safe.top - 1 && top + height <= safe.top + safe.height + 1,
    );
    return {
      from,
      to,
      svg: parts.map(({ svg }) => svg).join(''),
      ink,
      lacking: [...new Set(sets.flatMap(({ lacking }) => lacking))],
      fits: isWithin && sets.every(({ fits }) => fits),
    };
  };
  const { seen, under } = shot;
  if (seen.view === 'card') {
    const ink = seen.ground === 'accent' ? colours.onAccent : colours.ink;
    return shot.words.map((words) => {
      const large = set(words.text, 'spoken');
      const small = under ? [set(under.address, 'address'), set(under.name, 'name')] : [];
      const heights = [large, ...small].map((one) => inkOf(one).height);
      const whole = heights.reduce((sum, height) => sum + height, 0) + small.length * room;
      let top = safe.top + Math.max(0, (safe.height - whole) / 2);
      const parts = [large, ...small].map((one, i) => {
        const fill = i === 1 && seen.ground === 'paper' ? colours.accent : ink;
        const part = placed(one, top, frame, fill);
        top += (heights[i] ?? 0) + room;
        return part;
      });
      return laid(words, [large, ...small], parts);
    });
  }
  return shot.words.map((words) => {
    const one = set(words.text, 'said');
    const { height } = inkOf(one);
    const top = plate ? plate.top + plate.height + room : safe.top + safe.height - height;
    return laid(words, [one], [placed(one, top, frame, plate ? colours.ink : colours.onNight)]);
  });
};
