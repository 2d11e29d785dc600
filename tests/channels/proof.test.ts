import { HtmlValidate, StaticConfigLoader } from 'html-validate';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Coverage } from '../../src/analysis/coverage/coverage.ts';
import { languageFor } from '../../src/analysis/language/language.ts';
import type { PrivateInput } from '../../src/channels/channel.ts';
import { proof } from '../../src/channels/proof/index.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { coverage as said } from '../../src/wording/en/coverage.ts';
import { wordingFor } from '../../src/wording/wording.ts';
import { faultsOfLooks } from '../support/axe.ts';
import { carriedOut } from '../support/carried-out.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { coverageSample, sampleBox } from '../support/coverage-sample.ts';
import { outputFiles } from '../support/output-files.ts';
import { ownTemplates } from '../support/own-templates.ts';
import { describeWith } from '../support/tools.ts';

const language = await languageFor('en-GB');

const diagnostics: readonly Diagnostic[] = [
  {
    weight: 'must fix',
    rule: 'allergens-missing',
    location: { file: 'cycles/2026-03/items/05-chamomile-tea.md', line: 11, column: 1 },
    message: 'Unexpected food without `allergens`, expected a list',
    fix: 'Write `allergens: none` if there are none',
    written: { lines: ['allergens: [milk, wheat]'], invented: true },
    related: { location: { file: 'box.md', line: 2, column: 1 }, message: 'It is sold in the EU' },
  },
  {
    weight: 'note',
    rule: 'photo-small',
    location: { file: 'cycles/2026-03/cycle.md', line: 9, column: 3 },
    message: 'Unexpected <photo>',
    instead: { from: 9, to: 9, lines: [`  alt: "A tin <open> & ${'x'.repeat(300)}"`] },
  },
];

interface Asked {
  readonly coverage?: Coverage;
  readonly findings?: readonly Diagnostic[];
  /** The box's language. */
  readonly lang?: string;
  readonly asOf?: number;
}

const inputOf = ({
  coverage = coverageSample,
  findings = diagnostics,
  lang = 'en-GB',
  asOf = Date.UTC(2026, 2, 10),
}: Asked): PrivateInput => ({
  box: { ...sampleBox, settings: { ...sampleBox.settings, lang } },
  asOf,
  templates: ownTemplates,
  wording: wordingFor(lang),
  language,
  faces: { digest: 'the faces', lacking: async () => [] },
  proofs: new Map([[coverage.cycle, { coverage, diagnostics: findings }]]),
  parcels: new Map(),
  photos: new Map(),
});

/** The page of the newest cycle's proof. */
const made = async (asked: Asked = {}): Promise<string> => {
  const files = outputFiles((await carriedOut(proof, inputOf(asked))).outputs);
  expect([...files.keys()]).toEqual(['2026-03/proof.html']);
  return String(files.get('2026-03/proof.html'));
};
const text = await made();

/** The same with twice as much in every place: some items then have more than the most that counts. */
const brimming: Coverage = {
  ...coverageSample,
  items: coverageSample.items.map((one) => ({
    ...one,
    places: one.places.map((place) => ({ ...place, gives: place.gives * 2 })),
    standing: Math.min(1, one.standing * 2),
  })),
};

const full = await made({ coverage: brimming });

/** What stands between an element's tags. The page's own tables and paragraphs do not nest. */
const contents = (source: string, pattern: RegExp): readonly string[] =>
  [...source.matchAll(pattern)].map((found) => found[1] as string);
const bare = (source: string): string => source.replace(/<[^>]*>/g, '').trim();
const figure = (source: string): number => Math.round(Number(bare(source).replace('−', '-')) * 1000);

describe('the page', () => {
  test('is one file of the back room for each cycle that was proved', () => {
    expect(proof.where).toBe('backroom');
    expect(sampleBox.cycles.length).toBeGreaterThan(1);
  });
  test('asks for nothing from anywhere', () => {
    const addresses = contents(text, /\s(?:src|href|srcset|action|poster)="([^"]*)"/g);
    expect(addresses.filter((address) => !address.startsWith('#') && address !== '../index.html')).toEqual(
      [],
    );
    expect(text).not.toMatch(/@import|url\(|<link|<iframe|fetch\(/);
  });
  test('has every anchor once, and no link without one', () => {
    const ids = contents(text, /\sid="([^"]*)"/g);
    expect(ids.length).toBe(new Set(ids).size);
    const links = contents(text, /href="#([^"]*)"/g);
    expect(links.filter((link) => !ids.includes(link))).toEqual([]);
  });
  test('marks every mention in the text, and lists a link to each', () => {
    const all = coverageSample.items.flatMap(({ number, phrases }) =>
      phrases.flatMap(({ mentions }, p) => mentions.map((_, m) => `said-${number}-${p + 1}-${m + 1}`)),
    );
    expect(all.length).toBeGreaterThan(40);
    const marked = new Set(contents(text, /data-said="([^"]*)"/g).flatMap((said) => said.split(' ')));
    const listed = new Set(
      contents(text, /<span class="said-at">(.*?)<\/span>/g).flatMap((cell) =>
        contents(cell, /href="#([^"]*)"/g),
      ),
    );
    expect([...marked].sort()).toEqual([...all].sort());
    expect([...listed].sort()).toEqual([...all].sort());
  });
  test('shows the article’s words as they are written', () => {
    const shown = contents(text, /<(?:p|h3) class="run"[^>]*>(.*?)<\/(?:p|h3)>/g).map((run) =>
      bare(run.replace(/<sup.*?<\/sup>|<span class="border">.*?<\/span> /g, ''))
        .replaceAll('&lt;', '<')
        .replaceAll('&gt;', '>')
        .replaceAll('&amp;', '&'),
    );
    expect(shown).toEqual(coverageSample.passages.map((passage) => passage.text));
  });
  test.each([
    ['as it is', coverageSample, text],
    ['of items that stand at the most there is', brimming, full],
  ])('opens every standing into figures that add up to it, %s', (_, coverage, page) => {
    const tables = contents(page, /(<table>[\s\S]*?<\/table>)/g).filter((table) =>
      table.includes('figure total'),
    );
    expect(tables.length).toBe(coverage.items.length);
    for (const [i, table] of tables.entries()) {
      const [body = '', foot = ''] = table.split('<tfoot>');
      const gives = contents(body, /<td class="figure">(−?[\d.]+)<\/td><\/tr>/g).map(figure);
      const [given = 0] = contents(foot, /<td class="figure given">([\d.]+)<\/td>/g).map(figure);
      const [own = 0] = contents(foot, /<td class="figure own">([\d.]+)<\/td>/g).map(figure);
      const [total] = contents(foot, /<td class="figure total">([\d.]+)<\/td>/g).map(figure);
      expect(
        gives.reduce((sum, one) => sum + one, 0),
        bare(table).slice(0, 60),
      ).toBe(given);
      expect(Math.abs(Math.min(1000, Math.round((1000 * given) / own)) - (total ?? 0))).toBeLessThanOrEqual(
        1,
      );
      expect(total).toBe(Math.round((coverage.items[i]?.standing ?? 0) * 1000));
    }
    if (page === full) expect(tables.join()).toContain('>1.000<');
  });
  test('names the places of its own that give an item nothing in one line', () => {
    const tables = contents(text, /<table>([\s\S]*?)<\/table>/g).filter((table) =>
      table.includes('figure total'),
    );
    for (const [i, item] of coverageSample.items.entries()) {
      const rows = contents(tables[i] ?? '', /<tr><th scope="row">(.*?)<\/th><td class="figure">/g);
      expect(rows).toEqual(item.places.filter(({ gives }) => gives > 0).map(({ zone }) => said.zones[zone]));
      const lacking = item.places.filter(({ isOwn, gives }) => isOwn && gives === 0);
      const [without = ''] = contents(tables[i] ?? '', /<tr class="none"><th scope="row">(.*?)<\/th>/g);
      expect(without.split(/, | and /).filter(Boolean)).toEqual(lacking.map(({ zone }) => said.zones[zone]));
    }
  });
  test('shows each sentence that is advised as it is and as it would be', () => {
    expect(coverageSample.advice.length).toBeGreaterThan(0);
    const shown = contents(text, /<dd lang="en-GB">(.*?)<\/dd>/g);
    expect(shown.length).toBe(2 * coverageSample.advice.length);
  });
  test('puts each edit in the list and beside the line it speaks of', () => {
    for (const [i, edit] of coverageSample.advice.entries()) {
      const beside =
        text.split('<div class="row ').find((row) => row.includes(`href="#edit-${i + 1}"`)) ?? '';
      expect(beside).toContain(`:${edit.at.line}</span>`);
      expect(text).toContain(`${edit.at.file}:${edit.at.line}:${edit.at.column}</a>`);
    }
  });
  test('gives the line to paste for other names, with those the record has', () => {
    expect(text).toContain('also: [&quot;tin: the good one&quot;, seed box, seed canister]');
  });
  test('says in words what a place has, for those who do not see the squares', () => {
    expect(text).toContain('<span class="unseen">head only</span>');
  });
  test('escapes what authors wrote', async () => {
    expect(text).toContain('Unexpected &lt;photo&gt;');
    expect(text).toContain('<p>Line 9 should be:</p><pre><code>  alt: &quot;A tin &lt;open&gt; &amp; xxx');
    expect(text).toContain('<pre><code>allergens: [milk, wheat]</code></pre>');
    expect(text).toContain('&lt;first&gt; leaves &amp; no deeper');
    const wicked = await made({
      coverage: { ...coverageSample, theme: '</title><script>alert(1)</script>', title: '"><b>' },
    });
    expect(wicked).not.toContain('alert(1)</script>');
  });
  test('is in English for an article that is not, and marks the article’s language', async () => {
    const other = await made({
      coverage: { ...coverageSample, lang: 'de', limits: ['names taken whole'] },
      findings: [],
      lang: 'de',
    });
    expect(other).toContain('<html lang="en-GB">');
    expect(other).toContain('<div class="text" lang="de">');
    expect(other).toContain('in English alone: here phrases come from');
    expect(other).not.toContain('Findings');
  });
  test('begins with what must be fixed, the items, the advice and the findings, and ends with text and sums', () => {
    const order = [
      'must-fix',
      'places',
      'advice',
      'findings',
      'rivals',
      'crowded',
      'shared',
      'text',
      'accounts',
    ];
    const at = order.map((id) => text.indexOf(`<h2 id="${id}"`));
    expect(at.every((place) => place > 0)).toBe(true);
    expect(at).toEqual(at.toSorted((a, b) => a - b));
    const [before = '', after = ''] = text.split('id="places"');
    expect(before).toContain('allergens-missing');
    expect(after).toContain('photo-small');
    expect(after).not.toContain('allergens-missing');
  });
  test('says that a cycle is sealed until its reveal, and shown since', async () => {
    expect(text).toContain('<strong>Sealed until 19 March 2026</strong>');
    expect(await made({ asOf: Date.UTC(2026, 2, 20) })).toContain('<p>Shown since 19 March 2026;');
  });
  test('has words where there is nothing to report', async () => {
    const items = coverageSample.items.map((one) => ({
      ...one,
      otherNames: [],
      phrases: one.phrases.map(({ rival: _, ...phrase }) => phrase),
    }));
    const none = await made({
      coverage: { ...coverageSample, items, advice: [], overRepeated: [], shared: [] },
      findings: [],
    });
    for (const words of [
      '<p>None.</p>',
      'it answers first.',
      'No phrase is said too often.',
      'No passage is',
    ])
      expect(none).toContain(words);
  });
  test('passes html-validate’s recommended, document and accessibility rules', async () => {
    const checker = new HtmlValidate(
      new StaticConfigLoader({
        extends: ['html-validate:recommended', 'html-validate:document', 'html-validate:a11y'],
        rules: {
          'long-title': 'off',
          // HTML takes the doctype in either case; ours is lower case.
          'doctype-style': 'off',
          // A table that scrolls is a region reachable by keyboard (WCAG 2.1.1), on a div by necessity.
          'prefer-native-element': 'off',
        },
      }),
    );
    const report = await checker.validateString(text);
    const faults = report.results.flatMap(({ messages }) =>
      messages.map(({ ruleId, line, message }) => `${line} ${ruleId}: ${message}`),
    );
    expect(faults).toEqual([]);
  });
});

/** What is asked of a page here, without the whole library of a browser's types. */
interface Shown {
  readonly document: {
    readonly documentElement: { readonly scrollWidth: number };
    readonly activeElement: { readonly textContent: string } | null;
    readonly querySelectorAll: (
      selector: string,
    ) => ArrayLike<{ readonly textContent: string; readonly getClientRects: () => ArrayLike<unknown> }>;
  };
}

describeWith('chromium', 'chromium', 'in Chromium', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(() => browser.close());

  const opened = async (options: Parameters<Browser['newPage']>[0] = {}): Promise<Page> => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, ...options });
    await page.setContent(text);
    return page;
  };
  const hidden = (page: Page): Promise<number> =>
    page.evaluate(() => {
      const { document } = globalThis as unknown as Shown;
      return Array.from(document.querySelectorAll('.account table, .run')).filter(
        (one) => one.getClientRects().length === 0,
      ).length;
    });

  // axe-core: WCAG 2.2 A and AA and its own best practices.
  test('has no axe violation, light and dark, at 390 and 1280 px, open and walking', async () => {
    const page = await opened();
    for (const button of await page.locator('.fold').all()) await button.click();
    await page.locator('[data-walk]').first().click();
    const found = await faultsOfLooks(page, { widths: [390, 1280] });
    await page.close();
    expect(found).toEqual([]);
  });

  // WCAG 2.2, 1.4.10 Reflow.
  test.each([320, 360, 768])('fits a screen %i px wide, folded open', async (width) => {
    const page = await opened({ viewport: { width, height: 780 } });
    for (const button of await page.locator('.fold').all()) await button.click();
    const wide = await page.evaluate(
      () => (globalThis as unknown as Shown).document.documentElement.scrollWidth,
    );
    await page.close();
    expect(wide).toBe(width);
  });

  test('walks through a phrase’s mentions by keyboard, says where it is, and goes back where it began', async () => {
    const page = await opened();
    await page.locator('.fold').first().press('Enter');
    const said = (): Promise<string | null> => page.locator('#walk-said').textContent();
    const count = coverageSample.items[0]?.phrases[0]?.mentions.length;
    await page.locator('[data-walk]').first().press('Enter');
    expect(await said()).toBe(`“seed tin”, mention 1 of ${count}: exact, title, cycle.md line 3: seed tin`);
    await page.keyboard.press('n');
    expect(await said()).toContain(`mention 2 of ${count}: exact, summary`);
    await page.keyboard.press('p');
    await page.keyboard.press('p');
    expect(await said()).toContain(`mention ${count} of ${count}`);
    expect(await page.locator('.now').count()).toBeGreaterThan(0);
    await page.keyboard.press('Escape');
    expect(await page.locator('.now, .mine').count()).toBe(0);
    expect(
      await page.evaluate(() => (globalThis as unknown as Shown).document.activeElement?.textContent),
    ).toBe('seed tin');
    await page.close();
  });

  test('opens an account when its standing is followed', async () => {
    const page = await opened();
    const account = page.locator('#account-2');
    expect(await account.isVisible()).toBe(false);
    await page.locator('a[href="#item-2"]').click();
    await account.waitFor({ state: 'visible' });
    await page.close();
  });

  test('has everything in sight without scripts, and on paper the text and the sums only when asked', async () => {
    const plain = await browser.newContext({ javaScriptEnabled: false });
    const page = await plain.newPage();
    await page.setContent(text);
    expect(await page.locator('.account table:visible').count()).toBe(coverageSample.items.length);
    await plain.close();
    const scripted = await opened();
    expect(await hidden(scripted)).toBeGreaterThan(0);
    await scripted.emulateMedia({ media: 'print' });
    expect(await scripted.locator('.run:visible, .account:visible').count()).toBe(0);
    expect(await scripted.locator('.advice:visible').count()).toBe(1);
    await scripted.emulateMedia({ media: 'screen' });
    await scripted.locator('#print-all').check();
    await scripted.emulateMedia({ media: 'print' });
    expect(await hidden(scripted)).toBe(0);
    await scripted.close();
  });
});
