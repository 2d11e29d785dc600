/** What a record may say of the pieces of a reveal, and of the call. */
import * as v from 'valibot';
import { nearest } from '../diagnostics/nearest.ts';
import { isQuery } from '../text/query.ts';
import { date, described, group, is } from './fields.ts';
import { CALL_KINDS, CARD_LAYOUTS, CLIP_LENGTHS, PIECES } from './vocabulary.ts';

/** One of the pieces. */
export const piece = v.picklist(PIECES, ({ input }) => {
  const meant = nearest(String(input), PIECES);
  return `${meant ? `\`${meant}\`, ` : ''}one of ${PIECES.join(', ')}`;
});
/** When each piece of a cycle was made; a word that is no piece is an unknown key. */
export const madeDates = group(
  v.entriesFromList(PIECES, v.optional(described(date, 'The day', '2026-03-19'))),
  'dates by piece',
);
/** What each piece adds to a call's address. */
export const callMarks = group(
  v.entriesFromList(
    PIECES,
    v.optional(
      described(
        is(isQuery, 'what the shop is to see in the address, a name and a word, as ?via=letter'),
        'Its mark',
        '?via=letter',
      ),
    ),
  ),
  'marks by piece',
);
/** One of the calls. */
export const callKind = v.picklist(CALL_KINDS, 'join, waitList or spare');
/** How long the short video is to be. */
export const clipLength = v.picklist(CLIP_LENGTHS, '15, 30 or 60, in seconds');
/** A file that a phone filmed, and where in it to begin. */
export const filmedPiece = is(
  (value) => /^[^/\\]+\.(?:mp4|mov|m4v)(?: +\d{1,2}:[0-5]\d)?$/i.test(value.trim()),
  'the name of a filmed piece, as seed-tray.mov, or with where to begin, as seed-tray.mov 0:04',
);
/** How the picture cards look. */
export const cardLook = group(
  {
    layout: v.optional(
      described(
        v.picklist(CARD_LAYOUTS, CARD_LAYOUTS.join(' or ')),
        'How the cards are laid out: `plate`, words over a mounted picture, or `broadside`, a picture that fills the sheet',
        'broadside',
      ),
    ),
  },
  'what the cards look like',
);
/** A place in a recording, as players show it. */
export const clockTime = is(
  (value) => /^(?:(?:\d{1,2}:)?[0-5]?\d:[0-5]\d|\d{1,5})$/.test(value),
  'a time in the recording, as 4:10',
);
