/**
 * The letter's pictures: full addresses in it, files in the site, because a reader's program fetches them from there. A
 * preview has its own beside it, because until the site is published nothing stands at those addresses, and because nobody
 * knows the way from the back room to the site.
 */
import type { BoxSettings, Cycle, Item, Picture } from '../../model/box.ts';
import { absoluteAddress, relativeAddress } from '../../render/addresses.ts';
import { itemPlate, widePlate } from '../../render/layouts.ts';
import type { PictureOutput } from '../../render/output.ts';
import { awayPicture, logoPicture } from '../../render/pictures.ts';

/** Where a letter finds a picture, by its site path. */
export type PictureAddress = (path: string) => string;

/** In the site, for whoever gets the letter. */
export const inSite =
  (settings: BoxSettings): PictureAddress =>
  (path) =>
    absoluteAddress(settings, path);

/** A cycle's preview in the back room. */
export const previewPath = ({ id }: Pick<Cycle, 'id'>): string => `${id}/letter-preview.html`;

const besidePreview = ({ id }: Pick<Cycle, 'id'>, path: string): string =>
  `${id}/letter-pictures/${path.slice(path.lastIndexOf('/') + 1)}`;

/** Beside a preview. */
export const inPreview =
  (cycle: Pick<Cycle, 'id'>): PictureAddress =>
  (path) =>
    relativeAddress(previewPath(cycle), besidePreview(cycle, path));

/** A picture by its address. */
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

const shownAt = (addressOf: PictureAddress, placed: Placed | undefined): LetterPicture | undefined =>
  placed && { src: addressOf(placed.file.path), alt: placed.picture.alt };

/** The picture at the head of a letter. */
export const topPicture = (addressOf: PictureAddress, cycle: Cycle): LetterPicture | undefined =>
  shownAt(addressOf, topFile(cycle));

/** An item's picture: its first that is not at the head already. */
export const itemPicture = (addressOf: PictureAddress, cycle: Cycle, item: Item): LetterPicture | undefined =>
  shownAt(addressOf, itemFile(cycle, item));

/** The peek's picture. */
export const peekPicture = (addressOf: PictureAddress, cycle: Cycle): LetterPicture | undefined =>
  shownAt(addressOf, peekFile(cycle));

/** A logo at the head of a letter, in CSS pixels. */
export interface LetterLogo extends LetterPicture {
  readonly width: number;
  readonly height: number;
  /** Whether it stands for the box's name; otherwise beside it. */
  readonly isName: boolean;
}

/** From this width over height a logo is lettering, which says the name; a rounder one is a mark. */
const LETTERING = 2;
/** Most CSS pixels of each: lettering is as high as the name it stands for with room around, and fits a phone. */
const MOST_LETTERING = { width: 260, height: 64 };
const MOST_MARK = { width: 56, height: 56 };

/** The box's logo at the head of a letter. */
export const letterLogo = (
  addressOf: PictureAddress,
  { logo }: Pick<BoxSettings, 'logo'>,
): LetterLogo | undefined => {
  if (!logo) return undefined;
  const { path, picture } = logoPicture(logo);
  const isName = logo.width >= LETTERING * logo.height;
  const most = isName ? MOST_LETTERING : MOST_MARK;
  const share = Math.min(1, most.width / picture.width, most.height / picture.height);
  const pixels = (length: number): number => Math.max(1, Math.round(length * share));
  const [width, height] = [pixels(picture.width), pixels(picture.height)];
  // The name beside a mark says what it is.
  return { src: addressOf(path), alt: isName ? logo.alt : '', width, height, isName };
};

/** Every file that a cycle's letter names. No story is read for it. */
export const letterFiles = ({ logo }: BoxSettings, cycle: Cycle): readonly PictureOutput[] => [
  ...(logo ? [logoPicture(logo)] : []),
  ...[topFile(cycle), ...cycle.items.map((item) => itemFile(cycle, item)), peekFile(cycle)].flatMap(
    (placed) => (placed ? [placed.file] : []),
  ),
];

/** The same files beside the preview of a cycle's letter. */
export const previewFiles = (settings: BoxSettings, cycle: Cycle): readonly PictureOutput[] =>
  letterFiles(settings, cycle).map(({ path, picture }) => ({
    where: 'backroom',
    path: besidePreview(cycle, path),
    picture,
  }));
