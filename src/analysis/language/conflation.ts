/** Tells which words of one stem mean one thing to a shopper, because "garden" and "gardener" share a stem too. */
import type { Word } from './language.ts';

/** Who does it, or what it is done with: engineer, artist, dispenser, elevator. */
const DOER = /(?:er|or|eer|ist)$/;

/** What is thought or said of it, and is no thing: magnetism, locality, generous. */
const NOTION = /(?:ism|ity|ous|ize|ise|ized|ised)$/;

/** Qualities and doings that grew so far apart that they only look alike: generation and general. */
const FROM_ATION = /(?:al|ous|ic|ical|ive)$/;

/**
 * Words that neither rule keeps apart, each row pairwise. By hand, from a run of Porter's stemmer (1980) over the
 * nouns of WordNet's files of artifacts, plants and foods together with the commoner words of all its files.
 */
const APART: ReadonlySet<string> = new Set(
  `addition additive|additional additive|animal animate animated|arm arms armed|back backing|base basis basic|bat batting
  |bear bearing|bed bedding|bitter bitters|board boarding|book booking|brief briefs|build building|bunt bunting
  |business busy|callus callous|cane caning|cast casting caste|cloth clothes clothing clothe
  |coat coating|comfort comfortable|commode commodity|commute commutation|console consolation
  |crook crooked|cut cutting|die dice|draw drawing drawers|dress dressing|ear earring
  |engage engaging|envelop envelope|even evening|face facing|fill filling|fit fitting|frost frosting|general generic
  |glass glasses glassed|ground grounds|hospital hospitality|house housing|ice icing|import important|iron ironic ironing
  |land landing|lash lashing|lath lathe|lift lifting|line lining|load loading|mat matting|match matching|medic medical
  |mine mining|new news|nut nutty|organ organic organise organize organisation organization|paint painting|pan panning
  |pant pants panting|past paste|pass passing|pipe piping|pot potting|product productive|pud pudding|rag ragged|rate rating
  |ration rational|record recording|rib ribbing|rug rugged|season seasoning|sea sealing|set setting|shirt shirting|short shorts
  |sit sitting|spectacle spectacles|stain staining|station static|statue status|stock stocking|stuff stuffing|suit suiting suite
  |swath swathe|tight tights|tile tiling|tent tentative|tire tired|top topping|train training|trap trapping trappings|trim trimmings
  |trunk trunks|universal universe university|wad wadding|web webbing|wed wedding|wick wicked|will willing|wing winged
  |work works|wrap wrapped|negligee negligent|butter butted|cord cording cords
  |bath bathe|mint minted|quarter quarters|grate grateful grating`
    .split('|')
    .flatMap((row) => {
      const words = row.trim().split(/\s+/);
      return words.flatMap((word) => words.map((other) => `${word} ${other}`));
    }),
);

const keptApart = (a: string, b: string): boolean => APART.has(`${a} ${b}`);

/** Whether one is who or what does the other: it has a doer's ending, and the other does not grow from it. */
const isDoerOf = (doer: string, other: string): boolean =>
  DOER.test(doer) && !DOER.test(other) && !other.startsWith(doer);

const isNotionOf = (notion: string, other: string): boolean => NOTION.test(notion) && !NOTION.test(other);

/** "compassion" of "compass", "generation" of "general"; but decorate, decor and decoration are one. */
const isAnotherIon = (ion: string, other: string): boolean =>
  ion === `${other}ion` || (ion.endsWith('ation') && FROM_ATION.test(other));

/**
 * Whether two words of one stem may count for one another. Singular and plural always may. Doers and what they
 * do may not (gardener, garden), nor notions and things (journalism, journal), nor the rows of a small table.
 * Common practice, no source; the table was derived as it says.
 */
export const mayConflate = (a: Word, b: Word): boolean => {
  if (a.key === b.key) return true;
  if (a.stem !== b.stem) return false;
  return ![
    [a.key, b.key],
    [b.key, a.key],
  ].some(
    ([one = '', other = '']) =>
      keptApart(one, other) || isDoerOf(one, other) || isNotionOf(one, other) || isAnotherIon(one, other),
  );
};
