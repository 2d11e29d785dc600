/**
 * The beats of a live reveal by the names that an owner writes in cycle.md, and what each is called. The order of
 * telling is common practice, no source.
 */

export const BEAT_KINDS = [
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
] as const;
export type BeatKind = (typeof BEAT_KINDS)[number];

/** Titles on the run sheet; an item's beat bears the item's name. */
export const beatTitles: Readonly<Record<Exclude<BeatKind, 'item'>, string>> = {
  stage: 'Set the stage',
  hook: 'The hook',
  greet: 'Who is here?',
  about: 'What this box is for',
  chosen: 'How it was chosen',
  mishap: 'The mishap',
  questions: 'Questions',
  whole: 'The whole box',
  peek: 'The peek',
  call: 'The call',
};

/** Titles of a recording's chapters, for people who were not there. */
export const chapterTitles: Readonly<Record<Exclude<BeatKind, 'item' | 'stage'>, string>> = {
  hook: 'The beginning',
  greet: 'Who is here',
  about: 'What this box is',
  chosen: 'How it was chosen',
  mishap: 'What went wrong',
  questions: 'Questions',
  whole: 'The whole box',
  peek: 'A look at the next box',
  call: 'How to get the next one',
};

const isChapter = (name: string): name is keyof typeof chapterTitles => Object.hasOwn(chapterTitles, name);

/** The kind that a name in cycle.md means where it is no item's: `questions-2` is the second run of questions. */
export const namedKind = (name: string): Exclude<BeatKind, 'item' | 'stage'> | undefined => {
  const kind = name.replace(/^questions-[1-9]\d?$/, 'questions');
  return isChapter(kind) ? kind : undefined;
};
