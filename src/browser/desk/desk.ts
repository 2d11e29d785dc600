/** The desk's pages in a browser: they work by their forms alone, and with this they save as one writes and stay as they are. */
import { colourPickers } from './colours.ts';
import { copyButtons } from './copy.ts';
import { dropPlaces } from './drop.ts';
import { frames } from './frames.ts';
import { markedStory } from './marks.ts';
import { pageNow } from './page-now.ts';
import { points } from './points.ts';
import { quietForm } from './quiet-form.ts';
import { swapParts } from './swap.ts';
import { takeToken } from './token.ts';
import { breath, inPause, wait } from './typing.ts';
import { followWork } from './work.ts';

document.documentElement.classList.add('scripted');

const shown = frames();
const story = markedStory();

let refreshes = 0;
/** Whether the pages beside it are to be loaded again, which a refresh that was overtaken has left to the next. */
let areFramesDue = false;

/** Fetches the page as it is now and puts its parts in place, the reader's own place and words left alone. */
const refresh = async (isNew = true): Promise<Document | undefined> => {
  refreshes += 1;
  areFramesDue ||= isNew;
  const mine = refreshes;
  const isStale = (): boolean => mine !== refreshes;
  const page = await pageNow();
  if (!page || isStale()) return page;
  await breath();
  takeToken(page);
  form.meet(page);
  await swapParts(page, isStale);
  if (isStale()) return page;
  await breath();
  story.remark();
  points();
  copyButtons();
  if (areFramesDue) shown.renew(page);
  areFramesDue = false;
  shown.fill(page);
  return page;
};

let known = document.body.dataset.version ?? '';

/** Milliseconds after a save until the page asks what is told about it: the article comes first. */
const TELL = 150;
let isTelling = false;

const tell = async (): Promise<void> => {
  if (isTelling) return;
  isTelling = true;
  await wait(TELL);
  await inPause();
  isTelling = false;
  await refresh(false);
};

const form = quietForm({
  onSaved: (version) => {
    known = version;
    // The article first, because its author looks at it; then, in a pause, all that is told about it.
    shown.again();
    void tell();
  },
});

copyButtons();
dropPlaces();
points();
colourPickers();
followWork(() => refresh(false));

for (const busy of document.querySelectorAll<HTMLFormElement>('form[data-busy]'))
  busy.addEventListener('submit', () => {
    const button = busy.querySelector('button');
    // What is pressed must be sent before it is switched off.
    setTimeout(() => {
      if (!button) return;
      button.textContent = busy.dataset.busy ?? '';
      button.disabled = true;
    });
  });

document.getElementById('side')?.addEventListener('click', () => {
  const turned = document.getElementById('desk')?.classList.toggle('turned') ?? false;
  localStorage.setItem('desk-side', turned ? 'left' : 'right');
});
if (localStorage.getItem('desk-side') === 'left') document.getElementById('desk')?.classList.add('turned');

const news = new EventSource('/news');
news.addEventListener('version', (event) => {
  const version = String((event as MessageEvent).data);
  if (version === known) return;
  known = version;
  // Our own save has brought its page along.
  if (!form.isSaving()) void refresh();
});
addEventListener('pagehide', () => news.close());
