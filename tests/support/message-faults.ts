/** What parsers of mail forgive, looked for in the bytes. RFC 5322 §2.1, §2.2, §3.6; RFC 2045 §6.7; RFC 2046 §5.1; RFC 2047 §2; RFC 8058 §3. */

const ONCE = ['Date', 'From', 'To', 'Subject', 'Message-ID', 'MIME-Version', 'Content-Type'];

const MONTHS = 'Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec';
const DATE = new RegExp(
  `^(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun), \\d{1,2} (?:${MONTHS}) \\d{4} \\d\\d:\\d\\d:\\d\\d [+-]\\d{4}$`,
);

const isUtf8 = (bytes: Uint8Array): boolean => {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
};

const decodedQuotedPrintable = (body: string): Uint8Array =>
  Buffer.from(
    body
      .replace(/[ \t]*=\r\n/g, (end) => end.slice(0, -3))
      .replace(/=([0-9A-F]{2})/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16))),
    'latin1',
  );

const headerFaults = (head: string): string[] => {
  const faults: string[] = [];
  const lines = head.split('\r\n');
  for (const line of lines) {
    // A word that is longer than a line cannot be folded: RFC 5322 §2.1.1 says "should".
    if (line.length > 78 && /\s\S/.test(line.replace(/^(?:[\w-]+:)?\s/, ''))) faults.push(`over 78: ${line}`);
    if (!/^(?:[!-9;-~]+: ?|[ \t]+)\S/.test(line)) faults.push(`no header and no fold: ${line}`);
  }
  const fields = head
    .replace(/\r\n[ \t]/g, ' ')
    .split('\r\n')
    .map((line) => [line.slice(0, line.indexOf(':')), line.slice(line.indexOf(':') + 1).trim()] as const);
  const all = (name: string): string[] =>
    fields.filter(([one]) => one.toLowerCase() === name.toLowerCase()).map(([, value]) => value);
  for (const name of ONCE)
    if (all(name).length !== 1) faults.push(`${name} stands ${all(name).length} times`);
  if (!DATE.test(all('Date')[0] ?? '')) faults.push(`Date: ${all('Date')[0]}`);
  if (!/^<[^\s<>@]+@[^\s<>@]+>$/.test(all('Message-ID')[0] ?? ''))
    faults.push(`Message-ID: ${all('Message-ID')[0]}`);
  for (const [word] of head.matchAll(/=\?[^\s]*/g)) {
    if (word.length > 75) faults.push(`an encoded word of ${word.length}`);
    const inner = /^=\?utf-8\?B\?([A-Za-z0-9+/]+=*)\?=$/i.exec(word)?.[1];
    if (inner === undefined) faults.push(`not an encoded word: ${word}`);
    else if (!isUtf8(Buffer.from(inner, 'base64'))) faults.push(`a character cut in two: ${word}`);
  }
  const [list, post] = [all('List-Unsubscribe'), all('List-Unsubscribe-Post')];
  if (list.length > 1 || list.length !== post.length) faults.push('List-Unsubscribe without its pair');
  if (list.length === 1 && !/^<https:\/\/[!-~]+>$/.test(list[0] ?? '')) faults.push(`unsubscribe: ${list}`);
  if (post.length === 1 && post[0] !== 'List-Unsubscribe=One-Click') faults.push(`unsubscribe: ${post}`);
  return faults;
};

const boundaryOf = (message: string): string | undefined => /boundary="([^"]{1,70})"/.exec(message)?.[1];

const rawParts = (body: string, boundary: string): string[] =>
  body.split(new RegExp(`(?:^|\\r\\n)--${boundary}(?:--)?\\r\\n`)).slice(1, -1);

/** The bodies of a message's parts, to the byte, with line feeds. */
export const bodiesOf = (message: string): string[] =>
  rawParts(message.slice(message.indexOf('\r\n\r\n') + 4), boundaryOf(message) ?? '').map((part) =>
    new TextDecoder()
      .decode(decodedQuotedPrintable(part.slice(part.indexOf('\r\n\r\n') + 4)))
      .replace(/\r\n/g, '\n'),
  );

/** Every fault in a message's bytes; none for a sound one. */
export const messageFaults = (message: string): string[] => {
  const faults: string[] = [];
  if (/(?<!\r)\n|\r(?!\n)/.test(message)) faults.push('a line that does not end in CRLF');
  if (/[^\t\r\n\x20-\x7e]/.test(message)) faults.push('a byte that is not 7-bit text');
  if (message.split('\r\n').some((line) => line.length > 998)) faults.push('a line over 998');
  const gap = message.indexOf('\r\n\r\n');
  const [head, body] = [message.slice(0, gap), message.slice(gap + 4)];
  faults.push(...headerFaults(head));
  const boundary = boundaryOf(head);
  if (boundary === undefined) return [...faults, 'no boundary'];
  if (!body.endsWith(`--${boundary}--\r\n`)) faults.push('a boundary that is not closed');
  const parts = rawParts(body, boundary);
  const types = parts.map((part) => /^Content-Type: ([\w/]+); charset=utf-8\r\n/.exec(part)?.[1]);
  if (types.join() !== 'text/plain,text/html') faults.push(`parts: ${types.join()}`);
  for (const part of parts) {
    const text = part.slice(part.indexOf('\r\n\r\n') + 4);
    if (!/\r\nContent-Transfer-Encoding: quoted-printable\r\n\r\n/.test(part)) faults.push('no encoding');
    if (text.split('\r\n').some((line) => line.length > 76)) faults.push('quoted-printable over 76');
    if (/=(?![0-9A-F]{2}|\r\n)/.test(text)) faults.push('a bare = in quoted-printable');
    if (/[ \t](?:\r\n|$)/.test(text)) faults.push('white space at the end of a line');
    if (!isUtf8(decodedQuotedPrintable(text))) faults.push('a charset that is not true');
  }
  return faults;
};
