/** Sentences as they might be written so that they name a thing: which words, in which place, on which line. */
import type { Location } from '../../../diagnostics/diagnostic.ts';
import { withArticle } from '../../../text/article.ts';
import { capital } from '../../../text/counting-words.ts';
import { itemAt, lastOf } from '../../../text/item-at.ts';
import { listInWords } from '../../../text/list-in-words.ts';
import type { Language } from '../../language/language.ts';
import { determiners, prepositions } from '../../language/lexicon/grammar.ts';
import { type EditAction, isClear } from '../coverage.ts';
import type { Phrase } from '../phrases/phrase.ts';
import { strengthOf } from '../standing/standing.ts';
import type { TalliedItem, TalliedPhrase } from '../standing/tally.ts';
import { adjacent } from '../text/adjacent.ts';
import { type Passage, whereIs, type ZonedWord, zoneFor } from '../text/passage.ts';
import { sentenceSpan } from '../text/sentence-text.ts';
import type { Zone } from '../text/zones.ts';
import { withCapitals } from './capitals.ts';
import type { TextChange } from './rewriting.ts';

/** A change that might be advised. */
export interface Rewrite {
  readonly zone: Zone;
  readonly at: Location;
  readonly change: TextChange;
  readonly action: EditAction;
  /** The sentence as it is and as it would be; of a short text the whole. */
  readonly before: string;
  readonly after: string;
}

/** What a rewrite is sought in: the article, and what one item says and where. */
export interface Sought {
  readonly passages: readonly Passage[];
  readonly item: TalliedItem;
  /** The item's phrases, each with its mentions. */
  readonly entries: readonly TalliedPhrase[];
  readonly language: Language;
}

/** A result of a search shows about so much of a summary. Common practice, no source. */
const LONGEST_SUMMARY = 160;

/** A sentence of fewer words is too short to take a longer name well. A choice of ours. */
const LEAST_SENTENCE = 7;

const isFrom = ({ origins }: Phrase, from: 'kind' | 'name'): boolean =>
  origins.some((origin) => origin.from === from);

/** Names that may be written, each of which by itself says what the thing is: its kind, and the parts of its name, the shortest first. */
const writableNames = ({ phrases }: TalliedItem): readonly Phrase[] =>
  phrases
    .filter((phrase) => strengthOf(phrase) === 1 && phrase.head === phrase.words.length - 1)
    .filter((phrase) => isFrom(phrase, 'kind') || isFrom(phrase, 'name'))
    .toSorted(
      (a, b) =>
        Number(isFrom(b, 'kind')) - Number(isFrom(a, 'kind')) ||
        a.words.length - b.words.length ||
        b.weight - a.weight ||
        (a.text < b.text ? -1 : 1),
    );

/** Whether a phrase speaks of several things: its head is in the plural. */
const isPlural = ({ words, head }: Phrase): boolean => words[head]?.key !== words[head]?.folded;

/** A phrase with its head in the number of another word of the same key. */
const inNumberOf = (phrase: Phrase, head: ZonedWord): string => {
  const last = phrase.words[phrase.head];
  if (!last || last.folded === head.folded || last.key !== head.key) return phrase.text;
  return phrase.text.slice(0, last.start) + head.text.toLowerCase() + phrase.text.slice(last.end);
};

/** The rewrite that puts `text` in place of a span of a passage; shown by its sentence, or whole where it is short. */
const rewriteAt = (
  number: number,
  passage: Passage,
  [start, end]: readonly [number, number],
  text: string,
  word: ZonedWord,
  action: EditAction,
): Rewrite => {
  const shown = passage.running
    ? sentenceSpan(passage, word.sentence)
    : { start: 0, end: passage.text.length };
  const head = passage.text.slice(shown.start, start);
  const tail = passage.text.slice(end, shown.end);
  return {
    zone: zoneFor(word, passage, passage.item ?? ''),
    at: whereIs(passage, word),
    change: { passage: number, start, end, text },
    action,
    before: passage.text.slice(shown.start, shown.end),
    after: head + text + tail,
  };
};

/** Puts a name in place of the bare head at a word; the article before it follows the name. */
const namedAt = ({ item }: Sought, number: number, passage: Passage, at: number, phrase: Phrase): Rewrite => {
  const head = itemAt(passage.words, at);
  // Words of the name that stand before its head already are taken up, not said twice.
  let first = at;
  const own = new Set(phrase.words.map(({ key }) => key));
  while (first > 0 && adjacent(passage, first - 1) && own.has(passage.words[first - 1]?.key ?? ''))
    first -= 1;
  const name = withCapitals(inNumberOf(phrase, head), item.capitals);
  const before = passage.words[first - 1];
  const follows = before && adjacent(passage, first - 1) && before.sentence === head.sentence;
  const start = itemAt(passage.words, first).start;
  const opensSentence = before?.sentence !== head.sentence;
  const written = opensSentence ? capital(name) : name;
  const article = follows && /^an?$/.test(before.folded) ? before : undefined;
  const determined = follows && determiners.has(before.folded) ? before : undefined;
  const now = passage.text.slice(determined?.start ?? start, head.end);
  const action = { kind: 'call by name', now } as const;
  return article
    ? rewriteAt(
        number,
        passage,
        [article.start, head.end],
        likeBefore(article.text, withArticle(name)),
        head,
        action,
      )
    : rewriteAt(number, passage, [start, head.end], written, head, action);
};

/** With a capital where what stood there before had one. */
const likeBefore = (before: string, text: string): string => (/^\p{Lu}/u.test(before) ? capital(text) : text);

/** Whether the sentence of a word has another word of a name already: said again it would be one too many. */
const isCrowded = ({ words }: Passage, at: number, phrase: Phrase): boolean => {
  const { sentence } = itemAt(words, at);
  const own = new Set(phrase.words.filter((_, i) => i !== phrase.head).map(({ key }) => key));
  return words.some((word) => word.sentence === sentence && own.has(word.key));
};

/** The bare heads of an item in a passage, each with the name that it may be replaced by. */
const bareHeads = (
  { entries, item }: Sought,
  number: number,
  passage: Passage,
): readonly { readonly at: number; readonly phrase: Phrase }[] => {
  const names = writableNames(item).filter(({ words }) => words.length > 1);
  const heads = new Set(
    entries.flatMap(({ mentions }) =>
      mentions
        .filter((one) => one.passage === number && one.grade === 'head only' && one.within === undefined)
        .map(({ from }) => from),
    ),
  );
  return [...heads]
    .sort((a, b) => a - b)
    .flatMap((at) => {
      const phrase = names.find(
        (name) => lastOf(name.words).key === passage.words[at]?.key && !isCrowded(passage, at, name),
      );
      return phrase ? [{ at, phrase }] : [];
    });
};

/** Puts the name in place of the pronoun that a text begins with. */
const forPronoun = ({ item }: Sought, number: number, passage: Passage): Rewrite | undefined => {
  const [first, second] = passage.words;
  const [phrase] = writableNames(item);
  if (!first || !second || !phrase || !adjacent(passage, 0)) return undefined;
  if (first.folded !== (isPlural(phrase) ? 'they' : 'it')) return undefined;
  const name = `The ${withCapitals(phrase.text, item.capitals)}`;
  return rewriteAt(number, passage, [first.start, first.end], name, first, {
    kind: 'call by name',
    now: first.text,
  });
};

/** Whether a place names an item clearly already. */
export const isNamedIn = (entries: readonly TalliedPhrase[], zone: Zone): boolean =>
  entries.some(
    ({ phrase, mentions }) =>
      strengthOf(phrase) === 1 && mentions.some((mention) => mention.zone === zone && isClear(mention)),
  );

/** The text of the item's first picture, begun with what it shows or with its head called by its name. */
export const inPicture = (sought: Sought): Rewrite | undefined => {
  if (isNamedIn(sought.entries, 'picture text')) return undefined;
  const { passages, item } = sought;
  for (const [number, passage] of passages.entries()) {
    if (passage.form !== 'picture' || passage.item !== item.slug || !passage.written) continue;
    const [bare] = bareHeads(sought, number, passage);
    if (bare) return namedAt(sought, number, passage, bare.at, bare.phrase);
    const [first] = passage.words;
    const [phrase] = writableNames(item);
    // "On a sill in March": what is on the sill can be said before it, and any other sentence would need to be known.
    if (!first || !phrase || !prepositions.has(first.folded) || first.start > 0) continue;
    const name = withCapitals(phrase.text, item.capitals);
    const begun = capital(isPlural(phrase) ? name : withArticle(name));
    const small = passage.text.slice(first.start, first.end).toLowerCase();
    return rewriteAt(number, passage, [first.start, first.end], `${begun} ${small}`, first, {
      kind: 'begin with it',
    });
  }
  return undefined;
};

/** The description, where its bare head or the pronoun that it begins with means the thing. */
export const inDescription = (sought: Sought): Rewrite | undefined => {
  if (isNamedIn(sought.entries, 'section')) return undefined;
  const { passages, item } = sought;
  const number = passages.findIndex(
    ({ item: slug, field, written, form }) =>
      slug === item.slug && field === 'description' && written && form === 'paragraph',
  );
  const passage = passages[number];
  if (!passage) return undefined;
  const [bare] = bareHeads(sought, number, passage);
  return bare ? namedAt(sought, number, passage, bare.at, bare.phrase) : forPronoun(sought, number, passage);
};

/** Whether a name may be put into a sentence of a story: not where the point is, in speech, or where it is crowded. */
const mayTakeName = (passage: Passage, at: number, phrase: Phrase): boolean => {
  const { sentence } = itemAt(passage.words, at);
  const words = passage.words.filter((word) => word.sentence === sentence);
  const isLast = lastOf(passage.words).sentence === sentence && sentence > 0;
  const { start, end } = sentenceSpan(passage, sentence);
  return (
    words.length >= LEAST_SENTENCE &&
    !isLast &&
    !/[“”„«»"]/.test(passage.text.slice(start, end)) &&
    !isCrowded(passage, at, phrase)
  );
};

/** One sentence of the item's own story. */
export const inStory = (sought: Sought): Rewrite | undefined => {
  if (isNamedIn(sought.entries, 'section')) return undefined;
  const { passages, item } = sought;
  let begun = false;
  for (const [number, passage] of passages.entries()) {
    if (passage.item !== item.slug || !passage.running || passage.field !== undefined || !passage.written)
      continue;
    const bare = bareHeads(sought, number, passage).find(({ at, phrase }) =>
      mayTakeName(passage, at, phrase),
    );
    if (bare) return namedAt(sought, number, passage, bare.at, bare.phrase);
    const [phrase] = writableNames(item);
    // Of a pronoun further on nobody can say what it means.
    const rewrite =
      !begun && phrase && mayTakeName(passage, 0, phrase) && forPronoun(sought, number, passage);
    if (rewrite) return rewrite;
    begun = true;
  }
  return undefined;
};

/**
 * A name as it is listed among others: with its article, where it is one thing; and with its kind behind it, where the
 * name alone does not say what it is, as that of a book or a tea.
 */
const listedName = ({ name, kind, phrases }: TalliedItem, { words, english }: Language): string => {
  const head = words(kind).at(-1)?.key;
  if (!words(name).some(({ key }) => key === head)) return `${name} (${kind})`;
  const own = phrases.find((phrase) => isFrom(phrase, 'name'));
  const isOne = own !== undefined && !isPlural(own) && !/^\d/.test(name);
  return english && isOne ? withArticle(name) : name;
};

/** The summary with as many of the things as fit, in the order of the telling; the owner's own words stay. */
export const summaryNaming = (
  passages: readonly Passage[],
  items: readonly TalliedItem[],
  named: ReadonlySet<string>,
  language: Language,
): { readonly rewrite: Rewrite; readonly slugs: readonly string[] } | undefined => {
  const number = passages.findIndex(
    ({ field, item, written }) => field === 'summary' && item === undefined && written,
  );
  const passage = passages[number];
  const first = passage?.words[0];
  const unnamed = items.filter(({ slug }) => !named.has(slug));
  if (!passage || !first || unnamed.length === 0) return undefined;
  const own = passage.text.trim();
  // What does not end as a sentence does would run into the list.
  if (!language.english || !/[.!?…][’”)]?$/u.test(own)) return undefined;
  const withList = (some: readonly TalliedItem[]): string => {
    const list = listInWords(
      some.map((item) => listedName(item, language)),
      language.tag,
    );
    return `${own} ${named.size === 0 ? 'In' : 'Also in'} the box: ${list}.`;
  };
  for (let count = unnamed.length; count > 0; count -= 1) {
    const some = unnamed.slice(0, count);
    const text = withList(some);
    if (text.length > LONGEST_SUMMARY) continue;
    const rewrite = rewriteAt(number, passage, [0, passage.text.length], text, first, {
      kind: 'name the things',
    });
    return {
      rewrite: { ...rewrite, before: passage.text, after: text },
      slugs: some.map(({ slug }) => slug),
    };
  }
  return undefined;
};
