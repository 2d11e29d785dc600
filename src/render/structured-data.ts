/** What search engines and assistants read: one schema.org graph a page, as JSON-LD. */
import type {
  Article,
  BreadcrumbList,
  CollectionPage,
  Graph,
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
import type { Box, BoxSettings, CallKind, Cycle, Item, Moment } from '../model/box.ts';
import { isoInstant } from '../model/calendar.ts';
import { callFor, spareOnSale } from '../model/calls.ts';
import { type KindGroup, kindGroups } from '../model/kinds.ts';
import { type OpenCycle, revealedAt } from '../model/seal.ts';
import { absoluteAddress, absoluteItemAddress, articlePath, CATALOGUE_PATH } from './addresses.ts';
import { type Html, trusted } from './html.ts';
import { socialPicture } from './pictures.ts';
import { scriptJson } from './script-data.ts';

const organizationId = (settings: BoxSettings): string => `${settings.url}#organization`;
const websiteId = (settings: BoxSettings): string => `${settings.url}#website`;
const subscriptionId = (settings: BoxSettings): string => `${settings.url}#subscription`;
const articleAddress = (box: Box, cycle: Cycle): string => absoluteAddress(box.settings, articlePath(cycle));
const articleId = (box: Box, cycle: Cycle): string => `${articleAddress(box, cycle)}#article`;

const graphOf = (things: readonly Thing[]): Graph => ({ '@context': 'https://schema.org', '@graph': things });

const organization = ({ settings }: Box): Organization => ({
  '@type': 'Organization',
  '@id': organizationId(settings),
  name: settings.name,
  url: settings.url,
  description: settings.description,
  ...(settings.email === undefined ? {} : { email: settings.email }),
  ...(settings.postalAddress
    ? { address: { '@type': 'PostalAddress', ...settings.postalAddress } satisfies PostalAddressLd }
    : {}),
  ...(settings.profiles.length > 0 ? { sameAs: settings.profiles } : {}),
});

const website = ({ settings }: Box): WebSite => ({
  '@type': 'WebSite',
  '@id': websiteId(settings),
  name: settings.name,
  url: settings.url,
  description: settings.description,
  inLanguage: settings.lang,
  publisher: { '@id': organizationId(settings) },
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

const spareOffer = (box: Box, item: Item, asOf: Moment): Offer | undefined => {
  const { spare } = item;
  if (!spare || !spareOnSale(item, asOf, box.settings.timeZone)) return undefined;
  return {
    '@type': 'Offer',
    price: spare.price.amount,
    priceCurrency: spare.price.currency,
    availability: 'https://schema.org/InStock',
    url: spare.address,
    seller: { '@id': organizationId(box.settings) },
    ...(spare.until === undefined ? {} : { validThrough: spare.until }),
  };
};

/** Optional facts: only those that the record gives. */
const given = <T extends object>(facts: { [K in keyof T]: T[K] | undefined }): Partial<T> =>
  Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as Partial<T>;

const product = (box: Box, item: Item, asOf: Moment, images: readonly string[]): Product => {
  const address = absoluteItemAddress(box, item);
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
    ...given({
      color: item.color,
      size: item.size,
      weight: item.weight === undefined ? undefined : weightOf(item.weight),
      sku: item.sku,
      gtin: item.gtin,
      offers: spareOffer(box, item, asOf),
    }),
  } as Product;
};

/** A wait list takes names for a box that cannot be had now; spare pieces say nothing of the next box. */
const availabilityByCall: Record<CallKind, ItemAvailability> = {
  join: 'https://schema.org/InStock',
  waitList: 'https://schema.org/SoldOut',
  spare: 'https://schema.org/OutOfStock',
};

const subscription = (box: Box, asOf: Moment): Product | undefined => {
  const { settings } = box;
  const terms = settings.subscription;
  if (!terms) return undefined;
  const call = callFor(box, undefined, asOf);
  const offer: Offer = {
    '@type': 'Offer',
    price: terms.price.amount,
    priceCurrency: terms.price.currency,
    availability: availabilityByCall[call?.kind ?? 'spare'],
    url: call?.address ?? settings.url,
    seller: { '@id': organizationId(settings) },
  };
  return {
    '@type': 'Product',
    '@id': subscriptionId(settings),
    name: terms.name,
    description: terms.description ?? settings.description,
    url: settings.url,
    brand: { '@type': 'Brand', name: settings.name },
    ...(terms.image ? { image: absoluteAddress(settings, socialPicture(terms.image).path) } : {}),
    offers: offer,
  };
};

/** An article's graph. `image` and `itemImages` (by item slug) are absolute addresses. */
export const articleGraph = (input: {
  readonly box: Box;
  readonly cycle: OpenCycle;
  readonly asOf: Moment;
  readonly image?: string;
  readonly itemImages: ReadonlyMap<string, readonly string[]>;
}): object => {
  const { box, cycle, asOf, image, itemImages } = input;
  const { settings } = box;
  const address = articleAddress(box, cycle);
  const list: ItemList = {
    '@type': 'ItemList',
    '@id': `${address}#items`,
    name: cycle.theme,
    numberOfItems: cycle.items.length,
    itemListElement: cycle.items.map(
      (item, i): ListItem => ({
        '@type': 'ListItem',
        position: i + 1,
        item: product(box, item, asOf, itemImages.get(item.slug) ?? []),
      }),
    ),
  };
  const article: Article = {
    '@type': 'BlogPosting',
    '@id': articleId(box, cycle),
    url: address,
    mainEntityOfPage: address,
    headline: cycle.title,
    description: cycle.summary,
    ...(image === undefined ? {} : { image }),
    datePublished: isoInstant(revealedAt(cycle)),
    dateModified: cycle.updated ?? isoInstant(revealedAt(cycle)),
    author: { '@type': 'Person', name: cycle.author },
    publisher: { '@id': organizationId(settings) },
    isPartOf: { '@id': websiteId(settings) },
    inLanguage: settings.lang,
    mainEntity: list,
  };
  return graphOf([
    article,
    breadcrumbs(address, [
      [settings.name, settings.url],
      [cycle.title, address],
    ]),
    organization(box),
    website(box),
  ]);
};

/** The home page's graph: who sends the box, the site, the subscription, and the articles, newest first. */
export const homeGraph = ({ box, asOf }: { readonly box: Box; readonly asOf: Moment }): object => {
  const offered = subscription(box, asOf);
  const newestFirst = [...box.cycles].reverse();
  const list: ItemList = {
    '@type': 'ItemList',
    '@id': `${box.settings.url}#boxes`,
    name: box.settings.name,
    numberOfItems: newestFirst.length,
    itemListElement: newestFirst.map(
      (cycle, i): ListItem => ({
        '@type': 'ListItem',
        position: i + 1,
        name: cycle.title,
        url: articleAddress(box, cycle),
      }),
    ),
  };
  return graphOf([organization(box), website(box), ...(offered ? [offered] : []), list]);
};

/** The catalogue's graph: every item of every unsealed cycle, by kind, each named by its place in its article. */
export const catalogueGraph = ({ box }: { readonly box: Box; readonly asOf: Moment }): object => {
  const { settings } = box;
  const address = absoluteAddress(settings, CATALOGUE_PATH);
  const items = kindGroups(box).flatMap((group) => group.items);
  const list: ItemList = {
    '@type': 'ItemList',
    '@id': `${address}#items`,
    numberOfItems: items.length,
    itemListElement: items.map(
      (item, i): ListItem => ({
        '@type': 'ListItem',
        position: i + 1,
        name: item.name,
        url: absoluteItemAddress(box, item),
      }),
    ),
  };
  const page: CollectionPage = {
    '@type': 'CollectionPage',
    '@id': `${address}#page`,
    url: address,
    name: settings.name,
    inLanguage: settings.lang,
    isPartOf: { '@id': websiteId(settings) },
    mainEntity: list,
  };
  return graphOf([
    page,
    breadcrumbs(address, [
      [settings.name, settings.url],
      ['Catalogue', address],
    ]),
    organization(box),
    website(box),
  ]);
};

/** The graph of a kind's page: every item of the kind, each named by its place in its article. */
export const kindGraph = (input: {
  readonly box: Box;
  readonly group: KindGroup;
  /** Site path of the page. */
  readonly path: string;
  readonly title: string;
  readonly description: string;
  /** Newest first, each with the address of its picture where it has one. */
  readonly entries: readonly { readonly item: Item; readonly image?: string }[];
  /** The day something on it last changed. */
  readonly modified: string;
}): object => {
  const { box, group, path, title, description, entries, modified } = input;
  const { settings } = box;
  const address = absoluteAddress(settings, path);
  const list: ItemList = {
    '@type': 'ItemList',
    '@id': `${address}#items`,
    name: group.kind,
    numberOfItems: entries.length,
    itemListOrder: 'https://schema.org/ItemListOrderDescending',
    itemListElement: entries.map(
      ({ item, image }, i): ListItem => ({
        '@type': 'ListItem',
        position: i + 1,
        name: item.name,
        description: item.description,
        url: absoluteItemAddress(box, item),
        ...(image === undefined ? {} : { image }),
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
    inLanguage: settings.lang,
    isPartOf: { '@id': websiteId(settings) },
    mainEntity: list,
  };
  return graphOf([
    page,
    breadcrumbs(address, [
      [settings.name, settings.url],
      ['Catalogue', absoluteAddress(settings, CATALOGUE_PATH)],
      [group.kind, address],
    ]),
    organization(box),
    website(box),
  ]);
};

/** A graph as a script element that no name in it can close. */
export const jsonLdScript = (graph: object): Html =>
  trusted(`<script type="application/ld+json">${scriptJson(graph)}</script>`);
