import { describe, expect, test } from 'vitest';
import { kinds } from '../../src/channels/kinds.ts';
import type { Item } from '../../src/model/box.ts';
import { box, cycle, item, picture } from '../support/box.ts';
import { carriedOut } from '../support/carried-out.ts';
import { publicInput } from '../support/demo-box.ts';

const ASOF = Date.UTC(2026, 8, 1);

/** The page of the misters of a box with one in each cycle. */
const pageOf = async (...items: readonly Partial<Item>[]): Promise<string> => {
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
  const { outputs } = await carriedOut(kinds, await publicInput(box({ cycles }), ASOF));
  const page = outputs.find(({ path }) => path === 'kinds/plant-mister.html');
  return page && 'text' in page ? page.text : '';
};

const summaryOf = (page: string): string | undefined => /<p class="summary">([^<]*)<\/p>/.exec(page)?.[1];

describe('a kind’s page', () => {
  const spare = { price: { amount: '18.50', currency: 'GBP' }, address: 'https://shop.example/mister' };

  test('offers the spare pieces that are for sale, and no others', async () => {
    const page = await pageOf(
      { spare: { ...spare, count: 3 } },
      { spare: { ...spare, count: 0 } },
      { spare: { ...spare, count: 2, until: '2026-08-31' } },
    );
    expect(page.match(/class="spare"/g)).toHaveLength(1);
    expect(page).toContain('3 left at £18.50. <a href="https://shop.example/mister">Buy one</a>');
  });

  test('does without pictures, and shows those it has', async () => {
    expect(await pageOf({}, {}, {})).not.toContain('<img');
    const page = await pageOf({}, { pictures: [picture()] }, {});
    expect(
      page.match(/<a class="plate" href="\.\.\/boxes\/2026-02\.html#plant-mister"><picture>/g),
    ).toHaveLength(1);
    expect(page).toMatch(
      /<meta property="og:image" content="https:\/\/sillandsprig\.example\/pictures\/mister-1-/,
    );
  });

  test('says how large the picture of its preview is, which a small photo does not fill', async () => {
    const page = await pageOf({}, { pictures: [picture({ width: 800, height: 600 })] }, {});
    expect(page).toContain('<meta property="og:image:width" content="800">');
    expect(page).toContain('<meta property="og:image:height" content="420">');
  });

  test('compares makers, materials, colours and sizes, and nothing else', async () => {
    const page = await pageOf({ color: 'gold', size: '300 ml', weight: '210 g', care: 'Wipe it.' }, {}, {});
    expect([...page.matchAll(/<dt>(.*?)<\/dt>/g)].map(([, label]) => label)).toEqual([
      ...['Maker', 'Maker', 'Maker', 'Colour', 'Size'],
    ]);
  });

  test('names every item in its summary while a search result has room for them', async () => {
    expect(summaryOf(await pageOf({}, {}, {}))).toBe(
      '3 so far, from January 2026 to March 2026: Mister number 3, mister number 2 and mister number 1.',
    );
    // A sixth name takes no more room than "1 more".
    expect(summaryOf(await pageOf({}, {}, {}, {}, {}, {}))).toMatch(
      /^6 so far, .* mister number 2 and mister number 1\.$/,
    );
    expect(summaryOf(await pageOf({}, {}, {}, {}, {}, {}, {}))).toMatch(
      /^7 so far, .* mister number 3 and 2 more\.$/,
    );
  });

  test('escapes what an author typed', async () => {
    const page = await pageOf({ brand: '<b>Halloway & Sons' }, { name: '</script><script>x' }, {});
    expect(page).toContain('&lt;b&gt;Halloway &amp; Sons');
    expect(page.match(/<script/g)).toHaveLength(1);
  });
});
