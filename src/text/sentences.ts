/**
 * A text cut into sentences. UAX #29 knows no abbreviations, so its breaks are looked at again: most of what is
 * here joins what it parts, because a stop may belong to a word ("Dr. Finch"), and a question to the one who asks it
 * ("“Why?” she asked"). A stop that may do either ends its sentence where a word follows that opens many.
 * The approach is that of Kiss & Strunk (2006), "Unsupervised Multilingual Sentence Boundary Detection"; the lists are
 * written by hand, no source.
 */
import { primaryLanguage } from './language-tag.ts';
import { latelyKnown } from './lately.ts';
import { ownValue } from './own-value.ts';
import { segmentsOf } from './segments.ts';
import { wordSet } from './word-set.ts';

/** A span of a text, as offsets in UTF-16 units: `end` is the first that is no longer in it. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

interface Abbreviations {
  /** Something always follows them. Without their last stop. */
  readonly inside: ReadonlySet<string>;
  /** They stand inside a sentence or close it. */
  readonly either: ReadonlySet<string>;
  /** Words that open a sentence far oftener than they are a name. */
  readonly openers: ReadonlySet<string>;
  /** Ends of words that are always cut short: "Mühlenstr. 5". */
  readonly ending?: RegExp;
  /** "3. Mai": a stop after one or two digits makes an ordinal. */
  readonly ordinals?: true;
}

/** Titles are written alike in many languages, and goods bear their numbers in all. */
const EVERYWHERE = 'Dr Mr Mrs Ms Prof St No no Nr nr vs approx ca c cf max min vol fig p pp vgl';

const ENGLISH: Abbreviations = {
  inside:
    wordSet(`${EVERYWHERE} Mt Rev Hon Capt Sgt Lt Col Gen nos No Nos ch sec ed eds e.g i.e eg ie viz dia dim wt
    temp incl excl ext tel Fig Figs figs Vol Vols vols Ch est`),
  either: wordSet('Jr Sr Co Ltd Inc Corp Bros'),
  openers:
    wordSet(`A An The This That These Those It They We He She I You There Here But And Or So If When While As In
    On At For From To With By After Before Then Now Not No Our My Your His Her Its Their One Some Most Many Each Every
    All Both What Why How Who Where Nobody Nothing Only Just Once Until Since Because Although`),
};

const GERMAN: Abbreviations = {
  inside:
    wordSet(`${EVERYWHERE} z.B z d.h u.a u d i.d.R bzw evtl inkl exkl zzgl zzt ggf Hr Hrn Mio Mrd Abb Art Bd Kap
    geb gest tel Tel sog lt Str str mind insb`),
  either: wordSet('usw etc Jh Std Min Sek Fr'),
  openers:
    wordSet(`Der Die Das Den Dem Des Ein Eine Einer Einen Einem Es Er Sie Wir Ihr Ich Du Man Dann Da Dort Hier Und
    Oder Aber Doch Denn Wenn Als Wie Was Wer Wo Warum Nach Vor Bei Mit Von Zu Im In Am An Auf Aus Für Nicht Kein Keine
    Jeder Jede Jedes Alle Nur Noch Auch So Diese Dieser Dieses Mehr`),
  ending: /str$/i,
  ordinals: true,
};

const FRENCH: Abbreviations = {
  inside: wordSet(`${EVERYWHERE} M MM Mme Mlle Mgr Me Vve env ex p.ex av apr J.-C tél art chap éd réf`),
  either: wordSet('etc'),
  openers:
    wordSet(`Le La Les L’ Un Une Des Du De Il Elle Ils Elles On Nous Vous Je Tu Ce Cette Ces C’est Cela Ça Et Ou
    Mais Donc Or Car Puis Si Quand Dans En Sur Avec Pour Par Sans Après Avant Alors Ici Mon Ma Mes Ton Ta Son Sa Ses
    Notre Nos Votre Vos Leur Leurs Tout Tous Toute Toutes Chaque Aucun Rien Personne Enfin`),
};

const OTHER: Abbreviations = { inside: wordSet(EVERYWHERE), either: new Set(), openers: new Set() };

const LANGUAGES: Readonly<Record<string, Abbreviations>> = { en: ENGLISH, de: GERMAN, fr: FRENCH };

/**
 * The last word of what was read so far with its stops inside, before a last stop: "e.g", "J.-C", "Finch". It begins where no
 * longer one does, so that each sign is read once.
 */
const LAST_WORD =
  /(?<![\p{L}\p{M}\p{N}]|[\p{L}\p{M}\p{N}](?:\.-?(?=[\p{L}\p{N}])|[’'](?=\p{L})))([\p{L}\p{M}\p{N}](?:[\p{L}\p{M}\p{N}]|\.-?(?=[\p{L}\p{N}])|[’'](?=\p{L}))*)\.\s*$/u;
const FIRST_WORD = /^[\s"“„«»‘(]*([\p{L}\p{M}\p{N}]+(?:[’'](?:\p{L}+)?)?)/u;
/** "J. Marsh", and in German "u. a." */
const INITIAL = /^\p{L}$/u;
/** "U.K", "J.R": letters that stand for words. */
const LETTERS_WITH_STOPS = /^\p{L}(?:\.-?\p{L})+$/u;
/** Closing marks that stand off from the stop before them, as French sets them. */
const CLOSING = /^[»”’)\]]+\s*/u;
const BEGINS_LOWER = /^[«»“„"‘(\s]*\p{Ll}/u;
const ENDS_ASKED = /[!?]["”’“»«)\]\s]*$/u;
const ORDINAL = /^\d{1,2}$/;
/** "1. Soak the seeds." */
const NUMBER_ALONE = /^\s*\d{1,3}\.\s*$/;

/** UAX #29 leaves an opening bracket that follows a stop without a space with the sentence before it. */
const OPENING_LAST = /(?<![「『（])[「『（]+$/u;
/** What goes on with a quotation or a bracket in Japanese, with the words that only begin like it. */
const JAPANESE_CLOSED = /[。！？!?][」』）)]+$/u;
const JAPANESE_GOING_ON = /^(?:と(?!ても|ころ|にかく|りあえず|もかく|きに|きどき)|って|を|の(?!ち)|、)/u;

const isInside = (word: string, { inside, ending }: Abbreviations): boolean =>
  inside.has(word) || inside.has(word.charAt(0).toLowerCase() + word.slice(1)) || ending?.test(word) === true;

/** Whether a stop after `word` leaves its sentence open, with `next` after it. */
const leavesOpen = (word: string, next: string, language: Abbreviations): boolean => {
  if (isInside(word, language)) return true;
  const opens = language.openers.has(FIRST_WORD.exec(next)?.[1] ?? '');
  if (opens) return false;
  if (language.ordinals && ORDINAL.test(word)) return true;
  if (/^[ap]\.m$/i.test(word)) return false;
  return language.either.has(word) || INITIAL.test(word) || LETTERS_WITH_STOPS.test(word);
};

/** Whether what was read so far goes on in `next`, which UAX #29 takes for another sentence. */
const goesOn = (begun: string, next: string, primary: string, language: Abbreviations): boolean => {
  if (/[\n\r\u2028\u2029\u0085]$/.test(begun)) return false;
  if (primary === 'ja' && JAPANESE_CLOSED.test(begun)) return JAPANESE_GOING_ON.test(next);
  if (ENDS_ASKED.test(begun) && BEGINS_LOWER.test(next)) return true;
  if (NUMBER_ALONE.test(begun)) return true;
  const word = LAST_WORD.exec(begun)?.[1];
  return word !== undefined && leavesOpen(word, next, language);
};

/** A stop, a space and a figure: UAX #29 reads on wherever small letters follow the figure. */
const BEFORE_FIGURE = /(?<![\p{L}\p{N}])([\p{L}\p{N}]{4,})\.["”’)\]]*\s+(?=\d)/gu;

const startsIn = (segment: string, language: Abbreviations): readonly number[] =>
  [...segment.matchAll(BEFORE_FIGURE)]
    .filter(({ 1: word = '' }) => !isInside(word, language) && !language.either.has(word))
    .map(({ 0: found, index }) => index + found.length);

/** Signs before a break that decide on it: no word with its closing marks is longer. */
const TAIL = 60;
const MOST_OPENING = 3;

/** Text of Latin letters and common signs in which no sentence can end but the last: names, captions and headings are one at a glance. */
const ONE_SENTENCE = /^[A-Za-z\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u00ff0-9 '’"“”‘,;()–—-]+[.!?]?$/;

const spansOf = (text: string, lang: string): readonly Span[] => {
  const primary = primaryLanguage(lang);
  const language = ownValue(LANGUAGES, primary) ?? OTHER;
  const starts: number[] = [];
  let start = 0;
  for (const { segment, index } of segmentsOf(text, lang, 'sentence')) {
    const closing = index > 0 && primary === 'fr' ? (CLOSING.exec(segment)?.[0].length ?? 0) : 0;
    const opening = OPENING_LAST.exec(text.slice(Math.max(0, index - MOST_OPENING), index))?.[0].length ?? 0;
    const at = index + closing - opening;
    const rest = text.slice(at, index + segment.length);
    if (
      starts.length === 0 ||
      (at > start &&
        rest !== '' &&
        !goesOn(text.slice(Math.max(start, at - TAIL), at), rest, primary, language))
    ) {
      start = at;
      starts.push(at);
    }
    for (const inside of startsIn(segment, language)) {
      start = index + inside;
      starts.push(start);
    }
  }
  return starts.map((from, i) => ({ start: from, end: starts[i + 1] ?? text.length }));
};

/** An article has a few hundred paragraphs, and a dozen readers in each build. */
const MOST_KNOWN = 500;

const knownSpans = latelyKnown(spansOf, MOST_KNOWN);

/**
 * Sentences of a text in a language (BCP 47), in order, with the white space after each: together they are the
 * text.
 */
export const sentenceSpans = (text: string, lang: string): readonly Span[] =>
  ONE_SENTENCE.test(text) ? [{ start: 0, end: text.length }] : knownSpans(text, lang);

/** The same as texts, without the white space at their ends; what has nothing else in it is left out. */
export const sentencesOf = (text: string, lang: string): readonly string[] =>
  sentenceSpans(text, lang)
    .map(({ start, end }) => text.slice(start, end).trim())
    .filter((sentence) => sentence !== '');
