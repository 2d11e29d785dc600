/** The invitation's papers as files: the posts to copy, and the event for people's calendars. */
import { spoilersIn } from '../../analysis/spoilers.ts';
import type { Diagnostic, Location } from '../../diagnostics/diagnostic.ts';
import type { Cycle, Moment } from '../../model/box.ts';
import { monthName, revealDay } from '../../model/calendar.ts';
import { documentText } from '../../render/document.ts';
import { findingViews } from '../../render/findings.ts';
import { lastingId } from '../../render/lasting-id.ts';
import type { MadeDocument } from '../../render/output.ts';
import { pageLang } from '../../render/page-lang.ts';
import { backRoomLine, paperStyle } from '../../render/paper.ts';
import { spokenWordsFor } from '../../render/spoken-words.ts';
import { typeset } from '../../render/typeset.ts';
import { isWordedIn } from '../../wording/wording.ts';
import type { Tools } from '../channel.ts';
import { calendarFile } from './calendar-file.ts';
import { invitationFindings } from './findings.ts';
import { type Invitation, type InvitationInput, invitationOf } from './posts.ts';

declare module '../../render/templates.ts' {
  interface TemplateData {
    invitation: ReturnType<typeof pageView>;
  }
}

/** What an invitation's papers are made of. */
export interface InvitationData extends InvitationInput {
  readonly sealed: boolean;
  /** Where the peek of the cycle before stands. */
  readonly peekAt?: Location;
}

/** Minutes before the start at which a calendar reminds. Common practice, no source. */
const REMINDER = 30;

const MINUTE = 60_000;

/**
 * When this version of the event was made, as far as the same content can always say the same: the day the parcels
 * left, and a minute later for each time that the reveal was moved, so that the newest version is also the latest.
 */
const stampOf = ({ shipped }: Cycle, sequence: number): Moment =>
  new Date(`${shipped}T00:00:00Z`).getTime() + sequence * MINUTE;

/** Throws for a cycle whose moment nobody can know: no invitation is planned for one. */
const invitationFor = (data: InvitationData, { wording, language }: Tools): Invitation => {
  const { cycle, settings } = data;
  const { lang } = settings;
  const spoilers = spoilersIn(cycle.items, language);
  const invitation = invitationOf(data, {
    spoken: spokenWordsFor(wording, lang),
    ...(isWordedIn(wording, lang) ? { words: wording.invitation.post } : {}),
    spoils: (sentence) => spoilers(sentence).length > 0,
    set: (text) => typeset(text, lang),
  });
  if (!invitation) throw new Error(`Expected the moment of a reveal, found none in ${cycle.id}`);
  return invitation;
};

const pageView = (
  data: InvitationData,
  { posts, minutes }: Invitation,
  findings: readonly Diagnostic[],
  { templates, wording }: Tools,
) => {
  const { cycle, settings, sealed } = data;
  const { lang, timeZone } = settings;
  const own = pageLang(lang);
  const words = wording.invitation;
  const month = monthName(cycle, own);
  const moved = cycle.moved?.length ?? 0;
  return {
    words,
    lang: own,
    textLang: lang,
    pageTitle: words.title(month, typeset(settings.name, lang)),
    ...backRoomLine(settings, wording),
    heading: words.heading(month),
    scheme: paperStyle(settings.palette, templates),
    when: words.when(wording.calendar.revealDay(revealDay(cycle, timeZone, own)), sealed),
    posts: posts.map(({ text, length, most }, n) => ({
      ...words.lengths[n],
      text,
      characters: words.characters(length, most),
    })),
    event: words.event(minutes, REMINDER),
    moved: moved > 0 && words.moved(moved),
    findings: findingViews(findings, wording.findings),
  };
};

/** The paper with the posts in three lengths, and the findings about them, which it shows. */
export const invitationPage = (data: InvitationData, tools: Tools): MadeDocument<Diagnostic> => {
  const diagnostics = invitationFindings(data, spoilersIn(data.cycle.items, tools.language));
  const view = pageView(data, invitationFor(data, tools), diagnostics, tools);
  return { content: documentText(tools.templates.render('invitation', view)), diagnostics };
};

/** The file for calendars. Its SEQUENCE is the number of times that the reveal was moved, as cycle.md keeps them. */
export const eventFile = (data: InvitationData, tools: Tools): MadeDocument<Diagnostic> => {
  const { cycle, settings } = data;
  const invitation = invitationFor(data, tools);
  const sequence = cycle.moved?.length ?? 0;
  const { address, email } = { address: cycle.live?.address, email: settings.email };
  const content = calendarFile({
    uid: lastingId(settings, cycle, 'live'),
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
  return { content };
};
