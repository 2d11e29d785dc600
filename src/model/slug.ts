/** Words made fit for an address. */

/**
 * Lower case; letters and digits of any script stay, everything else becomes one hyphen. No standard decides this:
 * ß, ł, é and CJK stay, because browsers show them as they are.
 */
export const slugOf = (text: string): string =>
  text
    .normalize('NFC')
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|(?<!-)-+$/g, '');
