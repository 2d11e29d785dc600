import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sentenceSpans, sentencesOf } from '../../src/text/sentences.ts';
import { keptAside, lookedAt } from './sentence-cases.ts';

describe('sentences', () => {
  test.each([...lookedAt, ...keptAside])('are found in $lang: $text', ({ lang, text, sentences }) => {
    expect(sentencesOf(text, lang)).toEqual(sentences);
  });

  test('of any text and language are the text, cut and nothing else', () => {
    const pieces = fc.constantFrom(
      ...[
        'Dr. ',
        'z. B. ',
        '“Why?” ',
        'she ',
        '12 ',
        'No. ',
        '« ',
        ' » ',
        '「',
        '。',
        '」',
        'と',
        '… ',
        '\n',
        '1. ',
      ],
    );
    fc.assert(
      fc.property(
        fc.array(fc.oneof(pieces, fc.string()), { maxLength: 12 }),
        fc.constantFrom('en', 'de', 'fr', 'ja', 'sv'),
        (parts, lang) => {
          const text = parts.join('');
          const spans = sentenceSpans(text, lang);
          expect(spans.map(({ start, end }) => text.slice(start, end)).join('')).toBe(text);
          for (const { start, end } of spans) expect(end).toBeGreaterThan(start);
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('end where a line ends', () => {
    expect(sentencesOf('Made by Dr.\nFinch', 'en')).toEqual(['Made by Dr.', 'Finch']);
  });

  test('are one where UAX #29 sees no end but the last', () => {
    const uax29 = new Intl.Segmenter('en', { granularity: 'sentence' });
    const sign = fc.constantFrom(...'ab Zé1 ’“”(),;-–'.split(''));
    fc.assert(
      fc.property(fc.array(sign, { maxLength: 24 }), fc.constantFrom('', '.', '!', '?'), (signs, end) => {
        const text = `a${signs.join('')}${end}`;
        expect([...uax29.segment(text)]).toHaveLength(1);
        expect(sentenceSpans(text, 'en')).toEqual([{ start: 0, end: text.length }]);
      }),
      { numRuns: 2000 },
    );
  });
});
