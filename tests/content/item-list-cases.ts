/** Lists of things as people keep them, with what is to be read. The first half stood while the rules were written. */

interface ListCase {
  readonly what: string;
  readonly text: string;
  readonly names: readonly string[];
  /** Of some things, by name: fields that are to be read. */
  readonly values?: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  /** Rows passed over, by why. */
  readonly passed?: readonly string[];
  /** Texts that must be notes and nothing else. */
  readonly notes?: readonly string[];
}

export const WRITTEN_WITH: readonly ListCase[] = [
  {
    what: 'a plain list with commas',
    text: 'Name,Maker,Price\nWooden seed tray,Tolley Joinery,16.00\n"Plant mister, brass",Coppice & Co,24.50\n',
    names: ['Wooden seed tray', 'Plant mister, brass'],
    values: { 'Wooden seed tray': { brand: 'Tolley Joinery', price: '16.00' } },
  },
  {
    what: 'semicolons, a mark, Windows line ends, decimal commas',
    text: '\ufeffArtikel;Hersteller;Preis;Material;Gewicht\r\nSaatschale;Holzwerk Nord;16,00 €;Kiefer;480 g\r\nSprüher;Messing Müller;1.024,50 €;Messing, Glas;310 g\r\n',
    names: ['Saatschale', 'Sprüher'],
    values: {
      Saatschale: { price: '16.00', priceCurrency: 'EUR', weight: '480 g', material: ['Kiefer'] },
      Sprüher: { price: '1024.50', material: ['Messing', 'Glas'] },
    },
  },
  {
    what: 'a headline, blank rows and a line of sums',
    text: 'May box 2026,,,\n,,,\nItem,Supplier,Unit cost,RRP (£)\nLinen apron,Loom Ltd,7.10,£28.00\n,,,\nTea towel,Loom Ltd,2.30,£9.50\nTotal,,9.40,£37.50\n',
    names: ['Linen apron', 'Tea towel'],
    values: { 'Linen apron': { price: '28.00' } },
    passed: ['above', 'sum'],
    notes: ['7.10', 'Loom Ltd'],
  },
  {
    what: 'tabs as a spreadsheet copies them, with line breaks between quotes',
    text: 'Product\tColour\tNotes\nJar of "wild" honey\tamber\t"Two lines:\nask Ida about the lids"\nOat soap\tcream\t\n',
    names: ['Jar of "wild" honey', 'Oat soap'],
    values: { 'Oat soap': { color: 'cream' } },
    notes: ['Two lines:\nask Ida about the lids'],
  },
  {
    what: 'names alone, one a line, with commas in them',
    text: 'Wooden seed tray, 30 × 12 cm\nBrass plant mister\nSeed packets, four\n',
    names: ['Wooden seed tray, 30 × 12 cm', 'Brass plant mister', 'Seed packets, four'],
  },
  {
    what: 'units in the titles and bare numbers below',
    text: 'Item name,Weight (g),Size in cm,Made in\nOak spoon,45,30 x 6,Portugal\nLinen cloth,120,50 x 70,England\n',
    names: ['Oak spoon', 'Linen cloth'],
    values: {
      'Oak spoon': { weight: '45 g', size: '30 x 6 cm', countryOfOrigin: 'PT' },
      'Linen cloth': { countryOfOrigin: 'GB' },
    },
  },
  {
    what: 'no titles at all',
    text: 'Beeswax candle,12.50,Hive & Home,180 g\nSnuffer,9.00,Smith Street Forge,60 g\nMatches,3.20,Hive & Home,25 g\n',
    names: ['Beeswax candle', 'Snuffer', 'Matches'],
    values: { Snuffer: { price: '9.00', weight: '60 g' } },
    notes: ['Smith Street Forge'],
  },
  {
    what: 'food with what is in it',
    text: 'What,Ingredients,Allergens,May contain\nSeeded crackers,"Wheat flour, sesame, salt","wheat, sesame",milk\nApple chutney,"Apples, vinegar, sugar",none,celery and mustard\n',
    names: ['Seeded crackers', 'Apple chutney'],
    values: {
      'Seeded crackers': { allergens: ['wheat', 'sesame'], ingredients: 'Wheat flour, sesame, salt' },
      'Apple chutney': { allergens: 'none', mayContain: ['celery', 'mustard'] },
    },
  },
  {
    what: 'titles with stars and capitals, and a row without a name',
    text: 'ITEM NAME *;BRAND;COUNTRY OF ORIGIN;BARCODE\nDibber;Tolley Joinery;GB;0202603000115\n;Nobody;DE;\n',
    names: ['Dibber'],
    values: { Dibber: { brand: 'Tolley Joinery', gtin: '0202603000115' } },
    passed: ['no name'],
  },
  {
    what: 'a range and a word where a price should be',
    text: 'Thing|Price\nTwine|£3-4\nGift tag|free\nPot|£12\n',
    names: ['Twine', 'Gift tag', 'Pot'],
    values: { Pot: { price: '12' } },
    notes: ['£3-4', 'free'],
  },
];

/** The other half: written before, and first read after the rules stood. */
export const KEPT_ASIDE: readonly ListCase[] = [
  {
    what: 'a packing list with numbers of rows and quantities',
    text: 'No.,Qty,Description,Retail value,Notes\n1,120,Stoneware mug,22.00,chipped ones in crate 4\n2,120,Chai blend 50 g,6.50,\n3,120,Cinnamon biscuits,4.80,\n,,Grand total,33.30,\n',
    names: ['Stoneware mug', 'Chai blend 50 g', 'Cinnamon biscuits'],
    values: { 'Stoneware mug': { price: '22.00' } },
    passed: ['sum'],
    notes: ['chipped ones in crate 4'],
  },
  {
    what: 'French, with semicolons',
    text: 'Produit;Fabricant;Prix de vente;Matières;Pays\nCouteau à beurre;Atelier Lenoir;18,90 €;hêtre et laiton;France\nTorchon;Filature du Nord;12 €;lin;Belgique\n',
    names: ['Couteau à beurre', 'Torchon'],
    values: {
      'Couteau à beurre': { price: '18.90', material: ['hêtre', 'laiton'], countryOfOrigin: 'FR' },
      Torchon: { brand: 'Filature du Nord', countryOfOrigin: 'BE' },
    },
  },
  {
    what: 'dollars with thousands, and a title that has more words',
    text: 'Product name,Made by (artisan),Retail price incl. tax,Dimensions (in),Color\n"Walnut desk, small",Ferro & Sons,"$1,240.00",30 x 18,walnut\nInk bottle,Pennant Inks,$14.00,2 x 2,blue-black\n',
    names: ['Walnut desk, small', 'Ink bottle'],
    values: {
      'Walnut desk, small': { price: '1240.00', priceCurrency: 'USD', brand: 'Ferro & Sons' },
      'Ink bottle': { size: '2 x 2 in', color: 'blue-black' },
    },
  },
  {
    what: 'a thing whose name begins with a word for sums',
    text: 'item,maker,price\nTotal eclipse lamp,Halo Works,£40\nSum and substance notebook,Ledger & Lane,£9\nTotal,,£49\n',
    names: ['Total eclipse lamp', 'Sum and substance notebook'],
    passed: ['sum'],
  },
  {
    what: 'two of one name that differ, and one row twice',
    text: 'Name;Colour\nMug;green\nMug;blue\nMug;green\nSpoon;\n',
    names: ['Mug', 'Mug', 'Spoon'],
    passed: ['the same again'],
  },
  {
    what: 'the name in a later column, and a story',
    text: 'SKU\tMaker\tItem\tStory\tWeight\nTT-1\tFenn Weavers\tCane basket\t"Woven in a day.\n\nUse it for bread."\t340g\nTT-2\tAda Crumb\tDough scraper\t\t90g\n',
    names: ['Cane basket', 'Dough scraper'],
    values: { 'Cane basket': { sku: 'TT-1', brand: 'Fenn Weavers', weight: '340g' } },
  },
  {
    what: 'bullets, as from a text',
    text: '- Wool socks\n- Peppermint tea\n- A card with a joke in it\n',
    names: ['Wool socks', 'Peppermint tea', 'A card with a joke in it'],
  },
  {
    what: 'a price column without a sign and a cost column beside it',
    text: 'Thing,Our cost price,Sells for,Supplier price list ref\nKite,4.00,15.00,KK9\nString,0.50,3.00,KK2\n',
    names: ['Kite', 'String'],
    notes: ['4.00', 'KK9', '15.00'],
  },
  {
    what: 'titles twice, because two sheets were put together',
    text: 'Name,Material\nBowl,ash\n\nName,Material\nLadle,"steel, olive wood"\n',
    names: ['Bowl', 'Ladle'],
    values: { Ladle: { material: ['steel', 'olive wood'] } },
    passed: ['titles again'],
  },
  {
    what: 'Japanese names, a sep line and country letters',
    text: 'sep=;\r\nItem;Brand;Origin;Price\r\n急須;常滑窯;JP;¥4,800\r\n茶筒;京桶屋;Japan;¥ 3.200\r\n',
    names: ['急須', '茶筒'],
    values: { 急須: { price: '4800', priceCurrency: 'JPY', countryOfOrigin: 'JP' }, 茶筒: { price: '3200' } },
  },
];

/** Shapes and trades that came later: titles in no word that is known, numbers of things, sums by their figures. */
export const OTHER_TRADES: readonly ListCase[] = [
  {
    what: 'a row of titles in unknown words, above figures',
    text: 'Crate 14,,,\nSauce,"Heat\n(1-10)",Who boils it,Fetches\nGhost Orchard,9,Ember & Co,11.00\nMango Bonnet,7,Island Still,9.50\n',
    names: ['Ghost Orchard', 'Mango Bonnet'],
    passed: ['above'],
    notes: ['9', 'Ember & Co', '11.00'],
  },
  {
    what: 'a number of things, letters with dots and a kind that is not the thing’s',
    text: 'Item #,Description,Milk type,R.R.P.,Ext. price\nB-1,Harbour blue,cow,14.00,1400.00\nB-2,Slate board,,4.00,400.00\n',
    names: ['Harbour blue', 'Slate board'],
    values: { 'Harbour blue': { sku: 'B-1', price: '14.00' } },
    notes: ['cow', '1400.00'],
  },
  {
    what: 'a line of sums in more words, known by its figures',
    text: 'Articolo\tVivaio\tØ vaso (cm)\tPrezzo ivato\nPothos\tVivai Riva\t12\t€ 45,00\nSottovaso\t\t14\t€ 3,50\nTotale complessivo\t\t\t€ 48,50\n',
    names: ['Pothos', 'Sottovaso'],
    values: { Pothos: { brand: 'Vivai Riva', size: '12 cm' } },
    passed: ['sum'],
  },
  {
    what: 'allergens in another language, and a dash that says nothing',
    text: 'Fromage;Producteur;Allergènes;P.V.P. (€)\nTomme;Ferme du Val;lait;12,50\nCracotte;Moulin;blé et sésame;3,-\nGelée;Oriol;aucun;4,20\nSablé;Oriol;-;4,20\n',
    names: ['Tomme', 'Cracotte', 'Gelée', 'Sablé'],
    values: {
      Tomme: { allergens: ['milk'] },
      Cracotte: { allergens: ['wheat', 'sesame'], price: '3' },
      Gelée: { allergens: 'none' },
    },
    notes: ['-'],
  },
  {
    what: 'titles and prices in Japanese',
    text: '商品名,メーカー,サイズ,価格,備考\n和ろうそく,灯り工房,12cm,¥880,\nマッチ,神戸燐寸,,330円,注意\n合計,,,1210円,\n',
    names: ['和ろうそく', 'マッチ'],
    values: {
      マッチ: { price: '330', priceCurrency: 'JPY' },
      和ろうそく: { brand: '灯り工房', size: '12cm' },
    },
    passed: ['sum'],
  },
  {
    what: 'buying prices in other languages, which stay private',
    text: 'Namn;Pris inköp;Prezzo fornitore;Preis (EK);Prix achat HT\nKrus;12,00;13,00;14,00;15,00\nFat;22,00;23,00;24,00;25,00\n',
    names: ['Krus', 'Fat'],
    values: { Krus: {} },
    notes: ['12,00', '13,00', '14,00', '15,00'],
  },
];
