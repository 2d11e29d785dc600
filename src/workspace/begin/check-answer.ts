/** Whether an answer is one that its field takes, in the schema's own words. */
import * as v from 'valibot';
import { likelyValues } from '../../content/likely-values.ts';
import { MONTH } from '../../content/paths.ts';
import { schemaAt } from '../../content/schema-keys.ts';
import { boxSchema, cycleSchema, itemSchema } from '../../content/schemas.ts';
import { dayOfDate } from '../../text/days.ts';

const SCHEMAS = { box: boxSchema, cycle: cycleSchema, item: itemSchema } as const;

/** An answer as its field takes it, or what was expected instead: "an address that begins with https:// or http://". */
export type CheckedAnswer = { readonly value: string } | { readonly expected: string };

/** The answer for a field at a path of a record. What was surely meant is taken: `3/19/2026` for `2026-03-19`. */
export const checkAnswer = (
  record: keyof typeof SCHEMAS,
  path: readonly string[],
  typed: string,
): CheckedAnswer => {
  const schema = schemaAt(SCHEMAS[record], path) as v.GenericSchema | undefined;
  if (!schema) throw new Error(`Expected a field at ${path.join('.')} of a ${record}`);
  const text = typed.replace(/\s+/g, ' ').trim();
  const result = v.safeParse(schema, text);
  if (result.success) return { value: text };
  // A sign put before whatever was typed is no slip: it would make an address of any word, and a text of nothing.
  const meant = likelyValues(text).find(
    (value) =>
      typeof value === 'string' && !/^(?:#|https:)/.test(value) && v.safeParse(schema, value).success,
  );
  if (typeof meant === 'string') return { value: meant };
  return { expected: result.issues[0].message };
};

/**
 * A day as it is said beside a month of the box (`2026-03`): where it has no year ("3 March"), it is the one nearest to
 * that month. Anything else stays as it was typed.
 */
export const dayNear = (typed: string, month: string): string => {
  if (/\d{4}/.test(typed)) return typed;
  const about = dayOfDate(`${month}-15`);
  const near = [-1, 0, 1]
    .map((years) => checkAnswer('cycle', ['shipped'], `${typed} ${Number(month.slice(0, 4)) + years}`))
    .flatMap((answer) => ('value' in answer ? [answer.value] : []))
    .sort((a, b) => Math.abs(dayOfDate(a) - about) - Math.abs(dayOfDate(b) - about));
  return near[0] ?? typed;
};

/** A month as it is said beside another: "December" or "Dec 2027" as `2026-12`; undefined for what is none. */
export const monthNear = (typed: string, month: string): string | undefined => {
  if (MONTH.test(typed)) return typed;
  const day = checkAnswer('cycle', ['shipped'], dayNear(`1 ${typed}`, month));
  return 'value' in day ? day.value.slice(0, 'YYYY-MM'.length) : undefined;
};
