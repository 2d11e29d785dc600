/** Every way out, in the order they are made. A new one is a file or a folder, a template and a line here. */
import { article } from './article.ts';
import { assets } from './assets.ts';
import { backRoomIndex } from './back-room-index/index.ts';
import { cards } from './cards/index.ts';
import { catalogue } from './catalogue/index.ts';
import type { ClosingChannel, PlanningChannel } from './channel.ts';
import { clipSheet } from './clip/index.ts';
import { feeds } from './feeds.ts';
import { home } from './home.ts';
import { invitation } from './invitation/index.ts';
import { kinds } from './kinds.ts';
import { letter, letterPictures } from './letter/index.ts';
import { runSheet } from './live/index.ts';
import { notFound } from './not-found.ts';
import { parcels } from './parcels/index.ts';
import { proof } from './proof/index.ts';
import { redirects } from './redirects.ts';
import { robots } from './robots.ts';
import { shootList } from './shoot-list/index.ts';
import { sitemap } from './sitemap.ts';

/** All but the closing ones. */
export const channels: readonly PlanningChannel[] = [
  article,
  home,
  catalogue,
  kinds,
  redirects,
  notFound,
  feeds,
  sitemap,
  robots,
  assets,
  proof,
  parcels,
  invitation,
  runSheet,
  letterPictures,
  letter,
  clipSheet,
  cards,
  shootList,
];

/** Those that speak of the others' files, and so are made when these are. */
export const closingChannels: readonly ClosingChannel[] = [backRoomIndex];
