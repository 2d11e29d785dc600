/** A page that stands, made into a newer one of itself: only what differs is touched, so its reader stays where they are. */

// A page in a frame has classes of its own, so `instanceof` would say no.
const isElement = (node: Node | undefined): node is Element => node?.nodeType === Node.ELEMENT_NODE;

/** Gives an element the attributes of a newer one; what it has besides stays. */
export const giveAttributes = (old: Element, newer: Element): void => {
  for (const { name, value } of newer.attributes)
    if (old.getAttribute(name) !== value) old.setAttribute(name, value);
};

const takeAttributes = (old: Element, newer: Element): void => {
  for (const { name } of [...old.attributes]) if (!newer.hasAttribute(name)) old.removeAttribute(name);
  giveAttributes(old, newer);
};

/** Puts a node of a newer page where another stands, or changes what stands there where both are alike in kind. */
const renew = (old: ChildNode, newer: ChildNode | undefined): void => {
  if (newer === undefined || newer.isEqualNode(old)) return;
  if (isElement(old) && isElement(newer) && old.localName === newer.localName) patch(old, newer);
  else old.replaceWith(document.importNode(newer, true));
};

/** Makes an element what `newer` is. What is alike at either end of its children stays the very node that it was. */
const patch = (old: Element, newer: Element): void => {
  takeAttributes(old, newer);
  const [mine, theirs] = [[...old.childNodes], [...newer.childNodes]];
  while (mine[0] && theirs[0]?.isEqualNode(mine[0])) {
    mine.shift();
    theirs.shift();
  }
  let after: ChildNode | undefined;
  while (mine.length > 0 && theirs.at(-1)?.isEqualNode(mine.at(-1) ?? null)) {
    after = mine.pop();
    theirs.pop();
  }
  // Where as many differ as stood there, they are taken for the same parts in the same order.
  if (mine.length === theirs.length) {
    for (const [i, node] of mine.entries()) renew(node, theirs[i]);
    return;
  }
  for (const node of mine) node.remove();
  for (const node of theirs) old.insertBefore(document.importNode(node, true), after ?? null);
};

/** What decides how the whole of a page looks. */
const looksOf = (page: Document): string =>
  [...page.head.querySelectorAll('link[rel="stylesheet"], style')].map((one) => one.outerHTML).join('');

const hasScript = (page: Document): boolean =>
  page.querySelector('script:not([type="application/ld+json"])') !== null;

/**
 * Makes a page that is shown what a newer one is; false where it has to be loaded instead: its scripts have changed it, or
 * its style sheets are others.
 */
export const patchPage = (here: Document, newer: Document): boolean => {
  if (hasScript(here) || hasScript(newer) || looksOf(here) !== looksOf(newer)) return false;
  takeAttributes(here.documentElement, newer.documentElement);
  patch(here.body, newer.body);
  return true;
};
