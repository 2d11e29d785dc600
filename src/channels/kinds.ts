/** Pages by kind: every item of a kind that three or more share, newest first. */
import type { Box, Item } from '../model/box.ts';
import { changedOn, monthName } from '../model/calendar.ts';
import { spareOnSale } from '../model/calls.ts';
import { type KindGroup, kindsWithPage } from '../model/kinds.ts';
import { cycleOf } from '../model/relations.ts';
import { namesInLine } from '../model/title.ts';
import {
  absoluteAddress,
  articlePath,
  CATALOGUE_PATH,
  itemAddress,
  kindPagePath,
} from '../render/addresses.ts';
import { callData, factsOf } from '../render/article-parts.ts';
import { kindPlate } from '../render/layouts.ts';
import { priceText } from '../render/money.ts';
import type { PictureOutput } from '../render/output.ts';
import { linker, pageOutput } from '../render/page.ts';
import { pictureMarkup, socialPicture, widestPath } from '../render/pictures.ts';
import { kindGraph } from '../render/structured-data.ts';
import { capitalised, typeset } from '../render/typeset.ts';
import type { Channel, ChannelResult, PublicInput } from './channel.ts';

/** As many as a search result has room for. */
const NAMED_IN_SUMMARY = 5;

/** What tells one of a kind from another at a glance; the rest is in its article. */
const COMPARED: ReadonlySet<string> = new Set(['Maker', 'Material', 'Colour', 'Size']);

/** "5 so far, from April 2025 to March 2026: …": what the page holds, in plain words. */
const summaryOf = (box: Box, newestFirst: readonly Item[]): string => {
  const { lang } = box.settings;
  const month = (item: Item | undefined): string => (item ? monthName(cycleOf(box, item), lang) : '');
  const [from, to] = [month(newestFirst.at(-1)), month(newestFirst[0])];
  const span = from === to ? `in ${from}` : `from ${from} to ${to}`;
  // "And 1 more" takes the room of its name.
  const all = newestFirst.length <= NAMED_IN_SUMMARY + 1;
  const names = newestFirst.slice(0, all ? undefined : NAMED_IN_SUMMARY).map(({ name }) => name);
  const more = newestFirst.length - names.length;
  const line = namesInLine(more > 0 ? [...names, `${more} more`] : names, lang);
  return `${newestFirst.length} so far, ${span}: ${line}.`;
};

const kindPage = (input: PublicInput, group: KindGroup): ChannelResult => {
  const { box, asOf, templates } = input;
  const { settings } = box;
  const { lang, timeZone } = settings;
  const path = kindPagePath(box, group.kind) as string;
  const link = linker(path);
  const newestFirst = [...group.items].sort((a, b) => (a.cycle === b.cycle ? 0 : a.cycle < b.cycle ? 1 : -1));
  const title = `${capitalised(group.kind, lang)}: every one we have packed`;
  const summary = summaryOf(box, newestFirst);
  const pictures: PictureOutput[] = [];

  const entry = (item: Item, place: number) => {
    const cycle = cycleOf(box, item);
    const [first] = item.pictures;
    const picture = first && pictureMarkup(first, kindPlate, path, { eager: place === 0 });
    pictures.push(...(picture?.outputs ?? []));
    const { spare } = item;
    return {
      href: itemAddress(box, item, path),
      name: typeset(item.name, lang),
      description: typeset(item.description, lang),
      facts: factsOf(item, lang).filter(({ label }) => COMPARED.has(label)),
      picture: picture?.html,
      month: monthName(cycle, lang),
      theme: typeset(cycle.theme, lang),
      box: link(articlePath(cycle)),
      spare: spare &&
        spareOnSale(item, asOf, timeZone) && {
          count: spare.count,
          price: priceText(spare.price, lang),
          address: spare.address,
        },
    };
  };

  const body = templates.render('kind', {
    kind: typeset(capitalised(group.kind, lang), lang),
    summary: typeset(summary, lang),
    items: newestFirst.map(entry),
    others: kindsWithPage(box)
      .filter((other) => other !== group)
      .map((other) => ({
        href: link(kindPagePath(box, other.kind) as string),
        kind: typeset(capitalised(other.kind, lang), lang),
        count: other.items.length,
      })),
    catalogue: link(CATALOGUE_PATH),
    callPart: templates.render('call', callData({ box, asOf })),
  });
  const shown = newestFirst.find((item) => item.pictures[0])?.pictures[0];
  const social = shown && socialPicture(shown);
  const page = pageOutput({
    box,
    asOf,
    templates,
    path,
    title,
    description: summary,
    type: 'website',
    styles: ['lists.css'],
    palette: settings.palette,
    body,
    ...(shown && social ? { social: { path: social.path, alt: shown.alt } } : {}),
    graph: kindGraph({
      box,
      group,
      path,
      title,
      description: summary,
      modified: newestFirst
        .map((item) => changedOn(cycleOf(box, item), timeZone))
        .sort()
        .at(-1) as string,
      entries: newestFirst.map((item) => {
        const [first] = item.pictures;
        return first ? { item, image: absoluteAddress(settings, widestPath(first, kindPlate)) } : { item };
      }),
    }),
  });
  return { outputs: [page, ...pictures, ...(social ? [social] : [])], diagnostics: [] };
};

export const kinds: Channel<'site'> = {
  name: 'kinds',
  where: 'site',
  make: (input) => ({
    outputs: kindsWithPage(input.box).flatMap((group) => kindPage(input, group).outputs),
    diagnostics: [],
  }),
};
