/** The page's own entries, which results are made of: nothing that stands there is loaded again. */
import type { PublishedParticulars } from '../analysis/search/published.ts';

/** An item as the page lists it. */
export interface CatalogueEntry {
  readonly id: number;
  readonly element: HTMLLIElement;
  /** `2025-04` */
  readonly cycle: string;
  /** "April 2025, High Balcony" */
  readonly from: string;
  readonly kind: string;
  readonly also: readonly string[];
  readonly material: readonly string[];
  readonly color: string;
  readonly colours: readonly string[];
  readonly onSale: boolean;
}

/** Entries in the page's order, each with what the index says of it. */
export const entriesOf = (
  everything: HTMLElement,
  particulars: readonly PublishedParticulars[],
): readonly CatalogueEntry[] => {
  const entries = [...everything.querySelectorAll<HTMLElement>('.cycle')].flatMap((section) => {
    const month = section.querySelector('header .label')?.textContent ?? '';
    const theme = section.querySelector('h2')?.textContent ?? '';
    return [...section.querySelectorAll('li')].map((element) => ({
      element,
      cycle: section.id.replace(/^cycle-/, ''),
      from: `${month}, ${theme}`,
      onSale: element.querySelector('.sale') !== null,
    }));
  });
  return particulars.flatMap(([kind, also, material, color, colours], id) => {
    const entry = entries[id];
    return entry ? [{ id, ...entry, kind, also, material, color, colours }] : [];
  });
};
