/** Pages by kind: every item of a kind that three or more share, newest first. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Item, Moment } from '../model/box.ts';
import { latestChange, monthName } from '../model/calendar.ts';
import { spareOnSale } from '../model/calls.ts';
import { type KindGroup, kindsWithPage } from '../model/kinds.ts';
import { cycleOf } from '../model/relations.ts';
import { namesInLine } from '../model/title.ts';
import {
  absoluteAddress,
  addressFrom,
  articlePath,
  CATALOGUE_PATH,
  groupPath,
  itemDestination,
} from '../render/addresses.ts';
import { callView, type StatedFact, statedFacts } from '../render/article-parts.ts';
import type { Html } from '../render/html.ts';
import { kindPlate } from '../render/layouts.ts';
import { priceText } from '../render/money.ts';
import type { MadeDocument, PictureOutput } from '../render/output.ts';
import { linker, pageText } from '../render/page.ts';
import { pageLang } from '../render/page-lang.ts';
import { pictureMarkup, socialPicture, widestPath } from '../render/pictures.ts';
import { type CallFacts, framesOf, type PageFrame } from '../render/site-facts.ts';
import { jsonLdScript, kindGraph } from '../render/structured-data.ts';
import { typeset } from '../render/typeset.ts';
import { capitalised } from '../text/capitalised.ts';
import { defined } from '../text/defined.ts';
import { digestOf } from '../text/digest.ts';
import { remembered } from '../text/remembered.ts';
import { joinsFor } from '../wording/joins.ts';
import type { Wording } from '../wording/wording.ts';
import { colourSheet, type PlanningChannel, plannedDocument, type Tools } from './channel.ts';

/** As many as a search result has room for. */
const NAMED_IN_SUMMARY = 5;

/** What tells one of a kind from another at a glance; the rest is in its article. */
const COMPARED: ReadonlySet<StatedFact> = new Set(['brand', 'material', 'color', 'size']);

type ShownItem = Pick<
  Item,
  'slug' | 'name' | 'inText' | 'description' | 'brand' | 'material' | 'color' | 'size' | 'pictures' | 'spare'
>;

/** An item of the kind, of which the page shows no story. */
interface KindEntry {
  readonly item: ShownItem;
  readonly cycle: Pick<Cycle, 'address' | 'theme' | 'year' | 'month'>;
  /** Whether its spare pieces can be bought now. */
  readonly onSale: boolean;
}

/** A kind as the pages of other kinds list it. */
interface ListedKind {
  readonly kind: string;
  readonly path: string;
  readonly count: number;
}

/** One list for all pages: its digest stands for it, because each page would have to hash it again. */
interface KindList {
  readonly digest: string;
  readonly kinds: readonly ListedKind[];
}

interface KindData {
  readonly frame: PageFrame;
  readonly call: CallFacts;
  readonly kind: string;
  readonly path: string;
  /** Newest cycle first, each cycle in its own order. */
  readonly entries: readonly KindEntry[];
  /** The day something on the page last changed. */
  readonly changed: string;
  /** Every kind with a page, this one too. */
  readonly listed: KindList;
}

/** "5 so far, from April 2025 to March 2026: …": what the page holds, in plain words. */
const summaryOf = (newestFirst: readonly KindEntry[], lang: string): string => {
  const words = joinsFor(lang).kind;
  const month = (entry: KindEntry | undefined): string => (entry ? monthName(entry.cycle, lang) : '');
  // "And 1 more" takes the room of its name.
  const all = newestFirst.length <= NAMED_IN_SUMMARY + 1;
  const names = newestFirst.slice(0, all ? undefined : NAMED_IN_SUMMARY).map(({ item }) => item.inText);
  const more = newestFirst.length - names.length;
  const others = { short: words.more(more), name: words.more(more) };
  const line = namesInLine(more > 0 ? [...names, others] : names, lang);
  return words.summary(newestFirst.length, month(newestFirst.at(-1)), month(newestFirst[0]), line);
};

const entryView = (
  { item, cycle, onSale }: KindEntry,
  first: boolean,
  { path, frame }: KindData,
  words: Wording['site'],
  pictures: PictureOutput[],
) => {
  const { lang } = frame.site;
  const [plate] = item.pictures;
  const picture = plate && pictureMarkup(plate, kindPlate, path, { eager: first });
  pictures.push(...(picture?.outputs ?? []));
  const { spare } = item;
  return {
    href: addressFrom(path, itemDestination(cycle, item)),
    name: typeset(item.name, lang),
    description: typeset(item.description, lang),
    facts: statedFacts(item, lang, words.item.facts).filter(({ fact }) => COMPARED.has(fact)),
    picture: picture?.html,
    month: monthName(cycle, pageLang(lang)),
    theme: typeset(cycle.theme, lang),
    box: linker(path)(articlePath(cycle)),
    spare:
      spare && onSale
        ? { count: spare.count, price: priceText(spare.price, pageLang(lang)), address: spare.address }
        : undefined,
  };
};

const kindView = (
  data: KindData,
  summary: string,
  callPart: Html,
  words: Wording['site'],
  pictures: PictureOutput[],
) => {
  const { frame, path, kind } = data;
  const { lang } = frame.site;
  const link = linker(path);
  const named = (one: string): string => typeset(capitalised(one, lang), lang);
  return {
    words: words.kind,
    kind: named(kind),
    summary: typeset(summary, lang),
    items: data.entries.map((entry, i) => entryView(entry, i === 0, data, words, pictures)),
    others: data.listed.kinds
      .filter((other) => other.path !== path)
      .map((other) => ({ href: link(other.path), kind: named(other.kind), count: other.count })),
    catalogue: link(CATALOGUE_PATH),
    callPart,
  };
};

declare module '../render/templates.ts' {
  interface TemplateData {
    kind: ReturnType<typeof kindView>;
  }
}

const kindPage = (
  data: KindData,
  tools: Tools,
  [colours = '']: readonly string[],
): MadeDocument<Diagnostic> => {
  const { frame, kind, path, entries, changed } = data;
  const { site } = frame;
  const { render } = tools.templates;
  const words = tools.wording.site;
  const title = joinsFor(site.lang).kind.title(capitalised(kind, site.lang));
  const summary = summaryOf(entries, site.lang);
  const pictures: PictureOutput[] = [];
  const call = render('call', callView(site, data.call, words.call));
  const body = render('kind', kindView(data, summary, call, words, pictures));
  const social = entries.find(({ item }) => item.pictures[0])?.item.pictures[0];
  const content = pageText(
    {
      frame,
      path,
      title,
      description: summary,
      type: 'website',
      styles: ['lists.css'],
      colours,
      body,
      social,
      graph: jsonLdScript(
        kindGraph({
          site,
          kind,
          path,
          title,
          description: summary,
          modified: changed,
          entries: entries.map(({ item, cycle }) => {
            const [first] = item.pictures;
            return {
              name: item.name,
              description: item.description,
              to: itemDestination(cycle, item),
              ...(first && { image: absoluteAddress(site, widestPath(first, kindPlate)) }),
            };
          }),
          words: tools.wording.structuredData,
        }),
      ),
    },
    tools,
  );
  return { content, pictures: [...pictures, ...(social ? [socialPicture(social)] : [])] };
};

/** An item as far as a kind's page shows it: the same object for the same item, so that whoever hashes it does so once. */
const shownOf = remembered((item: Item): ShownItem => {
  const { slug, name, inText, description, brand, material, color, size, pictures, spare } = item;
  return defined({ slug, name, inText, description, brand, material, color, size, pictures, spare });
});

const entriesOf = (box: Box, { items }: KindGroup, asOf: Moment): readonly KindEntry[] =>
  [...items]
    .sort((a, b) => (a.cycle === b.cycle ? 0 : a.cycle < b.cycle ? 1 : -1))
    .map((item) => {
      const { address, theme, year, month } = cycleOf(box, item);
      return {
        item: shownOf(item),
        cycle: { address, theme, year, month },
        onSale: spareOnSale(item, asOf, box.settings.timeZone),
      };
    });

/** A page for each kind that three or more unsealed items share. */
export const kinds: PlanningChannel<'site'> = {
  name: 'kinds',
  where: 'site',
  plan: ({ box, asOf }) => {
    const colours = colourSheet(box.settings.palette);
    const frames = framesOf(box, asOf);
    const [frame, call] = [frames.frame(), frames.call()];
    const groups = kindsWithPage(box);
    const kindList = groups.map((group) => ({
      kind: group.kind,
      path: groupPath(group),
      count: group.items.length,
    }));
    const listed = { digest: digestOf(kindList), kinds: kindList };
    const dataOf = (group: KindGroup): KindData => ({
      frame,
      call,
      kind: group.kind,
      path: groupPath(group),
      entries: entriesOf(box, group, asOf),
      changed:
        latestChange(
          box,
          group.items.map(({ cycle }) => cycle),
        ) ?? '',
      listed,
    });
    return {
      documents: groups.map((group) =>
        plannedDocument(groupPath(group), 'page', dataOf(group), kindPage, [colours]),
      ),
    };
  },
};
