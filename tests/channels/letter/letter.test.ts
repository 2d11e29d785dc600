import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { PrivateInput, PublicInput } from '../../../src/channels/channel.ts';
import { letter, letterPictures } from '../../../src/channels/letter/index.ts';
import { mailAddress, messageText } from '../../../src/channels/letter/message.ts';
import { subjectsOf as subjectsWith } from '../../../src/channels/letter/subjects.ts';
import { readTemplates } from '../../../src/io/read-templates.ts';
import type { Box, BoxSettings, Cycle } from '../../../src/model/box.ts';
import { mailDate } from '../../../src/model/calendar.ts';
import { unsealed } from '../../../src/model/seal.ts';
import { wrapped } from '../../../src/render/plain-text.ts';
import { compileTemplates } from '../../../src/render/templates.ts';
import { wordingFor } from '../../../src/wording/wording.ts';
import { box, cycle, item, picture, settings } from '../../support/box.ts';
import { carriedOut } from '../../support/carried-out.ts';
import { bodiesOf, messageFaults } from '../../support/message-faults.ts';
import { readMessage } from '../../support/read-message.ts';

const { files, assets } = readTemplates({ own: join(import.meta.dirname, '../../../templates') });
const templates = compileTemplates(files, assets).value;
const AFTER = Date.UTC(2026, 2, 27);

const privateInput = (given: Box, asOf: number): PrivateInput => ({
  box: given,
  asOf,
  templates,
  language: undefined as never,
  faces: { digest: 'the faces', lacking: async () => [] },
  wording: wordingFor('en-GB'),
  proofs: new Map(),
  parcels: new Map(),
  photos: new Map(),
});
const publicInput = (given: Box, asOf: number): PublicInput => ({
  ...privateInput(given, asOf),
  box: unsealed(given, asOf),
});

/** Everything a letter should have. */
const whole = settings({
  pieces: ['article', 'letter'],
  email: 'hello@sillandsprig.example',
  postalAddress: { streetAddress: '4 Cable Steps', addressCountry: 'GB' },
  unsubscribe: 'https://sillandsprig.example/stop?who=all&why=no',
});
const replay = { address: 'https://video.example/one', minutes: 24 };

const picturesOf = (given: Box, asOf = AFTER) => letterPictures.plan(publicInput(given, asOf)).pictures ?? [];

const subjectsOf = (one: Cycle, own: BoxSettings) => subjectsWith(one, own, wordingFor('en-GB').letter.lines);

const made = async (given: Box, asOf = AFTER) => {
  const { outputs, diagnostics } = await carriedOut(letter, privateInput(given, asOf));
  const text = (name: string): string => {
    const found = outputs.find(({ path }) => path === `2026-03/${name}`);
    return found && 'text' in found ? found.text : '';
  };
  return {
    outputs,
    diagnostics,
    html: text('letter.html'),
    txt: text('letter.txt'),
    eml: text('letter.eml'),
  };
};

test('a box that does not choose the letter gets none, and no picture for one', async () => {
  const given = box({
    settings: settings({ pieces: ['article'] }),
    cycles: [cycle({ hero: picture(), replay })],
  });
  expect((await made(given)).outputs).toEqual([]);
  expect(letterPictures.plan(publicInput(given, AFTER))).toEqual({ documents: [], pictures: [] });
});

describe('findings', () => {
  const rulesFor = async (
    more: Parameters<typeof settings>[0],
    parts: Parameters<typeof cycle>[0] = { replay },
  ) =>
    (await made(box({ settings: settings({ ...whole, ...more }), cycles: [cycle(parts)] }))).diagnostics.map(
      ({ rule, weight }) => `${rule}: ${weight}`,
    );

  test('are none for a letter that has everything', async () => {
    expect(await rulesFor({})).toEqual([]);
  });

  test('name what box.md does not say', async () => {
    const bare = settings({ pieces: ['letter'] });
    const { diagnostics } = await made(box({ settings: bare, cycles: [cycle({ replay })] }));
    expect(diagnostics.map(({ rule, weight }) => `${rule}: ${weight}`)).toEqual([
      'letter-postal-address: look at',
      'letter-unsubscribe: look at',
      'letter-sender: look at',
    ]);
  });

  test('name a sender that not every mail program takes', async () => {
    expect(await rulesFor({ email: 'grüße@sill.example' })).toEqual(['letter-sender: look at']);
  });

  test('name the film that is missing, of the newest cycle that may be shown alone', async () => {
    expect(await rulesFor({}, {})).toEqual(['letter-replay: note']);
    const sealed = box({
      settings: whole,
      cycles: [cycle({ replay }), cycle({ id: '2026-04', reveal: AFTER + 1 })],
    });
    expect((await made(sealed)).diagnostics).toEqual([]);
  });

  // Common practice: 102 kB.
  test('name a letter that programs would cut off', async () => {
    const voices = Array.from({ length: 300 }, () => ({
      text: 'It came, and it was good. '.repeat(12),
      name: 'Imke',
      consent: '2026-03-22',
      given: false,
    }));
    expect(await rulesFor({}, { replay, voices })).toEqual(['letter-size: look at']);
  });
});

describe('the way out', () => {
  const withWay = async (unsubscribe: string) =>
    made(box({ settings: settings({ ...whole, unsubscribe }), cycles: [cycle()] }));

  // RFC 8058 §3.1: one https address, and the header that says one click is enough.
  test('is offered to the program itself when it is one https address', async () => {
    const { eml, html } = await withWay('https://sill.example/stop?who=all&why=no');
    expect(eml).toContain('\r\nList-Unsubscribe: <https://sill.example/stop?who=all&why=no>\r\n');
    expect(eml).toContain('\r\nList-Unsubscribe-Post: List-Unsubscribe=One-Click\r\n');
    expect(html).toContain('href="https://sill.example/stop?who=all&amp;why=no"');
  });

  test.each(['%%stop-here%%', '{{ way_out }}', '[WAY OUT]', '*|OUT|*'])(
    'is the service’s placeholder %s letter for letter, and then no header',
    async (placeholder) => {
      const { eml, html, txt } = await withWay(placeholder);
      expect(html).toContain(`href="${placeholder}"`);
      expect(txt).toContain(`\n${placeholder}\n`);
      expect(eml).not.toContain('List-Unsubscribe');
      expect(messageFaults(eml)).toEqual([]);
    },
  );

  test('is a gap to be seen where box.md has none', async () => {
    const { html, txt } = await made(box({ settings: settings({ pieces: ['letter'] }), cycles: [cycle()] }));
    for (const form of [html, txt]) {
      expect(form).toContain('[your postal address]');
      expect(form).toContain('[your sending service’s way to unsubscribe]');
    }
  });
});

test('the lead item comes first, and another says how it goes with it, or what it is', async () => {
  const { txt, html } = await made(
    box({
      settings: whole,
      cycles: [
        cycle({
          items: [
            item({ slug: 'tin', name: 'Seed tin', lead: true, number: 1, description: 'A tin. It shuts.' }),
            item({
              slug: 'rake',
              name: 'Rake',
              lead: false,
              number: 2,
              goesWith: 'It hides behind the tin.',
            }),
            item({
              slug: 'fork',
              name: 'Fork',
              lead: false,
              number: 3,
              description: 'Four tines. Of steel.',
            }),
          ],
        }),
      ],
    }),
  );
  expect(txt).toContain('1. Seed tin\n   The piece this box was built around. A tin. It shuts.\n');
  expect(txt).toContain('2. Rake\n   It hides behind the tin.\n');
  expect(txt).toContain('3. Fork\n   Four tines.\n');
  expect(html.indexOf('Seed tin')).toBeLessThan(html.indexOf('Rake'));
});

// US 16 CFR 255.5: what the voice was given is disclosed beside it.
test('a voice that had the box free or cheaper says so in both forms', async () => {
  const voices = [{ text: 'Good.', name: 'Imke', consent: '2026-03-22', given: true }];
  const { txt, html } = await made(box({ settings: whole, cycles: [cycle({ voices })] }));
  expect(txt).toContain('— Imke (had this box free or at a lower price)');
  expect(html).toContain('Imke (had this box free or at a lower price)');
});

describe('pictures', () => {
  const given = box({
    settings: whole,
    cycles: [
      cycle({ wholeBox: picture({ file: 'cycles/2026-03/photos/box.jpg' }), replay }),
      cycle({
        id: '2026-04',
        reveal: AFTER + 1,
        hero: picture({ file: 'cycles/2026-04/photos/bees.jpg' }),
        replay,
      }),
    ],
  });

  test('of a sealed cycle are not in the site, and are once it is revealed', () => {
    const paths = (asOf: number) =>
      picturesOf(unsealed(given, asOf), asOf).map(({ path }) => path.split('.')[0]);
    expect(paths(AFTER)).toEqual(['pictures/box-play-960']);
    expect(paths(AFTER + 1)).toEqual(['pictures/box-play-960', 'pictures/bees-play-960']);
  });

  test('of what is still to be sent lie beside its preview, and nothing in the back room is of what was sent before', async () => {
    const { outputs } = await made(given);
    const beside = outputs.filter(({ path }) => /preview|letter-pictures/.test(path));
    expect(beside.map(({ where, path }) => `${where} ${path.split('.')[0]}`)).toEqual([
      'backroom 2026-03/letter-preview',
      'backroom 2026-03/letter-pictures/box-play-960',
      'backroom 2026-04/letter-preview',
      'backroom 2026-04/letter-pictures/bees-play-960',
    ]);
    const later = await made(given, AFTER + 1);
    expect(later.outputs.filter(({ path }) => /2026-03.*(?:preview|letter-pictures)/.test(path))).toEqual([]);
    // The site's own files under another name, so that none is made twice.
    const site = new Set(picturesOf(given, AFTER + 1).map(({ picture: { key } }) => key));
    const keys = beside.flatMap((output) => ('picture' in output ? [output.picture.key] : []));
    expect(keys.filter((key) => !site.has(key))).toEqual([]);
  });

  test('show of an item what is not at the top already, wide for the lead item and narrower for another', () => {
    const hero = picture({ file: 'cycles/2026-03/photos/first.jpg' });
    const second = picture({ file: 'cycles/2026-03/photos/second.jpg' });
    const fork = picture({ file: 'cycles/2026-03/photos/fork.jpg' });
    const items = [
      item({ pictures: [hero, second] }),
      item({ slug: 'fork', lead: false, number: 2, pictures: [fork] }),
      item({ slug: 'only', lead: false, number: 3, pictures: [hero] }),
    ];
    const shown = picturesOf(box({ settings: whole, cycles: [cycle({ hero, items })] }));
    expect(shown.map(({ path }) => path.split('.')[0])).toEqual([
      'pictures/first-960',
      'pictures/second-960',
      'pictures/fork-640',
      'pictures/first-640',
    ]);
  });

  test('bear a play mark only where there is a film', async () => {
    const [output] = picturesOf(given);
    expect(output?.picture).toMatchObject({ mark: 'play', format: 'jpeg' });
    const silent = box({ settings: whole, cycles: [cycle({ hero: picture() })] });
    const [plain] = picturesOf(silent);
    expect(plain?.picture).not.toHaveProperty('mark');
    const { html } = await made(silent);
    expect(html).toContain(
      '<a class="accent" href="https://sillandsprig.example/boxes/2026-03-first-sowings.html"',
    );
  });
});

describe('subjects', () => {
  test('are three, the first of those that are shown whole in front', () => {
    const texts = subjectsOf(cycle({ items: [item(), item({ lead: false })] }), whole).map(
      ({ text }) => text,
    );
    expect(texts).toEqual([
      'A brass plant mister and what came with it',
      'Brass plant mister, and one thing that goes with it',
      'First Sowings: what was in the March 2026 box',
    ]);
    const long = subjectsOf(cycle({ title: 'A title of many words '.repeat(4).trim() }), whole);
    expect(long.map(({ length }) => length)).toEqual([18, 45, 87]);
  });

  test('begin with the record’s own, which is the message’s', async () => {
    const own = cycle({ letter: { subject: 'It rained, and we grew', preheader: 'Look inside' } });
    const { eml, html } = await made(box({ settings: whole, cycles: [own] }));
    expect(eml).toContain('\r\nSubject: It rained, and we grew\r\n');
    expect(html).toContain('<title>It rained, and we grew</title>');
    expect(html).toContain('>Look inside</div>');
  });
});

describe('the message', () => {
  const hard = {
    from: { name: 'Grün & Kübel, “Ostsee” 温室の庭', address: 'post@gruen.example' },
    date: 'Thu, 19 Mar 2026 19:00:00 +0000',
    id: '2026-03.letter@gruen.example',
    subject: 'Gießkanne, Säcke und fünf Töpfe für den Balkon 🌱🌿 — und die Geschichte dazu, 種まき',
    lang: 'de-DE',
    unsubscribe: 'https://gruen.example/abmelden',
    text: `Grüße,\n\n${'ein Wort = ein Topf. '.repeat(40)}\n.\nFrom here on  \nÜÜÜ\n`,
    html: `<!doctype html>\n<p title="a=b">${'Grün & '.repeat(400)}</p>\n`,
  };

  // RFC 2047: encoded words in Subject and in a phrase.
  test('with names in other scripts is read alike by mailparser and postal-mime', async () => {
    const message = messageText(hard);
    expect(messageFaults(message)).toEqual([]);
    const { mailparser, postalMime } = await readMessage(message);
    expect(mailparser).toEqual(postalMime);
    expect(mailparser).toMatchObject({
      subject: hard.subject,
      from: hard.from,
      text: hard.text.trimEnd(),
      html: hard.html.trimEnd(),
      id: '<2026-03.letter@gruen.example>',
      date: Date.UTC(2026, 2, 19, 19),
    });
    expect(bodiesOf(message)).toEqual([hard.text, hard.html]);
  });

  test.each([
    'Plain',
    'A "quoted" name, with \\ and, commas',
    'Line\r\nBcc: everybody@example.org',
    '=?utf-8?Q?not_ours?=',
    `${'Very long name of a box '.repeat(6)}end`,
  ])('keeps the name and subject %j as they are, on one line', async (words) => {
    const message = messageText({ ...hard, subject: words, from: { ...hard.from, name: words } });
    expect(messageFaults(message)).toEqual([]);
    const { mailparser, postalMime } = await readMessage(message);
    const line = words.replace(/\s+/g, ' ');
    expect([mailparser.subject, postalMime.subject]).toEqual([line, line]);
    expect([mailparser.from.name, postalMime.from.name]).toEqual([line, line]);
    expect(message).not.toMatch(/^Bcc/m);
  });

  test('has the same bytes each time', async () => {
    const given = box({ settings: whole, cycles: [cycle({ replay })] });
    expect((await made(given)).eml).toBe((await made(given, AFTER + 86_400_000)).eml);
  });

  // Each of what parsers of mail forgive, done on purpose.
  test.each([
    ['line feeds alone', (m: string) => m.replaceAll('\r\n', '\n')],
    ['a second Subject', (m: string) => m.replace('Subject:', 'Subject: one\r\nSubject:')],
    ['no Message-ID', (m: string) => m.replace(/Message-ID:.*\r\n/, '')],
    ['an offset without sign', (m: string) => m.replace('+0000', '0000')],
    ['an 8-bit header', (m: string) => m.replace('subscribers:;', 'Käufer:;')],
    ['a long encoded word', (m: string) => m.replace(/\?=\r\n =\?UTF-8\?B\?/, '')],
    [
      'a header over 78',
      (m: string) => m.replace('subscribers:;', `${'all of the subscribers '.repeat(5)}:;`),
    ],
    ['an open boundary', (m: string) => m.replace(/--\r\n$/, '\r\n')],
    ['a charset that is not true', (m: string) => m.replace('=C3', '=E4')],
    ['a body over 76', (m: string) => m.replace(/=\r\n/g, '')],
    ['one-click without an address', (m: string) => m.replace(/List-Unsubscribe:.*\r\n/, '')],
    ['an http address', (m: string) => m.replace('<https:', '<http:')],
  ])('would be found at fault for %s', (_, broken) => {
    expect(broken(messageText(hard))).not.toBe(messageText(hard));
    expect(messageFaults(broken(messageText(hard)))).not.toEqual([]);
  });
});

// RFC 5322 §3.3, in the zone's own time and across a change of clocks.
test.each([
  [Date.UTC(2026, 2, 19, 19), 'Europe/London', 'Thu, 19 Mar 2026 19:00:00 +0000'],
  [Date.UTC(2026, 3, 23, 18), 'Europe/London', 'Thu, 23 Apr 2026 19:00:00 +0100'],
  [Date.UTC(2025, 11, 31, 23), 'Asia/Kolkata', 'Thu, 1 Jan 2026 04:30:00 +0530'],
  [Date.UTC(2026, 0, 1, 1), 'America/New_York', 'Wed, 31 Dec 2025 20:00:00 -0500'],
])('the date of %i in %s is %s', (moment, zone, words) => {
  expect(mailDate(moment, zone)).toBe(words);
});

test.each([
  ['hello@sill.example', 'hello@sill.example'],
  ['hello@grün.example', 'hello@xn--grn-ioa.example'],
  ['grün@sill.example', undefined],
  ['a..b@sill.example', undefined],
])('the address %s goes into a header as %s', (written, address) => {
  expect(mailAddress(written)).toBe(address);
});

test('lines are broken between words at 72 characters, and an address is not broken', () => {
  const lines = wrapped(`${'garden '.repeat(30)}https://a.example/${'x'.repeat(80)} end`, '   ').split('\n');
  expect(lines.every((line) => line.startsWith('   '))).toBe(true);
  expect(lines.filter((line) => line.length > 72)).toEqual([`   https://a.example/${'x'.repeat(80)}`]);
});
