import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { kinds } from '../../src/channels/kinds.ts';
import type { Box, Item } from '../../src/model/box.ts';
import { monthName } from '../../src/model/calendar.ts';
import { kindKey } from '../../src/model/kinds.ts';
import { cycleOf } from '../../src/model/relations.ts';
import { unsealed } from '../../src/model/seal.ts';
import { escapeHtml } from '../../src/render/html.ts';
import { typeset } from '../../src/render/typeset.ts';
import { carriedOut } from '../support/carried-out.ts';
import { demoBox, publicInput } from '../support/demo-box.ts';
import { filesBelow } from '../support/tools.ts';

const site = inject('demoSite');
const AS_OF = Date.UTC(2026, 2, 27);
const paths = filesBelow(site).filter((path) => path.startsWith('kinds/'));
const pageAt = (path: string): string => readFileSync(join(site, path), 'utf8');

let whole: Box;
let box: Box;
beforeAll(async () => {
  whole = await demoBox(join(site, '../.lidlore'));
  box = unsealed(whole, AS_OF);
});

const shown = (text: string): string => escapeHtml(typeset(text, 'en-GB'));
const itemsOf = (kind: string): readonly Item[] =>
  [...box.cycles]
    .reverse()
    .flatMap(({ items }) => items)
    .filter((item) => kindKey(item.kind, 'en') === kindKey(kind, 'en'));

test('kinds that three unsealed items share have a page, and no others', () => {
  const counts = new Map<string, number>();
  for (const { items } of box.cycles)
    for (const { kind } of items) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const many = [...counts].filter(([, count]) => count >= 3).map(([kind]) => kind);
  expect(many.length).toBeGreaterThanOrEqual(2);
  expect(paths).toEqual(many.map((kind) => `kinds/${kind.replaceAll(' ', '-')}.html`).sort());
});

describe.each([
  ['hand tool', 5],
  ['plant support', 3],
] as const)('the page of %ss', (kind, count) => {
  const path = `kinds/${kind.replace(' ', '-')}.html`;
  const page = pageAt(path);
  const entries = [...page.matchAll(/<li>\n<a class="plate"[\s\S]*?<\/li>/g)].map(([source]) => source);

  test('has every item once, newest first, with picture, name, box, maker and description', () => {
    const items = itemsOf(kind);
    expect(items).toHaveLength(count);
    expect(entries).toHaveLength(count);
    items.forEach((item, i) => {
      const cycle = cycleOf(box, item);
      const entry = entries[i] ?? '';
      expect(entry).toContain(`href="../boxes/${cycle.address}.html#${item.slug}">${shown(item.name)}</a>`);
      expect(entry).toContain(
        `href="../boxes/${cycle.address}.html">${monthName(cycle, 'en-GB')}, ${shown(cycle.theme)}`,
      );
      expect(entry).toContain(`<dd>${shown(item.brand)}</dd>`);
      expect(entry).toContain(shown(item.description));
      expect(entry).toContain(`alt="${escapeHtml(item.pictures[0]?.alt ?? '')}"`);
    });
  });

  test('says in its title, heading and summary what it holds', () => {
    const name = kind.charAt(0).toUpperCase() + kind.slice(1);
    expect(page).toContain(`<title>${name}: every one we have packed · Sill &amp; Sprig</title>`);
    expect(page).toContain(`<h1>${name}</h1>`);
    const summary = /<meta name="description" content="([^"]*)">/.exec(page)?.[1] ?? '';
    expect(summary).toMatch(
      new RegExp(`^${count} so far, from \\w+ 20\\d\\d to \\w+ 20\\d\\d: .* and .*\\.$`),
    );
    // What a search result has room for: common practice, no source.
    expect(summary.length).toBeLessThanOrEqual(160);
  });

  test('tells machines the same', () => {
    const graph = JSON.parse(/<script type="application\/ld\+json">(.*?)<\/script>/s.exec(page)?.[1] ?? '')[
      '@graph'
    ] as Record<string, unknown>[];
    const of = (type: string) => graph.find((thing) => thing['@type'] === type) as Record<string, unknown>;
    const list = of('CollectionPage').mainEntity as {
      numberOfItems: number;
      itemListElement: { name: string; url: string; image: string; position: number }[];
    };
    expect(list.numberOfItems).toBe(count);
    expect(list.itemListElement.map(({ name, position }) => `${position} ${name}`)).toEqual(
      itemsOf(kind).map(({ name }, i) => `${i + 1} ${name}`),
    );
    for (const { url, image } of list.itemListElement) {
      expect(existsSync(join(site, decodeURI(new URL(image).pathname)))).toBe(true);
      const { pathname, hash } = new URL(url);
      expect(pageAt(decodeURI(pathname).slice(1))).toContain(` id="${decodeURI(hash.slice(1))}"`);
    }
    expect((of('BreadcrumbList').itemListElement as unknown[]).length).toBe(3);
  });

  test('is linked from each of its items in the articles', () => {
    for (const item of itemsOf(kind)) {
      const article = pageAt(`boxes/${cycleOf(box, item).address}.html`);
      const section = new RegExp(`<section class="item" id="${item.slug}"[\\s\\S]*?</section>`).exec(
        article,
      )?.[0];
      expect(section).toContain(
        `href="../${path}">${kind.charAt(0).toUpperCase()}${kind.slice(1)}: every one we have packed</a>`,
      );
    }
  });
});

test('an item of a kind without a page links to none', () => {
  const march = pageAt('boxes/2026-03-first-sowings.html');
  const tray = /<section class="item" id="wooden-seed-tray"[\s\S]*?<\/section>/.exec(march)?.[0];
  expect(tray).toContain('Wooden seed tray');
  expect(tray).not.toContain('kinds/');
});

test('a kind whose third item is sealed has no page until its reveal', async () => {
  const pathsAt = async (asOf: number) =>
    (await carriedOut(kinds, await publicInput(whole, asOf))).outputs.map(({ path }) => path);
  const reveal = whole.cycles.at(-1)?.reveal ?? 0;
  expect(await pathsAt(reveal - 1)).not.toContain('kinds/seed-packet.html');
  expect(await pathsAt(reveal)).toContain('kinds/seed-packet.html');
});
