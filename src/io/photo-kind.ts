/** What a file is by its bytes, whatever its name says: a photo, something else, or more than one still. */
import { brandsOf } from './media-boxes.ts';
import { MOVES, moreThanOne } from './more-than-one.ts';
import type { PhotoProblem } from './photo-problem.ts';

/** Formats that are taken. */
export type PhotoKind = 'JPEG' | 'PNG' | 'GIF' | 'WebP' | 'TIFF' | 'AVIF' | 'HEIC';

/** Brands of pictures coded in HEVC: ISO/IEC 23008-12 annex B. Those of a sequence stand apart. */
const HEIC_BRANDS = ['heic', 'heix', 'heim', 'heis'];
const HEIC_SEQUENCES = ['hevc', 'hevx', 'hevm', 'hevs'];
/** Brands by which a file is a picture at all: the same annex, and AV1 Image File Format section 8. */
const PICTURE_BRANDS = ['mif1', 'mif2', 'msf1', 'miaf', 'avif', 'avis', ...HEIC_BRANDS, ...HEIC_SEQUENCES];
/** Major brands of files whose reader plays what is in them: the same two documents. */
const SEQUENCE_BRANDS = ['msf1', 'avis', ...HEIC_SEQUENCES];

/** How files of the formats begin, byte by byte in Latin-1; their own specifications. */
const BEGINNINGS: readonly (readonly [RegExp, PhotoKind])[] = [
  [/^\xff\xd8\xff/, 'JPEG'],
  [/^\x89PNG\r\n/, 'PNG'],
  [/^GIF8[79]a/, 'GIF'],
  [/^RIFF[\s\S]{4}WEBP/, 'WebP'],
  [/^(?:II\x2a\0|MM\0\x2a|II\x2b\0|MM\0\x2b)/, 'TIFF'],
];

/** What is no photograph though it may bear its name: a drawing takes as long to render as its author likes. */
const OTHERS: readonly (readonly [RegExp, string])[] = [
  [/^%PDF/, 'a PDF'],
  [/^\s*(?:\xef\xbb\xbf)?\s*<(?:\?xml|!DOCTYPE|!--|svg)/i, 'a drawing (SVG)'],
  // Matroska and WebM, AVI, MPEG, QuickTime before it had brands.
  [
    /^(?:[\s\S]\x45\xdf\xa3|RIFF[\s\S]{4}AVI |\0\0[\s\S][\xb3\xba]|[\s\S]{4}(?:moov|mdat|wide|free|skip))/,
    'a film',
  ],
];

const NOT_TAKEN = 'which is not taken: JPEG, PNG, WebP, AVIF, HEIC, TIFF and GIF are';
const SAVE_AS_PICTURE = 'Save it as a JPEG or a PNG, and name that';

const UNREADABLE: PhotoProblem = { problem: 'is not a picture that can be read' };
const other = (what: string): PhotoProblem => ({
  problem: `is ${what}, ${NOT_TAKEN}`,
  fix: SAVE_AS_PICTURE,
});

/** What a file with brands is: one that has none of a picture is a film. */
const kindByBrands = (brands: readonly string[]): PhotoKind | PhotoProblem => {
  if (!brands.some((brand) => PICTURE_BRANDS.includes(brand))) return other('a film');
  // By the major brand, because that is what a reader goes by where a file holds both.
  if (SEQUENCE_BRANDS.includes(brands[0] ?? '')) return MOVES;
  return brands.some((brand) => HEIC_BRANDS.includes(brand) || HEIC_SEQUENCES.includes(brand))
    ? 'HEIC'
    : 'AVIF';
};

const kindOfAny = (bytes: Buffer): PhotoKind | PhotoProblem => {
  const head = bytes.toString('latin1', 0, 256);
  const kind = BEGINNINGS.find(([begins]) => begins.test(head))?.[1];
  if (kind) return kind;
  const brands = brandsOf(bytes.subarray(0, 4096));
  if (brands.length > 0) return kindByBrands(brands);
  const thing = OTHERS.find(([begins]) => begins.test(head))?.[1];
  return thing === undefined ? UNREADABLE : other(thing);
};

/** The format of a still photo, by its bytes; or what the file is where it is none. Nothing is decoded. */
export const photoKind = (file: Uint8Array): PhotoKind | PhotoProblem => {
  const bytes = Buffer.from(file.buffer, file.byteOffset, file.length);
  const kind = kindOfAny(bytes);
  return typeof kind === 'string' ? (moreThanOne(bytes, kind) ?? kind) : kind;
};
