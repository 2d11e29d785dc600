/** Things that are named and not in the box: found once for what names them, and worded as findings. */
import type { Candidate } from '../analysis/coverage/strangers/candidates.ts';
import { namingTextsOf } from '../analysis/coverage/strangers/naming-texts.ts';
import { type Stranger, strangerAt, untoldAmong } from '../analysis/coverage/strangers/untold.ts';
import type { Passage } from '../analysis/coverage/text/passage.ts';
import type { Language } from '../analysis/language/language.ts';
import { type Diagnostic, lookAt } from '../diagnostics/diagnostic.ts';
import type { Box, Cycle } from '../model/box.ts';
import { digestOf } from '../text/digest.ts';
import { type Memory, recalled } from '../text/memory.ts';
import type { WordNet } from '../text/wordnet.ts';
import type { Wording } from '../wording/wording.ts';

interface StrangersInput {
  readonly box: Box;
  readonly cycle: Cycle;
  /** The cycle's. */
  readonly passages: readonly Passage[];
  readonly tools: { readonly language: Language };
  readonly program: string;
  readonly memory: Memory;
  readonly wordnet: WordNet;
}

/**
 * The strangers of one cycle. What its title and summary name is remembered by these alone, and what the dictionary says of
 * it by what nothing else in the article tells: an edit of a story never asks the tagger, and the dictionary only where it
 * takes away or brings what tells of a thing.
 */
export const strangersOf = async ({
  box,
  cycle,
  passages,
  tools: { language },
  program,
  memory,
  wordnet,
}: StrangersInput): Promise<readonly Stranger[]> => {
  if (!language.english) return [];
  const { name, description } = box.settings;
  const texts = namingTextsOf(cycle);
  const candidates = await recalled(
    memory,
    digestOf('candidates', program, language.tag, texts),
    async (): Promise<readonly Candidate[]> => {
      const { candidatesIn } = await import('../analysis/coverage/strangers/candidates.ts');
      return candidatesIn(texts, language);
    },
  );
  const untold = untoldAmong(candidates, passages, [name, description], language);
  if (untold.length === 0) return [];
  const names = cycle.items.flatMap((item) => [item.name, item.kind, ...item.also]);
  const strangers = await recalled(
    memory,
    digestOf('strangers', program, language.tag, names, untold),
    async (): Promise<readonly Candidate[]> => {
      const { strangersAmong } = await import('../analysis/coverage/strangers/strangers.ts');
      return strangersAmong(untold, names, language, wordnet);
    },
  );
  return strangers.map((candidate) => strangerAt(candidate, passages));
};

/** One for each. */
export const strangerFindings = (
  strangers: readonly Stranger[],
  { strangers: words }: Pick<Wording, 'strangers'>,
): readonly Diagnostic[] =>
  strangers.map((stranger) => lookAt('not-in-the-box', stranger.at, words.message(stranger), words.fix));
