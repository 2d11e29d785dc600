/** The point of a photo that every cut keeps: press on the picture. */

const known = new WeakSet<HTMLElement>();

const spotOf = (image: HTMLElement): HTMLElement => {
  const figure = image.parentElement;
  const before = figure?.querySelector<HTMLElement>('.spot');
  if (before) return before;
  const spot = document.createElement('span');
  spot.className = 'spot';
  spot.hidden = true;
  figure?.append(spot);
  return spot;
};

/** Lets every picture of the page be pressed. */
export const points = (): void => {
  for (const image of document.querySelectorAll<HTMLImageElement>('img[data-point]')) {
    if (known.has(image)) continue;
    known.add(image);
    const form = document.getElementById(image.dataset.point ?? '');
    const field = (name: string): HTMLInputElement | null => form?.querySelector(`[name="${name}"]`) ?? null;
    const [across, down] = [field('across'), field('down')];
    if (!across || !down) continue;
    const show = (): void => {
      const spot = spotOf(image);
      const isPoint = /^\d+$/.test(across.value) && /^\d+$/.test(down.value);
      spot.hidden = !isPoint;
      spot.style.left = `${(Number(across.value) / 100) * image.clientWidth}px`;
      spot.style.top = `${(Number(down.value) / 100) * image.clientHeight}px`;
    };
    image.addEventListener('click', (event) => {
      const { left, top, width, height } = image.getBoundingClientRect();
      across.value = String(Math.round(((event.clientX - left) / width) * 100));
      down.value = String(Math.round(((event.clientY - top) / height) * 100));
      show();
    });
    for (const one of [across, down]) one.addEventListener('input', show);
    if (image.complete) show();
    else image.addEventListener('load', show);
    addEventListener('resize', show);
  }
};
