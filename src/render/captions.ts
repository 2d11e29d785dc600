/** Timed text as files: WebVTT (W3C) and SubRip. */

/** Words that are shown for a time. */
export interface TimedText {
  /** Milliseconds from the start. */
  readonly start: number;
  readonly end: number;
  /** One line an entry. */
  readonly lines: readonly string[];
  /** Unique in its file. */
  readonly id: string;
}

const clock = (milliseconds: number, point: string): string => {
  const two = (number: number): string => String(number).padStart(2, '0');
  const seconds = Math.floor(milliseconds / 1000);
  const parts = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60].map(two);
  return `${parts.join(':')}${point}${String(milliseconds % 1000).padStart(3, '0')}`;
};

/** Text that a cue may hold: WebVTT §4.2.2 (`&` and `<` mean something, `-->` may not stand there, nor an empty line). */
const vttLine = (line: string): string =>
  line.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/\s+/g, ' ').trim();

/** A WebVTT file (W3C Candidate Recommendation 2019, §4.1): captions, or chapters where each text is a title. */
export const webVtt = (texts: readonly TimedText[]): string => {
  const cues = texts.map(
    ({ id, start, end, lines }) =>
      `${id}\n${clock(start, '.')} --> ${clock(end, '.')}\n${lines.map(vttLine).join('\n')}`,
  );
  return `${['WEBVTT', ...cues].join('\n\n')}\n`;
};

/** SubRip knows no escapes: what it could take for a time or a tag is written otherwise. */
const srtLine = (line: string): string =>
  line.replace(/-->/g, '→').replace(/</g, '‹').replace(/>/g, '›').replace(/\s+/g, ' ').trim();

/** A SubRip file. The format has no standard: counters from 1, a comma before the milliseconds, CRLF. */
export const subRip = (texts: readonly TimedText[]): string =>
  texts
    .map(({ start, end, lines }, i) =>
      [`${i + 1}`, `${clock(start, ',')} --> ${clock(end, ',')}`, ...lines.map(srtLine), ''].join('\r\n'),
    )
    .join('\r\n');
