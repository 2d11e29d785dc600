/** The kinds of values that fields of records hold, each with what was expected instead. */
import * as v from 'valibot';
import { currencyDecimals, isAddress, isDate } from './codes.ts';

/** Text of any kind a person would type for it. */
export const text = v.pipe(
  v.union([v.string(), v.number()], 'text'),
  v.transform(String),
  v.trim(),
  v.minLength(1, 'some text'),
);
/** Text that passes a test. */
export const is = (test: (value: string) => boolean, expected: string) =>
  v.pipe(text, v.check(test, expected));
/** Text of at most so many characters, as code points. */
export const atMost = (length: number) =>
  v.pipe(
    text,
    v.check((value) => [...value].length <= length, `at most ${length} characters`),
  );
/** Several of one kind; one alone is taken for a list of one. */
export const list = <T extends v.GenericSchema>(one: T) =>
  v.pipe(
    v.union([
      v.array(v.unknown()),
      v.pipe(
        v.unknown(),
        v.check((value) => value !== undefined),
        v.transform((value) => [value]),
      ),
    ]),
    v.array(one),
  );
/** `none` is a statement: the owner has looked, and there are none. A key that is absent states nothing. */
export const none = v.pipe(
  v.literal('none'),
  v.transform((): string[] => []),
);
/** Several texts, or the statement that there are none. */
export const listOrNone = v.union([none, list(text)], 'a list, or none');
/** A calendar date, ISO 8601. */
export const date = is(isDate, 'a date that exists, as 2026-03-19');
/** An absolute http or https address. */
export const address = is(isAddress, 'an address that begins with https:// or http://');
/** A currency, ISO 4217. */
export const currency = is((code) => currencyDecimals(code) !== undefined, 'an ISO 4217 currency, as GBP');
/** An amount as it was typed, without its currency. */
export const price = is((amount) => /^\d+(?:\.\d+)?$/.test(amount), 'an amount, as 18.50');
/** A whole number from 0. */
export const wholeNumber = v.pipe(
  v.number('a whole number'),
  v.integer('a whole number'),
  v.minValue(0, 'a whole number from 0'),
);
/** One to five colours in hexadecimal digits. */
export const colours = v.pipe(
  list(is((value) => /^#(?:[0-9a-f]{3}|[0-9a-f]{6})$/i.test(value), 'a colour as "#8a9a7b", between quotes')),
  v.minLength(1, 'one to five colours'),
  v.maxLength(5, 'one to five colours'),
);
/** A part of an address: what stands in it as it is in every script. */
export const addressPart = is((value) => /^[\p{L}\p{M}\p{N}-]+$/u.test(value), 'letters, digits and hyphens');
/** No name begins with a dot: `..` would lead out of the site, and a hidden file is published by few hosts. */
const NAME = '[\\p{L}\\p{M}\\p{N}_~-][\\p{L}\\p{M}\\p{N}._~-]*';
const PAGE = `(?:${NAME}/)*${NAME}\\.html`;
const PAGE_ALONE = new RegExp(`^${PAGE}$`, 'u');
const PAGE_OR_PART = new RegExp(`^${PAGE}(?:#${NAME})?$`, 'u');
/** Pages of the site by their paths, each with the page, or the part of one, that took its place. */
export const formerPages = v.record(
  v.pipe(
    v.string(),
    v.check((key) => PAGE_ALONE.test(key), 'a page by its path in the site, as kinds/hand-tool.html'),
  ),
  is(
    (value) => PAGE_OR_PART.test(value),
    'an address of the site, as kinds/garden-tool.html or boxes/2026-03-first-sowings.html#hand-rake',
  ),
  'addresses as {kinds/hand-tool.html: kinds/garden-tool.html}',
);
const FOCUS = /^(\d{1,2}|100)% (\d{1,2}|100)%$/;
/** A picture of a record with what is to be said of it. */
export const picture = v.strictObject(
  {
    file: text,
    alt: text,
    caption: v.optional(text),
    focus: v.optional(is((value) => FOCUS.test(value), 'two shares from the left and the top, as 50% 40%')),
  },
  'a picture as {file: …, alt: …}',
);

/** A picture that is shown whole and has no caption. */
export const wholePicture = v.union(
  [text, v.strictObject({ file: text, alt: text })],
  'the name of a file, or {file: …, alt: …}',
);

/** A field with its line in the table of fields. */
export const described = <T extends v.GenericSchema>(schema: T, description: string) =>
  v.pipe(schema, v.description(description));
