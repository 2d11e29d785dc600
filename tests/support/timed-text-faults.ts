/** Timed text read by others' programs, and our own checks for what those let pass. */
import { createRequire } from 'node:module';
import { WebVTTParser } from 'webvtt-parser';

const { default: srtFaults } = createRequire(import.meta.url)('srt-validator') as {
  default: (text: string) => readonly { message: string; lineNumber: number }[];
};

interface Shown {
  readonly id: string;
  readonly start: number;
  readonly end: number;
}

/** webvtt-parser lets cues that overlap and ids that repeat pass; chapters and captions of ours have neither. */
const ownFaults = (cues: readonly Shown[]): string[] => [
  ...cues.flatMap((cue, i) => {
    const before = cues[i - 1];
    return before && cue.start < before.end ? [`${cue.id} begins before ${before.id} ends`] : [];
  }),
  ...cues
    .filter(({ id }, i) => cues.findIndex((other) => other.id === id) < i)
    .map(({ id }) => `${id} twice`),
];

/** webvtt-parser, by an editor of the W3C specification, and our own. */
export const vttFaults = (text: string, mode: 'subtitles/captions/descriptions' | 'chapters'): string[] => {
  const { cues, errors } = new WebVTTParser().parse(text, mode);
  return [
    ...errors.map(({ line, message }) => `${line}: ${message}`),
    ...ownFaults(cues.map(({ id, startTime, endTime }) => ({ id, start: startTime, end: endTime }))),
    ...(cues.length === (text.match(/-->/g)?.length ?? 0) ? [] : ['a cue was not read']),
    ...(/\r/.test(text) || !text.endsWith('\n') ? ['line ends'] : []),
  ];
};

/** srt-validator; SubRip has no standard. */
export const subRipFaults = (text: string): string[] =>
  srtFaults(text.replace(/\r\n/g, '\n')).map(({ message, lineNumber }) => `${lineNumber}: ${message}`);

export const vttCues = (text: string) =>
  new WebVTTParser().parse(text, 'subtitles/captions/descriptions').cues;
