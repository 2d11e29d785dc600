import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clipFindings } from '../../src/channels/clip/findings.ts';
import { parseMarkdown } from '../../src/content/markdown.ts';
import type { Cycle, Picture } from '../../src/model/box.ts';
import { secondsToSay } from '../../src/model/speaking.ts';
import { LINE_LENGTH, READING_SPEED } from '../../src/render/clip-overlay.ts';
import { type Clip, clipOf, fastestReading, leftUpright } from '../../src/render/clip-shots.ts';
import { box, cycle, item, picture, settings } from '../support/box.ts';
import { spokenIn, tellingInput } from '../support/telling-input.ts';

const NOW = Date.UTC(2026, 2, 1);
const story = (text: string) => ({ file: 'cycles/2026-03/cycle.md', tree: parseMarkdown(text) });
const clip = (more: Partial<Cycle>, lang = 'en-GB', pace = 150): Clip => {
  const one = cycle(more);
  const whole = box({ settings: settings({ lang, pace }), cycles: [one] });
  return clipOf(tellingInput(whole, one, NOW), spokenIn(whole));
};

const name = fc.oneof(
  fc.constantFrom(
    'Wooden seed tray, 30 × 12 cm',
    '木製の種まきトレイ',
    '👩‍🌾 Kit',
    `Un${'zer'.repeat(30)}legbar`,
  ),
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 70 }).filter((text) => /\p{L}/u.test(text)),
);
const prose = fc
  .array(fc.constantFrom('The', 'tray', 'is', 'kind.', 'シート', '。', 'Well,', 'Rindfleischetikettierung'), {
    maxLength: 60,
  })
  .map((words) => words.join(' '));
const anyClip = fc
  .record({
    items: fc.array(
      fc.record({
        name,
        prose,
        goesWith: fc.option(
          prose.filter((text) => text !== ''),
          { nil: undefined },
        ),
      }),
      { maxLength: 8 },
    ),
    opening: prose,
    length: fc.constantFrom(15 as const, 30 as const, 60 as const),
    pace: fc.integer({ min: 60, max: 300 }),
    lang: fc.constantFrom('en-GB', 'ja', 'de'),
  })
  .map(({ items, opening, length, pace, lang }) => ({
    lang,
    pace,
    made: clip(
      {
        clip: length,
        story: story(opening),
        items: items.map((one, i) =>
          item({
            slug: `item-${i}`,
            lead: i === 0,
            name: one.name,
            story: story(one.prose),
            ...(one.goesWith === undefined ? {} : { goesWith: one.goesWith }),
          }),
        ),
      },
      lang,
      pace,
    ),
  }));

describe('a clip', () => {
  test('is as long as wanted, or as its shortest words take; shots and words follow each other', () => {
    fc.assert(
      fc.property(anyClip, ({ made, lang, pace }) => {
        expect(made.length).toBeGreaterThanOrEqual(made.wanted * 1000);
        if (made.length > made.wanted * 1000)
          expect(clipFindings(made, { cycle: cycle({ clip: made.wanted }), sealed: true })).toHaveLength(1);
        let at = 0;
        for (const { start, end, overlays, say } of made.shots) {
          expect(start).toBe(at);
          expect(end - start).toBeGreaterThanOrEqual({ 15: 1500, 30: 2000, 60: 2500 }[made.wanted]);
          expect(end - start).toBeGreaterThanOrEqual(secondsToSay(say, { lang, pace }) * 1000 - 1e-6);
          let shown = start;
          for (const overlay of overlays) {
            expect(overlay.start).toBe(shown);
            expect(overlay.end).toBeGreaterThan(overlay.start);
            shown = overlay.end;
          }
          if (overlays.length > 0) expect(shown).toBe(end);
          at = end;
        }
        expect(made.length).toBe(at);
      }),
    );
  });

  test('gives what time is left to its shortest shots', () => {
    const made = clip({ clip: 60, items: [item(), item({ slug: 'two', lead: false })] });
    const shots = made.shots.map(({ start, end }) => end - start).sort((a, b) => a - b);
    expect((shots[1] ?? 0) - (shots[0] ?? 0)).toBeLessThanOrEqual(1);
    expect(shots.reduce((sum, length) => sum + length, 0)).toBe(60_000);
  });

  test('shows nothing of the box beside its hook', () => {
    const made = clip({ hero: picture() });
    expect(made.shots.find(({ kind }) => kind === 'hook')?.still).toBeUndefined();
  });

  test('stands in no panorama for an upright shot where there is another photo, and takes the tallest of wide ones', () => {
    const wide = picture({ file: 'wide.jpg', width: 4000, height: 1000 });
    const lessWide = picture({ file: 'less-wide.jpg', width: 4000, height: 2000 });
    const usual = picture({ file: 'usual.jpg', width: 4000, height: 3000 });
    const stillOf = (...pictures: Picture[]) =>
      clip({ items: [item({ pictures })] }).shots.find(({ kind }) => kind === 'item')?.still?.file;
    expect(stillOf(wide, usual)).toBe('usual.jpg');
    expect(stillOf(wide, lessWide)).toBe('less-wide.jpg');
    expect(stillOf(usual, lessWide)).toBe('usual.jpg');
    expect(leftUpright(wide)).toBeCloseTo(0.14, 2);
    expect(leftUpright({ width: 900, height: 1600 })).toBe(1);
  });

  test('never asks to be read faster than 17 graphemes a second, in lines of at most 42', () => {
    fc.assert(
      fc.property(anyClip, ({ made, lang }) => {
        expect(fastestReading(made, lang)).toBeLessThanOrEqual(READING_SPEED);
        const graphemes = new Intl.Segmenter(lang, { granularity: 'grapheme' });
        for (const { lines } of made.shots.flatMap(({ overlays }) => overlays)) {
          expect(lines.length).toBeLessThanOrEqual(2);
          for (const line of lines)
            expect([...graphemes.segment(line)].length).toBeLessThanOrEqual(LINE_LENGTH);
        }
      }),
    );
  });

  const tray = item({
    name: 'Seed tray, 30 cm',
    kind: 'seed tray',
    story: story('A seed tray is a box with gaps. It drains.'),
  });
  const mister = item({
    slug: 'mister',
    lead: false,
    name: 'Brass mister',
    goesWith: 'It waters the tray from above.',
    story: story('Six strokes are enough.'),
  });

  test('names every item, and says whole sentences where there is time', () => {
    const short = clip({ clip: 15, items: [tray, mister], story: story('One is right.') });
    const said = short.shots.map(({ say }) => say);
    expect(said).toEqual([
      'One is right.',
      'A seed tray is a box with gaps. It drains.',
      'Brass mister. Six strokes are enough. It waters the tray from above.',
      '',
      'Join.',
    ]);
    expect(short.length).toBe(15_000);
  });

  test('cuts no sentence in the middle', () => {
    const long = `${'word '.repeat(60)}end.`;
    const { shots } = clip({
      clip: 15,
      items: [item({ name: 'Mister', kind: 'mister', story: story(long) })],
      story: story('Hi.'),
    });
    expect(shots[1]?.say).toBe('A mister that fits the hand.');
  });

  test('that is too long for its words is a finding, unless it was made long ago', () => {
    const more = { clip: 15 as const, story: story(`${'word '.repeat(60)}.`) };
    const [finding] = clipFindings(clip(more), { cycle: cycle(more), sealed: true });
    expect(finding).toMatchObject({ weight: 'look at', rule: 'clip-long' });
    const over = cycle({ story: more.story });
    expect(clipFindings(clip(more), { cycle: over, sealed: false })).toEqual([]);
  });

  test('dresses its words before it counts them', () => {
    const one = cycle({ story: story("It's 'fine'."), items: [tray] });
    const whole = box({ cycles: [one] });
    const { shots } = clipOf(tellingInput(whole, one, NOW), spokenIn(whole), (text) =>
      text.replaceAll("'", '’’'),
    );
    expect(shots[0]?.overlays[0]?.lines).toEqual(['It’’s ’’fine’’.']);
  });
});
