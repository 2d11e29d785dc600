/** A record's fields as lines, the way people read them who do not know YAML. */
import { keysAt } from './schema-keys.ts';

/** Blanks that look like a space or like nothing and are not what YAML takes for one. */
export const STRANGE_BLANKS = '\\u00a0\\u1680\\u2000-\\u200b\\u202f\\u205f\\u2060\\u3000\\ufeff';

/** One line, taken apart: `  - alt: A pot` is lead, key, gap and value. */
export interface FieldLine {
  /** Blanks and dashes before the key, or before the value where there is no key. */
  readonly lead: string;
  readonly key: string | undefined;
  /** From the lead to the value: the key with its colon and the blanks after it. */
  readonly head: string;
  /** Without blanks at its end. */
  readonly value: string;
}

const LINE =
  /^([ \t]*(?:-[ \t]+)*)((?:([\p{L}_][\p{L}\p{M}\p{N}_-]*)|"([^"]*)"|'([^']*)')[ \t]*:(?:[ \t]+|$))?((?:.*\S)?)\s*$/u;

/** A line taken apart; every line has a lead and a value, be they empty. */
export const fieldLine = (line: string): FieldLine => {
  const [, lead = '', keyed = '', plain, double, single, value = ''] = LINE.exec(line) ?? [];
  return { lead, key: plain ?? double ?? single, head: lead + keyed, value };
};

/** How far in a line's key or value stands; a dash counts as a blank. */
export const depthOf = (line: string): number => fieldLine(line).lead.length;

/** The way to the key of a line, by the lines above that stand less deep; `0` for a place in a list. */
export const pathAt = (lines: readonly string[], at: number): readonly (string | number)[] => {
  const path: (string | number)[] = [];
  let depth = Number.POSITIVE_INFINITY;
  let isListed = false;
  for (let i = at; i >= 0; i--) {
    const text = lines[i] ?? '';
    const { lead, key } = fieldLine(text);
    const outer = lead.search(/\S|$/);
    const isDashed = lead.includes('-');
    // The dashes of a list may stand right below the first letter of its key.
    const isKeyOfList = isListed && outer === depth && key !== undefined && !isDashed;
    if (text.trim() === '' || (i < at && outer >= depth && !isKeyOfList)) continue;
    if (key !== undefined && (i === at || lead.length < depth || isKeyOfList)) path.unshift(key);
    if (isDashed) path.unshift(0);
    isListed = isDashed;
    depth = outer;
    if (depth === 0 && key !== undefined && !isDashed) break;
  }
  return path;
};

/** The keys that a schema knows at a path; where it has a list there, those of the things in it. */
export const keysOf = (schema: unknown, path: readonly (string | number)[]): readonly string[] => {
  const keys = keysAt(schema, path);
  return keys.length > 0 ? keys : keysAt(schema, [...path, 0]);
};
