/** The article: a cycle's long page. */
import type { Cycle, Picture } from '../model/box.ts';
import { dateInZone, isoInstant, longDate, monthName } from '../model/calendar.ts';
import { nextCycle, previousCycle } from '../model/relations.ts';
import { type OpenCycle, revealedAt } from '../model/seal.ts';
import { absoluteAddress, articlePath } from '../render/addresses.ts';
import { callData, contentsOf, type Drawing, drawnParts, plate } from '../render/article-parts.ts';
import { joinHtml } from '../render/html.ts';
import { itemPlate, leadPlate, smallPlate } from '../render/layouts.ts';
import { linker, pageOutput } from '../render/page.ts';
import { socialPicture, widestPath } from '../render/pictures.ts';
import { articleGraph } from '../render/structured-data.ts';
import { typeset } from '../render/typeset.ts';
import type { Channel, ChannelResult, PublicInput } from './channel.ts';

const neighbour = (drawing: Drawing, cycle: Cycle | undefined) =>
  cycle && {
    href: linker(drawing.page)(articlePath(cycle)),
    theme: typeset(cycle.theme, drawing.box.settings.lang),
    month: monthName(cycle, drawing.box.settings.lang),
    picture: cycle.hero && plate(drawing, cycle.hero, smallPlate),
  };

/** Addresses of the pictures that structured data names: the widest JPEG of each, which the plates make. */
const imageAddresses = ({ box }: Drawing, pictures: readonly Picture[]): readonly string[] =>
  pictures.map((picture) => absoluteAddress(box.settings, widestPath(picture, itemPlate)));

const articlePage = (input: PublicInput, cycle: OpenCycle): ChannelResult => {
  const { box, asOf, templates } = input;
  const { lang, timeZone } = box.settings;
  const drawing: Drawing = {
    box,
    asOf,
    cycle,
    page: articlePath(cycle),
    away: false,
    outputs: [],
    diagnostics: [],
  };
  const revealed = dateInZone(revealedAt(cycle), timeZone);
  const social = cycle.wholeBox ?? cycle.hero;
  const socialOutput = social && socialPicture(social);
  const body = templates.render('article', {
    title: typeset(cycle.title, lang),
    theme: typeset(cycle.theme, lang),
    month: monthName(cycle, lang),
    summary: typeset(cycle.summary, lang),
    author: cycle.author,
    date: { iso: revealed, words: longDate(revealed, lang) },
    updated: cycle.updated && { iso: cycle.updated, words: longDate(cycle.updated, lang) },
    hero: cycle.hero && {
      picture: plate(drawing, cycle.hero, leadPlate, true),
      caption: typeset(cycle.hero.caption ?? '', lang),
      number: cycle.items.find((item) => item.pictures[0]?.file === cycle.hero?.file)?.number,
    },
    items: contentsOf(drawing),
    replay: cycle.replay,
    ...callData(drawing),
    parts: joinHtml(
      drawnParts(drawing).map(({ template, data }) => templates.render(template, data)),
      '\n',
    ),
    previous: neighbour(drawing, previousCycle(box, cycle)),
    next: neighbour(drawing, nextCycle(box, cycle)),
  });
  const page = pageOutput({
    box,
    asOf,
    templates,
    path: drawing.page,
    title: cycle.title,
    description: cycle.summary,
    type: 'article',
    palette: cycle.palette,
    cycle,
    body,
    published: isoInstant(revealedAt(cycle)),
    ...(cycle.updated === undefined ? {} : { modified: cycle.updated }),
    ...(social && socialOutput ? { social: { path: socialOutput.path, alt: social.alt } } : {}),
    graph: articleGraph({
      box,
      cycle,
      asOf,
      ...(socialOutput ? { image: absoluteAddress(box.settings, socialOutput.path) } : {}),
      itemImages: new Map(cycle.items.map((item) => [item.slug, imageAddresses(drawing, item.pictures)])),
    }),
  });
  return {
    outputs: [page, ...drawing.outputs, ...(socialOutput ? [socialOutput] : [])],
    diagnostics: drawing.diagnostics,
  };
};

export const article: Channel<'site'> = {
  name: 'article',
  where: 'site',
  make: (input) => {
    const pages = input.box.cycles.map((cycle) => articlePage(input, cycle));
    return {
      outputs: pages.flatMap((page) => page.outputs),
      diagnostics: pages.flatMap((page) => page.diagnostics),
    };
  },
};
