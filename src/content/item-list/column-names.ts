/**
 * What columns of a list of things are called, in plain words: in English and a few languages that spreadsheets here
 * are kept in. No product's names; common usage, no source.
 */
import { foldWords } from '../../text/fold.ts';

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
  name: `name|item|items|item name|product|products|product name|product title|thing|things|title|article|contents|goods|piece
    |what|what is it|name on card|in the box|item description|product description|artikel|artikelname|artikelbezeichnung
    |produktbezeichnung|produktname|produkt|bezeichnung|gegenstand|inhalt|was|ware|nom|nom du produit|produit|designation|objet
    |titre|intitule|nombre|nombre del producto|nombre del articulo|producto|articulo|nome|nome prodotto|nome do produto
    |prodotto|articolo|oggetto|denominazione|produto|artigo|naam|productnaam|product omschrijving|produktnamn|namn|benamning
    |vare|varenavn|vara|navn|nazwa|nazwa produktu|nazwa towaru|towar|tuote|商品名|商品|品名|名称|製品名|アイテム`,
  kind: `kind|type|sort|noun|common noun|kind of thing|product type|item type|art|produktart|typ|genre|tipo|soort|rodzaj|種類
    |categorie|kategorie|kategoria|categoria`,
  also: 'also|also called|also known as|other names|other name|aka|synonyms',
  brand: `maker|makers|brand|made by|manufacturer|producer|artisan|artist|author|by|from whom|who made it|who makes it|studio
    |workshop|house|publisher|press|roaster|roastery|dyer|mill|grower|estate|nursery|creamery|dairy|farm|chandler|potter
    |brewer|brewery|bottler|bottled by|from who|whose|distiller|distillery|baker|bakery|winery|perfumer|tier|tyer|designer|hersteller|herstellerin|von wem|wer|marke
    |erzeuger|produzent|produzentin|manufaktur|werkstatt|verlag|rosterei|roster|kaserei|gartnerei|fabricant|marque
    |producteur|productrice|createur|creatrice|artisane|atelier|editeur|maison|fromagerie|torrefacteur|savonnerie|fabricante
    |marca|productor|productora|artesano|artesana|editorial|produttore|produttrice|marchio|artigiano|editore|vivaio
    |caseificio|torrefazione|produtor|produtora|artesao|editora|maker name|producent|fabrikant|merk|uitgever|kaasmakerij
    |kwekerij|kweker|branderij|tillverkare|varumarke|forlag|rosteri|marka|wytworca|wydawca|wydawnictwo|palarnia|メーカー|ブランド
    |製造元|製造者|作り手|作家|工房|出版社|生産者`,
  description: `description|short description|summary|in a sentence|one sentence|one line|blurb|about|what it is
    |beschreibung|kurzbeschreibung|description courte|descripcion|descrizione|descricao|omschrijving|beskrivning|opis
    |説明`,
  material: `material|materials|made of|made from|what it is made of|fabric|composition|fibre content|fiber content|fibre
    |fiber|werkstoff|woraus|zusammensetzung|materialzusammensetzung|matiere|materiau|materiaux|composicion|materiale|materiali
    |composizione|composicao|materiais|materiaal|samenstelling|materiales|sammansattning|material|sklad|tworzywo
    |素材|材質`,
  color: `colour|color|colours|colors|colourway|colorway|shade|farbe|farbton|couleur|coloris|color|colore|cor|kleur|farge|farve|farve
    |farg|kolor|finish|色|カラー`,
  size: `size|sizes|diameter|durchmesser|diametre|diametro|srednica|dimension|dimensions|measurement|measurements|measures|volume|vol|capacity|length|yardage|meterage
    |hook size|pot size|bag size|bottle size|grosse|wie gross|größe|maße|masse|abmessung|abmessungen|fullmenge|inhaltsmenge|lauflange
    |volumen|taille|contenance|format|dimensione|dimensioni|formato|misura|misure|capacita|tamano|tamaño|medidas|capacidad
    |contenido neto|tamanho|dimensoes|capacidade|afmeting|afmetingen|maat|inhoud|storlek|matt|volym|krokstorlek|rozmiar
    |wymiary|pojemnosc|quantity per pack|contents size|サイズ|寸法|容量|大きさ`,
  weight: `weight|net weight|net wt|gross weight|wt|mass|gewicht|nettogewicht|poids|poids net|peso|peso netto|peso neto
    |peso liquido|vikt|nettovikt|vekt|waga|waga netto|masa netto|重さ|重量|内容量`,
  care: `care|care instructions|how to keep it|how to care|washing|storage|pflege|pflegehinweise|entretien|cuidado|cuidados
    |cura|onderhoud|verzorging|skotsel|skotselrad|pielegnacja|お手入れ`,
  countryOfOrigin: `country|origin|country of origin|origin country|made in|where made|where it was made
    |country of manufacture|where from|land|herkunft|herkunftsland|ursprung|ursprungsland|pays|origine|provenance
    |pays d'origine|pais|origen|pais de origen|procedencia|paese|paese di origine|provenienza|origem|pais de origem
    |land van herkomst|herkomst|kraj|kraj pochodzenia|pochodzenie|原産国|生産国|産地`,
  price: `price|prices|retail price|retail|rrp|msrp|rsp|list price|selling price|sale price|shop price|unit price|value
    |worth|item value|cover price|each|price each|preis|verkaufspreis|vk|vk preis|vk-preis|vk brutto|uvp|ladenpreis|endpreis
    |stuckpreis|einzelpreis|bruttopreis|prix|prix de vente|prix ttc|prix public|prix unitaire|ppc|precio|p venta|pvp
    |precio de venta|precio unitario|prezzo|prezzo al pubblico|prezzo di vendita|preco|preco de venda|prijs|verkoopprijs
    |winkelprijs|adviesprijs|stukprijs|pris|butikspris|forsaljningspris|styckpris|cena|cena brutto|cena detaliczna|価格
    |値段|定価|販売価格|単価|税込価格`,
  priceCurrency: 'currency|price currency|wahrung|währung|devise|moneda|valuta|moeda|waluta|通貨',
  sku: `sku|code|item code|product code|item number|item no|product no|product number|article number|art no|ref|reference
    |our number|artikelnummer|artikelnr|art-nr|referencia|codice|codice articolo|codigo|artikelnr|numer katalogowy
    |part number|商品コード|品番`,
  gtin: `gtin|ean|upc|barcode|bar code|isbn|ean code|ean-code|ean nummer|isbn nummer|n° isbn|strichcode|code-barres|code barre
    |codigo de barras|codice a barre|streckkod|kod kreskowy|streepjescode|バーコード`,
  image: `photo|photos|picture|pictures|image|images|image src|photo file|file|filename|file name|image file|bild|bilder|foto
    |fotos|bilddatei|写真|画像`,
  goesWith: 'goes with|how it goes with|pairs with|goes well with|how it fits',
  category: 'category|hazard|safety category|caution category',
  allergens: `allergens|allergen|allergies|allergy|allergy info|allergien|contem|contains|allergene|allergenes|contient|alergenos|contiene|allergeni|allergenen
    |allergener|alergeny|alergenios|アレルゲン|アレルギー`,
  mayContain: `may contain|traces|traces of|kann spuren enthalten|spuren von|peut contenir|puede contener|puo contenere
    |kan sporen bevatten|kan innehalla spar av|moze zawierac`,
  ingredients: `ingredients|ingredient list|inci|zutaten|inhaltsstoffe|ingredienti|ingredientes|ingrédients|ingrediënten
    |ingredienser|innehall|skladniki|原材料|成分`,
  minAge: `age|min age|minimum age|from age|age rating|suitable from|recommended age|alter|altersempfehlung|altersfreigabe|age minimum|edad|edad
    minima|eta|eta minima|idade|leeftijd|alder|wiek|対象年齢`,
  story:
    'story|text|long description|long text|body|write up|writeup|copy|geschichte|histoire|historia|storia|verhaal|beratta|article text|how to use|how to use it|use',
  // What an owner writes down for herself: never published, because nobody can see in it what may be.
  note: `notes|note|remarks|remark|comment|comments|memo|internal|private|cost|unit cost|cost price|buying price|trade price
    |wholesale|wholesale price|price paid|paid|purchase price|margin|markup|profit|supplier|supplier name|vendor|contact
    |email|e-mail|phone|address|qty|quantity|count|pieces|number|amount|no of|how many|stock|ordered|order|order no
    |order number|invoice|invoice no|delivery|delivered|arrived|due|date|status|checked|done|link|url|website|web|vat|tax
    |total|subtotal|line total|total price|total cost|sum|box|month|cycle|theme|id|no|nr|position|pos|row|issue|lp|compare at price
    |best before|expiry|use by|burn time|full bottle price|notizen|bemerkung|bemerkungen|anmerkung|anmerkungen|geliefert am|mhd|remarques|observations
    |notas|observaciones|observacoes|uwagi|note interne|notas internas|anzahl|menge|stuckzahl|bestand|lieferant|lieferung|bestellt|einkauf
    |einkaufspreis|ek|ek preis|gesamt|prix d'achat|dlc|ddm|fournisseur|quantite|cantidad|coste|costo|precio de coste|proveedor|costo unitario|quantita|fornitore|prezzo di acquisto
    |quantidade|custo|fornecedor|aantal|voorraad|inkoop|inkoopprijs|leverancier|opmerking|opmerkingen|antal|lager|inkopspris|leverantor|anmarkning|anmarkningar|ilosc
    |koszt|cena zakupu|dostawca|cost per unit|cost per item|shipping weight|shipping|owner|who|person|priority|備考|メモ|数量|個数|原価|仕入れ値|仕入先|在庫`,
};

/** People leave accents out of titles, or put them in. */

/** These name a field alone, and among other words mean another thing: "Pressed by hand", "Farm visit done". */
const ALONE = new Set(
  'type kind sort art typ tipo soort genre house press mill farm dairy estate tier each author label color cor matt wt vol inhalt inhoud innehall contains contiene contient contem sum was wer whose'.split(
    ' ',
  ),
);

/** Every name, folded, with the field that it is of. */
const byName: ReadonlyMap<string, ListField> = new Map(
  LIST_FIELDS.flatMap((field) =>
    NAMES[field]
      .split('|')
      .map((name) => [foldWords(name), field] as const)
      .filter(([name]) => name !== ''),
  ),
);

/** Signs of a title: what is longer names nothing. */
const MOST_OF_TITLE = 200;

/** A title without its unit, stars and colons: "Weight (g) *" is "weight", "R.R.P." is "rrp". */
const bareTitle = (title: string): string =>
  foldWords(title)
    .replace(/(?<![\p{L}.])(?:\p{L}\.){2,12}/gu, (letters) => letters.replaceAll('.', ''))
    .replace(/\([^)]*\)|\[[^\]]*\]/g, ' ')
    .replace(/[_/\\&+.,:;*#?!"“”£$€¥]+/g, ' ')
    .replace(/\bwhat's\b/g, 'what is')
    .replace(/\s+/g, ' ')
    .trim();

const NUMBER = /(?:#|№|\b(?:n[°ºo]|nr|num|number|nummer|code|id)\b\.?)$/iu;

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
  // "Item #" and "Produkt-Nr." are numbers of things, and no names.
  if (
    NUMBER.test(title.trim()) &&
    byName.get(bareTitle(title.trim().replace(NUMBER, '').replaceAll('-', ' '))) === 'name'
  )
    return { field: 'sku', isWhole: true };
  const whole =
    byName.get(bare) ??
    byName.get(bare.replace(/s$/, '')) ??
    byName.get(foldWords(title).replace(/[:*#?\s]+$/, ''));
  // What stands in brackets may make it private: "Price (wholesale)".
  if (whole) return { field: isPrivate(title) ? 'note' : whole, isWhole: true };
  if (/^[øØ⌀]/u.test(title.trim())) return { field: 'size', isWhole: false };
  const padded = ` ${bare} `;
  let best: readonly [name: string, field: ListField] | undefined;
  for (const [name, field] of byName) {
    // A private word makes the whole column private: "supplier's price" is no price to print.
    const isLonger = best === undefined || name.length > best[0].length;
    if (!ALONE.has(name) && padded.includes(` ${name} `) && isLonger) best = [name, field];
  }
  if (!best) return undefined;
  return { field: isPrivate(title) ? 'note' : best[1], isWhole: false };
};

/** Words that keep a column from being published whatever else its title says. */
const PRIVATE =
  `cost wholesale supplier vendor paid margin internal private trade buying purchase invoice stock ordered contact
  email phone shipping einkauf ek lieferant intern marge achat fournisseur interne coste costo compra proveedor interno acquisto
  fornitore custo fornecedor inkoop leverancier inkop leverantor indkob innkjop koszt zakup zakupu dostawca wewnetrzne`.split(
    /\s+/,
  );

const isPrivate = (title: string): boolean => {
  const words = ` ${foldWords(title).replace(/[^\p{L}\p{N}]/gu, ' ')} `;
  return PRIVATE.some((word) => words.includes(` ${word} `));
};

/** The unit that a title states for bare numbers below it: "Weight (g)", "Size in cm", "Price £", "Price EUR". */
export const unitOfTitle = (whole: string): string | undefined => {
  const title = whole.slice(0, MOST_OF_TITLE);
  return (
    /[([]\s*([^)\]]{1,12}?)\s*[)\]]/.exec(title)?.[1] ??
    /\b(?:in|as) (mm|cm|m|g|kg|ml|cl|l|oz|lb|lbs|inch|inches)\b/i.exec(title)?.[1] ??
    /([£$€¥]|\b[A-Z]{3}\b)\s*$/.exec(title)?.[1]
  );
};
