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
import { followWork } from './work.ts';

document.documentElement.classList.add('scripted');

const shown = frames();
const story = markedStory();

/** Fetches the page as it is now and puts its parts in place, the reader's own place and words left alone. */
const refresh = async (isNew = true): Promise<Document | undefined> => {
  const page = await pageNow();
  if (!page) return undefined;
  takeToken(page);
  form.meet(page);
  swapParts(page);
  story.remark();
  points();
  copyButtons();
  if (isNew) shown.renew(page);
  shown.fill(page);
  return page;
};

/** Milliseconds after a save until the page asks what is told about it. */
const TELL = 150;
let telling = 0;
let known = document.body.dataset.version ?? '';

const form = quietForm({
  onSaved: (version) => {
    known = version;
    // The article first, because its author looks at it; then, in a pause, all that is told about it.
    shown.again();
    clearTimeout(telling);
    telling = window.setTimeout(() => void refresh(false), TELL);
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
