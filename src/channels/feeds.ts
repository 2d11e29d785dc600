/** The feeds: the last twelve reveals in full, newest first, as Atom 1.0 and JSON Feed 1.1. */

import type { BoxSettings, Cycle } from '../model/box.ts';
import { changedAt, isoInstant, monthName } from '../model/calendar.ts';
import { type OpenCycle, revealedAt } from '../model/seal.ts';
import { absoluteAddress, articlePath, HOME_PATH } from '../render/addresses.ts';
import { contentsOf, type Drawing, drawnParts, plate } from '../render/article-parts.ts';
import { atomText, type Feed, type FeedEntry, jsonFeedText } from '../render/feed-formats.ts';
import { leadPlate } from '../render/layouts.ts';
import type { Output } from '../render/output.ts';
import { FEED_PATH, ICON_PATH, JSON_FEED_PATH } from '../render/page.ts';
import { awayPicture } from '../render/pictures.ts';
import { typeset } from '../render/typeset.ts';
import type { Channel, PublicInput } from './channel.ts';

const SHOWN = 12;

/**
 * A `tag:` URI (RFC 4151) of the cycle's month and the site's own folder: it outlives a new theme and with it a new
 * address, and two sites of one host never share one.
 */
const entryId = ({ url }: BoxSettings, { id }: Cycle): string => {
  const { hostname, pathname } = new URL(url);
  return `tag:${hostname},${id}:${pathname}reveal`;
};

const entryOf = ({ box, asOf, templates }: PublicInput, cycle: OpenCycle, outputs: Output[]): FeedEntry => {
  const { settings } = box;
  const { lang, timeZone } = settings;
  // What is found in the text is reported by the article.
  const drawing: Drawing = {
    box,
    asOf,
    cycle,
    page: articlePath(cycle),
    away: true,
    outputs,
    diagnostics: [],
  };
  return {
    id: entryId(settings, cycle),
    address: absoluteAddress(settings, articlePath(cycle)),
    title: typeset(cycle.title, lang),
    summary: typeset(cycle.summary, lang),
    author: cycle.author,
    published: isoInstant(revealedAt(cycle)),
    updated: isoInstant(changedAt(cycle, timeZone)),
    ...(cycle.hero ? { image: absoluteAddress(settings, awayPicture(cycle.hero, leadPlate).path) } : {}),
    tags: [...new Set(cycle.items.map((item) => item.kind))],
    content: templates.render('feed-article', {
      theme: typeset(cycle.theme, lang),
      month: monthName(cycle, lang),
      hero: cycle.hero && {
        picture: plate(drawing, cycle.hero, leadPlate),
        caption: cycle.hero.caption && typeset(cycle.hero.caption, lang),
      },
      items: contentsOf(drawing),
      parts: drawnParts(drawing),
    }),
  };
};

export const feeds: Channel<'site'> = {
  name: 'feeds',
  where: 'site',
  make: (input) => {
    const { settings, cycles } = input.box;
    const shown = cycles.slice(-SHOWN).reverse();
    const pictures: Output[] = [];
    const feed: Feed = {
      title: settings.name,
      description: settings.description,
      lang: settings.lang,
      author: settings.author,
      home: absoluteAddress(settings, HOME_PATH),
      icon: absoluteAddress(settings, ICON_PATH),
      atomAddress: absoluteAddress(settings, FEED_PATH),
      jsonAddress: absoluteAddress(settings, JSON_FEED_PATH),
      // A feed must say when it changed (RFC 4287 §4.1.1), even one that has told of nothing yet.
      updated: isoInstant(Math.max(0, ...shown.map((cycle) => changedAt(cycle, settings.timeZone)))),
      entries: shown.map((cycle) => entryOf(input, cycle, pictures)),
    };
    return {
      outputs: [
        { where: 'site', path: FEED_PATH, text: atomText(feed) },
        { where: 'site', path: JSON_FEED_PATH, text: jsonFeedText(feed) },
        ...pictures,
      ],
      diagnostics: [],
    };
  },
};
