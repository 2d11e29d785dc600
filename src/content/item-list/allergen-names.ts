/** Allergens as people name them → the names that records state them by. */
import { foldCase, foldWords } from '../../text/fold.ts';
import { ALLERGENS } from '../allergens.ts';

/** Other names, in English and the languages that lists are kept in. Regulation (EU) 1169/2011, Annex II, in those languages. */
const NAMES: Readonly<Record<string, string>> = {
  celery: 'sellerie|celeri|apio|sedano|selderij|selleri|seler|aipo|セロリ',
  crustaceans: `crustacean|shellfish|crustacean shellfish|krebstiere|crustaces|crustaceos|crostacei|schaaldieren|kräftdjur
    |skorupiaki|えび|かに`,
  eggs: 'egg|ei|eier|oeuf|oeufs|huevo|huevos|uovo|uova|eieren|ägg|jaja|jajka|ovo|ovos|卵',
  fish: 'fisch|poisson|poissons|pescado|pesce|vis|fisk|ryby|ryba|peixe|魚',
  gluten: 'glutine|cereals with gluten|cereals containing gluten|グルテン',
  lupin: 'lupins|lupine|lupinen|altramuces|lupini|łubin|tremoço',
  milk: 'dairy|lactose|milch|laktose|lait|leche|lactosa|latte|lattosio|melk|mjölk|laktos|mleko|leite|lactose|乳|牛乳',
  molluscs: 'mollusc|mollusks|weichtiere|mollusques|moluscos|molluschi|weekdieren|blötdjur|mięczaki',
  mustard: 'senf|moutarde|mostaza|senape|mosterd|senap|gorczyca|mostarda|からし',
  peanuts:
    'peanut|groundnuts|erdnuss|erdnüsse|arachide|arachides|cacahuete|cacahuetes|arachidi|pinda|pindas|jordnötter|orzeszki ziemne|amendoim|amendoins|落花生',
  sesame: 'sesam|sesame seeds|sésame|sésamo|sesamo|sezam|ごま',
  soybeans: 'soy|soya|soja|soia|soybean|soya beans|sojabohnen|大豆',
  sulphites:
    'sulphite|sulfites|sulfite|sulphur dioxide|sulfitos|solfiti|sulfieten|sulfiter|siarczyny|schwefeldioxid',
  'tree nuts': `nuts|nut|tree nut|nüsse|schalenfrüchte|fruits à coque|noix|frutos secos|frutos de cascara|frutta a guscio|noten
    |nötter|orzechy|frutos de casca rija|almond|almonds|hazelnut|hazelnuts|walnut|walnuts|cashew|cashews|pecan|pecans
    |pistachio|pistachios|macadamia|brazil nuts|mandel|mandeln|haselnuss|haselnüsse|walnüsse|amandes|noisettes|almendras
    |avellanas|mandorle|nocciole|amandelen|hazelnoten|mandlar|hasselnötter|migdały|ナッツ|くるみ`,
  wheat: 'weizen|blé|trigo|frumento|grano|tarwe|vete|pszenica|小麦',
  barley: 'gerste|orge|cebada|orzo|gerst|korn|jęczmień|cevada',
  oats: 'oat|hafer|avoine|avena|haver|havre|owies|aveia',
  rye: 'roggen|seigle|centeno|segale|rogge|råg|żyto|centeio',
  spelt: 'dinkel|épeautre|espelta|farro|spelta|orkisz',
};

const known: ReadonlyMap<string, string> = new Map([
  ...Object.entries(NAMES).flatMap(([name, others]) =>
    others.split('|').map((other) => [foldWords(other), name] as const),
  ),
  ...ALLERGENS.map((name) => [name, name] as const),
]);

/**
 * The names by which records state these; one that is not known stays as it is, so that the record's own field refuses
 * all of them rather than that one is lost.
 */
export const allergensNamed = (names: readonly string[]): readonly string[] => [
  ...new Set(
    names.map((name) => known.get(foldWords(name.replace(/\([^()]{0,200}\)/g, ' '))) ?? foldCase(name)),
  ),
];
