/** What the search says, spelled as its page is. */
import { browserFor } from '../wording/en/browser.ts';

export const said = browserFor(document.documentElement.lang);
