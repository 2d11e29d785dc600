/** English, in parts by what is spoken of. */
import { backRoom } from './en/back-room.ts';
import { backRoomPage } from './en/back-room-page.ts';
import { browser } from './en/browser.ts';
import { calendar } from './en/calendar.ts';
import { cautions } from './en/cautions.ts';
import { clip } from './en/clip.ts';
import { commandLine } from './en/command-line.ts';
import { coverage } from './en/coverage.ts';
import { cycle } from './en/cycle.ts';
import { findings } from './en/findings.ts';
import { invitation } from './en/invitation.ts';
import { letter } from './en/letter.ts';
import { live } from './en/live.ts';
import { parcels } from './en/parcels.ts';
import { pieces } from './en/pieces.ts';
import { proof } from './en/proof.ts';
import { site } from './en/site.ts';
import { structuredData } from './en/structured-data.ts';

/** Every part. */
export const en = {
  /** BCP 47 language of these words. */
  lang: 'en',
  backRoom,
  backRoomPage,
  browser,
  calendar,
  cautions,
  clip,
  commandLine,
  coverage,
  cycle,
  findings,
  invitation,
  letter,
  live,
  parcels,
  pieces,
  proof,
  site,
  structuredData,
};
