/**
 * Words of other languages than English for things that can hurt somebody: records, names and kinds are in the box's own
 * language. No word that English has with another meaning stands here. Common usage, no source.
 */
import { foldCase } from '../text/fold.ts';
import { lazily } from '../text/lazy.ts';
import type { Category } from './vocabulary.ts';

/** Languages that put words together have the thing at the end of one: "Duftkerze", "värmeljus", "和ろうそく". */
const ENDINGS: Record<Category, string> = {
  food: `marmelade konfitüre gelee honig keks kekse plätzchen gebäck kuchen schokolade pralinen bonbons karamell nüsse käse
    senf essig gewürz gewürze salz zucker nudeln brot müsli wurst schinken aufstrich leckerli leckerlis honing koek koekjes
    chocolade snoep kaas mosterd azijn olie kruiden stroopwafels sylt marmelad honung kakor choklad godis senap ジャム
    はちみつ 蜂蜜 クッキー チョコレート チーズ 菓子 煎餅`,
  drink: `kräutertee früchtetee grüntee schwarztee minztee eistee kaffee saft wein bier likör schnaps limonade kakao koffie
    wijn likeur kaffe 茶 コーヒー 酒 ワイン`,
  cosmetic: `seife salbe balsam badesalz badekugel parfüm peeling nagellack lippenstift duschgel handcreme gesichtscreme
    duftöl bartöl körperöl zeep zalf tvål salva schampo parfym handkräm 石鹸 石けん クリーム 香水 入浴剤`,
  candle: `kerze kerzen teelicht teelichter teelichte streichhölzer räucherstäbchen feuerzeug feuerzeuge kaars kaarsen
    theelichtjes lucifers doftljus värmeljus blockljus tändstickor ろうそく キャンドル マッチ 線香`,
  blade: `messer schere säge beil klinge klingen skalpell rollschneider meißel angelhaken nähnadel nähnadeln sticknadel
    rasierer schaar zaag bijl kniv knivar krokar 包丁 ナイフ はさみ ハサミ 鋏`,
  plant: `pflanze pflanzen blumenzwiebel blumenzwiebeln samen saatgut setzling stecklinge steckling sukkulente sukkulenten
    kaktus kakteen orchidee tulpe tulpen narzisse narzissen hyazinthe hyazinthen lilie lilien bloembol bloembollen zaden
    vetplant kamerplant fröer krukväxt blomlökar 球根 種 苗`,
  children: `spielzeug rassel puppe kuscheltier beißring murmeln bauklötze speelgoed leksak leksaker おもちゃ`,
};

/** The others have it as a word by itself, with what it is like after it: "bougie parfumée". */
const WORDS: Record<Category, string> = {
  food: `confiture confitures miel gâteau gâteaux chocolat chocolats fromage fromages moutarde vinaigre huile sucre sirop
    épices saucisson sablés biscuits mermelada galleta galletas caramelos queso mostaza aceite azúcar especias turrón marmellata miele
    biscotti cioccolato cioccolatini caramelle formaggio senape aceto olio zucchero sciroppo spezie geleia compota mel
    bolachas biscoitos queijo mostarda azeite especiarias miód dżem konfitura czekolada ciastka ciasteczka cukierki
    przyprawa przyprawy olej ocet ser kex ost frystorkad`,
  drink: `thé thés tisane café cafés jus vin bière cidre infusión té zumo vino cerveza licor tisana tè caffè succo birra
    liquore chá sumo suco vinho cerveja herbata kawa sok wino piwo te thee`,
  cosmetic: `savon savons crème crèmes baume shampoing shampooing vernis jabón jabones bálsamo champú sapone saponi balsamo
    profumo sabonete sabonetes champô xampu mydło mydła krem szampon perfumy`,
  candle: `bougie bougies allumettes encens vela velas cerillas incienso candela candele fiammiferi incenso fósforos świeca
    świece świeczka świeczki zapałki kadzidło`,
  blade: `couteau couteaux ciseaux sécateur scie hache lames aiguilles hameçon hameçons cuchillo cuchillos tijera tijeras
    navaja hacha agujas anzuelo anzuelos coltello coltelli forbici faca facas tesoura tesouras agulhas anzóis nóż noże
    nożyczki haczyk haczyki igły sax`,
  plant: `graine graines bulbe plante plantes succulente semilla semillas planta plantas suculenta pianta piante sementi
    sementes nasiona cebulki roślina rośliny sukulent`,
  children: `jouet jouets hochet doudou poupée billes juguete juguetes muñeca giocattolo giocattoli bambola brinquedo
    brinquedos boneca zabawka zabawki`,
};

const table = (words: Record<Category, string>): readonly (readonly [string, Category])[] =>
  Object.entries(words).flatMap(([category, list]) =>
    list
      .trim()
      .split(/\s+/)
      .map((word) => [foldCase(word), category as Category] as const),
  );
// Made when a word is first asked for that English has not.
const endings = lazily(() => table(ENDINGS));
const whole = lazily(() => new Map(table(WORDS)));

/** What holds the thing: a "pot de miel" is honey. */
const CONTAINER =
  /^(?:pot|bocal|boîte|sachet|tube|flacon|bouteille|tarro|bote|frasco|caja|bolsa|pastilla|botella|vasetto|barattolo|bottiglia|scatola|sacchetto|garrafa|caixa|saco|barra|glas|dose|tüte|flasche|päckchen|potje|doosje|fles|zakje|burk|påse|flaska|ask|słoik|paczka|butelka) (?:(?:de|di|du|do|da|mit|von|van|med|met) |d['’])?/;
/** Behind these stands what the thing is for or of: a "tasse à thé" is a cup. */
const BEHIND =
  /(?: (?:de|du|des|da|do|di|del|della|dei|à|au|aux|para|pour|per|mit|für|von|aus|im|met|voor|van|med|för|från|z|na|com|con|avec|en|in)(?= ))|(?: [dl]['’])/;

/** What a thing of this name can do harm as, by a word of another language than English; undefined where none says it. */
export const harmAbroad = (name: string): Category | undefined => {
  const [head = ''] = foldCase(name)
    .replace(/\([^()]{0,200}\)/g, ' ')
    .replace(CONTAINER, '')
    .split(BEHIND);
  for (const word of head.split(/[\s,]+/)) {
    const found = whole().get(word) ?? endings().find(([ending]) => word.endsWith(ending))?.[1];
    if (found) return found;
  }
  // "Tee" with a capital is German tea; a shirt of that name has none.
  return /(?:^|\s)Tee$/.test(name.trim()) ? 'drink' : undefined;
};
