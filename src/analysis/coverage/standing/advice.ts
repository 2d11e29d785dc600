/** The least work that brings every item to the aim. */

import type { Location } from '../../../diagnostics/diagnostic.ts';
import { itemAt, lastOf } from '../../../text/item-at.ts';
import type { Language } from '../../language/language.ts';
import { isAtAim } from '../aim.ts';
import type { Edit } from '../coverage.ts';
import type { Passage } from '../text/passage.ts';
import { candidatesFor, type EditCandidate, sentenceReader } from './candidates.ts';
import { rewritten } from './rewriting.ts';
import { outcomeOf, type Tally, talliedAgain } from './tally.ts';

/** What to change, and what it would bring. */
export interface Advice {
  readonly edits: readonly Edit[];
  /** Standing of each item by slug after all edits, counted on the changed text. */
  readonly promised: ReadonlyMap<string, number>;
}

/** More than a writer does on an evening; what is still short then wants writing, not mending. */
const MOST_EDITS = 12;

/** A change that brings less than this, in standing, is not worth a line of advice unless it brings an item to the aim. */
const LEAST_GAIN = 0.01;

interface Draft {
  readonly passages: readonly Passage[];
  readonly tally: Tally;
}

const shortOf = (aim: number, standings: ReadonlyMap<string, number>): ReadonlySet<string> =>
  new Set([...standings].filter(([, standing]) => !isAtAim(standing, aim)).map(([slug]) => slug));

/** How much nearer to the aim all short items come: more than the aim counts nothing. */
const gainOf = (
  aim: number,
  before: ReadonlyMap<string, number>,
  after: ReadonlyMap<string, number>,
): number =>
  [...before].reduce(
    (sum, [slug, standing]) => sum + Math.min(after.get(slug) ?? standing, aim) - Math.min(standing, aim),
    0,
  );

/** A change by what it says where, the same from one round to the next. */
const nameOf = ({ item, phrase, zone, passage, at }: EditCandidate): string =>
  [item.slug, phrase.text, zone, passage, at.line, at.column].join(' ');

const isSamePlace = (a: Location, b: Location): boolean =>
  a.file === b.file && a.line === b.line && a.column === b.column;

const applied = (
  { passages }: Draft,
  { change, fresh }: EditCandidate,
  language: Language,
): readonly Passage[] => (change ? rewritten(passages, change, language) : [...passages, fresh()]);

/**
 * Greedy weighted cover (Chvátal 1979; for a submodular gain such as this one, Wolsey 1982): again and again the
 * change with the most gain for its effort, until every item stands at the aim; then changes that the later ones
 * made needless are taken back. Each step is counted on the text as it would read. `tally` is that of the passages.
 */
export const adviceFor = (
  passages: readonly Passage[],
  tally: Tally,
  aim: number,
  language: Language,
): Advice => {
  const changedBy = (draft: Draft, candidate: EditCandidate): Draft => {
    const text = applied(draft, candidate, language);
    return { passages: text, tally: talliedAgain(draft.tally, draft.passages, text) };
  };
  const standingsWith = (
    draft: Draft,
    { passage, fresh, phrase }: EditCandidate,
  ): ReadonlyMap<string, number> =>
    outcomeOf(draft.tally, passage, draft.passages[passage], fresh(), phrase.words).standings;
  const sentencesIn = sentenceReader();
  // Gains only shrink as the text grows (Minoux 1978): what a change brought before is the most it can bring now,
  // so that few need to be counted again.
  const most = new Map<string, number>();
  /** A second thing said in one sentence is harder to write than the first. */
  const effortOf = (candidate: EditCandidate, chosen: readonly EditCandidate[]): number =>
    candidate.effort * (1 + chosen.filter((one) => isSamePlace(one.at, candidate.at)).length);
  const best = (draft: Draft, soFar: readonly EditCandidate[]): EditCandidate | undefined => {
    const short = shortOf(aim, draft.tally.standings);
    const ranked = candidatesFor(draft.passages, draft.tally, short, language, sentencesIn)
      .map((candidate) => ({ candidate, bound: most.get(nameOf(candidate)) ?? Number.POSITIVE_INFINITY }))
      .sort((a, b) => b.bound - a.bound);
    let chosen: { candidate: EditCandidate; value: number } | undefined;
    for (const { candidate, bound } of ranked) {
      if (chosen && bound <= chosen.value) break;
      const after = standingsWith(draft, candidate);
      const gain = gainOf(aim, draft.tally.standings, after);
      const value = gain / effortOf(candidate, soFar);
      most.set(nameOf(candidate), value);
      const isWorthIt = gain >= LEAST_GAIN || shortOf(aim, after).size < short.size;
      if (isWorthIt && value > (chosen?.value ?? 0)) chosen = { candidate, value };
    }
    return chosen?.candidate;
  };

  const first: Draft = { passages, tally };
  const chosen: EditCandidate[] = [];
  let draft = first;
  while (chosen.length < MOST_EDITS && shortOf(aim, draft.tally.standings).size > 0) {
    const candidate = best(draft, chosen);
    if (!candidate) break;
    chosen.push(candidate);
    draft = changedBy(draft, candidate);
  }

  /** The drafts that some changes make of one, each after the one before. */
  const replay = (from: Draft, candidates: readonly EditCandidate[]): readonly Draft[] => {
    const drafts: Draft[] = [];
    for (const candidate of candidates) drafts.push(changedBy(drafts.at(-1) ?? from, candidate));
    return drafts;
  };
  const all = draft.tally.standings;
  let kept: readonly EditCandidate[] = chosen;
  let drafts = [first, ...replay(first, kept)];
  for (const candidate of [...chosen].sort((a, b) => b.effort - a.effort)) {
    const at = kept.indexOf(candidate);
    // What came later in the same passage counts on the letters before it.
    const later = kept.slice(at + 1);
    if (later.some(({ passage }) => passage === candidate.passage)) continue;
    const before = drafts.slice(0, at + 1);
    const without = [...before, ...replay(lastOf(before), later)];
    const left = lastOf(without).tally.standings;
    const needless = [...all].every(([slug, standing]) => (left.get(slug) ?? 0) >= Math.min(standing, aim));
    if (!needless) continue;
    kept = kept.filter((one) => one !== candidate);
    drafts = without;
  }

  const edits = kept.map((candidate, i): Edit => {
    const [before, after] = [itemAt(drafts, i), itemAt(drafts, i + 1)];
    const at = candidate.change ? candidate.passage : before.passages.length;
    const { raised } = outcomeOf(
      before.tally,
      at,
      before.passages[at],
      candidate.change ? itemAt(after.passages, candidate.passage) : candidate.fresh(),
      candidate.phrase.words,
    );
    const serves = raised.map(({ entry }) => ({ item: entry.item.slug, phrase: entry.phrase.text }));
    const brings = tally.items
      .map(({ slug }) => ({
        item: slug,
        before: before.tally.standings.get(slug) ?? 0,
        after: after.tally.standings.get(slug) ?? 0,
      }))
      .filter((step) => step.after > step.before);
    const { zone, write, action } = candidate;
    return { zone, at: candidate.at, serves, write, action, brings };
  });
  return { edits, promised: lastOf(drafts).tally.standings };
};
