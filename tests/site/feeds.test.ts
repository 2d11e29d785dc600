import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ajvDraft04 from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { feeds } from '../../src/channels/feeds.ts';
import type { Box } from '../../src/model/box.ts';
import { callFor } from '../../src/model/calls.ts';
import { cautionsOf } from '../../src/model/cautions.ts';
import { unsealed } from '../../src/model/seal.ts';
import { typeset } from '../../src/render/typeset.ts';
import { carriedOut } from '../support/carried-out.ts';
import { checksFile } from '../support/checks-folder.ts';
import { demoBox, publicInput } from '../support/demo-box.ts';
import { htmlValidateFaults, nuErrors } from '../support/html-checkers.ts';
import { cautionText } from '../support/telling-input.ts';
import { describeWith } from '../support/tools.ts';

interface JsonItem {
  readonly id: string;
  readonly url: string;
  readonly title: string;
  readonly summary: string;
  readonly image?: string;
  readonly date_published: string;
  readonly date_modified: string;
  readonly authors: readonly { readonly name: string }[];
  readonly tags?: readonly string[];
  readonly content_html: string;
}

const site = inject('demoSite');
const AS_OF = Date.UTC(2026, 2, 27);
const URL_OF_SITE = 'https://sillandsprig.example/';
const atom = readFileSync(join(site, 'feed.xml'), 'utf8');
const json = JSON.parse(readFileSync(join(site, 'feed.json'), 'utf8')) as {
  readonly home_page_url: string;
  readonly feed_url: string;
  readonly items: readonly JsonItem[];
};

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
const decoded = (source: string): string =>
  source.replace(/&(amp|lt|gt|quot|#39|#x3C|#x26);/g, (_, name: string) =>
    name === '#x3C' ? '<' : name === '#x26' ? '&' : (ENTITIES[name] as string),
  );
const textOf = (html: string): string => decoded(html.replace(/<[^>]*>/g, '\n'));
const textIn = (source: string, name: string): string =>
  decoded(new RegExp(`<${name}\\b[^>]*>([\\s\\S]*?)</${name}>`).exec(source)?.[1] ?? '');

const entries = [...atom.matchAll(/<entry>([\s\S]*?)<\/entry>/g)].map(([, source = '']) => ({
  source,
  id: textIn(source, 'id'),
  content: textIn(source, 'content'),
}));

let box: Box;
beforeAll(async () => {
  box = unsealed(await demoBox(join(site, '../.lidlore')), AS_OF);
});

/** RFC 3339 §5.6, the zone not left out. */
const MOMENT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?(?:Z|[+-]\d\d:\d\d)$/;

describeWith('xmllint', 'libxml2-utils', 'the Atom feed', () => {
  const grammar = checksFile('feeds/atom.rng');
  const lint = (text: string): number | null =>
    spawnSync('xmllint', ['--noout', '--nonet', '--relaxng', grammar as string, '-'], { input: text }).status;

  // RFC 4287, appendix B, by libxml2; skipped where the folder of outside data is absent.
  test.skipIf(!grammar)('fits the grammar of RFC 4287', () => {
    expect(lint(atom)).toBe(0);
  });
  test.skipIf(!grammar).each([
    ['an entry without a title', /<title>[^<]*<\/title>\n<link rel="alternate" type="text\/html"/],
    ['an entry without the day it changed', /<updated>[^<]*<\/updated>\n<author>/],
    ['a feed without an id', /<id>[^<]*<\/id>/],
  ])('the grammar finds %s', (_, part) => {
    expect(atom).toMatch(part);
    expect(lint(atom.replace(part, ''))).not.toBe(0);
  });
});

// What the grammar cannot say: RFC 4287 §4.1.1, §4.1.2, §4.2.6, §3.3.
describe('the Atom feed', () => {
  test('has the last twelve cycles, newest first, no id twice', () => {
    expect(entries.map(({ source }) => textIn(source, 'title'))).toEqual(
      box.cycles
        .slice(-12)
        .reverse()
        .map(({ title }) => typeset(title, 'en-GB')),
    );
    const ids = [textIn(atom, 'id'), ...entries.map(({ id }) => id)];
    expect(new Set(ids).size).toBe(13);
  });
  // RFC 4151: tag:authority,date:specific.
  test('names every entry by a tag that neither theme nor address can change', () => {
    for (const { id } of entries) expect(id).toMatch(/^tag:sillandsprig\.example,\d{4}-\d\d:\/reveal$/);
  });
  test('says who wrote each entry, and every moment with its zone', () => {
    for (const { source } of entries) {
      expect(source.match(/<author><name>[^<]+<\/name><\/author>/g)).toHaveLength(1);
      for (const name of ['published', 'updated']) expect(textIn(source, name)).toMatch(MOMENT);
    }
    expect(textIn(atom, 'updated')).toBe(
      entries
        .map(({ source }) => textIn(source, 'updated'))
        .sort()
        .at(-1),
    );
  });
  test('names itself, the site and each article by full addresses that lead somewhere', () => {
    const links = [...atom.matchAll(/<link rel="([^"]*)" type="([^"]*)" href="([^"]*)"/g)];
    expect(links.slice(0, 3).map(([, rel, type, href]) => [rel, type, href])).toEqual([
      ['self', 'application/atom+xml', `${URL_OF_SITE}feed.xml`],
      ['alternate', 'text/html', URL_OF_SITE],
      ['alternate', 'application/feed+json', `${URL_OF_SITE}feed.json`],
    ]);
    expect(links).toHaveLength(15);
    for (const [, , , href = ''] of links.slice(3))
      expect(existsSync(join(site, decodeURI(href.slice(URL_OF_SITE.length))))).toBe(true);
  });
  test('is linked from the head of every page, as its twin is', () => {
    const article = readFileSync(join(site, 'boxes/2026-03-first-sowings.html'), 'utf8');
    expect(article).toContain('type="application/atom+xml" title="Sill &amp; Sprig" href="../feed.xml"');
    expect(article).toContain('type="application/feed+json" title="Sill &amp; Sprig" href="../feed.json"');
  });
});

describe('the JSON feed', () => {
  // JSON Feed 1.1 as SchemaStore has it; skipped where the folder of outside data is absent.
  const schema = checksFile('feeds/json-feed-1.1.schema.json');
  test.skipIf(!schema)('fits the published schema', () => {
    const ajv = new ajvDraft04.default({ strict: false, allErrors: true });
    addFormats.default(ajv as never);
    const read = (path: string): object => JSON.parse(readFileSync(path, 'utf8'));
    // 1.1 is written upon 1.0.
    ajv.addSchema(
      read(checksFile('feeds/json-feed-1.schema.json') as string),
      'https://json.schemastore.org/feed-1',
    );
    const check = ajv.compile(read(schema as string));
    check(json);
    expect(check.errors ?? []).toEqual([]);
    expect(check({ ...json, items: [{ url: 'x' }] })).toBe(false);
  });
  test('names itself and the site', () => {
    expect([json.feed_url, json.home_page_url]).toEqual([`${URL_OF_SITE}feed.json`, URL_OF_SITE]);
  });
  test('says just what the Atom feed says', () => {
    const said = entries.map(({ source, id, content }) => ({
      id,
      url: /<link rel="alternate" type="text\/html" href="([^"]*)"/.exec(source)?.[1],
      title: textIn(source, 'title'),
      summary: textIn(source, 'summary'),
      date_published: textIn(source, 'published'),
      date_modified: textIn(source, 'updated'),
      authors: [{ name: textIn(source, 'name') }],
      tags: [...source.matchAll(/<category term="([^"]*)"/g)].map(([, term = '']) => decoded(term)),
      content_html: content,
    }));
    expect(json.items.map(({ image: _, ...item }) => item)).toEqual(said);
    for (const { image = '' } of json.items)
      expect(existsSync(join(site, decodeURI(image.slice(URL_OF_SITE.length))))).toBe(true);
  });
});

describe('the content of an entry', () => {
  const addressesIn = (html: string): string[] =>
    [...html.matchAll(/ (?:href|src|cite)="([^"]*)"/g)].map(([, address = '']) => decoded(address));

  test.each(json.items)('of $url has full addresses alone, and ours lead somewhere', ({ content_html }) => {
    const addresses = addressesIn(content_html);
    expect(addresses.filter((address) => !/^(?:https?:\/\/|mailto:|tel:)/.test(address))).toEqual([]);
    const ours = addresses.filter((address) =>
      /^https:\/\/sillandsprig\.example\/(?:boxes|kinds|pictures)\//.test(address),
    );
    expect(ours.length).toBeGreaterThan(10);
    const dead = ours.filter((address) => {
      const [path = '', anchor] = decodeURI(address.slice(URL_OF_SITE.length)).split('#');
      if (!existsSync(join(site, path))) return true;
      return anchor !== undefined && !readFileSync(join(site, path), 'utf8').includes(` id="${anchor}"`);
    });
    expect(dead).toEqual([]);
  });

  test.each(json.items)('of $url has nothing that only a page can use', ({ content_html }) => {
    expect(content_html).not.toMatch(/<(?:script|style|picture|source|iframe|form)\b/);
    expect(content_html).not.toMatch(/<[^>]* (?:on\w+|style|class|id|srcset)=/);
  });

  test('has every item, its whole story’s words, its cautions and the call', () => {
    for (const [i, cycle] of box.cycles.slice(-12).reverse().entries()) {
      const text = textOf(json.items[i]?.content_html ?? '');
      const said = (words: string): void => expect(text).toContain(typeset(words, 'en-GB'));
      let cautions = 0;
      for (const item of cycle.items) {
        said(item.name);
        said(item.description);
        for (const { lines } of cautionsOf(item).map(cautionText))
          for (const line of lines) {
            said(line);
            cautions += 1;
          }
        const picture = item.pictures[0]?.alt ?? '';
        expect(decoded(json.items[i]?.content_html ?? '')).toContain(`alt="${picture}"`);
      }
      for (const voice of cycle.voices) said(voice.text);
      const call = callFor(box, cycle, AS_OF, 'article');
      said(call?.text ?? 'a call');
      expect(json.items[i]?.content_html).toContain(`href="${call?.address}"`);
      if (cycle.items.some((item) => item.hazards.categories.includes('food')))
        expect(cautions).toBeGreaterThan(0);
    }
  });

  test('has each paragraph of the article', () => {
    for (const { url, content_html } of json.items) {
      const page = readFileSync(join(site, decodeURI(url.slice(URL_OF_SITE.length))), 'utf8');
      const proseOf = (html: string): string[] =>
        [...html.matchAll(/<p>([\s\S]*?)<\/p>/g)].map(([, inner = '']) =>
          decoded(inner.replace(/<sup>[\s\S]*?<\/sup>/g, '').replace(/<[^>]*>/g, '')).trim(),
        );
      const main = /<main[\s\S]*<\/main>/.exec(page)?.[0] ?? '';
      const body = main.slice(main.indexOf('<div class="prose'), main.indexOf('<section class="whole'));
      const told = new Set(proseOf(content_html));
      // A note's own line ends in its way back on the page.
      const wanted = proseOf(body.replace(/<section[^>]*footnotes[\s\S]*?<\/section>/g, ''));
      expect(wanted.length).toBeGreaterThan(10);
      expect(wanted.filter((paragraph) => !told.has(paragraph))).toEqual([]);
    }
  });

  const documentOf = ({ title, content_html }: JsonItem): string =>
    `<!doctype html>\n<html lang="en-GB"><head><meta charset="utf-8"><title>${title.replaceAll('&', '&amp;')}</title></head><body><main><h1>${title.replaceAll('&', '&amp;')}</h1>\n${content_html}</main></body></html>\n`;

  test('passes html-validate as the body of a document', async () => {
    for (const item of json.items)
      expect({ url: item.url, faults: await htmlValidateFaults(documentOf(item)) }).toEqual({
        url: item.url,
        faults: [],
      });
  });
  describeWith('java', 'default-jre-headless', 'by the Nu checker', () => {
    test('is HTML', async () => {
      const dir = await mkdtemp(join(tmpdir(), 'lidlore-feed-'));
      for (const [i, item] of json.items.entries()) await writeFile(join(dir, `${i}.html`), documentOf(item));
      const errors = nuErrors(dir);
      await rm(dir, { recursive: true });
      expect(errors).toEqual([]);
    });
  });
});

test('the feeds are the same bytes when they are made again, and a day later', async () => {
  const whole = await demoBox(join(site, '../.lidlore'));
  const made = async (asOf: number) =>
    (await carriedOut(feeds, await publicInput(whole, asOf))).outputs.flatMap((output) =>
      'text' in output ? [output.text] : [],
    );
  const now = await made(AS_OF);
  expect(now[0]).toBe(atom);
  expect(await made(AS_OF)).toEqual(now);
  expect(await made(AS_OF + 24 * 3600 * 1000)).toEqual(now);
});

// Common practice, no source: readers and their gateways give up somewhere above half a megabyte.
test('a feed of twelve articles stays below half a megabyte', () => {
  for (const file of ['feed.xml', 'feed.json'])
    expect(readFileSync(join(site, file)).length).toBeLessThan(512 * 1024);
});
