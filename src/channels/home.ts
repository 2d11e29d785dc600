/** The first page: the newest reveal, what the box is, the call, the twelve cycles before it as pictures. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Cycle, Picture, Story, Subscription } from '../model/box.ts';
import { monthName } from '../model/calendar.ts';
import { addressFrom, articlePath, HOME_PATH, itemDestination } from '../render/addresses.ts';
import { type StoryFacts, storyFactsOf, targetKey } from '../render/article-facts.ts';
import { itemPlate, leadPlate, smallPlate } from '../render/layouts.ts';
import { type RenderedStory, renderStory } from '../render/markdown.ts';
import { priceText } from '../render/money.ts';
import type { MadeDocument, PictureOutput } from '../render/output.ts';
import { linker, pageText } from '../render/page.ts';
import { pageLang } from '../render/page-lang.ts';
import { type PictureLayout, pictureMarkup, socialPicture } from '../render/pictures.ts';
import { framesOf, type PageFrame } from '../render/site-facts.ts';
import { homeGraph, jsonLdScript, type ListedPage } from '../render/structured-data.ts';
import { typeset } from '../render/typeset.ts';
import { defined } from '../text/defined.ts';
import type { Wording } from '../wording/wording.ts';
import { colourSheet, type PlanningChannel, plannedDocument, type Tools } from './channel.ts';

/** Cycles before the newest. */
const SHOWN = 12;

/** A cycle as the row of the last ones shows it. */
interface ShownCycle {
  readonly path: string;
  readonly theme: string;
  /** `month` from 1 to 12. */
  readonly year: number;
  readonly month: number;
  readonly hero?: Picture;
  readonly items: readonly ListedPage[];
}

/** The newest cycle, at the head of the page. */
interface NewestCycle {
  readonly summary: string;
  readonly wholeBox?: Picture;
}

interface HomeData {
  readonly frame: PageFrame;
  readonly about: Story;
  readonly stories: StoryFacts;
  readonly subscription?: Subscription;
  readonly newest?: NewestCycle;
  /** Newest first, which the head of the page shows; the rest are those before it. */
  readonly shown: readonly ShownCycle[];
  /** Every article, newest first. */
  readonly articles: readonly ListedPage[];
}

const shownCycle = (cycle: Cycle): ShownCycle =>
  defined({
    path: articlePath(cycle),
    theme: cycle.theme,
    year: cycle.year,
    month: cycle.month,
    hero: cycle.hero,
    items: cycle.items.map((item) => ({ name: item.name, to: itemDestination(cycle, item) })),
  });

const homeView = (
  data: HomeData,
  words: Wording['site']['home'],
  about: RenderedStory,
  pictures: PictureOutput[],
) => {
  const { frame, subscription, newest, shown } = data;
  const { site } = frame;
  const { lang } = site;
  const link = linker(HOME_PATH);
  const plate = (picture: Picture, layout: PictureLayout, eager: boolean) => {
    const { html, outputs } = pictureMarkup(picture, layout, HOME_PATH, { eager });
    pictures.push(...outputs);
    return html;
  };
  const [first, ...before] = shown;
  return {
    words,
    name: typeset(site.name, lang),
    description: typeset(site.description, lang),
    about: about.html,
    call: frame.call,
    subscription: subscription && {
      name: typeset(subscription.name, lang),
      price: priceText(subscription.price, pageLang(lang)),
    },
    newest: newest &&
      first && {
        href: link(first.path),
        theme: typeset(first.theme, lang),
        month: monthName(first, pageLang(lang)),
        summary: typeset(newest.summary, lang),
        picture: first.hero && plate(first.hero, leadPlate, true),
        items: first.items.map(({ name, to }) => ({
          name: typeset(name, lang),
          href: addressFrom(HOME_PATH, to),
        })),
      },
    cycles: before.map((cycle) => ({
      href: link(cycle.path),
      theme: typeset(cycle.theme, lang),
      month: monthName(cycle, pageLang(lang)),
      picture: cycle.hero && plate(cycle.hero, smallPlate, false),
      items: cycle.items.map(({ name }) => typeset(name, lang)).join(' · '),
    })),
  };
};

declare module '../render/templates.ts' {
  interface TemplateData {
    home: ReturnType<typeof homeView>;
  }
}

const homePage = (
  data: HomeData,
  { templates, wording }: Tools,
  [colours = '']: readonly string[],
): MadeDocument<Diagnostic> => {
  const { frame, stories, subscription, newest, shown } = data;
  const { site } = frame;
  const about = renderStory(data.about.tree, {
    file: data.about.file,
    page: HOME_PATH,
    idPrefix: 'about-',
    topHeading: 3,
    addressOf: (target) => {
      const to = stories.destinations.get(targetKey(target));
      return to && addressFrom(HOME_PATH, to);
    },
    layout: itemPlate,
    lang: site.lang,
    words: wording.site.story,
  });
  const pictures: PictureOutput[] = [];
  const body = templates.render('home', homeView(data, wording.site.home, about, pictures));
  const social = newest?.wholeBox ?? shown[0]?.hero;
  const content = pageText(
    {
      frame,
      path: HOME_PATH,
      title: site.name,
      description: site.description,
      type: 'website',
      styles: ['lists.css'],
      colours,
      body,
      social,
      graph: jsonLdScript(homeGraph({ site, call: frame.call, subscription, articles: data.articles })),
    },
    { templates, wording },
  );
  const previews = [social, subscription?.image].flatMap((picture) =>
    picture ? [socialPicture(picture)] : [],
  );
  return {
    content,
    pictures: [...pictures, ...about.outputs, ...previews],
    diagnostics: about.diagnostics,
  };
};

/** The first page of the site. */
export const home: PlanningChannel<'site'> = {
  name: 'home',
  where: 'site',
  plan: ({ box, asOf }) => {
    const { settings, cycles } = box;
    const newest = cycles.at(-1);
    const newestFirst = [...cycles].reverse();
    const data: HomeData = defined({
      frame: framesOf(box, asOf).frame(),
      about: settings.story,
      stories: storyFactsOf(box, [settings.story]),
      subscription: settings.subscription,
      newest: newest && defined({ summary: newest.summary, wholeBox: newest.wholeBox }),
      shown: newestFirst.slice(0, 1 + SHOWN).map(shownCycle),
      articles: newestFirst.map((cycle) => ({ name: cycle.title, to: { path: articlePath(cycle) } })),
    });
    const colours = colourSheet(newest?.palette ?? settings.palette);
    return { documents: [plannedDocument(HOME_PATH, 'page', data, homePage, [colours])] };
  },
};
