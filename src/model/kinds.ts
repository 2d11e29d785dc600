/** Items of one kind: the same noun, whatever its number and capitals. */
import { primaryLanguage } from '../text/language-tag.ts';
import { remembered } from '../text/remembered.ts';
import { singularOf } from '../text/singular.ts';
import type { Box, Item, Moment } from './box.ts';
import { slugOf } from './slug.ts';

/** Items that share a kind, at least one. */
export interface KindGroup {
  /** As the oldest item of the kind has it, so that later spellings never move the kind's page. */
  readonly kind: string;
  readonly slug: string;
  /** Oldest first. */
  readonly items: readonly Item[];
}

/** With fewer, a page of its own would say no more than the articles do. */
const ENOUGH_FOR_A_PAGE = 3;

/** The same for the singular and the plural of an English kind; in other languages only capitals and signs are passed over. */
export const kindKey = (kind: string, lang: string): string => {
  const slug = slugOf(kind) || kind.toLowerCase();
  return primaryLanguage(lang) === 'en' ? slug.split('-').map(singularOf).join('-') : slug;
};

interface Kinds {
  readonly groups: readonly KindGroup[];
  readonly byKey: ReadonlyMap<string, KindGroup>;
  /** By a kind as an item of the box has it, since working out its key takes time. */
  readonly bySpelling: ReadonlyMap<string, KindGroup>;
  readonly withPage: readonly KindGroup[];
}

const fillsPage = ({ slug, items }: KindGroup): boolean => slug !== '' && items.length >= ENOUGH_FOR_A_PAGE;

/** All that is known of a box's kinds, in one pass over its items: every item of every page asks. */
const kindsOf = remembered((box: Box): Kinds => {
  const { lang } = box.settings;
  const itemsByKey = new Map<string, Item[]>();
  const keys = new Map<string, string>();
  for (const { items: packed } of box.cycles)
    for (const item of packed) {
      const key = keys.get(item.kind) ?? kindKey(item.kind, lang);
      keys.set(item.kind, key);
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
  const bySpelling = new Map(
    [...keys].flatMap(([kind, key]) => {
      const group = byKey.get(key);
      return group ? [[kind, group]] : [];
    }),
  );
  const order = new Intl.Collator(lang).compare;
  const groups = [...byKey.values()].sort((a, b) => order(a.kind, b.kind));
  return { byKey, bySpelling, groups, withPage: groups.filter(fillsPage) };
});

/** Every item under its kind: kinds in the language's order of letters, items oldest first. */
export const kindGroups = (box: Box): readonly KindGroup[] => kindsOf(box).groups;

/** The kinds that have a page of their own, those that three or more items share, in the language's order of letters. */
export const kindsWithPage = (box: Box): readonly KindGroup[] => kindsOf(box).withPage;

/** The group an item's kind belongs to; undefined for a kind that the box does not hold. */
export const kindGroupOf = (box: Box, kind: string): KindGroup | undefined =>
  kindsOf(box).bySpelling.get(kind) ?? kindsOf(box).byKey.get(kindKey(kind, box.settings.lang));

/** By kind, the moment from which enough of its items are unsealed for a page; only kinds that will ever have one. */
const pageMoments = remembered((box: Box): ReadonlyMap<KindGroup, Moment> => {
  const reveals = new Map(box.cycles.map(({ id, reveal = Number.POSITIVE_INFINITY }) => [id, reveal]));
  return new Map(
    kindsOf(box).withPage.map((group) => {
      const inOrder = group.items.map(({ cycle }) => reveals.get(cycle) ?? 0).sort((a, b) => a - b);
      return [group, inOrder[ENOUGH_FOR_A_PAGE - 1] ?? Number.POSITIVE_INFINITY];
    }),
  );
});

/** Whether a kind has a page of its own; `asOf`, where what is sealed at that moment is left out of the count. */
export const hasKindPage = (box: Box, kind: string, asOf?: Moment): boolean => {
  const group = kindGroupOf(box, kind);
  if (!group || !fillsPage(group)) return false;
  return asOf === undefined || asOf >= (pageMoments(box).get(group) ?? Number.POSITIVE_INFINITY);
};
