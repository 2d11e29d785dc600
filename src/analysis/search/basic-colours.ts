/** Colours as people say them: the eleven basic terms of English (Berlin & Kay 1969, "Basic Color Terms"). */
import { colorsNamed, differenceCiede2000, formatHex } from 'culori';
import type { Item, Picture } from '../../model/box.ts';
import { remembered } from '../../text/remembered.ts';
import type { Language } from '../language/language.ts';

/**
 * The anchors of each term: the named colours of CSS Color 4, 6.1, that people call by it (which ones: by hand, no
 * source). One anchor a term would not do: photographs are dull, and every dull colour is nearest to grey.
 */
const ANCHORS: Readonly<Record<string, string>> = {
  black: 'black',
  white: 'white snow ivory seashell floralwhite ghostwhite whitesmoke mintcream azure beige linen',
  grey: 'grey dimgrey darkgrey lightgrey silver gainsboro slategrey',
  red: 'red darkred firebrick crimson maroon indianred tomato brown',
  orange: 'orange darkorange orangered coral',
  yellow: 'yellow gold goldenrod khaki lemonchiffon lightyellow palegoldenrod',
  green:
    'green darkgreen forestgreen seagreen mediumseagreen darkseagreen lightgreen palegreen limegreen lime olive olivedrab darkolivegreen yellowgreen',
  blue: 'blue navy darkblue mediumblue midnightblue royalblue steelblue cornflowerblue skyblue lightblue powderblue deepskyblue teal darkcyan cadetblue lightsteelblue',
  purple:
    'purple indigo darkmagenta darkviolet rebeccapurple mediumpurple orchid violet plum thistle lavender',
  pink: 'pink lightpink hotpink deeppink palevioletred mistyrose lightsalmon',
  brown: 'saddlebrown sienna chocolate peru tan burlywood rosybrown darkgoldenrod sandybrown wheat',
};

/** The names of the basic colours, in English. */
export const BASIC_COLOURS: readonly string[] = Object.keys(ANCHORS);

/** Words that name a shade of a basic colour (by hand, no source). */
const SHADES: Readonly<Record<string, string>> = {
  gray: 'grey',
  silver: 'grey',
  charcoal: 'grey',
  slate: 'grey',
  gold: 'yellow',
  golden: 'yellow',
  mustard: 'yellow',
  straw: 'yellow',
  ochre: 'yellow',
  cream: 'white',
  ivory: 'white',
  oatmeal: 'white',
  olive: 'green',
  sage: 'green',
  moss: 'green',
  navy: 'blue',
  teal: 'blue',
  turquoise: 'blue',
  indigo: 'blue',
  lilac: 'purple',
  plum: 'purple',
  lavender: 'purple',
  violet: 'purple',
  mauve: 'purple',
  rose: 'pink',
  crimson: 'red',
  scarlet: 'red',
  burgundy: 'red',
  rust: 'orange',
  terracotta: 'orange',
  copper: 'orange',
  tan: 'brown',
  chestnut: 'brown',
  chocolate: 'brown',
  honey: 'brown',
  bronze: 'brown',
};

const anchors = Object.entries(ANCHORS).flatMap(([term, names]) =>
  names.split(' ').map((name) => ({
    term,
    hex: formatHex({ mode: 'rgb', ...rgbOf(colorsNamed[name as keyof typeof colorsNamed]) }),
  })),
);

function rgbOf(value: number): { r: number; g: number; b: number } {
  return { r: ((value >> 16) & 255) / 255, g: ((value >> 8) & 255) / 255, b: (value & 255) / 255 };
}

/** Sharma, Wu & Dalal 2005, "The CIEDE2000 color-difference formula", as culori has it. */
const difference = differenceCiede2000();

/** The basic colour nearest to a colour (`#rrggbb`). */
export const nearestBasicColour = (hex: string): string => {
  let best = { term: '', far: Number.POSITIVE_INFINITY };
  for (const anchor of anchors) {
    const far = difference(hex, anchor.hex);
    if (far < best.far) best = { term: anchor.term, far };
  }
  return best.term;
};

/** Basic colours that a colour's own words name, in their order. */
const basicColoursNamed = (words: string, language: Language): readonly string[] => [
  ...new Set(
    language.words(words).flatMap(({ folded }) => {
      const term = ANCHORS[folded] ? folded : SHADES[folded];
      return term === undefined ? [] : [term];
    }),
  ),
];

/** Several parts of the search ask it of the same pictures. */
const basicColourOf = remembered(({ dominant }: Picture): string => nearestBasicColour(dominant));

/**
 * The basic colours an item is looked for by: those its record says, else the one nearest to its picture's
 * dominant colour. The terms are English; a box in another language has the colours its records say, as they are.
 */
export const basicColoursOf = (
  item: Pick<Item, 'color' | 'pictures'>,
  language: Language,
): readonly string[] => {
  if (!language.english) return item.color === undefined ? [] : [item.color];
  const said = basicColoursNamed(item.color ?? '', language);
  const [picture] = item.pictures;
  return said.length > 0 || !picture ? said : [basicColourOf(picture)];
};
