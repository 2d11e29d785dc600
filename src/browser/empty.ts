/** What is said where nothing answers: the nearest spelling, fewer conditions, kinds to look through. */
import type { Answer } from '../analysis/search/find.ts';
import { nearestForms } from '../analysis/search/spelling.ts';
import type { WholeIndex } from '../analysis/search/whole-index.ts';
import { addressOf, type Query } from './address.ts';
import { said as words } from './said.ts';

/** Most slips that a word which is only offered may be away. */
const OFFERED_WITHIN = 3;
const KINDS_OFFERED = 12;

const link = (text: string, query: Query): HTMLAnchorElement => {
  const anchor = document.createElement('a');
  anchor.href = addressOf(query);
  anchor.textContent = text;
  return anchor;
};

const paragraph = (...content: readonly (string | Node)[]): HTMLParagraphElement => {
  const made = document.createElement('p');
  made.append(...content);
  return made;
};

const WIDE: Omit<Query, 'q'> = { kind: '', when: '', colour: '', material: '', sale: '' };

/** The query with each unknown word in its nearest spelling; undefined where no word has one. */
const respelt = (query: Query, answer: Answer, indexes: readonly WholeIndex[]): string | undefined => {
  let text = query.q.trim();
  let changed = false;
  for (const { text: typed, folded, known } of answer.asked) {
    if (known) continue;
    const most = Math.min(OFFERED_WITHIN, Math.ceil(folded.length / 3));
    const [guess] = nearestForms(indexes, folded, false, most);
    if (!guess) continue;
    text = text.replace(typed, guess.word);
    changed = true;
  }
  return changed ? text : undefined;
};

/** `unnarrowed`: how many answer without the facets. */
export const emptyResult = (
  query: Query,
  answer: Answer | undefined,
  unnarrowed: number,
  indexes: readonly WholeIndex[],
  form: HTMLFormElement,
): DocumentFragment => {
  const made = document.createDocumentFragment();
  if (unnarrowed > 0) {
    const wide = { ...WIDE, q: query.q };
    const [before, all, after] = words.empty.narrowed(unnarrowed);
    made.append(paragraph(before, link(all, wide), after));
    return made;
  }
  made.append(paragraph(words.empty.unknown(query.q.trim())));
  const better = answer && respelt(query, answer, indexes);
  if (better !== undefined) {
    const [before, after] = words.empty.meant;
    made.append(paragraph(before, link(better, { ...query, q: better }), after));
  }
  const kinds = form.elements.namedItem('kind');
  if (kinds instanceof HTMLSelectElement) {
    const [before, between, after] = words.empty.kinds;
    const list = [...kinds.options]
      .filter(({ value }) => value !== '')
      .sort((a, b) => Number(b.dataset.all) - Number(a.dataset.all))
      .slice(0, KINDS_OFFERED)
      .flatMap((option, i) => [
        i > 0 ? between : '',
        link(option.dataset.name ?? '', { ...WIDE, q: '', kind: option.value }),
      ]);
    made.append(paragraph(before, ...list, after));
  }
  return made;
};
