/** The faces that drawings are set in, opened from the bytes of their files. */
import type { Font, HarfBuzz } from 'harfbuzzjs/hbjs.js';
import type { Asset } from '../../render/templates.ts';
import { digestOf } from '../../text/digest.ts';
import { lazily } from '../../text/lazy.ts';
import { type Outline, outlineOf } from './outline.ts';
import { inRanges, type Ranges } from './unicode-range.ts';

/** A file of a face that is read when a letter asks for it. */
export interface FaceFile {
  readonly name: string;
  /** Stands for the bytes. */
  readonly digest: string;
  /** Letters that the file is asked for, as in CSS: "U+5D0-5EA,U+20AA". */
  readonly ranges: Ranges;
  /** BCP 47, where the file draws letters as one language does that others draw in another way. */
  readonly lang?: string;
  /** A companion of the text face in one of its hands; without it, of every hand. */
  readonly hand?: 'text' | 'italic';
  readonly bytes: () => Uint8Array;
}

/** One file of a face. */
export interface Face {
  readonly name: string;
  readonly has: (codePoint: number) => boolean;
  readonly unitsPerEm: number;
  readonly font: Font;
  readonly outline: (glyph: number) => Outline;
}

/** The hands that drawings are written in: as on the site, one display face over a quiet text face. */
export type Hand = 'display' | 'text' | 'italic';

/** Opened faces, in the order in which they are asked for a letter. */
export interface Faces {
  /** Of all their bytes: another face gives other drawings. */
  readonly digest: string;
  /** Files of the templates that are no fonts, or damaged: others take their place. */
  readonly unreadable: readonly string[];
  readonly harfbuzz: HarfBuzz;
  /** In the order of a hand and a language (BCP 47). */
  readonly inOrder: (hand: Hand, lang: string) => readonly Face[];
}

/** The files of a face among the templates; figures for tables have a face of their own on the site. */
const OWN_FILES: Readonly<Record<Hand, RegExp>> = {
  display: /^fonts\/sorts-mill-goudy(?!.*figures).*\.(?:woff2|ttf|otf)$/,
  text: /^fonts\/alegreya(?!.*(?:italic|figures)).*\.(?:woff2|ttf|otf)$/,
  italic: /^fonts\/alegreya-italic(?!.*figures).*\.(?:woff2|ttf|otf)$/,
};

/** Hands to look in, one after another: what the display face lacks the text face has, as on the site. */
const HANDS: Readonly<Record<Hand, readonly Hand[]>> = {
  display: ['display', 'text'],
  text: ['text'],
  italic: ['italic', 'text'],
};

/** The weight of a quiet text. */
const REGULAR = 400;

type Unpack = (bytes: Uint8Array) => Uint8Array | false;

const openUnpacker = lazily(async (): Promise<Unpack> => {
  const { default: unpacker } = await import('wawoff2/build/decompress_binding.js');
  await new Promise<void>((resolve) => {
    unpacker.onRuntimeInitialized = resolve;
  });
  return (bytes) => unpacker.decompress(bytes);
});

/** By its two parts: the package's root is a promise, which not every loader of modules hands on. */
const openHarfBuzz = lazily(async (): Promise<HarfBuzz> => {
  const { default: compileHarfBuzz } = await import('harfbuzzjs/hb.js');
  const { default: harfBuzzOf } = await import('harfbuzzjs/hbjs.js');
  return harfBuzzOf(await compileHarfBuzz());
});

const startsWith = (bytes: Uint8Array, ...signature: readonly number[]): boolean =>
  signature.every((byte, i) => bytes[i] === byte);

/** TrueType or OpenType, as it is or out of WOFF2 (W3C); undefined for anything else. */
const fontIn = (bytes: Uint8Array, unpack: Unpack): Uint8Array | undefined => {
  if (startsWith(bytes, 0x77, 0x4f, 0x46, 0x32)) return unpack(bytes) || undefined;
  const isFont = startsWith(bytes, 0, 1, 0, 0) || startsWith(bytes, 0x4f, 0x54, 0x54, 0x4f);
  return isFont ? bytes : undefined;
};

const openFace = (name: string, bytes: Uint8Array, harfbuzz: HarfBuzz, unpack: Unpack): Face | undefined => {
  const unpacked = fontIn(bytes, unpack);
  if (!unpacked) return undefined;
  const face = harfbuzz.createFace(harfbuzz.createBlob(Uint8Array.from(unpacked)), 0);
  const letters = new Set(face.collectUnicodes());
  if (letters.size === 0) return undefined;
  const font = harfbuzz.createFont(face);
  const weight = face.getAxisInfos().wght;
  if (weight && weight.default !== REGULAR) font.setVariations({ wght: REGULAR });
  const outlines = new Map<number, Outline>();
  return {
    name,
    has: (codePoint) => letters.has(codePoint),
    unitsPerEm: face.upem,
    font,
    outline: (glyph) => {
      const known = outlines.get(glyph);
      if (known) return known;
      const outline = outlineOf(font.glyphToPath(glyph));
      outlines.set(glyph, outline);
      return outline;
    },
  };
};

/** A face that is opened when it is first asked for a letter of its ranges. */
const openLater = (file: FaceFile, harfbuzz: HarfBuzz, unpack: Unpack): Face => {
  const opened = lazily((): Face => {
    const face = openFace(file.name, file.bytes(), harfbuzz, unpack);
    if (!face) throw new Error(`Expected a font in ${file.name}`);
    return face;
  });
  return {
    name: file.name,
    has: (codePoint) => inRanges(file.ranges, codePoint) && opened().has(codePoint),
    get unitsPerEm() {
      return opened().unitsPerEm;
    },
    get font() {
      return opened().font;
    },
    outline: (glyph) => opened().outline(glyph),
  };
};

/** `alegreya.woff2` before `alegreya-ext.woff2`: the plain file has what is written most. */
const byLength = (a: Asset, b: Asset): number => a.path.length - b.path.length || (a.path < b.path ? -1 : 1);

const primary = (lang: string): string => lang.toLowerCase().split('-')[0] ?? '';

/**
 * Opens the faces of the templates, the owner's own ones in place of ours, and behind them `more` for other scripts,
 * of which nothing is read until a letter asks for it.
 */
export const openFaces = async (assets: readonly Asset[], more: readonly FaceFile[] = []): Promise<Faces> => {
  const [harfbuzz, unpack] = await Promise.all([openHarfBuzz(), openUnpacker()]);
  const unreadable = new Set<string>();
  const own = (hand: Hand): { readonly files: readonly Asset[]; readonly faces: readonly Face[] } => {
    const files = assets.filter(({ path }) => OWN_FILES[hand].test(path)).sort(byLength);
    const faces = files.flatMap(({ path, bytes }) => {
      const face = openFace(path, bytes, harfbuzz, unpack);
      if (!face) unreadable.add(path);
      return face ?? [];
    });
    return { files, faces };
  };
  const ours = { display: own('display'), text: own('text'), italic: own('italic') };
  const others = more.map((file) => ({ file, face: openLater(file, harfbuzz, unpack) }));
  const orders = new Map<string, readonly Face[]>();
  return {
    digest: digestOf(
      Object.values(ours).map(({ files }) => files.map(({ path, bytes }) => [path, bytes])),
      more.map(({ name, digest }) => [name, digest]),
    ),
    unreadable: [...unreadable],
    harfbuzz,
    inOrder: (hand, lang) => {
      const key = `${hand} ${primary(lang)}`;
      const known = orders.get(key);
      if (known) return known;
      const companions = (wanted: Hand) => others.filter(({ file }) => file.hand === wanted);
      const ofEvery = others.filter(({ file }) => file.hand === undefined);
      const isOf = ({ file }: (typeof others)[number]): boolean => file.lang === primary(lang);
      const order = [
        ...HANDS[hand].flatMap((one) => ours[one].faces),
        ...HANDS[hand].flatMap(companions).map(({ face }) => face),
        ...[...ofEvery.filter(isOf), ...ofEvery.filter((one) => !isOf(one))].map(({ face }) => face),
      ];
      orders.set(key, order);
      return order;
    },
  };
};
