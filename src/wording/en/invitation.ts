/** The invitation to a live in English: the post's sentences and the paper that they stand on. */

/** Sentences of a post. Months are names; `next` is the month of the box that a peek is given of, where there is one. */
export interface InvitationWords {
  readonly title: (box: string, month: string) => string;
  readonly short: (month: string, when: string) => string;
  readonly middle: (month: string, when: string, next: string | undefined) => string;
  /** Paragraphs, the most needed ones first. */
  readonly long: (month: string, when: string, next: string | undefined) => readonly string[];
  readonly promise: (next: string) => string;
}

const promise = (next: string): string => `At the end there is a first look at the ${next} box.`;

const post: InvitationWords = {
  title: (box, month) => `${box}: the ${month} box, opened live`,
  short: (month, when) => `The ${month} box, opened live: ${when}.`,
  middle: (month, when, next) =>
    `We open the ${month} box live on ${when}${next === undefined ? '' : `, and at the end there is a look at the ${next} box`}.`,
  long: (month, when, next) => [
    `On ${when} we open the ${month} box live: one thing at a time, who made it, what it is for, and what went wrong on the way here.${next === undefined ? '' : ` ${promise(next)}`}`,
    'If yours has come, bring it to the table. If you have none, come all the same, and ask whatever you like while we are at it.',
  ],
  promise,
};

/** The invitation's words. */
export const invitation = {
  post,
  title: (month: string, box: string): string => `Invitation · ${month} · ${box}`,
  heading: (month: string): string => `Come and see the ${month} box`,
  when: (day: string, isToCome: boolean): string => `The live ${isToCome ? 'is' : 'was'} on ${day}.`,
  use: 'Nothing that the box holds is named here. A click takes a whole text; copy it into the post.',
  /** Names of the three lengths, and the same inside a sentence. */
  lengths: [
    { heading: 'Short', copy: 'Copy the short text' },
    { heading: 'Medium', copy: 'Copy the medium text' },
    { heading: 'Long', copy: 'Copy the long text' },
  ],
  /** Graphemes it has, and how many it was to have at most. */
  characters: (length: number, most: number): string =>
    `${length} characters${length > most ? `, more than ${most}` : ''}`,
  copy: 'Copy',
  calendars: 'For calendars',
  /** Begins with the file's name. */
  event: (minutes: number, reminder: number): string =>
    `puts the live into a calendar in everybody’s own time, for ${minutes} minutes, and reminds ${reminder} minutes before. Attach it to a message, or put it on your site and link to it from the post.`,
  /** Around the two keys, `reveal` and `moved`. */
  moving: {
    begin: 'If the date moves, change',
    middle: 'in cycle.md and add the old one to',
    end: ': calendars that have the event take the new time because of it.',
  },
  moved: (times: number): string => `It has been moved ${times === 1 ? 'once' : `${times} times`}.`,
  findings: 'To look at',
  /** What the page's script says; it stands in quotes there, so no word of it may have a straight quote. */
  script: {
    copied: 'Copied.',
    refused: 'The browser did not let it be copied: click the text, and copy it yourself.',
  },
};
