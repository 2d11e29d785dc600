/** Pages beside the writing: each newer one comes up behind the old and takes its place without a flash. */

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

const replace = (old: HTMLIFrameElement, src: string): void => {
  const box = old.parentElement;
  if (!box?.classList.contains('frames')) {
    old.src = src;
    return;
  }
  for (const waiting of box.querySelectorAll('.coming')) waiting.remove();
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
        replace(frame, addressIn(frame));
    },
    renew: (page) => {
      const newer = [...page.querySelectorAll<HTMLIFrameElement>('iframe[data-shown]')];
      const here = [...document.querySelectorAll<HTMLIFrameElement>('iframe[data-shown]:not(.coming)')];
      here.forEach((frame, i) => {
        const src = newer[i]?.getAttribute('src');
        if (src && frame.hasAttribute('src')) replace(frame, src);
      });
    },
  };
};
