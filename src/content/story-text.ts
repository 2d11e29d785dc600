/** The story of a record's file: the text below its fields, changed without touching a byte that stays as it is. */
import { frontMatterSpan } from './front-matter-span.ts';

/** Offset of the story in a file; undefined where its fields cannot be told from it. */
const storyFrom = (text: string): number | undefined => {
  const span = frontMatterSpan(text);
  if (!span) return undefined;
  // The line that closes the fields, and the empty ones after it: nobody writes those.
  const closed = /^[^\r\n]*(?:\r?\n|$)(?:[ \t]*\r?\n)*/.exec(text.slice(span.to));
  return span.to + (closed?.[0].length ?? 0);
};

/** Lines with their ends. */
const linesOf = (text: string): readonly string[] => text.match(/[^\n]*\n|[^\n]+$/g) ?? [];
const withoutEnd = (line: string): string => line.replace(/\r?\n$/, '');
const endOf = (line: string): string => /\r?\n$/.exec(line)?.[0] ?? '';

/** The story as a form shows it, with line feeds alone; undefined where its fields cannot be told from it. */
export const storyOf = (text: string): string | undefined => {
  const from = storyFrom(text);
  return from === undefined ? undefined : text.slice(from).replaceAll('\r\n', '\n');
};

/** The line of the file, from 1, on which the story begins. */
export const storyLine = (text: string): number => text.slice(0, storyFrom(text) ?? 0).split('\n').length;

/**
 * The file with another story. Lines that are as they were keep their bytes, and new ones end as those around them do.
 * Undefined where the fields cannot be told from the story.
 */
export const withStory = (text: string, story: string): string | undefined => {
  const from = storyFrom(text);
  if (from === undefined) return undefined;
  const before = linesOf(text.slice(from));
  const after = linesOf(story.replace(/\r\n?/g, '\n'));
  const isSame = (a: string | undefined, b: string | undefined): boolean =>
    a !== undefined &&
    b !== undefined &&
    withoutEnd(a) === withoutEnd(b) &&
    (endOf(a) === '') === (endOf(b) === '');
  let head = 0;
  while (head < before.length && isSame(before[head], after[head])) head += 1;
  let tail = 0;
  while (
    tail < Math.min(before.length, after.length) - head &&
    isSame(before[before.length - 1 - tail], after[after.length - 1 - tail])
  )
    tail += 1;
  const eol = text.slice(0, from).includes('\r\n') ? '\r\n' : '\n';
  const changed = after
    .slice(head, after.length - tail)
    .map((line) => withoutEnd(line) + (endOf(line) ? eol : ''));
  const kept = text.slice(0, from);
  // A file may end with its last fence.
  const joint = kept.endsWith('\n') || changed.length === 0 ? '' : eol;
  return (
    kept + joint + [...before.slice(0, head), ...changed, ...before.slice(before.length - tail)].join('')
  );
};
