import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { dateInZone } from '../../src/model/calendar.ts';
import { callFor } from '../../src/model/calls.ts';
import { cautionsOf } from '../../src/model/cautions.ts';
import { isSealed } from '../../src/model/seal.ts';
import { typeset } from '../../src/render/typeset.ts';
import { CHROMIUM } from '../support/chromium.ts';
import { demoBox } from '../support/demo-box.ts';
import { htmlValidateFaults, nuErrors } from '../support/html-checkers.ts';
import { droppedBy, featuresIn } from '../support/mail-features.ts';
import { bodiesOf, messageFaults } from '../support/message-faults.ts';
import { readMessage } from '../support/read-message.ts';
import { cautionText } from '../support/telling-input.ts';
import { describeWith, filesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const backroom = join(site, '../backroom');
const read = (cycle: string, name: string): string => readFileSync(join(backroom, cycle, name), 'utf8');
const cycles = filesBelow(backroom)
  .filter((path) => path.endsWith('/letter.html'))
  .map((path) => path.split('/')[0] as string);

const box = await demoBox(join(site, '../.lidlore'));
/** The demo's moment: noon or midnight, its calls are the same. */
const asOf = Date.UTC(2026, 2, 27);

const unescaped = (html: string): string =>
  html
    .replace(/&#39;/g, "'")
    .replace(/&quot;/g, '"')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;/g, '&');
/** Words as they follow each other, however the lines are broken. */
const running = (text: string): string => text.replace(/\s+/g, ' ');

test('every cycle has its letter', () => {
  expect(cycles).toEqual(box.cycles.map(({ id }) => id));
});

describe.each(box.cycles.map((cycle) => ({ id: cycle.id, cycle })))('the letter of $id', ({ id, cycle }) => {
  const forms = [
    ['letter.html', running(unescaped(read(id, 'letter.html').replace(/<(?!a\b)[^>]*>/g, ' ')))],
    ['letter.txt', running(read(id, 'letter.txt'))],
  ] as const;
  const set = (text: string): string => running(typeset(text, box.settings.lang));

  test.each(forms)('names every item, every caution, the peek and the call: %s', (_, text) => {
    const wanted = [
      ...cycle.items.map(({ name }) => name),
      ...cycle.items.flatMap((item) =>
        cautionsOf(item)
          .map(cautionText)
          .flatMap(({ lines }) => lines),
      ),
      ...(cycle.peek ? [cycle.peek.text] : []),
      ...cycle.voices.map((voice) => voice.text),
    ];
    expect(wanted.filter((words) => !text.includes(set(words)))).toEqual([]);
    const addresses = [callFor(box, cycle, asOf)?.address, cycle.replay?.address, box.settings.unsubscribe];
    expect(addresses.filter((address) => address && !text.includes(address))).toEqual([]);
    expect(text.split('had this box free or at a lower price')).toHaveLength(
      cycle.voices.filter(({ given }) => given).length + 1,
    );
  });

  test('has lines of at most 72 characters, and each address on its own', () => {
    const lines = read(id, 'letter.txt').split('\n');
    expect(lines.filter((line) => [...line].length > 72 && !/^https:\S+$/.test(line))).toEqual([]);
    expect(lines.filter((line) => /\S\s+https?:|https?:\S+\s/.test(line))).toEqual([]);
  });

  // The figure is common practice: longer letters are cut off.
  test('is under 102 kB', () => {
    expect(Buffer.byteLength(read(id, 'letter.html'))).toBeLessThan(102_000);
  });

  test('is a message without fault', () => {
    expect(messageFaults(read(id, 'letter.eml'))).toEqual([]);
  });

  // Two independent MIME parsers (RFC 2045, 2046, 2047).
  test('is read alike by mailparser and postal-mime, its parts the files', async () => {
    const { mailparser, postalMime } = await readMessage(read(id, 'letter.eml'));
    expect(mailparser).toEqual(postalMime);
    expect(mailparser).toMatchObject({
      subject: /<title>([^<]*)/.exec(unescaped(read(id, 'letter.html')))?.[1],
      from: { name: box.settings.name, address: box.settings.email },
      id: `<${id}.letter@sillandsprig.example>`,
      date: cycle.reveal,
      text: read(id, 'letter.txt').trimEnd(),
      html: read(id, 'letter.html').trimEnd(),
    });
    expect(bodiesOf(read(id, 'letter.eml'))).toEqual([read(id, 'letter.txt'), read(id, 'letter.html')]);
  });

  test('shows only JPEGs by full addresses, which are in the site unless it is sealed, below the logo', () => {
    const [head = '', ...logos] = read(id, 'letter.html').split(/<img class="logo"[^>]*>/);
    expect(logos.length).toBe(1);
    const html = head + logos.join('');
    const shown = [...html.matchAll(/<img[^>]* src="([^"]*)"[^>]* alt="([^"]+)"/g)].map(([, src]) => src);
    expect(shown.length).toBe([...html.matchAll(/<img/g)].length);
    expect(shown.length).toBeGreaterThan(cycle.items.length);
    const base = box.settings.url;
    expect(shown.filter((src) => !src?.startsWith(base) || !src.endsWith('.jpg'))).toEqual([]);
    const published = new Set(filesBelow(site));
    const there = shown.filter((src) => published.has(decodeURIComponent(src?.slice(base.length) ?? '')));
    expect(there).toEqual(isSealed(cycle, asOf) ? [] : shown);
    expect([...html.matchAll(/(?:href|src)="(?!https:|mailto:)[^"]*"/g)].map(([link]) => link)).toEqual([]);
  });

  test('leads only to pages of the site that there are, unless it is sealed', () => {
    if (isSealed(cycle, asOf)) return;
    const base = box.settings.url;
    const missing = [...read(id, 'letter.html').matchAll(/href="([^"]*)"/g)]
      .map(([, href = '']) => href)
      .filter((href) => href.startsWith(`${base}boxes/`))
      .filter((href) => {
        const [path = '', anchor] = decodeURIComponent(href.slice(base.length)).split('#');
        const page = readFileSync(join(site, path), 'utf8');
        return anchor !== undefined && !page.includes(`id="${anchor}"`);
      });
    expect(missing).toEqual([]);
  });
});

/** What major programs drop, each with what is left then. A feature that is not listed has no such program. */
const LEFT: Readonly<Record<string, string>> = {
  'html-style':
    'One drops the style sheet: colours stay light, items keep their two columns, which are shares of any width.',
  'css-at-media': 'The same: only dark colours and the single column on a phone stand in it.',
  'css-at-media-prefers-color-scheme':
    'Colours stay light on their own light ground, or the program inverts both; the pairs keep their contrast.',
  'html-meta-color-scheme': 'The same.',
  'css-color-scheme': 'The same.',
  'css-selector-class': 'Where the style sheet goes, so do they.',
  'css-selector-grouping': 'The same.',
  'html-doctype': 'Sizes stand on cells and pictures, which are measured alike without one.',
  'css-max-height': 'Only of the preheader, which is not displayed at all.',
  'css-display-none': 'The preheader is then a first line of one pixel.',
  'css-overflow': 'Only of the preheader, which is not displayed at all.',
  'css-height': 'Only `auto`, which is what a picture without a height attribute has.',
  'html-body': 'The ground stands on the outer table too.',
  'html-role': 'A layout table may be read out as a table.',
  'html-aria-label': 'The subject, which is the message’s own, names it.',
};
/** Properties that caniemail has no table for. */
const UNTOLD = [
  'color',
  'font-family',
  'font-style',
  '-webkit-text-size-adjust',
  '-ms-text-size-adjust',
  'mso-hide',
  'mso-line-height-rule',
];

describe('mail programs', () => {
  const all = cycles.map((id) => featuresIn(read(id, 'letter.html')));
  const known = [...new Set(all.flatMap((one) => [...one.known]))];

  // caniemail.com's data as the package caniemail 1.0.5 has it.
  test('drop nothing of a letter but what something else stands in for', () => {
    const dropped = known.filter((feature) => droppedBy(feature).length > 0);
    expect(dropped.sort()).toEqual(Object.keys(LEFT).sort());
    expect(known.length).toBeGreaterThan(40);
  });

  test('are asked for no property that nobody has tried, save those listed', () => {
    const unknown = [...new Set(all.flatMap((one) => [...one.unknown]))];
    expect(unknown.sort()).toEqual([...UNTOLD].sort());
  });

  test('would be seen to drop what they do', () => {
    const { known: found } = featuresIn(
      '<p style="display: grid; border-radius: 4px"><img src="a.avif"></p>',
    );
    expect([...found].flatMap(droppedBy).length).toBeGreaterThan(0);
    expect([...found]).toContain('css-border-radius');
    expect(droppedBy('image-avif').length).toBeGreaterThan(0);
  });
});

describeWith('java', 'default-jre-headless', 'every letter', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'lidlore-letters-'));
    for (const id of cycles)
      for (const name of ['letter', 'letter-sheet'])
        copyFileSync(join(backroom, id, `${name}.html`), join(folder, `${id}-${name}.html`));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  // The Nu HTML Checker (vnu-jar). One program's own properties are what mail needs and HTML does not know.
  test('passes the Nu checker but for two properties of one program', () => {
    const other = nuErrors(folder).filter(
      (error) => !/Property “mso-(?:hide|line-height-rule)” doesn't exist/.test(error),
    );
    expect(other).toEqual([]);
  });
});

test('a sheet on sending passes html-validate’s recommended, document and accessibility rules', async () => {
  expect(await htmlValidateFaults(read('2026-03', 'letter-sheet.html'))).toEqual([]);
});

test('the sheet of a sealed cycle says that its pictures come with the reveal', () => {
  expect(dateInZone(asOf, 'Europe/London') < '2026-04-23').toBe(true);
  expect(read('2026-04', 'letter-sheet.html')).toContain('Sealed until 23 April 2026');
  expect(read('2026-03', 'letter-sheet.html')).not.toContain('Sealed');
});

test('a letter that is still to be sent has a preview with its own pictures beside it, and is the same', () => {
  const previews = filesBelow(backroom).filter((path) => path.endsWith('/letter-preview.html'));
  expect(previews).toEqual(['2026-03/letter-preview.html', '2026-04/letter-preview.html']);
  const sources = (html: string): readonly string[] =>
    [...html.matchAll(/ src="([^"]*)"/g)].map(([, src = '']) => src);
  for (const id of ['2026-03', '2026-04']) {
    const [sent, preview] = [read(id, 'letter.html'), read(id, 'letter-preview.html')];
    expect(sources(preview).length).toBeGreaterThan(5);
    expect(sources(preview).filter((src) => !existsSync(join(backroom, id, decodeURI(src))))).toEqual([]);
    // What goes out is read elsewhere.
    expect(sources(sent).filter((src) => !src.startsWith('https://sillandsprig.example/pictures/'))).toEqual(
      [],
    );
    const bare = (html: string): string =>
      html.replace(/ src="[^"]*"/g, '').replace(/(<title>|aria-label=")Preview: /g, '$1');
    expect(bare(preview)).toBe(bare(sent));
    expect(read(id, 'letter.eml')).not.toContain('letter-pictures');
    expect(read(id, 'letter-sheet.html').match(/<iframe src="letter-preview\.html"/g)).toHaveLength(2);
  }
  expect(read('2026-02', 'letter-sheet.html').match(/<iframe src="letter\.html"/g)).toHaveLength(2);
});

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface AxeResult {
  readonly violations: { readonly id: string; readonly nodes: { readonly target: string[] }[] }[];
  readonly passes: { readonly id: string; readonly nodes: unknown[] }[];
}

describeWith('chromium', 'chromium', 'in Chromium', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch(CHROMIUM);
  });
  afterAll(() => browser.close());

  const cases = [cycles.at(-2), '2025-12'].flatMap((id) =>
    (['light', 'dark'] as const).flatMap((scheme) => [375, 660].map((width) => ({ id, scheme, width }))),
  );
  // axe-core: WCAG 2.2 A and AA. A letter is no page, so the practices that ask for landmarks are left out.
  test.each(cases)(
    'the letter of $id: no axe violation, $scheme at $width px',
    async ({ id, scheme, width }) => {
      const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme: scheme });
      // Pictures off: what is left must be read too.
      await page.route(/^https:/, (route) => route.abort());
      await page.goto(pathToFileURL(join(backroom, id as string, 'letter.html')).href);
      await page.evaluate(axe);
      const { violations, passes } = await page.evaluate(() =>
        (globalThis as unknown as { axe: { run: (options: object) => Promise<AxeResult> } }).axe.run({
          runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
        }),
      );
      const wide = await page.evaluate(
        () =>
          (globalThis as unknown as { document: { documentElement: { scrollWidth: number } } }).document
            .documentElement.scrollWidth,
      );
      await page.close();
      expect(
        violations.map(({ id: rule, nodes }) => `${rule}: ${nodes.map(({ target }) => target)}`),
      ).toEqual([]);
      expect(passes.find(({ id: rule }) => rule === 'color-contrast')?.nodes.length).toBeGreaterThan(20);
      expect(wide).toBe(width);
    },
  );
});
