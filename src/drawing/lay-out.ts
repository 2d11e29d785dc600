/** A drawing's sheet, by its shape and layout. */
import type { Drawing } from '../render/drawing.ts';
import type { Setting } from './column.ts';
import { broadsideSheet, type Standing } from './layouts/broadside.ts';
import { plateSheet } from './layouts/plate.ts';
import { shareSheet } from './layouts/share.ts';
import type { Sheet } from './sheet.ts';

/** Whether a drawing has no picture at all: it is then made in one step, and its key says so (`drawingJob`). */
export const isOfWords = ({ pictures }: Pick<Drawing, 'pictures'>): boolean => pictures.length === 0;

/** Where everything of a drawing stands. `standing` says where a broadside's words may. */
export const layOut = (drawing: Drawing, set: Setting, standing: Standing = 'on the picture'): Sheet => {
  if (drawing.shape === 'share') return shareSheet(drawing, set);
  return drawing.layout === 'plate' ? plateSheet(drawing, set) : broadsideSheet(drawing, set, standing);
};
