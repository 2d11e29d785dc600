/** A list of things as the command line and the desk read it. */
import { fieldOfTitle, type ListField } from '../../content/item-list/column-names.ts';
import { type ItemList, readItemList } from '../../content/item-list/read-item-list.ts';
import { foldCase } from '../../text/fold.ts';

export type { ItemList, ListField };

/** The list in a text; `columns` has fields by titles where the owner said them. */
export const listThings = (
  text: string,
  currency: string,
  columns?: ReadonlyMap<string, ListField>,
): ItemList =>
  readItemList(text, {
    currency,
    ...(columns && { columns: new Map([...columns].map(([title, field]) => [foldCase(title), field])) }),
  });

/** The field that an owner's word for it means: "maker" and "brand" are one. */
export const fieldNamed = (word: string): ListField | undefined => fieldOfTitle(word)?.field;
