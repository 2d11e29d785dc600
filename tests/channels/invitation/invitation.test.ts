import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Language } from '../../../src/analysis/language/language.ts';
import { languageFor } from '../../../src/analysis/language/language.ts';
import { namesOf, spoilersIn } from '../../../src/analysis/spoilers.ts';
import type { PrivateInput } from '../../../src/channels/channel.ts';
import { invitation } from '../../../src/channels/invitation/index.ts';
import { POST_LENGTHS, invitationOf as postsFor } from '../../../src/channels/invitation/posts.ts';
import type { Box, Cycle, Item } from '../../../src/model/box.ts';
import { momentOf } from '../../../src/model/calendar.ts';
import { boxAfter, previousCycle } from '../../../src/model/relations.ts';
import { isWordedIn, wordingFor } from '../../../src/wording/wording.ts';
import { box, cycle, item, settings } from '../../support/box.ts';
import { calendarFaults, LIBICAL, libicalErrors } from '../../support/calendars.ts';
import { carriedOut } from '../../support/carried-out.ts';
import { demoBox, privateInput } from '../../support/demo-box.ts';
import { shareOf } from '../../support/share-of.ts';
import { spokenIn, tellingInput } from '../../support/telling-input.ts';
import { describeWhen } from '../../support/tools.ts';

const cache = await mkdtemp(join(tmpdir(), 'lidlore-invitation-'));
afterAll(() => rm(cache, { recursive: true, force: true }));

let demo: Box;
let given: PrivateInput;
let english: Language;
beforeAll(async () => {
  demo = await demoBox(cache);
  given = await privateInput(demo, Date.UTC(2026, 2, 27));
  english = await languageFor('en-GB');
});

/** The files for every cycle of a box, as if each were still to come. */
const filesFor = async (whole: Box): Promise<ReadonlyMap<string, string>> => {
  const inviting = { ...whole, settings: { ...whole.settings, pieces: ['invitation'] as const } };
  const { outputs } = await carriedOut(invitation, { ...given, box: inviting, asOf: Date.UTC(2000, 0) });
  return new Map(outputs.map((output) => [output.path, 'text' in output ? output.text : '']));
};

const plain = (text: string): string =>
  text
    .replace(/\r\n /g, '')
    .replace(/<style>[\s\S]*?<\/style>/, '')
    .replace(/\\([,;])/g, '$1')
    .toLowerCase();

/** Whether a name stands in a text as words of its own, by nothing but its letters. */
const stands = (name: string, text: string): boolean =>
  new RegExp(
    `(?<![\\p{L}\\p{N}])${name.toLowerCase().replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}\\p{N}])`,
    'u',
  ).test(text);

test('the invitation to no box of the demo names its things, their kinds, their makers or its theme', async () => {
  const files = await filesFor(demo);
  expect(files.size).toBe(demo.cycles.length * 2);
  const given = demo.cycles.flatMap(({ id, items, theme }) =>
    ['html', 'ics'].flatMap((kind) => {
      const text = plain(files.get(`${id}/invitation.${kind}`) as string);
      return [theme, ...items.flatMap((one) => [one.name, ...namesOf(one)])]
        .filter((name) => stands(name, text))
        .map((name) => `${id}: ${name}`);
    }),
  );
  expect(given).toEqual([]);
});

const nouns = ['kettle', 'trowel', 'tea towel', 'beeswax candle', 'Dörte’s mug', 'felt pouch', 'sieve'];
const sentence = fc
  .array(fc.constantFrom('Come', 'and', 'see', 'our', 'new', 'red', ...nouns, ...nouns.map((n) => `${n}s`)), {
    minLength: 1,
    maxLength: 12,
  })
  .map((words) => `${words.join(' ')}.`);

test('whatever the owner wrote, a sentence that names a thing is left out', async () => {
  const any = fc.record({
    kinds: fc.uniqueArray(fc.constantFrom(...nouns), { minLength: 1, maxLength: 4 }),
    hook: fc.option(fc.array(sentence, { minLength: 1, maxLength: 5 }), { nil: undefined }),
    peek: fc.array(sentence, { minLength: 1, maxLength: 3 }),
  });
  await fc.assert(
    fc.asyncProperty(any, async ({ kinds, hook, peek }) => {
      const items = kinds.map(
        (kind, i): Item => item({ name: `Best ${kind}, no. ${i}`, kind, brand: 'Odd & Sons' }),
      );
      const before = cycle({ id: '2026-02', month: 2, peek: { text: peek.join(' ') } });
      const invited = cycle({ items, ...(hook && { invitation: { hook: hook.join(' ') } }) });
      const files = await filesFor(box({ cycles: [before, invited] }));
      // The page says to the owner which names were left out.
      const [posts = ''] = (files.get('2026-03/invitation.html') as string).split('<section data-notes>');
      const text = `${plain(posts)}\n${plain(files.get('2026-03/invitation.ics') as string)}`;
      expect(kinds.flatMap((kind) => [kind, `${kind}s`]).filter((name) => stands(name, text))).toEqual([]);
    }),
    { numRuns: shareOf(200) },
  );
});

test.each([
  ['Guess what the bee hotels are for.', ['bee hotel']],
  ['Nobody knows the BEE-HOTEL yet.', ['bee hotel']],
  ['The bee found a hotel.', []],
  ['It comes from Hollin & Daughters.', ['Hollin & Daughters']],
])('in “%s” stands %j', (text, names) => {
  const hotel = item({
    name: 'Bee hotel, 15 cm',
    kind: 'bee hotel',
    also: ['insect house'],
    brand: 'Hollin & Daughters',
  });
  expect(spoilersIn([hotel], english)(text).map((name) => name.toLowerCase())).toEqual(
    [...new Set(names.map((name) => name.toLowerCase()))].flatMap((name) =>
      name === 'bee hotel' ? [name, name] : [name],
    ),
  );
});

const keep = (): boolean => false;

const invitationOf = (whole: Box, one: Cycle, spoils: (sentence: string) => boolean) => {
  const before = previousCycle(whole, one)?.peek?.text;
  const { lang } = whole.settings;
  const wording = wordingFor(lang);
  return postsFor(
    {
      ...tellingInput(whole, one, one.reveal ?? 0),
      ...(before === undefined ? {} : { peekBefore: before }),
      next: boxAfter(whole, one),
    },
    {
      spoken: spokenIn(whole),
      ...(isWordedIn(wording, lang) ? { words: wording.invitation.post } : {}),
      spoils,
      set: (text) => text,
    },
  );
};

describe('the posts', () => {
  test('of the demo are as long as they may be, and say so', () => {
    for (const one of demo.cycles) {
      const { posts } = invitationOf(demo, one, keep) ?? { posts: [] };
      expect(posts.map(({ most }) => most)).toEqual(POST_LENGTHS);
      for (const { text, length, most } of posts) {
        expect([...new Intl.Segmenter('en').segment(text)].length).toBe(length);
        expect({ text, short: length <= most }).toEqual({ text, short: true });
      }
    }
  });

  test('say the day, the time and the zone in words, where it is seen, and that there will be a peek', () => {
    const invited = cycle({
      live: { address: 'https://video.example/live' },
      peek: { text: 'Something round.' },
    });
    const [short, medium, long] = invitationOf(box({ cycles: [invited] }), invited, keep)?.posts ?? [];
    expect(short?.text).toBe(
      'The March box, opened live: Thursday 19 March at 19:00 GMT. https://video.example/live',
    );
    expect(medium?.text).toContain('Thursday 19 March at 19:00 Greenwich Mean Time');
    expect(long?.text).toContain('first look at the April box');
    expect(`${short?.text}${medium?.text}${long?.text}`).not.toContain('Something round');
  });

  test('begin with what the cycle before ended with, where the owner wrote nothing else', () => {
    const before = cycle({ id: '2026-02', month: 2, peek: { text: 'It holds water. Clean the sill.' } });
    const texts = (invited: Cycle) =>
      invitationOf(box({ cycles: [before, invited] }), invited, keep)?.posts[1]?.text ?? '';
    expect(texts(cycle())).toMatch(/^It holds water\. We open/);
    expect(texts(cycle({ invitation: { hook: 'Bring a towel.' } }))).toMatch(/^Bring a towel\. We open/);
  });

  test('are dated by the box’s own clock, in its language', () => {
    const tokyo = settings({ timeZone: 'Asia/Tokyo', lang: 'ja' });
    const text = invitationOf(box({ settings: tokyo }), cycle(), keep)?.posts[0]?.text;
    expect(text).toContain('3月20日金曜日');
  });

  test('wait for a date while the parcels decide', () => {
    expect(invitationOf(box(), cycle({ reveal: undefined }), keep)).toBeUndefined();
  });
});

const lineOf = async (name: string, whole: Box): Promise<string> => {
  const event = (await filesFor(whole)).get('2026-03/invitation.ics') ?? '';
  return new RegExp(`^${name}[:;].*$`, 'm').exec(event)?.[0] ?? '';
};

describe('the event', () => {
  test('keeps its id when it is moved; its number and its stamp rise', async () => {
    const moments = ['2026-03-12T19:00', '2026-03-13T19:00'].map(
      (text) => momentOf(text, 'Europe/London') as number,
    );
    const boxes = [0, 1, 2].map((count) => box({ cycles: [cycle({ moved: moments.slice(0, count) })] }));
    const linesOf = (name: string) => Promise.all(boxes.map((one) => lineOf(name, one)));
    expect(new Set(await linesOf('UID'))).toEqual(new Set(['UID:2026-03.live@sillandsprig.example']));
    expect(await linesOf('SEQUENCE')).toEqual(['SEQUENCE:0', 'SEQUENCE:1', 'SEQUENCE:2']);
    const stamps = await linesOf('DTSTAMP');
    expect([...new Set(stamps)].sort()).toEqual(stamps);
  });

  test('of two boxes on one host has two ids', async () => {
    const urls = ['https://shop.example/tea/', 'https://shop.example/bread/'];
    const ids = await Promise.all(urls.map((url) => lineOf('UID', box({ settings: settings({ url }) }))));
    expect(new Set(ids).size).toBe(2);
  });

  test('gives the same bytes each time', async () => {
    expect(await filesFor(demo)).toEqual(await filesFor(demo));
  });

  test('of every box of the demo has no fault that readers forgive', async () => {
    const files = [...(await filesFor(demo))].filter(([path]) => path.endsWith('.ics'));
    expect(files.flatMap(([path, text]) => calendarFaults(text).map((fault) => `${path}: ${fault}`))).toEqual(
      [],
    );
  });
});

describeWhen(LIBICAL, 'libical 3 with python3', 'libical3', 'libical', () => {
  test('finds nothing in the events of the demo', async () => {
    const files = [...(await filesFor(demo))].filter(([path]) => path.endsWith('.ics'));
    expect(libicalErrors(files.map(([, text]) => text)).flat()).toEqual([]);
  });
});

const rulesOf = async (more: Partial<Cycle>, before: Partial<Cycle> = { peek: { text: 'Look up.' } }) => {
  const whole = box({
    settings: settings({ pieces: ['invitation'] }),
    cycles: [cycle({ id: '2026-02', month: 2, ...before }), cycle({ items: [item()], ...more })],
  });
  const asOf = Date.UTC(2026, 2, 19, 18, 59);
  const { diagnostics } = await carriedOut(invitation, { ...given, box: whole, asOf });
  return diagnostics.filter(({ message }) => !message.includes('2026-02')).map(({ rule }) => rule);
};

describe('a finding', () => {
  const live = { address: 'https://video.example/live' };
  test.each<[string, readonly string[], Partial<Cycle>, Partial<Cycle>?]>([
    ['nothing where all is said', [], { live }],
    ['a live without an address', ['invitation-address'], {}],
    ['a hook that names a thing', ['invitation-spoils'], { live, invitation: { hook: 'A plant mister!' } }],
    [
      'a peek before it that names a thing',
      ['invitation-spoils'],
      { live },
      { peek: { text: 'Plant misters.' } },
    ],
    [
      'an address that names a thing',
      ['invitation-spoils'],
      { live: { address: 'https://v.example/brass-plant-mister' } },
    ],
    ['nothing to be curious about', ['invitation-hook'], { live }, {}],
  ])('says: %s', async (_, rules, more, before) => {
    const reveal = Date.UTC(2026, 2, 19, 19);
    const shown = { reveal: Date.UTC(2026, 1, 19, 19) };
    expect(
      await rulesOf({ reveal, ...more }, { ...shown, ...(before ?? { peek: { text: 'Look up.' } }) }),
    ).toEqual(rules);
  });
});
