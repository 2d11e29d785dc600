/** The phrases a shopper would type to find an item, weightiest first. */
import type { Item, Search } from '../../../model/box.ts';
import type { Language, Word } from '../../language/language.ts';
import { titledGoods, wideGoods } from '../../language/lexicon/goods.ts';
import { candidateOf, type PhraseCandidate } from './candidate.ts';
import { kindPhrasesOf } from './kind-phrases.ts';
import { asTyped, type NameOrigin, type ReadName, readName, titleOf } from './name.ts';
import { isColour, isGeneral, isGoods, isMaterial } from './name-words.ts';
import type { Origin, Phrase } from './phrase.ts';
import { statedQualities } from './stated-qualities.ts';
import { type ItemWords, searchIndexOf, type TypedSearches, typedFor } from './typed.ts';

/**
 * What phrases weigh by where they are from, where nobody knows what was typed: of ten people who look for the
 * thing, so many type it so. Common practice, no source: the common noun is what most type; the name, what those
 * type who saw the thing; all other names together divide a few between them, so that an owner who lists many
 * asks no more of the article than one who lists one; a quality before the noun narrows what is meant, and colour
 * and maker are looked for mostly by those who know the thing already.
 */
const PHRASE_WEIGHTS = { kind: 4, name: 3, also: 2, material: 0.5, color: 0.25, brand: 0.25 } as const;

/** A kind that names a shelf rather than the thing is typed by few: most type the name's own noun. */
const BROADER_KIND_WEIGHT = 1;

/** Whether one of two nouns holds the other, singular and plural alike: "hand salve tin" and "hand salve". */
const namesIt = (one: string, other: string, language: Language): boolean => {
  const [a, b] = [one, other].map((noun) => keyOf(language.words(noun))) as [string, string];
  return a.includes(b) || b.includes(a);
};

/** The same for what a name gives beside itself: the more words, the fewer people type them. */
const NAME_WEIGHTS: Readonly<Record<NameOrigin, number>> = {
  'name without its measure': PHRASE_WEIGHTS.name,
  name: PHRASE_WEIGHTS.name,
  'kind in the name': 2,
  'thing by itself': 0.5,
  'end of the name': 0.5,
  'name without its other qualities': 0.5,
  'whom or what it is for': 0.5,
  'kind with its size': 0.25,
};

/** A name with more words than this before its kind is known to those alone who read it off the card. */
const QUALITIES_OF_A_NAME = 2;
const LONG_NAME_WEIGHT = 1;

/** Who types a title knows the thing already; who does not, types its kind. */
const TITLE_WEIGHT = 2;
const TITLE_WITH_KIND_WEIGHT = 0.5;
/** A longer title is typed without its kind. */
const WORDS_BEFORE_KIND = 3;

/**
 * What the phrase that was typed oftenest of all in the file gains, as much as the kind has by default; the others
 * by their share of it.
 */
const SEARCH_WEIGHT = 4;

/** More than a dozen phrases cannot be written about five things without crowding. Common practice, no source. */
const MOST_PHRASES = 12;

/** House plant, house-plant and houseplant are one, and so are singular and plural. */
const keyOf = (words: readonly Word[]): string => words.map(({ key }) => key).join('');

/** The head of a phrase taken as it is: the word that its own reading says. */
const headIn = (words: readonly Word[], head: string): number => {
  const at = words.findLastIndex(({ text }) => text.toLowerCase() === head);
  return at < 0 ? words.length - 1 : at;
};

/**
 * Whether an item's name is its title and says nothing of what it is: the kind does. So it is of works and varieties, as
 * "The Governess of Saltmere" of kind novel, unless the name says such a thing itself.
 */
const isTitle = (item: Item, name: ReadName, kind: ReadName, language: Language): boolean => {
  const { key } = language.word(kind.head);
  return (
    titledGoods.has(key) &&
    !titledGoods.has(language.word(name.head).key) &&
    !language.words(item.name).some((word) => word.key === key)
  );
};

/** What a record calls a thing, taken apart. */
interface ReadItem {
  readonly name: ReadName;
  readonly kind: ReadName;
  readonly titled: boolean;
}

/** English alone: undefined in another language. */
const readItem = (item: Item, language: Language): ReadItem | undefined => {
  if (!language.english) return undefined;
  const name = readName(item.name, language, { kind: item.kind, maker: item.brand });
  const kind = readName(item.kind, language);
  return { name, kind, titled: isTitle(item, name, kind, language) };
};

/** What an item is called and what is known of it, as typed phrases are held against it. */
export const itemWordsOf = (item: Item, language: Language, read = readItem(item, language)): ItemWords => {
  const said = [item.name, item.kind, ...item.also, item.brand, ...item.material, item.color ?? ''];
  const own = read && read.name.kind !== '' && !read.titled ? [read.name.kind] : [];
  const texts = [item.kind, ...item.also, ...own];
  return {
    names: texts.map((text) => language.words(text)).filter((words) => words.length > 0),
    facts: said.flatMap((text) => language.words(text)),
    colours: language.words(item.color ?? ''),
    materials: item.material.flatMap((text) => language.words(text)),
  };
};

/**
 * Whether the record's kind is a wider word than the name's own noun: "hand tool" of a dibber, "seed packet" of sweet pea
 * seeds. It is none where it says the noun itself, and the noun is none where it is no thing that is sold ("cat cave").
 */
const isWider = (kind: ReadName, name: ReadName, language: Language): boolean => {
  const [own, wider] = [name, kind].map(({ head }) => language.word(head)) as [Word, Word];
  return (
    wideGoods.has(wider.key) &&
    own.key !== wider.key &&
    isGoods(own) &&
    !namesIt(name.kind, kind.kind, language)
  );
};

/** What a record's field says, taken whole. */
const asWritten = (
  value: string,
  origin: Origin,
  weight: number,
  language: Language,
): readonly PhraseCandidate[] => {
  const text = asTyped(value);
  const head = language.headFirst ? 0 : headIn(language.words(text), readName(value, language).head);
  return candidateOf(text, head, origin, weight, language);
};

const ofTitle = (item: Item, kind: ReadName, language: Language): readonly PhraseCandidate[] => {
  const title = titleOf(item.name, language);
  const { length } = language.words(title);
  const withKind =
    length <= WORDS_BEFORE_KIND
      ? candidateOf(
          `${title} ${kind.head}`,
          length,
          { from: 'name', part: 'name without its other qualities' },
          TITLE_WITH_KIND_WEIGHT,
          language,
        )
      : [];
  return [
    ...candidateOf(title, length - 1, { from: 'name', part: 'name' }, TITLE_WEIGHT, language),
    ...withKind,
  ];
};

/** `isNoun`: the name's own noun is what most people type. */
const ofName = (
  name: ReadName,
  kind: ReadName,
  isNoun: boolean,
  language: Language,
): readonly PhraseCandidate[] => {
  const noun = language.words(name.kind);
  const head = language.word(name.head);
  // A "cat cave" is no cave: nobody looks for it by that word, nor for caves for cats.
  const isFigure = !isGoods(head) && language.word(kind.head).key !== head.key;
  return name.phrases.flatMap(({ text, origin, head: at }) => {
    const words = language.words(text);
    const part: Origin = { from: 'name', part: origin };
    if (isNoun && keyOf(words) === keyOf(noun))
      return candidateOf(text, at, part, PHRASE_WEIGHTS.kind, language);
    const isAlone = words.length === 1 && name.phrases.length > 1;
    // "Pot" of a terracotta pot: people say what for, or what of.
    if (isAlone && (isFigure || words.every(isGeneral))) return [];
    if (isFigure && origin === 'whom or what it is for') return [];
    const before = words.filter(({ folded }) => folded !== 'and').length - noun.length;
    const isLong = origin === 'name without its measure' && before > QUALITIES_OF_A_NAME;
    const weight = isLong ? LONG_NAME_WEIGHT : NAME_WEIGHTS[isAlone ? 'thing by itself' : origin];
    return candidateOf(text, at, part, weight, language);
  });
};

/** `base`: the noun that they stand before. */
const ofQualities = (item: Item, base: string, language: Language): readonly PhraseCandidate[] => {
  const noun = language.words(base);
  const head = noun.at(-1);
  if (!head) return [];
  return statedQualities(item, head, language).flatMap(({ from, text, value }) => {
    const own = language.words(text);
    // A word is not said twice, and one material or colour is enough: no "beech wooden toy".
    if (own.some(({ key }) => noun.some((word) => word.key === key))) return [];
    if (from !== 'brand' && noun.some((word) => isMaterial(word) || isColour(word))) return [];
    const whole = asTyped(`${text} ${base}`);
    return candidateOf(whole, own.length + noun.length - 1, { from, value }, PHRASE_WEIGHTS[from], language);
  });
};

const candidatesOf = (
  item: Item,
  read: ReadItem | undefined,
  language: Language,
  audience: string | undefined,
): readonly PhraseCandidate[] => {
  const others = item.also.flatMap((value) =>
    asWritten(value, { from: 'also', value }, PHRASE_WEIGHTS.also / item.also.length, language),
  );
  if (!read) return [...asWritten(item.kind, { from: 'kind' }, PHRASE_WEIGHTS.kind, language), ...others];

  const { name, kind, titled } = read;
  const widened = !titled && isWider(kind, name, language);
  // "iron hand rake", not "iron hand tool": where name and kind differ, the name's is the nearer word.
  const base = widened ? name.kind : asTyped(item.kind);
  return [
    ...asWritten(item.kind, { from: 'kind' }, widened ? BROADER_KIND_WEIGHT : PHRASE_WEIGHTS.kind, language),
    ...others,
    ...(titled ? ofTitle(item, kind, language) : ofName(name, kind, widened, language)),
    ...(titled || widened ? [] : kindPhrasesOf(item, name, language, audience)),
    ...ofQualities(item, base, language),
  ];
};

const typedCandidates = (
  item: Item,
  read: ReadItem | undefined,
  index: TypedSearches,
  language: Language,
): readonly PhraseCandidate[] => {
  const totals = new Map<string, { count: number; first: PhraseCandidate }>();
  for (const { text, head, search } of typedFor(itemWordsOf(item, language, read), index)) {
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
 * The phrases of an item: its kind, its name with and without its qualities or, where that is a title, whole, its other
 * names, its kind with its material, colour and maker, and what people typed for it; at most a dozen, the weightiest first, ties in the
 * order of the alphabet. `audience` is the animal that the whole box is for. In other languages than English: kind, other
 * names and what people typed.
 */
export const phrasesOf = (
  item: Item,
  searches: TypedSearches | readonly Search[],
  language: Language,
  audience?: string,
): readonly Phrase[] => {
  const index = 'byEnding' in searches ? searches : searchIndexOf(searches, language);
  const read = readItem(item, language);
  const phrases = merged(
    candidatesOf(item, read, language, audience),
    typedCandidates(item, read, index, language),
  );
  return [...phrases]
    .sort((a, b) => b.weight - a.weight || (a.text < b.text ? -1 : a.text > b.text ? 1 : 0))
    .slice(0, MOST_PHRASES);
};
