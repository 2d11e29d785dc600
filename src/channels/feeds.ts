/** The feeds: the last twelve reveals in full, newest first, as Atom 1.0 and JSON Feed 1.1. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { BoxSettings, Cycle } from '../model/box.ts';
import { changedAt, isoInstant, monthName } from '../model/calendar.ts';
import type { OpenCycle } from '../model/seal.ts';
import { revealedAt } from '../model/seal.ts';
import { absoluteAddress, articlePath, HOME_PATH } from '../render/addresses.ts';
import { type ArticleFacts, articleFactsOf } from '../render/article-facts.ts';
import { contentsOf, type Drawing, drawnParts, plate } from '../render/article-parts.ts';
import { fragmentHtml, fragmentText } from '../render/document.ts';
import { atomText, type Feed, type FeedEntry, jsonFeedText } from '../render/feed-formats.ts';
import { leadPlate } from '../render/layouts.ts';
import type { MadeDocument } from '../render/output.ts';
import { FEED_PATH, ICON_PATH, JSON_FEED_PATH } from '../render/page.ts';
import { pageLang } from '../render/page-lang.ts';
import { awayPicture, logoPicture } from '../render/pictures.ts';
import { framesOf } from '../render/site-facts.ts';
import { typeset } from '../render/typeset.ts';
import { type PlanningChannel, plannedDocument, plannedFragment, type Tools } from './channel.ts';

const SHOWN = 12;

/**
 * A `tag:` URI (RFC 4151) of the cycle's month and the site's own folder: it outlives a new theme and with it a new
 * address, and two sites of one host never share one.
 */
const entryId = ({ url }: BoxSettings, { id }: Cycle): string => {
  const { hostname, pathname } = new URL(url);
  return `tag:${hostname},${id}:${pathname}reveal`;
};

const entryView = (drawing: Drawing) => {
  const { cycle, site } = drawing.facts;
  const { lang } = site;
  return {
    words: drawing.words.feed,
    theme: typeset(cycle.theme, lang),
    month: monthName(cycle, pageLang(lang)),
    hero: cycle.hero && {
      picture: plate(drawing, cycle.hero, leadPlate),
      caption: cycle.hero.caption && typeset(cycle.hero.caption, lang),
    },
    items: contentsOf(drawing),
    parts: drawnParts(drawing),
  };
};

declare module '../render/templates.ts' {
  interface TemplateData {
    'feed-article': ReturnType<typeof entryView>;
  }
}

/** The whole article as an entry holds it; what is found in its text is reported by the article's page. */
const entryContent = (facts: ArticleFacts, { templates, wording }: Tools) => {
  const drawing: Drawing = {
    facts,
    words: wording.site,
    wording,
    page: articlePath(facts.cycle),
    away: true,
    pictures: [],
    diagnostics: [],
  };
  const content = fragmentText(templates.render('feed-article', entryView(drawing)));
  return { content, pictures: drawing.pictures };
};

/** The frame of an entry, whose content is a fragment. */
const entryOf = (settings: BoxSettings, cycle: OpenCycle): Omit<FeedEntry, 'content'> => {
  const { lang, timeZone } = settings;
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
  };
};

/** A side this much longer than the other still passes for square. */
const SQUARE = 1.25;

const logoAddresses = (settings: BoxSettings): Pick<Feed, 'logo' | 'squareLogo'> => {
  if (!settings.logo) return {};
  const { width, height } = settings.logo;
  const logo = absoluteAddress(settings, logoPicture(settings.logo).path);
  return {
    logo,
    ...(Math.max(width, height) <= SQUARE * Math.min(width, height) ? { squareLogo: logo } : {}),
  };
};

interface FeedData extends Omit<Feed, 'entries'> {
  /** Their contents are the fragments', in the same order. */
  readonly entries: readonly Omit<FeedEntry, 'content'>[];
}

const feedOf = (data: FeedData, contents: readonly string[]): Feed => ({
  ...data,
  entries: data.entries.map((entry, i) => ({ ...entry, content: fragmentHtml(contents[i] ?? '') })),
});

const atom = (data: FeedData, _: Tools, contents: readonly string[]): MadeDocument<Diagnostic> => ({
  content: atomText(feedOf(data, contents)),
});

const json = (data: FeedData, _: Tools, contents: readonly string[]): MadeDocument<Diagnostic> => ({
  content: jsonFeedText(feedOf(data, contents)),
});

/** Both feeds of the site. */
export const feeds: PlanningChannel<'site'> = {
  name: 'feeds',
  where: 'site',
  plan: ({ box, asOf }) => {
    const { settings, cycles } = box;
    const frames = framesOf(box, asOf);
    const shown = cycles.slice(-SHOWN).reverse();
    const data: FeedData = {
      title: settings.name,
      description: settings.description,
      lang: settings.lang,
      author: settings.author,
      home: absoluteAddress(settings, HOME_PATH),
      icon: absoluteAddress(settings, ICON_PATH),
      ...logoAddresses(settings),
      atomAddress: absoluteAddress(settings, FEED_PATH),
      jsonAddress: absoluteAddress(settings, JSON_FEED_PATH),
      // A feed must say when it changed (RFC 4287 §4.1.1), even one that has told of nothing yet.
      updated: isoInstant(Math.max(0, ...shown.map((cycle) => changedAt(cycle, settings.timeZone)))),
      entries: shown.map((cycle) => entryOf(settings, cycle)),
    };
    const contents = shown.map((cycle) =>
      plannedFragment(`feed entry ${cycle.id}`, articleFactsOf(box, cycle, asOf, frames), entryContent),
    );
    return {
      documents: [
        plannedDocument(FEED_PATH, 'list', data, atom, contents),
        plannedDocument(JSON_FEED_PATH, 'list', data, json, contents),
      ],
    };
  },
};
