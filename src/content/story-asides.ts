/**
 * What a story says to its owner alone, in comments of Markdown before and after its text, and the text itself. A comment
 * between two paragraphs stays in the text, because its place says what it is about.
 */
import type { RootContent } from 'mdast';
import { parseMarkdown } from './markdown.ts';

/** A story in three parts that make it again, one after the other. */
export interface StoryParts {
  /** Comments with the blank lines around them. */
  readonly before: string;
  readonly text: string;
  readonly after: string;
  /** What the comments say, in their order. */
  readonly asides: readonly string[];
}

const OPEN = '<!--';
const CLOSE = '-->';

/** What a block says that is one comment and nothing else. */
const asideOf = (block: RootContent | undefined): string | undefined => {
  if (block?.type !== 'html') return undefined;
  const text = block.value.trim();
  return text.startsWith(OPEN) && text.indexOf(CLOSE, OPEN.length) === text.length - CLOSE.length
    ? text.slice(OPEN.length, -CLOSE.length).trim()
    : undefined;
};

const blocksOf = (story: string): readonly RootContent[] => {
  try {
    return parseMarkdown(story).children;
  } catch {
    // One that is too deep to be read is a finding of its own, and is shown as it stands.
    return [];
  }
};

/** The start of the line after an offset, and of the first after it that is not blank. */
const nextLine = (story: string, offset: number): number =>
  offset + (/^[^\n]*(?:\n[ \t]*(?=\n|$))*\n?/.exec(story.slice(offset))?.[0].length ?? 0);

/** A story with line feeds alone → its text, and what stands around it for its owner. */
export const storyParts = (story: string): StoryParts => {
  const blocks = story.includes(OPEN) ? blocksOf(story) : [];
  const firstText = blocks.findIndex((block) => asideOf(block) === undefined);
  const head = firstText < 0 ? blocks : blocks.slice(0, firstText);
  const tail =
    firstText < 0 ? [] : blocks.slice(blocks.findLastIndex((block) => asideOf(block) === undefined) + 1);
  const end = head.at(-1)?.position?.end.offset;
  const from = end === undefined ? 0 : nextLine(story, end);
  const start = tail[0]?.position?.start.offset;
  const line = start === undefined ? story.length : story.lastIndexOf('\n', start) + 1;
  const text = start === undefined ? story.slice(from) : story.slice(from, line).trimEnd();
  return {
    before: story.slice(0, from),
    text,
    after: story.slice(from + text.length),
    asides: [...head, ...tail].flatMap((block) => asideOf(block) ?? []),
  };
};

/**
 * The story of its parts. A text that comes new among comments is parted from them by a blank line; one that stood there
 * keeps what stood between.
 */
export const storyOfParts = ({ before, text, after }: Omit<StoryParts, 'asides'>): string => {
  if (text.trim() === '') return before + after.replace(before === '' ? /^\n+/ : /^$/, '');
  const opening = before === '' || /\n[ \t]*\n$/.test(before) ? before : `${before.trimEnd()}\n\n`;
  if (after === '') return opening + text;
  return `${opening}${text.trimEnd()}${/^\s*\n[ \t]*\n/.test(after) ? after : `\n\n${after.trimStart()}`}`;
};
