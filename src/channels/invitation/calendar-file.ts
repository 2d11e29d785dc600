/** One event as an iCalendar file (RFC 5545): what a visitor's calendar shows in the visitor's own time. */
import type { Moment } from '../../model/box.ts';
import { utf8Length } from '../../text/utf8.ts';
import { localTime, type Observance, observancesAround, utcTime } from './observances.ts';

/** An event as RFC 5545 speaks of it; sections are that standard's. */
export interface CalendarEvent {
  /** Unique in the world, and the same for each version of the event (§3.8.4.7). */
  readonly uid: string;
  /** Rises when the time moves (§3.8.7.4). */
  readonly sequence: number;
  /** When this version was made (§3.8.7.2). */
  readonly stamp: Moment;
  readonly start: Moment;
  /** IANA name. */
  readonly timeZone: string;
  readonly minutes: number;
  /** Minutes before the start at which it reminds. */
  readonly reminder: number;
  readonly summary: string;
  readonly description: string;
  /** Absolute address. */
  readonly url: string;
  readonly location?: string;
  readonly organizer?: { readonly name: string; readonly email: string };
}

/** §3.1: octets of a line without its end. */
const LINE_OCTETS = 75;

/** §3.1: a long line goes on after CRLF and a space; no character is cut in two. */
const folded = (line: string): string => {
  const lines: string[] = [];
  let now = '';
  let length = 0;
  for (const character of line) {
    const more = utf8Length(character);
    if (length + more > LINE_OCTETS) {
      lines.push(now);
      now = ' ';
      length = 1;
    }
    now += character;
    length += more;
  }
  return [...lines, now].join('\r\n');
};

/** What §3.1 allows in no value: control characters but tab, and halves of characters. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is meant.
const CONTROLS = /[\u0000-\u0008\u000b-\u001f\u007f]|\p{Cs}/gu;

/** §3.3.11 */
const escapedText = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    .replace(CONTROLS, '')
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\n/g, '\\n');

/** Nothing for no text: readers do not take an empty one. */
const textLine = (name: string, text: string | undefined): readonly string[] => {
  const escaped = escapedText(text ?? '');
  return escaped.replaceAll('\\n', '').trim() === '' ? [] : [`${name}:${escaped}`];
};

/** §3.2: a quoted parameter has no double quote. */
const quoted = (text: string): string =>
  `"${text.replace(/\s+/g, ' ').replace(CONTROLS, '').replaceAll('"', '’')}"`;

/** §3.3.14: `+0100`, with seconds where there are any. */
const utcOffset = (seconds: number): string => {
  const size = Math.abs(seconds);
  const parts = [Math.floor(size / 3600), Math.floor(size / 60) % 60, size % 60];
  const shown = parts[2] === 0 ? parts.slice(0, 2) : parts;
  return `${seconds < 0 ? '-' : '+'}${shown.map((part) => String(part).padStart(2, '0')).join('')}`;
};

/** §3.6.5. Which of the two it is called changes nothing: the one that puts the clock on is taken for summer time. */
const observanceLines = ({ onset, from, to }: Observance): readonly string[] => {
  const name = to > from ? 'DAYLIGHT' : 'STANDARD';
  return [
    `BEGIN:${name}`,
    `DTSTART:${onset}`,
    `TZOFFSETFROM:${utcOffset(from)}`,
    `TZOFFSETTO:${utcOffset(to)}`,
    `END:${name}`,
  ];
};

/** The moment in the zone's own time with the zone's rules, or in UTC where the zone's clock shows that time twice. */
const startLines = ({ start, timeZone }: CalendarEvent) => {
  const local = timeZone === 'UTC' ? undefined : localTime(start, timeZone);
  if (local === undefined) return { zone: [], start: `DTSTART:${utcTime(start)}` };
  const zone = [
    'BEGIN:VTIMEZONE',
    `TZID:${timeZone}`,
    ...observancesAround(start, timeZone).flatMap(observanceLines),
    'END:VTIMEZONE',
  ];
  return { zone, start: `DTSTART;TZID=${timeZone}:${local}` };
};

/**
 * The file, every line ended by CRLF. It is published (RFC 5546 §3.2.1) where there is an organizer, without whom
 * nobody may. It lasts a DURATION, since an end may show an earlier time than the start when the clock goes back.
 */
export const calendarFile = (event: CalendarEvent): string => {
  const { organizer, location } = event;
  const { zone, start } = startLines(event);
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Lidlore//Invitation//EN',
    'CALSCALE:GREGORIAN',
    ...(organizer ? ['METHOD:PUBLISH'] : []),
    ...zone,
    'BEGIN:VEVENT',
    `UID:${escapedText(event.uid)}`,
    `DTSTAMP:${utcTime(event.stamp)}`,
    start,
    `DURATION:PT${event.minutes}M`,
    `SEQUENCE:${event.sequence}`,
    `SUMMARY:${escapedText(event.summary)}`,
    ...textLine('DESCRIPTION', event.description),
    ...textLine('LOCATION', location),
    `URL:${new URL(event.url).href}`,
    ...(organizer ? [`ORGANIZER;CN=${quoted(organizer.name)}:mailto:${organizer.email}`] : []),
    'STATUS:CONFIRMED',
    'TRANSP:OPAQUE',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${escapedText(event.summary)}`,
    `TRIGGER:-PT${event.reminder}M`,
    'END:VALARM',
    'END:VEVENT',
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
};
