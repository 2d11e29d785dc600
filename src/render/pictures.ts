/** Picture markup together with the files it names, so that the two cannot disagree. */

import type { Picture } from '../model/box.ts';
import { LEAST_LOGO } from '../model/logo-size.ts';
import { itemAt, lastOf } from '../text/item-at.ts';
import { cutToBytes } from '../text/utf8.ts';
import { relativeAddress } from './addresses.ts';
import { type Html, html, joinHtml } from './html.ts';
import type { PictureJob, PictureOutput } from './output.ts';
import { jobKey } from './picture-recipe.ts';

/** What of a picture its published files depend on: its words are left out, so that a new word makes no new file. */
export type PictureSource = Pick<Picture, 'file' | 'hash' | 'width' | 'height' | 'focus'>;

/** How wide a place on a page shows its picture. */
export interface PictureLayout {
  readonly name: string;
  /** Widths of the published renditions, in pixels, narrowest first. */
  readonly widths: readonly number[];
  /** HTML `sizes`: how wide the layout shows the picture. */
  readonly sizes: string;
  /** Width over height of a crop; without it the photo keeps its own shape. */
  readonly ratio?: number;
}

/** How one picture is shown. */
export interface PictureOptions {
  /** First thing on the page: loaded at once and before other pictures. */
  readonly eager?: boolean;
  /** Instead of the picture's own; empty where the text beside it says the same. */
  readonly alt?: string;
  readonly class?: string;
  /**
   * Gives the full address of a site path: for what is read away from the site, as in a feed, where style is lost and
   * not every reader knows `<picture>`. The picture is then one JPEG.
   */
  readonly away?: (path: string) => string;
}

/** Everything a `<picture>` says, as data: the templates' markup and the stories' tree are both made of it. */
export interface PictureParts {
  readonly sources: readonly { readonly type: string; readonly srcset: string; readonly sizes: string }[];
  readonly img: {
    readonly src: string;
    readonly srcset?: string;
    readonly sizes?: string;
    readonly width: number;
    readonly height: number;
    readonly alt: string;
    /** The mean colour, `#rrggbb`: stands in the picture's place until it has loaded. */
    readonly tint?: string;
    readonly eager: boolean;
    readonly class?: string;
  };
  readonly outputs: readonly PictureOutput<PictureJob>[];
}

type Format = PictureJob['format'];

const extensions: Record<Format, string> = { avif: 'avif', webp: 'webp', jpeg: 'jpg', png: 'png' };

/** Best first: a browser takes the first type it knows. */
const modernFormats = ['avif', 'webp'] as const;

/** The shape that link previews show, in pixels: Open Graph images, common practice. */
const SOCIAL_WIDTH = 1200;
const SOCIAL_HEIGHT = 630;

/** The photo's file name without folder and ending, made fit for an address. */
const baseName = (file: string): string => {
  const name = file.slice(file.lastIndexOf('/') + 1).replace(/\.[^.]*$/, '');
  const fit = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return fit || 'picture';
};

/** Of a key, in a published name: enough that two of a site's pictures never share one. */
const NAMED_DIGITS = 10;

/** Bytes that a photo's own name takes of a picture's; width, hash and ending come after it (POSIX NAME_MAX is 255). */
const NAME_BYTES = 180;

/** One rendition. Its name changes when the photo's bytes or the way it is made change, and only then. */
const rendition = (
  picture: PictureSource,
  width: number,
  height: number,
  format: Format,
  mark?: NonNullable<PictureJob['mark']>,
): PictureOutput<PictureJob> => {
  const job = {
    source: picture.file,
    hash: picture.hash,
    width,
    height,
    ...(picture.focus && { focus: picture.focus }),
    format,
    ...(mark && { mark }),
  };
  const key = jobKey(job);
  const name = [cutToBytes(baseName(picture.file), NAME_BYTES), ...(mark ? [mark] : []), width].join('-');
  return {
    where: 'site',
    path: `pictures/${name}.${key.slice(0, NAMED_DIGITS)}.${extensions[format]}`,
    picture: { ...job, key },
  };
};

/** The layout's widths that the photo can fill without being enlarged; its own width if it can fill none. */
const fittingWidths = (picture: PictureSource, layout: PictureLayout): readonly number[] => {
  const widest = Math.floor(
    layout.ratio === undefined ? picture.width : Math.min(picture.width, picture.height * layout.ratio),
  );
  const fitting = layout.widths.filter((width) => width <= widest);
  return fitting.length > 0 ? fitting : [Math.max(1, widest)];
};

const heightAt = (width: number, picture: PictureSource, { ratio }: PictureLayout): number =>
  Math.max(1, Math.round(width / (ratio ?? picture.width / picture.height)));

/** Fills the column of a feed reader on a phone with two or three pixels to each CSS pixel. */
const AWAY_WIDTH = 960;

/**
 * The one JPEG of a picture for readers away from the site, at most `most` pixels wide where the layout allows it; a
 * page with the layout makes it too, unless it bears a mark.
 */
export const awayPicture = (
  picture: Picture,
  layout: PictureLayout,
  { most = AWAY_WIDTH, mark }: { readonly most?: number; readonly mark?: 'play' } = {},
): PictureOutput<PictureJob> => {
  const widths = fittingWidths(picture, layout);
  const width = widths.filter((one) => one <= most).at(-1) ?? itemAt(widths, 0);
  return rendition(picture, width, heightAt(width, picture, layout), 'jpeg', mark);
};

/** What a `<picture>` for `page` (a site path) says, and the files it needs. */
export const pictureParts = (
  picture: Picture,
  layout: PictureLayout,
  page: string,
  options: PictureOptions = {},
): PictureParts => {
  const { alt = picture.alt, eager = false, away } = options;
  const classes = options.class === undefined ? {} : { class: options.class };
  if (away) {
    const one = awayPicture(picture, layout);
    const { width, height } = one.picture;
    const img = { src: away(one.path), width, height, alt, eager, ...classes };
    return { sources: [], img, outputs: [one] };
  }
  const widths = fittingWidths(picture, layout);
  const renditions = (format: Format): readonly PictureOutput<PictureJob>[] =>
    widths.map((width) => rendition(picture, width, heightAt(width, picture, layout), format));
  const srcset = (outputs: readonly PictureOutput<PictureJob>[]): string =>
    outputs.map((output) => `${relativeAddress(page, output.path)} ${output.picture.width}w`).join(', ');
  const modern = modernFormats.map((format) => ({ format, outputs: renditions(format) }));
  const plain = renditions('jpeg');
  const widest = lastOf(plain);
  return {
    sources: modern.map(({ format, outputs }) => ({
      type: `image/${format}`,
      srcset: srcset(outputs),
      sizes: layout.sizes,
    })),
    img: {
      src: relativeAddress(page, widest.path),
      srcset: srcset(plain),
      sizes: layout.sizes,
      width: widest.picture.width,
      height: widest.picture.height,
      alt,
      tint: picture.tint,
      eager,
      ...classes,
    },
    outputs: [...modern.flatMap(({ outputs }) => outputs), ...plain],
  };
};

/** `<picture>` for `page` (a site path), or one `<img>` for readers away from it, and the files it needs. */
export const pictureMarkup = (
  picture: Picture,
  layout: PictureLayout,
  page: string,
  options: PictureOptions = {},
): { readonly html: Html; readonly outputs: readonly PictureOutput<PictureJob>[] } => {
  const { sources, img, outputs } = pictureParts(picture, layout, page, options);
  if (options.away) {
    const plain = html`<img src="${img.src}" width="${img.width}" height="${img.height}" alt="${img.alt}">`;
    return { html: plain, outputs };
  }
  const sourceTags = sources.map(
    ({ type, srcset, sizes }) => html`<source type="${type}" srcset="${srcset}" sizes="${sizes}">`,
  );
  const classes = img.class === undefined ? '' : html` class="${img.class}"`;
  const loading = img.eager ? html`fetchpriority="high"` : html`loading="lazy"`;
  const imgTag = html`<img${classes} src="${img.src}" srcset="${img.srcset}" sizes="${img.sizes}" width="${img.width}" height="${img.height}" alt="${img.alt}" ${loading} decoding="async" data-tint="${img.tint}">`;
  return { html: html`<picture>${joinHtml(sourceTags)}${imgTag}</picture>`, outputs };
};

/** Site path of the widest JPEG of a picture as plates show it: what structured data and the sitemap name. */
export const widestPath = (picture: PictureSource, layout: PictureLayout): string => {
  const width = fittingWidths(picture, layout).at(-1) as number;
  return rendition(picture, width, heightAt(width, picture, layout), 'jpeg').path;
};

/** Pixels of a logo's longer side: an icon of JSON Feed 1.1 is best 512, and a letter shows half of that at most. */
const LOGO_SIDE = 512;

/** The one file of a logo, whole. What may have see-through parts stays a PNG, which every mail program shows. */
export const logoPicture = (logo: PictureSource): PictureOutput<PictureJob> => {
  const [longer, shorter] = [Math.max(logo.width, logo.height), Math.min(logo.width, logo.height)];
  // Lettering may be longer, so that it is high enough.
  const share = Math.min(1, Math.max(LOGO_SIDE / longer, LEAST_LOGO / shorter));
  const pixels = (length: number): number => Math.max(1, Math.round(length * share));
  const format = /\.(?:jpe?g|hei[cf])$/i.test(logo.file) ? 'jpeg' : 'png';
  return rendition(logo, pixels(logo.width), pixels(logo.height), format);
};

/** The picture of a link preview: 1200 × 630 pixels or, from a smaller photo, the largest of that shape. */
export const socialPicture = (picture: PictureSource): PictureOutput<PictureJob> => {
  const share = Math.min(1, picture.width / SOCIAL_WIDTH, picture.height / SOCIAL_HEIGHT);
  const pixels = (length: number): number => Math.max(1, Math.floor(length * share));
  return rendition(picture, pixels(SOCIAL_WIDTH), pixels(SOCIAL_HEIGHT), 'jpeg');
};

/** Pixels of a thumbnail's longer side: some 3 cm of a printed paper, two pixels to each of a screen's. */
const THUMBNAIL = 240;

/** A small copy of a photo for a paper of its cycle, whole, in the cycle's folder of the back room. */
export const thumbnail = (picture: PictureSource, cycle: string): PictureOutput<PictureJob> => {
  const share = Math.min(1, THUMBNAIL / Math.max(picture.width, picture.height));
  const pixels = (length: number): number => Math.max(1, Math.round(length * share));
  const { file, hash, width, height } = picture;
  const one = rendition({ file, hash, width, height }, pixels(width), pixels(height), 'jpeg');
  return {
    ...one,
    where: 'backroom',
    path: `${cycle}/thumbnails/${one.path.slice(one.path.lastIndexOf('/') + 1)}`,
  };
};
