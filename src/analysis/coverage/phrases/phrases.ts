/** The phrases a shopper would type to find an item, weightiest first. */
import type { Item, Search } from '../../../model/box.ts';
import type { Language, Word } from '../../language/language.ts';
import { qualitiesIn } from '../../language/qualities.ts';
import { asTyped, type NameOrigin, readName } from './name.ts';
import type { Origin, Phrase } from './phrase.ts';
import { type ItemWords, searchIndexOf, type TypedSearches, typedFor } from './typed.ts';

/**
 * What phrases weigh by where they are from, where nobody knows what was typed: of ten people who look for the
 * thing, so many type it so. Common practice, no source: the common noun is what most type; the name, what those
 * type who saw the thing; all other names together divide a few between them, so that an owner who lists many
 * asks no more of the article than one who lists one; a quality before the noun narrows what is meant, and colour
 * and maker are looked for mostly by those who know the thing already.
 */
const PHRASE_WEIGHTS = { kind: 4, name: 3, also: 2, material: 0.5, color: 0.25, brand: 0.25 } as const;

/**
 * A kind that the name does not say ("hand tool" of a dibber) is a wider word, which names a shelf rather than the
 * thing. Most people then type the name's own noun.
 */
const BROADER_KIND_WEIGHT = 1;

/** Whether one of two nouns holds the other, singular and plural alike: "hand salve tin" and "hand salve". */
const namesIt = (one: string, other: string, language: Language): boolean => {
  const [a, b] = [one, other].map((noun) => keyOf(language.words(noun))) as [string, string];
  return a.includes(b) || b.includes(a);
};

/** The same for what a name gives beside itself: the whole name is known to few. */
const NAME_WEIGHTS: Readonly<Record<NameOrigin, number>> = {
  'name without its measure': PHRASE_WEIGHTS.name,
  name: PHRASE_WEIGHTS.name,
  'kind in the name': 2,
  'both things of the name': 0.5,
  'name with what follows it': 0.5,
  'what it is for, before the thing': 0.5,
  'name without its other qualities': 0.5,
};

/**
 * What the phrase that was typed oftenest of all in the file gains, as much as the kind has by default; the others
 * by their share of it.
 */
const SEARCH_WEIGHT = 4;

/** More than a dozen phrases cannot be written about five things without crowding. Common practice, no source. */
const MOST_PHRASES = 12;

/** Longer materials, colours and makers are descriptions: nobody types them before a noun. */
const MOST_WORDS_OF_A_QUALITY = 3;

interface PhraseCandidate {
  readonly text: string;
  readonly words: readonly Word[];
  readonly head: number;
  readonly origin: Origin;
  readonly weight: number;
}

/** House plant, house-plant and houseplant are one, and so are singular and plural. */
const keyOf = (words: readonly Word[]): string => words.map(({ key }) => key).join('');

/** The head of a phrase taken as it is: the word that its own reading says. */
const headIn = (words: readonly Word[], head: string): number => {
  const at = words.findLastIndex(({ text }) => text.toLowerCase() === head);
  return at < 0 ? words.length - 1 : at;
};

/**
 * The first of several qualities, if it may stand before a noun: "tan; flowers in mixed pinks" → "tan". The others are of
 * the thing's parts.
 */
const firstQuality = (text: string, language: Language): string => {
  const [first = ''] = qualitiesIn(text);
  const last = language.words(first).at(-1);
  // "Tulip bulbs", "ink pens": parts of the thing, not what it is made of.
  return last === undefined || last.key !== last.folded ? '' : first;
};

const itemWordsOf = (item: Item, language: Language): ItemWords => {
  const name = readName(item.name, language);
  const said = [item.name, item.kind, ...item.also, item.brand, ...item.material, item.color ?? ''];
  const texts = [item.kind, ...item.also, ...(language.english && name.kind ? [name.kind] : [])];
  return {
    names: texts.map((text) => language.words(text)).filter((words) => words.length > 0),
    facts: said.flatMap((text) => language.words(text)),
    colours: language.words(item.color ?? ''),
    materials: item.material.flatMap((text) => language.words(text)),
  };
};

const candidatesOf = (item: Item, language: Language): readonly PhraseCandidate[] => {
  const candidates: PhraseCandidate[] = [];
  const add = (text: string, head: string | number, origin: Origin, weight: number): void => {
    const read = language.words(text);
    if (read.length === 0) return;
    const at = typeof head === 'number' ? Math.min(head, read.length - 1) : headIn(read, head);
    candidates.push({ text, words: read, head: at, origin, weight });
  };
  const taken = (text: string, origin: Origin, weight: number): void => {
    add(asTyped(text), readName(text, language).head, origin, weight);
  };

  const name = readName(item.name, language);
  const kind = readName(item.kind, language);
  const isBroader = language.english && !namesIt(name.kind, kind.kind, language);
  taken(item.kind, { from: 'kind' }, isBroader ? BROADER_KIND_WEIGHT : PHRASE_WEIGHTS.kind);
  for (const other of item.also)
    taken(other, { from: 'also', value: other }, PHRASE_WEIGHTS.also / item.also.length);
  if (!language.english) return candidates;

  for (const { text, origin, head } of name.phrases) {
    const isKind = isBroader && origin === 'kind in the name';
    add(text, head, { from: 'name', part: origin }, isKind ? PHRASE_WEIGHTS.kind : NAME_WEIGHTS[origin]);
  }

  // "iron hand rake", not "iron hand tool": where name and kind differ, the name's is the nearer word.
  const base = language.word(name.head).key === language.word(kind.head).key ? asTyped(item.kind) : name.kind;
  const baseWords = language.words(base);
  const qualify = (quality: string, from: 'material' | 'color' | 'brand', value: string): void => {
    const own = language.words(quality);
    const repeated = own.some(({ key }) => baseWords.some((word) => word.key === key));
    if (own.length === 0 || own.length > MOST_WORDS_OF_A_QUALITY || repeated) return;
    add(
      asTyped(`${quality} ${base}`),
      own.length + baseWords.length - 1,
      { from, value },
      PHRASE_WEIGHTS[from],
    );
  };
  const [material = ''] = item.material;
  qualify(firstQuality(material, language), 'material', material);
  if (item.color) qualify(firstQuality(item.color, language), 'color', item.color);
  // "Tolley of Cable Steps": the maker, without the address.
  const maker = item.brand.split(/\s(?:of|at|in|from|by)\s|[,;(]/i)[0] as string;
  qualify(maker, 'brand', item.brand);
  return candidates;
};

const typedCandidates = (
  item: Item,
  index: TypedSearches,
  language: Language,
): readonly PhraseCandidate[] => {
  const totals = new Map<string, { count: number; first: PhraseCandidate }>();
  for (const { text, head, search } of typedFor(itemWordsOf(item, language), index)) {
    const words = language.words(text);
    const key = keyOf(words);
    const origin: Origin = {
      from: 'search',
      count: search.count,
      ...(asTyped(search.phrase) !== text && { as: search.phrase }),
    };
    const known = totals.get(key);
    if (known) known.count += search.count;
    else
      totals.set(key, {
        count: search.count,
        first: { text, words, head: Math.min(head, words.length - 1), origin, weight: 0 },
      });
  }
  return [...totals.values()].map(({ count, first }) => ({
    ...first,
    weight: (SEARCH_WEIGHT * Math.min(count, index.most)) / index.most,
  }));
};

const isSameOrigin = (a: Origin, b: Origin): boolean => {
  if (a.from === 'kind') return b.from === 'kind';
  if (a.from === 'name') return b.from === 'name' && a.part === b.part;
  if (a.from === 'search') return b.from === 'search' && a.count === b.count && a.as === b.as;
  return a.from === b.from && a.value === b.value;
};

/** Phrases of one key made one: the weightiest of the record's own origins counts, and what was typed is added. */
const merged = (own: readonly PhraseCandidate[], typed: readonly PhraseCandidate[]): readonly Phrase[] => {
  const byKey = new Map<string, PhraseCandidate[]>();
  for (const candidate of [...own, ...typed]) {
    const key = keyOf(candidate.words);
    const there = byKey.get(key);
    if (there) there.push(candidate);
    else byKey.set(key, [candidate]);
  }
  return [...byKey.values()].map((candidates) => {
    const ranked = [...candidates].sort((a, b) => b.weight - a.weight);
    const weightOf = (all: readonly PhraseCandidate[]): number =>
      Math.max(0, ...all.map(({ weight }) => weight));
    const typedIn = candidates.filter(({ origin }) => origin.from === 'search');
    const ownIn = candidates.filter(({ origin }) => origin.from !== 'search');
    // The record's own spelling is kept before a typed one: it is how the article spells it.
    const shown = (ownIn[0] ?? typedIn[0]) as PhraseCandidate;
    const origins = ranked.map(({ origin }) => origin);
    return {
      text: shown.text,
      words: shown.words,
      head: shown.head,
      origins: origins.filter((one, i) => origins.findIndex((other) => isSameOrigin(other, one)) === i),
      weight: weightOf(ownIn) + weightOf(typedIn),
    };
  });
};

/**
 * The phrases of an item: its kind, its name with and without its qualities, its other names, its kind with its
 * material, colour and maker, and what people typed for it; at most a dozen, the weightiest first, ties in the
 * order of the alphabet. In other languages than English: kind, other names and what people typed.
 */
export const phrasesOf = (
  item: Item,
  searches: TypedSearches | readonly Search[],
  language: Language,
): readonly Phrase[] => {
  const index = 'byEnding' in searches ? searches : searchIndexOf(searches, language);
  const phrases = merged(candidatesOf(item, language), typedCandidates(item, index, language));
  return [...phrases]
    .sort((a, b) => b.weight - a.weight || (a.text < b.text ? -1 : a.text > b.text ? 1 : 0))
    .slice(0, MOST_PHRASES);
};
