/** The desk in English: its pieces, what is made on request, and the comparison with what is served. */
import { counted } from '../../text/counting-words.ts';

/** The pieces, the film and the cards among them. */
export const pieces = {
  lead: 'Every form in which this cycle is told, to look at, to copy and to save.',
  widths: { phone: 'as on a phone', wide: 'as on a laptop' },
  schemes: { light: 'in the light', dark: 'in the dark' },
  widthOf: 'How wide',
  coloursOf: 'In which colours',
  seen: (name: string, width: string): string => `${name}, ${width}`,
  papers: 'Papers',
  /** The letter's own paper, beside the letter itself. */
  sending: 'subjects and first lines',
  copy: 'Copy',
  copied: 'Copied.',
  save: 'Save',
  none: 'There are no papers before what is to mend is mended.',
  film: {
    lead: (seconds: number): string =>
      `An upright film of ${counted(seconds, 'second')}, out of the clip sheet.`,
    notYet:
      'Of the words and photos as they are now it is not made yet. You can go on working while it is made.',
    make: 'Make the film',
    again: 'Make it again',
    at: (done: number, total: number): string => `${Math.floor((done / total) * 100)} % is made`,
    stopped: 'It was stopped.',
    failed: (said: string): string => `It could not be made: ${said}.`,
    save: 'Save the film',
    ready: 'Ready puts it into the back room too.',
    subtitles: 'Its words',
  },
  cards: {
    drawn: (done: number, total: number): string =>
      done === total ? `All ${total} pictures are drawn.` : `${done} of ${total} pictures are drawn.`,
    draw: 'Draw the cards',
    at: (done: number, total: number): string => `${done} of ${total} drawn`,
    stopped: 'It was stopped.',
    failed: (said: string): string => `They could not be drawn: ${said}.`,
    blank: 'not drawn yet',
    save: (shape: string): string => `Save: ${shape.toLowerCase()}`,
    copyText: 'Copy the picture text',
    copyLink: 'Copy the link',
  },
};

/** Work that goes on. */
export const work = {
  begun: 'At work …',
  stop: 'Stop it',
  ask: 'See how far it is',
};

/** What an address serves, held against the site. */
export const compare = {
  heading: 'What the world sees',
  lead: 'Asks an address for every file of the site as it was made here the last time, and says which differ. Nothing is asked before you press.',
  address: 'Address of the site',
  press: 'Compare',
  none: 'There is no site to compare before it is readied.',
  wrong: 'That is no address of a site. Write one as https://tin.example/.',
  at: (done: number, total: number): string => `${done} of ${counted(total, 'file')} compared`,
  told: (address: string): string => `What ${address} serves:`,
  same: (count: number, of: number): string =>
    count === of
      ? `All ${counted(of, 'file')} as they were made here.`
      : `${count} of ${counted(of, 'file')} as they were made here.`,
  other: (count: number): string => `${counted(count, 'file')} ${count === 1 ? 'differs' : 'differ'}:`,
  missing: (count: number): string => `${counted(count, 'file')} ${count === 1 ? 'is' : 'are'} not there:`,
  unanswered: (count: number): string => `Of ${counted(count, 'file')} nobody knows, because no answer came:`,
  nobody: 'No answer came from there.',
  upload: 'Put these up again, as they lie in the folder.',
  stopped: 'The comparison was stopped.',
  failed: (said: string): string => `The comparison failed: ${said}.`,
  more: (count: number): string => `and ${count} more`,
};
