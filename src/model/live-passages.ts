/** Which paragraph of a story tells what a beat of the live needs: what went wrong, how the box was chosen. */
import { primaryLanguage } from '../text/language-tag.ts';
import type { Paragraph } from './paragraphs.ts';

type SoughtPassage = 'mishap' | 'chosen';

/** What tells of it, with its weight. English alone; common practice, no source. */
const signs: Readonly<Record<SoughtPassage, readonly (readonly [RegExp, number])[]>> = {
  mishap: [
    [/\b(?:wrong|mistakes?|mistook|misread|by accident|unusable|ruined|regrets?)\b/gi, 2],
    [/\b(?:cracked|snapped|leaked|spil(?:t|led)|shattered|burnt|blunt|limp|mouldy|dented)\b/gi, 2],
    [/\b(?:forgot(?:ten)?|failed|refused|sorry|apologi[sz]\w+|unfortunately)\b/gi, 2],
    [/\b(?:I did that|did not cross my mind|no time|I should like to say)\b/gi, 2],
    [/\b(?:broken?|split|lost|missing|stuck|cancelled|would not)\b/gi, 1],
    [/\b(?:had to be|could not|would have taken|open at both ends|came (?:back|off))\b/gi, 1],
  ],
  chosen: [
    [/\b(?:built around|grew out of|follows from|the rest of the box|what else is in)\b/gi, 3],
    [/\b(?:chose|chosen|choosing|decided|picked)\b/gi, 2],
    [/\b(?:I wanted|we wanted|I asked|so I|the idea|the plan)\b/gi, 1],
    [/\b(?:this box|the box|in the box|into the box)\b/gi, 1],
  ],
};

/** A heading speaks for the paragraphs below it, though less than they do themselves. */
const HEADING_SHARE = 0.5;
/** One weak sign is chance. */
const LEAST = 2;

const weightOf = (text: string, sought: SoughtPassage): number =>
  signs[sought].reduce((sum, [sign, weight]) => sum + weight * (text.match(sign)?.length ?? 0), 0);

/**
 * The paragraph that most tells what is sought, the earlier of two that do so alike; undefined where none does, and
 * in languages other than English, whose signs are not known here.
 */
export const passageThatTells = (
  paragraphs: readonly Paragraph[],
  sought: SoughtPassage,
  lang: string,
): Paragraph | undefined => {
  if (primaryLanguage(lang) !== 'en') return undefined;
  let best: { readonly paragraph: Paragraph; readonly weight: number } | undefined;
  for (const paragraph of paragraphs) {
    const own = weightOf(paragraph.text, sought);
    if (own === 0) continue;
    const weight = own + HEADING_SHARE * weightOf(paragraph.heading, sought);
    if (weight >= LEAST && (!best || weight > best.weight)) best = { paragraph, weight };
  }
  return best?.paragraph;
};
