/** When a photo was taken. */

/** EXIF's form of a moment, in the time of the camera: CIPA DC-008-2019 (Exif 2.32), 4.6.4 and 4.6.5. */
const EXIF_DATE =
  /(?<!\d)((?:19|20)\d\d):(0[1-9]|1[0-2]):([0-2]\d|3[01]) ([01]\d|2[0-3]):([0-5]\d):([0-5]\d)(?!\d)/g;

/** What phones and messengers put into a file's name: IMG_20260312_101112, 2026-03-12 at 10.11.12. */
const NAME_DATE =
  /(?<!\d)(20\d\d)[-_. ]?(0[1-9]|1[0-2])[-_. ]?([0-2]\d|3[01])(?:[-_T ]|\s?at\s?|, )+([01]\d|2[0-3])[-_.:h ]?([0-5]\d)[-_.:m ]?([0-5]\d)?/;

const momentOf = (found: RegExpExecArray | RegExpMatchArray): number => {
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0, second = 0] = found
    .slice(1)
    .map((part) => Number(part ?? 0));
  return Date.UTC(year, month - 1, day, hour, minute, second);
};

/**
 * When a photo was taken: the earliest moment that its EXIF states, which is never after it was edited; else what its
 * name says; else `changed`, when its file was last changed. In milliseconds, of the camera's own clock: good for an
 * order and nothing else.
 */
export const takenAt = (bytes: Uint8Array, name: string, changed: number): number => {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
  const stated = [...text.matchAll(EXIF_DATE)].map(momentOf);
  if (stated.length > 0) return stated.reduce((first, one) => Math.min(first, one));
  const named = NAME_DATE.exec(name);
  return named ? momentOf(named) : changed;
};
