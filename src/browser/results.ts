/** The list of what answers: the page's entries again, best first, with their words marked. */
import type { Language } from '../analysis/language/language.ts';
import type { Answer, Met } from '../analysis/search/find.ts';
import { debounce } from './debounce.ts';
import type { CatalogueEntry } from './entries.ts';
import { type Highlighter, highlighterFor, type WordsOf, wordsRemembered } from './highlights.ts';
import { said as words } from './said.ts';

/** Results at first, and each time more are asked for. */
const AT_ONCE = 24;
/** Results that a screen shows: the others of the first lot follow when nobody types. */
const ON_SCREEN = 6;

const detail = (label: string, nodes: readonly Node[]): HTMLElement => {
  const line = document.createElement('span');
  line.className = 'detail';
  // A line of its own to the eye; the space keeps it apart where only the text is read.
  line.append(label, ...nodes, ' ');
  return line;
};

/** Lines that say why an entry answers, where what it shows does not. */
const reasons = (
  entry: CatalogueEntry,
  met: readonly (Met | undefined)[],
  marker: Highlighter,
): readonly HTMLElement[] => {
  const lines: HTMLElement[] = [];
  const said = (label: string, texts: readonly string[]): void => {
    const touched = texts.filter(marker.touches);
    if (touched.length > 0) lines.push(detail(label, marker.mark(touched.join(', '))));
  };
  said(words.reason.also, entry.also);
  said(words.reason.material, entry.material);
  said(words.reason.colour, [entry.color]);
  // A colour may be said in another word than the one that was asked for, or not at all.
  said(entry.color === '' ? words.reason.colourOfPicture : words.reason.colourOr(entry.color), entry.colours);
  // What is met and stands in nothing that is shown: in the story, or the season.
  const unseen = marker.missing().flatMap((asked) => {
    const how = met[marker.asked.indexOf(asked)];
    return how ? [{ word: asked.guesses[0]?.word ?? asked.text, told: how.fields.includes('text') }] : [];
  });
  const line = (label: string, told: boolean): void => {
    const unshown = unseen.filter((one) => one.told === told).map(({ word }) => word);
    if (unshown.length > 0) lines.push(detail(label, marker.mark(unshown.join(', '))));
  };
  line(words.reason.packed, false);
  line(words.reason.story, true);
  return lines;
};

/** An entry's line without its picture, which costs more than all the rest and can wait. */
const lineWithoutPicture = ({ element, from }: CatalogueEntry): HTMLLIElement => {
  const line = element.cloneNode(false) as HTMLLIElement;
  for (const child of element.children) {
    if (child.tagName !== 'A') {
      line.append(child.cloneNode(true), ' ');
      continue;
    }
    const link = child.cloneNode(false) as HTMLElement;
    for (const part of child.children) if (part.tagName !== 'PICTURE') link.append(part.cloneNode(true));
    line.append(link, ' ');
  }
  const which = detail('', [document.createTextNode(from)]);
  const kind = line.querySelector('.detail');
  if (kind) kind.after(' ', which);
  else line.append(which);
  return line;
};

const resultOf = (entry: CatalogueEntry, answer: Answer | undefined, wordsOf: WordsOf): HTMLLIElement => {
  const line = lineWithoutPicture(entry);
  if (!answer) return line;
  const marker = highlighterFor(answer.asked, wordsOf);
  marker.markWithin(line);
  const why = reasons(entry, answer.metBy(entry.id), marker);
  const sale = line.querySelector('.sale');
  if (sale) sale.before(...why);
  else line.append(...why);
  return line;
};

/** Pictures of entries as results have them: each is made once, and moves with its entry. */
const pictureStore = () => {
  const made = new Map<number, Node>();
  const put = ({ id, element }: CatalogueEntry, line: HTMLLIElement, mayMake: boolean): void => {
    const original = element.querySelector('picture');
    if (!original) return;
    line.classList.add('pictured');
    let picture = made.get(id);
    if (!picture) {
      if (!mayMake) return;
      const copy = original.cloneNode(true) as HTMLElement;
      for (const one of copy.querySelectorAll<HTMLImageElement | HTMLSourceElement>('img, source'))
        one.sizes = '6rem';
      picture = copy;
      made.set(id, copy);
    }
    const link = line.querySelector('a');
    if (picture.parentNode !== link) link?.prepend(picture);
  };
  return put;
};

/** An entry that is shown, and whether it has every word that was asked for. */
export interface Hit {
  readonly entry: CatalogueEntry;
  readonly all: boolean;
}

interface ResultList {
  readonly show: (hits: readonly Hit[], answer: Answer | undefined) => void;
  readonly showEmpty: (content: DocumentFragment) => void;
  readonly clear: () => void;
}

/** The list of results in a region of the page; it is empty at first. */
export const resultList = (region: HTMLElement, language: Language): ResultList => {
  const list = document.createElement('ol');
  const more = document.createElement('button');
  more.type = 'button';
  const empty = document.createElement('div');
  empty.className = 'none';
  const wordsOf = wordsRemembered(language);
  let rest: readonly Hit[] = [];
  let current: Answer | undefined;
  /** The first that has not all the words, where another has. */
  let firstInPart: Hit | undefined;
  let shown = '';
  const later = debounce();

  const putPicture = pictureStore();
  let lines: { readonly entry: CatalogueEntry; readonly line: HTMLLIElement }[] = [];

  const lineOf = ({ entry }: Hit): HTMLLIElement => {
    const line = resultOf(entry, current, wordsOf);
    lines.push({ entry, line });
    putPicture(entry, line, false);
    return line;
  };
  const showMore = (count: number): HTMLLIElement | undefined => {
    const added = rest.slice(0, count).map((hit) => {
      const line = lineOf(hit);
      if (hit !== firstInPart) return [line];
      const divider = document.createElement('li');
      divider.className = 'divider';
      divider.textContent = words.partly;
      return [divider, line];
    });
    rest = rest.slice(count);
    list.append(...added.flat());
    return added[0]?.at(-1);
  };
  const completeShown = (): void => {
    for (const { entry, line } of lines) putPicture(entry, line, true);
    more.hidden = rest.length === 0;
    more.textContent = rest.length > AT_ONCE ? words.more(AT_ONCE, rest.length) : words.others(rest.length);
  };
  more.addEventListener('click', () => {
    showMore(AT_ONCE)?.querySelector('a')?.focus();
    completeShown();
  });
  region.append(list, more, empty);

  return {
    show: (hits, answer) => {
      // Nothing moves under a reader's eyes when the stories arrive and change nothing.
      const asked = answer?.asked.map(({ folded, stems }) => [folded, ...stems.beginning, ...stems.slip]);
      const first = hits.slice(0, AT_ONCE).map(({ entry }) => entry.id);
      const key = JSON.stringify([asked, hits.length, first]);
      if (key === shown) return;
      shown = key;
      current = answer;
      rest = hits;
      lines = [];
      const divide = hits.findIndex(({ all }) => !all);
      firstInPart = divide > 0 ? hits[divide] : undefined;
      list.replaceChildren();
      empty.replaceChildren();
      showMore(ON_SCREEN);
      more.hidden = true;
      later(() => {
        showMore(AT_ONCE - ON_SCREEN);
        completeShown();
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
