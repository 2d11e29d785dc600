import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { checkJsonLd } from '../support/schema-org.ts';
import { pagesBelow } from '../support/tools.ts';

type Thing = Record<string, unknown>;

const graphsOf = (text: string): Thing[] =>
  [...text.matchAll(/<script type="application\/ld\+json">(.*?)<\/script>/gs)].map((found) =>
    JSON.parse(found[1] as string),
  );

const things = (value: unknown): Thing[] =>
  Array.isArray(value)
    ? value.flatMap(things)
    : typeof value === 'object' && value !== null
      ? [value as Thing, ...Object.values(value).flatMap(things)]
      : [];

const pages = pagesBelow(inject('demoSite')).filter(({ path }) => path !== '404.html');

describe('the structured data', () => {
  // The schema.org vocabulary (@vocabulary/schema) through an independent JSON-LD processor (jsonld).
  test.each(pages)('of $path fits the schema.org vocabulary', async ({ text }) => {
    const graphs = graphsOf(text);
    expect(graphs).toHaveLength(1);
    expect(await checkJsonLd(graphs[0] as object)).toEqual([]);
  });

  const needed: Record<string, readonly string[]> = {
    Product: ['name', 'image', 'description', 'brand'],
    Offer: ['price', 'priceCurrency', 'availability'],
    BlogPosting: ['headline', 'image', 'datePublished', 'dateModified', 'author'],
    BreadcrumbList: ['itemListElement'],
    // developers.google.com/search/docs/appearance/structured-data/video, required properties.
    VideoObject: ['name', 'thumbnailUrl', 'uploadDate'],
    Clip: ['name', 'startOffset', 'url'],
  };
  test.each(pages)('of $path has every field that its types need', ({ path, text }) => {
    const lacking = things(graphsOf(text)).flatMap((thing) =>
      (needed[String(thing['@type'])] ?? [])
        // The subscription's picture is the record's to give, and the demo gives none.
        .filter(
          (key) =>
            thing[key] === undefined && !(key === 'image' && String(thing['@id']).endsWith('#subscription')),
        )
        .map((key) => `${thing['@type']} ${thing.name ?? ''} lacks ${key}`),
    );
    expect(lacking).toEqual([]);
    if (path.startsWith('boxes/'))
      expect(things(graphsOf(text)).filter((thing) => thing['@type'] === 'Product')).toHaveLength(5);
  });

  test('has the recording of March, its chapters one after another as long as it is', () => {
    const march = things(graphsOf(pages.find(({ path }) => path.includes('2026-03'))?.text ?? ''));
    const [video, ...others] = march.filter((thing) => thing['@type'] === 'VideoObject');
    expect(others).toEqual([]);
    expect(video).toMatchObject({
      name: 'First Sowings: the March 2026 box of Sill & Sprig, opened live',
      url: 'https://video.example/sillandsprig/2026-03-first-sowings',
      uploadDate: '2026-03-19',
      duration: 'PT24M',
    });
    const clips = video?.hasPart as { startOffset: number; endOffset: number; url: string }[];
    expect(clips).toHaveLength(15);
    expect(clips.map(({ endOffset }) => endOffset)).toEqual([
      ...clips.slice(1).map(({ startOffset }) => startOffset),
      24 * 60,
    ]);
    for (const { url, startOffset } of clips) expect(url).toBe(`${video?.url}#t=${startOffset}`);
  });

  test('names the picture of a recording among those that the site has', () => {
    const videos = pages.flatMap(({ text }) =>
      things(graphsOf(text)).filter((thing) => thing['@type'] === 'VideoObject'),
    );
    expect(videos.length).toBeGreaterThan(3);
    for (const { thumbnailUrl } of videos) {
      const path = decodeURI(String(thumbnailUrl)).replace('https://sillandsprig.example/', '');
      expect(existsSync(join(inject('demoSite'), path)), path).toBe(true);
    }
  });

  test('offers spare pieces that are for sale, and none that are sold out', () => {
    const march = things(graphsOf(pages.find(({ path }) => path.includes('2026-03'))?.text ?? ''));
    const offers = (name: string): unknown =>
      march.find((thing) => thing['@type'] === 'Product' && String(thing.name).startsWith(name))?.offers;
    expect(offers('Brass plant mister')).toMatchObject({
      price: '18.50',
      priceCurrency: 'GBP',
      availability: 'https://schema.org/InStock',
    });
    expect(offers('Copper plant labels')).toBeUndefined();
  });
});
