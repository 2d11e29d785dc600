/** What a story calls its thing again and again, where the record has no such name: then the record lacks it, not the text. */
import type { Item } from '../../../model/box.ts';
import { itemAt } from '../../../text/item-at.ts';
import type { Language, Word } from '../../language/language.ts';
import { adverbs, emptyWords, prepositions, relatives } from '../../language/lexicon/grammar.ts';
import { describes } from '../phrases/name-words.ts';
import { itemWordsOf } from '../phrases/phrases.ts';
import { adjacent } from '../text/adjacent.ts';
import type { Passage } from '../text/passage.ts';

/** A name that the text uses, and how often. */
export interface CalledName {
  readonly name: string;
  readonly times: number;
}

/** Less often it may be another thing of the same sort, which the story speaks of by the way. A choice of ours. */
const LEAST_TIMES = 3;

const isSmall = ({ folded }: Word): boolean =>
  emptyWords.has(folded) || adverbs.has(folded) || prepositions.has(folded) || relatives.has(folded);

/**
 * Names of two words in an item's own story, the second being the head of its kind, that stand there three times or more:
 * "bench scraper" of a dough scraper. English alone, because elsewhere a noun is written in one word.
 */
export const calledOf = (
  item: Item,
  passages: readonly Passage[],
  language: Language,
): readonly CalledName[] => {
  const head = language.words(item.kind).at(-1);
  if (!language.english || !head) return [];
  const known = new Set(itemWordsOf(item, language).facts.map(({ key }) => key));
  const times = new Map<string, CalledName>();
  for (const passage of passages) {
    if (passage.item !== item.slug || !passage.running || passage.field !== undefined) continue;
    for (const [i, word] of passage.words.entries()) {
      const before = passage.words[i - 1];
      if (word.key !== head.key || !before || before.sentence !== word.sentence || !adjacent(passage, i - 1))
        continue;
      const isName = before.text !== before.text.toLowerCase();
      if (isName || isSmall(before) || describes(before) || known.has(before.key)) continue;
      const name = `${before.text} ${itemAt(head.text.split(' '), 0).toLowerCase()}`;
      times.set(before.key, { name, times: (times.get(before.key)?.times ?? 0) + 1 });
    }
  }
  return [...times.values()].filter((one) => one.times >= LEAST_TIMES).sort((a, b) => b.times - a.times);
};
