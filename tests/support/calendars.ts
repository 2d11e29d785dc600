/** Outside readers of iCalendar files, and checks of our own for what none of them catches. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

export const LIBICAL = `python3 -c "import ctypes; ctypes.CDLL('libical.so.3')"`;

/** What libical 3 (libical.github.io) finds in each of some files, by its parser and its table of RFC 5546 restrictions. */
export const libicalErrors = (texts: readonly string[]): readonly (readonly string[])[] => {
  const { stdout, stderr, status } = spawnSync('python3', [join(import.meta.dirname, 'libical.py')], {
    input: JSON.stringify(texts),
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`libical.py failed: ${stderr}`);
  return JSON.parse(stdout) as string[][];
};

const unfolded = (text: string): readonly string[] => text.replace(/\r\n[ \t]/g, '').split('\r\n');

const isZone = (name: string): boolean => {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }) !== undefined;
  } catch {
    return false;
  }
};

/** TEXT values of RFC 5545 in which a comma, semicolon or backslash has to be escaped (3.3.11). */
const TEXT = /^(?:SUMMARY|DESCRIPTION|LOCATION|UID)(?:;[^:]*)?:(.*)$/;

/** Faults that parsers forgive, each by the section of RFC 5545 that it breaks. */
export const calendarFaults = (text: string): readonly string[] => {
  const faults: string[] = [];
  const fault = (is: boolean, what: string): void => {
    if (is) faults.push(what);
  };
  fault(/(?<!\r)\n|\r(?!\n)/.test(text), '3.1: a line that does not end in CRLF');
  fault(!text.endsWith('\r\n'), '3.1: a last line without an end');
  fault(
    text.split('\r\n').some((line) => Buffer.byteLength(line) > 75),
    '3.1: a line of more than 75 octets',
  );
  fault(text.includes('\ufffd') || /\p{Cs}/u.test(text), '3.1: a character cut in two');
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
  fault(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/.test(text), '3.1: a control character');
  const lines = unfolded(text);
  const values = lines.flatMap((line) => TEXT.exec(line)?.[1] ?? []);
  fault(
    values.some((value) => /(?:^|[^\\])(?:\\\\)*[,;]|\\(?![\\;,nN])/.test(value.replace(/\\\\/g, ''))),
    '3.3.11: a sign that is not escaped',
  );
  const zones = lines.flatMap((line) => /^TZID:(.*)$/.exec(line)?.[1] ?? []);
  const asked = lines.flatMap((line) => /^DT[A-Z]+;.*TZID=([^:;]+)/.exec(line)?.[1] ?? []);
  fault(!zones.every(isZone), '3.2.19: a zone that nobody knows');
  fault(!asked.every((zone) => zones.includes(zone)), '3.2.19: a zone that is not in the file');
  const lineOf = (name: string): string =>
    lines.slice(lines.indexOf('BEGIN:VEVENT')).flatMap((line) => (line.startsWith(name) ? line : []))[0] ??
    '';
  fault(/:-|:P(?:T?0[A-Z])?$/.test(lineOf('DURATION')), '3.3.6: an event that lasts no time');
  const [start = '', end = ''] = ['DTSTART', 'DTEND'].map((name) => lineOf(name).split(':')[1] ?? '');
  fault(end !== '' && end <= start, '3.8.2.2: an end before the start');
  return faults;
};
