/** The fields of a record as YAML: how they are parsed, and which values they then hold. */
import { type Document, isPair, isScalar, type LineCounter, parseDocument, visit } from 'yaml';

/** The keys that hold numbers. Elsewhere digits stay as typed: 4.50 is not 4.5, and a postal code may begin with 0. */
const NUMBERS = new Set(['clip', 'count', 'minAge', 'minutes', 'pace', 'places', 'share']);

/** Whether digits under a key are a number, and not text made of digits. */
export const holdsNumbers = (key: string): boolean => NUMBERS.has(key);

/** YAML 1.2, core schema. What is wrong with it is in the document's `errors` and `warnings`. */
export const parseFields = (source: string, lineCounter?: LineCounter): Document.Parsed =>
  parseDocument(source, {
    version: '1.2',
    schema: 'core',
    logLevel: 'silent',
    ...(lineCounter && { lineCounter }),
  });

const keepDigits = (document: Document): void => {
  visit(document, {
    Scalar: (key, scalar, ancestors) => {
      if (key === 'key' || typeof scalar.value !== 'number') return;
      const pair = ancestors.at(-1);
      if (isPair(pair) && isScalar(pair.key) && holdsNumbers(String(pair.key.value))) return;
      scalar.value = scalar.source;
    },
  });
};

/** The values of a document that is a map without errors; undefined where an alias has no end. Changes its numbers to text. */
export const valuesOf = (document: Document): Record<string, unknown> | undefined => {
  keepDigits(document);
  try {
    const values: Record<string, unknown> = document.toJS({ maxAliasCount: 100 });
    // An alias may hold itself: such a value has no end.
    JSON.stringify(values);
    return values;
  } catch {
    return undefined;
  }
};
