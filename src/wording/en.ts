/** English, in parts by what is spoken of. */
import { backRoom } from './en/back-room.ts';
import { calendar } from './en/calendar.ts';
import { cautions } from './en/cautions.ts';
import { clip } from './en/clip.ts';
import { invitation } from './en/invitation.ts';
import { letter } from './en/letter.ts';
import { live } from './en/live.ts';
import { pieces } from './en/pieces.ts';

/** Every part. */
export const en = {
  /** BCP 47 language of these words. */
  lang: 'en',
  backRoom,
  calendar,
  cautions,
  clip,
  invitation,
  letter,
  live,
  pieces,
};
