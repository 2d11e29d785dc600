/**
 * The desk in a browser: what its owner waits for. `npm run bench -- desk` measures the program in dist/; of the longest
 * box `LIDLORE_CYCLES=60` takes fewer cycles. What else the machine does is said beside the figures.
 */
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { afterAll, test } from 'vitest';
import { CHROMIUM } from '../support/chromium.ts';
import { closedDesk, type DeskProcess, openedDesk } from '../support/open-desk.ts';
import { median } from './cost.ts';
import { percentile } from './percentile.ts';
import { type Row, tableLines } from './table.ts';
import { AFTER_ALL, writeTextBox } from './text-box.ts';

const ROOT = join(import.meta.dirname, '../..');
const CYCLES = Number(process.env.LIDLORE_CYCLES ?? 240);
const EDITS = 40;
const STARTS = 7;
const KEYS = 120;

/** The demo on the day it is built for. */
const DEMO_DAY = '2026-03-27';
const DEMO_STORY = 'cycles/2026-03/items/01-wooden-seed-tray.md';

const dir = mkdtempSync(join(tmpdir(), 'lidlore-bench-desk-'));
const desks = new Set<DeskProcess>();
afterAll(() => {
  for (const { child } of desks) child.kill('SIGKILL');
  rmSync(dir, { recursive: true, force: true });
});

const opened = async (cwd: string, asOf: string): Promise<DeskProcess> => {
  const desk = await openedDesk(cwd, ['--as-of', asOf, '--port', '5100']);
  desks.add(desk);
  return desk;
};

/** What the page does to time itself: its saves, what is seen of them, and its keys. */
const WATCH = `(() => {
  const times = (globalThis.benchTimes = { saved: 0, seen: [], keys: [] });
  const ask = globalThis.fetch;
  globalThis.fetch = (address, options) => {
    if (options?.method === 'POST') times.saved = performance.now();
    return ask(address, options);
  };
  const seenBy = (page) => page.requestAnimationFrame(() => page.requestAnimationFrame(() => {
    // The frame after the next is drawn once this one's pixels are there.
    const desk = globalThis.top.benchTimes;
    desk.seen.push(globalThis.top.performance.now() - desk.saved);
  }));
  if (globalThis.top !== globalThis) {
    // A page beside the writing that is changed where it stands.
    addEventListener('load', () => new MutationObserver(() => seenBy(globalThis)).observe(document.body, {
      subtree: true, childList: true, characterData: true, attributes: true,
    }));
    return;
  }
  addEventListener('DOMContentLoaded', () => {
    new MutationObserver((changes) => {
      for (const { target, oldValue } of changes)
        if (oldValue === 'coming' && target.className === '') seenBy(globalThis);
    }).observe(document, { subtree: true, attributes: true, attributeFilter: ['class'], attributeOldValue: true });
    let key = 0;
    addEventListener('keydown', ({ timeStamp }) => { key = timeStamp; }, true);
    addEventListener('input', () => {
      document.body.getBoundingClientRect();
      times.keys.push(performance.now() - key);
    });
  });
})()`;

interface Times {
  readonly seen: readonly number[];
  readonly keys: readonly number[];
}

const timesOf = (page: Page): Promise<Times> =>
  page.evaluate(() => (globalThis as unknown as { benchTimes: Times }).benchTimes);

/** Saves a story with a word more, and waits until it is seen and all that is told about it has come. */
const editOnce = async (page: Page, edit: number): Promise<void> => {
  const before = (await timesOf(page)).seen.length;
  const told = page.waitForResponse(
    (answer) => answer.url().includes('/write/') && answer.request().method() === 'GET',
    { timeout: 120_000 },
  );
  await page.locator('#story').evaluate(
    (area, word) => {
      const story = area as unknown as { value: string; dispatchEvent: (event: Event) => void };
      story.value = `${story.value.replace(/(?: quiet\w+)?\n*$/, '')} quiet${word}\n`;
      story.dispatchEvent(new Event('input', { bubbles: true }));
      story.dispatchEvent(new Event('change', { bubbles: true }));
    },
    [edit % 10, Math.floor(edit / 10) % 10].map((digit) => 'abcdefghij'[digit]).join(''),
  );
  while ((await timesOf(page)).seen.length === before) await page.waitForTimeout(20);
  await (await told).finished();
  await page.waitForTimeout(100);
};

const figures = (values: readonly number[]): string =>
  `50th percentile ${percentile(values, 0.5).toFixed(0)} ms, 95th ${percentile(values, 0.95).toFixed(0)} ms of ${values.length}`;

const load = (): string => `load ${loadavg()[0]?.toFixed(1)}`;

const latencyRow = async (
  page: Page,
  desk: DeskProcess,
  story: string,
  cycles: number,
  most: number,
): Promise<Row> => {
  await page.goto(`${desk.address}write/${story}`, { timeout: 300_000 });
  await page.frameLocator('iframe[data-shown]').locator('h1').first().waitFor({ timeout: 300_000 });
  // The first has everything still to load.
  await editOnce(page, 0);
  const first = (await timesOf(page)).seen.length;
  for (let edit = 1; edit <= EDITS; edit += 1) await editOnce(page, edit);
  const times = (await timesOf(page)).seen.slice(first);
  return {
    question: `desk: from save to changed pixels, ${cycles} cycles`,
    aim: `95th ≤ ${most} ms`,
    met: percentile(times, 0.95) <= most,
    remark: `${figures(times)}; ${load()}`,
  };
};

/** Times from a key in the story to the end of script, style and layout that it asks for, waiting for others among it. */
const keyTimes = async (page: Page): Promise<readonly number[]> => {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  await page.locator('#story').focus();
  await page.keyboard.press('Control+End');
  const before = (await timesOf(page)).keys.length;
  for (let key = 0; key < KEYS; key += 1) {
    await page.keyboard.press('abcdefgh '[key % 9] ?? 'a');
    // Long enough for a save now and then, whose answer comes while somebody types on.
    await page.waitForTimeout(key % 20 === 19 ? 1000 : 60);
  }
  const times = (await timesOf(page)).keys.slice(before);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return times;
};

/** The same of a page with nothing in it but a text area of the same text: what the browser itself takes. */
const bareKeyTimes = async (page: Page): Promise<readonly number[]> => {
  const text = await page.locator('#story').inputValue();
  const bare = await page.context().newPage();
  await bare.addInitScript(WATCH);
  await bare.route('**/bare', (route) =>
    route.fulfill({ contentType: 'text/html', body: '<textarea id="story" rows="18" cols="70"></textarea>' }),
  );
  await bare.goto(new URL('/bare', page.url()).href);
  await bare.locator('#story').fill(text);
  const times = await keyTimes(bare);
  await bare.close();
  return times;
};

const keysRow = async (page: Page): Promise<Row> => {
  const bare = await bareKeyTimes(page);
  const times = await keyTimes(page);
  const longest = (some: readonly number[]): string => Math.max(...some).toFixed(1);
  return {
    question: 'desk: a key in the story, a quarter of the processor’s speed',
    aim: 'longest ≤ 16 ms',
    met: Math.max(...times) <= 16,
    remark: `longest ${longest(times)} ms, ${figures(times)}; bare: longest ${longest(bare)} ms, ${figures(bare)}; ${load()}`,
  };
};

/** From the start of the process to a heading on the screen. */
const firstPageRow = async (page: Page, cwd: string): Promise<Row> => {
  const times: number[] = [];
  for (let start = 0; start < STARTS; start += 1) {
    const began = performance.now();
    const desk = await opened(cwd, DEMO_DAY);
    await page.goto(desk.address, { waitUntil: 'commit' });
    await page.locator('h1').waitFor();
    times.push(performance.now() - began);
    await closedDesk(desk);
    desks.delete(desk);
  }
  return {
    question: 'desk: first page after the command, 12 cycles',
    runs: STARTS,
    aim: '≤ 700 ms',
    met: median(times) <= 700,
    remark: `${median(times).toFixed(0)} ms (${times.map((time) => time.toFixed(0)).join(' ')}); ${load()}`,
  };
};

test('the desk', { timeout: 3600 * 1000 }, async () => {
  const rows: Row[] = [];
  const say = (row: Row): void => {
    rows.push(row);
    console.error(tableLines([row]).at(-1));
  };
  const browser = await chromium.launch(CHROMIUM);
  // In a context of its own, because a page opened without one shares it with no other.
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(WATCH);
  const demo = join(dir, 'demo');
  mkdirSync(demo);
  cpSync(join(ROOT, 'content'), join(demo, 'content'), { recursive: true });
  const kept = join(ROOT, '.lidlore');
  if (existsSync(kept)) cpSync(kept, join(demo, '.lidlore'), { recursive: true });
  const desk = await opened(demo, DEMO_DAY);
  say(await latencyRow(page, desk, DEMO_STORY, 12, 120));
  say(await keysRow(page));
  await page.goto('about:blank');
  await closedDesk(desk);
  say(await firstPageRow(page, demo));
  const long = join(dir, 'long');
  const newest = writeTextBox(long, CYCLES).at(-1) ?? '';
  const items = join('cycles', newest, 'items');
  const [item = ''] = readdirSync(join(long, 'content', items)).sort();
  const other = await opened(long, AFTER_ALL);
  say(await latencyRow(page, other, `${items}/${item}`, CYCLES, 250));
  await page.goto('about:blank');
  await closedDesk(other);
  await browser.close();
  console.log(`\n${tableLines(rows).join('\n')}`);
});
