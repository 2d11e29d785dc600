/** Photos that are dropped in: which shows what, as the owner agrees. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isPhoto } from '../io/know-files.ts';
import { takenAt } from '../io/taken-at.ts';
import { begin } from '../wording/en/begin.ts';
import { matchPhotos } from '../workspace/begin/index.ts';
import type { DroppedPhoto, PhotographedThing, PhotoMatch } from '../workspace/begin/match-photos.ts';
import { padEnd } from './cells.ts';
import type { Checked, Questioner } from './questions.ts';

const { questions, expected, photos: words } = begin;

/** Pictures of a folder, and what else lies there. Throws where the folder cannot be read. */
export interface DroppedFolder {
  readonly photos: readonly DroppedPhoto[];
  readonly others: readonly string[];
}

/** Looks at a folder; its sub-folders and hidden files are left alone. */
export const readDropped = (folder: string): DroppedFolder => {
  const names = readdirSync(folder).filter(
    (name) => !name.startsWith('.') && statSync(join(folder, name), { throwIfNoEntry: false })?.isFile(),
  );
  return {
    photos: names.filter(isPhoto).map((name) => {
      const path = join(folder, name);
      return { name, taken: takenAt(readFileSync(path), name, statSync(path).mtimeMs) };
    }),
    others: names.filter((name) => !isPhoto(name)),
  };
};

const shown = (matches: readonly PhotoMatch[], things: readonly PhotographedThing[]): readonly string[] => {
  const wide = Math.max(...matches.map(({ photo }) => photo.name.length));
  return [
    words.heading,
    ...matches.map(({ photo, shows, by }, i) => {
      const what =
        shows === undefined
          ? words.nothing
          : shows === 'box'
            ? words.whole
            : `${shows + 1}. ${things[shows]?.name}`;
      const reason = words.by[by];
      return `${String(i + 1).padStart(4)}  ${padEnd(photo.name, wide)}  →  ${what}${reason ? ` (${reason})` : ''}`;
    }),
  ];
};

/** "4=2 5=box 6=none" as the matches with these changed. */
const readPairs = (
  typed: string,
  matches: readonly PhotoMatch[],
  things: readonly PhotographedThing[],
): Checked<readonly PhotoMatch[]> => {
  const changed = [...matches];
  for (const pair of typed
    .replace(/\s*=\s*/g, '=')
    .split(/[\s,;]+/)
    .filter(Boolean)) {
    const [, photo = '', thing = ''] = /^(\d+)=(\d+|box|none)$/i.exec(pair) ?? [];
    const at = Number(photo) - 1;
    const shows = /^box$/i.test(thing) ? 'box' : /^none$/i.test(thing) ? undefined : Number(thing) - 1;
    const match = matches[at];
    const isThere = typeof shows !== 'number' || things[shows] !== undefined;
    if (!match || !isThere || photo === '')
      return { expected: expected.pairs(matches.length, things.length) };
    changed[at] = { photo: match.photo, shows, by: 'none' };
  }
  return { value: changed };
};

/** Which photo shows what, as agreed to. */
export const askPhotos = async (
  { ask, isAsked, tell }: Questioner,
  photos: readonly DroppedPhoto[],
  things: readonly PhotographedThing[],
  hasWholeBox: boolean,
  say: (text: string) => void,
): Promise<readonly PhotoMatch[]> => {
  let matches = matchPhotos(photos, things, hasWholeBox);
  for (;;) {
    say(`${shown(matches, things).join('\n')}\n`);
    const current = matches;
    const answer = await ask<readonly PhotoMatch[] | 'yes' | 'no'>({
      option: 'pairs',
      words: questions.pairs,
      initial: 'yes',
      check: (typed) =>
        /^y(?:es)?$/i.test(typed)
          ? { value: 'yes' }
          : /^no(?:ne)?$/i.test(typed)
            ? { value: 'no' }
            : readPairs(typed, current, things),
    });
    if (answer === 'no' || answer === undefined)
      return matches.map(({ photo }) => ({ photo, shows: undefined, by: 'none' }));
    if (answer === 'yes') return matches;
    matches = answer;
    if (!isAsked) return matches;
    tell('');
  }
};
