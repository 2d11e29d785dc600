/** What a visitor is asked to do, on every page, in every state that the records can say. */

import { describe, expect, test } from 'vitest';
import { type BuiltSite, siteOf } from '../support/built.ts';
import { smallBox } from '../support/small-box.ts';

const CALLS = {
  join: '{address: "https://crumb.example/join", text: Join us now}',
  waitList: '{address: "https://crumb.example/wait", text: Wait with us}',
  spare: '{address: "https://crumb.example/shelf", text: See the shelf}',
};
type Calls = Partial<Record<keyof typeof CALLS, string>>;

interface Given {
  readonly calls?: Calls;
  readonly call?: string;
  readonly own?: string;
  readonly spare?: string;
  readonly theme?: string;
}

const NOW = Date.UTC(2026, 2, 27);

const build = ({ calls = CALLS, call = 'join', own, spare }: Given, asOf = NOW): Promise<BuiltSite> => {
  const stated = Object.entries(calls).map(([kind, terms]) => `  ${kind}: ${terms}\n`);
  const cycle = (id: string, more = '') => ({
    [`cycles/${id}/cycle.md`]: `---
theme: Rising
summary: A spoon, and how it came to be in a box after a year in which nobody could find a good one at all.
shipped: ${id}-03
reveal: ${id}-19T19:00
${more}---
`,
    [`cycles/${id}/items/01-spoon.md`]: `---
name: Larch spoon of ${id}
kind: spoon
lead: true
brand: A Turner
description: A spoon.
category: none
${more && spare ? `spare: ${spare}\n` : ''}---
`,
  });
  return siteOf(
    {
      'box.md': smallBox(`subscription: {name: The box, price: 29.00}
calls:\n${stated.join('')}call: ${call}
`),
      ...cycle('2026-01'),
      ...cycle('2026-02'),
      ...cycle('2026-03', own ? `call: ${own}\n` : '# its own\n'),
    },
    asOf,
  );
};

const TEXTS = { join: 'Join us now', waitList: 'Wait with us', spare: 'See the shelf' };
/** The page for an address that leads nowhere leads back, and asks for nothing. */
const PAGES = [
  'boxes/2026-01-rising.html',
  'boxes/2026-02-rising.html',
  'boxes/2026-03-rising.html',
  'catalogue.html',
  'index.html',
  'kinds/spoon.html',
];
/** Which calls each page speaks. */
const spoken = (result: BuiltSite): Record<string, string> =>
  Object.fromEntries(
    [...result.site]
      .filter(([path]) => path.endsWith('.html') && path !== '404.html')
      .map(([path, html]) => [
        path,
        Object.entries(TEXTS)
          .filter(([, text]) => html.includes(text))
          .map(([kind]) => kind)
          .join(),
      ]),
  );
const everywhere = (kind: string, more: Record<string, string> = {}) => ({
  ...Object.fromEntries(PAGES.map((path) => [path, kind])),
  ...more,
});
const rulesOf = ({ diagnostics }: BuiltSite): readonly string[] =>
  diagnostics
    .filter(({ rule }) => /^(?:call|spare)/.test(rule))
    .map(({ weight, rule, location }) => `${weight}: ${rule} ${location.file}:${location.line}`);

const SPARE = '{count: 3, price: 4.00, address: "https://crumb.example/larch", until: 2026-03-31}';
const NEWEST = 'boxes/2026-03-rising.html';

describe('a changed call', () => {
  test.each(['join', 'waitList'] as const)(
    'to %s is on every public page at the next build',
    async (call) => {
      expect(spoken(await build({ call }))).toEqual(everywhere(call));
    },
  );

  test('of a cycle is on its own page, whatever the others say', async () => {
    const result = await build({ call: 'waitList', own: 'spare', spare: SPARE });
    expect(spoken(result)).toEqual(everywhere('waitList', { [NEWEST]: 'spare' }));
  });

  test('is in the feeds and in what machines read as well', async () => {
    const { site: texts } = await build({ call: 'waitList' });
    for (const path of ['feed.xml', 'feed.json']) {
      expect(texts.get(path)).toContain('Wait with us');
      expect(texts.get(path)).not.toContain('Join us now');
    }
    expect(texts.get('index.html')).toContain('https://schema.org/SoldOut');
    expect(texts.get('index.html')).not.toContain('crumb.example/join');
  });
});

describe('a call that cannot be answered', () => {
  test('join with no places left gives way to the wait list, and is a finding', async () => {
    const result = await build({ calls: { ...CALLS, join: CALLS.join.replace('}', ', places: 0}') } });
    expect(spoken(result)).toEqual(everywhere('waitList'));
    expect(rulesOf(result)).toEqual(['look at: call-places box.md:11']);
    expect(result.diagnostics[0]?.message).toBe(
      'Unexpected call to join with 0 places, expected places left; pages say “Wait with us” instead',
    );
  });

  test('join with no places left and no wait list gives way to no call at all', async () => {
    const join = CALLS.join.replace('}', ', places: 0}');
    const result = await build({ calls: { join } });
    expect(spoken(result)).toEqual(everywhere(''));
    expect(rulesOf(result)).toEqual(['look at: call-places box.md:11']);
    expect(result.site.get('index.html')).toContain('https://schema.org/OutOfStock');
  });

  test('spare pieces when none is on sale give way, in a cycle and in the box', async () => {
    const own = await build({ own: 'spare', spare: SPARE.replace('3', '0') });
    expect(spoken(own)).toEqual(everywhere('join'));
    expect(rulesOf(own)).toEqual(['look at: call-spare cycles/2026-03/cycle.md:6']);
    const box = await build({ call: 'spare' });
    expect(spoken(box)).toEqual(everywhere('waitList'));
    expect(rulesOf(box)).toEqual(['look at: call-spare box.md:14']);
  });

  test('the wait list without an address stops the build', async () => {
    const result = await build({ calls: { join: CALLS.join }, call: 'waitList' });
    expect(rulesOf(result)).toEqual(['must fix: call-address box.md:12']);
    expect([...result.site, ...result.backroom]).toEqual([]);
  });

  test.each(['-1', '2.5', 'many'])('so do %s places', async (places) => {
    const result = await build({
      calls: { ...CALLS, join: CALLS.join.replace('}', `, places: ${places}}`) },
    });
    const [{ rule, location, message } = { rule: '', location: { line: 0 }, message: '' }] =
      result.diagnostics;
    expect({ rule, line: location.line, out: result.site.size + result.backroom.size }).toEqual({
      rule: 'places',
      line: 11,
      out: 0,
    });
    expect(message).toContain('expected a whole number');
  });
});

describe('spare pieces', () => {
  const offers = (result: BuiltSite): boolean[] =>
    ['boxes/2026-03-rising.html', 'kinds/spoon.html', 'feed.xml', 'feed.json'].map(
      (path) => result.site.get(path)?.includes('crumb.example/larch') ?? false,
    );
  const graphOf = (result: BuiltSite): string =>
    [...result.site.values()]
      .flatMap((html) => html.match(/<script type="application\/ld\+json">[\s\S]*?<\/script>/g) ?? [])
      .join();

  test('are offered on every page that shows the piece, and to machines, while some are left', async () => {
    const result = await build({ spare: SPARE });
    expect(offers(result)).toEqual([true, true, true, true]);
    expect(graphOf(result)).toContain('"url":"https://crumb.example/larch"');
    expect(rulesOf(result)).toEqual([]);
  });

  test('that are sold out lose the offer everywhere, and say so', async () => {
    const result = await build({ spare: SPARE.replace('3', '0') });
    expect(offers(result)).toEqual([false, false, false, false]);
    expect(graphOf(result)).not.toContain('crumb.example/larch');
    expect(result.site.get(NEWEST)).toContain('All sold.');
    expect(rulesOf(result)).toEqual([]);
  });

  test('that are past their last day lose it too, say so, and are a finding', async () => {
    const result = await build({ spare: SPARE }, Date.UTC(2026, 2, 31, 23));
    expect(offers(result)).toEqual([false, false, false, false]);
    expect(graphOf(result)).not.toContain('crumb.example/larch');
    expect(result.site.get(NEWEST)).toContain('No longer for sale.');
    expect(rulesOf(result)).toEqual(['look at: spare-past cycles/2026-03/items/01-spoon.md:8']);
    expect(rulesOf(await build({ spare: SPARE }, Date.UTC(2026, 2, 31, 22, 59)))).toEqual([]);
  });
});
