/** The widths that the pages' layout needs, in CSS pixels, shared so that one rendition serves many places. */
import { UPRIGHT, WIDEST_SHOWN } from '../model/picture-findings.ts';
import type { PictureLayout } from './pictures.ts';

const PLATE_WIDTHS = [400, 640, 960, WIDEST_SHOWN] as const;
/** Width of a phone's column: the viewport less the page's margins. */
const COLUMN = 'calc(100vw - 2.5rem)';

/** The picture at the head of an article. */
export const leadPlate: PictureLayout = {
  name: 'lead',
  widths: PLATE_WIDTHS,
  sizes: `(min-width: 60rem) 28rem, ${COLUMN}`,
};
/** An item's picture. */
export const itemPlate: PictureLayout = {
  name: 'plate',
  widths: PLATE_WIDTHS,
  sizes: `(min-width: 60rem) 24rem, ${COLUMN}`,
};
/** An item's picture among others of its kind: the same files as its plate, shown smaller. */
export const kindPlate: PictureLayout = {
  name: 'kind',
  widths: PLATE_WIDTHS,
  sizes: '(min-width: 40rem) 14rem, 34vw',
};
/** The whole box, across the page. */
export const widePlate: PictureLayout = {
  name: 'wide',
  widths: PLATE_WIDTHS,
  sizes: `(min-width: 72rem) 66rem, ${COLUMN}`,
};
/** A small picture in a list. */
export const smallPlate: PictureLayout = {
  name: 'small',
  widths: [200, 400],
  sizes: '(min-width: 40rem) 10rem, 28vw',
  ratio: UPRIGHT,
};
