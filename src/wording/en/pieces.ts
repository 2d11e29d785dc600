/** The pieces and their papers in English. */
import type { Piece } from '../../model/box.ts';
import type { PaperName } from '../../model/pieces.ts';

/** Papers of a piece, or the piece itself where it is no paper. */
const titles: Readonly<Record<Piece, string>> = {
  invitation: 'Invitation',
  live: 'Run sheet',
  article: 'Article',
  letter: 'Letter',
  clip: 'Clip sheet',
  cards: 'Cards',
};

const papers: Readonly<Record<PaperName, string>> = {
  parcels: 'Parcels',
  proof: 'Proof',
  invitation: titles.invitation,
  event: 'event for calendars',
  'run sheet': titles.live,
  chapters: 'chapters of the recording',
  article: titles.article,
  letter: titles.letter,
  'letter preview': 'preview with pictures',
  'letter page': 'as it is read',
  'letter text': 'plain text',
  'letter message': 'whole message',
  'shoot list': 'Shoot list',
  'clip sheet': titles.clip,
  'clip subtitles': 'subtitles, WebVTT',
  'clip SubRip': 'SubRip',
  film: 'Film',
  cards: titles.cards,
  'card texts': 'picture texts',
};

/** What pieces, their papers and what they carry are called. */
export const pieces = {
  titles,
  /** What the year counts are deeds, not papers: a live that was held, a clip that went out. */
  deeds: { ...titles, live: 'Live', clip: 'Clip' } satisfies Record<Piece, string>,
  papers,
  /** What a piece has to carry, as a table's row or a finding names it. */
  carried: {
    item: (name: string): string => name,
    caution: (label: string): string => label,
    peek: 'The peek',
    call: (text: string): string => `The call, “${text}”`,
    address: 'Its address',
  },
};
