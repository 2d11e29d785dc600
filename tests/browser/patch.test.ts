/** Whether a page that is changed where it stands becomes the newer one, in a real browser. */
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { build } from 'rolldown';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CHROMIUM } from '../support/chromium.ts';
import { describeWith } from '../support/tools.ts';

describeWith('chromium', 'chromium', 'a page that is changed where it stands', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
    page = await browser.newPage();
    const { output } = await build({
      input: join(import.meta.dirname, 'page/patching.ts'),
      write: false,
      output: { format: 'iife', name: 'patching' },
      logLevel: 'warn',
    });
    await page.addScriptTag({ content: output[0].code });
  });
  afterAll(() => browser.close());

  test('becomes the newer one, whatever the two are', async () => {
    expect(await page.evaluate('patching.turnPages(3000)')).toEqual({ turned: 3000, unlike: [] });
  });

  test('keeps what is alike and what holds a change, so that its reader stays where they are', async () => {
    const [old, newer] = [
      '<details open>one</details><p>old <em>word</em></p><p>last</p>',
      '<details open>one</details><p>new <em>word</em></p><p>last</p>',
    ];
    expect(await page.evaluate(`patching.keptNodes('${old}', '${newer}')`)).toEqual([
      [true, true, true, true],
      'onenew wordlast',
    ]);
  });

  test.each([
    ['its style sheets are others', '<p>a</p>', '<link rel="stylesheet" href="b.css"><p>a</p>', false],
    ['a script has been at work', '<p>a</p><script>1</script>', '<p>b</p>', false],
    ['a script is to be at work', '<p>a</p>', '<p>b</p><script>1</script>', false],
    ['what machines read is no script', '<p>a</p>', '<script type="application/ld+json">1</script>', true],
  ])('is loaded instead where it must be: %s', async (_, old, newer, can) => {
    expect(await page.evaluate(`patching.canPatch(${JSON.stringify(old)}, ${JSON.stringify(newer)})`)).toBe(
      can,
    );
  });
});
