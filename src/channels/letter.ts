/**
 * The letter: a cycle's reveal as an e-mail, in the back room, for the owner's sending service to send. Its pictures
 * are in the site, for a reader's program fetches them, and so they are made by a public channel, which knows no
 * sealed cycle.
 */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, BoxSettings, Cycle } from '../model/box.ts';
import { mailDate, monthName, revealDay } from '../model/calendar.ts';
import { locationIn } from '../model/location-in.ts';
import { makesPiece } from '../model/pieces.ts';
import { isSealed } from '../model/seal.ts';
import { documentText, schemeElement } from '../render/document.ts';
import { PREHEADER_LENGTH, preheadersOf, SUBJECT_LENGTH, subjectsOf } from '../render/letter-lines.ts';
import { letterOf, picturesOf } from '../render/letter-parts.ts';
import { letterText } from '../render/letter-text.ts';
import type { TextOutput } from '../render/output.ts';
import { typeset } from '../render/typeset.ts';
import { utf8Length } from '../text/utf8.ts';
import type { Channel, ChannelInput, LateChannel } from './channel.ts';

/**
 * What the law asks of mail that sells: a postal address and a way to say no more, US 15 U.S.C. 7704(a)(5) and
 * 16 CFR 316; other countries have their own. Evidence that is missing is reported, compliance never declared.
 */
const settingsFindings = (settings: BoxSettings, sender: string | undefined): readonly Diagnostic[] => {
  const { source, postalAddress, unsubscribe, email } = settings;
  const missing = (rule: string, what: string, key: string, fix: string): Diagnostic => ({
    weight: 'look at',
    rule,
    location: locationIn(source, key, 'pieces', 'name'),
    message: `Unexpected letter without ${what}, expected \`${key}\` in box.md`,
    fix,
  });
  return [
    ...(postalAddress && Object.values(postalAddress).some(Boolean)
      ? []
      : [
          missing(
            'letter-postal-address',
            'a postal address',
            'postalAddress',
            'Add `postalAddress: {streetAddress: …, addressLocality: …}`; a P.O. box will do',
          ),
        ]),
    ...(unsubscribe === undefined
      ? [
          missing(
            'letter-unsubscribe',
            'a way to say no more',
            'unsubscribe',
            'Add `unsubscribe: …`, the https address, or the placeholder that your sending service fills',
          ),
        ]
      : []),
    ...(sender === undefined
      ? [
          missing(
            'letter-sender',
            email === undefined ? 'an address it comes from' : 'an address that every mail program takes',
            'email',
            'Add `email: hello@…`, its part before the @ in plain letters and digits',
          ),
        ]
      : []),
  ];
};

const replayFinding = ({ source, replay }: Cycle): readonly Diagnostic[] =>
  replay
    ? []
    : [
        {
          weight: 'note',
          rule: 'letter-replay',
          location: locationIn(source, 'theme'),
          message: 'Unexpected letter without a film to watch, expected `replay` once the live is recorded',
          fix: 'Add `replay: {address: …, minutes: …}`, or send it without',
        },
      ];

const sizeFinding = ({ source }: Cycle, bytes: number, most: number): readonly Diagnostic[] =>
  bytes <= most
    ? []
    : [
        {
          weight: 'look at',
          rule: 'letter-size',
          location: locationIn(source, 'theme'),
          message: `Unexpected letter of ${Math.ceil(bytes / 1000)} kB, expected at most ${most / 1000} kB: some programs cut a longer one off`,
          fix: 'Shorten the longest cautions, voices or descriptions',
        },
      ];

/** Unique in the world and the same each time (RFC 5322 §3.6.4): the cycle, and the site's own folder and host. */
const messageId = ({ url }: BoxSettings, { id }: Cycle): string => {
  const { hostname, pathname } = new URL(url);
  const folder = pathname.split(/[^A-Za-z0-9]+/).filter(Boolean);
  return `${[id, 'letter', ...folder].join('.')}@${hostname}`;
};

/** The one https address of RFC 8058, as a header can bear it; a placeholder is none. */
const oneClick = (unsubscribe: string | undefined): string | undefined =>
  unsubscribe !== undefined && /^https:\/\/\S+$/i.test(unsubscribe) && URL.canParse(unsubscribe)
    ? new URL(unsubscribe).href
    : undefined;

const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

/** The cycle whose letter is the next to be sent: the newest that may be shown. */
const newestOpen = ({ cycles }: Box, asOf: number): Cycle | undefined =>
  cycles.findLast((cycle) => !isSealed(cycle, asOf));

export const letter: LateChannel = {
  name: 'letter',
  where: 'backroom',
  make: async ({ box, asOf, templates }: ChannelInput) => {
    const { settings } = box;
    if (!makesPiece(settings, 'letter')) return { outputs: [], diagnostics: [] };
    const [{ letterHtml, LETTER_BYTES }, { mailAddress, messageText }] = await Promise.all([
      import('../render/letter-html.ts'),
      import('../render/mail-message.ts'),
    ]);
    const sender = settings.email === undefined ? undefined : mailAddress(settings.email);
    const address = sender ?? `letter@${new URL(settings.url).hostname}`;
    const next = newestOpen(box, asOf);
    const outputs: TextOutput[] = [];
    const diagnostics: Diagnostic[] = [
      ...settingsFindings(settings, sender),
      ...(next ? replayFinding(next) : []),
    ];
    for (const cycle of box.cycles) {
      const told = letterOf(box, cycle, asOf);
      const subjects = subjectsOf(cycle, settings);
      const preheaders = preheadersOf(cycle, told);
      const [subject = '', preheader = ''] = [subjects[0]?.text, preheaders[0]?.text];
      const html = letterHtml(told, { subject, preheader, palette: cycle.palette }, templates);
      const text = letterText(told);
      const unsubscribe = oneClick(settings.unsubscribe);
      const message = messageText({
        from: { name: settings.name, address },
        date: mailDate(cycle.reveal ?? asOf, settings.timeZone),
        id: messageId(settings, cycle),
        subject,
        lang: settings.lang,
        ...(unsubscribe ? { unsubscribe } : {}),
        text,
        html,
      });
      diagnostics.push(...sizeFinding(cycle, utf8Length(html), LETTER_BYTES));
      const sheet = templates.render('letter-sheet', {
        lang: settings.lang,
        name: typeset(settings.name, settings.lang),
        month: monthName(cycle, settings.lang),
        theme: typeset(cycle.theme, settings.lang),
        scheme: schemeElement(cycle.palette),
        sealed: isSealed(cycle, asOf),
        reveal: revealDay(cycle, settings.timeZone, settings.lang),
        lists: [
          { heading: 'Subject', most: SUBJECT_LENGTH, wordings: subjects, key: 'subject' },
          {
            heading: 'Preheader, the line that lists of mail show after it',
            most: PREHEADER_LENGTH,
            wordings: preheaders,
            key: 'preheader',
          },
        ],
        from: `${settings.name} <${address}>`,
        oneClick: unsubscribe,
        placeholder: settings.unsubscribe,
        sizes: { html: kilobytes(utf8Length(html)), most: `${LETTER_BYTES / 1000} kB` },
        pictures: picturesOf(told).length,
        replay: told.replay?.address,
        call: told.call,
      });
      const file = (name: string, content: string): TextOutput => ({
        where: 'backroom',
        path: `${cycle.id}/${name}`,
        text: content,
      });
      outputs.push(
        file('letter.html', html),
        file('letter.txt', text),
        file('letter.eml', message),
        file('letter-sheet.html', documentText(sheet)),
      );
    }
    return { outputs, diagnostics };
  },
};

export const letterPictures: Channel = {
  name: 'letter pictures',
  where: 'site',
  make: ({ box, asOf }) => ({
    outputs: makesPiece(box.settings, 'letter')
      ? box.cycles.flatMap((cycle) => picturesOf(letterOf(box, cycle, asOf)))
      : [],
    diagnostics: [],
  }),
};
