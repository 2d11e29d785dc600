/** Cautions in English. The wording is ours and no legal advice. */
import type { Caution, CautionText } from '../../model/cautions.ts';
import { listInWords } from '../../text/list-in-words.ts';
import type { Spelling } from './spelling.ts';

/** What the record names is always said, in our words or in its own. */
const hazardLine = (hazard: string, { cot }: Spelling): string => {
  switch (hazard.toLowerCase()) {
    case 'small parts':
      return 'Small parts can choke a child.';
    case 'cords':
      return `Cords can strangle a child; keep them short and out of a ${cot}.`;
    default:
      return `Beware of ${hazard}.`;
  }
};

const labels: Readonly<Record<Caution['sort'], string>> = {
  allergens: 'Allergens',
  ingredients: 'Ingredients',
  skin: 'On the skin',
  flame: 'Burning',
  blade: 'Sharp edge',
  pets: 'Pets',
  children: 'Small children',
  more: 'Please note',
};

const linesOf = (caution: Caution, spelling: Spelling): readonly string[] => {
  switch (caution.sort) {
    case 'allergens': {
      const spelled = (names: readonly string[]): string =>
        names.map((name) => spelling.allergens.get(name.toLowerCase()) ?? name).join(', ');
      return [
        caution.contains.length > 0
          ? `Contains ${spelled(caution.contains)}.`
          : 'None of the major allergens is an ingredient.',
        ...(caution.mayContain.length > 0 ? [`May contain traces of ${spelled(caution.mayContain)}.`] : []),
      ];
    }
    case 'ingredients':
      return [caution.ingredients];
    case 'skin':
      // The patch test is common practice, no source.
      return [
        'Try a little on the inside of your arm and wait a day before you use it. Stop if it itches or reddens.',
      ];
    case 'flame':
      // After ASTM F2058 (voluntary): within sight, away from things that catch fire, away from children and pets.
      // The wick's 6 mm are the quarter inch that makers' associations advise.
      return [
        'Burn it within sight and put it out before you leave the room.',
        'Keep it away from anything that can catch fire, and from children and pets.',
        `If it has a wick, trim it to ${spelling.wick} each time before you light it.`,
        `Stand it on something level that heat does not harm, and out of ${spelling.draughts}.`,
      ];
    case 'blade':
      // Common practice, no source.
      if (caution.isPointed)
        return [
          'Its point is sharp. Cover it when it is not in use, and keep it out of the reach of children.',
        ];
      return [
        `It is sharp. Cut away from yourself, ${caution.closes ? 'close it' : 'cover its edge'} after use and keep it out of the reach of children.`,
      ];
    case 'pets':
      // The advice is common practice, no source.
      return [
        `Harmful to ${listInWords(caution.toxicTo, spelling.tag)} if eaten. Keep it out of their reach, and ask a vet at once if some was.`,
      ];
    case 'children':
      // After US 16 CFR 1501 (ages 3 to 6: from memory).
      return [
        ...(caution.minAge ? [`Not for children under ${caution.minAge}.`] : []),
        ...caution.hazards.map((hazard) => hazardLine(hazard, spelling)),
      ];
    case 'more':
      return caution.lines;
  }
};

/** What an item is shown with when it can hurt somebody. */
export const cautions = (spelling: Spelling) => ({
  /** What a caution is called. */
  labels,
  /** A caution's label and its sentences. */
  text: (caution: Caution): CautionText => ({
    label: caution.sort === 'blade' && caution.isPointed ? 'Sharp point' : labels[caution.sort],
    lines: linesOf(caution, spelling),
  }),
});
