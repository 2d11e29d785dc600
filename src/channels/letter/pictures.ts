/** The letter's pictures: full addresses in it, files in the site, because a reader's program fetches them from there. */
import type { BoxSettings, Cycle, Item, Picture } from '../../model/box.ts';
import { absoluteAddress } from '../../render/addresses.ts';
import { itemPlate, widePlate } from '../../render/layouts.ts';
import type { PictureOutput } from '../../render/output.ts';
import { awayPicture } from '../../render/pictures.ts';

/** A picture in the site, by its full address. */
export interface LetterPicture {
  readonly src: string;
  readonly alt: string;
}

/**
 * Pixels of a picture across the column and of one beside its words, which a phone shows across its own: about three
 * for two CSS pixels of a column of 600, two on a phone.
 */
const ACROSS = 960;
const BESIDE = 640;

/** A picture with the file that a letter shows of it. */
interface Placed {
  readonly picture: Picture;
  readonly file: PictureOutput;
}

/** The live is the box being opened, so the open box stands at the top, and then need not be shown again below. */
const atTop = ({ wholeBox, hero }: Cycle): Picture | undefined => wholeBox ?? hero;

/** The file of the picture at the top, with a play mark where it leads to a film. */
const topFile = (cycle: Cycle): Placed | undefined => {
  const picture = atTop(cycle);
  return (
    picture && {
      picture,
      file: awayPicture(picture, widePlate, { most: ACROSS, ...(cycle.replay ? { mark: 'play' } : {}) }),
    }
  );
};

const itemFile = (cycle: Cycle, { pictures, lead }: Item): Placed | undefined => {
  const shown = atTop(cycle)?.file;
  const picture = pictures.find(({ file }) => file !== shown) ?? pictures[0];
  return picture && { picture, file: awayPicture(picture, itemPlate, { most: lead ? ACROSS : BESIDE }) };
};

const peekFile = ({ peek }: Cycle): Placed | undefined =>
  peek?.picture && { picture: peek.picture, file: awayPicture(peek.picture, itemPlate, { most: ACROSS }) };

const shownIn = (settings: BoxSettings, placed: Placed | undefined): LetterPicture | undefined =>
  placed && { src: absoluteAddress(settings, placed.file.path), alt: placed.picture.alt };

/** The picture at the head of a letter. */
export const topPicture = (settings: BoxSettings, cycle: Cycle): LetterPicture | undefined =>
  shownIn(settings, topFile(cycle));

/** An item's picture: its first that is not at the head already. */
export const itemPicture = (settings: BoxSettings, cycle: Cycle, item: Item): LetterPicture | undefined =>
  shownIn(settings, itemFile(cycle, item));

/** The peek's picture. */
export const peekPicture = (settings: BoxSettings, cycle: Cycle): LetterPicture | undefined =>
  shownIn(settings, peekFile(cycle));

/** Every file that a cycle's letter names. No story is read for it. */
export const letterFiles = (cycle: Cycle): readonly PictureOutput[] =>
  [topFile(cycle), ...cycle.items.map((item) => itemFile(cycle, item)), peekFile(cycle)].flatMap((placed) =>
    placed ? [placed.file] : [],
  );
