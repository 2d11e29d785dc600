import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isQuery, queryOf, withQuery } from '../../src/text/query.ts';

/** The joined address as the WHATWG's own parser reads it. */
const pairsOf = (address: string): string[][] => [...new URL(address).searchParams];

const name = fc.stringMatching(/^[a-z_][a-z\d_.-]{0,5}$/);
const value = fc
  .stringMatching(/^[a-z\d~!@$*(),;.=-]{1,8}$|^[ -]?é{1,3}$|^%20[a-z]$/)
  .filter((text) => !text.includes(' '));
const query = fc
  .uniqueArray(fc.tuple(name, value), { minLength: 1, maxLength: 3, selector: ([key]) => key })
  .map((pairs) => pairs.map((pair) => pair.join('=')).join('&'));
const joint = fc.constantFrom('', '?', '&', '?&');
const place = fc.constantFrom(
  'https://shop.example',
  'http://shop.example/',
  'https://shop.example:8080/join',
  'https://bücher.example/größe/join.html',
  'https://shop.example/a%20b//c',
);
const own = fc.constantFrom('', '?', '?box=4', '?via=site', '?a&b=1&&c=%C3%A9', '?q=x?y', '?x=1&');
const fragment = fc.constantFrom('', '#', '#join', '#/path?not=a&query=1', '#a#b');

describe('a query', () => {
  test('is added where the address’s own parser finds it, and nothing else is changed', () => {
    fc.assert(
      fc.property(place, own, fragment, joint, query, (where, before, after, sign, added) => {
        const address = where + before + after;
        const joined = withQuery(address, queryOf(sign + added));
        const [was, is] = [new URL(address), new URL(joined)];
        expect({ origin: is.origin, path: is.pathname, hash: is.hash }).toEqual({
          origin: was.origin,
          path: was.pathname,
          hash: was.hash,
        });
        const fresh = pairsOf(`https://shop.example/?${added}`);
        const names = new Set(fresh.map(([key]) => key));
        expect(pairsOf(joined)).toEqual([
          ...pairsOf(address).filter(([key = '']) => !names.has(key)),
          ...fresh,
        ]);
        // As it was typed, and no twice-told name.
        expect(joined.startsWith(where)).toBe(true);
        expect(joined.endsWith(after)).toBe(true);
        expect(withQuery(joined, queryOf(added))).toBe(joined);
      }),
      { numRuns: 500 },
    );
  });

  test.each([
    ['https://shop.example/join', 'https://shop.example/join?via=letter'],
    ['https://shop.example', 'https://shop.example/?via=letter'],
    ['https://shop.example/join?box=4', 'https://shop.example/join?box=4&via=letter'],
    ['https://shop.example/join?via=site&box=4', 'https://shop.example/join?box=4&via=letter'],
    ['https://shop.example/join?', 'https://shop.example/join?via=letter'],
    ['https://shop.example/#join', 'https://shop.example/?via=letter#join'],
  ])('added to %s is %s', (address, joined) => {
    for (const written of ['?via=letter', '&via=letter', 'via=letter', '?via=letter&'])
      expect(withQuery(address, queryOf(written))).toBe(joined);
  });

  test.each([
    ['a letter of another script', 'via=größe', 'via=gr%C3%B6%C3%9Fe'],
    ['what is encoded already', 'via=a%20b', 'via=a%20b'],
  ])('may have %s', (_, text, coded) => expect(queryOf(text)).toBe(coded));

  test.each([
    '',
    '?',
    '&&',
    'letter',
    '/letter',
    '#letter',
    'via=',
    '=letter',
    'via=letter#top',
    'via=the letter',
    'via=letter&',
    'via=letter&&by=post',
    'via=50%',
    'via="letter"',
    'https://shop.example/join?via=letter',
    'shop.example/join?via=letter',
    'via: letter',
    'via=\ud800',
  ])('is not “%s”', (text) => expect(isQuery(text)).toBe(text === 'via=letter&'));
});
