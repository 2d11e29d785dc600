/**
 * The catalogue's search, in the visitor's browser. The page is whole without it; this shows what answers, sorted
 * out of the entries that the page has, and keeps what is asked in the address.
 */
import { languageFor } from '../analysis/language/language.ts';
import { type Answer, find, type KnownWords } from '../analysis/search/find.ts';
import { openPart } from '../analysis/search/part.ts';
import { type WholeIndex, wholeIndex } from '../analysis/search/whole-index.ts';
import { isNothing, type Query, queryOfAddress, rememberQuery } from './address.ts';
import { debounce } from './debounce.ts';
import { emptyResult } from './empty.ts';
import { type CatalogueEntry, entriesOf } from './entries.ts';
import { facetsOf, narrowed, showCounts } from './facets.ts';
import { formOf } from './form.ts';
import { loadHead, loadStory } from './load.ts';
import { type Hit, resultList } from './results.ts';
import { said as words } from './said.ts';
import { statusText } from './words.ts';

const start = (root: HTMLFormElement): void => {
  const form = formOf(root);
  const everything = document.getElementById('everything') as HTMLElement;
  const region = document.getElementById('results') as HTMLElement;
  const status = document.getElementById('found') as HTMLElement;
  /** That of the records first, then that of the stories, as far as it has come. */
  let indexes: readonly WholeIndex[] = [];
  let entries: readonly CatalogueEntry[] = [];
  let opened: Promise<void> | undefined;
  let list: ReturnType<typeof resultList> | undefined;
  /** Whether the address stands for something finished, to which the back button should return. */
  let settled = true;
  const known: KnownWords = new Map();
  const countLater = debounce();
  const addressLater = debounce();
  let language: Awaited<ReturnType<typeof languageFor>>;
  let last: { readonly text: string; readonly of: typeof indexes; readonly answer: Answer } | undefined;

  const answerTo = (text: string): Answer => {
    if (last?.text !== text || last.of !== indexes)
      last = { text, of: indexes, answer: find(indexes, language, text, {}, known) };
    return last.answer;
  };

  const show = (): void => {
    const query = form.read();
    const nothing = isNothing(query);
    everything.hidden = !nothing;
    region.hidden = nothing;
    form.showReset(!nothing);
    if (!list) {
      status.textContent = nothing ? '' : words.loading;
      return;
    }
    const answer = query.q.trim() === '' ? undefined : answerTo(query.q);
    const ranked: readonly Hit[] = answer
      ? answer.found.map(({ id, all }) => ({ entry: entries[id] as CatalogueEntry, all }))
      : entries.map((entry) => ({ entry, all: true }));
    const facets = facetsOf(query);
    const hits = narrowed(ranked, facets);
    countLater(() => form.isNarrowing() && showCounts(root, ranked, facets));
    if (nothing) {
      status.textContent = '';
      list.clear();
      return;
    }
    const all = hits.filter((hit) => hit.all).length;
    status.textContent = statusText(hits.length, all, entries.length, answer);
    if (hits.length > 0) list.show(hits, answer);
    else list.showEmpty(emptyResult(query, answer, ranked.length, indexes, root));
  };

  const open = (): Promise<void> => {
    opened ??= (async () => {
      const [head, spoken] = await Promise.all([
        loadHead(root.dataset.head as string),
        languageFor(document.documentElement.lang),
      ]);
      language = spoken;
      entries = entriesOf(everything, head.items);
      const records = wholeIndex([openPart(head.index)]);
      indexes = [records];
      list = resultList(region, language);
      show();
      let stories = wholeIndex([]);
      for (const file of (root.dataset.stories ?? '').split(' ').filter(Boolean)) {
        stories = wholeIndex([...stories.parts, openPart(await loadStory(file))]);
        indexes = [records, stories];
        show();
      }
    })().catch((error: unknown) => {
      // Without the stories the names still answer.
      if (indexes.length > 0) throw error;
      opened = undefined;
      everything.hidden = false;
      region.hidden = true;
      status.textContent = words.notLoaded;
    });
    return opened;
  };

  /** The address says what the form says, and the next change is a new step. */
  const settle = (): void => {
    addressLater(() => {});
    if (!settled) rememberQuery(form.read(), 'replace');
    settled = true;
  };

  const asked = (keep: 'typing' | 'done'): void => {
    const query: Query = form.read();
    if (settled || keep === 'done') rememberQuery(query, 'push');
    else addressLater(() => rememberQuery(query, 'replace'));
    settled = keep === 'done';
    show();
    if (!isNothing(query)) void open();
  };

  root.addEventListener('focusin', () => void open(), { once: true });
  root.addEventListener('input', (event) => {
    if (event.target === form.field) asked('typing');
  });
  root.addEventListener('change', (event) => {
    settle();
    if (event.target !== form.field) asked('done');
  });
  root.addEventListener('submit', (event) => {
    event.preventDefault();
    settle();
    show();
    void open();
  });
  root.addEventListener('reset', (event) => {
    event.preventDefault();
    settle();
    form.write({ q: '', kind: '', when: '', colour: '', material: '', sale: '' });
    asked('done');
    form.field.focus();
  });
  const follow = (): void => {
    const query = queryOfAddress();
    addressLater(() => {});
    form.write(query);
    settled = true;
    show();
    if (!isNothing(query)) void open();
  };
  addEventListener('popstate', follow);
  addEventListener('pagehide', settle);
  root.addEventListener('toggle', show, true);
  root.classList.add('ready');
  follow();
};

/** For the test that holds this script's words against the analyser's. */
export { languageFor };

const root = document.getElementById('search');
if (root instanceof HTMLFormElement) start(root);
