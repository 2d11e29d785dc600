/** Lines to copy that stand under a finding, on every paper of the back room that lists findings. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { parcelsFacts } from '../../src/analysis/parcels/facts.ts';
import { invitation } from '../../src/channels/invitation/index.ts';
import { runSheet } from '../../src/channels/live/index.ts';
import { parcels } from '../../src/channels/parcels/index.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { type FindingView, findingViews } from '../../src/render/findings.ts';
import { htmlSource } from '../../src/render/html.ts';
import { dayOfDate } from '../../src/text/days.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { parcel } from '../analysis/parcels/parcels.ts';
import { carriedOut } from '../support/carried-out.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { demoBox, privateInput } from '../support/demo-box.ts';
import { htmlValidateFaults } from '../support/html-checkers.ts';
import { describeWith } from '../support/tools.ts';

const templates = join(import.meta.dirname, '../../templates');

const finding: Diagnostic = {
  weight: 'look at',
  rule: 'yaml',
  location: { file: 'cycles/2026-03/items/01-pot.md', line: 4, column: 9 },
  message: 'Unexpected `#` in the text of `care`, expected quotes round the text',
  instead: { from: 4, to: 5, lines: ['care: "Rinse <it> & dry it"', `size: ${'a'.repeat(300)}`] },
  written: { lines: ['image:', '  - file: pot.jpg'], invented: true },
};
const { findings: words } = wordingFor('en-GB');
const views = findingViews([finding], words);

test('a finding is shown with the lines it proposes and those it gives as an example, each under their label', () => {
  expect(views[0]?.lines).toEqual([
    { label: 'Lines 4 to 5 should be:', text: finding.instead?.lines.join('\n') },
    { label: 'For example, written so:', text: 'image:\n  - file: pot.jpg' },
  ]);
  const { instead: _, written: __, ...bare } = finding;
  const sure = { ...bare, written: { lines: ['call: join'], invented: false } };
  expect(findingViews([sure], words)[0]?.lines).toEqual([
    { label: 'The lines to write:', text: 'call: join' },
  ]);
  expect(findingViews([bare], words)[0]?.lines).toEqual([]);
});

test('every template that lists findings shows their lines', () => {
  const own = readdirSync(templates).filter((name) => name.endsWith('.eta'));
  const listing = own.filter((name) =>
    /for \(const \w+ of it\.findings\)/.test(readFileSync(join(templates, name), 'utf8')),
  );
  expect(listing.length).toBeGreaterThanOrEqual(4);
  for (const name of listing)
    expect(readFileSync(join(templates, name), 'utf8'), name).toContain("it.part('finding-lines', finding)");
});

const NOW = Date.UTC(2026, 2, 27, 12);
const box = await demoBox(join(import.meta.dirname, '../../.lidlore'));
const input = await privateInput(box, NOW);

const LEFT = dayOfDate('2026-04-07');
const facts = parcelsFacts({
  ...{ cycle: '2026-04', theme: 'Balcony Bees', earlier: [], asOf: NOW, asOfDay: LEFT + 5 },
  parcels: {
    file: 'cycles/2026-04/parcels.csv',
    asOf: LEFT + 5,
    counts: [1, 2, 3, 4, 5].map((days) => ({ ...parcel(days), shipped: LEFT })),
  },
  ...{ timeZone: 'Europe/London', habit: { weekdays: [4] } },
});

/** Papers with one finding that proposes lines, in the place of those that they make themselves. */
const papers = await Promise.all(
  [runSheet, invitation, parcels].map(async (channel) => {
    const render = (name: never, data: { readonly findings?: readonly FindingView[] }) =>
      input.templates.render(name, (data.findings ? { ...data, findings: views } : data) as never);
    const { outputs } = await carriedOut(channel, {
      ...input,
      box: { ...box, settings: { ...box.settings, pieces: ['live', 'invitation'] } },
      parcels: new Map([['2026-04', { facts, diagnostics: [finding] }]]),
      templates: { ...input.templates, render: render as typeof input.templates.render },
    });
    const page = outputs.find(({ path }) => /^2026-04\/(?:run-sheet|invitation|parcels)\.html$/.test(path));
    if (!page || !('text' in page)) throw new Error('Expected a paper of the sealed cycle');
    return { name: page.path, text: typeof page.text === 'string' ? page.text : htmlSource(page.text) };
  }),
);

describe.each(papers)('$name', ({ text }) => {
  test('has the lines as they are typed, escaped', () => {
    expect(text).toContain(
      '<p>Lines 4 to 5 should be:</p><pre><code>care: &quot;Rinse &lt;it&gt; &amp; dry it&quot;\nsize: a',
    );
    expect(text).toContain('<pre><code>image:\n  - file: pot.jpg</code></pre>');
  });

  test('is valid HTML with them', async () => {
    expect(await htmlValidateFaults(text)).toEqual([]);
  });
});

describeWith('chromium', 'chromium', 'in Chromium', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(() => browser.close());

  // WCAG 2.2, 1.4.10 Reflow; the longest line has no place to break.
  const looks = papers.flatMap((paper) =>
    [320, 390, 1280].flatMap((width) =>
      (['light', 'dark'] as const).map((colorScheme) => ({ ...paper, width, colorScheme })),
    ),
  );
  test.each(looks)(
    '$name keeps its width of $width px, and its lines are read, $colorScheme',
    async (look) => {
      const page = await browser.newPage({
        viewport: { width: look.width, height: 844 },
        colorScheme: look.colorScheme,
      });
      await page.setContent(look.text);
      const seen = await page.evaluate<{ wide: number; ink: string; paper: string }>(`(() => {
      const line = document.querySelector('li pre code');
      return {
        wide: document.documentElement.scrollWidth,
        ink: getComputedStyle(line).color,
        paper: getComputedStyle(document.body).backgroundColor,
      };
    })()`);
      await page.close();
      expect(seen.wide).toBe(look.width);
      expect(seen.ink).not.toBe(seen.paper);
    },
  );
});
