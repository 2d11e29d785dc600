/** What the tests of patched pages have a browser do. */
import { patchPage } from '../../../src/browser/desk/patch.ts';

const parsed = (text: string): Document => new DOMParser().parseFromString(text, 'text/html');

/** Numbers of chance, the same ones from the same seed (a linear congruential generator; constants of Numerical Recipes, from memory). */
const chances = (first: number): ((below: number) => number) => {
  let seed = first;
  return (below) => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return Math.floor((seed / 2 ** 32) * below);
  };
};

const TEXTS = ['tray', 'a cedar tray ', '<!-- kept -->', '<img src="a.avif" alt="a tray">', ''];
const ELEMENTS = ['p id="a"', 'p', 'section class="item"', 'em', 'div data-tint="#aabbcc"'];

/** Turns pages of chance into one another: how many were turned, and those that then were another page. */
export const turnPages = (turns: number): { readonly turned: number; readonly unlike: readonly string[] } => {
  const chance = chances(20260327);
  const some = (values: readonly string[]): string => values[chance(values.length)] ?? '';
  const parts = (count: number, depth: number): string =>
    Array.from({ length: count }, () => part(depth)).join('');
  const part = (depth: number): string => {
    if (depth === 0 || chance(4) === 0) return some(TEXTS);
    const element = some(ELEMENTS);
    const name = element.split(' ')[0] ?? '';
    return `<${element}>${parts(chance(4), name === 'p' ? 0 : depth - 1)}</${name}>`;
  };
  const page = (): string =>
    `<html lang="${some(['en', 'de'])}"><head><link rel="stylesheet" href="a.css"></head><body>${parts(4, 3)}</body></html>`;
  const unlike: string[] = [];
  let here = parsed(page());
  let turned = 0;
  for (let turn = 0; turn < turns; turn += 1) {
    const text = page();
    if (patchPage(here, parsed(text))) turned += 1;
    if (!parsed(text).documentElement.isEqualNode(here.documentElement)) unlike.push(text);
    if (chance(10) === 0) here = parsed(page());
  }
  return { turned, unlike };
};

/** Which elements of a page are the very same after it was made another, and its text then. */
export const keptNodes = (text: string, newer: string): readonly [kept: readonly boolean[], text: string] => {
  const here = parsed(text);
  const before = [...here.body.querySelectorAll('*')];
  patchPage(here, parsed(newer));
  const after = [...here.body.querySelectorAll('*')];
  return [before.map((node, i) => node === after[i]), here.body.textContent ?? ''];
};

/** Whether one page can be made the other. */
export const canPatch = (text: string, newer: string): boolean => patchPage(parsed(text), parsed(newer));
