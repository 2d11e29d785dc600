/** How the articles under proof stand beside one another: rivals and shared passages, each kept by what it depends on. */
import type { SharedPassage } from '../analysis/coverage/coverage.ts';
import type {
  ArticleIndex,
  ComparedCoverage,
  Comparison,
  OwnCoverage,
} from '../analysis/coverage/measure-coverage.ts';
import type { Cycle } from '../model/box.ts';
import { digestOf } from '../text/digest.ts';
import { lazily } from '../text/lazy.ts';
import { recalled } from '../text/memory.ts';
import { remembered } from '../text/remembered.ts';
import type { ProofsInput } from './proofs.ts';

/** A cycle with what its parts are known by. */
export interface Subject {
  readonly cycle: Cycle;
  /** What its passages are made of. */
  readonly textKey: string;
  /** What it shares with earlier articles is made of: later ones have no part in it. */
  readonly sharedKey: string;
}

/** A cycle under proof, and what its article says itself. */
export type Read = readonly [Subject, { readonly own: OwnCoverage; readonly key: string }];

export interface Articles {
  /** Those under proof. */
  readonly read: readonly Read[];
  /** Those under proof and all that are open, the oldest first. */
  readonly subjects: readonly Subject[];
  readonly isOpen: (cycle: Cycle) => boolean;
  readonly indexOf: (subject: Subject) => ArticleIndex;
}

/**
 * Of each article under proof, in their order. A sealed cycle is compared with the open ones, and never the other way
 * about.
 */
export const comparedFor = async (
  { read, subjects, isOpen, indexOf }: Articles,
  { tools: { language }, memory, kept }: Pick<ProofsInput, 'tools' | 'memory' | 'kept'>,
): Promise<readonly ComparedCoverage[]> => {
  const { comparisonOf } = await import('../analysis/coverage/measure-coverage.ts');
  const openSubjects = subjects.filter(({ cycle }) => isOpen(cycle));
  const openIndexes = lazily(() => openSubjects.map(indexOf));
  const openKey = digestOf(openSubjects.map(({ textKey }) => textKey));
  const openComparison = lazily(() => {
    // Where it is remembered what a cycle shares, nobody looks at its paragraphs.
    const unknown = new Set(
      read.flatMap(([{ cycle, sharedKey }]) => (memory.has(sharedKey) ? [] : [cycle.id])),
    );
    kept.comparison = comparisonOf(openIndexes(), language, unknown, kept.comparison);
    return kept.comparison;
  });
  const comparisonFor = remembered(
    (subject: Subject): Comparison =>
      isOpen(subject.cycle)
        ? openComparison()
        : comparisonOf(
            [...openIndexes(), indexOf(subject)],
            language,
            new Set([subject.cycle.id]),
            openComparison(),
          ),
  );
  // Rivals of all are one value, because any change of an article asks for those of all anew.
  const rivalsKey = digestOf(
    'rivals',
    openKey,
    read.map(([{ textKey }, { key }]) => [textKey, key]),
  );
  const rivals = await recalled(memory, rivalsKey, () =>
    read.map(([subject, { own }]) => comparisonFor(subject).rivalsOf(own)),
  );
  const sharedOf = (subject: Subject): Promise<readonly SharedPassage[]> => {
    const { cycle, sharedKey } = subject;
    // Asked for also where it is at hand, because what nobody asks for is forgotten.
    memory.has(sharedKey);
    return kept.shared.get(sharedKey, () =>
      recalled(memory, sharedKey, () => comparisonFor(subject).sharedOf(cycle.id)),
    );
  };
  const compared: ComparedCoverage[] = [];
  for (const [i, [subject]] of read.entries())
    compared.push({ rivals: rivals[i] ?? [], shared: await sharedOf(subject) });
  return compared;
};
