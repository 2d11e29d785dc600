/** English, in parts by what is spoken of. */
import { browser } from './en/browser.ts';
import { site } from './en/site.ts';
import { structuredData } from './en/structured-data.ts';

export const en = {
  /** BCP 47 language of these words. */
  lang: 'en',
  browser,
  site,
  structuredData,
};
