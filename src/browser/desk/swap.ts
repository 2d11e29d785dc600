/** Parts of a page, put in the place of those that stand there. */
import { giveAttributes } from './patch.ts';
import { breath } from './typing.ts';

/**
 * Puts the parts of a newer page in place, one after the other as keys leave room for it: those that have another content,
 * and nothing that is written in. Stops where `isStale`, because a newer page is on its way.
 */
export const swapParts = async (page: Document, isStale: () => boolean): Promise<void> => {
  for (const part of page.querySelectorAll<HTMLElement>('[data-part]')) {
    await breath();
    if (isStale()) return;
    const old = document.getElementById(part.id);
    if (!old) continue;
    giveAttributes(old, part);
    if (old.innerHTML === part.innerHTML || old.contains(document.activeElement)) continue;
    const open = new Set(
      [...old.querySelectorAll('details[open] > summary')].map(({ textContent }) => textContent),
    );
    old.innerHTML = part.innerHTML;
    for (const summary of old.querySelectorAll('summary'))
      if (open.has(summary.textContent)) summary.parentElement?.setAttribute('open', '');
  }
};
