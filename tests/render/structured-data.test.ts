import { describe, expect, test } from 'vitest';
import type { Cycle } from '../../src/model/box.ts';
import { isOpen } from '../../src/model/seal.ts';
import { htmlSource } from '../../src/render/html.ts';
import type { Recording } from '../../src/render/recording-data.ts';
import { siteFactsOf } from '../../src/render/site-facts.ts';
import {
  articleGraph,
  catalogueGraph,
  homeGraph,
  jsonLdScript,
  kindGraph,
  weightOf,
} from '../../src/render/structured-data.ts';
import { en } from '../../src/wording/en.ts';
import { box, cycle, item, picture, settings } from '../support/box.ts';
import { checkJsonLd } from '../support/schema-org.ts';

const full = item({
  also: ['plant sprayer'],
  material: ['brass'],
  color: 'gold',
  size: '300 ml',
  weight: '210 g',
  countryOfOrigin: 'GB',
  sku: 'SS-1',
  gtin: '5012345678900',
  spare: {
    count: 3,
    price: { amount: '18.50', currency: 'GBP' },
    address: 'https://shop.example/m',
    until: '2026-05-31',
  },
});
const whole = box({
  settings: settings({
    email: 'hello@sillandsprig.example',
    postalAddress: { streetAddress: '1 Lane', addressCountry: 'GB' },
    profiles: ['https://social.example/sill'],
    logo: picture({ file: 'photos/logo.png', width: 1500, height: 600, alt: 'Sill & Sprig' }),
    subscription: { name: 'The box', price: { amount: '29.00', currency: 'GBP' } },
  }),
  cycles: [cycle({ items: [full] })],
});
const site = siteFactsOf(whole.settings);
const recording: Recording = {
  name: 'First Sowings, opened live',
  address: 'https://video.example/first-sowings',
  recorded: '2026-03-19',
  minutes: 24,
  chapters: [
    { name: 'How it begins', start: 0, end: 142 },
    { name: 'Brass plant mister', start: 142 },
  ],
};
const article = (
  items = [full],
  more: Partial<Cycle> = {},
  onSale = true,
  shownWith: { readonly recording?: Recording; readonly image?: string | undefined } = {},
) => {
  const shown = cycle({ items, ...more });
  if (!isOpen(shown, Date.UTC(2026, 11, 31))) throw new Error('Expected a cycle that may be shown');
  return articleGraph({
    site,
    cycle: shown,
    image: 'https://sillandsprig.example/pictures/a.jpg',
    products: new Map([
      ['plant-mister', { images: ['https://sillandsprig.example/pictures/b.jpg'], onSale }],
    ]),
    ...shownWith,
  });
};
const mister = {
  name: 'Brass plant mister',
  description: 'A mister that fits the hand.',
  to: { path: 'boxes/a.html', fragment: 'plant-mister' },
};
const words = en.structuredData;
const home = homeGraph({
  site,
  call: { kind: 'join', address: 'https://sillandsprig.example/join', text: 'Join' },
  subscription: whole.settings.subscription,
  articles: [{ name: 'First Sowings', to: { path: 'boxes/a.html' } }],
});
const kind = kindGraph({
  site,
  kind: 'plant mister',
  path: 'kinds/plant-mister.html',
  title: 'Plant misters',
  description: 'Three of them.',
  entries: [{ ...mister, image: 'https://sillandsprig.example/pictures/b.jpg' }],
  modified: '2026-03-19',
  words,
});

const articleOf = (graph: object) =>
  (graph as { '@graph': { dateModified: string; datePublished: string }[] })['@graph'][0] as {
    dateModified: string;
    datePublished: string;
  };

describe('structured data', () => {
  // The published vocabulary of schema.org, release 29.4.
  test.each([
    ['article', article()],
    ['article with a recording', article([full], {}, true, { recording })],
    ['home', home],
    ['catalogue', catalogueGraph({ site, items: [mister], words })],
    ['page of a kind', kind],
  ])('of the %s fits the schema.org vocabulary', async (_, graph) => {
    expect(await checkJsonLd(graph)).toEqual([]);
  });
  test('the check finds a wrong type, property, domain, range and enumeration member', async () => {
    const problems = await checkJsonLd({
      '@context': 'https://schema.org',
      '@graph': [
        { '@type': 'Gadget', name: 'x' },
        { '@type': 'Product', colour: 'red' },
        { '@type': 'Person', sku: 'x' },
        { '@type': 'Product', brand: { '@type': 'Offer' } },
        { '@type': 'Offer', availability: 'https://schema.org/UsedCondition' },
        { '@type': 'Offer', availability: 'https://schema.org/InStok' },
      ],
    });
    expect(problems).toEqual([
      'unknown type Gadget',
      'name does not belong to Gadget',
      'unknown property colour of Product',
      'sku does not belong to Person',
      'brand of Product may not be Offer',
      expect.stringMatching(/^availability of Offer may not be/),
      expect.stringMatching(/^availability of Offer may not be/),
    ]);
  });
  test('the box’s logo is the organization’s, with the size of its file', () => {
    const address = expect.stringMatching(
      /^https:\/\/sillandsprig\.example\/pictures\/logo-512\.\w{10}\.png$/,
    );
    const pixels = (value: number) => ({ '@type': 'QuantitativeValue', value, unitCode: 'E37' });
    const logo = {
      '@type': 'ImageObject',
      '@id': 'https://sillandsprig.example/#logo',
      url: address,
      contentUrl: address,
      caption: 'Sill & Sprig',
      width: pixels(512),
      height: pixels(205),
    };
    for (const graph of [home, article(), kind])
      expect(graph).toMatchObject({
        '@graph': expect.arrayContaining([expect.objectContaining({ '@type': 'Organization', logo })]),
      });
  });

  const videoIn = (graph: object) =>
    (graph as { '@graph': { '@type': string }[] })['@graph'].find((node) => node['@type'] === 'VideoObject');

  test('a recording is where people watch it, with its chapters as the record has them', () => {
    const graph = article([full], {}, true, { recording });
    expect(videoIn(graph)).toEqual({
      '@type': 'VideoObject',
      '@id': 'https://sillandsprig.example/boxes/2026-03-first-sowings.html#recording',
      name: 'First Sowings, opened live',
      url: 'https://video.example/first-sowings',
      thumbnailUrl: 'https://sillandsprig.example/pictures/a.jpg',
      uploadDate: '2026-03-19',
      duration: 'PT24M',
      publisher: { '@id': 'https://sillandsprig.example/#organization' },
      hasPart: [
        {
          '@type': 'Clip',
          name: 'How it begins',
          startOffset: 0,
          endOffset: 142,
          url: 'https://video.example/first-sowings#t=0',
        },
        {
          '@type': 'Clip',
          name: 'Brass plant mister',
          startOffset: 142,
          url: 'https://video.example/first-sowings#t=142',
        },
      ],
    });
    expect(articleOf(graph)).toMatchObject({
      mentions: { '@id': 'https://sillandsprig.example/boxes/2026-03-first-sowings.html#recording' },
    });
  });
  test('nothing of a recording is made up', () => {
    const { minutes: _, ...unmeasured } = recording;
    const bare = videoIn(article([full], {}, true, { recording: { ...unmeasured, chapters: [] } }));
    expect(bare).not.toHaveProperty('duration');
    expect(bare).not.toHaveProperty('hasPart');
    expect(bare).not.toHaveProperty('contentUrl');
    expect(bare).not.toHaveProperty('embedUrl');
    // Without a thumbnail it would be an error to those who read it.
    const blind = article([full], {}, true, { recording, image: undefined });
    expect(videoIn(blind)).toBeUndefined();
    expect(articleOf(blind)).not.toHaveProperty('mentions');
    expect(videoIn(article())).toBeUndefined();
  });

  test('an item that is sold out, or was never spare, has no offer', () => {
    expect(JSON.stringify(article())).toContain('"Offer"');
    expect(JSON.stringify(article([item()]))).not.toContain('"Offer"');
    expect(JSON.stringify(article([full], {}, false))).not.toContain('"Offer"');
  });
  test('an article never changed before it was published', () => {
    const { dateModified, datePublished } = articleOf(article([full], { updated: '2026-03-01' }));
    expect(dateModified).toBe('2026-03-19T19:00:00Z');
    expect(datePublished).toBe('2026-03-19T19:00:00Z');
    expect(articleOf(article([full], { updated: '2026-03-19' })).dateModified).toBe('2026-03-19T19:00:00Z');
    expect(articleOf(article([full], { updated: '2026-03-20' })).dateModified).toBe('2026-03-20');
  });
  test('no name can close the script element', () => {
    const source = htmlSource(
      jsonLdScript(article([item({ name: '</script><script>alert(1)</script>\u2028<!--' })])),
    );
    expect(source.match(/<\/script/g)).toHaveLength(1);
    expect(source).not.toContain('<!--');
    expect(source).not.toContain('\u2028');
    const json = source.replace(/^<script[^>]*>|<\/script>$/g, '');
    expect(JSON.stringify(JSON.parse(json))).toContain('</script><script>alert(1)</script>');
  });
  test('a weight is stated only where it is one number and one unit', () => {
    expect(weightOf('210 g')).toMatchObject({ value: 210, unitText: 'g', unitCode: 'GRM' });
    expect(weightOf('1,5 kg')).toMatchObject({ value: 1.5 });
    for (const vague of ['about 210 g', '2 × 50 g', '1,234 g', 'light'])
      expect(weightOf(vague)).toBeUndefined();
  });
});
