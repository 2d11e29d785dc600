/** Whom a whole box is for, where it is an animal: what a shopper adds to the name of everything in it. */
import type { Item } from '../../../model/box.ts';
import type { Language } from '../../language/language.ts';
import { pets } from '../../language/lexicon/settings.ts';

/** "dog" of a box "for dogs who go out in all weathers", in the singular; undefined where its words name no animal so. */
export const audienceOf = (description: string, language: Language): string | undefined => {
  if (!language.english) return undefined;
  const words = language.words(description);
  const at = words.findIndex(({ key }, i) => pets.has(key) && words[i - 1]?.folded === 'for');
  return words[at]?.key;
};

/** The animal that an item's kind begins with: "dog" of a dog drying coat. */
export const ownAudienceOf = ({ kind }: Item, language: Language): string | undefined => {
  const [first, second] = language.words(kind);
  return first && second && pets.has(first.key) ? first.key : undefined;
};
