/** Facts about the box that its papers are made from: found once, before any channel runs. */
import type { Archive, ArticleIndex } from '../analysis/coverage/measure-coverage.ts';
import type { Language } from '../analysis/language/language.ts';
import type { Proof } from '../channels/channel.ts';
import type { Sources } from '../content/sources.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle, Item, Moment } from '../model/box.ts';
import { isSealed } from '../model/seal.ts';
import { shortHash } from '../text/hash.ts';

/** Standing that every item should reach. Common practice, no source: one clear mention in each good place. */
export const DEFAULT_AIM = 0.7;

/** Raise when a proof of the same text would read otherwise, so that old pages are made anew. */
const PROOF_VERSION = 1;

/** Of what an author wrote that a cycle's proof is made from, other articles left aside, and of its seal. */
const textHashOf = ({ texts }: Sources, cycle: Cycle, asOf: Moment): string =>
  shortHash(
    JSON.stringify([
      PROOF_VERSION,
      isSealed(cycle, asOf),
      texts.filter(
        ({ path }) => path.startsWith(`cycles/${cycle.id}/`) || path === 'searches.csv' || path === 'box.md',
      ),
    ]),
  );

const concerns = ({ id }: Cycle, { location }: Diagnostic): boolean =>
  location.file.startsWith(`cycles/${id}/`) || !location.file.startsWith('cycles/');

/** Other names of things, by what they were looked up for. */
export type NameMemory = Map<string, readonly string[]>;

const nameKey = ({ kind, name, also }: Item, lang: string): string =>
  JSON.stringify([lang, kind, name, also]);

/** Other names of some items by kind. The dictionary is opened only for what is not remembered. */
const otherNamesOf = async (
  items: readonly Item[],
  language: Language,
  memory: NameMemory,
): Promise<ReadonlyMap<string, readonly string[]>> => {
  const unknown = items.filter((item) => !memory.has(nameKey(item, language.tag)));
  if (unknown.length > 0) {
    const { otherNames } = await import('../analysis/coverage/phrases/other-names.ts');
    const found = await otherNames(unknown, language);
    for (const item of unknown) memory.set(nameKey(item, language.tag), found.get(item.kind) ?? []);
  }
  return new Map(items.map((item) => [item.kind, memory.get(nameKey(item, language.tag)) ?? []]));
};

export interface FactsInput {
  readonly box: Box;
  /** The box's own. */
  readonly language: Language;
  readonly sources: Sources;
  readonly asOf: Moment;
  readonly aim: number;
  readonly diagnostics: readonly Diagnostic[];
  /** What the dictionary was found to have before, by `nameKey`; what is looked up now is added. */
  readonly names: NameMemory;
  /** Whether a cycle's proof has to be made, by the hash of what it would be made from. */
  readonly wanted: (cycle: Cycle, textHash: string) => boolean;
}

/**
 * The proofs of the cycles that are wanted, in the order of the box. What compares and counts is loaded only when
 * some proof is. A sealed cycle is compared with the open ones, and never the other way about.
 */
export const proofsOf = async (input: FactsInput): Promise<ReadonlyMap<string, Proof>> => {
  const { box, language, sources, asOf, aim, diagnostics, names, wanted } = input;
  const hashes = new Map(box.cycles.map((cycle) => [cycle.id, textHashOf(sources, cycle, asOf)]));
  const chosen = box.cycles.filter((cycle) => wanted(cycle, hashes.get(cycle.id) as string));
  if (chosen.length === 0) return new Map();

  const coverage = await import('../analysis/coverage/measure-coverage.ts');
  const otherNames = await otherNamesOf(
    chosen.flatMap(({ items }) => items),
    language,
    names,
  );
  const searches = coverage.searchIndexOf(box.searches, language);
  const read = (cycle: Cycle) => {
    const passages = coverage.passagesOf(cycle, coverage.surroundingsOf(box, cycle, asOf), language);
    return { passages, index: coverage.indexArticle(coverage.articleOf(cycle, passages)) };
  };
  const open: readonly ArticleIndex[] = box.cycles
    .filter((cycle) => !isSealed(cycle, asOf))
    .map((cycle) => read(cycle).index);
  const all = coverage.archiveOf(open, new Set(chosen.map(({ id }) => id)));
  const proofs = new Map<string, Proof>();
  for (const cycle of chosen) {
    const { passages, index } = read(cycle);
    const archive: Archive = isSealed(cycle, asOf)
      ? coverage.archiveOf([...open, index], new Set([cycle.id]))
      : all;
    const own = await coverage.ownCoverage({ cycle, passages, searches, aim, language, otherNames });
    const compared = coverage.comparedCoverage(own, archive, language);
    proofs.set(cycle.id, {
      coverage: coverage.coverageOf(own, compared, passages, language),
      diagnostics: diagnostics.filter((diagnostic) => concerns(cycle, diagnostic)),
      textHash: hashes.get(cycle.id) as string,
    });
  }
  return proofs;
};
