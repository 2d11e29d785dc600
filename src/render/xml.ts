/** XML text that any parser takes, whatever an author typed. */
import { escapeHtml, type Html, htmlSource, isHtml, trusted } from './html.ts';

/** What XML 1.0 §2.2 leaves out of `Char`: controls, lone surrogates and the two noncharacters. No escape helps. */
const NOT_XML =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is meant
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const valueSource = (value: unknown): string => {
  if (isHtml(value)) return htmlSource(value);
  if (Array.isArray(value)) return value.map(valueSource).join('');
  if (value === undefined || value === null || value === false) return '';
  return escapeHtml(String(value).replace(NOT_XML, ''));
};

/** Tagged template like `html`: literal parts are markup, every value is escaped unless it is markup already. */
export const xml = (literals: TemplateStringsArray, ...values: readonly unknown[]): Html =>
  trusted(literals.reduce((source, literal, i) => source + valueSource(values[i - 1]) + literal));

/** A document as text, with its declaration. */
export const xmlDocument = (root: Html): string =>
  `<?xml version="1.0" encoding="utf-8"?>\n${htmlSource(root)}\n`;
