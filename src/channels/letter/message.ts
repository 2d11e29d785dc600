/** A letter as one message file, our own work because a build must give the same bytes each time. */
import { shortHash } from '../../text/hash.ts';
import { encodedWords, foldedHeader, quotedPrintable } from './mime.ts';

/** Who a message comes from. */
interface Sender {
  /** In any script. */
  readonly name: string;
  /** As `mailAddress` gives it. */
  readonly address: string;
}

/** A message before it is encoded. */
interface MailMessage {
  readonly from: Sender;
  /** RFC 5322 §3.3 date-time. */
  readonly date: string;
  /** Without angle brackets. */
  readonly id: string;
  readonly subject: string;
  /** BCP 47. */
  readonly lang: string;
  /** The https address of RFC 8058, where there is one. */
  readonly unsubscribe?: string;
  /** Both with line feeds; the message has CRLF. */
  readonly text: string;
  readonly html: string;
}

/** RFC 5322 §3.2.3: a dot-atom. */
const DOT_ATOM = /^[\w!#$%&'*+/=?^`{|}~-]+(?:\.[\w!#$%&'*+/=?^`{|}~-]+)*$/;
/** The same without the dot: a phrase of such words needs no quotes. */
const ATOMS = /^[\w!#$%&'*+/=?^`{|}~-]+(?: [\w!#$%&'*+/=?^`{|}~-]+)*$/;

/** An address as a 7-bit header can bear it, its host in ASCII (RFC 5891); undefined for one that would need RFC 6531. */
export const mailAddress = (address: string): string | undefined => {
  const at = address.lastIndexOf('@');
  const local = address.slice(0, at);
  try {
    const host = new URL(`https://${address.slice(at + 1)}/`).hostname;
    return DOT_ATOM.test(local) && host !== '' ? `${local}@${host}` : undefined;
  } catch {
    return undefined;
  }
};

/** Text of one line, since a line break would begin another header. */
const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim();

const isAscii = (text: string): boolean => /^[\x20-\x7e]*$/.test(text);

/** Text in a header: as it is where it may be, else as encoded words of RFC 2047, each on whole characters. */
const headerText = (text: string): string =>
  isAscii(text) && !text.includes('=?') ? text : encodedWords(text);

const phrase = (name: string): string => {
  const line = oneLine(name);
  if (!isAscii(line) || line.includes('=?')) return headerText(line);
  return ATOMS.test(line) ? line : `"${line.replace(/["\\]/g, '\\$&')}"`;
};

const header = (name: string, value: string): string => foldedHeader(`${name}: ${value}`);

const bodyPart = (type: string, text: string): string =>
  [
    `Content-Type: ${type}; charset=utf-8`,
    'Content-Transfer-Encoding: quoted-printable',
    '',
    quotedPrintable(text),
  ].join('\r\n');

/**
 * The message as text, every line ended by CRLF: headers of RFC 5322, both forms of the letter as
 * multipart/alternative (RFC 2046 §5.1.4, the plain one first). It is addressed to an empty group (RFC 5322 §3.4),
 * because who gets it is the sending service's matter. RFC 2369 and RFC 8058 say how a reader's program unsubscribes.
 */
export const messageText = (message: MailMessage): string => {
  const { from, text, html, unsubscribe } = message;
  // RFC 2045 §6.7 (5): "=_" cannot occur in a quoted-printable body.
  const boundary = `=_letter_${shortHash(`${text}\n${html}`)}`;
  const headers = [
    header('Date', message.date),
    header('From', `${phrase(from.name)} <${from.address}>`),
    header('To', 'subscribers:;'),
    header('Subject', headerText(oneLine(message.subject))),
    header('Message-ID', `<${message.id}>`),
    'MIME-Version: 1.0',
    header('Content-Language', message.lang),
    ...(unsubscribe
      ? [header('List-Unsubscribe', `<${unsubscribe}>`), 'List-Unsubscribe-Post: List-Unsubscribe=One-Click']
      : []),
    `Content-Type: multipart/alternative;\r\n boundary="${boundary}"`,
  ];
  return [
    ...headers,
    '',
    `--${boundary}`,
    bodyPart('text/plain', text),
    `--${boundary}`,
    bodyPart('text/html', html),
    `--${boundary}--`,
    '',
  ].join('\r\n');
};
