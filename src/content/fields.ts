/** The kinds of values that fields of records hold, each with what was expected instead. */
import * as v from 'valibot';
import { utf8Length } from '../text/utf8.ts';
import { currencyDecimals, isAddress, isDate } from './codes.ts';
import { withoutUnseen } from './unreadable-signs.ts';

/**
 * Characters that any field may have: a list of ingredients with hundreds of names has fewer. Ours, no source; whoever
 * has more to say writes it below the fields.
 */
const MOST_OF_FIELD = 5000;

/** What a person would type for a text; `expected` is what was meant where there is none. `asMeant` is how it is read. */
const textFor = (expected: string, asMeant: (value: string) => string = withoutUnseen) =>
  v.pipe(
    v.union([v.string(), v.number()], expected),
    v.transform((value) => asMeant(String(value))),
    v.trim(),
    v.maxLength(MOST_OF_FIELD, `a text of at most ${MOST_OF_FIELD} characters`),
    v.check((value) => !/\p{Surrogate}/u.test(value), 'whole signs: an emoji or letter is cut in half'),
    // The last one's message is the form that the table of fields has.
    v.minLength(1, expected),
  );
/** Text of any kind. */
export const text = textFor('a text');
/** Text that passes a test. */
export const is = (test: (value: string) => boolean, expected: string) =>
  v.pipe(textFor(expected), v.check(test, expected));
/** Text that passes a test to the letter: what nobody sees in it counts too. */
const isExactly = (test: (value: string) => boolean, expected: string) =>
  v.pipe(textFor(expected, String), v.check(test, expected));
/** Text of at most so many characters, as code points. */
export const atMost = (length: number) =>
  is((value) => [...value].length <= length, `a text of at most ${length} characters`);
/** Characters of a name or a heading: pictures and films set them large, on a few lines. Ours, no source. */
const MOST_OF_HEADING = 200;
/** A text that is set large. */
export const heading = atMost(MOST_OF_HEADING);
/** Entries of a list: nobody has so many voices, materials or pictures of one thing. Ours, no source. */
const MOST_OF_LIST = 300;
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
    v.maxLength(MOST_OF_LIST, `at most ${MOST_OF_LIST} of them`),
    v.array(one),
  );
/** `none` is a statement: the owner has looked, and there are none. A key that is absent states nothing. */
export const none = v.pipe(
  v.literal('none'),
  v.transform((): string[] => []),
);
/** Several texts, or the statement that there are none. */
export const listOrNone = v.union([none, list(text)], 'a text or a list of texts, or none');
/** A calendar date, ISO 8601. */
export const date = is(isDate, 'a date that exists, as 2026-03-19');
/** Signs that browsers take in an address and no standard does (URL Standard, URL code points); braces are left, because a sending service puts its own in their place. */
const NOT_IN_ADDRESS = /["<>^`\\ ]/g;
/** An absolute http or https address. */
export const address = v.pipe(
  is(isAddress, 'an address that begins with https:// or http://'),
  v.transform((value) => value.replace(NOT_IN_ADDRESS, encodeURIComponent)),
);
/** Control characters, which browsers leave out of an address before they look at it. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROLS = /[\0-\x1f\x7f-\x9f\u2028\u2029]/;
const HAS_SCHEME = /^[a-z][a-z0-9+.-]*:/i;
/** Where somebody can be written to or a page asked for (RFC 6068, RFC 9110), or what a sending service puts such an address in place of. */
const isAddressOrGap = (value: string): boolean => {
  if (value.length > 300 || /[<>"]/.test(value) || CONTROLS.test(value)) return false;
  if (/^mailto:/i.test(value)) return /^mailto:[^\s@]+@[^\s@]+$/i.test(value);
  return HAS_SCHEME.test(value) ? /^https:/i.test(value) && isAddress(value) : !value.startsWith('//');
};
/** An https or mailto address, or a sending service's placeholder for one. */
export const addressOrGap = isExactly(
  isAddressOrGap,
  'an https or mailto address, or your sending service’s placeholder, without < > or double quotes',
);
/** Whether an address names a place and nothing in it or for one person: others are written behind it. */
const isPlaceAlone = (text: string): boolean => {
  if (!isAddress(text) || /[?#]/.test(text)) return false;
  const { username, password } = new URL(text);
  return username === '' && password === '';
};
/** The address of a site. A host of other letters than ASCII's is written as IDNA has it (RFC 5890), which every reader knows. */
export const siteAddress = v.pipe(
  address,
  v.check(isPlaceAlone, 'the site’s address alone, without `?`, `#`, or a name and a password'),
  v.transform((text) =>
    text.replace(
      /^(https?:\/\/)([^/]*[^\0-\x7f][^/]*)/i,
      (_, scheme, host) => scheme + new URL(`http://${host}`).host,
    ),
  ),
);
/** A currency, ISO 4217. */
export const currency = is(
  (code) => currencyDecimals(code) !== undefined,
  'a currency in three capital letters, as GBP',
);
/** An amount as it was typed, without its currency. */
export const price = is((amount) => /^\d+(?:\.\d+)?$/.test(amount), 'an amount in digits, as 18.50');
/** A whole number from 0. */
export const wholeNumber = v.pipe(
  v.number('a whole number'),
  v.integer('a whole number'),
  v.minValue(0, 'a whole number from 0'),
);
const ONE_TO_FIVE = 'one to five colours, each as "#8a9a7b", between quotes';
/** One to five colours in hexadecimal digits. */
export const colours = v.pipe(
  list(is((value) => /^#(?:[0-9a-f]{3}|[0-9a-f]{6})$/i.test(value), 'a colour as "#8a9a7b", between quotes')),
  v.minLength(1, ONE_TO_FIVE),
  v.maxLength(5, ONE_TO_FIVE),
);
/**
 * Bytes that a file's name may have of a text (POSIX NAME_MAX is 255), with room for a month, a hash and an ending, and
 * for what a publish adds while it stages.
 */
const NAME_BYTES = 180;
const MOST_OF_NAME = `at most ${NAME_BYTES} letters, ${NAME_BYTES / 3} in Chinese or Japanese`;
const fitsName = (value: string): boolean => utf8Length(value) <= NAME_BYTES;
/** A text that also names a file of the site. */
export const namingText = is(fitsName, `a text of ${MOST_OF_NAME}`);
/** A part of an address: what stands in it as it is in every script. */
export const addressPart = v.pipe(
  is((value) => /^[\p{L}\p{M}\p{N}-]+$/u.test(value), 'letters, digits and hyphens alone, as hand-rake'),
  v.check(fitsName, `an address of ${MOST_OF_NAME}`),
);
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
  'a line each: a page, a colon, and the page that it sends on to',
);
/** "`file` and `alt`", as a message names lines. */
const namesOf = (keys: readonly string[], joint: 'and' | 'or'): string =>
  keys
    .map((key) => `\`${key}\``)
    .join(', ')
    .replace(/, (?=[^,]*$)/, ` ${joint} `);

/** Fields of a group without a needed one that a message names: of more of them, these many as examples. */
const MOST_NAMED = 3;

const linesBelow = (entries: v.ObjectEntries): string => {
  const keys = Object.keys(entries);
  const needed = keys.filter((key) => entries[key]?.type !== 'optional');
  if (needed.length > 0)
    return `the ${needed.length === 1 ? 'line' : 'lines'} ${namesOf(needed, 'and')} below it`;
  if (keys.length === 1) return `the line ${namesOf(keys, 'or')} below it`;
  return keys.length <= MOST_NAMED
    ? `any of the lines ${namesOf(keys, 'or')} below it`
    : `lines below it, as ${namesOf(keys.slice(0, MOST_NAMED), 'or')}`;
};

/** Several fields that belong together, each on a line of its own below the field that they are of. */
export const group = <T extends v.ObjectEntries>(entries: T, what: string) => {
  const expected = `${what}: ${linesBelow(entries)}`;
  // A list has names of its own, as `join`, which are no fields.
  return v.pipe(
    v.unknown(),
    v.check((value) => !Array.isArray(value), expected),
    v.strictObject(entries, expected),
  );
};

/** A field with what it is and values that it may have: the first of them is shown where there is room for one. */
export const described = <T extends v.GenericSchema>(
  schema: T,
  description: string,
  ...examples: readonly v.InferOutput<T>[]
) => v.pipe(schema, v.description(description), v.examples(examples));

const FOCUS = /^(\d{1,2}|100)% (\d{1,2}|100)%$/;
const photoFile = described(text, 'The name of its file among the photos', 'seed-tray.jpg');
const alt = described(
  text,
  'What it shows, in a sentence for people who cannot see it',
  'A pine tray of seedlings on a windowsill.',
);
/** A picture of a record with what is to be said of it. */
export const picture = group(
  {
    file: photoFile,
    alt,
    caption: v.optional(described(text, 'What is printed under it', 'Tomatoes on day sixteen.')),
    focus: v.optional(
      described(
        is(
          (value) => FOCUS.test(value),
          'two shares of the picture in percent, from its left and from its top, as 50% 40%',
        ),
        'The point to keep in view where a page shows only a part of it',
        '50% 40%',
      ),
    ),
  },
  'a picture',
);

/** A picture that is shown whole and has no caption. */
export const wholePicture = v.union(
  [text, group({ file: photoFile, alt }, 'a picture')],
  'the name of a file, or a picture: the lines `file` and `alt` below it',
);
