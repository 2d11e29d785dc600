/** What pages say of the box around their own text: as much of its settings as is published, and no more. */
import type { Box, BoxSettings, Cycle, Moment, Subscription } from '../model/box.ts';
import { type Call, callsAsOf } from '../model/calls.ts';
import { defined } from '../text/defined.ts';
import { remembered } from '../text/remembered.ts';
import { articlePath } from './addresses.ts';

/** The settings that every public page is made with. */
export type SiteFacts = Pick<
  BoxSettings,
  'name' | 'url' | 'lang' | 'timeZone' | 'description' | 'email' | 'postalAddress' | 'profiles' | 'logo'
>;

/** The same object for the same settings, and frozen, so that it is hashed once. */
export const siteFactsOf = remembered((settings: BoxSettings): SiteFacts => {
  const { name, url, lang, timeZone, description, email, postalAddress, profiles, logo } = settings;
  return Object.freeze(
    defined({ name, url, lang, timeZone, description, email, postalAddress, profiles, logo }),
  );
});

/** What stands around the text of every page. */
export interface PageFrame {
  readonly site: SiteFacts;
  /** Site path of the newest article; absent while there is none. */
  readonly newest?: string;
  /** What can be done now, in the masthead. */
  readonly call?: Call;
}

/** What a call at the foot of a page says besides its own words. */
export interface CallFacts {
  readonly call?: Call;
  readonly subscription?: Pick<Subscription, 'name' | 'price'>;
}

/**
 * The frames and calls of a box's pages at a moment: for a page about one cycle, which is its article, else for a page
 * about the box, which is no piece.
 */
export interface Frames {
  readonly frame: (cycle?: Cycle) => PageFrame;
  readonly call: (cycle?: Cycle) => CallFacts;
}

/** The frames of a box's pages at a moment. */
export const framesOf = (box: Box, asOf: Moment): Frames => {
  const [ofBox, ofArticle] = [callsAsOf(box, asOf), callsAsOf(box, asOf, 'article')];
  const callOf = (cycle: Cycle | undefined): Call | undefined => (cycle ? ofArticle : ofBox)(cycle);
  const site = siteFactsOf(box.settings);
  const last = box.cycles.at(-1);
  const newest = last && articlePath(last);
  const { subscription: terms } = box.settings;
  const subscription = terms && { name: terms.name, price: terms.price };
  return {
    frame: (cycle) => defined({ site, newest, call: callOf(cycle) }),
    call: (cycle) => defined({ call: callOf(cycle), subscription }),
  };
};
