/** Narrowing down by kind, time, colour, material and sale, and how many each choice would leave. */
import { qualitiesIn } from '../analysis/language/qualities.ts';
import type { Query } from './address.ts';
import type { CatalogueEntry } from './entries.ts';

type FacetName = Exclude<keyof Query, 'q'>;
type Facets = Readonly<Partial<Record<FacetName, string>>>;

/** Whether an entry is of a facet's value. */
const FACETS: Readonly<Record<FacetName, (entry: CatalogueEntry) => readonly string[]>> = {
  kind: ({ kind }) => [kind],
  when: ({ cycle }) => [cycle.slice(0, 4), cycle],
  colour: ({ colours }) => colours,
  material: ({ material }) => material.flatMap(qualitiesIn).map((one) => one.toLowerCase()),
  sale: ({ onSale }) => (onSale ? ['on'] : []),
};

const NAMES = Object.keys(FACETS) as FacetName[];

/** What a query narrows down by. */
export const facetsOf = (query: Query): Facets =>
  Object.fromEntries(NAMES.filter((name) => query[name] !== '').map((name) => [name, query[name]]));

const isOf = (entry: CatalogueEntry, facets: Facets, besides?: FacetName): boolean =>
  NAMES.every((name) => {
    const wanted = name === besides ? undefined : facets[name];
    return wanted === undefined || FACETS[name](entry).includes(wanted);
  });

/** What is of every facet's value, in its order. */
export const narrowed = <T extends { readonly entry: CatalogueEntry }>(
  hits: readonly T[],
  facets: Facets,
): readonly T[] =>
  Object.keys(facets).length === 0 ? hits : hits.filter(({ entry }) => isOf(entry, facets));

/** Puts behind each choice how many it would leave, the other facets being as they are. */
export const showCounts = (
  form: HTMLFormElement,
  hits: readonly { readonly entry: CatalogueEntry }[],
  facets: Facets,
): void => {
  for (const name of NAMES) {
    const counts = new Map<string, number>();
    for (const { entry } of hits)
      if (isOf(entry, facets, name))
        for (const value of new Set(FACETS[name](entry))) counts.set(value, (counts.get(value) ?? 0) + 1);
    const control = form.elements.namedItem(name);
    if (control instanceof HTMLSelectElement)
      for (const option of control.options) {
        if (option.value === '') continue;
        const count = counts.get(option.value) ?? 0;
        const text = `${option.dataset.name} (${count})`;
        if (option.text !== text) option.text = text;
        const dead = count === 0 && option.value !== facets[name];
        if (option.disabled !== dead) option.disabled = dead;
      }
    else {
      const place = form.querySelector(`[data-count=${name}]`);
      if (place) place.textContent = `(${counts.get('on') ?? 0})`;
    }
  }
};
