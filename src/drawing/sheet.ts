/** A laid out drawing: where everything stands, as data, before any pixel. All lengths are pixels of the drawing. */
import type { SetType } from './type/set-type.ts';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Colours by what they are for; what each is depends on the layout and, on a broadside, on the picture. */
export type Tone = 'ground' | 'ink' | 'soft' | 'accent' | 'wash' | 'hair';
export type Tones = Readonly<Record<Tone, string>>;

/** A part of the drawing that a picture fills. */
export interface PictureWindow extends Box {
  /** The picture's place among the drawing's. */
  readonly picture: number;
}

/** A filled rectangle without meaning: a rule, a ground, a patch of the palette. Never under words but as their ground. */
export interface Patch extends Box {
  readonly fill: Tone | { readonly colour: string };
}

export type WordRole = 'label' | 'name' | 'line' | 'relation' | 'caution' | 'call' | 'address';

/** A text where it stands. */
export interface SetBlock {
  readonly role: WordRole;
  readonly text: string;
  readonly type: SetType;
  readonly tone: Tone;
  /** The start of each line's baseline. */
  readonly origins: readonly { readonly x: number; readonly y: number }[];
}

/** A picture's foot that melts into the ground, so that words can stand on both. */
export interface Melt {
  /** Where the melting has to be strong enough for words, and where the picture ends. */
  readonly words: number;
  readonly end: number;
  /** Where it begins. */
  readonly begin: number;
}

export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly windows: readonly PictureWindow[];
  readonly patches: readonly Patch[];
  readonly blocks: readonly SetBlock[];
  readonly melt?: Melt;
  /** Whether the ground is the drawing's own paper, its accent, or taken from the pictures' feet. */
  readonly ground: 'paper' | 'accent' | 'picture';
  /** False where even the smallest words do not hold the text, which is then set smaller than can be read on a phone. */
  readonly fits: boolean;
}

/** What a line's ink covers on the sheet. */
export const inkBoxes = ({ type, origins }: SetBlock): readonly Box[] =>
  type.lines.map(({ ink }, n) => {
    const { x, y } = origins[n] ?? { x: 0, y: 0 };
    return { x: x + ink.left, y: y + ink.top, width: ink.right - ink.left, height: ink.bottom - ink.top };
  });
