import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Highlight, highlightedText, runsOf } from '../../src/render/highlights.ts';
import { htmlSource } from '../../src/render/html.ts';

const said = (start: number, end: number, item: number, weak = false): Highlight => ({
  start,
  end,
  item,
  anchor: `said-${item}-${start}`,
  weak,
  words: 'exact',
});

describe('runs', () => {
  test('put together are the text, and each carries just what holds it', () => {
    const text = fc.string({ minLength: 1, maxLength: 30, unit: 'binary' });
    const stretches = fc.array(fc.tuple(fc.nat(30), fc.nat(30), fc.integer({ min: 1, max: 6 })), {
      maxLength: 8,
    });
    fc.assert(
      fc.property(text, stretches, fc.nat(30), (words, some, cut) => {
        const all = some.map(([a, b, item]) => said(Math.min(a, b), Math.max(a, b) + 1, item));
        const inside = all.filter(({ end }) => end <= words.length);
        const runs = runsOf(words, inside, [cut]);
        expect(runs.map((run) => run.text).join('')).toBe(words);
        for (const run of runs)
          for (let at = run.start; at < run.start + run.text.length; at += 1)
            expect(run.said).toEqual(inside.filter(({ start, end }) => start <= at && end > at));
      }),
    );
  });
});

describe('marked text', () => {
  const options = { lang: 'en', asIs: true };
  test('underlines overlapping items one below the other, with each number where its words end', () => {
    const source = htmlSource(
      highlightedText('old seed tin labels', [said(4, 12, 1), said(9, 19, 2)], options),
    );
    expect(source).toBe(
      'old <span id="said-1-4" data-words="exact"></span>' +
        '<span class="said" data-said="said-1-4"><span class="u u1 d0">seed </span></span>' +
        '<span id="said-2-9" data-words="exact"></span>' +
        '<span class="said" data-said="said-1-4 said-2-9"><span class="u u1 d0"><span class="u u2 d1">tin</span></span></span>' +
        '<sup aria-hidden="true">1</sup>' +
        '<span class="said" data-said="said-2-9"><span class="u u2 d0"> labels</span></span><sup aria-hidden="true">2</sup>',
    );
  });
  test('is escaped, and typeset across its runs', () => {
    const source = htmlSource(
      highlightedText('"A <tin>" & more', [said(4, 7, 1)], { lang: 'en', asIs: false }),
    );
    expect(source).toContain('“A &lt;');
    expect(source).toContain('&gt;” &amp; more');
    expect(source.replace(/<[^>]*>/g, '')).toBe('“A &lt;tin1&gt;” &amp; more');
  });
  test('draws a faint line only where every mention of the item is weak', () => {
    const faint = (all: readonly Highlight[]): boolean =>
      htmlSource(highlightedText('tin', all, options)).includes('weak');
    expect([faint([said(0, 3, 1, true)]), faint([said(0, 3, 1, true), said(0, 3, 1)])]).toEqual([
      true,
      false,
    ]);
  });
  test('shows a border before the run that begins there', () => {
    const border = { at: 4, words: 'the opening ends here' };
    expect(htmlSource(highlightedText('one two', [], { ...options, border }))).toBe(
      'one <span class="border">the opening ends here</span> two',
    );
  });
});
