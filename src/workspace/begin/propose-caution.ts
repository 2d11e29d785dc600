/** What a thing that is begun can do harm as: asked once too often rather than once too seldom. */

import { goods } from '../../analysis/language/lexicon/goods.ts';
import { ambiguousFoods, foods } from '../../analysis/language/lexicon/wordnet/foods.ts';
import { devices, homeware, wearables } from '../../analysis/language/lexicon/wordnet/goods.ts';
import {
  harmInName,
  headOf,
  isForAnimals,
  isForChildren,
  isPortion,
  suggestedCategory,
} from '../../content/hurtful-kinds.ts';
import type { Category } from '../../content/vocabulary.ts';
import { fold } from '../../text/fold.ts';

/** Heads that no lexicon of goods has, and that neither hurt nor are eaten. Common usage, no source. */
const HARMLESS = new Set(
  `scoop funnel shaker roll label board yarn skein thread lead print stamp sticker tag comic zine postcard poster pattern
   tool mould mold tray caddy infuser`.split(/\s+/),
);

/** These may be full or empty, and only the owner knows. */
const VESSELS = new Set('tin jar bottle tub'.split(' '));

/** A name without the measures and remarks behind it. */
const bareName = (name: string): string => name.split(/[,(]/)[0]?.trim() ?? '';

/**
 * The category of a thing's cautions: what its kind says; else what its name says as a whole; else any word of the name,
 * where its noun is none of the made things that such words only describe: a tea strainer is not drunk.
 */
export const proposeCaution = ({
  name,
  kind,
  among,
}: {
  readonly name: string;
  readonly kind: string;
  /** What its list calls all its things, as "Soap": an oat bar among them is none to eat. */
  readonly among?: string | undefined;
}): Category | undefined => {
  const ofAll = among === undefined ? undefined : suggestedCategory(among);
  if (ofAll && isPortion(fold(headOf(kind || bareName(name))))) return ofAll;
  const said = suggestedCategory(kind) ?? suggestedCategory(bareName(name));
  if (said) return said;
  if (isForChildren(name)) return 'children';
  const isMade = [headOf(kind), headOf(bareName(name))].some((word) => {
    const head = fold(word);
    if (isPortion(head) || VESSELS.has(head)) return false;
    return [wearables, homeware, devices, goods, HARMLESS].some((lexicon) => lexicon.has(head));
  });
  if (isMade) return undefined;
  const head = fold(headOf(kind));
  const isEaten = foods.has(head) || ambiguousFoods.has(head) || isForAnimals(name);
  return harmInName(name) ?? (isEaten ? 'food' : ofAll);
};
