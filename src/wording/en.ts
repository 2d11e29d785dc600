import { backRoomPage } from './en/back-room-page.ts';
import { browser } from './en/browser.ts';
import { commandLine } from './en/command-line.ts';
import { coverage } from './en/coverage.ts';
import { findings } from './en/findings.ts';
import { parcels } from './en/parcels.ts';
import { proof } from './en/proof.ts';
import { site } from './en/site.ts';
import { structuredData } from './en/structured-data.ts';

/** English. */
export const en = {
  /** BCP 47 language of these words. */
  lang: 'en',
  backRoomPage,
  browser,
  commandLine,
  coverage,
  findings,
  parcels,
  proof,
  site,
  structuredData,
};
