/** The help by which pages are given to axe: what can be wrong in one look alone is found in that look. */
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { faultsOfLooks } from '../support/axe.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { describeWith } from '../support/tools.ts';

describeWith('chromium', 'chromium', 'a fault of a page in Chromium', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(() => browser?.close());

  const faultsOf = async (style: string, body = ''): Promise<readonly string[]> => {
    const page = await browser.newPage();
    await page.setContent(`<!doctype html><html lang="en"><title>A page</title><style>
body{background:#fff;color:#111;transition:color .3s}
@media (prefers-color-scheme:dark){body{background:#111;color:#fff}}
${style}</style><body><main><h1>A page</h1><p>Its words.</p>${body}</main>`);
    const found = await faultsOfLooks(page, { widths: [390, 1280] });
    await page.close();
    return found;
  };

  test.each<readonly [string, string, string, readonly string[]]>([
    ['no fault', '', '', []],
    [
      'a colour in the dark',
      '@media (prefers-color-scheme:dark){p{color:#222}}',
      '',
      ['dark at 390 px: color-contrast: p', 'dark at 1280 px: color-contrast: p'],
    ],
    [
      'a colour of a wide screen',
      '@media (width > 600px){p{color:#ddd}}',
      '',
      ['light at 1280 px: color-contrast: p'],
    ],
    [
      'what only the dark shows',
      'img{display:none} @media (prefers-color-scheme:dark){img{display:block}}',
      '<img src="data:image/gif;base64,R0lGODlhAQABAAAAACw=" width="9" height="9">',
      ['dark at 390 px: image-alt: img', 'dark at 1280 px: image-alt: img'],
    ],
    [
      'what only a narrow screen shows',
      '@media (width > 600px){img{display:none}}',
      '<img src="data:image/gif;base64,R0lGODlhAQABAAAAACw=" width="9" height="9">',
      ['light at 390 px: image-alt: img'],
    ],
    [
      'a page that is too wide',
      '@media (width < 600px){p{width:500px}}',
      '',
      [390].flatMap((width) =>
        ['light', 'dark'].map((scheme) => `${scheme} at ${width} px: the page is 508 px wide`),
      ),
    ],
  ])('%s', async (_, style, body, faults) => {
    expect(await faultsOf(style, body)).toEqual(faults);
  });
});
