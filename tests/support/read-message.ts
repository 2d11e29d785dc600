/** A message as two independent programs read it: mailparser and postal-mime. */
import { simpleParser } from 'mailparser';
import PostalMime from 'postal-mime';

export interface ReadMessage {
  readonly subject: string | undefined;
  readonly from: { readonly name: string; readonly address: string };
  readonly id: string | undefined;
  readonly date: number;
  readonly text: string;
  readonly html: string;
}

/** With line feeds, and none at the end: one of the two takes one away, the other adds one. `bodiesOf` is exact. */
const withLf = (text: string): string => text.replace(/\r\n/g, '\n').replace(/\n+$/, '');

export const readMessage = async (
  message: string,
): Promise<{ readonly mailparser: ReadMessage; readonly postalMime: ReadMessage }> => {
  const one = await simpleParser(message, { skipHtmlToText: true, skipTextToHtml: true });
  const other = await PostalMime.parse(message);
  const [sender] = one.from?.value ?? [];
  return {
    mailparser: {
      subject: one.subject,
      from: { name: sender?.name ?? '', address: sender?.address ?? '' },
      id: one.messageId,
      date: one.date?.getTime() ?? Number.NaN,
      text: withLf(one.text ?? ''),
      html: withLf(one.html || ''),
    },
    postalMime: {
      subject: other.subject,
      from: { name: other.from?.name ?? '', address: other.from?.address ?? '' },
      id: other.messageId,
      date: new Date(other.date ?? '').getTime(),
      text: withLf(other.text ?? ''),
      html: withLf(other.html ?? ''),
    },
  };
};
