/** The shoot list in English. */
import { capital, counted, listed } from '../../text/counting-words.ts';

type View = 'open' | 'closed' | 'alone' | 'with lead' | 'in use' | 'hands';
type Shape = 'upright' | 'wide';

interface Size {
  readonly width: number;
  readonly height: number;
}

const size = ({ width, height }: Size): string => `${width} × ${height}`;

/** The shoot list's words. */
export const shootList = {
  title: (month: string, theme: string, box: string): string => `Shoot list of ${month}, ${theme} · ${box}`,
  heading: (month: string): string => `Shoot list of ${month}`,
  /** `there` of `all` photographs; `needed` are missing that pieces need, `others` that would help. */
  sum: (there: number, all: number, needed: number, others: number): string => {
    const missing = [
      ...(needed > 0 ? [`${counted(needed, 'photograph')} that the pieces need`] : []),
      ...(others > 0 ? [`${others} that would help`] : []),
    ];
    return missing.length === 0
      ? `All ${all} photographs are there.`
      : `${there} of ${all} photographs are there. Still to take: ${listed(missing)}.`;
  },
  sealed: 'It names what is in a sealed box.',
  once: 'Taken once, between packing and the reveal, for every piece.',
  toTake: 'Still to take',
  needed: 'The pieces need',
  helpful: 'Would help',
  there: 'There already',
  takes: 'Takes of the film',
  unplaced: 'Not placed yet',
  room: 'Room to leave',
  judged: 'How this is known',
  views: {
    open: (): string => 'The box, open',
    closed: (): string => 'The box, closed',
    alone: (name: string): string => name,
    'with lead': (name: string, lead: string): string => `${name}, with the ${lead}`,
    'in use': (name: string): string => `${name}, in use`,
    hands: (): string => 'Hands, and no box yet',
  } satisfies Record<View, (name: string, lead: string) => string>,
  /** What to mind; `lead` is the lead item's kind. */
  hints: {
    open: 'From above, everything as it lies.',
    closed: 'As it arrives, the address side away.',
    alone: '',
    'with lead': '',
    'in use': 'A hand doing what it is for.',
    hands: 'Close, or your face.',
  } satisfies Record<View, string>,
  shapes: { upright: 'upright', wide: 'wide' } satisfies Record<Shape, string>,
  /** "upright, 831 × 1477 pixels or more, at best 1080 × 1920" */
  sizes: (shape: string, least: Size, best: Size): string =>
    size(least) === size(best)
      ? `${shape}, ${size(least)} pixels or more`
      : `${shape}, ${size(least)} pixels or more, at best ${size(best)}`,
  /** `pieces` by name. */
  forPieces: (pieces: readonly string[]): string => `for ${listed(pieces)}`,
  /** What stands in the way of a photo that is there; `pieces` go without it. */
  insteadOf: (file: string, faults: readonly string[], pieces: readonly string[]): string =>
    `${file} is there, but ${listed(faults)}: not for ${listed(pieces)}.`,
  faults: {
    shape: (shape: string): string => `cut to ${shape} too little of it is left`,
    small: (shown: Size, wanted: Size): string =>
      `too small: ${size(shown)} of its pixels are seen where ${size(wanted)} are wanted`,
    blurred: (): string => 'blurred',
  },
  sharpness: {
    sharp: 'sharp',
    doubtful: 'perhaps not sharp',
    blurred: 'blurred',
    unknown: '',
  },
  /** Of a photo: its pixels and its sharpness, "1280 × 1600, sharp". */
  photo: (photo: Size, sharpness: string): string =>
    sharpness === '' ? size(photo) : `${size(photo)}, ${sharpness}`,
  byWords: 'by its words',
  noneUnplaced: 'Every photo of the folder is in a record.',
  unplacedNote: (count: number): string =>
    `${capital(counted(count, 'photo'))} in the cycle’s folder that no record names. Name ${count === 1 ? 'it' : 'each'} under the thing that it shows.`,
  roomUpright: (top: string, bottom: string): string =>
    `Upright: keep the thing between the hatched strips. Words stand in the top ${top}, the apps’ own buttons in the bottom ${bottom}.`,
  roomWide: 'Wide: keep the thing in the middle half, because links and lists cut the sides.',
  roomAround: 'A hand’s breadth of plain ground all round lets one photograph serve every shape.',
  takesNote: (seconds: string): string =>
    `Hold the phone upright. Begin two seconds before and go on two seconds after; together ${seconds} are seen.`,
  /** Seconds: "4.8 s". */
  seconds: (seconds: string): string => `${seconds} s`,
  shotTitles: { hook: 'The hook', item: '', whole: 'The whole box', call: 'The call' },
  judgedNote:
    'A photo counts as what its place in a record says; “by its words” means that its picture text or caption says so, and nobody looked. Sharpness is measured where the photo is sharpest (variance of the Laplacian). What it calls blurred is blurred; of slightly soft photos it lets about one in five pass, so look at each once in full size.',
};
