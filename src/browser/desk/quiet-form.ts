/** A record's form that saves as one writes: after a pause, and when a field is left. */
import { renewToken } from './token.ts';

/** Milliseconds without a key after which what was written is saved. */
const PAUSE = 700;

/** The status of a form whose token is not the desk's, or not any more. */
const REFUSED = 403;

interface QuietForm {
  /** Hears of a newer page that somebody else's change has made. */
  readonly meet: (page: Document) => void;
  readonly isSaving: () => boolean;
}

const seenIn = (page: Document): HTMLInputElement | null => page.querySelector<HTMLInputElement>('#seen');

/** The form that saves by itself, where this page has one. */
export const quietForm = ({ onSaved }: { readonly onSaved: (version: string) => void }): QuietForm => {
  const form = document.querySelector<HTMLFormElement>('form[data-quiet]');
  let pause = 0;
  let isDirty = false;
  let saving: Promise<void> | undefined;
  const say = (words: string): void => {
    const said = document.getElementById('said');
    if (said) said.textContent = words;
  };
  const send = async (whole: HTMLFormElement): Promise<void> => {
    isDirty = false;
    const post = (): Promise<Response> =>
      fetch(whole.action, {
        method: 'POST',
        headers: { 'x-desk-quiet': '1' },
        body: new URLSearchParams(new FormData(whole) as unknown as Record<string, string>),
      });
    let answer = await post();
    if (answer.status === REFUSED && (await renewToken())) answer = await post();
    if (answer.headers.get('content-type')?.startsWith('application/json') !== true) {
      // Both versions, or why it was refused: the server says it on a page of its own.
      whole.submit();
      return;
    }
    const { seen, said, version }: { seen: string; said: string; version: string } = await answer.json();
    const here = seenIn(document);
    if (here) here.value = seen;
    onSaved(version);
    say(said);
  };
  const save = (): void => {
    clearTimeout(pause);
    if (!form || !isDirty || saving) return;
    saving = send(form)
      .catch((error: unknown) => {
        isDirty = true;
        say(String(error));
      })
      .finally(() => {
        saving = undefined;
        if (isDirty) pause = window.setTimeout(save, PAUSE);
      });
  };
  form?.addEventListener('input', () => {
    // What was said is of what was written before.
    if (!isDirty) say('');
    isDirty = true;
    clearTimeout(pause);
    pause = window.setTimeout(save, PAUSE);
  });
  form?.addEventListener('change', save);
  form?.addEventListener('submit', (event) => {
    // A thing that is taken out of a list, or put into one, makes another form.
    const asks = form.querySelector('input[name^="remove."]:checked');
    if (asks) {
      isDirty = false;
      return;
    }
    event.preventDefault();
    isDirty = true;
    save();
  });
  addEventListener('beforeunload', (event) => {
    if (isDirty) event.preventDefault();
  });
  return {
    isSaving: () => saving !== undefined,
    meet: (page) => {
      const [here, there] = [seenIn(document), seenIn(page)];
      if (!here || !there || here.value === there.value) return;
      if (isDirty || saving) say(document.body.dataset.elsewhere ?? '');
      else {
        const [old, newer] = [document.getElementById('form'), page.getElementById('form')];
        if (!old || !newer) return;
        // Nothing of ours is in it, so it is shown as it is now.
        const { scrollY } = window;
        for (const field of newer.querySelectorAll<
          HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement
        >('[name]')) {
          const mine = old.querySelector<HTMLInputElement>(`[id="${field.id}"]`);
          if (field.id !== '' && mine && mine.value !== field.value) mine.value = field.value;
        }
        here.value = there.value;
        window.scrollTo(window.scrollX, scrollY);
      }
    },
  };
};
