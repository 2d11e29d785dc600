/** The article: a cycle's long page. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Cycle, Picture } from '../model/box.ts';
import { dateInZone, isoInstant, lastChanged, mendedOn, monthName } from '../model/calendar.ts';
import { chaptersOf } from '../model/chapters.ts';
import { revealedAt } from '../model/seal.ts';
import { itemAtHead } from '../model/telling.ts';
import { absoluteAddress, articlePath } from '../render/addresses.ts';
import { type ArticleFacts, articleFactsOf } from '../render/article-facts.ts';
import {
  callView,
  contentsOf,
  type Drawing,
  type DrawnPart,
  drawnParts,
  plate,
} from '../render/article-parts.ts';
import { type Html, joinHtml } from '../render/html.ts';
import { itemPlate, leadPlate, smallPlate } from '../render/layouts.ts';
import type { MadeDocument } from '../render/output.ts';
import { linker, pageText } from '../render/page.ts';
import { pageLang } from '../render/page-lang.ts';
import { socialPicture, widestPath } from '../render/pictures.ts';
import type { Recording } from '../render/recording-data.ts';
import { sharePicture } from '../render/share-picture.ts';
import { type Frames, framesOf, type PageFrame } from '../render/site-facts.ts';
import { articleGraph, jsonLdScript, type ListedProduct } from '../render/structured-data.ts';
import type { Templates } from '../render/templates.ts';
import { typeset } from '../render/typeset.ts';
import { defined } from '../text/defined.ts';
import { longDate } from '../text/long-date.ts';
import { joinsFor } from '../wording/joins.ts';
import type { Wording } from '../wording/wording.ts';
import {
  colourSheet,
  type PlanningChannel,
  type PublicInput,
  plannedDocument,
  type Tools,
} from './channel.ts';

/** The article before or after, as this one names it at its end. */
interface Neighbour {
  readonly path: string;
  readonly theme: string;
  /** `month` from 1 to 12. */
  readonly year: number;
  readonly month: number;
  readonly hero?: Picture;
}

interface ArticleData {
  readonly frame: PageFrame;
  readonly facts: ArticleFacts;
  readonly previous?: Neighbour;
  readonly next?: Neighbour;
}

const neighbourOf = (cycle: Cycle | undefined): Neighbour | undefined =>
  cycle &&
  defined({
    path: articlePath(cycle),
    theme: cycle.theme,
    year: cycle.year,
    month: cycle.month,
    hero: cycle.hero,
  });

const neighbourView = (drawing: Drawing, neighbour: Neighbour | undefined) =>
  neighbour && {
    href: linker(drawing.page)(neighbour.path),
    theme: typeset(neighbour.theme, drawing.facts.site.lang),
    month: monthName(neighbour, pageLang(drawing.facts.site.lang)),
    picture: neighbour.hero && plate(drawing, neighbour.hero, smallPlate),
  };

const partHtml = ({ render }: Templates, part: DrawnPart): Html => {
  switch (part.template) {
    case 'prose':
      return render(part.template, part.data);
    case 'item':
      return render(part.template, part.data);
    case 'whole-box':
      return render(part.template, part.data);
    case 'voices':
      return render(part.template, part.data);
    case 'peek':
      return render(part.template, part.data);
    case 'call':
      return render(part.template, part.data);
  }
};

const articleView = (drawing: Drawing, { previous, next }: ArticleData, templates: Templates) => {
  const { cycle, site, call } = drawing.facts;
  const { lang, timeZone } = site;
  const revealed = dateInZone(revealedAt(cycle), timeZone);
  const mended = mendedOn(cycle, timeZone);
  return {
    ...callView(site, call, drawing.words.call),
    words: drawing.words.article,
    title: typeset(cycle.title, lang),
    theme: typeset(cycle.theme, lang),
    month: monthName(cycle, pageLang(lang)),
    summary: typeset(cycle.summary, lang),
    author: cycle.author,
    date: { iso: revealed, words: longDate(revealed, pageLang(lang)) },
    updated: mended && { iso: mended, words: longDate(mended, pageLang(lang)) },
    hero: cycle.hero && {
      picture: plate(drawing, cycle.hero, leadPlate, { eager: true }),
      caption: typeset(cycle.hero.caption ?? '', lang),
      number: itemAtHead(cycle)?.number,
    },
    items: contentsOf(drawing),
    parts: joinHtml(
      drawnParts(drawing).map((part) => partHtml(templates, part)),
      '\n',
    ),
    previous: neighbourView(drawing, previous),
    next: neighbourView(drawing, next),
  };
};

declare module '../render/templates.ts' {
  interface TemplateData {
    article: ReturnType<typeof articleView>;
  }
}

/** What structured data names of each item: the widest JPEG of each picture, which the plates make. */
const productsOf = ({ site, cycle, items }: ArticleFacts): ReadonlyMap<string, ListedProduct> =>
  new Map(
    cycle.items.map((item) => [
      item.slug,
      {
        images: item.pictures.map((picture) => absoluteAddress(site, widestPath(picture, itemPlate))),
        onSale: items.get(item.slug)?.onSale ?? false,
      },
    ]),
  );

/** The live's recording as structured data names it; undefined where nobody wrote down the day, which it needs. */
const recordingOf = ({ site, cycle }: ArticleFacts, { live }: Wording): Recording | undefined => {
  const { replay } = cycle;
  if (replay?.recorded === undefined) return undefined;
  return defined({
    name: joinsFor(site.lang).recording(cycle.theme, monthName(cycle, site.lang), site.name),
    address: replay.address,
    recorded: replay.recorded,
    minutes: replay.minutes,
    chapters: chaptersOf(cycle).map((chapter) =>
      defined({ name: live.chapterTitle(chapter), start: chapter.start, end: chapter.knownEnd }),
    ),
  });
};

const articlePage = (
  data: ArticleData,
  { templates, wording, faces }: Tools,
  [colours = '']: readonly string[],
): MadeDocument<Diagnostic> => {
  const { frame, facts } = data;
  const { cycle, site } = facts;
  const drawing: Drawing = {
    facts,
    words: wording.site,
    wording,
    page: articlePath(cycle),
    away: false,
    pictures: [],
    diagnostics: [],
  };
  const body = templates.render('article', articleView(drawing, data, templates));
  const social = cycle.wholeBox ?? cycle.hero;
  const preview = social && socialPicture(social);
  const share = sharePicture(cycle, site, faces);
  const content = pageText(
    {
      frame,
      path: drawing.page,
      title: cycle.title,
      description: cycle.summary,
      type: 'article',
      colours,
      body,
      published: isoInstant(revealedAt(cycle)),
      modified: mendedOn(cycle, site.timeZone) && lastChanged(cycle, site.timeZone),
      drawn: share,
      graph: jsonLdScript(
        articleGraph({
          site,
          cycle,
          image: preview && absoluteAddress(site, preview.path),
          products: productsOf(facts),
          recording: recordingOf(facts, wording),
        }),
      ),
    },
    { templates, wording },
  );
  return {
    content,
    pictures: [
      ...drawing.pictures,
      ...(preview ? [preview] : []),
      { where: share.where, path: share.path, picture: share.picture },
    ],
    diagnostics: drawing.diagnostics,
  };
};

const planned = ({ box, asOf }: PublicInput, frames: Frames, position: number) => {
  const cycle = box.cycles[position];
  if (!cycle) return [];
  const data: ArticleData = defined({
    frame: frames.frame(cycle),
    facts: articleFactsOf(box, cycle, asOf, frames),
    previous: neighbourOf(box.cycles[position - 1]),
    next: neighbourOf(box.cycles[position + 1]),
  });
  return [plannedDocument(articlePath(cycle), 'page', data, articlePage, [colourSheet(cycle.palette)])];
};

/** An article for each unsealed cycle. */
export const article: PlanningChannel<'site'> = {
  name: 'article',
  where: 'site',
  plan: (input) => {
    const frames = framesOf(input.box, input.asOf);
    return { documents: input.box.cycles.flatMap((_, position) => planned(input, frames, position)) };
  },
};
