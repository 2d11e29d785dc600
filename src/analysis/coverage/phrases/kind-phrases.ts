/** What people put before the record's kind: a quality of the name, how many pieces, a size of paper, for whom it is. */
import type { Item } from '../../../model/box.ts';
import type { Language } from '../../language/language.ts';
import { prepositions } from '../../language/lexicon/grammar.ts';
import { ownAudienceOf } from './audience.ts';
import { candidateOf, type PhraseCandidate } from './candidate.ts';
import { asTyped, type ReadName } from './name.ts';
import { pluralOf } from './name-phrases.ts';
import { describes } from './name-words.ts';
import type { Origin } from './phrase.ts';

/** What one quality before a kind weighs. */
const QUALITY_WEIGHT = 0.5;

/** More words before a kind that has its own are a description. */
const MOST_BEFORE_KIND = 2;

/**
 * The name's qualities before the record's kind, where that says more than the name's noun: "ceramic coffee dripper" of a
 * ceramic dripper of kind coffee dripper.
 */
const ofNameBeforeKind = (item: Item, name: ReadName, language: Language): readonly PhraseCandidate[] => {
  const kind = language.words(asTyped(item.kind));
  const head = kind.at(-1);
  if (!head || kind.length < 2) return [];
  return name.phrases.flatMap(({ text, head: at }) => {
    const words = language.words(text);
    const before = words.slice(0, at);
    const isAlike = at === words.length - 1 && words[at]?.key === head.key;
    if (!isAlike || before.length === 0 || before.length > MOST_BEFORE_KIND) return [];
    if (before.some(({ key }) => kind.some((word) => word.key === key))) return [];
    // A thing before a thing is the name's own way to say what it is: no "valve coffee tin", but "pour over coffee dripper".
    if (!before.every(describes) && !before.some(({ folded }) => prepositions.has(folded))) return [];
    const whole = `${text.slice(0, before.at(-1)?.end ?? 0)} ${asTyped(item.kind)}`;
    const part: Origin = { from: 'name', part: 'name without its other qualities' };
    return candidateOf(whole, before.length + kind.length - 1, part, QUALITY_WEIGHT, language);
  });
};

/** "500 piece puzzle": of what comes in pieces people type how many, before the name's noun and before the kind. */
const ofPieces = (item: Item, name: ReadName, language: Language): readonly PhraseCandidate[] => {
  const count = /\b(\d{1,5})[\s-]?(?:piece|pc)s?\b/i.exec(item.name)?.[1];
  if (count === undefined) return [];
  const part: Origin = { from: 'name', part: 'kind with its size' };
  return [...new Set([name.kind, asTyped(item.kind)])].flatMap((noun) =>
    candidateOf(`${count} piece ${noun}`, language.words(noun).length + 1, part, QUALITY_WEIGHT, language),
  );
};

/** "a5 writing pad": a size of paper (ISO 216) is typed, because the envelope and the shelf ask for it. */
const ofPaper = (item: Item, language: Language): readonly PhraseCandidate[] => {
  const size = /\bA[2-7]\b/i.exec(item.name)?.[0]?.toLowerCase();
  const kind = asTyped(item.kind);
  const part: Origin = { from: 'name', part: 'kind with its size' };
  const { length } = language.words(kind);
  return size === undefined ? [] : candidateOf(`${size} ${kind}`, length, part, QUALITY_WEIGHT, language);
};

/** A name of few words that has its kind in it is typed as it stands: "sealing wax sticks" of kind sealing wax. */
const MOST_OF_A_SHORT_NAME = 3;

const ofShortName = (item: Item, language: Language): readonly PhraseCandidate[] => {
  const words = language.words(item.inText.short);
  const kind = language.words(item.kind);
  const hasKind = kind.every(({ key }) => words.some((word) => word.key === key));
  if (!hasKind || words.length > MOST_OF_A_SHORT_NAME || words.length <= kind.length) return [];
  const part: Origin = { from: 'name', part: 'name without its measure' };
  return candidateOf(asTyped(item.inText.short), words.length - 1, part, QUALITY_WEIGHT, language);
};

/** "dog lick mat" and "lick mat for dogs", in a box for dogs and of a kind that says so itself. */
const ofAudience = (
  item: Item,
  audience: string | undefined,
  language: Language,
): readonly PhraseCandidate[] => {
  const own = ownAudienceOf(item, language);
  const whom = own ?? audience;
  if (whom === undefined) return [];
  const kind = asTyped(item.kind);
  const base = own === undefined ? kind : kind.replace(/^\S+\s/, '');
  const { length } = language.words(base);
  const part: Origin = { from: 'name', part: 'whom or what it is for' };
  return [
    ...candidateOf(`${whom} ${base}`, length, part, QUALITY_WEIGHT, language),
    ...candidateOf(`${base} for ${pluralOf(whom)}`, length - 1, part, QUALITY_WEIGHT, language),
  ];
};

/** All of these. */
export const kindPhrasesOf = (
  item: Item,
  name: ReadName,
  language: Language,
  audience: string | undefined,
): readonly PhraseCandidate[] => [
  ...ofNameBeforeKind(item, name, language),
  ...ofPieces(item, name, language),
  ...ofPaper(item, language),
  ...ofShortName(item, language),
  ...ofAudience(item, audience, language),
];
