/** English, in parts by what is spoken of. */
import { backRoomPage } from './en/back-room-page.ts';
import { commandLine } from './en/command-line.ts';
import { coverage } from './en/coverage.ts';
import { findings } from './en/findings.ts';
import { parcels } from './en/parcels.ts';
import { proof } from './en/proof.ts';

/** English. */
export const en = {
  /** BCP 47 language of these words. */
  lang: 'en',
  backRoomPage,
  commandLine,
  coverage,
  findings,
  parcels,
  proof,
};
