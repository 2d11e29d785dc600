/** Markup that is safe by type: the only thing that enters a template unescaped. */

const markup: unique symbol = Symbol('markup');

/** HTML source that is known to be well formed and escaped. Made only in this room. */
export interface Html {
  readonly [markup]: string;
}

const escapes = new Map([
  ['&', '&amp;'],
  ['<', '&lt;'],
  ['>', '&gt;'],
  ['"', '&quot;'],
  ["'", '&#39;'],
]);

/** `text` with the five characters escaped that mean something in HTML text or a quoted attribute. */
export const escapeHtml = (text: string): string =>
  text.replace(/[&<>"']/g, (sign) => escapes.get(sign) ?? sign);

/** Vouches for source that a serialiser of ours produced. Nothing an author wrote comes through here as it is. */
export const trusted = (source: string): Html => ({ [markup]: source });

/** Whether a value is markup. */
export const isHtml = (value: unknown): value is Html =>
  typeof value === 'object' && value !== null && markup in value;

/** The HTML source of any value a template may print: Html as it is, everything else escaped, nothing for nothing. */
export const htmlSource = (value: unknown): string => {
  if (isHtml(value)) return value[markup];
  if (value === undefined || value === null || value === false) return '';
  if (Array.isArray(value)) return value.map(htmlSource).join('');
  return escapeHtml(String(value));
};

/** Tagged template: literal parts are markup, every value is escaped unless it is Html. */
export const html = (literals: TemplateStringsArray, ...values: readonly unknown[]): Html =>
  trusted(literals.reduce((source, literal, i) => source + htmlSource(values[i - 1]) + literal));

/** Html pieces one after another. */
export const joinHtml = (pieces: readonly Html[], between = ''): Html =>
  trusted(pieces.map(htmlSource).join(between));
