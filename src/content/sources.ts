/** What the edge hands to the core: every file that matters, already read. No disk from here on. */

/** A text file of the content folder. `path` is relative to it, with forward slashes. */
export interface TextSource {
  readonly path: string;
  readonly text: string;
}

/** A picture file, as the edge's probe found it. */
export interface PhotoSource {
  readonly path: string;
  /** SHA-256 of the file's bytes, lower-case hex: what published names and the cache are keyed by. */
  readonly hash: string;
  /** CSS pixels after the camera's orientation was applied; 0 when the file could not be read. */
  readonly width: number;
  readonly height: number;
  /** The picture's mean colour, `#rrggbb`: stands in its place until it has loaded. */
  readonly tint: string;
  /** The colour that fills most of the picture's middle, `#rrggbb`. */
  readonly dominant: string;
  /** Variance of the Laplacian where the photo is sharpest (`io/sharpness.ts`), a whole number; absent where nobody looked. */
  readonly sharpness?: number;
  /** Why the picture cannot be used, in words for its owner ("is cut short", "is not a picture"). */
  readonly problem?: string;
  /** What mends that, where it is not to copy the photo again. */
  readonly fix?: string;
}
