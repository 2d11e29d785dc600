import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { kinds } from '../../src/channels/kinds.ts';
import { readTemplates } from '../../src/io/read-templates.ts';
import type { Item } from '../../src/model/box.ts';
import { compileTemplates } from '../../src/render/templates.ts';
import { box, cycle, item, picture } from '../support/box.ts';

const { files, assets } = await readTemplates(join(import.meta.dirname, '../../templates'));
const templates = compileTemplates(files, assets).value;
const ASOF = Date.UTC(2026, 8, 1);

/** The page of the misters of a box with one in each cycle. */
const pageOf = (...items: readonly Partial<Item>[]): string => {
  const cycles = items.map((more, i) => {
    const id = `2026-0${i + 1}`;
    return cycle({
      id,
      month: i + 1,
      address: id,
      reveal: Date.UTC(2026, i, 19),
      items: [item({ cycle: id, name: `Mister number ${i + 1}`, ...more })],
    });
  });
  const { outputs } = kinds.make({ box: box({ cycles }), asOf: ASOF, templates, proofs: new Map() });
  const page = outputs.find(({ path }) => path === 'kinds/plant-mister.html');
  return page && 'text' in page ? page.text : '';
};

const summaryOf = (page: string): string | undefined => /<p class="summary">([^<]*)<\/p>/.exec(page)?.[1];

describe('a kind’s page', () => {
  const spare = { price: { amount: '18.50', currency: 'GBP' }, address: 'https://shop.example/mister' };

  test('offers the spare pieces that are for sale, and no others', () => {
    const page = pageOf(
      { spare: { ...spare, count: 3 } },
      { spare: { ...spare, count: 0 } },
      { spare: { ...spare, count: 2, until: '2026-08-31' } },
    );
    expect(page.match(/class="spare"/g)).toHaveLength(1);
    expect(page).toContain('3 left at £18.50. <a href="https://shop.example/mister">Buy one</a>');
  });

  test('does without pictures, and shows those it has', () => {
    expect(pageOf({}, {}, {})).not.toContain('<img');
    const page = pageOf({}, { pictures: [picture()] }, {});
    expect(
      page.match(/<a class="plate" href="\.\.\/boxes\/2026-02\.html#plant-mister"><picture>/g),
    ).toHaveLength(1);
    expect(page).toMatch(
      /<meta property="og:image" content="https:\/\/sillandsprig\.example\/pictures\/mister-1-/,
    );
  });

  test('names every item in its summary while a search result has room for them', () => {
    expect(summaryOf(pageOf({}, {}, {}))).toBe(
      '3 so far, from January 2026 to March 2026: Mister number 3, mister number 2 and mister number 1.',
    );
    expect(summaryOf(pageOf({}, {}, {}, {}, {}, {}, {}))).toMatch(
      /^7 so far, .* mister number 3 and 2 more\.$/,
    );
  });

  test('escapes what an author typed', () => {
    const page = pageOf({ brand: '<b>Halloway & Sons' }, { name: '</script><script>x' }, {});
    expect(page).toContain('&lt;b&gt;Halloway &amp; Sons');
    expect(page.match(/<script/g)).toHaveLength(1);
  });
});
