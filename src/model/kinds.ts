/** Items of one kind: the same noun, whatever its number and capitals. */
import { singularOf } from '../text/singular.ts';
import type { Box, Item, Moment } from './box.ts';
import { isSealed } from './seal.ts';
import { slugOf } from './slug.ts';

export interface KindGroup {
  /** As the oldest item of the kind has it, so that later spellings never move the kind's page. */
  readonly kind: string;
  readonly slug: string;
  /** Oldest first. */
  readonly items: readonly Item[];
}

/** With fewer, a page of its own would say no more than the articles do. */
const ENOUGH_FOR_A_PAGE = 3;

const isEnglish = (lang: string): boolean => /^en(?:-|$)/i.test(lang);

/** The same for the singular and the plural of an English kind; in other languages only capitals and signs are passed over. */
export const kindKey = (kind: string, lang: string): string => {
  const slug = slugOf(kind) || kind.toLowerCase();
  return isEnglish(lang) ? slug.split('-').map(singularOf).join('-') : slug;
};

interface Kinds {
  readonly groups: readonly KindGroup[];
  readonly byKey: ReadonlyMap<string, KindGroup>;
}

/** A box never changes, so what follows from it is found once: every item of every page asks. */
const found = new WeakMap<Box, Kinds>();

const kindsOf = (box: Box): Kinds => {
  const known = found.get(box);
  if (known) return known;
  const { lang } = box.settings;
  const itemsByKey = new Map<string, Item[]>();
  for (const item of box.cycles.flatMap((cycle) => cycle.items)) {
    const key = kindKey(item.kind, lang);
    const items = itemsByKey.get(key);
    if (items) items.push(item);
    else itemsByKey.set(key, [item]);
  }
  const byKey = new Map(
    [...itemsByKey].map(([key, items]) => {
      const kind = items[0]?.kind ?? '';
      return [key, { kind, slug: slugOf(kind), items }];
    }),
  );
  const order = new Intl.Collator(lang).compare;
  const kinds = { byKey, groups: [...byKey.values()].sort((a, b) => order(a.kind, b.kind)) };
  found.set(box, kinds);
  return kinds;
};

/** Every item under its kind: kinds in the language's order of letters, items oldest first. */
export const kindGroups = (box: Box): readonly KindGroup[] => kindsOf(box).groups;

const fillsPage = ({ slug, items }: KindGroup): boolean => slug !== '' && items.length >= ENOUGH_FOR_A_PAGE;

/** The kinds that have a page of their own: those that three or more items share. */
export const kindsWithPage = (box: Box): readonly KindGroup[] => kindGroups(box).filter(fillsPage);

/** The group an item's kind belongs to; undefined for a kind that the box does not hold. */
export const kindGroupOf = (box: Box, kind: string): KindGroup | undefined =>
  kindsOf(box).byKey.get(kindKey(kind, box.settings.lang));

/** Whether a kind has a page of its own; `asOf`, where what is sealed at that moment is left out of the count. */
export const hasKindPage = (box: Box, kind: string, asOf?: Moment): boolean => {
  const group = kindGroupOf(box, kind);
  if (!group) return false;
  if (asOf === undefined) return fillsPage(group);
  const sealed = new Set(box.cycles.filter((cycle) => isSealed(cycle, asOf)).map(({ id }) => id));
  return fillsPage({ ...group, items: group.items.filter((item) => !sealed.has(item.cycle)) });
};
