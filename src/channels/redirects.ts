/**
 * Pages that send on, left where another page stood. They work on any static host and opened from disk: the refresh is
 * immediate (HTML standard, "shared declarative refresh steps"; WCAG 2.2 technique H76), the link beside it is for who
 * has it turned off. `canonical` names the page that they send on to (RFC 6596 §3: content that is the same or more),
 * so they are not kept out of search engines: `noindex` would let the old address be forgotten with all that led to it.
 *
 * A refresh drops the fragment that a visitor came with, and no markup can keep it. So every anchor that the old page
 * had is here an element with a link to its new place, which is what is seen where nothing is sent on by itself.
 */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { monthName } from '../model/calendar.ts';
import {
  absoluteAddress,
  addressFrom,
  type Destination,
  itemAnchor,
  itemDestination,
} from '../render/addresses.ts';
import { assetPath } from '../render/assets.ts';
import { documentText } from '../render/document.ts';
import type { MadeDocument } from '../render/output.ts';
import { linker } from '../render/page.ts';
import { type Redirect, type RedirectTarget, redirectsOf } from '../render/public-addresses.ts';
import { type SiteFacts, siteFactsOf } from '../render/site-facts.ts';
import { typeset } from '../render/typeset.ts';
import { capitalised } from '../text/capitalised.ts';
import { defined } from '../text/defined.ts';
import type { Wording } from '../wording/wording.ts';
import { type PlanningChannel, plannedDocument, type Tools } from './channel.ts';

/** What the page leads to, as far as its link says it. */
type NamedTarget =
  | { readonly page: 'article'; readonly theme: string; readonly year: number; readonly month: number }
  | { readonly page: 'item'; readonly name: string }
  | { readonly page: 'kind'; readonly kind: string }
  | { readonly page: 'home' }
  | { readonly page: 'catalogue' };

/** An item of the old page, and where it is told of now. */
interface MovedItem {
  readonly id: string;
  /** Ids that it had before. */
  readonly formerIds: readonly string[];
  readonly name: string;
  readonly to: Destination;
}

interface RedirectData {
  readonly site: Pick<SiteFacts, 'name' | 'url' | 'lang'>;
  readonly path: string;
  readonly to: Destination;
  readonly target: NamedTarget;
  readonly items: readonly MovedItem[];
}

const namedTarget = (target: RedirectTarget): NamedTarget => {
  switch (target.page) {
    case 'article': {
      const { theme, year, month } = target.cycle;
      return target.item ? { page: 'item', name: target.item.name } : { page: 'article', theme, year, month };
    }
    case 'kind':
      return { page: 'kind', kind: target.group.kind };
    default:
      return target;
  }
};

const itemsOf = (target: RedirectTarget): readonly MovedItem[] =>
  target.page === 'article'
    ? target.cycle.items.map((item) => ({
        id: itemAnchor(item),
        formerIds: item.formerly ?? [],
        name: item.name,
        to: itemDestination(target.cycle, item),
      }))
    : [];

const targetName = (target: NamedTarget, { name, lang }: RedirectData['site'], words: Wording['site']) => {
  switch (target.page) {
    case 'article':
      return words.redirect.article(typeset(target.theme, lang), monthName(target, lang));
    case 'item':
      return typeset(target.name, lang);
    case 'kind':
      return typeset(words.kind.title(capitalised(target.kind, lang)), lang);
    case 'catalogue':
      return words.redirect.everything;
    case 'home':
      return typeset(name, lang);
  }
};

const redirectView = ({ site, path, to, target, items }: RedirectData, tools: Tools) => {
  const words = tools.wording.site;
  const style = assetPath(tools.templates, 'site.css');
  const { lang } = site;
  return {
    words: words.redirect,
    lang,
    title: words.page.title(words.redirect.title, typeset(site.name, lang)),
    canonical: absoluteAddress(site, to.path),
    href: addressFrom(path, to),
    name: targetName(target, site, words),
    style: style && linker(path)(style),
    items: items.map(({ id, formerIds, name, to: place }) => ({
      id,
      formerIds,
      name: typeset(name, lang),
      href: addressFrom(path, place),
    })),
  };
};

declare module '../render/templates.ts' {
  interface TemplateData {
    redirect: ReturnType<typeof redirectView>;
  }
}

const redirectPage = (data: RedirectData, tools: Tools): MadeDocument<Diagnostic> => ({
  content: documentText(tools.templates.render('redirect', redirectView(data, tools))),
});

/** A page that sends on at each address where another stood. */
export const redirects: PlanningChannel<'site'> = {
  name: 'redirects',
  where: 'site',
  plan: ({ box }) => {
    const { name, url, lang } = siteFactsOf(box.settings);
    const dataOf = ({ path, to, target }: Redirect): RedirectData =>
      defined({
        site: { name, url, lang },
        path,
        to,
        target: namedTarget(target),
        items: itemsOf(target),
      });
    return {
      documents: redirectsOf(box).map((one) => plannedDocument(one.path, 'page', dataOf(one), redirectPage)),
    };
  },
};
