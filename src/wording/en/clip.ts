/** The clip sheet in English. */

/** What the camera does in a shot. */
export type FilmDirection =
  | { readonly film: 'close' | 'box closed' }
  /** `name` as it stands inside a sentence. */
  | { readonly film: 'in use'; readonly name: string }
  /** `lead` is the lead item's kind; `how` a whole sentence. */
  | { readonly film: 'beside'; readonly lead: string; readonly how?: string }
  /** `names` as one run of words. */
  | { readonly film: 'from above'; readonly names: string };

const film = (one: FilmDirection): string => {
  switch (one.film) {
    case 'close':
      return 'Your face or your hands, close, and no box yet.';
    case 'in use':
      return `Fill the frame with it, then let a hand come in and use it: ${one.name}.`;
    case 'beside':
      return `Keep the ${one.lead} in the frame. ${one.how ?? 'Hold it still for a breath.'}`;
    case 'from above':
      return `From straight above, everything as it lay in the box: ${one.names}.`;
    case 'box closed':
      return 'The box, closed, with the address on the screen.';
  }
};

/** The clip sheet's words, and those of its post. */
export const clip = {
  film,
  title: (month: string, theme: string, box: string): string => `Clip sheet of ${month}, ${theme} · ${box}`,
  heading: (month: string): string => `Clip sheet of ${month}`,
  /** Goes on after the clip's length. */
  plan: (shots: number, words: number, pace: number): string =>
    `of upright video, 9:16, in ${shots} shots, with ${words} words at ${pace} a minute.`,
  tooLong: (wanted: number): string => `That is more than the ${wanted} s wanted.`,
  sealed: 'It tells what is in a sealed box: post it after the reveal.',
  /** Of words over a picture: lines, signs a line, signs a second, and those of the fastest here. */
  limits: (lines: number, length: number, speed: number, fastest: string): string =>
    `Words over the picture stand in at most ${lines} lines of ${length} signs, long enough to be read at ${speed} signs a second; the fastest here are read at ${fastest}. Keep them above the lowest quarter of the frame, where players put their own.`,
  toBeSaid: 'To be said',
  shots: 'Shots',
  shotTitles: { hook: 'The hook', item: '', whole: 'The whole box', call: 'The call' },
  /** Seconds: "4.8 s". */
  seconds: (seconds: string): string => `${seconds} s`,
  from: (start: string, length: string): string => `from ${start}, ${length}`,
  silent: 'No words.',
  still: 'Still:',
  stillText: 'Its text:',
  /** Of a photo much wider than tall; `left`: the share of it that is seen, "24%". */
  wideStill: (left: string): string =>
    `It is much wider than tall: of it ${left} is seen in an upright picture. Film this shot, or take a taller photo.`,
  /** Followed by the two files, each with its format. */
  files: { begin: 'The words with their times:', webVtt: '(WebVTT) and', subRip: '(SubRip).' },
  post: {
    heading: 'The post',
    length: (signs: number): string => `${signs} signs.`,
    /** `names` are of people who had the box free or cheaper. */
    given: (names: readonly string[]): string =>
      `If you add the words of ${names.join(', ')}, say that the box was free or cheaper for them.`,
    contents: (theme: string, month: string, box: string): string =>
      `${theme}, the ${month} box from ${box}:`,
    cautions: 'Please note',
  },
};
