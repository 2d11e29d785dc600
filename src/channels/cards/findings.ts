/** What is wrong with cards before they are drawn. */
import { type Diagnostic, lookAt } from '../../diagnostics/diagnostic.ts';
import type { Cycle, Item, Picture } from '../../model/box.ts';
import { locationIn } from '../../model/location-in.ts';
import type { DrawingFaces } from '../../render/drawing.ts';
import { bestPicture, type Card, fills, WANTED } from './cards.ts';

type Layout = Parameters<typeof fills>[1];

/** Signs that a thing has to say at most, so that its card can be read on a phone: twenty lines. A choice of ours. */
const MOST_WORDS = 620;

const unfit = (picture: Picture | undefined, layout: Layout): string | undefined =>
  picture && !fills(picture, layout)
    ? `Unexpected picture of ${picture.width} × ${picture.height} pixels for a card, expected ${WANTED.width} × ${WANTED.height} or more, upright; it is set small, or the words stand alone`
    : undefined;

const FIX = `Take one with the phone held upright, at least ${WANTED.width} pixels wide, with the whole thing in its middle`;

const pictureFindings = (cycle: Cycle, layout: Layout): readonly Diagnostic[] => {
  const ofItem = (item: Item): readonly Diagnostic[] => {
    const message = unfit(bestPicture(item.pictures, layout), layout);
    const at = locationIn(item.source, 'image.0.file', 'image.0', 'image', 'name');
    return message === undefined ? [] : [lookAt('card-picture', at, message, FIX)];
  };
  const { wholeBox } = cycle;
  const isSmall = wholeBox && Math.min(wholeBox.width, wholeBox.height) < 830;
  const whole = isSmall ? unfit(wholeBox, layout) : undefined;
  return [
    ...cycle.items.flatMap(ofItem),
    ...(whole === undefined
      ? []
      : [lookAt('card-picture', locationIn(cycle.source, 'photo.file', 'photo', 'theme'), whole, FIX)]),
  ];
};

const wordFindings = async (
  cards: readonly Card[],
  lang: string,
  faces: DrawingFaces,
): Promise<readonly Diagnostic[]> => {
  const findings: Diagnostic[] = [];
  for (const { entries } of cards)
    for (const { item, name, lines, relation, cautions } of entries) {
      if (!item) continue;
      const cautionText = cautions.map(({ label, text }) => `${label}. ${text}`).join(' ');
      const lacking = await faces.lacking([name, ...lines, relation ?? '', cautionText].join(' '), lang);
      if (lacking.length > 0)
        findings.push(
          lookAt(
            'card-letters',
            locationIn(item.source, 'name'),
            `Unexpected ${lacking.join(' ')} in the words of \`${item.name}\`, expected letters that the cards’ faces have; on its card an empty frame stands for each`,
            'Write it in other letters, or put a font file that has them among your templates, in their folder `fonts`',
          ),
        );
      if (name.length + cautionText.length > MOST_WORDS)
        findings.push(
          lookAt(
            'card-crowded',
            locationIn(item.source, 'cautions', 'name'),
            `Unexpected ${name.length + cautionText.length} signs of name and cautions on one card, expected ${MOST_WORDS} at most: they are set smaller than can be read on a phone`,
            'Say the cautions in fewer words; the article may hold more',
          ),
        );
    }
  return findings;
};

/** Pictures that do not fill a card, letters that no face has, and more words than can be read. */
export const cardFindings = async (
  cards: readonly Card[],
  cycle: Cycle,
  { lang, layout, faces }: { readonly lang: string; readonly layout: Layout; readonly faces: DrawingFaces },
): Promise<readonly Diagnostic[]> => [
  ...pictureFindings(cycle, layout),
  ...(await wordFindings(cards, lang, faces)),
];
