import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { subRip, type TimedText, webVtt } from '../../src/render/captions.ts';
import { subRipFaults, vttCues, vttFaults } from '../support/timed-text-faults.ts';

const texts: readonly TimedText[] = [
  { id: '1', start: 0, end: 1500, lines: ['Of four labels,', 'one is right.'] },
  { id: '2', start: 1500, end: 3_723_004, lines: ['Salt & pepper <i> --> there'] },
];

test('WebVTT has its signature, ids, full times and nothing that means markup', () => {
  expect(webVtt(texts)).toBe(
    'WEBVTT\n\n1\n00:00:00.000 --> 00:00:01.500\nOf four labels,\none is right.\n\n' +
      '2\n00:00:01.500 --> 01:02:03.004\nSalt &amp; pepper &lt;i&gt; --&gt; there\n',
  );
});

test('SubRip has counters, commas and CRLF', () => {
  expect(subRip(texts)).toBe(
    '1\r\n00:00:00,000 --> 00:00:01,500\r\nOf four labels,\r\none is right.\r\n\r\n' +
      '2\r\n00:00:01,500 --> 01:02:03,004\r\nSalt & pepper ‹i› → there\r\n',
  );
});

const line = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 42 })
  .filter((text) => text.replace(/[\s\p{Cc}\p{Cf}]/gu, '') !== '');
const timed = fc
  .array(
    fc.tuple(fc.nat(5000), fc.integer({ min: 1, max: 9000 }), fc.array(line, { minLength: 1, maxLength: 2 })),
    {
      minLength: 1,
      maxLength: 12,
    },
  )
  .map((all) => {
    let at = 0;
    return all.map(([gap, length, lines], i): TimedText => {
      const start = at + gap;
      at = start + length;
      return { id: String(i + 1), start, end: at, lines };
    });
  });

describe('whatever is written', () => {
  test('webvtt-parser reads every cue, without a fault', () => {
    fc.assert(
      fc.property(timed, (all) => {
        const text = webVtt(all);
        expect(vttFaults(text, 'subtitles/captions/descriptions')).toEqual([]);
        expect(vttCues(text).map(({ startTime }) => Math.round(startTime * 1000))).toEqual(
          all.map(({ start }) => start),
        );
      }),
    );
  });
  test('srt-validator finds no fault', () => {
    fc.assert(
      fc.property(timed, (all) => {
        expect(subRipFaults(subRip(all))).toEqual([]);
      }),
    );
  });
});

test('the checks see what they are for', () => {
  const [first, second] = texts as [TimedText, TimedText];
  expect(vttFaults(webVtt([first, { ...second, start: 900 }]), 'chapters')).toContain(
    '2 begins before 1 ends',
  );
  expect(vttFaults(webVtt([first, { ...second, id: '1' }]), 'chapters')).toContain('1 twice');
  expect(subRipFaults('1\n00:00:02,000 --> 00:00:01,000\nA\n')).not.toEqual([]);
});
