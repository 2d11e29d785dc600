import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { liveFindings as findingsAbout } from '../../src/channels/live/findings.ts';
import { parseMarkdown } from '../../src/content/markdown.ts';
import { locationText } from '../../src/diagnostics/diagnostic.ts';
import { liveOf as beatsOf, type Live } from '../../src/model/beats.ts';
import type { Box, Cycle, Item, LiveWords, Moment } from '../../src/model/box.ts';
import { chaptersOf, momentAddress } from '../../src/model/chapters.ts';
import { secondsOf } from '../../src/model/link-live.ts';
import { isSealed } from '../../src/model/seal.ts';
import { clockText, firstSentences, secondsToSay } from '../../src/model/speaking.ts';
import { defined } from '../../src/text/defined.ts';
import { wordCount } from '../../src/text/segments.ts';
import { sentencesOf } from '../../src/text/sentences.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { box, cycle, item, settings } from '../support/box.ts';
import { spokenIn, tellingInput } from '../support/telling-input.ts';
import { sourcesOf, wholeBox } from '../support/whole-box.ts';

const NOW = Date.UTC(2026, 2, 1);
const english = { lang: 'en-GB', pace: 150 };

const { beatTitle, chapterTitle } = wordingFor('en-GB').live;
const liveOf = (whole: Box, one: Cycle, asOf: Moment): Live =>
  beatsOf(tellingInput(whole, one, asOf), spokenIn(whole));
const liveFindings = (found: Live, one: Cycle, asOf: Moment) =>
  findingsAbout(found, { cycle: one, sealed: isSealed(one, asOf) }, beatTitle);

const told = (text: string) => ({ file: 'cycles/2026-03/cycle.md', tree: parseMarkdown(text) });
const live = (more: Partial<Cycle> = {}, pace?: number): Live => {
  const one = cycle(more);
  return liveOf(box({ settings: settings(pace === undefined ? {} : { pace }), cycles: [one] }), one, NOW);
};
const beat = (found: Live, name: string) => {
  const one = found.beats.find((other) => other.name === name);
  if (!one)
    throw new Error(`Expected a beat ${name} among ${found.beats.map((other) => other.name).join(', ')}`);
  return one;
};

describe('speaking', () => {
  test('at 150 words a minute 75 words take half a minute', () => {
    expect(secondsToSay(Array(75).fill('word').join(' '), english)).toBe(30);
    expect(secondsToSay('', english)).toBe(0);
  });

  test('keeps sentences whole, and the first however long it is', () => {
    const text = 'One two three four five. Six seven eight. Nine.';
    expect(firstSentences(text, 3.2, english)).toEqual(['One two three four five.', 'Six seven eight.']);
    expect(firstSentences(text, 0.1, english)).toEqual(['One two three four five.']);
    expect(firstSentences('', 9, english)).toEqual([]);
  });

  test('a title or an initial does not end a sentence', () => {
    expect(sentencesOf('Dr. Ludd and Mrs. B. Marsh came. They stayed.', 'en')).toEqual([
      'Dr. Ludd and Mrs. B. Marsh came.',
      'They stayed.',
    ]);
  });

  test('words are counted in languages that write none apart', () => {
    expect(wordCount('木製の種まきトレイ', 'ja')).toBeGreaterThan(2);
  });

  test('a clock reads what a clock wrote', () => {
    fc.assert(
      fc.property(fc.nat(9 * 3600), (seconds) => {
        expect(secondsOf(clockText(seconds))).toBe(seconds);
      }),
    );
  });
});

const words = fc.array(fc.constantFrom('seed', 'tray', 'wrong', 'I', 'did', 'that.', 'Why?', '種', '“No”,'), {
  maxLength: 120,
});
const sentence = words.map((all) => all.join(' '));
const anyItem = (i: number): fc.Arbitrary<Item> =>
  fc
    .record({
      story: sentence,
      goesWith: fc.option(sentence, { nil: undefined }),
      more: fc.array(sentence, { maxLength: 3 }),
    })
    .map(({ story, goesWith, more }) =>
      item({
        slug: `item-${i}`,
        number: i + 1,
        lead: i === 0,
        story: told(story),
        hazards: { categories: [], more },
        ...(goesWith === undefined ? {} : { goesWith }),
      }),
    );
const anyLive: fc.Arbitrary<LiveWords> = fc.record(
  {
    minutes: fc.integer({ min: 1, max: 90 }),
    hook: sentence,
    greet: fc.array(sentence, { maxLength: 3 }),
    mishap: sentence,
    questions: fc.array(sentence, { maxLength: 7 }),
    call: sentence,
  },
  { requiredKeys: [] },
);
const anyCycle = fc
  .tuple(
    fc.integer({ min: 0, max: 9 }).chain((n) => fc.tuple(...Array.from({ length: n }, (_, i) => anyItem(i)))),
    sentence,
    fc.option(anyLive, { nil: undefined }),
  )
  .map(([items, opening, own]) => ({ items, story: told(opening), ...(own ? { live: own } : {}) }));

describe('the clock of a live', () => {
  test('adds up, never runs back, and fills the wanted length', () => {
    fc.assert(
      fc.property(anyCycle, fc.integer({ min: 60, max: 300 }), (more, pace) => {
        const found = live(more, pace);
        let at = 0;
        for (const { start, seconds, speaking, handling, room } of found.beats) {
          expect(start).toBe(at);
          for (const part of [seconds, speaking, handling, room]) expect(part).toBeGreaterThanOrEqual(0);
          expect(seconds).toBe(Math.ceil(speaking + handling) + room);
          expect(Number.isInteger(seconds)).toBe(true);
          at += seconds;
        }
        expect(found.seconds).toBe(at);
        const minutes = more.live?.minutes;
        if (minutes === undefined) expect(found.seconds).toBe(found.needed);
        else if (more.items.length > 0) expect(found.seconds).toBe(Math.max(found.needed, minutes * 60));
      }),
    );
  });

  test('every item and every question of the owner’s is there once', () => {
    fc.assert(
      fc.property(anyCycle, (more) => {
        const { beats } = live(more);
        expect(beats.filter(({ kind }) => kind === 'item').map(({ name }) => name)).toEqual(
          more.items.map(({ slug }) => slug),
        );
        const asked = beats.filter(({ kind }) => kind === 'questions').flatMap(({ say }) => say);
        if (more.live?.questions && more.items.length > 0) expect(asked).toEqual(more.live.questions);
        expect(new Set(beats.map(({ name }) => name)).size).toBe(beats.length);
      }),
    );
  });
});

describe('words', () => {
  const opening = `Of four labels one is right.

The rest of the box was built around a tape measure. It is twelve.

I ordered the wrong ones by mistake. Bram turned one over.`;

  test('are drawn from the opening, from what went wrong and from how it was chosen', () => {
    const found = live({ story: told(opening) });
    expect(beat(found, 'hook').say).toEqual(['Of four labels one is right.']);
    expect(beat(found, 'mishap')).toMatchObject({
      say: ['I ordered the wrong ones by mistake.', 'Bram turned one over.'],
      from: { file: 'cycles/2026-03/cycle.md', line: 5 },
    });
    expect(beat(found, 'chosen').say[0]).toBe('The rest of the box was built around a tape measure.');
  });

  test('of the owner go before those of the story', () => {
    const own = { hook: 'Three are wrong.', items: { 'plant-mister': 'It mists. That is all.' } };
    const found = live({ story: told(opening), live: own });
    expect(beat(found, 'hook').say).toEqual(['Three are wrong.']);
    expect(beat(found, 'plant-mister').say).toEqual(['It mists.', 'That is all.']);
  });

  test('for people who never heard of it are the box’s own description', () => {
    expect(beat(live(), 'about').say).toEqual([
      'If this is your first time here: Sill & Sprig is a box for people with a window sill.',
    ]);
  });

  test('leave notes and pictures out', () => {
    const found = live({ story: told('Sow now.[^1] ![A tray](tray.jpg)\n\n[^1]: Or later.') });
    expect(beat(found, 'hook').say).toEqual(['Sow now.']);
  });

  test('of caution belong to the item, but not its ingredients; the same once more is pointed back to', () => {
    const candle = (slug: string) =>
      item({
        slug,
        name: `${slug}, large`,
        hazards: { categories: ['candle', 'food'], allergens: ['milk'], ingredients: 'Wax', more: ['Hot.'] },
      });
    const found = live({ items: [candle('first'), candle('second')] });
    const [first, second] = ['first', 'second'].map((name) => beat(found, name).cautions);
    expect(first?.map(({ sort }) => sort)).toEqual(['flame', 'allergens', 'more']);
    expect(second?.map(({ lines }) => lines[0])).toEqual([
      'All that was said of “first” holds here too.',
      'Contains milk.',
      'Hot.',
    ]);
  });

  test('in another language than English are the records’ alone', () => {
    const one = cycle({ story: told('Hallo.') });
    const found = liveOf(box({ settings: settings({ lang: 'de' }), cycles: [one] }), one, NOW);
    expect(beat(found, 'greet').say).toEqual([]);
    expect(liveFindings(found, one, NOW).map(({ rule }) => rule)).toContain('live-silent');
  });
});

const BOX = `---
name: A Box
url: https://example.org/
lang: en
timeZone: Europe/London
currency: GBP
description: A box.
author: A. Writer
calls: {join: {address: "https://example.org/join", text: Join}}
call: join
---
`;
const ITEM = `---
name: Teapot
kind: teapot
lead: true
brand: A Potter
description: A teapot.
---
It pours.
`;
const linked = (
  more: string,
  body = 'The teapots came cracked, by mistake. We chose the box around them.',
) => {
  const files = {
    'box.md': BOX,
    'cycles/2026-01/cycle.md': `---
theme: First
summary: A teapot and a tin of tea, and how the two of them came to be in one box in the end.
shipped: 2026-01-06
reveal: 2026-01-20T19:00
peek: {text: Look up.}
${more}---
${body}
`,
    'cycles/2026-01/items/01-teapot.md': ITEM,
  };
  const { value, diagnostics } = wholeBox(sourcesOf(files));
  const found = [...diagnostics];
  const first = value?.cycles[0];
  if (value && first) found.push(...liveFindings(liveOf(value, first, NOW), first, NOW));
  return {
    cycle: first,
    findings: found.map(({ weight, rule, location: place }) => `${locationText(place)} ${weight}, ${rule}`),
    messages: found.map(({ message }) => message),
  };
};

describe('a finding', () => {
  test('a hook that runs past 15 seconds, at its line', () => {
    const { findings, messages } = linked(
      `live:\n  hook: ${Array(38).fill('word').join(' ')}\n  mishap: It broke.\n  chosen: By hand.\n`,
    );
    expect(findings).toEqual(['cycles/2026-01/cycle.md:8:3 look at, live-hook']);
    expect(messages[0]).toBe('Unexpected hook of 15.2 seconds, expected at most 15');
    expect(
      linked(`live:\n  hook: ${Array(37).fill('word').join(' ')}\n  mishap: It broke.\n  chosen: By hand.\n`)
        .findings,
    ).toEqual([]);
  });

  test('a hook drawn from a long first sentence, at the story’s line', () => {
    const body = `${Array(40).fill('word').join(' ')}.`;
    const { findings } = linked('live: {mishap: It broke., chosen: By hand.}\n', body);
    expect(findings).toEqual(['cycles/2026-01/cycle.md:9:1 look at, live-hook']);
  });

  test('a beat with nothing to say, at `live`', () => {
    const { findings } = linked('live: {minutes: 20}\n', 'Hello.');
    expect(findings).toEqual([
      'cycles/2026-01/cycle.md:7:1 look at, live-silent',
      'cycles/2026-01/cycle.md:7:1 look at, live-silent',
    ]);
  });

  test('a live that does not fit its length, at `minutes`', () => {
    const { findings } = linked('live:\n  minutes: 1\n  mishap: It broke.\n  chosen: By hand.\n');
    expect(findings).toEqual(['cycles/2026-01/cycle.md:8:3 look at, live-long']);
  });

  test('is not made of a live that is over and of which the record says nothing', () => {
    const over = cycle({ story: told('') });
    const after = over.reveal === undefined ? 0 : over.reveal + 1;
    expect(liveFindings(live({ story: told('') }), over, after)).toEqual([]);
    expect(liveFindings(live({ story: told('') }), over, NOW)).not.toEqual([]);
  });

  test('words for an item that the cycle does not hold', () => {
    const { findings, messages } = linked(
      'live:\n  mishap: It broke.\n  chosen: By hand.\n  items:\n    teapots: It pours.\n',
    );
    expect(findings).toEqual(['cycles/2026-01/cycle.md:11:5 must fix, live-item']);
    expect(messages[0]).toContain('perhaps `teapot`');
  });
});

describe('a replay', () => {
  const replay = (beats: string, minutes = '  minutes: 10\n') =>
    linked(
      `live: {mishap: It broke., chosen: By hand., minutes: 9}\nreplay:\n  address: https://video.example/1\n${minutes}  beats:\n${beats}`,
    );

  test('gives chapters that follow each other to the end', () => {
    const { findings, cycle: one } = replay('    hook: "0:00"\n    teapot: "4:10"\n    questions-2: 300\n');
    expect(findings).toEqual([]);
    expect(
      chaptersOf(one as Cycle).map(({ kind, item, ...chapter }) => ({
        ...chapter,
        title: chapterTitle({ name: chapter.name, ...defined({ kind, item }) }),
      })),
    ).toEqual([
      { name: 'hook', title: 'The beginning', start: 0, end: 250, knownEnd: 250, sought: false },
      { name: 'teapot', title: 'Teapot', start: 250, end: 300, knownEnd: 300, sought: true },
      { name: 'questions-2', title: 'Questions', start: 300, end: 600, knownEnd: 600, sought: false },
    ]);
  });

  test.each([
    ['    teepot: "4:10"\n', 'cycles/2026-01/cycle.md:12:5 must fix, replay-beat'],
    ['    teapot: "4:10"\n    hook: "4:10"\n', 'cycles/2026-01/cycle.md:13:5 must fix, replay-order'],
    ['    teapot: "11:00"\n', 'cycles/2026-01/cycle.md:12:5 must fix, replay-end'],
    ['    teapot: "4:60"\n', 'cycles/2026-01/cycle.md:12:5 must fix, teapot'],
  ])('with %j is a finding at its line', (beats, finding) => {
    expect(replay(beats).findings).toEqual([finding]);
  });

  test('may have a beat in the last minute, since its minutes are whole and may have been rounded down', () => {
    expect(replay('    teapot: "10:59"\n').findings).toEqual([]);
  });

  test.each([
    ['of unknown length', '    hook: "0:00"\n    teapot: "4:10"\n', '', [250, undefined]],
    [
      'that begins in the last minute',
      '    hook: "0:00"\n    teapot: "10:20"\n',
      undefined,
      [620, undefined],
    ],
  ])('has no known end of a chapter %s', (_, beats, minutes, ends) => {
    const { cycle: one } = replay(beats, minutes);
    expect(chaptersOf(one as Cycle).map(({ knownEnd }) => knownEnd)).toEqual(ends);
  });

  test('is linked to at a moment as the W3C’s Media Fragments have it', () => {
    expect(momentAddress('https://video.example/1', 250)).toBe('https://video.example/1#t=250');
    expect(momentAddress('https://video.example/1#full', 250)).toBe('https://video.example/1#full&t=250');
  });
});
