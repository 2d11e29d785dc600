/** Data as scripts: a page opened from disk may load a script, and nothing else. */

/** U+2028 and U+2029 end a line in older script parsers; the rest could end an element or begin a comment. */
const UNSAFE_IN_SCRIPT = /[<>&\u2028\u2029]/g;

/** Data as JSON that may stand anywhere in a script. */
export const scriptJson = (data: unknown): string =>
  JSON.stringify(data).replace(
    UNSAFE_IN_SCRIPT,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

/** A classic script that hands data to a function of the page's. */
export const handingOver = (receiver: string, data: unknown): string => `${receiver}(${scriptJson(data)});\n`;
