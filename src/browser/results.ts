/** The list of what answers: the page's entries again, best first, with their words marked. */
import type { Language } from '../analysis/language/language.ts';
import type { Answer, Found } from '../analysis/search/find.ts';
import type { Entry } from './entries.ts';
import { whenQuiet } from './quiet.ts';
import { type Marker, markerFor, wordsRemembered } from './marks.ts';

/** Results at first, and each time more are asked for. */
const AT_ONCE = 24;
/** Results that a screen shows: the others of the first lot follow when nobody types. */
const ON_SCREEN = 7;

const detail = (label: string, nodes: readonly Node[]): HTMLElement => {
  const line = document.createElement('span');
  line.className = 'detail';
  line.append(label, ...nodes);
  return line;
};

/** Lines that say why an entry answers, where what it shows does not. */
const reasons = (entry: Entry, found: Found, marker: Marker): readonly HTMLElement[] => {
  const lines: HTMLElement[] = [];
  const said = (label: string, texts: readonly string[]): void => {
    const touched = texts.filter(marker.touches);
    if (touched.length > 0) lines.push(detail(label, marker.mark(touched.join(', '))));
  };
  said('Also called ', entry.also);
  said('Material: ', entry.material);
  said('Colour: ', [entry.color]);
  // A colour may be said in another word than the one that was asked for, or not at all.
  said(entry.color === '' ? 'Colour of its picture: ' : `Colour: ${entry.color}, or `, entry.colours);
  const told = marker
    .missing()
    .filter((asked) => found.met[marker.asked.indexOf(asked)]?.fields.has('story'))
    .map(({ text, guesses: [guess] }) => guess?.word ?? text);
  if (told.length > 0) lines.push(detail('In its story: ', marker.mark(told.join(', '))));
  return lines;
};

const resultOf = (entry: Entry, found: Found | undefined, marker: Marker | undefined): HTMLLIElement => {
  const line = entry.element.cloneNode(true) as HTMLLIElement;
  const from = detail('', [document.createTextNode(entry.from)]);
  const after = line.querySelector('.detail');
  if (after) after.after(from);
  else line.append(from);
  const shown = line.querySelectorAll<HTMLImageElement | HTMLSourceElement>('img, source');
  for (const one of shown) one.sizes = '6rem';
  line.classList.toggle('pictured', shown.length > 0);
  if (!marker || !found) return line;
  marker.markWithin(line);
  const why = reasons(entry, found, marker);
  const sale = line.querySelector('.sale');
  if (sale) sale.before(...why);
  else line.append(...why);
  return line;
};

/** Whether an answer has every word that was asked for. */
export const meetsAll = (found: Found | undefined): boolean =>
  found?.met.every((one) => one !== undefined) ?? true;

export interface ResultList {
  readonly show: (entries: readonly Entry[], answer: Answer | undefined) => void;
  readonly showEmpty: (content: DocumentFragment) => void;
  readonly clear: () => void;
}

export const resultList = (region: HTMLElement, language: Language): ResultList => {
  const list = document.createElement('ol');
  const more = document.createElement('button');
  more.type = 'button';
  const empty = document.createElement('div');
  empty.className = 'none';
  const wordsOf = wordsRemembered(language);
  let rest: readonly Entry[] = [];
  let current: Answer | undefined;
  let founds: ReadonlyMap<number, Found> = new Map();
  /** The first that has not all the words, where another has. */
  let firstInPart: Entry | undefined;
  let shown = '';
  const later = whenQuiet();

  const lineOf = (entry: Entry): HTMLLIElement =>
    resultOf(entry, founds.get(entry.id), current && markerFor(current.asked, wordsOf));
  const showMore = (count: number): HTMLLIElement | undefined => {
    const lines = rest.slice(0, count).map((entry) => {
      const line = lineOf(entry);
      if (entry !== firstInPart) return [line];
      const divider = document.createElement('li');
      divider.className = 'divider';
      divider.textContent = 'With some of the words';
      return [divider, line];
    });
    rest = rest.slice(count);
    list.append(...lines.flat());
    return lines[0]?.at(-1);
  };
  const offerMore = (): void => {
    more.hidden = rest.length === 0;
    more.textContent = `Show ${Math.min(AT_ONCE, rest.length)} more of ${rest.length}`;
  };
  more.addEventListener('click', () => {
    showMore(AT_ONCE)?.querySelector('a')?.focus();
    offerMore();
  });
  region.append(list, more, empty);

  return {
    show: (entries, answer) => {
      // Nothing moves under a reader's eyes when the stories arrive and change nothing.
      const asked = answer?.asked.map(({ folded, stems }) => [folded, ...stems.beginning, ...stems.slip]);
      const key = JSON.stringify([asked, entries.map(({ id }) => id)]);
      if (key === shown) return;
      shown = key;
      current = answer;
      founds = new Map(answer?.found.map((one) => [one.id, one]));
      rest = entries;
      const all = entries.filter(({ id }) => meetsAll(founds.get(id))).length;
      firstInPart = all > 0 ? entries[all] : undefined;
      list.replaceChildren();
      empty.replaceChildren();
      showMore(ON_SCREEN);
      more.hidden = true;
      later(() => {
        showMore(AT_ONCE - ON_SCREEN);
        offerMore();
      });
    },
    showEmpty: (content) => {
      later(() => {});
      shown = '';
      rest = [];
      list.replaceChildren();
      more.hidden = true;
      empty.replaceChildren(content);
    },
    clear: () => {
      later(() => {});
      shown = '';
      more.hidden = true;
      list.replaceChildren();
      empty.replaceChildren();
    },
  };
};
