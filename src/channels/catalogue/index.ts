/**
 * The catalogue: every item of every unsealed cycle, grouped by cycle, with an index by kind; and the index that its
 * search is asked of. The page is put together from parts, so that a word in one story makes one cycle's words anew and
 * no list.
 */
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { spareOnSale } from '../../model/calls.ts';
import { CATALOGUE_PATH } from '../../render/addresses.ts';
import { hashedPath } from '../../render/assets.ts';
import { fragmentHtml } from '../../render/document.ts';
import type { Html } from '../../render/html.ts';
import type { MadeDocument } from '../../render/output.ts';
import { linker, pageText } from '../../render/page.ts';
import { framesOf, type PageFrame } from '../../render/site-facts.ts';
import type { Asset, Templates } from '../../render/templates.ts';
import { primaryLanguage } from '../../text/language-tag.ts';
import {
  colourSheet,
  type PlannedDocument,
  type PlanningChannel,
  plannedDocument,
  type Tools,
} from '../channel.ts';
import { facetsFragment } from './facets.ts';
import { HEAD_NAME, indexPath, searchFragments, storyName } from './search.ts';
import { kindFragments, sectionFragment } from './sections.ts';

interface CatalogueData {
  readonly frame: PageFrame;
  /** Items. */
  readonly count: number;
  /** Cycles, those without an item too. */
  readonly cycleCount: number;
  /** Sections among the contents. */
  readonly sections: number;
  /** Site path of the search's script; without it the page does without a search. */
  readonly script?: string;
}

/** The contents that the page is put together from, in the order of its fragments. */
interface Parts {
  readonly kinds: Html;
  readonly graph: Html;
  readonly sections: readonly Html[];
  /** Of the search. */
  readonly facets: Html;
  readonly head: string;
  readonly stories: readonly string[];
}

const partsOf = (sections: number, contents: readonly string[]): Parts => {
  const [kinds = '', graph = '', ...others] = contents;
  const [facets = '', head = '', ...stories] = others.slice(sections);
  return {
    kinds: fragmentHtml(kinds),
    graph: fragmentHtml(graph),
    sections: others.slice(0, sections).map(fragmentHtml),
    facets: fragmentHtml(facets),
    head,
    stories,
  };
};

const searchView = (script: string, { facets, head, stories }: Parts, { wording }: Tools) => {
  const link = linker(CATALOGUE_PATH);
  return {
    words: wording.site.search,
    action: link(CATALOGUE_PATH),
    script: link(script),
    head: link(indexPath(HEAD_NAME, head)),
    stories: stories.map((content, i) => link(indexPath(storyName(i), content))).join(' '),
    facets,
  };
};

const catalogueView = ({ count, cycleCount, script }: CatalogueData, parts: Parts, tools: Tools) => ({
  words: tools.wording.site.catalogue,
  count,
  cycleCount,
  search: script === undefined ? undefined : searchView(script, parts, tools),
  kinds: parts.kinds,
  sections: parts.sections,
});

declare module '../../render/templates.ts' {
  interface TemplateData {
    catalogue: ReturnType<typeof catalogueView>;
    'catalogue-search': ReturnType<typeof searchView>;
  }
}

const cataloguePage = (
  data: CatalogueData,
  tools: Tools,
  [colours = '', ...contents]: readonly string[],
): MadeDocument<Diagnostic> => {
  const { frame, count, cycleCount, sections } = data;
  const words = tools.wording.site.catalogue;
  const parts = partsOf(sections, contents);
  return {
    content: pageText(
      {
        frame,
        path: CATALOGUE_PATH,
        title: words.title(count, cycleCount),
        description: words.description(frame.site.name),
        type: 'website',
        styles: ['lists.css'],
        colours,
        body: tools.templates.render('catalogue', catalogueView(data, parts, tools)),
        graph: parts.graph,
      },
      tools,
    ),
  };
};

/** The script of a language, or the one that knows no stems. */
const scriptFor = ({ scripts }: Templates, lang: string): Asset | undefined => {
  const primary = primaryLanguage(lang);
  return (
    scripts.find(({ path }) => path === `search.${primary}.js`) ??
    scripts.find(({ path }) => path === 'search.js')
  );
};

const scriptFile = (lang: string, { templates }: Tools): MadeDocument<Diagnostic> => {
  const script = scriptFor(templates, lang);
  if (!script) throw new Error(`Expected a script of the search for ${lang}`);
  return { content: script.bytes };
};

/** The catalogue, with its search where the program was compiled for browsers. */
export const catalogue: PlanningChannel<'site'> = {
  name: 'catalogue',
  where: 'site',
  plan: ({ box, asOf, templates }) => {
    const { palette, lang, timeZone } = box.settings;
    const newestFirst = [...box.cycles].reverse();
    // Entries stand in the index's order, by construction: both are of this one list.
    const listed = newestFirst.filter(({ items }) => items.length > 0);
    const items = listed.flatMap((cycle) => cycle.items);
    const kinds = kindFragments(box);
    const found = scriptFor(templates, lang);
    const script = found && hashedPath('search.js', found.bytes);
    const search = searchFragments(box, listed);
    const onSale = items.filter((item) => spareOnSale(item, asOf, timeZone)).length;
    const data: CatalogueData = {
      frame: framesOf(box, asOf).frame(),
      count: items.length,
      cycleCount: box.cycles.length,
      sections: listed.length,
      ...(script !== undefined && { script }),
    };
    const of = [
      colourSheet(palette),
      kinds.index,
      kinds.graph,
      ...listed.map((cycle) => sectionFragment(box, cycle, asOf)),
      ...(script === undefined
        ? []
        : [facetsFragment(box, newestFirst, onSale), search.head, ...search.stories]),
    ];
    const documents: readonly PlannedDocument[] = [
      plannedDocument(CATALOGUE_PATH, 'page', data, cataloguePage, of),
      ...(script === undefined ? [] : [plannedDocument(script, 'asset', lang, scriptFile)]),
    ];
    return { documents };
  },
};
