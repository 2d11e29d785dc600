/** What search engines and assistants read: one schema.org graph a page, as JSON-LD. */

import type {
  Article,
  BreadcrumbList,
  CollectionPage,
  Graph,
  ImageObject,
  ItemAvailability,
  ItemList,
  ListItem,
  Offer,
  Organization,
  PostalAddress as PostalAddressLd,
  Product,
  QuantitativeValue,
  Thing,
  WebSite,
} from 'schema-dts';
import type { CallKind, Cycle, Item, Picture, Subscription } from '../model/box.ts';
import { isoInstant, lastChanged } from '../model/calendar.ts';
import type { Call } from '../model/calls.ts';
import type { OpenCycle } from '../model/seal.ts';
import { revealedAt } from '../model/seal.ts';
import { defined } from '../text/defined.ts';
import type { Wording } from '../wording/wording.ts';
import {
  absoluteAddress,
  articlePath,
  CATALOGUE_PATH,
  type Destination,
  fullAddress,
  itemDestination,
} from './addresses.ts';
import { type Html, trusted } from './html.ts';
import { logoPicture, socialPicture } from './pictures.ts';
import { type Recording, videoObject } from './recording-data.ts';
import { scriptJson } from './script-data.ts';
import type { SiteFacts } from './site-facts.ts';

const organizationId = (site: SiteFacts): string => `${site.url}#organization`;
const websiteId = (site: SiteFacts): string => `${site.url}#website`;
const subscriptionId = (site: SiteFacts): string => `${site.url}#subscription`;

const graphOf = (things: readonly Thing[]): Graph => ({ '@context': 'https://schema.org', '@graph': things });

/** UN/CEFACT common code (Recommendation 20) of a pixel. */
const pixels = (value: number): QuantitativeValue => ({
  '@type': 'QuantitativeValue',
  value,
  unitCode: 'E37',
});

const logoObject = (site: SiteFacts, logo: Picture): ImageObject => {
  const { path, picture } = logoPicture(logo);
  const address = absoluteAddress(site, path);
  return {
    '@type': 'ImageObject',
    '@id': `${site.url}#logo`,
    url: address,
    contentUrl: address,
    caption: logo.alt,
    width: pixels(picture.width),
    height: pixels(picture.height),
  };
};

const organization = (site: SiteFacts): Organization => ({
  '@type': 'Organization',
  '@id': organizationId(site),
  name: site.name,
  url: site.url,
  description: site.description,
  ...(site.logo ? { logo: logoObject(site, site.logo) } : {}),
  ...(site.email === undefined ? {} : { email: site.email }),
  ...(site.postalAddress
    ? { address: { '@type': 'PostalAddress', ...site.postalAddress } satisfies PostalAddressLd }
    : {}),
  ...(site.profiles.length > 0 ? { sameAs: site.profiles } : {}),
});

const website = (site: SiteFacts): WebSite => ({
  '@type': 'WebSite',
  '@id': websiteId(site),
  name: site.name,
  url: site.url,
  description: site.description,
  inLanguage: site.lang,
  publisher: { '@id': organizationId(site) },
});

/** Pages from the home page down to this one, each with its absolute address. */
const breadcrumbs = (page: string, steps: readonly (readonly [string, string])[]): BreadcrumbList => ({
  '@type': 'BreadcrumbList',
  '@id': `${page}#breadcrumbs`,
  itemListElement: steps.map(
    ([name, address], i): ListItem => ({
      '@type': 'ListItem',
      position: i + 1,
      name,
      item: { '@type': 'WebPage', '@id': address },
    }),
  ),
});

/** UN/CEFACT common codes (Recommendation 20), as schema.org's `unitCode` asks. */
const unitCodes: Record<string, string> = { mg: 'MGM', g: 'GRM', kg: 'KGM', oz: 'ONZ', lb: 'LBR' };

/** "210 g" as value and unit; undefined for anything that is not one number and one unit of weight. */
export const weightOf = (text: string): QuantitativeValue | undefined => {
  const found = /^(\d+(?:[.,]\d+)?)\s*(mg|g|kg|oz|lb)s?$/i.exec(text.trim());
  const [, digits, sign] = found ?? [];
  if (digits === undefined || sign === undefined) return undefined;
  // "1,234 g" is a thousand to one reader and one and a bit to another: say nothing rather than guess.
  if (/,\d{3}$/.test(digits)) return undefined;
  const unit = sign.toLowerCase();
  const code = unitCodes[unit];
  return {
    '@type': 'QuantitativeValue',
    value: Number(digits.replace(',', '.')),
    unitText: unit,
    ...(code === undefined ? {} : { unitCode: code }),
  };
};

const spareOffer = (site: SiteFacts, { spare }: Item): Offer | undefined =>
  spare && {
    '@type': 'Offer',
    price: spare.price.amount,
    priceCurrency: spare.price.currency,
    availability: 'https://schema.org/InStock',
    url: spare.address,
    seller: { '@id': organizationId(site) },
    ...(spare.until === undefined ? {} : { validThrough: spare.until }),
  };

/** An item of an article's list: the addresses of its pictures, and whether its spare pieces can be bought now. */
export interface ListedProduct {
  readonly images: readonly string[];
  readonly onSale: boolean;
}

const product = (site: SiteFacts, cycle: Cycle, item: Item, { images, onSale }: ListedProduct): Product => {
  const address = fullAddress(site, itemDestination(cycle, item));
  return {
    '@type': 'Product',
    '@id': address,
    url: address,
    name: item.name,
    description: item.description,
    category: item.kind,
    brand: { '@type': 'Brand', name: item.brand },
    ...(images.length > 0 ? { image: images } : {}),
    ...(item.also.length > 0 ? { alternateName: item.also } : {}),
    ...(item.material.length > 0 ? { material: item.material } : {}),
    ...(item.countryOfOrigin === undefined
      ? {}
      : { countryOfOrigin: { '@type': 'Country', name: item.countryOfOrigin } }),
    ...defined({
      color: item.color,
      size: item.size,
      weight: item.weight === undefined ? undefined : weightOf(item.weight),
      sku: item.sku,
      gtin: item.gtin,
      offers: onSale ? spareOffer(site, item) : undefined,
    }),
  };
};

/** A wait list takes names for a box that cannot be had now; spare pieces say nothing of the next box. */
const availabilityByCall: Record<CallKind, ItemAvailability> = {
  join: 'https://schema.org/InStock',
  waitList: 'https://schema.org/SoldOut',
  spare: 'https://schema.org/OutOfStock',
};

const subscriptionProduct = (site: SiteFacts, terms: Subscription, call: Call | undefined): Product => {
  const offer: Offer = {
    '@type': 'Offer',
    price: terms.price.amount,
    priceCurrency: terms.price.currency,
    availability: availabilityByCall[call?.kind ?? 'spare'],
    url: call?.address ?? site.url,
    seller: { '@id': organizationId(site) },
  };
  return {
    '@type': 'Product',
    '@id': subscriptionId(site),
    name: terms.name,
    description: terms.description ?? site.description,
    url: site.url,
    brand: { '@type': 'Brand', name: site.name },
    ...(terms.image ? { image: absoluteAddress(site, socialPicture(terms.image).path) } : {}),
    offers: offer,
  };
};

/** An article's graph. `image` is an absolute address; `products` are by item slug, their images absolute addresses too.
 * A recording needs the image, and is mentioned: the page leads to it and does not hold it (`recording-data.ts`).
 */
export const articleGraph = (input: {
  readonly site: SiteFacts;
  readonly cycle: OpenCycle;
  readonly image?: string | undefined;
  readonly products: ReadonlyMap<string, ListedProduct>;
  readonly recording?: Recording | undefined;
}): object => {
  const { site, cycle, image, products, recording } = input;
  const address = absoluteAddress(site, articlePath(cycle));
  const list: ItemList = {
    '@type': 'ItemList',
    '@id': `${address}#items`,
    name: cycle.theme,
    numberOfItems: cycle.items.length,
    itemListElement: cycle.items.map(
      (item, i): ListItem => ({
        '@type': 'ListItem',
        position: i + 1,
        item: product(site, cycle, item, products.get(item.slug) ?? { images: [], onSale: false }),
      }),
    ),
  };
  const video =
    recording && image !== undefined
      ? videoObject({
          id: `${address}#recording`,
          recording,
          thumbnail: image,
          publisher: organizationId(site),
        })
      : undefined;
  const article: Article = {
    '@type': 'BlogPosting',
    '@id': `${address}#article`,
    url: address,
    mainEntityOfPage: address,
    headline: cycle.title,
    description: cycle.summary,
    ...(image === undefined ? {} : { image }),
    datePublished: isoInstant(revealedAt(cycle)),
    dateModified: lastChanged(cycle, site.timeZone),
    author: { '@type': 'Person', name: cycle.author },
    publisher: { '@id': organizationId(site) },
    isPartOf: { '@id': websiteId(site) },
    inLanguage: site.lang,
    mainEntity: list,
    ...(video ? { mentions: { '@id': video['@id'] } } : {}),
  };
  return graphOf([
    article,
    ...(video ? [video] : []),
    breadcrumbs(address, [
      [site.name, site.url],
      [cycle.title, address],
    ]),
    organization(site),
    website(site),
  ]);
};

/** A page or a section of one, as a list names it. */
export interface ListedPage {
  readonly name: string;
  readonly to: Destination;
}

/** The home page's graph: who sends the box, the site, the subscription, and the articles, newest first. */
export const homeGraph = (input: {
  readonly site: SiteFacts;
  /** What can be done now. */
  readonly call?: Call | undefined;
  readonly subscription?: Subscription | undefined;
  readonly articles: readonly ListedPage[];
}): object => {
  const { site, call, subscription, articles } = input;
  const list: ItemList = {
    '@type': 'ItemList',
    '@id': `${site.url}#boxes`,
    name: site.name,
    numberOfItems: articles.length,
    itemListElement: articles.map(
      ({ name, to }, i): ListItem => ({
        '@type': 'ListItem',
        position: i + 1,
        name,
        url: fullAddress(site, to),
      }),
    ),
  };
  return graphOf([
    organization(site),
    website(site),
    ...(subscription ? [subscriptionProduct(site, subscription, call)] : []),
    list,
  ]);
};

/** The catalogue's graph: every item of every unsealed cycle, by kind, each named by its section in its article. */
export const catalogueGraph = (input: {
  readonly site: SiteFacts;
  readonly items: readonly ListedPage[];
  readonly words: Wording['structuredData'];
}): object => {
  const { site, items, words } = input;
  const address = absoluteAddress(site, CATALOGUE_PATH);
  const list: ItemList = {
    '@type': 'ItemList',
    '@id': `${address}#items`,
    numberOfItems: items.length,
    itemListElement: items.map(
      ({ name, to }, i): ListItem => ({
        '@type': 'ListItem',
        position: i + 1,
        name,
        url: fullAddress(site, to),
      }),
    ),
  };
  const page: CollectionPage = {
    '@type': 'CollectionPage',
    '@id': `${address}#page`,
    url: address,
    name: site.name,
    inLanguage: site.lang,
    isPartOf: { '@id': websiteId(site) },
    mainEntity: list,
  };
  return graphOf([
    page,
    breadcrumbs(address, [
      [site.name, site.url],
      [words.catalogue, address],
    ]),
    organization(site),
    website(site),
  ]);
};

/** The graph of a kind's page: every item of the kind, each named by its section in its article. */
export const kindGraph = (input: {
  readonly site: SiteFacts;
  readonly kind: string;
  /** Site path of the page. */
  readonly path: string;
  readonly title: string;
  readonly description: string;
  /** Newest first, each with the address of its picture where it has one. */
  readonly entries: readonly (ListedPage & { readonly description: string; readonly image?: string })[];
  /** The day something on it last changed. */
  readonly modified: string;
  readonly words: Wording['structuredData'];
}): object => {
  const { site, kind, path, title, description, entries, modified, words } = input;
  const address = absoluteAddress(site, path);
  const list: ItemList = {
    '@type': 'ItemList',
    '@id': `${address}#items`,
    name: kind,
    numberOfItems: entries.length,
    itemListOrder: 'https://schema.org/ItemListOrderDescending',
    itemListElement: entries.map(
      (entry, i): ListItem => ({
        '@type': 'ListItem',
        position: i + 1,
        name: entry.name,
        description: entry.description,
        url: fullAddress(site, entry.to),
        ...(entry.image === undefined ? {} : { image: entry.image }),
      }),
    ),
  };
  const [first] = entries;
  const page: CollectionPage = {
    '@type': 'CollectionPage',
    '@id': `${address}#page`,
    url: address,
    name: title,
    description,
    dateModified: modified,
    ...(first?.image === undefined ? {} : { image: first.image }),
    inLanguage: site.lang,
    isPartOf: { '@id': websiteId(site) },
    mainEntity: list,
  };
  return graphOf([
    page,
    breadcrumbs(address, [
      [site.name, site.url],
      [words.catalogue, absoluteAddress(site, CATALOGUE_PATH)],
      [kind, address],
    ]),
    organization(site),
    website(site),
  ]);
};

/** A graph as a script element that no name in it can close. */
export const jsonLdScript = (graph: object): Html =>
  trusted(`<script type="application/ld+json">${scriptJson(graph)}</script>`);
