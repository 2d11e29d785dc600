/** Data as scripts: a page opened from disk may load a script, and nothing else. */
import { type Html, trusted } from './html.ts';

/** U+2028 and U+2029 end a line in older script parsers; the rest could end an element or begin a comment. */
const UNSAFE_IN_SCRIPT = /[<>&\u2028\u2029]/g;

/** A sign by its number, as a script's strings and JSON both have it. */
const escapedSign = (sign: string): string => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** Data as JSON that may stand anywhere in a script. */
export const scriptJson = (data: unknown): string =>
  JSON.stringify(data).replace(UNSAFE_IN_SCRIPT, escapedSign);

/** Text as it stands inside a string or a template literal of a script, whichever quotes are around it. */
export const scriptText = (text: string): Html =>
  trusted(text.replace(/["'`$\\\p{Cc}<>&\u2028\u2029]/gu, escapedSign));

/** A classic script that hands data to a function of the page's. */
export const handingOver = (receiver: string, data: unknown): string => `${receiver}(${scriptJson(data)});\n`;
