/** What a proof says of an article, worded alike on its page, on a terminal and in JSON. */
import type {
  Edit,
  Grade,
  ItemCoverage,
  Limit,
  Reading,
  RivalReason,
  TextMentions,
} from '../../analysis/coverage/coverage.ts';
import type { NameOrigin } from '../../analysis/coverage/phrases/name.ts';
import type { Origin } from '../../analysis/coverage/phrases/phrase.ts';
import type { FieldName } from '../../analysis/coverage/rivals/ranking.ts';
import type { Zone } from '../../analysis/coverage/text/zones.ts';
import type { ProofVerdict } from '../../analysis/coverage/verdict.ts';
import { capital, listed, numberWord } from '../../text/counting-words.ts';

const zones: Readonly<Record<Zone, string>> = {
  title: 'title',
  address: 'address',
  summary: 'summary',
  heading: 'heading',
  opening: 'opening',
  section: 'own section',
  body: 'elsewhere',
  'picture text': 'picture text',
  'link text': 'link text',
  'structured data': 'structured data',
};

/** A rival's fields, said of once and of several times: "its title and headings". */
const fields: Readonly<Record<FieldName, readonly [one: string, more: string]>> = {
  title: ['its title', 'its title'],
  address: ['its address', 'its address'],
  summary: ['its summary', 'its summary'],
  heading: ['a heading', 'headings'],
  text: ['its text', 'its text'],
  'picture text': ['a picture text', 'picture texts'],
  'link text': ['a link', 'links'],
  'structured data': ['its structured data', 'its structured data'],
};

const gradeNames: Readonly<Record<Grade, string>> = {
  exact: 'exact',
  inflected: 'inflected',
  'same stem': 'same stem',
  scattered: 'scattered',
  'head only': 'head only',
  absent: 'absent',
};

const gradeMeanings: Readonly<Record<Grade, string>> = {
  exact: 'the very words',
  inflected: 'singular for plural, or the other way about',
  'same stem': 'words of the same stem',
  scattered: 'all its words in one noun phrase, or in two that a small word joins',
  'head only': 'only the word that says what it is, or one that can mean nothing else here',
  absent: 'not there',
};

const limits: Readonly<Record<Limit, string>> = {
  'names taken whole':
    'Names are taken apart, and reading ease is measured, in English alone: here phrases come from `kind` and `also`.',
  'no stemmer': 'There is no stemmer for this language: a word in another form is another word here.',
};

/** What a phrase keeps of the name it was taken from. */
const nameParts: Readonly<Record<NameOrigin, string>> = {
  'name without its measure': 'name without its measure',
  'name without its other qualities': 'name without its other qualities',
  'end of the name': 'end of the name',
  'kind in the name': 'kind in the name',
  'thing by itself': 'thing by itself',
  'kind with its size': 'kind with its size',
  'whom or what it is for': 'whom or what it is for',
  name: 'name',
};

/** "kind", "name without its measure", "also: seed box", "searches.csv, typed 226 times". */
const origin = (one: Origin): string => {
  if (one.from === 'kind') return 'kind';
  if (one.from === 'name') return nameParts[one.part];
  if (one.from !== 'search') return `${one.from}: ${one.value}`;
  const as = one.as === undefined ? '' : ` as “${one.as}”`;
  return `searches.csv, typed ${one.count} times${as}`;
};

const quoted = (text: string): string => `“${text}”`;

/** An edit as something to do: "Own section, line 14: call the thing by its name; now it is only “the tin”." */
const instruction = ({ action, zone, at }: Pick<Edit, 'action' | 'at' | 'zone'>): string => {
  const where = `${capital(zones[zone])}, line ${at.line}`;
  if (action.kind === 'call by name')
    return `${where}: call it by its name; now it is only ${quoted(action.now)}.`;
  if (action.kind === 'begin with it') return `${where}: begin with what the picture shows.`;
  return `${where}: name what is in the box.`;
};

/** "never", "once", "14 times". */
const times = (count: number): string => ['never', 'once', 'twice'][count] ?? `${count} times`;

const textClause = (said: string, there: TextMentions, here: TextMentions): string => {
  const own = `this one ${times(here.times)}`;
  return there.words === undefined || here.words === undefined
    ? `its text says ${said} ${times(there.times)}, ${own}`
    : `its text says ${said} ${times(there.times)} in ${there.words} words, ${own} in ${here.words}`;
};

/** Why a rival comes first: "Its title and a heading say it, and its text says it 14 times, this one 3 times." */
const rivalReason = (reason: RivalReason): string => {
  if (reason.kind === 'has its words') {
    const names = reason.fields.map((field) => fields[field][1]);
    return `The words of ${quoted(reason.phrase)} stand more often in ${listed(names)}.`;
  }
  const { core, text } = reason;
  const said = core === undefined ? 'it' : quoted(core);
  const names = reason.fields.map(({ field, many }) => fields[field][many ? 1 : 0]);
  const isPlural =
    names.length > 1 ||
    reason.fields.some(({ field, many }) => many && fields[field][0] !== fields[field][1]);
  const clauses = [
    ...(names.length > 0 ? [`${listed(names)} ${isPlural ? 'say' : 'says'} ${said}`] : []),
    ...(text ? [textClause(names.length > 0 ? 'it' : said, text.there, text.here)] : []),
  ];
  return `${capital(clauses.join(', and '))}.`;
};

const ordinals = [
  ...['first', 'second', 'third', 'fourth', 'fifth'],
  ...['sixth', 'seventh', 'eighth', 'ninth', 'tenth'],
];

/** "second"; from the eleventh on "in place 11". */
const ordinal = (rank: number): string => ordinals[rank - 1] ?? `in place ${rank}`;

/** Of what may be many, this many are named; the rest are counted. */
const MOST_NAMED = 3;

/** "“seed tin”, “tin”, “box” and three others": the first few in quotes, and how many there are besides. */
const somePhrases = (phrases: readonly string[]): string => {
  const all = phrases.map(quoted);
  return listed(
    all.length <= MOST_NAMED + 1
      ? all
      : [...all.slice(0, MOST_NAMED), `${numberWord(all.length - MOST_NAMED)} others`],
  );
};

/** "typed 351 times, 120 times in words that the article has; never said: “grow light for seedlings”." */
const typed = ({ all, answered, unanswered }: NonNullable<ItemCoverage['typed']>): string => {
  const have =
    answered === 0
      ? 'never'
      : answered === all
        ? all === 1
          ? ''
          : 'always'
        : answered === 1
          ? 'once'
          : `${answered} times`;
  const never = unanswered.length === 0 ? '' : `; the text never says ${somePhrases(unanswered)}`;
  return `typed ${times(all)}, ${have === '' ? '' : `${have} `}in words that the article has${never}.`;
};

const thoseReached = ({ below, reached, items }: ProofVerdict): string => {
  if (below === 1) return items === 1 ? 'it' : 'the other';
  if (reached === below)
    return below === items ? (items === 2 ? 'both' : 'all') : `the other ${numberWord(below)}`;
  return reached === 1 ? 'one of them' : `${numberWord(reached)} of them`;
};

const standingVerdict = (proof: ProofVerdict): string => {
  const { aim, items, below, reached, stuck, edits } = proof;
  if (items === 0) return 'There are no items to prove.';
  if (below === 0)
    return items === 1
      ? `The one item stands at the aim of ${aim}.`
      : `${items === 2 ? 'Both' : `All ${numberWord(items)}`} items stand at the aim of ${aim}.`;
  const at = items - below;
  const stand =
    items === 1
      ? `The one item stands below the aim of ${aim}`
      : at === 0
        ? `${items === 2 ? 'Neither' : 'None'} of the ${numberWord(items)} items stands at the aim of ${aim}`
        : `${capital(numberWord(at))} of ${numberWord(items)} items ${at === 1 ? 'stands' : 'stand'} at the aim of ${aim}`;
  const some = `${numberWord(edits)} ${edits === 1 ? 'edit' : 'edits'}`;
  const stay = stuck.length === 1 ? 'stays' : 'stay';
  const many = stuck.length === items ? 'any of them' : `${numberWord(stuck.length)} of them`;
  const names = stuck.length <= MOST_NAMED ? listed(stuck) : many;
  if (edits === 0) return `${stand}, and there is no edit to propose for ${names}.`;
  if (reached === 0 && stuck.length > MOST_NAMED)
    return `${stand}; ${some} would help, but not as far as that.`;
  if (reached === 0) return `${stand}; ${some} would help, but ${names} ${stay} below it.`;
  const rest = stuck.length === 0 ? '' : `, and ${names} ${stay} below it`;
  return `${stand}; ${some} ${edits === 1 ? 'brings' : 'bring'} ${thoseReached(proof)} there${rest}.`;
};

/** The proof in a sentence or two: how many items stand at the aim, what would bring the others there, and which say too little. */
const verdict = (proof: ProofVerdict): string => {
  const { items, thin, below } = proof;
  const standing = standingVerdict(proof);
  if (thin.length === 0) return standing;
  const names = thin.length <= MOST_NAMED ? listed(thin) : `${numberWord(thin.length)} items`;
  const say = `Thin: ${names} ${thin.length === 1 ? 'says' : 'say'} too little`;
  if (below > 0) return `${standing} ${say} to be found, whatever the text names.`;
  // The command ends with 1 for it: nobody shall read that all is well.
  const unfound =
    items === 1
      ? 'will not be found'
      : thin.length === items
        ? 'none will be found'
        : `${numberWord(thin.length)} will not be found`;
  return `${standing.slice(0, -1)}, but ${unfound}. ${say}, whatever the text names.`;
};

/** Flesch's own table for his scores (How to Write Plain English, 1979, chapter 2; from memory): the least of each. */
const EASE: readonly (readonly [number, string])[] = [
  [90, 'very easy'],
  [80, 'easy'],
  [70, 'fairly easy'],
  [60, 'plain English'],
  [50, 'fairly difficult'],
  [30, 'difficult'],
];

/** The article as reading, in one or two sentences. Numbers are written as `lang`, a BCP 47 tag of English, groups them. */
const reading = ({ words, sentences, minutes, ease, grade }: Reading, lang: string): string => {
  const figure = new Intl.NumberFormat(lang);
  const some = (count: number, one: string): string =>
    `${figure.format(count)} ${count === 1 ? one : `${one}s`}`;
  const whole = Math.max(1, Math.round(minutes));
  const time = `about ${numberWord(whole)} ${whole === 1 ? 'minute' : 'minutes'} of reading`;
  const first = `${some(words, 'word')} in ${some(sentences, 'sentence')}, ${time}.`;
  if (ease === undefined || grade === undefined) return first;
  const years = Math.max(1, Math.round(grade));
  const school = `somebody with ${numberWord(years)} ${years === 1 ? 'year' : 'years'} of school can follow it`;
  const easy = EASE.find(([least]) => ease >= least)?.[1] ?? 'very difficult';
  return `${first} Its reading ease is ${Math.round(ease)}, which Flesch calls ${easy}; by Kincaid’s count ${school}.`;
};

/** What a proof says of an article. */
export const coverage = {
  zones,
  gradeNames,
  gradeMeanings,
  limits,
  nameParts,
  origin,
  instruction,
  rivalReason,
  ordinal,
  quoted,
  somePhrases,
  typed,
  verdict,
  reading,
};
