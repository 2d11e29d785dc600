/** The back room in English: its first page, and what its papers share. */
import type { PieceState } from '../../model/carried.ts';

const states: Readonly<Record<PieceState, string>> = {
  there: 'yes',
  absent: 'absent',
  sealed: 'sealed',
  'not made': 'not made',
  'not asked': '',
  'kept still': 'kept still',
  'given away': 'given away',
};

const counted = (pictures: number): string =>
  pictures === 0 ? 'no picture' : `${pictures} ${pictures === 1 ? 'picture' : 'pictures'}`;

/** An item's spare pieces: how many at which price, or why none are offered. */
type SpareState =
  | { readonly state: 'on sale'; readonly count: number; readonly price: string }
  | { readonly state: 'sold out' | 'past' };

const spare = (pieces: SpareState): string => {
  switch (pieces.state) {
    case 'on sale':
      return `${pieces.count} spare at ${pieces.price}`;
    case 'sold out':
      return 'spare pieces all sold';
    case 'past':
      return 'spare pieces no longer for sale';
  }
};

/** The words of the back room's first page, and those that its papers share. */
export const backRoom = {
  of: (box: string): string => `Back room of ${box}`,
  isPrivate: 'Private: this folder is never published.',
  title: (box: string): string => `Back room · ${box}`,
  asOf: (day: string): string => `As of ${day}.`,
  call: 'The call that holds:',
  cycle: (month: string, theme: string): string => `${month}, ${theme}`,
  notInSite: 'Nothing of it is in the site.',
  shownSince: (day: string): string => `Shown since ${day}.`,
  states,
  itemNotes: (isLead: boolean, pictures: number, pieces: SpareState | undefined): string =>
    [...(isLead ? ['lead'] : []), counted(pictures), ...(pieces ? [spare(pieces)] : [])].join(', '),
  whole: 'Every piece carries what it must.',
  wrong: (things: number): string =>
    things === 1 ? 'One thing is not as it must be.' : `${things} things are not as they must be.`,
  carries: (month: string): string => `What each piece of ${month} carries`,
  inBox: 'In the box',
  asked: {
    heading: 'What people asked for',
    told: (answered: number, all: number): string =>
      `Of ${all} times that something was typed by searches.csv, ${answered} were for a thing that was packed.`,
    others: 'Typed, and in no box: something to pack, or a name for something that was.',
    none: 'Nothing was typed that was in no box.',
    phrase: 'Typed',
    count: 'Times',
  },
  year: {
    heading: 'The year at a glance',
    /** Around the key, `made`. */
    kept: { begin: 'When each piece was made or went out, as cycle.md says in', end: '.' },
    /** Around an example of the key. */
    unkept: {
      begin: 'When a piece has been made or has gone out, write the day into cycle.md under “made”, as',
      end: ', and the habit is seen here.',
    },
    label: 'Pieces by box',
    box: 'Box',
    none: '–',
    inARow: 'In a row',
    /** How many in a row, and the month of the newest box where that is not one of them yet. */
    streak: (length: number, missing: string | undefined): string => {
      if (length === 0) return 'none';
      return missing === undefined ? String(length) : `${length}, ${missing} not yet`;
    },
  },
  earlier: 'Earlier boxes',
  toLookAt: (things: number): string => `(${things} to look at)`,
};
