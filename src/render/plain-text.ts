/** Running text for what is read without markup. */
import { wrapLines } from '../text/wrap.ts';

const PARAGRAPH_WIDTH = 72;

/**
 * Text in lines of at most 72 characters, each begun with `indent`; a word that is longer, such as an address, has a
 * line to itself. 72 is common practice: a reply adds its marks and still fits 80.
 */
export const wrapped = (text: string, indent = ''): string =>
  wrapLines(text, PARAGRAPH_WIDTH - [...indent].length)
    .filter(Boolean)
    .map((line) => indent + line)
    .join('\n');
