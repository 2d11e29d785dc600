/** A cell of a list → the value of a record's field, by the field's own schema. */
import * as v from 'valibot';
import { likelyValues } from '../likely-values.ts';
import { itemSchema } from '../schemas.ts';
import type { FieldValue } from '../write-yaml.ts';
import { allergensNamed } from './allergen-names.ts';
import { unitOfTitle } from './column-names.ts';
import { countryNamed } from './country.ts';
import { currencyNamed, decimalsOf, readPrice } from './money.ts';

/** Fields of an item that a list may fill. */
export type ItemValues = Readonly<Record<string, FieldValue>>;

/** A column as its cells are read: what its title says besides, and what the cells say of each other. */
export interface ColumnUse {
  readonly field: string;
  readonly title: string;
  /** The sign before decimals, where the column shows one. */
  readonly decimals?: '.' | ',' | undefined;
}

/** How a column of these cells is read. */
export const columnUse = (field: string, title: string, cells: readonly string[]): ColumnUse => ({
  field,
  title,
  decimals: field === 'price' ? decimalsOf(cells) : undefined,
});

const LISTS = new Set(['also', 'material', 'allergens', 'mayContain', 'category']);

/** Commas and the like, and "and", part what stands in one cell; commas within brackets part nothing. */
const parts = (cell: string): readonly string[] =>
  cell
    .split(/(?<!\s)\s*[;,/\n+]\s*(?![^(]{0,200}\))|(?<!\s)\s+(?:and|&|und|et|y|e|en)\s+/)
    .map((part) => part.trim())
    .filter(Boolean);

/** Said in words: a dash or "n/a" may as well mean that nobody has looked. */
const NONE =
  /^(?:none|no|nil|keine?|aucune?|néant|ning[uú]n[oa]?|nessun[oa]?|geen|inga?|brak|nenhum[a]?|なし)$/i;

const isTaken = (field: string, value: FieldValue): boolean => {
  const schema = (itemSchema.entries as Readonly<Record<string, v.GenericSchema>>)[field];
  return schema !== undefined && v.safeParse(schema, value).success;
};

const firstTaken = (field: string, values: readonly FieldValue[]): FieldValue | undefined =>
  values.find((value) => isTaken(field, value));

const fieldValues = (
  cell: string,
  { field, title, decimals }: ColumnUse,
  own: string,
): ItemValues | undefined => {
  const one = (values: readonly FieldValue[]): ItemValues | undefined => {
    const value = firstTaken(field, values);
    return value === undefined ? undefined : { [field]: value };
  };
  if (field === 'price') {
    const unit = unitOfTitle(title);
    const price = readPrice(cell, { own, decimals });
    if (!price) return undefined;
    const currency = price.currency ?? (unit === undefined ? undefined : currencyNamed(unit, own));
    return {
      price: price.amount,
      ...(currency !== undefined && currency !== own && { priceCurrency: currency }),
    };
  }
  if (field === 'priceCurrency') {
    const currency = currencyNamed(cell, own);
    return currency === undefined ? undefined : currency === own ? {} : { priceCurrency: currency };
  }
  if (field === 'countryOfOrigin') {
    const country = countryNamed(cell);
    return country === undefined ? undefined : { countryOfOrigin: country };
  }
  if (field === 'allergens' || field === 'mayContain')
    return one(NONE.test(cell) ? ['none'] : [allergensNamed(parts(cell))]);
  if (field === 'gtin') return one([cell.replace(/[\s-]/g, '')]);
  if (field === 'minAge')
    return one([Number(/^(\d+(?:\.\d+)?)\s*\+?\s*(?:years?|yrs?|y)?$/i.exec(cell)?.[1] ?? Number.NaN)]);
  if (field === 'size' || field === 'weight') {
    const unit = unitOfTitle(title);
    const isBare = /\d$/.test(cell) && !/\p{L}{2}|["″]/u.test(cell);
    return one([isBare && unit !== undefined ? `${cell} ${unit}` : cell]);
  }
  if (LISTS.has(field)) return one([parts(cell)]);
  return one([cell, ...likelyValues(cell)]);
};

/**
 * What a cell says of its field; undefined where the field does not take it. `own` is the box's currency (ISO 4217):
 * a price in another brings its currency with it.
 */
export const readCell = (cell: string, use: ColumnUse, own: string): ItemValues | undefined => {
  // A text runs over lines where the record has one line.
  const text = cell
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean)
    .join(LISTS.has(use.field) ? '\n' : ' ');
  return text === '' ? {} : fieldValues(text, use, own);
};
