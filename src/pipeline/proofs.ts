/**
 * The proofs of cycles: each part is kept by what it depends on. What an article says itself depends on its cycle; how it
 * stands beside others on the small indexes of them all. A whole proof is put together only where somebody reads it.
 */
import { countFound } from '../analysis/coverage/aim.ts';
import type { Coverage } from '../analysis/coverage/coverage.ts';
import { standingText } from '../analysis/coverage/figures.ts';
import type {
  ArticleIndex,
  ComparedCoverage,
  OwnCoverage,
  ReadSearches,
  Surroundings,
} from '../analysis/coverage/measure-coverage.ts';
import type { TypedSearches } from '../analysis/coverage/phrases/typed.ts';
import type { Passage } from '../analysis/coverage/text/passage.ts';
import type { Proof, Tools } from '../channels/channel.ts';
import { type Diagnostic, mustFixAny } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Item, Moment } from '../model/box.ts';
import { isSealed } from '../model/seal.ts';
import { digestOf } from '../text/digest.ts';
import { knownBy, latest } from '../text/lazy.ts';
import { keepData, type Memory, recallData } from '../text/memory.ts';
import type { WordNet } from '../text/wordnet.ts';
import { comparedFor, type Read, type Subject } from './compared.ts';
import { DEFAULT_AIM } from './defaults.ts';
import type { Kept } from './kept.ts';
import { strangerFindings, strangersOf } from './stranger-findings.ts';
import { substanceFindings } from './substance-findings.ts';

/** A proof in short. */
export interface Proved {
  readonly cycle: string;
  readonly theme: string;
  readonly aim: number;
  readonly items: number;
  readonly atAim: number;
  /** `shown` is its standing as reports show it. */
  readonly weakest?: { readonly name: string; readonly standing: number; readonly shown: string };
  /** Items that say too little: they are not at the aim, whatever they stand at. */
  readonly thin: number;
  readonly crowded: number;
  readonly rivals: number;
}

export interface ProofsInput {
  readonly box: Box;
  readonly asOf: Moment;
  readonly tools: Tools;
  /** Digest of the program: another one may read the same text otherwise. */
  readonly program: string;
  readonly memory: Memory;
  /** The dictionary: asked for other names and for things that are in no record. */
  readonly wordnet: WordNet;
  readonly kept: Kept;
  /** Findings of the whole content: a proof shows those of its cycle, and those of no cycle. */
  readonly diagnostics: readonly Diagnostic[];
  /** Standing that every item should reach; more than 0 and less than 1. */
  readonly aim?: number;
  /** The cycles to prove; all where it is left out. */
  readonly only?: ReadonlySet<string>;
}

export interface ProofsFor {
  /** By cycle, the oldest first. */
  readonly proofs: ReadonlyMap<string, Proof>;
  /** What the proofs found to look at; each proof has its own among its findings. */
  readonly diagnostics: readonly Diagnostic[];
  /** By cycle, each in short. */
  readonly inShort: ReadonlyMap<string, Proved>;
}

/** The findings of each cycle with those of no cycle among them, in their order. */
const findingsByCycle = (diagnostics: readonly Diagnostic[]): ((cycle: Cycle) => readonly Diagnostic[]) => {
  const ofNone: Diagnostic[] = [];
  const byCycle = new Map<string, Diagnostic[]>();
  for (const diagnostic of diagnostics) {
    const [folder, id = ''] = diagnostic.location.file.split('/');
    if (folder === 'cycles') {
      const own = byCycle.get(id) ?? [...ofNone];
      own.push(diagnostic);
      byCycle.set(id, own);
    } else {
      ofNone.push(diagnostic);
      for (const own of byCycle.values()) own.push(diagnostic);
    }
  }
  return ({ id }) => byCycle.get(id) ?? ofNone;
};

/** The items of a box by kind: what one of them is called already, a dictionary need not say of another. */
const itemsByKind = ({ cycles }: Box): ReadonlyMap<string, readonly Item[]> => {
  const kinds = new Map<string, Item[]>();
  for (const { items } of cycles)
    for (const item of items) {
      const ofKind = kinds.get(item.kind);
      if (ofKind) ofKind.push(item);
      else kinds.set(item.kind, [item]);
    }
  return kinds;
};

/**
 * Other names that a dictionary has for some kinds of thing, by kind. It is opened only for a kind of which it is not
 * remembered what it says.
 */
const otherNamesOf = async (
  kinds: ReadonlySet<string>,
  { box, tools: { language }, memory, wordnet }: ProofsInput,
): Promise<ReadonlyMap<string, readonly string[]>> => {
  const items = itemsByKind(box);
  const names = new Map<string, readonly string[]>();
  const unknown = new Map<string, string>();
  for (const kind of kinds) {
    const called = (items.get(kind) ?? []).map(({ name, also }) => [name, also]);
    const key = digestOf('other names', 1, language.tag, kind, called);
    const known = recallData(memory, key) as readonly string[] | undefined;
    if (known) names.set(kind, known);
    else unknown.set(kind, key);
  }
  if (unknown.size === 0) return names;
  const { otherNames } = await import('../analysis/coverage/phrases/other-names.ts');
  const found = otherNames(
    [...unknown.keys()].flatMap((kind) => items.get(kind) ?? []),
    language,
    wordnet,
  );
  for (const [kind, key] of unknown) {
    names.set(kind, found.get(kind) ?? []);
    keepData(memory, key, found.get(kind) ?? []);
  }
  return names;
};

/** What stands around a cycle, as far as its passages read it: an earlier thing's name is shown with its line. */
const surroundingFacts = ({ settings, items, call }: Surroundings): unknown => [
  settings,
  items.map(({ earlier, onSale, hasKindPage }) => [
    earlier.map(({ name, source }) => [name, source.file, source.digest]),
    onSale,
    hasKindPage,
  ]),
  call,
];

/** Both halves of a proof. */
interface Halves {
  readonly cycle: Cycle;
  readonly own: OwnCoverage;
  readonly compared: ComparedCoverage;
}

const shortOf = (
  { cycle, theme, aim, items, overRepeated }: OwnCoverage,
  { rivals }: ComparedCoverage,
): Proved => {
  const [weakest] = [...items].sort((a, b) => a.standing - b.standing);
  return {
    cycle,
    theme,
    aim,
    items: items.length,
    atAim: countFound(items, aim),
    ...(weakest && {
      weakest: {
        name: weakest.name,
        standing: weakest.standing,
        shown: standingText(weakest.standing, aim),
      },
    }),
    thin: items.filter(({ thin }) => thin).length,
    crowded: overRepeated.length,
    rivals: rivals.length,
  };
};

/** The proofs of the cycles that are asked for. A sealed cycle is compared with the open ones, and never the other way about. */
export const proofsFor = async (input: ProofsInput): Promise<ProofsFor> => {
  const { box, asOf, tools, program, memory, kept, diagnostics, only } = input;
  const { language, wording } = tools;
  const cautionText = wording.cautions.text;
  const aim = input.aim ?? DEFAULT_AIM;
  const chosen = box.cycles.filter(({ id }) => only?.has(id) ?? true);
  const isOpen = (cycle: Cycle): boolean => !isSealed(cycle, asOf);
  const coverage = await import('../analysis/coverage/measure-coverage.ts');

  const surroundings = new Map<Cycle, Surroundings>();
  const subjects = new Map<Cycle, Subject>();
  let earlier = '';
  for (const cycle of box.cycles) {
    if (!isOpen(cycle) && !chosen.includes(cycle)) continue;
    const around = coverage.surroundingsOf(box, cycle, asOf);
    surroundings.set(cycle, around);
    const textKey = digestOf('passages', program, cycle, surroundingFacts(around), language.tag);
    subjects.set(cycle, { cycle, textKey, sharedKey: digestOf('shared passages', textKey, earlier) });
    if (isOpen(cycle)) earlier = digestOf(earlier, textKey);
  }
  const readPassages = (cycle: Cycle): readonly Passage[] =>
    coverage.passagesOf(
      cycle,
      surroundings.get(cycle) ?? coverage.surroundingsOf(box, cycle, asOf),
      language,
      cautionText,
    );
  // The parts of one proof ask for the same passages in turn; those of a whole archive would take much memory.
  const passagesOf = latest(readPassages);

  const indexKey = ({ textKey }: Subject): string => digestOf('article index', textKey);
  const indexOf = (subject: Subject): ArticleIndex => {
    const { cycle } = subject;
    const key = indexKey(subject);
    return kept.indexes.get(key, () => {
      const known = memory.recall(key);
      const decoded = known && coverage.decodeIndex(known);
      if (decoded) return decoded;
      const index = coverage.indexArticle(coverage.articleOf(cycle, passagesOf(cycle)));
      memory.keep(key, coverage.encodeIndex(index));
      return index;
    });
  };

  const kinds = new Set(chosen.flatMap(({ items }) => items.map(({ kind }) => kind)));
  const names = await otherNamesOf(kinds, input);
  const searchesDigest = digestOf(box.searches);
  const searches = (): TypedSearches => {
    const key = digestOf('read searches', language.tag, searchesDigest);
    return kept.searches.get(key, () => {
      const known = recallData(memory, key) as ReadSearches | undefined;
      const read = known ?? coverage.readSearches(box.searches, language);
      if (!known) keepData(memory, key, read);
      return coverage.indexSearches(read);
    });
  };
  const ownOf = async (subject: Subject): Promise<Read[1]> => {
    const { cycle, textKey } = subject;
    const others = cycle.items.map(({ kind }) => names.get(kind) ?? []);
    const { name, description } = box.settings;
    const key = digestOf('own coverage', textKey, name, description, searchesDigest, aim, others);
    const make = async (): Promise<OwnCoverage> => {
      const known = recallData(memory, key) as OwnCoverage | undefined;
      if (known) return known;
      const own = await coverage.ownCoverage({
        cycle,
        box: { name, description },
        passages: passagesOf(cycle),
        searches: searches(),
        aim,
        language,
        otherNames: names,
        strangers: await strangersOf({ ...input, cycle, passages: passagesOf(cycle) }),
      });
      keepData(memory, key, own);
      // Its passages are at hand now, and every comparison will ask for its index.
      if (!memory.has(indexKey(subject))) indexOf(subject);
      return own;
    };
    return { own: await kept.owns.get(key, make), key };
  };

  const read: Read[] = [];
  for (const cycle of chosen) {
    const subject = subjects.get(cycle);
    if (!subject) throw new Error(`Expected ${cycle.id} among the cycles that are read`);
    read.push([subject, await ownOf(subject)]);
  }

  const compared = await comparedFor({ read, subjects: [...subjects.values()], isOpen, indexOf }, input);

  // Of one proof too, because each holds its passages.
  const wholeOf = latest(
    ({ cycle, own, compared }: Halves): Coverage =>
      coverage.coverageOf(own, compared, passagesOf(cycle), language),
  );
  const proofs = new Map<string, Proof>();
  const found: Diagnostic[] = [];
  const shorts = new Map<string, Proved>();
  const findingsOf = findingsByCycle(diagnostics);
  for (const [i, [{ cycle }, { own, key }]] of read.entries()) {
    const halves: Halves = { cycle, own, compared: compared[i] ?? { rivals: [], shared: [] } };
    const findings = findingsOf(cycle);
    // A record that is at fault is none of the box yet, and what it would tell of would seem a stranger.
    const isWhole = !mustFixAny(findings);
    const strangers = isWhole ? strangerFindings(own.strangers, wording) : [];
    const ofText = [...substanceFindings(own.thin), ...strangers];
    found.push(...ofText);
    shorts.set(cycle.id, shortOf(own, halves.compared));
    proofs.set(cycle.id, {
      coverage: knownBy(
        // As text, which the runtime writes faster than the digest walks.
        digestOf('coverage', key, JSON.stringify(halves.compared)),
        () => wholeOf(halves),
      ),
      diagnostics: [...findings, ...ofText],
    });
  }
  return { proofs, diagnostics: found, inShort: shorts };
};
