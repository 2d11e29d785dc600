declare module 'jsonld' {
  interface Loaded {
    readonly contextUrl: string | undefined;
    readonly documentUrl: string;
    readonly document: object;
  }
  interface Options {
    readonly documentLoader: (url: string) => Promise<Loaded>;
    readonly safe?: boolean;
  }
  const jsonld: { expand(document: object, options: Options): Promise<unknown[]> };
  // biome-ignore lint/style/noDefaultExport: the package has one
  export default jsonld;
}
declare module 'n3' {
  interface Term {
    readonly value: string;
  }
  interface Quad {
    readonly subject: Term;
    readonly predicate: Term;
    readonly object: Term;
  }
  export class Parser {
    constructor(options: { format: string });
    parse(text: string): Quad[];
  }
}
declare module 'webvtt-parser' {
  interface Cue {
    readonly id: string;
    readonly startTime: number;
    readonly endTime: number;
    readonly text: string;
  }
  interface Parsed {
    readonly cues: readonly Cue[];
    readonly errors: readonly { readonly line: number; readonly message: string }[];
  }
  export class WebVTTParser {
    parse(text: string, mode: 'subtitles/captions/descriptions' | 'chapters' | 'metadata'): Parsed;
  }
}
declare module 'nspell' {
  interface Spelling {
    readonly correct: (word: string) => boolean;
  }
  // biome-ignore lint/style/noDefaultExport: the package has one
  export default function nspell(dictionary: object): Spelling;
}
