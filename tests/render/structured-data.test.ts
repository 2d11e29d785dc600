import { describe, expect, test } from 'vitest';
import { htmlSource } from '../../src/render/html.ts';
import {
  articleGraph,
  catalogueGraph,
  homeGraph,
  jsonLdScript,
  weightOf,
} from '../../src/render/structured-data.ts';
import { box, cycle, item, settings } from '../support/box.ts';
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
    subscription: { name: 'The box', price: { amount: '29.00', currency: 'GBP' } },
  }),
  cycles: [cycle({ items: [full] })],
});
const asOf = Date.UTC(2026, 3, 1);
const article = (items = [full]) =>
  articleGraph({
    box: box({ ...whole, cycles: [cycle({ items })] }),
    cycle: { ...cycle({ items }), reveal: Date.UTC(2026, 2, 19, 19) },
    asOf,
    image: 'https://sillandsprig.example/pictures/a.jpg',
    itemImages: new Map([['plant-mister', ['https://sillandsprig.example/pictures/b.jpg']]]),
  });

describe('structured data', () => {
  // The published vocabulary of schema.org, release 29.4.
  test.each([
    ['article', article()],
    ['home', homeGraph({ box: whole, asOf })],
    ['catalogue', catalogueGraph({ box: whole, asOf })],
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
  test('an item that is sold out, or was never spare, has no offer', () => {
    expect(JSON.stringify(article())).toContain('"Offer"');
    expect(JSON.stringify(article([item()]))).not.toContain('"Offer"');
    const soldOut = item({
      spare: { count: 0, price: { amount: '1.00', currency: 'GBP' }, address: 'https://x.example/' },
    });
    expect(JSON.stringify(article([soldOut]))).not.toContain('"Offer"');
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
