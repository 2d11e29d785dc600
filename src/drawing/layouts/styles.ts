/** How words are written in each layout, in pixels of a sheet 1080 wide. */
import type { RoleStyle, Style } from '../column.ts';

const text = { hand: 'text', size: 56, lines: 9, leading: 1.2, tone: 'ink', above: 38 } as const;
const label: RoleStyle = {
  ...text,
  size: 54,
  lines: 2,
  leading: 1.15,
  spacing: 0.06,
  tone: 'soft',
  above: 0,
};
const caution: RoleStyle = { ...text, size: 54, lines: 40, leading: 1.18, above: 42 };
const call: RoleStyle = { ...text, hand: 'italic', size: 68, lines: 3, leading: 1.14, above: 56 };

/** A nursery list's entry: quiet, upright, its remarks in italics. */
export const plateStyle: Style = {
  label,
  name: { hand: 'display', size: 100, least: 62, lines: 4, leading: 1.06, tone: 'ink', above: 34 },
  line: text,
  relation: { ...text, hand: 'italic' },
  caution,
  call,
  address: { hand: 'display', size: 84, least: 56, lines: 4, leading: 1.12, tone: 'accent', above: 36 },
};

/** A poster's: the name as large as it can be. */
export const broadsideStyle: Style = {
  ...plateStyle,
  label: { ...label, tone: 'ink' },
  name: { hand: 'display', size: 132, least: 70, lines: 4, leading: 1.0, tone: 'ink', above: 30 },
  line: { ...text, size: 58 },
  relation: { ...text, hand: 'italic', size: 58 },
  address: { hand: 'display', size: 96, least: 56, lines: 4, leading: 1.1, tone: 'ink', above: 36 },
};

/** Two things share a sheet: neither shouts. */
export const shared = (style: Style): Style => ({
  ...style,
  name: { ...style.name, size: Math.min(76, style.name.size), least: 56, above: 22 },
  line: { ...style.line, size: 54, above: 26 },
  relation: { ...style.relation, size: 54, above: 24 },
  caution: { ...style.caution, above: 30 },
});

/** Words with no picture beside them. */
export const alone = (style: Style): Style => ({
  ...style,
  name: { ...style.name, size: style.name.size * 1.35, above: 48 },
  line: { ...style.line, size: 68, above: 52 },
  relation: { ...style.relation, size: 68, above: 44 },
});

/** The picture of a link preview is shown at a third of its size. */
export const shareStyle: Style = {
  ...plateStyle,
  label: { ...label, size: 34, least: 30 },
  name: { hand: 'display', size: 68, least: 36, lines: 6, leading: 1.06, tone: 'ink', above: 26 },
  line: { ...text, hand: 'italic', size: 36, least: 32, above: 26 },
};
