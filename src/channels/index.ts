/** Every way out, in the order they are made. A new one is a file, a template and a line here. */
import { article } from './article.ts';
import { assets } from './assets.ts';
import { catalogue } from './catalogue.ts';
import type { Channel, LateChannel } from './channel.ts';
import { feeds } from './feeds.ts';
import { home } from './home.ts';
import { kinds } from './kinds.ts';
import { letter, letterPictures } from './letter.ts';
import { notFound } from './not-found.ts';
import { papers } from './papers.ts';
import { parcels } from './parcels.ts';
import { proof } from './proof.ts';
import { robots } from './robots.ts';
import { sitemap } from './sitemap.ts';

export const channels: readonly (Channel | LateChannel)[] = [
  article,
  home,
  catalogue,
  kinds,
  notFound,
  feeds,
  sitemap,
  robots,
  assets,
  papers,
  proof,
  parcels,
  letterPictures,
  letter,
];
