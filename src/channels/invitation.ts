/** The invitation to a live: a post in three lengths to copy, and the event for people's calendars. */

import { spoilersIn } from '../analysis/spoilers.ts';
import type { Diagnostic, Location } from '../diagnostics/diagnostic.ts';
import type { Box, BoxSettings, Cycle, Moment } from '../model/box.ts';
import { monthName, revealDay } from '../model/calendar.ts';
import { hookOf, type Invitation, invitationOf } from '../model/invitation.ts';
import { locationIn } from '../model/location-in.ts';
import { makesPiece } from '../model/pieces.ts';
import { isSealed } from '../model/seal.ts';
import { calendarFile } from '../render/calendar-file.ts';
import { documentText, schemeElement } from '../render/document.ts';
import { findingViews } from '../render/findings.ts';
import type { TextOutput } from '../render/output.ts';
import { pageLang } from '../render/page-lang.ts';
import { typeset } from '../render/typeset.ts';
import { wordingFor } from '../wording/wording.ts';
import type { Channel, ChannelInput } from './channel.ts';

/** Minutes before the start at which a calendar reminds. Common practice, no source. */
const REMINDER = 30;

const MINUTE = 60_000;

/**
 * When this version of the event was made, as far as the same content can always say the same: the day the parcels
 * left, and a minute later for each time that the reveal was moved, so that the newest version is also the latest.
 */
const stampOf = ({ shipped }: Cycle, sequence: number): Moment =>
  new Date(`${shipped}T00:00:00Z`).getTime() + sequence * MINUTE;

/** RFC 7986 §5.3 asks for an id that tells nothing of a person: the cycle, and the site's own folder and host. */
const eventId = ({ url }: BoxSettings, { id }: Cycle): string => {
  const { hostname, pathname } = new URL(url);
  return `${[id, 'live', ...pathname.split(/[^A-Za-z0-9]+/).filter(Boolean)].join('.')}@${hostname}`;
};

/** The file for calendars. Its SEQUENCE is the number of times that the reveal was moved, as cycle.md keeps them. */
export const eventFile = (box: Box, cycle: Cycle, invitation: Invitation): string => {
  const { settings } = box;
  const sequence = cycle.moved?.length ?? 0;
  const { address, email } = { address: cycle.live?.address, email: settings.email };
  return calendarFile({
    uid: eventId(settings, cycle),
    sequence,
    stamp: stampOf(cycle, sequence),
    start: invitation.start,
    timeZone: settings.timeZone,
    minutes: invitation.minutes,
    reminder: REMINDER,
    summary: invitation.title,
    description: invitation.description,
    url: invitation.address,
    ...(address === undefined ? {} : { location: address }),
    ...(email === undefined
      ? {}
      : { organizer: { name: typeset(settings.name, settings.lang), email: encodeURI(email) } }),
  });
};

type Spoilers = (text: string) => readonly string[];

/** Words of an address, which can give a thing away as well. */
const addressWords = (address: string): string => {
  try {
    return decodeURIComponent(address).replace(/[^\p{L}\p{N}]+/gu, ' ');
  } catch {
    return address.replace(/[^\p{L}\p{N}]+/gu, ' ');
  }
};

const findingsOf = (box: Box, cycle: Cycle, spoilers: Spoilers): readonly Diagnostic[] => {
  const before = box.cycles[box.cycles.indexOf(cycle) - 1];
  const at = ({ source }: Cycle, ...keys: readonly string[]): Location => locationIn(source, ...keys);
  const lookAt = (rule: string, location: Location, message: string, fix: string): Diagnostic => ({
    weight: 'look at',
    rule,
    location,
    message,
    fix,
  });
  const given = [...new Set(hookOf(box, cycle).flatMap(spoilers))];
  const own = cycle.invitation?.hook !== undefined;
  const address = cycle.live?.address;
  const named = address === undefined ? [] : spoilers(addressWords(address));
  return [
    ...(given.length > 0
      ? [
          lookAt(
            'invitation-spoils',
            own || !before ? at(cycle, 'invitation.hook', 'invitation') : at(before, 'peek.text', 'peek'),
            `Unexpected ${given.map((name) => `\`${name}\``).join(', ')} before the reveal of ${cycle.id}, expected nothing that its box holds; the sentence is left out of the invitation`,
            own
              ? 'Make people curious without naming the thing'
              : `Write \`invitation: {hook: …}\` in cycle.md of ${cycle.id}`,
          ),
        ]
      : []),
    ...(hookOf(box, cycle).length === 0
      ? [
          lookAt(
            'invitation-hook',
            at(cycle, 'theme'),
            'Unexpected invitation without a word that makes people curious, expected `invitation: {hook: …}` or a peek in the cycle before',
            'Add `invitation: {hook: …}`, a sentence or two that name nothing in the box',
          ),
        ]
      : []),
    ...(address === undefined
      ? [
          lookAt(
            'invitation-address',
            at(cycle, 'live', 'reveal'),
            'Unexpected invitation without an address, expected where the live is seen',
            'Add `live: {address: https://…}`; until then it leads to the site',
          ),
        ]
      : []),
    ...(named.length > 0
      ? [
          lookAt(
            'invitation-spoils',
            at(cycle, 'live.address'),
            `Unexpected ${named.map((name) => `\`${name}\``).join(', ')} in the live’s address before the reveal, expected nothing that the box holds`,
            'Give the stream an address without the name',
          ),
        ]
      : []),
  ];
};

/** Where there is still somebody to invite: cycles to come, and the one that was shown last, whose live may be now. */
const invitedTo = ({ cycles }: Box, asOf: Moment): readonly Cycle[] => {
  const shown = cycles.findLast((cycle) => !isSealed(cycle, asOf));
  return cycles.filter((cycle) => cycle === shown || isSealed(cycle, asOf));
};

const filesOf = (
  { box, asOf, templates }: ChannelInput,
  cycle: Cycle,
  spoilers: Spoilers,
  findings: readonly Diagnostic[],
): readonly TextOutput[] => {
  const { settings } = box;
  const { lang, timeZone } = settings;
  const spoils = (sentence: string): boolean => spoilers(sentence).length > 0;
  const invitation = invitationOf(box, cycle, spoils, (text) => typeset(text, lang));
  if (!invitation) return [];
  const own = pageLang(lang);
  const page = templates.render('invitation', {
    lang: own,
    textLang: lang,
    name: typeset(settings.name, lang),
    month: monthName(cycle, own),
    scheme: schemeElement(settings.palette),
    reveal: revealDay(cycle, timeZone, own),
    sealed: isSealed(cycle, asOf),
    posts: invitation.posts,
    minutes: invitation.minutes,
    reminder: REMINDER,
    moved: cycle.moved?.length ?? 0,
    published: settings.email !== undefined,
    address: cycle.live?.address,
    timeZone,
    findings: findingViews(findings, wordingFor(own).findings),
  });
  const file = (name: string, text: string): TextOutput => ({
    where: 'backroom',
    path: `${cycle.id}/${name}`,
    text,
  });
  return [
    file('invitation.html', documentText(page)),
    file('invitation.ics', eventFile(box, cycle, invitation)),
  ];
};

export const invitation: Channel<'backroom'> = {
  name: 'invitation',
  where: 'backroom',
  make: (input) => {
    const { box, asOf, language } = input;
    if (!makesPiece(box.settings, 'invitation')) return { outputs: [], diagnostics: [] };
    const made = invitedTo(box, asOf).map((cycle) => {
      const spoilers = spoilersIn(cycle.items, language);
      // Of a live that is over there is nothing left to mend.
      const findings = isSealed(cycle, asOf) ? findingsOf(box, cycle, spoilers) : [];
      return { outputs: filesOf(input, cycle, spoilers, findings), diagnostics: findings };
    });
    return {
      outputs: made.flatMap(({ outputs }) => outputs),
      diagnostics: made.flatMap(({ diagnostics }) => diagnostics),
    };
  },
};
