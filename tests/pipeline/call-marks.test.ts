/** What a piece adds to a call's address, in every file that leads to the call. */
import { describe, expect, test } from 'vitest';
import type { Piece } from '../../src/model/box.ts';
import { pieceOrder } from '../../src/model/pieces.ts';
import { plainWords } from '../../src/render/plain-words.ts';
import { type BuiltSite, siteOf } from '../support/built.ts';
import { smallBox } from '../support/small-box.ts';

const NOW = Date.UTC(2026, 2, 27);

const build = (from: string, address = 'https://crumb.example/join?box=4#form'): Promise<BuiltSite> =>
  siteOf(
    {
      'box.md': smallBox(`subscription: {name: The box, price: 29.00}
pieces: [${pieceOrder.join(', ')}]
email: ada@crumb.example
calls:
  join:
    address: ${address}
    text: Join us now
${from}call: join
`),
      'cycles/2026-03/cycle.md': `---
theme: Rising
summary: A spoon, and how it came to be in a box after a year in which nobody could find a good one at all.
shipped: 2026-03-03
reveal: 2026-03-19T19:00
replay: {address: "https://video.example/rising", recorded: 2026-03-19}
invitation: {hook: Come and see.}
---

We looked for a spoon.
`,
      'cycles/2026-03/items/01-spoon.md': `---
name: Larch spoon
kind: spoon
lead: true
brand: A Turner
description: A spoon.
category: none
---

It was turned in May.
`,
    },
    NOW,
  );

const marksFor = (pieces: readonly Piece[]): string =>
  `    from:\n${pieces.map((piece) => `      ${piece}: ?via=${piece}\n`).join('')}`;

/** The files that lead to the call, with the piece that each is; what is no piece has no mark. */
const OWNERS: readonly (readonly ['site' | 'backroom', string, Piece | undefined])[] = [
  ['site', 'index.html', undefined],
  ['site', 'catalogue.html', undefined],
  ['site', 'boxes/2026-03-rising.html', 'article'],
  ['site', 'feed.xml', 'article'],
  ['site', 'feed.json', 'article'],
  ['backroom', 'index.html', undefined],
  ['backroom', '2026-03/run-sheet.html', 'live'],
  ['backroom', '2026-03/letter.html', 'letter'],
  ['backroom', '2026-03/letter.txt', 'letter'],
  ['backroom', '2026-03/letter-sheet.html', 'letter'],
  ['backroom', '2026-03/clip-sheet.html', 'clip'],
  ['backroom', '2026-03/cards.html', 'cards'],
  ['backroom', '2026-03/cards.txt', 'cards'],
];

const addressesIn = (text: string): readonly string[] => [
  ...new Set(
    [...text.replaceAll(/&amp;amp;|&amp;/g, '&').matchAll(/crumb\.example\/join[^\s"'<>\\]*/g)].map(
      ([found]) => found.replace(/&quot;?.*$/, '').replace(/\.$/, ''),
    ),
  ),
];

describe('a mark of a piece', () => {
  test('stands in the call of that piece’s files and of no other', async () => {
    const result = await build(marksFor(pieceOrder));
    const found = OWNERS.map(([where, path]) => [path, addressesIn(result[where].get(path) ?? '')]);
    expect(found).toEqual(
      OWNERS.map(([, path, piece]) => [
        path,
        [`crumb.example/join?box=4${piece ? `&via=${piece}` : ''}#form`],
      ]),
    );
    const message = result.backroom.get('2026-03/letter.eml') ?? '';
    // RFC 2045 §6.7: an equals sign is "=3D", and a line that is cut ends in one.
    expect(message.replace(/=\r\n/g, '')).toContain('join?box=3D4&via=3Dletter#form');
  });

  test('is in no file where box.md has none', async () => {
    const { site, backroom } = await build('');
    for (const text of [...site.values(), ...backroom.values()]) expect(text).not.toContain('via=');
  });

  test('stays out of structured data, which has the address as it is', async () => {
    const { site } = await build(marksFor(pieceOrder));
    const graphs = [...site.values()].flatMap((text) => [
      ...text.matchAll(/<script type="application\/ld\+json">(.*?)<\/script>/gs),
    ]);
    expect(graphs.some(([graph]) => graph.includes('join?box=4#form'))).toBe(true);
    for (const [graph] of graphs) expect(graph).not.toContain('via=');
  });

  test('does not keep a piece from carrying the call', async () => {
    const { diagnostics } = await build(marksFor(pieceOrder.filter((piece) => piece !== 'invitation')));
    expect(diagnostics.filter(({ rule }) => /^whole-call|call-mark/.test(rule))).toEqual([]);
  });

  test('stands in the middle of an address with a fragment, so that its words are others', () => {
    expect(plainWords('https://crumb.example/join?box=4&via=letter#form')).not.toContain(
      plainWords('https://crumb.example/join?box=4#form'),
    );
  });

  test('of the invitation is noted, because that leads to the live', async () => {
    const { diagnostics } = await build(marksFor(['invitation', 'letter']));
    expect(diagnostics.filter(({ rule }) => rule === 'call-mark')).toMatchObject([
      {
        weight: 'note',
        location: { file: 'box.md', line: 17 },
        message: expect.stringContaining('`invitation`'),
      },
    ]);
  });

  test.each([
    ['an e-mail address', 'ada@crumb.example'],
    ['one whose sign is encoded', 'ada%40crumb.example'],
    ['a placeholder in braces', '"{{email}}"'],
    ['a placeholder in brackets', '"[EMAIL]"'],
    ['a placeholder between bars', '"*|EMAIL|*"'],
    ['a placeholder with a dollar', '$email'],
    ['an encoded placeholder', '%7Bemail%7D'],
    ['a placeholder between lines', '__email__'],
    ['a placeholder between dashes', '"-email-"'],
    // Not looked at until the rule stood.
    ['a placeholder in round brackets', '(email)'],
    ['a placeholder between at signs', '"@email@"'],
    ['a placeholder between exclamation marks', '"!email!"'],
    ['a placeholder between colons', '":email:"'],
  ])('that says who, by %s, is looked at', async (_, who) => {
    const value = who.replace(/^"?/, '"?who=').replace(/"?$/, '"');
    const { diagnostics, site } = await build(`    from:\n      letter: ${value}\n`);
    expect(diagnostics.filter(({ rule }) => rule === 'call-mark')).toMatchObject([
      {
        weight: 'look at',
        location: { file: 'box.md', line: 17 },
        message: expect.stringContaining('which piece, never who'),
        fix: expect.stringContaining('`letter: ?via=letter`'),
      },
    ]);
    expect(site.size).toBeGreaterThan(0);
  });

  test.each(['?via=letter', '&via=letter&to=box', 'came_from=letter&by=e-mail', 'von=brief_märz'])(
    'that says which piece is none: %s',
    async (mark) => {
      const { diagnostics } = await build(`    from: {letter: "${mark}"}\n`);
      expect(diagnostics.filter(({ rule }) => /call-mark|letter$/.test(rule))).toEqual([]);
    },
  );

  test.each(['letter', 'https://crumb.example/join?via=letter', '"#letter"'])(
    'that is none is answered with its form: %s',
    async (typed) => {
      const { diagnostics } = await build(`    from:\n      letter: ${typed}\n`);
      const found = diagnostics.filter(({ location }) => location.line === 17);
      expect(found).toHaveLength(1);
      expect(found[0]).toMatchObject({
        weight: 'must fix',
        message: expect.stringContaining('a name and a word, as ?via=letter'),
      });
    },
  );

  test('that begins with a sign of its own is shown with the quotes it needs', async () => {
    const { diagnostics } = await build('    from:\n      letter: &via=letter\n');
    expect(diagnostics[0]).toMatchObject({ instead: { lines: ['      letter: "&via=letter"'] } });
  });

  test('of a piece that there is not is answered with those that there are', async () => {
    const { diagnostics } = await build('    from:\n      leter: ?via=letter\n');
    expect(diagnostics.map(({ message }) => message).join('\n')).toContain('expected `letter`');
  });
});
