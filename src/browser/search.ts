import { find } from '../analysis/search/find.ts';
import { openPart } from '../analysis/search/part.ts';
import { languageFor } from '../analysis/language/language.ts';
(globalThis as any).x = [find, openPart, languageFor];
