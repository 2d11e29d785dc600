/** What every page of ours begins with, on the site and in the back room. */
import { schemeStyle } from './colours.ts';
import { type Html, htmlSource, trusted } from './html.ts';

/** The colours of a page that is one file by itself, as the back room's are. Its text is made of our own names and computed colours. */
export const schemeElement = (palette: readonly string[]): Html =>
  trusted(`<style>${schemeStyle(palette)}</style>`);

/** A whole page as a file's text. */
export const documentText = (page: Html): string => `<!doctype html>\n${htmlSource(page)}`;

/** Markup as a fragment's text, which stands by itself until a document is put together from it. */
export const fragmentText = (markup: Html): string => htmlSource(markup);

/** A fragment's text as the markup it was. Only for what `fragmentText` gave. */
export const fragmentHtml = (text: string): Html => trusted(text);
