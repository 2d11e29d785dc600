/** HarfBuzz compiled to WebAssembly: what is used of it. Numbers are in units of the font. */
declare module 'harfbuzzjs/hbjs.js' {
  interface Handle {
    readonly ptr: number;
    destroy(): void;
  }
  export interface Face extends Handle {
    readonly upem: number;
    collectUnicodes(): Uint32Array;
    getAxisInfos(): Readonly<Record<string, { readonly min: number; readonly default: number }>>;
  }
  export interface Font extends Handle {
    /** Path data (SVG), y upwards, of absolute M, L, Q, C and Z. */
    glyphToPath(glyph: number): string;
    glyphHAdvance(glyph: number): number;
    setVariations(variations: Readonly<Record<string, number>>): void;
  }
  interface Glyph {
    /** The glyph's number, and the place in the text (UTF-16) where its cluster begins. */
    readonly g: number;
    readonly cl: number;
    readonly dx: number;
    readonly dy: number;
    readonly ax: number;
    readonly ay: number;
  }
  interface Buffer extends Handle {
    addText(text: string, from?: number, length?: number): void;
    setDirection(direction: 'ltr' | 'rtl'): void;
    /** ISO 15924. */
    setScript(script: string): void;
    setLanguage(language: string): void;
    json(): readonly Glyph[];
  }
  export interface HarfBuzz {
    createBlob(bytes: Uint8Array): Handle;
    createFace(blob: Handle, index: number): Face;
    createFont(face: Face): Font;
    createBuffer(): Buffer;
    /** `features` as in "-liga,-clig". */
    shape(font: Font, buffer: Buffer, features?: string): void;
  }
  // biome-ignore lint/style/noDefaultExport: describes a package that has one
  export default function harfBuzzOf(compiled: unknown): HarfBuzz;
}

declare module 'harfbuzzjs/hb.js' {
  // biome-ignore lint/style/noDefaultExport: describes a package that has one
  export default function compileHarfBuzz(): Promise<unknown>;
}

declare module 'wawoff2/build/decompress_binding.js' {
  const unpacker: {
    onRuntimeInitialized?: () => void;
    /** False where the bytes are no WOFF2. */
    decompress(bytes: Uint8Array): Uint8Array | false;
  };
  // biome-ignore lint/style/noDefaultExport: describes a package that has one
  export default unpacker;
}

declare module 'linebreak' {
  // biome-ignore lint/style/noDefaultExport: describes a package that has one
  export default class LineBreaker {
    constructor(text: string);
    nextBreak(): { readonly position: number; readonly required: boolean } | null;
  }
}

/** The package's own types take it for a module of another kind than Node does. */
declare module 'bidi-js' {
  interface Bidi {
    getEmbeddingLevels(
      text: string,
      base: 'ltr' | 'rtl' | 'auto',
    ): { readonly levels: Uint8Array; readonly paragraphs: readonly { readonly level: number }[] };
  }
  // biome-ignore lint/style/noDefaultExport: describes a package that has one
  export default function bidiFactory(): Bidi;
}
