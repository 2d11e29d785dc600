/**
 * What columns of a list of things are called, in plain words: in English and a few languages that spreadsheets here
 * are kept in. No product's names; common usage, no source.
 */
import { fold, foldCase } from '../../text/fold.ts';

/** What a column of a list says of a thing: a field of its record, its story, or a note for the owner alone. */
export const LIST_FIELDS = [
  'name',
  'kind',
  'also',
  'brand',
  'description',
  'material',
  'color',
  'size',
  'weight',
  'care',
  'countryOfOrigin',
  'price',
  'priceCurrency',
  'sku',
  'gtin',
  'image',
  'goesWith',
  'category',
  'allergens',
  'mayContain',
  'ingredients',
  'minAge',
  'story',
  'note',
] as const;
export type ListField = (typeof LIST_FIELDS)[number];

const NAMES: Record<ListField, string> = {
  name: `name|item|items|item name|product|products|product name|thing|things|title|article|contents|goods|piece|what
    |what is it|name on card|in the box|artikel|produkt|bezeichnung|gegenstand|nom|produit|designation|objet|nombre
    |producto|nome|prodotto|oggetto|naam|produto|navn|namn|vare|vara`,
  kind: 'kind|type|sort|noun|common noun|kind of thing|product type|item type|art|typ|genre|tipo|soort',
  also: 'also|also called|also known as|other names|other name|aka|synonyms',
  brand: `maker|makers|brand|made by|manufacturer|producer|artisan|artist|by|from whom|who made it|who makes it|studio
    |workshop|hersteller|marke|fabricant|marque|fabricante|marca|produttore|maker name|producent|merk|tillverkare`,
  description: `description|short description|summary|in a sentence|one sentence|one line|blurb|about|what it is
    |beschreibung|kurzbeschreibung|description courte|descripcion|descrizione|omschrijving`,
  material: `material|materials|made of|made from|what it is made of|fabric|composition|werkstoff|matiere|materiau
    |materiaux|materiale|materiali|materiaal|materiales`,
  color: 'colour|color|colours|colors|shade|farbe|couleur|colore|kleur|cor|farge|farg|finish',
  size: `size|sizes|dimension|dimensions|measurement|measurements|measures|volume|capacity|length|grosse|größe|maße|masse
    |abmessungen|taille|dimensione|dimensioni|tamano|tamaño|medidas|afmeting|afmetingen|maat|quantity per pack|contents size`,
  weight: 'weight|net weight|gross weight|mass|gewicht|poids|peso|vikt|vekt',
  care: 'care|care instructions|how to keep it|how to care|washing|storage|pflege|entretien|cuidado|cura',
  countryOfOrigin: `country|origin|country of origin|made in|where made|where it was made|country of manufacture
    |where from|land|herkunft|ursprungsland|pays|origine|pays d'origine|pais|origen|paese|land van herkomst`,
  price: `price|prices|retail price|retail|rrp|msrp|rsp|list price|selling price|sale price|shop price|unit price|value
    |worth|item value|preis|verkaufspreis|prix|prix de vente|precio|prezzo|prijs|preco|pris`,
  priceCurrency: 'currency|price currency|wahrung|währung|devise|moneda|valuta',
  sku: `sku|code|item code|product code|item number|item no|product no|product number|article number|art no|ref|reference
    |our number|artikelnummer|part number`,
  gtin: 'gtin|ean|upc|barcode|bar code|isbn|ean code|strichcode|code-barres',
  image:
    'photo|photos|picture|pictures|image|images|photo file|file|filename|file name|image file|bild|foto|fotos',
  goesWith: 'goes with|how it goes with|pairs with|goes well with|how it fits',
  category: 'category|hazard|safety category|caution category',
  allergens: 'allergens|allergen|allergies|allergene|allergenes|alergenos|allergeni',
  mayContain: 'may contain|traces|traces of|kann spuren enthalten',
  ingredients: 'ingredients|ingredient list|inci|zutaten|ingredienti|ingredientes|ingrédients|ingrediënten',
  minAge: 'age|min age|minimum age|from age|suitable from',
  story:
    'story|text|long description|long text|body|write up|writeup|copy|geschichte|histoire|article text|how to use|use',
  // What an owner writes down for herself: never published, because nobody can see in it what may be.
  note: `notes|note|remarks|remark|comment|comments|memo|internal|private|cost|unit cost|cost price|buying price|trade price
    |wholesale|wholesale price|price paid|paid|purchase price|margin|markup|profit|supplier|supplier name|vendor|contact
    |email|e-mail|phone|address|qty|quantity|count|pieces|number|amount|no of|stock|ordered|order|order no|order number
    |invoice|invoice no|delivery|delivered|arrived|due|date|status|checked|done|link|url|website|web|vat|tax|total|subtotal
    |line total|total price|total cost|sum|box|month|cycle|theme|id|no|nr|position|pos|row|notizen|bemerkung|bemerkungen
    |remarques|notas|note interne|anzahl|menge|lieferant|einkaufspreis|ek|gesamt|prix d'achat|fournisseur|quantite|cantidad
    |proveedor|aantal|leverancier|opmerkingen|cost per unit|shipping weight|shipping|owner|who|person|priority`,
};

/** People leave accents out of titles, or put them in. */
const folded = (text: string): string => fold(foldCase(text));

/** Every name, folded, with the field that it is of. */
const byName: ReadonlyMap<string, ListField> = new Map(
  LIST_FIELDS.flatMap((field) =>
    NAMES[field]
      .split('|')
      .map((name) => [folded(name), field] as const)
      .filter(([name]) => name !== ''),
  ),
);

/** Signs of a title: what is longer names nothing. */
const MOST_OF_TITLE = 200;

/** A title without its unit, stars and colons: "Weight (g) *" is "weight". */
const bareTitle = (title: string): string =>
  folded(title)
    .replace(/\([^)]*\)|\[[^\]]*\]/g, ' ')
    .replace(/[_/\\&+.,:;*#?!"“”£$€¥]+/g, ' ')
    .replace(/\bwhat's\b/g, 'what is')
    .replace(/\s+/g, ' ')
    .trim();

/** How surely a title names a field: a whole name over a part, and a longer part over a shorter. */
export interface NamedField {
  readonly field: ListField;
  readonly isWhole: boolean;
}

/** The field that a column's title names, also within other words: "Retail price incl. VAT", "Name of maker". */
export const fieldOfTitle = (title: string): NamedField | undefined => {
  if (title.length > MOST_OF_TITLE) return undefined;
  const bare = bareTitle(title);
  if (bare === '') return undefined;
  const whole =
    byName.get(bare) ??
    byName.get(bare.replace(/s$/, '')) ??
    byName.get(folded(title).replace(/[:*#?\s]+$/, ''));
  if (whole) return { field: whole, isWhole: true };
  const padded = ` ${bare} `;
  let best: readonly [name: string, field: ListField] | undefined;
  for (const [name, field] of byName) {
    // A private word makes the whole column private: "supplier's price" is no price to print.
    const isLonger = best === undefined || name.length > best[0].length;
    if (padded.includes(` ${name} `) && isLonger) best = [name, field];
  }
  if (!best) return undefined;
  const isPrivate = PRIVATE.some((name) => padded.includes(` ${name} `));
  return { field: isPrivate ? 'note' : best[1], isWhole: false };
};

/** Words that keep a column from being published whatever else its title says. */
const PRIVATE =
  'cost wholesale supplier vendor paid margin internal private trade buying purchase invoice stock ordered contact email phone shipping'.split(
    ' ',
  );

/** The unit that a title states for bare numbers below it: "Weight (g)", "Size in cm", "Price £", "Price EUR". */
export const unitOfTitle = (whole: string): string | undefined => {
  const title = whole.slice(0, MOST_OF_TITLE);
  return (
    /[([]\s*([^)\]]{1,12}?)\s*[)\]]/.exec(title)?.[1] ??
    /\b(?:in|as) (mm|cm|m|g|kg|ml|cl|l|oz|lb|lbs|inch|inches)\b/i.exec(title)?.[1] ??
    /([£$€¥]|\b[A-Z]{3}\b)\s*$/.exec(title)?.[1]
  );
};
