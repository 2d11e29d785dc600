/** Words as shapes: what a text looks like when it is set in our own faces, in lines of most equal length. */
import type { Faces } from './faces.ts';

/** The hands that drawings are written in: as on the site, one display face over a quiet text face. */
export type Hand = 'display' | 'text' | 'italic';

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
