/** Buttons that copy: a page as it is read and as its source, a text as it stands, a part of the desk's own page. */

const known = new WeakSet<HTMLElement>();

const copy = async (address: string): Promise<void> => {
  const text = await (await fetch(address)).text();
  if (!/\.html(?:$|\?)/.test(address) || !('write' in navigator.clipboard)) {
    await navigator.clipboard.writeText(text);
    return;
  }
  const page = new DOMParser().parseFromString(text, 'text/html');
  for (const unread of page.querySelectorAll('style, script, title')) unread.remove();
  const plain = page.body.textContent?.replace(/\n\s*\n\s*/g, '\n\n').trim() ?? '';
  const item = new ClipboardItem({
    'text/html': new Blob([text], { type: 'text/html' }),
    'text/plain': new Blob([plain], { type: 'text/plain' }),
  });
  await navigator.clipboard.write([item]);
};

const copyPart = (id: string): Promise<void> =>
  navigator.clipboard.writeText(document.getElementById(id)?.textContent?.trim() ?? '');

/** Makes every such button of the page work. */
export const copyButtons = (): void => {
  for (const button of document.querySelectorAll<HTMLElement>('[data-copy], [data-copies]')) {
    if (known.has(button)) continue;
    known.add(button);
    button.addEventListener('click', () => {
      const said = document.getElementById('said');
      const { copy: address, copies: part } = button.dataset;
      (part === undefined ? copy(address ?? '') : copyPart(part)).then(
        () => {
          if (said) said.textContent = button.dataset.copied ?? '';
        },
        (error: unknown) => {
          if (said) said.textContent = String(error);
        },
      );
    });
  }
};
