/** An article as it would be after a change: what advice promises is measured on this, not guessed. */
import type { Language } from '../../language/language.ts';
import type { Passage, ZonedWord } from '../text/passage.ts';
import { OPENING_WORDS, type Zone } from '../text/zones.ts';

/** Text to put in place of a span of a passage; a span of no length is an insertion. */
export interface TextChange {
  /** Index of the passage. */
  readonly passage: number;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Where a passage's words stand unless they are in a link or the opening. */
const zoneOf = ({ running, item, words }: Passage): Zone => {
  if (running) return item === undefined ? 'body' : 'section';
  return words.find(({ zone }) => zone !== 'link text')?.zone ?? 'link text';
};

/** A passage of running text with so many words before it: a longer opening pushes its last words out. The same one where none moves. */
const moved = (passage: Passage, runningBefore: number): Passage => {
  const own = zoneOf(passage);
  const zoneAt = (word: ZonedWord, i: number): Zone =>
    word.zone === 'link text' ? word.zone : runningBefore + i < OPENING_WORDS ? 'opening' : own;
  if (passage.words.every((word, i) => word.zone === zoneAt(word, i))) return passage;
  return { ...passage, words: passage.words.map((word, i) => ({ ...word, zone: zoneAt(word, i) })) };
};

const changedAt = (
  passage: Passage,
  { start, end, text: given }: TextChange,
  runningBefore: number,
  language: Language,
): Passage => {
  const longer = given.length - (end - start);
  const text = passage.text.slice(0, start) + given + passage.text.slice(end);
  const after = (offset: number): number => (offset >= end ? offset + longer : offset);
  const links = (passage.links ?? []).map((link) => ({ start: after(link.start), end: after(link.end) }));
  const near = passage.words.find((word) => word.end >= start) ?? passage.words.at(-1);
  if (!near) return { ...passage, text, links };
  const { sentence, line, column } = near;
  const own = zoneOf(passage);
  const words: ZonedWord[] = [];
  /** Puts a word with its place, and the very same word where it had that place before. */
  const put = (word: ZonedWord): void => {
    const inLink = links.some((link) => word.start >= link.start && word.end <= link.end);
    const opening = passage.running === true && runningBefore + words.length < OPENING_WORDS;
    const zone = inLink ? 'link text' : opening ? 'opening' : own;
    words.push(word.zone === zone ? word : { ...word, zone });
  };
  // The words around the change are as they were: only what was put in is taken apart.
  for (const word of passage.words) if (word.end <= start) put(word);
  for (const word of language.words(given))
    put({ ...word, start: word.start + start, end: word.end + start, zone: own, sentence, line, column });
  for (const word of passage.words)
    if (word.start >= end && word.end > start)
      put(longer === 0 ? word : { ...word, start: word.start + longer, end: word.end + longer });
  return { ...passage, text, links, words };
};

/** The passages after a change. */
export const rewritten = (
  passages: readonly Passage[],
  change: TextChange,
  language: Language,
): readonly Passage[] => {
  let running = 0;
  return passages.map((old, i) => {
    const before = running;
    const passage =
      i === change.passage
        ? changedAt(old, change, before, language)
        : i > change.passage && old.running && before < OPENING_WORDS + change.text.length
          ? moved(old, before)
          : old;
    if (old.running) running += passage.words.length;
    return passage;
  });
};
