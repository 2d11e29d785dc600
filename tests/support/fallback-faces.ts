/**
 * Faces that stand in until ours have come: faces of common systems, each fitted to ours by measures, so that nothing
 * moves when ours take their place (CSS Fonts 5, §9: `size-adjust`, `ascent-override` and its kin).
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import * as fontkit from 'fontkit';

const require = createRequire(import.meta.url);

/** A face of a system that is common enough to be counted on, or one of the same widths that may be read here. */
interface SystemFace {
  readonly name: string;
  /** As `local()` finds it (CSS Fonts 4, 4.3): its full name, and its PostScript name where some browser asks for that. */
  readonly upright: readonly string[];
  readonly italic: readonly string[];
  /** Files to measure, of the same widths letter by letter. */
  readonly files: { readonly upright: string; readonly italic: string };
}

const fontsource = (family: string) => ({
  upright: require.resolve(`@fontsource/${family}/files/${family}-latin-400-normal.woff2`),
  italic: require.resolve(`@fontsource/${family}/files/${family}-latin-400-italic.woff2`),
});

/** In the order of likeness. Gelasio was drawn to Georgia's widths, Tinos and Liberation Serif to those of Times New Roman. */
const SYSTEM_FACES: readonly SystemFace[] = [
  {
    name: 'Georgia',
    upright: ['Georgia'],
    italic: ['Georgia Italic', 'Georgia-Italic'],
    files: fontsource('gelasio'),
  },
  {
    name: 'Times',
    upright: ['Times New Roman', 'Liberation Serif'],
    italic: ['Times New Roman Italic', 'Liberation Serif Italic'],
    files: fontsource('tinos'),
  },
  {
    name: 'Noto',
    upright: ['Noto Serif'],
    italic: ['Noto Serif Italic'],
    files: fontsource('noto-serif'),
  },
  {
    name: 'DejaVu',
    upright: ['DejaVu Serif'],
    italic: ['DejaVu Serif Italic'],
    files: {
      upright: require.resolve('dejavu-fonts-ttf/ttf/DejaVuSerif.ttf'),
      italic: require.resolve('dejavu-fonts-ttf/ttf/DejaVuSerif-Italic.ttf'),
    },
  },
];

/** One of our faces and what it is measured by. */
interface OwnFace {
  readonly family: string;
  /** Name of the list of families in the style sheet. */
  readonly list: string;
  /** Files of templates/fonts. */
  readonly files: { readonly upright: string; readonly italic?: string };
  readonly sample: string;
}

/** Prose as articles are written in; invented for this. Only its letters' shares matter, to a part in a hundred. */
const PROSE = `A small watering can for a windowsill, with a long spout that reaches the back row. Fill it the night before, so that the water is not cold when it meets the roots. The handle was turned from beech in a workshop by the river, and it is oiled twice before it leaves; after a year it will have taken the colour of the hand that holds it. We asked for ninety and were sent sixty, because the kiln cracked in November, and those who waited have had theirs first. Use it on a dry day, wipe it, and hang it up by the loop. Nothing else needs to be done, though Mr Hale says that a drop of oil at Easter does no harm. If the brush sheds, it has been left in water: let it dry upright, and comb it with your fingers.`;

const OWN_FACES: readonly OwnFace[] = [
  {
    family: 'Alegreya',
    list: 'text',
    files: { upright: 'alegreya.woff2', italic: 'alegreya-italic.woff2' },
    sample: PROSE,
  },
  {
    family: 'Sorts Mill Goudy',
    list: 'display',
    files: { upright: 'sorts-mill-goudy.woff2' },
    sample: PROSE,
  },
];

interface Measures {
  /** Of the sample, in em. */
  readonly width: number;
  /** In em; what is below the line is positive too. */
  readonly ascent: number;
  readonly descent: number;
  readonly lineGap: number;
}

const measuresOf = (file: string, sample: string): Measures => {
  const font = fontkit.create(readFileSync(file));
  if (!('layout' in font)) throw new Error(`Expected one face in ${file}`);
  const em = (units: number): number => units / font.unitsPerEm;
  return {
    width: em(font.layout(sample).advanceWidth),
    ascent: em(font.ascent),
    descent: em(-font.descent),
    lineGap: em(font.lineGap),
  };
};

/** The letters that the style sheet's rules give to a face of ours, so that for others the next family is asked. */
const rangeOf = (family: string, sheet: string): string => {
  const rules = sheet.matchAll(/@font-face \{ font-family: "([^"]+)";[^}]* unicode-range: ([^;]+);/g);
  const ranges = [...rules]
    .flatMap(([, name, range = '']) => (name === family ? range.split(',') : []))
    .map((range) => range.slice('U+'.length).split('-'))
    .map(([first = '', last = first]) => ({
      first: Number.parseInt(first, 16),
      last: Number.parseInt(last, 16),
    }))
    .sort((a, b) => a.first - b.first);
  const joined: { first: number; last: number }[] = [];
  for (const { first, last } of ranges) {
    const before = joined.at(-1);
    if (before && first <= before.last + 1) before.last = Math.max(before.last, last);
    else joined.push({ first, last });
  }
  const hex = (code: number): string => code.toString(16).toUpperCase();
  return joined
    .map(({ first, last }) => (first === last ? `U+${hex(first)}` : `U+${hex(first)}-${hex(last)}`))
    .join(',');
};

const percent = (share: number, digits: 0 | 1 = 0): string => `${(share * 100).toFixed(digits)}%`;

/** A system's face under a name of ours: as wide as our face is over the sample, on lines as high as its own. */
const fittedFace = (own: OwnFace, system: SystemFace, style: 'upright' | 'italic', sheet: string): string => {
  const file = join(import.meta.dirname, '../../templates/fonts', own.files[style] ?? own.files.upright);
  const ours = measuresOf(file, own.sample);
  const size = ours.width / measuresOf(system.files[style], own.sample).width;
  const declarations = [
    `font-family: "${own.family} ${system.name}"`,
    ...(style === 'italic' ? ['font-style: italic'] : []),
    `src: ${system[style].map((name) => `local("${name}")`).join(', ')}`,
    `size-adjust: ${percent(size, 1)}`,
    `ascent-override: ${percent(ours.ascent / size)}`,
    `descent-override: ${percent(ours.descent / size)}`,
    `line-gap-override: ${percent(ours.lineGap / size)}`,
    `unicode-range: ${rangeOf(own.family, sheet)}`,
  ];
  return `@font-face { ${declarations.join('; ')}; }`;
};

const familiesOf = (own: OwnFace): string =>
  [own.family, ...SYSTEM_FACES.map(({ name }) => `${own.family} ${name}`)]
    .map((family) => `"${family}"`)
    .join(', ');

/** Style rules of every fitted face to the faces of `sheet`, and for each of ours the families to name. */
export const fallbackFaces = (sheet: string): string => {
  const faces = OWN_FACES.flatMap((own) =>
    SYSTEM_FACES.flatMap((system) => [
      fittedFace(own, system, 'upright', sheet),
      ...(own.files.italic === undefined ? [] : [fittedFace(own, system, 'italic', sheet)]),
    ]),
  );
  const lists = OWN_FACES.map((own) => `--${own.list}: ${familiesOf(own)};`);
  return `${[...faces, `:root { ${lists.join(' ')} }`].join('\n')}\n`;
};
