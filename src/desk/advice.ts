/** Advice carried out: a sentence of a record changed into the one that is proposed. */
import { valueAt } from '../content/field-path.ts';
import { storyLine } from '../content/story-text.ts';
import type { Edit } from '../pipeline/proof.ts';
import { literal } from '../text/literal-pattern.ts';
import { type Edited, edited, fieldOf, type OpenRecord, pathOf, STORY } from './record.ts';

/** The words of a sentence with whatever blanks and line ends stand between them. */
const sentencePattern = (sentence: string): RegExp =>
  new RegExp(sentence.trim().split(/\s+/).map(literal).join('\\s+'), 'g');

/** The one place of a sentence in a text: the one that a place lies in, or the only one there is. */
const placeOf = (
  text: string,
  sentence: string,
  near: number,
): { readonly from: number; readonly to: number } | undefined => {
  const found = [...text.matchAll(sentencePattern(sentence))].map(({ 0: { length }, index }) => ({
    from: index,
    to: index + length,
  }));
  return (
    found.find(({ from, to }) => from <= near && near < to) ?? (found.length === 1 ? found[0] : undefined)
  );
};

/** A record with a sentence as it is proposed; undefined where the sentence stands otherwise in the file. */
export const withAdvice = (
  record: OpenRecord,
  { at, before, after }: Pick<Edit, 'at' | 'before' | 'after'>,
): Edited | undefined => {
  const field = fieldOf(record, { location: at });
  if (field !== STORY) {
    const path = pathOf(field);
    const value = valueAt(record.values, path);
    if (typeof value !== 'string') return undefined;
    const place = placeOf(value, before, 0);
    return (
      place && edited(record, [{ path, value: value.slice(0, place.from) + after + value.slice(place.to) }])
    );
  }
  const { story, text } = record;
  if (story === undefined) return undefined;
  const lines = story.split('\n');
  const near =
    lines.slice(0, at.line - storyLine(text)).reduce((sum, line) => sum + line.length + 1, 0) + at.column - 1;
  const place = placeOf(story, before, near);
  return place && edited(record, [], story.slice(0, place.from) + after + story.slice(place.to));
};
