/** Every way out, in the order they are made. A new one is a file, a template and a line here. */
import { article } from './article.ts';
import { assets } from './assets.ts';
import { catalogue } from './catalogue.ts';
import type { Channel } from './channel.ts';
import { feed } from './feed.ts';
import { home } from './home.ts';
import { notFound } from './not-found.ts';
import { papers } from './papers.ts';
import { proof } from './proof.ts';

export const channels: readonly Channel[] = [article, home, catalogue, notFound, feed, assets, papers, proof];
