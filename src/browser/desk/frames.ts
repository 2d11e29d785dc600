/**
 * Pages beside the writing: each newer one takes the place of the old without a flash, by what differs between them, or
 * behind it until it is there.
 */
import { pageAt } from './page-now.ts';
import { patchPage } from './patch.ts';
import { breath } from './typing.ts';

interface Frames {
  /** Loads what the frames of a newer page show. */
  readonly renew: (page: Document) => void;
  /** Puts in the frames that a newer page has where there was nothing to show before. */
  readonly fill: (page: Document) => void;
  /** Loads again what the frames show. */
  readonly again: () => void;
}

const scrollOf = (frame: HTMLIFrameElement): readonly [number, number] => [
  frame.contentWindow?.scrollX ?? 0,
  frame.contentWindow?.scrollY ?? 0,
];

/** Where a frame is: where its reader went in it, or what it is still on its way to. */
const addressIn = (frame: HTMLIFrameElement): string => {
  const href = frame.contentWindow?.location.href;
  return href === undefined || href === 'about:blank' ? frame.src : href;
};

/** Takes away what is still on its way: something newer is there, or comes. */
const dropComing = (box: Element | null): void => {
  for (const waiting of box?.querySelectorAll(':scope > .coming') ?? []) waiting.remove();
};

/** Loads a page behind the one that is shown, and puts it in its place once it is there. */
const replace = (old: HTMLIFrameElement, src: string): void => {
  const box = old.parentElement;
  if (!box?.classList.contains('frames')) {
    old.src = src;
    return;
  }
  dropComing(box);
  const coming = document.createElement('iframe');
  coming.title = old.title;
  coming.dataset.shown = '';
  coming.className = 'coming';
  coming.src = src;
  coming.addEventListener(
    'load',
    () => {
      const [x, y] = scrollOf(old);
      coming.contentWindow?.scrollTo(x, y);
      coming.classList.remove('coming');
      old.remove();
    },
    { once: true },
  );
  box.append(coming);
};

/** The newest wish of each frame: an answer that comes late is none any more. */
const wishes = new WeakMap<HTMLIFrameElement, number>();

/** Shows the page at an address in a frame, as it is now. */
const bringNow = async (frame: HTMLIFrameElement, src: string): Promise<void> => {
  const wish = (wishes.get(frame) ?? 0) + 1;
  wishes.set(frame, wish);
  const here = frame.contentDocument;
  const isShown =
    here?.readyState === 'complete' && new URL(src, location.href).pathname === here.location.pathname;
  const page = isShown ? await pageAt(src).catch(() => undefined) : undefined;
  await breath();
  if (wishes.get(frame) !== wish || !frame.isConnected) return;
  const isStillThere = here === frame.contentDocument;
  if (here && page && isStillThere && patchPage(here, page)) dropComing(frame.parentElement);
  else replace(frame, isStillThere ? src : addressIn(frame));
};

/** Brings the part that is written at into sight, within its frame and without moving the page around it. */
const bringUp = (frame: HTMLIFrameElement): void => {
  const part = frame.contentDocument?.getElementById(frame.dataset.at ?? '');
  if (part)
    frame.contentWindow?.scrollTo(
      0,
      part.getBoundingClientRect().top + (frame.contentWindow?.scrollY ?? 0) - 12,
    );
};

const fill = (page: Document): void => {
  const newer = page.querySelectorAll('.frames');
  document.querySelectorAll('.frames').forEach((box, i) => {
    const frame = newer[i]?.querySelector<HTMLIFrameElement>('iframe[data-shown]');
    if (!frame || box.querySelector('iframe')) return;
    const first = document.importNode(frame, true);
    first.addEventListener('load', () => bringUp(first), { once: true });
    box.append(first);
  });
};

/** The frames of this page. Those that are folded away load when they are opened. */
export const frames = (): Frames => {
  for (const frame of document.querySelectorAll<HTMLIFrameElement>('iframe[data-at]')) {
    if (frame.contentDocument?.readyState === 'complete') bringUp(frame);
    frame.addEventListener('load', () => bringUp(frame), { once: true });
  }
  for (const details of document.querySelectorAll<HTMLDetailsElement>('details[data-lazy]'))
    details.addEventListener('toggle', () => {
      if (details.open)
        for (const frame of details.querySelectorAll<HTMLIFrameElement>('iframe[data-src]:not([src])'))
          frame.src = frame.dataset.src ?? '';
    });
  return {
    fill,
    again: () => {
      for (const frame of document.querySelectorAll<HTMLIFrameElement>(
        'iframe[data-shown][src]:not(.coming)',
      ))
        void bringNow(frame, addressIn(frame));
    },
    renew: (page) => {
      const newer = [...page.querySelectorAll<HTMLIFrameElement>('iframe[data-shown]')];
      const here = [...document.querySelectorAll<HTMLIFrameElement>('iframe[data-shown]:not(.coming)')];
      here.forEach((frame, i) => {
        const src = newer[i]?.getAttribute('src');
        if (src && frame.hasAttribute('src')) void bringNow(frame, src);
      });
    },
  };
};
