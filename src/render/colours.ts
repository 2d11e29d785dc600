/** A cycle's palette becomes a scheme of named colours whose pairs reach WCAG 2.2 AA by computation. */
import { converter, formatHex, wcagContrast } from 'culori';

/** Colours by what they are for, each `#rrggbb`. */
export interface Scheme {
  readonly paper: string;
  /** A tinted ground for the call, cautions and the peek. */
  readonly wash: string;
  readonly ink: string;
  /** Captions, labels, dates. */
  readonly soft: string;
  /** Links, numerals, the call. */
  readonly accent: string;
  /** Text on a ground of `accent`. */
  readonly onAccent: string;
  /** Edges of controls. Hairlines that carry no meaning use `hair`. */
  readonly edge: string;
  readonly hair: string;
}

/** A colour on another, and what contrast it needs. */
export interface Pair {
  readonly text: keyof Scheme;
  readonly ground: keyof Scheme;
  /** Least contrast ratio. */
  readonly least: number;
}

/** WCAG 2.2, 1.4.3 Contrast (Minimum): 4.5 to 1 for text. */
const TEXT_CONTRAST = 4.5;
/** WCAG 2.2, 1.4.11 Non-text Contrast: 3 to 1 for controls. */
const CONTROL_CONTRAST = 3;

/** Every pair that the style sheet sets: whatever is drawn on whatever ground. */
export const pairs: readonly Pair[] = [
  { text: 'ink', ground: 'paper', least: TEXT_CONTRAST },
  { text: 'ink', ground: 'wash', least: TEXT_CONTRAST },
  { text: 'soft', ground: 'paper', least: TEXT_CONTRAST },
  { text: 'soft', ground: 'wash', least: TEXT_CONTRAST },
  { text: 'accent', ground: 'paper', least: TEXT_CONTRAST },
  { text: 'accent', ground: 'wash', least: TEXT_CONTRAST },
  { text: 'onAccent', ground: 'accent', least: TEXT_CONTRAST },
  { text: 'edge', ground: 'paper', least: CONTROL_CONTRAST },
  { text: 'edge', ground: 'wash', least: CONTROL_CONTRAST },
];

interface Tone {
  readonly l: number;
  readonly c: number;
  readonly h: number;
}

const toOklch = converter('oklch');

const toneOf = (hex: string): Tone => {
  const colour = toOklch(hex);
  return { l: colour?.l ?? 0.5, c: colour?.c ?? 0, h: colour?.h ?? 0 };
};

const hexOf = ({ l, c, h }: Tone): string => formatHex({ mode: 'oklch', l, c, h });

/** WCAG 2.2 contrast ratio of two colours, 1 to 21. */
export const contrast = (a: string, b: string): number => wcagContrast(a, b);

/**
 * `tone` moved in lightness alone, a hundredth at a time, away from the grounds until it reaches `least` on all
 * of them; the first step that does. Hue stays, so that the cycle keeps its colour.
 */
const moved = (tone: Tone, grounds: readonly string[], least: number, step: 0.01 | -0.01): string => {
  const end = step < 0 ? 0 : 1;
  for (let l = tone.l; step < 0 ? l > end : l < end; l += step) {
    const hex = hexOf({ ...tone, l });
    if (grounds.every((ground) => contrast(hex, ground) >= least)) return hex;
  }
  return step < 0 ? '#000000' : '#ffffff';
};

/** Chroma above this makes a ground of text look dyed rather than tinted (measured by eye). */
const PAPER_CHROMA = 0.007;
const WASH_CHROMA = 0.022;
const INK_CHROMA = 0.02;

const scheme = (palette: readonly string[], dark: boolean): Scheme => {
  const tones = palette.map(toneOf);
  const first = tones[0] ?? { l: 0.5, c: 0, h: 0 };
  const strongest = tones.reduce((a, b) => (b.c > a.c ? b : a), first);
  const tint = (l: number, most: number): string => hexOf({ l, c: Math.min(first.c, most), h: first.h });
  const paper = dark ? tint(0.2, PAPER_CHROMA) : tint(0.978, PAPER_CHROMA);
  const wash = dark ? tint(0.26, WASH_CHROMA) : tint(0.935, WASH_CHROMA);
  const grounds = [paper, wash];
  const step = dark ? 0.01 : -0.01;
  const accent = moved(strongest, grounds, TEXT_CONTRAST, step);
  const onAccent = contrast(paper, accent) >= TEXT_CONTRAST ? paper : dark ? '#000000' : '#ffffff';
  return {
    paper,
    wash,
    ink: tint(dark ? 0.92 : 0.24, INK_CHROMA),
    soft: moved({ l: 0.55, c: Math.min(first.c, WASH_CHROMA), h: first.h }, grounds, TEXT_CONTRAST, step),
    accent,
    onAccent,
    edge: moved({ ...strongest, c: Math.min(strongest.c, 0.08) }, grounds, CONTROL_CONTRAST, step),
    hair: tint(dark ? 0.38 : 0.83, WASH_CHROMA),
  };
};

/** The light and the dark scheme of a palette (1 or more colours, `#rrggbb`). */
export const schemesOf = (palette: readonly string[]): { readonly light: Scheme; readonly dark: Scheme } => ({
  light: scheme(palette, false),
  dark: scheme(palette, true),
});

const declarations = (colours: Scheme): string =>
  Object.entries(colours)
    .map(([name, hex]) => `--${name}:${hex}`)
    .join(';');

/** A palette as it was chosen, side by side: an ornament that no text stands on. A CSS image. */
const bandOf = (palette: readonly string[]): string => {
  const percent = (share: number): string => `${Number((share * 100).toFixed(2))}%`;
  const stops = palette.map(
    (colour, i) =>
      `${colour.toLowerCase()} ${percent(i / palette.length)} ${percent((i + 1) / palette.length)}`,
  );
  return `linear-gradient(90deg,${stops.join(',')})`;
};

/**
 * Style rules that put a palette's schemes on the page, following the visitor's wish for light or dark, and the palette
 * itself as the image `--band`.
 */
export const schemeStyle = (palette: readonly string[]): string => {
  const { light, dark } = schemesOf(palette);
  return `:root{${declarations(light)};--band:${bandOf(palette)}}@media (prefers-color-scheme:dark){:root{${declarations(dark)}}}`;
};
