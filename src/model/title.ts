/** A title that names the things, for a cycle whose record gives none. */
import { monthName } from './calendar.ts';

/** ", 300 ml", ", twelve fingers": what a card adds to a name, and a headline does not. */
const ADDED = /,.*$/;

/** "Wooden seed tray, four seed packets and wooden dibber: the March 2026 box". `names` lead item first. */
export const titleOf = (
  names: readonly string[],
  cycle: { readonly year: number; readonly month: number; readonly theme: string },
  lang: string,
): string => {
  const month = monthName(cycle, lang);
  const [first, ...others] = names.slice(0, 3).map((name) => name.replace(ADDED, ''));
  if (first === undefined) return `${cycle.theme}: the ${month} box`;
  const lowered = others.map((name) => name.charAt(0).toLocaleLowerCase(lang) + name.slice(1));
  const list = new Intl.ListFormat('en-GB', { type: 'conjunction' }).format([first, ...lowered]);
  return `${list}: the ${month} box`;
};
