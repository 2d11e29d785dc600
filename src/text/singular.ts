/** English singulars. */
import pluralize from 'pluralize';
import { wordSet } from './word-set.ts';

/*
 * `pluralize` keeps its rules for the whole process, so none is added there: what it gets wrong for words of goods
 * stands here, in front of it. The lists are by hand; which words need one was found by running the nouns of
 * WordNet's files of artifacts, plants, foods and animals through it, there and back.
 */

/** Words in -s that have no other form, or are singular themselves. */
const STABLE = wordSet(`
  binoculars bellows breeches briefs chaps clippers cords dungarees forceps gallows goggles jeans knickers leggings
  loppers nippers nutcrackers overalls pants pincers pinking pliers pyjamas pajamas scissors secateurs shears shorts
  snips snuffers spectacles sunglasses suspenders tights tongs trousers trunks tweezers underpants
  brass bass canvas lens gas atlas pampas pancreas christmas bias alias ananas madras texas moss cosmos thermos chaos
  asbestos calvados kudos pathos rhinoceros series species chassis headquarters crossroads barracks means molasses
  mathematics physics gymnastics athletics graphics ceramics acoustics electronics mechanics news measles billiards
  draughts darts checkers skittles innings savings whereabouts suds oats grits clothes glass rhus aloes
  debris glacis couscous haggis chablis precis marquis fracas patois pois portas fundus sassafras arras mas isles yes
  pothos rooibos lithops thrips nepenthes ribes stachys dryas echinops phyllostachys avens phlox schnapps turps dais
  camas triceps biceps bus plus thus us this his its was has does is as cyclamen stamen abdomen specimen ramen regimen
  omen bitumen albumen dolmen biogas vegas`);

/** One of a pair's two parts is the pair: nobody sells a scissor. */
const PAIR_OF: ReadonlyMap<string, string> = new Map(
  'binocular goggle jean legging lopper plier pyjama pajama scissor secateur shear tight tong trouser tweezer'
    .split(' ')
    .map((half) => [half, `${half}s`]),
);

/** Singulars in -che, whose plural looks like one of -ch. */
const IN_CHE = wordSet(`
  ache attache avalanche backache brioche cache cartouche ceviche cliche cloche creche douche earache fiche ganache
  gouache headache heartache microfiche moustache mustache niche panache pastiche psyche quiche ruche seiche
  stomachache toothache tranche`);

/** Singulars in -ie, whose plural looks like one of -y. */
const IN_IE = wordSet(`
  aerie auntie barbie beanie birdie bogie bookie boogie bourgeoisie bowtie brasserie brie brownie budgie cabbie calorie
  charcuterie collie cookie coterie cowrie crappie cutie dearie die dixie doggie eyrie foodie freebie genie goalie
  goodie groupie hankie hippie hoodie hogtie indie junkie kelpie kiddie laddie lassie lie lingerie magpie meanie
  menagerie mudpie necktie newbie nightie oldie onesie patisserie pie pinkie pixie potpie prairie prezzie reverie roadie
  rookie rotisserie sarnie selfie sharpie smartie smoothie sortie sweetie talkie techie tie toastie townie untie
  veggie weenie wellie wheelie yuppie zombie movie eerie walkie camaraderie bogie tootsie stymie eagle`);

/** Singulars in -is; the Greek endings are known by their look. */
const IN_IS = wordSet(`
  axis praxis hubris iris trellis clematis mantis pelvis tennis portcullis amaryllis orchis arabis liatris cannabis epidermis dermis
  glottis ibis loris verdigris ambergris berberis bellis eucomis adonis physalis digitalis myosotis oxalis pieris
  caryopteris dryopteris aegis hamamelis penis testis marquis chablis brewis coulis vis`);
const GREEK_IS = /(?:[aeouy]sis|opsis|itis|polis|dermis)$/;

/** Singulars in -u and -ou, whose plural looks like a singular in -us. */
const IN_U = wordSet(`
  tofu tiramisu caribou emu gnu tutu guru kudzu haiku bijou cachou marabou bayou menu zebu coypu fondu sudoku futsu yuzu
  bantu tatou impromptu parvenu ecru`);

/** Singulars in -se that look like the plural of one in -s: a mousse, a fuse. */
const IN_SE = wordSet(`
  mousse demitasse fosse crosse lacrosse impasse finesse crevasse bouillabaisse posse pelisse fuse refuse excuse ruse muse
  recluse use reuse abuse hypotenuse cruse infuse lapse relapse`);

/** Things in -f and -fe whose plural is in -ves; every other -ves is of a word in -ve. */
const IN_F =
  /(?:^|[a-z])(?:calves|halves|shelves|selves|wolves|loaves|thieves|sheaves|scarves|wharves|hooves|dwarves)$|(?<!c|s|inter)leaves$|^elves$|^rooves$|^beeves$/;
const IN_FE = /(?:knives|wives)$|^(?:after|half|night|low|still)?lives$/;

/** Singulars in -oe. */
const IN_OE =
  /^(?:.*shoe|(?:tip|mistle|hammer)?toe|canoe|oboe|(?:back)?hoe|aloe|sloe|floe|roe|doe|foe|woe|throe|hoopoe|pekoe)$/;

const IRREGULAR: ReadonlyMap<string, string> = new Map([
  ['gladioli', 'gladiolus'],
  ['fezzes', 'fez'],
  ['topazes', 'topaz'],
  ['oases', 'oasis'],
]);

/** What our lists say; undefined where they say nothing. */
const listed = (folded: string): string | undefined => {
  const pairOrOdd = PAIR_OF.get(folded) ?? IRREGULAR.get(folded);
  if (pairOrOdd !== undefined) return pairOrOdd;
  if (STABLE.has(folded) || IN_IS.has(folded) || GREEK_IS.test(folded)) return folded;
  if (!folded.endsWith('s')) return undefined;
  const withoutS = folded.slice(0, -1);
  const withoutEs = folded.slice(0, -2);
  if (IN_CHE.has(withoutS) || IN_IE.has(withoutS) || IN_U.has(withoutS) || IN_SE.has(withoutS))
    return withoutS;
  if (folded.endsWith('ses') && (STABLE.has(withoutEs) || IN_IS.has(withoutEs))) return withoutEs;
  if (folded.endsWith('tzes')) return withoutEs;
  if (folded.endsWith('oes')) return IN_OE.test(withoutS) ? withoutS : withoutEs;
  if (folded.endsWith('ves')) return singularInVe(folded);
  // `pluralize` takes togas, regalias and safaris for singulars.
  return folded.length > 4 && /(?:gas|alias|ris)$/.test(folded) ? withoutS : undefined;
};

const singularInVe = (folded: string): string => {
  const stem = folded.slice(0, -3);
  if (IN_F.test(folded)) return `${stem}f`;
  return IN_FE.test(folded) ? `${stem}fe` : `${stem}ve`;
};

/** Shorter than any plural: s, as, ps. */
const SHORTEST_PLURAL = 3;

/** The singular of a folded English word; a word that is singular already is given back. */
export const singularOf = (folded: string): string =>
  folded.length < SHORTEST_PLURAL ? folded : (listed(folded) ?? pluralize.singular(folded));
