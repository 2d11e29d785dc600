/** Which forms of the reveal a box makes, and what each is made of. */
import { PIECES } from '../content/vocabulary.ts';
import type { BoxSettings, Piece } from './box.ts';

/** People begin with the article and add the next form when it has become a habit. */
const WITHOUT_A_WORD: readonly Piece[] = ['article'];

/** Whether a box makes a piece; the article alone where its record does not say. */
export const makesPiece = ({ pieces = WITHOUT_A_WORD }: BoxSettings, piece: Piece): boolean =>
  pieces.includes(piece);

/** Every piece, in the order in which a reveal is told. */
export const pieceOrder: readonly Piece[] = PIECES;

/** The pieces a box makes, in the order of `pieceOrder`. */
export const piecesOf = (settings: BoxSettings): readonly Piece[] =>
  pieceOrder.filter((piece) => makesPiece(settings, piece));

/** Every paper by name; the article is in the site. */
export type PaperName =
  | 'parcels'
  | 'proof'
  | 'invitation'
  | 'event'
  | 'run sheet'
  | 'chapters'
  | 'article'
  | 'letter'
  | 'letter preview'
  | 'letter page'
  | 'letter text'
  | 'letter message'
  | 'shoot list'
  | 'clip sheet'
  | 'clip subtitles'
  | 'clip SubRip'
  | 'film'
  | 'cards'
  | 'card texts';

/** The clip as a film, by its name in the cycle's folder. */
export const FILM_FILE = 'clip.mp4';

/** A paper of a cycle. */
interface Paper {
  readonly name: PaperName;
  /** The file's name in the cycle's folder of the back room; none for the article. */
  readonly file?: string;
  /** What belongs to it. */
  readonly more?: readonly { readonly name: PaperName; readonly file: string }[];
}

/**
 * Papers of a cycle in the order in which the owner takes them up: what to photograph, when to reveal, whether it will be found, the
 * telling live, and then in writing. The letter leads to the article, so the article goes first.
 */
export const papersInOrder: readonly Paper[] = [
  { name: 'shoot list', file: 'shoot-list.html' },
  { name: 'parcels', file: 'parcels.html' },
  { name: 'proof', file: 'proof.html' },
  { name: 'invitation', file: 'invitation.html', more: [{ name: 'event', file: 'invitation.ics' }] },
  { name: 'run sheet', file: 'run-sheet.html', more: [{ name: 'chapters', file: 'chapters.vtt' }] },
  { name: 'article' },
  {
    name: 'letter',
    file: 'letter-sheet.html',
    more: [
      { name: 'letter preview', file: 'letter-preview.html' },
      { name: 'letter page', file: 'letter.html' },
      { name: 'letter text', file: 'letter.txt' },
      { name: 'letter message', file: 'letter.eml' },
    ],
  },
  {
    name: 'clip sheet',
    file: 'clip-sheet.html',
    more: [
      { name: 'film', file: FILM_FILE },
      { name: 'clip subtitles', file: 'clip.vtt' },
      { name: 'clip SubRip', file: 'clip.srt' },
    ],
  },
  { name: 'cards', file: 'cards.html', more: [{ name: 'card texts', file: 'cards.txt' }] },
];

/** The papers that a piece is told in, each of which has to say all of it. The article is in the site. */
export const formsOfPiece: Readonly<Record<Piece, readonly string[]>> = {
  invitation: ['invitation.html'],
  live: ['run-sheet.html'],
  article: [],
  letter: ['letter.html', 'letter.txt'],
  clip: ['clip-sheet.html'],
  cards: ['cards.html', 'cards.txt'],
};
