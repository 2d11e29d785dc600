/** The faces that drawings are set in, opened from the bytes of their files. */

/** Opened faces, in the order in which they are asked for a letter. */
export interface Faces {
  /** Of all their bytes: another face gives other drawings. */
  readonly digest: string;
}
