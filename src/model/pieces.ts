/** Which forms of the reveal a box makes. */
import type { BoxSettings, Piece } from './box.ts';

/** People begin with the article and add the next form when it has become a habit. */
const WITHOUT_A_WORD: readonly Piece[] = ['article'];

export const makesPiece = ({ pieces = WITHOUT_A_WORD }: BoxSettings, piece: Piece): boolean =>
  pieces.includes(piece);
