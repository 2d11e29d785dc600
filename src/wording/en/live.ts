/** The live in English: what is said where neither the owner nor the stories give the words, and the run sheet. */
import type { BeatKind, NamedKind } from '../../model/beat-names.ts';
import type { Chapter } from '../../model/chapters.ts';
import type { Direction, StockWords } from '../../model/live-words.ts';
import type { Spelling } from './spelling.ts';

/** Titles on the run sheet; an item's beat bears the item's name. */
const beatTitles: Readonly<Record<Exclude<BeatKind, 'item'>, string>> = {
  stage: 'Set the stage',
  hook: 'The hook',
  greet: 'Who is here?',
  about: 'What this box is for',
  chosen: 'How it was chosen',
  mishap: 'The mishap',
  questions: 'Questions',
  whole: 'The whole box',
  peek: 'The peek',
  call: 'The call',
  goodbye: 'Thanks and goodbye',
};

/** Titles of a recording's chapters, for people who were not there. */
const chapterTitles: Readonly<Record<NamedKind, string>> = {
  hook: 'The beginning',
  greet: 'Who is here',
  about: 'What this box is',
  chosen: 'How it was chosen',
  mishap: 'What went wrong',
  questions: 'Questions',
  whole: 'The whole box',
  peek: 'A look at the next box',
  call: 'How to get the next one',
  goodbye: 'Goodbye',
};

const described = (name: string, description: string): string =>
  /^(?:An?|The|One|Our) /.test(description)
    ? `${name} is ${description.charAt(0).toLowerCase()}${description.slice(1)}`
    : description;

const stock: StockWords = {
  greet: [
    'Hello, and come in. Where are you watching from?',
    'And has yours arrived? Tell me what you unpacked first.',
  ],
  about: (name, description) => `If this is your first time here: ${described(name, description)}`,
  question: (earlier, later, isEaten) => {
    if (earlier === undefined) return `What would you do with the ${later} first?`;
    return `Of the ${earlier} and the ${later}: which would you ${isEaten ? 'try first, and with what' : 'use first, and where'}?`;
  },
  whole: (names) => `And that is all of it, on one table. ${names}.`,
  call: ({ text, places }, address) => [
    `${text}: ${address}.`,
    ...(places === undefined ? [] : [places === 1 ? 'There is one place.' : `There are ${places} places.`]),
  ],
  goodbye: (month, day) => [
    'Thank you for coming, and for everything you asked.',
    ...(month === undefined
      ? []
      : [`The ${month} box ${day === undefined ? 'comes next' : `is opened on ${day}`}.`]),
    month === undefined ? 'Goodbye.' : 'Until then, goodbye.',
  ],
};

const direction = (one: Direction, { colour }: Spelling): string => {
  switch (one.direction) {
    case 'own':
      return one.text;
    case 'box closed':
      return 'The box, closed again as it was posted.';
    case 'nearest':
      return `Nearest your hand: ${one.name}.`;
    case 'in order':
      return `In the order of telling: ${one.names.join('; ')}.`;
    case 'lid':
      return 'A lid and a damp cloth, in reach of the flame.';
    case 'board':
      return 'A board to cut on.';
    case 'address card':
      return `A card with the address, large: ${one.address}`;
    case 'plain clothes':
      return `Wear one plain ${colour} that the things stand out against, and nothing that rattles.`;
    case 'look up':
      return 'Look up. The box stays shut.';
    case 'open box':
      return 'Open the box while they type.';
    case 'hold up':
      return one.beside === undefined ? 'Hold it up.' : `Hold it up, then put it by the ${one.beside}.`;
    case 'read answers':
      return 'Read two or three answers out, with the names.';
    case 'everything':
      return 'Everything into the picture, as it lay in the box.';
    case 'picture':
      return `Show the picture: ${one.alt}`;
    case 'empty hands':
      return 'Hands empty. Say it slowly.';
    case 'hold card':
      return `Hold up the card: ${one.address}`;
  }
};

/** How a live fills the length that was wanted, where anybody said so; each length as a clock shows it. */
type LengthWords =
  | { readonly plan: 'open' }
  | { readonly plan: 'too long'; readonly wanted: string; readonly over: string }
  /** `needed`: of words and handling; `left`: what is left over of the length. */
  | { readonly plan: 'with room'; readonly needed: string; readonly left: string };

/** What the run sheet and the recording's chapters say. */
export const live = (spelling: Spelling) => ({
  stock,
  /** Said of an item whose cautions are an earlier item's, word for word. */
  sameCautions: (earlier: string): string => `All that was said of “${earlier}” holds here too.`,
  direction: (one: Direction): string => direction(one, spelling),
  beatTitle: ({
    kind,
    item,
  }: {
    readonly kind: BeatKind;
    readonly item?: { readonly name: string };
  }): string => (kind === 'item' ? (item?.name ?? '') : beatTitles[kind]),
  chapterTitle: ({ kind, item, name }: Pick<Chapter, 'kind' | 'item' | 'name'>): string =>
    kind ? chapterTitles[kind] : (item ?? name),
  title: (month: string, theme: string, box: string): string => `Run sheet of ${month}, ${theme} · ${box}`,
  heading: (month: string): string => `Run sheet of ${month}`,
  /** Goes on after how long it lasts. */
  length: (length: LengthWords): string => {
    switch (length.plan) {
      case 'open':
        return 'of words and handling. Say how long it should last with “minutes” under “live” in cycle.md.';
      case 'too long':
        return `of words and handling, which is ${length.over} more than the ${length.wanted} wanted.`;
      case 'with room':
        return `as wanted: words and handling take ${length.needed}, and the other ${length.left} are shared out for questions and looking.`;
    }
  },
  pace: (words: number): string =>
    `Counted at ${words} words a minute. What stands beside a beat in small type is where its words come from, and the field of cycle.md where you may write others; “timed as” is its name in`,
  forReplay: ', for when the recording is there.',
  lead: 'Lead me through it',
  leadNote: 'One beat a screen, with a clock.',
  before: 'Before',
  room: (length: string): string => `with ${length} of room`,
  silent: 'Nothing to say yet.',
  timedAs: 'timed as',
  chapters: {
    heading: 'Chapters of the recording',
    use: 'For the place where the recording is kept: copy the lines, or give it',
  },
  findings: 'To look at before the live',
  fix: 'Fix:',
  bar: {
    label: 'Clock and beats',
    back: 'Back',
    next: 'Next',
    start: 'Start the clock',
    leave: 'Whole sheet',
  },
  /** What the page's script says; it stands in quotes there, so no word of it may have a straight quote. */
  script: {
    beforeClock: 'before the clock',
    planned: (from: string, to: string): string => `planned ${from} to ${to}`,
    ahead: (time: string): string => `${time} ahead`,
    behind: (time: string): string => `${time} behind`,
    onTime: (left: string): string => `on time, ${left} left`,
    /** Comes before what the clock says. */
    beat: (number: string, of: string): string => `Beat ${number} of ${of},`,
    start: 'Start the clock',
    stop: 'Stop the clock',
  },
});
