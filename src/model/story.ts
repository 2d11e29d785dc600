/** What the model hangs on Markdown nodes once links and pictures are resolved. */
import type { Picture } from './box.ts';

/** The record that a relative Markdown link led to. */
export interface Target {
  readonly cycle: string;
  /** The item's slug; without it the link is to the article as a whole. */
  readonly item?: string;
}

declare module 'mdast' {
  interface LinkData {
    target?: Target;
    /** The link led to something that may not be shown yet: keep its words, drop its address. */
    dropped?: boolean;
  }
  interface ImageData {
    picture?: Picture;
  }
}
