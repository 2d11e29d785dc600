/** English, in parts by what is spoken of. */
import { backRoom } from './en/back-room.ts';
import { backRoomPage } from './en/back-room-page.ts';
import { browser } from './en/browser.ts';
import { calendar } from './en/calendar.ts';
import { cards } from './en/cards.ts';
import { cautions } from './en/cautions.ts';
import { clip } from './en/clip.ts';
import { commandLine } from './en/command-line.ts';
import { coverage } from './en/coverage.ts';
import { cycle } from './en/cycle.ts';
import { desk } from './en/desk.ts';
import { findings } from './en/findings.ts';
import { invitation } from './en/invitation.ts';
import { letter } from './en/letter.ts';
import { live } from './en/live.ts';
import { parcels } from './en/parcels.ts';
import { pieces } from './en/pieces.ts';
import { proof } from './en/proof.ts';
import { shootList } from './en/shoot-list.ts';
import { site } from './en/site.ts';
import { american, british, type Spelling, spellingFor } from './en/spelling.ts';
import { strangers } from './en/strangers.ts';
import { structuredData } from './en/structured-data.ts';

/** Every part, as a region spells it. */
const english = (spelling: Spelling) => ({
  /** BCP 47 language of these words. */
  lang: spelling.tag,
  backRoom,
  backRoomPage,
  browser: browser(spelling),
  calendar,
  cards,
  cautions: cautions(spelling),
  clip,
  commandLine,
  coverage,
  cycle,
  desk,
  findings,
  invitation,
  letter,
  live: live(spelling),
  parcels,
  pieces,
  proof,
  shootList,
  site: site(spelling),
  strangers,
  structuredData: structuredData(spelling),
});

/** British English. */
export const en = english(british);

/** American English. */
export const enUS = english(american);

/** The words of an English tag (BCP 47); British ones for what is no English. */
export const englishFor = (lang: string): typeof en => (spellingFor(lang) === american ? enUS : en);
