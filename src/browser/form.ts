/** The search form: what it asks, and what it shows to be asked. */
import { QUERY_NAMES, type Query, queryFrom } from './address.ts';

interface SearchForm {
  readonly field: HTMLInputElement;
  readonly read: () => Query;
  readonly write: (query: Query) => void;
  /** Whether the facets are in sight. */
  readonly isNarrowing: () => boolean;
  readonly showReset: (shown: boolean) => void;
}

const valueIn = (control: unknown): string => {
  if (control instanceof HTMLInputElement)
    return control.type === 'checkbox' && !control.checked ? '' : control.value;
  return control instanceof HTMLSelectElement ? control.value : '';
};

const setValue = (control: unknown, value: string): void => {
  if (control instanceof HTMLInputElement) {
    if (control.type === 'checkbox') control.checked = value !== '';
    // The same value set again would move the cursor.
    else if (control.value !== value) control.value = value;
  } else if (control instanceof HTMLSelectElement) {
    // An address may name what the form has not.
    control.value = [...control.options].some((option) => option.value === value) ? value : '';
  }
};

/** The search form of the page. */
export const formOf = (root: HTMLFormElement): SearchForm => {
  const reset = root.querySelector<HTMLElement>('[type=reset]');
  const details = root.querySelector('details');
  return {
    field: root.elements.namedItem('q') as HTMLInputElement,
    read: () => queryFrom((name) => valueIn(root.elements.namedItem(name))),
    write: (query) => {
      for (const name of QUERY_NAMES) setValue(root.elements.namedItem(name), query[name]);
      if (details && QUERY_NAMES.some((name) => name !== 'q' && query[name] !== '')) details.open = true;
    },
    isNarrowing: () => details?.open ?? false,
    showReset: (shown) => {
      // Hidden from sight and keyboard alike, but its place is kept.
      if (reset) reset.style.visibility = shown ? 'visible' : 'hidden';
    },
  };
};
