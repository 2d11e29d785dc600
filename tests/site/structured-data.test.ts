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
