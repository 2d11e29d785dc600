/** Which forms of the reveal a box makes, and what each is made of. */
import { PIECES } from '../content/vocabulary.ts';
import type { BoxSettings, Piece } from './box.ts';

/** People begin with the article and add the next form when it has become a habit. */
const WITHOUT_A_WORD: readonly Piece[] = ['article'];

export const makesPiece = ({ pieces = WITHOUT_A_WORD }: BoxSettings, piece: Piece): boolean =>
  pieces.includes(piece);

/** Every piece, in the order in which a reveal is told. */
export const pieceOrder: readonly Piece[] = PIECES;

export const pieceTitles: Readonly<Record<Piece, string>> = {
  invitation: 'Invitation',
  live: 'Run sheet',
  article: 'Article',
  letter: 'Letter',
  clip: 'Clip sheet',
  cards: 'Cards',
};

/** The pieces a box makes, in the order of `pieceOrder`. */
export const piecesOf = (settings: BoxSettings): readonly Piece[] =>
  pieceOrder.filter((piece) => makesPiece(settings, piece));

export interface Paper {
  /** The file's name in the cycle's folder of the back room; none for the article, which is in the site. */
  readonly file?: string;
  readonly title: string;
  /** What belongs to it. */
  readonly more?: readonly { readonly file: string; readonly title: string }[];
}

/**
 * Papers of a cycle in the order in which the owner takes them up: when to reveal, whether it will be found, the
 * telling live, and then in writing. The letter leads to the article, so the article goes first.
 */
export const papersInOrder: readonly Paper[] = [
  { file: 'parcels.html', title: 'Parcels' },
  { file: 'proof.html', title: 'Proof' },
  {
    file: 'invitation.html',
    title: 'Invitation',
    more: [{ file: 'invitation.ics', title: 'event for calendars' }],
  },
  {
    file: 'run-sheet.html',
    title: 'Run sheet',
    more: [{ file: 'chapters.vtt', title: 'chapters of the recording' }],
  },
  { title: 'Article' },
  {
    file: 'letter-sheet.html',
    title: 'Letter',
    more: [
      { file: 'letter.html', title: 'as it is read' },
      { file: 'letter.txt', title: 'plain text' },
      { file: 'letter.eml', title: 'whole message' },
    ],
  },
  {
    file: 'clip-sheet.html',
    title: 'Clip sheet',
    more: [
      { file: 'clip.vtt', title: 'subtitles, WebVTT' },
      { file: 'clip.srt', title: 'SubRip' },
    ],
  },
];

/** The papers that a piece is told in, each of which has to say all of it. The article is in the site. */
export const formsOfPiece: Readonly<Record<Piece, readonly string[]>> = {
  invitation: ['invitation.html'],
  live: ['run-sheet.html'],
  article: [],
  letter: ['letter.html', 'letter.txt'],
  clip: ['clip-sheet.html'],
  cards: ['cards.html'],
};
