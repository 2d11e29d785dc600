/** The letter in English, and the sheet for sending it. */
import type { CallKind } from '../../model/box.ts';
import { capital, numberWord } from '../../text/counting-words.ts';

/** What stands in the place of what box.md does not say, to be seen in a test letter before anybody else gets it. */
const gaps = {
  postalAddress: '[your postal address]',
  unsubscribe: '[your sending service’s way to unsubscribe]',
};

const minutes = (count: number | undefined): string => (count ? `, ${count} minutes` : '');

/** Disclosed beside a voice (US 16 CFR 255.5). */
const given = '(had this box free or at a lower price)';

/** What a list of mail shows of a letter. */
const lines = {
  /** `lead` by its short name, and how many other things there are. */
  leadSubject: (lead: string, others: number): string =>
    others < 1
      ? lead
      : `${lead}, and ${numberWord(others)} ${others === 1 ? 'thing that goes' : 'things that go'} with it`,
  themeSubject: (theme: string, month: string): string => `${theme}: what was in the ${month} box`,
  /** "Five things, how they go together, and a look at the next box." */
  promise: (things: number, hasPeek: boolean): string => {
    const parts = [
      things === 1 ? 'One thing' : `${capital(numberWord(things))} things`,
      ...(things > 1 ? ['how they go together'] : []),
      ...(hasPeek ? ['and a look at the next box'] : []),
    ];
    return `${parts.join(', ')}.`;
  },
};

/** The letter as a page. */
const page = {
  /** The window's title of what is only to be looked at. */
  preview: (subject: string): string => `Preview: ${subject}`,
  label: (month: string, theme: string): string => `The ${month} box · ${theme}`,
  watch: 'Watch the live opening again',
  minutes,
  read: 'Read the whole story',
  lead: ', the piece this box was built around',
  wholeBox: 'The whole box',
  voices: 'From those who opened it',
  quoted: (voice: string): string => `“${voice}”`,
  by: (name: string): string => `— ${name}`,
  given,
  peek: 'A look at the next box',
  calls: {
    join: 'Have the next one',
    waitList: 'Wait for a place',
    spare: 'Spare pieces',
  } satisfies Record<CallKind, string>,
  price: (price: string): string => `${price} a box.`,
  places: (count: number): string => `${count} places left`,
  unsubscribe: 'No more of these letters',
  unsubscribeBy: 'No more of these letters:',
};

/** The letter as plain text. */
const text = {
  greeting: 'Hello,',
  read: (month: string, theme: string): string =>
    `The whole story of the ${month} box, ${theme}, is here to read:`,
  watch: (length: number | undefined): string => `Watch the live opening again${minutes(length)}:`,
  contents: (things: number): string =>
    things > 1 ? 'Here is what was in it, and how it goes together.' : 'Here is what was in it.',
  lead: (line: string): string => `The piece this box was built around. ${line}`,
  voices: 'From those who opened it:',
  quoted: page.quoted,
  by: (name: string, wasGiven: boolean): string => `— ${name}${wasGiven ? ` ${given}` : ''}`,
  peek: 'And a look at the next box:',
  offer: (description: string, price: string | undefined): string =>
    `${description}${price === undefined ? '' : ` ${page.price(price)}`}`,
  call: (words: string, places: number | undefined): string =>
    `${words}${places ? ` (${page.places(places)})` : ''}:`,
  unsubscribe: 'No more of these letters:',
};

/** The sheet for whoever sends it. */
const sheet = {
  title: (month: string, box: string): string => `Sending the letter · ${month} · ${box}`,
  heading: (month: string): string => `Sending the letter of ${month}`,
  sealed:
    'Its pictures and the article it leads to are in the site only after that: build and publish first, then send.',
  subjects: 'Subject',
  preheaders: 'Preheader, the line that lists of mail show after it',
  wording: 'Wording',
  characters: 'Characters',
  chosen: '(in the letter)',
  cutOff: ', cut off in most lists',
  /** Around what is to be written, and after it. */
  another: {
    begin: 'For another, write',
    end: 'into cycle.md and build again. Lists on a desk show about 60 characters of a subject, phones about 40.',
  },
  how: 'How to send it',
  publishFirst: (pictures: number): string =>
    `Publish the site first: the letter’s ${pictures} pictures are fetched from it, and its links lead to it.`,
  /** Around the three files. */
  forms: {
    begin: 'Give your sending service',
    plain: 'and, as its plain form,',
    message: '; or the whole message,',
    end: (from: string): string =>
      `, if it takes one. The message comes from ${from} and is addressed to nobody: the service puts the reader in.`,
  },
  wayOut: {
    address: 'The way out is',
    oneClick:
      ', which mail programs also offer as a button of their own. It is the same for every reader; a service that has one for each puts its own there.',
    placeholder: 'The way out is the placeholder',
    fill: ', which your service must fill. See that it did.',
    none: 'There is no way out in the letter yet.',
    write: 'Write',
    into: 'into box.md: an https address, or the placeholder that your service fills.',
  },
  /** Around the links that are to be tried. */
  test: {
    begin: 'Send it to yourself. Look at it on a phone and with pictures off, follow the links',
    /** Before the first of the two links. */
    first: 'to',
    filmWords: 'the film',
    second: 'and to',
    callWords: (words: string): string => `“${words}”`,
    end: ', and then send it to everybody.',
  },
  /** Of the HTML, and at most, both with their unit. */
  size: (html: string, most: string): string =>
    `letter.html is ${html}; some programs cut off what is longer than ${most}. The pictures are not counted.`,
  kilobytes: (size: string): string => `${size} kB`,
  looks: {
    heading: 'As it looks',
    /** Around the preview, before and after the name of what is to be sent. */
    preview: {
      begin: 'Shown here is',
      middle:
        'whose pictures lie beside it, so that they can be seen before the site is published. What you send is',
      end: ': its pictures are the site’s.',
    },
    published: 'Its pictures come from the published site.',
    desk: 'On a desk',
    deskTitle: 'The letter on a desk',
    phone: 'On a phone',
    phoneTitle: 'The letter on a phone',
  },
};

/** The letter's words, by the form that says them. */
export const letter = { gaps, lines, page, text, sheet };
