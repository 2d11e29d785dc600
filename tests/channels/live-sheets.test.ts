/** The run sheet and the clip sheet of the demo, as a browser and other people's checkers see them. */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { clipSheet } from '../../src/channels/clip/index.ts';
import { runSheet } from '../../src/channels/live/index.ts';
import type { Box, Piece } from '../../src/model/box.ts';
import { LINE_LENGTH, LINES, READING_SPEED } from '../../src/render/clip-overlay.ts';
import { faultsOfLooks } from '../support/axe.ts';
import { carriedOut, type TextOutput } from '../support/carried-out.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { demoBox, privateInput } from '../support/demo-box.ts';
import { htmlValidateFaults, nuErrors } from '../support/html-checkers.ts';
import { subRipFaults, vttCues, vttFaults } from '../support/timed-text-faults.ts';
import { describeWith } from '../support/tools.ts';

const NOW = Date.UTC(2026, 2, 27, 12);
const box = await demoBox(join(import.meta.dirname, '../../.lidlore'));
const input = await privateInput(box, NOW);

const made = async (pieces: readonly Piece[], of: Box = box): Promise<readonly TextOutput[]> => {
  const given = { ...input, box: { ...of, settings: { ...of.settings, pieces } } };
  const results = await Promise.all([runSheet, clipSheet].map((channel) => carriedOut(channel, given)));
  return results.flatMap(({ outputs }) => outputs.filter((output) => 'text' in output));
};
const files = await made(['live', 'clip']);
const ending = (end: string): readonly TextOutput[] => files.filter(({ path }) => path.endsWith(end));
const textOf = (path: string): string => {
  const file = files.find((one) => one.path === path);
  if (!file) throw new Error(`Expected the file ${path}`);
  return file.text;
};

describe('the sheets', () => {
  test('are made of every cycle, for the pieces that the box makes and no others', async () => {
    expect(ending('run-sheet.html')).toHaveLength(box.cycles.length);
    expect(ending('clip-sheet.html')).toHaveLength(box.cycles.length);
    expect(await made(['article'])).toEqual([]);
    expect((await made(['live'])).filter(({ path }) => path.includes('clip'))).toEqual([]);
    expect(new Set(files.map(({ where }) => where))).toEqual(new Set(['backroom']));
  });

  test('need nothing from outside themselves', () => {
    for (const { path, text } of [...ending('run-sheet.html'), ...ending('clip-sheet.html')]) {
      const outside = [...text.matchAll(/(?:src|href)="([^"]*)"|url\(([^)]*)\)/g)]
        .map(([, attribute, url]) => attribute ?? url ?? '')
        .filter((address) => !/^(?:data:|\.\.\/index\.html$|clip\.|chapters\.vtt$)/.test(address));
      expect({ path, outside }).toEqual({ path, outside: [] });
    }
  });

  test('carry every item and every caution of their cycle', () => {
    const plain = (html: string): string => html.replace(/&#39;/g, "'").replace(/&amp;/g, '&');
    for (const { id, items } of box.cycles) {
      const [run, clip] = ['run-sheet', 'clip-sheet'].map((name) => plain(textOf(`${id}/${name}.html`)));
      for (const { name, hazards } of items) {
        const first = (name.split(/[,'"]/)[0] as string).trim();
        expect(run).toContain(first);
        expect(clip).toContain(first);
        for (const allergen of hazards.allergens ?? []) {
          expect(run).toContain(allergen);
          expect(clip).toContain(allergen);
        }
      }
    }
  });

  // html-validate, the second opinion beside the Nu checker.
  test.each(['2026-03/run-sheet.html', '2026-03/clip-sheet.html'])(
    '%s is sound HTML by html-validate',
    async (path) => {
      expect(await htmlValidateFaults(textOf(path))).toEqual([]);
    },
  );
});

describe('timed text', () => {
  test('of every cycle is read without a fault by webvtt-parser and srt-validator', () => {
    const faults = [
      ...ending('clip.vtt').flatMap(({ path, text }) =>
        vttFaults(text, 'subtitles/captions/descriptions').map((fault) => `${path}:${fault}`),
      ),
      ...ending('chapters.vtt').flatMap(({ path, text }) =>
        vttFaults(text, 'chapters').map((fault) => `${path}:${fault}`),
      ),
      ...ending('clip.srt').flatMap(({ path, text }) =>
        subRipFaults(text).map((fault) => `${path}:${fault}`),
      ),
    ];
    expect(faults).toEqual([]);
    expect(ending('chapters.vtt')).toHaveLength(1);
  });

  test('keeps to two lines of 42 signs, read at 17 a second', () => {
    const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
    const signs = (text: string): number => [...graphemes.segment(text)].length;
    for (const { text } of ending('clip.vtt'))
      for (const cue of vttCues(text)) {
        const lines = cue.text.replace(/&amp;/g, '&').split('\n');
        expect(lines.length).toBeLessThanOrEqual(LINES);
        expect(Math.max(...lines.map(signs))).toBeLessThanOrEqual(LINE_LENGTH);
        const speed = signs(lines.join(' ')) / (cue.endTime - cue.startTime);
        expect(speed).toBeLessThanOrEqual(READING_SPEED + 1e-6);
      }
  });
});

describeWith('java', 'default-jre-headless', 'the Nu HTML checker', () => {
  test('finds no error in the sheets', async () => {
    const dir = await mkdtemp(join(tmpdir(), 'lidlore-sheets-'));
    for (const path of ['2026-03/run-sheet.html', '2025-12/run-sheet.html', '2026-03/clip-sheet.html'])
      await writeFile(join(dir, path.replace('/', '-')), textOf(path));
    expect(nuErrors(dir)).toEqual([]);
    await rm(dir, { recursive: true });
  });
});

describeWith('chromium', 'chromium', 'in Chromium', () => {
  let browser: Browser;
  let dir: string;
  beforeAll(async () => {
    dir = await mkdtemp(join(tmpdir(), 'lidlore-sheets-'));
    for (const { path, text } of files) {
      await mkdir(dirname(join(dir, path)), { recursive: true });
      await writeFile(join(dir, path), text);
    }
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(async () => {
    await browser.close();
    await rm(dir, { recursive: true });
  });
  const opened = async (path: string, options: Parameters<Browser['newPage']>[0] = {}): Promise<Page> => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 }, ...options });
    await page.goto(pathToFileURL(join(dir, path)).href);
    return page;
  };
  const phone = { viewport: { width: 390, height: 844 } };

  // The newest cycle, the one before it, and the one with the most cautions.
  const printed = ['2026-04', '2026-03', '2025-12'].flatMap((id) =>
    (['A4', 'Letter'] as const).map((format) => ({ id, format })),
  );
  test.each(printed)('the run sheet of $id prints on two sheets of $format', async ({ id, format }) => {
    const page = await opened(`${id}/run-sheet.html`);
    const pdf = await page.pdf({ format });
    // ISO 32000-1, 7.7.3.2: each page is an object of its own.
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(2);
    await page.emulateMedia({ media: 'print' });
    const smallest = await page.evaluate<number>(`Math.min(
      ...[...document.querySelectorAll('main *')]
        .filter((one) => one.checkVisibility())
        .filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.nodeValue.trim()))
        .map((one) => parseFloat(getComputedStyle(one).fontSize)))`);
    await page.close();
    // Points are 4/3 CSS pixels.
    expect(smallest).toBeGreaterThanOrEqual((14 * 4) / 3 - 0.01);
  });

  // axe-core: WCAG 2.2 A and AA and its own best practices.
  test.each(['run-sheet', 'clip-sheet'])(
    'the %s has no axe violation and fits, light and dark, at 390 and 1280 px',
    async (name) => {
      const page = await opened(`2026-03/${name}.html`);
      const found = await faultsOfLooks(page, { widths: [390, 1280] });
      await page.close();
      expect(found).toEqual([]);
    },
  );

  const now = (page: Page): Promise<string | null> => page.locator('.now h2').textContent();

  test('on a phone each beat fills a screen, whole and large, and keys and taps lead through them', async () => {
    const page = await opened('2026-03/run-sheet.html', phone);
    const titles: string[] = [];
    const count = await page.locator('.beat').count();
    for (let i = 0; i < count; i += 1) {
      titles.push(String(await now(page)));
      const beat = await page.evaluate<{
        hidden: number;
        size: number;
        others: number;
        focused: string;
      }>(`(() => {
        const one = document.querySelector('.now');
        return {
          hidden: one.scrollHeight - one.clientHeight,
          size: parseFloat(getComputedStyle(one).fontSize),
          others: [...document.querySelectorAll('.beat')].filter((other) => other.checkVisibility()).length,
          focused: document.activeElement.tagName,
        };
      })()`);
      expect(beat).toMatchObject({ others: 1, focused: 'H2' });
      expect(beat.hidden).toBeLessThanOrEqual(0);
      expect(beat.size).toBeGreaterThanOrEqual(16.8);
      await page.keyboard.press(['ArrowRight', 'PageDown', ' '][i % 3] as string);
    }
    expect(new Set(titles).size).toBe(count - 1);
    expect(await page.locator('#next').isDisabled()).toBe(true);
    await page.keyboard.press('Home');
    expect(await now(page)).toBe('Set the stage');
    await page.locator('#next').click();
    expect(await now(page)).toBe('The hook');
    await page.locator('#back').click();
    expect(await now(page)).toBe('Set the stage');
    await page.close();
  });

  test('the clock says ahead, on time and behind, and outlives a reload', async () => {
    const page = await browser.newPage(phone);
    await page.clock.install({ time: NOW });
    await page.goto(pathToFileURL(join(dir, '2026-03/run-sheet.html')).href);
    await page.clock.pauseAt(NOW + 60_000);
    const stand = (): Promise<string | null> => page.locator('#stand').textContent();
    expect(await stand()).toBe('before the clock');
    await page.keyboard.press('s');
    expect(await now(page)).toBe('The hook');
    expect(await stand()).toBe('on time, 0:12 left');
    await page.keyboard.press('ArrowRight');
    expect(await stand()).toBe('0:12 ahead');
    await page.clock.runFor(100_000);
    expect(await stand()).toBe('0:58 behind');
    expect(await page.locator('#elapsed').textContent()).toBe('1:40');
    await page.reload();
    expect(await now(page)).toBe('Who is here?');
    expect(await stand()).toBe('0:58 behind');
    await page.close();
  });

  test('the whole sheet is one key away, and the cues are one button away at a desk', async () => {
    const page = await opened('2026-03/run-sheet.html');
    expect(await page.locator('.beat:visible').count()).toBeGreaterThan(10);
    await page.locator('#open').press('Enter');
    expect(await page.locator('.beat:visible').count()).toBe(1);
    await page.keyboard.press('Escape');
    expect(await page.locator('.beat:visible').count()).toBeGreaterThan(10);
    expect(await page.evaluate('document.activeElement.id')).toBe('open');
    await page.close();
  });

  // Screen Wake Lock, W3C.
  test('the screen is kept awake where the browser can, and nothing breaks where it cannot', async () => {
    const page = await browser.newPage(phone);
    await page.addInitScript(`globalThis.asked = [];
      Object.defineProperty(navigator, 'wakeLock', { value: {
        request: async (kind) => (asked.push(kind), { release: () => asked.push('released') }),
      } });`);
    await page.goto(pathToFileURL(join(dir, '2026-03/run-sheet.html')).href);
    await page.keyboard.press('Escape');
    expect(await page.evaluate('asked')).toEqual(['screen', 'released']);
    await page.close();

    const without = await browser.newPage(phone);
    const errors: string[] = [];
    without.on('pageerror', (error) => errors.push(String(error)));
    await without.addInitScript("Object.defineProperty(navigator, 'wakeLock', { value: undefined })");
    await without.goto(pathToFileURL(join(dir, '2026-03/run-sheet.html')).href);
    await without.keyboard.press('ArrowRight');
    await without.keyboard.press('Escape');
    expect(errors).toEqual([]);
    await without.close();
  });

  test('without scripts the sheet reads as a document', async () => {
    const page = await opened('2026-03/run-sheet.html', { ...phone, javaScriptEnabled: false });
    expect(await page.locator('.beat:visible').count()).toBeGreaterThan(10);
    expect(await page.locator('button:visible').count()).toBe(0);
    await page.close();
  });

  // HTML's own reader of WebVTT.
  test('a track of clip.vtt is read whole', async () => {
    const page = await browser.newPage();
    const address = 'https://clip.invalid/';
    await page.route(`${address}**`, (route) =>
      route.request().url().endsWith('.vtt')
        ? route.fulfill({ contentType: 'text/vtt', body: textOf('2026-03/clip.vtt') })
        : route.fulfill({
            contentType: 'text/html',
            body: '<video><track kind="captions" src="clip.vtt" default></video>',
          }),
    );
    await page.goto(address);
    const cues = await page.evaluate(`new Promise((resolve, reject) => {
      const element = document.querySelector('track');
      const read = () => resolve([...element.track.cues].map(({ startTime, endTime, text }) => ({ startTime, endTime, text })));
      element.onerror = () => reject(new Error('The track was not read'));
      element.onload = read;
      if (element.readyState === 2) read();
    })`);
    await page.close();
    const written = vttCues(textOf('2026-03/clip.vtt'));
    expect(cues).toEqual(written.map(({ startTime, endTime, text }) => ({ startTime, endTime, text })));
  });
});
