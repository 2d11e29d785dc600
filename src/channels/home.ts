/** The first page: the newest reveal, what the box is, the call, the last twelve cycles as pictures. */
import { monthName } from '../model/calendar.ts';
import { callFor } from '../model/calls.ts';
import { articlePath, HOME_PATH, itemAddress, recordAddress } from '../render/addresses.ts';
import { itemPlate, leadPlate, smallPlate } from '../render/layouts.ts';
import { renderStory } from '../render/markdown.ts';
import { priceText } from '../render/money.ts';
import { linker, pageOutput } from '../render/page.ts';
import { pictureMarkup, socialPicture } from '../render/pictures.ts';
import { homeGraph } from '../render/structured-data.ts';
import { typeset } from '../render/typeset.ts';
import type { Channel } from './channel.ts';

const SHOWN = 12;

export const home: Channel = {
  name: 'home',
  where: 'site',
  make: ({ box, asOf, templates }) => {
    const { settings } = box;
    const { lang } = settings;
    const link = linker(HOME_PATH);
    const newest = box.cycles.at(-1);
    const about = renderStory(settings.story.tree, {
      file: settings.story.file,
      page: HOME_PATH,
      idPrefix: 'about-',
      topHeading: 3,
      addressOf: (target) => recordAddress(box, target, HOME_PATH),
      layout: itemPlate,
      lang,
    });
    const lead = newest?.hero && pictureMarkup(newest.hero, leadPlate, HOME_PATH, { eager: true });
    const shown = box.cycles
      .slice(-SHOWN)
      .reverse()
      .map((cycle) => ({
        cycle,
        picture: cycle.hero && pictureMarkup(cycle.hero, smallPlate, HOME_PATH),
      }));
    const social = newest?.wholeBox ?? newest?.hero;
    const socialOutput = social && socialPicture(social);
    const offered = settings.subscription?.image && socialPicture(settings.subscription.image);
    const body = templates.render('home', {
      name: typeset(settings.name, lang),
      description: typeset(settings.description, lang),
      about: about.html,
      call: callFor(box, undefined, asOf),
      subscription: settings.subscription && {
        name: typeset(settings.subscription.name, lang),
        price: priceText(settings.subscription.price, lang),
      },
      newest: newest && {
        href: link(articlePath(newest)),
        title: typeset(newest.title, lang),
        theme: typeset(newest.theme, lang),
        month: monthName(newest, lang),
        summary: typeset(newest.summary, lang),
        picture: lead?.html,
        items: newest.items.map((item) => ({
          name: typeset(item.name, lang),
          href: itemAddress(box, item, HOME_PATH),
        })),
      },
      cycles: shown.map(({ cycle, picture }) => ({
        href: link(articlePath(cycle)),
        theme: typeset(cycle.theme, lang),
        month: monthName(cycle, lang),
        picture: picture?.html,
        items: cycle.items.map((item) => typeset(item.name, lang)).join(' · '),
      })),
    });
    const page = pageOutput({
      box,
      asOf,
      templates,
      path: HOME_PATH,
      title: settings.name,
      description: settings.description,
      type: 'website',
      styles: ['lists.css'],
      palette: newest?.palette ?? settings.palette,
      body,
      ...(social && socialOutput ? { social: { path: socialOutput.path, alt: social.alt } } : {}),
      graph: homeGraph({ box, asOf }),
    });
    const pictures = [lead, ...shown.map(({ picture }) => picture)].flatMap((made) => made?.outputs ?? []);
    return {
      outputs: [
        page,
        ...pictures,
        ...about.outputs,
        ...[socialOutput, offered].filter((made) => made !== undefined),
      ],
      diagnostics: about.diagnostics,
    };
  },
};
