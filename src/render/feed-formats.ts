/** A feed as data, and the two formats it is written in: one description, so that they cannot differ. */
import { type Html, htmlSource } from './html.ts';
import { xml, xmlDocument } from './xml.ts';

/** One article in a feed. */
export interface FeedEntry {
  /** A `tag:` URI (RFC 4151): stays when the article's title or address changes. */
  readonly id: string;
  readonly address: string;
  readonly title: string;
  readonly summary: string;
  readonly author: string;
  /** RFC 3339, with zone. */
  readonly published: string;
  readonly updated: string;
  readonly image?: string;
  readonly tags: readonly string[];
  /** The whole article, every address in full. */
  readonly content: Html;
}

/** Addresses are full ones. */
export interface Feed {
  readonly title: string;
  readonly description: string;
  readonly lang: string;
  readonly author: string;
  readonly home: string;
  /** Small: beside a title. */
  readonly icon: string;
  readonly logo?: string;
  /** The logo where it is about square, as JSON Feed 1.1 asks of its `icon`. */
  readonly squareLogo?: string;
  readonly atomAddress: string;
  readonly jsonAddress: string;
  readonly updated: string;
  /** Newest first. */
  readonly entries: readonly FeedEntry[];
}

const atomEntry = (entry: FeedEntry): Html => xml`<entry>
<id>${entry.id}</id>
<title>${entry.title}</title>
<link rel="alternate" type="text/html" href="${entry.address}"/>
<published>${entry.published}</published>
<updated>${entry.updated}</updated>
<author><name>${entry.author}</name></author>
${entry.tags.map((tag) => xml`<category term="${tag}"/>`)}
<summary>${entry.summary}</summary>
<content type="html">${htmlSource(entry.content)}</content>
</entry>
`;

/** Atom 1.0 (RFC 4287), its content as escaped HTML (§4.1.3.3). */
export const atomText = (feed: Feed): string =>
  xmlDocument(xml`<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${feed.lang}">
<id>${feed.atomAddress}</id>
<title>${feed.title}</title>
<subtitle>${feed.description}</subtitle>
<link rel="self" type="application/atom+xml" href="${feed.atomAddress}"/>
<link rel="alternate" type="text/html" href="${feed.home}"/>
<link rel="alternate" type="application/feed+json" href="${feed.jsonAddress}"/>
<icon>${feed.icon}</icon>
${
  feed.logo === undefined
    ? ''
    : xml`<logo>${feed.logo}</logo>
`
}<updated>${feed.updated}</updated>
<author><name>${feed.author}</name></author>
${feed.entries.map(atomEntry)}</feed>`);

/** JSON Feed 1.1 (jsonfeed.org/version/1.1). */
export const jsonFeedText = (feed: Feed): string => {
  const document = {
    version: 'https://jsonfeed.org/version/1.1',
    title: feed.title,
    description: feed.description,
    home_page_url: feed.home,
    feed_url: feed.jsonAddress,
    ...(feed.squareLogo === undefined ? {} : { icon: feed.squareLogo }),
    favicon: feed.icon,
    language: feed.lang,
    authors: [{ name: feed.author }],
    items: feed.entries.map((entry) => ({
      id: entry.id,
      url: entry.address,
      title: entry.title,
      summary: entry.summary,
      ...(entry.image === undefined ? {} : { image: entry.image }),
      date_published: entry.published,
      date_modified: entry.updated,
      authors: [{ name: entry.author }],
      ...(entry.tags.length > 0 ? { tags: entry.tags } : {}),
      content_html: htmlSource(entry.content),
    })),
  };
  return `${JSON.stringify(document, null, 1)}\n`;
};
