/**
 * The beats of a live reveal by the names that an owner writes in cycle.md. The order of telling is common practice, no
 * source.
 */

const BEAT_KINDS = [
  'stage',
  'hook',
  'greet',
  'about',
  'chosen',
  'mishap',
  'item',
  'questions',
  'whole',
  'peek',
  'call',
  'goodbye',
] as const;

/** What a beat is for. */
export type BeatKind = (typeof BEAT_KINDS)[number];

/** Kinds that are named as they are; an item's beat is named by its slug, and the stage is set before the recording. */
export type NamedKind = Exclude<BeatKind, 'item' | 'stage'>;

/** Those kinds, in the order of telling. */
export const NAMED_KINDS: readonly NamedKind[] = BEAT_KINDS.filter(
  (kind) => kind !== 'item' && kind !== 'stage',
);

/** The kind that a name in cycle.md means where it is no item's: `questions-2` is the second run of questions. */
export const namedKind = (name: string): NamedKind | undefined => {
  const kind = name.replace(/^questions-[1-9]\d?$/, 'questions');
  return NAMED_KINDS.find((one) => one === kind);
};
